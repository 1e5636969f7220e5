"""In no menu do two entries answer to one letter, in either language, on any page."""

from __future__ import annotations

import re
from collections import Counter

import pytest
from class_set_tools import plain_class_set
from PySide6.QtWidgets import QMenu
from window_tools import wait_for_plan

from app.state.language import LANGUAGES, use_language
from app.window.pages import PAGES

MENUS = ("study", "edit", "view", "help")


@pytest.fixture(params=LANGUAGES)
def spoken(request, qapp, plain_look):
    """Before the window is made."""
    use_language(request.param)
    yield request.param
    use_language("en")


def letters(menu: QMenu) -> list[str]:
    """The letters that a menu's entries answer to."""
    shown = [a.text().replace("&&", "") for a in menu.actions() if a.isVisible()]
    found = [re.search("&(.)", text) for text in shown]
    return [match.group(1).lower() for match in found if match]


def doubled(menu: QMenu, path: str) -> list[str]:
    """Every letter that stands twice in a menu or in one it opens."""
    menu.aboutToShow.emit()  # some are filled only then
    found = [f"{path}: {letter}" for letter, n in Counter(letters(menu)).items() if n > 1]
    for action in menu.actions():
        if action.menu() is not None:
            found += doubled(action.menu(), f"{path} > {action.text()}")
    return found


def test_every_letter_of_a_menu_opens_one_entry(spoken, sky_window, qtbot) -> None:
    wait_for_plan(sky_window, qtbot)
    found, pages = [], []
    for number, kind in enumerate(PAGES):
        sky_window.show_page(number)
        for name in MENUS:
            menu = sky_window.header.menu(name)
            assert len(letters(menu)) >= 3, name
            found += doubled(menu, f"{kind.key} {name}")
        pages.append(kind.key)
    assert found == [], found
    assert pages == ["read", "mix", "sheets", "worksheet", "classset"]


def test_the_menu_bar_itself_too(spoken, sky_window) -> None:
    texts = [sky_window.header.menu(name).title() for name in MENUS]
    found = [re.search("&(.)", text).group(1).lower() for text in texts]
    assert len(set(found)) == len(MENUS), texts


def test_a_doubled_letter_is_found(qapp) -> None:
    menu = QMenu()
    menu.addAction("&Open")
    sub = menu.addMenu("&More")
    sub.addAction("&Paste && go")
    sub.addAction("S&plit")
    assert doubled(menu, "x") == ["x > &More: p"]


def test_with_a_class_set_open_too(spoken, window, qtbot, tmp_path) -> None:
    window.desk.create(tmp_path / "7b", *plain_class_set())
    qtbot.waitUntil(lambda: window.desk.class_set is not None, timeout=20_000)
    window._student.show(0, "sheets")
    qtbot.waitUntil(lambda: window._student.visit.number == 1, timeout=20_000)
    wait_for_plan(window, qtbot)
    found = []
    for number, kind in enumerate(PAGES):
        window.show_page(number)
        for name in MENUS:
            found += doubled(window.header.menu(name), f"{kind.key} {name}")
    assert found == [], found
