"""The one way from a photo to all that is said of it: propose, read, plan, check.

The window, the commands, the cards and the class set take these steps. Each is pure: it gives a
value and keeps nothing, so whoever calls it decides what is kept, and hands it to the next.
`work_out` takes as many of them as are asked for, for a whole study.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Literal, TypeAlias

import numpy as np
from numpy.typing import NDArray

import core.sheet
from core.bands.careful import read_bands
from core.bands.lines import Bands
from core.bands.propose import Proposal, propose
from core.errors import PhotoError
from core.i18n import translate
from core.photo import Photo, open_photo
from core.pictures import Picture
from core.progress import Progress, ShouldStop, part_of, step
from core.reading.quality import ChangeFirst
from core.reading.reading import BandReading
from core.study import SheetEntry, Study

if TYPE_CHECKING:
    from core.paint.box.box import Box
    from core.paint.mixture.transition import Transitions
    from core.paint.options import MixOptions
    from core.paint.planned import MixPlan
    from core.sheet.match.reference import Reference
    from core.sheet.result import Change, SheetCheck

Checks: TypeAlias = "tuple[SheetCheck | None, SheetCheck | None]"
"""Of sheet 1 and sheet 2; None for a sheet that is missing."""

Step = Literal["reading", "plan", "checks"]
"""What may be asked of `work_out`; a plan and checks need the reading, so they bring it along."""


@dataclass(frozen=True)
class SkyReading:
    """A photo whose bands have been read; equal to another when all that was measured is.

    Attributes
    ----------
    photo : Photo
    bands : Bands
        The lines it was read with.
    readings : tuple of BandReading
        One a band, from the top.
    mask : (h, w) bool
        Its usable pixels, as `Proposal.sky`. It follows from the photo and the horizon.
    """

    photo: Photo
    bands: Bands
    readings: tuple[BandReading, ...]
    mask: NDArray[np.bool_] = field(compare=False, repr=False)


@dataclass(frozen=True, eq=False)
class Worked:
    """What has been worked out of a study; None is not worked out, or cannot be.

    Attributes
    ----------
    photo : Photo or None
        Its reference photo, opened.
    sky : SkyReading or None
    plan : MixPlan or None
    checks : Checks or None
    change : Change or None
        Sheet 2 against sheet 1; belongs to `checks`.
    """

    photo: Photo | None = None
    sky: SkyReading | None = None
    plan: MixPlan | None = None
    checks: Checks | None = None
    change: Change | None = None


def open_picture(
    picture: Picture,
    pictures: Mapping[str, bytes],
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> Photo:
    """Open a picture of a study.

    Parameters
    ----------
    picture : Picture
    pictures : mapping
        Digest to the bytes of the study's pictures.

    Raises
    ------
    PhotoError
        Its bytes are missing, or cannot be read.
    Cancelled
        `should_stop` answered True.
    """
    data = pictures.get(picture.digest)
    if data is None:
        raise PhotoError(
            translate(
                "cards", "The picture {name} is missing from this study: add it again."
            ).format(name=picture.name)
        )
    return open_photo(data, name=picture.name, progress=progress, should_stop=should_stop)


def propose_for(
    photo: Photo,
    bands: Bands | None = None,
    known: Proposal | None = None,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> Proposal:
    """The proposal whose sky these bands are read in.

    Parameters
    ----------
    photo : Photo
    bands : Bands, optional
        Lines there are already; without them everything is proposed.
    known : Proposal, optional
        An earlier one of this photo: given back where the sky ends at the same height, since
        then the same pixels count.

    Raises
    ------
    Cancelled
        `should_stop` answered True.
    """
    if known is not None and (bands is None or bands.horizon == known.bands.horizon):
        return known
    if bands is None:
        return propose(photo, progress=progress, should_stop=should_stop)
    return propose(
        photo,
        count=bands.count,
        horizon=bands.horizon,
        progress=progress,
        should_stop=should_stop,
    )


def read_sky(
    photo: Photo,
    proposal: Proposal,
    bands: Bands | None = None,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> SkyReading:
    """Read the bands of a photo with care.

    Parameters
    ----------
    photo : Photo
    proposal : Proposal
        Of this photo and of the bands' horizon: see `propose_for`.
    bands : Bands, optional
        Lines to read by; otherwise the proposed ones.

    Raises
    ------
    Cancelled
        `should_stop` answered True.
    """
    bands = bands or proposal.bands
    readings = read_bands(photo, proposal.sky, bands, progress=progress, should_stop=should_stop)
    return SkyReading(photo, bands, readings, proposal.sky)


def transitions_of(sky: SkyReading) -> Transitions:
    """What the photo shows across each line between two bands."""
    from core.paint.mixture.transition import sample_transitions  # deferred: start-up time

    return sample_transitions(sky.photo.pixels, sky.bands.edges, sky.photo.opaque)


def plan_sky(
    sky: SkyReading,
    box: Box,
    options: MixOptions,
    transitions: Transitions | None = None,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> MixPlan:
    """Plan the mixes of a sky.

    Parameters
    ----------
    sky : SkyReading
    box : Box
    options : MixOptions
    transitions : Transitions, optional
        From `transitions_of`, where they are known already.

    Raises
    ------
    BoxError
        A wish of the options cannot be met with this box.
    Cancelled
        `should_stop` answered True.
    """
    from core.paint.plan import plan_mixes  # deferred: start-up time

    if transitions is None:
        transitions = transitions_of(sky)
    step(0.1, progress, should_stop)
    share = part_of(progress, 0.1, 1.0)
    plan = plan_mixes(sky.readings, box, options, transitions, share, should_stop)
    step(1.0, progress, should_stop)
    return plan


def reference_of(sky: SkyReading) -> Reference:
    """What sheets are checked against.

    Raises
    ------
    SheetError
        A band without any sky.
    """
    return core.sheet.make_reference(sky.photo, sky.bands, sky.readings, sky.mask)


def check_entry(
    sheet: SheetEntry,
    pictures: Mapping[str, bytes],
    reference: Reference,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> SheetCheck:
    """Open a sheet of a study and check it.

    Raises
    ------
    PhotoError
        Its picture is missing, or cannot be read.
    SheetError
        Corners set by hand that make no rectangle.
    Cancelled
        `should_stop` answered True.
    """
    photo = open_picture(sheet.picture, pictures, part_of(progress, 0.0, 0.35), should_stop)
    step(0.35, progress, should_stop)
    return core.sheet.check_sheet(
        photo,
        reference,
        sheet.options,
        progress=part_of(progress, 0.35, 1.0),
        should_stop=should_stop,
    )


def change_between(checks: Checks, intended: ChangeFirst | None) -> Change | None:
    """Sheet 2 against sheet 1; None unless both could be read.

    Parameters
    ----------
    checks : Checks
    intended : ChangeFirst or None
        What was to change first, as the worksheet of sheet 1 says.
    """
    first, second = checks
    if first is None or second is None or not (first.readable and second.readable):
        return None
    return core.sheet.compare_checks(first, second, intended)


def work_out(
    study: Study,
    pictures: Mapping[str, bytes],
    wanted: Collection[Step],
    known: Worked | None = None,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> Worked:
    """Work out of a study what is wanted and not known yet; its photo is opened in any case.

    Parameters
    ----------
    study : Study
        Without lines they are proposed: `Worked.sky.bands` holds them.
    pictures : mapping
        Digest to the bytes of the study's pictures.
    wanted : collection of Step
    known : Worked, optional
        What somebody has worked out of this study already: it is not done again.
    progress, should_stop : callable, optional

    Returns
    -------
    Worked
        What was known is in it. All of it is None in a study without a photo.

    Raises
    ------
    PhotoError, SheetError, BoxError
        A picture is missing or cannot be read, a sheet cannot be checked, or a wish of the plan
        cannot be met.
    Cancelled
        `should_stop` answered True.
    """
    worked = known or Worked()
    step(0.0, progress, should_stop)
    if study.photo is None:
        return worked
    photo = worked.photo or open_picture(
        study.photo, pictures, part_of(progress, 0.0, 0.2), should_stop
    )
    worked = replace(worked, photo=photo)
    step(0.2, progress, should_stop)
    to_plan = "plan" in wanted and worked.plan is None
    to_check = "checks" in wanted and worked.checks is None
    sky = worked.sky
    if sky is None and (to_plan or to_check or "reading" in wanted):
        proposal = propose_for(photo, study.bands, None, part_of(progress, 0.2, 0.35), should_stop)
        sky = read_sky(photo, proposal, study.bands, part_of(progress, 0.35, 0.5), should_stop)
        worked = replace(worked, sky=sky)
    step(0.5, progress, should_stop)
    if sky is not None and to_plan:
        end = 0.7 if to_check else 1.0
        plan = plan_sky(sky, study.box, study.mix, None, part_of(progress, 0.5, end), should_stop)
        worked = replace(worked, plan=plan)
    if sky is not None and to_check:
        start = 0.7 if to_plan else 0.5
        checks = _check_both(study, pictures, sky, part_of(progress, start, 1.0), should_stop)
        intended = study.worksheet.pages[0].change_first
        worked = replace(worked, checks=checks, change=change_between(checks, intended))
    step(1.0, progress, should_stop)
    return worked


def _check_both(
    study: Study,
    pictures: Mapping[str, bytes],
    sky: SkyReading,
    progress: Progress | None,
    should_stop: ShouldStop | None,
) -> Checks:
    """Both sheets of a study, those that are there."""
    reference = reference_of(sky)
    checks: list[SheetCheck | None] = []
    for number, sheet in enumerate(study.sheets):
        share = part_of(progress, number / 2, (number + 1) / 2)
        step(0.0, share, should_stop)
        checks.append(
            None if sheet is None else check_entry(sheet, pictures, reference, share, should_stop)
        )
    first, second = checks
    return first, second
