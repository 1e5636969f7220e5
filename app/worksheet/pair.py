"""The sky of the photo and a sheet as it was painted, level and side by side on the wall."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.drawing.fit import fit
from app.drawing.pyramid import Pyramid
from app.look import look
from app.look.theme import WALL, WALL_INK
from app.look.type import FIRST
from core.i18n import translate

_WALL = 10
_GAP = 10
_LEAST = 140


@dataclass(frozen=True, eq=False)
class Shown:
    """A picture, or what stands in its place.

    Attributes
    ----------
    picture : Pyramid or None
    crop : (left, top, right, bottom)
        The part that is shown, shares of its sides.
    words : str
        Read aloud, and written where there is no picture.
    """

    picture: Pyramid | None = None
    crop: tuple[float, float, float, float] = (0.0, 0.0, 1.0, 1.0)
    words: str = ""


class SheetPair(QWidget):
    """Photo left, painting right, in one shape; dashes and words where one is missing."""

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        """`title` stands over the painting."""
        super().__init__(parent)
        self._titles = (translate("worksheet", "Photo"), title)
        self._shown = (Shown(), Shown())
        self._aspect = 1.5
        self._most = _LEAST
        self.setProperty("ground", "wall")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_pictures(self, sky: Shown, sheet: Shown, aspect: float) -> None:
        """Show the two, each `aspect` times as wide as high."""
        self._shown, self._aspect = (sky, sheet), aspect
        self.setAccessibleName(sheet.words)
        self.updateGeometry()
        self.update()

    def set_most(self, height: int) -> None:
        """How high the wall may be."""
        if height != self._most:
            self._most = max(height, _LEAST)
            self.updateGeometry()

    @property
    def places(self) -> tuple[QRectF, QRectF]:
        """Where photo and painting are."""
        top = self._head
        wide = (self.width() - 2 * _WALL - _GAP) / 2
        high = max(min(wide / self._aspect, self.height() - top - _WALL), 1.0)
        wide = min(wide, high * self._aspect)
        middle = self.width() / 2
        return (
            QRectF(middle - _GAP / 2 - wide, top, wide, high),
            QRectF(middle + _GAP / 2, top, wide, high),
        )

    @property
    def _head(self) -> float:
        return 1.9 * look().type.px("note")

    def sizeHint(self) -> QSize:
        wide = (self.width() - 2 * _WALL - _GAP) / 2
        needed = wide / self._aspect + self._head + _WALL
        return QSize(look().type.grow(320), max(round(min(needed, self._most)), _LEAST))

    def minimumSizeHint(self) -> QSize:
        return QSize(look().type.grow(200), self.sizeHint().height())

    def resizeEvent(self, event: object) -> None:
        self.updateGeometry()  # how high it wants to be follows from how wide it is

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(WALL))
        for place, shown, title in zip(self.places, self._shown, self._titles, strict=True):
            painter.setFont(look().type.font("note", FIRST))
            painter.setPen(QColor(WALL_INK))
            head = QRectF(place.left(), 0, place.width(), self._head)
            painter.drawText(
                head, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, title
            )
            if shown.picture is None:
                self._paint_words(painter, place, shown.words)
            else:
                self._paint_picture(painter, place, shown.picture, shown.crop)
        painter.end()

    def _paint_picture(
        self,
        painter: QPainter,
        place: QRectF,
        picture: Pyramid,
        crop: tuple[float, float, float, float],
    ) -> None:
        left, top, right, bottom = crop
        width, height = place.width() / (right - left), place.height() / (bottom - top)
        whole = QRectF(place.left() - left * width, place.top() - top * height, width, height)
        painter.save()
        painter.setClipRect(place)
        picture.draw(painter, whole, self.devicePixelRatio())
        painter.restore()

    def _paint_words(self, painter: QPainter, room: QRectF, words: str) -> None:
        pen = QPen(QColor(WALL_INK), 1.25)
        pen.setDashPattern([4, 3])
        painter.setPen(pen)
        painter.drawRect(room.adjusted(0.6, 0.6, -0.6, -0.6))
        fitted = fit(words, (look().type.px("note"),), FIRST, room.width() - 16, 4)
        painter.setFont(look().type.font("note", FIRST))
        top = room.center().y() - fitted.height / 2
        for number, line in enumerate(fitted.lines):
            spot = QRectF(room.left(), top + number * fitted.pitch, room.width(), fitted.pitch)
            painter.drawText(spot, Qt.AlignmentFlag.AlignCenter, line)


def _preview() -> QWidget:
    pair = SheetPair("Sheet 1")
    pair.set_pictures(Shown(words="No photo yet"), Shown(words="No picture yet"), 1.5)
    return pair


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 640, 220))
