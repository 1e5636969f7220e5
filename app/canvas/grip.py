"""The grip of one line: a number box that stays a small tag until it is chosen or focused."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import (
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QAbstractButton, QDoubleSpinBox, QWidget

from app.canvas.painting import paint_focus_ring
from app.drawing.ink import BLACK, WHITE, text_size
from app.drawing.lines import GRIP_HEIGHT, GripView, grip_width, paint_grip
from app.look import look
from app.look.type import CHOSEN
from core.i18n import translate
from core.reading.percent import percent_sign

STEP = 0.002
"""Share of the photo's height that an arrow moves a line; ten times with Shift."""

PAD = 7
"""Room around the tag for the ring that shows focus."""

_OPEN_HEIGHT = 28
_WORD_HEIGHT = 18
_ARROWS_WIDTH = 26
_DRAG_FROM_PX = 3


class Grip(QDoubleSpinBox):
    """The lower edge of one band, as a number box in percent of the photo's height.

    Up moves the line up, so the number gets smaller: what is moved is the line.

    Signals
    -------
    wanted(y: float)
        The line is wanted at this fraction of the photo's height.
    pressed(y_px: float), dragged(y_px: float), released()
        The mouse moves the line; rows of the parent.
    split_asked(), remove_asked(), focused(), resized()
    """

    wanted = Signal(float)
    pressed = Signal(float)
    dragged = Signal(float)
    released = Signal()
    split_asked = Signal()
    remove_asked = Signal()
    focused = Signal()
    resized = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._y = 0.0
        self._horizon = False
        self._chosen = False
        self._press: QPointF | None = None
        self._press_y = 0.0
        self._dragging = False
        self._opened_by_press = False
        self.setProperty("own_focus", True)
        self.setRange(0.0, 100.0)
        self.setDecimals(1)
        self.setSuffix(percent_sign())
        self.setKeyboardTracking(False)
        self.setButtonSymbols(QDoubleSpinBox.ButtonSymbols.NoButtons)
        self.setFrame(False)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.SizeVerCursor)
        plain = "background: transparent; border: none; padding: 0; margin: 0; min-height: 0;"
        self.setStyleSheet(
            f"QDoubleSpinBox {{ {plain} }}"
            f"QLineEdit {{ {plain} color: {BLACK};"
            f" selection-background-color: {BLACK}; selection-color: {WHITE}; }}"
        )
        self.lineEdit().setCursor(Qt.CursorShape.IBeamCursor)
        self.valueChanged.connect(lambda percent: self.wanted.emit(percent / 100))
        self._fit()

    def show_line(self, y: float, *, horizon: bool, chosen: bool, name: str) -> None:
        """Show a line.

        Parameters
        ----------
        y : float
            Fraction of the photo's height.
        horizon : bool
            It ends the sky.
        chosen : bool
            Opened into the number box also without focus.
        name : str
            What it is, for a screen reader.
        """
        if y != self._y:
            self._y = y
            with QSignalBlocker(self):
                self.setValue(y * 100)
            if self.hasFocus():
                self.lineEdit().selectAll()  # the old selection covers a part of the new number
            self.update()
        if (horizon, chosen) != (self._horizon, self._chosen):
            self._horizon, self._chosen = horizon, chosen
            self._fit()
        if self.accessibleName() != name:
            self.setAccessibleName(name)
            self.setToolTip(name)

    @property
    def opened(self) -> bool:
        """Whether the number shows."""
        return self._chosen or self.hasFocus()

    @property
    def tag_height(self) -> float:
        """Height of the tag alone, in pixels; its middle is on the line's row."""
        return float(look().type.grow(_OPEN_HEIGHT if self.opened else GRIP_HEIGHT))

    @property
    def below(self) -> float:
        """Height of the words under the tag, in pixels."""
        return float(look().type.grow(_WORD_HEIGHT) * len(self._words_below()))

    def sizeHint(self) -> QSize:
        width = round(grip_width(self._view(), self.tag_height))
        words = self._words_below()
        if words:
            size = look().type.px("note")
            width = max(width, *(round(text_size(word, size, CHOSEN)[0]) + 2 for word in words))
        # Words end without a margin: what a dragged grip uncovers is drawn anew, neighbours too.
        high = round(self.tag_height + self.below) + (PAD if words else 2 * PAD)
        return QSize(width + 2 * PAD, high)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def stepBy(self, steps: int) -> None:
        self.wanted.emit(min(max(self._y - steps * STEP, 0.0), 1.0))
        self.lineEdit().selectAll()

    def stepEnabled(self) -> QDoubleSpinBox.StepEnabledFlag:
        flags = QDoubleSpinBox.StepEnabledFlag
        return flags.StepUpEnabled | flags.StepDownEnabled

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ShortcutOverride and not self.lineEdit().isModified():
            # Until digits are typed, undo, redo and paste are the window's, not the editor's.
            event.ignore()
            return False
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, shift = event.key(), event.modifiers() & Qt.KeyboardModifier.ShiftModifier
        typing = self.lineEdit().isModified()
        if key in (Qt.Key.Key_Up, Qt.Key.Key_Down) and shift:
            self.stepBy(10 if key == Qt.Key.Key_Up else -10)
        elif key == Qt.Key.Key_Insert:
            self.split_asked.emit()
        elif key == Qt.Key.Key_Delete and not typing:
            self.remove_asked.emit()
        elif key == Qt.Key.Key_Escape and typing:
            with QSignalBlocker(self):
                self.setValue(self._y * 100)
            self.lineEdit().selectAll()
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        by_mouse = event.reason() == Qt.FocusReason.MouseFocusReason
        self._opened_by_press = by_mouse and not self._chosen
        super().focusInEvent(event)
        self.focused.emit()
        self._fit()
        self.lineEdit().selectAll()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.lineEdit().deselect()
        self._fit()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._press = event.position()
            self._press_y = self.mapToParent(event.position()).y()
            self._dragging = False
            self.pressed.emit(self._press_y)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._press is None:
            return
        # The tag moves with its line: only the parent's rows stay put.
        y = self.mapToParent(event.position()).y()
        if self._dragging or abs(y - self._press_y) >= _DRAG_FROM_PX:
            self._dragging = True
            self.dragged.emit(y)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._press is None:
            return
        press, self._press = self._press, None
        self.released.emit()
        on_arrows = not self._opened_by_press and self._arrows().contains(press)
        self._opened_by_press = False
        if on_arrows and self.opened and not self._dragging:
            self.stepBy(1 if press.y() < self._tag().center().y() else -1)

    def wheelEvent(self, event: QEvent) -> None:
        event.ignore()  # the wheel zooms the photo, also over a grip

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._place_editor()

    def paintEvent(self, event: QPaintEvent) -> None:
        tag = self._tag()
        drawn = tag.adjusted(-1, -1, 1, 1 + self.below).toAlignedRect()
        if not self.hasFocus() and not event.region().intersects(drawn):
            return  # a line dragged past it uncovered its margin alone
        painter = QPainter(self)
        view = self._view()
        if self.hasFocus():
            paint_focus_ring(painter, tag, 0.2 * tag.height())
            # The editor draws the number.
            view = GripView(view.kind, "") if view.kind == "open" else view
        paint_grip(painter, tag, view)
        painter.setFont(look().type.font("note", CHOSEN))
        painter.setPen(BLACK)
        high = look().type.grow(_WORD_HEIGHT)
        for number, text in enumerate(self._words_below()):
            word = QRectF(tag.left(), tag.bottom() + 3 + number * high, tag.width(), high)
            painter.drawText(word, Qt.AlignmentFlag.AlignCenter, text)

    def _view(self) -> GripView:
        if self.opened:
            return GripView("open", self.text())
        return GripView("named", _horizon_word()) if self._horizon else GripView("plain")

    def _words_below(self) -> tuple[str, ...]:
        """What the number is, under the opened tag: a bare share says nothing."""
        if not self.opened:
            return ()
        from_top = translate("canvas", "from the top")
        return (_horizon_word(), from_top) if self._horizon else (from_top,)

    def _tag(self) -> QRectF:
        return QRectF(PAD, PAD, self.width() - 2 * PAD, self.tag_height)

    def _arrows(self) -> QRectF:
        tag, width = self._tag(), look().type.grow(_ARROWS_WIDTH)
        return QRectF(tag.right() - width, tag.top(), width, tag.height())

    def _fit(self) -> None:
        tag_text = round(0.58 * self.tag_height)  # as paint_grip sets the number
        font = look().type.font("control", CHOSEN)
        font.setPixelSize(tag_text)
        self.setFont(font)
        self.lineEdit().setVisible(self.hasFocus())
        self.resize(self.sizeHint())
        self._place_editor()
        self.update()
        self.resized.emit()

    def _place_editor(self) -> None:
        tag = self._tag().toRect()
        left = tag.left() + round(0.38 * self.tag_height) - 2
        self.lineEdit().setGeometry(
            left, tag.top() + 4, round(self._arrows().left()) - left + 2, tag.height() - 8
        )


class RivalTag(QAbstractButton):
    """ "or here?": another place where the sky may end; a click accepts it."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setProperty("own_focus", True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setText(translate("canvas", "or here?"))

    @property
    def tag_height(self) -> float:
        """Height of the tag alone, in pixels."""
        return float(look().type.grow(GRIP_HEIGHT))

    @property
    def below(self) -> float:
        """Nothing stands under it."""
        return 0.0

    def sizeHint(self) -> QSize:
        width = round(grip_width(self._view(), self.tag_height))
        return QSize(width + 2 * PAD, round(self.tag_height) + 2 * PAD)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        tag = QRectF(self.rect()).adjusted(PAD, PAD, -PAD, -PAD)
        if self.hasFocus():
            paint_focus_ring(painter, tag, 0.2 * tag.height())
        paint_grip(painter, tag, self._view())

    def _view(self) -> GripView:
        return GripView("rival", self.text())


def _horizon_word() -> str:
    return translate("canvas", "horizon")
