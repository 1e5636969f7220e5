"""The head of a meeting of two bands."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import (
    QColor,
    QPainter,
)
from PySide6.QtWidgets import QWidget

from app.drawing.fit import Fitted, fit
from app.look import look
from app.look.icons import paint_icon
from app.look.space import INSIDE
from app.look.type import FIRST, MEDIUM, SECOND, font
from app.mix.head import RowHead
from app.mix.meeting_view import MeetingView


class MeetingHead(RowHead):
    """What happens where two bands meet, after a drop, or a triangle where care is needed."""

    def __init__(self, number: int, parent: QWidget) -> None:
        super().__init__(number, parent)
        self.setStyleSheet("min-height: 0;")  # where nothing happens it is a thin gap
        self.view: MeetingView | None = None

    def set_view(self, view: MeetingView | None) -> None:
        """Show a meeting; None where one of the two bands has no mix."""
        self.view = view
        self.setAccessibleName(view.text if view is not None else "")
        self.setToolTip(view.text if view is not None and view.quiet else "")
        self.update()

    def height_for(self, width: int, *, compact: bool) -> int:
        if not self.spoken_of:
            return look().type.grow(8)
        pad = look().type.grow(20 if self.opened else 6 if compact else 10)
        return round(self._text(width).height + pad + 0.5)

    @property
    def spoken_of(self) -> bool:
        """Whether it says anything: while closed, only where something happens."""
        return self.view is not None and (self.opened or not self.view.quiet)

    def _left(self) -> float:
        return INSIDE + look().type.grow(28)

    def _text(self, width: float) -> Fitted:
        assert self.view is not None
        size = look().type.px("control")
        weight = FIRST if self.opened else MEDIUM if self.view.warns else SECOND
        return fit(self.view.text, (size,), weight, width - self._left() - INSIDE, 4)

    def paint_face(self, painter: QPainter) -> None:
        if not self.spoken_of or self.view is None:
            return
        theme, scale = look().theme, look().type
        text = self._text(self.width())
        top = scale.grow(10) if self.opened else (self.height() - text.height) / 2
        side = scale.grow(18)
        place = QRectF(INSIDE, top + (text.pitch - side) / 2, side, side)
        paint_icon(painter, place, "caution" if self.view.warns else "drop", theme.ink)
        painter.setFont(font(text.size, text.weight))
        painter.setPen(QColor(theme.ink))
        for line in text.lines:
            painter.drawText(QPointF(self._left(), top + 0.78 * text.pitch), line)
            top += text.pitch
