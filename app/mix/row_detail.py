"""The ground of what a row opens, and what an open meeting shows."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from app.drawing.mix.meeting import MeetingStripView, names_lines, paint_meeting
from app.drawing.mix.text import PITCH
from app.look import look
from app.look.space import INSIDE, WITHIN
from app.mix.head import BAR_EDGE
from app.mix.meeting_view import MeetingView
from core.i18n import translate


class RowDetail(QWidget):
    """The raised ground with the ink bar going on at its left."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "raised")

    def height_for(self, width: int) -> tuple[int, int]:
        """Least height, and the height beyond which more room does nothing."""
        raise NotImplementedError

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(theme.raised))
        painter.fillRect(QRectF(0, 0, BAR_EDGE, self.height()), QColor(theme.ink))
        painter.end()


class MeetingDetail(RowDetail):
    """An open meeting: the photo's passage over the paint's, each stretch named."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: MeetingView | None = None

    def set_view(self, view: MeetingView) -> None:
        """Show a meeting."""
        self._view = view
        names = ", ".join(name for _, name in view.passage.names)
        self.setAccessibleName(
            translate("mix page", "The wet edge passes through: {names}.").format(names=names)
        )
        self.update()

    def height_for(self, width: int) -> tuple[int, int]:
        if self._view is None:
            return 0, 0
        scale = look().type
        view = self._drawing(self._view)
        lines = names_lines(width - 2 * INSIDE - self._label_room(), view)
        words = lines * PITCH * scale.px("note")
        least = round(scale.grow(64) + words + scale.grow(14))
        return least, least + scale.grow(60)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self._view is None:
            return
        painter = QPainter(self)
        wall = QRectF(BAR_EDGE, 0, self.width() - BAR_EDGE, self.height())
        rect = QRectF(INSIDE, 0, self.width() - 2 * INSIDE, self.height() - WITHIN)
        paint_meeting(painter, rect, self._drawing(self._view), wall=wall, label=self._label_room())
        painter.end()

    def _label_room(self) -> float:
        return look().type.grow(52)

    def _drawing(self, view: MeetingView) -> MeetingStripView:
        theme = look().theme
        labels = (translate("mix page", "photo"), translate("mix page", "paint"))
        note = look().type.px("note")
        return MeetingStripView(view.passage, labels, note, theme.ink, theme.wall_ink)
