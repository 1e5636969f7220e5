"""Looks through a folder's photos in a worker, one after the other."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QImage

from app.drawing.pyramid import image_of
from app.state.tasks import Latest
from core.choosing.through import Looked, look_one
from core.paint.box.box import Box
from core.progress import Progress, ShouldStop


@dataclass(frozen=True, eq=False)
class Seen:
    """What became of one file, with its picture for the screen; None where it has none."""

    looked: Looked
    image: QImage | None


class Looking(QObject):
    """One folder at a time.

    Signals
    -------
    seen(seen: Seen)
        One more photo.
    moved()
        How many are done, or that nothing is left to do.
    """

    seen = Signal(object)
    moved = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = Latest(self)
        self._left: list[Path] = []
        self._box: Box | None = None
        self.of = 0

    @property
    def done(self) -> int:
        """Photos that were looked at."""
        return self.of - len(self._left)

    @property
    def running(self) -> bool:
        """Whether photos are left to be looked at."""
        return bool(self._left)

    def begin(self, paths: Sequence[Path], box: Box) -> None:
        """Look at these; what was under way is called off."""
        self._work.cancel()
        self._left, self._box, self.of = list(paths), box, len(paths)
        self._next()

    def stop(self) -> None:
        """Call off what is left; what was seen stays."""
        self._work.cancel()
        self.of = self.done
        self._left = []
        self.moved.emit()

    def _next(self) -> None:
        self.moved.emit()
        if self._left and self._box is not None:
            self._work.run(partial(_look, self._left[0], self._box), self._end, self._failed)

    def _end(self, seen: Seen) -> None:
        self._left.pop(0)
        self.seen.emit(seen)
        self._next()

    def _failed(self, error: Exception) -> None:
        # A fault of ours in one photo must not stop the others; the hook shows and logs it.
        self._left.pop(0)
        self._next()
        raise error


def _look(path: Path, box: Box, progress: Progress, should_stop: ShouldStop) -> Seen:
    looked = look_one(path, box, should_stop)
    if looked.look is None:
        return Seen(looked, None)
    image = image_of(looked.look.picture)
    # The screen's picture is enough: two of each would lie in memory, of 500 photos.
    bare = replace(looked.look, picture=looked.look.picture[:0].copy())
    return Seen(replace(looked, look=bare), image)
