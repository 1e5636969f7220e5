"""What is said of a scrap, and the strokes held against a plan's bands."""

from __future__ import annotations

from pathlib import Path

import pytest

from core.paint.box.box import TWELVE_PAN
from core.paint.mixture.mix import make_mix
from core.paint.options import MixOptions
from core.paint.planned import MixPlan
from core.photo import open_photo
from core.pictures import Picture
from core.pipeline import plan_sky, propose_for, read_sky
from core.reading.wording import Wording
from core.scrap.held import Held, hold, nearest_band
from core.scrap.kept import ScrapEntry, added_now, same_puddle
from core.scrap.strokes import FoundStroke
from core.scrap.words import advice_sentences, against_sentence, amount_text, water_text

ROOT = Path(__file__).parents[3]
WHOLE = (0.0, 0.0, 1.0, 1.0)


@pytest.fixture(scope="module")
def plan() -> MixPlan:
    photo = open_photo(ROOT / "sample_scenes" / "dusk.jpg")
    sky = read_sky(photo, propose_for(photo))
    return plan_sky(sky, TWELVE_PAN, MixOptions())


def held_of(plan: MixPlan, letter: str, **factors: float) -> Held:
    chosen = plan.band(letter).classroom
    assert chosen is not None
    load = factors.pop("load", 1.0)
    parts = {key: round(40 * count * factors.pop(key, 1.0)) for key, count in chosen.mix.parts}
    parts |= {key: round(40 * count) for key, count in factors.items()}
    Lab = make_mix(TWELVE_PAN, parts, chosen.mix.load_ml * load).Lab
    (held,) = hold(plan, [(FoundStroke(WHOLE, Lab), letter)])
    return held


def said(held: Held) -> str:
    return " ".join(advice_sentences(held, TWELVE_PAN, Wording()))


def test_every_stroke_is_given_its_nearest_band(plan: MixPlan) -> None:
    for band in plan.bands:
        assert band.target is not None
        assert nearest_band(plan, FoundStroke(WHOLE, band.target.Lab)) == band.letter


def test_a_mix_as_planned_is_painted_with(plan: MixPlan) -> None:
    held = held_of(plan, "D")
    assert said(held) == "Paint band D with it."
    assert against_sentence("D", held.checks[0]) == (
        "It matches band D in hue, value and intensity."
    )


def test_too_strong_a_wash_is_told_darker_and_gets_water(plan: MixPlan) -> None:
    held = held_of(plan, "D", load=3.0)
    assert "darker by" in against_sentence("D", held.checks[0])
    assert "water" in said(held)


def test_a_spoiled_puddle_is_begun_again_and_the_paint_named(plan: MixPlan) -> None:
    text = said(held_of(plan, "D", prussian_blue=4.0, load=2.0))
    assert text.startswith("Begin again: nothing you can add brings this puddle to band D.")


def test_what_to_add_is_said_in_touches_and_parts() -> None:
    said = [amount_text(TWELVE_PAN, "sap_green", amount) for amount in (0.125, 0.25, 0.5, 1, 3)]
    assert said == [
        "the least touch of sap green",
        "a touch of sap green (a quarter of a part)",
        "two touches of sap green (half a part)",
        "1 part of sap green",
        "3 parts of sap green",
    ]


@pytest.mark.parametrize(
    ("thinning", "words"),
    [(1.2, ""), (0.9, ""), (0.7, "half as much water again"), (0.5, "as much water again"),
     (0.3, "more than as much water again")],
)  # fmt: skip
def test_water_is_said_by_the_glass(thinning: float, words: str) -> None:
    assert water_text(thinning) == words


def entry(
    added: tuple[tuple[str, float], ...], advised: tuple[tuple[str, float], ...] | None
) -> ScrapEntry:
    return ScrapEntry(
        Picture("scrap"), "B", (50.0, 0.0, 0.0), (("crimson", 2),), 0.01, added, advised
    )


def test_tries_of_one_puddle_add_up() -> None:
    first = entry((), (("crimson", 0.5),))
    second = entry((("crimson", 0.5),), (("ultramarine", 0.25), ("crimson", 1.0)))
    tries = same_puddle((first, second), "B", (("crimson", 2),))
    assert tries == (first, second)
    assert dict(added_now(tries)) == {"crimson": 1.5, "ultramarine": 0.25}


def test_another_mix_or_a_fresh_dish_is_another_puddle() -> None:
    first, spoiled = entry((), (("crimson", 0.5),)), entry((), None)
    assert same_puddle((first,), "B", (("crimson", 3),)) == ()
    assert same_puddle((first, spoiled), "B", (("crimson", 2),)) == ()
    assert same_puddle((spoiled, first), "B", (("crimson", 2),)) == (first,)
    grown = entry((("crimson", 0.5),), ())
    assert same_puddle((grown, first), "B", (("crimson", 2),)) == (first,)
