"""A study with a 12 megapixel photo and two sheets, saved, opened and kept aside in the window.

What saving takes beyond writing the same bytes, what opening takes beyond decoding the photo, how
long after a change it is in the data folder, and how long the window stood still meanwhile.

    python benchmarks/study_window.py [--runs 5]
"""

from __future__ import annotations

import argparse
import os
import statistics
import tempfile
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from study_file import picture

import app.files.files_ask
from app.window.window import Window
from core.photo import open_photo
from core.study import SheetEntry, with_sheet, with_title

SAVE_LIMIT, OPEN_LIMIT, KEPT_LIMIT, STILL_LIMIT = 0.5, 1.0, 5.0, 0.05


class Pulse:
    """Beats every millisecond; its longest pause is how long the window stood still."""

    def __init__(self) -> None:
        self.longest = 0.0
        self._last = time.perf_counter()
        self._timer = QTimer(interval=1)
        self._timer.timeout.connect(self._beat)
        self._timer.start()

    def _beat(self) -> None:
        now = time.perf_counter()
        self.longest = max(self.longest, now - self._last)
        self._last = now

    def begin(self) -> None:
        """Forget what was."""
        self.longest, self._last = 0.0, time.perf_counter()


def until(app: QApplication, happened: Callable[[], bool]) -> float:
    """Let the window run until something happened; seconds."""
    began = time.perf_counter()
    while not happened():
        app.processEvents()
    return time.perf_counter() - began


def signalled(signal: object) -> list[bool]:
    """Fills once the signal was sent."""
    sent: list[bool] = []
    signal.connect(lambda *arguments: sent.append(True))
    return sent


def write_plainly(path: Path, data: bytes) -> float:
    """Seconds to put the same bytes on the disk."""
    began = time.perf_counter()
    with path.open("wb") as stream:
        stream.write(data)
        stream.flush()
        os.fsync(stream.fileno())
    return time.perf_counter() - began


def decode(window: Window) -> float:
    """Seconds to decode the photo alone."""
    photo = window.document.study.photo
    began = time.perf_counter()
    open_photo(window.pictures[photo.digest], name=photo.name)
    return time.perf_counter() - began


def main() -> int:
    """Print the figures; 1 when a limit is missed."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--runs", type=int, default=5)
    runs = parser.parse_args().runs
    qt = QApplication([])
    beyond: dict[str, list[float]] = {"save": [], "open": [], "kept": []}
    still: dict[str, float] = {"save": 0.0, "open": 0.0, "kept": 0.0}
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        (folder / "photo.jpg").write_bytes(picture(1))
        lesson = folder / "lesson.gradewash"
        app.files.files_ask.ask_save_path = lambda parent, suggestion: lesson
        window = Window(folder / "settings")
        window.show()
        window.opener.open_path(folder / "photo.jpg")
        until(qt, lambda: bool(window.reader.readings) and not window.reader.working)
        study = window.document.study
        for index in (0, 1):
            kept = window.pictures.add(f"{index}.jpg", picture(2 + index))
            study = with_sheet(study, index, SheetEntry(kept))
        window.document.change("sheets", study)
        until(qt, lambda: not window.files.autosave.waiting and not window.checker.working)
        pulse = Pulse()

        def measured(what: str, act: Callable[[], object], happened: Callable[[], bool]) -> float:
            qt.processEvents()
            pulse.begin()
            act()
            taken = until(qt, happened)
            still[what] = max(still[what], pulse.longest)
            return taken

        def rename(title: str) -> None:
            window.document.change("rename", with_title(window.document.study, title))

        for run in range(runs):
            sent = signalled(window.files.autosave.kept)
            taken = measured("kept", partial(rename, f"lesson {run}"), partial(bool, sent))
            beyond["kept"].append(taken)
            sent = signalled(window.files.saver.saved)
            taken = measured("save", window.files.save, partial(bool, sent))
            beyond["save"].append(taken - write_plainly(folder / "plain", lesson.read_bytes()))
            until(qt, lambda: not window.files.autosave.waiting)
            sent = signalled(window.reader.photo_changed)
            taken = measured("open", partial(window.opener.open_path, lesson), partial(bool, sent))
            beyond["open"].append(taken - decode(window))
            until(qt, lambda: bool(window.reader.readings) and not window.reader.working)
            until(qt, lambda: not window.checker.working and not window.planner.working)
        megabytes = lesson.stat().st_size / 1e6
        window.close()
    middle = {what: statistics.median(values) for what, values in beyond.items()}
    print(
        f"a study of {megabytes:.1f} MB, median of {runs}; in brackets: window stood still at most"
    )
    print(
        f"saved, beyond the same bytes: {middle['save']:.2f} s (limit {SAVE_LIMIT}) "
        f"[{still['save'] * 1000:.0f} ms]"
    )
    print(
        f"opened, beyond decoding the photo: {middle['open']:.2f} s (limit {OPEN_LIMIT}) "
        f"[{still['open'] * 1000:.0f} ms]"
    )
    print(
        f"kept aside after a change: {middle['kept']:.2f} s (limit {KEPT_LIMIT}) "
        f"[{still['kept'] * 1000:.0f} ms]"
    )
    print(f"limit for standing still: {STILL_LIMIT * 1000:.0f} ms")
    reached = middle["save"] <= SAVE_LIMIT and middle["open"] <= OPEN_LIMIT
    reached = reached and middle["kept"] <= KEPT_LIMIT and max(still.values()) <= STILL_LIMIT
    return 0 if reached else 1


if __name__ == "__main__":
    raise SystemExit(main())
