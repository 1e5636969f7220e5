"""From nothing to all bands read on a 24-megapixel JPEG, against decoding it.

Every run is a fresh interpreter, and the two kinds take turns, so that whatever else the machine
does slows both. The yardstick imports PySide6 and numpy and decodes the whole file; the work
imports the same, opens the photo, proposes its bands, counts it for dragging and reads every
band with care.
"""

from __future__ import annotations

import argparse
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

from big_photo import write_big_photo

YARDSTICK = """
import sys, time
start = time.perf_counter()
import PySide6.QtWidgets
import numpy
from PIL import Image
numpy.asarray(Image.open(sys.argv[1]).convert("RGB"))
print("total", time.perf_counter() - start)
"""

WORK = """
import sys, time
start = last = time.perf_counter()
def lap(name):
    global last
    now = time.perf_counter()
    print(name, now - last)
    last = now
import PySide6.QtWidgets
import numpy
lap("import PySide6 + numpy")
from core.bands.careful import read_bands
from core.bands.propose import propose
from core.bands.stats import BandStats
from core.photo import open_photo
lap("import core")
photo = open_photo(sys.argv[1])
lap("open")
proposal = propose(photo)
lap("propose")
read_bands(photo, proposal.sky, proposal.bands)
lap("careful reading")
stats = BandStats(photo, proposal.sky)
lap("count for dragging")
stats.read(proposal.bands)
lap("fast reading")
print("total", time.perf_counter() - start)
# Not ru_maxrss: that one remembers the size of the process that began this one.
print("peak MB", int(open("/proc/self/status").read().split("VmHWM:")[1].split()[0]) / 1024)
"""


def _run(code: str, path: Path) -> dict[str, float]:
    done = subprocess.run(
        [sys.executable, "-c", code, str(path)], check=True, capture_output=True, text=True
    )
    rows = (line.rsplit(" ", 1) for line in done.stdout.splitlines())
    return {name: float(number) for name, number in rows}


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--runs", type=int, default=7)
    runs = parser.parse_args().runs
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "big.jpg"
        write_big_photo(path)
        _run(YARDSTICK, path)
        _run(WORK, path)  # the first of each fills the disk cache
        pairs = [(_run(YARDSTICK, path), _run(WORK, path)) for _ in range(runs)]
    for name in pairs[0][1]:
        middle = statistics.median(work[name] for _, work in pairs)
        print(f"{name:24}{middle:8.0f}" if "MB" in name else f"{name:24}{1000 * middle:8.0f} ms")
    yardstick = statistics.median(base["total"] for base, _ in pairs)
    ratio = statistics.median(work["total"] / base["total"] for base, work in pairs)
    print(f"{'yardstick':24}{1000 * yardstick:8.0f} ms")
    print(f"all bands read: {ratio:.2f}x the yardstick (goal 2.0x)")


if __name__ == "__main__":
    main()
