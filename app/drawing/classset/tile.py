"""One painting of a class, small: level, cut to the sky's shape, perhaps with one band lit."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, floor
from typing import Final

from PySide6.QtCore import QRectF, QSizeF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from app.drawing.ink import BLACK, draw_text, text_size
from app.drawing.pyramid import Pyramid
from app.look.theme import VEIL, WALL

_VEIL: Final = 0.8
_PROPOSED: Final = 0.45


@dataclass(frozen=True, eq=False)
class TileView:
    """A painting, or what stands in its place.

    Attributes
    ----------
    picture : Pyramid or None
    word : str
        In the dashed field where there is no picture: "missing", "not yet".
    lit : (float, float) or None
        Top and bottom of the one band that is shown, as shares of the height.
    proposed : bool
        It may belong here: under a veil, in a dashed outline.
    own_shape : bool
        A picture in which no painting was found: it keeps its own shape, and is not drawn out to
        that of the others.
    """

    picture: Pyramid | None = None
    word: str = ""
    lit: tuple[float, float] | None = None
    proposed: bool = False
    own_shape: bool = False


def same_tile(one: TileView, other: TileView) -> bool:
    """Whether both are drawn alike."""
    first, second = (
        (view.picture, view.word, view.lit, view.proposed, view.own_shape) for view in (one, other)
    )
    return first == second


def paint_tile(painter: QPainter, rect: QRectF, view: TileView, size: float) -> None:
    """Draw a tile; `size` is that of its word."""
    ratio = painter.device().devicePixelRatio() if painter.device() is not None else 1.0
    if view.picture is not None:
        place = _within(rect, view.picture) if view.own_shape else rect
        view.picture.draw(painter, place, ratio)
        if view.proposed:
            _cover(painter, rect, WALL, _PROPOSED)
        elif view.lit is not None:
            top, bottom = (rect.top() + share * rect.height() for share in view.lit)
            _cover(painter, QRectF(rect.left(), rect.top(), rect.width(), top - rect.top()))
            _cover(painter, QRectF(rect.left(), bottom, rect.width(), rect.bottom() - bottom))
    if view.picture is None or view.proposed:
        pen = QPen(QColor(BLACK), 1.5)
        pen.setDashPattern([3.4, 2.6])
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(rect.adjusted(0.75, 0.75, -0.75, -0.75), 3, 3)
    if view.picture is None and view.word:
        fits = min(size, size * (rect.width() - 14) / max(1.0, text_size(view.word, size)[0]))
        draw_text(painter, rect.center(), view.word, fits, BLACK)


def _within(rect: QRectF, picture: Pyramid) -> QRectF:
    """The largest place in the middle of `rect` that has the picture's shape."""
    size = QSizeF(picture.levels[0].size()).scaled(rect.size(), Qt.AspectRatioMode.KeepAspectRatio)
    place = QRectF(rect.topLeft(), size)
    place.moveCenter(rect.center())
    return place


def _cover(painter: QPainter, rect: QRectF, colour: str = VEIL, share: float = _VEIL) -> None:
    if rect.height() > 0:
        # To whole pixels at the sides, or a seam of the picture would shine through.
        left, right = floor(rect.left()), ceil(rect.right())
        rect = QRectF(left, rect.top(), right - left, rect.height())
        veil = QColor(colour)
        veil.setAlphaF(share)
        painter.fillRect(rect, veil)
