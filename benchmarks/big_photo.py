"""A 24 megapixel JPEG for the benchmarks: a sample sky, enlarged, with the grain of a camera."""

from __future__ import annotations

from pathlib import Path

import numpy as np
from PIL import Image

import sample_scenes

SIZE = (6000, 4000)


def write_big_photo(path: Path, scene: str = sample_scenes.DEFAULT) -> Path:
    """Write the photo and return its path."""
    with Image.open(sample_scenes.path(scene)) as small:
        large = np.asarray(small.convert("RGB").resize(SIZE, Image.Resampling.BICUBIC))
    grain = np.random.default_rng(7).integers(-6, 7, large.shape, dtype=np.int16)
    pixels = np.clip(large + grain, 0, 255).astype(np.uint8)
    Image.fromarray(pixels).save(path, quality=90)
    return path
