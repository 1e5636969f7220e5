"""Whether there is a screen to open a window on: Qt itself would end the program where not.

And whether Qt can draw at all, on a screen or into a PDF: on a bare system it lacks libraries.
"""

from __future__ import annotations

import ctypes
import os
import socket
import sys
from pathlib import Path

from core.errors import UsageError
from core.i18n import translate

# What Qt's plugin for X11 loads first of what its package does not bring.
_LIBRARIES = {"libxcb.so.1": "libxcb1", "libxcb-cursor.so.0": "libxcb-cursor0"}

# What Qt loads to draw, with its packages in Debian.
_TO_DRAW = {
    "libGL.so.1": "libgl1",
    "libEGL.so.1": "libegl1",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libfontconfig.so.1": "libfontconfig1",
    "libfreetype.so.6": "libfreetype6",
    "libglib-2.0.so.0": "libglib2.0-0",
    "libdbus-1.so.3": "libdbus-1-3",
}


def missing_to_draw(error: ImportError) -> UsageError | None:
    """What to say where Qt could not be imported for want of a system library; else None."""
    library = str(error).partition(":")[0]
    if ".so" not in library or "cannot open shared object" not in str(error):
        return None
    package = _TO_DRAW.get(library)
    if package is None:
        return UsageError(
            translate(
                "start", "Drawing needs a system library that is missing here: {library}."
            ).format(library=library)
        )
    return UsageError(
        translate(
            "start",
            "Drawing needs a system library that is missing here ({library}): install the "
            "package {package}.",
        ).format(library=library, package=package)
    )


def need_a_screen() -> None:
    """Refuse to go on where no window can be opened.

    Raises
    ------
    UsageError
        No screen, one that does not answer, or a system library is missing.
    """
    if not sys.platform.startswith("linux"):
        return
    asked = os.environ.get("QT_QPA_PLATFORM", "").partition(":")[0]
    if asked and asked != "xcb":
        return
    if not asked and _wayland_answers():
        return
    if not os.environ.get("DISPLAY"):
        raise UsageError(
            translate(
                "start",
                "There is no screen here to open a window on. In words: gradewash read PHOTO.",
            )
        )
    for library, package in _LIBRARIES.items():
        if not _loads(library):
            raise UsageError(
                translate(
                    "start",
                    "The window needs a system library that is missing ({library}): install the "
                    "package {package}.",
                ).format(library=library, package=package)
            )
    if not _x11_answers():
        raise UsageError(
            translate(
                "start",
                "The screen {display} does not answer, so no window can be opened. "
                "In words: gradewash read PHOTO.",
            ).format(display=os.environ["DISPLAY"])
        )


def _wayland_answers() -> bool:
    name = os.environ.get("WAYLAND_DISPLAY")
    if not name:
        return False
    path = Path(os.environ.get("XDG_RUNTIME_DIR", "/")) / name
    with socket.socket(socket.AF_UNIX) as client:
        try:
            client.connect(str(path))
        except (OSError, ValueError):
            return False
    return True


def _loads(library: str) -> bool:
    try:
        ctypes.CDLL(library)
    except OSError:
        return False
    return True


def _x11_answers() -> bool:
    xcb = ctypes.CDLL("libxcb.so.1")
    xcb.xcb_connect.restype = ctypes.c_void_p
    xcb.xcb_connect.argtypes = [ctypes.c_char_p, ctypes.c_void_p]
    xcb.xcb_connection_has_error.argtypes = [ctypes.c_void_p]
    xcb.xcb_disconnect.argtypes = [ctypes.c_void_p]
    connection = xcb.xcb_connect(None, None)
    failed = bool(xcb.xcb_connection_has_error(connection))
    xcb.xcb_disconnect(connection)
    return not failed
