"""Worksheet pages as the program prints them, for the simulator; needs Qt."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from app.cards.class_pages import lay_out_worksheets
from app.cards.paper import PAPERS
from app.cards.score_form import painted, score_form
from app.state.language import speak_without_window
from core.bands.propose import propose
from core.cards.data import CardData
from core.class_set.page_crop import Box
from core.class_set.score_marks.form import ScoreForm
from core.class_set.students import Student
from core.i18n import set_catalogue
from core.photo import open_photo
from core.pictures import Picture
from core.reading.wording import Wording
from core.study import study_of
from simulator.pen_marks import PX


@dataclass(frozen=True)
class PrintedPages:
    """Both pages of a student's worksheet.

    Attributes
    ----------
    greys : two of (h, w) uint8
        `PX` pixels a millimetre.
    boxes : two of rows of Box
    """

    greys: tuple[NDArray[np.uint8], NDArray[np.uint8]]
    boxes: tuple[tuple[tuple[Box, ...], ...], tuple[tuple[Box, ...], ...]]
    english: dict[str, tuple[ScoreForm, ScoreForm]]

    def forms(self, index: int) -> tuple[ScoreForm, ...]:
        """What a reader is given, who prints in English: either size of paper."""
        return tuple(both[index] for both in self.english.values())


@cache
def printed_pages(
    paper: str, language: str = "en", tag: str = "7K3Q", number: int = 14
) -> PrintedPages:
    """Print a student's worksheet of a sample scene; Qt must have begun."""
    data, student = _data(), Student(number, f"{number:02d}")

    def pages(name: str):
        return lay_out_worksheets(data, tag, [student], PAPERS[name])

    english = {}
    for name in PAPERS:
        first, second = pages(name)
        english[name] = (score_form(first, 0), score_form(second, 1))
    try:
        speak_without_window(language)
        printed = pages(paper)
        whole = Box(0, 0, PAPERS[paper].width_mm, PAPERS[paper].height_mm)
        greys = tuple(painted(page, whole, PX) for page in printed)
        boxes = tuple(
            tuple(row.boxes for row in score_form(page, index).rows)
            for index, page in enumerate(printed)
        )
    finally:
        set_catalogue(None)
    return PrintedPages((greys[0], greys[1]), (boxes[0], boxes[1]), english)


def _data() -> CardData:
    from sample_scenes import path

    photo = open_photo(path("dusk"), name="dusk.jpg")
    study = study_of(Picture("dusk.jpg"), propose(photo).bands)
    return CardData(study, Wording(), photo.pixels)
