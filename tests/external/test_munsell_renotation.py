"""Munsell hue, value and chroma against the published renotation and against colour-science."""

from pathlib import Path

import numpy as np
import pytest

from core.colour import (
    XYZ_to_linear,
    hex_to_srgb,
    linear_to_srgb,
    munsell_value,
    munsell_Y,
    srgb_to_munsell,
)
from core.colour.adaptation import D65_TO_C

DATA = Path(__file__).parents[1] / "data"

# S. M. Newhall, D. Nickerson, D. B. Judd, 1943, "Final report of the O.S.A. subcommittee on the
# spacing of the Munsell colors", JOSA 33(7), table I: luminance factor of values 1 to 10 relative
# to magnesium oxide, as printed. ASTM D1535-08 takes 0.975 of it, relative to the perfect
# reflecting diffuser.
PUBLISHED_Y = {
    1: 1.210,
    2: 3.126,
    3: 6.555,
    4: 12.00,
    5: 19.77,
    6: 30.05,
    7: 43.06,
    8: 59.10,
    9: 78.66,
    10: 102.57,
}
HUE_LETTERS = ("R", "YR", "Y", "GY", "G", "BG", "B", "PB", "P", "RP")


def hue_error(hue, reference):
    return np.abs((hue - reference + 50) % 100 - 50)


@pytest.mark.parametrize("value", PUBLISHED_Y)
def test_value_of_the_published_luminance_factors(value):
    Y = min(PUBLISHED_Y[value] * 0.975, 100.0)
    # The formula's coefficients are rounded to five digits, the table to four.
    assert munsell_value(Y) == pytest.approx(value, abs=0.003)
    assert munsell_Y(value) == pytest.approx(Y, rel=1e-3)


def test_the_worked_example_of_the_formula_in_colour_science():
    """The example in the documentation of colour.colorimetry.luminance_ASTMD1535."""
    assert munsell_Y(4.08244375) == pytest.approx(12.23634268, abs=1e-7)
    assert munsell_value(12.23634268) == pytest.approx(4.08244375, abs=1e-7)


@pytest.fixture(scope="module")
def real_colours():
    """The renotation's real colours inside sRGB: (hue, value, chroma), encoded sRGB."""
    from colour.notation.datasets.munsell import MUNSELL_COLOURS_REAL

    rows, XYZ = [], []
    for (name, value, chroma), (x, y, _) in MUNSELL_COLOURS_REAL:
        digits = name.rstrip("RYGBP")
        rows.append((HUE_LETTERS.index(name[len(digits) :]) * 10 + float(digits), value, chroma))
        Y = float(munsell_Y(value)) / 100
        XYZ.append((x * Y / y, Y, (1 - x - y) * Y / y))
    linear = XYZ_to_linear(np.array(XYZ) @ np.linalg.inv(D65_TO_C).T)
    inside = ((linear >= 0) & (linear <= 1)).all(axis=1)
    return np.array(rows)[inside], linear_to_srgb(linear[inside])


def test_real_colours_of_the_renotation(real_colours):
    wanted, rgb = real_colours
    assert len(wanted) > 1500
    said = srgb_to_munsell(rgb)
    chromatic = wanted[:, 2] >= 2
    hue = hue_error(said[chromatic, 0], wanted[chromatic, 0])
    chroma = np.abs(said[:, 2] - wanted[:, 2])
    assert np.percentile(chroma, 99) <= 0.25
    assert np.percentile(hue, 99) <= 0.8
    assert np.abs(said[:, 1] - wanted[:, 1]).max() <= 0.1


def test_against_colour_sciences_own_inverse():
    """Colours between the renotation's, which another method inverted one by one.

    Both interpolate the same data, in different ways, so they agree only about as well as the
    data are smooth; weak chroma makes hue loose.
    """
    lines = (DATA / "munsell_by_colour_science.csv").read_text().splitlines()
    rows = [line.split(",") for line in lines if not line.startswith("# ")][1:]
    said = srgb_to_munsell(np.array([hex_to_srgb(row[0]) for row in rows]))
    hue, value, chroma = np.array([[float(x) for x in row[1:]] for row in rows]).T
    assert len(rows) == 60
    assert np.percentile(hue_error(said[:, 0], hue), 95) <= 0.5
    assert hue_error(said[:, 0], hue).max() <= 1.0
    assert np.abs(said[:, 1] - value).max() <= 0.1
    assert np.abs(said[:, 2] - chroma).max() <= 0.6
