"""The ways a photo gets in: dialog, drop, paste, recent files, sample scenes, command line."""

from __future__ import annotations

from concurrent.futures import Future
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QMimeData, QObject, QUrl
from PySide6.QtGui import QGuiApplication, QImage
from PySide6.QtWidgets import QFileDialog, QWidget

import sample_scenes
from app.notices import Notices
from app.reader import OpenedPhoto, Reader, for_screen
from app.recent import Recent
from app.tasks import Work
from core.errors import PhotoError
from core.i18n import translate
from core.photo import open_photo
from core.pictures import Picture
from core.progress import Progress, ShouldStop
from core.study import study_of
from core.study_file.opening import FromFile, open_file


@dataclass(frozen=True, eq=False)
class Arrived:
    """What came out of a file, with its picture for the screen; None where it has no photo."""

    file: FromFile
    opened: OpenedPhoto | None


class Opener(QObject):
    """Opens photos for the reader and remembers which."""

    def __init__(self, reader: Reader, recent: Recent, notices: Notices, parent: QWidget) -> None:
        super().__init__(parent)
        self._reader = reader
        self._window = parent
        self._notices = notices
        self.recent = recent

    def choose(self) -> None:
        """Ask for a file."""
        newest = self.recent.paths()[:1]
        path, _ = QFileDialog.getOpenFileName(
            self._window,
            translate("opening", "Open a photo"),
            str(newest[0].parent) if newest else str(Path.home()),
            # By content, not by name: any file may be tried.
            translate("opening", "Photos")
            + " (*.jpg *.jpeg *.png *.webp *.tif *.tiff *.heic *.heif *.avif *.gif *.bmp *.mpo);;"
            + translate("opening", "All files")
            + " (*)",
        )
        if path:
            self.open_path(Path(path))

    def open_path(self, path: Path) -> None:
        """Open a file."""
        self._open(partial(_open_path, path), path)

    def open_sample(self, name: str) -> None:
        """Open one of our own skies."""
        self._open(partial(_open_path, sample_scenes.path(name)), title=sample_scenes.title(name))

    def open_early(self, found: Future[FromFile], path: Path | None, sample: str | None) -> None:
        """Take over a file whose opening began before the window was there."""
        self._open(
            lambda progress, should_stop: _arrived(found.result()),
            path,
            sample_scenes.title(sample) if sample else None,
        )

    def _open(self, work: Work, path: Path | None = None, title: str | None = None) -> None:
        """Open a photo; `path` is remembered once it is shown."""

        def done(arrived: Arrived) -> None:
            study = study_of(Picture(arrived.opened.photo.name))
            if title is not None:
                study = replace(study, title=title)
            self._reader.show(arrived.opened, study, data=arrived.file.data)
            if path is not None:
                self.recent.add(path)

        self._reader.open(work, done)

    def paste(self) -> None:
        """Open what lies in the clipboard."""
        mime = QGuiApplication.clipboard().mimeData()
        if mime is None or not self.open_mime(mime):
            self._notices.problem(
                translate(
                    "opening",
                    "There is no picture in the clipboard: copy a picture first, then paste.",
                )
            )

    def open_mime(self, mime: QMimeData) -> bool:
        """Open the first file or picture in `mime`; False when there is none."""
        path = first_path(mime)
        if path is not None:
            self.open_path(path)
            return True
        if mime.hasImage():
            image = QImage(mime.imageData())
            name = translate("opening", "pasted picture")
            self._open(partial(_open_image, image, name))
            return True
        return False


def first_path(mime: QMimeData) -> Path | None:
    """The first local file in what was dropped or copied."""
    for url in mime.urls() if mime.hasUrls() else ():
        if QUrl(url).isLocalFile():
            return Path(url.toLocalFile())
    return None


def can_open(mime: QMimeData) -> bool:
    """Whether `open_mime` has something to try."""
    return first_path(mime) is not None or mime.hasImage()


def _open_path(path: Path, progress: Progress, should_stop: ShouldStop) -> Arrived:
    return _arrived(open_file(path, progress, should_stop))


def _open_image(image: QImage, name: str, progress: Progress, should_stop: ShouldStop) -> Arrived:
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    # Quality 100 is the least compression: this is only a way into `open_photo`.
    if not image.save(buffer, "PNG", 100):
        raise PhotoError(
            translate("opening", "The pasted picture could not be read: save it to a file first.")
        )
    data = bytes(buffer.data().data())
    photo = open_photo(data, name=name, progress=progress, should_stop=should_stop)
    return _arrived(FromFile(photo, data))


def _arrived(file: FromFile) -> Arrived:
    return Arrived(file, None if file.photo is None else for_screen(file.photo))
