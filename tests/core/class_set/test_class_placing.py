"""Whose a picture is: the rules one by one, then whole simulated evenings."""

from __future__ import annotations

import io
from dataclasses import replace

import pytest
from class_set_tools import TAG, phone_exif, plain_class_set
from PIL import Image
from simulator.pairing import evening_set, outcome_of

from core.class_set import edits
from core.class_set.model import Brought, ClassSet
from core.class_set.moment import Moment, moment_of, orders_by_time
from core.class_set.placing import place_all
from core.class_set.questions import sort_pictures
from core.class_set.ticket import Slot, Ticket
from core.errors import ClassSetError
from core.pictures import Picture

KINDS = {"sheet": "12", "page": "AE"}


def shot(name: str, place: str = "", order: int | None = None, tag: str = TAG) -> Brought:
    """A picture; `place` as "3/1" for a sheet's ticket, "3/w1" for a page's."""
    found: tuple[Ticket, ...] = ()
    if place:
        number, sheet = place.split("/")
        kind = "AE"[int(sheet[1]) - 1] if sheet[0] == "w" else sheet
        found = (Ticket(tag, int(number), kind),)
    digest = (name.encode().hex() + "0" * 64)[:64]
    return Brought(Picture(f"{name}.jpg", digest), None if order is None else (0, order), found)


def set_of(*brought: Brought) -> ClassSet:
    return replace(plain_class_set()[0], brought=brought)


def test_own_ticket_gives_the_place() -> None:
    class_set = set_of(shot("a", "1/1"), shot("b", "1/2"), shot("c", "1/w1"))
    placement = place_all(class_set)
    assert placement.asked == ()
    assert placement.digest_at(Slot(1, 0)) == class_set.brought[0].digest
    assert placement.digest_at(Slot(1, 1)) == class_set.brought[1].digest
    assert placement.digest_at(Slot(1, 0, "page")) == class_set.brought[2].digest


def test_two_pictures_for_one_place_are_asked_and_none_is_lost() -> None:
    class_set = set_of(shot("a", "1/1"), shot("b", "1/1"))
    (asked,) = place_all(class_set).asked
    assert (asked.reason, asked.proposal) == ("place taken", Slot(1, 0))
    assert asked.there_now == class_set.brought[0].digest


@pytest.mark.parametrize(
    ("place", "tag", "reason"),
    [
        ("1/1", "ZZZZ", "other class"),
        ("77/1", TAG, "not on the list"),
        ("", TAG, "no ticket"),
    ],
)
def test_what_no_ticket_settles_is_asked(place: str, tag: str, reason: str) -> None:
    (question,) = sort_pictures(set_of(shot("a", place, tag=tag))).questions
    assert question.reason == reason
    assert question.sentence.endswith((".", "?"))
    assert "{" not in question.sentence


def test_two_tickets_in_one_picture_are_asked() -> None:
    both = replace(shot("a"), tickets=(Ticket(TAG, 1, "1"), Ticket(TAG, 2, "1")))
    (asked,) = place_all(set_of(both)).asked
    assert asked.reason == "several tickets"


def test_a_ticket_beside_its_own_page_proposes_what_the_picture_shows() -> None:
    both = replace(shot("a"), tickets=(Ticket(TAG, 1, "1"), Ticket(TAG, 1, "A")))
    assert place_all(set_of(both)).asked[0].proposal == Slot(1, 0)
    page = replace(both, looks_like="page")
    assert place_all(set_of(page)).asked[0].proposal == Slot(1, 0, "page")


def test_a_picture_alone_between_pages_follows_its_page() -> None:
    class_set = set_of(
        shot("p1", "1/w1", 0), shot("s1", "", 1), shot("p2", "2/w1", 2), shot("s2", "", 3)
    )
    placement = place_all(class_set)
    assert placement.places[Slot(1, 0)].how == "follows"
    assert placement.digest_at(Slot(2, 0)) == class_set.brought[3].digest


def test_nothing_follows_where_the_order_is_not_known() -> None:
    class_set = set_of(shot("p1", "1/w1"), shot("s1"), shot("p2", "2/w1"))
    assert [asked.reason for asked in place_all(class_set).asked] == ["no ticket"]


def test_a_sheet_taken_before_its_own_page_is_asked() -> None:
    """Page 1's sheet is missing, sheet 2 came before its page: the gap must not be filled."""
    class_set = set_of(
        shot("p1", "1/w1", 0), shot("s2", "", 1), shot("p2", "2/w1", 2), shot("p3", "3/w1", 3)
    )
    (asked,) = place_all(class_set).asked
    assert asked.digest == class_set.brought[1].digest


def test_two_without_tickets_after_a_page_are_asked_with_the_page_proposed() -> None:
    class_set = set_of(shot("p1", "1/w1", 0), shot("a", "", 1), shot("b", "", 2))
    assert [asked.proposal for asked in place_all(class_set).asked] == [Slot(1, 0), Slot(1, 0)]


def test_an_unread_ticket_between_two_students_gets_the_one_free_place() -> None:
    class_set = set_of(
        shot("a", "1/1", 0), shot("b", "1/2", 1), shot("c", "2/1", 2), shot("d", "", 3)
    )
    (asked,) = place_all(class_set).asked
    assert asked.proposal == Slot(2, 1)
    assert asked.between == (Slot(2, 0), None)


def test_by_hand_comes_before_any_ticket_and_can_be_taken_back() -> None:
    class_set = set_of(shot("a", "1/1"), shot("b", "1/1"))
    first, second = (each.digest for each in class_set.brought)
    moved = edits.place(class_set, second, Slot(1, 0))
    assert place_all(moved).digest_at(Slot(1, 0)) == second
    assert [asked.digest for asked in place_all(moved).asked] == [first]
    assert place_all(edits.lay_aside(moved, first)).asked == ()
    assert place_all(edits.let_decide(moved, second)) == place_all(class_set)


def test_a_place_holds_one_picture_put_there_by_hand() -> None:
    class_set = set_of(shot("a"), shot("b"))
    first, second = (each.digest for each in class_set.brought)
    class_set = edits.place(edits.place(class_set, first, Slot(1, 0)), second, Slot(1, 0))
    assert place_all(class_set).digest_at(Slot(1, 0)) == second
    assert [asked.digest for asked in place_all(class_set).asked] == [first]


def test_no_place_for_a_student_who_is_not_there() -> None:
    class_set = set_of(shot("a"))
    with pytest.raises(ClassSetError, match="no student 9"):
        edits.place(class_set, class_set.brought[0].digest, Slot(9, 0))


def test_cameras_are_not_put_in_one_order() -> None:
    """Two clocks: the order within each camera is known, between them it is not."""
    moments = [Moment(f"2027:03:18 10:00:{s:02d}.0", c) for s, c in ((1, "x"), (2, "y"), (3, "x"))]
    orders = orders_by_time(moments)
    assert orders[0] is not None
    assert orders[1] is not None
    assert orders[0][0] != orders[1][0]


@pytest.mark.parametrize("form", ["JPEG", "PNG", "WEBP"])
def test_the_moment_is_read_from_every_kind_of_picture(form: str) -> None:
    buffer = io.BytesIO()
    exif = phone_exif("2027:03:18 10:15:02").tobytes()
    Image.new("RGB", (40, 30)).save(buffer, form, exif=exif)
    moment = moment_of(buffer.getvalue())
    assert moment == Moment("2027:03:18 10:15:02.0", "Lumenix/Model Nine")


@pytest.mark.parametrize("data", [b"", b"no picture", b"\xff\xd8\xff\xe1\x00\x10Exif\0\0II"])
def test_what_has_no_moment_has_none(data: bytes) -> None:
    assert moment_of(data) is None


def test_a_clock_that_stands_still_tells_nothing() -> None:
    moments = [Moment("2027:03:18 10:00:00.0", "x")] * 5
    assert orders_by_time(moments) == [None] * 5


@pytest.mark.parametrize(("tickets", "most_wrong"), [(True, 0.0), (False, 0.1)])
def test_simulated_evenings_place_nothing_wrongly(tickets: bool, most_wrong: float) -> None:
    """A small version of `benchmarks/class_set.py pairing`: other seeds, 40 evenings."""
    total = sum((outcome_of(*evening_set(seed, tickets)) for seed in range(40)), start=_none())
    assert total.wrong / 40 <= most_wrong
    assert total.placed > (0.9 if tickets else 0.75) * total.pictures


def _none():
    from simulator.pairing import Tally

    return Tally()
