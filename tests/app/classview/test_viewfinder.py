"""The viewfinder: grey card all over, a window the size of a hand, arrows that slide it."""

from __future__ import annotations

from itertools import product

import numpy as np
import pytest
from class_tools import SCREENS, SKY, texts_of
from PySide6.QtCore import QRectF, Qt
from PySide6.QtTest import QTest

from app.drawing.classview.viewfinder import WINDOW
from app.look.theme import WALL


def window_of(view) -> QRectF:
    """The window, whole on the screen."""
    place = view.finder.place(QRectF(view.rect()), view._layout(), view._aspect, view._edges)
    assert QRectF(view.rect()).contains(place.window)
    assert place.photo.contains(place.window)
    return place.window


@pytest.mark.parametrize(
    ("size", "shape", "count"), list(product(SCREENS, ((400, 600), (600, 400), (60, 900)), (1, 7)))
)
def test_all_is_wall_but_the_window(make_view, drawn, size, shape, count):
    view = make_view(tuple(SKY[i % 5] for i in range(count)), size=size, shape=shape)
    QTest.keyClick(view, Qt.Key.Key_V)
    window = window_of(view)
    assert window.width() >= WINDOW[0] * size[1] - 1
    assert texts_of(view, drawn) == []
    image = view.grab().toImage()
    pixels = np.frombuffer(image.bits(), np.uint8).reshape(size[1], image.bytesPerLine())
    pixels = pixels[:, : 4 * size[0]].reshape(size[1], size[0], 4)[..., 2::-1]
    wall = np.all(pixels == [int(WALL[i : i + 2], 16) for i in (1, 3, 5)], axis=2)
    outside = np.ones_like(wall)
    left, top = int(window.left()) - 2, int(window.top()) - 2
    outside[top : int(window.bottom()) + 3, left : int(window.right()) + 3] = False
    assert wall[outside].all()
    assert not wall[int(window.center().y()), int(window.center().x())]


def test_arrows_slide_it_down_the_sky_and_it_opens_on_the_band_below_it(make_view):
    view = make_view()
    QTest.keyClick(view, Qt.Key.Key_V)
    before, names = window_of(view), []
    for _ in range(60):
        QTest.keyClick(view, Qt.Key.Key_Down)
        now = window_of(view)
        assert now.top() >= before.top()
        before = now
        names.append(view.reading.letter)
    assert sorted(set(names)) == list("ABCDE")
    assert names == sorted(names)
    assert "band E" in view.accessibleName()
    QTest.keyClick(view, Qt.Key.Key_PageUp)
    assert view.reading.letter == "D"
    left = window_of(view).left()
    QTest.keyClick(view, Qt.Key.Key_Left)
    assert window_of(view).left() < left
    QTest.keyClick(view, Qt.Key.Key_Space)
    assert not view.finder.shown
    assert view.reading.letter == "D"
    assert view.lesson.shown == 0
    assert "What hue" in view.accessibleName()


def test_it_opens_in_a_motion_where_the_system_lets_it(make_view, monkeypatch, qtbot):
    view = make_view()
    monkeypatch.setattr("app.widgets.slide.wants_motion", lambda: True)
    view.run("viewfinder")
    start = window_of(view)
    view.finder.open()
    assert view.finder.shown
    qtbot.waitUntil(lambda: not view.finder.shown or window_of(view).width() > start.width())
    qtbot.waitUntil(lambda: not view.finder.shown)


def test_escape_opens_it_and_does_not_leave(make_view):
    view = make_view()
    view.left.connect(lambda: pytest.fail("left the class view"))
    view.run("viewfinder")
    QTest.keyClick(view, Qt.Key.Key_Escape)
    assert not view.finder.shown
