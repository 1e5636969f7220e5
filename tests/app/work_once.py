"""The same sky and the same sheets are opened by hundreds of window tests: worked out once.

What is remembered are functions of values alone, whose own tests are those of the core. A worker
of the tests remembers for itself, by what goes in: pixels, options and language. Checks of sheets
take longest: the workers of one run find each other's.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from class_set_tools import check_once
from shared_work import content_of, shared, shared_in

import core.bands.careful
import core.bands.propose
import core.pictures
import core.sheet.check
from app.mix import scrap_desk, scrap_jobs
from app.services import photo_jobs, planner, sheet_jobs
from core import i18n, pipeline
from core.bands.stats import BandStats
from core.class_set import check_all
from core.memory import Memory
from core.photo import Photo, strip_private
from core.progress import step
from core.scrap.strokes import Scrap, find_strokes
from core.sheet.match.reference import Reference
from core.sheet.result import SheetCheck, SheetOptions


@contextmanager
def work_done_once(folder: Path) -> Iterator[None]:
    """What the window works out of a photo, and checks of sheets, are made once each.

    Parameters
    ----------
    folder : Path
        Where the workers of one run find each other's checks.
    """
    # Looked up when they are called: a test may put something in their place.
    propose = _once(lambda *given, **options: core.bands.propose.propose(*given, **options))
    read = _once(lambda *given, **options: core.bands.careful.read_bands(*given, **options))
    with pytest.MonkeyPatch.context() as patch, shared_in(folder):
        patch.setattr(photo_jobs, "propose", propose)
        patch.setattr(photo_jobs, "BandStats", _quick_once(BandStats))
        patch.setattr(pipeline, "propose", propose)
        patch.setattr(pipeline, "read_bands", read)
        patch.setattr(planner, "transitions_of", _quick_once(pipeline.transitions_of))
        patch.setattr(sheet_jobs, "reference_of", _quick_once(pipeline.reference_of))
        patch.setattr(core.pictures, "strip_private", _quick_once(strip_private))
        patch.setattr(core.sheet, "check_sheet", _check_once(), raising=False)
        patch.setattr(scrap_desk, "hold", _quick_once(scrap_desk.hold))
        patch.setattr(scrap_jobs, "find_strokes", _strokes_once())
        patch.setattr(check_all, "check_one", check_once)
        yield


def _once(function: Callable[..., Any]) -> Callable[..., Any]:
    """A function that tells its progress, may be called off, and remembers."""
    memory: Memory[Any] = Memory(100)

    def remembered(*given: Any, progress: Any = None, should_stop: Any = None, **options: Any):
        key = (i18n._catalogue, content_of(given), content_of(sorted(options.items())))
        found = memory.get(key)
        if found is None:
            made = function(*given, progress=progress, should_stop=should_stop, **options)
            return memory.put(key, made)
        for share in (0.0, 0.5, 1.0):
            step(share, progress, should_stop)
        return found

    return remembered


def _quick_once(function: Callable[..., Any]) -> Callable[..., Any]:
    """A function that remembers, too quick to be called off."""
    memory: Memory[Any] = Memory(100)

    def remembered(*given: Any):
        return memory.either((i18n._catalogue, content_of(given)), lambda: function(*given))

    return remembered


def _strokes_once() -> Callable[..., Scrap]:
    find = _once(find_strokes)

    def remembered(photo: Photo, progress: Any, should_stop: Any) -> Scrap:
        return find(photo, progress=progress, should_stop=should_stop)

    return remembered


def _check_once() -> Callable[..., SheetCheck]:
    """`check_sheet`, of the same picture once, whatever it is called."""

    def made(photo: Photo, reference: Reference, options: SheetOptions, **ways: Any) -> SheetCheck:
        key = ("check", content_of((photo, reference, options)))
        return shared(key, lambda: core.sheet.check.check_sheet(photo, reference, options, **ways))

    check = _once(made)

    def remembered(
        photo: Photo, reference: Reference, options: SheetOptions | None = None, **ways: Any
    ) -> SheetCheck:
        found = check(replace(photo, name=""), reference, options or SheetOptions(), **ways)
        return replace(found, name=photo.name)

    return remembered
