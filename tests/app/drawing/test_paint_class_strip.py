"""The pacing strip: what there is no room for, and what always stays."""

from __future__ import annotations

import itertools

import pytest
from PySide6.QtCore import QRectF

from app.drawing.classview.strip import StripView, strip_places

STEPS = ("Wet", "Lay E, D", "Rinse", "Lay C, B", "Rinse", "Lay A", "Stop", "Dry 15 min")


def places(width: float, present: int | None, steps: tuple[str, ...] = STEPS):
    return strip_places(QRectF(0, 700, width, 68), StripView(steps, present), 768)


@pytest.mark.parametrize("width", [640, 800, 1024, 1366])
@pytest.mark.parametrize("present", [None, *range(len(STEPS))])
def test_the_present_step_and_the_clock_are_always_there(qapp, width, present):
    shown = places(width, present)
    assert shown[present or 0] is not None
    assert shown[-1] is not None
    there = [place for place in shown if place is not None]
    assert there[0].left() > 0
    assert there[-1].right() < width
    for before, after in itertools.pairwise(there):
        assert after.left() - before.right() >= 0.03 * 768  # an arrow fits between


def test_all_steps_stay_where_there_is_room(qapp):
    assert None not in places(1920, None)
    assert None not in places(1024, None, STEPS[:3] + STEPS[-2:])


def test_steps_move_closer_before_one_leaves(qapp):
    steps = ("Wet", "Lay E, D", "Lay C, B, A", "Stop", "Dry 15 min, bell")
    wide, narrow = places(1300, None, steps), places(1024, None, steps)
    assert None not in wide
    assert None not in narrow
    assert narrow[-1].left() - narrow[-2].right() < wide[-1].left() - wide[-2].right()


def test_what_is_over_leaves_first(qapp):
    shown = places(1024, 3)
    gone = [number for number, place in enumerate(shown) if place is None]
    assert gone
    assert gone[0] == 0
    assert 3 not in gone


def test_no_steps_no_places(qapp):
    assert places(1024, None, ()) == ()
