from __future__ import annotations

import numpy as np
import pytest

from core.colour import delta_E_76, hex_to_srgb, srgb_to_Lab
from core.paint.mixture.mix import bare_paper
from core.paint.mixture.swatch import drawn_out, hex_of_Lab, hexes_of_Lab, paint_colour
from core.paint.pigment.catalogue import CATALOGUE
from core.paint.pigment.measured import measured_paints, paper_Lab


@pytest.mark.parametrize("key", measured_paints().keys)
def test_a_swatch_runs_from_strong_to_nearly_paper(key: str) -> None:
    Lab = np.array([srgb_to_Lab(hex_to_srgb(colour)) for colour in drawn_out(CATALOGUE[key])])
    from_paper = delta_E_76(Lab, np.array(paper_Lab()))
    assert from_paper[-1] < 6
    if key != "chinese_white":  # it hardly differs from paper
        assert from_paper[0] > 60
        assert from_paper[-1] == from_paper.min()
    if "yellow" not in key and key != "chinese_white":  # yellows are hardly darker than paper
        assert (np.diff(Lab[:, 0]) > -0.5).all()


def test_no_two_coloured_paints_look_the_same_on_a_bar() -> None:
    colours = [paint_colour(CATALOGUE[key]) for key in measured_paints().keys]
    assert len(set(colours)) == len(colours)


def test_a_bar_shows_a_paints_own_hue() -> None:
    b = srgb_to_Lab(hex_to_srgb(paint_colour(CATALOGUE["ultramarine"])))[2]
    assert b < -25
    b = srgb_to_Lab(hex_to_srgb(paint_colour(CATALOGUE["cadmium_yellow"])))[2]
    assert b > 50


def test_hex_of_paper() -> None:
    assert hex_of_Lab(paper_Lab()) == bare_paper().colour.hex
    path = (paper_Lab(), (50.0, 10.0, -20.0), (20.0, 0.0, 0.0))
    assert hexes_of_Lab(path) == tuple(hex_of_Lab(Lab) for Lab in path)
    assert hexes_of_Lab(()) == ()
