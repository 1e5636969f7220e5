"""A band's second colour has a mix of its own, and is laid when transparent paint allows it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from core.colour import hex_to_srgb, srgb_to_Lab
from core.paint.box.box import DEFAULT_BOX
from core.paint.choice.second import plan_second
from core.paint.options import BandChoice, MixOptions
from core.paint.plan import plan_mixes
from core.paint.words.second import second_mix_text
from core.reading.reading import BandReading, SecondColour, read_colour

DARK, GLOW, WHITE, BLUE = "#4a4650", "#f0a050", "#fbfbf9", "#5080c0"


def colour(code: str):
    return read_colour(srgb_to_Lab(hex_to_srgb(code)))


def band(main: str, second: str | None, *, soft: bool = True) -> BandReading:
    one = colour(main)
    plain = BandReading("B", 0.0, 0.3, one, one, one, one, 1.0, False, 0.0, 1.0)
    if second is None:
        return plain
    return replace(plain, second=SecondColour(colour(second), 0.3, soft))


@pytest.mark.parametrize(
    ("main", "second", "soft", "way", "said"),
    [
        (GLOW, DARK, True, "dropped in wet", "Drop it in while"),
        (GLOW, DARK, False, "laid after drying", "Lay it once the main colour is dry"),
        (DARK, GLOW, True, "first, main dropped in wet", "lay it first"),
        (DARK, GLOW, False, "first, main after drying", "once it is dry"),
    ],
)
def test_a_lighter_colour_is_never_laid_over_a_darker_one(main, second, soft, way, said) -> None:
    """Transparent paint only darkens (common practice: light before dark)."""
    reading = band(main, second, soft=soft)
    found = plan_second(reading, DEFAULT_BOX, MixOptions())
    assert found.way == way
    assert found.planned.mix.parts
    text = second_mix_text(DEFAULT_BOX, "B", found)
    assert text.startswith("Second colour of B, ")
    assert said in text


def test_white_clouds_are_the_paper() -> None:
    found = plan_second(band(BLUE, WHITE), DEFAULT_BOX, MixOptions())
    assert found.planned.mix.parts == ()
    assert "the paper's own white. Leave it dry" in second_mix_text(DEFAULT_BOX, "B", found)


def test_paints_left_out_are_left_out_of_both() -> None:
    reading = band(DARK, GLOW)
    used = plan_second(reading, DEFAULT_BOX, MixOptions()).planned.mix.keys
    options = MixOptions().with_choice("B", BandChoice(forbidden=(used[0],)))
    assert used[0] not in plan_second(reading, DEFAULT_BOX, options).planned.mix.keys
    options = MixOptions(forbidden=(used[0],))
    assert used[0] not in plan_second(reading, DEFAULT_BOX, options).planned.mix.keys


def test_a_plan_holds_it_for_the_bands_that_have_one() -> None:
    plan = plan_mixes([band(DARK, GLOW), replace(band(BLUE, None), letter="C")], DEFAULT_BOX)
    cloudy, plain = plan.bands
    assert cloudy.second.target.share == 0.3
    assert plain.second is None
    # The main mix is what it would be without.
    alone = plan_mixes([band(DARK, None), replace(band(BLUE, None), letter="C")], DEFAULT_BOX)
    assert alone.bands[0].classroom == cloudy.classroom
