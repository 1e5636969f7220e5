"""What a class is taught of toning down a blue, the same from band to band and from sky to sky.

Blue's complement is orange, and the brown earth of a box is a dull orange: it tones every blue.
By itself it turns the blue a little to green (the measured burnt sienna and ultramarine are a
green-grey in equal parts), so where the band leans to violet a touch of red goes with it, and
where the band leans to green a second blue serves. A box without an earth makes its orange from
red and a little yellow. A yellow alone would make a green of the blue, and only does where the
band leans that way; a red alone makes a violet of it, and only does where the band leans so.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import product

from core.paint.choice.structure import Structure
from core.paint.pigment.catalogue import Paint
from core.paint.reasons import Cost
from core.reading.wheel import Family

BLUE_DEG = (225.0, 255.0)
"""The wedge of blue on the wheel."""

TO_VIOLET_BELOW_DEG, TO_GREEN_FROM_DEG = 236.0, 249.0
"""Within the wedge: below, a blue leans to violet, and from the other on to green."""

WITH_A_RED_PRICE = -0.2
"""A touch of red beside the earth holds the hue; it is still one paint more to open."""

COOL_RED_PRICE = 1.2
"""A warm red stands nearer blue's complement than one that leans to violet: it goes first."""

TURNS_PRICE = 0.6


def is_blue(hue_deg: float, family: Family | None) -> bool:
    """Whether the rules for blues hold for a band."""
    return family is not None and BLUE_DEG[0] <= hue_deg < BLUE_DEG[1]


def is_orange(paint: Paint) -> bool:
    """Whether a paint is blue's complement: an orange, or a brown earth, which is a dull one."""
    return paint.group in ("brown", "orange")


def toner_costs(toner: Paint, paints: tuple[Paint, ...], hue_deg: float) -> tuple[Cost, ...] | None:
    """What speaks against one paint to tone a blue with; None where it is not done.

    Parameters
    ----------
    toner : Paint
    paints : tuple of Paint
        All that may be used.
    hue_deg : float
        The blue, on the wheel.
    """
    if is_orange(toner):
        return ()
    if toner.group == "yellow":
        leans = hue_deg >= TO_GREEN_FROM_DEG
        return (Cost("to green", TURNS_PRICE, (toner.key,)),) if leans else None
    if toner.group == "red" and not any(map(is_orange, paints)) and hue_deg < TO_VIOLET_BELOW_DEG:
        return (Cost("turns hue", TURNS_PRICE, (toner.key,)),)
    return None


def belongs_in_blue(base: Sequence[Paint], hue_deg: float) -> bool:
    """Whether two paints make a blue between them, rather than one turn the other from it.

    A yellow or a green beside the blue where the band leans to green, a red that leans to violet
    where the band does.
    """
    for paint in base:
        if len(base) < 2 or paint.group in ("blue", "violet"):
            continue
        if paint.group in ("yellow", "green") and hue_deg >= TO_GREEN_FROM_DEG:
            continue
        if paint.group == "red" and paint.leans == "violet" and hue_deg < TO_VIOLET_BELOW_DEG:
            continue
        return False
    return True


def may_hold_blue(mixed: Sequence[Paint], hue_deg: float) -> bool:
    """Whether a mix stays a blue: a yellow in it wants a red or an orange, or a band that leans."""
    groups = {paint.group for paint in mixed}
    if "yellow" not in groups or hue_deg >= TO_GREEN_FROM_DEG:
        return True
    return "red" in groups or any(map(is_orange, mixed))


def held_by_red(
    paints: tuple[Paint, ...], plain: Mapping[str, tuple[Cost, ...]], hue_deg: float
) -> list[Structure]:
    """A blue toned with a brown earth, and a touch of red that keeps it from turning green.

    Parameters
    ----------
    paints : tuple of Paint
    plain : mapping of paint key to costs
        Blues that stand at the hue, with what speaks against each.
    hue_deg : float
        The blue, on the wheel: one that leans to green is not to be held from it.
    """
    if hue_deg >= TO_GREEN_FROM_DEG:
        return []
    browns = [paint for paint in paints if is_orange(paint)]
    reds = [paint for paint in paints if paint.group == "red"]
    ways = []
    clear = {paint.key for paint in paints if paint.leans != "green"}
    blues = [(key, costs) for key, costs in plain.items() if key in clear]
    for (blue, costs), brown, red in product(blues, browns, reds):
        price = WITH_A_RED_PRICE
        if red.leans == "violet" and any(other.leans != "violet" for other in reds):
            price += COOL_RED_PRICE
        held = Cost("more paints", price, (red.key,))
        ways.append(Structure((blue,), brown.key, (*costs, held), red.key))
    return ways
