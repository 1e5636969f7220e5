"""Found hard in the window and before the class: what is said, drawn, and never shown."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import pytest
from class_set_tools import TAG, made_folder, sheet_jpeg
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QImage, QPainter
from simulator.hard import cells, planted_draw

import app.classset.found_hard as found_hard_module
import app.drawing.classview.hard as hard_drawing
import app.drawing.classview.text as text_drawing
import app.drawing.dots as dots_drawing
from app.classset.found_hard import FoundHardPart
from app.classset.hard_screen import HardScreen
from app.classset.hard_views import Shown
from app.drawing import ink
from app.drawing.dots import DotsView, field_places, paint_dots, stacked
from app.drawing.pyramid import Pyramid
from core.bands.lines import Bands
from core.class_set.bringing import bring_in, files_in
from core.class_set.field_words import cell_sentence, why_silent
from core.class_set.hard import LEAST, found_hard
from core.class_set.spread import Spread, told_apart
from core.class_set.ticket import Ticket

LETTERS = tuple("ABCDE")


def spreads(students: int = 29) -> tuple[tuple[Spread, ...], tuple[Spread, ...]]:
    """First sheets with the planted faults, second ones half as far off."""
    first = planted_draw(7, students)
    second = told_apart(
        [replace(one, gaps=tuple(gap / 2 for gap in one.gaps), told=False) for one in first]
    )
    return first, second


def shown(students: int = 29) -> Shown:
    both = spreads(students)
    sentences = found_hard(*both)
    sky = QImage(60, 50, QImage.Format.Format_RGB32)
    sky.fill(Qt.GlobalColor.blue)
    bands = Bands(0.8, tuple(0.16 * k for k in range(1, 5)))
    silent = "" if sentences else why_silent(*both)
    return Shown("dusk", bands, Pyramid.of(sky), both, sentences, silent)


@pytest.fixture
def screen(qtbot):
    view = HardScreen()
    qtbot.addWidget(view, before_close_func=lambda view: view.hide())
    view.show_class(shown())
    view.resize(1366, 768)
    view.show()
    return view


@pytest.fixture
def part(window, qtbot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> FoundHardPart:
    """The part of a class set with one picture, whose spreads are the planted ones."""
    (tmp_path / "in").mkdir()
    (tmp_path / "in" / "IMG_1.jpg").write_bytes(sheet_jpeg(Ticket(TAG, 1, "1")))
    with made_folder(tmp_path) as folder:
        list(bring_in(folder, files_in([tmp_path / "in"])))
    only = ("A", "B", "C")
    both = tuple(
        tuple(
            one
            for one in each
            if one.letter in only and (one.letter, one.quality) != ("C", "placement")
        )
        for each in spreads()
    )
    monkeypatch.setattr(found_hard_module, "spreads_of", lambda *_: both)
    window.desk.open(tmp_path / "7b")
    qtbot.waitUntil(
        lambda: window.desk.class_set is not None and not window.desk.working, timeout=30_000
    )
    page = window.page("classset")
    made = page.show_part("found_hard")
    assert isinstance(made, FoundHardPart)
    return made


def test_sentences_and_one_thing_to_teach_stand_beside_the_field(part) -> None:
    texts = " ".join(part.said.texts())
    assert "Band A came lighter and duller on" in texts
    assert "it dries lighter than it looks" in texts
    assert len([one for one in part.shown.sentences if one.kind == "step"]) <= 3
    assert "Value of band A, first sheets:" in part.field.accessibleDescription()
    assert part.note.text().startswith("Upper line: first sheets")


def test_f5_shows_the_class_and_escape_comes_back(part, window, qtbot) -> None:
    qtbot.keyClick(window, Qt.Key.Key_F5)
    view = part.screen_of_class
    assert view is not None
    assert view.isVisible()
    assert not window.class_room.is_open
    for _ in range(9):
        qtbot.keyClick(view, Qt.Key.Key_Space)
    assert view.step == view.steps - 1
    qtbot.keyClick(view, Qt.Key.Key_Home)
    assert view.step == -1
    qtbot.keyClick(view, Qt.Key.Key_Escape)
    assert not view.isVisible()
    assert part.button.hasFocus()
    part.button.click()
    assert view.isVisible()
    qtbot.keyClick(view, Qt.Key.Key_F5)
    assert not view.isVisible()


def test_a_class_set_put_away_takes_the_screen_with_it(part, window, qtbot) -> None:
    part.show_to_class()
    window.desk.close()
    qtbot.waitUntil(lambda: window.desk.class_set is None, timeout=30_000)
    assert not part.screen_of_class.isVisible()


def test_nothing_shown_to_the_class_bears_a_code_or_a_mark(screen) -> None:
    """Numbers are counts of sheets alone: none is larger than the class."""
    for step in range(-1, screen.steps):
        screen.step = step
        screen._changed()
        said = screen.accessibleName()
        assert "7b" not in said
        assert all(int(number) <= 29 for number in re.findall(r"\d+", said))


@pytest.mark.parametrize("size", [(1366, 768), (1920, 1080), (1024, 768), (1280, 1024)])
def test_words_are_large_and_stay_on_the_screen(screen, size, monkeypatch) -> None:
    """4 % of the height, as in the class view; only a way or a number may shrink to its place."""
    drawn: list[tuple[str, float, float, float, float]] = []

    def record(painter, centre, text, size, colour, weight=ink.FIRST, *, align=0.5) -> None:
        left = centre.x() - align * ink.text_size(text, size, weight)[0]
        drawn.append((text, size, left, left + ink.text_size(text, size, weight)[0], centre.y()))

    for module in (hard_drawing, text_drawing, dots_drawing):
        monkeypatch.setattr(module, "draw_text", record)
    screen.resize(*size)
    for step in range(-1, screen.steps):
        drawn.clear()
        screen.step = step
        screen.grab()
        assert drawn
        for text, px, left, right, y in drawn:
            assert 0 <= left <= right <= size[0], text
            assert 0.5 * px <= y <= size[1] - 0.5 * px, text
            small = step < 0 and len(text) < 14
            assert px >= (0.02 if small else 0.0399) * size[1], text


def test_keys_and_mouse_go_through_it(screen, qtbot) -> None:
    assert screen.steps >= 3
    assert screen.hint == "Space: next"
    qtbot.mouseClick(screen, Qt.MouseButton.LeftButton)
    qtbot.keyClick(screen, Qt.Key.Key_Right)
    assert screen.step == 1
    assert screen.shown.sentences[1].text in screen.accessibleName()
    qtbot.mouseClick(screen, Qt.MouseButton.RightButton)
    qtbot.keyClick(screen, Qt.Key.Key_Left)
    assert screen.step == -1
    screen.step = screen.steps - 1
    assert screen.hint == "Esc: leave"
    with qtbot.waitSignal(screen.left):
        screen.close()


def test_a_small_class_gets_counts_and_a_reason(screen) -> None:
    few = shown(LEAST - 1)
    screen.show_class(few)
    screen.begin()
    assert few.sentences == ()
    assert "there are only counts" in screen.accessibleName()
    assert screen.steps == 0
    screen.grab()


def test_why_nothing_is_said() -> None:
    nobody: tuple[Spread, ...] = ()
    assert "No sheet has been checked" in why_silent(nobody, nobody)
    few = told_apart([Spread("A", "value", (2.0, 2.0, 3.0))])
    assert "fewer than 8" in why_silent(few, nobody)
    even = told_apart([Spread("A", "value", (-2.0,) * 10 + (2.0,) * 10)])
    assert "nothing to teach to all" in why_silent(even, nobody)


def test_a_cell_in_words() -> None:
    one = Spread("C", "placement", (-2.0, -1.5, 0.3, 0.5, 3.0))
    said = cell_sentence(one, 1)
    assert said == "Line below C, second sheets: 2 of 5 match; 2 too high; 1 too low."


gaps_beside = st.lists(st.floats(1.001, 12.0), max_size=60).map(sorted)


@given(gaps_beside, st.floats(20, 300), st.floats(8, 200))
def test_every_sheet_has_a_dot_of_its_own_and_none_overtakes(gaps, room, height) -> None:
    radius = dots_drawing._radius(gaps, room, height)
    places = stacked(gaps, room, height, radius)
    assert places is not None
    assert len(places) == len(gaps) == len(set(places))
    columns = [column for column, _ in places]
    assert columns == sorted(columns)
    for column, level in places:
        assert 0 <= 2 * radius * (column + 1) <= room * (1 + 1e-9)
        assert 0 <= 2 * radius * (level + 1) <= height


def test_dots_lie_beside_the_field_and_within_their_line(qapp) -> None:
    image = QImage(400, 60, QImage.Format.Format_Grayscale8)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    view = DotsView((0.2,) * 5 + (2.0,) * 40, "5", True, False, 12.0, "#000000", "#dcdcdc")
    paint_dots(painter, QRectF(50, 10, 300, 40), view)
    painter.end()
    left = {image.pixelColor(x, y).value() for x in range(51, 160) for y in range(12, 44)}
    right = {image.pixelColor(x, y).value() for x in range(245, 340) for y in range(12, 44)}
    assert min(left) > 200
    assert min(right) < 20


def test_the_field_has_every_cell_once_and_none_overlaps(qapp) -> None:
    from app.classset.hard_views import field_view
    from app.look.theme import DARK

    view = field_view(shown(), DARK, 15, 13)
    assert {key[:2] for key in view.lines} == {
        (LETTERS.index(letter), k)
        for k, quality in enumerate(("hue", "value", "intensity", "placement"))
        for letter, other in cells()
        if other == quality
    }
    places = field_places(QRectF(0, 0, 800, 500), view)
    flat = [cell for row in places.cells for cell in row] + [*places.heads, places.tongue]
    for number, one in enumerate(flat):
        assert QRectF(0, 0, 800, 500).adjusted(-1, -1, 1, 20).contains(one)
        assert not any(one.intersects(other) for other in flat[:number])
