"""Scenes of one kind: a shadow, tape left on, a sheet turned, mirrored or after another sky."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from simulator.camera import Shot, encode
from simulator.scenes import SKIES, Scene, scene
from simulator.sheets import SheetSpec

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


def copied(seed: int) -> Scene:
    """A perfect copy: the sheet shows the reference itself."""
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
    plain = scene(seed, faults=False, copy=True)
    linear = np.asarray(plain.painting.paint)
    across = np.linspace(0, 1, linear.shape[1])[None, :, None]
    thin = 1 - float(rng.uniform(0.45, 0.65)) * across  # less paint towards the right
    linear = np.clip(linear, 1e-4, 1.0) ** thin
    if rng.random() < 0.5:
        linear = linear[:, ::-1]
    reference = (np.clip(encode(linear[::2, ::2]), 0, 1) * 255 + 0.5).astype(np.uint8)

    def paint_it(spec: SheetSpec, _: np.random.Generator) -> SheetSpec:
        return replace(spec, picture=linear[:, ::-1] if mirrored else linear)

    return reference, scene(seed, faults=False, copy=True, spec_changes=paint_it)
