"""The lines proposed for a photo, and whether the proposal trusts itself."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.bands.grid import Grid, make_grid
from core.bands.lines import MAX_BANDS, MIN_BAND, Bands
from core.bands.mask import fine_mask, whole_mask
from core.bands.profile import Profile, cut_profile, make_profile
from core.bands.ranks import median, quantile, row_medians
from core.bands.sky import Candidate, find_sky
from core.i18n import translate
from core.photo import Photo
from core.progress import Progress, ShouldStop, part_of, step


@dataclass(frozen=True, eq=False)
class Proposal:
    """Bands for a photo.

    Attributes
    ----------
    bands : Bands
    sure : bool
        Whether nothing speaks against where the sky ends.
    reason : str or None
        One sentence, translated, why it is unsure; None when it is sure.
    remarks : tuple of str
        Sentences, translated, about a sky that bands describe only partly, or hardly need: a
        heavy cloud, one colour, another colour to the left than to the right.
    rivals : tuple of float
        Other heights at which the sky may end, best first, as fractions of the height.
    sky : ndarray, shape (h, w), bool
        At the size of the working copy: pixels a reading may use. Foreground that reaches
        above the horizon is left out. Read-only.
    """

    bands: Bands
    sure: bool
    reason: str | None
    rivals: tuple[float, ...]
    sky: NDArray[np.bool_]
    remarks: tuple[str, ...] = ()


def propose(
    photo: Photo,
    *,
    count: int | None = None,
    horizon: float | None = None,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> Proposal:
    """Find the sky of a photo and cut it into bands.

    Parameters
    ----------
    photo : Photo
    count : int, optional
        How many bands, 1..26; otherwise as many as the colours are worth, at most 7.
    horizon : float, optional
        Where the sky ends, as a fraction of the height; otherwise it is searched.
    progress, should_stop : callable, optional

    Raises
    ------
    ValueError
        `count` or `horizon` out of range.
    Cancelled
        `should_stop` answered True.
    """
    if count is not None and not 1 <= count <= MAX_BANDS:
        raise ValueError(f"count must lie in 1..{MAX_BANDS}, got {count}")
    if horizon is not None and not MIN_BAND <= horizon <= 1.0:
        raise ValueError(f"horizon must lie in {MIN_BAND}..1, got {horizon}")
    step(0.0, progress, should_stop)
    grid = make_grid(photo)
    step(0.2, progress, should_stop)
    found = find_sky(grid, progress=part_of(progress, 0.2, 0.8), should_stop=should_stop)
    step(0.8, progress, should_stop)
    if horizon is None:
        chosen, rivals = found[0], _rivals(found)
    else:
        chosen, rivals = _at_horizon(found, grid, horizon), []
    mask = fine_mask(grid, chosen.skyline)
    ends = max(MIN_BAND, min(1.0, horizon if horizon is not None else chosen.horizon))
    profile = make_profile(grid.fine, mask, ends)
    lines = () if profile is None else cut_profile(profile, count)
    bands = Bands(ends, lines)
    reason = _doubt(grid, profile, None if horizon is not None else chosen, rivals)
    remarks = () if profile is None else _remarks(grid, mask, profile, bands, count)
    height, width = photo.pixels.shape[:2]
    sky = whole_mask(mask, height, width, photo.opaque)
    step(1.0, progress, should_stop)
    return Proposal(bands, reason is None, reason, tuple(r.horizon for r in rivals), sky, remarks)


_RIVAL_SHARE, _RIVAL_WITHIN, _RIVAL_LEAST = 0.55, 8.0, 2.5

_WHOLE = 0.985
_STRIPE = 0.06
"""So close below another edge a stronger one may be the land's, and the stripe between a glow."""

_DIM_LAND = 6.0
"""When the whole picture seems to be sky, a step so strong is worth a question: land in mist or
at night."""

_BRIGHT_LAND = 15.0
"""The same with the darker side above: snow, sand or a lit field below a dark sky."""

_ROUGH_LAND = 1.2
"""The same with a much rougher lower part: land of the sky's own colour. Clouds stay below 0.3."""


def _rivals(found: list[Candidate]) -> list[Candidate]:
    """Candidates that come close to the first."""
    best = found[0]
    least = max(_RIVAL_SHARE * best.score, best.score - _RIVAL_WITHIN, _RIVAL_LEAST)
    whole = best.horizon > _WHOLE
    return [
        c
        for c in found[1:]
        if c.horizon >= MIN_BAND
        and (c.score > least or (whole and _may_be_land(c)) or _below_a_stripe(c, best))
    ]


def _below_a_stripe(candidate: Candidate, best: Candidate) -> bool:
    below = 0 < candidate.horizon - best.horizon < _STRIPE
    return below and candidate.step > best.step and candidate.score > _RIVAL_LEAST


def _may_be_land(candidate: Candidate) -> bool:
    return (
        candidate.step > _DIM_LAND
        or candidate.step < -_BRIGHT_LAND
        or candidate.rougher > _ROUGH_LAND
    )


_SAME_HORIZON = 0.08


def _at_horizon(found: list[Candidate], grid: Grid, horizon: float) -> Candidate:
    """The skyline that goes with a given horizon: a found one that is near, or a level one."""
    near = min(found, key=lambda c: abs(c.horizon - horizon))
    if abs(near.horizon - horizon) <= _SAME_HORIZON and near.horizon < 1.0:
        return near
    level = np.full(grid.columns, min(grid.rows, math.ceil(horizon * grid.rows)), dtype=np.intp)
    return Candidate(level, horizon, 0.0, 0.0, 0.0)


_FAINT = 10.0
"""Score below which the end of the sky is faint."""

_SMOOTH, _ROUGH = 0.4, 0.8
_FAINT_AND_SMOOTH = 15.0
"""The same where the lower side is hardly rougher than the sky: water, fog or lit night may be
there."""

_RAGGED = 0.45
"""Share of the height over which the sky's end runs up and down: something stands before it."""

_CLOUD_APART, _CLOUDED = 15.0, 0.2
"""Working-space units from its row's colour at which a pixel belongs to something else, and the
share of the sky that must for a cloud to be heavy."""

_SIDEWAYS = 12.0
"""Working-space units between the left and the right third."""


def _doubt(
    grid: Grid,
    profile: Profile | None,
    chosen: Candidate | None,
    rivals: list[Candidate],
) -> str | None:
    """Why the proposal may be wrong, in one sentence; None when nothing speaks against it."""
    if profile is None:
        return translate(
            "bands", "Hardly any sky was found: move the horizon line to where the sky ends."
        )
    if rivals:
        return translate("bands", "The sky may end at another height too: check the horizon line.")
    if chosen is not None and chosen.horizon < _WHOLE and chosen.score < _least_score(chosen):
        return translate(
            "bands", "The land hardly stands out from the sky here: check the horizon line."
        )
    if chosen is not None and _ragged(grid, chosen):
        return translate(
            "bands",
            "Something stands before the sky here, and where it ends is a guess: check the "
            "horizon line.",
        )
    if chosen is not None and chosen.step < 0:
        return translate(
            "bands",
            "What is below is lighter than the sky: snow or water, or more sky? "
            "Check the horizon line.",
        )
    return None


def _least_score(candidate: Candidate) -> float:
    """What the score of a skyline must reach to be trusted."""
    smooth = (_ROUGH - candidate.rougher) / (_ROUGH - _SMOOTH)
    return _FAINT + (_FAINT_AND_SMOOTH - _FAINT) * min(1.0, max(0.0, smooth))


def _ragged(grid: Grid, candidate: Candidate) -> bool:
    spread = quantile(candidate.skyline, 0.9) - quantile(candidate.skyline, 0.1)
    return candidate.horizon < _WHOLE and spread > _RAGGED * grid.rows


def _remarks(
    grid: Grid, mask: NDArray[np.bool_], profile: Profile, bands: Bands, count: int | None
) -> tuple[str, ...]:
    """What bands do not tell of this sky."""
    found = []
    if bands.count == 1 and count is None:
        found.append(
            translate(
                "bands",
                "This sky is nearly of one colour, so it is one band: split it if you want more.",
            )
        )
    if _varies_sideways(grid, mask, profile):
        found.append(
            translate(
                "bands",
                "This sky changes more from left to right than from top to bottom: "
                "bands describe only part of it.",
            )
        )
    elif _is_clouded(grid, mask, profile):
        found.append(
            translate(
                "bands",
                "Two colours are side by side in this sky, as where a heavy cloud crosses it: no "
                "line parts them, so a band there may hold both.",
            )
        )
    return tuple(found)


def _is_clouded(grid: Grid, mask: NDArray[np.bool_], profile: Profile) -> bool:
    rows = max(1, round(profile.horizon * grid.fine.shape[0]))
    sky, fine = mask[:rows], grid.fine[:rows]
    away = np.linalg.norm(fine - row_medians(fine, sky)[:, None], axis=-1)[sky]
    return len(away) > 0 and float((away > _CLOUD_APART).mean()) > _CLOUDED


def _varies_sideways(grid: Grid, mask: NDArray[np.bool_], profile: Profile) -> bool:
    columns = grid.fine.shape[1]
    third, rows = columns // 3, max(1, round(profile.horizon * grid.fine.shape[0]))
    if third == 0:
        return False
    left, right = slice(0, third), slice(columns - third, columns)
    both = (mask[:rows, left].mean(axis=1) > 0.3) & (mask[:rows, right].mean(axis=1) > 0.3)
    if not both.any():
        return False
    a = row_medians(grid.fine[:rows, left], mask[:rows, left])[both]
    b = row_medians(grid.fine[:rows, right], mask[:rows, right])[both]
    sideways = float(median(np.linalg.norm(a - b, axis=1)))
    middle = median(profile.work, axis=0)
    downwards = 4 * float(median(np.linalg.norm(profile.work - middle, axis=1)))
    return sideways > max(_SIDEWAYS, downwards)
