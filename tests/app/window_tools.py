"""What the window's tests share: a small sky, and waiting for the window to be done with it."""

from __future__ import annotations

import io
from functools import lru_cache
from pathlib import Path

import numpy as np
from PIL import Image
from PySide6.QtCore import Qt, QVariantAnimation
from PySide6.QtWidgets import QApplication, QPushButton

from app.read.page import ReadPage
from app.window.window import Window

COLOURS = ((64, 88, 170), (120, 130, 200), (215, 165, 190), (250, 200, 150))
LINES = (0.2, 0.4, 0.6)
HORIZON = 0.8


def draw_sky(path: Path, *, size: tuple[int, int] = (360, 240)) -> Path:
    """A sky of four bands over dark, textured ground."""
    path.write_bytes(_sky_file(*size))
    return path


@lru_cache(maxsize=16)
def _sky_file(width: int, height: int) -> bytes:
    rng = np.random.default_rng(1)
    pixels = np.zeros((height, width, 3), np.int16)
    edges = [round(y * height) for y in (0.0, *LINES, HORIZON, 1.0)]
    for top, bottom, colour in zip(edges, edges[1:], (*COLOURS, (40, 45, 30)), strict=False):
        pixels[top:bottom] = colour
    pixels += rng.integers(-3, 4, pixels.shape, dtype=np.int16)
    pixels[edges[-2] :] += rng.integers(-25, 26, pixels[edges[-2] :].shape, dtype=np.int16)
    buffer = io.BytesIO()
    Image.fromarray(pixels.clip(0, 255).astype(np.uint8)).save(buffer, "PNG")
    return buffer.getvalue()


def wait_until_still(window: Window, qtbot) -> None:
    """Until the photo is open, proposed for, read with care and in the study."""
    qtbot.waitUntil(
        lambda: (
            bool(window.reader.readings) and not window.reader.working and not window.files.storing
        ),
        timeout=20_000,
    )


def open_and_wait(window: Window, path: Path, qtbot) -> None:
    """Open a file as a drop would, and wait."""
    with qtbot.waitSignal(window.reader.photo_changed, timeout=20_000):
        window.opener.open_path(path)
    wait_until_still(window, qtbot)


def wait_until_quiet(window: Window, qtbot) -> None:
    """Until nothing of the opening is on its way any more: neither the plan nor the veil."""
    wait_for_plan(window, qtbot)
    reader = window.reader

    def quiet() -> bool:
        veil_comes = reader._veil_soon.isActive() or reader._veil.running
        return not (veil_comes or window.files.storing)

    qtbot.waitUntil(quiet, timeout=20_000)
    QApplication.processEvents()


def run_through(motion: QVariantAnimation) -> None:
    """A motion from beginning to end in steps of its own time, whatever the clock says."""
    motion.pause()
    for ms in range(5, motion.duration() + 5, 5):
        motion.setCurrentTime(ms)


def button_of(text: str) -> QPushButton | None:
    """The button of this text in the dialog that is open; None without such a dialog."""
    dialog = QApplication.activeModalWidget()
    buttons = dialog.findChildren(QPushButton) if dialog is not None else []
    return next((one for one in buttons if one.text().replace("&", "") == text), None)


def answer(qtbot, text: str) -> None:
    """Wait for a dialog with this button, and press it by key; the dialog must go."""
    qtbot.waitUntil(lambda: button_of(text) is not None)
    dialog, button = QApplication.activeModalWidget(), button_of(text)
    button.setFocus()
    qtbot.keyClick(button, Qt.Key.Key_Space)
    assert QApplication.activeModalWidget() is not dialog


def read_page(window: Window) -> ReadPage:
    """The Read page."""
    page = window.page("read")
    assert isinstance(page, ReadPage)
    return page


def wait_for_plan(window, qtbot) -> None:
    qtbot.waitUntil(
        lambda: (
            window.planner.plan is not None
            and not window.planner.working
            and not window.reader.working
        ),
        timeout=20_000,
    )
