"""Opens the dialog for cards, with all the window knows already."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from app.cards.choice import CardChoice
from app.cards.dates import today
from app.cards.paper import PAPERS
from app.files.study_files import StudyFiles
from app.services.checker import Checker
from app.services.planner import Planner
from app.services.reader import Reader
from app.state.document import Document
from app.state.settings import Preferences, Settings
from core.pictures import PictureStore
from core.pipeline import Worked

if TYPE_CHECKING:
    from app.cards.dialog import CardDialog
    from app.cards.drawing import Wish
    from core.cards.data import Kind


class CardControl(QObject):
    """Where pages and menus ask for a card; remembers what was chosen last."""

    def __init__(
        self,
        document: Document,
        reader: Reader,
        planner: Planner,
        checker: Checker,
        pictures: PictureStore,
        preferences: Preferences,
        files: StudyFiles,
        parent: QWidget,
    ) -> None:
        super().__init__(parent)
        self._window = parent
        self._document = document
        self._reader = reader
        self._planner = planner
        self._checker = checker
        self._pictures = pictures
        self._preferences = preferences
        self._files = files
        self._choice = CardChoice(paper=PAPERS[preferences.settings.card_paper])
        preferences.changed.connect(self._follow)

    def open(self, kind: Kind | None = None) -> CardDialog:
        """Show the dialog; `kind` is what is chosen at first, else what was chosen last."""
        # deferred: start-up time - most starts print nothing
        from app.cards.dialog import CardDialog

        if kind is not None:
            self._keep(replace(self._choice, kind=kind))
        path = self._files.path
        folder = path.parent if path is not None else Path.home()
        dialog = CardDialog(self._window, self._wish(), self._choice, folder, self._keep)
        dialog.open()
        return dialog

    def _follow(self, before: Settings, after: Settings) -> None:
        if before.card_paper != after.card_paper:
            self._keep(replace(self._choice, paper=PAPERS[after.card_paper]))

    def _keep(self, choice: CardChoice) -> None:
        self._choice = choice

    def _wish(self) -> Wish:
        from app.cards.drawing import Wish  # deferred: start-up time

        return Wish(
            study=self._document.study,
            pictures=dict(self._pictures),
            wording=self._preferences.settings.wording,
            known=self._known(),
            date=today(),
            show_measured=self._checker.show_measured,
        )

    def _known(self) -> Worked:
        """What has been worked out for the study as it is; what is under way is left out."""
        reader, planner, checker = self._reader, self._planner, self._checker
        known = Worked(photo=reader.photo)
        if reader.working or reader.sky is None:
            return known
        known = replace(known, sky=reader.sky)
        if not planner.working:
            known = replace(known, plan=planner.plan)
        sheets = self._document.study.sheets
        checked = all(
            check is not None or sheet is None
            for check, sheet in zip(checker.checks, sheets, strict=True)
        )
        if checked and not checker.working:
            known = replace(known, checks=checker.checks, change=checker.change)
        return known
