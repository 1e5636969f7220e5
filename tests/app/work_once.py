"""The same sky and the same sheets are opened by hundreds of window tests: worked out once.

What is remembered are functions of values alone, whose own tests are those of the core. A worker
of the tests remembers for itself, by what goes in: pixels, options and language. Checks of sheets
take longest: the workers of one run find each other's.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from class_set_tools import check_once
from once import check_sheet_once, once, quick_once
from shared_work import shared_in

import core.bands.careful
import core.bands.propose
import core.pictures
import core.sheet.check
from app.mix import scrap_desk, scrap_jobs
from app.services import photo_jobs, planner, sheet_jobs
from core import pipeline
from core.bands.stats import BandStats
from core.class_set import check_all
from core.photo import Photo, strip_private
from core.scrap.strokes import Scrap, find_strokes


@contextmanager
def work_done_once(folder: Path) -> Iterator[None]:
    """What the window works out of a photo, and checks of sheets, are made once each.

    Parameters
    ----------
    folder : Path
        Where the workers of one run find each other's checks.
    """
    # Looked up when they are called: a test may put something in their place.
    propose = once(lambda *given, **options: core.bands.propose.propose(*given, **options))
    read = once(lambda *given, **options: core.bands.careful.read_bands(*given, **options))
    with pytest.MonkeyPatch.context() as patch, shared_in(folder):
        patch.setattr(photo_jobs, "propose", propose)
        patch.setattr(photo_jobs, "BandStats", quick_once(BandStats))
        patch.setattr(pipeline, "propose", propose)
        patch.setattr(pipeline, "read_bands", read)
        patch.setattr(planner, "transitions_of", quick_once(pipeline.transitions_of))
        patch.setattr(sheet_jobs, "reference_of", quick_once(pipeline.reference_of))
        patch.setattr(core.pictures, "strip_private", quick_once(strip_private))
        patch.setattr(core.sheet, "check_sheet", check_sheet_once(), raising=False)
        patch.setattr(scrap_desk, "hold", quick_once(scrap_desk.hold))
        patch.setattr(scrap_jobs, "find_strokes", _strokes_once())
        patch.setattr(check_all, "check_one", check_once)
        yield


def _strokes_once() -> Callable[..., Scrap]:
    find = once(find_strokes)

    def remembered(photo: Photo, progress: Any, should_stop: Any) -> Scrap:
        return find(photo, progress=progress, should_stop=should_stop)

    return remembered
