"""How right the sheet check is, on simulated sheets nothing was tuned on. Prints every target.

    python -m benchmarks.sheets [--count 120] [--start SEED]

The simulator (tests/simulator) paints each sheet from a seed, so the truth is known. The check was
built and its weights fitted on seeds below 1000; this starts at 5000. Every row gives the target,
what was measured, and how many cases stand behind it.
"""

from __future__ import annotations

import argparse
import io
import os
import sys
import time
from multiprocessing import Pool
from pathlib import Path
from typing import Any

os.environ.setdefault("OMP_NUM_THREADS", "1")

import numpy as np
from PIL import Image

sys.path.insert(0, str(Path(__file__).parents[1] / "tests"))
sys.path.insert(0, str(Path(__file__).parents[1]))

from simulator import REPORT_SEED, Scene, cases, measure, scene

from core.colour import delta_E_2000, srgb8_to_linear
from core.errors import Cancelled
from core.photo import Photo, open_photo
from core.sheet import Reference, check_sheet
from core.sheet.find.corners import SURE
from core.sheet.result import SheetCheck, SheetOptions

Row = tuple[str, str, str, bool | None]

DOUBTFUL = 0
"""A seed whose sheet on real paper is found, but never surely: everything is looked at."""


def checked(one: scene, reference: Any | None = None) -> SheetCheck:
    """The scene's sheet against its own sky, or another."""
    reference = reference or measure.reference_of(one)
    photo = open_photo(one.jpeg, name="sheet.jpg")
    return check_sheet(photo, reference, SheetOptions(scan=one.shot.scan))


def main_case(seed: int) -> dict[str, Any]:
    one = scene(seed)
    check = checked(one)
    error = measure.corner_error(one, check)
    result: dict[str, Any] = {
        "corner": error,
        "confidence": check.corner_confidence,
        "keys": measure.keys(check),
        "scan": one.shot.scan,
    }
    if error < measure.FOUND:
        result |= {
            "colour": measure.colour_errors(one, check),
            "shifts": measure.shifts(one, check),
            "edges": measure.edge_tallies(one, check),
            "clear": measure.edge_tallies(one, check, leave_out=(0.022, 0.028)),
            "blooms": measure.bloom_tally(one, check),
        }
    return result


def shadow_case(seed: int) -> dict[str, Any]:
    one = cases.shadowed(seed)
    check = checked(one)
    return {"flagged": "shadow" in measure.keys(check), "corner": measure.corner_error(one, check)}


def tape_case(seed: int) -> dict[str, Any]:
    one = cases.taped(seed)
    check = checked(one)
    said = measure.keys(check) & {"tape", "coloured light", "warm light", "corners unsure",
                                  "corners not found"}  # fmt: skip
    return {
        "corner": measure.corner_error(one, check),
        "confidence": check.corner_confidence,
        "keys": measure.keys(check),
        "said": bool(said),
    }


def copy_case(seed: int) -> dict[str, Any]:
    one = cases.copied(seed)
    check = checked(one)
    scores = check.scores
    told = [scores.hue, scores.value, scores.intensity, scores.placement]
    return {
        "tens": all(score in (10.0, None) for score in told),
        "complaints": [f.text for f in check.findings if f.kind == "step"],
    }


def lie_case(seed: int) -> dict[str, Any]:
    result: dict[str, Any] = {}
    for mirrored in (False, True):
        reference, one = cases.sideways(seed, mirrored=mirrored)
        check = checked(one, measure.reference_from(reference, one.lines))
        result["mirrored" if mirrored else "straight"] = "mirrored" in measure.keys(check)
        result["sides differ"] = sides_differ(reference, one.lines)
    one = cases.turned(seed, 1 + seed % 3)
    check = checked(one)
    result["turn"] = check.better_turn == (4 - one.shot.turn) % 4
    result["turned"] = one.shot.turn
    other = next(k for k in range(seed + 1, seed + 40) if cases.sky_of(k) != cases.sky_of(seed))
    stranger = checked(scene(seed), measure.reference_of(scene(other)))
    keys = measure.keys(stranger)
    result["other"] = bool(keys & {"other sky", "turn"})
    return result


def sides_differ(reference: np.ndarray, lines: tuple[float, ...]) -> bool:
    """Whether an eye would see it if this sky were mirrored: left against right, mean dE00 >= 3."""
    cells = measure.cell_colours(srgb8_to_linear(reference), lines).reshape(-1, 3, 3)
    return float(np.mean(delta_E_2000(cells[:, 0], cells[:, 2]))) >= 3.0


def curve_case(seed: int) -> list[float]:
    one = cases.curved(seed)
    check = checked(one)
    return (
        measure.colour_errors(one, check)
        if measure.corner_error(one, check) < measure.FOUND
        else []
    )


def uneven_case(seed: int) -> dict[str, Any] | None:
    """A sheet laid in streaks and clouds; None where its corners went wrong."""
    one = cases.uneven(seed)
    check = checked(one)
    if measure.corner_error(one, check) >= measure.FOUND:
        return None
    full, part = measure.edge_tallies(one, check)
    return {
        "edges": full + part,
        "blooms": measure.bloom_tally(one, check),
        "shifts": measure.shifts(one, check),
    }


def real_case(seed: int) -> dict[str, Any]:
    """A sheet as real paper, light and cameras make it."""
    one = cases.on_real_paper(seed)
    check = checked(one)
    right = measure.corner_error(one, check) < measure.FOUND
    return {
        "right": right,
        "sure": check.corner_confidence >= SURE,
        "lost": "corners not found" in measure.keys(check),
        "shifts": measure.shifts(one, check) if right else [],
    }


def share(values: list[bool]) -> float:
    return float(np.mean(values)) if values else float("nan")


def main_rows(found: list[dict[str, Any]]) -> list[Row]:
    good = [r for r in found if r["corner"] < measure.FOUND]
    corner = 100 * float(np.percentile([r["corner"] for r in found], 90))
    colour = np.concatenate([r["colour"] for r in good])
    shifts = [shift for r in good for shift in r["shifts"]]
    told = np.array([shift.error for shift in shifts if shift.told])
    far = sum(shift.told and shift.error > 2 for shift in shifts) / len(shifts)
    none = measure.Tally()
    full = sum((r["edges"][0] for r in good), none)
    part = sum((r["edges"][1] for r in good), none)
    clear = sum((r["clear"][0] for r in good), none)
    blooms = sum((r["blooms"] for r in good), none)
    alarms = share(["shadow" in r["keys"] for r in found])
    unsure = share([r["confidence"] < SURE for r in good])
    n, lines = len(found), len(shifts)
    middle, most = np.percentile(told, [50, 90])
    mean, tail = colour.mean(), np.percentile(colour, 90)
    return [
        (f"rectangle found, of {n}", ">= 97%", f"{len(good) / n:.1%}", len(good) / n >= 0.97),
        ("corner error, p90", "<= 0.5%", f"{corner:.2f}%", corner <= 0.5),
        ("right rectangles called unsure", "", f"{unsure:.1%}", None),
        (f"colour, dE00 mean of {len(colour)}", "<= 0.5", f"{mean:.2f}", mean <= 0.5),
        ("colour, dE00 p90", "<= 1.0", f"{tail:.2f}", tail <= 1.0),
        (f"false shadows, of {n}", "<= 2%", f"{alarms:.1%}", alarms <= 0.02),
        (f"placement error, p50 of {len(told)}", "<= 0.3%", f"{middle:.2f}%", middle <= 0.3),
        ("placement error, p90", "<= 1.0%", f"{most:.2f}%", most <= 1.0),
        (f"off > 2% and told, of {lines} lines", "<= 1%", f"{far:.1%}", far <= 0.01),
        ("lines that cannot be told", "", f"{1 - len(told) / lines:.1%}", None),
        (f"hard edges right, of {full.said}", ">= 0.95", f"{full.precision:.3f}",
         full.precision >= 0.95),
        (f"hard edges found, of {full.there}", ">= 0.95", f"{full.recall:.3f}",
         full.recall >= 0.95),
        ("  right, true width not 2.2-2.8%", "", f"{clear.precision:.3f}", None),
        ("  found, true width not 2.2-2.8%", "", f"{clear.recall:.3f}", None),
        (f"partial edges found, of {part.there}", ">= 0.7", f"{part.recall:.3f}",
         part.recall >= 0.7),
        (f"partial edges right, of {part.said}", "", f"{part.precision:.3f}", None),
        (f"blooms right, of {blooms.said}", ">= 0.9", f"{blooms.precision:.3f}",
         blooms.precision >= 0.9),
        (f"blooms found, of {blooms.there}", ">= 0.75", f"{blooms.recall:.3f}",
         blooms.recall >= 0.75),
    ]  # fmt: skip


def other_rows(
    main: list[dict[str, Any]],
    shadow: list[dict[str, Any]],
    tape: list[dict[str, Any]],
    copies: list[dict[str, Any]],
    lies: list[dict[str, Any]],
    curve: list[float],
) -> list[Row]:
    flagged = share([r["flagged"] for r in shadow])
    wrong = [r for r in (*main, *tape) if r["corner"] >= measure.FOUND]
    unsure = share([r["confidence"] < SURE or "tape" in r["keys"] for r in wrong])
    bare = [r for r in main if r["corner"] >= measure.FOUND]
    told = share([r["confidence"] < SURE or "tape" in r["keys"] for r in bare])
    said = share([r["said"] for r in tape])
    tens = share([r["tens"] for r in copies])
    quiet = share([not r["complaints"] for r in copies])
    mirrored = share([r["mirrored"] for r in lies])
    uneven = [r["mirrored"] for r in lies if r["sides differ"]]
    straight = share([r["straight"] for r in lies])
    turn = share([r["turn"] for r in lies])
    other = share([r["other"] for r in lies])
    own = share([bool(r["keys"] & {"other sky", "turn", "mirrored"}) for r in main])
    return [
        (f"shadow noticed, of {len(shadow)}", ">= 95%", f"{flagged:.1%}", flagged >= 0.95),
        (
            f"wrong rectangles flagged, tape too, of {len(wrong)}",
            ">= 80%",
            f"{unsure:.1%}",
            unsure >= 0.8,
        ),
        (f"  without tape, of {len(bare)}", "", f"{told:.1%}", None),
        (f"tape left on: something said, of {len(tape)}", "", f"{said:.1%}", None),
        (f"perfect copies scored 10 all round, of {len(copies)}", "all", f"{tens:.1%}", tens == 1),
        ("perfect copies without complaint", "all", f"{quiet:.1%}", quiet == 1),
        (f"mirrored noticed, of {len(lies)}", "", f"{mirrored:.1%}", None),
        (
            f"  where left and right differ, of {len(uneven)}",
            ">= 95%",
            f"{share(uneven):.1%}",
            share(uneven) >= 0.95,
        ),
        ("straight ones called mirrored", "", f"{straight:.1%}", None),
        ("turned ones asked about", "", f"{turn:.1%}", None),
        ("another sky told apart", ">= 95%", f"{other:.1%}", other >= 0.95),
        ("own sky called another, turned or mirrored", "<= 1%", f"{own:.1%}", own <= 0.01),
        ("phone tone curve, dE00 mean", "", f"{np.mean(curve):.1f}", None),
    ]


def uneven_rows(found: list[dict[str, Any] | None]) -> list[Row]:
    """How little unevenness is taken for edges and blooms, and what it hides."""
    good = [r for r in found if r is not None]
    none = measure.Tally()
    edges = sum((r["edges"] for r in good), none)
    blooms = sum((r["blooms"] for r in good), none)
    shifts = [shift for r in good for shift in r["shifts"]]
    far = share([shift.told and shift.error > 2 for shift in shifts])
    return [
        (f"uneven washes: rectangle found, of {len(found)}", "", f"{len(good) / len(found):.1%}",
         None),
        (f"  hard edges right, of {edges.said}", "", f"{edges.precision:.3f}", None),
        (f"  hard edges found, of {edges.there}", "", f"{edges.recall:.3f}", None),
        (f"  blooms right, of {blooms.said}", "", f"{blooms.precision:.3f}", None),
        (f"  blooms found, of {blooms.there}", "", f"{blooms.recall:.3f}", None),
        (f"  off > 2% and told, of {len(shifts)} lines", "", f"{far:.1%}", None),
    ]  # fmt: skip


def real_rows(found: list[dict[str, Any]]) -> list[Row]:
    """Corners and lines on real paper."""
    n, right = len(found), [r for r in found if r["right"]]
    shifts = [shift for r in right for shift in r["shifts"]]
    told = [shift.error for shift in shifts if shift.told]
    far = share([shift.told and shift.error > 2 for shift in shifts])
    middle, most = np.percentile(told, [50, 90]) if told else (np.nan, np.nan)
    good, sure = len(right) / n, share([r["sure"] for r in right])
    wrong = share([r["sure"] and not r["right"] for r in found])
    lost = sum(r["lost"] for r in found)
    return [
        (f"real paper: rectangle found, of {n}", ">= 95%", f"{good:.1%}", good >= 0.95),
        ("  right ones trusted", ">= 80%", f"{sure:.1%}", sure >= 0.8),
        ("  wrong and trusted", "<= 2%", f"{wrong:.1%}", wrong <= 0.02),
        ("  nothing found", "0", str(lost), lost == 0),
        (f"  placement error, p50 of {len(told)}", "<= 0.6%", f"{middle:.2f}%", middle <= 0.6),
        ("  placement error, p90", "<= 1.5%", f"{most:.2f}%", most <= 1.5),
        (f"  off > 2% and told, of {len(shifts)} lines", "<= 1%", f"{far:.1%}", far <= 0.01),
    ]


def at_12_MP(one: Scene) -> Photo:
    """The scene's picture, enlarged to the size a phone's has."""
    small = Image.open(io.BytesIO(one.jpeg))
    scale = (12e6 / (small.width * small.height)) ** 0.5
    size = (round(small.width * scale), round(small.height * scale))
    buffer = io.BytesIO()
    small.resize(size, Image.Resampling.BICUBIC).save(buffer, "JPEG", quality=90)
    return open_photo(buffer.getvalue(), name="sheet.jpg")


def seconds_for(photo: Photo, reference: Reference) -> float:
    """The best of three checks."""
    times = []
    for _ in range(3):
        start = time.perf_counter()
        check_sheet(photo, reference)
        times.append(time.perf_counter() - start)
    return min(times)


def speed_rows(seed: int) -> list[Row]:
    """12 MP photos, and how soon a cancelled check stops."""
    one = scene(seed)
    photo, reference = at_12_MP(one), measure.reference_of(one)
    best = seconds_for(photo, reference)
    doubtful = cases.on_real_paper(DOUBTFUL)
    longest_look = seconds_for(at_12_MP(doubtful), measure.reference_of(doubtful))
    marks: list[float] = []

    def never() -> bool:
        marks.append(time.perf_counter())
        return False

    check_sheet(photo, reference, None, None, never)
    longest = float(np.diff(marks).max())
    try:
        check_sheet(photo, reference, None, None, lambda: True)
        stopped = False
    except Cancelled:
        stopped = True
    return [
        ("12 MP check after decoding, seconds", "<= 1.5", f"{best:.2f}", best <= 1.5),
        (
            "  corners in doubt, every look taken",
            "<= 1.5",
            f"{longest_look:.2f}",
            longest_look <= 1.5,
        ),
        ("longest wait for a cancelled check, seconds", "", f"{longest:.2f}", None),
        ("cancelled before it began", "stops", "stops" if stopped else "goes on", stopped),
    ]


def print_rows(rows: list[Row]) -> None:
    for name, target, value, met in rows:
        mark = "" if met is None else "met" if met else "MISSED"
        print(f"{name:<52}{target:>9}{value:>9}  {mark}", flush=True)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--count", type=int, default=120)
    parser.add_argument("--start", type=int, default=REPORT_SEED)
    parser.add_argument("--jobs", type=int, default=2)
    args = parser.parse_args()
    seeds = range(args.start, args.start + args.count)
    few = range(args.start, args.start + max(2, args.count // 3))
    print(f"{args.count} sheets from seed {args.start}")
    print_rows(speed_rows(args.start))
    with Pool(args.jobs) as pool:
        found = pool.map(main_case, seeds, chunksize=2)
        print_rows(main_rows(found))
        shadow = pool.map(shadow_case, seeds, chunksize=2)
        tape = pool.map(tape_case, few, chunksize=2)
        copies = pool.map(copy_case, few, chunksize=2)
        lies = pool.map(lie_case, few, chunksize=2)
        uneven = pool.map(uneven_case, few, chunksize=2)
        print_rows(real_rows(pool.map(real_case, few, chunksize=2)))
        curve = [v for part in pool.map(curve_case, few, chunksize=2) for v in part]
    print_rows(other_rows(found, shadow, tape, copies, lies, curve))
    print_rows(uneven_rows(uneven))


if __name__ == "__main__":
    main()
