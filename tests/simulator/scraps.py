"""Photos of scraps: strokes of known colour on white paper, a table around, uneven light."""

from __future__ import annotations

import io

import numpy as np
from numpy.typing import NDArray
from PIL import Image

from core.colour import Lab_to_XYZ
from core.colour.lab import XYZ_to_linear
from core.colour.srgb import linear_to_srgb
from core.paint.pigment.measured import paper_Lab
from simulator.strips import softened, strips

Lab = tuple[float, float, float]


def scrap_photo(
    colours: list[Lab],
    rng: np.random.Generator,
    *,
    size: tuple[int, int] = (900, 1200),
    table: bool = True,
    pencil: bool = True,
    over_edge: bool = False,
    cast: float = 0.12,
    slope: float = 0.35,
) -> NDArray[np.uint8]:
    """A photo of dried strokes, one a colour, side by side from the left.

    Parameters
    ----------
    colours : list of Lab
        As the film gives them: over the measured paper.
    rng : numpy Generator
    size : (height, width)
    table : bool
        A brown or grey table is seen around the paper.
    pencil : bool
        A line of writing below each stroke.
    over_edge : bool
        The first stroke runs over the paper's left edge.
    cast : float
        Spread of the log of the light's colour.
    slope : float
        How much of the light's log is lost across the picture.
    """
    from scipy.ndimage import gaussian_filter, rotate

    H, W = size
    white = XYZ_to_linear(Lab_to_XYZ(np.array(paper_Lab())))
    scene = np.empty((H, W, 3))
    scene[:] = rng.choice([0.08, 0.2, 0.5]) * rng.uniform(0.4, 1.2, 3)
    y0, y1, x0, x1 = (0, H, 0, W)
    if table:
        y0, x0 = int(0.1 * H), int(0.1 * W)
        y1, x1 = H - y0, W - x0
    scene[y0:y1, x0:x1] = white * np.exp(0.006 * rng.normal(size=(y1 - y0, x1 - x0, 1)))
    wide = (x1 - x0) / len(colours)
    for number, colour in enumerate(colours):
        linear = np.maximum(XYZ_to_linear(Lab_to_XYZ(np.array(colour))), 1e-3)
        h, w = int(0.3 * (y1 - y0)), int(0.62 * wide)
        top = int(y0 + rng.uniform(0.15, 0.35) * (y1 - y0))
        left = int(x0 + (number + 0.19) * wide)
        if over_edge and number == 0:
            left = int(x0 - 0.25 * w)
        mask = np.zeros((h + 40, w + 40))
        mask[20:-20, 20:-20] = 1
        mask = rotate(mask, rng.uniform(-8, 8), reshape=False, order=1)
        rough = gaussian_filter(rng.normal(size=mask.shape), 6)
        mask = gaussian_filter(mask, 3) + 0.12 * rough / rough.std()
        mask = gaussian_filter((mask > 0.5).astype(float), 1.2)
        # Denser at the rim, grainy and streaky inside: the mean density is the colour's.
        rim = mask * (1 - gaussian_filter(mask, 7))
        grain = gaussian_filter(rng.normal(size=mask.shape), 1.5)
        grain += 2 * gaussian_filter(rng.normal(size=mask.shape), 12) * 3
        dense = mask * (1 + 0.7 * rim + 0.05 * grain / grain.std())
        ys, xs = (
            slice(top - 20, top - 20 + mask.shape[0]),
            slice(left - 20, left - 20 + mask.shape[1]),
        )
        view = scene[max(ys.start, 0) : ys.stop, max(xs.start, 0) : xs.stop]
        cut = dense[: view.shape[0], -view.shape[1] :]
        view *= np.exp(cut[..., None] * np.log(linear / white))
        if pencil:
            line = min(top + h + 40, H - 10)
            for x in range(left, left + w, 14):
                scene[line : line + 12, x : x + 2] *= 0.4
    y, x = np.linspace(-1, 1, H)[:, None], np.linspace(-1, 1, W)[None]
    turn = rng.uniform(0, 2 * np.pi)
    colour = np.exp(cast * rng.normal(size=3)) * 0.72
    for rows in strips(H):
        down = y[rows]
        along = np.cos(turn) * x + np.sin(turn) * down + 0.3 * (x * x + down * down)
        scene[rows] *= np.exp(-slope / 2 * along)[..., None]
        scene[rows] *= colour
    pixels = np.empty(scene.shape, dtype=np.uint8)
    for rows in strips(H):
        shot = softened(scene, rows, 0.7)
        shot += 0.004 * rng.normal(size=shot.shape)
        pixels[rows] = np.round(255 * linear_to_srgb(np.clip(shot, 0, 1)))
    return pixels


def jpeg_of(pixels: NDArray[np.uint8], quality: int = 90) -> bytes:
    """The picture as a JPEG."""
    buffer = io.BytesIO()
    Image.fromarray(pixels).save(buffer, "JPEG", quality=quality)
    return buffer.getvalue()
