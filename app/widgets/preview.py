"""What every module's `__main__` preview shares: a window in a chosen look."""

from __future__ import annotations

import argparse
from collections.abc import Callable

from PySide6.QtWidgets import QApplication, QWidget

from app.look import Look, TypeScale, apply_look, theme_for
from app.widgets.focus import FocusRing


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
