"""The menus of the window: what is always in them, and what the page shown adds."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from app.widgets.actions import make_action
from app.widgets.buttons import InkButton
from app.window.header import Header
from app.window.help_menu import Help
from app.window.menus import fill_look_menus, fill_study_menu
from app.workspace import Menu, Page, Workspace
from core.i18n import translate

_MENUS: tuple[Menu, ...] = ("study", "edit", "view", "help")


@dataclass(frozen=True)
class Commands:
    """What the menus ask the window to do."""

    ask_for_title: Callable[[], None]
    choose_sky: Callable[[], object]
    close: Callable[[], object]
    paste: Callable[[], None]
    print_card: Callable[[], object]
    show_preferences: Callable[[], None]
    toggle_class_view: Callable[[], None]
    fill_class_menu: Callable[[QMenu], object]


class WindowMenus:
    """Fills the header's menus once, and changes a page's part of them with the page.

    Attributes
    ----------
    help : Help
        The guide and what else is in the help menu.
    class_button : InkButton
        The header's button that opens the class view.
    """

    def __init__(
        self,
        window: QWidget,
        header: Header,
        workspace: Workspace,
        commands: Commands,
    ) -> None:
        """`window` owns the actions; undo and redo are the header's."""
        self._owner = window
        self._header = header
        self._do = commands
        self._page_actions: dict[Menu, list[QAction]] = {name: [] for name in _MENUS}
        self._marks: dict[str, QAction] = {}
        self._fill_study(workspace)
        self._fill_edit()
        self._fill_view(workspace)
        self.class_button = self._add_button()
        self.help = Help(self._header.menu("help"), workspace.preferences, window)

    def show_page(self, page: Page) -> None:
        """Put a page's actions into the menus, in place of the last one's."""
        for name in _MENUS:
            menu = self._header.menu(name)
            for action in self._page_actions[name]:
                menu.removeAction(action)
            self._page_actions[name] = list(page.actions_for(name))
            mark = self._marks.get(name)
            for action in self._page_actions[name]:
                if mark is None:
                    menu.addAction(action)
                else:
                    menu.insertAction(mark, action)

    def _fill_study(self, workspace: Workspace) -> None:
        menu = self._header.menu("study")
        self._marks["study"] = fill_study_menu(
            menu,
            workspace.opener,
            workspace.files,
            self._do.ask_for_title,
            self._do.close,
            self._do.choose_sky,
        )
        keys = QKeySequence.StandardKey.Print
        card = make_action(
            self._owner, translate("menu", "&Print a card..."), self._do.print_card, keys
        )
        menu.insertAction(self._marks["study"], card)
        class_menu = QMenu(translate("menu", "Class s&et"), menu)
        # What is in it comes in when it is first wanted: most starts open no class set.
        class_menu.aboutToShow.connect(lambda: self._do.fill_class_menu(class_menu))
        menu.insertMenu(self._marks["study"], class_menu)

    def _fill_edit(self) -> None:
        menu = self._header.menu("edit")
        keys = QKeySequence.StandardKey.Paste
        paste = make_action(
            self._owner, translate("menu", "&Paste a picture"), self._do.paste, keys
        )
        menu.addActions([self._header.undo, self._header.redo])
        menu.addSeparator()
        menu.addAction(paste)
        self._marks["edit"] = menu.addSeparator()
        preferences = make_action(
            self._owner,
            translate("menu", "Pre&ferences..."),
            self._do.show_preferences,
            "Ctrl+,",
        )
        menu.addAction(preferences)

    def _fill_view(self, workspace: Workspace) -> None:
        menu = self._header.menu("view")
        class_view = make_action(
            self._owner, translate("menu", "&Class view"), self._do.toggle_class_view, "F5"
        )
        menu.addAction(class_view)
        menu.addSeparator()  # drawn as one with the next where a page adds nothing between
        self._marks["view"] = menu.addSeparator()
        fill_look_menus(menu, workspace.preferences)

    def _add_button(self) -> InkButton:
        button = InkButton(translate("header", "Class view"), "class_view", self._owner)
        button.setToolTip(translate("header", "One band at a time before the class (F5)"))
        button.clicked.connect(self._do.toggle_class_view)
        self._header.add_button(button)
        return button
