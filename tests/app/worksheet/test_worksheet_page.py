"""The Worksheet page: own scores first, then what was measured; every edit can be undone."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QDate, QPoint, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication, QLabel
from sheet_checks import FakeChecker, other_sky, sheet_check

from app.look import Look, TypeScale, apply_look
from app.worksheet.page import WorksheetPage
from core.pictures import Picture
from core.reading.quality import QUALITIES
from core.sheet.result import Change
from core.study import SheetEntry, with_sheet, with_worksheet
from core.worksheet.worksheet import MOST_ANSWER, OwnScores, SheetPage, Worksheet


@pytest.fixture
def checker(window) -> FakeChecker:
    return FakeChecker(window.document)


@pytest.fixture
def page(window, checker, qtbot) -> WorksheetPage:
    """The page with a checker that measures nothing."""
    page = WorksheetPage(replace(window.workspace, checker=checker))
    qtbot.addWidget(page)
    page.resize(1366, 716)
    with qtbot.waitExposed(page):
        page.show()
    page.activateWindow()
    qtbot.waitUntil(page.isActiveWindow)
    return page


def worksheet_of(window) -> Worksheet:
    return window.document.study.worksheet


def fill(window, first: OwnScores = OwnScores(), second: OwnScores = OwnScores()) -> None:  # noqa: B008
    pages = (SheetPage(first), SheetPage(second))
    study = with_worksheet(window.document.study, Worksheet(pages=pages))
    window.document.change("fill", study)


def add_sheets(window) -> None:
    study = with_sheet(window.document.study, 0, SheetEntry(Picture("one.jpg")))
    window.document.change("add", with_sheet(study, 1, SheetEntry(Picture("two.jpg"))))


def click(qtbot, page, index: int, quality: str, score: int) -> None:
    target = page.halves[index].scores.scales[quality].targets[score - 1]
    qtbot.mouseClick(target, Qt.MouseButton.LeftButton)


# Empty


def test_without_sheets_the_page_can_be_used_and_says_where_to_add_them(page, window, qtbot):
    for half in page.halves:
        assert half.measured.view.locked
        assert half.measured.view.waiting == (
            "Score hue, value and intensity, and add the sheet's picture on the Sheets page."
        )
        assert half.scores.pair.accessibleName() == "No picture yet"
    for quality in ("hue", "value", "intensity"):
        click(qtbot, page, 0, quality, 6)
    assert worksheet_of(window).pages[0].scores == OwnScores(6, 6, 6)
    view = page.halves[0].measured.view
    assert not view.locked
    assert view.waiting == "Add the sheet's picture on the Sheets page to open them."


# Scores


def test_a_click_scores_and_can_be_undone_by_name(page, window, qtbot) -> None:
    click(qtbot, page, 1, "value", 8)
    assert worksheet_of(window).pages[1].scores == OwnScores(value=8)
    assert worksheet_of(window).pages[0].scores == OwnScores()
    assert window.document.stack.undoText() == "score value of sheet 2"
    assert page.halves[1].scores.scales["value"].targets[7].isChecked()
    window.document.stack.undo()
    assert page.halves[1].scores.scales["value"].score is None
    assert not any(t.isChecked() for t in page.halves[1].scores.scales["value"].targets)


def test_the_missing_scores_are_named_as_they_come_in(page, window, qtbot) -> None:
    add_sheets(window)
    view = page.halves[0].measured
    assert view.view.waiting == "Score hue, value and intensity to open them."
    assert page.halves[0].scores.scales["hue"].accessibleDescription() == ""
    click(qtbot, page, 0, "hue", 6)
    assert view.view.waiting == "Score value and intensity to open them."
    assert page.halves[0].scores.scales["value"].accessibleDescription() == "Still to score"
    # Placement may stay empty: it is never asked for.
    assert page.halves[0].scores.scales["placement"].accessibleDescription() == ""
    click(qtbot, page, 0, "value", 6)
    assert view.view.waiting == "Score intensity to open them."


# What was measured


def test_nothing_measured_shows_before_the_own_scores(page, window, checker) -> None:
    add_sheets(window)
    fill(window, OwnScores(6, 7, None, 9), OwnScores(hue=3))
    checker.hand_out(sheet_check(), sheet_check())
    for half in page.halves:
        assert half.measured.view.locked
        assert half.measured.view.rows == ()
        assert [half.scores.scales[quality].measured for quality in QUALITIES] == [None] * 4
        said = " ".join((half.measured.accessibleName(), *half.measured.texts()))
        assert "lighter" not in said
        assert "hues match" not in said


def test_the_last_score_opens_direction_and_findings(page, window, checker, qtbot) -> None:
    add_sheets(window)
    fill(window, OwnScores(10, 10, None, 2))
    check = sheet_check()
    checker.hand_out(check, None)
    click(qtbot, page, 0, "intensity", 10)
    view = page.halves[0].measured.view
    assert not view.waiting
    rows = dict(view.rows)
    assert rows["Value"] == "Matches in 1 of 3 bands. Look at band A first: lighter by 2."
    # Each way once, with everything it is true of; what praise names is not said again.
    assert [sentence.partition(":")[0] for sentence in view.directions] == [
        "You saw it closer to the photo than it measured",
        "It measured closer to the photo than you saw it",
        "It measured much as you saw it",
    ]
    assert "Hue" not in rows
    assert [icon for icon, _ in view.findings] == ["check", "arrow_right"]
    scale = page.halves[0].scores.scales["value"]
    assert scale.measured == round(check.scores.value)
    assert scale.accessibleDescription() == f"measured {scale.measured}"
    assert page.halves[1].measured.view.locked


def test_taking_a_score_back_closes_them_again(page, window, checker, qtbot) -> None:
    add_sheets(window)
    fill(window, OwnScores(10, 10, 10))
    checker.hand_out(sheet_check(), None)
    assert page.halves[0].measured.view.rows
    target = page.halves[0].scores.scales["hue"].targets[9]
    target.setFocus()
    qtbot.keyClick(target, Qt.Key.Key_Delete)
    assert worksheet_of(window).pages[0].scores.hue is None
    assert window.document.stack.undoText() == "take back the score for hue, sheet 1"
    assert page.halves[0].measured.view.locked
    assert page.halves[0].scores.scales["value"].measured is None


def test_the_teacher_may_open_them_before_the_scores(page, window, checker) -> None:
    add_sheets(window)
    checker.hand_out(sheet_check(), None)
    (action,) = page.actions_for("view")
    assert not action.isChecked()
    action.trigger()
    assert checker.show_measured
    view = page.halves[0].measured.view
    assert view.rows
    assert view.directions == ()
    action.trigger()
    assert page.halves[0].measured.view.locked
    # The other place that opens them is followed.
    checker.show_measured = True
    assert action.isChecked()


def test_the_named_change_is_told_on_sheet_2_alone(page, window, checker) -> None:
    add_sheets(window)
    fill(window, OwnScores(5, 5, 5), OwnScores(5, 5, 5))
    checker.change = Change((), "placement", "improved")
    checker.hand_out(sheet_check(), sheet_check())
    sentence = "You set out to change placement: it came closer."
    assert sentence in page.halves[1].measured.texts()
    assert sentence not in page.halves[0].measured.texts()


def test_a_sheet_of_another_sky_says_only_that(page, window, checker) -> None:
    add_sheets(window)
    fill(window, OwnScores(5, 5, 5))
    checker.hand_out(other_sky(), None)
    view = page.halves[0].measured.view
    assert view.rows == ()
    assert view.findings == (("info", other_sky().findings[0].text),)
    assert page.halves[0].scores.scales["hue"].measured is None


def test_why_there_is_no_check_is_said(page, window, checker) -> None:
    add_sheets(window)
    fill(window, OwnScores(5, 5, 5), OwnScores(5, 5, 5))
    assert "photo of the sky first" in page.halves[0].measured.view.waiting
    checker.sentences[1] = "The corners were not found: set them by hand."
    checker.checks_changed.emit()
    assert page.halves[1].measured.view.waiting == checker.sentences[1]


# Words


def test_a_line_of_typing_is_one_undo_step(page, window, qtbot) -> None:
    box = page.halves[0].answer.answer
    box.setFocus()
    qtbot.keyClicks(box, "Wetter paper.")
    assert worksheet_of(window).pages[0].answer == "Wetter paper."
    assert window.document.stack.count() == 1
    assert window.document.stack.undoText() == "write the answer for sheet 1"
    qtbot.keyClick(box, Qt.Key.Key_Return)
    qtbot.keyClicks(box, "Larger brush.")
    assert window.document.stack.count() == 2
    window.document.stack.undo()
    assert box.toPlainText() == "Wetter paper.\n"
    window.document.stack.undo()
    assert box.toPlainText() == ""
    window.document.stack.redo()
    assert box.toPlainText() == "Wetter paper.\n"


def test_undo_keys_in_a_field_undo_the_study(page, window, qtbot) -> None:
    box = page.halves[1].answer.answer
    box.setFocus()
    qtbot.keyClicks(box, "Yes")
    undo = Qt.KeyboardModifier.ControlModifier
    qtbot.keyClick(box, Qt.Key.Key_Z, undo)
    # The field leaves the key to the window's undo and undoes nothing by itself.
    assert box.toPlainText() == "Yes"
    assert worksheet_of(window).pages[1].answer == "Yes"
    assert not box.isUndoRedoEnabled()


def test_prompts_begin_a_line_of_their_own(page, window, qtbot) -> None:
    part = page.halves[0].answer
    qtbot.keyClicks(part.answer, "First.")
    qtbot.mouseClick(part.prompts[2], Qt.MouseButton.LeftButton)
    qtbot.keyClicks(part.answer, "more")
    assert worksheet_of(window).pages[0].answer == "First.\nWater: more"
    assert QApplication.focusWidget() is part.answer


def test_an_answer_ends_at_its_limit_with_a_sentence(page, window, qtbot) -> None:
    box = page.halves[0].answer.answer
    box.setFocus()
    box.insertPlainText("x" * (MOST_ANSWER - 1))
    box.insertPlainText("yz")
    assert worksheet_of(window).pages[0].answer == "x" * (MOST_ANSWER - 1) + "y"
    assert box.toPlainText() == worksheet_of(window).pages[0].answer
    assert str(MOST_ANSWER) in window.notice_display.text


def test_codes_and_remark_are_written_to_the_study(page, window, qtbot) -> None:
    student, class_ = page.codes.fields["student_code"], page.codes.fields["class_code"]
    assert "not a name" in student.placeholderText()
    qtbot.keyClicks(student, "7b 14")
    qtbot.keyClicks(class_, "7b")
    qtbot.keyClicks(page.remark, "Calm washes.")
    found = worksheet_of(window)
    assert (found.student_code, found.class_code, found.remark) == ("7b 14", "7b", "Calm washes.")
    names = [window.document.stack.text(n) for n in range(window.document.stack.count())]
    assert names == [
        "write the student code",
        "write the class code",
        "write the teacher's remark",
    ]


def test_the_change_first_is_chosen_on_sheet_1_and_recalled_on_sheet_2(page, window) -> None:
    combo = page.halves[0].answer.change
    assert page.halves[1].answer.change is None
    combo.setCurrentIndex(combo.findData("edges"))
    assert worksheet_of(window).pages[0].change_first == "edges"
    assert window.document.stack.undoText() == "choose what to change first"
    labels = [label.text() for label in page.halves[1].answer.findChildren(QLabel)]
    assert "On sheet 1 you chose to change hard edges first." in labels
    combo.setCurrentIndex(0)
    assert worksheet_of(window).pages[0].change_first is None
    window.document.stack.undo()
    assert combo.currentData() == "edges"


def test_a_date_is_one_press_and_can_be_changed_and_taken_away(page, window, qtbot) -> None:
    day = page.halves[1].scores.day
    assert day.add.isVisible()
    qtbot.mouseClick(day.add, Qt.MouseButton.LeftButton)
    today = QDate.currentDate()
    assert worksheet_of(window).pages[1].date == today.toString(Qt.DateFormat.ISODate)
    day.edit.setDate(QDate(2027, 3, 4))
    day.edit.stepBy(1)
    assert worksheet_of(window).pages[1].date.startswith("2027-0")
    assert window.document.stack.undoText() == "date sheet 2"
    qtbot.mouseClick(day.clear, Qt.MouseButton.LeftButton)
    assert worksheet_of(window).pages[1].date is None
    assert day.add.isVisible()


def test_scrolling_past_a_date_or_a_choice_changes_nothing(page, window) -> None:
    pages = (SheetPage(change_first="hue", date="2027-03-04"), SheetPage())
    window.document.change("fill", with_worksheet(window.document.study, Worksheet(pages=pages)))
    before = worksheet_of(window)
    page.setFocus()
    for widget in (page.halves[0].scores.day.edit, page.halves[0].answer.change):
        spot = widget.rect().center()
        event = QWheelEvent(
            spot,
            widget.mapToGlobal(spot),
            QPoint(0, 0),
            QPoint(0, 120),
            Qt.MouseButton.NoButton,
            Qt.KeyboardModifier.NoModifier,
            Qt.ScrollPhase.NoScrollPhase,
            False,
        )
        QApplication.sendEvent(widget, event)
    assert worksheet_of(window) == before


def test_another_study_is_shown_whole_and_nothing_echoes(page, window) -> None:
    pages = (
        SheetPage(OwnScores(1, 2, 3, 4), "one", "value", "2027-03-04"),
        SheetPage(OwnScores(10, 9, 8, 7), "two", None, "2027-03-11"),
    )
    worksheet = Worksheet("14", "7b", pages, "remark")
    window.document.begin(with_worksheet(window.document.study, worksheet))
    assert window.document.stack.count() == 0
    assert worksheet_of(window) == worksheet
    for half, wanted in zip(page.halves, pages, strict=True):
        scores = {quality: scale.score for quality, scale in half.scores.scales.items()}
        assert OwnScores(**scores) == wanted.scores
        assert half.answer.answer.toPlainText() == wanted.answer
        assert half.scores.day.edit.date().toString(Qt.DateFormat.ISODate) == wanted.date
    assert page.remark.toPlainText() == "remark"


# Layout


def spot_of(page, widget):
    return widget.mapTo(page, QPoint(0, 0))


def test_sheets_stand_side_by_side_level_and_stack_when_narrow(page, qtbot) -> None:
    first, second = page.halves
    for left, right in zip(first.parts, second.parts, strict=True):
        assert spot_of(page, left).y() == spot_of(page, right).y()
        assert spot_of(page, left).x() < spot_of(page, right).x()
    assert spot_of(page, first.answer.answer).y() == spot_of(page, second.answer.answer).y()
    page.resize(1199, 716)
    qtbot.waitUntil(lambda: spot_of(page, second.scores).x() == spot_of(page, first.scores).x())
    tops = [spot_of(page, part).y() for half in page.halves for part in half.parts]
    assert tops == sorted(tops)
    assert len(set(tops)) == 4


def test_the_painting_is_large_beside_the_photo(page, window) -> None:
    """A quarter of the page's height and more, both in one shape, level."""
    for half in page.halves:
        photo, painting = half.scores.pair.places
        assert photo.size() == painting.size()
        assert photo.top() == painting.top()
        assert photo.right() < painting.left()
        assert half.scores.pair.width() > 0.44 * page.width()


def test_the_remark_is_seen_without_scrolling(page, window, checker) -> None:
    add_sheets(window)
    fill(window, OwnScores(5, 5, 5, 5), OwnScores(5, 5, 5, 5))
    checker.hand_out(sheet_check(), sheet_check())
    assert spot_of(page, page.remark).y() + page.remark.height() < page.height() / 2


def test_one_stroke_of_the_mouse_is_one_score(page, window, qtbot) -> None:
    scale = page.halves[0].scores.scales["value"]
    start, over = scale.targets[1], scale.targets[7]
    left = Qt.MouseButton.LeftButton
    qtbot.mousePress(start, left)
    qtbot.mouseMove(start, start.mapFromGlobal(over.mapToGlobal(over.rect().center())))
    assert window.document.stack.count() == 0
    qtbot.mouseRelease(start, left, pos=start.mapFromGlobal(over.mapToGlobal(QPoint(3, 3))))
    assert worksheet_of(window).pages[0].scores.value == 8
    assert window.document.stack.count() == 1


def test_the_empty_page_needs_no_scrolling_at_1366_by_768(page, qtbot) -> None:
    qtbot.waitUntil(lambda: page._scroll.verticalScrollBar().maximum() == 0)


@pytest.mark.parametrize("scale", [1.0, 1.5, 2.0])
@pytest.mark.parametrize("width", [940, 1366, 1920])
def test_nothing_is_cut_at_any_size(page, window, checker, qapp, scale, width) -> None:
    add_sheets(window)
    fill(window, OwnScores(5, 5, 5, 5), OwnScores(hue=5))
    checker.change = Change((), "placement", "improved")
    checker.hand_out(sheet_check(), sheet_check())
    page.resize(width, 900)
    apply_look(qapp, Look(type=TypeScale(scale=scale)))
    qapp.processEvents()
    qapp.processEvents()
    assert page._sheet.width() <= page._scroll.viewport().width()
    for half in page.halves:
        panel = half.measured
        assert panel.height() >= panel.heightForWidth(panel.width())
        for scale_widget in half.scores.scales.values():
            for target in scale_widget.targets:
                assert target.width() >= 24
                assert target.height() >= 24
                assert scale_widget.rect().contains(target.geometry())
        for label in half.answer.findChildren(QLabel):
            if label.isVisible():
                assert label.height() >= label.heightForWidth(label.width())
                assert label.rect().width() >= label.minimumSizeHint().width()


def test_everything_can_be_reached_by_tab_in_asking_order(page, window, qtbot) -> None:
    page.codes.fields["student_code"].setFocus()
    seen = []
    for _ in range(60):
        at = QApplication.focusWidget()
        if at in seen:
            break
        seen.append(at)
        assert at.accessibleName() or at.text()
        qtbot.keyClick(at, Qt.Key.Key_Tab)
    first, second = page.halves
    order = [
        page.codes.fields["class_code"],
        first.scores.day.add,
        *(first.scores.scales[quality].targets[0] for quality in QUALITIES),
        *first.answer.prompts,
        first.answer.answer,
        first.answer.change,
        second.scores.day.add,
        *(second.scores.scales[quality].targets[0] for quality in QUALITIES),
        second.answer.answer,
        page.remark,
    ]
    places = [seen.index(widget) for widget in order]
    assert places == sorted(places)
