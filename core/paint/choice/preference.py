"""Why one mix was preferred to another: the very costs the choice was made by."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from core.paint.box.box import Box
from core.paint.choice.classroom import Built
from core.paint.choice.judge import counting_price, further_price
from core.paint.choice.runs import Place, change_price
from core.paint.mixture.mix import Mix
from core.paint.planned import PlannedMix
from core.paint.reasons import Reason, ReasonCode
from core.reading.reading import ColourReading

ALSO_SAID = 0.5
"""From here a second cost is worth a word."""

LEAST = 0.05

ABOUT_PAINTS: frozenset[ReasonCode] = frozenset(
    {
        "far",
        "wide",
        "leans",
        "earth",
        "fights green",
        "turns hue",
        "to green",
        "same side",
        "beside",
        "stains",
        "tiny strong",
    }
)


@dataclass(frozen=True)
class Chosen:
    """The band's mix, how it was built, and what its neighbours ask.

    Attributes
    ----------
    planned : PlannedMix
    built : Built or None
        None where the teacher set the parts, or nothing could be built.
    target : ColourReading
        The band.
    place : Place
    """

    planned: PlannedMix
    built: Built | None
    target: ColourReading
    place: Place


def against(chosen: Chosen, other: Built, mix: Mix, delta_E_2000: float) -> tuple[Reason, ...]:
    """What speaks for the band's mix and against another.

    Parameters
    ----------
    chosen : Chosen
    other : Built
        The other way of building.
    mix : Mix
        Its parts; not always those of `other`, which are the easiest to count.
    delta_E_2000 : float
        Of `mix`, to the band.

    Returns
    -------
    tuple of Reason
        The greatest difference first, two at the most; empty where nothing speaks against it.
    """
    if chosen.built is None:
        return ()
    own = chosen.planned
    extra = _by_code(other)
    for code, price in _by_code(chosen.built).items():
        extra[code] = extra.get(code, 0.0) - price
    extra["more parts"] = counting_price(mix.total) - counting_price(own.mix.total)
    extra["further"] = further_price(delta_E_2000, chosen.target) - further_price(
        own.delta_E_2000, chosen.target
    )
    keys, own_keys = frozenset(mix.keys), frozenset(own.mix.keys)
    found = [
        (price, _reason(code, other, chosen)) for code, price in extra.items() if price > LEAST
    ]
    changing = change_price(chosen.place.beside, keys) - change_price(chosen.place.beside, own_keys)
    if len(chosen.place.letters) > 1 and mix.parts != own.mix.parts:
        found.append((max(changing, ALSO_SAID), Reason("not shared", letters=chosen.place.letters)))
    elif changing > LEAST:
        found.append((changing, _change(mix.keys, chosen)))
    found.sort(key=lambda item: -item[0])
    return tuple(
        reason
        for number, (price, reason) in enumerate(found[:2])
        if not number or price > ALSO_SAID
    )


def told_apart(reasons: Sequence[Reason]) -> tuple[Reason, ...]:
    """One warning about a paint is enough: later ones about the same paints are dropped."""
    said: set[str] = set()
    kept = []
    for reason in reasons:
        if reason.paints and said >= set(reason.paints):
            continue
        said |= set(reason.paints)
        kept.append(reason)
    return tuple(kept)


def _by_code(built: Built) -> dict[ReasonCode, float]:
    prices: dict[ReasonCode, float] = {}
    for cost in built.costs:
        prices[cost.code] = prices.get(cost.code, 0.0) + cost.price
    return prices


def _reason(code: ReasonCode, other: Built, chosen: Chosen) -> Reason:
    if code not in ABOUT_PAINTS:
        return Reason(code)
    costs = [cost for cost in other.costs if cost.code == code and cost.price > 0]
    paints = max(costs, key=lambda cost: cost.price).paints
    if code not in ("wide", "same side"):
        paints = paints[:1]
    return Reason(code, paints, chosen.target.hue.family or chosen.target.hue.leaning)


def new_paints(keys: Iterable[str], chosen: Chosen) -> tuple[str, ...]:
    """Paints that neither the band's mix nor those beside it hold."""
    known = frozenset(chosen.planned.mix.keys).union(*chosen.place.beside)
    return tuple(key for key in keys if key not in known)


def _change(keys: Iterable[str], chosen: Chosen) -> Reason:
    new = new_paints(keys, chosen)
    return Reason("new paint", new) if new else Reason("changes")


def remarks(box: Box, chosen: PlannedMix, other: Mix) -> list[Reason]:
    """What to know of paints that only the other mix holds."""
    new = [key for key in other.keys if key not in chosen.mix.keys]
    grainy = tuple(key for key in new if box.paint(key).granulation == "high")
    covering = tuple(key for key in new if box.paint(key).transparency == "opaque")
    found = []
    if grainy:
        found.append(Reason("granulates", grainy))
    if covering:
        found.append(Reason("covers", covering))
    return found
