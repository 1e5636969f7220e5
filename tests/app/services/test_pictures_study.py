"""The photo in steps of value: shapes with clean edges, as in a value study."""

from __future__ import annotations

import numpy as np

from app.services.pictures import _study
from core.photo.views import value_steps_view


def borders(steps: np.ndarray) -> int:
    """How many neighbours left and right stand in different steps."""
    return int((np.diff(steps[..., 0].astype(int), axis=1) != 0).sum())


def test_grain_does_not_fray_the_shapes() -> None:
    """A gradient with grain: the border between two steps is one line, not a cloud of specks."""
    ramp = np.linspace(90, 170, 900)[None, :, None]
    grain = np.random.default_rng(0).normal(0, 4, (300, 900, 1))
    pixels = np.clip(ramp + grain, 0, 255).astype(np.uint8).repeat(3, axis=2)
    frayed, clean = borders(value_steps_view(pixels, 5)), borders(_study(pixels, 5))
    assert frayed > 20 * 300
    assert clean < 3 * 300
