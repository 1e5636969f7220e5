"""How soon the Mix page shows an edit: one part more, a paint taken out of the box.

From the press until the row, its strip and the plan are painted again, the worker's time
included; and the longest the window itself was busy in one go.
"""

from __future__ import annotations

import argparse
import statistics
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QEventLoop
from PySide6.QtWidgets import QApplication

from app.pages import PAGES
from app.window import Window
from core import mixing
from core.study import Study

PART_MS = 50.0
BUSY_MS = 50.0


def wait_until(app: QApplication, done: Callable[[], bool]) -> None:
    """Let events pass until `done`."""
    while not done():
        app.processEvents(QEventLoop.ProcessEventsFlag.AllEvents, 1)
        time.sleep(0.0005)


def timed(app: QApplication, window: Window, study: Study) -> tuple[float, float]:
    """Milliseconds from an edit to the painted page, and the longest turn of the event loop."""
    planner, longest = window.planner, 0.0
    before, began = planner.plan, time.perf_counter()
    window.document.change("benchmark", study)
    longest = time.perf_counter() - began
    while planner.working or planner.plan is before:
        turn = time.perf_counter()
        app.processEvents()
        longest = max(longest, time.perf_counter() - turn)
    app.processEvents()
    return (time.perf_counter() - began) * 1000, longest * 1000


def main() -> int:
    """Print the figures; 1 when a limit is missed."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--edits", type=int, default=40)
    parser.add_argument("--sample", default="dusk")
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        app = QApplication([])
        window = Window(Path(folder))
        window.resize(1920, 1080)
        window.show()
        window.opener.open_sample(asked.sample)
        wait_until(app, lambda: bool(window.reader.readings) and not window.reader.working)
        wait_until(app, lambda: window.planner.plan is not None and not window.planner.working)
        window.show_page(next(i for i, kind in enumerate(PAGES) if kind.key == "mix"))
        app.processEvents()
        first = window.document.study
        letter = window.planner.plan.bands[1].letter
        parts, boxes = [], []
        for number in range(asked.edits):
            counts = (("ultramarine", 2 + number % 9), ("crimson", 1 + number // 9))
            study = mixing.set_parts(first, letter, counts)
            parts.append(timed(app, window, study))
        for number in range(asked.edits):
            # Out and in again, so that the box stays what it is.
            key = first.box.keys[number // 2 % len(first.box.keys)]
            study = mixing.tick_paint(window.document.study, key, bool(number % 2))
            boxes.append(timed(app, window, study))
        window.document.mark_saved()  # or it would ask
        window.close()
    busy = max(longest for _, longest in (*parts, *boxes))
    for name, times in (("one part", parts), ("one paint of the box", boxes)):
        taken = [total for total, _ in times]
        p90 = statistics.quantiles(taken, n=10)[-1]
        print(f"{name}: median {statistics.median(taken):.0f} ms, p90 {p90:.0f} ms")
    print(f"longest turn of the event loop: {busy:.0f} ms (limit {BUSY_MS:.0f})")
    median = statistics.median(total for total, _ in parts)
    return 0 if median <= PART_MS and busy <= BUSY_MS else 1


if __name__ == "__main__":
    raise SystemExit(main())
