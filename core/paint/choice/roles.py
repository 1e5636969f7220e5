"""How a teacher would build a hue from the paints on a table.

A single paint where one stands at the hue, else the two on either side of it; and, to tone down,
one paint from across the wheel. Anything else may hit the colour, but cannot be steered by
somebody who thinks in hue, value and intensity.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from core.paint.choice.blues import belongs_in_blue, held_by_red, is_blue, is_orange, toner_costs
from core.paint.choice.greys import grey_pairs, grey_threes
from core.paint.choice.ochres import held_ochres, is_ochre, wants_ochre
from core.paint.choice.structure import Structure
from core.paint.pigment.catalogue import Paint
from core.paint.pigment.hues import offsets, turn
from core.paint.pigment.primaries import make_together
from core.paint.reasons import Cost
from core.reading.reading import ColourReading
from core.reading.wheel import Family

SINGLE_WITHIN_DEG = 26.0
"""A paint this near the hue counts as standing at it: less than one step of the wheel."""

SINGLE_AT_MOST_DEG, BESIDE_SLOPE = 45.0, 0.04
"""Further off a paint may still serve alone, untoned: thin washes turn from the full colour."""

BLUE_THREE_PRICE = 0.5
"""A blue is toned with the orange that a red and a yellow make, in a box without an earth."""

WIDEST_ARC_DEG = 140.0
EASY_ARC_DEG = 105.0
"""Between two paints up to this far apart the hues stay clean; wider, they pass through grey.
On this wheel a warm red and a yellow are 103 apart, crimson and ultramarine 86, lemon and
cerulean 98; lemon and ultramarine, a known dull green, 117."""

NEIGHBOUR_DEG = 60.0
"""A paint further from the hue than two steps is no neighbour: blue is not made with crimson."""

ACROSS_WITHIN_DEG = 68.0
"""How far from the exact opposite a paint still tones down rather than turns the hue."""

GREY_REACH_DEG = 75.0
"""A grey's leaning is so slight that a paint anywhere near may carry it."""

GREY_BASE_DEG = 240.0
"""A colour without any hue is built as the greys of skies are: on a blue."""

EARTHS = ("raw_sienna", "burnt_sienna")
EARTH_PRICE, EARTH_CHROMA, EARTH_SLOPE = 0.3, 4.5, 0.45
"""An earth is a teacher's choice for a dull warm colour, not for an intense one."""

MIXED_ARC_DEG = 75.0
"""A green or an earth is a mixture already: it only makes hues with a near neighbour."""

YELLOW_EARTH_ARC_DEG = 95.0
"""A brown earth beside any yellow makes the dull yellows of a hazy horizon."""

LEAN_PRICE = 1.1
"""A paint that leans to another secondary than the one being mixed dulls it; every split-primary
palette is built on this (common practice). The duller the colour is to be, the less it matters."""

SAME_SIDE_PRICE = 0.2

ARC_SLOPE, FAR_SLOPE, SINGLE_SLOPE = 0.03, 0.08, 0.01
"""Price of a degree too wide, too far, beside the hue."""

ASTRAY_SLOPE, WELL_ASTRAY_DEG, WELL_ASTRAY_SLOPE = 0.02, 25.0, 0.035
ASTRAY_SLOPE_GREY = 0.008
DULL_CHROMA = 6.0
"""Price of a degree beside the opposite. A toner well astray also turns the hue, which shows the
less, the duller the colour is to be."""

GREEN_PRICE, GREEN_REACH_DEG = 1.5, 20.0
"""A bought green makes greens; a yellow or a blue built on it has to fight it."""

WIDE_PRIMARIES_AT_MOST = 1.0
"""The most that two primaries far apart on the wheel are charged: what they make together may be
dull, but it is the mix a class is taught."""

WIDEST_PRIMARIES_DEG = 178.0


def structures(paints: tuple[Paint, ...], target: ColourReading) -> tuple[Structure, ...]:
    """All sensible ways to build a colour from some paints, the plainest for each set.

    Parameters
    ----------
    paints : tuple of Paint
        Those that may be used; black and white are passed over.
    target : ColourReading

    Returns
    -------
    tuple of Structure
        Empty when no paint stands anywhere near the hue.
    """
    hue = GREY_BASE_DEG if target.hue.wheel_deg is None else target.hue.wheel_deg
    off = offsets(paints, hue)
    earth = {paint.key for paint in paints if paint.measured_as in EARTHS}
    too_intense = max(0.0, target.munsell.chroma - EARTH_CHROMA)

    grey = target.hue.family is None
    by_key = {paint.key: paint for paint in paints}
    blue = is_blue(hue, target.hue.family)
    ochre = wants_ochre(paints, target.hue.family, target.munsell.chroma)

    best: dict[frozenset[str], Structure] = {}
    if grey:
        best = {way.keys: way for way in (*grey_threes(paints), *grey_pairs(paints))}
    elif blue and not any(map(is_orange, paints)):
        best = {way.keys: way for way in grey_threes(paints, dear=BLUE_THREE_PRICE)}
    plain_blues: dict[str, tuple[Cost, ...]] = {}
    for base, plain in _bases(off, by_key, target.hue.family):
        costs = list(plain)
        if blue and not belongs_in_blue([by_key[key] for key in base], hue):
            continue
        if len(base) == 2 and any(by_key[key].group in ("green", "brown") for key in base):
            one, other = base
            if ochre and not any(map(is_ochre, (by_key[one], by_key[other]))):
                continue
            yellow_earth = {by_key[one].group, by_key[other].group} == {"yellow", "brown"}
            arc = YELLOW_EARTH_ARC_DEG if yellow_earth else MIXED_ARC_DEG
            if abs(turn(off[one], off[other])) > arc:
                continue
        leaning = leaning_away([by_key[key] for key in base], paints)
        if leaning:
            seen = min(1.0, target.munsell.chroma / DULL_CHROMA)
            costs.append(Cost("leans", LEAN_PRICE * len(leaning) * seen, leaning))
        earths = tuple(key for key in base if key in earth)
        if earths:
            costs.append(Cost("earth", EARTH_PRICE + EARTH_SLOPE * too_intense, earths))
        fought = tuple(
            key for key in base if by_key[key].group == "green" and abs(off[key]) > GREEN_REACH_DEG
        )
        if fought:
            costs.append(Cost("fights green", GREEN_PRICE, fought))
        options = [Structure(base, None, tuple(costs))]
        within = grey or len(base) > 1 or abs(off[base[0]]) <= SINGLE_WITHIN_DEG
        # A dull yellow is an ochre and a touch of blue, though the ochre stands further off.
        within = within or (bool(earths) and not too_intense)
        if blue and within and len(base) == 1 and by_key[base[0]].group == "blue":
            plain_blues[base[0]] = tuple(costs)
        for key, away in off.items() if within else ():
            astray = 180 - abs(away)
            if key not in base and astray <= ACROSS_WITHIN_DEG:
                more = toner_costs(by_key[key], paints, hue) if blue else ()
                if more is not None:
                    turns = Cost("turns hue", _astray_price(astray, target), (key,))
                    options.append(Structure(base, key, (*costs, turns, *more)))
        for option in options:
            known = best.get(option.keys)
            if known is None or option.price < known.price:
                best[option.keys] = option
    for way in held_ochres(paints) if ochre else ():
        best[way.keys] = way
    for way in held_by_red(paints, plain_blues, hue):
        best.setdefault(way.keys, way)
    return tuple(best.values())


def _astray_price(astray_deg: float, target: ColourReading) -> float:
    if target.hue.family is None:
        return ASTRAY_SLOPE_GREY * astray_deg
    well = max(0.0, astray_deg - WELL_ASTRAY_DEG)
    seen = min(1.0, target.munsell.chroma / DULL_CHROMA)
    return ASTRAY_SLOPE * (astray_deg - well) + WELL_ASTRAY_SLOPE * seen * well


def _bases(
    off: dict[str, float], by_key: dict[str, Paint], family: Family | None
) -> list[tuple[tuple[str, ...], tuple[Cost, ...]]]:
    """One paint at the hue, or two on either side of it, with what each way costs."""
    grey = family is None
    reach = GREY_REACH_DEG if grey else SINGLE_AT_MOST_DEG
    bases: list[tuple[tuple[str, ...], tuple[Cost, ...]]] = [
        ((key,), (Cost("beside", 0.0 if grey else _beside_price(abs(away)), (key,)),))
        for key, away in off.items()
        if abs(away) <= reach
    ]
    for (one, at_one), (other, at_other) in combinations(off.items(), 2):
        left, right = sorted((at_one, at_other))
        arc = right - left
        taught = make_together(by_key[one], by_key[other], family)
        if max(-left, right) <= SINGLE_WITHIN_DEG and not left < 0 < right and not taught:
            bases.append(((one, other), (Cost("same side", SAME_SIDE_PRICE, (one, other)),)))
        elif left < 0 < right and arc <= (WIDEST_PRIMARIES_DEG if taught else WIDEST_ARC_DEG):
            wide = ARC_SLOPE * max(0.0, arc - EASY_ARC_DEG)
            too_far = max(0.0, max(-left, right) - NEIGHBOUR_DEG)
            far = one if abs(at_one) > abs(at_other) else other
            costs = (
                Cost("wide", min(wide, WIDE_PRIMARIES_AT_MOST) if taught else wide, (one, other)),
                Cost("far", 0.0 if taught else FAR_SLOPE * too_far, (far,)),
            )
            bases.append(((one, other), costs))
    return bases


def _beside_price(away_deg: float) -> float:
    return SINGLE_SLOPE * away_deg + BESIDE_SLOPE * max(0.0, away_deg - SINGLE_WITHIN_DEG)


_SECONDARY_OF = {
    frozenset({"yellow", "red"}): "orange",
    frozenset({"yellow", "brown"}): "orange",
    frozenset({"red", "blue"}): "violet",
    frozenset({"yellow", "blue"}): "green",
}


def leaning_away(base: Sequence[Paint], paints: tuple[Paint, ...] = ()) -> tuple[str, ...]:
    """Paints of a pair that lean away from the secondary they are to make.

    Parameters
    ----------
    base : sequence of Paint
    paints : tuple of Paint
        All that may be used: where no other of them leans better, nothing is to be chosen and
        nothing is said.
    """
    wanted = _SECONDARY_OF.get(frozenset(paint.group for paint in base))
    if wanted is None:
        return ()
    return tuple(
        paint.key
        for paint in base
        if paint.leans not in ("", wanted)
        and (
            not paints
            or any(one.group == paint.group and one.leans in ("", wanted) for one in paints)
        )
    )
