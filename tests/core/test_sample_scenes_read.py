"""The whole way from a picture file to bands, against scenes whose truth is known.

The limits are the project's own: band colours within 1.0 (CIEDE2000), lines within 2% of the
height. Colour differences are taken by scikit-image, not by our own formula.
"""

from __future__ import annotations

import numpy as np
import pytest
from skimage.color import deltaE_ciede2000

import sample_scenes
from core.bands.careful import read_bands
from core.bands.lines import Bands
from core.bands.propose import Proposal, propose
from core.photo import Photo, open_photo


@pytest.fixture(scope="module", params=sample_scenes.names())
def scene(request: pytest.FixtureRequest) -> tuple[sample_scenes.SceneTruth, Photo, Proposal]:
    photo = open_photo(sample_scenes.path(request.param))
    return sample_scenes.truth(request.param), photo, propose(photo)


def test_proposed_lines(scene) -> None:
    truth, _, proposal = scene
    assert proposal.bands.horizon == pytest.approx(truth.horizon, abs=0.02)
    assert proposal.bands.count == len(truth.bands)
    assert proposal.bands.lines == pytest.approx(truth.lines, abs=0.02)


def test_colours_read_between_the_true_lines(scene) -> None:
    truth, photo, proposal = scene
    readings = read_bands(photo, proposal.sky, Bands(truth.horizon, truth.lines))
    for band, reading in zip(truth.bands, readings, strict=True):
        assert reading.letter == band.letter
        assert reading.colour is not None
        assert deltaE_ciede2000(np.array(reading.colour.Lab), np.array(band.Lab)) <= 1.0
