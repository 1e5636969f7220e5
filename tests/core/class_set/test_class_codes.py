"""Tickets: what a code says, that it is read, and that nothing else is taken for one."""

from __future__ import annotations

import numpy as np
import pytest
from class_set_tools import TAG, sheet_jpeg
from hypothesis import given
from hypothesis import strategies as st
from simulator.codes import code_shot

from core.class_set.codes import QUIET, SIDE, code_modules, read_tickets, tickets_of_picture
from core.class_set.students import class_list_of, codes_from, looks_like_name
from core.class_set.ticket import TAG_LETTERS, Slot, Ticket, new_tag, ticket_of, ticket_text
from core.errors import ClassSetError
from core.photo import open_photo

tickets = st.builds(
    Ticket,
    st.text(TAG_LETTERS, min_size=4, max_size=4),
    st.integers(1, 99),
    st.sampled_from("12ABCDEFGH"),
)


@given(tickets)
def test_text_says_the_ticket(ticket: Ticket) -> None:
    assert ticket_of(ticket_text(ticket)) == ticket


@given(st.text(max_size=12))
def test_other_texts_are_no_tickets(text: str) -> None:
    found = ticket_of(text)
    assert found is None or ticket_text(found) == text


def test_corners_of_a_page_name_one_place() -> None:
    assert {Ticket(TAG, 14, kind).slot for kind in "ABCD"} == {Slot(14, 0, "page")}
    assert {Ticket(TAG, 14, kind).slot for kind in "EFGH"} == {Slot(14, 1, "page")}
    assert Ticket(TAG, 14, "2").slot == Slot(14, 1, "sheet")


def test_tags_differ_and_hold_no_letters_taken_for_others() -> None:
    tags = {new_tag() for _ in range(200)}
    assert len(tags) > 190
    assert not set("".join(tags)) & set("01IO")


def test_code_is_the_smallest_with_a_quarter_to_spare() -> None:
    """ISO/IEC 18004: version 1 has 21 modules; level Q bears a quarter of them lost. The three
    finder patterns stand in their corners."""
    modules = code_modules(Ticket(TAG, 14, "1"))
    assert modules.shape == (SIDE, SIDE)
    finder = np.ones((7, 7), bool)
    finder[1:6, 1:6], finder[2:5, 2:5] = False, True
    for part in (modules[:7, :7], modules[:7, -7:], modules[-7:, :7]):
        assert (part == finder).all()
    # Two module columns of the data lost: still read (level Q corrects about 25 %).
    spoilt = np.pad(modules, QUIET)
    spoilt[QUIET + 12 : QUIET + 15, QUIET + 9 : QUIET + 14] ^= True
    grey = np.kron(np.where(spoilt, 0, 255).astype(np.uint8), np.ones((6, 6), np.uint8))
    assert read_tickets(grey) == (Ticket(TAG, 14, "1"),)


@pytest.mark.parametrize("turn", [0, 1, 2, 3])
def test_ticket_is_read_whichever_way_the_picture_lies(turn: int) -> None:
    photo = open_photo(sheet_jpeg(Ticket(TAG, 3, "2")))
    grey = np.rot90(photo.pixels[..., 1], turn)
    assert read_tickets(np.ascontiguousarray(grey)) == (Ticket(TAG, 3, "2"),)


@pytest.mark.parametrize("seed", [1, 29, 264, 2, 3])
def test_a_ticket_is_read_from_what_a_messenger_made_small(seed: int) -> None:
    """1280 pixels, a module hardly three of them wide; the first three were once missed."""
    ticket = Ticket("7K3Q", 1 + seed % 99, "12"[seed % 2])
    shot = code_shot(ticket, 20.0, "1280", np.random.default_rng([31000, seed, 4]))
    assert read_tickets(shot) == (ticket,)


def test_picture_without_ticket_has_none() -> None:
    data = sheet_jpeg(None)
    assert tickets_of_picture(open_photo(data), data) == ()


def test_ranges_lists_and_files_give_codes(tmp_path) -> None:
    assert codes_from("01-30")[-1] == "30"
    assert codes_from("1-3") == ("1", "2", "3")
    file = tmp_path / "codes.csv"
    file.write_text("code;group\nK7;a\notter;b\n\n", encoding="utf-8")
    assert codes_from(str(file)) == ("K7", "otter")


def test_numbers_stand_on_the_tickets_where_they_can() -> None:
    assert [s.number for s in class_list_of(("07", "12", "09")).students] == [7, 12, 9]
    assert [s.number for s in class_list_of(("K7", "12")).students] == [1, 2]


@pytest.mark.parametrize("code", ["14", "014", " 14 ", "k7", "K7"])
def test_codes_are_found_as_people_write_them(code: str) -> None:
    assert class_list_of(("14", "K7")).with_code(code) is not None


@pytest.mark.parametrize(
    ("codes", "words"),
    [
        ((), "no code"),
        (("1", "01"), "twice"),
        (("Anna Berg",), "looks like a name"),
        (tuple(str(k) for k in range(1, 102)), "99 students"),
        (("x" * 60,), "too long"),
        (("a\x07b",), "printed"),
    ],
)
def test_wrong_lists_are_refused_in_one_sentence(codes: tuple[str, ...], words: str) -> None:
    with pytest.raises(ClassSetError, match=words):
        class_list_of(codes)


def test_a_name_is_taken_when_the_teacher_says_so() -> None:
    assert looks_like_name("Anna Berg")
    assert class_list_of(("Anna Berg",), names_too=True).students[0].code == "Anna Berg"
