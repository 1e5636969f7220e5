"""A drawing in pieces: what changed is painted again, nothing else, and nothing old is left."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QRectF
from PySide6.QtGui import QColor, QPainter, QRegion

from app.drawing.pieces import Piece, changed, paint_pieces


def piece(key: str, x: float, painted: list[str] | None = None) -> Piece:
    def paint(painter: QPainter) -> None:
        if painted is not None:
            painted.append(key)

    return Piece((key, x), QRectF(x, 0, 8, 8), paint)


def test_nothing_changed_is_nothing_to_paint() -> None:
    drawing = (piece("A", 0), piece("B", 20))
    assert changed(drawing, (piece("A", 0), piece("B", 20))).isEmpty()


@pytest.mark.parametrize(
    "after",
    [
        (piece("A", 0), piece("B", 60)),
        (piece("A", 0), piece("B", 60), piece("C", 90)),
        (piece("A", 0),),
    ],
    ids=["moved", "added", "gone"],
)
def test_what_changed_is_painted_where_it_was_and_where_it_is(after: tuple[Piece, ...]) -> None:
    before = (piece("A", 0), piece("B", 20))
    region = changed(before, after)
    assert region.contains(QPoint(24, 4)), "where B was"
    assert not region.contains(QPoint(4, 4)), "A stays"
    for one in after[1:]:
        assert region.contains(one.rect.center().toPoint())


def test_pieces_in_another_order_may_differ_anywhere() -> None:
    before = (piece("A", 0), piece("B", 4), piece("C", 40))
    assert changed(before, (piece("B", 4), piece("A", 0))) is None


def test_only_pieces_that_a_region_meets_are_painted(qapp) -> None:
    painted: list[str] = []
    drawing = (piece("A", 0, painted), piece("B", 20, painted))
    paint_pieces(QPainter(), drawing, QRegion(18, 0, 5, 5))
    assert painted == ["B"]


def test_ink_on_a_colour_is_what_the_ratios_say() -> None:
    """The shortened rule for ink against the guideline's own, over the whole range of greys."""
    from core.colour.contrast import DARK_INK, LIGHT_INK, contrast_ratio, ink_on

    grounds = [f"#{level:02x}{other:02x}{level:02x}" for level in range(256) for other in (0, 128)]
    for ground in (*grounds, DARK_INK, LIGHT_INK, "#000000", QColor("red").name()):
        dark, light = contrast_ratio(DARK_INK, ground), contrast_ratio(LIGHT_INK, ground)
        assert ink_on(ground) == (DARK_INK if dark >= light else LIGHT_INK)
