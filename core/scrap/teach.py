"""What a dried scrap says of a box's own paints, when the teacher lets it teach the box.

The posterior of the swatch card is the prior: a paint may move along the directions its card leaves
open, as far as the strokes push it. How much of each paint was really taken, and how strong the
wash was, stay unknown: one scrap says little, ten say much. What was learned is kept with the
paint, and no stroke teaches twice.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from core.paint.box.box import Box
from core.paint.box.own_paint import paint_of_card
from core.paint.mixture.mix import Mix
from core.paint.own.fit import PHOTO_READING
from core.paint.own.known import posterior_directions, trust_of
from core.paint.pigment.card_paint import MOST_TAUGHT, CardPaint, TaughtScrap
from core.scrap.advice import Advice
from core.scrap.model import Model, Stroke
from core.scrap.paints import Floats, Ways, paints_for
from core.scrap.strokes import Doubt, FoundStroke

MOST_GOT_IN = 0.4
"""Chance that another paint got in from which a scrap teaches nothing."""

MOST_MISFIT = 6.0
"""What strokes may be off by on their likeliest paints: chi square of three readings is above 6.25
once in ten; they then say more of a mistake than of a paint."""

READING = 1.5 * PHOTO_READING
"""Spread of a stroke's colour, CIELAB: wider than a card's, since one camera errs the same way in
every scrap (benchmarks/own_paints.py, taught: with it the stated error stays true after six)."""

_UNFIT: frozenset[Doubt] = frozenset({"no paper", "over-exposed", "shines", "shadow"})


@dataclass(frozen=True)
class Lesson:
    """What a scrap would teach a box.

    Attributes
    ----------
    paints : mapping of paint key to CardPaint
        Own paints of the mix as they would be known then.
    """

    paints: Mapping[str, CardPaint]


def lesson_of(
    box: Box,
    mix: Mix,
    strokes: Sequence[Stroke],
    found: Sequence[FoundStroke] = (),
    advice: Advice | None = None,
) -> Lesson | None:
    """What strokes of a puddle teach of the mix's own paints; None where they teach nothing.

    Parameters
    ----------
    box : Box
    mix : Mix
        As planned.
    strokes : sequence of Stroke
        All of one puddle, in the order painted; those that taught before do not count again.
    found : sequence of FoundStroke
        As the picture shows the last ones of them: none teaches that is doubted.
    advice : Advice, optional
        On these strokes: nothing is learned where another paint got in, or they are no one puddle.
    """
    own = own_keys(box, mix)
    doubted = any(_UNFIT & set(stroke.doubts) for stroke in found)
    spoiled = advice is not None and (
        advice.got_in is not None or advice.got_in_chance > MOST_GOT_IN or not advice.one_puddle
    )
    new = [stroke for stroke in strokes if not has_taught(box, mix, stroke)]
    if not own or doubted or spoiled or not new:
        return None
    paints = paints_for(box, mix)
    parts = np.array([count for _, count in mix.parts], float)
    model = Model(paints, parts, mix.load_ml, new, camera=READING)
    means = model.most_likely()
    misfit = (model.residuals(means[:1], np.zeros(1, int)) ** 2).sum() / len(new)
    if misfit > MOST_MISFIT:
        return None
    roots, _ = model.around(means)
    covariance = (roots[0] @ roots[0].T)[model.ways, model.ways]
    moved = means[0][model.ways]
    taught = tuple(taught_scrap(mix, stroke) for stroke in new)
    learned = {}
    for ways in paints.own:
        key = paints.keys[ways.paint]
        card = box.paint(key).card
        if ways.paint < paints.mixed and card is not None:
            learned[key] = _learned(card, ways, moved, covariance, taught)
    return Lesson(learned)


def taught_keys(lessons: Iterable[Lesson]) -> tuple[str, ...]:
    """The paints some lessons were about, each once."""
    return tuple(dict.fromkeys(key for lesson in lessons for key in lesson.paints))


def own_keys(box: Box, mix: Mix) -> tuple[str, ...]:
    """The paints of a mix that a card left something open of."""
    return tuple(
        key for key in mix.keys if (card := box.paint(key).card) is not None and card.directions
    )


def taught_scrap(mix: Mix, stroke: Stroke) -> TaughtScrap:
    """A stroke as a paint remembers it."""
    parts: dict[str, float] = {key: float(count) for key, count in mix.parts}
    for key, count in stroke.added.items():
        parts[key] = parts.get(key, 0.0) + count
    L, a, b = (round(value, 2) + 0.0 for value in stroke.Lab)
    return TaughtScrap(tuple(sorted(parts.items())), (L, a, b))


def has_taught(box: Box, mix: Mix, stroke: Stroke) -> bool:
    """Whether every own paint of a mix has learned from a stroke already."""
    scrap = taught_scrap(mix, stroke)
    cards = [box.paint(key).card for key in own_keys(box, mix)]
    return bool(cards) and all(card is not None and scrap in card.scraps for card in cards)


def with_lesson(box: Box, lesson: Lesson) -> Box:
    """The box with its paints as a scrap taught them."""
    paints = []
    for paint in box.paints:
        card = lesson.paints.get(paint.key)
        if card is not None:
            paint = replace(paint_of_card(paint.name, paint.measured_as, card), key=paint.key)
        paints.append(paint)
    return replace(box, paints=tuple(paints))


def _learned(
    card: CardPaint,
    ways: Ways,
    moved: Floats,
    covariance: Floats,
    taught: tuple[TaughtScrap, ...],
) -> CardPaint:
    theta = moved[ways.at] @ ways.directions
    half = len(card.K)
    K = np.array(card.K) * np.exp(theta[:half])
    S = np.array(card.S) * np.exp(theta[half:])
    root = ways.directions.T @ np.linalg.cholesky(covariance[ways.at, ways.at])
    directions, spread = posterior_directions(K, S, root)
    return replace(
        card,
        K=tuple(map(float, K)),
        S=tuple(map(float, S)),
        directions=directions,
        spread=spread,
        trust=trust_of(spread),
        scraps=(*card.scraps, *taught)[-MOST_TAUGHT:],
    )
