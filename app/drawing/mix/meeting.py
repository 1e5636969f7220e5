"""A meeting strip: what the photo shows across a line, over what the wet edge passes through."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter

from app.drawing.ink import kept
from app.drawing.mix.strip import run_of
from app.drawing.mix.text import PITCH, draw_lines, lines_of
from app.look.theme import WALL


@dataclass(frozen=True)
class Passage:
    """From the upper band to the lower.

    Attributes
    ----------
    photo : tuple of str
        The photo's colours across the line; empty when it was not looked at.
    paint : tuple of str
        The colours of the wet edge.
    names : tuple of (share, str)
        What each stretch of the paint's run is called, and where the stretch begins, 0..1.
    """

    photo: tuple[str, ...]
    paint: tuple[str, ...]
    names: tuple[tuple[float, str], ...]


@dataclass(frozen=True)
class MeetingStripView:
    """Two runs of colour, the upper band at the left.

    Attributes
    ----------
    passage : Passage
    labels : tuple of two str
        "photo", "paint"; drawn at the left on the wall.
    text_px : float
    ink, wall_ink : str
    """

    passage: Passage
    labels: tuple[str, str]
    text_px: float
    ink: str
    wall_ink: str


def paint_meeting(
    painter: QPainter, rect: QRectF, view: MeetingStripView, *, wall: QRectF, label: float
) -> None:
    """Photo over paint with no line between, the names below; `label` is the labels' width."""
    size = view.text_px
    below = PITCH * size * names_lines(rect.width() - label, view) + 0.4 * size
    strip = QRectF(wall.left(), rect.top(), wall.width(), rect.height() - below)
    runs = QRectF(rect.left() + label, strip.top() + 4, rect.width() - label, strip.height() - 8)
    half = round(runs.center().y()) if view.passage.photo else runs.top()
    with kept(painter):
        painter.fillRect(strip, QColor(WALL))
        photo = QRectF(runs.left(), runs.top(), runs.width(), half - runs.top())
        paint = QRectF(runs.left(), half, runs.width(), runs.bottom() - half)
        for area, colours, text in (
            (photo, view.passage.photo, view.labels[0]),
            (paint, view.passage.paint, view.labels[1]),
        ):
            if colours:
                painter.fillRect(area, run_of(area, colours))
                spot = QPointF(rect.left(), area.center().y() - 0.5 * PITCH * size)
                draw_lines(painter, spot, (text,), size, view.wall_ink, 600)
        for (share, name), room in zip(view.passage.names, _rooms(runs.width(), view), strict=True):
            spot = QPointF(runs.left() + share * runs.width() + 2, strip.bottom() + 0.25 * size)
            draw_lines(painter, spot, lines_of(name, size, 500, room), size, view.ink, 500)


def names_lines(width: float, view: MeetingStripView) -> int:
    """Lines the longest name takes."""
    return max(
        (
            len(lines_of(name, view.text_px, 500, room))
            for (_, name), room in zip(view.passage.names, _rooms(width, view), strict=True)
        ),
        default=1,
    )


def _rooms(width: float, view: MeetingStripView) -> tuple[float, ...]:
    ends = (*(share for share, _ in view.passage.names[1:]), 1.0)
    return tuple(
        (end - share) * width - 6 for (share, _), end in zip(view.passage.names, ends, strict=True)
    )
