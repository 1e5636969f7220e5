"""A 24-megapixel JPEG to measure with: a sample scene, enlarged, with the grain of a sensor."""

from __future__ import annotations

from pathlib import Path

import numpy as np
from PIL import Image

import sample_scenes


def write_big_photo(
    path: Path, scene: str = "dusk.jpg", size: tuple[int, int] = (6000, 4000)
) -> None:
    """Write the scene at `size` (width, height), quality 92, the same bytes every time."""
    source = Path(sample_scenes.__file__).with_name(scene)
    with Image.open(source) as image:
        large = np.asarray(image.convert("RGB").resize(size, Image.Resampling.BICUBIC))
    rng = np.random.default_rng(24)
    noisy = np.empty_like(large)
    for start in range(0, size[1], 500):
        rows = slice(start, start + 500)
        grain = rng.normal(0, 3, large[rows].shape).astype(np.float32)
        noisy[rows] = np.clip(large[rows] + grain + 0.5, 0, 255)
    Image.fromarray(noisy).save(path, quality=92)
