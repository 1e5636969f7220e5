"""Fields that do not fit with the rest of a card: a wrong paint, or two mixes changed about.

Each field that costs something is left out in turn: where all the rest then fits much better, it
is asked about. A swap is tried as such: it explains two fields at once.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

import numpy as np

from core.paint.own.fit import Fitted, PaintedField, card_problem
from core.paint.own.problem import Problem
from core.paint.own.solve import solve
from core.paint.pigment.card_paint import Light
from core.paint.pigment.measured import measured_paints
from core.paint.pigment.pigments import Floats, Pigments
from core.progress import ShouldStop, step

SUSPECT = 21.0
"""The fall of the cost from which a field is asked about: of 120 right paints five were, of 120
wrong partners about 87, of 120 swapped mixes all (benchmarks/own_paints.py, doubts)."""

MANY_FIELDS = 2.0
"""So much more for e times as many fields as a row has: the more are looked at, the likelier one of
them strays by chance."""

WORTH_A_LOOK = 4.0
"""What a field costs by itself before it is tried without."""

MOST_TRIED = 8
_ROUNDS, _ENOUGH = 12, 1e-3

DoubtKind = Literal["wrong paint", "wrong partner", "swapped"]


@dataclass(frozen=True)
class Doubt:
    """A field to ask about.

    Attributes
    ----------
    paint : str
        Key of the row's paint.
    kind : DoubtKind
        Its own stroke looks like another paint; a mix looks like one with another partner; the
        two mixes of a row look changed about.
    field : int
        Which field of the row; the first of two that are swapped.
    gain : float
        By how much all the rest fits better without it.
    """

    paint: str
    kind: DoubtKind
    field: int
    gain: float


def doubts_of(
    fitted: Fitted,
    stored: Pigments | None = None,
    light: Light = "window",
    should_stop: ShouldStop | None = None,
) -> tuple[Doubt, ...]:
    """Fields to ask about, the worst first; at most one of a row's.

    Parameters
    ----------
    fitted : Fitted
    stored, light
        As for `fit_card`.
    should_stop : callable, optional
    """
    data = stored or measured_paints()
    found: dict[str, Doubt] = {}
    swaps = _swaps(fitted, data, light, should_stop)
    for doubt in (*swaps, *_odd(fitted, data, light, should_stop)):
        known = found.get(doubt.paint)
        if known is None or (known.kind != "swapped" and doubt.gain > known.gain):
            found[doubt.paint] = doubt
    return tuple(sorted(found.values(), key=lambda doubt: -doubt.gain))


def _odd(
    fitted: Fitted, data: Pigments, light: Light, should_stop: ShouldStop | None
) -> list[Doubt]:
    """Fields without which the rest fits much better."""
    costs = fitted.problem.field_costs(fitted.x)
    worth = [(cost, number) for number, cost in costs.items() if cost > WORTH_A_LOOK]
    doubts = []
    for _, number in sorted(worth, reverse=True)[:MOST_TRIED]:
        field = fitted.fields[number]
        if sum(other.paint == field.paint for other in fitted.fields) < 2:
            continue
        step(0.0, None, should_stop)
        problem = card_problem(fitted.fields, data, light, weights={number: 0.0})
        gain = fitted.cost - _cost_from(problem, fitted.x)
        if gain > suspect(len(fitted.fields)):
            kind: DoubtKind = "wrong partner" if field.partner else "wrong paint"
            doubts.append(Doubt(field.paint, kind, field.field, gain))
    return doubts


def _swaps(
    fitted: Fitted, data: Pigments, light: Light, should_stop: ShouldStop | None
) -> list[Doubt]:
    """Rows whose two mixes fit much better the other way about."""
    costs = fitted.problem.field_costs(fitted.x)
    doubts = []
    for paint in fitted.cards:
        mixes = [n for n, f in enumerate(fitted.fields) if f.paint == paint and f.partner]
        if len(mixes) != 2 or sum(costs[number] for number in mixes) < WORTH_A_LOOK:
            continue
        step(0.0, None, should_stop)
        fields = changed_about(fitted.fields, paint)
        gain = fitted.cost - _cost_from(card_problem(fields, data, light), fitted.x)
        if gain > suspect(len(fitted.fields)):
            doubts.append(Doubt(paint, "swapped", fitted.fields[mixes[0]].field, gain))
    return doubts


def suspect(fields: int) -> float:
    """The gain from which one of so many fields is asked about."""
    return SUSPECT + MANY_FIELDS * float(np.log(max(fields, 3) / 3))


def changed_about(fields: Sequence[PaintedField], paint: str) -> tuple[PaintedField, ...]:
    """The same fields, with the two partners of a row's mixes changed about."""
    partners: Mapping[int, str] = {
        field.field: field.partner for field in fields if field.paint == paint and field.partner
    }
    if len(partners) != 2:
        return tuple(fields)
    one, two = partners
    other = {one: partners[two], two: partners[one]}
    return tuple(
        replace(field, partner=other[field.field])
        if field.paint == paint and field.partner
        else field
        for field in fields
    )


def _cost_from(problem: Problem, start: Floats) -> float:
    return solve(problem, np.array(start), rounds=_ROUNDS, enough=_ENOUGH)[1]
