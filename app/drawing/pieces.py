"""A drawing in pieces, so that only those that changed are painted again."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable, Sequence
from dataclasses import dataclass, field

from PySide6.QtCore import QPointF, QRect, QRectF, QSizeF, Qt
from PySide6.QtGui import QColor, QPainter, QPixmap, QRegion

from app.drawing.ink import lettered_disc
from app.look.type import shared_font

_FROM_LEFT = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter) | int(
    Qt.TextFlag.TextDontClip
)


@dataclass(frozen=True)
class Piece:
    """One thing that is drawn.

    Attributes
    ----------
    key : hashable
        All that its look depends on: pieces of the same key look the same.
    rect : QRectF
        What it may cover.
    paint : callable
        Draws it.
    """

    key: Hashable
    rect: QRectF = field(compare=False)
    paint: Callable[[QPainter], None] = field(compare=False)


def changed(before: Sequence[Piece], after: Sequence[Piece]) -> QRegion | None:
    """Where two drawings differ; None where they may differ anywhere.

    Each is drawn from its first piece to its last; those they share have to come in one order.
    """
    if len(before) == len(after):
        differ = [pair for pair in zip(before, after, strict=True) if pair[0] != pair[1]]
        pieces = [piece for pair in differ for piece in pair]
    else:
        old, new = set(before), set(after)
        if [one for one in before if one in new] != [one for one in after if one in old]:
            return None
        pieces = list(old ^ new)
    region = QRegion()
    for piece in pieces:
        # A pixel more: edges are soft, and screens have fractions of pixels.
        region += piece.rect.toAlignedRect().adjusted(-1, -1, 1, 1)
    return region


def paint_pieces(painter: QPainter, pieces: Sequence[Piece], region: QRegion | None = None) -> None:
    """Draw the pieces, or those alone that a region meets."""
    for piece in pieces:
        if region is None or region.intersects(piece.rect.toAlignedRect()):
            piece.paint(painter)


def rects_of(region: QRegion) -> list[QRect]:
    """The rectangles a region is made of."""
    # PySide's stubs do not know that a region can be walked.
    rects: Iterable[QRect] = region  # type: ignore[assignment]
    return list(rects)


def copy_region(painter: QPainter, picture: QPixmap, region: QRegion) -> None:
    """Copy the part of a picture of the whole widget that is painted anew."""
    ratio = picture.devicePixelRatio()
    for rect in rects_of(region):
        if ratio == 1.0:
            painter.drawPixmap(rect.topLeft(), picture, rect)
        else:
            source = QRectF(QPointF(rect.topLeft()) * ratio, QSizeF(rect.size()) * ratio)
            painter.drawPixmap(QRectF(rect), picture, source)


def lettered_piece(
    centre: QPointF,
    radius: float,
    letter: str,
    fill: str,
    ink: str,
    *,
    chosen: bool,
    size: float,
    second: bool,
) -> Piece:
    """A lettered disc (`app.drawing.ink.lettered_disc`) as a piece."""

    def paint(painter: QPainter) -> None:
        lettered_disc(
            painter, centre, radius, letter, fill, ink, chosen=chosen, size=size, second=second
        )

    x, y = centre.x(), centre.y()
    reach = (1.27 if chosen else 1.0) * radius + 1
    rect = QRectF(x - reach, y - reach, 2 * reach, 2 * reach)
    return Piece((x, y, radius, letter, fill, ink, chosen, size, second), rect, paint)


def text_piece(rect: QRectF, text: str, size: int, weight: int, colour: str) -> Piece:
    """One line of words from the left of a box, in the middle of its height."""

    def paint(painter: QPainter) -> None:
        painter.setFont(shared_font(size, weight))
        painter.setPen(QColor(colour))
        painter.drawText(rect, _FROM_LEFT, text)

    # Letters may reach a little out of their box.
    more = 0.3 * size
    key = (text, size, weight, colour, rect.getRect())
    return Piece(key, rect.adjusted(-more, -more, more, more), paint)
