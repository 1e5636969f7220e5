"""The dots of a whole class: a line of them, and the field that holds every band's lines.

Printed and shown alike; whoever draws says in which colours.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from app.drawing.ink import BLACK, WHITE, draw_text, kept, text_size
from app.drawing.marks import BadgeView, paint_badge
from app.drawing.pyramid import Pyramid
from app.look.type import CHOSEN, FIRST, SECOND

FIELD: Final = "#dcdcdc"
"""Where sheets match, on white paper."""

MOST_GAP: Final = 4.0
"""Tolerances at the ends of a line of dots; what is further off stands there too."""

_DOT: Final = 0.11
"""Largest radius of a dot, by the height of its line."""

_LINE: Final = 1.25
"""Height of a line of text by its size."""


@dataclass(frozen=True)
class DotsView:
    """A line of dots: one for each sheet that is off, further out the more it is off.

    Attributes
    ----------
    gaps : tuple of float
        Signed tolerances of every sheet that can be judged.
    words : str
        What the grey field says: how many match.
    filled : bool
        Second sheets have filled dots.
    bar : bool
        A heavy bar at the left: it is spoken of.
    text : float
        Size of the words.
    ink, field, ground : str
        Of lines and words; of the field; inside an empty dot.
    """

    gaps: tuple[float, ...]
    words: str
    filled: bool
    bar: bool
    text: float
    ink: str = BLACK
    field: str = FIELD
    ground: str = WHITE


@dataclass(frozen=True)
class Column:
    """One quality: its title, and what a dot to the left and to the right says."""

    title: str
    below: str
    above: str


@dataclass(frozen=True, eq=False)
class FieldView:
    """Every band's lines of dots under the titles of the qualities.

    Attributes
    ----------
    letters : tuple of str
        The bands, from the top.
    edges : tuple of float
        One more: where they begin and end, as shares of the sky's height.
    sky : Pyramid or None
    columns : tuple of Column
    lines : mapping of (row, column, 0 or 1) to DotsView
        First sheets and second ones; nothing where nothing is judged. Their size of text, and
        their colours, are this view's.
    text, note : float
        Sizes of titles, and of the ways.
    ink, second, field, ground, wall : str
        Colours; `wall` is what the sky lies on.
    """

    letters: tuple[str, ...]
    edges: tuple[float, ...]
    sky: Pyramid | None
    columns: tuple[Column, ...]
    lines: Mapping[tuple[int, int, int], DotsView]
    text: float
    note: float
    ink: str
    second: str
    field: str
    ground: str
    wall: str


@dataclass(frozen=True)
class FieldPlaces:
    """Where all of it is.

    Attributes
    ----------
    tongue : QRectF
        The wall under the sky.
    chips : tuple of QRectF
        Each band's piece of the sky.
    heads : tuple of QRectF
        Above the columns.
    cells : tuple of tuple of QRectF
        By row and column; the upper half is the first sheets'.
    """

    tongue: QRectF
    chips: tuple[QRectF, ...]
    heads: tuple[QRectF, ...]
    cells: tuple[tuple[QRectF, ...], ...]


def field_places(rect: QRectF, view: FieldView) -> FieldPlaces:
    """Lay the field out in `rect`."""
    rows, count = len(view.letters), len(view.columns)
    badge = 1.1 * view.text
    tongue_width = 2.2 * badge + 0.09 * rect.width()
    head = _LINE * (view.text + 2 * view.note) + 0.3 * view.text
    top = rect.top() + head
    gap = min(0.035 * rect.width(), 1.6 * view.text)
    left = rect.left() + tongue_width + 1.6 * gap
    width = (rect.right() - left - (count - 1) * gap) / max(count, 1)
    pitch = (rect.bottom() - top) / max(rows, 1)
    between = min(0.14 * pitch, 0.9 * view.text)
    heads = tuple(QRectF(left + k * (width + gap), rect.top(), width, head) for k in range(count))
    cells = tuple(
        tuple(
            QRectF(left + k * (width + gap), top + row * pitch, width, pitch - between)
            for k in range(count)
        )
        for row in range(rows)
    )
    pad = 0.4 * badge
    x = rect.left() + 2.2 * badge
    chips = tuple(
        QRectF(x, top + row * pitch, tongue_width - 2.2 * badge - pad, pitch - between)
        for row in range(rows)
    )
    tongue = QRectF(rect.left(), top - pad, tongue_width, rect.bottom() - top - between + 2 * pad)
    return FieldPlaces(tongue, chips, heads, cells)


def paint_field(painter: QPainter, rect: QRectF, view: FieldView, ratio: float = 1.0) -> None:
    """The whole field; `ratio` is the device's pixels by unit."""
    places = field_places(rect, view)
    with kept(painter):
        painter.fillRect(places.tongue, QColor(view.wall))
        for row, letter in enumerate(view.letters):
            chip = places.chips[row]
            _paint_band(painter, chip, view, row, ratio)
            side = 1.5 * view.text
            middle = QPointF((places.tongue.left() + chip.left()) / 2, chip.center().y())
            spot = QRectF(middle.x() - side / 2, middle.y() - side / 2, side, side)
            paint_badge(painter, spot, BadgeView(letter))
        for place, column in zip(places.heads, view.columns, strict=True):
            _paint_head(painter, place, column, view)
        for (row, k, index), dots in view.lines.items():
            cell = places.cells[row][k]
            half = cell.height() / 2
            paint_dots(
                painter, QRectF(cell.left(), cell.top() + index * half, cell.width(), half), dots
            )


def _paint_band(painter: QPainter, chip: QRectF, view: FieldView, row: int, ratio: float) -> None:
    """One band of the sky, as tall as every other whatever its share."""
    if view.sky is None:
        return
    top, bottom = view.edges[row], view.edges[row + 1]
    share = max(bottom - top, 1e-6)
    whole = QRectF(
        chip.left(), chip.top() - top / share * chip.height(), chip.width(), chip.height() / share
    )
    painter.save()
    painter.setClipRect(chip)
    view.sky.draw(painter, whole, ratio)
    painter.restore()


def _paint_head(painter: QPainter, place: QRectF, column: Column, view: FieldView) -> None:
    x, y = place.center().x(), place.top() + 0.5 * _LINE * view.text
    draw_text(painter, QPointF(x, y), column.title, _fit(column.title, view.text, place), view.ink)
    y += 0.5 * _LINE * (view.text + view.note)
    size = view.note
    wide = text_size(column.below, size, SECOND)[0] + text_size(column.above, size, SECOND)[0]
    if wide + size > place.width():  # the second below the first
        size = min(_fit(column.below, size, place), _fit(column.above, size, place))
        _way(painter, QPointF(place.left(), y), column.below, size, view, 0.0)
        y += _LINE * view.note
    else:
        y += 0.5 * _LINE * view.note
        _way(painter, QPointF(place.left(), y), column.below, size, view, 0.0)
    _way(painter, QPointF(place.right(), y), column.above, size, view, 1.0)


def _way(
    painter: QPainter, spot: QPointF, text: str, size: float, view: FieldView, align: float
) -> None:
    draw_text(painter, spot, text, size, view.second, SECOND, align=align)


def _fit(text: str, size: float, place: QRectF) -> float:
    return size * min(1.0, place.width() / max(text_size(text, size, FIRST)[0], 1e-9))


def paint_dots(painter: QPainter, rect: QRectF, view: DotsView) -> None:
    """The line at the foot of `rect`, the field in its middle, dots stacked upon the line."""
    middle, half = rect.center().x(), rect.width() / 2
    unit = half / MOST_GAP
    with kept(painter):
        field = QRectF(middle - unit, rect.top(), 2 * unit, rect.height())
        painter.fillRect(field, QColor(view.field))
        painter.setPen(QPen(QColor(view.ink), 0.025 * rect.height()))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        if view.bar:
            width = 0.035 * rect.width()
            bar = QRectF(rect.left() - 2 * width, rect.top(), width, rect.height())
            painter.fillRect(bar, QColor(view.ink))
        weight = CHOSEN if view.filled else FIRST
        wide = text_size(view.words, view.text, weight)[0]
        size = view.text * min(1.0, 1.7 * unit / max(wide, 1e-9), 0.8 * rect.height() / view.text)
        draw_text(painter, QPointF(middle, rect.center().y()), view.words, size, view.ink, weight)
        _paint_stacks(painter, rect, view, unit)


def _paint_stacks(painter: QPainter, rect: QRectF, view: DotsView, unit: float) -> None:
    room = (MOST_GAP - 1) * unit
    if room < 1 or rect.height() < 1:  # too small for any dot
        return
    below = sorted(-gap for gap in view.gaps if gap < -1)
    above = sorted(gap for gap in view.gaps if gap > 1)
    radius = min(_radius(below, room, rect.height()), _radius(above, room, rect.height()))
    painter.setPen(QPen(QColor(view.ink), 0.25 * radius))
    painter.setBrush(QColor(view.ink if view.filled else view.ground))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for gaps, way in ((below, -1), (above, 1)):
        for column, level in stacked(gaps, room, rect.height(), radius) or ():
            x = rect.center().x() + way * (unit + (2 * column + 1) * radius)
            y = rect.bottom() - (2 * level + 1) * radius - 0.03 * rect.height()
            painter.drawEllipse(QPointF(x, y), 0.86 * radius, 0.86 * radius)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _radius(gaps: Sequence[float], room: float, height: float) -> float:
    """The largest radius at which all dots of one side have their place."""
    radius = _DOT * height
    while stacked(gaps, room, height, radius) is None:
        radius *= 0.94
    return radius


def stacked(
    gaps: Sequence[float], room: float, height: float, radius: float
) -> list[tuple[int, int]] | None:
    """Where the dots beside the field go: (column outwards, level upwards) each.

    A dot stands where its gap belongs, or in the next free column outwards, so that none overtakes
    another; None where not all fit.

    Parameters
    ----------
    gaps : sequence of float
        Tolerances above 1, the smallest first.
    room, height : float
        Of one side of the field.
    radius : float

    Examples
    --------
    >>> stacked([1.1, 1.1, 1.1, 3.9], 12.0, 4.2, 1.0)
    [(0, 0), (0, 1), (1, 0), (5, 0)]
    """
    columns, most = int(room / (2 * radius)), int(0.97 * height / (2 * radius))
    places: list[tuple[int, int]] = []
    now = level = 0
    for gap in gaps:
        share = min((gap - 1) / (MOST_GAP - 1), 1.0)
        own = min(int(share * columns), columns - 1)
        if own > now:
            now, level = own, 0
        elif level >= most:
            now, level = now + 1, 0
        if now >= columns or most < 1:
            return _pressed(gaps, columns, most)
        places.append((now, level))
        level += 1
    return places


def _pressed(gaps: Sequence[float], columns: int, most: int) -> list[tuple[int, int]] | None:
    """The same where dots at the far end leave no room: all moved towards the field."""
    if len(gaps) > columns * most:
        return None
    left: dict[int, int] = {}
    column = columns - 1
    places = []
    for gap in reversed(gaps):
        own = min(int(min((gap - 1) / (MOST_GAP - 1), 1.0) * columns), columns - 1)
        column = min(column, own)
        while left.get(column, 0) >= most:
            column -= 1
        if column < 0:
            return None
        places.append((column, left.get(column, 0)))
        left[column] = left.get(column, 0) + 1
    return places[::-1]
