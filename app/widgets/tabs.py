"""The pages' names in the header; the present one is bold over an ink bar."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFocusEvent, QFontMetricsF, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QTabBar, QWidget

from app.look import look
from app.look.space import FOCUS_WIDTH, HEADER, RADIUS
from app.look.type import CHOSEN, MEDIUM

_BETWEEN = 32
_BAR = 6
_OUT = 4


# Neither the mouse nor the program itself needs to be shown where the focus is.
_BY_KEYS = (
    Qt.FocusReason.TabFocusReason,
    Qt.FocusReason.BacktabFocusReason,
    Qt.FocusReason.ShortcutFocusReason,
)


class PageTabs(QTabBar):
    """Tabs of the header.

    Signals: QTabBar's; `currentChanged(int)`.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._by_key = False
        self.setDrawBase(False)
        self.setProperty("own_focus", True)
        self.setExpanding(False)
        self.setUsesScrollButtons(False)
        self.setElideMode(Qt.TextElideMode.ElideNone)
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    def tabSizeHint(self, index: int) -> QSize:
        scale = look().type
        face = QFontMetricsF(scale.font("label", CHOSEN))
        width = face.horizontalAdvance(self.tabText(index)) + scale.grow(_BETWEEN)
        return QSize(round(width), max(HEADER, scale.grow(HEADER)))

    def minimumTabSizeHint(self, index: int) -> QSize:
        return self.tabSizeHint(index)

    def focusInEvent(self, event: QFocusEvent) -> None:
        self._by_key = event.reason() in _BY_KEYS
        super().focusInEvent(event)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.update()

    def not_by_keys(self) -> None:
        """The focus came here because what had it is hidden: nobody pressed a key."""
        self._by_key = False
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        self._by_key = True
        super().keyPressEvent(event)
        self.update()

    def _paint_focus(self, painter: QPainter, tab: QRectF, width: float) -> None:
        ring = QRectF(0, 0, width + 12, 0.58 * tab.height())
        ring.moveCenter(tab.center())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(look().theme.ink), FOCUS_WIDTH))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(ring, RADIUS, RADIUS)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme, scale = look().theme, look().type
        painter = QPainter(self)
        for index in range(self.count()):
            if not self.isTabVisible(index):
                continue
            rect = QRectF(self.tabRect(index))
            chosen = index == self.currentIndex()
            enabled = self.isTabEnabled(index)
            face = scale.font("label", CHOSEN if chosen else MEDIUM)
            painter.setFont(face)
            painter.setPen(QColor(theme.ink if enabled else theme.second))
            painter.drawText(rect, Qt.AlignmentFlag.AlignCenter, self.tabText(index))
            if chosen:
                width = QFontMetricsF(face).horizontalAdvance(self.tabText(index)) + 2 * _OUT
                bar = QRectF(0, rect.bottom() - _BAR, width, _BAR)
                bar.moveCenter(rect.center())
                bar.moveBottom(rect.bottom())
                painter.fillRect(bar, QColor(theme.ink))
                if self.hasFocus() and self._by_key:
                    self._paint_focus(painter, rect, width)
        painter.end()


def _preview() -> QWidget:
    tabs = PageTabs()
    for name in ("Read", "Mix", "Sheets", "Worksheet"):
        tabs.addTab(name)
    return tabs


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 480, 52))
