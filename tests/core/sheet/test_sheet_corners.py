"""Finding the painted rectangle, and knowing when it is the wrong one."""

from __future__ import annotations

import numpy as np
import pytest
from sheet_pictures import BOX, photo_from, sheet_picture
from simulator import cases, measure, scene

from core.colour import srgb8_to_linear
from core.photo import open_photo
from core.sheet import check_sheet
from core.sheet.find.corners import SURE, Proposal, choose, find_corners
from core.sheet.find.evidence import EVIDENCE, evidence_of, log_odds
from core.sheet.find.quads import bright_area
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
    found = find_corners(open_photo(one.jpeg, name="sheet.jpg"))
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
