"""How to photograph a sheet, in three steps, while there is none yet."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QWidget

from app.look import look
from app.look.space import GROUP, INSIDE
from app.look.type import CHOSEN
from app.paint.ink import draw_text
from core.i18n import translate


class Teach(QWidget):
    """Three numbered steps side by side."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "paper")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(INSIDE, GROUP, INSIDE, GROUP)
        self._grid.setVerticalSpacing(8)
        steps = (
            (
                translate("sheets page", "Let it dry"),
                translate(
                    "sheets page",
                    "Wet paint is darker and shines. Take the tape off: the white border is what "
                    "the light is measured from.",
                ),
            ),
            (
                translate("sheets page", "Photograph it flat"),
                translate(
                    "sheets page",
                    "Straight from above, in daylight, without flash or shadow. The whole border "
                    "belongs in the picture.",
                ),
            ),
            (
                translate("sheets page", "Score it first"),
                translate(
                    "sheets page",
                    "The student's own scores come first. Then the page shows what was measured, "
                    "and one thing to try.",
                ),
            ),
        )
        for column, (line, sentence) in enumerate(steps):
            head, text = QLabel(line, self), QLabel(sentence, self)
            head.setProperty("role", "line")
            for label in (head, text):
                label.setWordWrap(True)
                label.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
            self._grid.addWidget(_Number(column + 1, self), 0, 2 * column)
            self._grid.addWidget(head, 0, 2 * column + 1)
            self._grid.addWidget(text, 1, 2 * column + 1)
            self._grid.setColumnStretch(2 * column + 1, 1)
        self._grid.setRowStretch(0, 1)
        self._grid.setRowStretch(1, 2)
        for row in (0, 1):
            for column in range(6):
                item = self._grid.itemAtPosition(row, column)
                if item is not None:
                    edge = Qt.AlignmentFlag.AlignBottom if row == 0 else Qt.AlignmentFlag.AlignTop
                    item.setAlignment(edge)
        self._pad()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_grid"):
            self._pad()

    def _pad(self) -> None:
        self._grid.setHorizontalSpacing(look().type.grow(14))


class _Number(QWidget):
    """A step's number on an ink tag."""

    def __init__(self, number: int, parent: QWidget) -> None:
        super().__init__(parent)
        self._number = number
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self._fit()

    def _fit(self) -> None:
        side = look().type.grow(30)
        self.setFixedSize(side, side)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(theme.ink))
        painter.drawRoundedRect(QRectF(self.rect()), 5, 5)
        centre = QPointF(self.width() / 2, self.height() / 2)
        draw_text(painter, centre, str(self._number), 0.55 * self.height(), theme.on_ink, CHOSEN)
        painter.end()
