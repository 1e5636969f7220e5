"""The bar on top: menus, page tabs, the study's title, undo and redo."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSignalBlocker, Qt, Signal
from PySide6.QtGui import QAction, QFontMetricsF, QKeySequence, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QMenu, QMenuBar, QSizePolicy, QWidget
from shiboken6 import isValid

from app.look import look
from app.look.space import HEADER, MARGIN, WITHIN
from app.pages.base import Menu
from app.widgets.buttons import EdgeButton, IconButton
from app.widgets.tabs import PageTabs
from core.i18n import translate

_LEAST_MENUS = 90
"""Room for one menu and the sign that opens the folded ones."""


class Header(QWidget):
    """Knows no page: it shows tabs and says which was chosen.

    Signals
    -------
    page_chosen(index: int)
    """

    page_chosen = Signal(int)

    def __init__(self, undo: QAction, redo: QAction, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "bar")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._bar = QMenuBar(self)
        self._bar.setNativeMenuBar(False)
        self._bar.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self._menus: dict[Menu, QMenu] = {
            "study": self._bar.addMenu(translate("header", "&Study")),
            "edit": self._bar.addMenu(translate("header", "&Edit")),
            "view": self._bar.addMenu(translate("header", "&View")),
            "help": self._bar.addMenu(translate("header", "&Help")),
        }
        self._rule = QWidget(self)
        self._tabs = PageTabs(self)
        self._tabs.currentChanged.connect(self.page_chosen)
        self._title_text = ""
        self._title = QLabel(self)
        self._title.setProperty("role", "second")
        self._title.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._title.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(MARGIN - 10, 0, MARGIN, 0)
        self._row.setSpacing(WITHIN)
        for widget in (self._bar, self._rule, self._tabs):
            self._row.addWidget(widget)
        self._row.addWidget(self._title, 1)
        self._row.addSpacing(12)
        self._actions = (_ActionButton(undo, "undo", self), _ActionButton(redo, "redo", self))
        for action in self._actions:
            self._row.addWidget(action)
        self._button: EdgeButton | None = None
        self._button_text = ""
        self._fit()

    def menu(self, name: Menu) -> QMenu:
        """One of the four menus."""
        return self._menus[name]

    def add_tab(self, text: str) -> None:
        """A tab right of the others."""
        with QSignalBlocker(self._tabs):
            self._tabs.addTab(text)
        self._make_room()

    def show_page(self, index: int) -> None:
        """Mark a tab as the chosen one."""
        with QSignalBlocker(self._tabs):
            self._tabs.setCurrentIndex(index)

    def add_button(self, button: EdgeButton) -> None:
        """The window's one ink button, at the right end."""
        self._button, self._button_text = button, button.text()
        button.setAccessibleName(button.text())
        self._row.addSpacing(WITHIN)
        self._row.addWidget(button)
        self._make_room()

    def show_title(self, title: str, unsaved: bool) -> None:
        """Say what is open and whether something would be lost."""
        if unsaved and title:
            title = translate("header", "{title}, unsaved").format(title=title)
        self._title_text = title
        self._elide()

    @property
    def title(self) -> str:
        """What the title says, whole."""
        return self._title_text

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._make_room()
        self._elide()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_row"):
            self._fit()

    def _make_room(self) -> None:
        """With large text or long words the button keeps its icon alone, then the menus fold."""
        if self._button is None:
            return
        margins = self._row.contentsMargins()
        rest = margins.left() + margins.right() + 8 * WITHIN + 12
        rest += sum(button.sizeHint().width() for button in self._actions)
        rest += sum(self._tabs.tabSizeHint(i).width() for i in range(self._tabs.count()))
        menus = self._bar.sizeHint().width()
        self._button.setText(self._button_text)
        if rest + menus + self._button.sizeHint().width() > self.width():
            self._button.setText("")
        room = self.width() - rest - self._button.sizeHint().width()
        self._bar.setFixedWidth(min(menus, max(room, look().type.grow(_LEAST_MENUS))))

    def _elide(self) -> None:
        self._row.activate()
        metrics = QFontMetricsF(self._title.font())
        mode = Qt.TextElideMode.ElideMiddle
        self._title.setText(metrics.elidedText(self._title_text, mode, self._title.width()))
        self._title.setToolTip(self._title_text)

    def _fit(self) -> None:
        grow = look().type.grow
        self.setFixedHeight(grow(HEADER))
        self._rule.setFixedSize(1, grow(HEADER) - 24)
        self._rule.setStyleSheet(f"background: {look().theme.rule};")
        self._make_room()


class _ActionButton(IconButton):
    """An action as an icon alone; its word and key are the tip."""

    def __init__(self, action: QAction, icon: str, parent: QWidget) -> None:
        super().__init__(icon, action.text(), parent)
        self._action = action
        self.clicked.connect(action.trigger)
        action.changed.connect(self._follow)
        self._follow()

    def _follow(self) -> None:
        if not isValid(self._action):
            return  # an undo stack says so much while it is taken down
        text = self._action.text().replace("&", "")
        keys = self._action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
        self.setAccessibleName(text)
        self.setEnabled(self._action.isEnabled())
        self.setToolTip(f"{text} ({keys})" if keys else text)
