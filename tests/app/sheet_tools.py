"""What the tests of the Sheets page share: small simulated sheets, and waiting for their checks."""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import replace
from functools import lru_cache
from pathlib import Path

import numpy as np
from PIL import Image
from simulator import Scene, SheetSpec, Shot, scene
from window_tools import open_and_wait, wait_until_still

from app.window.window import Window
from core.bands.lines import Bands
from core.sheet.result import SheetOptions
from core.study import SheetEntry, with_bands, with_sheet, with_worksheet
from core.worksheet.worksheet import Worksheet, with_score

SEED = 7
"""A sky of four bands."""

Change = Callable[[SheetSpec, np.random.Generator], SheetSpec]
_SIZE = (800, 600)


@lru_cache(maxsize=16)
def painted(
    seed: int = SEED,
    *,
    raised: float = 0.0,
    turn: int = 0,
    seen_whole: bool = True,
    shot_seed: int = 3,
) -> Scene:
    """A small sheet without faults, painted after the sky of `seed`.

    Parameters
    ----------
    raised : float
        By so much of the height every line is too high.
    turn : int
        Quarter turns it is turned by.
    seen_whole : bool
        False for a photo of plain paper, in which nothing can be found.
    """

    def spec(plain: SheetSpec, rng: np.random.Generator) -> SheetSpec:
        lines = tuple(y - raised for y in plain.lines)
        return replace(plain, lines=lines, height=360)

    def shot(usual: Shot, rng: np.random.Generator) -> Shot:
        return Shot(
            size=_SIZE, fill=0.86, tilt_deg=2.0, perspective=0.02, light=(30.0, 1.15),
            noise=0.003, turn=turn, seed=shot_seed,
        )  # fmt: skip

    case = scene(seed, spec_changes=spec, shot_changes=shot, copy=True)
    if not seen_whole:
        rng = np.random.default_rng(1)
        plain = np.clip(rng.normal(180, 3, (*_SIZE[::-1], 3)), 0, 255).astype(np.uint8)
        buffer = io.BytesIO()
        Image.fromarray(plain).save(buffer, "JPEG")
        case = replace(case, jpeg=buffer.getvalue())
    return case


def open_sky(window: Window, folder: Path, qtbot, seed: int = SEED) -> None:
    """Open the sky of a seed with its true lines."""
    case = painted(seed)
    path = folder / "sky.png"
    path.write_bytes(_sky_file(seed))
    open_and_wait(window, path, qtbot)
    bands = Bands(1.0, case.lines)
    window.document.change("lines", with_bands(window.document.study, bands))
    wait_until_still(window, qtbot)


@lru_cache(maxsize=4)
def _sky_file(seed: int) -> bytes:
    buffer = io.BytesIO()
    Image.fromarray(painted(seed).reference[::2, ::2]).save(buffer, "PNG")
    return buffer.getvalue()


def add_sheet(window: Window, index: int, case: Scene, options: SheetOptions | None = None) -> None:
    """Put a sheet into the study, as the page does once its file is read."""
    picture = window.pictures.add(f"sheet {index + 1}.jpg", case.jpeg)
    entry = SheetEntry(picture, options or SheetOptions())
    window.document.change("add sheet", with_sheet(window.document.study, index, entry))


def wait_for_checks(window: Window, qtbot) -> None:
    """Until lines rest and every sheet is checked."""
    qtbot.waitUntil(
        lambda: not window.reader.working and not window.checker.working, timeout=30_000
    )


def score_sheet(window: Window, index: int, score: int = 7) -> None:
    """Give a sheet the three scores that open its findings."""
    worksheet: Worksheet = window.document.study.worksheet
    for quality in ("hue", "value", "intensity"):
        worksheet = with_score(worksheet, index, quality, score)
    window.document.change("scores", with_worksheet(window.document.study, worksheet))
