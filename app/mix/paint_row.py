"""One paint of the box: a drawn-out swatch, its name, and a tick where the class owns it.

What pigment it is and how it behaves is in the tip, and below the name where that is asked for.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from PySide6.QtCore import QPoint, QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QContextMenuEvent,
    QFocusEvent,
    QKeyEvent,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import (
    QCheckBox,
    QWidget,
)

from app.drawing.fit import Fitted, fit
from app.drawing.mix.swatch import Known, SwatchView, paint_swatch
from app.look import look
from app.look.icons import paint_icon
from app.look.space import EDGE, FOCUS_WIDTH, MARGIN, WITHIN
from app.look.theme import WALL
from app.look.type import FIRST, SECOND, font
from app.mix.head import BY_KEY

TONGUE = 96
_SWATCH_LEFT, _SWATCH_WIDTH = 16, 64
_TEXT_LEFT = TONGUE + 12
_TICK = 20


@dataclass(frozen=True)
class PaintRowView:
    """One paint.

    Attributes
    ----------
    key, name : str
    note : str
        Usual Colour Index name, and how it behaves.
    stand_in : str
        Whose measurements it uses, where it was not measured itself.
    known : Known
        Where its colours come from: seen in the swatch's edge.
    unused : str
        Said instead of both where the class does not own it, or leaves it out of every mix.
    remark : str
        Always said below the name; empty for nothing to say.
    colours : tuple of str
        Drawn out from strong to pale.
    owned : bool
    caution : str
        What its label may list; empty for nothing to say.
    """

    key: str
    name: str
    note: str
    colours: tuple[str, ...]
    owned: bool
    stand_in: str = ""
    caution: str = ""
    unused: str = ""
    known: Known = "measured"
    remark: str = ""

    @property
    def said(self) -> tuple[str, ...]:
        """What is said below the name."""
        if self.unused:
            return (self.unused,)
        return tuple(text for text in (self.remark, self.note, self.stand_in) if text)

    def shown(self, detailed: bool) -> tuple[str, ...]:
        """What is written below the name."""
        if detailed:
            return self.said
        # That it is not in the box is seen: no tick, and an empty swatch.
        left_out = self.unused if self.owned else ""
        remark = self.remark if self.owned else ""
        return tuple(text for text in (left_out or remark,) if text)


class PaintRow(QCheckBox):
    """One paint; a tick box to a screen reader.

    Signals
    -------
    asked(key: str, owned: bool)
    moved(step: int)
        An arrow key asks for the row above or below.
    menu_asked(key: str, place: QPoint)
        The paint's menu, at a place on the screen.
    """

    asked = Signal(str, bool)
    moved = Signal(int)
    menu_asked = Signal(str, QPoint)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.view: PaintRowView | None = None
        self._by_key = False
        self.detailed = False
        self.setProperty("own_focus", True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.clicked.connect(self._ask)

    def set_view(self, view: PaintRowView) -> None:
        """Show a paint."""
        if view == self.view:
            return
        self.view = view
        with QSignalBlocker(self):
            self.setChecked(view.owned)
        self.setAccessibleName(", ".join((view.name, *view.said)))
        self.setAccessibleDescription(view.caution)
        about = "; ".join((*view.said, view.caution) if view.caution else view.said)
        self.setToolTip(about)
        self.update()

    def hitButton(self, pos: object) -> bool:
        return True

    def height_for(self, width: int) -> int:
        """Height the words need; ticked or not, so that no row below slips away."""
        if self.view is None:
            return 0
        said = self.view.unused if self.view.owned and not self.detailed else ""
        owned = replace(self.view, unused=said, owned=True)
        texts = self._texts(width, owned)
        tall = sum(text.height for text in texts)
        least = 46 if self.detailed else 35
        return max(round(tall + look().type.grow(8)), look().type.grow(least))

    def sizeHint(self) -> QSize:
        return QSize(300, self.height_for(300))

    def focusInEvent(self, event: QFocusEvent) -> None:
        self._by_key = event.reason() in BY_KEY
        super().focusInEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        self._by_key = True
        step = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}.get(Qt.Key(event.key()))
        shift = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
        if step is not None:
            self.moved.emit(step)
        elif event.key() == Qt.Key.Key_Menu or (event.key() == Qt.Key.Key_F10 and shift):
            self._ask_menu(self._menu_spot())
        else:
            super().keyPressEvent(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        by_mouse = event.reason() == QContextMenuEvent.Reason.Mouse
        self._ask_menu(event.globalPos() if by_mouse else self._menu_spot())

    def _menu_spot(self) -> QPoint:
        return self.mapToGlobal(QPoint(_TEXT_LEFT, self.height() - 6))

    def _ask_menu(self, place: QPoint) -> None:
        if self.view is not None:
            self.menu_asked.emit(self.view.key, place)

    def _ask(self, checked: bool) -> None:
        if self.view is None:
            return
        # The box decides: the tick follows the study, not the press.
        with QSignalBlocker(self):
            self.setChecked(self.view.owned)
        self.asked.emit(self.view.key, not self.view.owned)

    def _texts(self, width: int, view: PaintRowView) -> tuple[Fitted, ...]:
        scale = look().type
        room = width - _TEXT_LEFT - MARGIN
        beside = scale.grow(_TICK) + WITHIN + (scale.grow(22) if view.caution else 0)
        weight = SECOND if view.unused else FIRST
        size, note = round(1.07 * scale.px("control")), scale.px("note")
        name = fit(view.name, (size, scale.px("control"), note), weight, room - beside)
        said = "; ".join(view.shown(self.detailed))
        return (name, fit(said, (note,), SECOND, room, 9)) if said else (name,)

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.view is None:
            return
        theme, scale = look().theme, look().type
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        width, height = self.width(), self.height()
        painter.fillRect(self.rect(), QColor(theme.paper))
        painter.fillRect(QRectF(0, 0, TONGUE, height), QColor(WALL))
        tall = min(height - 8, scale.grow(56))
        swatch = QRectF(_SWATCH_LEFT, (height - tall) / 2, _SWATCH_WIDTH, tall)
        paint_swatch(
            painter,
            swatch,
            SwatchView(self.view.colours if self.view.owned else (), self.view.known),
        )
        texts = self._texts(width, self.view)
        top = (height - sum(text.height for text in texts)) / 2
        self._paint_marks(painter, top + texts[0].pitch / 2)
        for number, text in enumerate(texts):
            painter.setFont(font(text.size, text.weight))
            first = number == 0 and not self.view.unused
            painter.setPen(QColor(theme.ink if first else theme.second))
            for line in text.lines:
                painter.drawText(
                    QRectF(_TEXT_LEFT, top, text.width + 4, text.pitch),
                    int(Qt.AlignmentFlag.AlignVCenter) | int(Qt.TextFlag.TextDontClip),
                    line,
                )
                top += text.pitch
        if self.hasFocus() and self._by_key:
            painter.setPen(QPen(QColor(theme.ink), FOCUS_WIDTH))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(QRectF(TONGUE + 4, 2, width - TONGUE - 9, height - 4), 5, 5)
        painter.end()

    def _paint_marks(self, painter: QPainter, middle: float) -> None:
        """The tick, and the caution beside it, level with the name."""
        assert self.view is not None
        theme, side, mark = look().theme, look().type.grow(_TICK), look().type.grow(18)
        left = self.width() - MARGIN - side
        if self.view.caution:
            place = QRectF(left - WITHIN - mark, middle - mark / 2, mark, mark)
            paint_icon(painter, place, "caution", theme.ink)
        box = QRectF(left, middle - side / 2, side, side)
        box.adjust(EDGE / 2, EDGE / 2, -EDGE / 2, -EDGE / 2)
        painter.setPen(
            QPen(QColor(theme.ink if self.view.owned or self.underMouse() else theme.edge), EDGE)
        )
        painter.setBrush(QColor(theme.raised))
        painter.drawRoundedRect(box, 4, 4)
        if self.view.owned:
            paint_icon(painter, box, "check", theme.ink)
