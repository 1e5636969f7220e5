"""An edge that the photo has too is no fault; a steep slope in the photo is no edge."""

from __future__ import annotations

import numpy as np
import pytest

from core.bands.lines import Bands
from core.colour.working_space import W_to_linear
from core.sheet.painted.edges import find_edges
from core.sheet.painted.photo_has import has_edge, photo_sky

H, W = 512, 700
Y = (np.arange(H) + 0.5) / H
BANDS = Bands(1.0, (0.5,))
FROM, TO = np.array([45.0, 4.0, -30.0]), np.array([88.0, 6.0, 12.0])


def sky(width, at=0.5):
    """Working colours (H, W, 3): one colour melts into another over so much of the height."""
    below = 1 / (1 + np.exp(-np.clip((Y - at) * 4.394 / width, -40, 40)))
    rows = FROM + below[:, None] * (TO - FROM)
    return np.repeat(rows[:, None], W, axis=1)


def excused(sheet, photo, at):
    own = photo_sky(W_to_linear(photo), np.ones((H, W), dtype=bool), BANDS)
    return has_edge(own, sheet, BANDS, 1.0, at, 0.0, 1.0)


@pytest.mark.parametrize("at", [0.3, 0.42, 0.5, 0.6])
@pytest.mark.parametrize("melts", [0.15, 0.3, 0.6])
def test_a_hard_edge_in_a_wash_that_grades_steeply_in_the_photo_is_told(at, melts):
    photo = sky(melts)
    dried = 1 / (1 + np.exp(-np.clip((Y - at) * 4.394 / 0.006, -40, 40)))
    sheet = photo + 0.13 * dried[:, None, None] * (TO - FROM)
    assert [edge.at for edge in find_edges(sheet)] == [pytest.approx(at, abs=0.01)]
    assert not excused(sheet, photo, at)


@pytest.mark.parametrize(("photo", "sheet", "own"), [
    (0.008, 0.012, True), (0.012, 0.02, True), (0.018, 0.024, True),  # copied softly
    (0.018, 0.012, True),  # a little crisper than the photo
    (0.05, 0.012, False), (0.1, 0.02, False),  # the photo melts there
])  # fmt: skip
def test_an_edge_is_the_photo_s_own_where_the_photo_is_sharp_there(photo, sheet, own):
    assert excused(sky(sheet), sky(photo), 0.5) is own
    assert excused(sky(sheet, 0.52), sky(photo), 0.52) is own
