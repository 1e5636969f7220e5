"""Facts of the trade, from the fitted paints; beside each: measured, or common practice.

"Measured" means the dataset itself (arXiv:1904.00275) holds samples that show it; "model" that
the fitted film says so of mixtures nobody measured (three paints, or other amounts).
"""

import numpy as np
import pytest

from core.colour import Lab_to_LCh
from core.paint.pigment.measured import load_Lab, measured_paints, parts_to_tint_white


def LCh(**load_ml):
    data = measured_paints()
    vector = np.zeros(len(data.keys))
    for key, load in load_ml.items():
        vector[data.index(key)] += load
    return Lab_to_LCh(load_Lab(vector))


def toned(base, toner, share, total=0.02):
    """A mix whose paint is `toner` by `share`, the base by the rest."""
    loads = {key: part * total * (1 - share) for key, part in base.items()}
    for key, part in toner.items():
        loads[key] = loads.get(key, 0) + part * total * share
    return LCh(**loads)


ORANGE = {"cadmium_red": 0.5, "cadmium_yellow": 0.5}
BLUE_GREEN = {"cerulean_blue": 0.5, "sap_green": 0.5}


def test_prussian_tints_far_more_strongly_than_cobalt():
    """Measured: 1:2 in white is L 30 with prussian, 51 with cobalt; model: parts to L 60."""
    prussian, cobalt = parts_to_tint_white("prussian_blue"), parts_to_tint_white("cobalt_blue")
    assert prussian == pytest.approx(0.040, abs=0.006)
    assert cobalt == pytest.approx(0.165, abs=0.02)


def test_ultramarine_is_darker_and_more_violet_than_cobalt():
    """Measured at 0.01 mL: L 28 h 302 against L 37 h 294; the model draws the hues nearer."""
    ultramarine, cobalt = LCh(ultramarine=0.01), LCh(cobalt_blue=0.01)
    assert ultramarine[0] < cobalt[0] - 3
    assert ultramarine[2] > cobalt[2] + 4


def test_a_tenth_of_blue_green_dulls_an_orange_and_hardly_turns_it():
    """Model. Common practice: a speck of the complement takes intensity, not hue."""
    plain, dulled = toned(ORANGE, BLUE_GREEN, 0.0), toned(ORANGE, BLUE_GREEN, 0.1)
    assert 1 - dulled[1] / plain[1] == pytest.approx(0.45, abs=0.06)
    assert 0 < dulled[2] - plain[2] < 8
    assert dulled[0] < plain[0]


def test_green_from_the_box_does_nearly_as_well():
    """Model. Common practice: a bought green stands in for the true complement blue-green."""
    plain = toned(ORANGE, {"sap_green": 1}, 0.0)
    true, boxed = toned(ORANGE, BLUE_GREEN, 0.1), toned(ORANGE, {"sap_green": 1}, 0.1)
    assert abs(true[1] - boxed[1]) / plain[1] < 0.07
    assert boxed[2] - plain[2] < 10


def test_lemon_and_cerulean_give_the_cleanest_green():
    """Measured at 2:1: C 54 with cerulean, 25 with cobalt, 20 with ultramarine, 8 prussian."""
    chroma = {
        blue: LCh(lemon_yellow=0.02, **{blue: 0.01})[1]
        for blue in ("cerulean_blue", "cobalt_blue", "ultramarine", "prussian_blue")
    }
    assert chroma["cerulean_blue"] > 1.8 * chroma["cobalt_blue"]
    assert chroma["cobalt_blue"] > chroma["ultramarine"] > chroma["prussian_blue"]


def test_lemon_and_cobalt_in_equal_parts_are_a_dull_blue_green():
    """Measured: h 203, C 15."""
    _, C, h = LCh(lemon_yellow=0.01, cobalt_blue=0.01)
    assert 170 < h < 225
    assert C < 26


@pytest.mark.parametrize(("share", "left"), [(0.05, 0.65), (0.20, 0.30)])
def test_red_orange_kills_cobalt_fast(share, left):
    """Model, cadmium red (measured at a third: C 11 of 60): 5% takes 35%, 20% takes 70%."""
    plain = toned({"cobalt_blue": 1}, {"cadmium_red": 1}, 0.0)
    dulled = toned({"cobalt_blue": 1}, {"cadmium_red": 1}, share)
    assert dulled[1] / plain[1] == pytest.approx(left, abs=0.07)


def test_cadmium_yellow_turns_lemon_as_it_thins():
    """Measured down to 0.01 mL; thinner is the model's extrapolation, a known limit."""
    assert LCh(cadmium_yellow=0.0005)[2] > LCh(cadmium_yellow=0.04)[2] + 15
