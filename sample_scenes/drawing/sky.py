"""A sky: bands of known colours that run softly into one another, with clouds over them."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy import ndimage
from skimage.color import lab2rgb, rgb2lab

from sample_scenes.drawing.noise import Field, fractal, smoothstep, swirled


@dataclass(frozen=True)
class Cloud:
    """One layer of cloud. Heights are fractions of the picture; colours are Lab."""

    centre: float
    spread: float
    cover: float  # share of the field above the threshold at the centre, about 0..1
    lit: tuple[float, float, float]
    shade: tuple[float, float, float]
    stretch: float = 4.0
    slope: float = 2.3
    swirl: float = 18.0
    soft: float = 1.0
    strength: float = 1.0
    lit_from_below: bool = True


def profile(edges: tuple[float, ...], colours: Field, crisp: float) -> tuple[Field, Field]:
    """Heights and their Lab colours down the middle of the sky.

    Each band's own colour sits at its middle and half of each step at its line, so that the
    line is where the colour is halfway; `crisp` is the share of a step made close to the line
    rather than evenly.
    """
    edge = np.asarray(edges)
    middle = (edge[:-1] + edge[1:]) / 2
    halfway = (colours[:-1] + colours[1:]) / 2
    first = 2 * colours[0] - (halfway[0] if len(colours) > 1 else colours[0])
    last = 2 * colours[-1] - (halfway[-1] if len(colours) > 1 else colours[-1])
    knots = np.sort(np.concatenate([edge, middle]))
    at_knots = np.empty((len(knots), 3))
    at_knots[1::2] = colours
    at_knots[2:-1:2] = halfway
    at_knots[0], at_knots[-1] = first, last
    heights = np.linspace(edge[0], edge[-1], 2000)
    even = np.stack([np.interp(heights, knots, at_knots[:, k]) for k in range(3)], axis=1)
    stepped = np.repeat(colours[:1], len(heights), axis=0)
    thickness = np.diff(edge)
    for i in range(1, len(colours)):
        half = 0.42 * min(thickness[i - 1], thickness[i])
        amount = smoothstep(heights, edge[i] - half, edge[i] + half)[:, None]
        stepped = stepped + amount * (colours[i] - colours[i - 1])
    return heights, crisp * stepped + (1 - crisp) * even


def bands_sky(
    shape: tuple[int, int],
    edges: tuple[float, ...],
    colours: Field,
    rng: np.random.Generator,
    *,
    crisp: float = 0.6,
    wander: float = 0.012,
    wash: float = 0.006,
) -> Field:
    """The sky without clouds, Lab, shape (rows, columns, 3).

    `wander` and `wash` bend the lines up and down, in fractions of the height, broadly and
    finely: a wet wash's uneven front. The median of the bending is 0 in every row.
    """
    rows = shape[0]
    heights, Lab = profile(edges, colours, crisp)
    bend = wander * fractal(shape, rng, slope=3.4, stretch=2.5, coarsest=1)
    bend += wash * swirled(fractal(shape, rng, slope=2.4, stretch=6, coarsest=4), rng, 12, 3)
    bend -= np.median(bend, axis=1, keepdims=True)
    at = (np.arange(rows)[:, None] + 0.5) / rows + bend
    return np.stack([np.interp(at, heights, Lab[:, k]) for k in range(3)], axis=2)


def add_glow(
    sky: Field, centre: tuple[float, float], size: tuple[float, float], Lab: tuple[float, ...]
) -> None:
    """Light spreading from the sun's place; the median of each row stays as it was."""
    rows, columns, _ = sky.shape
    y = ((np.arange(rows) + 0.5) / rows - centre[1])[:, None] / size[1]
    x = ((np.arange(columns) + 0.5) / columns - centre[0])[None, :] / size[0]
    glow = np.exp(-0.5 * (x * x + y * y))
    glow -= np.median(glow, axis=1, keepdims=True)
    sky += glow[:, :, None] * np.asarray(Lab)


def add_cloud(sky: Field, cloud: Cloud, rng: np.random.Generator) -> None:
    """Lay one layer of cloud over the sky, in place."""
    shape = sky.shape[:2]
    rows = shape[0]
    field = fractal(shape, rng, slope=cloud.slope, stretch=cloud.stretch, coarsest=2.5)
    field = swirled(field, rng, cloud.swirl, min(cloud.stretch, 3))
    away = ((np.arange(rows) + 0.5) / rows - cloud.centre)[:, None] / cloud.spread
    field = field - 1.5 * np.minimum(away * away, 6)
    threshold = np.quantile(field[np.abs(away[:, 0]) < 1], 1 - cloud.cover)
    density = smoothstep(field, threshold, threshold + cloud.soft)
    # Where the cloud thins towards the light, its edge shines.
    reach = max(2, round(rows * 0.012))
    body = ndimage.gaussian_filter(density, rows * 0.006)
    shift = -reach if cloud.lit_from_below else reach
    toward = np.roll(body, shift, axis=0)
    light = smoothstep(body - toward + 0.25 * (1 - body), -0.12, 0.3)[:, :, None]
    colour = light * np.asarray(cloud.lit) + (1 - light) * np.asarray(cloud.shade)
    amount = (cloud.strength * density)[:, :, None]
    sky += amount * (colour - sky)


def settle(sky: Field, seen: NDArray[np.bool_], edges: tuple[float, ...], colours: Field) -> Field:
    """The sky as sRGB 0..1, its rows shifted until every band's middle is the colour given.

    Clouds, glow and the screen's limits pull a band's middle colour off a little; the geometric
    median over the sky pixels in sight is measured as it would be in the finished picture, and
    taken back, smoothly from band to band.
    """
    rows = sky.shape[0]
    at = (np.arange(rows) + 0.5) / rows
    edge = np.asarray(edges)
    middle = (edge[:-1] + edge[1:]) / 2
    picture = lab2rgb(sky)
    for _ in range(6):
        error = np.empty_like(colours)
        for i, colour in enumerate(colours):
            band = (at >= edge[i]) & (at < edge[i + 1])
            shown = picture[band][seen[band]]
            error[i] = geometric_median(rgb2lab(shown[:: max(1, len(shown) // 30000)])) - colour
        shift = np.stack([np.interp(at, middle, error[:, k]) for k in range(3)], axis=1)
        sky = sky - shift[:, None, :]
        picture = lab2rgb(sky)
    return picture


def geometric_median(points: Field, steps: int = 30) -> Field:
    """The point with the least summed distance to all (Weiszfeld 1937)."""
    middle = np.median(points, axis=0)
    for _ in range(steps):
        near = 1.0 / np.maximum(np.linalg.norm(points - middle, axis=1), 1e-3)
        middle = (points * near[:, None]).sum(axis=0) / near.sum()
    return middle
