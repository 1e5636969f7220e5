"""Small images of a class set's pictures, made in a worker when they are first wanted."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, QSize, Qt, Signal
from PySide6.QtGui import QImage, QImageReader

from app.drawing.pyramid import Pyramid, image_of
from app.state.tasks import Latest, give_back, own_pool
from core.errors import GradewashError
from core.photo import open_photo
from core.progress import Progress, ShouldStop

WIDTH = 480
"""Pixels across: what the marking column shows on a wide screen."""

_SMALLER = (280, 180, 124)

Make = Callable[[], Pyramid | None]

MOST = 300
"""Images kept: both sheets of a class, with their worksheets, at half a megabyte each."""


class ClassPictures(QObject):
    """Images by their files.

    Signals
    -------
    ready()
        One or more of those asked for are there now.
    """

    ready = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = own_pool()
        self.destroyed.connect(lambda *_, pool=self._pool: give_back(pool))
        self._work = Latest(self, self._pool)
        self._made: OrderedDict[str, Pyramid | None] = OrderedDict()
        self._wanted: OrderedDict[str, Make] = OrderedDict()

    @property
    def working(self) -> bool:
        """Whether images are still to come."""
        return bool(self._wanted)

    def forget(self) -> None:
        """Another class set: none of these is wanted any more."""
        self._work.cancel()
        self._made.clear()
        self._wanted.clear()

    def painting(self, path: Path) -> Pyramid | None:
        """A straightened painting, a JPEG of ours; None while it is not there."""
        return self.made(str(path), lambda: _of_jpeg(path))

    def photo(self, path: Path) -> Pyramid | None:
        """A picture as it was brought in; None while it is not there."""
        return self.made(str(path), lambda: _of_any_kind(path))

    def made(self, key: str, make: Make) -> Pyramid | None:
        """Any other image, which `make` gives in the worker; None while it is not there."""
        if key in self._made:
            self._made.move_to_end(key)
            return self._made[key]
        self._wanted[key] = make
        self._next()
        return None

    def _next(self) -> None:
        if self._work.running or not self._wanted:
            return
        key, make = next(iter(self._wanted.items()))

        def work(progress: Progress, should_stop: ShouldStop) -> Pyramid | None:
            return make()

        self._work.run(work, lambda image: self._keep(key, image))

    def _keep(self, key: str, image: Pyramid | None) -> None:
        self._wanted.pop(key, None)
        self._made[key] = image
        while len(self._made) > MOST:
            self._made.popitem(last=False)
        self.ready.emit()
        self._next()


def _of_jpeg(path: Path) -> Pyramid | None:
    reader = QImageReader(str(path))
    size = reader.size()
    if size.width() > WIDTH:
        reader.setScaledSize(QSize(WIDTH, max(1, round(size.height() * WIDTH / size.width()))))
    image = reader.read()
    return None if image.isNull() else levels_of(image)


def _of_any_kind(path: Path) -> Pyramid | None:
    try:
        image = image_of(open_photo(path).pixels)
    except GradewashError:
        return None
    smooth = Qt.TransformationMode.SmoothTransformation
    return levels_of(image.scaled(WIDTH, WIDTH, Qt.AspectRatioMode.KeepAspectRatio, smooth))


def levels_of(image: QImage) -> Pyramid:
    """Down to the size of a tile on the wall, so that drawing many takes a moment."""
    if image.width() > WIDTH:
        image = image.scaledToWidth(WIDTH, Qt.TransformationMode.SmoothTransformation)
    levels = [image.convertToFormat(QImage.Format.Format_RGB32)]
    for width in _SMALLER:
        if levels[-1].width() > width:
            smooth = Qt.TransformationMode.SmoothTransformation
            levels.append(levels[-1].scaledToWidth(width, smooth))
    return Pyramid(tuple(levels))
