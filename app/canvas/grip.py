"""The grip of one line: a number box that stays a small tag until it is chosen or focused."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QFontMetrics, QKeyEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QAbstractButton, QDoubleSpinBox, QWidget

from app.canvas.painting import BLACK, WHITE, paint_arrows, paint_tag
from app.look import look
from app.look.type import CHOSEN, FIRST
from core.i18n import translate

STEP = 0.002
"""Share of the photo's height that an arrow moves a line; ten times with Shift."""

PAD = 7
"""Room around the tag for the ring that shows focus."""

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
        self.setRange(0.0, 100.0)
        self.setDecimals(1)
        self.setKeyboardTracking(False)
        self.setButtonSymbols(QDoubleSpinBox.ButtonSymbols.NoButtons)
        self.setFrame(False)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.SizeVerCursor)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent, False)
        self.setStyleSheet(
            "QDoubleSpinBox { background: transparent; border: none; padding: 0; margin: 0; }"
            "QDoubleSpinBox QLineEdit { background: transparent; border: none; padding: 0;"
            f" color: {BLACK}; selection-background-color: {BLACK};"
            f" selection-color: {WHITE}; }}"
        )
        self.lineEdit().setAlignment(Qt.AlignmentFlag.AlignRight)
        self.lineEdit().setCursor(Qt.CursorShape.IBeamCursor)
        self.valueChanged.connect(lambda percent: self.wanted.emit(percent / 100))

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
        self._y = y
        if (horizon, chosen) != (self._horizon, self._chosen):
            self._horizon, self._chosen = horizon, chosen
            self._fit()
        self.setSuffix(translate("canvas", " %"))
        with QSignalBlocker(self):
            self.setValue(y * 100)
        if self.accessibleName() != name:
            self.setAccessibleName(name)
            self.setToolTip(name)

    @property
    def opened(self) -> bool:
        """Whether the number shows."""
        return self._chosen or self.hasFocus()

    @property
    def tag_height(self) -> int:
        """Height of the visible tag, without the room around it."""
        return self.sizeHint().height() - 2 * PAD

    def sizeHint(self) -> QSize:
        grow = look().type.grow
        if not self.opened:
            width = 30 if not self._horizon else 30 + self._word_width() + 4
            return QSize(grow(width) + 2 * PAD, grow(26) + 2 * PAD)
        height = 28 if not self._horizon else 44
        return QSize(grow(84) + 2 * PAD, grow(height) + 2 * PAD)

    minimumSizeHint = sizeHint

    def stepBy(self, steps: int) -> None:
        self.wanted.emit(min(max(self._y - steps * STEP, 0.0), 1.0))
        self.lineEdit().selectAll()

    def stepEnabled(self) -> QDoubleSpinBox.StepEnabledFlag:
        flags = QDoubleSpinBox.StepEnabledFlag
        return flags.StepUpEnabled | flags.StepDownEnabled

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
        self._opened_by_press = (
            event.reason() == Qt.FocusReason.MouseFocusReason and not self._chosen
        )
        super().focusInEvent(event)
        self.lineEdit().selectAll()
        self.focused.emit()
        self._fit()

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
        on_arrows = not self._opened_by_press and self._arrows_rect().contains(press)
        self._opened_by_press = False
        if on_arrows and self.opened and not self._dragging:
            self.stepBy(1 if press.y() < self.height() / 2 else -1)

    def wheelEvent(self, event: QEvent) -> None:
        event.ignore()  # the wheel zooms the photo, also over a grip

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.StyleChange, QEvent.Type.FontChange):
            self._fit()

    def resizeEvent(self, event: QEvent) -> None:
        super().resizeEvent(event)
        self._place_editor()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        tag = QRectF(self.rect()).adjusted(PAD, PAD, -PAD, -PAD)
        paint_tag(painter, tag, opened=self.opened, focused=self.hasFocus())
        grow = look().type.grow
        colour = BLACK if self.opened else WHITE
        paint_arrows(painter, self._arrows_rect().center(), grow(11), colour)
        if self._horizon:
            painter.setFont(look().type.font("note", CHOSEN))
            painter.setPen(colour)
            if self.opened:
                word = QRectF(tag.left(), tag.top() + 2, tag.width() - grow(22), grow(20))
                flags = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            else:
                word = tag.adjusted(grow(26), 0, 0, 0)
                flags = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
            painter.drawText(word, flags, _horizon_word())

    def _arrows_rect(self) -> QRectF:
        grow = look().type.grow
        tag = QRectF(self.rect()).adjusted(PAD, PAD, -PAD, -PAD)
        if self.opened:
            return QRectF(tag.right() - grow(22), tag.top(), grow(20), tag.height())
        return QRectF(tag.left() + 2, tag.top(), grow(26), tag.height())

    def _word_width(self) -> int:
        scale = look().type.scale
        font = look().type.font("note", CHOSEN)
        return round(QFontMetrics(font).horizontalAdvance(_horizon_word()) / scale)

    def _fit(self) -> None:
        self.setFont(look().type.font("control", FIRST, columns=True))
        self.lineEdit().setVisible(self.opened)
        self.resize(self.sizeHint())
        self._place_editor()
        self.updateGeometry()
        self.update()
        self.resized.emit()

    def _place_editor(self) -> None:
        grow = look().type.grow
        top = PAD + 4 if not self._horizon else PAD + grow(19)
        bottom = self.height() - PAD - 4
        self.lineEdit().setGeometry(
            PAD + 5, top, self.width() - 2 * PAD - grow(22) - 6, bottom - top
        )


class RivalTag(QAbstractButton):
    """ "or here?": another place where the sky may end; a click accepts it."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setText(translate("canvas", "or here?"))

    def sizeHint(self) -> QSize:
        self.ensurePolished()
        self.setFont(look().type.font("note", CHOSEN))
        grow = look().type.grow
        width = self.fontMetrics().horizontalAdvance(self.text()) + grow(20)
        return QSize(width + 2 * PAD, grow(26) + 2 * PAD)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        tag = QRectF(self.rect()).adjusted(PAD, PAD, -PAD, -PAD)
        paint_tag(painter, tag, opened=False, dashed=True, focused=self.hasFocus())
        painter.setFont(look().type.font("note", CHOSEN))
        painter.setPen(BLACK)
        painter.drawText(tag, Qt.AlignmentFlag.AlignCenter, self.text())


def _horizon_word() -> str:
    return translate("canvas", "horizon")
