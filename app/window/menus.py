"""Fills the menus with what belongs to the window as a whole."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu

import sample_scenes
from app.files.opening import Opener
from app.files.study_files import StudyFiles
from app.state.settings import TEXT_SIZES, Preferences
from app.widgets.actions import make_action
from core.file_sentences import shown_name
from core.i18n import translate
from core.reading.percent import percent_text


def fill_study_menu(
    menu: QMenu,
    opener: Opener,
    files: StudyFiles,
    ask_title: Callable[[], object],
    quit_program: Callable[[], object],
    choose_sky: Callable[[], object],
) -> QAction:
    """New, open, save, quit; gives the action before which a page's own actions stand."""
    keys = QKeySequence.StandardKey
    menu.addAction(make_action(menu, translate("menu", "&New study"), files.new, keys.New))
    again = make_action(menu, translate("menu", "New &lesson from this one"), files.new_from_this)
    menu.addAction(again)
    menu.addAction(make_action(menu, translate("menu", "&Open..."), opener.choose, keys.Open))
    recent = menu.addMenu(translate("menu", "Open &recent"))
    menu.aboutToShow.connect(lambda: _list_recent(recent, opener))
    samples = menu.addMenu(translate("menu", "Sample s&kies"))
    for name in sample_scenes.names():
        title = sample_scenes.title(name)
        samples.addAction(make_action(samples, title, partial(opener.open_sample, name)))
    menu.addAction(make_action(menu, translate("menu", "C&hoose a sky..."), choose_sky))
    menu.addSeparator()
    menu.addAction(make_action(menu, translate("menu", "&Save"), files.save, keys.Save))
    menu.addAction(
        make_action(menu, translate("menu", "Save &as..."), files.save_as, "Ctrl+Shift+S")
    )
    menu.addAction(make_action(menu, translate("menu", "Rena&me the study..."), ask_title))
    mark = menu.addSeparator()
    menu.addAction(make_action(menu, translate("menu", "&Quit"), quit_program, keys.Quit))
    return mark


def _list_recent(menu: QMenu, opener: Opener) -> None:
    menu.clear()
    paths = opener.recent.paths()
    for path in paths:
        # An ampersand in a file name is no key.
        name = shown_name(path).replace("&", "&&")
        action = make_action(menu, name, partial(opener.open_path, path))
        action.setToolTip(str(path))
        menu.addAction(action)
    menu.setEnabled(bool(paths))
    if paths:
        menu.addSeparator()
        menu.addAction(make_action(menu, translate("menu", "Forget these"), opener.recent.clear))


def fill_look_menus(menu: QMenu, preferences: Preferences) -> None:
    """Theme, text size, and the class's own words and scale."""
    _choices(
        menu.addMenu(translate("menu", "&Theme")),
        preferences,
        "theme",
        (
            ("system", translate("menu", "As the system")),
            ("light", translate("menu", "Light")),
            ("dark", translate("menu", "Dark")),
        ),
    )
    _choices(
        menu.addMenu(translate("menu", "Te&xt size")),
        preferences,
        "text_percent",
        tuple((size, percent_text(size)) for size in TEXT_SIZES),
    )
    _choices(
        menu.addMenu(translate("menu", "Value sca&le")),
        preferences,
        "white_is",
        (
            (10, translate("menu", "10 is white")),
            (0, translate("menu", "0 is white")),
        ),
    )
    _choices(
        menu.addMenu(translate("menu", "&Word for the six mixed hues")),
        preferences,
        "tertiary",
        (
            ("tertiary", translate("menu", "Tertiary")),
            ("intermediate", translate("menu", "Intermediate")),
        ),
    )


def _choices(
    menu: QMenu, preferences: Preferences, name: str, options: tuple[tuple[object, str], ...]
) -> None:
    group = QActionGroup(menu)
    actions: dict[object, QAction] = {}
    for value, text in options:
        action = make_action(menu, text, partial(_set, preferences, name, value))
        action.setCheckable(True)
        group.addAction(action)
        menu.addAction(action)
        actions[value] = action

    def follow() -> None:
        actions[getattr(preferences.settings, name)].setChecked(True)

    preferences.changed.connect(lambda before, after: follow())
    follow()


def _set(preferences: Preferences, name: str, value: object) -> None:
    preferences.set(**{name: value})
