"""Writes the study to its file in a worker; until that has succeeded it stays unsaved."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, QStandardPaths, Signal
from PySide6.QtWidgets import QWidget

from app.files import files_ask
from app.files.place import Place, Whereabouts
from app.files.recent import Recent
from app.files.storing import PhotoStorer
from app.services.notices import Notice, Notices
from app.state.document import Document
from app.state.tasks import Latest
from core.errors import StudyFileError
from core.file_sentences import shown_name
from core.i18n import translate
from core.pictures import PictureStore
from core.progress import Progress, ShouldStop, step
from core.study import Study, study_of, with_title
from core.study_file.locks import OpenLock
from core.study_file.save import Stamp, changed_on_disk, write_bytes

Act = Callable[[], object]

_TOPIC = "saving"


class _ChangedOnDisk(Exception):
    """Somebody else wrote the file since it was read."""


class Saver(QObject):
    """Save and save as.

    Signals
    -------
    saved(path: Path)
    """

    saved = Signal(object)

    def __init__(
        self,
        document: Document,
        storer: PhotoStorer,
        pictures: PictureStore,
        notices: Notices,
        recent: Recent,
        whereabouts: Whereabouts,
        window: QWidget,
    ) -> None:
        super().__init__(window)
        self._document = document
        self._storer = storer
        self._pictures = pictures
        self._notices = notices
        self._recent = recent
        self._whereabouts = whereabouts
        self._window = window
        self._name = ""
        self._waiting: list[Act] = []
        self._once_kept: Act | None = None
        self._work = Latest(self)
        self._work.busy.connect(lambda share: self._show_busy())
        self._work.idle.connect(lambda: notices.withdraw(_TOPIC))
        storer.stored.connect(self._photo_stored)

    @property
    def running(self) -> bool:
        """Whether the study is being written, or about to be."""
        return self._work.running or self._once_kept is not None

    def afterwards(self, act: Act) -> None:
        """Call `act` once what runs has ended, well or not."""
        self._waiting.append(act)

    def save(self, then: Act | None = None) -> None:
        """Save where the study is; asks where when it is nowhere yet.

        Parameters
        ----------
        then : callable, optional
            Called once it is saved, and not at all when it could not be.
        """
        place = self._whereabouts.place
        if place.path is None or place.read_only:
            self.save_as(then)
        else:
            free, lock = self._whereabouts.try_lock(place.path)
            self._write(place.path, place.stamp, lock if free else None, then)

    def save_as(self, then: Act | None = None) -> None:
        """Ask for a place and save there; the study is there from now on."""
        path = files_ask.ask_save_path(self._window, self._suggestion())
        if path is None:
            return
        free, lock = self._whereabouts.try_lock(path)
        if not free:
            self._notices.problem(
                translate("files", "{name} is open in another window; choose another name.").format(
                    name=shown_name(path)
                )
            )
            return
        # The dialog has asked already whether a file that is there may go.
        self._write(path, None, lock, then)

    def _write(
        self, path: Path, expected: Stamp | None, lock: OpenLock | None, then: Act | None
    ) -> None:
        """Write the study; a file that is not as `expected` is asked about first."""
        again = partial(self._write, path, expected, lock, then)
        if self._work.running:
            self.afterwards(again)
            return
        if self._storer.running:
            self._once_kept = again
            self._storer.hurry()
            return
        before = self._document.study
        study = self._titled(before, path)
        pictures, self._name = self._pictures, shown_name(path)

        def work(progress: Progress, should_stop: ShouldStop) -> Stamp:
            from core.study_file.document import study_to_bytes  # deferred: start-up time

            step(0.0, progress, should_stop)
            if expected is not None and path.exists() and changed_on_disk(path, expected):
                raise _ChangedOnDisk
            data = study_to_bytes(study, pictures)
            step(0.5, progress, should_stop)
            return write_bytes(path, data)

        def done(stamp: Stamp) -> None:
            self._whereabouts.put(Place(path, stamp), lock)
            self._notices.settle()
            self._mark(before, study)
            self._recent.add(path)
            self.saved.emit(path)
            if then is not None:
                then()
            self._end()

        def failed(error: Exception) -> None:
            self._end()
            if isinstance(error, _ChangedOnDisk):
                files_ask.ask_changed_on_disk(
                    self._window,
                    shown_name(path),
                    overwrite=partial(self._write, path, None, lock, then),
                    elsewhere=partial(self.save_as, then),
                )
                return
            self._whereabouts.refuse(lock)
            if isinstance(error, StudyFileError):
                # Said here and not by `core`: on the command line nothing is open.
                still_open = translate("files", "Your study is still open.")
                self._notices.problem(f"{error} {still_open}")
            else:
                self._notices.failed(error)

        self._work.run(work, done, failed)

    def _titled(self, study: Study, path: Path) -> Study:
        """A title made from the photo's file gives way to the first name given by hand."""
        by_hand = study.photo is None or study.title != study_of(study.photo).title
        if self._whereabouts.place.path is not None or (by_hand and study.title):
            return study
        return with_title(study, shown_name(Path(path.stem)))

    def _mark(self, before: Study, study: Study) -> None:
        if study.title != before.title:
            self._document.complete(
                lambda one: replace(one, title=study.title) if one.title == before.title else one
            )
        # What was changed while the file was being written is still unsaved.
        if self._document.study == study:
            self._document.mark_saved()

    def _end(self) -> None:
        waiting, self._waiting = self._waiting, []
        for act in waiting:
            act()

    def _photo_stored(self) -> None:
        act, self._once_kept = self._once_kept, None
        if act is not None:
            act()

    def _show_busy(self) -> None:
        text = translate("files", "Saving {name}...").format(name=self._name)
        self._notices.show(Notice(text, "note", _TOPIC))

    def _suggestion(self) -> Path:
        """Where the dialog begins: beside the study, or where studies were saved last."""
        place = self._whereabouts.place
        if place.path is not None and not place.read_only:
            return place.path
        if place.path is not None:
            stem = translate("files", "{name}, my copy").format(name=place.path.stem)
            return place.path.with_name(files_ask.file_name_for(stem))
        documents = QStandardPaths.writableLocation(
            QStandardPaths.StandardLocation.DocumentsLocation
        )
        folders = [path.parent for path in self._recent.studies()[:1]] + [Path(documents)]
        folder = next((folder for folder in folders if folder.is_dir()), Path.home())
        return folder / files_ask.file_name_for(self._document.study.title)
