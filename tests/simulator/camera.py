"""The photograph or scan of a painted sheet: desk, perspective, light, camera, JPEG."""

from __future__ import annotations

import io
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from PIL import Image
from scipy.ndimage import gaussian_filter, gaussian_filter1d

from simulator.real_paper import RealPaper, bowed, developed, mixed_light, shade_beside
from simulator.sheets import Floats, Painting, noise_field
from simulator.strips import cover_of, lay, sheet_places, softened, strips


@dataclass(frozen=True)
class Shot:
    """How the sheet was photographed.

    Attributes
    ----------
    size : (width, height) in pixels
    fill : float
        Share of the photo's shorter fit the paper takes.
    tilt_deg : float
        Turn of the sheet in the picture, clockwise.
    perspective : float
        Each corner moves up to this share of the sheet's size.
    light : tuple of (direction in degrees, ratio)
        Ratio of the brightest to the darkest place of the painted sheet (1 = even), made by two
        lamps in opposite directions with different powers.
    shadow : float
        Share of the light a soft cast shadow takes (0 = none).
    curve : bool
        A phone's S-shaped tone curve instead of a linear camera.
    scan : bool
        Flatbed: no perspective, even light, a white lid around the paper.
    tape : linear RGB or None
        Tape still on, of this colour, covering the border.
    turn : int
        Quarter turns the sheet is turned by, clockwise.
    real : RealPaper or None
        What real paper, light and cameras add; None leaves the photo as clean as it ever was.
    """

    size: tuple[int, int] = (1600, 1200)
    fill: float = 0.86
    tilt_deg: float = 0.0
    perspective: float = 0.03
    distortion: float = 0.0
    light: tuple[float, float] = (30.0, 1.3)
    shadow: float = 0.0
    white_balance: tuple[float, float] = (1.0, 1.0)
    exposure: float = 0.85
    noise: float = 0.004
    quality: int = 90
    desk: int = 0
    curve: bool = False
    scan: bool = False
    tape: tuple[float, float, float] | None = None
    tape_outer: float = 0.25
    turn: int = 0
    seed: int = 0
    real: RealPaper | None = None


def encode(linear: Floats) -> Floats:
    """IEC 61966-2-1 encoding, written out here so that the simulator leans on nothing."""
    clipped = np.clip(linear, 0, 1)
    encoded = clipped ** (1 / 2.4)
    encoded *= 1.055
    encoded -= 0.055
    dark = clipped <= 0.0031308
    encoded[dark] = 12.92 * clipped[dark]
    return encoded


def homography(source: Floats, target: Floats) -> Floats:
    rows = []
    for (x, y), (u, v) in zip(source, target, strict=True):
        rows += [[x, y, 1, 0, 0, 0, -u * x, -u * y, -u], [0, 0, 0, x, y, 1, -v * x, -v * y, -v]]
    return np.linalg.svd(np.asarray(rows))[2][-1].reshape(3, 3)


def project(H: Floats, points: Floats) -> Floats:
    x, y = points[..., 0], points[..., 1]
    u, v, t = (row[0] * x + row[1] * y + row[2] for row in H)
    return np.stack([u / t, v / t], -1)


def undistort(points: Floats, size: tuple[int, int], k: float) -> Floats:
    centre, half = np.asarray(size) / 2, np.hypot(*size) / 2
    offset = (points - centre) / half
    away = offset[..., 0] ** 2 + offset[..., 1] ** 2
    return centre + offset * (half * (1 + k * away))[..., None]


def distort(points: Floats, size: tuple[int, int], k: float) -> Floats:
    guess = points.copy()
    for _ in range(20):
        guess = guess - (undistort(guess, size, k) - points)
    return guess


def desk_picture(shot: Shot, rng: np.random.Generator) -> Floats:
    """A table: plain, wooden, patterned or white, with clutter on it."""
    w, h = shot.size
    kind = shot.desk % 4
    base = [
        rng.uniform(0.03, 0.15, 3),
        np.array([0.35, 0.2, 0.1]) * rng.uniform(0.4, 1.2),
        rng.uniform(0.05, 0.5, 3),
        np.full(3, rng.uniform(0.55, 0.72)),
    ][kind]
    shade = None
    if kind == 1:
        grain = noise_field(rng, (h, w // 60 + 1), 3.0)
        shade = np.repeat(np.clip(1 + 0.2 * grain, 0.3, 2), 61, axis=1)[:, :w]
    if kind == 2:
        shade = np.clip(1 + 0.25 * noise_field(rng, (h, w), 9.0), 0.2, 2)
    picture = np.empty((h, w, 3))
    for rows in strips(h):
        picture[rows] = base if shade is None else shade[rows][..., None] * base
    for _ in range(rng.integers(0, 8)):
        cx, cy = rng.uniform(0, w), rng.uniform(0, h)
        a, b, t = rng.uniform(20, 160), rng.uniform(8, 120), rng.uniform(0, np.pi)
        x0, x1 = int(max(0, cx - 200)), int(min(w, cx + 200))
        y0, y1 = int(max(0, cy - 200)), int(min(h, cy + 200))
        if x1 <= x0 or y1 <= y0:
            continue
        yy, xx = np.mgrid[y0:y1, x0:x1]
        p = (xx - cx) * np.cos(t) + (yy - cy) * np.sin(t)
        q = -(xx - cx) * np.sin(t) + (yy - cy) * np.cos(t)
        inside = (
            (np.abs(p) < a) & (np.abs(q) < b)
            if rng.random() < 0.6
            else ((p / a) ** 2 + (q / b) ** 2 < 1)
        )
        picture[y0:y1, x0:x1][inside] = rng.uniform(0.02, 0.8, 3)
    return picture


def light_field(shot: Shot, corners: Floats, rng: np.random.Generator) -> Floats:
    """Light over the photo, normalised to 1 at the brightest place of the painted sheet."""
    w, h = shot.size
    yy, xx = np.mgrid[0:h:4, 0:w:4]
    centre = corners.mean(0)
    reach = np.linalg.norm(corners - centre, axis=1).mean()
    X, Y = (xx - centre[0]) / reach, (yy - centre[1]) / reach
    angle, ratio = np.radians(shot.light[0]), shot.light[1]
    other = angle + np.pi + rng.uniform(-0.7, 0.7)
    far, high = rng.uniform(1.6, 3.0), rng.uniform(1.2, 2.2)

    def lamp(direction: float, distance: float) -> Floats:
        gap = (X - distance * np.cos(direction)) ** 2 + (Y - distance * np.sin(direction)) ** 2
        return (gap + high**2) ** -1.5

    inside = (np.abs(X) < 0.75) & (np.abs(Y) < 0.75)
    one, two = lamp(angle, far), lamp(other, far * 1.1)
    lamps = one / one.mean() + 0.25 * two / two.mean()
    most, least = lamps[inside].max(), lamps[inside].min()
    low, up = 0.0, 40.0
    for _ in range(30):  # the share of even light that gives the wanted ratio
        even = (low + up) / 2
        if (most + even) / (least + even) > ratio:
            low = even
        else:
            up = even
    field = lamps + even
    if shot.shadow:
        side = rng.uniform(0, 2 * np.pi)
        edge = X * np.cos(side) + Y * np.sin(side) - rng.uniform(-0.25, 0.25)
        edge = edge + 0.10 * np.sin(3 * (X * np.sin(side) - Y * np.cos(side)) + rng.uniform(0, 6))
        dark = 1 / (1 + np.exp(-edge / rng.uniform(0.03, 0.10)))
        field = field * (1 - shot.shadow * dark)
    # A column of four equal ones is softened downwards once.
    tall = gaussian_filter1d(np.repeat(field, 4, 0)[:h], 3, axis=0)
    full = gaussian_filter1d(np.repeat(tall, 4, 1)[:, :w], 3, axis=1)
    full /= field[inside].max()
    return full


def photograph(painting: Painting, shot: Shot) -> tuple[bytes, NDArray[np.float64]]:
    """Photograph or scan the sheet.

    Returns
    -------
    bytes
        The JPEG file.
    (4, 2) float64
        The painted rectangle's corners in pixels: the sheet's own top left, top right, bottom
        right, bottom left (so turned with the sheet).
    """
    rng = np.random.default_rng([99, shot.seed])
    w, h = shot.size
    ph, pw = painting.paper.shape[:2]
    outline = np.array([[0, 0], [pw, 0], [pw, ph], [0, ph]], dtype=float)
    turned_w, turned_h = (ph, pw) if shot.turn % 2 else (pw, ph)
    scale = shot.fill * min(w / turned_w, h / turned_h)
    half = np.array([turned_w, turned_h]) * scale / 2
    corners = np.array([[-1, -1], [1, -1], [1, 1], [-1, 1]]) * half
    if not shot.scan:
        corners = corners + rng.uniform(-1, 1, (4, 2)) * shot.perspective * half.mean() * 2
    t = np.radians(shot.tilt_deg)
    corners = corners @ np.array([[np.cos(t), np.sin(t)], [-np.sin(t), np.cos(t)]])
    slack = np.clip(np.array([w, h]) / 2 - np.abs(corners).max(0), 0, None)
    corners = corners + np.array([w, h]) / 2 + rng.uniform(-0.8, 0.8, 2) * slack
    # Photo corner i shows the sheet's corner i - turn.
    H = homography(np.roll(outline, shot.turn, axis=0), corners)
    left, top, right, bottom = painting.box
    box = np.array([[left, top], [right, top], [right, bottom], [left, bottom]])
    truth = distort(project(H, box), shot.size, shot.distortion)

    inverse = np.linalg.inv(H)

    def looked_at(rows: slice) -> tuple[Floats, Floats, Floats]:
        """Places on the sheet seen by some rows, pixels, and how far the sheet covers them."""
        x, y = sheet_places(inverse, rows, shot.size, shot.distortion)
        if shot.real:
            x, y = bowed(x, y, painting.box, shot.real.bow)
        x, y = x - 0.5, y - 0.5
        return x, y, cover_of(x, y, pw - 1, ph - 1, scale)

    source = painting.paper
    if tape := shot.tape:
        source = with_tape(painting, tape, shot.tape_outer, rng)
    shrink = max(1.0, 0.5 / scale)
    layers = [gaussian_filter(source[..., c], 0.35 * shrink) for c in range(3)]
    if shot.scan:
        picture = np.empty((h, w, 3))
        picture[:] = (0.93, 0.93, 0.925)
    else:
        picture = desk_picture(shot, rng)
    if shot.real:
        cover = np.concatenate([looked_at(rows)[2] for rows in strips(h)])
        picture *= shade_beside(cover, shot.real)[..., None]
    for rows in strips(h):
        lay(picture[rows], layers, *looked_at(rows))
    light = None if shot.scan else light_field(shot, truth, rng)
    red, blue = shot.white_balance
    white = float(np.max(np.asarray(painting.spec.tint) * [red, 1.0, blue]))
    for rows in strips(h):
        part = picture[rows]
        if light is not None:
            part *= light[rows][..., None]
            part *= np.array([red, 1.0, blue])
        if shot.real:
            part *= mixed_light(truth, rows, w, shot.real)
        part *= shot.exposure / white
    return jpeg_of(picture, shot, rng), truth


def jpeg_of(picture: Floats, shot: Shot, rng: np.random.Generator) -> bytes:
    """The JPEG file that a camera makes of the light (h, w, 3) that falls into it."""
    pixels = np.empty(picture.shape, dtype=np.uint8)
    seen = np.empty_like(picture) if shot.real else None
    for rows in strips(len(picture)):
        part = softened(picture, rows, 0.6)
        noise = rng.standard_normal(part.shape)
        noise *= shot.noise
        noise *= np.sqrt(part + 0.02)
        part += noise
        encoded = encode(part)
        if shot.curve:
            encoded = encoded + 0.10 * np.sin(2 * np.pi * (encoded - 0.5)) / np.pi * 1.2
        if seen is not None:
            seen[rows] = encoded
        else:
            pixels[rows] = as_bytes(encoded)
    if shot.real and seen is not None:
        developed(seen, shot.real)
        for rows in strips(len(picture)):
            pixels[rows] = as_bytes(seen[rows])
    buffer = io.BytesIO()
    Image.fromarray(pixels).save(buffer, "JPEG", quality=shot.quality)
    return buffer.getvalue()


def as_bytes(encoded: Floats) -> NDArray[np.uint8]:
    return (np.clip(encoded, 0, 1) * 255 + 0.5).astype(np.uint8)


def with_tape(
    painting: Painting, tape: tuple[float, float, float], outer: float, rng: np.random.Generator
) -> Floats:
    """The sheet with its masking tape still on; the share `outer` of the border stays bare."""
    left, top, right, bottom = (round(v) for v in painting.box)
    paper = painting.paper.copy()
    h, w = paper.shape[:2]
    mask = np.ones((h, w), dtype=bool)
    mask[top:bottom, left:right] = False
    t, b, lft, rgt = (round(outer * v) for v in (top, h - bottom, left, w - right))
    inner = np.zeros_like(mask)
    inner[t : h - b, lft : w - rgt] = True
    mask &= inner
    grain = 1 + 0.02 * noise_field(rng, (h, w), 2.0)
    paper[mask] = (np.asarray(tape) * grain[..., None])[mask]
    return paper
