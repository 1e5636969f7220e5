"""Buttons, segments, stepper and tabs: signals, keys, names, sizes."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import pairwise

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QFontMetricsF
from PySide6.QtWidgets import QApplication, QHBoxLayout, QLineEdit, QWidget
from pytestqt.qtbot import QtBot
from walk import LEAST_TARGET

from app.look import DARK, LIGHT, Look, TypeScale, apply_look, look
from app.widgets.buttons import EdgeButton, IconButton, InkButton
from app.widgets.focus import FocusRing, ground_of
from app.widgets.segmented import SegmentedControl
from app.widgets.stepper import Stepper
from app.widgets.tabs import PageTabs

SCALES = pytest.mark.parametrize("scale", [1.0, 1.25, 1.5, 2.0])

SetLook = Callable[..., None]


@pytest.fixture
def set_look(qapp: QApplication) -> Iterator[SetLook]:
    def put(theme: str = "light", scale: float = 1.0, wide: bool = False) -> None:
        apply_look(qapp, Look(DARK if theme == "dark" else LIGHT, TypeScale(scale, wide)))

    yield put
    apply_look(qapp, Look())


def role(widget: QWidget) -> QAccessible.Role:
    return QAccessible.queryAccessibleInterface(widget).role()


def spoken(widget: QWidget) -> str:
    return QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name)


@SCALES
@pytest.mark.parametrize("text", ["OK", "Propose again", "Mostrar lo que se ha medido"])
def test_button_holds_its_text_at_every_size(
    qtbot: QtBot, set_look: SetLook, scale: float, text: str
) -> None:
    set_look(scale=scale)
    button = InkButton(text, "class_view", note="F5")
    qtbot.addWidget(button)
    bold = QFontMetricsF(look().type.font("control", 700)).horizontalAdvance(text)
    assert button.minimumSizeHint().width() > bold + look().type.grow(20)
    assert button.minimumSizeHint().height() >= max(LEAST_TARGET, 1.3 * look().type.px("control"))


def test_button_is_a_button_and_says_why_it_is_closed(qtbot: QtBot) -> None:
    button = EdgeButton("Show")
    qtbot.addWidget(button)
    assert role(button) == QAccessible.Role.PushButton
    assert spoken(button) == "Show"
    button.set_available(False, "Score intensity to open it.")
    assert not button.isEnabled()
    assert button.toolTip() == button.accessibleDescription() == "Score intensity to open it."
    button.set_available(True)
    assert button.isEnabled()
    assert button.toolTip() == ""


def test_icon_button_has_a_name(qtbot: QtBot) -> None:
    button = IconButton("undo", "Undo moving a line")
    qtbot.addWidget(button)
    assert spoken(button) == "Undo moving a line"
    assert button.sizeHint().width() >= LEAST_TARGET


def test_unavailable_is_a_dashed_edge_not_only_a_paler_one(qtbot: QtBot) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    button = EdgeButton("Show it all to me", parent=page)
    button.setGeometry(20, 20, button.sizeHint().width(), button.sizeHint().height())

    def edge_runs() -> int:
        image = page.grab(button.geometry()).toImage()
        row = [image.pixelColor(x, 0).lightness() < 200 for x in range(10, image.width() - 10)]
        return sum(a != b for a, b in pairwise(row))

    assert edge_runs() == 0
    button.set_available(False)
    assert edge_runs() > 10


def test_segments_speak_and_choose(qtbot: QtBot) -> None:
    control = SegmentedControl(
        [("colour", "Colour"), ("values", "Values"), ("squint", "Squint")], "View"
    )
    qtbot.addWidget(control)
    control.show()
    heard: list[str] = []
    control.chosen.connect(heard.append)
    control.set_chosen("values")
    assert heard == []
    assert control.current == "values"
    segments = control.findChildren(QWidget)
    buttons = [s for s in segments if role(s) == QAccessible.Role.RadioButton]
    assert [spoken(b) for b in buttons] == ["Colour", "Values", "Squint"]
    qtbot.mouseClick(buttons[2], Qt.MouseButton.LeftButton)
    assert heard == ["squint"]
    qtbot.keyClick(buttons[2], Qt.Key.Key_Left)
    assert heard[-1] == "values"
    assert control.current == "values"


def test_tab_reaches_the_chosen_segment_only(qtbot: QtBot) -> None:
    control = SegmentedControl([("a", "A"), ("b", "B"), ("c", "C")], "View")
    qtbot.addWidget(control)
    control.set_chosen("b")
    reached = [
        child
        for child in control.findChildren(QWidget)
        if child.focusPolicy() & Qt.FocusPolicy.TabFocus
    ]
    assert [spoken(child) for child in reached] == ["B"]


def test_stepper_asks_and_stops_at_its_ends(qtbot: QtBot) -> None:
    stepper = Stepper("Bands", "Fewer bands", "More bands")
    qtbot.addWidget(stepper)
    stepper.set_range(1, 7)
    stepper.set_value(7)
    asked: list[int] = []
    stepper.stepped.connect(asked.append)
    fewer, more = stepper.findChildren(IconButton)
    assert (spoken(fewer), spoken(more)) == ("Fewer bands", "More bands")
    assert not more.isEnabled()
    qtbot.mouseClick(fewer, Qt.MouseButton.LeftButton)
    assert asked == [6]
    # It shows what it is told, not what it asked for.
    assert stepper.value == 7
    stepper.set_value(1)
    assert not fewer.isEnabled()


@SCALES
def test_tabs_hold_their_names(qtbot: QtBot, set_look: SetLook, scale: float) -> None:
    set_look(scale=scale)
    tabs = PageTabs()
    qtbot.addWidget(tabs)
    for name in ("Read", "Mix", "Hoja de trabajo"):
        tabs.addTab(name)
    bold = QFontMetricsF(look().type.font("label", 700))
    for index in range(3):
        assert tabs.tabSizeHint(index).width() > bold.horizontalAdvance(tabs.tabText(index))


def test_focus_ring_follows_the_keyboard(qtbot: QtBot) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    row = QHBoxLayout(page)
    first, second, field = EdgeButton("One"), EdgeButton("Two"), QLineEdit()
    for widget in (first, second, field):
        row.addWidget(widget)
    ring = FocusRing(page)
    page.show()
    qtbot.waitExposed(page)
    page.activateWindow()
    first.setFocus()
    qtbot.waitUntil(first.hasFocus)
    assert ring.target is None  # the program moved the focus, nobody pressed a key
    qtbot.keyClick(first, Qt.Key.Key_Shift)
    qtbot.waitUntil(lambda: ring.target is first)
    assert not ring.geometry().intersected(first.geometry()).isEmpty()
    qtbot.keyClick(first, Qt.Key.Key_Tab)
    assert ring.target is second
    second.hide()
    assert ring.target is not second
    # The mouse takes it away, and what the program does next shows none.
    qtbot.mouseClick(first, Qt.MouseButton.LeftButton)
    assert ring.target is None
    second.show()
    second.setFocus()
    assert ring.target is None
    ring.stop()


def test_focus_ring_knows_its_ground(qtbot: QtBot) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    wall = QWidget(page)
    wall.setProperty("ground", "wall")
    button = EdgeButton("Turn", parent=wall)
    assert ground_of(button) == "wall"
    assert ground_of(page) == "paper"


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_a_new_look_reaches_widgets_already_shown(
    qtbot: QtBot, set_look: SetLook, theme: str
) -> None:
    button = InkButton("Class view")
    qtbot.addWidget(button)
    before = button.sizeHint()
    set_look(theme, 2.0)
    button.resize(button.sizeHint())
    assert button.sizeHint().height() == 2 * before.height()
    colour = button.grab().toImage().pixelColor(10, button.height() // 2)
    assert colour.name() == look().theme.ink


def test_tabs_show_no_focus_that_nobody_moved_there(qtbot: QtBot) -> None:
    """Qt moves the focus on from a widget that is hidden, and calls that a Tab."""
    page = QWidget()
    row = QHBoxLayout(page)
    tabs, button = PageTabs(), EdgeButton("Open")
    tabs.addTab("Read")
    for part in (tabs, button):
        part.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        row.addWidget(part)
    ring = FocusRing(page)
    qtbot.addWidget(page)
    with qtbot.waitExposed(page):
        page.show()
    page.activateWindow()
    qtbot.waitUntil(page.isActiveWindow)
    button.setFocus()
    plain = tabs.grab().toImage()
    button.hide()
    assert tabs.hasFocus()
    assert tabs.grab().toImage() == plain
    button.show()
    button.setFocus()
    qtbot.keyClick(button, Qt.Key.Key_Tab)
    assert tabs.hasFocus()
    assert tabs.grab().toImage() != plain
    ring.stop()
