"""The sample scenes are what they say they are, measured without any code of ours."""

from __future__ import annotations

import itertools

import numpy as np
import pytest
from PIL import Image
from skimage.color import deltaE_ciede2000, lab2rgb, rgb2lab

import sample_scenes
from sample_scenes.drawing.scenes import SCENES


def size_of(name: str) -> tuple[int, int]:
    with Image.open(sample_scenes.path(name)) as image:
        return image.size


@pytest.fixture(scope="module", params=sample_scenes.names())
def scene(
    request: pytest.FixtureRequest,
) -> tuple[sample_scenes.SceneTruth, np.ndarray, np.ndarray]:
    """The truth, the picture's CIELAB by scikit-image, and where it is sky for certain."""
    name = request.param
    with Image.open(sample_scenes.path(name)) as image:
        pixels = np.asarray(image.convert("RGB"))
    rows, columns, _ = pixels.shape
    skyline = sample_scenes.truth(name).skyline
    step = [len(part) for part in np.array_split(np.arange(columns), len(skyline))]
    reach = np.repeat(skyline, step)
    seen = (np.arange(rows)[:, None] + 2) / rows <= reach[None, :]
    return sample_scenes.truth(name), rgb2lab(pixels), seen


def test_middle_colour_of_each_band_is_the_truth(scene) -> None:
    # scikit-image 0.24 or newer: rgb2lab (D65, 2 degrees) and deltaE_ciede2000. The limit is the
    # project's own: band colours within 1.0 of the truth.
    truth, Lab, seen = scene
    rows = Lab.shape[0]
    centre = (np.arange(rows) + 0.5) / rows
    for band in truth.bands:
        inside = (centre >= band.top) & (centre < band.bottom)
        pixels = Lab[inside][seen[inside]]
        assert len(pixels) > 10_000
        median = np.median(pixels, axis=0)
        assert deltaE_ciede2000(median, np.array(band.Lab)) <= 1.0


def test_lines_lie_where_the_colour_is_halfway(scene) -> None:
    """Within 2% of the height, the rows' colour crosses from nearer one band to the next."""
    truth, Lab, seen = scene
    rows = Lab.shape[0]
    for above, below in itertools.pairwise(truth.bands):
        step = np.array(below.Lab) - np.array(above.Lab)
        line = above.bottom

        def share(y: float, above=above, step=step) -> float:
            """How far the row at `y` has gone from the band above to the band below."""
            at = slice(round((y - 0.005) * rows), round((y + 0.005) * rows))
            row = np.median(Lab[at][seen[at]], axis=0)
            return float((row - np.array(above.Lab)) @ step / (step @ step))

        assert share(line - 0.02) < 0.5 < share(line + 0.02)


def test_truth_is_what_the_script_draws() -> None:
    assert tuple(scene.name for scene in SCENES) == sample_scenes.names()
    for scene in SCENES:
        truth = sample_scenes.truth(scene.name)
        assert truth.lines == scene.lines
        assert truth.horizon == scene.horizon
        assert truth.Lab == scene.bands
        assert size_of(scene.name) == scene.size


def test_truth_is_well_formed() -> None:
    for name in sample_scenes.names():
        truth = sample_scenes.truth(name)
        edges = [0.0, *truth.lines, truth.horizon]
        assert all(a < b for a, b in itertools.pairwise(edges))
        assert 0.5 < truth.horizon < 1
        assert [band.letter for band in truth.bands] == list("ABCDEFG"[: len(truth.bands)])
        assert [band.bottom for band in truth.bands] == edges[1:]
        # The horizon stands at the 70th percentile of the skyline, as the proposal means it.
        assert np.quantile(truth.skyline, 0.7) == pytest.approx(truth.horizon, abs=0.015)
        # Colours that a screen can show: through sRGB and back they stay themselves.
        there_and_back = rgb2lab(lab2rgb(np.array(truth.Lab, dtype=float)[None]))[0]
        assert there_and_back == pytest.approx(np.array(truth.Lab), abs=0.05)


def test_the_set_has_the_kinds_a_teacher_meets() -> None:
    chroma = {
        name: [float(np.hypot(a, b)) for _, a, b in sample_scenes.truth(name).Lab]
        for name in sample_scenes.names()
    }
    assert max(chroma["marsh"]) < 2  # grey
    assert 2 < max(chroma["quay"]) < 5  # near neutral
    assert max(chroma["ember"]) > 60  # a strong sunset
    width, height = size_of("pines")
    assert height > width
    assert sample_scenes.names()[0] == sample_scenes.DEFAULT


def test_the_pictures_stay_small() -> None:
    sizes = [sample_scenes.path(name).stat().st_size for name in sample_scenes.names()]
    assert sum(sizes) < 2_500_000


def test_every_scene_has_a_title_of_its_own() -> None:
    titles = [sample_scenes.title(name) for name in sample_scenes.names()]
    assert len(set(titles)) == len(titles)
    with pytest.raises(KeyError):
        sample_scenes.path("nowhere")
