"""What the mixing model predicts a planned sky to look like once it is painted and dry.

Flat washes and the wet edges between them, as runs of colour from the top down: no brush mark, no
grain, no cloud, since the model knows nothing of them and they could be taken for a reading.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from itertools import pairwise

from core.paint.mixture.mix import Mix, bare_paper
from core.paint.mixture.swatch import hexes_of_Lab
from core.paint.planned import BandMix, MixPlan
from core.paint.wash.meeting import meet

EDGE_SHARE = 0.35
"""Of the lower of two bands' heights: how far their wet edge reaches to either side of the line.
A choice of how to draw it: how far washes run is the water's and the painter's."""


@dataclass(frozen=True)
class Wash:
    """A stretch of the painted sky.

    Attributes
    ----------
    top, bottom : float
        Fractions of the photo's height.
    colours : tuple of str
        "#rrggbb" from top to bottom, evenly spread; one is flat.
    letters : tuple of str
        The band, or the two bands whose wet edge it is.
    """

    top: float
    bottom: float
    colours: tuple[str, ...]
    letters: tuple[str, ...]


def laying_order(plan: MixPlan) -> tuple[str, ...]:
    """Letters of the bands that are painted, the first to lay first."""
    return tuple(
        letter for step in plan.order.steps if step.stage == "lay" for letter in step.letters
    )


def painted_sky(
    plan: MixPlan, edges: Sequence[float], laid: Collection[str] | None = None
) -> tuple[Wash, ...]:
    """The washes of a sky, from the top down.

    Parameters
    ----------
    plan : MixPlan
    edges : sequence of float
        Where the bands begin and end, one more than the plan has bands.
    laid : collection of str, optional
        Only these bands have been laid; all of them without it. A band beside one that has not
        keeps its colour to the line.

    Returns
    -------
    tuple of Wash
        They touch where bands touch. A band without sky, or not laid, has none.

    Raises
    ------
    ValueError
        The edges are not one more than the bands.
    """
    if len(edges) != len(plan.bands) + 1:
        raise ValueError(f"{len(edges)} edges for {len(plan.bands)} bands")
    wet = [_mix_of(band, laid) for band in plan.bands]
    reaches = [
        EDGE_SHARE * min(edges[i + 1] - edges[i], edges[i + 2] - edges[i + 1])
        if wet[i] is not None and wet[i + 1] is not None
        else 0.0
        for i in range(len(wet) - 1)
    ]
    around = (0.0, *reaches, 0.0)
    washes: list[Wash] = []
    for number, (mix, (top, bottom)) in enumerate(zip(wet, pairwise(edges), strict=True)):
        if mix is None:
            continue
        band = plan.bands[number]
        flat = hexes_of_Lab((mix.Lab,))
        start, end = top + around[number], bottom - around[number + 1]
        washes.append(Wash(start, end, flat, (band.letter,)))
        if around[number + 1]:
            letters = (band.letter, plan.bands[number + 1].letter)
            run = _wet_edge(plan, number)
            washes.append(Wash(end, bottom + around[number + 1], run, letters))
    return tuple(washes)


def _mix_of(band: BandMix, laid: Collection[str] | None) -> Mix | None:
    if band.classroom is None:
        return None
    waits = laid is not None and band.letter not in laid
    return None if waits else band.classroom.mix


def _wet_edge(plan: MixPlan, number: int) -> tuple[str, ...]:
    """The colours from one band's wash to the next one's, as they run, or through clean water."""
    band, below = plan.bands[number : number + 2]
    meeting = band.meets_below
    assert band.classroom is not None
    assert below.classroom is not None
    upper, lower = band.classroom.mix, below.classroom.mix
    if meeting is None:
        return hexes_of_Lab((upper.Lab, lower.Lab))
    if meeting.runs_together:
        return hexes_of_Lab(meeting.path)
    # The strip that stays clean: each wash fades out into the wet paper.
    paper = bare_paper()
    out, into = meet(plan.box, upper, paper).path, meet(plan.box, paper, lower).path
    return hexes_of_Lab((*out, *into[1:]))
