"""The student's own words as a crop of the photographed worksheet page: never recognised."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from app.cards.class_command import answer_boxes, code_boxes
from app.drawing.pyramid import Pyramid, image_of
from app.services.class_set.desk import ClassDesk
from app.services.class_set.pictures import levels_of
from core.class_set.model import ClassSet
from core.class_set.page_crop import Box, crop_page
from core.class_set.questions import Sorted
from core.class_set.ticket import Slot
from core.errors import GradewashError
from core.photo import open_photo


class OwnWords:
    """Crops for the class set that is open; where the lines are printed is worked out once.

    Parameters
    ----------
    paper : str
        What worksheets are printed on.
    """

    def __init__(self, desk: ClassDesk, paper: str) -> None:
        self._desk, self._paper = desk, paper
        self._boxes: tuple[Box, Box] | None = None

    def crop(self, class_set: ClassSet, found: Sorted, number: int) -> tuple[int, Pyramid] | None:
        """The last page of a student that is in, and its crop; None while there is none."""
        for index in (1, 0):
            digest = found.placement.digest_at(Slot(number, index, "page"))
            path = None if digest is None else self._desk.picture_path(digest)
            if path is not None and self._desk.path is not None:
                make = partial(self._make, self._desk.path, class_set, path, index)
                image = self._desk.pictures.made(f"words {path}", make)
                if image is not None:
                    return index, image
        return None

    def _make(self, folder: Path, class_set: ClassSet, path: Path, index: int) -> Pyramid | None:
        """In the worker."""
        try:
            if self._boxes is None:
                self._boxes = answer_boxes(folder, class_set, self._paper)
            pixels = open_photo(path).pixels
            crop = crop_page(pixels, code_boxes(self._paper), self._boxes[index])
        except (GradewashError, StopIteration):
            return None  # a page without lines to write on, or a picture that is gone
        if crop is None:
            return None
        return levels_of(image_of(crop))
