"""A photo with something in front of its sky: the sheet is compared where the photo's sky is.

Hills, a tower, trees or a headland are put into sample skies, dark against them. A student may have
painted them too, in their place or a little beside it, or carried the washes across: in all three a
faithful copy gets no complaint, and a fault in the sky itself is found as before.
"""

from __future__ import annotations

import numpy as np
import pytest
from sheet_pictures import checked, copy_of, sample_sky
from simulator.measure import photo_of

from core.bands.careful import read_bands
from core.bands.lines import Bands
from core.colour import srgb8_to_linear
from core.sheet import make_reference
from core.sheet.match.foreground import compared, sky_seen, widened
from core.sheet.match.reference import slim_reference

HILL = (38, 44, 40)
FRONTS = ("hills", "tower", "trees", "headland")


def front(name: str, height: int, width: int, right: float = 0.0) -> np.ndarray:
    """Where something stands before the sky, (height, width); `right` moves it, shares of it."""
    y, x = np.mgrid[0:height, 0:width]
    y, x = y / height, x / width - right
    if name == "hills":
        return y > 0.8 - 0.12 * np.sin(5 * x)
    if name == "tower":
        return (y > 0.35) & (abs(x - 0.42) < 0.05)
    if name == "trees":
        return (y > 0.55 + 0.05 * np.cos(60 * x)) & (x < 0.3)
    return y > 1.1 - 0.9 * x**2


@pytest.fixture(scope="module", params=FRONTS)
def scene(request):
    """A sky with something before it: name, reference, sky alone in linear light."""
    sky, lines = sample_sky("fell" if request.param in ("hills", "tower") else "ember")
    seen = ~front(request.param, *sky.shape[:2])
    pixels = np.where(seen[..., None], sky, np.uint8(HILL))
    photo, bands = photo_of(pixels), Bands(1.0, lines)
    reference = make_reference(photo, bands, read_bands(photo, seen, bands), seen)
    return request.param, slim_reference(reference), srgb8_to_linear(sky).astype(np.float64)


def painted(scene, kind: str):
    """Linear light of what was painted: the sky carried across, or what stands before it too."""
    name, _, sky = scene
    if kind == "washed over":
        return sky
    hill = srgb8_to_linear(np.uint8(HILL)).astype(np.float64)
    right = 0.01 if kind == "painted beside" else 0.0
    return np.where(front(name, *sky.shape[:2], right)[..., None], hill, sky)


@pytest.mark.parametrize("kind", ["washed over", "painted", "painted beside"])
def test_a_faithful_copy_gets_no_complaint(scene, kind: str) -> None:
    _, reference, _ = scene
    check = checked(reference, copy_of(painted(scene, kind), blur=0.006))
    assert [finding.text for finding in check.findings if finding.kind != "praise"] == []
    assert {notice.key for notice in check.notices} <= {"phone"}
    assert {band.overall for band in check.band_checks} == {"matches"}


def test_a_pale_wash_is_found_all_the_same(scene) -> None:
    _, reference, sky = scene
    edges = reference.bands.edges
    y = (np.arange(len(sky)) + 0.5) / len(sky)
    inside = np.clip(np.minimum(y - edges[1], edges[2] - y) / 0.02 + 0.5, 0, 1)[:, None, None]
    pale = painted(scene, "painted") ** (1 - 0.6 * inside)
    check = checked(reference, copy_of(pale, blur=0.006))
    told = check.band_checks[1]
    assert told.value in ("close", "off")
    assert told.whole is not None
    assert told.whole.value_steps > 0


def test_a_hard_edge_in_the_sky_is_found(scene) -> None:
    name, reference, sky = scene
    above, below = reference.bands.lines[:2]
    place = (above + below) / 2 if name in ("hills", "tower") else above - 0.02
    dried = sky.copy()
    dried[round(place * len(sky)) :] *= 0.5  # a second wash, laid on the first when it was dry
    check = checked(reference, copy_of(dried, blur=0.002))
    assert any(abs(edge.at - place) < 0.02 for edge in check.hard_edges)


def test_lines_move_the_place_that_is_compared() -> None:
    seen = np.ones((200, 100), dtype=bool)
    seen[100:, 50:] = False
    should, at = Bands(1.0, (0.5,)), Bands(1.0, (0.6,))
    where = compared(widened(seen, should), should, at, (400, 300))
    assert where is not None
    assert where[:, :130].all()
    assert where[:230, :].all()
    assert not where[240:, 160:].any()


def test_specks_and_small_corners_keep_nothing_out() -> None:
    mask = np.ones((800, 1200), dtype=bool)
    mask[300:303] = False  # a wire
    mask[500:506, 700:706] = False  # a bird
    assert sky_seen(mask, Bands(1.0)) is None
    assert compared(None, Bands(1.0, ()), Bands(1.0, ()), (40, 60)) is None


def test_a_band_hardly_seen_is_read_by_what_is_seen_of_it() -> None:
    seen = np.ones((200, 100), dtype=bool)
    seen[180:, :94] = False
    bands = Bands(1.0, (0.9,))
    where = compared(widened(seen, bands), bands, bands, (200, 100))
    assert where is not None
    assert where[181:, 94:].all()
    assert not where[181:, :90].any()
