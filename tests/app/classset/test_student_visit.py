"""One student of the class set on the Sheets and Worksheet pages, and the way to the next."""

from __future__ import annotations

from dataclasses import fields, replace
from pathlib import Path

import pytest
from class_set_tools import TAG, sheet_jpeg
from classset_tools import checked_class_of, open_copy, settle
from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence
from window_tools import answer

import core.sheet
from app.files import files_ask
from core import mixing
from core.bands.lines import Bands
from core.class_set.bringing import files_in
from core.class_set.folder import read_class_set
from core.class_set.kept_checks import check_key
from core.class_set.ticket import Slot, Ticket
from core.lesson.lesson import Hands
from core.paint.box.box import GENERIC_BOXES
from core.sheet.result import SheetOptions
from core.study import (
    SheetEntry,
    Study,
    WheelPlace,
    with_bands,
    with_hands,
    with_sheet,
    with_title,
    with_wheel,
    with_worksheet,
)
from core.worksheet.worksheet import SheetPage, Worksheet, with_page, with_score


@pytest.fixture(scope="module")
def two_students(tmp_path_factory) -> Path:
    """Both sheets of 01, sheet 1 of 02, none of 03; checked."""
    where = tmp_path_factory.mktemp("class")
    (where / "in").mkdir()
    for k, ticket in enumerate((Ticket(TAG, 1, "1"), Ticket(TAG, 1, "2"), Ticket(TAG, 2, "1"))):
        (where / "in" / f"IMG_{k}.jpg").write_bytes(sheet_jpeg(ticket, seed=k))
    return checked_class_of(where, files_in([where / "in"]), 3)


@pytest.fixture
def page(window, qtbot, tmp_path, monkeypatch, two_students):
    page = open_copy(window, qtbot, monkeypatch, two_students, tmp_path / "7b")
    page.show_part("pin_up")
    window.activateWindow()
    return page


def trigger(window, keys: str) -> None:
    """Whatever has this key."""
    wanted = QKeySequence(keys)
    action = next(one for one in window.actions() if one.shortcut() == wanted)
    assert action.isEnabled()
    action.trigger()


def visit(window, qtbot, keys: str = "F7") -> None:
    """From the Class page to the chosen student."""
    trigger(window, keys)
    quiet(window, qtbot)


def quiet(window, qtbot) -> None:
    """Until the student is there, the photo read, the sheets checked, all saved."""

    def still() -> bool:
        return not (
            window.desk.working or window.reader.working or window.checker.working
        ) and bool(window._student.visit.number)

    qtbot.waitUntil(still, timeout=60_000)


def shown(window) -> str:
    return next(key for key in ("sheets", "worksheet", "classset", "read")
                if window._stack.currentWidget().page is window.page(key))  # fmt: skip


def test_the_chosen_student_is_shown_and_the_next_one_is_a_key_away(page, window, qtbot) -> None:
    visit(window, qtbot)
    assert window.header.title == "7b, student 01"
    assert window.document.study.worksheet.student_code == "01"
    assert all(window.document.study.sheets)
    back, on = window.header.steps
    assert (back.isVisible(), back.isEnabled(), on.isEnabled()) == (True, False, True)
    trigger(window, "Alt+Right")
    qtbot.waitUntil(lambda: window.header.title == "7b, student 02", timeout=20_000)
    assert window.document.study.sheets[1] is None
    qtbot.mouseClick(on, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: window.header.title == "7b, student 03", timeout=20_000)
    assert not on.isEnabled()
    trigger(window, "F9")
    assert page.part.student == 2  # the one who was looked at last
    assert not back.isVisible()
    trigger(window, "F8")
    assert window.header.title == "7b, student 03"
    trigger(window, "Alt+Left")
    qtbot.waitUntil(lambda: window.header.title == "7b, student 02", timeout=20_000)
    quiet(window, qtbot)
    # What is the class's bears the class's name.
    window.show_page(0)
    assert window.header.title == "7b, sky"


def test_whose_work_it_is_stands_between_the_arrows_where_the_title_has_no_room(
    page, window, qtbot, monkeypatch
) -> None:
    visit(window, qtbot)
    header = window.header
    assert header._title.text() == "7b, student 01"
    assert not header.who.isVisible()
    with monkeypatch.context() as patch:
        # As with large text and long words: there is no room for the title.
        patch.setattr(header._title, "width", lambda: 20)
        header._elide()
    assert header._title.text() == ""
    assert header.who.isVisible()
    assert header.who.text() == "01"
    assert header.steps[0].x() < header.who.x() < header.steps[1].x()
    assert header.who.width() >= header.who.sizeHint().width()
    trigger(window, "F9")
    assert not header.who.isVisible()


def test_the_class_sets_own_checks_are_shown(page, window, qtbot, monkeypatch) -> None:
    def check(*_: object, **__: object) -> None:
        raise AssertionError("it was checked before")

    monkeypatch.setattr(core.sheet, "check_sheet", check)
    visit(window, qtbot)
    digest = page.desk.sorted.placement.digest_at(Slot(1, 0))
    mine, its = window.checker.checks[0], page.desk.checks[digest].check
    assert mine.findings == its.findings
    assert mine.picture.size > 0
    assert window.checker.pictures[0] is not None


def test_scores_and_remark_reach_the_class_set_and_can_be_undone(page, window, qtbot) -> None:
    visit(window, qtbot, "F8")
    study = window.document.study
    worksheet = with_score(study.worksheet, 0, "hue", 7)
    window.document.change("score", with_worksheet(study, replace(worksheet, remark="Calm.")))
    assert not window.files.must_ask
    entry = page.desk.class_set.entry(1)
    assert entry.worksheet.pages[0].scores.hue == 7
    assert entry.marking.remark == "Calm."
    assert (entry.worksheet.student_code, entry.worksheet.remark) == ("", "")
    settle(window, qtbot)
    assert read_class_set(page.desk.path).entry(1) == entry
    assert not window.document.unsaved
    window.document.stack.undo()
    assert page.desk.class_set.entry(1).worksheet.pages[0].scores.hue is None
    assert page.desk.class_set.entry(1).marking.remark == ""


def test_what_was_said_on_the_class_page_is_there_when_one_comes_back(page, window, qtbot) -> None:
    visit(window, qtbot, "F8")
    trigger(window, "F9")
    page.part.edit("remark", "Softer edges.")
    trigger(window, "F8")
    qtbot.waitUntil(
        lambda: window.document.study.worksheet.remark == "Softer edges.", timeout=20_000
    )
    quiet(window, qtbot)


def test_corners_set_on_the_sheets_page_are_the_class_sets(page, window, qtbot) -> None:
    visit(window, qtbot)
    study = window.document.study
    sheet = study.sheets[0]
    found = window.checker.checks[0].corners
    moved = ((found[0][0] + 0.01, found[0][1]), *found[1:])
    options = replace(sheet.options, corners=moved)
    window.document.change("corners", with_sheet(study, 0, replace(sheet, options=options)))
    quiet(window, qtbot)
    digest = sheet.picture.digest
    assert page.desk.class_set.picture(digest).options.corners == moved
    assert page.desk.checks[digest].check.corners == moved


def test_a_sheet_taken_out_is_laid_aside_and_one_put_in_is_brought(page, window, qtbot) -> None:
    visit(window, qtbot)
    study = window.document.study
    digest = study.sheets[1].picture.digest
    window.document.change("remove", with_sheet(study, 1, None))
    assert page.desk.class_set.picture(digest).aside
    window.document.stack.undo()
    assert page.desk.sorted.placement.digest_at(Slot(1, 1)) == digest
    picture = window.pictures.add("IMG_9.jpg", sheet_jpeg(None, seed=9))
    sheet = replace(study.sheets[1], picture=picture)
    window.document.change("replace", with_sheet(study, 1, sheet))
    quiet(window, qtbot)
    placed = page.desk.sorted.placement.digest_at(Slot(1, 1))
    assert placed not in (None, digest)
    assert page.desk.class_set.picture(digest).aside
    assert page.desk.picture_path(placed).is_file()
    assert placed in page.desk.checks


@pytest.mark.parametrize("again", [True, False])
def test_lines_are_the_whole_classs_and_asked_about_once(page, window, qtbot, again) -> None:
    visit(window, qtbot)
    before = page.desk.class_set.exercise.bands
    lines = Bands(1.0, (0.3, 0.6))
    study = window.document.study
    window.document.change("line", with_bands(study, lines))
    assert page.desk.class_set.exercise.bands == before
    answer(qtbot, "Check them again" if again else "Put the lines back")
    wanted = lines if again else before
    qtbot.waitUntil(
        lambda: (
            not window._student.visit._rest.isActive()
            and window.document.study.bands == wanted
            and page.desk.class_set.exercise.bands == wanted
        ),
        timeout=20_000,
    )
    quiet(window, qtbot)
    assert page.desk.unchecked == 0
    if again:
        language = "en"
        for each in page.desk.class_set.brought:
            key = check_key(each, page.desk.class_set.exercise, language)
            assert page.desk.checks[each.digest].key == key


def test_another_study_leaves_the_student_and_the_class_as_they_are(
    page, window, qtbot, tmp_path
) -> None:
    visit(window, qtbot)
    before = page.desk.class_set
    window.opener.open_sample("quay")
    qtbot.waitUntil(lambda: window._student.visit.number is None, timeout=20_000)
    qtbot.waitUntil(lambda: not window.reader.working, timeout=20_000)
    assert "student" not in window.header.title
    assert not window.header.steps[0].isVisible()
    assert page.desk.class_set == before
    study = window.document.study
    window.document.change("remark", with_worksheet(study, replace(study.worksheet, remark="x")))
    assert page.desk.class_set == before
    assert window.files.must_ask
    window.document.mark_saved()


def test_saved_as_a_file_it_is_that_files_from_then_on(
    page, window, qtbot, tmp_path, monkeypatch
) -> None:
    visit(window, qtbot)
    window.files.save()  # says that it is kept, and asks nothing
    assert "kept in the class set" in window.notice_display.text
    path = tmp_path / "out.gradewash"
    monkeypatch.setattr(files_ask, "ask_save_path", lambda *_: path)
    before = page.desk.class_set
    window.files.save_as()
    qtbot.waitUntil(lambda: window.files.path == path, timeout=20_000)
    assert window._student.visit.number is None
    assert page.desk.class_set == before
    study = window.document.study
    assert study.worksheet.student_code == "01"
    window.document.change("remark", with_worksheet(study, replace(study.worksheet, remark="x")))
    assert page.desk.class_set == before
    window.document.mark_saved()


def test_closing_the_class_set_leaves_the_exercise_without_anybodys_work(
    page, window, qtbot
) -> None:
    visit(window, qtbot)
    window.desk.close()
    qtbot.waitUntil(lambda: window.desk.class_set is None, timeout=20_000)
    study = window.document.study
    assert study.sheets == (None, None)
    assert study.worksheet.student_code == ""
    assert study.photo is not None
    assert not window.files.must_ask
    assert window._student.visit.number is None


def test_unsaved_work_of_another_study_is_asked_about_first(page, window, qtbot) -> None:
    window.opener.open_sample("quay")
    qtbot.waitUntil(lambda: window.reader.sky is not None, timeout=20_000)
    qtbot.waitUntil(lambda: not window.reader.working, timeout=20_000)
    study = window.document.study
    window.document.change("remark", with_worksheet(study, replace(study.worksheet, remark="x")))
    window.show_page(window._class_index)
    trigger(window, "F7")
    answer(qtbot, "Cancel")
    assert window.document.study.worksheet.remark == "x"
    assert window._student.visit.number is None
    window.document.mark_saved()


def _said(**values) -> object:
    return lambda study: with_worksheet(study, replace(study.worksheet, **values))


_HANDS = (Hands(0, "value", "light", 4),)
_PAGE = SheetPage(answer="It went pale.", date="2026-03-04", change_first="value")

KEPT = {
    "title": lambda study: with_title(study, "Another dusk"),
    "box": lambda study: mixing.choose_box(study, list(GENERIC_BOXES.values())[-1]),
    "mix": lambda study: mixing.allow_white(study, True),
    "hands": lambda study: with_hands(study, _HANDS),
    "wheel": lambda study: with_wheel(study, WheelPlace(0.4, 0.5, 0.3)),
    "sheets": lambda study: with_sheet(
        study, 0, SheetEntry(study.sheets[0].picture, SheetOptions(turned=2))
    ),
    "worksheet.pages": lambda study: with_worksheet(study, with_page(study.worksheet, 1, _PAGE)),
    "worksheet.remark": _said(remark="Calm edges."),
}
"""What is edited while a student is shown, and is there when one comes back."""

ASKED = {"bands"}
"""Tested by `test_lines_are_the_whole_classs_and_asked_about_once`."""

NOT_OFFERED = {
    "photo": "another photo is another study, and leaves the student",
    "scraps": "tested below",
    "worksheet.student_code": "tested below",
    "worksheet.class_code": "tested below",
}


def test_of_every_part_of_a_study_it_is_decided_where_an_edit_goes() -> None:
    parts = {each.name for each in fields(Study)} - {"worksheet"}
    parts |= {f"worksheet.{each.name}" for each in fields(Worksheet)}
    assert parts == set(KEPT) | ASKED | set(NOT_OFFERED)


def test_what_is_edited_while_a_student_is_shown_is_there_again(page, window, qtbot) -> None:
    visit(window, qtbot)
    after = window.document.study
    for part, edit in KEPT.items():
        before, after = after, edit(after)
        assert after != before, part
        window.document.change(part, after)
    trigger(window, "Alt+Right")
    qtbot.waitUntil(lambda: window.header.title == "7b, student 02", timeout=20_000)
    trigger(window, "Alt+Left")
    qtbot.waitUntil(lambda: window.header.title == "7b, student 01", timeout=20_000)
    quiet(window, qtbot)
    assert window.document.study == after
    assert read_class_set(page.desk.path) == page.desk.class_set


def test_wishes_go_back_with_lines_that_are_put_back(page, window, qtbot) -> None:
    visit(window, qtbot)
    before = mixing.pin(window.document.study, "A", window.document.study.box.paints[0].key, True)
    window.document.change("pin", before)
    lines = Bands(1.0, (0.2, 0.4, 0.6, 0.8))
    window.document.change(
        "line", replace(with_bands(before, lines), mix=replace(before.mix, choices=()))
    )
    assert page.desk.class_set.exercise.mix == before.mix
    answer(qtbot, "Put the lines back")
    qtbot.waitUntil(lambda: window.document.study == before, timeout=20_000)
    quiet(window, qtbot)


@pytest.mark.parametrize("again", [True, False])
def test_lines_moved_just_before_leaving_are_asked_about_all_the_same(
    page, window, qtbot, again
) -> None:
    visit(window, qtbot)
    before = page.desk.class_set.exercise.bands
    lines = Bands(1.0, (0.3, 0.6))
    window.document.change("line", with_bands(window.document.study, lines))
    window.opener.open_sample("quay")
    answer(qtbot, "Check them again" if again else "Put the lines back")
    qtbot.waitUntil(lambda: window._student.visit.number is None, timeout=20_000)
    settle(window, qtbot)
    assert page.desk.class_set.exercise.bands == (lines if again else before)
    assert window.document.study.title != page.desk.class_set.exercise.title
    qtbot.waitUntil(lambda: not window.reader.working, timeout=20_000)
    window.document.mark_saved()


def test_the_codes_of_a_student_of_the_class_cannot_be_rewritten(page, window, qtbot) -> None:
    codes = window.page("worksheet").codes
    field = codes.fields["student_code"]
    assert field.isEnabled()
    visit(window, qtbot, "F8")
    assert not any(each.isEnabled() for each in codes.fields.values())
    assert "class list" in field.toolTip()
    assert field.text() == "01"
    window._student.visit.leave()
    assert field.isEnabled()
