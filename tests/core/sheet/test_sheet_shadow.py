"""A shadow with a sharp edge across the sheet."""

from __future__ import annotations

import numpy as np
import pytest
from sheet_pictures import BOX, PAINT, photo_from, plain_reference, sheet_picture
from simulator.measure import keys

from core.colour import srgb8_to_linear
from core.sheet import check_sheet
from core.sheet.light.soft_shadow import is_soft_shadow
from core.sheet.result import SheetOptions

LEFT, TOP, RIGHT, BOTTOM = BOX
Y, X = np.mgrid[0:480, 0:640]


def checked(shade, *, share=0.4):
    """The plain sheet with `shade` (480, 640) of it in a shadow that leaves `share`."""
    picture = sheet_picture() * (1 - (1 - share) * shade)[..., None]
    corners = tuple(
        (x / 640, y / 480) for x, y in ((LEFT, TOP), (RIGHT, TOP), (RIGHT, BOTTOM), (LEFT, BOTTOM))
    )
    return check_sheet(photo_from(picture), plain_reference(), SheetOptions(corners=corners))


def band_medians(check):
    linear = srgb8_to_linear(check.picture)
    h = len(linear)
    rows = ((k / 3 + 0.06, (k + 1) / 3 - 0.06) for k in range(3))
    return [np.median(linear[int(a * h) : int(b * h)].reshape(-1, 3), axis=0) for a, b in rows]


@pytest.mark.parametrize(
    "shade",
    [
        (X > 300) & (Y < 300 + 0.2 * (X - 300)),
        X + 0.3 * Y > 430,
        Y > 250 - 0.15 * (X - 300),
    ],
    ids=["a phone's corner", "slanting", "along a band"],
)
def test_colours_come_through_a_sharp_shadow(shade):
    check = checked(shade.astype(float))
    assert "shadow" in keys(check)
    for found, true in zip(band_medians(check), PAINT, strict=True):
        assert found == pytest.approx(true, rel=0.05, abs=0.015)


def test_a_darker_band_is_not_taken_for_shadow():
    check = checked(np.zeros((480, 640)))
    assert "shadow" not in keys(check)
    for found, true in zip(band_medians(check), PAINT, strict=True):
        assert found == pytest.approx(true, rel=0.05, abs=0.015)


def test_a_soft_shadow_is_said_and_left_alone():
    # Its edge is nowhere, so nothing sharp may be cut into the picture.
    soft = 1 / (1 + np.exp(-(X - 310) / 40))
    check = checked(soft)
    assert "shadow" in keys(check)
    linear = srgb8_to_linear(check.picture).astype(float)
    row = np.log(np.median(linear[20:180], axis=0).mean(axis=1))
    assert np.abs(np.diff(row[5:-5])).max() < 0.05


@pytest.mark.parametrize("angle", [20, 110, 200, 290])
@pytest.mark.parametrize("soft", [0.05, 0.12, 0.2])
def test_a_soft_step_of_light_is_told_from_paper_s_unevenness(angle, soft):
    """Stretches of a border in a light that falls off and on paper that cockles, with and without
    a shadow that takes a quarter of the light."""
    rng = np.random.default_rng([angle, round(100 * soft)])
    run = np.linspace(-0.95, 0.95, 16)
    places = np.concatenate(
        [np.stack([run, np.full(16, y)], -1) for y in (-1.05, 1.05)]
        + [np.stack([np.full(16, x), run], -1) for x in (-1.05, 1.05)]
    )
    x, y = places.T
    terms = np.stack([np.ones_like(x), x, y, x * x, x * y, y * y], -1)
    paper = 0.2 * x - 0.1 * y * y + 0.012 * rng.standard_normal(64)
    paper += 0.02 * np.sin(5 * x + rng.uniform(0, 6)) * np.cos(4 * y + rng.uniform(0, 6))
    across = x * np.cos(np.radians(angle)) + y * np.sin(np.radians(angle))
    shade = np.log(0.75) / (1 + np.exp(-(across - 0.1) / soft))
    assert is_soft_shadow(places, paper + shade, terms, 1.3)
    assert not is_soft_shadow(places, paper, terms, 1.3)
