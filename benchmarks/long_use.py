"""A long day in one window: photos opened, lines dragged, pages shown, all undone, cards drawn.

    python -m benchmarks.long_use --photos 200 --drags 100

Prints the memory the process holds as it goes; from the first quarter to the end it should stay
within 10%.
"""

from __future__ import annotations

import argparse
import gc
import os
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import numpy as np
from PIL import Image
from PySide6.QtCore import QEventLoop
from PySide6.QtWidgets import QApplication

from app.cards.card import CardChoice, lay_out_card
from app.cards.paper import PAPERS
from app.cards.pdf import pdf_of
from app.window.window import Window
from core.cards import gather
from core.pipeline import Worked
from core.study import move_line


def sky(path: Path, number: int) -> Path:
    """A sky of four bands; each has another size, so that nothing is remembered by its shape."""
    stops = np.array([(60, 90, 160), (130, 140, 190), (230, 180, 120), (170, 95, 70)], float)
    rows = np.linspace(0, 3, 600 + number % 7)
    colours = np.stack([np.interp(rows, range(4), stops[:, k]) for k in range(3)], axis=1)
    grain = np.random.default_rng(number).normal(0, 2, (len(rows), 900, 3))
    Image.fromarray(np.clip(colours[:, None] + grain, 0, 255).astype(np.uint8)).save(path)
    return path


def held_mb() -> float:
    """Resident memory of this process."""
    pages = int(Path("/proc/self/statm").read_text().split()[1])
    return pages * os.sysconf("SC_PAGE_SIZE") / 1e6


def wait(qt: QApplication, ready: Callable[[], bool]) -> None:
    """Let the window live until it is ready."""
    end = time.monotonic() + 120
    while not ready():
        qt.processEvents(QEventLoop.ProcessEventsFlag.AllEvents, 20)
        if time.monotonic() > end:
            sys.exit("the window did not come to rest")


def use(qt: QApplication, window: Window, path: Path, drags: int, cards: bool) -> None:
    """One photo's worth of work."""
    before = window.document.study
    window.document.mark_saved()
    window.opener.open_path(path)
    reader = window.reader
    wait(qt, lambda: window.document.study is not before and bool(reader.readings))
    wait(qt, lambda: not reader.working)
    for page in range(4):
        window.show_page(page)
        qt.processEvents()
    bands = window.document.study.bands
    for step in range(drags if bands is not None and bands.lines else 0):
        study = window.document.study
        assert study.bands is not None
        moved = study.bands.lines[0] + 0.002 * (1 if step % 2 else -1)
        window.document.change("move", move_line(study, 0, moved))
        qt.processEvents()
    while window.document.stack.canUndo():
        window.document.stack.undo()
    wait(qt, lambda: not reader.working and not window.planner.working)
    if cards:
        data = gather(
            "plan",
            window.document.study,
            dict(window.pictures),
            window.preferences.settings.wording,
            known=Worked(photo=reader.photo),
        )
        pdf_of(lay_out_card(data, CardChoice("plan", PAPERS["a4"])), "plan")


def main() -> int:
    """Run it; 1 where the memory grew by more than a tenth."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("--photos", type=int, default=200)
    parser.add_argument("--drags", type=int, default=100, help="of a line, for each photo")
    parser.add_argument("--no-cards", action="store_true")
    asked = parser.parse_args()
    qt = QApplication([])
    held = []
    with tempfile.TemporaryDirectory() as name:
        window = Window(Path(name) / "settings")
        window.show()
        for number in range(asked.photos):
            path = sky(Path(name) / f"sky {number}.png", number)
            use(qt, window, path, asked.drags, not asked.no_cards)
            path.unlink()
            gc.collect()
            held.append(held_mb())
            if (number + 1) % max(1, asked.photos // 8) == 0:
                print(f"{number + 1:4} photos: {held[-1]:.0f} MB", flush=True)
    begun = held[len(held) // 4]
    grown = held[-1] / begun - 1
    print(f"from photo {len(held) // 4 + 1} on: {grown:+.1%}")
    sys.stdout.flush()
    # Without the window's own farewell: nothing is to be saved.
    os._exit(1 if grown > 0.1 else 0)


if __name__ == "__main__":
    sys.exit(main())
