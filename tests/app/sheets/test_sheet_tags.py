from __future__ import annotations

import itertools

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.drawing.sheets.tags import place_tags

AREA = (0.0, 0.0, 360.0, 250.0)
HEIGHT = 26.0


def boxes(centres, widths):
    return [
        (x - w / 2, y - HEIGHT / 2, x + w / 2, y + HEIGHT / 2)
        for (x, y), w in ((c, w) for c, w in zip(centres, widths, strict=True) if c is not None)
    ]


def shared(a, b) -> float:
    return max(0, min(a[2], b[2]) - max(a[0], b[0])) * max(0, min(a[3], b[3]) - max(a[1], b[1]))


@given(
    st.lists(st.tuples(st.floats(0, 360), st.floats(0, 250)), max_size=7),
    st.floats(40, 120),
)
def test_tags_stay_inside(anchors, width) -> None:
    widths = [width] * len(anchors)
    for left, top, right, bottom in boxes(place_tags(anchors, widths, HEIGHT, AREA), widths):
        assert left >= AREA[0] - 1e-6
        assert top >= AREA[1] - 1e-6
        assert right <= AREA[2] + 1e-6
        assert bottom <= AREA[3] + 1e-6


def test_tags_cover_neither_each_other_nor_what_they_speak_of() -> None:
    anchors = [(180, 125), (182, 126), (60, 40), (300, 220)]
    widths = [90, 60, 60, 110]
    placed = boxes(place_tags(anchors, widths, HEIGHT, AREA), widths)
    for a, b in itertools.combinations(placed, 2):
        assert shared(a, b) == 0
    for box in placed:
        for x, y in anchors:
            assert not (box[0] < x < box[2] and box[1] < y < box[3])


def test_a_tag_keeps_clear_of_what_it_must() -> None:
    bloom = (150, 60, 260, 124)
    (centre,) = place_tags([(180, 125)], [80], HEIGHT, AREA, keep_clear=[bloom])
    assert shared(boxes([centre], [80])[0], bloom) == 0


def test_no_tags() -> None:
    assert place_tags([], [], HEIGHT, AREA) == ()


@pytest.mark.parametrize("size", [(163, 128), (242, 190), (400, 300)])
def test_tags_never_lie_on_each_other(size):
    width, height = size
    area = (6.0, 6.0, width - 6.0, height - 6.0)
    rng = np.random.default_rng(3)
    left_out = 0
    for _ in range(40):
        count = int(rng.integers(1, 6))
        anchors = [tuple(rng.uniform(0, 1, 2) * size) for _ in range(count)]
        widths = rng.uniform(55, 95, count).tolist()
        centres = place_tags(anchors, widths, HEIGHT, area)
        assert centres[0] is not None
        left_out += centres.count(None)
        for one, other in itertools.combinations(boxes(centres, widths), 2):
            assert shared(one, other) == 0
    assert (left_out > 0) == (size == (163, 128))
