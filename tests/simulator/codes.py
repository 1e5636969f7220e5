"""A printed code in a phone's picture of an A4 sheet, cut out around it: tilt, shadow, blur,
motion, noise, sharpening and JPEG, at the sizes pictures come in."""

from __future__ import annotations

import io

import numpy as np
from numpy.typing import NDArray
from PIL import Image
from scipy.ndimage import convolve, gaussian_filter

from core.class_set.codes import QUIET, SIDE, code_modules
from core.class_set.ticket import Ticket
from simulator.camera import encode

SIZES = {"12MP": (4032, (85, 94)), "1600": (1600, (65, 82)), "1280": (1280, (55, 75))}
"""Long side in pixels, and JPEG qualities: as taken, and as messengers pass it on."""

SHEET_MM = 297.0


def code_shot(ticket: Ticket, mm: float, size: str, rng: np.random.Generator) -> NDArray[np.uint8]:
    """The part of a picture around a code `mm` wide, in grey.

    "Usual": blur 0.8 to 2.2 and motion up to 3 pixels at 12 megapixels, a tilt up to 22 degrees.
    """
    side, qualities = SIZES[size]
    k = side * rng.uniform(0.62, 0.92) / SHEET_MM  # pixels a millimetre
    module = mm / SIDE
    half = int(np.clip(np.ceil((mm / 2 + 8) * k) + 8, 48, 300))
    fine = 2 if k * module > 3 else 4
    yy, xx = (np.mgrid[0 : 2 * half * fine, 0 : 2 * half * fine] + 0.5) / fine - half
    x, y = _on_paper(xx, yy, side, rng)
    x, y = x / k, y / k
    white, black = rng.uniform(0.72, 0.88), rng.uniform(0.03, 0.08)
    image = np.full(x.shape, white)
    i, j = (np.floor(v / module + SIDE / 2).astype(int) for v in (y, x))
    inside = (i >= 0) & (i < SIDE) & (j >= 0) & (j < SIDE)
    modules = code_modules(ticket)
    image[inside] = np.where(modules[i[inside], j[inside]], black, white)
    edge = mm / 2 + QUIET * module + rng.uniform(0, 3)
    image[y < -edge] = rng.uniform(0.1, 0.7)  # painted
    words = (x > edge) & (np.abs(y) < mm * 0.3)
    cell = np.floor(x / 1.1).astype(int) * 7 + np.floor(y / 1.3).astype(int) * 3
    image[words & (cell % 5 < 2)] = black
    image[y > edge + rng.uniform(0, 5)] = rng.uniform(0.05, 0.6)  # the desk
    angle = rng.uniform(0, 2 * np.pi)
    far = (x * np.cos(angle) + y * np.sin(angle)) / rng.uniform(1, 8) + rng.uniform(-1, 1)
    image = image * (1 - 0.35 * rng.random() / (1 + np.exp(-far)))
    image = image * (1 + 0.25 * rng.uniform(-1, 1) * x / 40)
    image = image.reshape(2 * half, fine, 2 * half, fine).mean((1, 3))
    return _camera(image, side / 4032, size, qualities, rng)


def _on_paper(xx, yy, side: int, rng: np.random.Generator):
    """Pixels from the code's middle onto the paper: a pinhole camera, tilted and turned."""
    turn, axis = rng.uniform(0, 2 * np.pi, 2)
    tilt = np.radians(rng.uniform(0, 22))
    f = side * 0.8
    u, v = xx * np.cos(axis) + yy * np.sin(axis), -xx * np.sin(axis) + yy * np.cos(axis)
    w = f * np.cos(tilt) - v * np.sin(tilt)
    u, v = u * f / w, v * f / w
    x, y = u * np.cos(axis) - v * np.sin(axis), u * np.sin(axis) + v * np.cos(axis)
    return x * np.cos(turn) + y * np.sin(turn), -x * np.sin(turn) + y * np.cos(turn)


def _camera(image, scale: float, size: str, qualities, rng: np.random.Generator):
    image = gaussian_filter(image, np.hypot(rng.uniform(0.8, 2.2) * scale, 0.45))
    motion = rng.uniform(0, 3) * scale
    if motion > 0.7:
        length = int(np.ceil(motion)) * 2 + 1
        way, kernel = rng.uniform(0, np.pi), np.zeros((length, length))
        for t in np.linspace(-motion / 2, motion / 2, 4 * length):
            row, column = length // 2 + t * np.sin(way), length // 2 + t * np.cos(way)
            kernel[round(row), round(column)] += 1
        image = convolve(image, kernel / kernel.sum())
    image = image * rng.uniform(0.35, 0.95)
    grain = rng.uniform(0.004, 0.02) * (1 if size == "12MP" else 0.6)
    image = image + rng.standard_normal(image.shape) * grain * np.sqrt(
        np.clip(image, 0, None) + 0.01
    )
    grey = encode(image)
    grey = grey + 0.6 * (grey - gaussian_filter(grey, 1.2))  # a phone sharpens
    pixels = (np.clip(grey, 0, 1) * 255 + 0.5).astype(np.uint8)
    buffer = io.BytesIO()
    Image.fromarray(pixels).save(buffer, "JPEG", quality=int(rng.integers(*qualities)))
    return np.asarray(Image.open(io.BytesIO(buffer.getvalue())).convert("L"))
