"""From a study to the data of a card: opens, reads, plans and checks what is not known yet."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

import core.sheet
from core.bands.careful import read_bands
from core.bands.propose import propose
from core.cards.data import CardData, Kind
from core.errors import CardError
from core.i18n import translate
from core.photo import Photo, open_photo
from core.pictures import Picture
from core.progress import Progress, ShouldStop, step
from core.reading.reading import BandReading
from core.reading.wording import Wording
from core.sheet.result import Change, SheetCheck
from core.study import Study, with_bands

if TYPE_CHECKING:
    from core.paint.planned import MixPlan

Checks = tuple[SheetCheck | None, SheetCheck | None]


@dataclass(frozen=True, eq=False)
class Known:
    """What somebody has worked out already, so that it is not done again.

    Attributes
    ----------
    photo : Photo or None
        The study's photo, opened.
    sky : (h, w) bool or None
        Its usable pixels, as `core.bands.propose.Proposal.sky`.
    readings : tuple of BandReading
        Of the study's bands; empty when they were not read.
    plan : MixPlan or None
    checks : two of SheetCheck or None, or None
        None when the sheets were not checked.
    change : Change or None
        Belongs to `checks`.
    """

    photo: Photo | None = None
    sky: NDArray[np.bool_] | None = None
    readings: tuple[BandReading, ...] = ()
    plan: MixPlan | None = None
    checks: Checks | None = None
    change: Change | None = None


def gather(
    kind: Kind,
    study: Study,
    pictures: Mapping[str, bytes],
    wording: Wording,
    *,
    known: Known | None = None,
    date: str = "",
    show_measured: bool = False,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> CardData:
    """The data of one card.

    Parameters
    ----------
    kind : Kind
    study : Study
    pictures : mapping
        Digest to the bytes of the study's pictures.
    wording : Wording
    known : Known, optional
    date : str
        Printed on the card, as "2027-03-04".
    show_measured : bool
        Show findings although own scores are missing.
    progress, should_stop : callable, optional

    Raises
    ------
    CardError
        The study lacks what the card is about.
    PhotoError, SheetError, BoxError
        A picture cannot be read, or a wish of the plan cannot be met.
    Cancelled
        `should_stop` answered True.
    """
    known = known or Known()
    _refuse_empty(kind, study)
    step(0.0, progress, should_stop)
    if study.photo is None:
        return CardData(study, wording, date=date, show_measured=show_measured)
    photo = known.photo or open_photo(_bytes_of(study.photo, pictures), name=study.photo.name)
    step(0.2, progress, should_stop)
    sky, readings = known.sky, known.readings
    checking = kind == "findings" and known.checks is None
    reading = kind != "worksheet" and not readings
    if study.bands is None or reading or (checking and sky is None):
        study, sky, readings = _read(study, photo, should_stop)
    step(0.5, progress, should_stop)
    plan, checks, change = known.plan, known.checks or (None, None), known.change
    if kind == "plan" and plan is None:
        plan = _plan(study, photo, readings, should_stop)
    if checking and sky is not None:
        checks = _check(study, photo, sky, readings, pictures, should_stop)
        first, second = checks
        if first and second and first.readable and second.readable:
            intended = study.worksheet.pages[0].change_first
            change = core.sheet.compare_checks(first, second, intended)
    step(1.0, progress, should_stop)
    return CardData(
        study,
        wording,
        photo.pixels,
        readings,
        plan if kind == "plan" else None,
        checks if kind == "findings" else (None, None),
        change if kind == "findings" else None,
        show_measured,
        date,
    )


def _refuse_empty(kind: Kind, study: Study) -> None:
    if study.photo is None and kind == "plan":
        raise CardError(
            translate("cards", "This study has no photo yet: open one, then print its plan.")
        )
    if kind == "findings" and (study.photo is None or not any(study.sheets)):
        raise CardError(
            translate(
                "cards",
                "This study has no painted sheet yet: add one on the Sheets page, then print its "
                "findings.",
            )
        )


def _bytes_of(picture: Picture, pictures: Mapping[str, bytes]) -> bytes:
    if picture.digest not in pictures:
        raise CardError(
            translate(
                "cards", "The picture {name} is missing from this study: add it again."
            ).format(name=picture.name)
        )
    return pictures[picture.digest]


def _read(
    study: Study, photo: Photo, should_stop: ShouldStop | None
) -> tuple[Study, NDArray[np.bool_], tuple[BandReading, ...]]:
    """The study with lines, the sky, and the readings."""
    if study.bands is None:
        proposal = propose(photo, should_stop=should_stop)
        study = with_bands(study, proposal.bands)
    else:
        proposal = propose(
            photo,
            count=study.bands.count,
            horizon=study.bands.horizon,
            should_stop=should_stop,
        )
    bands = study.bands or proposal.bands
    return study, proposal.sky, read_bands(photo, proposal.sky, bands, should_stop=should_stop)


def _plan(
    study: Study,
    photo: Photo,
    readings: tuple[BandReading, ...],
    should_stop: ShouldStop | None,
) -> MixPlan:
    from core.paint.mixture.transition import sample_transitions
    from core.paint.plan import plan_mixes  # deferred: start-up time

    edges = (*(reading.top for reading in readings), readings[-1].bottom)
    transitions = sample_transitions(photo.pixels, edges, photo.opaque)
    return plan_mixes(readings, study.box, study.mix, transitions, should_stop)


def _check(
    study: Study,
    photo: Photo,
    sky: NDArray[np.bool_],
    readings: tuple[BandReading, ...],
    pictures: Mapping[str, bytes],
    should_stop: ShouldStop | None,
) -> Checks:
    if study.bands is None:
        return None, None
    reference = core.sheet.make_reference(photo, study.bands, readings, sky)
    found: list[SheetCheck | None] = []
    for sheet in study.sheets:
        if sheet is None:
            found.append(None)
            continue
        picture = open_photo(_bytes_of(sheet.picture, pictures), name=sheet.picture.name)
        found.append(
            core.sheet.check_sheet(picture, reference, sheet.options, should_stop=should_stop)
        )
    return found[0], found[1]
