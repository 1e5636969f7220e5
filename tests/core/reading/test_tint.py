"""Pale against dull: what a clean wash can have of intensity, against paints and standard names."""

from __future__ import annotations

import csv
from itertools import combinations
from pathlib import Path

import numpy as np
import pytest

from core.colour import hex_to_srgb, srgb_to_Lab
from core.colour.munsell import Lab_to_munsell
from core.paint.pigment.measured import load_Lab, measured_paints
from core.reading.reading import read_colours
from core.reading.tint import CHROMA_PER_STEP, clean_chroma, is_pale
from core.reading.wheel import FAMILIES, family_of

FILE = Path(__file__).parents[2] / "data" / "iscc_nbs_centroids.csv"
MIXTURES = ("chinese_white", "ivory_black", "burnt_sienna", "raw_sienna", "sap_green")
"""Measured paints that are no clean hues."""


@pytest.fixture(scope="module")
def washes():
    """Munsell hue, value and chroma of thin washes of clean paints, single and in pairs."""
    data = measured_paints()
    clean = [number for number, key in enumerate(data.keys) if key not in MIXTURES]
    loads = np.geomspace(1e-5, 0.01, 50)
    shares = []
    for one, other in combinations(clean, 2):
        for share in np.linspace(0, 1, 9):
            row = np.zeros(len(data.keys))
            row[one], row[other] = share, 1 - share
            shares.append(row)
    thin = np.array(shares)[:, None] * loads[:, None]
    return Lab_to_munsell(load_Lab(thin.reshape(-1, len(data.keys))))


EARLY = ("yellow", "yellow-orange", "yellow-green")
"""They reach their full colour while still light: another test judges them."""


@pytest.mark.parametrize("family", [family for family in FAMILIES if family not in EARLY])
def test_a_clean_wash_is_what_the_paints_give(washes, family):
    """Within a fifth: another box gives other washes."""
    hue, value, chroma = washes.T
    ours = np.array([family_of(h) == family for h in hue])
    for level in (8.0, 8.5, 9.0):
        found = np.percentile(chroma[ours & (np.abs(value - level) < 0.1)], 90)
        ours_says = clean_chroma(float(np.median(hue[ours])), level)
        assert ours_says == pytest.approx(found, rel=0.2)


def test_yellow_is_intense_while_it_is_still_light(washes):
    hue, value, chroma = washes.T
    yellow = np.array([family_of(h) == "yellow" for h in hue]) & (np.abs(value - 8.5) < 0.1)
    assert np.percentile(chroma[yellow], 90) > 8
    assert set(CHROMA_PER_STEP) == set(FAMILIES)
    assert CHROMA_PER_STEP["yellow"] == max(CHROMA_PER_STEP.values())


def test_pale_agrees_with_the_standard_names():
    """ISCC-NBS: "grayish" names are greyed; "very light" and "brilliant" ones are clean.

    Kelly and Judd, 1976, NBS Special Publication 440; the centroids' screen colours.
    """
    lines = FILE.read_text().splitlines()
    rows = list(csv.DictReader(line for line in lines if not line.startswith("# ")))
    colours = read_colours(srgb_to_Lab(np.array([hex_to_srgb(row["srgb"]) for row in rows])))
    named = [(row["name"].split(",")[0].lower(), c) for row, c in zip(rows, colours, strict=True)]
    greyed = [colour.pale for name, colour in named if "grayish" in name]
    assert len(greyed) > 20
    assert np.mean(greyed) < 0.1
    clean = [
        is_pale(colour.munsell.hue, colour.munsell.value, colour.munsell.chroma)
        for name, colour in named
        if name.startswith(("very light", "brilliant")) and colour.munsell.value >= 7
    ]
    assert len(clean) > 8
    assert np.mean(clean) > 0.8
    for _, colour in named:
        assert not (colour.pale and colour.intensity_word in ("moderate", "intense"))


def test_what_is_thin_and_what_is_greyed():
    assert not is_pale(75.0, 5.0, 12.0)
    assert not is_pale(None, 9.0, 0.0)
    assert is_pale(75.0, 8.8, 2.5)
    assert not is_pale(75.0, 8.0, 1.6)
