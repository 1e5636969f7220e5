"""What is too uncertain to be said: soft lines, lines that cannot be told, very pale corners."""

from __future__ import annotations

import numpy as np
import pytest
from simulator import cases, measure, scene

from core.colour import srgb_to_Lab
from core.photo import open_photo
from core.reading.reading import BandReading, read_colour
from core.sheet import check_sheet
from core.sheet.check import COMMENTED_PCT, _line_check
from core.sheet.findings.compare import compare_bands, more_lenient
from core.sheet.findings.scores import score_sheet
from core.sheet.match.lines import Line
from core.sheet.painted.density import density_of
from core.sheet.painted.pale_corners import find_pale_corners
from core.sheet.result import SheetOptions
from core.worksheet.compare import shown_score


def line(shift: float, width: float) -> Line:
    return Line(0.4, 0.4 + shift / 100, sure=True, contrast=20.0, width=width, error=0.001)


def test_a_plain_line_is_spoken_of_from_two_percent():
    check = _line_check("A", line(2.5, 0.05))
    assert check.allowed_pct == COMMENTED_PCT
    assert check.verdict == "close"
    assert check.gap == pytest.approx(1.25)


def test_a_line_washes_melt_across_has_more_room():
    soft = _line_check("A", line(2.5, 0.3))
    assert soft.verdict == "matches"
    assert score_sheet((), (soft,)).placement == 10
    assert _line_check("A", line(8.0, 0.3)).verdict == "off"


@pytest.mark.parametrize("shift", [2.001, 2.3, 3.0])
def test_ten_is_for_sheets_of_which_all_matches(shift):
    held = [_line_check("A", line(0.5, 0.05))] * 5
    assert shown_score(score_sheet((), tuple(held)).placement) == 10
    off = _line_check("B", line(shift, 0.05))
    assert off.verdict == "close"
    assert shown_score(score_sheet((), (*held, off)).placement) == 9


def test_a_softer_line_never_scores_less():
    gaps = [_line_check("A", line(4.0, width)).gap for width in (0.02, 0.1, 0.2, 0.3, 0.4)]
    assert gaps == sorted(gaps, reverse=True)


def readings(*colours: tuple[int, int, int]) -> tuple[BandReading, ...]:
    found = []
    for n, rgb in enumerate(colours):
        colour = read_colour(srgb_to_Lab(np.array(rgb) / 255))
        top, bottom = n / len(colours), (n + 1) / len(colours)
        found.append(
            BandReading("ABC"[n], top, bottom, colour, colour, colour, colour, 0.0, False, 0.0, 1.0)
        )
    return tuple(found)


def test_a_band_read_two_ways_is_given_the_better():
    wanted = readings((90, 130, 200), (200, 150, 90))
    how = {"scan": True, "corrected": True, "sides": True}
    one = compare_bands(wanted, readings((90, 130, 200), (90, 90, 90)), **how)
    other = compare_bands(wanted, readings((10, 30, 90), (200, 150, 90)), **how)
    kept = more_lenient(one, other)
    assert [check.overall for check in kept] == ["matches", "matches"]
    assert [check.letter for check in kept] == ["A", "B"]
    assert [(check.top, check.bottom) for check in kept] == [(c.top, c.bottom) for c in one]
    assert more_lenient(one, one) == one


def washed(density: float, corner: float) -> np.ndarray:
    """An even wash in linear light, its bottom left corner with `corner` of the paint."""
    picture = np.full((256, 360, 3), np.exp(-density / 3), dtype=np.float32)
    picture[-60:, :60] = np.exp(-density * corner / 3)
    return picture


def test_half_the_paint_in_a_corner_is_remarked_on():
    found = find_pale_corners(density_of(washed(0.8, 0.5)))
    assert [pale.corner for pale in found] == ["bottom left"]
    assert found[0].share == pytest.approx(0.535, abs=0.01)


def test_what_the_light_may_do_to_a_very_pale_corner_is_not():
    assert find_pale_corners(density_of(washed(0.2, 0.5))) == ()


def test_a_copy_with_a_line_that_cannot_be_told_gets_no_complaint():
    """Its widest line is in a melt of a quarter of the height, and is read far off: neither it
    nor its neighbours are told, and so placement is not scored."""
    one = cases.copied(1011)
    photo = open_photo(one.jpeg, name="sheet.jpg")
    check = check_sheet(photo, measure.reference_of(one), SheetOptions(scan=one.shot.scan))
    assert not [finding.text for finding in check.findings if finding.kind == "step"]
    scores = check.scores
    assert {scores.hue, scores.value, scores.intensity} == {10.0}
    assert all(line.shift_pct is None for line in check.lines)
    assert scores.placement is None


def test_a_pale_corner_of_a_blotchy_wash_is_not_remarked_on():
    blotchy = washed(0.8, 0.55)
    assert find_pale_corners(density_of(blotchy))  # on an even wash it is
    w = blotchy.shape[1]
    x = np.arange(w) / w
    clouds = 1 + 0.3 * np.sign(np.sin(2 * np.pi * 9 * x))
    blotchier = blotchy ** clouds[None, :, None].astype(np.float32)
    assert find_pale_corners(density_of(blotchier)) == ()


@pytest.mark.parametrize("seed", [7791, 7726])
def test_a_line_between_washes_hardly_told_apart_is_not_told(seed):
    """The topmost wash is almost its neighbour's, or a drying edge crosses it."""
    one = scene(seed)
    photo = open_photo(one.jpeg, name="sheet.jpg")
    check = check_sheet(photo, measure.reference_of(one), SheetOptions(scan=one.shot.scan))
    assert check.lines[0].shift_pct is None
    told = [shift.error for shift in measure.shifts(one, check) if shift.told]
    assert told
    assert max(told) <= 3
