"""One line on the wall below the photo: work in progress, the point under the mouse, a doubt."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.drawing.ink import BLACK
from app.look import look
from app.look.icons import paint_icon
from app.look.type import CHOSEN, FIRST
from core.reading.percent import percent_text
from core.reading.reading import ColourReading
from core.reading.wording import Wording
from core.words import colour_sentence_part


class StatusLine(QWidget):
    """Says the most pressing of three things: what runs, what is under the mouse, a doubt."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._busy: tuple[str, float] | None = None
        self._point: tuple[ColourReading, str] | None = None
        self._waiting = ""
        self._doubt = ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_busy(self, text: str, share: float) -> None:
        """Work runs; `share` of it is done, 0..1."""
        self._busy = (text, share)
        self._changed()

    def show_idle(self) -> None:
        """No work runs."""
        self._busy = None
        self._changed()

    def show_point(self, reading: ColourReading | None, wording: Wording) -> None:
        """What is read of the point under the mouse; None when it is not on the photo."""
        self._point = None if reading is None else (reading, colour_sentence_part(reading, wording))
        self._changed()

    def show_waiting(self, text: str) -> None:
        """What has begun and will not take long; empty takes it away."""
        self._waiting = text
        self._changed()

    def show_doubt(self, sentence: str) -> None:
        """Why the proposal may be wrong; empty takes it away."""
        self._doubt = sentence
        self._changed()

    @property
    def text(self) -> str:
        """What the line says."""
        if self._busy is not None:
            return f"{self._busy[0]} ({percent_text(100 * self._busy[1])})"
        if self._point is not None:
            return self._point[1]
        return self._waiting or self._doubt

    def sizeHint(self) -> QSize:
        return QSize(300, look().type.grow(22))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self.updateGeometry()

    def paintEvent(self, event: QPaintEvent) -> None:
        if not self.text:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        side = float(self.height())
        left = 0.0
        if self._busy is not None:
            track = QRectF(0, side / 2 - 4, 4 * side, 8)
            painter.setPen(QColor(BLACK))
            painter.drawRect(track)
            painter.fillRect(
                QRectF(track.left(), track.top(), track.width() * self._busy[1], 8),
                QColor(BLACK),
            )
            left = track.right() + 10
        elif self._point is not None:
            painter.fillRect(QRectF(0, 0, 2 * side, side), QColor(self._point[0].hex))
            left = 2 * side + 8
        elif self._doubt and not self._waiting:
            paint_icon(painter, QRectF(0, 1, side - 2, side - 2), "caution", BLACK)
            left = side + 6
        painter.setPen(QColor(BLACK))
        painter.setFont(look().type.font("note", CHOSEN if self._doubt else FIRST))
        area = QRectF(left, 0, self.width() - left, side)
        text = painter.fontMetrics().elidedText(
            self.text, Qt.TextElideMode.ElideRight, int(area.width())
        )
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        painter.drawText(area, flags, text)

    def _changed(self) -> None:
        self.setAccessibleName(self.text)
        self.setToolTip(self._doubt if self.text == self._doubt else "")
        self.update()
