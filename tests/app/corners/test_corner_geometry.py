from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.corners.geometry import (
    WHOLE,
    PhotoOnScreen,
    lens_place,
    screen_order,
    with_corner,
)
from core.sheet.light.straighten import upright_quad

TURNS = (0, 1, 2, 3)
shares = st.floats(-0.05, 1.05)


def placed(turned: int) -> PhotoOnScreen:
    return PhotoOnScreen(1600, 1200, turned, 40, 30, 900, 600)


@given(st.sampled_from(TURNS), shares, shares)
def test_a_point_comes_back_from_the_screen(turned, x, y) -> None:
    place = placed(turned)
    assert place.to_photo(place.to_screen((x, y))) == pytest.approx((x, y), abs=1e-9)


@pytest.mark.parametrize("turned", TURNS)
def test_the_whole_photo_lies_in_its_area(turned) -> None:
    place = placed(turned)
    points = [place.to_screen(corner) for corner in ((0, 0), (1, 0), (1, 1), (0, 1))]
    left, top = min(x for x, _ in points), min(y for _, y in points)
    right, bottom = max(x for x, _ in points), max(y for _, y in points)
    assert left >= 40 - 1e-6
    assert top >= 30 - 1e-6
    assert right <= 940 + 1e-6
    assert bottom <= 630 + 1e-6
    assert place.middle == ((left + right) / 2, (top + bottom) / 2)


@pytest.mark.parametrize("turned", TURNS)
def test_corners_are_named_as_they_are_seen(turned) -> None:
    """Top left on the screen first, clockwise; the same corner core calls the upright first."""
    place = placed(turned)
    points = [place.to_screen(WHOLE[number]) for number in screen_order(turned)]
    (ax, ay), (bx, by), (cx, cy), (dx, dy) = points
    assert ax < bx
    assert dx < cx
    assert ay < dy
    assert by < cy
    upright = upright_quad(WHOLE, turned, 1600, 1200)
    first = WHOLE[screen_order(turned)[0]]
    assert tuple(upright[0]) == pytest.approx((first[0] * 1600, first[1] * 1200))


@pytest.mark.parametrize("turned", TURNS)
def test_a_step_goes_where_it_is_seen_to_go(turned) -> None:
    place = placed(turned)
    x, y = place.to_screen((0.4, 0.6))
    right = place.to_screen(place.stepped((0.4, 0.6), 1, 0))
    assert right == pytest.approx((x + place.scale, y))
    down = place.to_screen(place.stepped((0.4, 0.6), 0, 10))
    assert down == pytest.approx((x, y + 10 * place.scale))


def test_corners_stay_near_the_photo_and_never_cross() -> None:
    moved = with_corner(WHOLE, 0, (-3.0, 0.1), 1600, 1200)
    assert moved[0] == (-0.05, 0.1)
    assert moved[1:] == WHOLE[1:]
    # Past the diagonal the four would fold.
    assert with_corner(WHOLE, 0, (0.9, 0.9), 1600, 1200) is None
    assert with_corner(WHOLE, 1, WHOLE[0], 1600, 1200) is None


@given(st.tuples(st.floats(0, 900), st.floats(0, 600)))
def test_the_magnifier_never_covers_its_corner(corner) -> None:
    radius = 100.0
    x, y = lens_place(corner, (450, 300), radius, (0, 0, 900, 600))
    assert radius <= x <= 900 - radius
    assert radius <= y <= 600 - radius
    assert (x - corner[0]) ** 2 + (y - corner[1]) ** 2 > radius**2
