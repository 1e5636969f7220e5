"""The card as it will be printed, on the wall, with a step from page to page."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.drawing.ink import BLACK
from app.drawing.pyramid import Pyramid
from app.look import look
from app.look.theme import WALL
from app.look.type import FIRST
from core.i18n import translate

EDGE = 16


class CardPreview(QWidget):
    """One page, as large as there is room; keys Page Up and Page Down turn pages.

    Signals
    -------
    turned()
        Another page is shown.
    """

    turned = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._pages: tuple[Pyramid, ...] = ()
        self._texts: tuple[str, ...] = ()
        self._at = 0
        self._sentence = ""
        self.setProperty("ground", "wall")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(280, 360)
        self._speak()

    def set_pages(self, images: tuple[Pyramid, ...], texts: tuple[str, ...]) -> None:
        """Show pages; `texts` are what they say, for a screen reader."""
        self._pages = images
        self._texts = texts
        self._sentence = ""
        self._at = min(self._at, max(len(images) - 1, 0))
        self._speak()

    def say(self, sentence: str) -> None:
        """Show a sentence in place of pages."""
        self._pages, self._texts, self._sentence, self._at = (), (), sentence, 0
        self._speak()

    @property
    def page(self) -> int:
        """The page shown, from 0."""
        return self._at

    @property
    def count(self) -> int:
        """How many pages there are."""
        return len(self._pages)

    def turn(self, step: int) -> None:
        """Go on by pages, stopping at the ends."""
        self._at = min(max(self._at + step, 0), max(self.count - 1, 0))
        self._speak()
        self.turned.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = {Qt.Key.Key_PageDown: 1, Qt.Key.Key_PageUp: -1}.get(Qt.Key(event.key()))
        if step is None or self.count < 2:
            super().keyPressEvent(event)
        else:
            self.turn(step)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(WALL))
        if not self._pages:
            self._paint_sentence(painter)
            return
        page = self._pages[self._at]
        size = page.levels[0].size()
        room = QRectF(self.rect()).adjusted(EDGE, EDGE, -EDGE, -EDGE)
        scale = min(room.width() / size.width(), room.height() / size.height())
        sheet = QRectF(0, 0, round(size.width() * scale), round(size.height() * scale))
        sheet.moveCenter(room.center())
        sheet.moveTopLeft(sheet.topLeft().toPoint().toPointF())
        page.draw(painter, sheet, self.devicePixelRatioF())
        painter.setPen(QPen(QColor(BLACK), 1))
        painter.drawRect(sheet.adjusted(-0.5, -0.5, 0.5, 0.5))

    def _paint_sentence(self, painter: QPainter) -> None:
        painter.setPen(QColor(BLACK))
        painter.setFont(look().type.font("control", FIRST))
        room = self.rect().adjusted(40, 40, -40, -40)
        flags = int(Qt.AlignmentFlag.AlignCenter) | int(Qt.TextFlag.TextWordWrap)
        painter.drawText(room, flags, self._sentence)

    def _speak(self) -> None:
        name = translate("cards", "Preview")
        if self._pages:
            name = translate("cards", "Preview, page {number} of {total}").format(
                number=self._at + 1, total=self.count
            )
        self.setAccessibleName(name)
        texts = self._texts
        self.setAccessibleDescription(texts[self._at] if texts else self._sentence)
        self.update()
