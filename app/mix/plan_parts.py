"""Parts of the plan panel: the amounts, the numbered steps, a caution."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QVBoxLayout,
    QWidget,
)

from app.drawing.fit import fit
from app.drawing.marks import BadgeView, paint_badge
from app.look import look
from app.look.icons import paint_icon
from app.look.space import WITHIN
from app.look.type import CHOSEN, FIRST, SECOND
from app.mix.plan_shown import PlanView


class AmountsTable(QWidget):
    """Badge, strength, measure and millilitres of every mix, and their sum."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: PlanView | None = None

    def set_view(self, view: PlanView) -> None:
        """Show the amounts."""
        self._view = view
        said = [f"{row.letter}: {row.ml} mL, {row.measure}" for row in view.amounts if row.ml]
        parts = ["; ".join(said), f"{view.total}: {view.total_ml} mL"]
        self.setAccessibleName(". ".join(part for part in parts if part))
        self.updateGeometry()
        self.update()

    def _row(self) -> int:
        return look().type.grow(46 if not look().type.wide else 48)

    def sizeHint(self) -> QSize:
        rows = len(self._view.amounts) if self._view else 0
        return QSize(320, rows * self._row() + look().type.grow(52))

    def minimumSizeHint(self) -> QSize:
        return QSize(200, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._view is None:
            return
        theme, scale = look().theme, look().type
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        width, row = self.width(), self._row()
        radius = min(scale.grow(13), row // 2 - 4)
        left = 2 * radius + 14
        numbers = scale.grow(64)
        control, note = scale.px("control"), scale.px("note")
        for place, item in enumerate(self._view.amounts):
            top = place * row
            painter.setPen(QPen(QColor(theme.rule), 1.25))
            painter.drawLine(QPointF(0, top + 0.7), QPointF(width, top + 0.7))
            middle = top + row / 2
            spot = QRectF(1, middle - radius, 2 * radius, 2 * radius)
            paint_badge(painter, spot, BadgeView(item.letter))
            room = width - left - numbers
            texts = (
                fit(item.strength, (control,), FIRST, room),
                fit(item.measure, (note,), SECOND, room),
            )
            y = middle - sum(text.height for text in texts) / 2
            for text, colour in zip(texts, (theme.ink, theme.second), strict=True):
                painter.setFont(scale.font("control" if text is texts[0] else "note", text.weight))
                painter.setPen(QColor(colour))
                for line in text.lines:
                    painter.drawText(QPointF(left, y + 0.78 * text.pitch), line)
                    y += text.pitch
            self._number(painter, item.ml, middle, CHOSEN)
        top = len(self._view.amounts) * row
        painter.setPen(QPen(QColor(theme.ink), 2))
        painter.drawLine(QPointF(0, top + 1), QPointF(width, top + 1))
        painter.setPen(QColor(theme.ink))
        painter.setFont(scale.font("control"))
        text = fit(self._view.total, (control, note), SECOND, width - left - numbers, 3)
        y = top + scale.grow(26) - text.height / 2
        painter.setFont(scale.font("control" if text.size == control else "note"))
        for line in text.lines:
            painter.drawText(QPointF(left, y + 0.78 * text.pitch), line)
            y += text.pitch
        self._number(painter, self._view.total_ml, top + scale.grow(26), CHOSEN)
        painter.end()

    def _number(self, painter: QPainter, text: str, middle: float, weight: int) -> None:
        painter.setPen(QColor(look().theme.ink))
        painter.setFont(look().type.font("label", weight, columns=True))
        place = QRectF(0, middle - 20, self.width(), 40)
        flags = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        painter.drawText(place, int(flags) | int(Qt.TextFlag.TextDontClip), text)


class StepList(QWidget):
    """Numbered steps, a rule between them."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)
        self._rows: list[_Step] = []

    def set_texts(self, texts: tuple[str, ...]) -> None:
        """Show steps."""
        while len(self._rows) > len(texts):
            row = self._rows.pop()
            self._column.removeWidget(row)
            row.hide()
            row.deleteLater()
        while len(self._rows) < len(texts):
            row = _Step(len(self._rows) + 1, self)
            self._column.addWidget(row)
            self._rows.append(row)
        for row, text in zip(self._rows, texts, strict=True):
            row.set_text(text)


class _Step(QWidget):
    def __init__(self, number: int, parent: QWidget) -> None:
        super().__init__(parent)
        self._label = QLabel(self)
        self._label.setWordWrap(True)
        self._count = QLabel(str(number), self)
        self._count.setProperty("role", "strong")
        self._count.setAlignment(Qt.AlignmentFlag.AlignTop)
        row = QHBoxLayout(self)
        row.setContentsMargins(4, 9, 0, 9)
        row.setSpacing(WITHIN)
        row.addWidget(self._count)
        row.addWidget(self._label, 1)

    def set_text(self, text: str) -> None:
        self._label.setText(text)
        self._count.setFixedWidth(look().type.grow(26))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setPen(QPen(QColor(look().theme.rule), 1.25))
        painter.drawLine(QPointF(0, 0.7), QPointF(self.width(), 0.7))
        painter.end()


class Caution(QWidget):
    """A caution behind its mark."""

    def __init__(self, text: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        label = QLabel(text, self)
        label.setWordWrap(True)
        row = QHBoxLayout(self)
        row.setContentsMargins(look().type.grow(30), 4, 0, 4)
        row.addWidget(label)

    def paintEvent(self, event: QPaintEvent) -> None:
        side = look().type.grow(18)
        painter = QPainter(self)
        paint_icon(painter, QRectF(1, 5, side, side), "caution", look().theme.ink)
        painter.end()
