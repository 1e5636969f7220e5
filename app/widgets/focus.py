"""The focus ring: one overlay for a window, following whatever has the focus.

A ring of ink 3 px clear of the control; on the wall black with white outside. Drawn outside the
control, it needs no room in any layout and looks the same on every kind of control.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QGuiApplication, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QAbstractScrollArea,
    QAbstractSpinBox,
    QApplication,
    QLineEdit,
    QPlainTextEdit,
    QTextEdit,
    QWidget,
)
from shiboken6 import isValid

from app.look import look
from app.look.space import FOCUS_CLEAR, FOCUS_WIDTH, RADIUS

_REACH = FOCUS_CLEAR + FOCUS_WIDTH + 2.0
_KEYS = (QEvent.Type.KeyPress, QEvent.Type.ShortcutOverride)
_WRITING = (QLineEdit, QPlainTextEdit, QTextEdit, QAbstractSpinBox)


def ground_of(widget: QWidget) -> str:
    """What a widget stands on: the nearest "ground" property, "paper" when none says."""
    at: QWidget | None = widget
    while at is not None:
        ground = at.property("ground")
        if isinstance(ground, str) and ground:
            return ground
        at = at.parentWidget()
    return "paper"


def stand_on(label: QWidget, ground: str) -> None:
    """Give a label the ink of its ground: on the wall that of the wall, in both themes."""
    if label.property("on") != ground:
        label.setProperty("on", ground)
        label.style().unpolish(label)
        label.style().polish(label)


class FocusRing(QWidget):
    """Draws the ring over a window. Make one for each window and keep it.

    Only who uses keys needs it: a mouse press shows no ring, except in a field one writes in, and
    neither does the program when it moves the focus; the next key does. A widget that shows its
    focus itself sets the property "own_focus".
    """

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setAttribute(Qt.WidgetAttribute.WA_NoSystemBackground)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._target: QWidget | None = None
        self._watched: list[QWidget] = []
        self._by_keys = False
        self.hide()
        app = QGuiApplication.instance()
        assert isinstance(app, QApplication)
        self._app = app
        app.focusChanged.connect(self._follow)
        self._following = True

    def stop(self) -> None:
        """Follow nothing any more; before the window goes. Twice does no harm."""
        if self._following:
            self._following = False
            self._app.focusChanged.disconnect(self._follow)
            self._watch(None)

    @property
    def target(self) -> QWidget | None:
        """The widget ringed now."""
        return self._target if self.isVisible() else None

    def _follow(self, old: QWidget | None, new: QWidget | None) -> None:
        inside = new is not None and (new is self.window() or self.window().isAncestorOf(new))
        ringed = new if inside else None
        hidden = old is not None and isValid(old) and not old.isVisible()
        # Qt moves the focus on from what is hidden, and calls that a Tab.
        # Not by its class: its preview stands below this module.
        not_by_keys = getattr(new, "not_by_keys", None) if inside and hidden else None
        if not_by_keys is not None:
            not_by_keys()
        if ringed is not None and ringed.property("own_focus"):
            ringed = None
        self._watch(ringed)
        pressed = QGuiApplication.mouseButtons() != Qt.MouseButton.NoButton
        if pressed:
            self._by_keys = False
        wanted = self._by_keys or (pressed and isinstance(ringed, _WRITING))
        if ringed is not None and wanted:
            self._place()
        else:
            self.hide()

    def _watch(self, widget: QWidget | None) -> None:
        for old in self._watched:
            if isValid(old):  # a dialog on its way out may have lost its parts already
                old.removeEventFilter(self)
        self._watched = []
        self._target = widget
        at = widget
        while at is not None and at is not self.window():
            at.installEventFilter(self)
            self._watched.append(at)
            at = at.parentWidget()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        kind = event.type()
        if kind == QEvent.Type.Destroy:
            self.hide()
        elif kind in (QEvent.Type.Move, QEvent.Type.Resize, QEvent.Type.Show):
            if self.isVisible():
                self._place()
        elif kind == QEvent.Type.Hide:
            self.hide()
        elif kind in _KEYS and watched is self._target:
            self._by_keys = True
            if kind == QEvent.Type.KeyPress and not self.isVisible():
                self._place()
        elif kind == QEvent.Type.MouseButtonPress:
            self._by_keys = False
        return False

    def _place(self) -> None:
        target = self._target
        if target is None or not target.isVisible():
            self.hide()
            return
        spot = target.mapTo(self.window(), QPoint(0, 0))
        reach = round(_REACH)
        area = QRect(spot, target.size()).adjusted(-reach, -reach, reach, reach)
        self.setGeometry(area & self._visible_part(target))
        self._origin = area.topLeft() - self.geometry().topLeft()
        self._size = target.size()
        self.raise_()
        self.show()
        self.update()

    def _visible_part(self, target: QWidget) -> QRect:
        """The window's area in which the ring may show: not outside a scrolled page."""
        area = self.window().rect()
        reach = round(_REACH)
        at = target.parentWidget()
        while at is not None and at is not self.window():
            parent = at.parentWidget()
            if isinstance(parent, QAbstractScrollArea) and at is parent.viewport():
                spot = at.mapTo(self.window(), QPoint(0, 0))
                area &= QRect(spot, at.size()).adjusted(-reach, -reach, reach, reach)
            at = parent
        return area

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._target is None:
            return
        theme = look().theme
        on_wall = ground_of(self._target) == "wall"
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        corner = self._origin + QPoint(round(_REACH), round(_REACH))
        inner = QRectF(corner, self._size)
        middle = FOCUS_CLEAR + FOCUS_WIDTH / 2
        ring = inner.adjusted(-middle, -middle, middle, middle)
        radius = RADIUS + middle - 1.0
        if on_wall:
            painter.setPen(QPen(QColor(theme.wall_light), FOCUS_WIDTH + 2.5))
            painter.drawRoundedRect(ring, radius, radius)
        ink = theme.wall_ink if on_wall else theme.ink
        painter.setPen(QPen(QColor(ink), FOCUS_WIDTH))
        painter.drawRoundedRect(ring, radius, radius)
        painter.end()
