"""How a sheet gets in and what follows, in three drawn steps, while there is none yet."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from PySide6.QtCore import QEvent, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QWidget

from app.drawing.ink import draw_text
from app.drawing.sheets.hints import HintView, paint_hint
from app.look import look
from app.look.space import GROUP, INSIDE, WITHIN
from app.look.type import CHOSEN
from core.i18n import translate

Kind = Literal["dry", "photo", "score"]


class Teach(QWidget):
    """Three numbered steps side by side."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "paper")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        steps: tuple[tuple[Kind, str, str], ...] = (
            (
                "dry",
                translate("sheets page", "Let it dry, take off the tape"),
                translate(
                    "sheets page",
                    "Wet paint is darker and shines. The white border tells how the light fell.",
                ),
            ),
            (
                "photo",
                translate("sheets page", "Photograph it flat"),
                translate(
                    "sheets page",
                    "Straight from above, in daylight, without flash or shadow, the whole border "
                    "in the picture. A flat scan is better still.",
                ),
            ),
            (
                "score",
                translate("sheets page", "Score it, then look"),
                translate(
                    "sheets page",
                    "The student's own scores come first. Then this page shows what was measured, "
                    "and what to try.",
                ),
            ),
        )
        # Drawings, heads and sentences stand level however long they are.
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(INSIDE, GROUP, INSIDE, GROUP)
        self._grid.setVerticalSpacing(WITHIN)
        self._grid.setRowStretch(0, 1)
        self._grid.setRowStretch(4, 4)
        self._grid.setHorizontalSpacing(0)
        self._columns: list[tuple[QWidget, ...]] = []
        for column, (kind, line, sentence) in enumerate(steps):
            parts = self._step(column + 1, kind, line, sentence)
            self._columns.append(parts)
            for row, part in enumerate(parts, 1):
                self._grid.addWidget(part, row, column)
        self._grid.setColumnStretch(len(steps), 1)

    def arrange(self, lefts: Sequence[float], width: float) -> None:
        """Put each step under a picture: under its left edge, and no wider than it."""
        first, *_ = (round(left) for left in lefts)
        self._grid.setContentsMargins(first, GROUP, 0, GROUP)
        ends = [*lefts[1:], lefts[-1] + width]
        gap = look().type.grow(36)
        for number, (parts, left, end) in enumerate(zip(self._columns, lefts, ends, strict=True)):
            last = number == len(self._columns) - 1
            self._grid.setColumnMinimumWidth(number, round(end) - round(left))
            for part in parts:
                part.setFixedWidth(max(round(end - left) - (0 if last else gap), 60))

    def _step(self, number: int, kind: Kind, line: str, sentence: str) -> tuple[QWidget, ...]:
        head, text = QLabel(line, self), QLabel(sentence, self)
        head.setProperty("role", "line")
        text.setProperty("role", "said")
        for label in (head, text):
            label.setWordWrap(True)
            label.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        return _Drawing(number, kind, self), head, text


class _Drawing(QWidget):
    """A step's drawing, its number on an ink tag before it."""

    def __init__(self, number: int, kind: Kind, parent: QWidget) -> None:
        super().__init__(parent)
        self._number = number
        self._kind: Kind = kind
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self._fit()

    def _fit(self) -> None:
        scale = look().type
        self.setFixedHeight(scale.grow(150 if scale.wide else 112))

    def paintEvent(self, event: QPaintEvent) -> None:
        theme, side = look().theme, look().type.grow(30)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(theme.ink))
        tag = QRectF(0, self.height() - side, side, side)
        painter.drawRoundedRect(tag, 5, 5)
        centre = QPointF(tag.center())
        draw_text(painter, centre, str(self._number), 0.55 * side, theme.on_ink, CHOSEN)
        left = side + look().type.grow(14)
        room = QRectF(left, 2, self.width() - left, self.height() - 4)
        # Things are drawn as they are in both themes; only the scale stands on the paper itself.
        ink = theme.ink if self._kind == "score" else "#141414"
        paint_hint(painter, room, HintView(self._kind, ink, "#5a5a5a"))
        painter.end()
