"""Runs cases in a child process, so that a crash, a hang or a full memory is a count, not an end.

The child tells each case before it begins and what came of it after; the parent kills it when
nothing comes for too long, notes the find, and starts another from the next case.
"""

from __future__ import annotations

import contextlib
import os
import queue
import subprocess
import sys
import tempfile
import threading
import time
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path

HANG_S = 60.0
"""So long without a word is a hang; the machine may be busy with other things."""

MOST_CPU_S = 5.0
MOST_RSS_KB = 1_500_000
_ROOT = Path(__file__).resolve().parents[2]


@dataclass
class Outcome:
    """What came of a run.

    Attributes
    ----------
    counts : Counter
        Cases by what came of them; "crash", "hang", "slow" and "memory" are finds.
    by_name : Counter
        The same by (sound file, outcome).
    finds : list of str
        Each find in one line, with its number to make it again.
    slowest_s, most_rss_kb : float, int
        CPU time of the slowest case; the largest resident set of a child.
    """

    counts: Counter[str] = field(default_factory=Counter)
    by_name: Counter[tuple[str, str]] = field(default_factory=Counter)
    finds: list[str] = field(default_factory=list)
    slowest_s: float = 0.0
    most_rss_kb: int = 0


def run(kind: str, count: int, seed: int) -> Outcome:
    """Run `count` cases of a kind."""
    outcome, begin = Outcome(), 0
    while begin < count:
        begin = _child(kind, begin, count, seed, outcome)
    return outcome


def _child(kind: str, begin: int, count: int, seed: int, outcome: Outcome) -> int:
    """Run cases from `begin` on; gives the next to run."""
    command = [sys.executable, "-m", "tests.fuzz.runner", kind, str(begin), str(count), str(seed)]
    paths = [str(_ROOT), *(str(_ROOT / "tests" / room) for room in ("", "core", "app"))]
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join(paths), "OMP_NUM_THREADS": "1"}
    lines: queue.Queue[str | None] = queue.Queue()
    with (
        tempfile.TemporaryFile("w+") as errors,
        subprocess.Popen(
            command,
            cwd=_ROOT,
            env=environment,
            stdout=subprocess.PIPE,
            stderr=errors,
            stdin=subprocess.DEVNULL,
            text=True,
        ) as child,
    ):
        assert child.stdout is not None
        reader = threading.Thread(target=_listen, args=(child.stdout, lines), daemon=True)
        reader.start()
        number, name = begin, "(starting)"
        while True:
            try:
                # The first answer waits for all the imports.
                line = lines.get(timeout=HANG_S * (3 if name == "(starting)" else 1))
            except queue.Empty:
                child.kill()
                outcome.counts["hang"] += 1
                outcome.finds.append(f"{kind} {number} ({name}): hang")
                return number + 1
            if line is None:
                child.wait()
                if number >= count:
                    return count
                errors.seek(0)
                last = (errors.read().strip().splitlines() or [""])[-1]
                outcome.counts["crash"] += 1
                outcome.finds.append(f"{kind} {number} ({name}): died {child.returncode} {last}")
                return number + 1
            word, *rest = line.rstrip("\n").split("\t")
            if word == "case":
                number, name = int(rest[0]), rest[1]
            elif word == "came":
                _note(kind, number, name, rest, outcome)
                number += 1


def _note(kind: str, number: int, name: str, rest: list[str], outcome: Outcome) -> None:
    what, cpu_s, rss_kb, detail = rest[0], float(rest[1]), int(rest[2]), rest[3]
    if what != "crash" and cpu_s > MOST_CPU_S:
        what = "slow"
    if rss_kb > MOST_RSS_KB >= outcome.most_rss_kb:
        what = "memory"
    outcome.slowest_s = max(outcome.slowest_s, cpu_s)
    outcome.most_rss_kb = max(outcome.most_rss_kb, rss_kb)
    outcome.counts[what] += 1
    outcome.by_name[name, what] += 1
    if what in ("crash", "slow", "memory"):
        outcome.finds.append(f"{kind} {number} ({name}): {what} {cpu_s:.1f} s {detail}")


def _listen(stream: object, lines: queue.Queue[str | None]) -> None:
    for line in stream:  # type: ignore[attr-defined]
        lines.put(line)
    lines.put(None)


def _most_rss_kb() -> int:
    """The most memory this process has held.

    Where the kernel tells it of the program alone: getrusage counts what the process that started
    this one held, which is much where many tests ran before.
    """
    import resource  # POSIX alone

    with contextlib.suppress(OSError):
        for line in Path("/proc/self/status").read_text(encoding="ascii").splitlines():
            if line.startswith("VmHWM:"):
                return int(line.split()[1])
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss


def _work(kind: str, begin: int, count: int, seed: int) -> None:
    """The child's part."""
    import resource  # POSIX alone

    from tests.fuzz.cases import Cases
    from tests.fuzz.targets import TARGETS

    # Far above what is allowed, so that a find is counted instead of filling the machine.
    with contextlib.suppress(ValueError, OSError):
        resource.setrlimit(resource.RLIMIT_AS, (12 << 30, 12 << 30))
    cases = Cases(kind, seed, Path(tempfile.mkdtemp(prefix="fuzz")))
    try:
        for number in range(begin, count):
            name, path = cases.make(number)
            print("case", number, name, sep="\t", flush=True)
            began, detail = time.process_time(), ""
            try:
                what = TARGETS[kind](path)
            except Exception as error:
                what, detail = "crash", f"{type(error).__name__}: {error}"[:200]
            used = time.process_time() - began
            rss = _most_rss_kb()
            clean = " ".join(detail.encode("ascii", "replace").decode().split())
            print("came", what, f"{used:.3f}", rss, clean, sep="\t", flush=True)
    finally:
        cases.clear()


if __name__ == "__main__":
    _work(sys.argv[1], *map(int, sys.argv[2:5]))
