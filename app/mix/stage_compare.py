"""The paints of one group side by side in a chosen band."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from app.drawing.mix.compare import (
    CompareView,
    compare_captions_height,
    paint_compare,
)
from app.look import look
from app.look.space import INSIDE
from app.mix.stage import LEAST_CHIPS, LEFT, MOST_CHIPS, Stage
from app.mix.stage_views import CompareStageView


class CompareStage(Stage):
    """The paints of one group side by side."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: CompareStageView | None = None

    def set_view(self, view: CompareStageView | None) -> None:
        """Show the paints; None where the box has only one of them."""
        self._view = view
        if view is not None:
            self.title.setText(view.title)
            said = " ".join(
                f"{item.name}: {item.mix}. {item.verdict_word}, {item.faults}. {item.sensitivity}"
                for item in view.paints
            )
            self.setAccessibleName(f"{view.title}. {said}")
        self.update()

    def height_for(self, width: int) -> tuple[int, int]:
        if self._view is None:
            return self.head_height(), self.head_height()
        scale = look().type
        words = compare_captions_height(width - LEFT - INSIDE, self._drawing())
        least = self.head_height() + words + scale.grow(LEAST_CHIPS)
        return round(least), round(least + scale.grow(MOST_CHIPS - LEAST_CHIPS))

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._view is None:
            return
        painter = QPainter(self)
        top = self.head_height()
        rect = QRectF(LEFT, top, self.width() - LEFT - INSIDE, self.height() - top)
        paint_compare(painter, rect, self._drawing(), wall=QRectF(self.rect()))
        painter.end()

    def _drawing(self) -> CompareView:
        assert self._view is not None
        theme = look().theme
        note = look().type.px("note")
        return CompareView(
            self._view.photo, self._view.paints, note, theme.ink, theme.second, theme.raised
        )
