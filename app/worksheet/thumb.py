"""A sheet as it was painted, small, on the wall."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.drawing.fit import fit
from app.drawing.pyramid import Pyramid
from app.look import look
from app.look.theme import WALL, WALL_INK
from app.look.type import FIRST

_WIDTH, _HEIGHT = 196, 140
_WALL = 10


class SheetThumb(QWidget):
    """The straightened painting, or words where there is none."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._picture: Pyramid | None = None
        self._words = ""
        self._room = 1.0
        self.setProperty("ground", "wall")
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def set_picture(self, picture: Pyramid | None, words: str) -> None:
        """Show a picture, or `words`; they are what a screen reader says in both cases."""
        if picture is self._picture and words == self._words:
            return
        self._picture, self._words = picture, words
        self.setAccessibleName(words)
        self.update()

    def set_room(self, room: float) -> None:
        """Grow with the page: 1 is the least."""
        if room != self._room:
            self._room = room
            self.updateGeometry()

    def sizeHint(self) -> QSize:
        return QSize(round(_WIDTH * self._room), round(_HEIGHT * self._room))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(WALL))
        room = QRectF(self.rect()).adjusted(_WALL, _WALL, -_WALL, -_WALL)
        if self._picture is None:
            self._paint_words(painter, room)
        else:
            size = self._picture.levels[0].size()
            scale = min(room.width() / size.width(), room.height() / size.height())
            spot = QRectF(0, 0, size.width() * scale, size.height() * scale)
            spot.moveCenter(room.center())
            self._picture.draw(painter, spot, self.devicePixelRatio())
        painter.end()

    def _paint_words(self, painter: QPainter, room: QRectF) -> None:
        pen = QPen(QColor(WALL_INK), 1.25)
        pen.setDashPattern([4, 3])
        painter.setPen(pen)
        painter.drawRect(room)
        note = max(look().type.px("note"), 13)
        fitted = fit(self._words, (note,), FIRST, room.width() - 16, 4)
        painter.setFont(look().type.font("note", FIRST))
        painter.setPen(QColor(WALL_INK))
        top = room.center().y() - fitted.height / 2
        for number, line in enumerate(fitted.lines):
            spot = QRectF(room.left(), top + number * fitted.pitch, room.width(), fitted.pitch)
            painter.drawText(spot, Qt.AlignmentFlag.AlignCenter, line)


def _preview() -> QWidget:
    from PySide6.QtWidgets import QHBoxLayout

    page = QWidget()
    row = QHBoxLayout(page)
    thumb = SheetThumb(page)
    thumb.set_picture(None, "No picture yet")
    row.addWidget(thumb)
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 240, 180))
