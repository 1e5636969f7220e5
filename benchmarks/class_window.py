"""The window while a class's sheets are brought in and checked: how long it stands still.

Sheets of 12 megapixels from the simulator; few are drawn, and each is used again with another
ticket's place and other bytes. Marks are typed, bands lit and students walked through meanwhile.
Told are the longest pause between two beats of the event loop by the clock, and the longest by the
processor time of the window's own thread: only the second means something on a busy machine. Then
how long Stop takes until nothing arrives any more, and until the processes are gone. With --stacks
the turns that were longest by their own work say what they were at (being looked at makes them
a little longer).

    python benchmarks/class_window.py [--count 60] [--start 5000] [--stacks] [--keep FOLDER]
"""

from __future__ import annotations

import argparse
import gc
import io
import os
import sys
import tempfile
import threading
import time
from collections import Counter
from collections.abc import Callable
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

ROOT = Path(__file__).parents[1]
for extra in ("tests", ""):
    sys.path.insert(0, str(ROOT / extra))

PHOTO = "sky.png"
STACKS_FROM = 0.02
STILL_LIMIT, STOP_LIMIT = 0.05, 2.0


def write_sheets(folder: Path, start: int, count: int) -> bytes:
    """The class's pictures; gives the photo. What is there from an earlier run is taken."""
    if (folder / PHOTO).is_file():
        return (folder / PHOTO).read_bytes()
    from PIL import Image
    from simulator.evening import class_scene, class_sheet

    from core.class_set.ticket import Ticket

    base = class_scene(start)
    whole = []
    for k in range(min(count, 6)):
        ticket = Ticket("7K3Q", k + 1, "1")
        data, _ = class_sheet(base, start + k, ticket, size=(2016, 1512))
        whole.append(Image.open(io.BytesIO(data)).resize((4032, 3024), Image.Resampling.BICUBIC))
    for k in range(count):
        # A row of pixels moved makes it another picture of the same sheet.
        image = whole[k % len(whole)].crop((0, k // len(whole), 4032, 3024))
        image.save(folder / f"IMG_{2000 + k}.jpg", quality=90)
    Image.fromarray(base.reference).save(folder / PHOTO)
    return (folder / PHOTO).read_bytes()


class Pulse:
    """Beats every millisecond; remembers the longest pause by the clock and by own work."""

    def __init__(self) -> None:
        from PySide6.QtCore import QTimer

        self.begin()
        self._timer = QTimer(interval=1)
        self._timer.timeout.connect(self._beat)
        self._timer.start()

        gc.callbacks.append(self._on_collecting)
        self._seen: list[tuple[float, str]] = []
        self._worst: list[tuple[float, list[str]]] = []

    def look_on(self) -> None:
        """From a thread of its own, note what the window's thread is at every 2 ms."""
        window = threading.get_ident()

        def look() -> None:
            while True:
                time.sleep(0.002)
                frame, where = sys._current_frames().get(window), []
                while frame is not None:
                    code = frame.f_code
                    where.append(f"{Path(code.co_filename).name}:{frame.f_lineno} {code.co_name}")
                    frame = frame.f_back
                self._seen.append((time.perf_counter(), " < ".join(where[:9])))

        threading.Thread(target=look, daemon=True).start()

    def _note(self, pause: float) -> None:
        """Keep what was seen of a turn that was long by its own work."""
        if pause > STACKS_FROM:
            self._worst.append((pause, [what for when, what in self._seen if when > self._last]))
            self._worst = sorted(self._worst, key=lambda one: -one[0])[:5]
        self._seen.clear()

    def _on_collecting(self, phase: str, info: dict[str, int]) -> None:
        """Python collects its rubbish in whichever thread asked last, and all wait."""
        if phase == "start":
            self._collecting = time.thread_time()
        else:
            self.collected = max(self.collected, time.thread_time() - self._collecting)

    def _beat(self) -> None:
        now, own = time.perf_counter(), time.thread_time()
        self._note(own - self._own)
        self.clock = max(self.clock, now - self._last)
        self.own = max(self.own, own - self._own)
        self._last, self._own = now, own

    def begin(self) -> None:
        """Forget what was."""
        self.clock = self.own = self.collected = 0.0
        self._last, self._own = time.perf_counter(), time.thread_time()

    def tell(self, what: str) -> bool:
        """Print what was seen and begin again; whether the limit held."""
        print(
            f"{what}: by own work {self.own * 1000:.0f} ms, by the clock {self.clock * 1000:.0f}; "
            f"longest collection {self.collected * 1000:.0f} ms",
            flush=True,
        )
        for pause, seen in self._worst:
            print(f"  {pause * 1000:.0f} ms, looked at {len(seen)} times:")
            for what, times in Counter(seen).most_common(6):
                print(f"    {times} x {what}")
        self._worst = []
        held = self.own <= STILL_LIMIT
        self.begin()
        return held


def main() -> int:
    """Print the figures; 1 when a limit is missed."""
    from PySide6.QtWidgets import QApplication

    parser = argparse.ArgumentParser()
    parser.add_argument("--count", type=int, default=60)
    parser.add_argument("--start", type=int, default=5000)
    parser.add_argument("--stacks", action="store_true")
    parser.add_argument("--keep", type=Path, help="where the pictures are kept for another run")
    args = parser.parse_args()
    app = QApplication([])

    # Python's collector as in the program itself: at rest while it starts.
    from app.main import pause_collecting
    from app.start import collect_again
    from app.window.window import Window
    from core.bands.lines import Bands
    from core.class_set.model import new_class_set
    from core.class_set.students import ClassList, Student
    from core.photo import strip_private
    from core.pictures import Picture, digest_of
    from core.study import study_of

    def until(happened: Callable[[], bool], act: Callable[[int], object] | None = None) -> float:
        began, steps = time.perf_counter(), 0
        while not happened():
            app.processEvents()
            if act is not None and time.perf_counter() - began > 0.25 * (steps + 1):
                steps += 1
                act(steps)
        return time.perf_counter() - began

    held = []
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        pictures = args.keep or folder / "pictures"
        pictures.mkdir(parents=True, exist_ok=True)
        photo = strip_private(write_sheets(pictures, args.start, args.count))
        bands = Bands(1.0, (0.25, 0.5, 0.75))
        exercise = study_of(Picture("sky.png", digest_of(photo)), bands)
        students = tuple(Student(k, f"{k:02d}") for k in range(1, 31))
        pause_collecting()
        window = Window(folder / "settings")
        collect_again(window)
        window.resize(1366, 768)
        window.show()
        desk = window.desk
        desk.create(
            folder / "7b", new_class_set("7b", ClassList("7K3Q", students), exercise), photo
        )
        until(lambda: desk.class_set is not None)
        page = window.page("classset")
        until(lambda: not desk.working)
        pulse = Pulse()
        if args.stacks:
            pulse.look_on()
        desk.add(sorted(pictures.glob("*.jpg")))
        brought = until(
            lambda: not any(one.what == "bringing" for one in desk.underway) and desk.unchecked > 0
        )
        held.append(pulse.tell(f"{args.count} pictures brought in, {brought:.0f} s"))
        # Each picture gets a place, so that the wall is full.
        from core.class_set import edits
        from core.class_set.ticket import Slot

        class_set = desk.class_set
        for k, each in enumerate(class_set.brought):
            class_set = edits.place(class_set, each.digest, Slot(1 + k // 2 % 30, k % 2))
        desk.change("place", class_set)
        part = page.show_part("pin_up")
        pulse.begin()

        def work(step: int) -> None:
            # One at a time, as a hand does it: between two, what changed is painted.
            if step % 4 == 2:
                part.choose(step // 4 % 30)
            elif step % 8 == 0:
                part.show_band(("whole", "A", "C")[step // 8 % 3])
            else:
                part.edit("remark", "x" * (step % 40))

        checked = until(lambda: desk.unchecked <= args.count // 2, work)
        half = args.count - desk.unchecked
        held.append(pulse.tell(f"{half} sheets checked, marks typed meanwhile, {checked:.0f} s"))
        began = time.perf_counter()
        pids = _children()
        desk.stop()
        until(lambda: not desk.underway)
        quiet = time.perf_counter() - began
        until(lambda: not _alive(pids))
        gone = time.perf_counter() - began
        print(f"stopped: nothing arrives after {quiet:.2f} s, processes gone after {gone:.1f} s")
        held.append(quiet <= STOP_LIMIT)
        desk.check()
        checked = until(lambda: desk.unchecked == 0, work)
        held.append(pulse.tell(f"the rest, {checked:.0f} s"))
        until(lambda: not desk.working)
        part.begin()
        for place in range(30):
            part.choose(place)
            until(lambda: not desk.pictures.working)
        held.append(pulse.tell("walked through 30 students"))
        print(f"limits: still {STILL_LIMIT * 1000:.0f} ms, stop {STOP_LIMIT:.0f} s")
        window.document.mark_saved()
        window.close()
        until(lambda: not window.isVisible())
    return 0 if all(held) else 1


def _children() -> list[int]:
    """The processes this one began (Linux)."""
    own, found = os.getpid(), []
    for path in Path("/proc").glob("[0-9]*/stat"):
        try:
            fields = path.read_text().rpartition(")")[2].split()
        except OSError:
            continue
        # Python's own watcher of shared things stays to the end.
        if int(fields[1]) == own and b"resource_tracker" not in _command(path.parent):
            found.append(int(path.parent.name))
    return found


def _command(process: Path) -> bytes:
    """What a process was started as."""
    try:
        return (process / "cmdline").read_bytes()
    except OSError:
        return b""


def _alive(pids: list[int]) -> bool:
    """Whether one of them still runs."""
    for pid in pids:
        try:
            fields = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()
        except OSError:
            continue
        if fields[0] != "Z":
            return True
    return False


if __name__ == "__main__":
    raise SystemExit(main())
