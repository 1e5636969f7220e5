"""A scrap on the Mix page: brought, corrected by mouse and keys, held, kept and undone."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from own_paint_tools import KEY, TRUE, WRONG
from PIL import Image
from PySide6.QtCore import QMimeData, QPoint, Qt, QUrl
from PySide6.QtGui import QImage
from window_tools import wait_for_plan

from app.mix.page import MixPage
from app.window.pages import PAGES
from core import mixing
from core.paint.mixture.mix import make_mix
from core.reading.reading import read_colour

LEFT = Qt.MouseButton.LeftButton
STROKES = 3


@pytest.fixture
def page(sky_window, qtbot) -> MixPage:
    wait_for_plan(sky_window, qtbot)
    sky_window.show_page(next(i for i, kind in enumerate(PAGES) if kind.key == "mix"))
    page = sky_window.page("mix")
    assert isinstance(page, MixPage)
    page.window_ = sky_window
    page.rows.detail.stages._segments["scrap"].click()
    return page


@pytest.fixture
def picture(page, tmp_path) -> Path:
    """Strokes of the mixes of bands A, B and D, their first paint one part too many."""
    plan = page.window_.planner.plan
    pixels = np.full((300, 460, 3), 226, np.uint8)
    for number, letter in enumerate("ABD"):
        mix = plan.band(letter).classroom.mix
        (key, count), *rest = mix.parts
        parts = {key: 2 * count + 1, **{other: 2 * some for other, some in rest}}
        wash = make_mix(plan.box, parts, 1.1 * mix.load_ml)
        x = 30 + 145 * number
        pixels[70:210, x : x + 100] = np.round(226 * np.clip(wash.colour.srgb, 0, 1))
    path = tmp_path / "scrap.png"
    Image.fromarray(pixels).save(path)
    return path


def settle(page: MixPage, qtbot) -> None:
    qtbot.waitUntil(lambda: not page.scrap.desk.running, timeout=20_000)


def bring(page: MixPage, path: Path, qtbot) -> None:
    page.scrap.desk.add_path(path)
    settle(page, qtbot)
    assert len(page.scrap.desk.on_desk.strokes) == STROKES


def test_without_a_picture_it_says_what_to_do_and_that_only_dry_strokes_count(page) -> None:
    stage = page.rows.detail.scrap
    assert stage.isVisible()
    assert "white paper" in stage.words.text()
    assert "Only dry strokes are judged" in stage.words.text()
    assert not stage.picture.isVisible()


def test_strokes_are_proposed_with_bands_and_said_what_to_add(page, picture, qtbot) -> None:
    bring(page, picture, qtbot)
    desk, stage = page.scrap.desk, page.rows.detail.scrap
    assert [mark.letter for mark in desk.on_desk.strokes] == ["A", "B", "D"]
    assert desk.on_desk.letter == "A"
    assert stage.lead.text()
    assert "The stroke is" in stage.words.text()
    assert "band A" in stage.title.text()
    assert stage.accessibleDescription()


@pytest.mark.parametrize("way", ["file", "image"])
def test_a_picture_is_taken_by_paste_and_drop(page, picture, qtbot, way) -> None:
    mime = QMimeData()
    if way == "file":
        mime.setUrls([QUrl.fromLocalFile(str(picture))])
    else:
        mime.setImageData(QImage(str(picture)))
    assert page.take(mime)
    settle(page, qtbot)
    assert len(page.scrap.desk.on_desk.strokes) == STROKES
    page.rows.detail.stages._segments["hand"].click()
    assert not page.take(mime)  # elsewhere a paste is the window's


def place_of(page: MixPage, x: float, y: float) -> QPoint:
    picture = page.rows.detail.scrap.picture
    rect = picture._picture()
    return QPoint(round(rect.left() + x * rect.width()), round(rect.top() + y * rect.height()))


def test_a_click_chooses_a_stroke_and_a_drag_draws_one(page, picture, qtbot) -> None:
    bring(page, picture, qtbot)
    shown = page.rows.detail.scrap.picture
    qtbot.mouseClick(shown, LEFT, pos=place_of(page, 0.48, 0.5))
    assert page.scrap.desk.on_desk.letter == "B"
    start, end = place_of(page, 0.1, 0.3), place_of(page, 0.2, 0.6)
    qtbot.mousePress(shown, LEFT, pos=start)
    qtbot.mouseMove(shown, pos=(start + end) / 2)
    qtbot.mouseMove(shown, pos=end)
    qtbot.mouseRelease(shown, LEFT, pos=end)
    settle(page, qtbot)
    strokes = page.scrap.desk.on_desk.strokes
    assert len(strokes) == STROKES + 1
    assert strokes[-1].stroke.region == pytest.approx((0.1, 0.3, 0.2, 0.6), abs=0.01)


def test_everything_by_keys(page, picture, qtbot) -> None:
    bring(page, picture, qtbot)
    desk, shown = page.scrap.desk, page.rows.detail.scrap.picture
    shown.setFocus()
    qtbot.keyClick(shown, Qt.Key.Key_Right)
    assert desk.on_desk.chosen == 1
    qtbot.keyClick(shown, Qt.Key.Key_C)
    settle(page, qtbot)
    assert desk.on_desk.letter == "C"
    qtbot.keyClick(shown, Qt.Key.Key_Z)  # no such band
    assert desk.on_desk.letter == "C"
    qtbot.keyClick(shown, Qt.Key.Key_Delete)
    settle(page, qtbot)
    assert [mark.letter for mark in desk.on_desk.strokes] == ["A", "D"]
    qtbot.keyClick(shown, Qt.Key.Key_Insert)
    for _ in range(2):
        qtbot.keyClick(shown, Qt.Key.Key_Left)
    qtbot.keyClick(shown, Qt.Key.Key_Return)
    settle(page, qtbot)
    assert len(desk.on_desk.strokes) == STROKES
    qtbot.keyClick(shown, Qt.Key.Key_Insert)
    qtbot.keyClick(shown, Qt.Key.Key_Escape)
    assert len(desk.on_desk.strokes) == STROKES


def test_a_kept_scrap_is_in_the_study_and_undone(page, picture, qtbot) -> None:
    bring(page, picture, qtbot)
    window, stage = page.window_, page.rows.detail.scrap
    stage.keep.click()
    settle(page, qtbot)
    (scrap,) = window.document.study.scraps
    assert scrap.letter == "A"
    assert len(window.pictures[scrap.picture.digest]) < 40_000
    assert [mark.letter for mark in page.scrap.desk.on_desk.strokes] == ["B", "D"]
    window.document.stack.undo()
    assert window.document.study.scraps == ()
    window.document.stack.redo()
    assert window.document.study.scraps == (scrap,)


def test_where_the_study_holds_no_scraps_keeping_is_not_offered_and_says_why(
    page, picture, qtbot
) -> None:
    files, stage = page.window_.files, page.rows.detail.scrap
    bring(page, picture, qtbot)
    assert stage.keep.isVisible()
    files.kept_elsewhere = lambda: True
    files.keeper_changed.emit()
    assert not stage.keep.isVisible()
    assert "not kept" in stage.words.text()
    page.scrap.desk.keep()
    assert page.window_.document.study.scraps == ()
    files.kept_elsewhere = lambda: False
    files.keeper_changed.emit()
    assert stage.keep.isVisible()


def test_the_whole_classs_box_is_taught_where_no_scrap_can_be_kept(
    own_page, tmp_path, qtbot
) -> None:
    window = own_page.window_
    bring_a_stroke_of_the_true_blue(own_page, tmp_path, qtbot)
    window.files.kept_elsewhere = lambda: True
    before = window.document.study.box
    own_page.scrap.desk.teach()
    settle(own_page, qtbot)
    assert window.document.study.box != before
    assert window.document.study.scraps == ()


def test_a_second_try_counts_on_the_first_unless_the_puddle_is_fresh(page, picture, qtbot) -> None:
    bring(page, picture, qtbot)
    desk, stage = page.scrap.desk, page.rows.detail.scrap
    stage.keep.click()
    settle(page, qtbot)
    (first,) = page.window_.document.study.scraps
    bring(page, picture, qtbot)
    assert desk.on_desk.letter == "A"
    assert stage.fresh.isVisible()
    assert dict(desk.on_desk.held_now.added) == dict(first.advised or ())
    stage.fresh.click()
    settle(page, qtbot)
    assert desk.on_desk.held_now.added == ()
    assert "Take out" in stage.undo_keep.text()
    stage.undo_keep.click()
    settle(page, qtbot)
    assert page.window_.document.study.scraps == ()


def test_a_picture_that_cannot_be_read_says_so_and_nothing_is_lost(
    page, picture, qtbot, tmp_path
) -> None:
    bring(page, picture, qtbot)
    broken = tmp_path / "broken.jpg"
    broken.write_bytes(b"no picture")
    said = []
    page.window_.notices.shown.connect(lambda notice: said.append(notice.text))
    page.scrap.desk.add_path(broken)
    settle(page, qtbot)
    assert len(said) == 1
    assert "broken.jpg" in said[0] or "picture" in said[0]
    assert len(page.scrap.desk.on_desk.strokes) == STROKES


def test_bare_paper_is_refused_in_words(page, picture, qtbot) -> None:
    bring(page, picture, qtbot)
    said = []
    page.window_.notices.shown.connect(lambda notice: said.append(notice.text))
    page.scrap.desk.draw((0.4, 0.85, 0.6, 0.95))
    assert "bare paper" in said[0]
    assert len(page.scrap.desk.on_desk.strokes) == STROKES


def test_another_study_clears_the_desk(page, picture, qtbot) -> None:
    bring(page, picture, qtbot)
    page.window_.document.begun.emit()
    assert page.scrap.desk.on_desk.read is None


@pytest.fixture
def own_page(page, qtbot) -> MixPage:
    """The page with a box whose blue is known from a card, and wrongly."""
    window = page.window_
    with qtbot.waitSignal(window.planner.plan_changed, timeout=20_000):
        window.document.change("box", mixing.choose_box(window.document.study, WRONG))
    wait_for_plan(window, qtbot)
    return page


def bring_a_stroke_of_the_true_blue(page: MixPage, tmp_path: Path, qtbot) -> str:
    plan = page.window_.planner.plan
    band = next(b for b in plan.bands if b.classroom and KEY in b.classroom.mix.keys)
    mix = band.classroom.mix
    whole = sum(count for _, count in mix.parts)
    vector = TRUE.load_vector({key: mix.load_ml * n / whole for key, n in mix.parts})
    colour = read_colour(tuple(TRUE.pigments.Lab(vector).tolist()))
    pixels = np.full((300, 460, 3), 226, np.uint8)
    pixels[70:210, 150:300] = np.round(226 * np.clip(colour.srgb, 0, 1))
    path = tmp_path / "blue.png"
    Image.fromarray(pixels).save(path)
    page.scrap.desk.add_path(path)
    settle(page, qtbot)
    page.scrap.desk.assign(band.letter)
    settle(page, qtbot)
    return band.letter


def test_a_scrap_teaches_the_box_when_the_teacher_says_so(own_page, tmp_path, qtbot) -> None:
    page = own_page
    letter = bring_a_stroke_of_the_true_blue(page, tmp_path, qtbot)
    document, stage = page.window_.document, page.rows.detail.scrap
    assert "teach the box what your our blue is?" in stage.question.text()
    assert stage.question.text() in stage.accessibleDescription()
    assert stage.teach.isVisible()
    said = []
    page.window_.notices.shown.connect(lambda notice: said.append(notice.text))
    old = document.study.box.paint(KEY).card
    stage.teach.setFocus()
    qtbot.keyClick(stage.teach, Qt.Key.Key_Space)
    card = document.study.box.paint(KEY).card
    assert card.spread < old.spread
    assert len(card.scraps) == 1
    assert [scrap.letter for scrap in document.study.scraps] == [letter]
    assert said[-1].startswith("Our blue is ")
    document.stack.undo()
    assert document.study.box.paint(KEY).card == old
    assert document.study.scraps == ()
    wait_for_plan(page.window_, qtbot)


def test_measured_paints_are_not_asked_about(page, picture, qtbot) -> None:
    bring(page, picture, qtbot)
    assert not page.rows.detail.scrap.question.isVisible()
    assert not page.rows.detail.scrap.teach.isVisible()
