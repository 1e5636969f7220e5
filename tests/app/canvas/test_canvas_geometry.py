from __future__ import annotations

import itertools

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.canvas.geometry import (
    LEAST_HEIGHT,
    MOST_ZOOM,
    Drag,
    Viewport,
    edge_at,
    spread,
    spread_within,
)

VIEW = Viewport(6000, 4000, 60, 8, 754, 500)
PANORAMA = Viewport(30000, 2000, 60, 8, 754, 500)
PORTRAIT = Viewport(3000, 4000, 60, 8, 754, 500)

views = st.sampled_from([VIEW, PANORAMA, PORTRAIT])
fractions = st.floats(0, 1)


def test_a_panorama_opens_in_its_middle_and_tall_enough() -> None:
    view = PANORAMA.opened()
    assert view.shown_height == pytest.approx(LEAST_HEIGHT * view.height)
    assert (view.centre_x, view.centre_y) == (0.5, 0.5)
    assert view.fitted() == PANORAMA


@pytest.mark.parametrize("view", [VIEW, PORTRAIT])
def test_any_other_photo_opens_whole(view: Viewport) -> None:
    assert view.opened() == view


@pytest.mark.parametrize("view", [VIEW, PANORAMA, PORTRAIT])
def test_whole_photo_fits_and_is_centred(view: Viewport) -> None:
    left, top, right, bottom = view.visible
    assert view.left <= left < right <= view.left + view.width
    assert view.top <= top < bottom <= view.top + view.height
    assert left + right == pytest.approx(2 * view.left + view.width)
    assert top + bottom == pytest.approx(2 * view.top + view.height)
    assert (right - left) / (bottom - top) == pytest.approx(view.photo_width / view.photo_height)


@given(views, st.floats(0.5, 8), fractions, fractions, fractions)
def test_rows_and_heights_are_each_other_s_inverse(view, factor, x, y, height) -> None:
    view = view.zoomed(factor, 60 + x * 754, 8 + y * 500)
    assert view.y_of(view.y_px(height)) == pytest.approx(height, abs=1e-9)


@given(views, st.floats(1, 8), fractions, fractions)
def test_zoom_keeps_the_point_or_the_photo_s_edge(view, factor, x, y) -> None:
    x_px, y_px = 60 + x * 754, 8 + y * 500
    after = view.zoomed(factor, x_px, y_px)
    for shown, area, low, start in (
        (after.shown_width, after.width, after.photo_left, after.left),
        (after.shown_height, after.height, after.photo_top, after.top),
    ):
        if shown <= area:
            assert low == pytest.approx(start + (area - shown) / 2)
        else:
            assert low <= start + 1e-6
            assert low + shown >= start + area - 1e-6


def test_zoom_in_the_middle_keeps_the_middle() -> None:
    after = VIEW.zoomed(2, VIEW.left + 377, VIEW.top + 250)
    assert after.x_of(437) == pytest.approx(0.5)
    assert after.y_of(258) == pytest.approx(0.5)


def test_zoom_has_ends() -> None:
    assert VIEW.zoomed(1e6, 400, 200).zoom == MOST_ZOOM
    assert VIEW.zoomed(4, 400, 200).zoomed(1e-6, 400, 200) == VIEW


@given(st.floats(-3000, 3000), st.floats(-3000, 3000))
def test_pan_never_shows_wall_beside_a_large_photo(dx: float, dy: float) -> None:
    view = VIEW.zoomed(3, 400, 200).panned(dx, dy)
    left, top, right, bottom = view.visible
    assert (left, top) == pytest.approx((view.left, view.top), abs=1e-6)
    assert (right, bottom) == pytest.approx((view.left + 754, view.top + 500), abs=1e-6)


def test_resized_view_keeps_zoom() -> None:
    assert VIEW.zoomed(3, 400, 200).resized(60, 8, 300, 200).zoom == 3


@given(fractions, st.floats(-6, 6), st.floats(0, 500))
def test_dragged_line_keeps_its_distance_from_the_pointer(y, offset, pointer) -> None:
    drag = Drag.begin(VIEW, 0, y, VIEW.y_px(y) + offset)
    wanted = drag.height_at(VIEW, pointer)
    if 0 < wanted < 1:
        assert VIEW.y_px(wanted) - pointer == pytest.approx(-offset, abs=1e-6)
    assert 0 <= wanted <= 1


@given(fractions, st.integers(0, 500))
def test_drag_back_to_the_first_row_is_exactly_the_beginning(y: float, pointer: int) -> None:
    drag = Drag.begin(VIEW, 0, y, pointer)
    assert drag.height_at(VIEW, pointer) == pytest.approx(y, abs=1e-12)


def test_edge_under_the_pointer() -> None:
    heights = (0.2, 0.5, 0.505)
    row = VIEW.y_px(0.2)
    assert edge_at(VIEW, heights, 300, row + 5.9) == 0
    assert edge_at(VIEW, heights, 300, row + 6.1) is None
    assert edge_at(VIEW, heights, 300, VIEW.y_px(0.5) - 1) == 1  # the nearer of two
    assert edge_at(VIEW, heights, 300, VIEW.y_px(0.505) + 1) == 2
    assert edge_at(VIEW, heights, 10, row) is None  # beside the photo
    assert edge_at(VIEW, (), 300, row) is None


@given(
    st.lists(st.tuples(st.floats(0, 500), st.floats(10, 44)), min_size=1, max_size=12),
    st.floats(0, 8),
)
def test_spread_keeps_apart_and_near(pairs: list[tuple[float, float]], gap: float) -> None:
    pairs.sort()
    wanted, sizes = [p for p, _ in pairs], [s for _, s in pairs]
    middles = spread(wanted, sizes, gap)
    for i in range(1, len(middles)):
        least = (sizes[i - 1] + sizes[i]) / 2 + gap
        assert middles[i] - middles[i - 1] >= least - 1e-6
    # Least squares: the shifts of a pool of touching things add up to nothing.
    assert sum(middles) == pytest.approx(sum(wanted), abs=1e-6)


def test_spread_leaves_alone_what_has_room() -> None:
    assert spread([], [], 4) == []
    assert spread([10, 60, 200], [26, 26, 26], 4) == [10, 60, 200]
    assert spread([100, 100], [26, 26], 4) == [85, 115]


def test_spread_within_stays_inside() -> None:
    middles = spread_within([0, 1, 2, 499], [26] * 4, 4, 0, 500)
    assert middles[0] >= 13
    assert middles[-1] <= 487
    assert all(b - a >= 30 - 1e-9 for a, b in itertools.pairwise(middles))
