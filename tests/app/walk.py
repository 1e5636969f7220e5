"""Walking over a window's widgets: what can be reached, what it is called, what is cut off."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QAbstractSpinBox,
    QApplication,
    QLabel,
    QLineEdit,
    QPushButton,
    QWidget,
)

from app.window.pages import PAGES

LEAST_TARGET = 24
KEYS = [kind.key for kind in PAGES]


def show(window, qtbot, key, percent=100):
    window.preferences.set(text_percent=percent)
    window.page(key)
    window.show_page(KEYS.index(key))
    window.activateWindow()
    qtbot.waitUntil(lambda: not window.planner.working and not window.checker.working)
    qtbot.wait(0)


def shown(root: QWidget) -> Iterator[QWidget]:
    """Every visible widget below `root`."""
    for widget in root.findChildren(QWidget):
        if widget.isVisible():
            yield widget


def controls(root: QWidget) -> list[QWidget]:
    """Widgets that take the focus by Tab."""
    found = []
    for widget in shown(root):
        inner = isinstance(widget.parent(), QAbstractSpinBox) and isinstance(widget, QLineEdit)
        by_tab = widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        if by_tab and widget.isEnabled() and not inner and widget.focusProxy() is None:
            found.append(widget)
    return found


def spoken_name(widget: QWidget) -> str:
    """What a screen reader calls a widget."""
    interface = QAccessible.queryAccessibleInterface(widget)
    return interface.text(QAccessible.Text.Name) if interface is not None else ""


def described(widget: QWidget) -> str:
    """A widget for a test's message."""
    text = widget.text() if isinstance(widget, QAbstractButton | QLabel) else ""
    holder = type(widget.parent()).__name__
    return f"{type(widget).__name__} {text!r} {widget.objectName()} in {holder}"


def reached_by_tab(window: QWidget, most: int = 400) -> set[QWidget]:
    """Widgets that have the focus in turn as Tab is pressed, once round."""
    start = window.focusWidget() or window
    visited: list[QWidget] = []
    for _ in range(most):
        at = QApplication.focusWidget() or window.focusWidget()
        QTest.keyClick(at or start, Qt.Key.Key_Tab)
        at = QApplication.focusWidget() or window.focusWidget()
        if at is None or (visited and at is visited[0]):
            break
        visited.append(at)
    return set(visited)


def cut_off(root: QWidget) -> list[str]:
    """Labels and buttons whose text needs more room than they have."""
    found = []
    for widget in shown(root):
        if isinstance(widget, QLabel) and widget.text():
            if widget.wordWrap():
                short = widget.heightForWidth(widget.width()) > widget.height() + 1
            else:
                need = widget.sizeHint()
                short = need.width() > widget.width() + 1 or need.height() > widget.height() + 1
        elif isinstance(widget, QPushButton):
            # Padding may give way, letters may not.
            height = widget.fontMetrics().height()
            short = widget.sizeHint().width() > widget.width() + 1 or height > widget.height()
        else:
            continue
        # A title that was shortened on purpose is whole in its tip.
        if short and widget.toolTip() != widget.text() and "…" not in widget.text():
            need = widget.sizeHint().toTuple()
            found.append(f"{described(widget)}: {widget.size().toTuple()}, needs {need}")
    return found


def outside(root: QWidget) -> list[str]:
    """Visible controls that are partly outside what holds them, unless that can be scrolled."""
    found = []
    for widget in controls(root):
        at, rect = widget, QRect(QPoint(0, 0), widget.size())
        while at is not root and at.parentWidget() is not None:
            rect.translate(at.pos())
            at = at.parentWidget()
            if isinstance(at.parentWidget(), QAbstractScrollArea):
                break  # a viewport: what is outside can be scrolled to
            if not at.rect().adjusted(-1, -1, 1, 1).contains(rect):
                found.append(f"{described(widget)} in {described(at)}")
                break
    return found


def assert_whole(root: QWidget, qtbot) -> None:
    """No text is cut off and no control is outside, once the layout has come to rest.

    A column settles in several turns of the event loop, since wide words ask for more room.
    """
    for _ in range(100):
        if not cut_off(root) and not outside(root):
            return
        qtbot.wait(30)
    assert cut_off(root) == []
    assert outside(root) == []
