"""The box: every paint with a drawn-out swatch, ticked where the class owns it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QEvent, QPoint, QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFocusEvent, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QHBoxLayout,
    QScrollArea,
    QSizePolicy,
    QStyle,
    QStyleOptionComboBox,
    QStylePainter,
    QVBoxLayout,
    QWidget,
)

from app.look import look
from app.look.icons import paint_icon
from app.look.space import EDGE, FOCUS_WIDTH, MARGIN, WITHIN
from app.look.theme import WALL
from app.look.type import FIRST, SECOND, font
from app.mix.head import BY_KEY
from app.paint.mix_swatch import SwatchView, paint_swatch
from app.widgets.buttons import IconButton
from app.widgets.fit import Fitted, fit
from core.i18n import translate

TONGUE = 100
_SWATCH_LEFT, _SWATCH_WIDTH = 16, 68
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
    absent : str
        Said instead of both where the class does not own it.
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
    absent: str = ""

    @property
    def said(self) -> tuple[str, ...]:
        """What is said below the name."""
        if not self.owned:
            return (self.absent,) if self.absent else ()
        return tuple(text for text in (self.note, self.stand_in) if text)


@dataclass(frozen=True)
class BoxView:
    """The whole panel.

    Attributes
    ----------
    boxes : tuple of str
        Names to choose among.
    current : int
        Which of them it is.
    paints : tuple of PaintRowView
    allow_white : bool
    """

    boxes: tuple[str, ...]
    current: int
    paints: tuple[PaintRowView, ...]
    allow_white: bool


class PaintRow(QCheckBox):
    """One paint; a tick box to a screen reader.

    Signals
    -------
    asked(key: str, owned: bool)
    moved(step: int)
        An arrow key asks for the row above or below.
    """

    asked = Signal(str, bool)
    moved = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.view: PaintRowView | None = None
        self._by_key = False
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
        self.setToolTip(view.caution)
        self.update()

    def hitButton(self, pos: object) -> bool:
        return True

    def height_for(self, width: int) -> int:
        """Height the words need; ticked or not, so that no row below slips away."""
        if self.view is None:
            return 0
        texts = self._texts(width, replace(self.view, owned=True))
        tall = sum(text.height for text in texts)
        return max(round(tall + look().type.grow(8)), look().type.grow(46))

    def sizeHint(self) -> QSize:
        return QSize(300, self.height_for(300))

    def focusInEvent(self, event: QFocusEvent) -> None:
        self._by_key = event.reason() in BY_KEY
        super().focusInEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        self._by_key = True
        step = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}.get(Qt.Key(event.key()))
        if step is not None:
            self.moved.emit(step)
        else:
            super().keyPressEvent(event)

    def _ask(self, checked: bool) -> None:
        if self.view is None:
            return
        # The box decides: the tick follows the study, not the press.
        with QSignalBlocker(self):
            self.setChecked(self.view.owned)
        self.asked.emit(self.view.key, not self.view.owned)

    def _texts(self, width: int, view: PaintRowView) -> tuple[Fitted, ...]:
        scale = look().type
        room = width - _TEXT_LEFT - scale.grow(_TICK) - MARGIN - WITHIN
        caution = scale.grow(22) if view.caution else 0
        weight = FIRST if view.owned else SECOND
        size, note = round(1.07 * scale.px("control")), scale.px("note")
        name = fit(view.name, (size, scale.px("control"), note), weight, room - caution)
        return name, *(fit(text, (note,), SECOND, room, 9) for text in view.said)

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
        paint_swatch(painter, swatch, SwatchView(self.view.colours if self.view.owned else ()))
        texts = self._texts(width, self.view)
        top = (height - sum(text.height for text in texts)) / 2
        for number, text in enumerate(texts):
            painter.setFont(font(text.size, text.weight))
            painter.setPen(QColor(theme.ink if number == 0 and self.view.owned else theme.second))
            for line in text.lines:
                painter.drawText(
                    QRectF(_TEXT_LEFT, top, text.width + 4, text.pitch),
                    int(Qt.AlignmentFlag.AlignVCenter) | int(Qt.TextFlag.TextDontClip),
                    line,
                )
                if number == 0 and line is text.lines[-1] and self.view.caution:
                    side = scale.grow(18)
                    place = QRectF(0, 0, side, side)
                    place.moveTo(width - MARGIN - scale.grow(_TICK) - WITHIN - side, top)
                    paint_icon(painter, place, "caution", theme.ink)
                top += text.pitch
        self._paint_tick(painter, QRectF(width - MARGIN - scale.grow(_TICK), 0, 0, height))
        if self.hasFocus() and self._by_key:
            painter.setPen(QPen(QColor(theme.ink), FOCUS_WIDTH))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(QRectF(TONGUE + 4, 2, width - TONGUE - 9, height - 4), 5, 5)
        painter.end()

    def _paint_tick(self, painter: QPainter, column: QRectF) -> None:
        theme, side = look().theme, look().type.grow(_TICK)
        box = QRectF(column.left(), column.center().y() - side / 2, side, side)
        box.adjust(EDGE / 2, EDGE / 2, -EDGE / 2, -EDGE / 2)
        assert self.view is not None
        painter.setPen(
            QPen(QColor(theme.ink if self.view.owned or self.underMouse() else theme.edge), EDGE)
        )
        painter.setBrush(QColor(theme.raised))
        painter.drawRoundedRect(box, 4, 4)
        if self.view.owned:
            paint_icon(painter, box, "check", theme.ink)


class ElidedChoice(QComboBox):
    """A choice whose text ends in dots where there is no room for it."""

    def paintEvent(self, event: QPaintEvent) -> None:
        option = QStyleOptionComboBox()
        self.initStyleOption(option)
        field = self.style().subControlRect(
            QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxEditField, self
        )
        option.currentText = self.fontMetrics().elidedText(
            self.currentText(), Qt.TextElideMode.ElideRight, field.width() - 4
        )
        painter = QStylePainter(self)
        painter.drawComplexControl(QStyle.ComplexControl.CC_ComboBox, option)
        painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)
        painter.end()


class BoxPanel(QWidget):
    """Which box, its paints, and whether white paint may be used.

    Signals
    -------
    box_chosen(number: int)
    paint_ticked(key: str, owned: bool)
    white_asked(allowed: bool)
    menu_asked(place: QPoint)
        The menu of the box, at a place on the screen.
    """

    box_chosen = Signal(int)
    paint_ticked = Signal(str, bool)
    white_asked = Signal(bool)
    menu_asked = Signal(QPoint)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "paper")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._view: BoxView | None = None
        self.rows: list[PaintRow] = []
        self.boxes = ElidedChoice(self)
        self.boxes.setAccessibleName(translate("mix page", "Paint box"))
        self.boxes.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.more = IconButton("more", translate("mix page", "Save, open or add to the box"), self)
        self.white = QCheckBox(translate("mix page", "Allow white paint"), self)
        self.white.setToolTip(
            translate("mix page", "Paper is the white of a wash; white paint makes it chalky.")
        )
        self._scroll = QScrollArea(self)
        self._scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._inside = _Tongue()
        self._scroll.setWidget(self._inside)
        self.boxes.activated.connect(self.box_chosen)
        self.white.clicked.connect(self.white_asked)
        self.more.clicked.connect(
            lambda: self.menu_asked.emit(self.more.mapToGlobal(QPoint(0, self.more.height() + 2)))
        )
        head = QHBoxLayout()
        head.setContentsMargins(16, 14, 14, 14)
        head.setSpacing(WITHIN)
        head.addWidget(self.boxes, 1)
        head.addWidget(self.more)
        foot = QHBoxLayout()
        foot.setContentsMargins(MARGIN, WITHIN, MARGIN, WITHIN)
        foot.addWidget(self.white)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(head)
        column.addWidget(self._scroll, 1)
        column.addLayout(foot)

    def set_view(self, view: BoxView) -> None:
        """Show a box."""
        if view == self._view:
            return
        before, self._view = self._view, view
        with QSignalBlocker(self.boxes):
            if before is None or before.boxes != view.boxes:
                self.boxes.clear()
                self.boxes.addItems(view.boxes)
            self.boxes.setCurrentIndex(view.current)
        with QSignalBlocker(self.white):
            self.white.setChecked(view.allow_white)
        self._match_rows(len(view.paints))
        for row, paint in zip(self.rows, view.paints, strict=True):
            row.set_view(paint)
        self._lay_out()

    def row(self, key: str) -> PaintRow:
        """The row of a paint."""
        return next(row for row in self.rows if row.view is not None and row.view.key == key)

    def resizeEvent(self, event: object) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_inside"):
            self._lay_out()

    def _match_rows(self, count: int) -> None:
        while len(self.rows) > count:
            row = self.rows.pop()
            row.hide()
            row.deleteLater()
        while len(self.rows) < count:
            row = PaintRow(self._inside)
            row.asked.connect(self.paint_ticked)
            row.moved.connect(lambda step, row=row: self._move(row, step))
            row.show()
            self.rows.append(row)

    def _move(self, row: PaintRow, step: int) -> None:
        number = self.rows.index(row) + step
        if 0 <= number < len(self.rows):
            self.rows[number].setFocus(Qt.FocusReason.TabFocusReason)
            self._scroll.ensureWidgetVisible(self.rows[number], 0, 4)

    def _lay_out(self) -> None:
        self.layout().activate()
        available = self._scroll.height()
        width = self._scroll.width()
        heights = [row.height_for(width) for row in self.rows]
        if sum(heights) > available:  # a scroll bar takes its place
            width -= 14
            heights = [row.height_for(width) for row in self.rows]
        elif self.rows:
            spare = min((available - sum(heights)) // len(self.rows), look().type.grow(30))
            heights = [height + spare for height in heights]
        y = 0
        for row, height in zip(self.rows, heights, strict=True):
            row.setGeometry(0, y, width, height)
            y += height
        self._inside.resize(self._scroll.width(), max(y, available))


class _Tongue(QWidget):
    """The wall running down the swatches' column to its end."""

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(look().theme.paper))
        painter.fillRect(QRectF(0, 0, TONGUE, self.height()), QColor(WALL))
        painter.end()


def shown_order(before: Sequence[str], owned: Sequence[str], known: Sequence[str]) -> list[str]:
    """In which order to show paints: none jumps away when it is ticked on or off.

    Parameters
    ----------
    before : sequence of str
        Keys as they are shown now; empty when another box was chosen.
    owned : sequence of str
        The box, in its order.
    known : sequence of str
        Every paint of the catalogue.

    Returns
    -------
    list of str
        A new box first shows its own paints, then those it lacks.
    """
    wanted = [*owned, *(key for key in known if key not in owned)]
    if not before or any(key not in wanted for key in before if key in known):
        return wanted
    kept = [key for key in before if key in wanted]
    return kept + [key for key in wanted if key not in kept]
