"""What cards say: the order of work in few steps, cautions together, codes and never names."""

from __future__ import annotations

import pytest
from paint_tools import sky

import sample_scenes
from core.cards import words
from core.paint.box.box import THIRTEEN, TWELVE_PAN
from core.paint.box.cautions import cautions_for
from core.paint.mixture.mix import bare_paper, make_mix
from core.paint.plan import plan_mixes
from core.paint.wash.amounts import SHEETS
from core.paint.wash.order import order_of_work
from core.paint.words.fit import reach_short_text
from core.pictures import Picture
from core.reading.reading import read_colour
from core.reading.wording import Wording
from core.scrap.kept import ScrapEntry


def orders(*parts: dict[str, int], load: float = 0.02):
    mixes = [make_mix(THIRTEEN, one, load) for one in parts]
    return order_of_work("ABCDEFG"[: len(mixes)], mixes)


def test_laying_is_one_step_with_its_rinses() -> None:
    order = orders({"ultramarine": 1}, {"cadmium_yellow": 1}, {"ultramarine": 1})
    lines = words.order_lines(order, SHEETS["A4"])
    (laying,) = [line for line in lines if line.startswith("Lay ")]
    rinses = [step for step in order.steps if step.stage == "rinse"]
    assert laying.count("rinse") == len(rinses) > 0
    assert laying.endswith(".")
    # Every band is laid, and drying and peeling are one step.
    assert all(letter in laying for letter in "ABC")
    assert sum("Peel" in line for line in lines) == 1
    assert "still cool" in next(line for line in lines if "Peel" in line)


def test_one_band_runs_into_nothing() -> None:
    lines = words.order_lines(orders({"ultramarine": 1}), SHEETS["A4"])
    assert "Lay A." in lines
    assert not any("runs into" in line for line in lines)


def test_paints_with_the_same_label_share_a_caution() -> None:
    used = ["cadmium_red", "cadmium_yellow", "cobalt_blue", "burnt_sienna"]
    first, second = words.caution_lines(THIRTEEN, cautions_for(THIRTEEN, used))
    assert first.startswith("Cadmium ")
    assert " and cadmium " in first
    assert "your school's rules come first" in first
    assert second.startswith("Cobalt blue: The label of this paint")
    assert words.caution_lines(THIRTEEN, ()) == ()
    assert "safe" not in (first + second).lower()


@pytest.mark.parametrize(
    ("Lab", "pieces"),
    [
        ((45.0, 17.0, -42.0), ("blue-violet, tertiary", "value 4.4, dark; intense")),
        ((60.0, 0.0, 0.0), ("neutral grey", "value 5.9, middle")),
    ],
)
def test_the_readout_of_a_band(Lab, pieces) -> None:
    colour = read_colour(Lab)
    hue, near = words.hue_pieces(colour, Wording())
    assert hue == pieces[0]
    assert near == "" or near.startswith(", near ")
    assert words.scale_piece(colour, Wording()) == pieces[1]
    assert f"value {5.6 if pieces[0].startswith('blue') else 4.1}" in words.value_piece(
        colour, Wording(white_is=0)
    )


def test_bare_paper_is_laid_like_any_band() -> None:
    order = order_of_work("AB", [make_mix(THIRTEEN, {"ultramarine": 1}, 0.02), bare_paper()])
    assert any("Lay" in line for line in words.order_lines(order, SHEETS["A4"]))


@pytest.mark.parametrize(
    "keys",
    [
        ("ultramarine", "crimson"),
        ("ultramarine",),
        ("lemon_yellow", "mid_yellow"),
        ("warm_red", "crimson"),
        ("prussian_blue", "cerulean_blue"),
        ("burnt_sienna", "yellow_ochre", "sap_green"),
        ("black", "white"),
    ],
)
def test_a_card_says_of_any_small_box_how_near_it_comes(keys) -> None:
    """Ultramarine and crimson on three of the scenes once ended in a KeyError: "too dull"."""
    box = TWELVE_PAN.only(keys)
    seen = set()
    for name in sample_scenes.names():
        for band in plan_mixes(sky(name), box).bands:
            assert band.classroom is not None
            text = words.nearness_text(band.classroom, band)
            assert text
            seen.add(band.reach)
            if band.reach == "lacks":
                assert "in this box" in text
            elif band.reach != "reached":
                assert text == reach_short_text(band.reach)
    assert len(seen) > 1, "these boxes are too small for every sky"


def test_the_plan_says_what_its_scrap_came_to_and_nothing_of_another_mix() -> None:
    plan = plan_mixes(sky("dusk"), TWELVE_PAN)
    band = plan.bands[0]
    assert band.classroom is not None
    assert band.target is not None
    parts, Lab = band.classroom.mix.parts, band.target.Lab
    far = (Lab[0] - 25, Lab[1] + 20, Lab[2])
    picture = Picture("scrap.jpg")

    def kept(Lab, parts=parts, added=()):
        return ScrapEntry(picture, band.letter, Lab, parts, 0.01, added)

    assert words.tried_text((), band) == ""
    assert words.tried_text((kept(far),), band) == "On a scrap: off"
    both = (kept(far), kept(Lab, added=(("crimson", 0.5),)))
    assert words.tried_text(both, band) == "On a scrap: matches at try 2"
    assert words.tried_text((kept(Lab, parts=(("burnt_sienna", 7),)),), band) == ""
