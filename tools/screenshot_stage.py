"""What the scenes of `tools.screenshots` act on: a window of a size and a look, and helpers."""

from __future__ import annotations

import itertools
import os
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QEventLoop, QTimer
from PySide6.QtWidgets import QApplication, QWidget

from app.state.language import LANGUAGES, use_language
from app.state.settings import Preferences
from app.state.tasks import wait_for_tasks
from app.window.pages import PAGES
from app.window.window import Window
from app.workspace import Page

LIMIT_S = 60
"""Work that takes longer has come to a stop: the picture is taken all the same, and told."""


@dataclass(frozen=True)
class Variation:
    """One way of showing the window."""

    size: tuple[int, int]
    theme: str
    text_percent: int
    language: str

    @property
    def name(self) -> str:
        """Part of the file's name."""
        return f"{self.size[0]}_{self.theme}_{self.text_percent}_{self.language}"


PLAIN = Variation((1366, 768), "light", 100, "en")
WIDE = Variation((1920, 1080), "dark", 100, "en")
LARGE_TEXT = Variation((1366, 768), "dark", 150, "en")
EVERY = tuple(
    Variation(*values)
    for values in itertools.product(
        ((1366, 768), (1920, 1080)), ("light", "dark"), (100, 150), LANGUAGES
    )
)


class Stage:
    """A window for a scene to act on."""

    def __init__(self, variation: Variation, folder: Path) -> None:
        use_language(variation.language)
        Preferences(folder).set(theme=variation.theme, text_percent=variation.text_percent)
        self.folder, self.size = folder, variation.size
        self.window = Window(folder)
        self.window.resize(*variation.size)
        self.window.show()
        self.process()

    def process(self, ms: int = 30) -> None:
        """Let the window live for a moment."""
        loop = QEventLoop()
        QTimer.singleShot(ms, loop.quit)
        loop.exec()

    def settle(self) -> None:
        """Until nothing works in the background any more."""
        window, quiet = self.window, 0
        for _ in range(int(LIMIT_S / 0.03)):
            self.process()
            working = any(
                getattr(getattr(window, name, None), "working", False)
                for name in ("reader", "planner", "checker", "files")
            )
            busy = working or not wait_for_tasks(0)
            quiet = 0 if busy else quiet + 1
            if quiet >= 4:
                return
        print(f"still working after {LIMIT_S} s", file=sys.stderr)

    def open(self, path: Path) -> None:
        """Open a photo or a study."""
        self.window.opener.open_path(path)
        self.settle()

    def open_sample(self, name: str) -> None:
        """Open one of the sample skies."""
        self.window.opener.open_sample(name)
        self.settle()

    def page(self, key: str) -> Page:
        """Show a page."""
        page = self.window.page(key)
        self.window.show_page(next(i for i, kind in enumerate(PAGES) if kind.key == key))
        self.settle()
        return page

    def close(self) -> None:
        """Take the window down without questions, what is open above it first."""
        while (popup := QApplication.activePopupWidget()) is not None:
            popup.close()
        self.window.document.stack.setClean()
        self.window.close()
        for _ in range(200):  # a class set is saved first
            if not self.window.isVisible():
                break
            self.process()
        self.window.deleteLater()
        self.process()


Act = Callable[[Stage], QWidget | None]
"""Brings the window into a state; gives the widget to take, None for the whole window."""

SCENES: dict[str, tuple[Act, tuple[Variation, ...]]] = {}


def scene(*variations: Variation) -> Callable[[Act], Act]:
    """Make a function a scene: its name is the picture's."""

    def keep(act: Act) -> Act:
        SCENES[act.__name__] = (act, variations or (PLAIN, WIDE, LARGE_TEXT))
        return act

    return keep
