"""Reading aloud, where the system has a voice; where it has none, nobody offers it."""

from __future__ import annotations

import logging
from typing import Any

from PySide6.QtCore import QLocale, QObject

log = logging.getLogger(__name__)

_SILENT = ("mock",)
"""Engines that only pretend: Qt ships one for its own tests."""


class Speech(QObject):
    """Says sentences; made once, when a voice is first looked for."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._voice: Any = None
        self._looked = False

    @property
    def available(self) -> bool:
        """Whether there is a voice."""
        if not self._looked:
            self._looked = True
            self._voice = _find_voice(self)
        return self._voice is not None

    def say(self, text: str, language: str) -> None:
        """Say `text` instead of what is being said; `language` as in "en" or "es"."""
        if not self.available:
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


def _find_voice(parent: QObject) -> Any:
    try:
        # Where the system lacks the sound libraries this import alone fails.
        from PySide6.QtTextToSpeech import QTextToSpeech  # deferred: start-up time

        engines = [name for name in QTextToSpeech.availableEngines() if name not in _SILENT]
        if not engines:
            return None
        voice = QTextToSpeech(engines[0], parent)
        if voice.state() == QTextToSpeech.State.Error or not voice.availableLocales():
            return None
    except ImportError as error:
        log.info("no speech: %s", error)
        return None
    return voice
