from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QObject

from app.state.document import Document, Gesture
from core.bands.lines import Bands
from core.pictures import Picture
from core.study import Study, move_line, remove_line, split_band, study_of


@pytest.fixture
def document(qapp) -> Document:
    document = Document()
    document.begin(study_of(Picture("dusk.jpg"), Bands(0.8, (0.2, 0.4))))
    return document


def test_change_tells_before_and_after_and_can_be_undone(document: Document, qtbot) -> None:
    before = document.study
    after = move_line(before, 0, 0.3)
    with qtbot.waitSignal(document.study_changed) as told:
        document.change("Move line", after)
    assert told.args == [before, after]
    assert document.unsaved
    assert document.stack.undoText() == "Move line"
    document.stack.undo()
    assert document.study == before
    assert not document.unsaved
    document.stack.redo()
    assert document.study == after


def test_steps_of_one_gesture_are_one_undo_step(document: Document) -> None:
    before, drag = document.study, Gesture()
    for y in (0.25, 0.3, 0.35):
        document.change("Move line", move_line(document.study, 0, y), drag)
    assert document.stack.count() == 1
    document.stack.undo()
    assert document.study == before


def test_two_gestures_stay_two_steps(document: Document) -> None:
    for y in (0.25, 0.3):
        document.change("Move line", move_line(document.study, 0, y), Gesture())
    assert document.stack.count() == 2


def test_edits_without_gesture_never_join(document: Document) -> None:
    document.change("Split", split_band(document.study, 0))
    document.change("Remove", remove_line(document.study, 1))
    assert document.stack.count() == 2


def test_a_drag_back_to_its_beginning_leaves_nothing(document: Document) -> None:
    before, drag = document.study, Gesture()
    document.change("Move line", move_line(document.study, 0, 0.3), drag)
    document.change("Move line", before, drag)
    assert document.study == before
    assert document.stack.count() == 0
    assert not document.unsaved


def test_a_drag_after_another_edit_keeps_that_edit(document: Document) -> None:
    document.change("Split", split_band(document.study, 0))
    split, drag = document.study, Gesture()
    document.change("Move line", move_line(document.study, 0, 0.15), drag)
    document.change("Move line", split, drag)
    assert document.stack.count() == 1
    assert document.study == split


def test_no_change_is_no_step(document: Document) -> None:
    document.change("Move line", move_line(document.study, 0, 0.2))
    assert document.stack.count() == 0


def test_an_edit_that_is_not_allowed_never_reaches_the_stack(document: Document) -> None:
    with pytest.raises(ValueError, match="outside"):
        document.change("Move line", move_line(document.study, 9, 0.3))
    assert document.stack.count() == 0


def test_begin_forgets_the_past(document: Document, qtbot) -> None:
    document.change("Split", split_band(document.study, 0))
    with qtbot.waitSignal(document.begun):
        document.begin(Study())
    assert document.stack.count() == 0
    assert not document.unsaved
    assert document.study == Study()


def test_saved_then_undone_is_unsaved(document: Document) -> None:
    told: list[bool] = []
    document.unsaved_changed.connect(told.append)
    document.change("Split", split_band(document.study, 0))
    document.mark_saved()
    document.stack.undo()
    assert told == [True, False, True]


def test_documents_are_objects_with_parents(qapp) -> None:
    parent = QObject()
    assert Document(parent).parent() is parent


def test_what_completes_a_beginning_is_no_edit(document: Document) -> None:
    document.begin(study_of(Picture("dusk.jpg")))
    document.change("first", replace(document.study, title="one"))
    photo, kept = document.study.photo, Picture("dusk.jpg", "abc")
    document.complete(lambda study: replace(study, photo=kept) if study.photo == photo else study)
    assert document.study.photo == kept
    assert document.stack.count() == 1
    document.stack.undo()
    assert document.study.photo == kept
    assert document.study.title == "dusk"
    assert not document.unsaved
    document.stack.redo()
    assert document.study == replace(study_of(kept), title="one")
    document.begin(study_of(photo))
    assert document.study.photo == photo


def test_a_study_that_lies_on_no_disk_begins_unsaved(document: Document) -> None:
    document.begin(Study("recovered"), saved=False)
    assert document.unsaved
    document.change("rename", Study("other"))
    document.stack.undo()
    assert document.unsaved
    document.mark_saved()
    assert not document.unsaved
