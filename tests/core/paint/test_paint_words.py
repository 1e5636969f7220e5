"""Plans in words: every text of every plan is a sentence a teacher could have written."""

from __future__ import annotations

import re

import numpy as np
import pytest
from paint_tools import bands, colour, lab, sky_plan

import sample_scenes
from core.paint.box.box import SPLIT_PRIMARY, THIRTEEN, TWELVE_PAN
from core.paint.choice.describe import describe, oddities
from core.paint.mixture.mix import make_mix, mix_of_known_colour
from core.paint.plan import plan_mixes
from core.paint.planned import Alternative
from core.paint.reasons import Reason
from core.paint.toning.toners import compare_toners
from core.paint.words.mix import (
    alternative_text,
    closest_text,
    mix_text,
    reach_text,
    shortfall_text,
    why_text,
)
from core.paint.words.plan import (
    amounts_note,
    caution_text,
    kind_text,
    ladder_text,
    meeting_text,
    order_texts,
    stand_ins_text,
    strengths_text,
    water_text,
)
from core.paint.words.tone import toners_text
from core.reading.reading import read_colour
from core.words.lists import listed, sentence_case
from core.words.verdicts import verdict_word

ODD = [lab(99, 0, 0), lab(3, 0, 0), colour("#ff2fd0"), colour("#00ff40"), lab(50, 0, 0)]


def mix(**parts):
    return make_mix(TWELVE_PAN, parts, 0.001)


def plans():
    for box in (TWELVE_PAN, SPLIT_PRIMARY, THIRTEEN):
        for name in sample_scenes.names():
            yield sky_plan(name, box)
        yield plan_mixes(bands(ODD), box)


def sentences(plan):
    box = plan.box
    letters = [band.letter for band in plan.bands]
    for band, below in zip(plan.bands, [*letters[1:], ""], strict=True):
        chosen = band.classroom
        yield sentence_case(mix_text(box, chosen)) + "."
        yield why_text(box, chosen)
        yield reach_text(band.reach)
        if band.closest is not None:
            yield closest_text(box, band.closest)
        for item in band.alternatives:
            yield alternative_text(box, chosen, item)
        if band.tone_down is not None:
            yield ladder_text(box, band.tone_down, band.letter)
            yield toners_text(box, compare_toners(box, band.tone_down))
        if band.meets_below is not None:
            yield meeting_text(band.letter, below, band.meets_below)
    yield kind_text(plan.order)
    yield from order_texts(plan.order, plan.sheet)
    yield amounts_note(plan.amounts)
    yield water_text(plan.amounts)
    yield strengths_text(band.classroom.strength for band in plan.bands)
    yield stand_ins_text(box)
    for caution in plan.cautions:
        yield caution_text(box, caution)


@pytest.fixture(scope="module")
def texts():
    return [text for plan in plans() for text in sentences(plan) if text]


def test_there_are_many(texts):
    assert len(texts) > 400


@pytest.mark.parametrize(
    "pattern",
    [
        r"^[a-z]",  # a sentence begins with a capital
        r"[^.]$",  # and ends with a full stop
        r"  | ,| \.|\.\.|,,|::",
        r"[{}%_]|None",
        r"\ba [aeiou]",
        r"(?i)\bsafe\b|non-toxic",
        r"(?i)\bwrong\b",
        r"\b1 parts\b|\b1 loads\b",
        r"\b(\w+) \1\b",  # a word twice
        r"[:,;] *\.",
    ],
)
def test_no_text_reads_badly(texts, pattern):
    assert [text for text in texts if re.search(pattern, text)] == []


def test_texts_are_short(texts):
    assert max(len(text) for text in texts) <= 260


def test_lists():
    assert [listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"])] == [
        "a",
        "a and b",
        "a, b and c",
    ]
    assert listed([]) == ""
    assert sentence_case("") == ""


def test_alternatives_say_why():
    target = colour("#e19b94")
    chosen = describe(TWELVE_PAN, target, "by hand", mix(warm_red=2, crimson=1))
    other = describe(TWELVE_PAN, target, "classroom", mix(warm_red=2, cerulean_blue=1))

    def text(prefer, *reasons):
        return alternative_text(TWELVE_PAN, chosen, Alternative(other, prefer, reasons))

    fewer, grains = Reason("fewer paints"), Reason("granulates", ("cerulean_blue",))
    assert text(True, fewer).endswith(": fewer paints.")
    assert text(True, fewer, grains).endswith(": fewer paints, but cerulean blue dries grainy.")
    touchy = Reason("one part too many", ("cerulean_blue",))
    dark, violet = Reason("too dark"), Reason("too hue", (), "violet")
    assert text(False, dark, violet) == (
        "With cerulean blue instead, the mix turns out too dark and too violet."
    )
    assert text(False, touchy).endswith("one part too many and it is too strong.")
    assert "turns out too dark, and one part too many" in text(False, dark, touchy)


def test_what_falls_short_is_said_beside_the_verdict():
    planned = sky_plan("dusk").band("A").classroom
    assert verdict_word(planned.verdict) == "Close"
    assert shortfall_text(planned).endswith("than the photo")
    assert shortfall_text(sky_plan("dusk").band("D").classroom) == ""


@pytest.mark.parametrize(
    ("parts", "steerable", "says"),
    [
        ({"crimson": 1, "black": 1}, False, "but black deadens a sky."),
        ({"crimson": 1, "white": 1}, False, "but white makes a wash chalky."),
        ({"crimson": 3, "sap_green": 2}, False, "but it is harder to steer."),
        ({"crimson": 3, "sap_green": 2}, True, ""),
        (
            {"ultramarine": 5, "prussian_blue": 1},
            True,
            "but one drop too much prussian blue shows.",
        ),
        ({"ultramarine": 1, "prussian_blue": 1}, True, "prussian blue stains strongly."),
        ({"ultramarine": 7, "crimson": 2}, True, "it has many parts to count."),
    ],
)
def test_a_closest_mix_says_what_is_odd(parts, steerable, says):
    found = mix(**parts)
    why = oddities(TWELVE_PAN, found, steerable)
    text = closest_text(TWELVE_PAN, describe(TWELVE_PAN, ODD[4], "closest", found, why=why))
    assert text.startswith("Closer: ")
    assert (says in text) if says else (", but" not in text)


@pytest.mark.parametrize("L", [45.0, 65.0, 85.0])
@pytest.mark.parametrize(
    ("step", "word"),
    [
        ((-4.0, 0.6), "greener"),
        ((4.2, 1.0), "redder"),
        ((-0.6, -4.4), "bluer"),
        ((0.2, 5.2), "yellower"),
    ],
)
@pytest.mark.parametrize("start", [(0.0, 0.0), (0.9, -0.8), (-1.0, 1.2)])
def test_a_grey_that_leans_is_said_to_lean(
    L: float, step: tuple[float, float], word: str, start: tuple[float, float]
) -> None:
    """Not "a little more intense": the hue a near neutral goes towards is what is seen.

    The directions of red, yellow, green and blue in CIELAB: ISO/CIE 11664-4, a* redness against
    greenness and b* yellowness against blueness.
    """
    band = read_colour((L, *start))
    lab = (L, start[0] + step[0], start[1] + step[1])
    mix = mix_of_known_colour(TWELVE_PAN, {"ultramarine": 1}, 0.01, lab)
    described = describe(TWELVE_PAN, band, "teacher", mix)
    assert described.verdict != "matches"
    assert word in shortfall_text(described)
    assert "intense" not in shortfall_text(described)


def test_no_intensity_is_named_that_is_not_seen() -> None:
    """Over near neutrals and small differences: less than half a step of chroma is no fault."""
    rng = np.random.default_rng(7)
    named = seen = 0
    for _ in range(400):
        L, C, h = rng.uniform(35, 92), rng.uniform(0, 6), rng.uniform(0, 2 * np.pi)
        band = read_colour((L, C * np.cos(h), C * np.sin(h)))
        step = rng.normal(0, 1, 3)
        lab = tuple((np.array(band.Lab) + step * (5.0 / np.linalg.norm(step))).tolist())
        mix = mix_of_known_colour(TWELVE_PAN, {"ultramarine": 1}, 0.01, lab)
        described = describe(TWELVE_PAN, band, "teacher", mix)
        if abs(described.falls_short.chroma) < 0.5 and described.verdict != "matches":
            seen += 1
            named += bool({"too dull", "too intense"} & set(described.faults))
    assert seen > 50
    assert named <= 0.01 * seen
