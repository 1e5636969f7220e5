"""A fitted paint drawn out beside the paint it was said to be like, and how well it is known."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from app.drawing.fit import Fitted, fit
from app.drawing.mix.swatch import SwatchView, paint_swatch
from app.look import look
from app.look.space import WITHIN
from app.look.theme import WALL
from app.look.type import FIRST, SECOND, font
from core.i18n import translate
from core.paint.box.names import paint_name
from core.paint.mixture.swatch import drawn_out
from core.paint.pigment.catalogue import CATALOGUE
from core.paint.pigment.paint import Paint
from core.paint.words.own import trust_word
from core.words.lists import sentence_case

SWATCH, TALL = 76, 30


class PaintLine(QWidget):
    """One paint of the card."""

    def __init__(self, paint: Paint, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._own = drawn_out(paint)
        like = CATALOGUE[paint.measured_as]
        self._like = drawn_out(like)
        self._name = sentence_case(paint_name(paint))
        trust = "" if paint.card is None else sentence_case(trust_word(paint.card.trust))
        beside = translate("swatches", "below it {paint}, as measured").format(
            paint=paint_name(like)
        )
        self._said = f"{trust}; {beside}"
        self.setAccessibleName(f"{self._name}: {self._said}")

    def sizeHint(self) -> QSize:
        return QSize(300, self.height_for(300))

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return self.height_for(width)

    def height_for(self, width: int) -> int:
        """Height the words and the two swatches need."""
        scale = look().type
        name, said = self._texts(width)
        return max(round(name.height + said.height) + WITHIN, scale.grow(2 * TALL) + WITHIN)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme, scale = look().theme, look().type
        painter = QPainter(self)
        wide, tall = scale.grow(SWATCH), scale.grow(TALL)
        ground = QRectF(0, 0, wide + 2 * WITHIN, 2 * tall + WITHIN)
        painter.fillRect(ground, QColor(WALL))
        own = QRectF(WITHIN, WITHIN / 2, wide, tall)
        paint_swatch(painter, own, SwatchView(self._own, "card"))
        below = own.translated(0, tall)
        paint_swatch(painter, below, SwatchView(self._like))
        top = 0.0
        for text, colour in zip(self._texts(self.width()), (theme.ink, theme.second), strict=True):
            painter.setFont(font(text.size, text.weight))
            painter.setPen(QColor(colour))
            for line in text.lines:
                where = QRectF(self._left(), top, text.width + 4, text.pitch)
                flags = int(Qt.AlignmentFlag.AlignVCenter) | int(Qt.TextFlag.TextDontClip)
                painter.drawText(where, flags, line)
                top += text.pitch
        painter.end()

    def _left(self) -> int:
        return look().type.grow(SWATCH) + 2 * WITHIN + 12

    def _texts(self, width: int) -> tuple[Fitted, Fitted]:
        scale = look().type
        room = max(width - self._left(), 60)
        name = fit(self._name, (scale.px("control"), scale.px("note")), FIRST, room)
        return name, fit(self._said, (scale.px("note"),), SECOND, room, 4)
