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

from PySide6.QtCore import QAbstractEventDispatcher, QEventLoop, QTimer
from PySide6.QtWidgets import QApplication

from app.window.pages import PAGES
from app.window.window import Window
from core import mixing
from core.paint.pigment.catalogue import CATALOGUE
from core.study import Study

CHANGE_MS = 50.0
BUSY_MS = 50.0


def wait_until(app: QApplication, done: Callable[[], bool]) -> None:
    """Let events pass until `done`."""
    while not done():
        app.processEvents(QEventLoop.ProcessEventsFlag.AllEvents, 1)
        time.sleep(0.0005)


class Turns:
    """The longest the event loop was busy between two times it had nothing to do."""

    def __init__(self) -> None:
        self.longest = 0.0
        self._since: float | None = None
        loop = QAbstractEventDispatcher.instance()
        loop.awake.connect(self.begin)
        loop.aboutToBlock.connect(self.end)

    def begin(self) -> None:
        """It has something to do."""
        if self._since is None:
            self._since = time.perf_counter()

    def end(self) -> None:
        """It waits again."""
        if self._since is not None:
            self.longest = max(self.longest, time.perf_counter() - self._since)
            self._since = None


def timed(app: QApplication, window: Window, study: Study, turns: Turns) -> tuple[float, float]:
    """Milliseconds from an edit to the painted page, and of the processor's work until then.

    The loop waits as it does when the window runs by itself: looking in a circle would take the
    worker's time away.
    """
    planner = window.planner
    before, began, worked = planner.plan, time.perf_counter(), time.process_time()
    turns.begin()
    window.document.change("benchmark", study)
    while planner.working or planner.plan is before:
        app.processEvents(QEventLoop.ProcessEventsFlag.WaitForMoreEvents)
    app.processEvents()
    turns.end()
    return (time.perf_counter() - began) * 1000, (time.process_time() - worked) * 1000


def rest(seconds: float) -> None:
    """What passes between two presses of a quick hand."""
    loop = QEventLoop()
    QTimer.singleShot(round(1000 * seconds), loop.quit)
    loop.exec()


def main() -> int:
    """Print the figures; 1 when a limit is missed."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--edits", type=int, default=40)
    parser.add_argument("--sample", default="dusk")
    parser.add_argument("--rest", type=float, default=0.5, help="seconds between two edits")
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
        turns = Turns()
        parts, boxes = [], []
        for number in range(asked.edits):
            counts = (("ultramarine", 2 + number % 9), ("crimson", 1 + number // 9))
            study = mixing.set_parts(first, letter, counts)
            parts.append(timed(app, window, study, turns))
            rest(asked.rest)
        document = window.document
        document.change("benchmark", first)
        for number in range(asked.edits):
            # Another paint each time, ticked off or on, so that most boxes are new.
            keys = tuple(CATALOGUE)
            key = keys[7 * number % len(keys)]
            owned = key in document.study.box.by_key
            study = mixing.tick_paint(document.study, key, not owned)
            boxes.append(timed(app, window, study, turns))
            rest(asked.rest)
        window.document.mark_saved()  # or it would ask
        window.close()
    busy = turns.longest * 1000
    worst = []
    for name, times in (("one part", parts), ("one paint of the box", boxes)):
        for what, taken in zip(("wall clock", "processor"), zip(*times, strict=True), strict=True):
            p90 = statistics.quantiles(taken, n=10)[-1]
            print(
                f"{name}, {what}: median {statistics.median(taken):.0f} ms, p90 {p90:.0f} ms, "
                f"longest {max(taken):.0f} ms (limit {CHANGE_MS:.0f})"
            )
            worst.append(p90 if what == "wall clock" else 0.0)
    print(f"longest turn of the event loop: {busy:.0f} ms (limit {BUSY_MS:.0f})")
    return 0 if max(worst) <= CHANGE_MS and busy <= BUSY_MS else 1


if __name__ == "__main__":
    raise SystemExit(main())
