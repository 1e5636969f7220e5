"""The ways a file gets in: dialog, drop, paste, recent files, sample scenes, command line."""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import Future
from functools import partial
from pathlib import Path

from PySide6.QtCore import QMimeData, QObject
from PySide6.QtGui import QGuiApplication, QImage
from PySide6.QtWidgets import QWidget

import sample_scenes
from app.files import files_ask
from app.files.brought import image_in, paths_in
from app.files.pasted import png_of
from app.files.recent import Recent
from app.files.study_files import Arrived, StudyFiles, arrived
from app.services.notices import Notices
from app.widgets.sky_wall import SkyTold
from core.file_sentences import shown_name
from core.i18n import translate
from core.photo import open_photo
from core.progress import Progress, ShouldStop
from core.study_file.opening import FromFile, open_file
from core.words import hue_short


class Opener(QObject):
    """Opens studies and photos, told by their content."""

    def __init__(
        self, files: StudyFiles, recent: Recent, notices: Notices, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self._files = files
        self._window = parent
        self._notices = notices
        self.recent = recent
        self.take_many: Callable[[tuple[Path, ...]], object] | None = None
        """What to do with several files, where somebody can: a class set."""
        self.take_folder: Callable[[Path], object] | None = None
        """What to do with a folder, where somebody can: its skies are looked through."""
        self.take_class: Callable[[Path], object] | None = None
        """What to do with the folder of a class set."""
        self.take_card: Callable[[Path], object] | None = None
        """What to do with a picture of a swatch card that was dropped or pasted."""

    def choose(self) -> None:
        """Ask for a file."""
        newest = self.recent.paths()[:1]
        path = files_ask.ask_open_path(self._window, newest[0].parent if newest else Path.home())
        if path is not None:
            self.open_path(path)

    def open_path(self, path: Path) -> None:
        """Open a file, a class set by its folder or the file in it, or look through a folder."""
        if self.take_class is not None and (path.suffix == ".json" or path.is_dir()):
            # deferred: start-up time
            from core.class_set.folder import FILE_NAME, holds_class_set

            folder = path.parent if path.name == FILE_NAME else path
            if holds_class_set(folder):
                self.take_class(folder)
                return
        if self.take_folder is not None and path.is_dir():
            self.take_folder(path)
            return
        self._files.open(partial(_open_path, path), path)

    def open_sample(self, name: str) -> None:
        """Open one of our own skies."""
        self._files.open(
            partial(_open_path, sample_scenes.path(name)), title=sample_scenes.title(name)
        )

    def samples(self) -> dict[str, tuple[str, Path]]:
        """Titles and picture files of our own skies, by name."""
        return {
            name: (sample_scenes.title(name), sample_scenes.path(name))
            for name in sample_scenes.names()
        }

    @staticmethod
    def tell_of(name: str) -> SkyTold:
        """What one of them holds: how many bands, from which hue to which."""
        from core.reading.reading import read_colour  # deferred: start-up time

        colours = [read_colour(band.Lab) for band in sample_scenes.truth(name).bands]
        first, last = hue_short(colours[0].hue), hue_short(colours[-1].hue)
        text = translate("files", "{count} bands, {first} to {last}")
        if first == last:
            text = translate("files", "{count} bands, {first}")
        words = text.format(count=len(colours), first=first, last=last)
        short = translate("files", "{count} bands").format(count=len(colours))
        return SkyTold(words, short, tuple(colour.hex for colour in colours))

    def open_early(self, found: Future[FromFile], path: Path | None, sample: str | None) -> None:
        """Take over a file whose opening began before the window was there."""
        self._files.open(
            lambda progress, should_stop: arrived(found.result()),
            path,
            sample_scenes.title(sample) if sample else None,
        )

    def paste(self) -> None:
        """Open what is in the clipboard."""
        mime = QGuiApplication.clipboard().mimeData()
        if mime is None or not self.open_mime(mime):
            self._notices.problem(
                translate(
                    "opening",
                    "There is no picture in the clipboard: copy a picture first, then paste.",
                )
            )

    def open_mime(self, mime: QMimeData) -> bool:
        """Open the file or picture in `mime`, asking where it holds several; False without any."""
        paths = paths_in(mime)
        image = image_in(mime)
        if len(paths) > 1:
            files_ask.ask_which(
                self._window,
                len(paths),
                shown_name(paths[0]),
                partial(self.open_path, paths[0]),
                None if self.take_many is None else partial(self.take_many, paths),
            )
        elif paths:
            self._open_brought(paths[0])
        elif image is not None:
            name = translate("opening", "pasted picture")
            self._files.open(partial(_open_image, image, name))
        return bool(paths) or image is not None

    def _open_brought(self, path: Path) -> None:
        """Open what was dropped; a picture of a swatch card goes where cards are read."""
        take_card = self.take_card
        if take_card is None or path.is_dir() or path.suffix == ".json":
            self.open_path(path)
            return

        def instead(found: Arrived) -> bool:
            if found.card:
                take_card(path)
            return found.card

        self._files.open(partial(_open_looking, path), path, instead=instead)


def can_open(mime: QMimeData) -> bool:
    """Whether `open_mime` has something to try."""
    return bool(paths_in(mime)) or mime.hasImage()


def _open_path(path: Path, progress: Progress, should_stop: ShouldStop) -> Arrived:
    return arrived(open_file(path, progress, should_stop))


def _open_looking(path: Path, progress: Progress, should_stop: ShouldStop) -> Arrived:
    """The same, and whether it is the picture of a swatch card."""
    from core.swatches.read import shows_card  # deferred: start-up time

    file = open_file(path, progress, should_stop)
    if file.study is None and file.photo is not None and shows_card(file.photo.pixels, should_stop):
        return Arrived(file, None, card=True)
    return arrived(file)


def _open_image(image: QImage, name: str, progress: Progress, should_stop: ShouldStop) -> Arrived:
    data = png_of(image)
    photo = open_photo(data, name=name, progress=progress, should_stop=should_stop)
    return arrived(FromFile(photo, data))
