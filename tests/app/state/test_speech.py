from __future__ import annotations

from enum import Enum
from types import SimpleNamespace

import pytest
from PySide6.QtCore import QLocale, QObject

import app.state.speech
from app.state.speech import Speech


class State(Enum):
    Ready = 0
    Error = 1


class Voice(QObject):
    """Stands in for QTextToSpeech."""

    State = State
    engines = ("mock", "broken", "real")

    def __init__(self, name, parent):
        super().__init__(parent)
        self.name, self.said, self._locale = name, [], QLocale("en")

    @classmethod
    def availableEngines(cls):
        return cls.engines

    def state(self):
        return State.Error if self.name == "broken" else State.Ready

    def availableLocales(self):
        return [QLocale("en"), QLocale("es")]

    def locale(self):
        return self._locale

    def setLocale(self, locale):
        self._locale = locale

    def say(self, text):
        self.said.append((text, self._locale.language()))

    def stop(self):
        self.said.append("stop")


def test_the_first_engine_that_works_speaks(qtbot, monkeypatch):
    monkeypatch.setattr(
        app.state.speech, "import_module", lambda name: SimpleNamespace(QTextToSpeech=Voice)
    )
    speech = Speech()
    assert not speech.available
    with qtbot.waitSignal(speech.found):
        speech.look()
    speech.say("Band A is blue.", "es")
    assert speech._voice.name == "real"
    assert speech._voice.said == ["stop", ("Band A is blue.", QLocale.Language.Spanish)]


@pytest.mark.parametrize("engines", [(), ("mock",), ("broken",)])
def test_without_a_voice_nothing_is_offered(qtbot, monkeypatch, engines):
    monkeypatch.setattr(Voice, "engines", engines)
    monkeypatch.setattr(
        app.state.speech, "import_module", lambda name: SimpleNamespace(QTextToSpeech=Voice)
    )
    speech = Speech()
    with qtbot.waitSignal(speech._loading.idle):
        speech.look()
    assert not speech.available
    speech.say("nobody hears this", "en")
    speech.stop()


def test_missing_sound_libraries_are_no_error(qtbot, monkeypatch):
    def fail(name):
        raise ImportError("libpulse.so.0")

    monkeypatch.setattr(app.state.speech, "import_module", fail)
    speech = Speech()
    with qtbot.waitSignal(speech._loading.idle):
        speech.look()
    assert not speech.available
