"""The painted sheet itself: banded washes on paper, flat and evenly lit."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from scipy.fft import dct, idct
from scipy.ndimage import gaussian_filter, gaussian_filter1d, map_coordinates

from core.colour import XYZ_to_linear
from core.paint.pigment.measured import half_load_ml, load_reflectance, measured_paints
from simulator.strips import Floats, strips

Wash = dict[str, float]
"""Paint key -> amount, in loads that take half the light from the paint's strongest band."""


@dataclass(frozen=True)
class Bloom:
    """A backrun. Positions are fractions of the painted width and height, radius of height."""

    x: float
    y: float
    radius: float
    pale: float = 0.55
    rim: float = 1.25


@dataclass(frozen=True)
class SheetSpec:
    """What was painted, and with which faults.

    Attributes
    ----------
    washes : tuple of Wash
        What each band was painted with.
    lines : tuple of float
        Where neighbouring bands meet, fractions of the painted height.
    widths : tuple of float
        10-90% width of each transition, fractions of the height.
    partial : tuple of (from, to) or None
        Where a transition is crisp only over part of the width: that part (fractions of the
        width); the rest is 10% wide.
    inner_edges : tuple of (y, from, to, strength)
        Drying edges inside a band: the wash below is weaker by that factor.
    skew : tuple of float
        How much slower a transition sets in above its line than it ends below, -1..1.
    streaks, mottle : float
        How uneven the washes were laid: relative deviation of the paint in strokes that run
        across, and in clouds.
    picture : (h, w, 3) float64 or None
        Paint this instead of the washes (linear light over paper white).
    """

    washes: tuple[Wash, ...]
    lines: tuple[float, ...]
    widths: tuple[float, ...]
    aspect: float = 1.4
    partial: tuple[tuple[float, float] | None, ...] = ()
    inner_edges: tuple[tuple[float, float, float, float], ...] = ()
    blooms: tuple[Bloom, ...] = ()
    pale_corners: tuple[tuple[int, float], ...] = ()
    wobble: float = 0.006
    granulation: float = 0.05
    texture: float = 0.012
    ragged: float = 0.003
    rim: float = 0.15
    border: tuple[float, float, float, float] = (0.06, 0.06, 0.06, 0.06)
    tint: tuple[float, float, float] = (0.90, 0.89, 0.86)
    seed: int = 0
    height: int = 720
    skew: tuple[float, ...] = ()
    streaks: float = 0.0
    mottle: float = 0.0
    picture: Floats | None = field(default=None, compare=False)


@dataclass(frozen=True, eq=False)
class Painting:
    """A painted sheet seen flat in even light.

    Attributes
    ----------
    paper : (h, w, 3) float64
        Linear reflectance of the whole paper, border included.
    paint : (H, W, 3) float64
        The painted rectangle only, relative to the paper's white (the truth for colours).
    box : (left, top, right, bottom)
        The painted rectangle inside `paper`, in pixels.
    """

    paper: Floats
    paint: Floats
    box: tuple[float, float, float, float]
    spec: SheetSpec


def wash_density(shares: Floats, washes: tuple[Wash, ...]) -> Floats:
    """Optical density (n, 3) over paper white of washes run together, by the film model.

    `shares` (n, bands) says how much of each band's wash is there.
    """
    keys = measured_paints().keys
    loads = np.array([[wash.get(key, 0.0) * half_load_ml(key) for key in keys] for wash in washes])
    XYZ = load_reflectance(shares @ loads) @ measured_paints().weights
    white = load_reflectance(np.zeros(len(keys))) @ measured_paints().weights
    linear = XYZ_to_linear(XYZ) / XYZ_to_linear(white)
    return -np.log(np.clip(linear, 0.003, 1.0))


def step(z: Floats, width: Floats | float, skew: float) -> Floats:
    """A smooth step, 0 above and 1 below z = 0, with the given 10-90% width."""
    slow = np.where(z < 0, 1 + skew, 1 - skew)
    return 1 / (1 + np.exp(-np.clip(z * 4.394 / (np.asarray(width) * slow), -40, 40)))


def band_shares(
    y: Floats, lines: tuple[float, ...], widths: Floats, skew: tuple[float, ...]
) -> Floats:
    """Share (n, bands) of each band's wash at the heights `y` (n,)."""
    below = [np.ones_like(y)]
    for k, line in enumerate(lines):
        below.append(step(y - line, widths[k], skew[k] if k < len(skew) else 0.0))
    below.append(np.zeros_like(y))
    shares = np.stack([below[k] * (1 - below[k + 1]) for k in range(len(lines) + 1)], -1)
    return shares / shares.sum(-1, keepdims=True)


def noise_field(rng: np.random.Generator, shape: tuple[int, int], sigma: float) -> Floats:
    """Smooth noise with unit deviation; `sigma` in pixels."""
    small = max(1, int(sigma // 4))
    coarse = rng.standard_normal((shape[0] // small + 8, shape[1] // small + 8))
    smooth = gaussian_filter(coarse, sigma / small)
    if small > 1:
        rows = np.linspace(3, smooth.shape[0] - 4, shape[0])
        columns = np.linspace(3, smooth.shape[1] - 4, shape[1])
        r0, c0 = rows.astype(int), columns.astype(int)
        fr, fc = (rows - r0)[:, None], (columns - c0)[None]
        across = smooth[:, c0] * (1 - fc) + smooth[:, c0 + 1] * fc
        smooth = across[r0]
        smooth *= 1 - fr
        below = across[r0 + 1]
        below *= fr
        smooth += below
    else:
        smooth = smooth[: shape[0], : shape[1]]
    smooth = smooth - smooth.mean()
    # As `std` reckons it, from what is left of the mean it takes out itself.
    smooth /= np.sqrt(np.mean(smooth * smooth)) + 1e-12
    return smooth


def wobble_line(rng: np.random.Generator, n: int, sigma: float, scale: float) -> Floats:
    line = gaussian_filter1d(rng.standard_normal(n + int(8 * sigma)), sigma)[int(4 * sigma) :][:n]
    return np.asarray((line - line.mean()) / (line.std() + 1e-12) * scale)


def paint(spec: SheetSpec) -> Painting:
    """Paint the sheet; everything random comes from `spec.seed`."""
    rng = np.random.default_rng([77, spec.seed])
    return on_paper(washes_of(spec, rng), spec, rng)


def washes_of(spec: SheetSpec, rng: np.random.Generator) -> Floats:
    """The painted rectangle alone, (height, width, 3), relative to the paper's white."""
    H = spec.height
    W = round(H * spec.aspect)
    y = (np.arange(H)[:, None] + 0.5) / H
    x = (np.arange(W)[None] + 0.5) / W

    strength = np.ones((H, W))
    courses = []
    crisp = np.zeros((H, W))  # where the crisp variant of a partly hard transition holds
    soft_widths, crisp_widths = np.array(spec.widths), np.array(spec.widths)
    middles = np.array([0.0, *(np.add(spec.lines[1:], spec.lines[:-1]) / 2), 1.0])
    for k, (line, width) in enumerate(zip(spec.lines, spec.widths, strict=True)):
        course = line + wobble_line(rng, W, W / 12, spec.wobble * min(1.0, width / 0.02 + 0.3))
        courses.append(course)
        hard = np.full(W, 1.0 if width < 0.02 else 0.0)
        partial = spec.partial[k] if k < len(spec.partial) else None
        if partial is not None:
            hard = 1 / (1 + np.exp(-(x[0] - partial[0]) / 0.008))
            hard *= 1 / (1 + np.exp((x[0] - partial[1]) / 0.008))
            soft_widths[k] = 0.10
            crisp[round(middles[k] * H) : round(middles[k + 1] * H)] = hard
        if hard.any():
            near = rows_near(course, H)
            strength[near] *= 1 + spec.rim * hard[None] * rim_at(y[near], course)
    for edge_y, start, end, factor in spec.inner_edges:
        course = edge_y + wobble_line(rng, W, W / 10, spec.wobble)
        inside = ((x > start) & (x < end)).astype(float)
        inside = gaussian_filter1d(inside, 0.012 * W, axis=1)
        step = 1 / (1 + np.exp(-np.clip((y - course[None]) / (0.006 / 4.394), -40, 40)))
        fade = np.exp(-np.clip(y - course[None], 0, None) / 0.10)
        strength *= 1 - (1 - factor) * inside * step * fade
        near = rows_near(course, H)
        strength[near] *= 1 + spec.rim * inside * rim_at(y[near], course)
    for bloom in spec.blooms:
        strength *= bloom_factor(bloom, x, y, spec.aspect, rng)
    for corner, weaker in spec.pale_corners:
        cx, cy = (0, 1, 1, 0)[corner], (0, 0, 1, 1)[corner]
        far = ((x - cx) * spec.aspect) ** 2 + (y - cy) ** 2
        strength *= 1 - (1 - weaker) * np.exp(-far / (2 * 0.16**2))
    uneven = np.ones((H, W))
    if spec.granulation:
        grain = noise_field(rng, (H, W), 1.6) - 0.6 * noise_field(rng, (H, W), 5.0)
        uneven += spec.granulation * grain
    else:  # drawn all the same, so that what is drawn later does not change
        rng.standard_normal((2, H + 8, W + 8))
    uneven += 0.03 * noise_field(rng, (H, W), 0.08 * H)
    strength *= np.clip(uneven, 0.3, 2.0, out=uneven)
    strength *= unevenness(spec, (H, W))

    if spec.picture is not None:
        density = -np.log(np.clip(resized(spec.picture, (H, W)), 0.003, 1.0))
        return np.exp(-density * strength[..., None])
    # Colours are mixed once for every height; the wobble of the lines bends that ladder.
    ladder = (np.arange(4 * H) + 0.5) / (4 * H)
    nominal = np.array([0.0, *spec.lines, 1.0])
    bent = np.stack([np.zeros(W), *courses, np.ones(W)])
    at = np.stack([np.interp(y[:, 0], bent[:, j], nominal) for j in range(W)], -1)
    variants = [(soft_widths, 1 - crisp), (crisp_widths, crisp)][: 2 if crisp.any() else 1]
    mixed = [
        wash_density(band_shares(ladder, spec.lines, widths, spec.skew), spec.washes)
        for widths, _ in variants
    ]
    colour = np.empty((H, W, 3))
    for c in range(3):
        layers = [
            share * np.interp(at, ladder, one[:, c])
            for one, (_, share) in zip(mixed, variants, strict=True)
        ]
        density = layers[0] if len(layers) == 1 else layers[0] + layers[1]
        density *= strength
        colour[..., c] = np.exp(np.negative(density, out=density), out=density)
    return colour


def rows_near(course: Floats, height: int) -> slice:
    """The rows in which a line's rim is more than nothing: beyond them it rounds to none at all."""
    low, high = course.min() - 0.003 - 0.03, course.max() - 0.003 + 0.03
    return slice(max(0, int(low * height)), max(0, int(np.ceil(high * height)) + 1))


def rim_at(y: Floats, course: Floats) -> Floats:
    """The dark rim above a line, 1 at its darkest."""
    return np.exp(-(((y - course[None] + 0.003) / 0.004) ** 2))


def unevenness(spec: SheetSpec, shape: tuple[int, int]) -> Floats:
    """Strength factor of washes laid in streaks and clouds; its randomness is its own."""
    H, W = shape
    rng = np.random.default_rng([78, spec.seed])
    factor = np.ones(shape)
    stroke, cloud = np.exp(rng.uniform(np.log(0.004), np.log(0.02), 2)) * H
    for amount, sigma in (
        (spec.streaks, (stroke, rng.uniform(0.1, 0.3) * W)),
        (spec.mottle, (1.5 * cloud, 1.5 * cloud)),
    ):
        if amount:
            noise = wide_filter(rng.standard_normal(shape), sigma)
            factor += amount * noise / noise.std()
    return np.clip(factor, 0.3, 2.0)


def wide_filter(noise: Floats, sigma: tuple[float, float]) -> Floats:
    """`gaussian_filter(noise, sigma, mode="reflect", truncate=3)`, a wide one by its waves."""
    tall = gaussian_filter1d(noise, sigma[0], axis=0, mode="reflect", truncate=3)
    if sigma[1] < 30:
        return gaussian_filter1d(tall, sigma[1], axis=1, mode="reflect", truncate=3)
    # Reflected at its ends, a row is a sum of cosines, and a filter weakens each by a factor.
    width = noise.shape[1]
    away = np.arange(int(3 * sigma[1] + 0.5) + 1)
    weights = np.exp(-0.5 * (away / sigma[1]) ** 2) * np.where(away, 2, 1)
    waves = np.cos(np.pi / width * np.outer(np.arange(width), away))
    return idct(dct(tall, axis=1) * (waves @ (weights / weights.sum())), axis=1)


def resized(picture: Floats, shape: tuple[int, int]) -> Floats:
    rows = np.linspace(0, picture.shape[0] - 1, shape[0])
    columns = np.linspace(0, picture.shape[1] - 1, shape[1])
    grid = np.meshgrid(rows, columns, indexing="ij")
    return np.stack(
        [map_coordinates(picture[..., c], grid, order=1, mode="nearest") for c in range(3)], -1
    )


def bloom_factor(
    bloom: Bloom, x: Floats, y: Floats, aspect: float, rng: np.random.Generator
) -> Floats:
    """Strength factor of a backrun: pale inside, a crinkled darker rim, ended outside."""
    factor = np.ones((len(y), x.shape[1]))
    reach = 4 * bloom.radius  # it is nothing from 2.6 of at most 1.5 radii on
    columns, rows = np.abs(x[0] - bloom.x) * aspect < reach, np.abs(y[:, 0] - bloom.y) < reach
    dx, dy = (x[:, columns] - bloom.x) * aspect, y[rows] - bloom.y
    angle = np.arctan2(dy, dx)
    outline = np.ones_like(angle)
    for n in range(2, 11):
        outline += rng.normal(0, 0.10 / n**0.7) * np.cos(n * angle + rng.uniform(0, 2 * np.pi))
    r = np.hypot(dx, dy) / (bloom.radius * np.clip(outline, 0.5, 1.5))
    inside = 1 / (1 + np.exp(np.clip((r - 1) / 0.04, -40, 40)))
    pale = bloom.pale + (1 - bloom.pale) * 0.5 * np.clip(1 - r, 0, 1)
    rim = (bloom.rim - 1) * np.exp(-(((r - 1.04) / 0.07) ** 2))
    factor[np.ix_(rows, columns)] = 1 + inside * (pale - 1) + rim
    return factor


def on_paper(colour: Floats, spec: SheetSpec, rng: np.random.Generator) -> Painting:
    """Put the painted rectangle on paper with a border whose edge is as ragged as tape leaves."""
    H, W = colour.shape[:2]
    top, right, bottom, left = (round(b * H) for b in spec.border)
    full = (H + top + bottom, W + left + right)
    ragged = spec.ragged * H
    edges = [np.abs(wobble_line(rng, n, 3, ragged * 0.5)) - ragged * 0.4 for n in (W, H, W, H)]
    bleeds = [np.zeros(W), np.zeros(H), np.zeros(W), np.zeros(H)]
    for side in range(4):
        for _ in range(rng.poisson(1.2)):
            at, size = rng.integers(0, len(bleeds[side])), rng.uniform(0.6, 2.0) * ragged
            reach = np.exp(-(((np.arange(len(bleeds[side])) - at) / (1.5 * size + 2)) ** 2))
            bleeds[side] = bleeds[side] + reach * size * rng.choice([-1.0, 1.0])
    out_t, out_r, out_b, out_l = (e + b for e, b in zip(edges, bleeds, strict=True))
    yy = np.arange(full[0])[:, None] - top + 0.5
    xx = np.arange(full[1])[None] - left + 0.5
    columns = np.clip(np.arange(full[1]) - left, 0, W - 1)
    rows = np.clip(np.arange(full[0]) - top, 0, H - 1)
    cover = np.clip(yy + out_t[columns][None] + 0.5, 0, 1)
    cover = cover * np.clip(H + out_b[columns][None] - yy + 0.5, 0, 1)
    cover = cover * np.clip(xx + out_l[rows][:, None] + 0.5, 0, 1)
    cover = cover * np.clip(W + out_r[rows][:, None] - xx + 0.5, 0, 1)
    tooth = noise_field(rng, full, 1.2)
    tooth *= spec.texture
    tooth += 1
    paper = np.empty((*full, 3))
    for strip in strips(full[0]):
        part = paper[strip]
        part[:, left : left + W] = colour[rows[strip]]
        part[:, :left], part[:, left + W :] = part[:, left, None], part[:, left + W - 1, None]
        part -= 1
        part *= cover[strip][..., None]
        part += 1
        part *= np.asarray(spec.tint)
        part *= tooth[strip][..., None]
        np.clip(part, 0, 1, out=part)
    return Painting(
        paper,
        colour,
        (float(left), float(top), float(left + W), float(top + H)),
        spec,
    )
