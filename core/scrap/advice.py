"""What to do with a puddle: leave it, thin it, add to it, or begin again."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np

from core.colour import delta_E_2000
from core.paint.box.box import Box
from core.paint.mixture.mix import Mix, Triple
from core.scrap.additions import Judged, as_it_is, judge_additions
from core.scrap.model import Stroke
from core.scrap.paints import FILM_ERROR, paints_for
from core.scrap.puddle import Puddle, estimate

Deed = Literal["serves", "water", "stronger", "add", "begin again"]
"""What to do: nothing; thin it; paint it stronger; add paints; give it up."""

BEYOND = 4.0
"""Expected CIEDE2000 after the best addition from which a fresh mix is nearer: below 5, so that of
the puddles nothing brings within 5 few are mended in vain (benchmarks/scrap.py)."""

SEEN = 0.7
"""Expected CIEDE2000 up to which nobody sees what an addition would gain; this, too, grows with the
film's error: of what is not known nothing can be mended."""

WORTH = 0.2
"""Expected CIEDE2000 an addition has to gain, likewise."""

NAMED_FROM = 0.55
"""Chance from which the paint that got in is named."""

ALIKE = 0.3
"""Expected CIEDE2000 within which two additions cannot be told apart, with paints that were
measured; with others it grows with the film's error."""

SERVES_BAND_WITHIN = 4.0

ONE_PUDDLE = 12.0
"""`Puddle.misfit` from which strokes are not taken for one puddle's: chi square of three readings
is above 11.3 once in a hundred."""

_THIN, _THICK = 0.75, 1.4


@dataclass(frozen=True)
class Addition:
    """What is added to a puddle.

    Attributes
    ----------
    parts : tuple of (paint key, parts)
        The larger first; quarters and eighths of a part are touches.
    Lab : tuple of 3 floats
        The colour that should come, dry, at its best thinning.
    delta_E_2000 : float
        How far from the band that is expected to be.
    thinning : float
        Strength of the next stroke as a share of the last one's: below 1 takes water.
    """

    parts: tuple[tuple[str, float], ...]
    Lab: Triple
    delta_E_2000: float
    thinning: float


@dataclass(frozen=True)
class Advice:
    """What to do with a puddle.

    Attributes
    ----------
    deed : Deed
    addition : Addition
        What to add; of nothing at all where nothing is added. Where the advice is to begin again,
        the best there is.
    other : Addition or None
        Another that cannot be told apart from it beforehand: the first is then to be tried first.
    as_it_is : Addition
        The puddle at its best thinning with nothing added.
    delta_E_2000 : float
        How far the last stroke is from the band.
    got_in : str or None
        A paint that seems to have got in.
    got_in_chance : float
        Chance that it did, 0..1.
    serves : str or None
        Of a puddle to be given up: the letter of the band it would serve as it is.
    one_puddle : bool
        Whether the strokes agree with one puddle.
    """

    deed: Deed
    addition: Addition
    other: Addition | None
    as_it_is: Addition
    delta_E_2000: float
    got_in: str | None
    got_in_chance: float
    serves: str | None
    one_puddle: bool = True


def advise(
    box: Box,
    mix: Mix,
    target_Lab: Triple,
    strokes: Sequence[Stroke],
    other_bands: Mapping[str, Triple] | None = None,
) -> Advice:
    """What to do with the puddle of a mix, by the dried strokes painted of it.

    Parameters
    ----------
    box : Box
    mix : Mix
        As planned.
    target_Lab : tuple of 3 floats
        The band's colour.
    strokes : sequence of Stroke
        All of one puddle, in the order painted: several, or of several tries.
    other_bands : mapping of letter to Lab, optional
        The bands a puddle that is given up might serve.

    Raises
    ------
    ValueError
        The mix is bare paper, or there is no stroke.
    """
    paints = paints_for(box, mix)
    puddle = estimate(paints, [count for _, count in mix.parts], mix.load_ml, strokes)
    target = np.array(target_Lab)
    judged = judge_additions(puddle, target)
    best = int(judged.price.argmin())
    doubt = paints.error / FILM_ERROR
    gain = float(judged.expected[0] - judged.expected[best])
    if judged.expected[0] <= SEEN * doubt or gain < WORTH * doubt:
        best = 0
    load = float(np.exp(puddle.weight @ np.log(puddle.load_ml)))
    chosen, none = _addition(puddle, judged, best, load), _addition(puddle, judged, 0, load)
    got_in, chance = _intruder(puddle)
    begin = _beyond(puddle, judged)
    if begin:
        deed: Deed = "begin again"
    elif best:
        deed = "add"
    elif none.thinning < _THIN:
        deed = "water"
    elif none.thinning > _THICK:
        deed = "stronger"
    else:
        deed = "serves"
    other = None
    if deed == "add":
        rival = _rival(judged, best, ALIKE * doubt)
        other = None if rival is None else _addition(puddle, judged, rival, load)
    return Advice(
        deed=deed,
        addition=chosen,
        other=other,
        as_it_is=none,
        delta_E_2000=float(delta_E_2000(strokes[-1].Lab, target)),
        got_in=got_in,
        got_in_chance=chance,
        serves=_served(puddle, other_bands or {}) if begin else None,
        one_puddle=puddle.misfit <= ONE_PUDDLE,
    )


def _beyond(puddle: Puddle, judged: Judged) -> bool:
    return bool(judged.expected.min() > BEYOND)


def _addition(puddle: Puddle, judged: Judged, row: int, load: float) -> Addition:
    added = judged.added[row]
    order = np.argsort(-added, kind="stable")
    parts = tuple((puddle.paints.keys[i], float(added[i])) for i in order if added[i] > 0)
    L, a, b = (puddle.weight @ judged.Lab[row]).tolist()
    thinned = float(np.exp(puddle.weight @ np.log(judged.load_ml[row])))
    return Addition(parts, (L, a, b), float(judged.expected[row]), thinned / load)


def _intruder(puddle: Puddle) -> tuple[str | None, float]:
    likeliest = int(puddle.got_in.argmax())
    chance = float(puddle.got_in[likeliest])
    if chance < NAMED_FROM:
        return None, chance
    return puddle.paints.keys[likeliest], chance


def _rival(judged: Judged, best: int, alike: float) -> int | None:
    """An addition of other paints that does as well, as far as can be told."""
    chosen, main = judged.added[best] > 0, int(judged.added[best].argmax())
    for row in np.argsort(judged.price, kind="stable"):
        if judged.price[row] > judged.price[best] + alike:
            return None
        # Another touch beside the same paint is no other way.
        if row != 0 and not judged.added[row][main] and not chosen[judged.added[row].argmax()]:
            return int(row)
    return None


def _served(puddle: Puddle, bands: Mapping[str, Triple]) -> str | None:
    """The band a puddle serves as it is, best first."""
    off = {letter: as_it_is(puddle, np.array(Lab)) for letter, Lab in bands.items()}
    letter = min(off, key=lambda letter: off[letter], default=None)
    return letter if letter is not None and off[letter] <= SERVES_BAND_WITHIN else None
