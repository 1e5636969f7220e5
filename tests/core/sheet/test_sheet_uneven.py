"""Washes laid in streaks and clouds: unevenness is neither a hard edge nor a bloom."""

from __future__ import annotations

from functools import cache

import numpy as np
import pytest
from scipy.ndimage import gaussian_filter
from simulator import cases, measure

from core.photo import open_photo
from core.sheet import check_sheet
from core.sheet.painted.courses import STRIPS, strip_profiles
from core.sheet.painted.edges import find_edges
from core.sheet.painted.strokes import usual_step
from core.sheet.result import SheetOptions

H, W = 640, 896  # as a straightened sheet
STEP = np.array([14.0, 4.0, -8.0])


@cache
def strokes(seed, stroke):
    """Noise (H, W) that runs across, of deviation 1."""
    noise = gaussian_filter(
        np.random.default_rng(seed).standard_normal((H, W)), (stroke * H, 0.2 * W), mode="reflect"
    )
    noise /= noise.std()
    noise.flags.writeable = False
    return noise


def streaky(amount, seed=3, stroke=0.006):
    """Working colours (H, W, 3) of strokes that run across, `amount` their deviation."""
    return 70.0 + (strokes(seed, stroke) * amount)[..., None] * np.array([1.0, 0.3, -0.6])


def with_step(picture, at, step=STEP):
    y = (np.arange(H) + 0.5) / H
    below = 1 / (1 + np.exp(-np.clip((y - at) * 4.394 / 0.008, -40, 40)))
    return picture + below[:, None, None] * step


@pytest.mark.parametrize("amount", [0.5, 1.0, 2.0, 4.0])
@pytest.mark.parametrize("seed", [3, 4, 5])
def test_no_streak_is_called_an_edge_across(amount, seed):
    assert not any(edge.full for edge in find_edges(streaky(amount, seed)))


@pytest.mark.parametrize("amount", [0.3, 0.8, 1.5])
def test_an_edge_that_stands_out_is_found_among_streaks(amount):
    edges = [edge for edge in find_edges(with_step(streaky(amount), 0.45)) if edge.full]
    assert [edge.at for edge in edges] == [pytest.approx(0.45, abs=0.01)]


def test_the_usual_step_grows_with_the_streaks_and_leaves_the_edge_out():
    usual = [
        usual_step(strip_profiles(with_step(streaky(amount), 0.45)), 0, STRIPS - 1, 0.45)
        for amount in (0.5, 1.0, 2.0)
    ]
    assert usual[1] == pytest.approx(2 * usual[0], rel=0.05)
    assert usual[2] == pytest.approx(4 * usual[0], rel=0.05)
    without = usual_step(strip_profiles(streaky(2.0)), 0, STRIPS - 1, 0.45)
    assert usual[2] == pytest.approx(without, rel=0.1)


def test_there_is_no_usual_step_on_an_even_wash():
    even = np.full((STRIPS, H, 3), 50.0)
    assert usual_step(even, 0, STRIPS - 1, 0.5) == pytest.approx(0.0, abs=1e-9)


@pytest.fixture(scope="module")
def sheets():
    """Sheets as beginners lay them, without any edge or bloom; nothing was tuned on these seeds."""
    found = []
    for seed in range(8200, 8206):
        one = cases.uneven(seed, faults=False)
        photo = open_photo(one.jpeg, name="sheet.jpg")
        options = SheetOptions(scan=one.shot.scan)
        found.append((one, check_sheet(photo, measure.reference_of(one), options)))
    return found


def test_uneven_sheets_get_few_false_alarms(sheets):
    # Before unevenness was weighed, these and four more were told of 5 edges and 12 blooms.
    alarms = sum(len(check.hard_edges) + len(check.blooms) for _, check in sheets)
    assert alarms <= 3


def test_uneven_sheets_are_read_all_the_same(sheets):
    errors = [measure.corner_error(one, check) for one, check in sheets]
    assert sum(error < measure.FOUND for error in errors) >= len(sheets) - 1
    shifts = [shift for one, check in sheets for shift in measure.shifts(one, check)]
    told = [shift.error for shift in shifts if shift.told]
    assert len(told) >= 0.4 * len(shifts)
    assert np.median(told) <= 0.4
    assert max(told) <= 2


@pytest.mark.parametrize("seed", [3, 4, 5, 6])
def test_an_edge_from_side_to_side_need_not_stand_out_as_far_as_one_over_a_part(seed):
    # Between 2.9 and 4.5 times the usual step: too little over a third of the width.
    picture = streaky(1.5, seed)
    usual = usual_step(strip_profiles(picture), 0, STRIPS - 1, 0.45)
    step = STEP / np.linalg.norm(STEP) * 3.7 * usual
    across = [edge for edge in find_edges(with_step(picture, 0.45, step)) if edge.full]
    assert [edge.at for edge in across] == [pytest.approx(0.45, abs=0.012)]
    part = np.array(picture)
    part[:, : W // 3] = with_step(picture, 0.45, step)[:, : W // 3]
    assert not find_edges(part)
