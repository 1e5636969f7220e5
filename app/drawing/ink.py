"""What all drawings share: text at any size, and strokes that show on any ground."""

from __future__ import annotations

from functools import lru_cache
from threading import get_ident
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPainterPath, QPen

from app.look.type import CHOSEN, FIRST, font, shared_font

BLACK: Final = "#0b0b0b"
WHITE: Final = "#ffffff"
INK: Final = "#141414"

_SMOOTH: Final = QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing

# Text is measured at this many pixels and scaled, so that a drawing in millimetres works too.
_MEASURE: Final = 100

__all__ = ["BLACK", "CHOSEN", "FIRST", "INK", "WHITE", "draw_text", "haloed", "kept", "text_size"]


class _Kept:
    __slots__ = ("_painter",)

    def __init__(self, painter: QPainter) -> None:
        self._painter = painter

    def __enter__(self) -> QPainter:
        self._painter.save()
        self._painter.setRenderHints(_SMOOTH)
        return self._painter

    def __exit__(self, *exception: object) -> None:
        self._painter.restore()


def kept(painter: QPainter) -> _Kept:
    """The painter, antialiasing, for a `with`; restored afterwards."""
    return _Kept(painter)


# benchmarks/cache_hits.py: 3,443 calls, 4 misses of 0.04 ms.
@lru_cache(maxsize=64)
def _metrics_in(thread: int, weight: int) -> QFontMetricsF:
    return QFontMetricsF(font(_MEASURE, weight))


def _metrics(weight: int) -> QFontMetricsF:
    # Workers draw cards while the window draws itself: fonts are not shared between threads.
    return _metrics_in(get_ident(), weight)


# benchmarks/cache_hits.py: 11,259 calls, 343 misses of 0.02 ms.
@lru_cache(maxsize=4096)
def _width(text: str, weight: int) -> float:
    return _metrics(weight).horizontalAdvance(text) / _MEASURE


def text_size(text: str, size: float, weight: int = FIRST) -> tuple[float, float]:
    """Width and line height of one line of text set at `size`."""
    return _width(text, weight) * size, 1.2 * size


def draw_text(
    painter: QPainter,
    centre: QPointF,
    text: str,
    size: float,
    colour: str,
    weight: int = FIRST,
    *,
    align: float = 0.5,
) -> None:
    """One line of text, its capitals centred on a height.

    Parameters
    ----------
    centre : QPointF
        The height is the middle of the capitals; what of the width is there tells `align`.
    size : float
        Size of the face in the painter's units, any fraction.
    align : float
        0: `centre` is the left end; 0.5: the middle; 1: the right end.
    """
    metrics = _metrics(weight)
    width = _width(text, weight) * size
    baseline = centre.y() + 0.5 * metrics.capHeight() * size / _MEASURE
    left = centre.x() - align * width
    painter.setPen(QColor(colour))
    if size >= 8.0:
        # Whole pixel sizes are drawn crisper than scaled ones.
        painter.setFont(shared_font(size, weight))
        painter.drawText(QPointF(left, baseline), text)
        return
    painter.save()
    painter.translate(left, baseline)
    painter.scale(size / _MEASURE, size / _MEASURE)
    painter.setFont(font(_MEASURE, weight))
    painter.drawText(QPointF(0, 0), text)
    painter.restore()


def haloed(
    painter: QPainter,
    path: QPainterPath,
    width: float,
    halo: float,
    dashes: tuple[float, float] | None = None,
    *,
    core: str = BLACK,
    around: str = WHITE,
    flat: bool = True,
) -> None:
    """A stroke within a wider one of the opposite tone: seen on anything.

    Parameters
    ----------
    width, halo : float
        Widths of the inner and of the outer stroke.
    dashes : (on, off) or None
        Lengths; the outer stroke stays whole.
    """
    cap = Qt.PenCapStyle.FlatCap if flat else Qt.PenCapStyle.RoundCap
    painter.setBrush(Qt.BrushStyle.NoBrush)
    outer = QPen(QColor(around), halo, Qt.PenStyle.SolidLine, cap, Qt.PenJoinStyle.MiterJoin)
    painter.setPen(outer)
    painter.drawPath(path)
    inner = QPen(QColor(core), width, Qt.PenStyle.SolidLine, cap, Qt.PenJoinStyle.MiterJoin)
    if dashes is not None:
        inner.setDashPattern([dashes[0] / width, dashes[1] / width])
    painter.setPen(inner)
    painter.drawPath(path)


def disc(
    painter: QPainter, centre: QPointF, radius: float, fill: str, edge: str, width: float
) -> None:
    """A filled disc whose edge is inside `radius`."""
    painter.setPen(QPen(QColor(edge), width))
    painter.setBrush(QColor(fill))
    inside = radius - width / 2
    painter.drawEllipse(centre, inside, inside)


def ring(painter: QPainter, centre: QPointF, radius: float, colour: str, width: float) -> None:
    """A ring whose outer edge is at `radius`."""
    painter.setPen(QPen(QColor(colour), width))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    inside = radius - width / 2
    painter.drawEllipse(centre, inside, inside)


SECOND_RADIUS: Final = 0.76
SECOND_LETTER: Final = 1.3
"""Of a second colour's disc: its radius, and how much larger its letter is by that radius."""


def lettered_disc(
    painter: QPainter,
    centre: QPointF,
    radius: float,
    letter: str,
    fill: str,
    ink: str,
    *,
    chosen: bool = False,
    size: float = 1.02,
    second: bool = False,
) -> None:
    """A letter on a disc within a white and a black ring; chosen has two rings more.

    `radius` is that of the black ring; the chosen rings are outside it. `size` is the letter's,
    as a fraction of the radius. A band's second colour is smaller, its letter less so.
    """
    if second:
        radius, size = SECOND_RADIUS * radius, SECOND_LETTER * size
    thin = 0.085 * radius
    if chosen:
        ring(painter, centre, radius * 1.27, BLACK, 0.1 * radius)
        ring(painter, centre, radius * 1.18, WHITE, 0.15 * radius)
        ring(painter, centre, radius * 1.04, BLACK, 0.1 * radius)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(BLACK))
    painter.drawEllipse(centre, radius, radius)
    painter.setBrush(QColor(WHITE))
    painter.drawEllipse(centre, radius - thin, radius - thin)
    painter.setBrush(QColor(fill))
    inside = radius - 2.4 * thin
    painter.drawEllipse(centre, inside, inside)
    fitted = size if len(letter) == 1 else 0.83 * size
    draw_text(painter, centre, letter, radius * fitted, ink, CHOSEN)


def along(start: QPointF, end: QPointF) -> QPainterPath:
    """A straight path."""
    path = QPainterPath(start)
    path.lineTo(end)
    return path


def box(rect: QRectF, radius: float) -> QPainterPath:
    """A rounded box as a path."""
    path = QPainterPath()
    path.addRoundedRect(rect, radius, radius)
    return path
