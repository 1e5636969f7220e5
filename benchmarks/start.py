"""From the start of the program to the photo on the screen, and to all bands and readouts.

On a 24 megapixel JPEG, each in a process of its own, beside (import PySide6 + numpy, decode the
whole file) in the same run; peak memory too.

    python benchmarks/start.py [--runs 7]
"""

from __future__ import annotations

import argparse
import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from big_photo import write_big_photo

# As a user's second start finds it, the modules are compiled: compiling them takes 200 ms.
os.environ.pop("PYTHONDONTWRITEBYTECODE", None)

PHOTO_LIMIT, BANDS_LIMIT, MEMORY_LIMIT_MB = 1.3, 1.7, 1024

_BASELINE = """
import sys
import numpy
from PySide6 import QtCore, QtGui, QtWidgets
from PIL import Image
numpy.asarray(Image.open(sys.argv[1]).convert("RGB"))
"""

_PROGRAM = """
import sys, time
began = float(sys.argv[2])
from app.main import open_early, pause_collecting
pause_collecting()
from pathlib import Path
early = open_early(Path(sys.argv[1]))
from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QApplication
from app.start import collect_again
from app.window.window import Window
app = QApplication([])
window = Window(Path(sys.argv[3]))
collect_again(window)
page = window.page("read")
seen = {}

class Watch(QObject):
    def eventFilter(self, watched, event):
        if event.type() == QEvent.Type.Paint:
            QTimer.singleShot(0, self.look)
        return False

    def look(self):
        now = time.time() - began
        if window.reader.opened is not None:
            seen.setdefault("photo", now)
        if window.reader.readings:
            seen.setdefault("bands", now)

# A careful reading that changes nothing paints nothing: ask, rather than wait for a paint.
rest = QTimer(interval=20)
rest.timeout.connect(lambda: "bands" in seen and not window.reader.working and app.quit())
rest.start()
watch = Watch()
page.canvas.installEventFilter(watch)
page.table.installEventFilter(watch)
window.opener.open_early(early, Path(sys.argv[1]), None)
window.show()
app.exec()
# Not ru_maxrss: that one remembers the size of the process that began this one.
status = Path("/proc/self/status").read_text()
peak = int(status.split("VmHWM:")[1].split()[0]) // 1024
print("RESULT", seen["photo"], seen["bands"], peak)
window.close()
"""


def seconds(code: str, *arguments: str) -> float:
    """How long a process takes."""
    began = time.perf_counter()
    subprocess.run([sys.executable, "-c", code, *arguments], check=True, capture_output=True)
    return time.perf_counter() - began


def program(path: Path, folder: Path) -> tuple[float, float, float]:
    """Seconds to the photo, seconds to the bands, peak memory in MB."""
    output = subprocess.run(
        [sys.executable, "-c", _PROGRAM, str(path), str(time.time()), str(folder)],
        check=True,
        capture_output=True,
        text=True,
    ).stdout
    line = next(line for line in output.splitlines() if line.startswith("RESULT"))
    photo, bands, peak = (float(value) for value in line.split()[1:])
    return photo, bands, peak


def main() -> int:
    """Print the figures; 1 when a limit is missed."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--runs", type=int, default=7)
    runs = parser.parse_args().runs
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    root = Path(__file__).resolve().parent.parent
    os.environ["PYTHONPATH"] = str(root)
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        path = write_big_photo(folder / "sky.jpg")
        seconds(_BASELINE, str(path))  # warm the disk's cache
        program(path, folder / "settings")
        base, photo, bands, peaks = [], [], [], []
        for _ in range(runs):  # in turns, so that both meet the same load
            base.append(seconds(_BASELINE, str(path)))
            result = program(path, folder / "settings")
            for values, value in zip((photo, bands, peaks), result, strict=True):
                values.append(value)
    unit = statistics.median(base)
    shown, read = statistics.median(photo) / unit, statistics.median(bands) / unit
    peak = max(peaks)
    print(f"baseline (import PySide6 + numpy, decode all): {unit:.2f} s, median of {runs}")
    print(f"photo on the screen:   {shown:.2f} x (limit {PHOTO_LIMIT})")
    print(f"all bands and readouts: {read:.2f} x (limit {BANDS_LIMIT})")
    print(f"peak memory: {peak:.0f} MB (limit {MEMORY_LIMIT_MB})")
    reached = shown <= PHOTO_LIMIT and read <= BANDS_LIMIT and peak <= MEMORY_LIMIT_MB
    return 0 if reached else 1


if __name__ == "__main__":
    raise SystemExit(main())
