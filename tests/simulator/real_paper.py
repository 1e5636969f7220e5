"""What real paper, real light and real cameras add to a simulated sheet.

Ranges follow what was measured on photographs of real sheets: tints of two sides' papers differ by
.02 to .1 (natural log), the paper's brightness is rough by .01 to .06 along a side, borders are
1 to 12% of the height wide, and rectangles bow by up to 1% where the sheet curls.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import gaussian_filter

from simulator.sheets import Floats, Painting, noise_field
from simulator.strips import strips


@dataclass(frozen=True)
class RealPaper:
    """How far a sheet and its photo are from the clean ones.

    Attributes
    ----------
    bow : (across, down)
        How far the upright and the level edges bow, shares of the sheet; corners stay.
    tint : (3,) of float
        Natural log by which the light's colour changes over the sheet, along `tint_deg`.
    shade : float
        Share of the light the desk loses beside the paper, which stands off it.
    sharpen : float
        Amount of unsharp masking, as phones do.
    gamma, contrast : float
        The camera's tone curve beside sRGB's: a power, and the strength of an S.
    """

    bow: tuple[float, float] = (0.0, 0.0)
    tint: tuple[float, float, float] = (0.0, 0.0, 0.0)
    tint_deg: float = 0.0
    shade: float = 0.0
    sharpen: float = 0.0
    sharpen_px: float = 1.2
    gamma: float = 1.0
    contrast: float = 0.0


def random_paper(rng: np.random.Generator) -> RealPaper:
    """As photographs of real sheets are."""
    warm = float(np.exp(rng.uniform(np.log(0.015), np.log(0.12))))
    green = float(rng.normal(0, 0.2)) * warm
    return RealPaper(
        bow=(float(rng.normal(0, 0.003)), float(rng.normal(0, 0.003))),
        tint=(warm / 2, green, -warm / 2),
        tint_deg=float(rng.uniform(0, 360)),
        shade=float(rng.uniform(0, 0.7)),
        sharpen=float(rng.choice([0.0, rng.uniform(0.2, 1.2)])),
        sharpen_px=float(rng.uniform(0.8, 2.0)),
        gamma=float(np.exp(rng.normal(0, 0.12))),
        contrast=float(np.clip(rng.normal(0.04, 0.05), -0.05, 0.14)),
    )


def bowed(
    x: Floats, y: Floats, box: tuple[float, float, float, float], bow: tuple[float, float]
) -> tuple[Floats, Floats]:
    """Places on the flat sheet of what is seen at places on a curled one; its corners stay."""
    left, top, right, bottom = box
    u = np.clip((x - left) / (right - left), -0.2, 1.2)
    v = np.clip((y - top) / (bottom - top), -0.2, 1.2)
    dx = bow[0] * (right - left) * (1 - (2 * v - 1) ** 2)
    dy = bow[1] * (bottom - top) * (1 - (2 * u - 1) ** 2)
    return x + dx, y + dy


def shade_beside(cover: Floats, real: RealPaper) -> Floats:
    """Light left on the desk beside paper that stands off it."""
    far = gaussian_filter(cover, 0.012 * max(cover.shape))
    shifted = np.roll(far, (round(0.006 * cover.shape[0]), round(0.004 * cover.shape[1])), (0, 1))
    return 1 - real.shade * np.clip(2 * shifted, 0, 1)


def mixed_light(corners: Floats, rows: slice, w: int, real: RealPaper) -> Floats:
    """Factor (rows, w, 3) of two lights of different colours from two sides, in some rows."""
    centre = corners.mean(axis=0)
    reach = np.linalg.norm(corners - centre, axis=1).mean()
    angle = np.radians(real.tint_deg)
    x = (np.arange(w)[None] - centre[0]) / reach
    y = (np.arange(rows.start, rows.stop)[:, None] - centre[1]) / reach
    along = np.tanh(x * np.cos(angle) + y * np.sin(angle))
    return np.exp(0.7 * along[..., None] * np.asarray(real.tint))


def developed(encoded: Floats, real: RealPaper) -> None:
    """A camera's tone curve and sharpening on encoded values, in place."""
    for rows in strips(len(encoded)):
        part = np.clip(encoded[rows], 0, 1) ** real.gamma
        part += real.contrast * np.sin(2 * np.pi * (part - 0.5)) / np.pi
        encoded[rows] = part
    if real.sharpen:
        light = encoded.mean(axis=2)
        detail = light - gaussian_filter(light, real.sharpen_px)
        encoded += real.sharpen * np.clip(detail, -0.08, 0.08)[..., None]


def aged(painting: Painting, rng: np.random.Generator) -> Painting:
    """The paper with its grain, its cockling, pencil lines, smears and drops on its border."""
    paper = painting.paper.copy()
    h, w = paper.shape[:2]
    H = painting.box[3] - painting.box[1]
    fine = noise_field(rng, (h, w), 1.0)
    coarse = noise_field(rng, (h, w), rng.uniform(2.0, 4.0))
    cockle = noise_field(rng, (h, w), rng.uniform(0.03, 0.12) * H)
    grain, cockling = np.exp(rng.uniform(np.log((0.01, 0.01)), np.log((0.06, 0.05))))
    light = grain * (0.6 * fine + 0.8 * coarse) + cockling * cockle
    paper *= np.clip(1 + light, 0.4, 1.6)[..., None]
    outside = outside_of(painting)
    if rng.random() < 0.5:  # the tape's place was drawn first
        pencil_frame(paper, painting.box, rng)
    if rng.random() < 0.35:
        signature(paper, painting.box, rng)
    for _ in range(rng.poisson(1.5)):
        smear(paper, painting, outside, rng)
    return replace(painting, paper=np.clip(paper, 0, 1))


def outside_of(painting: Painting) -> NDArray[np.bool_]:
    left, top, right, bottom = (round(v) for v in painting.box)
    outside = np.ones(painting.paper.shape[:2], dtype=bool)
    outside[top:bottom, left:right] = False
    return outside


def pencil_frame(
    paper: Floats, box: tuple[float, float, float, float], rng: np.random.Generator
) -> None:
    """Pencil lines along the painting's edges, often longer than they."""
    h, w = paper.shape[:2]
    left, top, right, bottom = box
    dark = float(rng.uniform(0.55, 0.9))
    off = rng.normal(0, 0.004 * (bottom - top), 4)
    over = rng.uniform(-0.02, 0.06, 4) * (bottom - top)
    for k, (x, y) in enumerate(((left, None), (right, None), (None, top), (None, bottom))):
        if rng.random() < 0.3:
            continue
        if x is not None:
            at = int(np.clip(round(x + off[k]), 0, w - 2))
            rows = slice(max(0, round(top - over[k])), min(h, round(bottom + over[k])))
            paper[rows, at : at + 2] *= dark
        else:
            at = int(np.clip(round(y + off[k]), 0, h - 2))
            columns = slice(max(0, round(left - over[k])), min(w, round(right + over[k])))
            paper[at : at + 2, columns] *= dark


def signature(
    paper: Floats, box: tuple[float, float, float, float], rng: np.random.Generator
) -> None:
    """A scrawl of pencil or ink below the painting or on its lower corner."""
    h, w = paper.shape[:2]
    left, _, right, bottom = box
    size = float(rng.uniform(0.01, 0.03)) * (bottom - box[1])
    x0 = rng.uniform(left, right - 0.25 * (right - left))
    y0 = bottom + rng.uniform(-2.0, 1.5) * size
    t = np.linspace(0, 1, 900)
    x = x0 + t * rng.uniform(0.1, 0.25) * (right - left)
    y = y0 + size * sum(np.sin(2 * np.pi * (f * t + rng.random())) for f in (5, 11, 17)) / 2
    rows, columns = np.rint(y).astype(int), np.rint(x).astype(int)
    inside = (rows >= 0) & (rows < h - 1) & (columns >= 0) & (columns < w - 1)
    shade = rng.uniform(0.2, 0.7)
    for dy in (0, 1):
        paper[rows[inside] + dy, columns[inside]] *= shade


def smear(
    paper: Floats, painting: Painting, outside: NDArray[np.bool_], rng: np.random.Generator
) -> None:
    """A drop, a finger's mark or a run of paint on the border."""
    h, w = paper.shape[:2]
    H = painting.box[3] - painting.box[1]
    cx, cy = rng.uniform(0, w), rng.uniform(0, h)
    a, b = rng.uniform(0.004, 0.05) * H, rng.uniform(0.004, 0.02) * H
    turn = rng.uniform(0, np.pi)
    y, x = np.mgrid[0:h, 0:w]
    p = (x - cx) * np.cos(turn) + (y - cy) * np.sin(turn)
    q = (y - cy) * np.cos(turn) - (x - cx) * np.sin(turn)
    wet = 1 / (1 + np.exp(np.clip(6 * (np.hypot(p / a, q / b) - 1), -30, 30)))
    colour = rng.uniform(0.5, 0.97, 3)
    paper *= 1 - (wet * outside)[..., None] * (1 - colour)
