"""Small marks: badges, chips, verdicts, parts bars and tags."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from app.drawing.ink import (
    BLACK,
    CHOSEN,
    FIRST,
    INK,
    WHITE,
    along,
    box,
    draw_text,
    haloed,
    kept,
    lettered_disc,
    text_size,
)
from app.look.theme import WALL
from core.reading.ground import lost_on
from core.reading.quality import Verdict

# Width of one part in a parts bar, by its height.
PART: Final = 0.77
GAP: Final = 0.15


@dataclass(frozen=True)
class BadgeView:
    """A band's letter.

    Attributes
    ----------
    letter : str
    fill, ink : str
        Ink with white where the badge is a label; the band's colour where it is the datum.
    chosen : bool
    size : float
        The letter's size as a fraction of the disc's radius.
    """

    letter: str
    fill: str = INK
    ink: str = WHITE
    chosen: bool = False
    size: float = 1.02


@dataclass(frozen=True)
class ChipView:
    """A patch of colour on the wall, never boxed.

    Attributes
    ----------
    colour : str or None
        None: nothing there yet, a dashed outline.
    hatched : bool
        Mud: strokes over the colour.
    framed : bool
        The match: double-framed.
    second : str or None
        Another colour at the right, of a band that holds two.
    share : float
        What the second takes of the width.
    """

    colour: str | None
    hatched: bool = False
    framed: bool = False
    second: str | None = None
    share: float = 0.0


@dataclass(frozen=True)
class VerdictView:
    """A verdict with its word; "cannot tell" is the word alone.

    `ink` and `ground` are the page's.
    """

    kind: Verdict
    word: str
    ink: str = INK
    ground: str = "#ededed"


@dataclass(frozen=True)
class PartsBarView:
    """A mix in parts.

    Attributes
    ----------
    parts : tuple of (count, colour, ink)
        Each paint's parts, its colour and black or white upon it.
    """

    parts: tuple[tuple[int, str, str], ...]


@dataclass(frozen=True)
class TagView:
    """Words on an ink tag, with a stem to what they mean when `anchor` is given (x, y)."""

    text: str
    anchor: tuple[float, float] | None = None


def paint_badge(painter: QPainter, rect: QRectF, view: BadgeView) -> None:
    """A badge as large as `rect`; the rings of a chosen one are outside by 0.27 of its radius."""
    radius = min(rect.width(), rect.height()) / 2
    with kept(painter):
        lettered_disc(
            painter,
            rect.center(),
            radius,
            view.letter,
            view.fill,
            view.ink,
            chosen=view.chosen,
            size=view.size,
        )


def paint_chip(painter: QPainter, rect: QRectF, view: ChipView) -> None:
    """A chip filling `rect`; a frame is around it."""
    unit = max(min(rect.width(), rect.height()) / 64, 0.02)
    with kept(painter):
        if view.colour is None:
            pen = QPen(QColor(BLACK), 1.2 * unit)
            pen.setDashPattern([4, 3])
            painter.setPen(pen)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(rect.adjusted(unit, unit, -unit, -unit))
            return
        painter.fillRect(rect, QColor(view.colour))
        if view.second is not None:
            width = view.share * rect.width()
            painter.fillRect(rect.adjusted(rect.width() - width, 0, 0, 0), QColor(view.second))
            lost = lost_on(view.second, WALL) or lost_on(view.colour, WALL)
        else:
            lost = lost_on(view.colour, WALL)
        if lost:
            # A grey like the wall's would vanish: a hairline says where it ends.
            painter.setPen(QPen(QColor(BLACK), 1.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(rect.adjusted(0.5, 0.5, -0.5, -0.5))
        if view.hatched:
            painter.save()
            painter.setClipRect(rect)
            painter.setPen(QPen(QColor(BLACK), 1.2 * unit))
            step, x = 9 * unit, rect.left() - rect.height()
            while x < rect.right():
                painter.drawLine(QPointF(x, rect.bottom()), QPointF(x + rect.height(), rect.top()))
                x += step
            painter.restore()
        if view.framed:
            path = QPainterPath()
            path.addRect(rect.adjusted(-unit, -unit, unit, unit))
            haloed(painter, path, 2.0 * unit, 6.5 * unit, core=WHITE, around=BLACK)


def paint_verdict(painter: QPainter, rect: QRectF, view: VerdictView) -> None:
    """Symbol at the left of `rect`, the word beside it; the symbol is as high as the rect."""
    side = rect.height()
    radius = 0.46 * side
    centre = QPointF(rect.left() + side / 2, rect.center().y())
    size = 0.82 * side
    left = rect.left() + (1.35 * side if view.kind != "cannot tell" else 0.0)
    with kept(painter):
        if view.kind != "cannot tell":
            _verdict_symbol(painter, centre, radius, view)
        spot = QPointF(left, rect.center().y())
        weight = FIRST if view.kind != "cannot tell" else 400
        draw_text(painter, spot, view.word, size, view.ink, weight, align=0.0)


def verdict_width(view: VerdictView, height: float) -> float:
    """Width a verdict needs at a height."""
    word = text_size(view.word, 0.82 * height)[0]
    return word + (1.35 * height if view.kind != "cannot tell" else 0.0)


def _verdict_symbol(painter: QPainter, centre: QPointF, radius: float, view: VerdictView) -> None:
    width = 0.17 * radius
    painter.setPen(QPen(QColor(view.ink), width))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if view.kind == "matches":
        painter.setBrush(QColor(view.ink))
    inside = radius - width / 2
    painter.drawEllipse(centre, inside, inside)
    if view.kind == "close":
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(view.ink))
        square = QRectF(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius)
        painter.drawPie(square, -90 * 16, 180 * 16)
    if view.kind == "matches":
        tick = QPainterPath(centre + QPointF(-0.4, 0.05) * radius)
        tick.lineTo(centre + QPointF(-0.1, 0.36) * radius)
        tick.lineTo(centre + QPointF(0.42, -0.34) * radius)
        pen = QPen(QColor(view.ground), 0.19 * radius)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(tick)


def parts_cell(rect: QRectF, view: PartsBarView) -> float:
    """Width of one part: by the height, or narrower so that all fit."""
    total = sum(count for count, _, _ in view.parts)
    gaps = GAP * rect.height() * (len(view.parts) - 1)
    return min(PART * rect.height(), (rect.width() - gaps) / max(total, 1))


def paint_parts_bar(painter: QPainter, rect: QRectF, view: PartsBarView) -> None:
    """A cell a part from the left of `rect`, each paint's count upon it."""
    cell, height = parts_cell(rect, view), rect.height()
    x = rect.left()
    with kept(painter):
        for count, colour, ink in view.parts:
            width = count * cell
            painter.fillRect(QRectF(x, rect.top(), width, height), QColor(colour))
            painter.setPen(QPen(QColor(ink), 0.05 * height))
            for part in range(1, count):
                at = x + part * cell
                painter.drawLine(
                    QPointF(at, rect.bottom() - 0.22 * height), QPointF(at, rect.bottom())
                )
            size = min(0.56 * height, 1.5 * width)
            spot = QPointF(x + width / 2, rect.top() + 0.46 * height)
            draw_text(painter, spot, str(count), size, ink, CHOSEN)
            x += width + GAP * height


def tag_width(text: str, height: float) -> float:
    """Width of a tag of a height."""
    return text_size(text, 0.56 * height, CHOSEN)[0] + 0.72 * height


def paint_tag(painter: QPainter, rect: QRectF, view: TagView) -> None:
    """An ink tag filling `rect`, its stem first so that the tag covers the stem's end."""
    height = rect.height()
    with kept(painter):
        if view.anchor is not None:
            path = along(rect.center(), QPointF(*view.anchor))
            haloed(painter, path, 0.075 * height, 0.17 * height, flat=False)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(WHITE))
        painter.drawPath(box(rect, 0.2 * height))
        painter.setBrush(QColor(BLACK))
        inset = 0.07 * height
        painter.drawPath(box(rect.adjusted(inset, inset, -inset, -inset), 0.15 * height))
        draw_text(painter, rect.center(), view.text, 0.56 * height, WHITE, CHOSEN)
