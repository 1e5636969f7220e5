"""On a small screen: the photo full height, wheel and questions over it, off the lit band."""

from __future__ import annotations

from itertools import product

import pytest
from class_tools import LEAST_TEXT, SCREENS, SKY, readings_of, texts_of
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.classview import content
from core.lesson.lesson import QUESTIONS
from core.reading.wording import Wording


@pytest.mark.parametrize(("size", "shape"), list(product(SCREENS, ((400, 600), (600, 400)))))
def test_text_is_four_percent_and_nothing_lies_over_the_lit_band(make_view, drawn, size, shape):
    view = make_view(size=size, shape=shape)
    view.run("over")
    for _ in SKY:
        layout, spot = view._layout(), view._spot
        edges, band = view._edges, view.lesson.band
        lit = layout.band(edges[band], edges[band + 1])
        assert not layout.paper.intersects(lit)
        assert layout.wall.contains(layout.paper)
        if spot is not None:
            assert spot.y - spot.size / 2 >= lit.bottom() or spot.y + spot.size / 2 <= lit.top()
            assert spot.x + spot.size / 2 <= layout.paper.left()
            assert spot.size >= 0.3 * layout.height - 1
        for _ in range(len(QUESTIONS) + 1):
            for text, height, left, right, y in texts_of(view, drawn):
                assert height > LEAST_TEXT * layout.height - 1, text
                assert left >= 0, text
                assert right <= size[0], text
                assert height / 2 <= y <= size[1] - height / 2, text
            view.run("answer")
        view.run("next band")


def test_the_photo_takes_the_height(make_view):
    view = make_view(size=(1366, 768), shape=(400, 600))
    QTest.keyClick(view, Qt.Key.Key_F6)
    assert view._layout().photo.height() == pytest.approx(768)
    QTest.keyClick(view, Qt.Key.Key_F6)
    assert view._layout().sky.height() < 400


def test_nothing_is_told_early_over_the_photo(make_view, drawn):
    view = make_view()
    view.run("over")
    known = content.answers(view.lesson, view.reading, Wording(), view._plan)
    for shown in range(len(QUESTIONS)):
        words = [text for text, *_ in texts_of(view, drawn)]
        for number, question in enumerate(QUESTIONS):
            if number >= shown:
                assert known[question].text not in words
        view.run("answer")


def test_the_wheel_is_dragged_and_sized_by_mouse(make_view):
    view = make_view()
    view.run("over")
    put = []
    view.wheel_put.connect(lambda place, gesture: put.append((place, gesture)))
    before = view._spot
    start = QPointF(before.x, before.y).toPoint()
    QTest.mousePress(view, Qt.MouseButton.LeftButton, pos=start)
    QTest.mouseMove(view, start - QPointF(60, 0).toPoint())
    QTest.mouseMove(view, start - QPointF(90, 0).toPoint())
    QTest.mouseRelease(view, Qt.MouseButton.LeftButton, pos=start)
    assert view._spot.x == pytest.approx(before.x - 90, abs=1)
    assert view._spot.size == pytest.approx(before.size)
    assert len({id(gesture) for _, gesture in put}) == 1
    assert view.lesson.shown == 0
    spot = view._spot
    rim = QPointF(spot.x - spot.size / 2 + 4, spot.y).toPoint()
    QTest.mousePress(view, Qt.MouseButton.LeftButton, pos=rim)
    QTest.mouseMove(view, rim + QPointF(-30, 0).toPoint())
    QTest.mouseRelease(view, Qt.MouseButton.LeftButton, pos=rim)
    assert view._spot.size > spot.size


def rest(view, at: QPoint) -> None:
    """The mouse over a place; sent, since a pointer that is there already does not move."""
    button = Qt.MouseButton.NoButton
    everywhere = view.mapToGlobal(QPointF(at))
    kind = QEvent.Type.MouseMove
    event = QMouseEvent(
        kind, QPointF(at), everywhere, button, button, Qt.KeyboardModifier.NoModifier
    )
    QApplication.sendEvent(view, event)


def test_a_point_is_only_shown_once_the_intensity_is_told(make_view):
    view = make_view()
    view.run("over")
    view.show()
    seen = []
    view.pointed.connect(seen.append)
    spot = view._layout().photo.center().toPoint()
    rest(view, spot)
    assert seen[-1] is None
    for _ in range(4):
        view.run("answer")
    rest(view, spot + QPointF(3, 0).toPoint())
    assert seen[-1] == pytest.approx((0.5, 0.5), abs=0.02)
    on_wheel = QPointF(view._spot.x, view._spot.y).toPoint()
    rest(view, on_wheel)
    assert seen[-1] is None


def test_seven_bands_and_one(make_view):
    for count in (1, 7):
        view = make_view(tuple(SKY[i % 5] for i in range(count)))
        view.run("over")
        for _ in range(count):
            view.grab()
            view.run("next band")
    view.show_readings(readings_of(SKY[:2]), Wording())
    view.grab()
