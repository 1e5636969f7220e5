"""The window in Spanish: nothing cut off, nothing left in English, the lesson on one screen."""

from __future__ import annotations

from itertools import combinations
from pathlib import Path

import pytest
import walk
from card_tools import (
    filled_worksheet,
    findings_data,
    outside,
    overlaps,
    plan_data,
    wish_of,
    with_worksheet,
)
from class_tools import SCREENS, texts_of
from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QApplication, QLabel, QMenu
from sheet_tools import add_sheet, open_sky, painted, wait_for_checks
from walk import KEYS, show

from app.cards.choice import CardChoice
from app.cards.dialog import CardDialog
from app.cards.findings import lay_out_findings
from app.cards.paper import PAPERS
from app.cards.plan import lay_out_plan
from app.cards.worksheet import lay_out_worksheet
from app.files import files_ask
from app.guide.chapters import chapters
from app.guide.window import GuideWindow
from app.mix.own_paint import OwnPaintDialog
from app.state.language import language_in_use, spoken_for, use_language
from app.state.settings import Preferences, load_settings, settings_file
from app.window.preferences_window import PreferencesWindow
from core.colour import srgb_to_Lab
from core.lesson.lesson import QUESTIONS
from core.reading.reading import BandReading, read_colours
from core.reading.wheel import FAMILIES
from core.reading.wording import Wording
from core.sheet.findings.words import quality_word
from core.words import band_sentence, family_name
from core.words.lists import listed


@pytest.fixture(autouse=True)
def spanish(qapp, plain_look):
    use_language("es")
    yield
    use_language("en")


def test_it_is_spoken_at_once_by_core_and_by_qt():
    assert language_in_use() == "es"
    assert family_name("yellow-orange") == "amarillo-naranja"
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Cancelar"
    use_language("en")
    assert language_in_use() == "en"
    assert family_name("yellow-orange") == "yellow-orange"


def test_every_hue_has_a_name_of_its_own():
    names = {family_name(family) for family in FAMILIES}
    assert len(names) == 12
    assert names.isdisjoint(FAMILIES)


def test_a_band_is_said_in_one_correct_sentence():
    (colour,) = read_colours(srgb_to_Lab([[64 / 255, 88 / 255, 170 / 255]]))
    reading = BandReading("A", 0.0, 0.5, colour, colour, colour, colour, 1.0, False, 0.0, 1)
    said = band_sentence(reading, Wording())
    assert said.startswith("El color de la banda A es azul")
    assert "de valor" in said


def test_and_before_an_i_is_another_word():
    words = [quality_word(quality) for quality in ("hue", "value", "intensity")]
    assert listed(words) == "matiz, valor e intensidad"
    assert listed(words[:2]) == "matiz y valor"
    assert listed(["A", "B", "C"]) == "A, B y C"
    assert listed(["ocre", "índigo"]) == "ocre e índigo"
    assert listed(["zinc", "hierro"]) == "zinc y hierro"


@pytest.mark.parametrize("percent", [100, 150])
@pytest.mark.parametrize("key", KEYS)
def test_no_text_is_cut_off(sky_window, qtbot, key, percent):
    show(sky_window, qtbot, key, percent)
    walk.assert_whole(sky_window, qtbot)


@pytest.mark.parametrize("key", KEYS)
def test_a_page_fits_a_small_screen_without_scrolling(sky_window, qtbot, key):
    show(sky_window, qtbot, key)
    page = sky_window.page(key)
    # What is laid out anew takes a turn or two of the event loop.
    qtbot.waitUntil(lambda: page.height() <= page.parentWidget().height())


@pytest.mark.parametrize("key", KEYS)
def test_keys_of_a_menu_differ(sky_window, qtbot, key):
    show(sky_window, qtbot, key)
    for menu in sky_window.findChildren(QMenu):
        menu.aboutToShow.emit()
        letters = [
            text[text.index("&") + 1].lower()
            for text in (action.text() for action in menu.actions() if action.isVisible())
            if "&" in text
        ]
        assert len(set(letters)) == len(letters), [action.text() for action in menu.actions()]


def nothing(*_):
    return None


QUESTIONS_ASKED = {
    "unsaved": lambda window: files_ask.ask_unsaved(window, "Un cielo", nothing, nothing),
    "changed": lambda window: files_ask.ask_changed_on_disk(window, "cielo", nothing, nothing),
    "elsewhere": lambda window: files_ask.ask_open_elsewhere(window, "cielo", nothing, nothing),
    "title": lambda window: files_ask.ask_title(window, "Un cielo", nothing),
    "keep box": lambda window: window.page("mix").box_edits.menu.keep(),
    "own paint": lambda window: OwnPaintDialog(nothing, window).open(),
}


@pytest.mark.parametrize("percent", [100, 150])
@pytest.mark.parametrize("ask", QUESTIONS_ASKED.values(), ids=QUESTIONS_ASKED)
def test_questions_are_whole(window, qtbot, ask, percent):
    window.preferences.set(text_percent=percent)
    ask(window)
    qtbot.waitUntil(lambda: QApplication.activeModalWidget() is not None)
    dialog = QApplication.activeModalWidget()
    qtbot.wait(0)
    walk.assert_whole(dialog, qtbot)
    dialog.close()


@pytest.mark.parametrize("percent", [100, 150])
def test_the_plan_and_the_cards_dialog_are_whole(sky_window, qtbot, percent):
    show(sky_window, qtbot, "mix", percent)
    sky_window.page("mix").show_plan(True)
    qtbot.wait(0)
    walk.assert_whole(sky_window, qtbot)
    dialog = CardDialog(sky_window, wish_of(plan_data(5)), CardChoice(), Path("."))
    qtbot.addWidget(dialog)
    dialog.show()
    qtbot.waitUntil(lambda: not dialog.working, timeout=10_000)
    walk.assert_whole(dialog, qtbot)
    dialog.close()


@pytest.mark.parametrize("percent", [100, 150])
def test_setting_corners_is_whole(window, qtbot, tmp_path, percent):
    window.preferences.set(text_percent=percent)
    open_sky(window, tmp_path, qtbot)
    page = window.page("sheets")
    add_sheet(window, 0, painted())
    wait_for_checks(window, qtbot)
    walk.assert_whole(window, qtbot)
    page.set_corners(0)
    walk.assert_whole(page.corners.editor, qtbot)


@pytest.mark.parametrize("percent", [100, 150])
def test_preferences_are_whole(window, qtbot, percent):
    window.preferences.set(text_percent=percent)
    dialog = PreferencesWindow(window.preferences)
    qtbot.addWidget(dialog)
    dialog.show()
    qtbot.wait(0)
    walk.assert_whole(dialog, qtbot)
    dialog.close()


def test_the_language_chosen_is_spoken_from_the_next_start(window, qtbot, tmp_path):
    preferences = Preferences(tmp_path / "own")
    dialog = PreferencesWindow(preferences)
    qtbot.addWidget(dialog)
    dialog.show()
    notes = [label.text() for label in dialog.findChildren(QLabel)]
    assert "El idioma cambia la próxima vez que abras el programa." in notes
    preferences.set(language="en")
    assert language_in_use() == "es"  # not yet
    use_language(spoken_for(load_settings(settings_file(tmp_path / "own")).language))
    assert language_in_use() == "en"
    dialog.close()


def test_the_guide_says_all_in_spanish(qtbot):
    titles = [chapter.title for chapter in chapters()]
    use_language("en")
    english = [chapter.title for chapter in chapters()]
    assert not set(titles) & set(english)
    use_language("es")
    guide = GuideWindow(Wording())  # it deletes itself when it is closed
    guide.show()
    walk.assert_whole(guide, qtbot)
    guide.close()


@pytest.mark.parametrize("paper", PAPERS.values(), ids=PAPERS)
def test_cards_keep_their_pages_and_overlap_nowhere(paper):
    filled = with_worksheet(plan_data(7), filled_worksheet())
    cards = [
        *((lay_out_plan(plan_data(count), paper), 1) for count in (1, 3, 5, 7)),
        (lay_out_worksheet(plan_data(7), paper, blank=True), 2),
        (lay_out_worksheet(filled, paper), 2),
        (lay_out_findings(findings_data(), paper), 1),
    ]
    for pages, count in cards:
        assert len(pages) == count
        for page in pages:
            assert overlaps(page) == []
            assert outside(page) == []


@pytest.mark.parametrize("size", SCREENS)
def test_the_lesson_is_on_the_screen(make_view, drawn, size):
    view = make_view(size=size)
    for _ in range(len(QUESTIONS) + 1):
        inside(texts_of(view, drawn), size)
        view.run("answer")
    for command in ("tally", "keys"):
        view.run(command)
        inside(texts_of(view, drawn), size)
    view.run("keys")
    for command in ("tally", "over"):
        view.run(command)
    inside(texts_of(view, drawn), size)
    for _ in view.pacing.steps:
        view.run("step on")
        inside(texts_of(view, drawn), size)
    view.run("paint")
    inside(texts_of(view, drawn), size)


def inside(texts, size):
    """Every text is on the screen, and no two of those on the right are over each other."""
    for text, height, left, right, y in texts:
        assert left >= 0, text
        assert right <= size[0], text
        assert height / 2 <= y <= size[1] - height / 2, text
    column = [text for text in texts if text[2] > size[0] / 2]
    for (text, height, left, right, y), (other, size_of, start, end, at) in combinations(column, 2):
        beside = right <= start or end <= left
        higher = height if y < at else size_of
        assert beside or y == pytest.approx(at) or abs(at - y) > 0.7 * higher, (text, other)
