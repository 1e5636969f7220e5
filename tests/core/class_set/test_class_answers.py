"""What bringing in adds beside edits, how questions are answered, and places as they are typed."""

from __future__ import annotations

from dataclasses import replace
from types import SimpleNamespace

import pytest
from class_set_tools import class_list, plain_class_set
from hypothesis import given
from hypothesis import strategies as st

from core.class_set import edits
from core.class_set.answers import answered, replies, reply_word
from core.class_set.arrivals import Arrival, arrival_of, with_arrival
from core.class_set.model import Brought, ClassSet, Marking
from core.class_set.place_text import place_typed
from core.class_set.questions import Question, sort_pictures
from core.class_set.ticket import Slot, Ticket
from core.errors import ClassSetError
from core.pictures import Picture
from core.sheet.options import SheetOptions
from core.worksheet.worksheet import OwnScores, SheetPage, Worksheet

TAG = class_list().tag
FOUND = ((0.2, 0.2), (0.8, 0.2), (0.8, 0.8), (0.2, 0.8))


def brought(k: int, *tickets: Ticket, order: tuple[int, int] | None = None) -> Brought:
    return Brought(Picture(f"IMG_{k}.jpg", f"{k:064x}"), order, tickets)


def with_pictures(*pictures: Brought) -> ClassSet:
    class_set, _ = plain_class_set()
    return replace(class_set, brought=pictures)


def question_of(class_set: ClassSet, digest: str) -> Question:
    return next(
        each for each in sort_pictures(class_set, {}, {}).questions if each.digest == digest
    )


# Arrivals


def test_what_arrives_is_there_beside_what_was_typed() -> None:
    before = with_pictures(brought(1))
    after = edits.with_brought(before, brought(2))
    typed = edits.with_marking(before, 1, Marking(mark="7"))
    both = with_arrival(typed, arrival_of(before, after))
    assert [each.digest for each in both.brought] == [f"{k:064x}" for k in (1, 2)]
    assert both.entry(1).marking.mark == "7"


def test_what_was_placed_by_hand_meanwhile_stays() -> None:
    before = with_pictures(brought(1))
    known = replace(before, brought=(brought(1, order=(0, 3)),))
    arrival = arrival_of(before, known)
    assert with_arrival(before, arrival).brought[0].order == (0, 3)
    placed = edits.place(before, f"{1:064x}", Slot(2, 0))
    assert with_arrival(placed, arrival).brought[0].hand == Slot(2, 0)


def test_a_worksheet_handed_in_arrives_unless_another_was_written() -> None:
    before = with_pictures()
    sheet = Worksheet(pages=(SheetPage(OwnScores(6, 6, 6)), SheetPage()))
    arrival = arrival_of(before, edits.with_worksheet(before, 1, sheet))
    assert with_arrival(before, arrival).entry(1).worksheet == sheet
    other = Worksheet(pages=(SheetPage(OwnScores(9, 9, 9)), SheetPage()))
    own = edits.with_worksheet(before, 1, other)
    assert with_arrival(own, arrival).entry(1).worksheet == other


@given(st.lists(st.integers(1, 8), max_size=6), st.lists(st.integers(1, 8), max_size=6))
def test_an_arrival_makes_the_one_class_set_the_other(old: list[int], new: list[int]) -> None:
    before, after = plain_class_set()[0], plain_class_set()[0]
    after = replace(after, class_list=before.class_list)
    for k in old:
        before = edits.with_brought(before, brought(k))
        after = edits.with_brought(after, brought(k))
    for k in new:
        after = edits.with_brought(after, brought(k))
    arrival = arrival_of(before, after)
    assert with_arrival(before, arrival) == after
    assert with_arrival(after, arrival) == after
    assert arrival_of(after, after) == Arrival()


# Answers


def test_two_pictures_for_one_place_leave_one() -> None:
    class_set = with_pictures(brought(1, Ticket(TAG, 1, "1")), brought(2, Ticket(TAG, 1, "1")))
    question = question_of(class_set, f"{2:064x}")
    assert replies(question)[:2] == ("this", "other")
    for reply, stays in (("this", 2), ("other", 1)):
        after = sort_pictures(answered(class_set, question, reply), {}, {})
        assert after.placement.digest_at(Slot(1, 0)) == f"{stays:064x}"
        assert after.questions == ()


def test_the_first_answer_takes_the_proposal() -> None:
    page = Ticket(TAG, 1, "A")
    class_set = with_pictures(
        brought(1, page, order=(0, 0)),
        brought(2, order=(0, 1)),
        brought(3, order=(0, 2)),
    )
    question = question_of(class_set, f"{2:064x}")
    assert question.proposal == Slot(1, 0)
    assert replies(question)[0] == "yes"
    after = answered(class_set, question, "yes")
    assert sort_pictures(after, {}, {}).placement.digest_at(Slot(1, 0)) == f"{2:064x}"


def test_laid_aside_is_not_asked_again() -> None:
    class_set = with_pictures(brought(1))
    question = question_of(class_set, f"{1:064x}")
    assert replies(question) == ("elsewhere", "aside")
    assert answered(class_set, question, "elsewhere") == class_set
    assert sort_pictures(answered(class_set, question, "aside"), {}, {}).questions == ()


def test_a_picture_that_stays_where_it_is_is_not_asked_again() -> None:
    ticket = Ticket(TAG, 1, "1")
    class_set = with_pictures(brought(1, ticket), brought(2, Ticket(TAG, 2, "1")))
    same = {f"{2:064x}": f"{1:064x}"}
    question = sort_pictures(class_set, {}, same).questions[0]
    assert (question.reason, replies(question)[0]) == ("same sheet", "both")
    after = answered(class_set, question, "both")
    assert sort_pictures(after, {}, same).questions == ()


def unsure(*, corners: bool = False) -> tuple[ClassSet, Question]:
    """A sheet at its place whose corners were found, but not surely."""
    options = SheetOptions(corners=FOUND) if corners else SheetOptions()
    class_set = with_pictures(replace(brought(1, Ticket(TAG, 1, "1")), options=options))
    question = Question(
        f"{1:064x}", "corners unsure", Slot(1, 0), found=SheetOptions(FOUND, 2), corners=True
    )
    return class_set, question


def test_unsure_corners_are_kept_or_set_by_hand() -> None:
    class_set, question = unsure()
    assert replies(question) == ("keep", "corners", "elsewhere", "aside")
    after = answered(class_set, question, "keep")
    assert after.picture(question.digest).options == SheetOptions(FOUND, 2)
    assert answered(class_set, question, "corners") == class_set  # the editor does it


@pytest.mark.parametrize(("reason", "first"), [("not found", "corners"), ("other sky", "right")])
def test_where_corners_may_be_wrong_they_can_be_set(reason, first: str) -> None:
    question = Question(f"{1:064x}", reason, Slot(1, 0), corners=True)
    assert replies(question)[0] == first
    assert "corners" in replies(question)
    # Also where such a picture has lost the place that followed from the order.
    lost = Question(f"{1:064x}", "no ticket", proposal=Slot(1, 0), corners=True)
    assert replies(lost) == ("yes", "corners", "elsewhere", "aside")


@pytest.mark.parametrize("by_hand", [False, True])
def test_corners_are_asked_until_they_are_set_though_the_place_is_by_hand(by_hand: bool) -> None:
    check = SimpleNamespace(
        notices=(), corner_confidence=0.1, corners=FOUND, turned=0, provisional=True
    )
    for corners, count in ((False, 1), (True, 0)):
        class_set, question = unsure(corners=corners)
        if by_hand:
            class_set = edits.place(class_set, question.digest, Slot(1, 0))
        found = sort_pictures(class_set, {question.digest: SimpleNamespace(check=check)}, {})
        assert len(found.questions) == count
        assert found.placement.digest_at(Slot(1, 0)) == question.digest
        if count:
            assert found.questions[0].found == SheetOptions(FOUND)
            assert found.questions[0].corners


def test_an_answer_that_was_not_offered_is_a_mistake_of_ours() -> None:
    class_set = with_pictures(brought(1))
    with pytest.raises(ValueError, match="not answered"):
        answered(class_set, question_of(class_set, f"{1:064x}"), "yes")


def test_every_answer_has_a_word() -> None:
    words = [reply_word(r) for r in ("yes", "this", "other", "both", "right", "aside", "elsewhere")]
    assert "" not in words
    assert len(set(words)) == len(words)


# Typed places


@pytest.mark.parametrize(
    ("text", "slot"),
    [
        ("2 1", Slot(2, 0)),
        ("02/2", Slot(2, 1)),
        (" 3  w2 ", Slot(3, 1, "page")),
        ("3/W1", Slot(3, 0, "page")),
        ("2", None),
        ("2 3", None),
        ("", None),
    ],
)
def test_a_place_as_it_is_typed(text: str, slot: Slot | None) -> None:
    assert place_typed(text, class_list()) == slot


def test_a_code_nobody_has_is_told() -> None:
    with pytest.raises(ClassSetError, match="no student 77"):
        place_typed("77 1", class_list())
