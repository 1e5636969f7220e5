"""The order of work on a wet sheet, and how long each stage lasts.

Times are ranges from painters' own trials and depend on paper, water and the room; the shine on
the sheet decides, not the clock.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from typing import Literal

from core.paint.mixture.mix import Mix
from core.paint.pigment.hues import turn

Kind = Literal["graded", "variegated", "flat", "none"]
Stage = Literal["tape", "mix", "wet", "lay", "leave", "rinse", "pull", "stop", "dry", "peel"]

SHINE_MIN = (1, 10)
"""Minutes a wetted sheet keeps its shine, in which washes may run into each other."""

DRY_MIN = (10, 15)
"""Minutes a class lets a sheet dry before it feels it (common practice); thick paper and a cold
room take longer. While it is matt and cool a wet brush leaves a bloom."""

RINSE_DEG = 75.0
"""Between hues further apart on the wheel the brush is rinsed."""

GREYISH_CHROMA, CLEAN_CHROMA = 2.0, 4.0
"""Munsell chroma below which a wash bears any trace of colour in the brush, and from which a trace
of grey would dull it."""


@dataclass(frozen=True)
class WorkStep:
    """One thing to do.

    Attributes
    ----------
    stage : Stage
    letters : tuple of str
        Bands to lay, in this order; empty for other stages.
    minutes : tuple of 2 ints or None
        From and to.
    thinning : bool
        One mix, laid strongest first and thinned with water from band to band.
    beside : str
        The wet band that the first of `letters` runs into; "" when none beside it is laid yet.
    apart : str
        The wet band from which the first of `letters` keeps a strip of clean water; "" for none.
    uneven : bool
        One mix, but now stronger, now weaker on the way down.
    outwards : bool
        The lightest band is between others: laying goes on to both sides of it.
    """

    stage: Stage
    letters: tuple[str, ...] = ()
    minutes: tuple[int, int] | None = None
    thinning: bool = False
    beside: str = ""
    apart: str = ""
    uneven: bool = False
    outwards: bool = False


@dataclass(frozen=True)
class Order:
    """The whole order of work.

    Attributes
    ----------
    kind : "flat", "graded", "variegated" or "none"
        One mix; one mix thinned downwards or upwards; different mixes running together; bare
        paper only.
    steps : tuple of WorkStep
    turn_sheet : bool
        The first band is at the bottom: working upside down lets the wash run from light
        to dark.
    """

    kind: Kind
    steps: tuple[WorkStep, ...]
    turn_sheet: bool


def order_of_work(
    letters: Sequence[str], mixes: Sequence[Mix], apart: Collection[str] = ()
) -> Order:
    """Plan the laying of some bands.

    Parameters
    ----------
    letters : sequence of str
        From the top down.
    mixes : sequence of Mix, same length
    apart : collection of str
        Bands that may not run into the one below them, see `Meeting.runs_together`.

    Notes
    -----
    Clean and light colours go first and the brush is rinsed before a distant hue; each band is
    laid beside one that is already wet (common practice).
    """
    wet = [(letter, mix) for letter, mix in zip(letters, mixes, strict=True) if mix.parts]
    bare = tuple(letter for letter, mix in zip(letters, mixes, strict=True) if not mix.parts)
    painted = [mix for _, mix in wet]
    kind = _kind(painted)
    if kind == "none":
        return Order(kind, (WorkStep("leave", bare),) if bare else (), False)
    steps = [WorkStep("tape"), WorkStep("mix"), WorkStep("wet", minutes=SHINE_MIN)]
    down = kind == "graded" and _is_ladder(painted)
    uneven = kind == "graded" and not down
    joints = _joints(letters, [letter for letter, _ in wet])
    strips = {(i, j) for i, j in joints if wet[i][0] in apart}
    if kind == "graded":
        # One puddle, one direction: the strongest first where water is only ever added.
        laying = list(range(len(painted)))
        if down and painted[0].load_ml < painted[-1].load_ml:
            laying.reverse()
        groups = [laying]
    else:
        laying = _laying_order(painted)
        groups = _groups(laying, painted, strips)
    outwards = kind == "variegated" and 0 < laying[0] < len(painted) - 1
    laid: set[int] = set()
    for number, group in enumerate(groups):
        if number:
            steps.append(WorkStep("rinse"))
        first = group[0]
        beside = [i for i in (first - 1, first + 1) if i in laid and _joint(first, i) in joints]
        kept = [i for i in beside if _joint(first, i) in strips]
        wet_beside = [i for i in beside if i not in kept]
        steps.append(
            WorkStep(
                "lay",
                tuple(wet[i][0] for i in group),
                thinning=down,
                beside=wet[wet_beside[0]][0] if wet_beside else "",
                apart=wet[kept[0]][0] if kept else "",
                uneven=uneven,
                outwards=outwards and not number,
            )
        )
        laid.update(group)
    if bare:
        steps.append(WorkStep("leave", bare))
    if kind == "variegated" and joints - strips:
        steps.append(WorkStep("pull"))
    steps += [WorkStep("stop"), WorkStep("dry", minutes=DRY_MIN), WorkStep("peel")]
    turn_sheet = len(painted) > 1 and laying[0] == len(painted) - 1
    return Order(kind, tuple(steps), turn_sheet)


Joint = tuple[int, int]
"""Two painted bands beside each other, by number."""


def _joint(one: int, other: int) -> Joint:
    return min(one, other), max(one, other)


def _joints(letters: Sequence[str], wet: Sequence[str]) -> set[Joint]:
    """Where two painted bands touch: no bare paper is between."""
    place = {letter: number for number, letter in enumerate(letters)}
    return {(i, i + 1) for i in range(len(wet) - 1) if place[wet[i + 1]] - place[wet[i]] == 1}


def _is_ladder(mixes: Sequence[Mix]) -> bool:
    """Whether the wash only ever thins downwards, or only ever upwards."""
    loads = [mix.load_ml for mix in mixes]
    return loads == sorted(loads) or loads == sorted(loads, reverse=True)


def _kind(mixes: Sequence[Mix]) -> Kind:
    if len(mixes) <= 1:
        return "flat" if mixes else "none"
    same = all(mix.parts == mixes[0].parts for mix in mixes[1:])
    return "graded" if same else "variegated"


def _laying_order(mixes: Sequence[Mix]) -> list[int]:
    """The lightest band first, then whichever wet neighbour is the lighter."""
    if not mixes:
        return []
    value = [mix.Lab[0] for mix in mixes]
    first = max(range(len(mixes)), key=lambda i: value[i])
    order, low, high = [first], first, first
    while len(order) < len(mixes):
        above = value[low - 1] if low > 0 else -1.0
        below = value[high + 1] if high + 1 < len(mixes) else -1.0
        if above >= below:
            low -= 1
            order.append(low)
        else:
            high += 1
            order.append(high)
    return order


def _groups(laying: list[int], mixes: Sequence[Mix], strips: Collection[Joint]) -> list[list[int]]:
    """Bands laid without rinsing between them; one that keeps a strip begins anew."""
    groups: list[list[int]] = []
    for place, index in enumerate(laying):
        laid = laying[:place]
        kept = any(_joint(index, i) in strips for i in (index - 1, index + 1) if i in laid)
        if not kept and groups:
            kept = _needs_clean_brush([mixes[i] for i in groups[-1]], mixes[index])
        if groups and not kept:
            groups[-1].append(index)
        else:
            groups.append([index])
    return groups


def _needs_clean_brush(laid: Sequence[Mix], coming: Mix) -> bool:
    """Whether what is left in the brush would show in the next wash.

    A greyish wash bears any trace of colour, and one mix bears itself. A colour is compared with
    the brush's first one: a sunset may turn half the wheel in small steps.
    """
    colour = coming.colour
    if _is_greyish(coming) or coming.parts == laid[-1].parts:
        return False
    first = next((mix for mix in laid if not _is_greyish(mix)), None)
    if first is None:
        return colour.munsell.chroma >= CLEAN_CHROMA
    one, other = first.colour.hue.wheel_deg, colour.hue.wheel_deg
    return one is not None and other is not None and abs(turn(one, other)) > RINSE_DEG


def _is_greyish(mix: Mix) -> bool:
    return mix.colour.munsell.chroma < GREYISH_CHROMA
