"""Reading aloud, where the system has a voice; where it has none, nobody offers it."""

from __future__ import annotations

import logging
from importlib import import_module
from typing import Any

from PySide6.QtCore import QLocale, QObject, QTimer, Signal

from app.state.tasks import Latest
from core.progress import Progress, ShouldStop

log = logging.getLogger(__name__)

LOOK_AFTER_MS = 1500
"""A voice is looked for once the window has settled: sound libraries load slowly."""

_MODULE = "PySide6.QtTextToSpeech"
_SILENT = ("mock",)
"""Engines that only pretend: Qt ships one for its own tests."""


class Speech(QObject):
    """Says sentences.

    Signals
    -------
    found()
        There is a voice; before this signal `available` is False.
    """

    found = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._voice: Any = None
        self._loading = Latest(self)
        self._timer = QTimer(self, singleShot=True, interval=LOOK_AFTER_MS)
        self._timer.timeout.connect(self.look)

    @property
    def available(self) -> bool:
        """Whether there is a voice."""
        return self._voice is not None

    def look_soon(self) -> None:
        """Look for a voice a little later."""
        self._timer.start()

    def look(self) -> None:
        """Look for a voice now, in a worker."""
        self._loading.run(_load, self._take)

    def say(self, text: str, language: str) -> None:
        """Say `text` instead of what is being said; `language` as in "en" or "es"."""
        if self._voice is None:
            return
        self._voice.stop()
        wanted = QLocale(language)
        if self._voice.locale().language() != wanted.language():
            self._voice.setLocale(wanted)
        self._voice.say(text)

    def stop(self) -> None:
        """Be quiet."""
        if self._voice is not None:
            self._voice.stop()

    def _take(self, module: Any) -> None:
        if module is not None:
            self._voice = make_voice(module, self)
        if self.available:
            self.found.emit()


def _load(progress: Progress, should_stop: ShouldStop) -> Any:
    try:
        return import_module(_MODULE)
    except ImportError as error:  # the system lacks the sound libraries
        log.info("no speech: %s", error)
        return None


def make_voice(module: Any, parent: QObject) -> Any:
    """A voice of the first engine that has one; None when there is none.

    Parameters
    ----------
    module
        `PySide6.QtTextToSpeech`, or what stands in for it.
    """
    engines = module.QTextToSpeech
    for name in engines.availableEngines():
        if name in _SILENT:
            continue
        voice = engines(name, parent)
        if voice.state() != engines.State.Error and voice.availableLocales():
            return voice
        voice.deleteLater()
    return None
