"""The work behind the open photo: its picture, the proposal of bands, their careful reading."""

from __future__ import annotations

from dataclasses import dataclass

from app.drawing.pyramid import Pyramid, image_of, veil_of
from app.look.theme import WALL
from app.state.tasks import Work
from core.bands.lines import Bands
from core.bands.propose import Proposal, propose
from core.bands.stats import BandStats
from core.photo import Photo
from core.photo.soft_mask import soft_mask
from core.pipeline import SkyReading, propose_for, read_sky
from core.progress import Progress, ShouldStop, part_of

VEIL_SHARE = 0.66


@dataclass(frozen=True, eq=False)
class OpenedPhoto:
    """A photo and its picture for the screen."""

    photo: Photo
    picture: Pyramid


@dataclass(frozen=True, eq=False)
class Proposed:
    """A proposal and what follows from its sky."""

    proposal: Proposal
    stats: BandStats


@dataclass(frozen=True, eq=False)
class CarefulReading:
    """A careful reading and the proposal whose sky was read."""

    sky: SkyReading
    proposed: Proposed


def for_screen(photo: Photo) -> OpenedPhoto:
    """A photo with its picture; made in a worker."""
    return OpenedPhoto(photo, Pyramid.of(image_of(photo.pixels)))


def proposing(photo: Photo, count: int | None, horizon: float | None) -> Work:
    """Look for the sky and its bands; gives a `Proposed`.

    Parameters
    ----------
    photo : Photo
    count : int or None
        How many bands are wanted; None for as many as the sky has.
    horizon : float or None
        Where the sky ends, 0 to 1; None to look for that too.
    """

    def work(progress: Progress, should_stop: ShouldStop) -> Proposed:
        proposal = propose(
            photo, count=count, horizon=horizon, progress=progress, should_stop=should_stop
        )
        return _with_sky(photo, proposal)

    return work


def reading_with_care(photo: Photo, bands: Bands, proposed: Proposed) -> Work:
    """Read the bands pixel by pixel; gives a `CarefulReading`."""

    def work(progress: Progress, should_stop: ShouldStop) -> CarefulReading:
        known = proposed.proposal
        proposal = propose_for(photo, bands, known, part_of(progress, 0.0, 0.5), should_stop)
        now = proposed if proposal is known else _with_sky(photo, proposal)
        sky = read_sky(photo, proposal, bands, part_of(progress, 0.5, 1.0), should_stop)
        return CarefulReading(sky, now)

    return work


def _with_sky(photo: Photo, proposal: Proposal) -> Proposed:
    return Proposed(proposal, BandStats(photo, proposal.sky))


def veiling(photo: Photo, proposal: Proposal) -> Work:
    """The veil over what is not sky above the horizon; gives a `Pyramid`, or None without any.

    Work of its own: its filter takes longer than reading the bands, which need not wait for it.
    """

    def work(progress: Progress, should_stop: ShouldStop) -> Pyramid | None:
        # Below the horizon the canvas lays its own veil, which moves with the line.
        end = round(proposal.bands.horizon * proposal.sky.shape[0])
        if proposal.sky[:end].all():
            return None
        soft = soft_mask(proposal.sky, photo.pixels)
        soft[round(proposal.bands.horizon * soft.shape[0]) :] = 1.0
        return Pyramid.of(veil_of(soft, WALL, VEIL_SHARE))

    return work
