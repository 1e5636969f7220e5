"""Print the Debian/Ubuntu packages whose libraries Qt needs and this machine lacks.

Qt's own wheels bring everything but these. Prints nothing when all are there. Needs only the
standard library, since it runs before anything is installed.
"""

from __future__ import annotations

import ctypes
import sys

# library -> package; from `ldd` over QtCore, QtGui, QtWidgets, QtSvg, QtPrintSupport and the
# offscreen and xcb platform plugins of PySide6 6.11. Another Qt module may need more: QtNetwork
# and QtMultimedia do.
LIBRARIES = {
    "libEGL.so.1": "libegl1",
    "libGL.so.1": "libgl1",
    "libX11-xcb.so.1": "libx11-xcb1",
    "libX11.so.6": "libx11-6",
    "libdbus-1.so.3": "libdbus-1-3",
    "libfontconfig.so.1": "libfontconfig1",
    "libfreetype.so.6": "libfreetype6",
    "libglib-2.0.so.0": "libglib2.0-0",
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-randr.so.0": "libxcb-randr0",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-render.so.0": "libxcb-render0",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb-shm.so.0": "libxcb-shm0",
    "libxcb-sync.so.1": "libxcb-sync1",
    "libxcb-util.so.1": "libxcb-util1",
    "libxcb-xfixes.so.0": "libxcb-xfixes0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
    "libxcb.so.1": "libxcb1",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
    "libxkbcommon.so.0": "libxkbcommon0",
}


SCREEN = ("libX11", "libxcb", "libxkbcommon-x11")
"""Begins the names of those that only a window on a screen needs; a card is drawn without."""


def missing_packages(needed: str = "screen") -> list[str]:
    """The packages to install, none on systems other than Linux.

    Parameters
    ----------
    needed : "screen", "drawing" or "none"
        What is going to be done.
    """
    if not sys.platform.startswith("linux") or needed == "none":
        return []
    missing = []
    for library, package in LIBRARIES.items():
        if needed == "drawing" and library.startswith(SCREEN):
            continue
        try:
            ctypes.CDLL(library)
        except OSError:
            missing.append(package)
    return missing


if __name__ == "__main__":
    print(*missing_packages(*sys.argv[1:2]))
