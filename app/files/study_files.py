"""The study as a file: new, open, save; and nothing is lost without being asked.

Whatever would replace or close the study passes `leaving`. Files are read and written in
workers; the study stays open, and unsaved, when that fails.
"""

from __future__ import annotations

import logging
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QWidget

from app.files import files_ask
from app.files.autosave import Autosave
from app.files.last_box import LastBox
from app.files.place import Place, Whereabouts, may_write
from app.files.recent import Recent
from app.files.saving import Saver
from app.files.storing import PhotoStorer
from app.services.notices import Notices
from app.services.photo_jobs import OpenedPhoto, for_screen
from app.services.reader import Reader
from app.state.document import Document
from app.state.tasks import Latest, Work
from core.file_sentences import shown_name, shown_path
from core.files import clear_aside
from core.i18n import translate
from core.pictures import (
    Picture,
    PictureStore,
    kept_name,
    may_name_somebody,
    not_kept_sentence,
)
from core.progress import Progress, ShouldStop
from core.study import Study, digests_of, study_of, without_work
from core.study_file.locks import OpenLock
from core.study_file.opening import FromFile, open_contents

if TYPE_CHECKING:
    from core.study_file.recovery import Recovered

log = logging.getLogger(__name__)

Act = Callable[[], object]


@dataclass(frozen=True, eq=False)
class Arrived:
    """What came out of a file, with its picture for the screen; None where it has no photo.

    `card` says that the photo is that of a swatch card, where this was looked for.
    """

    file: FromFile
    opened: OpenedPhoto | None
    card: bool = False


def arrived(file: FromFile) -> Arrived:
    """Make the picture; in a worker."""
    return Arrived(file, None if file.photo is None else for_screen(file.photo))


class StudyFiles(QObject):
    """Where the study is on disk, and the ways there.

    Signals
    -------
    place_changed()
        The path, or whether it may be written.
    keeper_changed()
        `kept_elsewhere` says something else now.
    began()
        A file is being opened; `idle` follows.
    busy(text: str, share: float), idle()
        A file has been opening for 0.3 s and more, and no longer is.
    """

    place_changed = Signal()
    keeper_changed = Signal()
    began = Signal()
    busy = Signal(str, float)
    idle = Signal()

    def __init__(
        self,
        document: Document,
        reader: Reader,
        pictures: PictureStore,
        notices: Notices,
        recent: Recent,
        last_box: LastBox,
        data_folder: Path,
        window: QWidget,
    ) -> None:
        super().__init__(window)
        self._document = document
        self._reader = reader
        self._pictures = pictures
        self._notices = notices
        self._recent = recent
        self._last_box = last_box
        self._untouched = document.study
        self.kept_elsewhere: Callable[[], bool] = lambda: False
        """Whether the study that is open is kept by somebody else, with every edit."""
        self._folder = data_folder
        self._window = window
        self._whereabouts = Whereabouts(data_folder, self)
        self._whereabouts.changed.connect(self.place_changed)
        self._looking = Latest(self)
        self._opening = Latest(self)
        self._opening.busy.connect(
            lambda share: self.busy.emit(translate("files", "Opening"), share)
        )
        self._opening.idle.connect(self.idle)
        self._storer = storer = PhotoStorer(document, reader, pictures, notices, self)
        self.saver = Saver(document, storer, pictures, notices, recent, self._whereabouts, window)
        self.autosave = Autosave(
            document, storer, pictures, notices, self._whereabouts, data_folder, self
        )

    @property
    def path(self) -> Path | None:
        """Where the study was last saved or opened; None while it was never saved."""
        return self._whereabouts.place.path

    @property
    def read_only(self) -> bool:
        """Whether saving asks for another name."""
        return self._whereabouts.place.read_only

    @property
    def opening(self) -> bool:
        """Whether a file is being opened."""
        return self._opening.running

    @property
    def storing(self) -> bool:
        """Whether the photo's bytes are on their way into the study."""
        return self._storer.running

    @property
    def must_ask(self) -> bool:
        """Whether the window must not close just now."""
        return self.saver.running or (self._document.unsaved and not self.kept_elsewhere())

    # Leaving what is open

    def leaving(self, then: Act) -> None:
        """Call `then` once the study may be replaced or closed; not at all if it may not."""
        if self.saver.running:
            self.saver.afterwards(partial(self.leaving, then))
        elif not self._document.unsaved or self.kept_elsewhere():
            then()
        else:
            title = self._document.study.title or translate("files", "Your study")
            files_ask.ask_unsaved(self._window, title, partial(self.save, then), then)

    def finish(self) -> None:
        """The window closes: leave nothing behind. No worker may run."""
        self.autosave.finish()
        self._whereabouts.let_go()

    # Save

    def save(self, then: Act | None = None) -> None:
        """Save; `then` is called once that has succeeded."""
        if self.kept_elsewhere():
            self._notices.note(
                translate(
                    "files",
                    "This study is kept in the class set as you go. Save as writes a file of it.",
                )
            )
            if then is not None:
                then()
            return
        self.saver.save(then)

    def save_as(self, then: Act | None = None) -> None:
        """Save under another name; `then` is called once that has succeeded."""
        self.saver.save_as(then)

    # A study that somebody else keeps

    def show_kept(self, study: Study, opened: OpenedPhoto, pictures: Mapping[str, bytes]) -> None:
        """Put up a study that is kept elsewhere; whoever calls has passed `leaving`.

        A photo that is shown already is not read again.
        """
        if self._reader.opened is not opened:
            self._put(opened, study, Place(), None, more=pictures)
            return
        self._opening.cancel()
        self._storer.cancel()
        self._whereabouts.put(Place(), None)
        self._pictures.take_over(pictures)
        self._pictures.keep_only(digests_of(study))
        self._document.begin(study)

    # New and open

    def new(self) -> None:
        """An empty study."""
        self.leaving(self._begin_empty)

    def new_from_this(self) -> None:
        """A new lesson from the study that is open: photo, lines, box and mixes, without work."""
        self.once_stored(lambda: self.leaving(self._begin_from_this))

    def once_stored(self, then: Act) -> None:
        """Call `then` once the photo's bytes are in the store: now, or in a moment."""
        if self._storer.running:
            self._storer.stored.connect(lambda: then(), Qt.ConnectionType.SingleShotConnection)
            self._storer.hurry()
        else:
            then()

    def open(
        self,
        work: Work,
        path: Path | None = None,
        title: str | None = None,
        instead: Callable[[Arrived], bool] | None = None,
    ) -> None:
        """Open a photo or a study; what is open may be saved first, once that has succeeded.

        A photo for a study that has none yet becomes part of it.

        Parameters
        ----------
        work : callable
            Gives `Arrived`; runs in a worker.
        path : Path, optional
            The file it comes from: remembered, and where a study is saved again.
        title : str, optional
            The title of a photo's study, where it is not made from the file's name.
        instead : callable, optional
            Asked first with what arrived; True: it was taken elsewhere, and nothing is opened.
        """

        def done(found: Arrived) -> None:
            if instead is not None and instead(found):
                return
            if path is not None:
                self._recent.add(path)
            if found.file.study is not None and path is not None:
                self.leaving(partial(self._begin_study, found, path))
            elif self._document.study == self._untouched:
                self._begin_photo(found, title, None)
            elif self._document.study.photo is None:
                self._begin_photo(found, title, self._document.study)
            else:
                self.leaving(partial(self._begin_photo, found, title, None))

        self._opening.run(work, done, self._notices.failed)
        self.began.emit()

    def _begin_empty(self) -> None:
        self._untouched = self._last_box.empty_study()
        self._put(None, self._untouched, Place(), None)

    def _begin_from_this(self) -> None:
        study = without_work(self._document.study)
        held = {key: self._pictures[key] for key in digests_of(study) if key in self._pictures}
        self._put(self._reader.opened, study, Place(), None, saved=False, more=held)

    def _begin_photo(self, found: Arrived, title: str | None, base: Study | None) -> None:
        """Put the photo up; `base` is what the study holds beside it, None for a new study."""
        assert found.opened is not None
        fresh = study_of(Picture(kept_name(found.opened.photo.name)))
        held = self._last_box.empty_study() if base is None else base
        named = held.title or title or fresh.title
        # Lines without a photo are those of a damaged study, whose photo is given anew.
        study = replace(held, photo=fresh.photo, title=named)
        if base is None:
            self._put(found.opened, study, Place(), None, data=found.file.data)
        else:
            place, lock = self._whereabouts.place, self._whereabouts.lock
            self._put(found.opened, study, place, lock, saved=False, data=found.file.data)
        if may_name_somebody(found.opened.photo.name):
            self._notices.note(not_kept_sentence(found.opened.photo.name))
        if found.file.data is None:
            self._notices.note(
                translate(
                    "files",
                    "This photo is too large to be kept in a study; to save your work, open a "
                    "smaller copy of it.",
                )
            )

    def _begin_study(self, found: Arrived, path: Path) -> None:
        """Put the study up; where another window has it, ask how."""
        if found.file.damage:
            # The damaged file stays as it is: saving asks for another name.
            self._put_study(found, Place(), saved=False)
            self._tell_damage(found)
            return
        free, lock = self._whereabouts.try_lock(path)
        if free:
            self._put_study(found, Place(path, found.file.stamp, not may_write(path)), lock)
            return
        files_ask.ask_open_elsewhere(
            self._window,
            shown_name(path),
            read_only=lambda: self._put_study(found, Place(path, found.file.stamp, True)),
            copy=lambda: self._put_study(found, Place(), saved=False),
        )

    def _tell_damage(self, found: Arrived) -> None:
        if found.file.damage:
            self._notices.problem(found.file.damage)

    def _put_study(
        self, found: Arrived, place: Place, lock: OpenLock | None = None, saved: bool = True
    ) -> None:
        opened = found.file.study
        assert opened is not None
        self._put(found.opened, opened.study, place, lock, saved=saved, more=opened.pictures)

    def _put(
        self,
        opened: OpenedPhoto | None,
        study: Study,
        place: Place,
        lock: OpenLock | None,
        *,
        saved: bool = True,
        data: bytes | None = None,
        more: Mapping[str, bytes] | None = None,
    ) -> None:
        self._opening.cancel()
        self._storer.cancel()
        self._whereabouts.put(place, lock)
        self._notices.settle()
        # Nothing can be undone any more, so only the new study's pictures are wanted.
        self._pictures.take_over(more or {})
        self._pictures.keep_only(digests_of(study))
        self._reader.put_away()
        self._document.begin(study, saved)
        self._reader.show(opened)
        if data is not None and study.photo is not None:
            self._storer.store(study.photo, data)

    # Unsaved work of a window that was cut off

    def look_for_unsaved(self) -> None:
        """Offer what an earlier window left behind, and clear its half-written files."""
        folder, recent = self._folder, self._recent
        unread: list[Path] = []

        def work(progress: Progress, should_stop: ShouldStop) -> tuple[Recovered, ...]:
            from core.study_file.recovery import left_behind  # deferred: start-up time

            for path in recent.studies():
                clear_aside(path)
            return left_behind(folder, unread.append)

        def done(found: tuple[Recovered, ...]) -> None:
            if unread:
                text = translate(
                    "files",
                    "Unsaved work of an earlier window could not be read. Nothing of it was "
                    "removed: it is in {folder}.",
                )
                self._notices.problem(text.format(folder=shown_path(unread[-1])))
            if found:
                # deferred: start-up time
                from app.files.recovery import RecoveryDialog
                from core.study_file.recovery import give_up

                drop = partial(give_up, folder)
                RecoveryDialog(self._window, found, self.open_recovered, drop).open()

        self._looking.run(work, done, lambda error: log.warning("cannot look back: %s", error))

    def open_recovered(self, recovered: Recovered) -> None:
        """Make recovered work the study; it stays unsaved until it is saved."""

        def work(progress: Progress, should_stop: ShouldStop) -> Arrived:
            return arrived(open_contents(recovered.contents, progress, should_stop))

        def done(found: Arrived) -> None:
            self.leaving(partial(put, found))

        def put(found: Arrived) -> None:
            place, lock = Place(), None
            # What was read in part only never takes the place of a file that is whole.
            if recovered.path is not None and not recovered.partial:
                free, lock = self._whereabouts.try_lock(recovered.path)
                if free:
                    place = Place(recovered.path, recovered.stamp, not may_write(recovered.path))
            self._put_study(found, place, lock, saved=False)
            self.autosave.take_over(recovered)
            self._tell_damage(found)

        self._opening.run(work, done, self._notices.failed)
