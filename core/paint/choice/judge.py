"""What a teacher would hold against a mix: prices of a way of counting some paints."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from core.paint.box.box import Box
from core.paint.choice.blues import is_blue, is_orange
from core.paint.choice.roles import leaning_away
from core.paint.choice.structure import Structure
from core.paint.mixture.shortfall import MATCHES_WITHIN
from core.paint.pigment.catalogue import Paint
from core.paint.pigment.primaries import lacking, primaries_for
from core.paint.reasons import Cost
from core.reading.reading import ColourReading

TELLS_APART = 1.5
"""Delta E 2000 the model is good for; smaller differences are as good as none."""

TELLS_APART_GREY = 2.2
"""Near grey, delta E 2000 sees leanings nobody names."""

THICKEST, THICK_PRICE = 20.0, 1.0
"""In half loads of the mix: beyond this it is body colour, and every doubling costs."""

SEEN_SLOPE = 0.5
"""What every delta E 2000 beyond a match costs besides: now the class sees it."""

PAINT_PRICE, PART_PRICE = 0.7, 0.07
MANY_PRICE, EASY_COUNT = 0.15, 6
LARGEST_PART, MOST_PARTS = 7, 9
"""Nobody keeps count of eleven parts of one paint."""

MUDDY_PRICE = 25.0
"""What it costs for each whole share of toner beyond `MOST_TONER`: a colour of which nearly half
is its own complement is not toned down, it is another mix."""

ALONE_PRICE = 6.0
"""One primary for a hue that two of the box make, where the eye sees that it is not the hue."""

LEAST_OF_THREE_PRICE = 0.8
"""Three paints of which none is a mere touch: nobody steers such a mix by eye."""

TINY_STRONG_PRICE, STRONG_PRICE, TINY_SHARE = 3.0, 2.6, 0.25
MOST_TONER, MOST_TONER_GREY, MOST_TONER_PAIR = 1 / 3, 1 / 2, 3 / 4


def further_price(delta_E_2000: float, target: ColourReading) -> float:
    """What it costs to be so far from a colour; hardly anything below what the model can tell."""
    tells = TELLS_APART_GREY if target.hue.family is None else TELLS_APART
    seen = SEEN_SLOPE * max(0.0, delta_E_2000 - MATCHES_WITHIN)
    return math.hypot(delta_E_2000, tells) - tells + seen


def counting_price(total: int) -> float:
    """What it costs to count so many parts."""
    return PART_PRICE * total + MANY_PRICE * max(0, total - EASY_COUNT)


class Judge:
    """Prices the ways of counting one set of paints."""

    def __init__(
        self, box: Box, paints: tuple[Paint, ...], target: ColourReading, way: Structure
    ) -> None:
        data = box.pigments
        column = {key: data.index(box.paint(key).pigment) for key in way.keys}
        self._keys = tuple(sorted(way.keys, key=column.__getitem__))
        self.columns = tuple(column[key] for key in self._keys)
        self._pick = np.array(self.columns)
        self._toner = None if way.toner is None else self._keys.index(way.toner)
        self._most_toner = MOST_TONER if target.munsell.chroma >= 3 else MOST_TONER_GREY
        if way.greys:
            self._most_toner = MOST_TONER_PAIR
        self._greying = way.greys or _is_earthy(box, way, target)
        self._target = target
        self._costs = (*way.costs, Cost("more paints", PAINT_PRICE * (len(self._keys) - 1)))
        self._touch: tuple[int, int] | None = None
        if way.steer is not None and not way.greys:  # base, and what only holds its hue
            self._touch = self._keys.index(way.base[0]), self._keys.index(way.steer)
        self._blues = _blues_of(box, target, way, self._keys)
        self._alone = _is_primary_alone(box, paints, target, way)
        self._per_half = [1 / box.paint(key).half_load_ml for key in self._keys]
        self._replaceable = [
            number
            for number, key in enumerate(self._keys)
            if box.paint(key).is_strong and _has_weaker(paints, way, box.paint(key))
        ]

    def counts(self, parts: NDArray[np.int64]) -> dict[str, int]:
        """Parts of the box's paints, from a vector of all pigments."""
        return dict(zip(self._keys, parts[self._pick].tolist(), strict=True))

    def costs(
        self, parts: NDArray[np.int64], delta_E: float, load_ml: float
    ) -> tuple[Cost, ...] | None:
        """What a mix costs, or None when a teacher would not write it so."""
        counts: list[int] = parts[self._pick].tolist()
        total = sum(counts)
        if total > MOST_PARTS or max(counts) > LARGEST_PART:
            return None
        if self._blues and 2 * sum(counts[number] for number in self._blues) < total:
            return None
        if self._touch is not None:
            base, touch = self._touch
            if 2 * counts[touch] > counts[base]:
                return None
        if self._toner is not None and counts[self._toner] / total > self._most_toner + 1e-9:
            return None
        muddy = 0.0
        if self._toner is not None and not self._greying:
            muddy = MUDDY_PRICE * max(0.0, counts[self._toner] / total - MOST_TONER)
        half_loads = (
            load_ml / total * sum(n * per for n, per in zip(counts, self._per_half, strict=True))
        )
        blended = LEAST_OF_THREE_PRICE if len(counts) > 2 and min(counts) > 1 else 0.0
        thick = THICK_PRICE * max(0.0, math.log2(max(half_loads, 1e-9) / THICKEST))
        strong = tuple(
            Cost("tiny strong", TINY_STRONG_PRICE, (self._keys[number],))
            if counts[number] / total < TINY_SHARE
            else Cost("stains", STRONG_PRICE, (self._keys[number],))
            for number in self._replaceable
        )
        return (
            Cost("further", further_price(delta_E, self._target)),
            Cost("more parts", counting_price(total) + blended),
            Cost("thick", thick),
            Cost("greys less cleanly", muddy),
            *strong,
            *self._costs,
            *self._alone_costs(delta_E),
        )

    def _alone_costs(self, delta_E: float) -> tuple[Cost, ...]:
        if not self._alone or delta_E <= MATCHES_WITHIN:
            return ()
        return (Cost("beside", ALONE_PRICE, self._alone),)


def _is_earthy(box: Box, way: Structure, target: ColourReading) -> bool:
    """Whether a blue is toned with its earth: a clean grey however much of it there is."""
    hue = target.hue.wheel_deg
    return (
        way.toner is not None
        and hue is not None
        and is_blue(hue, target.hue.family)
        and is_orange(box.paint(way.toner))
    )


def _blues_of(
    box: Box, target: ColourReading, way: Structure, keys: tuple[str, ...]
) -> tuple[int, ...]:
    """Places of the blues in a mix for a blue: they are at least half of it.

    Nothing where a strong blue is among them: it colours a mix of which it is a small part.
    """
    hue = target.hue.wheel_deg
    if hue is None or not is_blue(hue, target.hue.family):
        return ()
    blues = [number for number, key in enumerate(keys) if box.paint(key).group == "blue"]
    return () if any(box.paint(keys[number]).is_strong for number in blues) else tuple(blues)


def _is_primary_alone(
    box: Box, paints: tuple[Paint, ...], target: ColourReading, way: Structure
) -> tuple[str, ...]:
    """The one primary that is to make a hue for which the box has both; else nothing."""
    family = target.hue.family
    if family is None or len(way.base) > 1 or lacking(paints, family):
        return ()
    group = box.paint(way.base[0]).group
    needed = primaries_for(family)
    if len(needed) < 2 or group not in needed:
        return ()
    held = {box.paint(key).group for key in way.keys}
    return () if held >= set(needed) else way.base


def _has_weaker(paints: tuple[Paint, ...], way: Structure, paint: Paint) -> bool:
    """Whether a paint of the same group stains less strongly and serves as well.

    One that leans away from the secondary to be mixed does not: a blue that leans to violet makes
    no clear green.
    """
    base = [other for other in paints if other.key in way.base]
    kept = len(leaning_away(base))
    return any(
        other.group == paint.group
        and not other.is_strong
        and len(leaning_away([other if one is paint else one for one in base])) <= kept
        for other in paints
    )
