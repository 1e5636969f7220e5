"""Saving and opening a study with a 12 MP photo and two sheets, beside writing the same bytes.

python -m benchmarks.study_file
"""

from __future__ import annotations

import io
import os
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from statistics import median

import numpy as np
from PIL import Image

from core.bands.lines import Bands
from core.photo import open_photo
from core.pictures import PictureStore
from core.study import SheetEntry, Study
from core.study_file.document import study_from_bytes, study_to_bytes
from core.study_file.save import read_bytes, write_bytes


def picture(seed: int) -> bytes:
    """A JPEG of 12 MP with the noise of a camera."""
    rng = np.random.default_rng(seed)
    rows = np.linspace(60, 220, 3000)[:, None, None]
    pixels = rows + rng.normal(0, 6, (3000, 4000, 3)).astype(np.float32)
    out = io.BytesIO()
    Image.fromarray(pixels.clip(0, 255).astype(np.uint8)).save(out, "JPEG", quality=92)
    return out.getvalue()


def seconds(work: Callable[[], object], times: int = 7) -> float:
    """Median of several runs."""
    taken = []
    for _ in range(times):
        began = time.perf_counter()
        work()
        taken.append(time.perf_counter() - began)
    return median(taken)


def main() -> None:
    """Print both figures beside what they are held against."""
    store = PictureStore()
    study = Study(
        "Benchmark",
        store.add("photo.jpg", picture(1)),
        Bands(0.8, (0.2, 0.4)),
        sheets=(
            SheetEntry(store.add("first.jpg", picture(2))),
            SheetEntry(store.add("second.jpg", picture(3))),
        ),
    )
    data = study_to_bytes(study, store)
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "lesson.gradewash"

        def plain() -> None:
            with path.open("wb") as stream:
                stream.write(data)
                os.fsync(stream.fileno())

        def decode() -> None:
            for digest in store:
                open_photo(store[digest], name="photo.jpg")

        def open_study() -> None:
            for content in study_from_bytes(read_bytes(path)).pictures.values():
                open_photo(content, name="photo.jpg")

        written = seconds(plain)
        saved = seconds(lambda: write_bytes(path, study_to_bytes(study, store)))
        decoded = seconds(decode)
        opened = seconds(open_study)
    print(f"study of {len(data) / 1e6:.1f} MB, three pictures of 12 MP")
    print(
        f"save: {saved:.3f} s; the bytes alone {written:.3f} s; beyond: {saved - written:.3f} s"
        " (to stay below 0.5)"
    )
    print(
        f"open: {opened:.3f} s; decoding alone {decoded:.3f} s; beyond: {opened - decoded:.3f} s"
        " (to stay below 1.0)"
    )


if __name__ == "__main__":
    main()
