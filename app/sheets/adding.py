"""The ways a sheet gets in: dialog, drop, paste. Its picture is read and stripped in a worker."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtCore import QMimeData, QObject, Signal
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QWidget

from app.files.brought import image_in, paths_in
from app.files.file_dialogs import any_files, ask_to_open, photos
from app.files.pasted import png_of
from app.services.notices import Notices
from app.services.photo_jobs import for_screen
from app.services.sheet_jobs import SheetJobs
from app.state.document import Document
from app.state.tasks import Latest
from core.errors import PhotoError
from core.file_sentences import shown_name, why_not_read
from core.files import TooLargeError, read_file
from core.i18n import translate
from core.photo import open_photo
from core.pictures import Picture, PictureStore
from core.progress import Progress, ShouldStop, step
from core.sheet.result import SheetOptions
from core.study import SheetEntry, with_sheet
from core.study_file.contents import MOST_PICTURE
from core.study_file.opening import is_study


class SheetAdder(QObject):
    """Puts pictures of sheets into the study.

    Signals
    -------
    busy(index: int, text: str, share: float), idle(index: int)
        A picture has been read for 0.3 s and more, and no longer is.
    added(index: int)
    """

    busy = Signal(int, str, float)
    idle = Signal(int)
    added = Signal(int)

    def __init__(
        self,
        document: Document,
        pictures: PictureStore,
        jobs: SheetJobs,
        notices: Notices,
        window: QWidget,
    ) -> None:
        super().__init__(window)
        self._document = document
        self._pictures = pictures
        self._jobs = jobs
        self._notices = notices
        self._window = window
        self._folder = Path.home()
        self._places = [self._place(index) for index in (0, 1)]
        document.begun.connect(self._forget)

    def choose(self, index: int) -> None:
        """Ask for the picture of a sheet."""
        title = translate("sheets page", "Add sheet {number}").format(number=index + 1)
        path = ask_to_open(self._window, title, self._folder, photos(), any_files())
        if path is not None:
            self.add_path(index, path)

    def add_path(self, index: int, path: Path) -> None:
        """Add a file."""
        self._folder = path.parent
        self._add(index, partial(_from_path, path))

    def add_mime(self, index: int, mime: QMimeData) -> bool:
        """Add the first file or picture in `mime`; False when there is none."""
        paths, image = paths_in(mime), image_in(mime)
        if paths:
            self.add_path(index, paths[0])
        elif image is not None:
            self._add(index, partial(_from_image, image))
        return bool(paths) or image is not None

    def cancel(self, index: int) -> None:
        """Call off the reading of a picture."""
        self._places[index].cancel()

    def running(self, index: int) -> bool:
        """Whether a picture is being read for a sheet."""
        return self._places[index].running

    def _forget(self) -> None:
        for place in self._places:
            place.cancel()

    def _place(self, index: int) -> Latest:
        place = Latest(self)

        def busy(share: float) -> None:
            text = translate("sheets page", "Reading the picture of sheet {number}")
            self.busy.emit(index, text.format(number=index + 1), share)

        place.busy.connect(busy)
        place.idle.connect(lambda: self.idle.emit(index))
        return place

    def _add(self, index: int, read: _Read) -> None:
        store, jobs = self._pictures, self._jobs

        def work(progress: Progress, should_stop: ShouldStop) -> Picture:
            name, data = read()
            step(0.1, progress, should_stop)
            photo = open_photo(data, name=name, progress=None, should_stop=should_stop)
            step(0.6, progress, should_stop)
            picture = store.add(name, data)
            jobs.opened.put(picture.digest, for_screen(photo))
            step(1.0, progress, should_stop)
            return picture

        self._places[index].run(
            work, lambda picture: self._take(index, picture), self._notices.failed
        )

    def _take(self, index: int, picture: Picture) -> None:
        study = self._document.study
        if study.sheets[index] is None:
            text = translate("undo", "add sheet {number}")
        else:
            text = translate("undo", "replace sheet {number}")
        entry = SheetEntry(picture, SheetOptions())
        self._document.change(text.format(number=index + 1), with_sheet(study, index, entry))
        self._notices.settle()
        self.added.emit(index)


_Read = Callable[[], tuple[str, bytes]]


def _from_path(path: Path) -> tuple[str, bytes]:
    """Name and bytes of a picture's file.

    Raises
    ------
    PhotoError
        It cannot be read, is a study, or is too large to be kept in one.
    """
    if is_study(path):
        raise PhotoError(
            translate(
                "sheets page",
                "{name} is a study, not a picture of a sheet: open it from the Study menu.",
            ).format(name=shown_name(path))
        )
    try:
        return shown_name(path), read_file(path, MOST_PICTURE)
    except TooLargeError as error:
        raise PhotoError(
            translate(
                "sheets page",
                "{name} is too large to be kept in the study: save a smaller copy as a JPEG.",
            ).format(name=shown_name(path))
        ) from error
    except OSError as error:
        raise PhotoError(why_not_read(path, error)) from error


def _from_image(image: QImage) -> tuple[str, bytes]:
    return translate("opening", "pasted picture"), png_of(image)
