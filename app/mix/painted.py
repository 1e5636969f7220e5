"""The sky as its mixes are predicted to dry, beside the photo: photo left, paint right."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from app.drawing.ink import BLACK, FIRST, draw_text, kept, text_size
from app.drawing.painting import PaintedView, paint_painted
from app.look import look
from app.look.space import WITHIN
from app.look.theme import WALL
from core.i18n import translate

PAINT_BEGINS = 0.5
"""Photo and paint stand edge to edge in the middle."""

_MOST_TALL = 0.21
"""Of the page's height: a tall sky is narrower."""


class PaintedSky(QWidget):
    """A preview on its own piece of wall; nothing in it is measured of a sheet.

    Without a view it takes no room.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: PaintedView | None = None
        self._aspect = 2.0
        self.setAccessibleName(translate("mix page", "The sky painted, as predicted"))
        self.setAccessibleDescription(
            translate(
                "mix page",
                "At the left the photo, at the right the mixes as they are predicted to dry, with "
                "their wet edges.",
            )
        )

    def set_view(self, view: PaintedView | None, aspect: float = 2.0) -> None:
        """Show a sky; `aspect` is its width by its height."""
        self._view, self._aspect = view, aspect
        self.update()

    def height_at(self, width: int, page: int) -> int:
        """Height it takes at a width, on a page of a height."""
        if self._view is None or not self._view.washes:
            return 0
        sky = min((width - 2 * WITHIN) / self._aspect, _MOST_TALL * page)
        return round(sky + self._words_height() + WITHIN)

    def _words_height(self) -> float:
        return 1.75 * look().type.px("note")

    def paintEvent(self, event: QPaintEvent) -> None:
        view = self._view
        if view is None:
            return
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(WALL))
        inside = QRectF(self.rect()).adjusted(WITHIN, self._words_height(), -WITHIN, -float(WITHIN))
        width = min(inside.width(), inside.height() * self._aspect)
        sky = QRectF(0, 0, width, width / self._aspect)
        sky.moveCenter(inside.center())
        paint_painted(painter, sky, view, self.devicePixelRatioF())
        words = (translate("mix page", "photo"), translate("mix page", "paint, predicted"))
        size = float(look().type.px("note"))
        middle = sky.left() + view.begins * sky.width()
        with kept(painter):
            for text, at in zip(
                words, ((sky.left() + middle) / 2, (middle + sky.right()) / 2), strict=True
            ):
                half = text_size(text, size, FIRST)[0] / 2 + 4
                if 2 * half > sky.width() / 2:  # a narrow sky: to either side of its middle
                    at = middle - half if text == words[0] else middle + half
                x = min(max(at, half), self.width() - half)
                spot = QPointF(x, self._words_height() / 2 + 1)
                draw_text(painter, spot, text, size, BLACK, FIRST)
        painter.end()
