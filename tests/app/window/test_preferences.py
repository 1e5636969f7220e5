"""The preferences window: every choice at once, by mouse and by keyboard."""

from __future__ import annotations

import json
from dataclasses import fields

import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QApplication, QLabel, QRadioButton

from app.cards.paper import A4, LETTER
from app.look import look
from app.state.language import LANGUAGES, spoken_for, system_language
from app.state.settings import _CHOICES, Preferences, Settings, load_settings, settings_file
from app.window.preferences_window import PreferencesWindow


@pytest.fixture
def preferences(tmp_path) -> Preferences:
    return Preferences(tmp_path)


@pytest.fixture
def dialog(preferences, qtbot) -> PreferencesWindow:
    dialog = PreferencesWindow(preferences)
    with qtbot.waitExposed(dialog):
        dialog.show()
    dialog.activateWindow()
    yield dialog
    dialog.close()


def segment(dialog, name: str, key: str) -> QRadioButton:
    return dialog.controls[name]._segments[key]


def test_every_setting_and_every_choice_has_its_place(dialog) -> None:
    assert set(dialog.controls) == {field.name for field in fields(Settings)}
    for name, choices in _CHOICES.items():
        assert list(dialog.controls[name]._segments) == [str(choice) for choice in choices]


def test_it_shows_what_is_set(preferences, dialog) -> None:
    for name, control in dialog.controls.items():
        assert control.current == str(getattr(preferences.settings, name))
    preferences.set(units="in", white_is=0)
    assert dialog.controls["units"].current == "in"
    assert dialog.controls["white_is"].current == "0"


def test_each_choice_is_kept_at_once(preferences, dialog, qtbot, tmp_path) -> None:
    for name, choices in _CHOICES.items():
        for choice in (*choices[1:], choices[0]):
            qtbot.mouseClick(segment(dialog, name, str(choice)), Qt.MouseButton.LeftButton)
            assert getattr(preferences.settings, name) == choice
            assert type(getattr(preferences.settings, name)) is type(choice)
            assert load_settings(settings_file(tmp_path)) == preferences.settings


def test_the_keyboard_reaches_everything(preferences, dialog, qtbot) -> None:
    qtbot.waitUntil(dialog.isActiveWindow)
    seen = []
    for _ in range(30):
        at = QApplication.focusWidget()
        if at in seen:
            break
        seen.append(at)
        assert at.accessibleName() or at.text()
        qtbot.keyClick(at, Qt.Key.Key_Tab)
    groups = [widget.parentWidget() for widget in seen if isinstance(widget, QRadioButton)]
    assert groups == list(dialog.controls.values())
    assert dialog.close_button in seen
    units = segment(dialog, "units", "system")
    units.setFocus()
    qtbot.keyClick(units, Qt.Key.Key_Right)
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Right)
    assert preferences.settings.units == "in"
    assert preferences.settings.wording.units == "in"


def test_escape_closes_it(preferences, qtbot) -> None:
    dialog = PreferencesWindow(preferences)
    with qtbot.waitExposed(dialog):
        dialog.show()
    with qtbot.waitSignal(dialog.closed):
        qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    preferences.set(units="in")  # nothing listens any more


def test_the_window_opens_one_and_follows_it(window, qtbot) -> None:
    edit = window.header.menu("edit")
    action = next(a for a in edit.actions() if a.text().replace("&", "") == "Preferences...")
    assert action.shortcut() == QKeySequence("Ctrl+,")
    action.trigger()
    shown = window.preferences_control.shown
    action.trigger()
    assert window.preferences_control.shown is shown
    qtbot.mouseClick(segment(shown, "theme", "dark"), Qt.MouseButton.LeftButton)
    assert look().theme.name == "dark"
    qtbot.mouseClick(segment(shown, "text_percent", "150"), Qt.MouseButton.LeftButton)
    assert look().type.scale == 1.5
    qtbot.mouseClick(shown.close_button, Qt.MouseButton.LeftButton)
    assert window.preferences_control.shown is None


def test_value_steps_are_those_of_the_class(sky_window, qtbot) -> None:
    page = sky_window.page("read")
    sky_window.preferences.set(value_steps=9)
    assert page.view_key == "colour"  # nothing changes until steps are looked at
    page.controls._choose_view("steps")
    assert page.view_key == "steps 9"
    sky_window.preferences.set(value_steps=3)
    assert page.view_key == "steps 3"


@pytest.mark.parametrize("percent", [100, 150, 200])
def test_no_word_is_cut(preferences, qtbot, window, percent) -> None:
    window.preferences.set(text_percent=percent)
    window.preferences_control.show()
    dialog = window.preferences_control.shown
    qtbot.waitUntil(dialog.isVisible)
    for widget in (*dialog.findChildren(QLabel), *dialog.controls.values()):
        if widget.parent() is not dialog:
            assert widget.width() >= widget.sizeHint().width()
            assert widget.height() >= widget.sizeHint().height()
    dialog.close()


@pytest.mark.parametrize(
    ("country", "units", "paper"),
    [("en_US", "in", "letter"), ("en_GB", "cm", "a4"), ("es_ES", "cm", "a4"), ("C", "cm", "a4")],
)
def test_the_system_s_country_decides_where_nothing_is_chosen(monkeypatch, country, units, paper):
    monkeypatch.setattr(QLocale, "system", lambda: QLocale(country))
    assert (Settings().shown_units, Settings().card_paper) == (units, paper)
    chosen = Settings(units="in", paper="letter")
    assert (chosen.shown_units, chosen.card_paper) == ("in", "letter")


def test_cards_and_mix_follow_at_once(sky_window, qtbot) -> None:
    sky_window.preferences.set(units="cm", paper="a4")
    page = sky_window.page("mix")
    qtbot.waitUntil(lambda: sky_window.planner.plan is not None, timeout=30_000)

    def line() -> str:
        return page.plan_bar.findChild(QLabel).text()

    assert "27.7 × 19 cm" in line()
    assert sky_window.cards._choice.paper is A4
    sky_window.preferences.set(units="in", paper="letter")
    assert "10 7/8 × 7 1/2 in" in line()
    assert sky_window.cards._choice.paper is LETTER


def test_a_language_is_a_code_or_the_system(tmp_path) -> None:
    assert spoken_for("es") == "es"
    assert spoken_for("system") == system_language()
    assert set(_CHOICES["language"]) == {"system", *LANGUAGES}
    settings_file(tmp_path).write_text(json.dumps({"language": "tlh"}))
    assert load_settings(settings_file(tmp_path)).language == "system"
