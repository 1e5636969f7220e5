"""The class set's numbers: what is read, placed, found, kept, and how fast.

    python benchmarks/class_set.py tickets   [--count 200]   codes read, by size of the picture
    python benchmarks/class_set.py corners   [--count 40]    what a ticket does to the check
    python benchmarks/class_set.py pairing   [--count 400]   evenings placed, asked, wrong
    python benchmarks/class_set.py hard      [--count 200]   what the class found hard
    python benchmarks/class_set.py grain     [--count 12]    the same painting told from others
    python benchmarks/class_set.py kills     [--count 300]   kills while adding, placing, marking
    python benchmarks/class_set.py throughput [--count 60]   sheets of 12 megapixels, two processes

Everything follows from `--start`, the first seed. Seconds are of the processor, so that they
mean something on a busy machine; memory is of all processes together, at its highest.
"""

from __future__ import annotations

import argparse
import io
import os
import random
import resource
import sys
import tempfile
import time
from dataclasses import replace
from pathlib import Path

import numpy as np

ROOT = Path(__file__).parents[1]
for extra in ("tests/core/class_set", "tests/core", "tests", ""):
    sys.path.insert(0, str(ROOT / extra))


def tickets(start: int, count: int) -> None:
    """Codes of 20 mm in usual pictures."""
    from simulator.codes import SIZES, code_shot

    from core.class_set.codes import read_tickets
    from core.class_set.ticket import Ticket

    wrong = pictures = 0
    for size in SIZES:
        read = 0
        for k in range(count):
            rng = np.random.default_rng([start, k, len(size)])
            ticket = Ticket("7K3Q", 1 + k % 99, "12"[k % 2])
            found = read_tickets(code_shot(ticket, 20.0, size, rng))
            read += ticket in found
            wrong += any(each != ticket for each in found)
            pictures += 1
        print(f"{size:5} read {read / count:.1%} of {count}")
    print(f"wrong texts: {wrong} of {pictures}")


def corners(start: int, count: int) -> None:
    """The same pictures with and without a ticket: corners and colours of the check."""
    from simulator.evening import class_scene, class_sheet
    from simulator.measure import reference_of

    from core.class_set.ticket import Ticket
    from core.colour import delta_E_2000
    from core.photo import open_photo
    from core.sheet import check_sheet

    errors: dict[bool, list[float]] = {True: [], False: []}
    colours: list[float] = []
    shadows = 0
    for k in range(count):
        base = class_scene(start + k)
        reference = reference_of(base)
        labs = []
        for ticket in (None, Ticket("7K3Q", 14, "1")):
            data, truth = class_sheet(base, start + k, ticket)
            check = check_sheet(open_photo(data), reference)
            shadows += ticket is not None and "shadow" in {n.key for n in check.notices}
            found = np.asarray(check.corners) * (1600, 1200)
            side = np.linalg.norm(np.roll(truth, -1, axis=0) - truth, axis=1).mean()
            errors[ticket is not None].append(
                100 * float(np.linalg.norm(found - truth, axis=1).max()) / side
            )
            labs.append([b.sheet.colour.Lab for b in check.band_checks if b.sheet.colour])
        if len(labs[0]) == len(labs[1]):
            colours.append(float(np.mean(delta_E_2000(np.array(labs[0]), np.array(labs[1])))))
    for with_ticket, name in ((False, "without"), (True, "with")):
        p50, p90 = np.percentile(errors[with_ticket], (50, 90))
        print(f"{name:8} a ticket: corner error p50 {p50:.3f}%, p90 {p90:.3f}% of the side")
    print(f"band colours with and without: mean dE00 {np.mean(colours):.3f}; shadows {shadows}")


def pairing(start: int, count: int) -> None:
    """Whole evenings, with tickets and without, in order and not."""
    from simulator.pairing import Tally, evening_set, outcome_of

    for with_tickets in (True, False):
        for ordered in (True, False):
            total = Tally()
            for seed in range(start, start + count):
                total += outcome_of(*evening_set(seed, with_tickets, ordered=ordered))
            print(
                f"tickets {with_tickets!s:5} order known {ordered!s:5}: "
                f"placed {total.placed / total.pictures:.1%}, asked {total.asked / count:.1f} an "
                f"evening, the right place proposed for {total.proposed / max(total.asked, 1):.0%}"
                f"; wrong in silence {total.wrong / count:.4f} an evening"
            )


def hard(start: int, count: int) -> None:
    """Planted faults, and random signs."""
    from simulator.hard import CELLS, chance_spreads, planted_draw

    wanted = {("A", "value"), ("A", "intensity"), ("C", "placement")}
    for students in (8, 12, 20, 28):
        all_found = more = 0
        for seed in range(start, start + count):
            told = {(s.letter, s.quality) for s in planted_draw(seed, students) if s.told}
            all_found += wanted <= told
            more += bool(told - wanted)
        print(
            f"{students} students: all three found in {all_found / count:.1%}, "
            f"anything else said in {more / count:.1%}"
        )
    rng = np.random.default_rng(start)
    for off_cells in (1, 3, 8, CELLS):
        said = sum(
            any(s.told for s in chance_spreads(rng, 28, off_cells, share=0.7))
            for _ in range(10 * count)
        )
        print(f"random signs, {off_cells} cells off: a sentence in {said / (10 * count):.2%}")


def grain(start: int, count: int) -> None:
    """Pairs of pictures of one painting, and of two of the same sky."""
    from simulator.evening import class_scene, photograph_with_ticket
    from simulator.measure import reference_of
    from simulator.scenes import random_shot
    from simulator.sheets import paint

    from core.class_set.grain import SAME, alike, grain_of
    from core.photo import open_photo
    from core.sheet import check_sheet

    base = class_scene(start)
    reference = reference_of(base)
    grains = []
    for k in range(count):
        spec = replace(base.spec, seed=start + k, granulation=(0.01, 0.03, 0.06)[k % 3])
        painting, pair = paint(spec), []
        for j in range(2):
            rng = np.random.default_rng([start, k, j])
            shot = replace(
                random_shot(rng, 10 * k + j), scan=False, fill=float(rng.uniform(0.6, 0.8))
            )
            data, _ = photograph_with_ticket(painting, shot, None)
            pair.append(grain_of(check_sheet(open_photo(data), reference).picture))
        grains.append(pair)
    same = [alike(a, b) for a, b in grains]
    others = [
        alike(grains[i][a], grains[j][b])
        for i in range(count) for j in range(i) for a in (0, 1) for b in (0, 1)
    ]  # fmt: skip
    print(
        f"one painting: {min(same):.2f} or more ({count} pairs); two: {max(others):.2f} or less "
        f"({len(others)} pairs); told apart at {SAME}"
    )


def kills(start: int, count: int) -> None:
    """Kill a worker that adds, places and marks, at any moment; open again and look."""
    from class_set_tools import TAG, made_folder
    from test_class_folder import assert_all_kept, killed_once, pictures

    from core.class_set.folder import open_folder
    from core.class_set.ticket import Ticket

    rng = random.Random(start)
    told: list[tuple[str, str]] = []
    with tempfile.TemporaryDirectory() as name:
        where = Path(name)
        with made_folder(where):
            pass
        pictures(where / "in", *(Ticket(TAG, 1 + k % 4, "12"[k // 4]) for k in range(8)))
        for _ in range(count):
            fresh = killed_once(where, rng.randrange(12), rng.uniform(0.0, 0.1))
            told += fresh
            with open_folder(where / "7b", where / "data") as again:
                assert_all_kept(again, fresh)
        print(f"{count} kills, {len(told)} steps told, none of them lost")


def throughput(start: int, count: int) -> None:
    """Sheets of 12 megapixels through two processes."""
    from PIL import Image
    from simulator.evening import class_scene, class_sheet
    from simulator.measure import reference_of

    from core.class_set.check_all import check_all
    from core.class_set.check_one import Job
    from core.class_set.pool import CheckingPool
    from core.class_set.ticket import Ticket
    from core.sheet.match.reference import slim_reference

    base = class_scene(start)
    reference = slim_reference(reference_of(base))
    different = min(count, 6)  # drawing 12 megapixels takes long: few, used again
    with tempfile.TemporaryDirectory() as name:
        files = []
        for k in range(different):
            data, _ = class_sheet(base, start + k, Ticket("7K3Q", k + 1, "1"), size=(2016, 1512))
            large = Image.open(io.BytesIO(data)).resize((4032, 3024), Image.Resampling.BICUBIC)
            files.append(Path(name) / f"{k}.jpg")
            large.save(files[-1], quality=90)
        jobs = [
            Job(f"{k:064x}", f"{k:064x}", files[k % different], "IMG.jpg") for k in range(count)
        ]
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        own = time.process_time()
        begun, first, peaks = time.monotonic(), 0.0, []
        with CheckingPool(2) as pool:
            for done, _ in enumerate(
                check_all(jobs, reference, pool.executor, renew=pool.renew), 1
            ):
                first = first or time.monotonic() - begun
                peaks.append(_memory(pool))
                if done % 20 == 0:
                    print(f"after {done}: {peaks[-1]:.0f} MB", flush=True)
            wall = time.monotonic() - begun
            pool.executor.shutdown(wait=True)
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        spent = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
        spent += time.process_time() - own
        print(
            f"{count} sheets: {spent:.0f} s of processor, {wall:.0f} s by the clock, first after "
            f"{first:.1f} s; peak {max(peaks):.0f} MB, load {os.getloadavg()[0]:.1f}"
        )


def _memory(pool) -> float:
    """Megabytes of this process and the pool's, shared pages counted once a process."""
    pids = [os.getpid(), *pool.executor._processes]
    total = 0
    for pid in pids:
        try:
            lines = Path(f"/proc/{pid}/smaps_rollup").read_text().splitlines()
        except OSError:
            continue
        total += sum(int(line.split()[1]) for line in lines if line.startswith("Pss:"))
    return total / 1024


MEASURES = {
    "tickets": (tickets, 200),
    "corners": (corners, 40),
    "pairing": (pairing, 400),
    "hard": (hard, 200),
    "grain": (grain, 12),
    "kills": (kills, 300),
    "throughput": (throughput, 60),
}


def main() -> None:
    """Print one measure."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("measure", choices=MEASURES)
    parser.add_argument("--start", type=int, default=5000)
    parser.add_argument("--count", type=int)
    args = parser.parse_args()
    measure, usual = MEASURES[args.measure]
    measure(args.start, args.count or usual)


if __name__ == "__main__":
    main()
