"""Strokes held against the bands of a plan: which band each is for, how it differs, what to do."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from core.colour import delta_E_2000
from core.paint.box.box import Box
from core.paint.mixture.mix import Mix
from core.paint.planned import MixPlan
from core.reading.reading import BandReading, ColourReading, read_colour
from core.scrap.advice import Advice, advise
from core.scrap.kept import Parts
from core.scrap.model import Stroke
from core.scrap.strokes import FoundStroke
from core.scrap.teach import Lesson, lesson_of, with_lesson
from core.sheet.findings.compare import compare_bands
from core.sheet.result import BandCheck


@dataclass(frozen=True)
class Earlier:
    """What is known of a band's puddle from before.

    Attributes
    ----------
    strokes : tuple of Stroke
        Those kept of it, in the order painted.
    added : Parts
        What has been added to the planned mix since it was mixed.
    """

    strokes: tuple[Stroke, ...] = ()
    added: Parts = ()


@dataclass(frozen=True)
class Held:
    """The strokes of one band's puddle.

    Attributes
    ----------
    letter : str
    mix : Mix or None
        As planned; None where the band is left bare paper, or has no mix.
    target : ColourReading
        The band.
    strokes : tuple of FoundStroke
    checks : tuple of BandCheck
        Each stroke against the band, as a sheet is.
    advice : Advice or None
        None where there is no mix.
    added : Parts
        What had been added to the mix when the strokes were painted.
    lesson : Lesson or None
        What they would teach the box of its own paints, should the teacher say so.
    puddle : tuple of Stroke
        All strokes of the puddle, those kept before and these.
    """

    letter: str
    mix: Mix | None
    target: ColourReading
    strokes: tuple[FoundStroke, ...]
    checks: tuple[BandCheck, ...]
    advice: Advice | None
    added: Parts = ()
    lesson: Lesson | None = None
    puddle: tuple[Stroke, ...] = ()


def nearest_band(plan: MixPlan, stroke: FoundStroke) -> str | None:
    """The letter of the band a stroke comes nearest to; None where no band has a colour."""
    off = {
        band.letter: float(delta_E_2000(stroke.Lab, band.target.Lab))
        for band in plan.bands
        if band.target is not None
    }
    return min(off, key=lambda letter: off[letter], default=None)


def hold(
    plan: MixPlan,
    strokes: Sequence[tuple[FoundStroke, str]],
    earlier: Mapping[str, Earlier] | None = None,
) -> tuple[Held, ...]:
    """Hold strokes against their bands; those of one band come from one puddle.

    Parameters
    ----------
    plan : MixPlan
    strokes : sequence of (FoundStroke, letter)
    earlier : mapping of letter to Earlier, optional

    Returns
    -------
    tuple of Held
        In the order of the bands; a band without a colour is left out.

    Raises
    ------
    KeyError
        There is no such band.
    """
    known = earlier or {}
    bands = {letter: plan.band(letter) for _, letter in strokes}
    held = []
    for letter in sorted(bands):
        band, own = bands[letter], tuple(stroke for stroke, at in strokes if at == letter)
        if band.target is None:
            continue
        chosen = band.classroom
        mix = chosen.mix if chosen is not None and chosen.mix.parts else None
        before = known.get(letter, Earlier())
        checks = tuple(against(letter, band.target, stroke) for stroke in own)
        now = tuple(Stroke(stroke.Lab, dict(before.added)) for stroke in own)
        puddle, advice = (*before.strokes, *now), None
        if mix is not None:
            advice = advise(plan.box, mix, band.target.Lab, puddle, _others(plan, letter))
        one = Held(letter, mix, band.target, own, checks, advice, before.added, puddle=puddle)
        held.append(replace(one, lesson=_lesson(plan.box, one)))
    return tuple(held)


def teach_box(box: Box, held: Sequence[Held]) -> tuple[Box, tuple[Lesson, ...]]:
    """The box as strokes teach it, one band after the other, and what each taught."""
    lessons = []
    for one in held:
        lesson = _lesson(box, one)
        if lesson is not None:
            box = with_lesson(box, lesson)
            lessons.append(lesson)
    return box, tuple(lessons)


def _lesson(box: Box, held: Held) -> Lesson | None:
    if held.mix is None:
        return None
    return lesson_of(box, held.mix, held.puddle, held.strokes, held.advice)


def against(letter: str, target: ColourReading, stroke: FoundStroke) -> BandCheck:
    """A stroke against its band, by the rules of a sheet's check of a photo."""
    sure = not {"no paper", "over-exposed"} & set(stroke.doubts)
    wanted, found = _reading(letter, target), _reading(letter, read_colour(stroke.Lab))
    check, *_ = compare_bands((wanted,), (found,), scan=False, corrected=sure, sides=False)
    return check


def _reading(letter: str, colour: ColourReading) -> BandReading:
    return BandReading(letter, 0.0, 1.0, colour, None, None, None, 0.0, False, 0.0, 1.0)


def _others(plan: MixPlan, letter: str) -> dict[str, tuple[float, float, float]]:
    return {
        band.letter: band.target.Lab
        for band in plan.bands
        if band.letter != letter and band.target is not None
    }
