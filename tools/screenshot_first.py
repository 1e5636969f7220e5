"""The first start, maximised; text set larger while the window runs; for `tools.screenshots`."""

from __future__ import annotations

from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QLabel, QWidget

from tools.screenshot_lesson import whole_lesson
from tools.screenshot_stage import PLAIN, Stage, Variation, scene

LARGE_SCREEN = Variation((1920, 1080), "light", 100, "en")


def _as_seen(stage: Stage) -> QWidget:
    """The window's own pixels, not drawn anew: what was left of older ones is seen."""
    window = stage.window
    pixels: QPixmap = window.screen().grabWindow(window.winId())
    label = QLabel()
    label.setPixmap(pixels)
    label.resize(pixels.size())
    stage.kept = label  # type: ignore[attr-defined]
    return label


@scene(PLAIN)
def first_run_maximised(stage: Stage) -> QWidget | None:
    """Hints were there before the window was maximised."""
    stage.open_sample("dusk")
    stage.window.greet()
    stage.process(900)
    stage.window.resize(*LARGE_SCREEN.size)
    stage.process(1200)
    return _as_seen(stage)


def _grown(stage: Stage, key: str) -> None:
    for kind in ("read", "mix", "sheets", "worksheet"):
        stage.page(kind)
    stage.window.preferences.set(text_percent=150)
    stage.process(200)
    stage.page(key)


@scene(PLAIN)
def live_150_read(stage: Stage) -> QWidget | None:
    """Text set to 150 % while running."""
    stage.open_sample("dusk")
    _grown(stage, "read")
    return None


@scene(PLAIN)
def live_150_mix(stage: Stage) -> QWidget | None:
    """The same on the Mix page."""
    stage.open_sample("dusk")
    _grown(stage, "mix")
    return None


@scene(PLAIN)
def live_150_sheets_empty(stage: Stage) -> QWidget | None:
    """The same without sheets."""
    stage.open_sample("dusk")
    _grown(stage, "sheets")
    return None


@scene(PLAIN)
def live_150_sheets(stage: Stage) -> QWidget | None:
    """The same with both sheets."""
    whole_lesson(stage)
    _grown(stage, "sheets")
    return None


@scene(PLAIN)
def live_150_worksheet(stage: Stage) -> QWidget | None:
    """The same on the worksheet."""
    whole_lesson(stage)
    _grown(stage, "worksheet")
    return None
