"""The photo as colour, as values, in value steps, or squinted at; made in a worker and kept."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from app.drawing.pyramid import Pyramid, image_of
from app.services.photo_jobs import OpenedPhoto
from app.state.tasks import Latest
from core.photo.views import Pixels, cvd_view, squint_view, value_steps_view, values_view
from core.progress import Progress, ShouldStop, step

COLOUR = "colour"
SQUINT_STRENGTH = 0.012
STUDY_STRENGTH = 0.004
"""Before a picture is put into steps of value: grain would fray the shapes' edges, and a value
study has clean shapes."""


def _study(pixels: Pixels, steps: int) -> Pixels:
    return value_steps_view(squint_view(pixels, STUDY_STRENGTH), steps)


_VIEWS: dict[str, Callable[[Pixels], Pixels]] = {
    "values": values_view,
    "steps 3": lambda pixels: _study(pixels, 3),
    "steps 5": lambda pixels: _study(pixels, 5),
    "steps 9": lambda pixels: _study(pixels, 9),
    "squint": lambda pixels: squint_view(pixels, SQUINT_STRENGTH),
    "eyes protan": lambda pixels: cvd_view(pixels, "protan"),
    "eyes deutan": lambda pixels: cvd_view(pixels, "deutan"),
    "eyes tritan": lambda pixels: cvd_view(pixels, "tritan"),
}


class Pictures(QObject):
    """Pictures of one photo in every way of looking at it.

    Signals
    -------
    ready(key: str, picture: Pyramid)
        What was asked for last; at once when it was made before.
    busy(share: float), idle()
    """

    ready = Signal(str, object)
    busy = Signal(float)
    idle = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._opened: OpenedPhoto | None = None
        self._made: dict[str, Pyramid] = {}
        self._work = Latest(self)
        self._work.busy.connect(self.busy)
        self._work.idle.connect(self.idle)

    def set_photo(self, opened: OpenedPhoto) -> None:
        """Another photo: forget the pictures of the last."""
        self._work.cancel()
        self._opened = opened
        self._made = {COLOUR: opened.picture}

    def ask(self, key: str) -> None:
        """Ask for a picture: "colour", "values", "steps 3", "steps 5", "steps 9", "squint", and
        "eyes protan", "eyes deutan", "eyes tritan" for eyes that lack one kind of cone."""
        self._work.cancel()
        if self._opened is None:
            return
        if key in self._made:
            self.ready.emit(key, self._made[key])
            return
        pixels, view = self._opened.photo.pixels, _VIEWS[key]

        def work(progress: Progress, should_stop: ShouldStop) -> Pyramid:
            step(0.0, progress, should_stop)
            seen = view(pixels)
            step(0.7, progress, should_stop)
            return Pyramid.of(image_of(seen))

        self._work.run(work, lambda picture: self._keep(key, picture))

    def _keep(self, key: str, picture: Pyramid) -> None:
        self._made[key] = picture
        self.ready.emit(key, picture)
