"""Keeps unsaved work in the user's data folder, so that a crash costs two seconds at most.

One worker at a time touches the folder: what is asked meanwhile waits, and only the last wish
counts.
"""

from __future__ import annotations

import logging
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QObject, QTimer, Signal

from app.files.place import Whereabouts
from app.files.storing import PhotoStorer
from app.services.notices import Notice, Notices
from app.state.document import Document
from app.state.tasks import Latest
from core.errors import StudyFileError
from core.i18n import translate
from core.pictures import PictureStore
from core.progress import Progress, ShouldStop

if TYPE_CHECKING:
    from core.study_file.recovery import Recovered, UnsavedWork

log = logging.getLogger(__name__)

DELAY_MS = 2000
"""From the first change that is not kept yet; further changes do not put it off."""

_TOPIC = "autosave"


class Autosave(QObject):
    """Keeps what is unsaved, and forgets it once it is saved or given up.

    Signals
    -------
    kept()
        The study as it was is in the data folder.
    """

    kept = Signal()

    def __init__(
        self,
        document: Document,
        storer: PhotoStorer,
        pictures: PictureStore,
        notices: Notices,
        whereabouts: Whereabouts,
        data_folder: Path,
        parent: QObject,
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._storer = storer
        self._pictures = pictures
        self._notices = notices
        self._whereabouts = whereabouts
        self._folder = data_folder
        self._unsaved_work: UnsavedWork | None = None
        self._taken_over: Recovered | None = None
        self._given_up: list[Recovered] = []
        self._wish: Literal["", "keep", "forget"] = ""
        self._told = False
        self._work = Latest(self)
        self._timer = QTimer(self, singleShot=True, interval=DELAY_MS)
        self._timer.timeout.connect(self._keep)
        document.study_changed.connect(self._later)
        document.unsaved_changed.connect(self._on_unsaved)
        storer.stored.connect(self._later)

    @property
    def waiting(self) -> bool:
        """Whether something is yet to be kept or forgotten."""
        return self._timer.isActive() or self._work.running

    def take_over(self, recovered: Recovered) -> None:
        """Give up recovered work once this window has kept it itself."""
        self._taken_over = recovered

    def finish(self) -> None:
        """The window closes, nothing is unsaved: leave nothing behind. No worker may run."""
        self._timer.stop()
        self._drop_taken_over()
        self._forget_now()

    def _later(self) -> None:
        if self._document.unsaved and not self._timer.isActive():
            self._timer.start()

    def _on_unsaved(self, unsaved: bool) -> None:
        if unsaved:
            self._later()
        else:
            self._timer.stop()
            self._wish = "forget"
            self._drop_taken_over()
            self._go_on()

    def _keep(self) -> None:
        if not self._document.unsaved or self._storer.running:
            return  # told again once the photo's bytes are there
        self._wish = "keep"
        self._go_on()

    def _go_on(self) -> None:
        if self._work.running or not self._wish:
            return
        wish, self._wish = self._wish, ""
        if wish == "forget":
            if self._unsaved_work is not None or self._given_up:
                self._work.run(lambda progress, should_stop: self._forget_now(), self._forgotten)
            return
        study, place, pictures = self._document.study, self._whereabouts.place, self._pictures
        taken_over = self._taken_over

        def work(progress: Progress, should_stop: ShouldStop) -> None:
            # deferred: start-up time
            from core.study_file.document import study_to_contents
            from core.study_file.recovery import UnsavedWork, give_up

            contents = study_to_contents(study, pictures)
            if self._unsaved_work is None:
                self._unsaved_work = UnsavedWork(self._folder)
            self._unsaved_work.keep(contents, study.title, place.path, place.stamp)
            if taken_over is not None:
                give_up(self._folder, taken_over)

        self._work.run(work, lambda result: self._done(taken_over), self._failed)

    def _done(self, taken_over: Recovered | None) -> None:
        if taken_over is self._taken_over:
            self._taken_over = None  # its own copy is there now
        self._told = False
        self._notices.withdraw(_TOPIC)
        self.kept.emit()
        self._go_on()

    def _forgotten(self, result: object) -> None:
        self._go_on()

    def _drop_taken_over(self) -> None:
        # At once, though it is removed later: what is taken over next must not be meant.
        if self._taken_over is not None:
            self._given_up.append(self._taken_over)
            self._taken_over = None

    def _forget_now(self) -> None:
        if self._given_up:
            from core.study_file.recovery import give_up  # deferred: start-up time

            while self._given_up:
                give_up(self._folder, self._given_up.pop())
        if self._unsaved_work is not None:
            self._unsaved_work.forget()

    def _failed(self, error: Exception) -> None:
        if not isinstance(error, StudyFileError | OSError):
            raise error
        log.warning("unsaved work is not kept: %s", error)
        if not self._told:
            self._told = True
            text = translate(
                "files",
                "Your changes cannot be kept aside on this computer just now, "
                "perhaps because its disk is full; save the study soon.",
            )
            self._notices.show(Notice(text, topic=_TOPIC))
        self._go_on()
