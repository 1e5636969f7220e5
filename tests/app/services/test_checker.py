from __future__ import annotations

from dataclasses import replace

import pytest
from sheet_tools import add_sheet, open_sky, painted, score_sheet, wait_for_checks

from core.bands.lines import Bands, move_line
from core.pictures import Picture
from core.sheet.result import SheetOptions
from core.study import SheetEntry, with_bands, with_sheet, with_worksheet
from core.worksheet.worksheet import with_page


@pytest.fixture
def lesson(window, qtbot, tmp_path):
    """The window with a sky of four bands and its true lines."""
    open_sky(window, tmp_path, qtbot)
    return window


def shifts(check) -> list[float | None]:
    return [line.shift_pct for line in check.lines]


def test_nothing_is_checked_without_sheets(lesson) -> None:
    assert lesson.workspace.checker is lesson.checker
    assert lesson.checker.checks == (None, None)
    assert lesson.checker.change is None
    assert not lesson.checker.working


def test_a_sheet_is_checked_against_the_lines_as_they_are(lesson, qtbot) -> None:
    checker, document = lesson.checker, lesson.document
    case = painted(raised=0.05)
    with qtbot.waitSignal(checker.checks_changed, timeout=30_000):
        add_sheet(lesson, 0, case)
        assert checker.working
    first = checker.checks[0]
    assert len(first.lines) == 3
    told = [shift for shift in shifts(first) if shift is not None]
    assert told
    assert all(-6.5 < shift < -3.5 for shift in told)
    assert checker.pictures[0].levels[0].height() == first.picture.shape[0]
    assert checker.opened(0).photo.name == "sheet 1.jpg"

    # A line of the sky moves: the old check stays until the new one has come.
    moved = with_bands(document.study, move_line(document.study.bands, 1, 0.6))
    document.change("move line", moved)
    assert checker.checks[0] is first
    wait_for_checks(lesson, qtbot)
    second = checker.checks[0]
    assert second is not first
    assert second.lines[1].should == pytest.approx(document.study.bands.lines[1])

    # What was checked before is known, also after undo.
    document.stack.undo()
    wait_for_checks(lesson, qtbot)
    assert checker.checks[0] is first


def test_options_are_looked_at_and_a_new_picture_forgets_the_old_check(lesson, qtbot) -> None:
    checker, document = lesson.checker, lesson.document
    add_sheet(lesson, 0, painted())
    wait_for_checks(lesson, qtbot)
    assert not checker.checks[0].scan
    entry = document.study.sheets[0]
    scan = replace(entry, options=SheetOptions(scan=True))
    document.change("flat scan", with_sheet(document.study, 0, scan))
    assert checker.checks[0] is not None
    wait_for_checks(lesson, qtbot)
    assert checker.checks[0].scan

    add_sheet(lesson, 0, painted(raised=0.05))
    assert checker.checks[0] is None
    wait_for_checks(lesson, qtbot)
    assert checker.checks[0] is not None
    document.change("remove", with_sheet(document.study, 0, None))
    assert checker.checks == (None, None)
    assert not checker.running(0)


def test_two_sheets_are_compared_and_the_intended_change_is_looked_for(lesson, qtbot) -> None:
    checker, document = lesson.checker, lesson.document
    add_sheet(lesson, 0, painted(raised=0.06))
    add_sheet(lesson, 1, painted())
    wait_for_checks(lesson, qtbot)
    assert checker.change.intended is None
    placement = [row for row in checker.change.rows if row.about == "placement"]
    assert {row.outcome for row in placement} >= {"improved"}

    seen = []
    checker.checks_changed.connect(lambda: seen.append(checker.change))
    worksheet = document.study.worksheet
    page = replace(worksheet.pages[0], change_first="placement")
    document.change("change first", with_worksheet(document.study, with_page(worksheet, 0, page)))
    assert seen
    assert checker.change.intended == "placement"
    assert checker.change.worked == "improved"

    document.change("remove", with_sheet(document.study, 1, None))
    assert checker.change is None


def test_findings_open_with_the_students_own_scores_or_by_the_teacher(lesson) -> None:
    checker = lesson.checker
    told = []
    checker.opened_changed.connect(lambda: told.append((checker.is_open(0), checker.is_open(1))))
    assert not checker.is_open(0)
    score_sheet(lesson, 0)
    assert told == [(True, False)]
    checker.show_measured = True
    assert checker.is_open(1)
    checker.show_measured = True
    assert told == [(True, False), (True, True)]
    checker.show_measured = False
    lesson.document.stack.undo()
    assert told[-1] == (False, False)


def test_a_check_can_be_called_off_and_asked_for_again(lesson, qtbot) -> None:
    checker = lesson.checker
    add_sheet(lesson, 0, painted())
    qtbot.waitUntil(lambda: checker.running(0), timeout=10_000)
    with qtbot.waitSignal(checker.checks_changed):
        checker.cancel(0)
    assert checker.stopped(0)
    assert not checker.working
    assert checker.checks[0] is None
    checker.check_now(0)
    assert not checker.stopped(0)
    wait_for_checks(lesson, qtbot)
    assert checker.checks[0] is not None


def test_what_cannot_be_checked_says_so_in_a_sentence(lesson, qtbot) -> None:
    checker, document = lesson.checker, lesson.document
    lost = SheetEntry(Picture("gone.jpg", "0" * 64))
    document.change("add sheet", with_sheet(document.study, 0, lost))
    wait_for_checks(lesson, qtbot)
    assert "gone.jpg" in checker.failure(0)
    crossed = SheetOptions(corners=((0.1, 0.1), (0.9, 0.9), (0.9, 0.1), (0.1, 0.9)))
    add_sheet(lesson, 1, painted(), crossed)
    wait_for_checks(lesson, qtbot)
    assert "corners" in checker.failure(1)
    assert checker.checks == (None, None)
    # Its picture is there all the same, so that the corners can be set.
    assert checker.opened(1) is not None
    mended = replace(document.study.sheets[1], options=SheetOptions())
    document.change("reset", with_sheet(document.study, 1, mended))
    wait_for_checks(lesson, qtbot)
    assert checker.failure(1) == ""
    assert checker.checks[1] is not None


def test_another_photo_forgets_everything(lesson, qtbot, tmp_path) -> None:
    add_sheet(lesson, 0, painted())
    wait_for_checks(lesson, qtbot)
    lesson.document.stack.setClean()  # or opening asks whether to save
    open_sky(lesson, tmp_path, qtbot)
    assert lesson.checker.checks == (None, None)


def test_a_sky_of_one_band_is_checked_too(lesson, qtbot) -> None:
    document = lesson.document
    document.change("one band", with_bands(document.study, Bands(1.0, ())))
    add_sheet(lesson, 0, painted())
    wait_for_checks(lesson, qtbot)
    assert lesson.checker.checks[0].lines == ()
    assert len(lesson.checker.checks[0].band_checks) == 1
