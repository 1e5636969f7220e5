"""The bar on top where there is little room."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtGui import QAction, QFontMetricsF
from PySide6.QtWidgets import QApplication

from app.look import Look, TypeScale, apply_look
from app.state.language import use_language
from app.widgets.buttons import InkButton
from app.window.header import Header
from app.window.pages import PAGES
from core.i18n import translate

NAME = "Evening over the Linnet Moor and a good deal beyond"


@pytest.fixture
def header(qtbot) -> Header:
    bar = Header(QAction("&Undo"), QAction("&Redo"))
    qtbot.addWidget(bar)
    for tab in ("Read", "Mix", "Sheets", "Worksheet"):
        bar.add_tab(tab)
    bar.resize(1366, bar.height())
    bar.show()
    return bar


def shown(header: Header) -> str:
    return header._title.text()


def test_the_name_gives_way_and_not_the_warning(header) -> None:
    header.show_title(NAME, True)
    assert header.title == f"{NAME}, unsaved"
    texts = []
    least = QFontMetricsF(header._title.font()).horizontalAdvance("unsaved")
    for width in range(1366, 700, -7):
        header.resize(width, header.height())
        if header._title.width() >= least:
            texts.append(shown(header))
    assert texts[0].startswith("Evening over")
    assert all(text.endswith("unsaved") for text in texts)
    assert any(text.endswith("…, unsaved") for text in texts)


def test_no_word_is_cut_where_there_is_hardly_any_room(header) -> None:
    header.show_title(NAME, True)
    metrics = header._title.fontMetrics()
    seen = set()
    for width in range(900, 560, -5):
        header.resize(width, header.height())
        assert metrics.horizontalAdvance(shown(header)) <= max(header._title.width(), 0)
        seen.add(shown(header))
    assert "*" in seen
    assert header._title.accessibleName() == f"{NAME}, unsaved"


def test_a_saved_study_shows_what_there_is_of_its_name(header) -> None:
    header.show_title(NAME, False)
    assert shown(header).startswith("Evening over")
    header.resize(800, header.height())
    assert "unsaved" not in shown(header)
    assert header._title.toolTip() == NAME


@pytest.mark.qt_log_ignore("This plugin does not support", extend=True)
def test_folded_menus_are_behind_a_sign_of_their_size(header, qtbot) -> None:
    sign = header._more
    header.add_button(InkButton("Class view", "class_view", header))
    assert not sign.isVisible()
    header.resize(560, header.height())
    assert sign.isVisible()
    assert min(sign.width(), sign.height()) >= 24
    assert sign.accessibleName() == "More menus"
    sign.click()
    menu = QApplication.activePopupWidget()
    assert menu is not None
    names = [action.text() for action in menu.actions()]
    assert names
    assert names[-1] == "&Help"
    menu.close()


@pytest.fixture
def english() -> Iterator[None]:
    yield
    use_language("en")


@pytest.mark.parametrize("percent", [100, 150])
@pytest.mark.parametrize("language", ["en", "es"])
def test_the_name_can_be_read_in_a_common_window(
    qtbot, qapp, english, percent: int, language: str
) -> None:
    """With the class tab, in large text and long words: a name, and whether it is saved."""
    use_language(language)
    apply_look(qapp, Look(type=TypeScale(percent / 100)))
    bar = Header(QAction("&Undo"), QAction("&Redo"))
    qtbot.addWidget(bar)
    for kind in PAGES:
        bar.add_tab(kind.title())
    bar.add_button(InkButton(translate("window", "Class view"), "class_view", bar))
    bar.resize(1366, bar.height())
    bar.show()
    bar.show_title(NAME, False)
    folded = bar._bar.width(), bar._button.text()
    assert len(shown(bar)) > 8
    bar.show_title(NAME, True)
    warning = translate("header", "{title}, unsaved").format(title="")
    assert shown(bar).endswith(warning)
    name = shown(bar).removesuffix(warning).rstrip("\N{HORIZONTAL ELLIPSIS}")
    assert NAME.startswith(name)
    assert len(name) > 3
    assert (bar._bar.width(), bar._button.text()) == folded, "an edit moved the menus"
