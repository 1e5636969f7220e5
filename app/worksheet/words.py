"""A label that is as high as its words need, in layouts within layouts too."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QRect, QSize, Qt
from PySide6.QtGui import QFontMetrics, QFontMetricsF, QResizeEvent
from PySide6.QtWidgets import QLabel, QWidget

from app.look import look

_NARROW = 120


class Words(QLabel):
    """A sentence that wraps. It says a least height instead of a height for each width."""

    def __init__(self, text: str, role: str, parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setProperty("role", role)
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setAlignment(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft)

    def say(self, text: str) -> None:
        """Say something else."""
        if text != self.text():
            self.setText(text)
            self._fit()

    def sizeHint(self) -> QSize:
        metrics = QFontMetricsF(self.font())
        width = metrics.horizontalAdvance(self.text()) + 4
        return QSize(round(width), round(metrics.height() + 0.5))

    def minimumSizeHint(self) -> QSize:
        hint = self.sizeHint()
        return QSize(min(look().type.grow(_NARROW), hint.width()), hint.height())

    def hasHeightForWidth(self) -> bool:
        return False

    def heightForWidth(self, width: int) -> int:
        # Not QLabel's, which never falls below the least height it was given.
        room = QRect(0, 0, max(width, 1), 100_000)
        flags = int(Qt.TextFlag.TextWordWrap)
        return QFontMetrics(self.font()).boundingRect(room, flags, self.text()).height()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.StyleChange, QEvent.Type.FontChange):
            self._fit()

    def _fit(self) -> None:
        self.setMinimumHeight(self.heightForWidth(self.width()))


def _preview() -> QWidget:
    from PySide6.QtWidgets import QHBoxLayout

    page = QWidget()
    row = QHBoxLayout(page)
    row.addWidget(Words("On sheet 1 you chose to change hard edges first.", "medium", page))
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 220, 90))
