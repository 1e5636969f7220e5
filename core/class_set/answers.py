"""How a question in Sort can be answered, and what each answer does."""

from __future__ import annotations

from typing import Literal, assert_never

from core.class_set import edits
from core.class_set.model import ClassSet
from core.class_set.questions import Question
from core.i18n import translate

Reply = Literal["yes", "this", "other", "both", "right", "keep", "corners", "aside", "elsewhere"]
"""What the teacher says; "keep" the corners that were found. "elsewhere" names a place by hand and
"corners" sets them by hand: both do nothing by themselves."""


def replies(question: Question) -> tuple[Reply, ...]:
    """The ways to answer; Enter gives the first."""
    if question.reason == "place taken" and question.proposal and question.there_now:
        return ("this", "other", "elsewhere")
    corners: tuple[Reply, ...] = ("corners",) if question.corners else ()
    if question.proposal is not None:
        return ("yes", *corners, "elsewhere", "aside")
    if question.reason == "same sheet" and question.place is not None:
        return ("both", "aside", "elsewhere")
    if question.reason == "corners unsure" and question.found is not None:
        return ("keep", *corners, "elsewhere", "aside")
    if question.reason == "not found":
        return (*corners, "right", "elsewhere", "aside")
    if question.place is not None:
        return ("right", *corners, "elsewhere", "aside")
    return (*corners, "elsewhere", "aside")


def reply_word(reply: Reply) -> str:
    """An answer on its button."""
    match reply:
        case "yes":
            return translate("class set", "Yes")
        case "this":
            return translate("class set", "Keep this one")
        case "other":
            return translate("class set", "Keep the other")
        case "both":
            return translate("class set", "Keep both")
        case "right":
            return translate("class set", "It is right")
        case "keep":
            return translate("class set", "The corners are right")
        case "corners":
            return translate("class set", "Set the corners")
        case "aside":
            return translate("class set", "Lay aside")
        case "elsewhere":
            return translate("class set", "Another place")
        case _:
            assert_never(reply)


def answered(class_set: ClassSet, question: Question, reply: Reply) -> ClassSet:
    """The class set after an answer.

    Raises
    ------
    ValueError
        The question has no such answer.
    """
    if reply not in replies(question):
        raise ValueError(f"{question.reason} is not answered by {reply}")
    match reply:
        case "yes" | "this":
            assert question.proposal is not None
            after = edits.place(class_set, question.digest, question.proposal)
            if reply == "this" and question.there_now is not None:
                after = edits.lay_aside(after, question.there_now)
            return after
        case "both" | "right":
            assert question.place is not None
            return edits.place(class_set, question.digest, question.place)
        case "keep":
            assert question.found is not None
            return edits.with_options(class_set, question.digest, question.found)
        case "other" | "aside":
            return edits.lay_aside(class_set, question.digest)
        case "elsewhere" | "corners":
            return class_set
        case _:
            assert_never(reply)
