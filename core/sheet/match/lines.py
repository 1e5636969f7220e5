"""Finding the reference's lines on a sheet.

The sheet's vertical profile is cut into the reference's bands, in order (`order`). Then both
profiles are described by soft steps (`steps`), and the difference of the two half-way points is
the displacement, so that like is compared with like.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from core.colour.working_space import Floats, W_to_linear, linear_to_W
from core.memory import Memory
from core.sheet.match.order import band_colours, order_bands
from core.sheet.match.soft_steps import Steps, Target, fit_steps

TELLABLE = 4.0
"""Neighbouring bands closer than this, in working units, give no line that can be told."""

COMMENTED = 0.02
"""A line's displacement, as a share of the height, from which it is spoken of."""

_COLOUR_TRUST = 0.4  # samples' worth of trust in the reference's colour
_PRIOR_FIT = 400.0
_WIDTH_FIT = 3.0
_ORDER_SHARE = 0.1  # weight of the search's cost beside the fit's
_SLIDE = 0.015
_ON_IT = 0.006
_SHARP, _MELTS = 0.04, 0.10  # 10-90% widths of a step in the photo, and of none
_CRISPER, _AS_SOFT = 0.3, 0.6  # the sheet's width over the photo's
_PRESSED = 0.4  # share of its height in the reference
_FAR, _PRESSED_FAR = 0.08, 0.6  # the same beside a line this far off its place
_SOFT = 0.06  # 10-90% width of a step that its neighbours can pull away
_MOSTLY_OWN = 0.5  # share of a displacement that must be the sheet's
_DOUBT = 0.003  # standard error of a place from which the profile is too flat to tell
# A wash that melts over a fifth of the height: its half-way point hangs on where its neighbours
# end. Told only where it melts as the photo does and the fit is surer of its place.
_MELTS_FAR, _WIDER, _MELTING_DOUBT = 0.2, 1.2, 0.002
_RIVAL = 0.1  # share of the cost by which a second reading must be worse to be ruled out

_FITTED: Memory[Steps] = Memory(64)
"""Fits of photos themselves: the sheets of a class have one photo, at one of twenty strengths."""


@dataclass(frozen=True)
class Line:
    """A line found on a sheet; positions are shares of the height.

    Attributes
    ----------
    should, at : float
    sure : bool
        False: "cannot tell".
    contrast : float
        Smaller of the two colour steps across the line, reference and sheet, working units.
    width : float
        10-90% width of the sheet's step.
    error : float
        Standard error of the place on the sheet, as the fit sees it.
    """

    should: float
    at: float
    sure: bool
    contrast: float
    width: float
    error: float

    @property
    def astray(self) -> bool:
        """Whether it was read far from its place."""
        return abs(self.at - self.should) > _FAR


def density_of(profile: Floats) -> Floats:
    """Optical densities (natural log, times 20) of a profile in working colours.

    Paint adds up in density, so the half-way point of a wash is there whatever its softness;
    in the working space a wide step from dark to pale would seem to be too low.
    """
    return -20.0 * np.log(np.clip(W_to_linear(profile), 0.004, 1.2))


def match_lines(reference: Floats, lines: tuple[float, ...], *sheets: Floats) -> tuple[Line, ...]:
    """Where each line of the reference is on the sheet.

    Parameters
    ----------
    reference, sheets : (SAMPLES, 3) float64
        Profiles in working colours. Of several profiles of the sheet, the one that is explained
        best counts.
    lines : tuple of float
        The reference's lines, shares of its sky's height.
    """
    if not lines:
        return ()
    photo = (reference.tobytes(), lines)
    own = _FITTED.either(("own", *photo), lambda: _fit_reference(reference, lines))
    fits = [_fit_sheet(reference, lines, own, sheet) for sheet in sheets]
    its, rivals = min(fits, key=lambda fit: fit[0].cost)
    kept = np.diff([0.0, *its.at, 1.0]) / np.diff([0.0, *lines, 1.0])
    answer = []
    for k, line in enumerate(lines):
        contrast = min(_step_between(own, k), _step_between(its, k))
        beside = _beside(float(own.at[k]) - line, float(own.width[k]), float(its.width[k]))
        at = float(np.clip(its.at[k] - beside, 0.005, 0.995))
        # Another reading of the sheet that is nearly as good and puts the line elsewhere.
        doubt = any(
            other.cost < its.cost + _RIVAL * (1 + its.cost) and abs(other.at[k] - its.at[k]) > 0.02
            for other in rivals
        )
        # A band pressed together next to the line is more likely one the fit invented.
        far = abs(at - line) > _FAR
        pressed = min(kept[k], kept[k + 1]) < (_PRESSED_FAR if far else _PRESSED)
        flat = float(its.error[k]) > _DOUBT or _melts_away(own, its, k)
        sure = contrast >= TELLABLE and not (doubt or pressed or flat)
        answer.append(Line(line, at, sure, contrast, float(its.width[k]), float(its.error[k])))
    if any(line.sure and abs(line.at - line.should) > COMMENTED for line in answer):
        same = _FITTED.either(
            ("same", *photo), lambda: _fit_sheet(reference, lines, own, reference)[0]
        )
        answer = _beyond_own(answer, own, same)
    return beside_doubt(answer)


def _beyond_own(answer: list[Line], own: Steps, same: Steps) -> list[Line]:
    """Lines, unsure where they are off by little more than the photo's own would be (`same`).

    In a wash that grades over a large part of the height the lines were put somewhere, and its
    half-way point is elsewhere: by so much a sheet that grades as softly is not to blame.
    """
    kept = []
    for k, line in enumerate(answer):
        shift = line.at - line.should
        if abs(shift) > COMMENTED:
            width = float(own.width[k])
            beside = _beside(float(own.at[k]) - line.should, width, float(same.width[k]))
            photos = _alike(width, line.width) * (float(same.at[k]) - beside - line.should)
            left = 1.0 - max(photos / shift, 0.0)  # share of it that is the sheet's
            if left <= _MOSTLY_OWN and left * abs(shift) <= COMMENTED:
                line = replace(line, sure=False)
        kept.append(line)
    return kept


def _melts_away(own: Steps, its: Steps, k: int) -> bool:
    """Whether a sheet's step is so wide that where it is half-way says little of its line."""
    width = float(its.width[k])
    wider = width > _WIDER * float(own.width[k])
    return width > _MELTS_FAR and (wider or float(its.error[k]) > _MELTING_DOUBT)


def beside_doubt(lines: list[Line]) -> tuple[Line, ...]:
    """A wash that melts away reaches to the next line: where that one was read far from its place
    and is not to be trusted, neither is this."""
    strays = {k for k, line in enumerate(lines) if not line.sure and line.astray}
    return tuple(
        replace(line, sure=False) if line.width > _SOFT and strays & {k - 1, k + 1} else line
        for k, line in enumerate(lines)
    )


def _beside(offset: float, own_width: float, width: float) -> float:
    """How far from a line its wash is expected to change, when the photo's change is `offset` away.

    A line put a little beside a sharp step means that step, and a sheet that melts as the photo
    does is compared with the photo's half-way point. A crisper edge in a sky that melts was painted
    where the line is: the photo's half-way point says nothing against it.
    """
    least = float(np.sign(offset)) * min(max(abs(offset) - _ON_IT, 0.0), _SLIDE)
    sharp = (_MELTS - own_width) / (_MELTS - _SHARP)
    return least * max(float(np.clip(sharp, 0.0, 1.0)), _alike(own_width, width))


def _alike(own_width: float, width: float) -> float:
    """How far a sheet's step is as soft as the photo's, 0..1."""
    return float(np.clip((width / own_width - _CRISPER) / (_AS_SOFT - _CRISPER), 0.0, 1.0))


def _step_between(steps: Steps, k: int) -> float:
    linear = np.exp(np.clip(-steps.colours[k : k + 2] / 20.0, -6.0, 0.3))
    a, b = linear_to_W(linear)
    return float(np.linalg.norm(b - a))


def _fit_reference(profile: Floats, lines: tuple[float, ...]) -> Steps:
    """The reference's lines were set by a person or the proposal: they hold where they are."""
    density = density_of(profile)
    colours = band_colours(density, lines)
    target = Target(colours, 0.4, np.asarray(lines), 3000.0, 3.0)
    fits = [fit_steps(density, lines, target, softness=softness) for softness in (0.15, 0.6)]
    return min(fits, key=lambda fit: fit.cost)


def _fit_sheet(
    reference: Floats, lines: tuple[float, ...], own: Steps, sheet: Floats
) -> tuple[Steps, list[Steps]]:
    """The best reading of the sheet, and other readings of it."""
    wanted = band_colours(reference, lines)
    density = density_of(sheet)
    search = order_bands(wanted, lines, sheet)
    ways = list(search.ways)
    ways += [lines, tuple((np.add(lines, ways[0]) / 2).tolist())]
    shift = np.median(band_colours(density, ways[0]) - own.colours, axis=0)
    target = Target(own.colours + shift, _COLOUR_TRUST, own.at, _PRIOR_FIT, _WIDTH_FIT)
    coarse = [fit_steps(density, way, target, softness=0.4, pool=4, rounds=14) for way in ways]
    coarse = [
        replace(fit, cost=fit.cost + _ORDER_SHARE * search.cost(tuple(fit.at.tolist())))
        for fit in coarse
    ]
    coarse.sort(key=lambda fit: fit.cost)
    best = coarse[0]
    start = tuple(float(v) for v in best.at)
    loose = Target(best.colours, 0.4, best.at, 5.0, 0.3)
    fine = [
        fit_steps(density, start, loose, softness=softness, rounds=30) for softness in (0.15, 0.6)
    ]
    final = min(fine, key=lambda fit: fit.cost)
    # Costs of coarse and fine fits differ; rivals are compared with the coarse winner.
    return replace(final, cost=best.cost), coarse[1:]
