"""From the readings of a card to its paints: one problem for the whole card."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

import numpy as np

from core.paint.own.known import posterior_directions, trust_of
from core.paint.own.phone import LOOSE, PINNED
from core.paint.own.prior import PRIOR, prior_of
from core.paint.own.problem import Problem, Samples, Spreads
from core.paint.own.solve import solve
from core.paint.pigment.card_paint import CardPaint, Light, Reading
from core.paint.pigment.measured import measured_paints
from core.paint.pigment.pigments import Floats, Pigments
from core.progress import ShouldStop

ALONE_LOADS, MIX_LOADS = (0.6, 0.015), (0.5, 0.02)
"""Likely loads at the two ends of a stroke, hundredths of a millilitre: thick to water."""

SCAN_READING, PHOTO_READING = 1.5, 2.5
"""Spread of a reading, CIELAB."""


@dataclass(frozen=True)
class PaintedField:
    """The readings of one painted field.

    Attributes
    ----------
    paint : str
        Key of the own paint of its row.
    field : int
        0 for the paint alone, 1 and 2 for the mixes.
    partner : str
        "" for the paint alone; else the key of another own paint, or of a stored one.
    Lab : tuple of Lab triples
        From dark to pale.
    log_ratio : float
        Natural logarithm of the parts asked for, own to partner; 0 for as much of each.
    """

    paint: str
    field: int
    partner: str
    Lab: tuple[tuple[float, float, float], ...]
    log_ratio: float = 0.0


@dataclass(frozen=True, eq=False)
class Fitted:
    """What a card's fields say of its paints.

    Attributes
    ----------
    cards : mapping of key to CardPaint
        In the order of the rows.
    problem : Problem
    x : ndarray
        The likeliest unknowns of the problem.
    cost : float
    fields : tuple of PaintedField
        By their number in the problem.
    """

    cards: Mapping[str, CardPaint]
    problem: Problem
    x: Floats
    cost: float
    fields: tuple[PaintedField, ...]


def fit_card(
    fields: Sequence[PaintedField],
    stored: Pigments | None = None,
    light: Light = "window",
    should_stop: ShouldStop | None = None,
    spreads: Spreads | None = None,
) -> Fitted:
    """Fit the paints of a card.

    Parameters
    ----------
    fields : sequence of PaintedField
        A paint without any field is not fitted.
    stored : Pigments, optional
        Paints that are known already; the measured ones without it.
    light : Light
        What the picture was taken by.
    should_stop : callable, optional
    spreads : Spreads, optional
        Other than those of the light: for loads or ratios that were measured.

    Returns
    -------
    Fitted

    Raises
    ------
    Cancelled
        `should_stop` answered True.
    ValueError
        A partner that is neither stored nor on the card.
    """
    data = stored or measured_paints()
    problem = card_problem(fields, data, light, spreads)
    x, cost, H = solve(problem, should_stop=should_stop)
    keys = own_keys(fields)
    covariance = np.linalg.inv(H)
    K, S = problem.spectra(x)
    cards = {}
    for number, key in enumerate(keys):
        place = problem.paint_slices[number]
        root = problem.priors[number].B @ np.linalg.cholesky(covariance[place, place])
        row = len(data.keys) + number
        directions, spread = posterior_directions(K[row], S[row], root)
        cards[key] = CardPaint(
            tuple(map(float, K[row])),
            tuple(map(float, S[row])),
            directions,
            spread,
            trust_of(spread),
            light,
            PRIOR,
            _readings(fields, key),
        )
    return Fitted(MappingProxyType(cards), problem, x, cost, tuple(fields))


def own_keys(fields: Sequence[PaintedField]) -> tuple[str, ...]:
    """The own paints of some fields, each once, in their order."""
    return tuple(dict.fromkeys(field.paint for field in fields))


def card_problem(
    fields: Sequence[PaintedField],
    data: Pigments,
    light: Light,
    spreads: Spreads | None = None,
    weights: Mapping[int, float] | None = None,
) -> Problem:
    """The problem of some fields; `weights` by a field's number, 1 without it."""
    keys = own_keys(fields)
    row = {key: number for number, key in enumerate((*data.keys, *keys))}
    Lab: list[tuple[float, float, float]] = []
    first: list[int] = []
    second: list[int] = []
    number: list[int] = []
    load: list[float] = []
    ratio: list[float] = []
    weight: list[float] = []
    for at, field in enumerate(fields):
        if field.partner and field.partner not in row:
            raise ValueError(f"the partner {field.partner!r} is neither stored nor on the card")
        start, end = MIX_LOADS if field.partner else ALONE_LOADS
        Lab += field.Lab
        load += np.geomspace(start, end, len(field.Lab)).tolist()
        many = len(field.Lab)
        first += [row[field.paint]] * many
        second += [row[field.partner] if field.partner else -1] * many
        number += [at] * many
        ratio += [field.log_ratio] * many
        weight += [1.0 if weights is None else weights.get(at, 1.0)] * many
    samples = Samples(
        np.array(Lab, dtype=np.float64).reshape(-1, 3),
        np.array(first, dtype=np.int64),
        np.array(second, dtype=np.int64),
        np.array(number, dtype=np.int64),
        np.array(load, dtype=np.float64),
        np.array(ratio, dtype=np.float64),
        np.array(weight, dtype=np.float64),
    )
    partners = {field.partner for field in fields if field.partner}
    known = bool(partners) and not partners & set(keys)
    usual = Spreads(reading=SCAN_READING if light == "scan" else PHOTO_READING)
    return Problem(
        data,
        [prior_of()] * len(keys),
        samples,
        spreads or usual,
        phone=None if light == "scan" else PINNED if known else LOOSE,
    )


def _readings(fields: Sequence[PaintedField], key: str) -> tuple[Reading, ...]:
    found = []
    for field in fields:
        if field.paint == key:
            last = max(len(field.Lab) - 1, 1)
            found += [
                Reading(field.field, round(at / last, 3), Lab, field.partner)
                for at, Lab in enumerate(field.Lab)
            ]
    return tuple(found)
