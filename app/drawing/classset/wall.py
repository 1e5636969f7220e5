"""The pin-up wall: a row begins with the photo, then students, two sheets each, all level.

Drawn from a frozen view; what is where comes from `wall_shape`, which the mouse asks too.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from app.drawing.classset.tile import TileView, paint_tile, same_tile
from app.drawing.ink import BLACK, CHOSEN, WHITE, draw_text, kept, text_size
from app.drawing.marks import TagView, paint_tag, tag_width
from app.look.icons import paint_icon

LEAST_TILE: Final = 112
"""Pixels across below which a sheet tells nothing."""

# In pixels at 100 % text: letters left of the photo, ticks left of a student, between two sheets,
# the code above, between rows, margins.
_LETTERS, _TICKS, _BETWEEN, _LABEL, _GAP, _MARGIN = 34.0, 20.0, 4.0, 24.0, 10.0, 20.0

_RING: Final = 12.0
"""Pixels around a student that the frame of the chosen one and the ticks reach."""


@dataclass(frozen=True, eq=False)
class StudentView:
    """A student on the wall.

    Attributes
    ----------
    code : str
    tiles : two TileView
    tag : str
        On an ink tag: "late", "which of two?".
    done : str
        "marked" where the teacher went on; empty otherwise.
    """

    code: str
    tiles: tuple[TileView, TileView]
    tag: str = ""
    done: str = ""


@dataclass(frozen=True, eq=False)
class WallView:
    """Everything on the wall.

    Attributes
    ----------
    photo : TileView
        The sky of the class's photo.
    photo_word : str
    letters : tuple of str
    edges : tuple of float
        Of the bands, as shares of the sky's height: one more than letters.
    students : tuple of StudentView
    chosen : int or None
    text : float
        Size of the text in pixels.
    grow : float
        The reader's factor.
    aspect : float
        Width over height of the sky.
    """

    photo: TileView = TileView()
    photo_word: str = ""
    letters: tuple[str, ...] = ()
    edges: tuple[float, ...] = (0.0, 1.0)
    students: tuple[StudentView, ...] = ()
    chosen: int | None = None
    text: float = 13.0
    grow: float = 1.0
    aspect: float = 1.5


@dataclass(frozen=True)
class WallShape:
    """What is where on the wall, in pixels from its top left.

    Attributes
    ----------
    columns : int
        Students in a row.
    tile : (float, float)
        Width and height of a sheet.
    """

    columns: int
    tile: tuple[float, float]
    left: float
    pitch_x: float
    pitch_y: float
    grow: float
    rows: int = field(default=0)

    @property
    def height(self) -> float:
        """Of the whole wall."""
        return self.rows * self.pitch_y + _GAP * self.grow

    def photo(self, row: int) -> QRectF:
        """The photo at the beginning of a row."""
        x = (_MARGIN + _LETTERS) * self.grow
        return QRectF(x, row * self.pitch_y + _LABEL * self.grow, *self.tile)

    def sheet(self, number: int, index: int) -> QRectF:
        """A sheet of student `number`, counted from 0."""
        row, column = divmod(number, self.columns)
        x = self.left + column * self.pitch_x + index * (self.tile[0] + _BETWEEN)
        return QRectF(x, row * self.pitch_y + _LABEL * self.grow, *self.tile)

    def student(self, number: int) -> QRectF:
        """A student's two sheets with the code above."""
        both = self.sheet(number, 0).united(self.sheet(number, 1))
        return both.adjusted(0, -_LABEL * self.grow, 0, 0)

    def around(self, number: int) -> QRectF:
        """All that is drawn of a student: the ticks on the left, the ring of the chosen one."""
        return self.student(number).adjusted(-_RING, -_RING, _RING, _RING)

    def beside(self, row: int) -> QRectF:
        """The photo of a row with its letters and the word above."""
        photo = self.photo(row)
        return photo.adjusted(-photo.left(), -_LABEL * self.grow, 0, 0)

    def student_at(self, at: QPointF, count: int) -> int | None:
        """The student at a place."""
        for number in range(count):
            if self.student(number).adjusted(-4, 0, 4, 4).contains(at):
                return number
        return None


def wall_shape(view: WallView, width: float) -> WallShape:
    """Lay the wall out for a width: as many students in a row as stay large enough."""
    grow = view.grow
    around = (_LETTERS + 2 * _MARGIN) * grow

    def tile_of(columns: int) -> float:
        rest = width - around - columns * (_TICKS * grow + _BETWEEN)
        return rest / (2 * columns + 1)

    columns = 1
    while tile_of(columns + 1) >= LEAST_TILE:
        columns += 1
    across = max(40.0, tile_of(columns))
    tall = across / min(max(view.aspect, 0.6), 2.4)
    left = (_MARGIN + _LETTERS) * grow + across + _TICKS * grow
    pitch_x = 2 * across + _BETWEEN + _TICKS * grow
    rows = -(-len(view.students) // columns)
    pitch_y = tall + (_LABEL + _GAP) * grow
    return WallShape(columns, (across, tall), left, pitch_x, pitch_y, grow, rows)


def changed_students(before: WallView, after: WallView) -> tuple[int, ...] | None:
    """The students who are drawn otherwise; None where more is than they."""
    if not same_tile(before.photo, after.photo) or _frame(before) != _frame(after):
        return None
    pairs = zip(before.students, after.students, strict=True)
    changed = {number for number, (one, other) in enumerate(pairs) if not _same(one, other)}
    if before.chosen != after.chosen:
        changed |= {one for one in (before.chosen, after.chosen) if one is not None}
    return tuple(sorted(changed))


def _frame(view: WallView) -> tuple[object, ...]:
    size = (view.text, view.grow, view.aspect)
    return (view.photo_word, view.letters, view.edges, len(view.students), *size)


def _same(one: StudentView, other: StudentView) -> bool:
    tiles = zip(one.tiles, other.tiles, strict=True)
    words = (one.code, one.tag, one.done) == (other.code, other.tag, other.done)
    return words and all(same_tile(a, b) for a, b in tiles)


def paint_wall(
    painter: QPainter, rect: QRectF, view: WallView, shape: WallShape, visible: QRectF
) -> None:
    """Draw what is to be seen.

    Parameters
    ----------
    rect : QRectF
        The whole wall.
    visible : QRectF
        What of it is shown.
    """
    with kept(painter):
        first = max(0, int(visible.top() // shape.pitch_y))
        last = min(shape.rows, int(visible.bottom() // shape.pitch_y) + 1)
        for row in range(first, last):
            if shape.beside(row).intersects(visible):
                _paint_photo(painter, view, shape, row)
            begin = row * shape.columns
            for number in range(begin, min(begin + shape.columns, len(view.students))):
                if shape.around(number).intersects(visible):
                    _paint_student(painter, view, shape, number)


def _paint_photo(painter: QPainter, view: WallView, shape: WallShape, row: int) -> None:
    rect = shape.photo(row)
    paint_tile(painter, rect, view.photo, view.text)
    if row == 0:
        label = QPointF(rect.left(), rect.top() - 0.5 * _LABEL * view.grow)
        draw_text(painter, label, view.photo_word, view.text, BLACK, align=0)
    x = rect.left() - 0.42 * _LETTERS * view.grow
    step = rect.height() * min(
        (b - a for a, b in zip(view.edges, view.edges[1:], strict=False)), default=1.0
    )
    size = min(view.text, max(9.0, step * 0.95))
    for letter, top, bottom in zip(view.letters, view.edges, view.edges[1:], strict=False):
        y = rect.top() + rect.height() * (top + bottom) / 2
        draw_text(painter, QPointF(x, y), letter, size, BLACK, CHOSEN)


def _paint_student(painter: QPainter, view: WallView, shape: WallShape, number: int) -> None:
    student, whole = view.students[number], shape.student(number)
    middle = whole.top() + 0.5 * _LABEL * view.grow
    chosen = number == view.chosen
    if chosen:
        ring = whole.adjusted(-7, 0, 7, 7)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for colour, width in ((WHITE, 7.0), (BLACK, 3.5)):
            painter.setPen(QPen(QColor(colour), width))
            painter.drawRoundedRect(ring, 6, 6)
    for index in (0, 1):
        paint_tile(painter, shape.sheet(number, index), student.tiles[index], view.text)
    _paint_ticks(painter, view, shape.sheet(number, 0))
    size = view.text * (1.23 if chosen else 1.15)
    draw_text(painter, QPointF(whole.left(), middle), student.code, size, BLACK, CHOSEN, align=0)
    right = whole.right()
    if student.tag:
        height = 0.86 * _LABEL * view.grow
        width = tag_width(student.tag, height)
        paint_tag(
            painter,
            QRectF(right - width, middle - height / 2 - 1, width, height),
            TagView(student.tag),
        )
        right -= width + 8
    if student.done:
        width = text_size(student.done, view.text)[0]
        room = right - whole.left() - text_size(student.code, size)[0] - 12
        side = 1.2 * view.text
        if width + side + 4 > room:
            width = -4.0  # the sign alone
        else:
            draw_text(painter, QPointF(right, middle), student.done, view.text, BLACK, align=1)
        tick = QRectF(right - width - side - 4, middle - side / 2, side, side)
        paint_icon(painter, tick, "check", BLACK)


def _paint_ticks(painter: QPainter, view: WallView, sheet: QRectF) -> None:
    """Where the photo's lines are, left of the sheets."""
    painter.setPen(QPen(QColor(BLACK), 2))
    for edge in view.edges[1:-1]:
        y = sheet.top() + edge * sheet.height()
        painter.drawLine(QPointF(sheet.left() - 10, y), QPointF(sheet.left() - 3, y))


@dataclass(frozen=True, eq=False)
class PairView:
    """Two sheets large, for the marking column."""

    tiles: tuple[TileView, TileView] = (TileView(), TileView())
    aspect: float = 1.5
    text: float = 13.0


def pair_height(width: float, aspect: float, most: float) -> float:
    """Of two sheets beside each other, no higher than `most`."""
    return min(most, (width - 2 * _BETWEEN) / 2 / min(max(aspect, 0.6), 2.4))


def paint_pair(painter: QPainter, rect: QRectF, view: PairView) -> None:
    """Draw two sheets level beside each other."""
    half = (rect.width() + 2 * _BETWEEN) / 2
    across = min(half - 2 * _BETWEEN, rect.height() * min(max(view.aspect, 0.6), 2.4))
    with kept(painter):
        for index, tile in enumerate(view.tiles):
            x = rect.left() + index * half
            paint_tile(painter, QRectF(x, rect.top(), across, rect.height()), tile, view.text)
