"""The tone-down ladder of a chosen band."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRectF, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QMenu, QWidget

from app.drawing.mix.tone import ToneView, captions_height, paint_tone
from app.look import look
from app.look.space import INSIDE, WITHIN
from app.mix.stage import LEAST_CHIPS, LEFT, MOST_CHIPS, Stage
from app.mix.stage_views import ToneStageView
from app.widgets.buttons import EdgeButton
from core.i18n import translate

# Under this width a chip's words leave the drift out, else they would grow taller than the chip.
_DRIFT_FROM = 118


class ToneStage(Stage):
    """The tone-down ladder.

    Signals
    -------
    toner_asked(number: int)
        Another toner of the view's list.
    """

    toner_asked = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: ToneStageView | None = None
        self.comparison = QLabel(self)
        self.comparison.setWordWrap(True)
        self.choose = EdgeButton(translate("mix page", "Another toner"), "chevron_down", self)
        self.choose.clicked.connect(self._open_menu)

    def set_view(self, view: ToneStageView | None, nothing: str = "") -> None:
        """Show a ladder, or say why there is nothing to tone down."""
        self._view = view
        if view is None:
            self.title.setText(nothing)
        else:
            self.title.setText(view.title)
            steps = "; ".join(f"{step.fraction}: {step.note}" for step in view.steps)
            spoken = view.title if view.folded else f"{view.title}. {steps}. {view.comparison}"
            self.setAccessibleName(spoken.strip())
            self.comparison.setText(view.comparison)
        self.comparison.setVisible(view is not None and bool(view.comparison))
        self.choose.setVisible(view is not None and len(view.toners) > 1)
        self.place_head()
        self.update()

    def height_for(self, width: int) -> tuple[int, int]:
        if self._view is None or self._view.folded:
            return self.head_height(), self.head_height()
        scale = look().type
        words = captions_height(width - LEFT - INSIDE, self._drawing())
        words += self._comparison_height(width)
        least = self.head_height() + words + scale.grow(LEAST_CHIPS)
        return round(least), round(least + scale.grow(MOST_CHIPS - LEAST_CHIPS))

    def _comparison_height(self, width: int) -> int:
        if self._view is None or not self._view.comparison:
            return 0
        return self.comparison.heightForWidth(width - LEFT - INSIDE) + WITHIN

    def resizeEvent(self, event: object) -> None:
        super().resizeEvent(event)
        tall = self._comparison_height(self.width())
        room = self.width() - LEFT - INSIDE
        self.comparison.setGeometry(LEFT, self.height() - tall, room, max(tall - WITHIN, 0))

    def head_room(self) -> int:
        shown = self.choose.isVisibleTo(self)
        return self.choose.sizeHint().width() + WITHIN if shown else 0

    def place_head(self) -> None:
        super().place_head()
        hint = self.choose.sizeHint()
        top = (self.head_height() - 6 - hint.height()) // 2
        self.choose.setGeometry(
            self.width() - INSIDE - hint.width(), top, hint.width(), hint.height()
        )

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._view is None or self._view.folded:
            return
        painter = QPainter(self)
        top = self.head_height()
        tall = self.height() - top - self._comparison_height(self.width())
        rect = QRectF(LEFT, top, self.width() - LEFT - INSIDE, tall)
        paint_tone(painter, rect, self._drawing(), wall=QRectF(self.rect()))
        painter.end()

    def _drawing(self) -> ToneView:
        assert self._view is not None
        theme = look().theme
        chips = self._view.steps
        roomy = self.width() / max(len(chips), 1) >= look().type.grow(_DRIFT_FROM)
        return ToneView(chips, look().type.px("note"), theme.ink, theme.second, roomy)

    def _open_menu(self) -> None:
        if self._view is None:
            return
        menu = QMenu(self)
        for number, (name, chosen) in enumerate(self._view.toners):
            action = menu.addAction(name)
            action.setCheckable(True)
            action.setChecked(chosen)
            action.triggered.connect(
                lambda _checked=False, number=number: self.toner_asked.emit(number)
            )
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        menu.popup(self.choose.mapToGlobal(QPoint(0, self.choose.height() + 2)))
