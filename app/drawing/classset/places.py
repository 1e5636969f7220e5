"""A row a student with four places: both sheets, and the worksheet page about each."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from app.drawing.classset.tile import TileView, paint_tile
from app.drawing.fit import elided, wrap
from app.drawing.ink import BLACK, CHOSEN, FIRST, WHITE, draw_text, kept, text_size
from app.drawing.pyramid import Pyramid
from app.look.theme import WALL
from app.look.type import SECOND

PLACES: Final = 4

_LEAST, _MOST, _ASPECT = 84.0, 112.0, 1.34
_CODE, _STATE, _GAP, _BETWEEN, _MARGIN = 62.0, 180.0, 8.0, 28.0, 24.0


@dataclass(frozen=True, eq=False)
class PlaceRow:
    """A student's row.

    Attributes
    ----------
    code : str
    places : four of TileView
        Sheet 1, its page, sheet 2, its page.
    state, second : str
        How the student stands, in two short lines.
    """

    code: str
    places: tuple[TileView, ...]
    state: str = ""
    second: str = ""


@dataclass(frozen=True, eq=False)
class PlacesView:
    """All rows.

    Attributes
    ----------
    headings : tuple of str
        Code, the four places, state.
    chosen : (int, int) or None
        Row and place that the keys are at.
    aimed : (int, int) or None
        Where what is dragged would land.
    """

    rows: tuple[PlaceRow, ...] = ()
    headings: tuple[str, ...] = ()
    chosen: tuple[int, int] | None = None
    aimed: tuple[int, int] | None = None
    text: float = 15.0
    note: float = 13.0
    grow: float = 1.0
    ink: str = "#141414"
    second: str = "#3d3d3d"


@dataclass(frozen=True)
class PlacesShape:
    """What is where, in pixels from the top left of all rows."""

    tile: tuple[float, float]
    left: float
    pitch_x: float
    pitch_y: float
    state: float
    margin: float
    rows: int

    @property
    def height(self) -> float:
        """Of all rows."""
        return self.rows * self.pitch_y + _GAP

    def row(self, number: int) -> QRectF:
        """The tongue of wall that carries a row's places."""
        width = (PLACES - 1) * self.pitch_x + self.tile[0] + 2 * _GAP
        return QRectF(self.left - _GAP, number * self.pitch_y, width, self.tile[1] + 2 * 4)

    def place(self, number: int, place: int) -> QRectF:
        """One place."""
        return QRectF(self.left + place * self.pitch_x, number * self.pitch_y + 4, *self.tile)

    def place_at(self, at: QPointF) -> tuple[int, int] | None:
        """The row and place under a point."""
        number = int(at.y() // self.pitch_y) if self.pitch_y else -1
        if not 0 <= number < self.rows:
            return None
        for place in range(PLACES):
            if self.place(number, place).adjusted(-6, -4, 6, 4).contains(at):
                return number, place
        return None


def places_shape(view: PlacesView, width: float) -> PlacesShape:
    """Lay the rows out for a width."""
    grow = view.grow
    code, state, margin = _CODE * grow, _STATE * grow, _MARGIN
    rest = width - 2 * margin - code - state - 2 * _GAP
    across = max(_LEAST, min(_MOST, (rest - PLACES * _BETWEEN) / PLACES))
    pitch = across + min(_BETWEEN, max(10.0, (rest - PLACES * across) / PLACES))
    left = margin + code + _GAP
    tall = across / _ASPECT
    end = left + (PLACES - 1) * pitch + across + _GAP
    return PlacesShape((across, tall), left, pitch, tall + 16, end + 14, margin, len(view.rows))


def paint_headings(painter: QPainter, rect: QRectF, view: PlacesView, shape: PlacesShape) -> None:
    """Draw the headings, to be kept in sight above the rows."""
    with kept(painter):
        y = rect.center().y()
        if not view.headings:
            return
        at = [shape.margin, *(shape.left + k * shape.pitch_x for k in range(PLACES)), shape.state]
        for k, (x, text) in enumerate(zip(at, view.headings, strict=True)):
            weight = SECOND if k == 0 else FIRST
            room = shape.pitch_x - 6 if 0 < k <= PLACES else rect.right() - x
            wide = text_size(text, view.text, weight)[0]
            size = max(min(view.text, 0.97 * view.text * room / max(1.0, wide)), 0.7 * view.text)
            shown = elided(text, size, room, weight)
            draw_text(painter, QPointF(x, y), shown, size, view.ink, weight, align=0)


def paint_places(painter: QPainter, view: PlacesView, shape: PlacesShape, visible: QRectF) -> None:
    """Draw the rows that are to be seen."""
    with kept(painter):
        first = max(0, int(visible.top() // shape.pitch_y))
        last = min(shape.rows, int(visible.bottom() // shape.pitch_y) + 1)
        for number in range(first, last):
            _paint_row(painter, view, shape, number, visible.right())


def _paint_row(
    painter: QPainter, view: PlacesView, shape: PlacesShape, number: int, right: float
) -> None:
    row, tongue = view.rows[number], shape.row(number)
    painter.fillRect(tongue, QColor(WALL))
    middle = tongue.center().y()
    code = elided(row.code, view.text * 1.2, shape.left - shape.margin - 2 * _GAP, CHOSEN)
    draw_text(
        painter, QPointF(shape.margin, middle), code, view.text * 1.2, view.ink, CHOSEN, align=0
    )
    for place, tile in enumerate(row.places):
        rect = shape.place(number, place)
        if tile.picture is not None and not tile.proposed and place % 2:
            _paint_whole(painter, rect, tile.picture)
        else:
            paint_tile(painter, rect, tile, view.note)
        if (number, place) in (view.chosen, view.aimed):
            painter.setBrush(Qt.BrushStyle.NoBrush)
            for colour, width in ((WHITE, 7.0), (BLACK, 3.5)):
                painter.setPen(QPen(QColor(colour), width))
                painter.drawRoundedRect(rect.adjusted(-1, -1, 1, 1), 3, 3)
    beside = QRectF(shape.state, tongue.top(), right - shape.state - 4, tongue.height())
    _paint_state(painter, view, row, beside)


def _paint_state(painter: QPainter, view: PlacesView, row: PlaceRow, at: QRectF) -> None:
    """Two or three short lines, wrapped where the room is narrow."""
    text, note = round(view.text), round(view.note)
    lines = [(line, text, FIRST) for line in wrap(row.state, text, FIRST, at.width())]
    lines += [(line, note, SECOND) for line in wrap(row.second, note, SECOND, at.width()) if line]
    height = sum(1.25 * size for _, size, _ in lines)
    y = at.top() + max(0.0, (at.height() - height) / 2)
    for line, size, weight in lines:
        colour = view.ink if weight == FIRST else view.second
        middle = QPointF(at.left(), y + 0.62 * size)
        draw_text(painter, middle, line, size, colour, weight, align=0)
        y += 1.25 * size


def _paint_whole(painter: QPainter, rect: QRectF, picture: Pyramid) -> None:
    """A worksheet page whole, on white."""
    image = picture.levels[0]
    scale = min(rect.width() / max(1, image.width()), rect.height() / max(1, image.height()))
    inside = QRectF(0, 0, image.width() * scale, image.height() * scale)
    inside.moveCenter(rect.center())
    picture.draw(painter, inside, painter.device().devicePixelRatio())
