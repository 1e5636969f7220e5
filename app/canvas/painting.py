"""Drawing of lines, brackets and tags: functions of a painter and plain values."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPen, QPolygonF

BLACK = "#0b0b0b"
WHITE = "#ffffff"

# Half above and half below the line itself: black shows on a bright sky, white on a dark one.
_LINE = (1.6, 3.6)
_HEAVY_LINE = (3.0, 6.0)


@dataclass(frozen=True)
class LineView:
    """A line across the photo and its stem to the grip.

    Attributes
    ----------
    left, right : float
        Ends on the photo, pixels.
    y : float
        Height on the photo, pixels.
    grip_x, grip_y : float
        Where the stem meets the grip.
    heavy : bool
        Chosen, or the horizon.
    """

    left: float
    right: float
    y: float
    grip_x: float
    grip_y: float
    heavy: bool


def paint_lines(painter: QPainter, lines: Sequence[LineView]) -> None:
    """Every line in white within black, which survives any sky; heavy ones last."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for line in sorted(lines, key=lambda each: each.heavy):
        white, black = _HEAVY_LINE if line.heavy else _LINE
        points = QPolygonF(
            [
                QPointF(line.left, line.y),
                QPointF(line.right + 2, line.y),
                QPointF(line.grip_x, line.grip_y),
            ]
        )
        for colour, width in ((BLACK, black), (WHITE, white)):
            painter.setPen(
                QPen(QColor(colour), width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap)
            )
            painter.drawPolyline(points)
    painter.restore()


def paint_rival(painter: QPainter, left: float, right: float, y: float) -> None:
    """A dotted line: the sky might end here too."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for colour, size in ((BLACK, 5.0), (WHITE, 3.0)):
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colour))
        x = left + 4
        while x < right:
            painter.drawRect(QRectF(x - size / 2, y - size / 2, size, size))
            x += 16
    painter.restore()


def paint_bracket(painter: QPainter, x: float, top: float, bottom: float, chosen: bool) -> None:
    """The extent of one band, opening towards the photo on its right."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    width = 3.0 if chosen else 1.6
    painter.setPen(QPen(QColor(BLACK), width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
    top, bottom = top + 4, bottom - 4
    if bottom - top < 4:
        middle = (top + bottom) / 2
        top, bottom = middle - 2, middle + 2
    painter.drawPolyline(
        QPolygonF(
            [QPointF(x + 6, top), QPointF(x, top), QPointF(x, bottom), QPointF(x + 6, bottom)]
        )
    )
    painter.restore()


def paint_stem(painter: QPainter, start: QPointF, end: QPointF) -> None:
    """From a letter that had to move aside to the band it names."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(QColor(BLACK), 1.6))
    painter.drawLine(QLineF(start, end))
    painter.restore()


def paint_tag(
    painter: QPainter, rect: QRectF, *, opened: bool, dashed: bool = False, focused: bool = False
) -> None:
    """The ground of a grip or tag: ink, or white when opened, seen on anything."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    if focused:
        for colour, outset, width in ((WHITE, 5.2, 1.6), (BLACK, 3.2, 2.5)):
            painter.setPen(QPen(QColor(colour), width))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            grown = rect.adjusted(-outset, -outset, outset, outset)
            painter.drawRoundedRect(grown, 5 + outset, 5 + outset)
    if dashed:
        painter.setPen(QPen(QColor(BLACK), 2, Qt.PenStyle.DashLine))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(rect.adjusted(1, 1, -1, -1), 4, 4)
    else:
        painter.setPen(Qt.PenStyle.NoPen)
        for colour, inset in ((BLACK, -1.0), (WHITE, 0.0), (BLACK, 1.6)):
            painter.setBrush(QColor(colour))
            painter.drawRoundedRect(rect.adjusted(inset, inset, -inset, -inset), 5, 5)
        if opened:
            painter.setBrush(QColor(WHITE))
            painter.drawRoundedRect(rect.adjusted(3.2, 3.2, -3.2, -3.2), 3, 3)
    painter.restore()


def paint_arrows(painter: QPainter, centre: QPointF, size: float, colour: str) -> None:
    """Two arrowheads: this moves up and down."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(colour))
    half, gap = size * 0.5, size * 0.22
    for sign in (-1, 1):
        base, tip = centre.y() + sign * gap, centre.y() + sign * (gap + size * 0.55)
        painter.drawPolygon(
            QPolygonF(
                [
                    QPointF(centre.x() - half, base),
                    QPointF(centre.x() + half, base),
                    QPointF(centre.x(), tip),
                ]
            )
        )
    painter.restore()


def paint_veil_words(painter: QPainter, rect: QRectF, font: QFont, text: str) -> None:
    """Words on the veil over what is not sky, where there is room for them."""
    painter.save()
    painter.setFont(font)
    needed = painter.fontMetrics().boundingRect(text)
    if needed.width() + 16 <= rect.width() and needed.height() + 4 <= rect.height():
        painter.setPen(QColor(BLACK))
        painter.drawText(rect, Qt.AlignmentFlag.AlignCenter, text)
    painter.restore()
