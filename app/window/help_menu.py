"""The Help menu: the guide, and the box about the program."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QDialog, QLabel, QMenu, QVBoxLayout, QWidget

from app.look.space import GROUP, INSIDE
from app.state.settings import Preferences
from app.widgets.actions import make_action
from app.widgets.answers import Answers
from app.widgets.buttons import EdgeButton, InkButton
from core.i18n import translate
from core.version import program_version

if TYPE_CHECKING:
    from app.guide.window import GuideWindow


class Help(QObject):
    """Opens the guide, made when it is first wanted, and fills the Help menu."""

    def __init__(self, menu: QMenu, preferences: Preferences, window: QWidget) -> None:
        super().__init__(window)
        self._window = window
        self._preferences = preferences
        self.guide: GuideWindow | None = None
        for text, key, keys in (
            (translate("menu", "&Guide"), "job", QKeySequence.StandardKey.HelpContents),
            (translate("menu", "&Words of the trade"), "glossary", None),
            (translate("menu", "&Keys"), "keys", None),
            (translate("menu", "Where the &numbers come from"), "numbers", None),
        ):
            menu.addAction(make_action(window, text, partial(self.show_chapter, key), keys))
        menu.addSeparator()
        about = partial(show_about, window, partial(self.show_chapter, "licences"))
        menu.addAction(make_action(window, translate("menu", "&About Gradewash..."), about))

    def show_chapter(self, key: str) -> None:
        """Open the guide at a chapter; see `app.guide.chapters`."""
        from app.guide.window import GuideWindow  # deferred: start-up time

        if self.guide is None:
            self.guide = GuideWindow(self._preferences.settings.wording, self._window)
            self.guide.closed.connect(self._forget)
        self.guide.open_at(key)

    def _forget(self) -> None:
        self.guide = None


def show_about(parent: QWidget, show_licences: Callable[[], None]) -> QDialog:
    """What this program is, and whose work it stands on."""
    dialog = QDialog(parent)
    dialog.setWindowTitle(translate("help", "About Gradewash"))
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    name = QLabel(translate("help", "Gradewash {version}").format(version=program_version()))
    name.setProperty("role", "heading")
    text = QLabel(
        translate(
            "help",
            "Reads a sky photo in bands, plans the watercolour mixes, and checks the painted "
            "sheets. It informs the eye; it does not replace it.\n\nFree software under the MIT "
            "licence. Nothing leaves your computer.",
        )
    )
    text.setWordWrap(True)
    text.setMinimumWidth(460)
    licences = EdgeButton(translate("help", "Licences"), "", dialog)
    licences.clicked.connect(lambda: show_licences())
    licences.clicked.connect(dialog.accept)
    close = InkButton(translate("help", "Close"), "", dialog)
    close.clicked.connect(dialog.accept)
    column = QVBoxLayout(dialog)
    column.setContentsMargins(INSIDE, INSIDE, INSIDE, INSIDE)
    column.setSpacing(GROUP)
    for part in (name, text):
        column.addWidget(part)
    column.addWidget(Answers(dialog, (), close, others=(licences,)))
    close.setFocus()
    dialog.open()
    return dialog
