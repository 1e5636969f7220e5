from __future__ import annotations

from pathlib import Path

import pytest
from window_tools import draw_sky, open_and_wait

from app.window.window import Window
from core import mixing
from core.paint.box.box import DEFAULT_BOX, SPLIT_PRIMARY, Box
from core.pictures import Picture
from core.study import Study, study_of


def change_box(window: Window, study: Study) -> None:
    window.document.change("box", study)


@pytest.fixture
def photo(tmp_path: Path) -> Path:
    return draw_sky(tmp_path / "another.png")


def open_next(window: Window, photo: Path, qtbot) -> Study:
    window.document.mark_saved()  # or it would ask
    open_and_wait(window, photo, qtbot)
    return window.document.study


def test_the_first_study_of_all_has_the_usual_box(sky_window) -> None:
    assert sky_window.document.study.box == DEFAULT_BOX


def test_the_next_photo_begins_with_the_box_used_last(sky_window, qtbot, photo) -> None:
    document = sky_window.document
    change_box(sky_window, mixing.choose_box(document.study, SPLIT_PRIMARY))
    change_box(sky_window, mixing.tick_paint(document.study, "lemon_yellow", False))
    ticked = document.study.box
    study = open_next(sky_window, photo, qtbot)
    assert study.box == ticked
    assert study.title == "another"
    assert not document.unsaved
    assert not document.stack.canUndo()
    assert sky_window.notice_display.text == ""


def test_undo_counts_as_using_the_box_before(sky_window, qtbot, photo) -> None:
    document = sky_window.document
    change_box(sky_window, mixing.choose_box(document.study, SPLIT_PRIMARY))
    document.stack.undo()
    assert open_next(sky_window, photo, qtbot).box == DEFAULT_BOX
    document.stack.redo()  # another study: nothing to redo
    assert document.study.box == DEFAULT_BOX


def test_a_new_study_and_the_next_start_begin_with_it(sky_window, qtbot, photo, tmp_path) -> None:
    document = sky_window.document
    change_box(sky_window, mixing.choose_box(document.study, SPLIT_PRIMARY))
    document.mark_saved()
    sky_window.files.new()
    assert document.study == Study(box=SPLIT_PRIMARY)
    assert not document.unsaved
    open_and_wait(sky_window, photo, qtbot)
    assert document.study.title == "another"
    assert document.study.box == SPLIT_PRIMARY
    assert not document.unsaved
    again = Window(tmp_path / "settings")
    qtbot.addWidget(again)
    open_and_wait(again, photo, qtbot)
    assert again.document.study.box == SPLIT_PRIMARY
    again.close()


def test_a_study_that_is_opened_brings_its_own_box(sky_window, qtbot, photo) -> None:
    document = sky_window.document
    change_box(sky_window, mixing.choose_box(document.study, SPLIT_PRIMARY))
    document.begin(study_of(Picture("an old one.png")))
    assert document.study.box == DEFAULT_BOX
    assert open_next(sky_window, photo, qtbot).box == SPLIT_PRIMARY


def test_a_box_that_is_not_kept_any_more_is_said_once(sky_window, qtbot, photo) -> None:
    document, shelf = sky_window.document, sky_window.workspace.boxes
    ours = Box("Our cupboard", SPLIT_PRIMARY.paints)
    shelf.save(ours)
    change_box(sky_window, mixing.choose_box(document.study, ours))
    assert open_next(sky_window, photo, qtbot).box == ours
    shelf.remove(ours.name)
    assert open_next(sky_window, photo, qtbot).box == DEFAULT_BOX
    said = sky_window.notice_display.text
    assert said.startswith("The box Our cupboard, used last, is not kept any more:")
    assert said.count(".") == 1
    sky_window.notices.note("something else")
    assert open_next(sky_window, photo, qtbot).box == DEFAULT_BOX
    assert "used last" not in sky_window.notice_display.text


def test_a_box_from_a_file_needs_not_be_kept(sky_window, qtbot, photo) -> None:
    theirs = Box("Next door", SPLIT_PRIMARY.paints)
    change_box(sky_window, mixing.choose_box(sky_window.document.study, theirs))
    assert open_next(sky_window, photo, qtbot).box == theirs


@pytest.mark.parametrize("text", ["{", "[]", '{"box": {"gradewash_box": 1, "name": "x"}}'])
def test_a_damaged_memory_is_said_in_one_sentence(sky_window, qtbot, photo, tmp_path, text) -> None:
    (tmp_path / "settings" / "last_box.json").write_text(text, encoding="utf-8")
    assert open_next(sky_window, photo, qtbot).box == DEFAULT_BOX
    assert sky_window.notice_display.text.startswith("The box used last cannot be read:")


def test_a_photo_added_to_a_study_leaves_its_box(window, qtbot, photo) -> None:
    window.document.change("title", Study(title="Wednesday", box=SPLIT_PRIMARY))
    window.document.change("box", Study(title="Wednesday", box=DEFAULT_BOX))
    open_and_wait(window, photo, qtbot)
    assert window.document.study.title == "Wednesday"
    assert window.document.study.box == DEFAULT_BOX
