"""The menus of the window: what is always in them, and what the page shown adds."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QAction, QKeySequence

from app.widgets.actions import make_action
from app.widgets.buttons import InkButton
from app.window.help_menu import Help
from app.window.menus import fill_look_menus, fill_study_menu
from app.workspace import Menu, Page
from core.i18n import translate

if TYPE_CHECKING:
    from app.window.window import Window

_MENUS: tuple[Menu, ...] = ("study", "edit", "view", "help")


class WindowMenus:
    """Fills the header's menus once, and changes a page's part of them with the page.

    Attributes
    ----------
    help : Help
        The guide and what else is in the help menu.
    class_button : InkButton
        The header's button that opens the class view.
    """

    def __init__(self, window: Window, undo: QAction, redo: QAction) -> None:
        self._header = window.header
        self._page_actions: dict[Menu, list[QAction]] = {name: [] for name in _MENUS}
        self._marks: dict[str, QAction] = {}
        self._fill_study(window)
        self._fill_edit(window, undo, redo)
        self._fill_view(window)
        self.class_button = self._add_button(window)
        self.help = Help(self._header.menu("help"), window.preferences, window)

    def show_page(self, page: Page) -> None:
        """Put a page's actions into the menus, in place of the last one's."""
        for name in _MENUS:
            menu = self._header.menu(name)
            for action in self._page_actions[name]:
                menu.removeAction(action)
            self._page_actions[name] = list(page.actions_for(name))
            mark = self._marks.get(name)
            for action in self._page_actions[name]:
                menu.insertAction(mark, action)

    def _fill_study(self, window: Window) -> None:
        menu = self._header.menu("study")
        self._marks["study"] = fill_study_menu(
            menu, window.opener, window.files, window.ask_for_title, window.close
        )
        keys = QKeySequence.StandardKey.Print
        card = make_action(window, translate("menu", "&Print a card..."), window.cards.open, keys)
        menu.insertAction(self._marks["study"], card)

    def _fill_edit(self, window: Window, undo: QAction, redo: QAction) -> None:
        menu = self._header.menu("edit")
        keys = QKeySequence.StandardKey.Paste
        paste = make_action(window, translate("menu", "&Paste a picture"), window.paste, keys)
        menu.addActions([undo, redo])
        menu.addSeparator()
        menu.addAction(paste)
        self._marks["edit"] = menu.addSeparator()
        preferences = make_action(
            window, translate("menu", "Pre&ferences..."), window.preferences_desk.show, "Ctrl+,"
        )
        menu.addAction(preferences)

    def _fill_view(self, window: Window) -> None:
        menu = self._header.menu("view")
        class_view = make_action(
            window, translate("menu", "&Class view"), window.class_room.toggle, "F5"
        )
        menu.addAction(class_view)
        menu.addSeparator()  # drawn as one with the next where a page adds nothing between
        self._marks["view"] = menu.addSeparator()
        fill_look_menus(menu, window.preferences)

    def _add_button(self, window: Window) -> InkButton:
        button = InkButton(translate("header", "Class view"), "class_view", window)
        button.setToolTip(translate("header", "One band at a time before the class (F5)"))
        button.clicked.connect(window.class_room.toggle)
        self._header.add_button(button)
        return button
