"""The parts of the Worksheet page by themselves, and the painted scale."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path

import pytest
from PySide6.QtCore import QMarginsF, QPoint, QRectF, QSizeF, Qt
from PySide6.QtGui import QAccessible, QColor, QImage, QPageSize, QPainter, QPdfWriter
from PySide6.QtWidgets import QApplication, QLabel, QWidget

from app.drawing.brush_scale import (
    BrushScaleView,
    brush_scale_height,
    paint_anchor_words,
    paint_brush_scale,
    score_cells,
    strip_of,
)
from app.drawing.score_scale import ScoreScaleView, paint_score_scale, score_boxes
from app.worksheet.codes import CodesRow
from app.worksheet.day import DayField
from app.worksheet.fields import AnswerBox, CodeField, whole
from app.worksheet.measured import MeasuredPanel, MeasuredView
from app.worksheet.scale import ScoreScale

ANCHORS = ((1, "far from it"), (4, "some way off"), (7, "close"), (10, "matches"))


@pytest.fixture
def scale(qtbot) -> ScoreScale:
    scale = ScoreScale("value", "Sheet 1")
    qtbot.addWidget(scale)
    scale.set_label_width(scale.label_width())
    scale.resize(scale.sizeHint())
    with qtbot.waitExposed(scale):
        scale.show()
    scale.activateWindow()
    qtbot.waitUntil(scale.isActiveWindow)
    return scale


@pytest.fixture
def heard(scale):
    """What the scale says; it is shown at once, as the page does it."""
    said = []

    def hear(score, gesture) -> None:
        said.append((score, gesture))
        scale.set_score(score, None, asked=True)

    scale.scored.connect(hear)
    return said


# The scale


def test_ten_targets_of_24_pixels_and_more(scale) -> None:
    assert len(scale.targets) == 10
    scale.resize(scale.minimumSizeHint())
    for target in scale.targets:
        assert target.width() >= 24
        assert target.height() >= 24
    for left, right in pairwise(scale.targets):
        assert left.geometry().right() < right.geometry().left() + 1


def test_the_target_under_each_drawn_box_is_its_own(scale) -> None:
    for target in scale.targets:
        assert scale.childAt(target.geometry().center()) is target


@pytest.mark.parametrize(
    ("key", "score"),
    [(Qt.Key.Key_1, 1), (Qt.Key.Key_7, 7), (Qt.Key.Key_9, 9), (Qt.Key.Key_0, 10)],
)
def test_digits_choose(scale, heard, qtbot, key, score) -> None:
    scale.targets[3].setFocus()
    qtbot.keyClick(scale.targets[3], key)
    assert scale.score == score
    assert QApplication.focusWidget() is scale.targets[score - 1]
    assert [target.isChecked() for target in scale.targets].index(True) == score - 1


def test_arrows_walk_without_choosing(scale, heard, qtbot) -> None:
    """The third score opens the findings: on the way to it nothing may open."""
    scale.targets[0].setFocus()
    for _ in range(4):
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Right)
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Left)
    assert QApplication.focusWidget() is scale.targets[3]
    assert heard == []
    assert not any(target.isChecked() for target in scale.targets)
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Space)
    assert scale.score == 4
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_End)
    assert QApplication.focusWidget() is scale.targets[9]
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    assert scale.score == 10


@pytest.mark.parametrize("key", [Qt.Key.Key_Delete, Qt.Key.Key_Backspace])
def test_delete_takes_the_score_back(scale, heard, qtbot, key) -> None:
    scale.set_score(6, None, asked=True)
    scale.targets[5].setFocus()
    qtbot.keyClick(scale.targets[5], key)
    assert [score for score, _ in heard] == [None]
    assert not any(target.isChecked() for target in scale.targets)


def test_other_keys_and_shortcuts_mean_nothing(scale, heard, qtbot) -> None:
    scale.targets[0].setFocus()
    qtbot.keyClick(scale.targets[0], Qt.Key.Key_A)
    qtbot.keyClick(scale.targets[0], Qt.Key.Key_5, Qt.KeyboardModifier.ControlModifier)
    assert heard == []


def test_keys_in_one_stay_share_a_gesture_and_a_click_has_its_own(scale, heard, qtbot) -> None:
    scale.targets[0].setFocus()
    qtbot.keyClick(scale.targets[0], Qt.Key.Key_1)
    qtbot.keyClick(scale.targets[0], Qt.Key.Key_0)
    qtbot.mouseClick(scale.targets[4], Qt.MouseButton.LeftButton)
    qtbot.keyClick(scale.targets[4], Qt.Key.Key_6)
    assert [score for score, _ in heard] == [1, 10, 5, 6]
    gestures = [gesture for _, gesture in heard]
    assert gestures[0] is gestures[1]
    assert len({id(gesture) for gesture in gestures}) == 3


def test_a_click_that_is_not_taken_up_leaves_the_tick_where_it_was(scale, qtbot) -> None:
    """The tick shows the study, not the mouse."""
    scale.set_score(3, None, asked=True)
    qtbot.mouseClick(scale.targets[8], Qt.MouseButton.LeftButton)
    assert [target.score for target in scale.targets if target.isChecked()] == [3]


def test_a_screen_reader_hears_what_each_score_means(scale) -> None:
    interface = QAccessible.queryAccessibleInterface(scale.targets[6])
    assert interface.role() == QAccessible.Role.RadioButton
    assert scale.targets[6].accessibleName() == "Value, Sheet 1, own score 7"
    description = scale.targets[6].accessibleDescription()
    assert "about one step lighter or darker" in description
    assert "0 for 10" in description


def test_tab_goes_to_the_chosen_score(scale) -> None:
    def stops() -> list[int]:
        strong = Qt.FocusPolicy.StrongFocus
        return [target.score for target in scale.targets if target.focusPolicy() == strong]

    assert stops() == [1]
    scale.set_score(8, None, asked=True)
    assert stops() == [8]
    scale.set_score(None, None, asked=True)
    assert stops() == [1]


# The drawing


def test_boxes_and_cells_fill_the_width() -> None:
    rect = QRectF(7, 11, 400, 30)
    boxes = score_boxes(rect)
    assert boxes[0].left() == pytest.approx(rect.left())
    assert boxes[-1].right() == pytest.approx(rect.right())
    assert all(left.right() < right.left() for left, right in pairwise(boxes))
    cells = score_cells(QRectF(7, 11, 400, brush_scale_height(30.0)))
    assert cells[0].left() == pytest.approx(7)
    assert cells[-1].right() == pytest.approx(407)
    assert all(left.right() == pytest.approx(right.left()) for left, right in pairwise(cells))
    assert all(cell.height() == pytest.approx(30.0) for cell in cells)


AREA = QRectF(10, 10, 400, brush_scale_height(34.0))


def drawn(view: BrushScaleView) -> QImage:
    image = QImage(420, 80, QImage.Format.Format_RGB32)
    image.fill(QColor("#ffffff"))
    painter = QPainter(image)
    paint_brush_scale(painter, AREA, view)
    painter.end()
    return image


def dark_share(image: QImage, spot: QRectF) -> float:
    area = spot.toRect()
    dark = sum(
        image.pixelColor(x, y).lightness() < 235
        for x in range(area.left(), area.right())
        for y in range(area.top(), area.bottom())
    )
    return dark / (area.width() * area.height())


@pytest.mark.parametrize("own", [None, 1, 6, 10])
def test_the_stroke_ends_at_the_own_score(qapp, own) -> None:
    image = drawn(BrushScaleView(own=own))
    filled = [n for n, spot in enumerate(score_cells(AREA), 1) if dark_share(image, spot) > 0.5]
    assert filled == list(range(1, (own or 0) + 1))


def test_a_pointed_score_shows_how_far_the_stroke_would_go(qapp) -> None:
    image = drawn(BrushScaleView(own=3, pointed=7))
    shares = [dark_share(image, spot) for spot in score_cells(AREA)]
    assert all(share > 0.5 for share in shares[:7])
    assert all(share < 0.4 for share in shares[7:])


@pytest.mark.parametrize("measured", [1, 5, 9, 10])
def test_the_measured_words_stay_within_the_scale(qapp, measured) -> None:
    image = drawn(BrushScaleView(measured=measured, measured_text=f"measured {measured}"))
    assert dark_share(image, QRectF(0, 0, 9, 80)) == 0
    assert dark_share(image, QRectF(411, 0, 9, 80)) == 0
    # The triangle stands under its score: something is drawn there.
    spot = score_cells(AREA)[measured - 1]
    below = QRectF(spot.center().x() - 7, strip_of(AREA).bottom() + 2, 14, 17)
    assert dark_share(image, below) > 0.05


def test_the_printed_scale_prints_as_letters(qapp, tmp_path: Path) -> None:
    pypdf = pytest.importorskip("pypdf")
    path = tmp_path / "scale.pdf"
    writer = QPdfWriter(str(path))
    writer.setPageSize(QPageSize(QSizeF(100, 60), QPageSize.Unit.Millimeter))
    writer.setPageMargins(QMarginsF(0, 0, 0, 0))
    painter = QPainter(writer)
    painter.scale(writer.width() / 100, writer.width() / 100)
    paint_score_scale(painter, QRectF(5, 15, 80, 8), ScoreScaleView(own=6))
    paint_anchor_words(painter, QRectF(5, 5, 80, 8), ANCHORS, 3.0, "#141414")
    painter.end()
    page = pypdf.PdfReader(str(path)).pages[0]
    text = page.extract_text().replace("\t", " ")
    for word in ("far from it", "matches", "6", "10"):
        assert word in text
    assert not page.images


# Fields


def test_whole_characters_only() -> None:
    assert whole("caf\u00e9 \U0001f600") == "caf\u00e9 \U0001f600"
    assert whole("\ud83d").encode("utf-8")


@pytest.fixture
def box(qtbot) -> Iterator[AnswerBox]:
    page = QWidget()
    qtbot.addWidget(page)
    box = AnswerBox("Answer", 40, page)
    page.resize(400, 200)
    with qtbot.waitExposed(page):
        page.show()
    page.activateWindow()
    box.setFocus()
    yield box
    page.close()


def test_a_run_ends_where_the_cursor_is_put_elsewhere(box, qtbot) -> None:
    gestures = []
    box.edited.connect(lambda text, gesture: gestures.append(gesture))
    qtbot.keyClicks(box, "abc")
    qtbot.keyClick(box, Qt.Key.Key_Home)
    qtbot.keyClicks(box, "de")
    assert len({id(g) for g in gestures[:3]}) == 1
    assert len({id(g) for g in gestures[3:]}) == 1
    assert gestures[0] is not gestures[-1]


def test_what_is_too_much_is_taken_from_where_it_was_written(box, qtbot) -> None:
    full = []
    box.full.connect(lambda: full.append(True))
    box.set_text("a" * 20 + "b" * 20)
    cursor = box.textCursor()
    cursor.setPosition(20)
    box.setTextCursor(cursor)
    box.insertPlainText("xyz")
    assert box.text == "a" * 20 + "b" * 20
    assert full


def test_a_text_from_the_study_keeps_the_cursor_and_says_nothing(box, qtbot) -> None:
    said = []
    box.edited.connect(lambda text, gesture: said.append(text))
    qtbot.keyClicks(box, "one two")
    qtbot.keyClick(box, Qt.Key.Key_Left)
    said.clear()
    box.set_text("one three")
    assert box.textCursor().position() == 6
    assert said == []


def test_tab_leaves_the_box(box, qtbot) -> None:
    after = CodeField("Code", "a code, not a name", 40, box.parentWidget())
    after.move(0, 150)
    after.show()
    qtbot.keyClick(box, Qt.Key.Key_Tab)
    assert QApplication.focusWidget() is after
    assert box.text == ""


def test_a_code_has_a_limit(qtbot) -> None:
    field = CodeField("Student", "a code, not a name", 5)
    qtbot.addWidget(field)
    qtbot.keyClicks(field, "1234567")
    assert field.text() == "12345"


# The date


def test_a_damaged_date_is_none(qtbot) -> None:
    field = DayField("Sheet 1")
    qtbot.addWidget(field)
    field.set_date("2027-13-45")
    assert not field.edit.isVisibleTo(field)
    field.set_date("2027-03-04")
    assert field.edit.isVisibleTo(field)
    assert not field.add.isVisibleTo(field)


# What was measured


def test_the_panel_is_as_high_as_its_words_at_every_width(qtbot) -> None:
    panel = MeasuredPanel()
    qtbot.addWidget(panel)
    long = "You saw it closer to the photo than it measured. Look at band A first. " * 2
    panel.set_view(MeasuredView(rows=(("Hue", long), ("Value", long)), findings=(("check", long),)))
    panel.show()
    heights = []
    for width in (300, 500, 900):
        panel.resize(width, 10)
        heights.append(panel.minimumHeight())
    assert heights == sorted(heights, reverse=True)
    assert heights[0] > heights[2]
    assert panel.accessibleName().startswith("What was measured. Hue: You saw")


def test_a_locked_panel_says_so_and_nothing_else(qtbot) -> None:
    panel = MeasuredPanel()
    qtbot.addWidget(panel)
    panel.set_view(MeasuredView("Score intensity to open them.", locked=True))
    assert panel.texts() == ("Measured findings wait here", "Score intensity to open them.")
    assert panel.childAt(QPoint(5, 5)) is None


def test_labels_stay_beside_their_codes_however_wide_the_row(qtbot) -> None:
    row = CodesRow()
    qtbot.addWidget(row)
    row.show()
    for width in (420, 700, 1600):
        row.resize(width, 80)
        for field in row.fields.values():
            label = next(one for one in row.findChildren(QLabel) if one.buddy() is field)
            assert label.width() <= label.sizeHint().width() + 2
            assert field.x() - label.geometry().right() <= 12
