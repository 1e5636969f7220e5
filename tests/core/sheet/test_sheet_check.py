"""The check on plain drawn sheets: light, corners, turns, and what is said of them."""

from __future__ import annotations

import numpy as np
import pytest
from sheet_pictures import BOX, PAINT, photo_from, plain_reference, sheet_picture

from core.colour import srgb8_to_linear
from core.errors import Cancelled, SheetError
from core.sheet import check_sheet, compare_checks
from core.sheet.find.corners import SURE
from core.sheet.result import SheetCheck, SheetOptions


@pytest.fixture(scope="module")
def reference():
    return plain_reference()


@pytest.fixture(scope="module")
def plain(reference):
    return check_sheet(photo_from(sheet_picture()), reference)


def keys(check: SheetCheck) -> set[str]:
    return {notice.key for notice in check.notices}


def paint_error(check: SheetCheck) -> float:
    """Worst channel of the three bands against the paint, as a ratio."""
    linear = srgb8_to_linear(check.picture)
    h, w = linear.shape[:2]
    worst = 0.0
    for k, colour in enumerate(PAINT):
        rows = slice(round((k + 0.2) * h / 3), round((k + 0.8) * h / 3))
        for columns in (slice(w // 10, w // 3), slice(2 * w // 3, 9 * w // 10)):
            found = np.median(linear[rows, columns].reshape(-1, 3), axis=0)
            worst = max(worst, float(np.abs(found / colour - 1).max()))
    return worst


def corner_error(check: SheetCheck) -> float:
    left, top, right, bottom = BOX
    true = np.array([[left, top], [right, top], [right, bottom], [left, bottom]])
    return float(np.abs(np.asarray(check.corners) * [640, 480] - true).max())


def test_a_plain_sheet_is_found_and_matches(plain):
    assert corner_error(plain) < 2.0
    assert plain.corner_confidence > SURE
    assert paint_error(plain) < 0.03
    assert keys(plain) == {"phone"}
    assert plain.better_turn is None
    scores = plain.scores
    assert (scores.hue, scores.value, scores.intensity, scores.placement) == (10, 10, 10, 10)
    assert [finding.kind for finding in plain.findings] == ["praise"]


def test_the_picture_is_read_only(plain):
    with pytest.raises(ValueError, match="read-only"):
        plain.picture[0, 0] = 0


@pytest.mark.parametrize("turns", [1, 2, 3])
def test_a_turned_sheet_is_asked_about_and_then_right(reference, turns):
    photo = photo_from(np.ascontiguousarray(np.rot90(sheet_picture(), turns)))
    check = check_sheet(photo, reference)
    assert check.better_turn == turns
    assert "turn" in keys(check)
    assert [finding.kind for finding in check.findings] == ["note"]
    upright = check_sheet(photo, reference, SheetOptions(turned=turns))
    assert upright.better_turn is None
    assert paint_error(upright) < 0.03


def test_an_even_falling_off_of_light_is_undone(reference):
    y, x = np.mgrid[-1:1:480j, -1:1:640j]
    check = check_sheet(
        photo_from(sheet_picture() * (1 - 0.25 * (x**2 + y**2))[..., None]), reference
    )
    assert "shadow" not in keys(check)
    assert paint_error(check) < 0.05


def test_a_hard_shadow_is_noticed_and_makes_no_edge(reference):
    picture = sheet_picture()
    y, x = np.mgrid[0:480, 0:640]
    picture[y > 180 + 0.35 * (x - 160)] *= 0.55
    check = check_sheet(photo_from(picture), reference)
    assert "shadow" in keys(check)
    assert not check.light.sides_compared
    assert all(band.left is None for band in check.band_checks)
    assert all(len(edge.letters) == 2 for edge in check.hard_edges)


def test_clipped_paper_is_said(reference):
    check = check_sheet(photo_from(sheet_picture() * 1.6), reference)
    assert "over-exposed" in keys(check)
    assert not check.light.sides_compared


def test_lamplight_is_said(reference):
    check = check_sheet(photo_from(sheet_picture() * [1.1, 0.7, 0.35]), reference)
    assert "warm light" in keys(check)


def test_glare_on_the_paint_is_said(reference):
    picture = sheet_picture() * 0.7
    y, x = np.mgrid[0:480, 0:640]
    picture[np.hypot(y - 150, x - 300) < 25] = 0.95
    assert "glare" in keys(check_sheet(photo_from(picture), reference))


def test_tape_left_on_is_said(reference):
    picture = sheet_picture()
    left, top, right, bottom = BOX
    painting = picture[top:bottom, left:right].copy()
    picture[50:430, 170:450] = (0.65, 0.55, 0.36)
    picture[top:bottom, left:right] = painting
    corners = tuple((x / 640, y / 480) for x in (left, right) for y in (top, bottom))
    inside = (corners[0], corners[2], corners[3], corners[1])
    outside = ((170 / 640, 50 / 480), (450 / 640, 50 / 480), (450 / 640, 430 / 480),
               (170 / 640, 430 / 480))  # fmt: skip
    for at in (inside, outside):
        check = check_sheet(photo_from(picture), reference, SheetOptions(corners=at))
        assert "tape" in keys(check)
        assert not check.light.sides_compared


def test_a_picture_without_a_border_says_so(reference):
    left, top, right, bottom = BOX
    photo = photo_from(sheet_picture()[top:bottom, left:right])
    corners = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))
    check = check_sheet(photo, reference, SheetOptions(corners=corners))
    assert "no border" in keys(check)
    assert check.light.residual is None
    assert check.corner_confidence == 1.0


def test_corners_outside_the_photo_are_allowed(reference):
    corners = ((-0.06, 0.04), (0.66, -0.06), (0.87, 0.98), (0.06, 1.08))
    check = check_sheet(photo_from(sheet_picture()), reference, SheetOptions(corners=corners))
    assert check.corners == corners


def test_corners_that_make_no_rectangle_are_refused(reference):
    corners = ((0.0, 0.0), (1.0, 1.0), (1.0, 0.0), (0.0, 1.0))
    with pytest.raises(SheetError, match="clockwise"):
        check_sheet(photo_from(sheet_picture()), reference, SheetOptions(corners=corners))


def test_a_blank_wall_is_told_to_hold_no_paint(reference):
    rng = np.random.default_rng(1)
    wall = 0.4 + 0.01 * rng.standard_normal((480, 640, 3))
    check = check_sheet(photo_from(wall), reference)
    assert check.corner_confidence < SURE
    assert check.washes.kind == "blank"
    assert [finding.kind for finding in check.findings] == ["note"]
    assert check.findings[0].text.startswith("No paint is to be seen in this picture")


def test_an_unexpected_shape_is_said(reference):
    photo = photo_from(sheet_picture())
    shape = (BOX[2] - BOX[0]) / (BOX[3] - BOX[1])
    assert "aspect" not in keys(check_sheet(photo, reference, SheetOptions(aspect=shape)))
    assert "aspect" in keys(check_sheet(photo, reference, SheetOptions(aspect=1.4)))


def test_another_sky_is_told_apart(reference):
    green = ((0.1, 0.3, 0.1), (0.05, 0.2, 0.1), (0.2, 0.4, 0.1))
    check = check_sheet(photo_from(sheet_picture(green)), reference)
    assert "other sky" in keys(check)
    assert (
        check.findings[0].text == "This does not look like the same sky: is it the right picture?"
    )


def test_weak_paint_is_called_lighter_and_duller(reference):
    weak = tuple(tuple(c**0.45 for c in colour) for colour in PAINT)
    check = check_sheet(photo_from(sheet_picture(weak)), reference)
    assert any(band.value == "off" for band in check.band_checks)
    assert any("lighter" in f.text and "more paint" in f.text for f in check.findings)
    assert len(check.findings) <= 5


def test_cancelling_stops_at_every_step(reference):
    photo = photo_from(sheet_picture())
    asked = 0

    def count() -> bool:
        nonlocal asked
        asked += 1
        return False

    check_sheet(photo, reference, should_stop=count)
    assert asked > 8
    for stop_at in range(1, asked + 1, 3):
        left = stop_at

        def stop() -> bool:
            nonlocal left
            left -= 1
            return left <= 0

        with pytest.raises(Cancelled):
            check_sheet(photo, reference, should_stop=stop)


def test_progress_rises_to_one(reference):
    shares: list[float] = []
    check_sheet(photo_from(sheet_picture()), reference, None, shares.append)
    assert shares == sorted(shares)
    assert shares[-1] == 1.0


def test_a_second_sheet_is_compared_with_the_first(reference, plain):
    weak = tuple(tuple(c**0.45 for c in colour) for colour in PAINT)
    first = check_sheet(photo_from(sheet_picture(weak)), reference)
    better = compare_checks(first, plain, "value")
    assert better.worked == "improved"
    assert better.findings[0].kind == "praise"
    assert "it worked" in better.findings[0].text
    worse = compare_checks(plain, first, "value")
    assert worse.worked == "worse"
    same = compare_checks(first, first, None)
    assert same.worked is None
    assert {row.outcome for row in same.rows} == {"stayed"}
    assert same.findings[0].text == "The second sheet measures as the first did."
    both = compare_checks(plain, plain, "value")
    assert [finding.kind for finding in both.findings] == ["praise"]
    assert "A new challenge" in both.findings[0].text


def test_too_light_then_too_dark_is_no_improvement(reference, plain):
    def painted(strength: float) -> SheetCheck:
        bands = tuple(tuple(c**strength for c in colour) for colour in PAINT)
        return check_sheet(photo_from(sheet_picture(bands)), reference)

    change = compare_checks(painted(0.3), painted(1.7), "value")
    assert change.worked != "improved"
    assert any(row.past for row in change.rows)
    assert "half the way back" in change.findings[0].text
