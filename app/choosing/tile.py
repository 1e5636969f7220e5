"""One photo on the wall: its picture with the proposed lines, its name, and what it holds."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFocusEvent, QImage, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QPushButton, QSizePolicy, QWidget

from app.drawing.fit import elided, pitch_of, wrap
from app.drawing.ink import lettered_disc
from app.drawing.lines import HEAVY_PX, LineView, paint_line
from app.look import look
from app.look.theme import WALL_INK
from app.look.type import FIRST, SECOND

PICTURE = 0.625
"""Height of the picture's place, as a share of the tile's width."""

_DISC, _LEAST_DISC, _FROM_LEFT = 10.0, 6.0, 8.0
_PAD = 10
"""Paper round the words."""


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
        return round(width * PICTURE + lines * pitch_of(size, FIRST) + 2 * _PAD)

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
        size, width = self._size(), width - 2 * _PAD
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
        middles = [
            place.top() + (top + bottom) / 2 * place.height()
            for top, bottom in pairwise(self.view.edges)
        ]
        disc = self.disc_radius(place.height())
        below = -math.inf
        for (letter, fill, ink), middle in zip(self.view.letters, middles, strict=True):
            # Only where bands are thinner than a letter can be is one left out.
            if middle - below >= 2 * disc:
                centre = QPointF(place.left() + _FROM_LEFT + disc, middle)
                lettered_disc(painter, centre, disc, letter, fill, ink)
                below = middle

    def disc_radius(self, height: float) -> float:
        """Of the letters on a picture so high: all alike, and apart from each other."""
        edges = self.view.edges
        middles = [(top + bottom) / 2 * height for top, bottom in pairwise(edges)]
        apart = min((b - a for a, b in pairwise(middles)), default=math.inf)
        return max(min(_DISC * look().type.scale, apart / 2 - 0.5), _LEAST_DISC)

    def _paint_words(self, painter: QPainter) -> None:
        theme = look().theme
        size, width = self._size(), self.width() - 2 * _PAD
        pitch = pitch_of(size, FIRST)
        paper = QRectF(0, round(self.width() * PICTURE), self.width(), self.height())
        painter.fillRect(paper, QColor(theme.paper))
        y = paper.top() + _PAD
        painter.setPen(QColor(theme.ink))
        text, against = self._lines(self.width())
        name = elided(self.view.name, size, width, FIRST)
        for weight, lines in ((FIRST, (name,)), (SECOND, text), (FIRST, against)):
            painter.setFont(look().type.font("control", weight))
            for line in lines:
                place = QRectF(_PAD, y, width, pitch)
                painter.drawText(place, Qt.AlignmentFlag.AlignVCenter, line)
                y += pitch
