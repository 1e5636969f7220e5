"""How a sheet lies, and whether it shows the same sky."""

from __future__ import annotations

import numpy as np
import pytest
from sheet_pictures import PAINT, plain_reference
from simulator.camera import encode
from simulator.measure import reference_from

from core.colour.working_space import linear_to_W
from core.sheet.match.order import profile_of
from core.sheet.match.orientation import judge_orientation

BANDS = np.asarray(PAINT)
LINES = (1 / 3, 2 / 3)


def picture(bands, thin=None):
    """Three bands over paper white, linear; `thin` (240,) is how much paint is across."""
    linear = np.repeat(np.asarray(bands), 100, axis=0)[:, None] * np.ones((1, 240, 1))
    return linear if thin is None else linear ** np.asarray(thin)[None, :, None]


def lie(reference, linear, *, light_undone=True):
    W = linear_to_W(linear)
    return judge_orientation(reference, W, profile_of(W), light_undone)


def glowing(strength):
    """A sky that gets paler to the right, and its paint across."""
    thin = np.linspace(1 + strength, 1 - strength, 240)
    pixels = (encode(picture(BANDS, thin)) * 255 + 0.5).astype(np.uint8)
    return reference_from(pixels, LINES), thin


@pytest.mark.parametrize("strength", [0.15, 0.5])
def test_a_mirrored_sheet_is_noticed_and_a_straight_one_is_not(strength):
    reference, thin = glowing(strength)
    assert lie(reference, picture(BANDS, thin[::-1])).mirrored
    assert not lie(reference, picture(BANDS, thin)).mirrored


def test_a_sky_alike_on_both_sides_is_never_called_mirrored():
    sheet = picture(BANDS, np.linspace(0.8, 1.2, 240))
    assert not lie(plain_reference(), sheet).mirrored


def test_mirrored_is_not_said_where_the_light_was_not_undone():
    reference, thin = glowing(0.5)
    assert not lie(reference, picture(BANDS, thin[::-1]), light_undone=False).mirrored


@pytest.mark.parametrize("strength", [0.6, 1.5])
def test_a_sky_painted_too_pale_or_too_strong_is_the_same_sky(strength):
    assert not lie(plain_reference(), picture(BANDS**strength)).other_sky


def test_a_sky_of_other_hues_is_told_apart():
    # Green, pink and violet, each about as dark as the band it stands for.
    others = [(0.30, 0.55, 0.35), (0.90, 0.70, 0.75), (0.30, 0.25, 0.45)]
    assert lie(plain_reference(), picture(others)).other_sky


def test_one_band_off_is_no_other_sky():
    bands = BANDS.copy()
    bands[2] = (0.45, 0.25, 0.30)
    assert not lie(plain_reference(), picture(bands)).other_sky
