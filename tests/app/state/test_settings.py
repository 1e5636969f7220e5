from __future__ import annotations

import json
from dataclasses import fields
from pathlib import Path

import pytest

from app.files.recent import MOST, Recent
from app.state.settings import (
    _CHOICES,
    Preferences,
    Settings,
    config_folder,
    load_settings,
    save_settings,
)


def test_round_trip(tmp_path: Path) -> None:
    settings = Settings(tertiary="intermediate", white_is=0, theme="dark", text_percent=150)
    save_settings(settings, tmp_path / "deep" / "settings.json")
    assert load_settings(tmp_path / "deep" / "settings.json") == settings


def test_missing_file_gives_defaults(tmp_path: Path) -> None:
    assert load_settings(tmp_path / "none.json") == Settings()


@pytest.mark.parametrize(
    "text",
    [
        "",
        "[1, 2]",
        "{",
        '{"theme": "pink"}',
        '{"text_percent": "150"}',
        '{"white_is": true}',
        "\xff",
        '{"theme": ["dark"]}',
    ],
)
def test_damaged_file_gives_defaults(tmp_path: Path, text: str) -> None:
    path = tmp_path / "settings.json"
    path.write_bytes(text.encode("latin-1"))
    assert load_settings(path) == Settings()


def test_newer_file_keeps_what_is_understood(tmp_path: Path) -> None:
    path = tmp_path / "settings.json"
    path.write_text(json.dumps({"version": 99, "theme": "dark", "unheard_of": 1}))
    assert load_settings(path) == Settings(theme="dark")


def test_every_setting_has_its_choices_and_a_default_among_them() -> None:
    assert {field.name for field in fields(Settings)} == set(_CHOICES)
    assert all(getattr(Settings(), name) in choices for name, choices in _CHOICES.items())


def test_preferences_tell_and_keep(tmp_path: Path, qtbot) -> None:
    preferences = Preferences(tmp_path)
    with qtbot.waitSignal(preferences.changed) as told:
        preferences.set(theme="dark")
    assert told.args == [Settings(), Settings(theme="dark")]
    assert Preferences(tmp_path).settings.theme == "dark"
    with pytest.raises(ValueError, match="theme"):
        preferences.set(theme="pink")


def test_configuration_lies_in_the_tests_own_home(own_home: Path) -> None:
    assert own_home in config_folder().parents


def test_recent_newest_first_without_those_gone(tmp_path: Path) -> None:
    recent = Recent(tmp_path)
    photos = [tmp_path / f"{i}.jpg" for i in range(MOST + 3)]
    for photo in photos:
        photo.touch()
        recent.add(photo)
    recent.add(photos[5])
    assert recent.paths()[0] == photos[5]
    assert len(recent.paths()) == MOST
    photos[5].unlink()
    assert photos[5] not in recent.paths()
    recent.clear()
    assert recent.paths() == ()
