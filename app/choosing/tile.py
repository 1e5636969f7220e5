"""One photo on the wall: its picture with the proposed lines, its name, and what it holds."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFocusEvent, QImage, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QPushButton, QSizePolicy, QWidget

from app.drawing.fit import elided, pitch_of, wrap
from app.drawing.ink import lettered_disc
from app.drawing.lines import HEAVY_PX, LineView, paint_line
from app.look import look
from app.look.space import WITHIN
from app.look.theme import WALL_INK
from app.look.type import FIRST, SECOND

PICTURE = 0.62
"""Height of the picture's place, as a share of the tile's width."""

_DISC, _FROM_LEFT = 10.0, 18.0


@dataclass(frozen=True, eq=False)
class TileView:
    """What a tile shows.

    Attributes
    ----------
    name : str
        Of the file.
    text, against : str
        What the sky holds; what speaks against it, empty where nothing does.
    image : QImage
    edges : tuple of float
        Of the bands from the top, as fractions of the photo's height; the last is the sky's end.
    letters : tuple of (letter, fill, ink)
        One a band; its colour and what is legible on it, "#rrggbb".
    """

    name: str
    text: str
    against: str
    image: QImage
    edges: tuple[float, ...]
    letters: tuple[tuple[str, str, str], ...]


class SkyTile(QPushButton):
    """A photo; pressed, it opens. Signals: QPushButton's."""

    def __init__(self, view: TileView, parent: QWidget) -> None:
        super().__init__(parent)
        self.view = view
        self._by_key = False
        self.setStyleSheet("min-height: 0; padding: 0; border: none; background: transparent;")
        self.setProperty("own_focus", True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(f"{view.name}. {view.text} {view.against}".strip())

    def height_at(self, width: int) -> int:
        """What it takes at a width."""
        words = self._lines(width)
        size = self._size()
        lines = len(words[0]) + len(words[1]) + 1
        return round(width * PICTURE + WITHIN + lines * pitch_of(size, FIRST) + WITHIN)

    def picture_place(self) -> QRectF:
        """Where the picture stands: as large as its place allows, at the place's foot."""
        wide, high = float(self.width()), self.width() * PICTURE
        size = self.view.image.size()
        scale = min(wide / size.width(), high / size.height())
        w, h = size.width() * scale, size.height() * scale
        return QRectF(0, high - h, w, h)

    def _size(self) -> int:
        return look().type.px("control")

    def _lines(self, width: int) -> tuple[tuple[str, ...], tuple[str, ...]]:
        size = self._size()
        text = wrap(self.view.text, size, SECOND, width)
        against = wrap(self.view.against, size, FIRST, width) if self.view.against else ()
        return text, against

    def focusInEvent(self, event: QFocusEvent) -> None:
        self._by_key = event.reason() != Qt.FocusReason.MouseFocusReason
        super().focusInEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        place = self.picture_place()
        painter.drawImage(place, self.view.image)
        self._paint_lines(painter, place)
        if self.underMouse() or (self.hasFocus() and self._by_key):
            pen = QPen(QColor(WALL_INK), 3.0)
            pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
            painter.setPen(pen)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(place.adjusted(1.5, 1.5, -1.5, -1.5))
        self._paint_words(painter)
        painter.end()

    def _paint_lines(self, painter: QPainter, place: QRectF) -> None:
        for edge in self.view.edges[1:]:
            if edge >= 1.0:
                continue
            y = place.top() + edge * place.height()
            band = QRectF(place.left(), y - HEAVY_PX / 2, place.width(), HEAVY_PX)
            paint_line(painter, band, LineView())
        for (letter, fill, ink), (top, bottom) in zip(
            self.view.letters, pairwise(self.view.edges), strict=True
        ):
            middle = place.top() + (top + bottom) / 2 * place.height()
            if (bottom - top) * place.height() >= 2 * _DISC:
                centre = QPointF(place.left() + _FROM_LEFT, middle)
                lettered_disc(painter, centre, _DISC, letter, fill, ink)

    def _paint_words(self, painter: QPainter) -> None:
        size, width = self._size(), self.width()
        pitch = pitch_of(size, FIRST)
        y = width * PICTURE + WITHIN
        painter.setPen(QColor(WALL_INK))
        text, against = self._lines(width)
        name = elided(self.view.name, size, width, FIRST)
        for weight, lines in ((FIRST, (name,)), (SECOND, text), (FIRST, against)):
            painter.setFont(look().type.font("control", weight))
            for line in lines:
                place = QRectF(0, y, width, pitch)
                painter.drawText(place, Qt.AlignmentFlag.AlignVCenter, line)
                y += pitch
