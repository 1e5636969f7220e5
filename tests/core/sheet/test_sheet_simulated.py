"""The check on a few simulated sheets that nothing was tuned on.

`benchmarks/sheets.py` measures the targets on a hundred and more; so few sheets can only bear
looser bounds, which still fail when a part of the check breaks.
"""

from __future__ import annotations

import numpy as np
import pytest
from simulator import cases, measure, scene

from core.photo import open_photo
from core.sheet import check_sheet
from core.sheet.result import SheetOptions

FIRST = 8000
COUNT = 10


def checked(one, reference=None):
    photo = open_photo(one.jpeg, name="sheet.jpg")
    reference = reference or measure.reference_of(one)
    return check_sheet(photo, reference, SheetOptions(scan=one.shot.scan))


@pytest.fixture(scope="module")
def pairs():
    found = []
    for seed in range(FIRST, FIRST + COUNT):
        one = scene(seed)
        found.append((one, checked(one)))
    return found


def test_rectangles_are_found(pairs):
    errors = [measure.corner_error(one, check) for one, check in pairs]
    assert sum(error < measure.FOUND for error in errors) >= COUNT - 1
    assert np.median(errors) <= 0.003


def test_colours_come_through_the_light(pairs):
    errors = np.concatenate([measure.colour_errors(one, check) for one, check in pairs])
    assert errors.mean() <= 0.6
    assert np.percentile(errors, 90) <= 1.2


def test_no_shadow_is_seen_where_there_is_none(pairs):
    assert not any("shadow" in measure.keys(check) for _, check in pairs)


def test_lines_are_found(pairs):
    shifts = [shift for one, check in pairs for shift in measure.shifts(one, check)]
    told = [shift.error for shift in shifts if shift.told]
    assert len(told) >= 0.7 * len(shifts)
    assert np.median(told) <= 0.5
    assert sum(error > 2 for error in told) <= 1


def test_hard_edges_and_blooms_are_found(pairs):
    none = measure.Tally()
    full = sum((measure.edge_tallies(one, check)[0] for one, check in pairs), none)
    blooms = sum((measure.bloom_tally(one, check) for one, check in pairs), none)
    assert full.there >= 3
    assert full.precision >= 0.8
    assert full.recall >= 0.8
    assert blooms.precision >= 0.75
    assert blooms.recall >= 0.6


def test_findings_stay_few_and_begin_with_praise(pairs):
    for _, check in pairs:
        kinds = [finding.kind for finding in check.findings]
        assert 1 <= len(kinds) <= 5
        assert kinds == sorted(kinds, key=["praise", "step", "note"].index)
        about = [f.about for f in check.findings if f.kind == "step"]
        assert len(set(about)) >= len(about) - 1


def test_a_perfect_copy_gets_tens_and_no_complaint():
    for seed in (FIRST, FIRST + 1):
        check = checked(cases.copied(seed))
        scores = check.scores
        told = (scores.hue, scores.value, scores.intensity, scores.placement)
        assert {score for score in told if score is not None} == {10.0}
        assert not [finding for finding in check.findings if finding.kind == "step"]


def test_a_soft_shadow_is_noticed():
    check = checked(cases.shadowed(FIRST))
    assert "shadow" in measure.keys(check)
    assert not check.light.sides_compared


def test_a_mirrored_sheet_is_noticed():
    for mirrored in (False, True):
        # The first sky is too pale for its sides to differ.
        reference, one = cases.sideways(FIRST + 1, mirrored=mirrored)
        check = checked(one, measure.reference_from(reference, one.lines))
        assert ("mirrored" in measure.keys(check)) == mirrored
