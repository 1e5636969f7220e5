"""What is said of copies of photos' skies, whose truth is known without painting anything.

    python -m benchmarks.copies [PHOTO or FOLDER ...] [--part PART]

A sheet here is the sky itself on white paper, corners given: blurred, with so many times its paint
(Beer's law: optical densities are multiplied), mirrored, turned, or another photo's. Without photos
the sample scenes are taken; bands are those that the program proposes.
"""

from __future__ import annotations

import argparse
import os
import sys
import zlib
from collections.abc import Callable, Iterator
from functools import cache
from multiprocessing import Pool
from pathlib import Path

os.environ.setdefault("OMP_NUM_THREADS", "1")

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import gaussian_filter, zoom

import sample_scenes
from core.colour import delta_E_2000, linear_to_srgb, srgb8_to_linear
from core.colour.working_space import linear_to_W
from core.photo import Photo, open_photo
from core.pipeline import propose_for, read_sky
from core.sheet import Reference, check_sheet, make_reference
from core.sheet.match.order import profile_of
from core.sheet.match.orientation import judge_orientation
from core.sheet.result import SheetCheck, SheetOptions

sys.path.insert(0, str(Path(__file__).parents[1] / "tests"))

from simulator.measure import cell_colours

Floats = NDArray[np.float64]

BLURS = (0.004, 0.008, 0.012)
"""Deviations, shares of the sky's height."""
STRENGTHS = (0.4, 0.6, 1.6, 2.2)
PAPER = (0.81, 0.80, 0.775)
_HEIGHT, _BORDER = 320, 30
_GRAIN = 0.004
_SIDES = 3.0  # CIEDE2000 between left and right that an eye sees
_SUFFIXES = (".jpg", ".jpeg", ".png")


@cache
def reference_of(path: Path) -> Reference:
    photo = open_photo(path)
    proposal = propose_for(photo)
    sky = read_sky(photo, proposal)
    return make_reference(photo, sky.bands, sky.readings, proposal.sky)


def copy_of(reference: Reference, strength: float = 1.0, blur: float = 0.0) -> Floats:
    """The sky in linear light over paper white, (320, w, 3)."""
    step = max(1, len(reference.picture) // (2 * _HEIGHT))
    linear = srgb8_to_linear(reference.picture[::step, ::step]).astype(np.float64)
    density = -np.log(np.clip(without_foreground(linear, reference.mask[::step, ::step]), 3e-3, 1))
    size = blur * len(density)
    density = gaussian_filter(density, (size, size, 0), mode="nearest")
    scale = _HEIGHT / len(density)
    density = zoom(density, (scale, scale, 1), order=1)
    return np.asarray(np.exp(-strength * np.clip(density, 0.0, 6.0)))


def without_foreground(linear: Floats, mask: NDArray[np.bool_]) -> Floats:
    """What stands before the sky, in the colour of the sky in its row."""
    seen = np.where(mask[..., None], linear, np.nan)
    known = np.flatnonzero(mask.any(axis=1))
    rows = np.nanmedian(seen[known], axis=1)
    every = np.arange(len(linear))
    middle = np.stack([np.interp(every, known, rows[:, c]) for c in range(3)], -1)
    return np.where(mask[..., None], linear, middle[:, None])


def checked(reference: Reference, painted: Floats) -> SheetCheck:
    """A check of a painting on its paper; its corners are known."""
    h, w = painted.shape[:2]
    rng = np.random.default_rng(zlib.crc32(reference.name.encode()))
    picture = np.ones((h + 2 * _BORDER, w + 2 * _BORDER, 3)) * PAPER
    picture[_BORDER : _BORDER + h, _BORDER : _BORDER + w] *= painted
    picture *= 1 + _GRAIN * rng.standard_normal(picture.shape)
    H, W = picture.shape[:2]
    x0, y0, x1, y1 = _BORDER / W, _BORDER / H, (_BORDER + w) / W, (_BORDER + h) / H
    pixels = (linear_to_srgb(np.clip(picture, 0, 1)) * 255 + 0.5).astype(np.uint8)
    photo = Photo(pixels, None, W, H, "sheet.png")
    return check_sheet(
        photo, reference, SheetOptions(corners=((x0, y0), (x1, y0), (x1, y1), (x0, y1)))
    )


def keys_of(check: SheetCheck) -> set[str]:
    return {notice.key for notice in check.notices}


def blurred(path: Path) -> list[tuple[str, bool, str]]:
    """(what, right, what was said) of every blur."""
    reference = reference_of(path)
    found = []
    for blur in BLURS:
        check = checked(reference, copy_of(reference, blur=blur))
        counts = (len(check.blooms), len(check.hard_edges), len(check.pale_corners))
        said = "blooms {}, edges {}, pale corners {}".format(*counts)
        found.append((f"blurred by {blur:.1%}", not any(counts), said))
    return found


def strength(path: Path) -> list[tuple[str, bool, str]]:
    """Whether strength comes first, hues are praised, and no other sky is asked about."""
    reference = reference_of(path)
    found = []
    for share in STRENGTHS:
        check = checked(reference, copy_of(reference, share, blur=0.008))
        findings = check.findings
        step = next((f.text for f in findings if f.kind == "step"), "")
        one = len(reference.readings) == 1
        wanted = "The wash is too " if one else "All of it is too "
        wanted += "pale" if share < 1 else "strong"
        praised = any(f.kind == "praise" and f.about == "hue" for f in findings)
        grey = all(r.colour is None or r.colour.hue.family is None for r in reference.readings)
        what = f"paint x {share}"
        first = findings[0].text if findings else ""
        found.append((f"{what}: first step", step.startswith(wanted), step))
        if not grey:
            found.append((f"{what}: praised", praised, first))
        keys = keys_of(check)
        found.append((f"{what}: its own sky", "other sky" not in keys, str(sorted(keys))))
    return found


def sides(path: Path) -> list[tuple[str, bool, str]]:
    """Whether a mirrored and a turned copy are asked about, and a straight one is not."""
    reference = reference_of(path)
    sheet = copy_of(reference, blur=0.004)
    lab = cell_colours(sheet, reference.bands.lines).reshape(-1, 3, 3)
    differ = float(np.mean(delta_E_2000(lab[:, 0], lab[:, 2])))
    straight = keys_of(checked(reference, sheet)) & {"other sky", "turn", "mirrored"}
    found = [("straight: nothing asked", not straight, str(straight))]
    if differ >= _SIDES:
        keys = keys_of(checked(reference, sheet[:, ::-1]))
        found.append(("mirrored: asked", "mirrored" in keys, f"sides {differ:.1f} apart {keys}"))
    for turn in (1, 2, 3):
        keys = keys_of(checked(reference, np.rot90(sheet, turn)))
        found.append((f"turned {turn}: asked", bool(keys & {"turn", "other sky"}), str(keys)))
    return found


def other(path: Path, others: list[Path]) -> list[tuple[str, bool, str]]:
    """Whether a question is asked of another photo's sky, straight, mirrored and upside down."""
    reference = reference_of(path)
    found = []
    for stranger in others:
        if stranger == path:
            continue
        W = linear_to_W(copy_of(reference_of(stranger), blur=0.008))
        for what, seen in (("another sky", W), ("another, mirrored", W[:, ::-1]),
                           ("another, upside down", W[::-1]), ("another, on its side",
                            W.swapaxes(0, 1)[::-1])):  # fmt: skip
            judged = judge_orientation(reference, seen, profile_of(seen), light_undone=True)
            asked = judged.other_sky or judged.turn != 0 or judged.mirrored
            found.append((f"{what}: asked", asked, f"{stranger.stem} {judged.distance:.1f}"))
    return found


PARTS: dict[str, Callable[..., list[tuple[str, bool, str]]]] = {
    "blurred": blurred, "strength": strength, "sides": sides, "other": other,
}  # fmt: skip


def pictures(given: list[Path]) -> Iterator[Path]:
    for path in given or [Path(sample_scenes.__file__).parent]:
        if path.is_dir():
            yield from sorted(p for p in path.iterdir() if p.suffix.lower() in _SUFFIXES)
        else:
            yield path


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("photos", nargs="*", type=Path)
    parser.add_argument("--part", choices=tuple(PARTS), action="append")
    parser.add_argument("--jobs", type=int, default=2)
    args = parser.parse_args()
    paths = list(pictures(args.photos))
    print(f"{len(paths)} skies")
    with Pool(args.jobs) as pool:
        for part in args.part or tuple(PARTS):
            given = [(path, paths) if part == "other" else (path,) for path in paths]
            rows: dict[str, list[bool]] = {}
            for path, found in zip(
                paths, pool.starmap(PARTS[part], given, chunksize=1), strict=True
            ):
                for what, right, said in found:
                    rows.setdefault(what, []).append(right)
                    if not right:
                        print(f"    {path.stem}: {what}: {said}")
            for what, right_ones in rows.items():
                print(f"{what:<40}{sum(right_ones):>5} of {len(right_ones)}", flush=True)


if __name__ == "__main__":
    main()
