"""Painted swatch cards, photographed: print, streaks, granulation, perspective, curl, light, JPEG.

A painter is a function that gives linear RGB beside paper, (n, 3), of a field's loads.
"""

from __future__ import annotations

import io
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from PIL import Image, ImageDraw, ImageFont
from scipy.ndimage import convolve1d, gaussian_filter, map_coordinates

from core.swatches import layout
from core.swatches.code import card_code_modules
from core.swatches.projective import card_map, through

PX = 8
PAGE = np.array([210.0, 297.0])
FONT = Path(__file__).parents[2] / "app" / "fonts" / "AtkinsonHyperlegibleNext-Medium.ttf"
INK = 0.045
LOADS = np.geomspace(0.001, 25, 64)
"""Hundredths of a millilitre at which a painter is asked."""

Painter = Callable[[np.ndarray], np.ndarray]


@dataclass(frozen=True)
class Stroke:
    """One painted field.

    Attributes
    ----------
    linear : ndarray, shape (64, 3), float
        Linear RGB beside paper at `LOADS`.
    top, bottom : float
        Loads at the thick and the watery end.
    """

    linear: np.ndarray
    top: float
    bottom: float


def printed(code: str, names: Sequence[str]) -> np.ndarray:
    """The printed page, 0..1 of the paper's light, (h, w)."""
    image = Image.new("L", tuple((PAGE * PX).astype(int)), 255)
    draw = ImageDraw.Draw(image)

    def square(centre, half, fill):
        x, y = centre
        draw.rectangle(
            [(x - half) * PX, (y - half) * PX, (x + half) * PX - 1, (y + half) * PX - 1], fill=fill
        )

    for number, centre in enumerate(layout.MARKS):
        square(centre, 3.5 * layout.MODULE, 0)
        if number != layout.SOLID:
            square(centre, 2.5 * layout.MODULE, 255)
            square(centre, 1.5 * layout.MODULE, 0)
    modules = card_code_modules(code)
    side = int(layout.CODE_SIDE * PX / len(modules))
    block = np.kron(np.where(modules, 0, 255).astype(np.uint8), np.ones((side, side), np.uint8))
    image.paste(Image.fromarray(block), tuple(int(v * PX) for v in layout.CODE_AT))

    def write(at, text, mm):
        font = ImageFont.truetype(str(FONT), int(mm * PX))
        draw.text((at[0] * PX, at[1] * PX), text, font=font, fill=0)

    write(layout.TITLE_AT, "Swatch card", 6)
    write(layout.EXPLAINED_AT, "Thick on the left, water on the right.", 3.2)
    for row in range(layout_rows(names)):
        write((layout.LABEL_AT, layout.field_rect(row, 0)[1] + 4), names[row], 3.4)
        for field in range(3):
            x, y, w, h = layout.field_rect(row, field)
            draw.rectangle([x * PX, y * PX, (x + w) * PX, (y + h) * PX], outline=150, width=2)
    ink = np.asarray(image, dtype=np.float32) / 255
    return np.clip(INK + (1 - INK) * ink, 0, 1) ** 1.15


def layout_rows(names: Sequence[str]) -> int:
    return min(len(names), 8)


def painted(
    page: np.ndarray, strokes: Mapping[tuple[int, int], Stroke], rng: np.random.Generator
) -> np.ndarray:
    """The page in linear RGB beside paper, (h, w, 3), with its strokes, by (row, field)."""
    scene = np.repeat(page[:, :, None], 3, 2).astype(np.float32)
    for (row, field), stroke in strokes.items():
        x, y, w, h = layout.field_rect(row, field)
        colour, mask = _stroke(stroke, (int(h * PX), int(w * PX)), rng)
        r, c = int(y * PX), int(x * PX)
        part = scene[r : r + mask.shape[0], c : c + mask.shape[1]]
        part[:] = part * (1 - mask[..., None]) + part.clip(0.8, 1) * colour * mask[..., None]
    return scene


def _stroke(stroke, shape, rng):
    height, width = shape
    x = np.clip((np.linspace(0, 1, width) - 0.03) / 0.94, 0, 1) ** rng.uniform(0.7, 1.3)
    log = np.log(stroke.top) + (np.log(stroke.bottom) - np.log(stroke.top)) * x
    streaks = gaussian_filter(rng.normal(0, 1, shape), (height * 0.05, width * 0.08))
    grain = gaussian_filter(rng.normal(0, 1, shape), 1.5)
    y = np.linspace(-1, 1, height)[:, None]
    edge = 0.35 * np.exp(-(1 - np.abs(y)) / 0.08)
    log = log[None] + 0.15 * streaks / streaks.std() + 0.12 * grain / grain.std() + edge
    colour = np.stack([np.interp(log, np.log(LOADS), stroke.linear[:, c]) for c in range(3)], -1)
    ragged = gaussian_filter(rng.normal(0, 1, width), 12)
    ragged = ragged / (ragged.std() + 1e-9)
    ends = gaussian_filter(rng.normal(0, 1, height), 6)
    ends = ends / (ends.std() + 1e-9)
    rows, columns = np.arange(height)[:, None], np.arange(width)[None]
    mask = (rows > (0.06 + 0.03 * ragged[None]) * height) & (
        rows < (0.94 + 0.03 * np.roll(ragged, 50)[None]) * height
    )
    mask &= (columns > (0.03 + 0.01 * ends[:, None]) * width) & (
        columns < (0.97 + 0.01 * ends[:, None]) * width
    )
    return colour.astype(np.float32), gaussian_filter(mask.astype(np.float32), 1.0)


@dataclass(frozen=True)
class Shot:
    """How a card is photographed."""

    size: tuple[int, int]
    tilt: float
    roll: float
    fill: float
    blur: float
    motion: float
    noise: float
    light: float
    shadow: float
    curl: float
    balance: tuple[float, float, float]
    exposure: float
    quality: int
    background: int


def drawn_shot(rng: np.random.Generator, hard: bool = False) -> Shot:
    """A usual picture, or a hard one."""
    tilt = rng.uniform(8, 32) if hard else min(abs(rng.normal(0, 10)), 30)
    roll = rng.choice([0, 90, 180, 270]) + rng.normal(0, 14 if hard else 6)
    upright = abs((roll + 45) % 180 - 45) < 45
    fits = rng.random() < 0.85
    size = (1620, 2160) if upright == fits else (2160, 1620)
    return Shot(
        size,
        tilt,
        float(roll),
        rng.uniform(0.55, 0.9) if hard else rng.uniform(0.8, 0.95),
        rng.uniform(0.8, 3.0) if hard else rng.uniform(0.4, 1.1),
        rng.uniform(2, 7) if hard and rng.random() < 0.5 else 0.0,
        rng.uniform(3, 11) if hard else rng.uniform(1, 3),
        rng.uniform(0.2, 0.5) if hard else rng.uniform(0.05, 0.25),
        rng.uniform(0.4, 0.75) if hard or rng.random() < 0.2 else 1.0,
        rng.uniform(1, 5) if hard else rng.uniform(0, 1.5),
        tuple(np.exp(rng.normal(0, 0.12 if hard else 0.06, 3))),
        rng.uniform(0.55, 0.93) if hard else rng.uniform(0.82, 0.95),
        int(rng.integers(60, 85) if hard else rng.integers(82, 93)),
        int(rng.integers(0, 4)),
    )


_WOOD = ((0.25, 0.15, 0.08), (0.05, 0.05, 0.06), (0.55, 0.52, 0.48), (0.12, 0.2, 0.13))


def photographed(
    scene: np.ndarray,
    shot: Shot,
    rng: np.random.Generator,
    curve: Callable[[np.ndarray], np.ndarray] | None = None,
) -> tuple[np.ndarray, np.ndarray]:
    """A photo, (h, w, 3) uint8, and where the marks' centres are in it, (4, 2) pixels.

    Parameters
    ----------
    scene : ndarray
        From `painted`.
    shot : Shot
    rng : Generator
    curve : callable, optional
        From linear RGB, paper 1, to encoded 0..1; the sRGB curve at the shot's exposure without.
    """
    width, height = shot.size
    where = _projection(shot, rng)
    box = np.array([[0, 0], [PAGE[0], 0], PAGE, [0, PAGE[1]]])
    y, x = np.mgrid[0:height, 0:width].astype(np.float32)
    flat = through(np.linalg.inv(card_map(box, where(box))), np.stack([x, y], -1))
    if shot.curl > 0:
        flat = flat + _uncurled(flat, where, box)
    scale = float(np.linalg.norm(where(np.array([[105, 148]])) - where(np.array([[106, 148]]))))
    blurred = gaussian_filter(scene, (0.45 * PX / scale, 0.45 * PX / scale, 0))
    at = [flat[..., 1] * PX, flat[..., 0] * PX]
    picture = np.stack([map_coordinates(blurred[..., c], at, order=1) for c in range(3)], -1)
    outside = (flat < 0).any(-1) | (flat > PAGE - 0.2).any(-1)
    grain = gaussian_filter(rng.normal(0, 1, (height // 4, width // 4)), (0.5, 6))
    grain = np.kron(grain / grain.std(), np.ones((4, 4)))
    grain = np.pad(grain, ((0, height - len(grain)), (0, width - grain.shape[1])), mode="edge")
    wood = np.array(_WOOD[shot.background]) * (1 + 0.15 * grain[..., None])
    picture = np.where(outside[..., None], wood, np.maximum(picture, 0))
    picture = picture * _light(shot, rng, x, y)[..., None] * np.array(shot.balance)
    picture = gaussian_filter(picture, (shot.blur, shot.blur, 0))
    if shot.motion > 1:
        picture = _moved(picture, shot.motion, rng)
    luminance = picture @ np.array([0.2126, 0.7152, 0.0722])
    picture = picture / np.quantile(luminance[~outside][::50], 0.97)
    encoded = curve(picture) if curve else _encoded(picture * _decoded(shot.exposure))
    spread = shot.noise / 255 * (0.6 + 0.8 * np.sqrt(np.clip(encoded, 0, 1)))
    noise = gaussian_filter(rng.normal(0, 1, encoded.shape), (0.8, 0.8, 0)) * 1.6 * spread
    seen = np.clip(np.round((encoded + noise) * 255), 0, 255).astype(np.uint8)
    file = io.BytesIO()
    Image.fromarray(seen).save(file, "JPEG", quality=shot.quality)
    return np.array(Image.open(file).convert("RGB")), where(layout.MARKS)


def _projection(shot, rng):
    width, height = shot.size
    focal = 0.75 * max(width, height)
    axis, tilt = rng.uniform(0, 2 * np.pi), np.deg2rad(shot.tilt)
    k = np.array([np.cos(axis), np.sin(axis), 0])
    cross = np.array([[0, -k[2], k[1]], [k[2], 0, -k[0]], [-k[1], k[0], 0]])
    tilted = np.eye(3) + np.sin(tilt) * cross + (1 - np.cos(tilt)) * cross @ cross
    c, s = np.cos(np.deg2rad(shot.roll)), np.sin(np.deg2rad(shot.roll))
    turned = tilted @ np.array([[c, -s, 0], [s, c, 0], [0, 0, 1]])
    box = np.array([[0, 0], [PAGE[0], 0], PAGE, [0, PAGE[1]]])

    def project(mm, far):
        mm = np.atleast_2d(np.asarray(mm, float))
        curl = shot.curl * ((mm[:, 0] - 105) / 105) ** 2
        p = np.column_stack([mm - PAGE / 2, -curl]) @ turned.T
        return focal * p[:, :2] / (p[:, 2:] + far) + [width / 2, height / 2]

    near, distant = 150.0, 4000.0
    for _ in range(40):
        far = (near + distant) / 2
        size = np.ptp(project(box, far), axis=0) / [width, height]
        near, distant = (far, distant) if size.max() > shot.fill else (near, far)
    q = project(box, far)
    shift = np.array([width, height]) / 2 - (q.min(0) + q.max(0)) / 2
    shift = shift + rng.uniform(-1, 1, 2) * (1 - shot.fill) * 0.3 * np.array([width, height])
    return lambda mm: project(mm, far) + shift


def _uncurled(flat, where, box):
    """How far a curled page's points are from a flat one's, in millimetres."""
    grid = np.stack(np.meshgrid(np.linspace(0, 210, 13), np.linspace(0, 297, 17)), -1)
    grid = grid.reshape(-1, 2)
    got = through(np.linalg.inv(card_map(box, where(box))), where(grid)) / PAGE

    def powers(p):
        x, y = p[..., 0], p[..., 1]
        one = np.ones_like(x)
        return (one, x, y, x * x, x * y, y * y, x**3, x * x * y, x * y * y, y**3, x**4)

    fitted = np.linalg.lstsq(np.stack(powers(got), 1), grid - got * PAGE, rcond=None)[0]
    return sum(p[..., None] * k for p, k in zip(powers(flat / PAGE), fitted, strict=True))


def _light(shot, rng, x, y):
    width, height = shot.size
    side, angle = max(width, height), rng.uniform(0, 2 * np.pi)
    u, v = (x - width / 2) / side * 2, (y - height / 2) / side * 2
    light = 1 + shot.light * (np.cos(angle) * u + np.sin(angle) * v - 0.12 * (u * u + v * v))
    if shot.shadow < 1:
        angle, off = rng.uniform(0, 2 * np.pi), rng.uniform(-0.4, 0.4)
        far = np.cos(angle) * u + np.sin(angle) * v - off
        soft = rng.uniform(0.02, 0.2)
        light = light * (shot.shadow + (1 - shot.shadow) / (1 + np.exp(-2 * far / soft)))
    return light


def _moved(picture, length, rng):
    """Shaken along the picture's rows or columns."""
    many = max(2, round(length))
    return convolve1d(picture, np.ones(many) / many, axis=int(rng.integers(0, 2)))


def _encoded(x):
    x = np.clip(x, 0, 1)
    return np.where(x <= 0.0031308, 12.92 * x, 1.055 * x ** (1 / 2.4) - 0.055)


def _decoded(y):
    return ((y + 0.055) / 1.055) ** 2.4
