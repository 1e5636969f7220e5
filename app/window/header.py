"""The bar on top: menus, page tabs, the study's title, undo and redo."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSignalBlocker, Qt, QTimer, Signal
from PySide6.QtGui import QAction, QFontMetricsF, QIcon, QKeySequence, QResizeEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QMenu,
    QMenuBar,
    QSizePolicy,
    QToolButton,
    QWidget,
)
from shiboken6 import isValid

from app.look import Look, look
from app.look.space import HEADER, MARGIN, WITHIN
from app.widgets.buttons import EdgeButton, IconButton
from app.widgets.tabs import PageTabs
from app.workspace import Menu
from core.i18n import translate

_LEAST_MENUS = 90
"""Room for one menu and the sign that opens the folded ones."""
_LEAST_TITLE = 150
"""Room for the title, before text grows: the button's word and then menus give way to it."""
_LEAST_NAME = 3
"""Letters; a shorter rest of a name says nothing."""


class Header(QWidget):
    """Knows no page: it shows tabs and says which was chosen.

    Signals
    -------
    page_chosen(index: int)
    student_step(way: int)
        To the student before (-1) or after (1).
    """

    page_chosen = Signal(int)
    student_step = Signal(int)

    def __init__(self, undo: QAction, redo: QAction, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.undo, self.redo = undo, redo
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
        self._more = IconButton("more", translate("header", "More menus"), self)
        self._more.setToolTip(translate("header", "More menus"))
        self._more.clicked.connect(self._open_folded)
        self._more.hide()
        # Qt keeps menus without room in a button of its own, which stays as small as an icon.
        self._folded = self._bar.findChild(QToolButton, "qt_menubar_ext_button")
        if self._folded is not None:
            self._folded.setIcon(QIcon())
            self._folded.setStyleSheet("background: transparent; border: none;")
        self._rule = QWidget(self)
        self._tabs = PageTabs(self)
        self._tabs.currentChanged.connect(self.page_chosen)
        self._name, self._unsaved = "", False
        self._title = QLabel(self)
        self._title.setProperty("role", "second")
        self._title.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._title.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(MARGIN - 10, 0, MARGIN, 0)
        self._row.setSpacing(WITHIN)
        for widget in (self._bar, self._more, self._rule, self._tabs):
            self._row.addWidget(widget)
        self._row.addWidget(self._title, 1)
        self.steps = (
            IconButton("chevron_left", translate("header", "Student before"), self),
            IconButton("chevron_right", translate("header", "Next student"), self),
        )
        for button, way, keys in zip(self.steps, (-1, 1), ("Alt+Left", "Alt+Right"), strict=True):
            button.setToolTip(f"{button.accessibleName()} ({keys})")
            button.clicked.connect(lambda _=False, way=way: self.student_step.emit(way))
            button.hide()
            self._row.addWidget(button)
        # Between them, where the title that names the student has no room.
        self._code = ""
        self.who = QLabel(self)
        self.who.setProperty("role", "strong")
        self.who.hide()
        self._row.insertWidget(self._row.indexOf(self.steps[1]), self.who)
        self._row.addSpacing(12)
        self._actions = (_ActionButton(undo, "undo", self), _ActionButton(redo, "redo", self))
        for action in self._actions:
            self._row.addWidget(action)
        self._button: EdgeButton | None = None
        self._button_text = ""
        self._widths = 0, 0
        self._measured_for: tuple[Look, str] | None = None
        self._fit()

    def menu(self, name: Menu) -> QMenu:
        """One of the four menus."""
        return self._menus[name]

    def add_tab(self, text: str) -> None:
        """A tab right of the others."""
        with QSignalBlocker(self._tabs):
            self._tabs.addTab(text)
        self._make_room()

    def set_tab_shown(self, index: int, shown: bool) -> None:
        """Offer a page or leave it out."""
        with QSignalBlocker(self._tabs):
            self._tabs.setTabVisible(index, shown)
        # At once: a tab that is chosen before there is room would push the first one out.
        self._tabs.updateGeometry()
        self._make_room()
        self._row.activate()
        self._elide()

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

    def show_student_steps(self, may: tuple[bool, bool] | None, code: str = "") -> None:
        """Offer the students before and after, where there are any; None hides both.

        `code` is whose work is shown: it stands between them where the title has no room.
        """
        self._code = "" if may is None else code
        self.who.setText(self._code)
        for number, button in enumerate(self.steps):
            button.setEnabled(may is not None and may[number])
            button.setVisible(may is not None)
        self._make_room()
        self._elide()

    def show_title(self, title: str, unsaved: bool) -> None:
        """Say what is open and whether something would be lost."""
        if (title, unsaved) == (self._name, self._unsaved):
            return  # told at every move of a line
        renamed = title != self._name
        self._name, self._unsaved = title, unsaved
        if renamed:
            self._make_room()
        self._elide()

    @property
    def title(self) -> str:
        """What the title says, whole."""
        return self._told(self._name)

    def _told(self, name: str) -> str:
        return _marked(name) if self._unsaved and self._name else name

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._make_room()
        self._elide()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_row"):
            self._fit()
            # Once more when every part has its new font: the title is cut by its own.
            QTimer.singleShot(0, self, self._settle)

    def _settle(self) -> None:
        self._make_room()
        self._elide()

    def _make_room(self) -> None:
        """With large text or long words the button keeps its icon alone, then the menus fold."""
        if self._button is None:
            return
        margins = self._row.contentsMargins()
        rest = margins.left() + margins.right() + 8 * WITHIN + 12
        rest += sum(button.sizeHint().width() for button in self._actions)
        steps = [button for button in self.steps if not button.isHidden()]
        rest += sum(button.sizeHint().width() + WITHIN for button in steps)
        if self._code:
            rest += self.who.sizeHint().width()
        tabs = [i for i in range(self._tabs.count()) if self._tabs.isTabVisible(i)]
        rest += sum(self._tabs.tabSizeHint(i).width() for i in tabs)
        # The code between the arrows says enough: the title may give way to the menus.
        rest += 0 if self._code else self._title_room()
        menus = self._bar.sizeHint().width()
        whole, icon = self._button_widths()
        in_words = rest + menus + whole <= self.width()
        text = self._button_text if in_words else ""
        if self._button.text() != text:
            self._button.setText(text)
        room = self.width() - rest - (whole if in_words else icon)
        self._more.setVisible(room < menus)
        if room < menus:
            room -= self._more.sizeHint().width() + WITHIN
        self._bar.setFixedWidth(min(menus, max(room, look().type.grow(_LEAST_MENUS))))

    def _button_widths(self) -> tuple[int, int]:
        """With its word and as an icon; measured once a look.

        To set and take away its word at every call would lay the whole window out each time,
        which calls again.
        """
        assert self._button is not None
        if self._measured_for != (look(), self._button_text):
            shown = self._button.text()
            self._button.setText(self._button_text)
            whole = self._button.sizeHint().width()
            self._button.setText("")
            self._widths = whole, self._button.sizeHint().width()
            self._button.setText(shown)
            self._measured_for = look(), self._button_text
        return self._widths

    def _title_room(self) -> int:
        """What the title needs, at most: as if unsaved, so that an edit moves nothing."""
        if not self._name:
            return 0
        metrics = QFontMetricsF(look().type.font("control"))
        whole = metrics.horizontalAdvance(_marked(self._name))
        return min(round(whole) + WITHIN, look().type.grow(_LEAST_TITLE))

    def _open_folded(self) -> None:
        """Show the menus that have no room."""
        menu = None if self._folded is None else self._folded.menu()
        if menu is not None:
            menu.popup(self._more.mapToGlobal(self._more.rect().bottomLeft()))

    def _elide(self) -> None:
        """The name gives way, never the word that something would be lost."""
        self.who.hide()
        self._row.activate()
        metrics, room = QFontMetricsF(look().type.font("control")), self._title.width()
        shown = self.title
        if self._code and metrics.horizontalAdvance(shown) > room:
            self.who.show()
            self._row.activate()
            room = self._title.width()
        if metrics.horizontalAdvance(shown) > room:
            # What stands around the name takes its room first.
            around = metrics.horizontalAdvance(self._told("n")) - metrics.horizontalAdvance("n")
            name = metrics.elidedText(self._name, Qt.TextElideMode.ElideRight, room - around)
            shown = self._told(name if len(name) > _LEAST_NAME else "")
            if metrics.horizontalAdvance(shown) > room:
                # Cut words may say the opposite; the mark is the one of the window's own title.
                shown = "*" if self._unsaved and metrics.horizontalAdvance("*") <= room else ""
        self._title.setText(shown)
        self._title.setToolTip(self.title)
        self._title.setAccessibleName(self.title)

    def _fit(self) -> None:
        grow = look().type.grow
        self.setFixedHeight(grow(HEADER))
        self._rule.setFixedSize(1, grow(HEADER) - 24)
        self._rule.setStyleSheet(f"background: {look().theme.rule};")
        self._make_room()


def _marked(name: str) -> str:
    """The title of what is unsaved; the warning alone where no name has room."""
    if not name:
        return translate("header", "unsaved")
    return translate("header", "{title}, unsaved").format(title=name)


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
