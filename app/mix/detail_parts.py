"""The parts bar with its names, and the lines that offer another mix."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Signal
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QWidget

from app.drawing.mix.parts import NamedBarView, named_bar_height, paint_named_bar
from app.look import look
from app.look.icons import paint_icon
from app.look.space import CONTROL, WITHIN
from app.mix.head import bar_view
from app.mix.views import BandView, Offer
from app.widgets.buttons import IconButton
from core.i18n import translate


class NamedBar(QWidget):
    """The parts bar with its names."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: BandView | None = None

    def set_view(self, view: BandView) -> None:
        """Show a mix."""
        self._view = view
        names = ", ".join(f"{part.count} {part.name}" for part in view.parts)
        self.setAccessibleName(names)
        self.update()

    def height_for(self, width: int) -> int:
        """Height of bar and names."""
        if self._view is None or not self._view.parts:
            return 0
        return round(named_bar_height(width, self._drawing(self._view)) + 0.5)

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._view is None or not self._view.parts:
            return
        painter = QPainter(self)
        paint_named_bar(painter, QRectF(self.rect()), self._drawing(self._view))
        painter.end()

    def _drawing(self, view: BandView) -> NamedBarView:
        scale = look().type
        names = tuple(part.name for part in view.parts)
        return NamedBarView(
            bar_view(view), names, scale.grow(30), scale.px("note"), look().theme.ink
        )


class OfferLine(QWidget):
    """Another mix in a sentence; an arrow takes it instead, a minus says to avoid it."""

    taken = Signal()

    def __init__(self, offer: Offer, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.offer = offer
        self.label = QLabel(offer.text, self)
        self.label.setWordWrap(True)
        self.button: IconButton | None = None
        if offer.mix is not None:
            name = translate("mix page", "Take this mix instead")
            self.button = IconButton("arrow_right", name, self)
            self.button.setAccessibleDescription(offer.text)
            self.button.clicked.connect(self.taken)
            self.button.show()
        self.label.show()

    def height_for(self, width: int) -> int:
        """Height the sentence needs."""
        tall = self.label.heightForWidth(width - self._side() - WITHIN) + self._drop()
        return max(tall, self._side()) + 2 if self.button is not None else tall + 2

    def _side(self) -> int:
        return look().type.grow(CONTROL)

    def _drop(self) -> int:
        """How far down the first line stands: level with the arrow."""
        room = self._side() if self.button is not None else look().type.grow(24)
        return max((room - look().type.grow(20)) // 2 - 1, 0)

    def resizeEvent(self, event: object) -> None:
        side = self._side()
        if self.button is not None:
            self.button.setGeometry(0, 0, side, side)
        room = self.width() - side - WITHIN
        tall = self.label.heightForWidth(room)
        self.label.setGeometry(side + WITHIN, self._drop(), room, tall)

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.button is not None:
            return
        side = look().type.grow(18)
        painter = QPainter(self)
        middle = self._drop() + look().type.grow(10)
        place = QRectF((self._side() - side) / 2, middle - side / 2, side, side)
        paint_icon(painter, place, "minus", look().theme.ink)
        painter.end()
