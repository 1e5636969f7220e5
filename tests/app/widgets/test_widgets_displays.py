"""Wheel, ladder, table, strip, notices and hints: what they say, and that nothing is clipped."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtGui import QAccessible, QHelpEvent
from PySide6.QtWidgets import QApplication, QLabel, QToolTip, QWidget
from pytestqt.qtbot import QtBot

from app.drawing.views import ladder_view, wheel_view
from app.look import DARK, LIGHT, Look, TypeScale, apply_look, look
from app.widgets.hints import Hint, HintTags
from app.widgets.notice import EmptyState, NoticeBar
from app.widgets.preview import sample_readings
from app.widgets.readout import ReadoutTable
from app.widgets.readout_row import BADGES, CHIPS, Row
from app.widgets.readout_views import ReadoutRow, SpokenView, readout_rows, spoken_view
from app.widgets.spoken import SpokenStrip
from app.widgets.spoken_plan import FULLNESS, tight
from app.widgets.wheel import LadderWidget, WheelWidget
from core.reading.reading import BandReading
from core.reading.wording import Wording

SetLook = Callable[..., None]
SCALES = pytest.mark.parametrize("scale", [1.0, 1.25, 1.5, 2.0])

LONG = ReadoutRow(
    "B",
    "#8a8f99",
    "casi neutro, tirando",
    "tirando a azul violáceo, cerca del violeta",
    "5.0",
    "muy oscuro",
    "casi neutro",
    "croma 11.0",
    "…",
)


@pytest.fixture
def set_look(qapp: QApplication) -> Iterator[SetLook]:
    def put(theme: str = "light", scale: float = 1.0, wide: bool = False) -> None:
        apply_look(qapp, Look(DARK if theme == "dark" else LIGHT, TypeScale(scale, wide)))

    yield put
    apply_look(qapp, Look())


def spoken(widget: QWidget) -> str:
    return QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name)


def rows_of(table: ReadoutTable) -> list[Row]:
    return table.findChildren(Row)


def shown(qtbot: QtBot, table: ReadoutTable, width: int, height: int) -> None:
    qtbot.addWidget(table)
    table.resize(width, height)
    table.show()


def test_wheel_and_ladder_tell_which_band_was_pressed(qtbot: QtBot) -> None:
    readings = list(sample_readings())
    readings[1] = replace(readings[1], colour=None)
    for chart, view in (
        (WheelWidget(), wheel_view(readings, 2)),
        (LadderWidget(), ladder_view(readings, Wording(), 2)),
    ):
        qtbot.addWidget(chart)
        chart.resize(310, 310)
        chart.set_view(view, "five bands")
        chart.show()
        heard: list[int] = []
        chart.band_chosen.connect(heard.append)
        places = chart.layout_now
        spots = places.letters if hasattr(places, "letters") else [p.disc for p in places.placed]
        qtbot.mouseClick(chart, Qt.MouseButton.LeftButton, pos=spots[3].toPoint())
        qtbot.keyClick(chart, Qt.Key.Key_Down)
        qtbot.keyClick(chart, Qt.Key.Key_Up)
        # E is the fifth band though it has the fourth marker; D follows C; A precedes it.
        assert heard == [4, 3, 0]
        assert (
            QAccessible.queryAccessibleInterface(chart).text(QAccessible.Text.Description)
            == "five bands"
        )
        assert spoken(chart)


def test_wheel_repaints_the_same_from_its_kept_ground(qtbot: QtBot) -> None:
    wheel = WheelWidget()
    qtbot.addWidget(wheel)
    wheel.resize(310, 310)
    wheel.set_view(wheel_view(sample_readings(), 2))
    first = wheel.grab().toImage()
    wheel.set_view(wheel_view(sample_readings(), 0))
    assert wheel.grab().toImage() != first
    wheel.set_view(wheel_view(sample_readings(), 2))
    assert wheel.grab().toImage() == first


def test_table_speaks_and_moves_with_the_keys(qtbot: QtBot) -> None:
    table = ReadoutTable()
    shown(qtbot, table, 452, 378)
    views = readout_rows(sample_readings(), Wording())
    table.set_rows(views, 2)
    heard: list[int] = []
    table.band_chosen.connect(heard.append)
    rows = rows_of(table)
    assert [spoken(row) for row in rows] == [view.spoken for view in views]
    assert "violet" in spoken(rows[2])
    assert [row.isChecked() for row in rows] == [False, False, True, False, False]
    qtbot.keyClick(rows[2], Qt.Key.Key_Down)
    qtbot.keyClick(rows[3], Qt.Key.Key_Up)
    qtbot.mouseClick(rows[0], Qt.MouseButton.LeftButton)
    qtbot.keyClick(rows[0], Qt.Key.Key_Up)
    assert heard == [3, 2, 0]


def test_short_table_keeps_one_line_but_for_the_chosen_row(qtbot: QtBot) -> None:
    table = ReadoutTable()
    shown(qtbot, table, 452, 310)
    table.set_rows(readout_rows(sample_readings(crowded=True), Wording()), 5)
    lines = [max(len(cell) for cell in row.cells) for row in rows_of(table)]
    assert lines == [1, 1, 1, 1, 1, 2, 1]
    assert sum(row.height() for row in rows_of(table)) <= 310 - 36


def test_table_too_short_scrolls_to_the_chosen_row(qtbot: QtBot) -> None:
    table = ReadoutTable()
    shown(qtbot, table, 452, 160)
    views = readout_rows(sample_readings(crowded=True), Wording())
    table.set_rows(views, 6)
    last = rows_of(table)[6]
    bottom = last.mapTo(table, QPoint(0, last.height())).y()
    assert bottom <= 161


@SCALES
@pytest.mark.parametrize("width", [330, 452, 640])
@pytest.mark.parametrize("height", [200, 378, 640])
def test_no_word_of_the_table_is_clipped(
    qtbot: QtBot, set_look: SetLook, scale: float, width: int, height: int
) -> None:
    set_look(scale=scale, wide=width == 640)
    table = ReadoutTable()
    shown(qtbot, table, width, height)
    views = [*readout_rows(sample_readings(crowded=True), Wording()), LONG]
    table.set_rows(views, 3)
    for row in rows_of(table):
        paper = row.width() - BADGES - CHIPS
        lefts = row.columns.lefts
        for number, cell in enumerate(row.cells):
            end = lefts[number] + max(part.width for part in cell)
            following = lefts[number + 1] if number + 1 < len(row.cells) else paper
            assert end <= following, (row.view, number)
            assert sum(part.height for part in cell) <= row.height()


@SCALES
@pytest.mark.parametrize("width", [560, 914, 1290])
@pytest.mark.parametrize("crowded", [False, True])
@pytest.mark.parametrize("level", range(len(FULLNESS)))
def test_no_word_of_the_strip_is_clipped(
    qtbot: QtBot, set_look: SetLook, scale: float, width: int, crowded: bool, level: int
) -> None:
    set_look(scale=scale, wide=width > 1000)
    strip = SpokenStrip()
    qtbot.addWidget(strip)
    strip.set_fullness(level)
    strip.set_speech_available(True)
    long = SpokenView(
        "B",
        LONG.colour,
        LONG.hue,
        LONG.hue_second,
        "Muy oscuro",
        "valor 2.0 de 10",
        "Casi neutro",
        "croma 1.2",
        "Una frase bastante larga. " * 6,
        "…",
    )
    readings: list[BandReading] = list(sample_readings(crowded=crowded))
    for view in (*(spoken_view(reading, Wording()) for reading in readings), long):
        strip.set_view(view)
        strip.resize(width, strip.heightForWidth(width))
        plan = strip._plan_now()
        text_width = strip._text_width()
        assert plan.height <= strip.height() + 1
        for one in plan.blocks:
            ends = one.top
            for number, part in enumerate(one.parts):
                assert one.left + part.width <= text_width + 1
                ends += part.height * tight(number) if part.width else 0
            assert ends <= plan.rule
            for other in plan.blocks:
                if other.left > one.left:
                    assert one.left + max(p.width for p in one.parts) <= other.left
        assert plan.sentence.width <= text_width
        assert plan.rule + plan.sentence.height <= strip.height() + 1


def test_a_barer_strip_is_lower(qtbot: QtBot, set_look: SetLook) -> None:
    set_look(scale=1.5)
    strip = SpokenStrip()
    qtbot.addWidget(strip)
    strip.set_view(spoken_view(sample_readings()[2], Wording()))
    heights = []
    for level in range(len(FULLNESS)):
        strip.set_fullness(level)
        heights.append(strip.heightForWidth(792))
    assert heights == sorted(heights, reverse=True)
    assert heights[-1] < 0.7 * heights[0]


def test_strip_says_its_band_and_hides_speech_until_there_is_some(qtbot: QtBot) -> None:
    strip = SpokenStrip()
    qtbot.addWidget(strip)
    view = spoken_view(sample_readings()[2], Wording())
    strip.set_view(view)
    strip.resize(914, 152)
    strip.show()
    button = strip._say
    assert not button.isVisible()
    assert spoken(strip) == view.spoken
    assert view.hue == "Violet"
    assert view.sentence in view.spoken
    strip.set_speech_available(True)
    assert button.isVisible()
    with qtbot.waitSignal(strip.say_asked):
        qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def test_value_follows_the_classes_scale() -> None:
    reading = sample_readings()[0]
    assert reading.colour is not None
    up = readout_rows([reading], Wording(white_is=10))[0]
    down = readout_rows([reading], Wording(white_is=0))[0]
    assert float(up.value) + float(down.value) == pytest.approx(10.0)
    assert up.value_second == down.value_second


def test_band_without_sky_says_so(qtbot: QtBot) -> None:
    reading = replace(sample_readings()[0], colour=None)
    row = readout_rows([reading], Wording())[0]
    assert row.colour is None
    assert "sky" in row.hue
    strip, table = SpokenStrip(), ReadoutTable()
    for widget in (strip, table):
        qtbot.addWidget(widget)
        widget.resize(914, 200)
    strip.set_view(spoken_view(reading, Wording()))
    table.set_rows([row], 0)
    strip.grab()
    table.grab()


def test_notice_tells_and_closes(qtbot: QtBot) -> None:
    bar = NoticeBar()
    qtbot.addWidget(bar)
    bar.tell("The profile was left out.", "Why?")
    assert bar.isVisible()
    assert spoken(bar) == bar.sentence == "The profile was left out."
    with qtbot.waitSignal(bar.action_asked):
        qtbot.mouseClick(bar._action, Qt.MouseButton.LeftButton)
    with qtbot.waitSignal(bar.closed):
        qtbot.mouseClick(bar._close, Qt.MouseButton.LeftButton)
    assert not bar.isVisible()


@SCALES
def test_empty_state_shows_all_its_words(qtbot: QtBot, set_look: SetLook, scale: float) -> None:
    set_look(scale=scale)
    page = EmptyState("No sheet yet.", "Photograph it flat, the whole border in view.", "Add one")
    qtbot.addWidget(page)
    page.resize(420, 420)
    page.show()
    for label in page.findChildren(QLabel):
        assert label.heightForWidth(label.width()) <= label.height()
    with qtbot.waitSignal(page.asked):
        qtbot.mouseClick(page.button, Qt.MouseButton.LeftButton)


@SCALES
def test_hints_lie_apart_inside_the_window_and_close_for_good(
    qtbot: QtBot, set_look: SetLook, scale: float
) -> None:
    set_look(scale=scale)
    window = QWidget()
    qtbot.addWidget(window)
    window.resize(1366, 768)
    window.show()
    tags = HintTags(window)
    tags.set_hints(
        [
            Hint("Drag a grip: everything beside it follows.", QPoint(835, 340), "left"),
            Hint("Read these words aloud to the class.", QPoint(300, 640), "above"),
            Hint("Class view asks the questions one by one.", QPoint(1270, 40), "below"),
        ]
    )
    rects = [rect for rect, _ in tags._tags]
    for number, rect in enumerate(rects):
        assert window.rect().contains(rect.toRect())
        assert not any(rect.intersects(other) for other in rects[:number])
    # The rest of the window stays usable.
    assert not tags.mask().contains(QPoint(100, 100))
    assert "1: Drag" in spoken(tags)
    with qtbot.waitSignal(tags.dismissed):
        qtbot.mouseClick(tags._button, Qt.MouseButton.LeftButton)
    assert not tags.isVisible()
    assert look().type.scale == scale


def test_a_wedge_tells_its_name_where_the_mouse_rests(
    qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    told: list[str] = []
    monkeypatch.setattr(QToolTip, "showText", lambda place, text, widget: told.append(text))
    monkeypatch.setattr(QToolTip, "hideText", lambda: told.append(""))
    wheel = WheelWidget()
    qtbot.addWidget(wheel)
    wheel.resize(300, 300)
    wheel.set_view(wheel_view(sample_readings()))
    # Yellow stands at the top; the corner holds nothing; "What is this?" is another help event.
    for kind, place in (
        (QEvent.Type.ToolTip, QPoint(150, 12)),
        (QEvent.Type.ToolTip, QPoint(2, 2)),
        (QEvent.Type.WhatsThis, QPoint(150, 12)),
    ):
        QApplication.sendEvent(wheel, QHelpEvent(kind, place, place))
    assert told == ["yellow", ""]
