"""What stands before the sky: hills, pines, reeds, roofs and water, drawn over it."""

from __future__ import annotations

import numpy as np
from PIL import Image, ImageDraw
from scipy import ndimage

from sample_scenes.drawing.noise import Field, fractal, ridge

SHARP = 3  # silhouettes are drawn this many times larger, then reduced, for smooth edges


def hill(
    shape: tuple[int, int],
    rng: np.random.Generator,
    base: float,
    height: float,
    *,
    lumps: float = 2,
    slope: float = 2.6,
    fuzz: float = 0.0,
) -> Field:
    """How much of each pixel a hill covers. `base` and `height` are fractions of the picture;
    `fuzz` is the height of woods along the ridge."""
    rows, columns = shape
    top = base - height * ridge(columns, rng, lumps=lumps, slope=slope)
    if fuzz:
        top -= fuzz * np.abs(ridge(columns, rng, lumps=columns / 30, slope=1.2))
    y = (np.arange(rows) + 0.5)[:, None]
    return np.clip(y - top[None, :] * rows + 0.5, 0.0, 1.0)


class Silhouette:
    """A canvas of SHARP times the size on which dark shapes are drawn in fractions."""

    def __init__(self, shape: tuple[int, int]) -> None:
        self.rows, self.columns = shape
        self._image = Image.new("L", (self.columns * SHARP, self.rows * SHARP), 0)
        self._pen = ImageDraw.Draw(self._image)

    def shape(self, points: list[tuple[float, float]]) -> None:
        """Fill a polygon; x and y are fractions of the picture's width and height."""
        wide, tall = self._image.size
        self._pen.polygon([(x * wide, y * tall) for x, y in points], fill=255)

    def stroke(self, points: list[tuple[float, float]], thick: float) -> None:
        """A line `thick` pixels wide."""
        wide, tall = self._image.size
        self._pen.line(
            [(x * wide, y * tall) for x, y in points],
            fill=255,
            width=max(1, round(thick * SHARP)),
            joint="curve",
        )

    def pine(self, rng: np.random.Generator, x: float, foot: float, tall: float) -> None:
        """A ragged conifer, `tall` a fraction of the height, standing at (x, foot)."""
        across = self.rows / self.columns
        half = tall * 0.17 * across * rng.uniform(0.8, 1.2)
        lean = rng.normal(0, 0.015) * tall * across
        tiers = max(8, round(tall * self.rows / 14))
        trunk = tall * 0.010 * across
        self.shape([(x - trunk, foot), (x + lean, foot - tall * 1.03), (x + trunk, foot)])
        for i in range(tiers):
            up = i / tiers
            reach = half * (1 - up) ** 0.9 + 0.0006
            middle = x + lean * up
            y = foot - tall * (0.08 + 0.9 * up)
            drop = tall / tiers * 1.7
            for side in (-1, 1):
                far = reach * rng.uniform(0.55, 1.15) * side
                self.shape(
                    [
                        (middle, y - drop * 0.9),
                        (middle + far, y + drop * rng.uniform(0.1, 0.7)),
                        (middle + far * 0.45, y + drop * 0.15),
                        (middle, y + drop * 0.5),
                    ]
                )

    def reeds(
        self,
        rng: np.random.Generator,
        count: int,
        left: float,
        right: float,
        foot: float,
        top: float,
    ) -> None:
        """Thin bent stems with seed heads, between `left` and `right`."""
        for _ in range(count):
            x = rng.uniform(left, right)
            tall = top * rng.uniform(0.45, 1.0)
            bend = rng.normal(0.008, 0.012)
            stem = [(x + bend * t * t, foot - tall * t) for t in np.linspace(0, 1, 9)]
            self.stroke(stem, rng.uniform(0.9, 1.8))
            if rng.random() < 0.35:
                self.stroke(stem[6:8], rng.uniform(3.0, 4.5))

    def bird(self, x: float, y: float, span: float) -> None:
        """A gull far away: two bent strokes."""
        across = self.rows / self.columns
        half = span / 2 * across
        self.stroke(
            [
                (x - half, y - span * 0.10),
                (x - half * 0.45, y - span * 0.22),
                (x, y),
                (x + half * 0.45, y - span * 0.24),
                (x + half, y - span * 0.13),
            ],
            1.6,
        )

    def cover(self) -> Field:
        """The canvas as coverage 0..1 at the picture's size."""
        small = self._image.resize((self.columns, self.rows), Image.Resampling.BOX)
        return np.asarray(small, dtype=np.float64) / 255


def lay(picture: Field, cover: Field, colour: Field | tuple[float, float, float]) -> None:
    """Paint `colour` (sRGB 0..1) over the picture where `cover` says, in place."""
    amount = cover[:, :, None]
    picture += amount * (np.asarray(colour) - picture)


def mirrored(cover: Field, line: float, rng: np.random.Generator) -> Field:
    """What water at `line` (a fraction of the height) shows of a silhouette above it."""
    rows, columns = cover.shape
    top = round(line * rows)
    depth = min(rows - top, top)
    waves = fractal((depth, columns), rng, slope=1.5, stretch=10, coarsest=10)
    across = np.arange(columns) + 2.5 * waves
    down = np.broadcast_to(top - 1 - np.arange(depth)[:, None] + 1.5 * waves, across.shape)
    shown = np.zeros_like(cover)
    shown[top : top + depth] = ndimage.map_coordinates(cover, [down, across], order=1)
    return shown


def mist(picture: Field, centre: float, spread: float, colour: Field, strength: float) -> None:
    """A bank of mist lying at one height, in place."""
    rows = picture.shape[0]
    away = ((np.arange(rows) + 0.5) / rows - centre) / spread
    amount = strength * np.exp(-0.5 * away * away)[:, None, None]
    picture += amount * (colour - picture)


def water(
    picture: Field,
    rng: np.random.Generator,
    line: float,
    *,
    dim: float = 0.7,
    tint: tuple[float, float, float] = (0.1, 0.12, 0.2),
    ripple: float = 1.0,
    glint: float = 0.0,
    glint_at: float = 0.5,
) -> None:
    """Turn everything below `line` into water mirroring what stands above it, in place."""
    rows, columns, _ = picture.shape
    top = round(line * rows)
    depth = rows - top
    below = np.arange(depth)
    near = (below / depth)[:, None]
    waves = fractal((depth, columns), rng, slope=2.0, stretch=9, coarsest=3)
    waves2 = fractal((depth, columns), rng, slope=1.4, stretch=16, coarsest=12)
    from_row = top - 1 - 0.95 * below[:, None] + ripple * (4 + 26 * near) * (waves + 0.6 * waves2)
    from_row = np.clip(from_row, 0, top - 1)
    from_column = np.broadcast_to(np.arange(columns), (depth, columns)) + ripple * 3 * waves2
    mirror = np.empty((depth, columns, 3))
    for k in range(3):
        soft = ndimage.gaussian_filter(picture[:top, :, k], (2.0, 1.0))
        mirror[:, :, k] = ndimage.map_coordinates(
            soft, [from_row, from_column], order=1, mode="nearest"
        )
    mirror = dim * mirror + (1 - dim) * np.asarray(tint)
    mirror += 0.018 * ripple * (waves2 * (0.3 + near))[:, :, None]
    if glint:
        x = (np.arange(columns) / columns - glint_at)[None, :] / (0.05 + 0.10 * near)
        spark = np.clip(waves2 - 0.9, 0, 2) * np.exp(-0.5 * x * x) * glint
        mirror += spark[:, :, None] * np.array([1.0, 0.8, 0.5])
    picture[top:] = np.clip(mirror, 0, 1)
