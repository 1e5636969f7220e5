"""The scenes of `tools.screenshots`: what a page alone does not show.

A scene is one small function with `@scene()`: it brings the stage's window into a state, and gives
the widget to take, or None for the whole window.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
from PIL import Image
from PySide6.QtWidgets import QApplication, QWidget

import sample_scenes
from core.bands.lines import Bands
from core.study import with_bands
from tools.screenshot_stage import LARGE_TEXT, PLAIN, WIDE, Stage, scene

BLUE, PALE, PEACH = (64, 88, 170), (150, 170, 205), (250, 200, 150)


def sample_study(stage: Stage) -> None:
    """A study with everything in it that a page can show."""
    stage.open_sample(sample_scenes.DEFAULT)


def page_of_sample_study(stage: Stage, key: str) -> QWidget | None:
    """A page with the sample study on it."""
    sample_study(stage)
    stage.page(key)
    return None


def draw_sky(
    folder: Path, size: tuple[int, int], *colours: tuple[int, int, int], ground: float = 0.15
) -> Path:
    """A picture that runs through the colours, over dark ground."""
    width, height = size
    end = round(height * (1 - ground))
    at = np.linspace(0, len(colours) - 1, end)
    column = [np.interp(at, range(len(colours)), channel) for channel in zip(*colours, strict=True)]
    pixels = np.full((height, width, 3), (45, 50, 35), np.float64)
    pixels[:end] = np.stack(column, axis=1)[:, None]
    # One row of grain, rolled along, is enough for a picture of any width.
    grain = np.random.default_rng(0).normal(0, 2, (height, 1024, 1))
    pixels += np.tile(grain, (1, -(-width // 1024), 1))[:, :width]
    path = folder / "sky.png"
    Image.fromarray(pixels.clip(0, 255).astype(np.uint8)).save(path)
    return path


def draw_clouds(folder: Path) -> Path:
    """An evening sky, dark clouds with a glow between over a third of it, above dark ground."""
    path = draw_sky(folder, (1200, 800), BLUE, (74, 70, 84), PEACH)
    pixels = np.asarray(Image.open(path)).copy()
    y, x = np.mgrid[0:800, 0:1200]
    waves = np.sin(x / 61 + 2 * np.sin(y / 37)) + np.sin(y / 23 + x / 170)
    between = (y > 200) & (y < 460)
    pixels[between & (waves > 0.6)] = (240, 160, 80)
    Image.fromarray(pixels).save(path)
    return path


def set_bands(stage: Stage, *lines: float, horizon: float) -> None:
    """Lines as if drawn by hand."""
    document = stage.window.document
    document.change("lines", with_bands(document.study, Bands(horizon, lines)))
    stage.settle()


@scene(PLAIN, WIDE, LARGE_TEXT)
def read_empty(stage: Stage) -> None:
    """No photo yet."""
    stage.settle()


@scene()
def read_portrait(stage: Stage) -> None:
    """A photo held upright."""
    stage.open(draw_sky(stage.folder, (900, 1600), BLUE, PALE, PEACH))


@scene()
def read_portrait_broad(stage: Stage) -> None:
    """A photo a little higher than wide."""
    stage.open(draw_sky(stage.folder, (1200, 1600), BLUE, PALE, PEACH))


@scene(PLAIN, WIDE, LARGE_TEXT)
def read_opening(stage: Stage) -> None:
    """The first photo is being opened."""
    stage.window.opener.open_sample(sample_scenes.DEFAULT)


@scene(PLAIN, WIDE)
def read_opened(stage: Stage) -> None:
    """A photo has come, and its bands have not been found yet."""
    reader = stage.window.reader
    shown: list[object] = []
    reader.photo_changed.connect(shown.append)
    stage.window.opener.open_sample(sample_scenes.DEFAULT)
    while not shown:
        QApplication.processEvents()
    reader.put_away()  # nothing is proposed any more: the picture is taken of the moment before
    reader.opened = shown[0]  # type: ignore[assignment]


@scene(PLAIN, WIDE, LARGE_TEXT)
def read_two_colours(stage: Stage) -> None:
    """A band with a glow between dark clouds."""
    stage.open(draw_clouds(stage.folder))
    set_bands(stage, 0.25, 0.55, horizon=0.85)


@scene()
def read_panorama(stage: Stage) -> None:
    """A strip of 30,000 pixels."""
    stage.open(draw_sky(stage.folder, (30_000, 900), BLUE, PALE, PEACH))


@scene()
def read_grey(stage: Stage) -> None:
    """Clouds: near neutrals with long readouts."""
    stage.open(
        draw_sky(stage.folder, (1500, 1000), (118, 124, 134), (150, 155, 160), (98, 96, 100))
    )


@scene(PLAIN)
def read_grey_sample(stage: Stage) -> None:
    """The near-neutral sample."""
    stage.open_sample("quay")


@scene()
def read_bright(stage: Stage) -> None:
    """Nearly white, and clipped."""
    stage.open(draw_sky(stage.folder, (1500, 1000), (235, 243, 255), (255, 255, 255)))


@scene()
def read_dark(stage: Stage) -> None:
    """Night."""
    stage.open(draw_sky(stage.folder, (1500, 1000), (4, 6, 14), (16, 20, 38), ground=0.3))


@scene()
def read_one_band(stage: Stage) -> None:
    """The whole sky as one."""
    stage.open_sample(sample_scenes.DEFAULT)
    set_bands(stage, horizon=0.61)


@scene()
def read_seven_bands(stage: Stage) -> None:
    """As many as are proposed at most."""
    stage.open_sample(sample_scenes.DEFAULT)
    set_bands(stage, 0.08, 0.16, 0.25, 0.33, 0.41, 0.5, horizon=0.61)


@scene(PLAIN, LARGE_TEXT)
def read_thin_bands(stage: Stage) -> None:
    """Lines as close as they may be: their grips move apart."""
    stage.open_sample(sample_scenes.DEFAULT)
    set_bands(stage, 0.3, 0.31, 0.32, 0.33, 0.5, horizon=0.61)


@scene(PLAIN)
def read_value_steps(stage: Stage) -> None:
    """The photo in five values."""
    stage.open_sample(sample_scenes.DEFAULT)
    stage.page("read").look_at("steps 5")
    stage.settle()


@scene(PLAIN)
def read_squint(stage: Stage) -> None:
    """The photo through half-closed eyes."""
    stage.open_sample("ember")
    stage.page("read").look_at("squint")
    stage.settle()


@scene(PLAIN, LARGE_TEXT)
def read_unsure(stage: Stage) -> None:
    """A proposal with doubts: snow below a dark sky."""
    stage.open(draw_sky(stage.folder, (1500, 1000), (70, 80, 100), (90, 95, 110)))
    path = stage.folder / "snow.png"
    pixels = np.asarray(Image.open(stage.folder / "sky.png")).copy()
    pixels[850:] = (235, 238, 245)
    Image.fromarray(pixels).save(path)
    stage.open(path)


@scene(PLAIN)
def read_zoomed(stage: Stage) -> None:
    """Closer to the photo."""
    stage.open_sample("pines")
    stage.page("read").canvas.zoom(2.5)
    stage.settle()


@scene(PLAIN, LARGE_TEXT)
def read_problem(stage: Stage) -> None:
    """A file that cannot be opened."""
    stage.open_sample(sample_scenes.DEFAULT)
    (stage.folder / "letter.jpg").write_text("no picture")
    stage.open(stage.folder / "letter.jpg")


def _wheel_over(stage: Stage) -> None:
    page = stage.page("read")
    page.lay_wheel_over(True)
    stage.settle()
    page.choose(1)
    page._show_point((0.5, 0.3))
    stage.settle()


@scene(PLAIN, WIDE, LARGE_TEXT)
def read_wheel_over(stage: Stage) -> None:
    """The wheel on the photo, over what is not sky."""
    stage.open_sample(sample_scenes.DEFAULT)
    _wheel_over(stage)


@scene(PLAIN, LARGE_TEXT)
def read_wheel_over_portrait(stage: Stage) -> None:
    """The wheel on a photo held upright."""
    stage.open(draw_sky(stage.folder, (900, 1600), BLUE, PALE, PEACH))
    _wheel_over(stage)


@scene(PLAIN)
def read_wheel_over_all_sky(stage: Stage) -> None:
    """A photo of nothing but sky, seven bands: it hides as little as it can."""
    stage.open(draw_sky(stage.folder, (1500, 1000), BLUE, PALE, PEACH, ground=0.0))
    set_bands(stage, 0.14, 0.28, 0.42, 0.57, 0.71, 0.85, horizon=1.0)
    _wheel_over(stage)
