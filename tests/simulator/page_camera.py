"""A worksheet page as a phone takes it: tilted, bent, shaded, blurred, noisy, and saved small."""

from __future__ import annotations

import io
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray
from PIL import Image
from scipy.ndimage import gaussian_filter, map_coordinates, uniform_filter1d

from simulator.camera import encode
from simulator.pen_marks import PX
from simulator.strips import strips

Care = Literal["usual", "bad", "blurred"]


@dataclass(frozen=True)
class Ways:
    """From, to: what a picture may have. Blur and motion in pixels of 12 megapixels."""

    tilt_deg: float
    bend_mm: float
    blur: tuple[float, float]
    motion: tuple[float, float]
    noise: tuple[float, float]
    exposure: tuple[float, float]
    shadow: float


WAYS: dict[Care, Ways] = {
    "usual": Ways(15.0, 1.6, (0.8, 2.2), (0.0, 3.0), (0.004, 0.02), (0.35, 0.95), 0.35),
    "bad": Ways(24.0, 2.5, (2.0, 4.0), (2.0, 8.0), (0.01, 0.05), (0.15, 1.0), 0.6),
    "blurred": Ways(15.0, 1.6, (2.5, 5.5), (0.0, 8.0), (0.004, 0.02), (0.35, 0.95), 0.35),
}

SIZES: dict[str, tuple[int, tuple[int, int]]] = {  # long side, JPEG quality
    "12 MP": (4032, (85, 94)),
    "1600": (1600, (65, 82)),
    "1280": (1280, (55, 75)),
}


def photographed(
    sheet: NDArray[np.uint8], size: str, care: Care, rng: np.random.Generator
) -> bytes:
    """A JPEG of a page.

    Parameters
    ----------
    sheet : (h, w) uint8
        `simulator.pen_marks.PX` pixels a millimetre.
    """
    ways, (side, qualities) = WAYS[care], SIZES[size]
    tall, wide = sheet.shape[0] / PX, sheet.shape[1] / PX
    h, w = side, round(side * 0.75)
    px = min(h / tall, w / wide) * rng.uniform(0.76, 0.96)  # pixels a millimetre
    left, up = np.float32(rng.normal(0, 0.008 * w)), np.float32(rng.normal(0, 0.008 * h))
    # A plane seen by a pinhole: tilted about an axis through its middle.
    axis, tilt = rng.uniform(0, 2 * np.pi), np.radians(rng.uniform(0, ways.tilt_deg))
    far = 0.85 * side
    along, across = np.cos(axis), np.sin(axis)
    turn = np.radians(rng.normal(0, 4))
    # Bent like a sheet that was rolled or folded: the middle of a wave lies off its place.
    way, phase = rng.uniform(-0.6, 0.6), rng.uniform(0, 2 * np.pi)
    length, high = rng.uniform(0.6, 1.3), rng.uniform(0, ways.bend_mm)

    light = (gaussian_filter(sheet.astype(np.float32), 0.35 * PX / px) / 255) ** 2.2 * 0.82 + 0.02
    table = float(rng.uniform(0.03, 0.6))
    lamps = _Lamps.drawn(ways, rng)
    seen = np.empty((h, w), dtype=np.float32)
    for rows in strips(h):
        u = np.arange(w, dtype=np.float32)[None] + 0.5 - w / 2 - left
        v = np.arange(rows.start, rows.stop, dtype=np.float32)[:, None] + 0.5 - h / 2 - up
        a, b = u * along + v * across, v * along - u * across
        depth = far / (far * np.cos(tilt) - b * np.sin(tilt))
        a, b = a * depth, b * depth
        u, v = a * along - b * across, a * across + b * along
        x = (u * np.cos(turn) + v * np.sin(turn)) / px + wide / 2
        y = (v * np.cos(turn) - u * np.sin(turn)) / px + tall / 2
        wave = (y * np.cos(way) + x * np.sin(way)) / tall * 2 * np.pi * length + phase
        bend = high * np.sin(wave)
        x, y = x + 0.4 * bend, y + bend
        at = np.stack([y * PX - 0.5, x * PX - 0.5])
        map_coordinates(light, at, order=1, mode="constant", cval=table, output=seen[rows])
        seen[rows] *= lamps.lit(x, y, tall, wide)
    sigma = float(np.hypot(rng.uniform(*ways.blur) * side / 4032, 0.45))
    seen = gaussian_filter(seen, sigma)
    moved = rng.uniform(*ways.motion) * side / 4032
    if moved > 0.7:
        seen = uniform_filter1d(seen, round(moved) + 1, axis=int(rng.integers(2)))
    seen *= np.float32(rng.uniform(*ways.exposure))
    noise = rng.uniform(*ways.noise) * (1.0 if side > 2000 else 0.6)
    grain = rng.standard_normal(seen.shape, dtype=np.float32)
    seen += grain * np.float32(noise) * np.sqrt(np.clip(seen, 0, None) + 0.01)
    shown = encode(seen)
    shown = shown + 0.5 * (shown - gaussian_filter(shown, 1.2))  # a phone sharpens
    buffer = io.BytesIO()
    pixels = (np.clip(shown, 0, 1) * 255 + 0.5).astype(np.uint8)
    Image.fromarray(pixels).save(buffer, "JPEG", quality=int(rng.integers(*qualities)))
    return buffer.getvalue()


@dataclass(frozen=True)
class _Lamps:
    """Uneven lamps, a soft shadow over part of the page, and now and then a hand's sharper one.

    Attributes
    ----------
    slopes : (across, down)
    shadows : tuple of (direction, mm off the middle, strength, mm of its edge)
    """

    slopes: tuple[float, float]
    shadows: tuple[tuple[float, float, float, float], ...]

    @classmethod
    def drawn(cls, ways: Ways, rng: np.random.Generator) -> _Lamps:
        slope_x, slope_y = rng.uniform(-0.2, 0.2, 2)
        shadows = []
        for edges in ((6.0, 25.0), (0.8, 4.0)):
            if edges[0] < 1 and rng.random() > 0.3:
                continue
            way, off = rng.uniform(0, 2 * np.pi), rng.uniform(-70, 70)
            shadows.append((way, off, ways.shadow * rng.random(), rng.uniform(*edges)))
        return cls((slope_x, slope_y), tuple(shadows))

    def lit(
        self, x: NDArray[np.float64], y: NDArray[np.float64], tall: float, wide: float
    ) -> NDArray[np.float32]:
        """Share of the light at places of the page, mm."""
        slope_x, slope_y = self.slopes
        lit = 1 + slope_x * (x / wide - 0.5) * 2 + slope_y * (y / tall - 0.5) * 2
        for way, shift, strength, edge in self.shadows:
            off = (x - wide / 2) * np.cos(way) + (y - tall / 2) * np.sin(way) + shift
            lit = lit * (1 - strength / (1 + np.exp(-np.clip(off / edge, -30, 30))))
        return np.asarray(lit, dtype=np.float32)
