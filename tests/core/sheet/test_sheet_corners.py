"""Finding the painted rectangle, and knowing when it is the wrong one."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.ndimage import gaussian_filter
from sheet_pictures import BOX, PAPER, photo_from, sheet_picture
from simulator import cases, measure, scene

from core.colour import srgb8_to_linear
from core.photo import open_photo
from core.sheet import check_sheet
from core.sheet.find.corners import SURE, Proposal, choose, find_corners
from core.sheet.find.evidence import EVIDENCE, evidence_of, log_odds
from core.sheet.find.quads import bright_area
from core.sheet.find.sight import Sight
from core.sheet.find.within import paint_on_papers
from core.sheet.options import SheetOptions

LEFT, TOP, RIGHT, BOTTOM = BOX
CLEAN = np.array([0.005, 0.008, 0.0, 0.0, 0.0, 0.4, 0.0])


def rectangle(left, top, right, bottom):
    return np.array([[left, top], [right, top], [right, bottom], [left, bottom]], dtype=float)


def evidence(quad, picture=None):
    picture = sheet_picture() if picture is None else picture
    linear = srgb8_to_linear(photo_from(picture).pixels)
    return dict(zip(EVIDENCE, evidence_of(linear, quad), strict=True))


def odds(found):
    return log_odds(9.0, np.array(list(found.values())))


def test_the_painted_rectangle_bears_every_check():
    found = evidence(rectangle(*BOX))
    assert odds(found) > 2
    assert found["darker outside"] == 0
    assert found["beyond"] < 1


def test_a_rectangle_that_ends_at_a_line_is_not_sure():
    # The last band is left out: beyond its corners the sides run on.
    found = evidence(rectangle(LEFT, TOP, RIGHT, TOP + round((BOTTOM - TOP) * 2 / 3)))
    assert found["beyond"] > 4
    assert odds(found) < 0


def test_the_edge_of_the_paper_is_not_sure():
    found = evidence(rectangle(160, 40, 460, 440))
    assert found["darker outside"] > 0.9
    assert odds(found) < 0


def test_one_side_on_the_table_is_not_sure():
    found = evidence(rectangle(LEFT, TOP, RIGHT, 440))
    assert odds(found) < 0


def test_a_rectangle_outside_the_photo_is_not_sure():
    found = evidence(rectangle(700, 500, 900, 700))
    assert found["out of sight"] == 1
    assert odds(found) < 0


@pytest.mark.parametrize("which", range(len(EVIDENCE)))
def test_worse_evidence_never_makes_a_rectangle_surer(which):
    worse = CLEAN.copy()
    worse[which] = 1.0
    assert log_odds(9.0, worse) < log_odds(9.0, CLEAN)


def test_an_equal_rival_leaves_doubt():
    one = Proposal(rectangle(10, 10, 90, 90), 9.0, CLEAN)
    same = Proposal(rectangle(10, 10, 90, 91), 8.9, CLEAN)
    other = Proposal(rectangle(20, 10, 90, 90), 8.9, CLEAN)
    assert choose([one, same])[1] > 0.9
    best, confidence = choose([one, other])
    assert best is one
    assert confidence < 0.6


@pytest.mark.parametrize(("tints", "faint", "meant"), [(0.04, 0.2, "wide"), (0.06, 0.1, "narrow")])
def test_a_last_pale_wash_is_not_taken_for_paper(tints, faint, meant):
    """Of two rectangles nearly as likely the one that goes on below is meant, where the paper all
    round is then more of one tint; not where it is as it was."""
    narrow, wide = CLEAN.copy(), CLEAN.copy()
    narrow[0], wide[0], wide[3] = 0.06, tints, faint
    one = Proposal(rectangle(10, 10, 90, 60), 9.0, narrow)
    more = Proposal(rectangle(10.3, 10, 90, 90), 6.0, wide)
    other = Proposal(rectangle(10, 10, 97, 97), 6.0, wide)
    assert one.log_odds > more.log_odds > one.log_odds - 1
    assert choose([one, more])[0] is (more if meant == "wide" else one)
    assert choose([one, other])[0] is one  # no three sides in common


WASHES = ((0.72, 0.80, 0.90), (0.82, 0.80, 0.84), (0.93, 0.90, 0.86))


@pytest.mark.parametrize("seed", range(4))
def test_paint_on_a_paper_is_found_however_restless_the_table(seed):
    """Pale washes on a table of stripes; the paper a few degrees askew, its border narrow."""
    rng = np.random.default_rng(seed)
    tilt, border = np.radians(rng.uniform(-4, 4)), (0.09, 0.05, 0.025, 0.018)[seed]
    y, x = np.mgrid[0:720, 0:960]
    across = (x - 480) * np.cos(tilt) + (y - 360) * np.sin(tilt)
    down = (y - 360) * np.cos(tilt) - (x - 480) * np.sin(tilt)
    half = np.array([250.0, 210.0])
    stripes = np.clip(
        1 + 0.5 * gaussian_filter(rng.standard_normal((720, 960)), (1.5, 90)) * 12, 0.3, 3
    )
    picture = np.array([0.24, 0.13, 0.06]) * stripes[..., None]
    rim = half + 2 * border * half[1]
    picture[(np.abs(across) < rim[0]) & (np.abs(down) < rim[1])] = PAPER
    painted = (np.abs(across) < half[0]) & (np.abs(down) < half[1])
    band = np.clip(((down / half[1] + 1) / 2 * 3).astype(int), 0, 2)
    picture[painted] = (np.asarray(PAPER) * np.asarray(WASHES))[band[painted]]
    picture *= 1 + 0.01 * rng.standard_normal((720, 960, 1))
    quads, features = paint_on_papers(Sight.of(photo_from(picture)))
    assert len(quads) == len(features) > 0
    turn = np.array([[np.cos(tilt), np.sin(tilt)], [-np.sin(tilt), np.cos(tilt)]])
    true = (np.array([[-1, -1], [1, -1], [1, 1], [-1, 1]]) * half) @ turn + [480.5, 360.5]
    assert np.abs(quads - true).max(axis=(1, 2)).min() < 0.01 * 2 * half[1] + 2
    found = find_corners(Sight.of(photo_from(picture)))
    assert np.abs(np.asarray(found.corners) * [960, 720] - true).max() < 0.02 * 2 * half[1]


def test_paper_is_the_bright_area_with_the_paint_in_it():
    found = bright_area(sheet_picture().astype(np.float32))
    assert found is not None
    assert found[60:420, 180:440].all()
    assert not found[:35].any()
    assert not found[:, :150].any()
    assert bright_area(np.full((60, 80, 3), 0.5, dtype=np.float32)) is None


def test_a_pale_painting_on_wood_is_found():
    # Grain all over the table takes up every line of the first look.
    one = scene(253)
    found = find_corners(Sight.of(open_photo(one.jpeg, name="sheet.jpg")))
    error = np.abs(np.asarray(found.corners) * one.shot.size - one.corners).max()
    assert error < 0.01 * one.shot.size[1]
    assert found.confidence > SURE


@pytest.mark.parametrize("seed", [204, 212])
def test_the_paper_s_edge_around_tape_is_not_called_sure(seed):
    """The bare paper beyond the tape looks like a thin border: the check tells it is tape."""
    one = cases.taped(seed)
    photo = open_photo(one.jpeg, name="sheet.jpg")
    check = check_sheet(photo, measure.reference_of(one), SheetOptions(scan=one.shot.scan))
    assert measure.corner_error(one, check) > measure.FOUND
    assert check.corner_confidence < SURE
    assert "tape" in measure.keys(check)
