"""The sky paints itself: band by band as answers come, in laying order on W, still if asked."""

from __future__ import annotations

import pytest
from class_tools import LEAST_TEXT, SCREENS, texts_of
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtTest import QTest
from window_tools import run_through

from app.drawing.classview.painted import painted_place
from core.lesson.lesson import QUESTIONS
from core.paint.preview import laying_order


def answer_all(view) -> None:
    for _ in QUESTIONS:
        view.run("answer")


def colour_at(view, band: int, share: float) -> str:
    """The colour of the sky in a band, at a share of its width."""
    rect = view._layout().band(view._edges[band], view._edges[band + 1])
    spot = QPointF(rect.left() + share * rect.width(), rect.center().y())
    return view.grab().toImage().pixelColor(spot.toPoint()).name()


def mix_hex(view, band: int) -> str:
    return view._plan.bands[band].classroom.mix.colour.hex


def test_the_photo_gives_way_as_answers_come(make_view):
    view = make_view()
    assert colour_at(view, 0, 0.75) == colour_at(view, 0, 0.25) == "#000000"
    answer_all(view)
    assert colour_at(view, 0, 0.75) == mix_hex(view, 0)
    assert colour_at(view, 0, 0.25) == "#000000"
    # Answered bands stand back with the rest, until every band is answered.
    view.run("next band")
    assert colour_at(view, 0, 0.75) not in (mix_hex(view, 0), "#000000")
    for _ in range(4):
        answer_all(view)
        view.run("next band")
    for band in range(5):
        assert colour_at(view, band, 0.75) == mix_hex(view, band)
        assert colour_at(view, band, 0.25) == "#000000"
    view.run("take back")
    assert colour_at(view, 4, 0.75) == "#000000"


@pytest.mark.parametrize("size", SCREENS)
def test_w_shows_photo_and_paint_edge_to_edge(make_view, drawn, size):
    view = make_view(size=size)
    QTest.keyClick(view, Qt.Key.Key_W)
    texts = texts_of(view, drawn)
    assert [text for text, *_ in texts] == ["photo", "paint, predicted"]
    for text, height, left, right, _ in texts:
        assert height >= LEAST_TEXT * size[1] - 1, text
        assert left >= 0
        assert right <= size[0]
    layout = view._layout()
    sky = painted_place(QRectF(view.rect()), layout.height, view._aspect / view._edges[-1])
    image = view.grab().toImage()
    for band in range(5):
        middle = (view._edges[band] + view._edges[band + 1]) / 2 / view._edges[-1]
        y = sky.top() + middle * sky.height()
        left, right = (QPointF(sky.center().x() + off, y).toPoint() for off in (-4, 4))
        assert image.pixelColor(left).name() == "#000000"
        assert image.pixelColor(right).name() == mix_hex(view, band)
    assert "beside the photo" in view.accessibleName()
    QTest.keyClick(view, Qt.Key.Key_Escape)
    assert not view.watching


def test_bands_come_in_laying_order_with_motion_and_at_once_without(make_view, monkeypatch):
    view = make_view()
    order = laying_order(view._plan)
    view.run("paint")
    assert view.brush.laid == order
    assert not view.brush.running
    view.run("paint")
    monkeypatch.setattr("app.classview.brush.wants_motion", lambda: True)
    monkeypatch.setattr("app.classview.brush.BAND_MS", 60)
    seen = []
    view.brush.moved.connect(lambda: seen.append((view.brush.laid, view.brush.now)))
    view.run("paint")
    assert view.brush.running
    run_through(view.brush._motion)  # a slow machine would pass over whole bands
    assert not view.brush.running
    for laid, now in seen:
        assert laid == order[: len(laid)]
        if now is not None:
            assert now[0] == order[len(laid)]
            assert 0 <= now[1] < 1
    assert {now[0] for _, now in seen if now is not None} == set(order)


def test_without_a_plan_there_is_nothing_to_watch(make_view):
    view = make_view()
    view.show_plan(None)
    view.run("paint")
    assert not view.watching
    answer_all(view)
    view.grab()
