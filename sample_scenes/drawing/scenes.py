"""The scenes: the bands and lines each is to have, its clouds, and the land before it.

The places are invented.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from skimage.color import lab2rgb

from sample_scenes.drawing.land import Silhouette, hill, lay, mirrored, mist, water
from sample_scenes.drawing.noise import Field, fractal
from sample_scenes.drawing.sky import Cloud


@dataclass(frozen=True)
class Glow:
    centre: tuple[float, float]
    size: tuple[float, float]
    Lab: tuple[float, float, float]


@dataclass(frozen=True)
class Scene:
    """What a scene is to be: bands from the top as Lab, and their lines."""

    name: str
    seed: int
    size: tuple[int, int]  # columns, rows
    lines: tuple[float, ...]
    horizon: float
    bands: tuple[tuple[float, float, float], ...]
    land: Callable[[Field, Silhouette, np.random.Generator], Field]
    clouds: tuple[Cloud, ...] = ()
    glows: tuple[Glow, ...] = ()
    crisp: float = 0.6
    wander: float = 0.012
    finish: Callable[[Field, np.random.Generator], None] | None = None


def rgb(*Lab: float) -> Field:
    """One Lab colour as sRGB 0..1."""
    return lab2rgb(np.array(Lab, dtype=float)[None, None])[0, 0]


def lake_land(picture: Field, ink: Silhouette, rng: np.random.Generator) -> Field:
    shape = picture.shape[:2]
    far = hill(shape, rng, 0.605, 0.028, lumps=2, slope=2.9)
    middle = hill(shape, rng, 0.628, 0.020, lumps=3, slope=2.5, fuzz=0.006)
    near = hill(shape, rng, 0.652, 0.014, lumps=2, slope=2.6, fuzz=0.016)
    lay(picture, far, rgb(40, 14, -10))
    mist(picture, 0.640, 0.012, rgb(56, 18, 2), 0.35)
    lay(picture, middle, rgb(28, 9, -12))
    mist(picture, 0.655, 0.008, rgb(44, 14, -2), 0.4)
    lay(picture, near, rgb(14, 4, -8))
    water(picture, rng, 0.665, dim=0.72, tint=(0.10, 0.09, 0.17), ripple=0.8)
    ink.reeds(rng, 130, 0.0, 0.24, 1.01, 0.24)
    ink.reeds(rng, 70, 0.80, 1.0, 1.01, 0.17)
    lay(picture, ink.cover(), rgb(7, 2, -5))
    return np.maximum(np.maximum(far, middle), near)


def lake_finish(picture: Field, rng: np.random.Generator) -> None:
    """A thin moon and a few early stars."""
    rows, columns, _ = picture.shape
    y, x = np.mgrid[0:rows, 0:columns]
    moon = np.clip(17.5 - np.hypot(x - 1270, y - 128), 0, 1)
    dark = np.clip(18.5 - np.hypot(x - 1262, y - 121), 0, 1)
    lay(picture, moon * (1 - dark), (1.0, 0.97, 0.90))
    for _ in range(14):
        sx, sy, size = rng.uniform(0, columns), rng.uniform(0, 230), rng.uniform(0.5, 1.1)
        lay(
            picture,
            0.8 * np.exp(-((x - sx) ** 2 + (y - sy) ** 2) / (2 * size**2)),
            (0.93, 0.93, 1.0),
        )


def fell_land(picture: Field, ink: Silhouette, rng: np.random.Generator) -> Field:
    shape = picture.shape[:2]
    far = hill(shape, rng, 0.735, 0.032, lumps=1.5, slope=2.7)
    middle = hill(shape, rng, 0.785, 0.030, lumps=2, slope=2.6, fuzz=0.003)
    near = hill(shape, rng, 0.875, 0.045, lumps=1.5, slope=2.8, fuzz=0.004)
    lay(picture, far, rgb(46, -8, -10))
    lay(picture, middle, textured(shape, rng, (37, -15, 14), 3.5))
    mist(picture, 0.80, 0.02, rgb(60, -8, 0), 0.18)
    lay(picture, near, textured(shape, rng, (30, -17, 22), 5.0))
    for _ in range(26):
        ink.pine(rng, rng.uniform(0.0, 0.34), rng.uniform(0.90, 0.97), rng.uniform(0.05, 0.10))
    lay(picture, ink.cover(), textured(shape, rng, (19, -14, 14), 3))
    return np.maximum(far, middle)


def head_land(picture: Field, ink: Silhouette, rng: np.random.Generator) -> Field:
    rows, columns, _ = picture.shape
    y = (np.arange(rows) + 0.5)[:, None]
    sea = np.broadcast_to(np.clip(y - 0.70 * rows + 0.5, 0, 1), (rows, columns))
    water(
        picture, rng, 0.70, dim=0.42, tint=(0.10, 0.05, 0.10), ripple=1.3, glint=0.5, glint_at=0.40
    )
    cliff = [(1.0, 0.60), (0.93, 0.618), (0.885, 0.623), (0.85, 0.652), (0.80, 0.662)]
    cliff += [(0.775, 0.690), (0.72, 0.703), (0.66, 0.708), (0.60, 0.715), (1.0, 0.80)]
    ink.shape(cliff)
    # The beacon on the head.
    ink.shape([(0.928, 0.62), (0.932, 0.515), (0.946, 0.515), (0.950, 0.62)])
    ink.shape([(0.929, 0.517), (0.934, 0.500), (0.944, 0.500), (0.949, 0.517)])
    ink.shape([(0.9335, 0.502), (0.939, 0.480), (0.9445, 0.502)])
    for x, at, span in ((0.22, 0.33, 0.026), (0.255, 0.30, 0.020), (0.29, 0.345, 0.017)):
        ink.bird(x, at, span)
    cover = ink.cover()
    lay(picture, cover, rgb(8, 6, 0))
    return np.maximum(sea, cover)


def marsh_land(picture: Field, ink: Silhouette, rng: np.random.Generator) -> Field:
    shape = picture.shape[:2]
    far = hill(shape, rng, 0.660, 0.008, lumps=3, slope=2.4, fuzz=0.008)
    lay(picture, far, rgb(38, -1, -3))
    ground = hill(shape, rng, 0.678, 0.004, lumps=3)
    lay(picture, ground, textured(shape, rng, (33, 1, 9), 4.0))
    pool = hill(shape, rng, 0.80, 0.016, lumps=2) * (1 - hill(shape, rng, 0.90, 0.02, lumps=2))
    lay(picture, pool, textured(shape, rng, (52, -1, -2), 1.5, stretch=10))
    ink.reeds(rng, 420, 0.0, 1.0, 1.02, 0.17)
    for i in range(7):
        x = 0.58 + 0.055 * i
        ink.stroke([(x, 0.79 + 0.004 * i), (x + 0.002, 0.715 + 0.002 * i)], 6)
    ink.stroke([(0.58, 0.745), (0.91, 0.755)], 2)
    lay(picture, ink.cover(), rgb(17, 1, 5))
    return np.maximum(far, ground)


def quay_land(picture: Field, ink: Silhouette, rng: np.random.Generator) -> Field:
    rows, columns, _ = picture.shape
    shape = (rows, columns)
    y = (np.arange(rows) + 0.5)[:, None]
    sea = np.broadcast_to(np.clip(y - 0.72 * rows + 0.5, 0, 1), shape)
    far = hill(shape, rng, 0.712, 0.010, lumps=2, slope=2.8)
    lay(picture, far, rgb(50, 0, -4))
    water(picture, rng, 0.72, dim=0.66, tint=(0.24, 0.26, 0.28), ripple=0.7)
    # A jetty on piles, and a fishing boat at its mooring; the fog takes their contrast.
    ink.shape([(0.0, 0.812), (0.395, 0.806), (0.395, 0.826), (0.0, 0.836)])
    for i in range(9):
        x = 0.022 + 0.045 * i
        ink.stroke([(x, 0.785), (x, 0.888 - 0.004 * i)], 7)
    ink.stroke([(0.0, 0.787), (0.385, 0.783)], 2)
    jetty = ink.cover()
    boat = Silhouette(shape)
    keel = np.linspace(0, 1, 24)
    hull = [(0.612 + 0.178 * t, 0.826 - 0.022 * t**3 + 0.018 * np.sin(np.pi * t)) for t in keel]
    hull += [(0.778 - 0.150 * t, 0.866 - 0.020 * t**6) for t in keel]
    boat.shape(hull)
    boat.shape([(0.640, 0.842), (0.645, 0.795), (0.684, 0.795), (0.690, 0.846)])
    boat.stroke([(0.722, 0.845), (0.722, 0.728)], 4)
    boat.stroke([(0.722, 0.732), (0.788, 0.806)], 1.3)
    boat.stroke([(0.722, 0.732), (0.645, 0.797)], 1.3)
    boat.stroke([(0.722, 0.800), (0.662, 0.762)], 2.5)
    moored = boat.cover()
    lay(picture, 0.30 * mirrored(jetty, 0.872, rng), rgb(40, 0, -2))
    lay(picture, 0.40 * mirrored(moored, 0.864, rng), rgb(40, 0, -2))
    lay(picture, jetty, rgb(33, 0, -3))
    lay(picture, moored, rgb(38, 0, -3))
    return np.maximum(sea, far)


def pines_land(picture: Field, ink: Silhouette, rng: np.random.Generator) -> Field:
    shape = picture.shape[:2]
    far = hill(shape, rng, 0.790, 0.014, lumps=2, slope=2.8)
    lay(picture, far, rgb(30, -2, -10))
    near = hill(shape, rng, 0.862, 0.016, lumps=1.5)
    lay(picture, near, rgb(9, -2, -5))
    for _ in range(90):
        x = rng.uniform(-0.02, 1.02)
        ink.pine(rng, x, rng.uniform(0.878, 0.90), rng.uniform(0.045, 0.085))
    for x, tall in ((0.075, 0.30), (0.135, 0.22), (0.93, 0.36), (0.865, 0.24), (0.985, 0.20)):
        ink.pine(rng, x, 0.90, tall)
    cover = ink.cover()
    lay(picture, cover, rgb(6, -2, -4))
    return np.maximum(np.maximum(far, near), cover)


def textured(
    shape: tuple[int, int],
    rng: np.random.Generator,
    Lab: tuple[float, float, float],
    rough: float,
    stretch: float = 3.0,
) -> Field:
    """One Lab colour with a rough surface, as an sRGB picture."""
    surface = np.broadcast_to(np.asarray(Lab, dtype=float), (*shape, 3)).copy()
    surface[:, :, 0] += rough * fractal(shape, rng, slope=1.3, stretch=stretch, coarsest=6)
    return lab2rgb(surface)


WIDE = (1600, 1000)
SCENES = (
    Scene(
        name="dusk",
        seed=7,
        size=WIDE,
        lines=(0.150, 0.290, 0.410, 0.510),
        horizon=0.60,
        bands=((39, 25, -48), (53, 24, -35), (65, 27, -5), (71, 25, 16), (75, 18, 38)),
        land=lake_land,
        finish=lake_finish,
        clouds=(
            Cloud(0.36, 0.10, 0.20, (78, 34, 2), (47, 24, -24), stretch=7, soft=1.3, strength=0.75),
            Cloud(0.50, 0.05, 0.22, (84, 26, 30), (56, 30, -6), stretch=10, soft=1.2, strength=0.7),
            Cloud(
                0.14, 0.10, 0.16, (58, 24, -36), (45, 22, -44), stretch=6, soft=1.6, strength=0.6
            ),
        ),
        glows=(Glow((0.36, 0.62), (0.22, 0.16), (6, 1, 12)),),
    ),
    Scene(
        name="fell",
        seed=21,
        size=WIDE,
        lines=(0.210, 0.420, 0.590),
        horizon=0.735,
        bands=((45, -2, -38), (59, -8, -34), (73, -10, -23), (86, -5, -8)),
        land=fell_land,
        clouds=(
            Cloud(
                0.52,
                0.11,
                0.26,
                (97, 0, 1),
                (74, -2, -10),
                stretch=2.2,
                slope=2.1,
                soft=0.7,
                strength=0.95,
                lit_from_below=False,
            ),
            Cloud(
                0.26,
                0.12,
                0.16,
                (95, 0, -2),
                (72, -3, -16),
                stretch=2.6,
                slope=2.1,
                soft=0.9,
                strength=0.85,
                lit_from_below=False,
            ),
            Cloud(
                0.08, 0.06, 0.20, (80, -4, -16), (70, -4, -24), stretch=8, soft=2.0, strength=0.45
            ),
        ),
    ),
    Scene(
        name="ember",
        seed=5,
        size=WIDE,
        lines=(0.165, 0.330, 0.470, 0.600),
        horizon=0.70,
        bands=((30, 28, -26), (42, 44, -2), (53, 56, 30), (64, 43, 52), (76, 19, 58)),
        land=head_land,
        clouds=(
            Cloud(0.20, 0.12, 0.24, (58, 52, 20), (24, 20, -18), stretch=6, soft=1.1, strength=0.8),
            Cloud(0.42, 0.07, 0.22, (76, 40, 56), (36, 38, 6), stretch=9, soft=1.1, strength=0.8),
            Cloud(0.60, 0.03, 0.20, (88, 14, 66), (54, 44, 36), stretch=14, soft=1.2, strength=0.7),
        ),
        glows=(Glow((0.40, 0.70), (0.16, 0.13), (12, -6, 16)),),
    ),
    Scene(
        name="marsh",
        seed=33,
        size=WIDE,
        lines=(0.220, 0.440),
        horizon=0.657,
        bands=((51, 0.5, -1), (66, 0.5, -1), (81, 0, 0)),
        land=marsh_land,
        clouds=(
            Cloud(0.13, 0.16, 0.30, (62, 0, -1), (42, 0, -3), stretch=3.0, soft=1.6, strength=0.85),
            Cloud(0.42, 0.16, 0.30, (80, 0, 0), (54, 0, -2), stretch=4.0, soft=1.6, strength=0.85),
        ),
        wander=0.018,
    ),
    Scene(
        name="quay",
        seed=12,
        size=WIDE,
        lines=(0.260, 0.490),
        horizon=0.712,
        bands=((70, 1.5, -3), (79, 1, -2), (87, 1.5, 3.5)),
        land=quay_land,
        clouds=(
            Cloud(
                0.30,
                0.22,
                0.22,
                (86, 1, -1),
                (68, 1, -5),
                stretch=5,
                slope=2.8,
                soft=2.4,
                strength=0.5,
            ),
        ),
        glows=(Glow((0.62, 0.40), (0.20, 0.20), (5, 0, 3)),),
        wander=0.015,
    ),
    Scene(
        name="pines",
        seed=3,
        size=(1000, 1500),
        lines=(0.200, 0.390, 0.560, 0.690),
        horizon=0.795,
        bands=((33, 6, -38), (50, -8, -32), (67, -16, -12), (80, -4, 22), (77, 18, 40)),
        land=pines_land,
        clouds=(
            Cloud(0.60, 0.06, 0.20, (88, 10, 34), (62, 2, 4), stretch=8, soft=1.3, strength=0.65),
            Cloud(
                0.34, 0.10, 0.16, (66, -6, -18), (46, -4, -26), stretch=6, soft=1.6, strength=0.6
            ),
        ),
        glows=(Glow((0.5, 0.80), (0.30, 0.12), (6, 3, 10)),),
    ),
)
