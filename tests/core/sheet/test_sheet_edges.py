"""Hard edges in drawn working colours: faint, grainy, wavy, partial, and none."""

from __future__ import annotations

import io

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image
from scipy.ndimage import correlate1d, gaussian_filter
from simulator.camera import encode

from core.colour.working_space import srgb8_to_W
from core.sheet.painted.courses import (
    STRIPS,
    evidence_of,
    extended,
    find_courses,
    sliding,
    stretches,
    strip_profiles,
)
from core.sheet.painted.edges import HARD_WIDTH, find_edges
from core.sheet.painted.sharpness import sharpness_along

H, W = 640, 896  # as a straightened sheet
STEP = np.array([6.0, 2.0, -4.0])
Floats = NDArray[np.float64]


def wavy(at: float, seed: int = 1) -> Floats:
    """A course (W,) that wanders as a brush does, shares of the height."""
    x = np.arange(W) / W
    return at + 0.006 * np.sin(9 * x + seed) + 0.004 * np.sin(17 * x + 2 * seed)


def step_picture(
    course: Floats, width: Floats | float, step: Floats = STEP, grain: float = 0.8, seed: int = 1
) -> Floats:
    """Working colours (H, W, 3) of one smooth step of a 10-90% width on grainy paint."""
    y = (np.arange(H)[:, None] + 0.5) / H
    z = (y - course[None]) * 4.394 / width
    below = 1 / (1 + np.exp(-np.clip(z, -40, 40)))
    return 70.0 + below[..., None] * step + grainy(grain, seed)


def grainy(amount: float, seed: int) -> Floats:
    rng = np.random.default_rng(seed)
    grain = gaussian_filter(rng.standard_normal((H, W, 3)), (1.2, 1.2, 0))
    return np.asarray(grain / grain.std() * amount)


@pytest.mark.parametrize("width", [0.006, 0.012, 0.020])
def test_a_wavy_edge_is_found_across_and_its_width_measured(width):
    edges = find_edges(step_picture(wavy(0.4), width))
    assert len(edges) == 1
    edge = edges[0]
    assert edge.full
    assert (edge.start, edge.end) == (0.0, 1.0)
    assert edge.at == pytest.approx(0.4, abs=0.008)
    assert edge.step == pytest.approx(float(np.linalg.norm(STEP)), rel=0.15)
    if width > 0.01:  # sharper than that, strips' own waviness and the pixels blur it
        assert edge.width == pytest.approx(width, rel=0.15)


@pytest.mark.parametrize("width", [0.030, 0.045, 0.10, 0.25])
def test_a_soft_transition_is_no_edge(width):
    assert find_edges(step_picture(wavy(0.5), width, 3 * STEP)) == ()


def test_near_the_boundary_the_width_decides():
    course = wavy(0.5)
    picture = step_picture(course, 1.15 * HARD_WIDTH, 3 * STEP, grain=0.4)
    rows = [float(np.mean(part)) * H - 0.5 for part in np.array_split(course, STRIPS)]
    fit = sharpness_along(picture, (np.arange(STRIPS), np.round(rows).astype(int)))
    assert fit is not None
    assert fit.width == pytest.approx(1.15 * HARD_WIDTH, rel=0.08)


@pytest.mark.parametrize("seed", range(4))
def test_a_faint_edge_in_grain_is_found_along_its_course(seed):
    faint = np.array([1.8, 0.75, -0.9])  # hardly more than the grain of a single pixel
    edges = find_edges(step_picture(wavy(0.6, seed), 0.006, faint, grain=0.8, seed=seed))
    assert [edge.full for edge in edges] == [True]
    assert edges[0].at == pytest.approx(0.6, abs=0.008)


@pytest.mark.parametrize("seed", range(6))
def test_grain_alone_is_no_edge(seed):
    assert find_edges(70.0 + grainy(3.0, seed)) == ()


@pytest.mark.parametrize("quality", [80, 90])
def test_the_coarse_colours_of_a_jpeg_make_no_edge(quality):
    """A soft pale wash comes back from a JPEG with its colour in steps."""
    y = (np.arange(H)[:, None, None] + 0.5) / H
    top, bottom = np.array([0.93, 0.80, 0.84]), np.array([0.97, 0.92, 0.80])
    linear = np.exp((1 - y) * np.log(top) + y * np.log(bottom)) + np.zeros((H, W, 3))
    rng = np.random.default_rng(5)
    linear = linear * (1 + 0.004 * rng.standard_normal((H, W, 1)))
    pixels = (np.clip(encode(linear), 0, 1) * 255 + 0.5).astype(np.uint8)
    buffer = io.BytesIO()
    Image.fromarray(pixels).save(buffer, "JPEG", quality=quality)
    assert find_edges(srgb8_to_W(np.asarray(Image.open(buffer)))) == ()


def test_an_edge_over_a_part_ends_where_it_turns_soft():
    x = np.arange(W) / W
    width = np.where((x > 0.3) & (x < 0.7), 0.008, 0.10)
    edges = find_edges(step_picture(wavy(0.5), width[None], 2 * STEP))
    assert len(edges) == 1
    assert not edges[0].full
    assert edges[0].start == pytest.approx(0.3, abs=0.07)
    assert edges[0].end == pytest.approx(0.7, abs=0.07)


def test_an_edge_a_bloom_interrupts_is_one_edge():
    picture = step_picture(wavy(0.5), 0.008)
    y, x = np.mgrid[0:H, 0:W]
    away = np.hypot(y - H / 2, x - 0.45 * W) / (0.10 * H)
    picture += (8.0 / (1 + np.exp(np.clip((away - 1) / 0.05, -40, 40))))[..., None]
    picture[away < 1] = 78.0
    edges = [edge for edge in find_edges(picture) if abs(edge.at - 0.5) < 0.02]
    assert len(edges) == 1
    assert edges[0].full


@pytest.mark.parametrize("h", [60, 320, 641])
def test_a_template_is_slid_along_as_scipy_slides_it(h):
    rng = np.random.default_rng(h)
    strips, template = rng.normal(size=(3, STRIPS, h)).cumsum(axis=-1), rng.normal(size=17)
    found = (stretches(strips, 8) @ sliding(template)).reshape(3, STRIPS, -1)[..., :h]
    assert found == pytest.approx(correlate1d(strips, template, axis=-1, mode="nearest"), abs=1e-9)


def test_a_course_carried_on_follows_the_edge():
    picture = step_picture(wavy(0.5), 0.008)
    evidence = evidence_of(strip_profiles(picture))
    strips, rows = find_courses(evidence)[0]
    piece = strips[5:12], rows[5:12]
    whole = extended(piece, evidence)
    assert (whole[0] == np.arange(STRIPS)).all()
    assert np.abs(whole[1] - rows).max() <= 2


def test_what_the_tape_leaves_at_the_border_is_no_edge():
    picture = 60.0 + grainy(0.5, 3)
    picture[: round(0.014 * H)] += 25.0
    picture[-round(0.014 * H) :] += 25.0
    assert find_edges(picture) == ()


def test_masked_places_make_no_edge():
    picture = 60.0 + grainy(0.5, 3)
    mask = np.ones((H, W), dtype=bool)
    mask[280:360, 200:600] = False
    picture[~mask] += 40.0
    assert find_edges(picture, mask) == ()
    assert len(find_edges(picture)) >= 1


@pytest.mark.parametrize("rim", [1.5, 2.0])
@pytest.mark.parametrize("seed", [1, 2, 3])
def test_a_faint_edge_with_the_dark_rim_of_a_wash_that_dried_is_found(rim, seed):
    # Pigment gathers where a wash dries: a rim darker than the step it stands on.
    course, step = wavy(0.5, seed), STEP / np.linalg.norm(STEP) * 1.6
    y = (np.arange(H)[:, None] + 0.5) / H
    dark = np.exp(-0.5 * ((y - course[None]) / 0.004 + 1) ** 2)[..., None] * (-rim * step)
    sheet = step_picture(course, 0.005, step, grain=0.5, seed=seed) + dark
    edges = [edge for edge in find_edges(sheet) if edge.full]
    assert [edge.at for edge in edges] == [pytest.approx(0.5, abs=0.012)]
