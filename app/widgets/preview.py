"""What every module's `__main__` preview shares: a window in a chosen look."""

from __future__ import annotations

import argparse
from collections.abc import Callable

from PySide6.QtWidgets import QApplication, QWidget

from app.look import Look, TypeScale, apply_look, theme_for
from app.widgets.focus import FocusRing
from core.reading.reading import BandReading, read_colour

# CIELAB of an invented dusk, top band first.
_DUSK = (
    (45.0, 17.0, -42.0),
    (56.0, 17.0, -33.0),
    (70.0, 18.0, -21.0),
    (83.0, 15.0, -9.0),
    (75.0, 24.0, 6.0),
)
# Seven bands, three of one hue, two near neutral.
_CROWD = (
    (64.0, 28.0, 31.0),
    (61.0, 28.0, 29.0),
    (62.0, 26.0, 26.0),
    (65.0, -2.0, -6.0),
    (64.0, 2.0, -9.0),
    (76.0, 5.0, 42.0),
    (45.0, -3.0, -25.0),
)


def sample_readings(*, crowded: bool = False) -> tuple[BandReading, ...]:
    """Readings of an invented sky, for previews and tests."""
    colours = _CROWD if crowded else _DUSK
    count = len(colours)
    return tuple(
        BandReading(
            letter=chr(ord("A") + number),
            top=number / count,
            bottom=(number + 1) / count,
            colour=read_colour(Lab),
            left=None,
            centre=None,
            right=None,
            spread=2.0,
            stacked=False,
            clipped_share=0.0,
            pixel_share=1.0,
        )
        for number, Lab in enumerate(colours)
    )


def show(make: Callable[[], QWidget], width: int, height: int) -> int:
    """Show a widget: `[--dark] [--scale 1.5] [--png FILE]`.

    With --png the picture is written and nothing is shown.
    """
    parser = argparse.ArgumentParser()
    parser.add_argument("--dark", action="store_true")
    parser.add_argument("--scale", type=float, default=1.0)
    parser.add_argument("--wide", action="store_true")
    parser.add_argument("--png")
    chosen = parser.parse_args()
    app = QApplication.instance() or QApplication([])
    assert isinstance(app, QApplication)
    scale = TypeScale(scale=chosen.scale, wide=chosen.wide)
    apply_look(app, Look(theme_for("dark" if chosen.dark else "light"), scale))
    widget = make()
    widget.resize(width, height)
    ring = FocusRing(widget)
    widget.show()
    if chosen.png:
        app.processEvents()
        widget.grab().save(chosen.png)
        ring.stop()
        widget.close()
        return 0
    return app.exec()
