"""What is asked in Sort: pictures without a place, and places that something speaks against."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Literal, assert_never

from core.class_set.checking import shows_sheet
from core.class_set.grain import same_grains
from core.class_set.kept_checks import Kept
from core.class_set.model import Brought, ClassSet
from core.class_set.placing import Placement, Reason, place_all
from core.class_set.ticket import Slot
from core.i18n import translate
from core.sheet.find.corners import SURE
from core.sheet.options import SheetOptions
from core.sheet.result import SheetCheck

Doubt = Literal["same sheet", "other sky", "corners unsure", "not found", "not checked"]
"""What speaks against a picture although it has its place."""

_NOTICED: tuple[tuple[str, Doubt], ...] = (
    ("corners not found", "not found"),
    ("other sky", "other sky"),
)


@dataclass(frozen=True)
class Question:
    """One thing for the teacher to look at.

    Attributes
    ----------
    digest : str
        The picture.
    reason : Reason or Doubt
    place : Slot or None
        Where the picture is now.
    proposal : Slot or None
        Where it probably belongs: Enter accepts it.
    there_now : str or None
        The picture that has the place proposed.
    same_as : str or None
        A picture that shows the same painting.
    sentence : str
        All of it in plain words.
    found : SheetOptions or None
        The painting as it was found, to be kept as it is.
    corners : bool
        Setting its corners may settle it.
    """

    digest: str
    reason: Reason | Doubt
    place: Slot | None = None
    proposal: Slot | None = None
    there_now: str | None = None
    same_as: str | None = None
    sentence: str = ""
    found: SheetOptions | None = None
    corners: bool = False


@dataclass(frozen=True)
class Sorted:
    """Where the pictures are, and what is asked about them.

    Attributes
    ----------
    placement : Placement
    questions : tuple of Question
        In the order the pictures were brought in.
    """

    placement: Placement
    questions: tuple[Question, ...]


def sort_pictures(
    class_set: ClassSet,
    checks: Mapping[str, Kept] | None = None,
    same: Mapping[str, str] | None = None,
) -> Sorted:
    """Place every picture, and ask about what is not clear.

    Parameters
    ----------
    class_set : ClassSet
    checks : mapping of str to Kept, optional
        By digest, as far as there are any: they tell the same sheet, another sky, and corners
        that are not sure.
    same : mapping, optional
        From `same_sheets`, where it is known: only that takes more than a moment.
    """
    checks = checks or {}
    doubts = {
        each.digest: doubt
        for each in class_set.brought
        if each.digest in checks
        and shows_sheet(each)
        and (doubt := _doubt(each, checks[each.digest])) is not None
    }
    strong = frozenset(digest for digest, doubt in doubts.items() if doubt != "corners unsure")
    placement = place_all(class_set, strong)
    same = same_sheets(class_set, checks) if same is None else same
    asked = {each.digest: each for each in placement.asked}
    questions = []
    for each in class_set.brought:
        if each.aside:
            continue
        twin = same.get(each.digest)
        if each.digest in asked:
            one = asked[each.digest]
            found = Question(each.digest, one.reason, None, one.proposal, one.there_now, twin)
        else:
            place = placement.place_of(each.digest)
            slot = None if place is None else place.slot
            by_hand = place is not None and place.how == "hand"
            if twin is not None and not by_hand:
                found = Question(each.digest, "same sheet", slot, same_as=twin)
            elif slot is not None and _is_asked(doubts.get(each.digest), by_hand=by_hand):
                found = Question(each.digest, doubts[each.digest], slot)
            else:
                continue
        questions.append(
            replace(
                found,
                sentence=_sentence(found, class_set),
                found=_as_found(each, checks.get(each.digest)),
                corners=_corners_may_help(each, doubts.get(each.digest)),
            )
        )
    return Sorted(placement, tuple(questions))


def same_sheets(class_set: ClassSet, checks: Mapping[str, Kept]) -> dict[str, str]:
    """Pictures that show a painting brought in before, with the digest of the first one."""
    grains = [
        (each.digest, checks[each.digest].grain)
        for each in class_set.brought
        if each.digest in checks and checks[each.digest].grain and not each.aside
    ]
    return same_grains(grains)


def _doubt(brought: Brought, kept: Kept) -> Doubt | None:
    if kept.check is None:
        return "not checked"
    by_hand = brought.options.corners is not None
    keys = {notice.key for notice in kept.check.notices}
    for key, doubt in _NOTICED:
        # Corners set by hand are right, also while the check with them is still to come.
        if key in keys and not (by_hand and doubt == "not found"):
            return doubt
    return "corners unsure" if kept.check.corner_confidence < SURE and not by_hand else None


def _is_asked(doubt: Doubt | None, *, by_hand: bool) -> bool:
    """Whoever placed a picture has seen what it shows, but not where its corners were found."""
    return doubt is not None and (not by_hand or doubt == "corners unsure")


def _as_found(brought: Brought, kept: Kept | None) -> SheetOptions | None:
    if kept is None or kept.check is None:
        return None
    return found_options(brought, kept.check)


def found_options(brought: Brought, check: SheetCheck) -> SheetOptions:
    """How a picture is looked at where what was found in it is kept as it is."""
    return replace(brought.options, corners=check.corners, turned=check.turned)


def _corners_may_help(brought: Brought, doubt: Doubt | None) -> bool:
    if doubt == "not checked":
        return brought.options.corners is not None
    return doubt is not None


def shown_slot(slot: Slot, class_set: ClassSet) -> str:
    """A place in words, with the student's code: "14, sheet 1"."""
    student = class_set.class_list.student(slot.number)
    code = str(slot.number) if student is None else student.code
    if slot.what == "sheet":
        text = translate("class set", "{code}, sheet {n}")
    else:
        text = translate("class set", "{code}, worksheet page {n}")
    return text.format(code=code, n=slot.index + 1)


def _sentence(question: Question, class_set: ClassSet) -> str:
    proposal = None if question.proposal is None else shown_slot(question.proposal, class_set)
    place = None if question.place is None else shown_slot(question.place, class_set)
    match question.reason:
        case "place taken":
            if question.same_as is not None and question.same_as == question.there_now:
                text = translate(
                    "class set",
                    "Its ticket says {proposal}; the picture there now shows the same sheet.",
                )
            else:
                text = translate(
                    "class set", "Its ticket says {proposal}, and another picture is there now."
                )
        case "several tickets":
            text = translate("class set", "More than one ticket is to be seen on it: whose is it?")
        case "other class":
            text = translate("class set", "Its ticket belongs to another class list.")
        case "not on the list":
            text = translate("class set", "The number on its ticket is not on this class's list.")
        case "no ticket":
            text = _without_ticket(question)
        case "same sheet":
            text = translate(
                "class set", "It is at {place}, and shows the same sheet as an earlier picture."
            )
            if place is None:
                text = translate("class set", "It shows the same sheet as an earlier picture.")
        case "other sky":
            text = translate("class set", "It is at {place}. Is it a painting of this sky?")
        case "corners unsure":
            text = translate("class set", "It is at {place}. Look at the painting's corners.")
        case "not found":
            text = translate("class set", "It is at {place}. No painting was found in it.")
        case "not checked":
            text = translate("class set", "It is at {place}, and could not be checked.")
        case _:
            assert_never(question.reason)
    return text.format(proposal=proposal, place=place)


def _without_ticket(question: Question) -> str:
    if question.same_as is not None:
        return translate(
            "class set", "No ticket could be read; it shows the same sheet as an earlier picture."
        )
    if question.proposal is not None:
        return translate(
            "class set", "No ticket could be read. By the order of the pictures: {proposal}?"
        )
    return translate("class set", "No ticket could be read: whose is it?")
