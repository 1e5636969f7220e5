"""From a mouse move on a band line to painted readouts, wheel and ladder.

Real widgets, offscreen, real mouse events, a 24 megapixel photo and 6 bands. In the same run the
naive way: every pixel of every band converted to CIELAB and its medians taken, for one move.

    python benchmarks/drag_window.py [--moves 150]
"""

from __future__ import annotations

import argparse
import os
import statistics
import tempfile
import time
from itertools import pairwise
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import numpy as np
from big_photo import write_big_photo
from PySide6.QtCore import QEvent, QObject, QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from app.window.window import Window
from core.bands.lines import Bands
from core.colour.lab import srgb_to_Lab
from core.photo import open_full
from core.study import with_bands

LIMIT_MS = 8.0
BANDS = Bands(0.66, (0.1, 0.2, 0.3, 0.4, 0.52))


class PaintCounter(QObject):
    """Counts how often a widget was painted."""

    def __init__(self, widget: QWidget) -> None:
        super().__init__(widget)
        self.count = 0
        widget.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        self.count += event.type() == QEvent.Type.Paint
        return False


def wait_until_still(app: QApplication, window: Window) -> None:
    """Let opening, proposing and careful reading end."""
    while window.reader.working or not window.reader.readings or window.files.storing:
        app.processEvents()
        time.sleep(0.005)
    app.processEvents()


def drag(app: QApplication, window: Window, moves: int) -> list[float]:
    """Drag the third line up and down; milliseconds of each move."""
    page = window.page("read")
    canvas = page.canvas
    line = canvas.viewport.y_px(window.document.study.bands.lines[2])
    x = round(canvas.viewport.left + 200)
    counters = [PaintCounter(w) for w in (page.table, page.wheel, page.ladder, page.strip, canvas)]
    QTest.mousePress(canvas, Qt.MouseButton.LeftButton, pos=QPoint(x, round(line)))
    app.processEvents()
    times = []
    for move in range(moves):
        offset = round(18 * np.sin(move / 9)) + (1 if move % 2 else -1)
        before = [counter.count for counter in counters]
        began = time.perf_counter()
        QTest.mouseMove(canvas, QPoint(x, round(line) + offset))
        app.processEvents()
        taken = (time.perf_counter() - began) * 1000
        painted = all(c.count > b for c, b in zip(counters[1:3], before[1:3], strict=True))
        if painted:
            times.append(taken)
    QTest.mouseRelease(canvas, Qt.MouseButton.LeftButton, pos=QPoint(x, round(line)))
    if len(times) < moves * 0.8:
        raise SystemExit(f"only {len(times)} of {moves} moves were painted: nothing was measured")
    return times


def naive(path: Path) -> float:
    """Milliseconds to read the bands of one move pixel by pixel, the photo decoded before."""
    pixels = open_full(path).pixels
    began = time.perf_counter()
    edges = [round(edge * pixels.shape[0]) for edge in BANDS.edges]
    for top, bottom in pairwise(edges):
        np.median(srgb_to_Lab(pixels[top:bottom] / 255).reshape(-1, 3), axis=0)
    return (time.perf_counter() - began) * 1000


def main() -> int:
    """Print the figures; 1 when the limit is missed."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--moves", type=int, default=150)
    moves = parser.parse_args().moves
    with tempfile.TemporaryDirectory() as folder:
        path = write_big_photo(Path(folder) / "sky.jpg")
        app = QApplication([])
        window = Window(Path(folder) / "settings")
        window.show()
        window.opener.open_path(path)
        wait_until_still(app, window)
        window.document.change("six bands", with_bands(window.document.study, BANDS))
        wait_until_still(app, window)
        drag(app, window, 20)  # warm
        times = drag(app, window, moves)
        window.document.mark_saved()  # or it would ask
        window.close()
        slow = naive(path)
    median, p90 = statistics.median(times), statistics.quantiles(times, n=10)[-1]
    print(f"drag, {len(times)} moves: median {median:.1f} ms, p90 {p90:.1f} ms (limit {LIMIT_MS})")
    print(f"naive, every pixel, one move: {slow:.0f} ms, {slow / median:.0f} times as long")
    return 0 if median <= LIMIT_MS else 1


if __name__ == "__main__":
    raise SystemExit(main())
