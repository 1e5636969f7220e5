"""The ways a photo gets in: dialog, drop, paste, recent files, sample scenes, command line."""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import Future
from functools import partial
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QMimeData, QObject, QUrl
from PySide6.QtGui import QGuiApplication, QImage
from PySide6.QtWidgets import QFileDialog, QWidget

import sample_scenes
from app.canvas.images import Pyramid, image_of
from app.notices import Notices
from app.reader import OpenedPhoto, Reader, open_for_screen
from app.recent import Recent
from core.errors import PhotoError
from core.i18n import translate
from core.photo import Photo
from core.progress import Progress, ShouldStop


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
        self._reader.open(partial(_open_path, path), then=lambda: self.recent.add(path))

    def open_sample(self, name: str) -> None:
        """Open one of our own skies."""
        self._reader.open(
            partial(_open_path, sample_scenes.path(name)), title=sample_scenes.title(name)
        )

    def open_early(self, photo: Future[Photo], path: Path | None, sample: str | None) -> None:
        """Take over a photo whose opening began before the window was there."""
        remember: Callable[[], None] | None = None
        if path is not None:
            remember = partial(self.recent.add, path)
        self._reader.open(
            lambda progress, should_stop: _for_screen(photo.result()),
            then=remember,
            title=sample_scenes.title(sample) if sample else None,
        )

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
            self._reader.open(partial(_open_image, image, name))
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


def _open_path(path: Path, progress: Progress, should_stop: ShouldStop) -> OpenedPhoto:
    return open_for_screen(path, progress=progress, should_stop=should_stop)


def _open_image(
    image: QImage, name: str, progress: Progress, should_stop: ShouldStop
) -> OpenedPhoto:
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    # Quality 100 is the least compression: this is only a way into `open_photo`.
    if not image.save(buffer, "PNG", 100):
        raise PhotoError(
            translate("opening", "The pasted picture could not be read: save it to a file first.")
        )
    data = bytes(buffer.data().data())
    return open_for_screen(data, name, progress=progress, should_stop=should_stop)


def _for_screen(photo: Photo) -> OpenedPhoto:
    return OpenedPhoto(photo, Pyramid.of(image_of(photo.pixels)))
