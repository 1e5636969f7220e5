"""What a card shows, gathered from a study: nothing twice, nothing missing without a word."""

from __future__ import annotations

import io
from dataclasses import replace

import numpy as np
import pytest
from PIL import Image
from simulator import scene

from core.bands.lines import Bands
from core.cards import gather
from core.cards.file import write_card
from core.errors import BoxError, Cancelled, CardError, PhotoError
from core.paint.box.box import GENERIC_BOXES
from core.photo import Photo, open_photo
from core.pictures import PictureStore
from core.pipeline import SkyReading, Worked, plan_sky
from core.reading.wording import Wording
from core.sheet.findings.findings import in_plan_terms
from core.sheet.findings.planned import Planned
from core.study import SheetEntry, Study, study_of
from core.worksheet.worksheet import OwnScores, SheetPage, Worksheet

STRIPES = ((64, 88, 170), (120, 130, 200), (215, 165, 190), (250, 200, 150))


def png(pixels: np.ndarray) -> bytes:
    buffer = io.BytesIO()
    Image.fromarray(pixels).save(buffer, "PNG")
    return buffer.getvalue()


@pytest.fixture
def lesson() -> tuple[Study, PictureStore]:
    """A study of four bands."""
    rows = np.repeat(np.array(STRIPES, np.uint8), 30, axis=0)
    store = PictureStore()
    photo = store.add("sky.png", png(np.repeat(rows[:, None], 160, axis=1)))
    return study_of(photo, Bands(1.0, (0.25, 0.5, 0.75))), store


def test_a_plan_is_read_and_planned(lesson) -> None:
    study, store = lesson
    data = gather("plan", study, store, Wording(), date="2027-03-04")
    assert [reading.letter for reading in data.readings] == list("ABCD")
    assert data.plan is not None
    assert data.plan.box == study.box
    assert data.checks == (None, None)
    assert data.date == "2027-03-04"


def test_what_is_known_is_not_worked_out_again(lesson, monkeypatch) -> None:
    study, store = lesson
    first = gather("plan", study, store, Wording())

    def never(*arguments: object, **options: object) -> None:
        raise AssertionError("worked out twice")

    for name in ("pipeline.read_bands", "pipeline.propose", "paint.plan.plan_mixes"):
        monkeypatch.setattr(f"core.{name}", never)
    assert study.bands is not None
    height, width = first.photo.shape[:2]
    photo = Photo(first.photo, None, width, height, "sky.png")
    sky = SkyReading(photo, study.bands, first.readings, np.ones((height, width), bool))
    known = Worked(photo, sky, first.plan)
    again = gather("plan", study, store, Wording(), known=known)
    assert again.plan is first.plan
    # A worksheet needs no reading at all.
    assert gather("worksheet", study, store, Wording()).readings == ()


def test_lines_that_are_missing_are_proposed(lesson) -> None:
    study, store = lesson
    data = gather("plan", replace(study, bands=None), store, Wording())
    assert data.study.bands is not None
    assert len(data.readings) == data.study.bands.count


def test_the_box_of_the_study_is_used(lesson) -> None:
    study, store = lesson
    data = gather("plan", replace(study, box=GENERIC_BOXES["primary"]), store, Wording())
    assert data.plan is not None
    used = {key for band in data.plan.bands if band.classroom for key in band.classroom.mix.keys}
    assert used <= set(GENERIC_BOXES["primary"].keys)


def test_findings_are_checked_and_wait_for_own_scores() -> None:
    sheet = scene(8001)
    store = PictureStore()
    study = study_of(store.add("sky.png", png(sheet.reference)), Bands(1.0, sheet.lines))
    entry = SheetEntry(store.add("sheet.jpg", sheet.jpeg))
    study = replace(study, sheets=(entry, None))
    data = gather("findings", study, store, Wording())
    check, missing = data.checks
    assert check is not None
    assert missing is None
    assert data.change is None
    assert [band.letter for band in check.band_checks] == [r.letter for r in data.readings]
    assert not data.is_open(0)
    assert replace(data, show_measured=True).is_open(0)
    scored = Worksheet(pages=(SheetPage(OwnScores(5, 5, 5)), SheetPage()))
    scored_data = replace(data, study=replace(study, worksheet=scored))
    assert scored_data.is_open(0)
    assert not scored_data.is_open(1)
    # As window and command line say it: in the planned mixes and in the paper's lengths.
    sky = SkyReading(open_photo(png(sheet.reference), name="sky.png"), study.bands,
                     data.readings, np.ones(sheet.reference.shape[:2], bool))  # fmt: skip
    planned = Planned(plan_sky(sky, study.box, study.mix), study.mix.sheet, "in")
    said = gather("findings", study, store, Wording(units="in"), known=Worked(checks=data.checks))
    assert said.checks[0].findings == in_plan_terms(check, planned).findings
    assert any(" in)" in finding.text for finding in said.checks[0].findings)
    assert any(" cm)" in finding.text for finding in check.findings)


def test_findings_do_not_wait_for_a_plan_that_cannot_be_made(lesson, monkeypatch) -> None:
    def cannot(*arguments: object, **options: object) -> None:
        raise BoxError("no")

    study, store = lesson
    study = replace(study, sheets=(SheetEntry(study.photo), None))
    monkeypatch.setattr("core.pipeline.plan_sky", cannot)
    assert gather("findings", study, store, Wording()).checks[0] is not None


@pytest.mark.parametrize("kind", ["plan", "findings"])
def test_a_study_without_a_photo_is_refused_in_words(kind) -> None:
    with pytest.raises(CardError, match="This study has no"):
        gather(kind, Study(), {}, Wording())
    assert gather("worksheet", Study(), {}, Wording()).photo is None


def test_a_study_without_sheets_has_no_findings(lesson) -> None:
    study, store = lesson
    with pytest.raises(CardError, match="no painted sheet yet"):
        gather("findings", study, store, Wording())


def test_pictures_that_are_lost_or_broken(lesson) -> None:
    study, store = lesson
    with pytest.raises(PhotoError, match=r"sky\.png is missing"):
        gather("plan", study, {}, Wording())
    assert study.photo is not None
    with pytest.raises(PhotoError):
        gather("plan", study, {study.photo.digest: store[study.photo.digest][:40]}, Wording())


def test_it_can_be_called_off(lesson) -> None:
    study, store = lesson
    with pytest.raises(Cancelled):
        gather("plan", study, store, Wording(), should_stop=lambda: True)


def test_a_card_is_written_wholly_or_not_at_all(tmp_path, monkeypatch) -> None:
    path = tmp_path / "card.pdf"
    write_card(path, b"one")
    write_card(path, b"two")
    assert path.read_bytes() == b"two"

    def fail(*arguments: object) -> None:
        raise PermissionError(13, "no")

    monkeypatch.setattr("core.files.os.replace", fail)
    with pytest.raises(CardError, match=r"You may not write card\.pdf there"):
        write_card(path, b"three")
    assert path.read_bytes() == b"two"
    assert [p.name for p in tmp_path.iterdir()] == ["card.pdf"]
