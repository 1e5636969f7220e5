"""Findings as a list of sentences, each with a sign: praise, something to try, or a note."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from PySide6.QtCore import QEvent, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.look import look
from app.look.icons import paint_icon
from app.look.type import FIRST, SECOND, font
from core.i18n import translate

Kind = Literal["praise", "step", "note", "light"]

_ICONS: dict[Kind, str] = {
    "praise": "check",
    "step": "arrow_right",
    "note": "info",
    "light": "info",
}


@dataclass(frozen=True)
class Sentence:
    """One sentence and what it is."""

    kind: Kind
    text: str


class Sentences(QWidget):
    """A list of sentences, as large as the height allows, never clipped."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._items: tuple[Sentence, ...] = ()
        self._roomy = False
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def set_items(self, items: Sequence[Sentence], *, roomy: bool = False) -> None:
        """Show other sentences; `roomy` asks for the height the largest size needs."""
        self._items, self._roomy = tuple(items), roomy
        self.setAccessibleName(" ".join(self._spoken(item) for item in self._items))
        self.updateGeometry()
        self.update()

    @property
    def items(self) -> tuple[Sentence, ...]:
        """What is shown."""
        return self._items

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        if self._roomy:
            return self._height(width, self._sizes()[0], tight=False)
        return self._height(width, self._sizes()[-1], tight=True)

    def sizeHint(self) -> QSize:
        return QSize(400, self.heightForWidth(max(self.width(), 240)))

    def minimumSizeHint(self) -> QSize:
        return QSize(200, self.heightForWidth(max(self.width(), 200)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.updateGeometry()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_items"):
            self.updateGeometry()

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        size, tight = self._fit()
        y = 0
        for item in self._items:
            pixels = self._pixels(item, size)
            bold = FIRST if item.kind == "praise" else SECOND
            face = font(pixels, bold)
            metrics = QFontMetrics(face)
            left = self._indent(size)
            room = QRect(left, y, self.width() - left, 10_000)
            box = metrics.boundingRect(room, _FLAGS, item.text)
            side = round(1.12 * pixels)
            icon = QRectF(0, y + (metrics.height() - side) / 2, side, side)
            ink = theme.second if item.kind == "light" else theme.ink
            paint_icon(painter, icon, _ICONS[item.kind], ink)
            painter.setFont(face)
            painter.setPen(QColor(ink))
            painter.drawText(room, _FLAGS, item.text)
            y += box.height() + self._gap(size, tight)
        painter.end()

    def _sizes(self) -> tuple[int, ...]:
        scale = look().type
        largest = scale.grow(21 if scale.wide else 18)
        return tuple(range(largest, scale.grow(15) - 1, -1))

    def _fit(self) -> tuple[int, bool]:
        for size in self._sizes():
            for tight in (False, True):
                if self._height(self.width(), size, tight=tight) <= self.height():
                    return size, tight
        return self._sizes()[-1], True

    def _height(self, width: int, size: int, *, tight: bool) -> int:
        left = self._indent(size)
        total = 0
        for item in self._items:
            bold = FIRST if item.kind == "praise" else SECOND
            metrics = QFontMetrics(font(self._pixels(item, size), bold))
            room = QRect(left, 0, max(width - left, 60), 10_000)
            total += metrics.boundingRect(room, _FLAGS, item.text).height()
        return total + self._gap(size, tight) * max(len(self._items) - 1, 0) + 2

    def _pixels(self, item: Sentence, size: int) -> int:
        if item.kind == "light":
            return min(size, look().type.px("control"))
        return size

    def _indent(self, size: int) -> int:
        return round(1.65 * size)

    def _gap(self, size: int, tight: bool) -> int:
        return round((0.5 if tight else 1.1) * size)

    def _spoken(self, item: Sentence) -> str:
        if item.kind == "step":
            return translate("sheets page", "To try: {text}").format(text=item.text)
        return item.text


_FLAGS = int(Qt.TextFlag.TextWordWrap) | int(Qt.AlignmentFlag.AlignLeft)
