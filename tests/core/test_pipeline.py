"""The one way from a photo to all that is said of it."""

from __future__ import annotations

import io
from dataclasses import replace

import numpy as np
import pytest
from PIL import Image
from simulator import scene

from core import pipeline
from core.bands.lines import Bands
from core.errors import Cancelled, PhotoError
from core.pictures import Picture, PictureStore
from core.pipeline import Worked, propose_for, read_sky, work_out
from core.study import SheetEntry, Study, study_of

STRIPES = ((64, 88, 170), (120, 130, 200), (215, 165, 190), (250, 200, 150))


def png(pixels: np.ndarray) -> bytes:
    buffer = io.BytesIO()
    Image.fromarray(pixels).save(buffer, "PNG")
    return buffer.getvalue()


@pytest.fixture
def sky() -> tuple[Study, PictureStore]:
    """A study of four bands, without sheets."""
    rows = np.repeat(np.array(STRIPES, np.uint8), 30, axis=0)
    store = PictureStore()
    photo = store.add("sky.png", png(np.repeat(rows[:, None], 160, axis=1)))
    return study_of(photo, Bands(1.0, (0.25, 0.5, 0.75))), store


@pytest.fixture(scope="module")
def painted() -> tuple[Study, PictureStore]:
    """A study with the same sheet twice."""
    sheet = scene(8001)
    store = PictureStore()
    study = study_of(store.add("sky.png", png(sheet.reference)), Bands(1.0, sheet.lines))
    entry = SheetEntry(store.add("sheet.jpg", sheet.jpeg))
    return replace(study, sheets=(entry, entry)), store


def test_only_what_is_wanted_is_worked_out(sky) -> None:
    study, store = sky
    opened = work_out(study, store, ())
    assert opened.photo is not None
    assert (opened.sky, opened.plan, opened.checks) == (None, None, None)
    read = work_out(study, store, ("reading",), opened)
    assert read.photo is opened.photo
    assert read.sky is not None
    assert [reading.letter for reading in read.sky.readings] == list("ABCD")
    assert read.plan is None
    planned = work_out(study, store, ("plan",))
    assert planned.sky == replace(read.sky, photo=planned.photo)
    assert planned.plan is not None
    assert [band.letter for band in planned.plan.bands] == list("ABCD")


def test_what_is_known_is_handed_back(sky, monkeypatch) -> None:
    study, store = sky
    known = work_out(study, store, ("plan",))

    def never(*arguments: object, **options: object) -> None:
        raise AssertionError("worked out twice")

    for name in ("open_photo", "propose", "read_bands"):
        monkeypatch.setattr(pipeline, name, never)
    again = work_out(study, {}, ("reading", "plan"), known)
    assert (again.photo, again.sky, again.plan) == (known.photo, known.sky, known.plan)


def test_a_proposal_serves_while_the_sky_ends_where_it_did(sky) -> None:
    study, store = sky
    photo = work_out(study, store, ()).photo
    assert photo is not None
    first = propose_for(photo)
    assert propose_for(photo, replace(first.bands, lines=()), first) is first
    other = propose_for(photo, Bands(0.5, (0.2,)), first)
    assert other is not first
    assert other.bands.horizon == 0.5
    assert read_sky(photo, other).bands == other.bands
    assert read_sky(photo, other, Bands(0.5, (0.3,))).bands.lines == (0.3,)


def test_lines_that_are_missing_are_proposed(sky) -> None:
    study, store = sky
    worked = work_out(replace(study, bands=None), store, ("reading",))
    assert worked.sky is not None
    assert len(worked.sky.readings) == worked.sky.bands.count


def test_sheets_are_checked_and_compared(painted) -> None:
    study, store = painted
    told: list[float] = []
    worked = work_out(study, store, ("checks",), progress=told.append)
    assert worked.checks is not None
    assert all(worked.checks)
    assert worked.change is not None
    assert told == sorted(told)
    assert (told[0], told[-1]) == (0.0, 1.0)
    assert len(told) > 10
    alone = work_out(replace(study, sheets=(None, study.sheets[1])), store, ("checks",))
    assert alone.checks is not None
    assert alone.checks[0] is None
    assert alone.checks[1] is not None
    assert alone.change is None


def test_a_study_without_a_photo_gives_nothing() -> None:
    worked = work_out(Study(), {}, ("reading", "plan", "checks"))
    assert worked.photo is None
    assert (worked.sky, worked.plan, worked.checks) == (None, None, None)


def test_a_picture_that_is_missing_is_named(painted) -> None:
    study, store = painted
    with pytest.raises(PhotoError, match=r"sky\.png is missing"):
        work_out(study, {}, ("reading",))
    lost = SheetEntry(Picture("lost.jpg", "0" * 64))
    with pytest.raises(PhotoError, match=r"lost\.jpg is missing"):
        work_out(replace(study, sheets=(lost, None)), store, ("checks",))


@pytest.mark.parametrize("after", [0, 3, 8])
def test_it_can_be_called_off_at_any_time(painted, after: int) -> None:
    study, store = painted
    asked = 0

    def enough() -> bool:
        nonlocal asked
        asked += 1
        return asked > after

    with pytest.raises(Cancelled):
        work_out(study, store, ("plan", "checks"), Worked(), should_stop=enough)
    assert asked == after + 1
