"""Plain sheets drawn flat, for the kinds of picture a check must not be fooled by."""

from __future__ import annotations

import io
import json
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from PIL import Image
from scipy.ndimage import gaussian_filter, zoom
from simulator.camera import encode
from simulator.measure import reference_from

import sample_scenes
from core.photo import Photo, open_photo
from core.sheet import Reference, check_sheet
from core.sheet.result import SheetCheck, SheetOptions

PAINT = ((0.2222, 0.4045, 0.7209), (0.8889, 0.7416, 0.2558), (0.5, 0.2247, 0.1512))
"""Three bands over paper white, linear: blue, yellow, red."""
PAPER = (0.81, 0.80, 0.775)
BOX = (190, 70, 430, 410)
"""The painted rectangle of `sheet_picture`: left, top, right, bottom."""

Floats = NDArray[np.float64]


def sheet_picture(bands: tuple[tuple[float, float, float], ...] = PAINT) -> Floats:
    """A sheet upright on a dark table, (480, 640, 3), linear light."""
    picture = np.full((480, 640, 3), 0.04)
    picture[40:440, 160:460] = PAPER
    left, top, right, bottom = BOX
    edges = np.linspace(top, bottom, len(bands) + 1).astype(int)
    for colour, a, b in zip(bands, edges[:-1], edges[1:], strict=True):
        picture[a:b, left:right] = np.asarray(PAPER) * colour
    rng = np.random.default_rng(4)
    return picture * (1 + 0.004 * rng.standard_normal(picture.shape))


def photo_from(linear: Floats, name: str = "sheet.jpg") -> Photo:
    """A JPEG of a picture in linear light, opened."""
    pixels = (np.clip(encode(linear), 0, 1) * 255 + 0.5).astype(np.uint8)
    buffer = io.BytesIO()
    Image.fromarray(pixels).save(buffer, "JPEG", quality=92)
    return open_photo(buffer.getvalue(), name=name)


def plain_reference(bands: tuple[tuple[float, float, float], ...] = PAINT) -> Reference:
    """A sky of the same bands, each a third of the height."""
    linear = np.repeat(np.asarray(bands), 100, axis=0)[:, None] * np.ones((1, 240, 1))
    pixels = (encode(linear) * 255 + 0.5).astype(np.uint8)
    lines = tuple((k + 1) / len(bands) for k in range(len(bands) - 1))
    return reference_from(pixels, lines)


def sample_sky(name: str) -> tuple[NDArray[np.uint8], tuple[float, ...]]:
    """A sample scene's sky at half its size, sRGB, and its true lines, shares of the sky."""
    folder = Path(sample_scenes.__file__).parent
    truth = json.loads((folder / "scenes.json").read_text(encoding="utf-8"))
    scene = next(one for one in truth if one["name"] == name)
    pixels = open_photo(folder / f"{name}.jpg").pixels
    rows = round(scene["horizon"] * len(pixels))
    return pixels[:rows:2, ::2].copy(), tuple(y / scene["horizon"] for y in scene["lines"])


def copy_of(linear: Floats, strength: float = 1.0, blur: float = 0.012) -> Floats:
    """A sky (h, w, 3) in linear light over paper white, 320 rows of it, blurred by a share of its
    height, with so many times its paint."""
    density = -np.log(np.clip(linear, 0.003, 1.0))
    size = blur * len(density)
    density = gaussian_filter(density, (size, size, 0), mode="nearest")
    scale = 320 / len(density)
    return np.exp(-strength * np.clip(zoom(density, (scale, scale, 1), order=1), 0.0, 6.0))


def checked(reference: Reference, painted: Floats) -> SheetCheck:
    """A check of a painting (h, w, 3; linear light over paper white) on its paper; its corners are
    known."""
    h, w = painted.shape[:2]
    edge = 30
    picture = np.ones((h + 2 * edge, w + 2 * edge, 3)) * PAPER
    picture[edge : edge + h, edge : edge + w] *= painted
    H, W = picture.shape[:2]
    left, top, right, bottom = edge / W, edge / H, (edge + w) / W, (edge + h) / H
    corners = ((left, top), (right, top), (right, bottom), (left, bottom))
    return check_sheet(photo_from(picture), reference, SheetOptions(corners=corners))
