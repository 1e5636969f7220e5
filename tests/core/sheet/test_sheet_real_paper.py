"""Sheets as real ones come: real paper and light, thin borders, another camera."""

from __future__ import annotations

import numpy as np
import pytest
from sheet_pictures import BOX, PAINT, PAPER, photo_from, plain_reference, sheet_picture
from simulator import cases, measure
from simulator.measure import keys

from core.colour import srgb8_to_linear
from core.photo import open_photo
from core.sheet import check_sheet
from core.sheet.find.corners import SURE
from core.sheet.match.lines import match_lines
from core.sheet.match.order import SAMPLES
from core.sheet.result import SheetOptions

LEFT, TOP, RIGHT, BOTTOM = BOX
SEEDS = (5000, 5001, 5004)


def corners(left=LEFT, top=TOP, right=RIGHT, bottom=BOTTOM):
    points = ((left, top), (right, top), (right, bottom), (left, bottom))
    return SheetOptions(corners=tuple((x / 640, y / 480) for x, y in points))


def test_sheets_of_real_paper_are_found_and_trusted():
    sure, told = 0, []
    for seed in SEEDS:
        one = cases.on_real_paper(seed)
        photo = open_photo(one.jpeg, name="sheet.jpg")
        check = check_sheet(photo, measure.reference_of(one), SheetOptions(scan=one.shot.scan))
        assert measure.corner_error(one, check) < measure.FOUND
        assert "corners not found" not in keys(check)
        sure += check.corner_confidence >= SURE
        told += [shift.error for shift in measure.shifts(one, check) if shift.told]
    assert np.median(told) <= 0.6
    assert sure >= len(SEEDS) - 1


@pytest.mark.parametrize("border", [4, 7])
@pytest.mark.parametrize("desk", [(0.30, 0.16, 0.08), (0.04, 0.04, 0.04)], ids=["wood", "dark"])
def test_a_border_of_one_or_two_percent_is_white_enough(border, desk):
    """The desk right beside it is not taken for the paper."""
    picture = sheet_picture()
    around = np.ones(picture.shape[:2], dtype=bool)
    around[TOP - border : BOTTOM + border, LEFT - border : RIGHT + border] = False
    picture[around] = desk
    check = check_sheet(photo_from(picture), plain_reference(), corners())
    assert "no border" not in keys(check)
    assert check.light.white == pytest.approx(PAPER, rel=0.08)
    linear = srgb8_to_linear(check.picture)
    h = len(linear)
    for k, true in enumerate(PAINT):
        rows = linear[int((k / 3 + 0.06) * h) : int(((k + 1) / 3 - 0.06) * h)]
        found = np.median(rows.reshape(-1, 3), axis=0)
        assert found == pytest.approx(true, rel=0.12, abs=0.02)


def test_rough_paper_is_no_shadow_and_an_uneven_light_is():
    rng = np.random.default_rng(7)
    rough = (
        sheet_picture()
        * np.exp(0.07 * rng.standard_normal((48, 64)).repeat(10, 0).repeat(10, 1))[..., None]
    )
    assert "shadow" not in keys(check_sheet(photo_from(rough), plain_reference(), corners()))
    x = np.arange(640)
    dim = 1 - 0.5 / (1 + np.exp(-(x - 310) / 30))
    shaded = sheet_picture() * dim[None, :, None]
    assert "shadow" in keys(check_sheet(photo_from(shaded), plain_reference(), corners()))


def test_a_pale_wash_under_light_undone_too_far_is_no_glare():
    """The middle of the sheet is nearer the lamp than its border tells."""
    y, x = np.mgrid[0:480, 0:640]
    middle = np.exp(-((((x - 310) / 130) ** 2 + ((y - 240) / 150) ** 2) ** 2))
    pale = ((0.97, 0.98, 0.99), (0.99, 0.98, 0.96), (0.98, 0.97, 0.97))
    picture = sheet_picture(pale) * (0.8 + 0.2 * middle)[..., None]
    assert "glare" not in keys(check_sheet(photo_from(picture), plain_reference(pale), corners()))


def stepped(lines: tuple[float, ...], width: float) -> np.ndarray:
    """A profile of three colours that meet at `lines`, in working units."""
    colours = np.array([[60.0, -10.0, -30.0], [75.0, 0.0, -10.0], [88.0, 8.0, 20.0]])
    y = (np.arange(SAMPLES) + 0.5) / SAMPLES
    below = 1 / (1 + np.exp(-np.clip((y[:, None] - lines) * 4.394 / width, -40, 40)))
    rise = np.diff(colours, axis=0)
    return colours[0] + below @ rise


def test_lines_of_a_melting_sky_are_held_against_where_they_were_put():
    """A sky that melts has no step: its half-way points are elsewhere than the lines set."""
    y = (np.arange(SAMPLES) + 0.5) / SAMPLES
    colours = np.array([[50.0, -10.0, -40.0], [70.0, 0.0, -10.0], [88.0, 8.0, 25.0]])
    sky = np.stack([np.interp(y, [0.1, 0.45, 0.95], colours[:, c]) for c in range(3)], -1)
    put = (0.27, 0.66)
    for shift in (0.0, 0.04):
        sheet = stepped((put[0], put[1] + shift), 0.02)
        found = match_lines(sky, put, sheet)
        assert [line.at - line.should for line in found] == pytest.approx([0.0, shift], abs=0.006)


def test_a_line_put_beside_a_sharp_step_means_the_step():
    sky = stepped((0.3, 0.6), 0.01)
    found = match_lines(sky, (0.315, 0.6), stepped((0.3, 0.6), 0.02))
    # The line is .015 off the step; .006 of that are let pass as on it.
    assert abs(found[0].at - found[0].should) < 0.009
