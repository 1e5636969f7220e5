"""The application object and its window; imported only once a window is wanted."""

from __future__ import annotations

import gc
import logging
import sys
from concurrent.futures import Future
from pathlib import Path

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication

from app.state.language import spoken_for, use_language
from app.state.settings import load_settings, settings_file
from app.window.window import Window
from core.study_file.opening import FromFile


def run_window(found: Future[FromFile], path: Path | None, sample: str | None) -> int:
    """Show the window with a file whose opening has begun; returns when it is closed.

    Parameters
    ----------
    found : Future of FromFile
    path : Path, optional
        The file it comes from, for the list of recent files.
    sample : str, optional
        The sample scene it is.
    """
    logging.basicConfig(level=logging.WARNING, format="%(name)s: %(message)s")
    app = QApplication(sys.argv[:1])
    app.setApplicationName("gradewash")
    app.setApplicationDisplayName("Gradewash")
    app.setDesktopFileName("gradewash")
    use_language(spoken_for(load_settings(settings_file()).language))
    window = Window()
    collect_again(window)
    window.opener.open_early(found, path, sample)
    window.show()
    if sample is not None:
        window.greet()
    window.files.look_for_unsaved()
    window.warm_up()
    return app.exec()


_START_MS = 5000


def collect_again(window: Window) -> None:
    """Let Python's collector run again once the program has started.

    What is there by then is left out of every later round: it stays until the end.
    """

    def again() -> None:
        if not gc.isenabled():
            gc.freeze()
            gc.enable()

    rest = QTimer(window, singleShot=True, interval=_START_MS)
    rest.timeout.connect(again)
    rest.start()
    window.reader.readings_changed.connect(lambda readings: again() if readings else None)
