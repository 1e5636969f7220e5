"""The pin-up wall: only what changed is painted anew."""

from __future__ import annotations

from dataclasses import fields, replace

import pytest
from PySide6.QtCore import QPointF, QRect, QRectF, QSize, QSizeF
from PySide6.QtGui import QColor, QImage, QPainter

from app.classset.wall import PinUpWall
from app.drawing.classset.tile import TileView, paint_tile
from app.drawing.classset.wall import (
    StudentView,
    WallView,
    changed_students,
    paint_wall,
    wall_shape,
)
from app.drawing.pyramid import Pyramid


def wall_of(count: int) -> WallView:
    empty = TileView(word="not yet")
    students = tuple(StudentView(f"{n:02d}", (empty, empty)) for n in range(count))
    return WallView(students=students)


OTHER_TILE = {
    "picture": lambda tile: Pyramid.of(QImage(4, 4, QImage.Format.Format_RGB32)),
    "word": lambda tile: tile.word + "!",
    "lit": lambda tile: (0.1, 0.2),
    "proposed": lambda tile: not tile.proposed,
    "own_shape": lambda tile: not tile.own_shape,
}


def test_whatever_is_told_of_a_student_is_painted_anew_and_nobody_elses() -> None:
    assert set(OTHER_TILE) == {each.name for each in fields(TileView)}
    before = wall_of(5)
    assert changed_students(before, wall_of(5)) == ()
    student = before.students[3]

    def with_student(**values) -> WallView:
        changed = replace(student, **values)
        return replace(before, students=(*before.students[:3], changed, before.students[4]))

    tiles = [
        (replace(student.tiles[0], **{name: other(student.tiles[0])}), student.tiles[1])
        for name, other in OTHER_TILE.items()
    ]
    texts = [{name: "other"} for name in ("code", "tag", "done")]
    assert {"tiles", "code", "tag", "done"} == {each.name for each in fields(StudentView)}
    for values in (*({"tiles": pair} for pair in tiles), *texts):
        assert changed_students(before, with_student(**values)) == (3,), values
    assert changed_students(before, replace(before, chosen=2)) == (2,)
    assert changed_students(replace(before, chosen=2), replace(before, chosen=4)) == (2, 4)
    whole = {
        "photo": TileView(word="other"), "photo_word": "other", "letters": ("A",),
        "edges": (0.0, 0.4, 1.0), "students": before.students[:4], "text": 20.0, "grow": 1.5,
        "aspect": 1.2,
    }  # fmt: skip
    assert {*whole, "chosen"} == {each.name for each in fields(WallView)}
    for name, value in whole.items():
        assert changed_students(before, replace(before, **{name: value})) is None, name


@pytest.mark.parametrize("own_shape", [True, False])
def test_a_picture_without_a_painting_is_not_drawn_out(qapp, own_shape) -> None:
    upright = QImage(30, 60, QImage.Format.Format_RGB32)
    upright.fill(QColor("red"))
    ground = QImage(120, 60, QImage.Format.Format_RGB32)
    ground.fill(QColor("grey"))
    painter = QPainter(ground)
    view = TileView(Pyramid.of(upright), own_shape=own_shape)
    paint_tile(painter, QRectF(0, 0, 120, 60), view, 13)
    painter.end()
    painted = [x for x in range(120) if ground.pixelColor(x, 30) == QColor("red")]
    assert painted == list(range(45, 75) if own_shape else range(120))


def test_a_part_of_the_wall_is_painted_as_the_whole_is(qapp) -> None:
    view = replace(wall_of(7), chosen=4, letters=("A", "B"), edges=(0.0, 0.5, 1.0))
    shape = wall_shape(view, 800)
    size = QSize(800, round(shape.height))

    def painted(visible: QRectF) -> QImage:
        image = QImage(size, QImage.Format.Format_RGB32)
        image.fill(QColor("#868686"))
        painter = QPainter(image)
        painter.setClipRect(visible)
        paint_wall(painter, QRectF(QPointF(), QSizeF(size)), view, shape, visible)
        painter.end()
        return image

    whole = painted(QRectF(QPointF(), QSizeF(size)))
    for number in range(7):
        place = shape.around(number).toAlignedRect().intersected(whole.rect())
        assert painted(QRectF(place)).copy(place) == whole.copy(place), number


def test_a_letter_of_a_mark_repaints_one_student(qtbot, qapp) -> None:
    painted: list[QRect] = []

    class Watched(PinUpWall):
        def paintEvent(self, event) -> None:
            painted.append(event.region().boundingRect())
            super().paintEvent(event)

    wall = Watched()
    qtbot.addWidget(wall)
    wall.resize(800, 600)
    view = replace(wall_of(9), chosen=1)
    wall.set_view(view)
    wall.show()
    qtbot.waitUntil(lambda: bool(painted), timeout=5000)
    qapp.processEvents()
    painted.clear()
    wall.set_view(replace(view))
    qapp.processEvents()
    assert painted == []
    marked = replace(view.students[1], done="marked")
    wall.set_view(replace(view, students=(view.students[0], marked, *view.students[2:])))
    qtbot.waitUntil(lambda: bool(painted), timeout=5000)
    place = wall.shape_now.around(1).toAlignedRect()
    assert all(place.adjusted(-1, -1, 1, 1).contains(part) for part in painted)
