"""One student's study worked at beside the class set: what its edits do to the class set."""

from __future__ import annotations

from dataclasses import replace

import pytest
from class_set_tools import TAG, plain_class_set

from core.class_set import edits
from core.class_set.model import Brought, ClassSet, Marking
from core.class_set.placing import place_all
from core.class_set.studies import open_study_of, with_open_study
from core.class_set.ticket import Slot, Ticket
from core.pictures import Picture
from core.sheet.options import SheetOptions
from core.study import SheetEntry, Study, with_sheet, with_worksheet
from core.worksheet.worksheet import with_score

FIRST, SECOND, OTHER = (f"{k:064x}" for k in (1, 2, 3))
SAID = Marking("Calm washes.", "Wetter paper.", "Well done.", "B+", ("late", ""), done=True)


@pytest.fixture
def class_set() -> ClassSet:
    """Both sheets of 01, and one picture of nobody's; 01 is marked."""
    plain, _ = plain_class_set()
    pictures = (
        Brought(Picture("IMG_1.jpg", FIRST), tickets=(Ticket(TAG, 1, "1"),)),
        Brought(Picture("IMG_2.jpg", SECOND), tickets=(Ticket(TAG, 1, "2"),)),
        Brought(Picture("IMG_3.jpg", OTHER)),
    )
    return edits.with_marking(replace(plain, brought=pictures), 1, SAID)


def study_of(class_set: ClassSet) -> Study:
    return open_study_of(class_set, 1, place_all(class_set))


def at(class_set: ClassSet, index: int) -> str | None:
    return place_all(class_set).digest_at(Slot(1, index))


def test_the_remark_is_the_teachers_alone(class_set: ClassSet) -> None:
    study = study_of(class_set)
    assert study.worksheet.remark == "Well done."
    assert study.worksheet.student_code == "01"
    assert [sheet.picture.digest for sheet in study.sheets] == [FIRST, SECOND]


def test_words_and_scores_come_back_and_the_marking_stays(class_set: ClassSet) -> None:
    before = study_of(class_set)
    worksheet = with_score(before.worksheet, 1, "value", 6)
    after = with_worksheet(before, replace(worksheet, remark="Better."))
    done = with_open_study(class_set, 1, before, after)
    assert done.entry(1).worksheet.pages[1].scores.value == 6
    assert done.entry(1).marking == replace(SAID, remark="Better.")
    assert done.entry(1).worksheet.remark == ""  # it is kept once
    assert study_of(done) == after
    assert with_open_study(done, 1, after, before) == class_set  # as undo does
    assert done.entry(2) == class_set.entry(2)
    assert done.exercise == class_set.exercise


def test_corners_come_back(class_set: ClassSet) -> None:
    before = study_of(class_set)
    options = SheetOptions(((0.1, 0.1), (0.9, 0.1), (0.9, 0.9), (0.1, 0.9)), 1)
    after = with_sheet(before, 0, replace(before.sheets[0], options=options))
    done = with_open_study(class_set, 1, before, after)
    assert done.picture(FIRST).options == options
    assert done.picture(FIRST).hand is None  # its ticket still speaks
    assert with_open_study(done, 1, after, before) == class_set


def test_a_sheet_taken_out_is_laid_aside_and_never_lost(class_set: ClassSet) -> None:
    before = study_of(class_set)
    after = with_sheet(before, 1, None)
    done = with_open_study(class_set, 1, before, after)
    assert at(done, 1) is None
    assert done.picture(SECOND).aside
    assert at(with_open_study(done, 1, after, before), 1) == SECOND


def test_a_picture_there_already_takes_the_place_of_another(class_set: ClassSet) -> None:
    before = study_of(class_set)
    after = with_sheet(before, 0, SheetEntry(Picture("IMG_3.jpg", OTHER)))
    done = with_open_study(class_set, 1, before, after)
    assert at(done, 0) == OTHER
    assert done.picture(FIRST).aside
    # One that was not brought in yet changes nothing but what it replaces.
    new = with_sheet(before, 0, SheetEntry(Picture("new.jpg", f"{9:064x}")))
    assert len(with_open_study(class_set, 1, before, new).brought) == 3
