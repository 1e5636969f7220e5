"""A small button that begins a line of the answer."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QPushButton, QSizePolicy, QWidget

from app.look import look
from app.look.space import EDGE, RADIUS
from app.look.type import MEDIUM

_HIGH = 26
_SIDE = 10


class PromptButton(QPushButton):
    """One thing to think of. Signals: QPushButton's."""

    def __init__(self, text: str, parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self._lower()
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def _lower(self) -> None:
        # Lower than other buttons; said as a least height, or a crowded page would squeeze them.
        high = look().type.grow(_HIGH)
        wanted = f"min-height: {high}px; max-height: {high}px; padding: 0; border: none;"
        if self.styleSheet() != wanted:
            self.setStyleSheet(wanted)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self._lower()

    def sizeHint(self) -> QSize:
        scale = look().type
        width = QFontMetricsF(scale.font("note", MEDIUM)).horizontalAdvance(self.text())
        return QSize(round(width + 2 * scale.grow(_SIDE) + 0.5), scale.grow(_HIGH))

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(theme.ink if self.underMouse() else theme.edge), EDGE))
        painter.setBrush(QColor(theme.rule if self.isDown() else theme.raised))
        inset = EDGE / 2
        frame = QRectF(self.rect()).adjusted(inset, inset, -inset, -inset)
        painter.drawRoundedRect(frame, RADIUS, RADIUS)
        painter.setPen(QColor(theme.ink))
        painter.setFont(look().type.font("note", MEDIUM))
        painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, self.text())
        painter.end()


def _preview() -> QWidget:
    from PySide6.QtWidgets import QHBoxLayout

    page = QWidget()
    row = QHBoxLayout(page)
    for word in ("Technique", "Brush", "Water", "Placement"):
        row.addWidget(PromptButton(word, page))
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 360, 60))
