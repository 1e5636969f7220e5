"""Scenes of one kind: a shadow, tape left on, a sheet turned, mirrored or after another sky."""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from simulator.camera import Shot, encode
from simulator.real_paper import aged, random_paper
from simulator.scenes import SKIES, Scene, scene
from simulator.sheets import SheetSpec, noise_field

TAPES = ((0.80, 0.68, 0.45), (0.12, 0.32, 0.62), (0.45, 0.60, 0.30))
"""Cream, blue and green masking tape, linear."""


def as_photo(shot: Shot, rng: np.random.Generator) -> Shot:
    """A photo, where the scene was scanned."""
    if not shot.scan:
        return shot
    return replace(
        shot, scan=False, size=(1600, 1200), fill=0.8, light=(float(rng.uniform(0, 360)), 1.4)
    )


def shadowed(seed: int) -> Scene:
    """A soft cast shadow that takes 30% of the light, over some of the sheet."""

    def dim(shot: Shot, rng: np.random.Generator) -> Shot:
        return replace(as_photo(shot, rng), shadow=0.3)

    return scene(seed, shot_changes=dim)


def taped(seed: int) -> Scene:
    """The masking tape still on."""

    def tape(shot: Shot, rng: np.random.Generator) -> Shot:
        colour = TAPES[int(rng.integers(len(TAPES)))]
        return replace(shot, tape=colour, tape_outer=float(rng.uniform(0.1, 0.35)))

    return scene(seed, shot_changes=tape)


def turned(seed: int, turn: int) -> Scene:
    """Lying `turn` quarter turns clockwise."""
    return scene(seed, shot_changes=lambda shot, _: replace(shot, turn=turn))


def curved(seed: int) -> Scene:
    """A phone's tone curve."""
    return scene(seed, shot_changes=lambda shot, rng: replace(as_photo(shot, rng), curve=True))


def uneven(seed: int, *, faults: bool = True) -> Scene:
    """Washes laid in streaks, in clouds or both, as beginners lay them."""

    def lay(spec: SheetSpec, rng: np.random.Generator) -> SheetSpec:
        streaks, mottle = rng.uniform(0.04, 0.2, 2)
        kind = int(rng.integers(3))
        return replace(
            spec, streaks=float(streaks) * (kind != 1), mottle=float(mottle) * (kind != 0)
        )

    return scene(seed, spec_changes=lay, faults=faults)


def warm(seed: int) -> Scene:
    """Lamplight."""

    def lamp(shot: Shot, rng: np.random.Generator) -> Shot:
        return replace(as_photo(shot, rng), white_balance=(1.5, 0.5))

    return scene(seed, shot_changes=lamp)


@lru_cache(maxsize=2)
def copied(seed: int) -> Scene:
    """A perfect copy: the sheet shows the reference itself. Not to be changed: it is kept."""
    return scene(seed, faults=False, copy=True)


def sky_of(seed: int) -> int:
    """Which of SKIES a scene paints: the first number its generator draws."""
    return int(np.random.default_rng([11, seed]).integers(len(SKIES)))


def sideways(seed: int, *, mirrored: bool) -> tuple[NDArray[np.uint8], Scene]:
    """A sky that glows on one side, and its copy on a sheet, the right way round or mirrored.

    Returns
    -------
    (h, w, 3) uint8
        The reference.
    Scene
        Its sheet; `lines` belong to both.
    """
    rng = np.random.default_rng([13, seed])
    linear = np.asarray(copied(seed).painting.paint)
    across = np.linspace(0, 1, linear.shape[1])[None, :, None]
    thin = 1 - float(rng.uniform(0.45, 0.65)) * across  # less paint towards the right
    linear = np.clip(linear, 1e-4, 1.0) ** thin
    if rng.random() < 0.5:
        linear = linear[:, ::-1]
    reference = (np.clip(encode(linear[::2, ::2]), 0, 1) * 255 + 0.5).astype(np.uint8)

    def paint_it(spec: SheetSpec, _: np.random.Generator) -> SheetSpec:
        return replace(spec, picture=linear[:, ::-1] if mirrored else linear)

    return reference, scene(seed, faults=False, copy=True, spec_changes=paint_it)


def on_real_paper(seed: int, *, pictured: bool = False) -> Scene:
    """A sheet as real ones come: real paper and light, another camera, thin and uneven borders,
    often cropped so that hardly any desk shows. `pictured`: a landscape instead of bands."""
    borders: list[float] = []

    def lay(spec: SheetSpec, rng: np.random.Generator) -> SheetSpec:
        border = rng.uniform(0.012, 0.04) if rng.random() < 0.4 else rng.uniform(0.04, 0.12)
        streaks, mottle = np.exp(rng.uniform(np.log(0.01), np.log(0.12), 2))
        shape = 1 if rng.random() < 0.6 else 0.5  # lying, standing or nearly square
        spec = replace(
            spec,
            aspect=spec.aspect * shape if rng.random() < 0.8 else 1.0,
            border=tuple(float(v) for v in border * rng.uniform(0.7, 1.4, 4)),
            tint=tuple(float(v) for v in 0.95 - np.sort(rng.uniform(0, 0.12, 3))),
            texture=float(rng.uniform(0.004, 0.02)),
            ragged=float(np.exp(rng.uniform(np.log(0.001), np.log(0.009)))),
            streaks=float(streaks),
            mottle=float(mottle),
        )
        borders.append(min(spec.border))
        return replace(spec, picture=landscape(spec, rng)) if pictured else spec

    def take(shot: Shot, rng: np.random.Generator) -> Shot:
        longest = int(rng.choice([900, 1200, 1600, 2000]))
        size = (longest, round(longest * float(rng.choice([0.75, 0.67, 1.0]))))
        shot = replace(shot, size=size, real=random_paper(rng), quality=int(rng.integers(72, 96)))
        if shot.scan:
            return shot
        crop = rng.random() < 0.35
        beyond = 1 + max(0.0, borders[-1] - 0.02)  # some of the border is seen all the same
        return replace(
            shot,
            fill=float(rng.uniform(0.98, beyond)) if crop else float(rng.uniform(0.62, 0.95)),
            tilt_deg=float(rng.normal(0, 0.4 if crop else 3)),
            perspective=0.006 if crop else shot.perspective,
        )

    return scene(seed, spec_changes=lay, shot_changes=take, paper_changes=aged)


def landscape(spec: SheetSpec, rng: np.random.Generator) -> NDArray[np.float64]:
    """A sky with clouds over hills, trees or water, linear light over paper white."""
    h, w = 360, round(360 * spec.aspect)
    y, x = np.mgrid[0:h, 0:w] / np.array([h, w])[:, None, None]
    heights = np.array([-0.1, *spec.lines, 1.1])
    hues = np.sort(rng.uniform(0.05, 1.6, (len(heights), 3)), axis=1)
    hues = hues[:, rng.permutation(3)] * rng.uniform(0.3, 1.1, (len(heights), 1))
    density = np.stack([np.interp(y[:, 0], heights, hues[:, c]) for c in range(3)], -1)[:, None]
    density = np.repeat(density, w, axis=1)
    clouds = np.clip(noise_field(rng, (h, w), rng.uniform(8, 30)) - rng.uniform(0, 1.5), 0, 1)
    density = density * (1 - rng.uniform(0.2, 1.0) * clouds[..., None])
    end = rng.uniform(0.45, 0.9)
    for _ in range(int(rng.integers(0, 4))):  # hills or woods, one before the other
        rough = rng.uniform(4, 60)
        course = end + 0.06 * noise_field(rng, (8, w), rough)[4]
        wash = rng.uniform(0.2, 2.0, 3) * rng.uniform(0.3, 1.4)
        over = 1 / (1 + np.exp(-np.clip((y - course[None]) * 300, -30, 30)))
        density = density * (1 - over[..., None]) + over[..., None] * wash
        end += rng.uniform(0.05, 0.2)
    if rng.random() < 0.3:
        sun = (x - rng.random()) ** 2 * spec.aspect**2 + (y - rng.uniform(0.1, 0.6)) ** 2
        density = density * (1 - np.exp(-sun / 0.003))[..., None]
    return np.exp(-np.clip(density, 0.01, 3.5))
