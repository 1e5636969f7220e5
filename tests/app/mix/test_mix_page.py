from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QFileDialog, QMenu
from window_tools import run_through, wait_for_plan

import app.widgets.slide
from app.drawing.mix.meeting import Passage
from app.look import Look, TypeScale, apply_look
from app.mix.meeting_head import MeetingHead
from app.mix.meeting_view import MeetingView
from app.mix.page import MixPage
from app.window.pages import PAGES
from core import mixing
from core.paint.box.box import SPLIT_PRIMARY, TWELVE_PAN
from core.paint.box.box_file import open_box
from core.paint.options import BandChoice
from core.reading.wording import Wording
from core.words import tone_down_sentence

LEFT = Qt.MouseButton.LeftButton
# The offscreen platform says of every menu that it cannot raise it: no fault.
no_popups = pytest.mark.qt_log_ignore("This plugin does not support", extend=True)


@pytest.fixture
def page(sky_window, qtbot) -> MixPage:
    wait_for_plan(sky_window, qtbot)
    sky_window.show_page(next(i for i, kind in enumerate(PAGES) if kind.key == "mix"))
    page = sky_window.page("mix")
    assert isinstance(page, MixPage)
    page.window_ = sky_window
    return page


def choice(page: MixPage, letter: str) -> BandChoice:
    return page.window_.document.study.mix.choice(letter)


def settle(page: MixPage, qtbot) -> None:
    wait_for_plan(page.window_, qtbot)


def action(menu: QMenu, *path: str):
    """The action of a menu by the texts that lead to it."""
    for text in path:
        found = next(a for a in menu.actions() if a.text() == text)
        menu = found.menu()
    return found


def test_an_empty_page_asks_for_a_photo(window, qtbot, monkeypatch) -> None:
    page = window.page("mix")
    assert page.empty.isVisible()
    assert not page.rows.isVisible()
    asked = []
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *a, **k: asked.append(1) or ("", ""))
    qtbot.mouseClick(page.empty.button, LEFT)
    assert asked == [1]


def test_rows_say_the_plan_in_band_order(page, qtbot) -> None:
    plan = page.window_.planner.plan
    heads = page.rows.heads
    assert len(heads) == 2 * len(plan.bands) - 1
    for number, band in enumerate(plan.bands):
        name = heads[2 * number].accessibleName()
        assert f"Band {band.letter}" in name
        for key in band.classroom.mix.keys:
            assert key.replace("_", " ") in name
    assert "A runs into B" in heads[1].accessibleName() or "A and B" in heads[1].accessibleName()
    assert page.chosen == 0
    assert page.rows.detail.isVisible()


def test_a_pressed_row_opens_and_a_pressed_meeting_shows_its_strip(page, qtbot) -> None:
    heads = page.rows.heads
    qtbot.mouseClick(heads[4], LEFT, pos=QPoint(40, 12))
    assert page.chosen == 2
    assert page.rows.detail.mapTo(page, QPoint()).y() > heads[4].mapTo(page, QPoint()).y()
    assert page.rows.detail.isVisible()
    qtbot.mouseClick(heads[5], LEFT, pos=QPoint(40, 8))
    assert page.rows.meeting.isVisible()
    assert not page.rows.detail.isVisible()
    assert "passes through" in page.rows.meeting.accessibleName()


def places(page: MixPage) -> list[tuple[int, int]]:
    rows = page.rows
    return [(head.y(), head.height()) for head in rows.heads] + [
        (rows._drawer.y(), rows._drawer.height())
    ]


def test_a_row_slides_open_and_is_seen_whole(page, qtbot, monkeypatch) -> None:
    rows, slide = page.rows, page.rows._slide
    page.choose(3)
    at_last, scrolled = places(page), rows.verticalScrollBar().value()
    page.choose(0)
    assert not slide.running  # nobody watches
    before = places(page)
    monkeypatch.setattr(app.widgets.slide, "wants_motion", lambda: True)
    page.choose(3)
    assert slide.running
    assert rows.detail.isVisible()
    assert places(page)[0] == before[0]
    assert rows._drawer.height() == 0
    seen = []

    def look() -> None:
        seen.append(rows._drawer.height())
        # All the way the rows stand one below the other, and the detail is laid out once.
        tops = [head.y() for head in rows.heads]
        assert tops == sorted(tops)
        assert rows.detail.height() == at_last[-1][1]

    slide.moved.connect(look)
    run_through(slide._motion)  # a slow machine would show few of the steps, or none
    assert not slide.running
    assert seen == sorted(seen)
    assert len(seen) > 2
    assert places(page) == at_last
    assert rows.verticalScrollBar().value() == scrolled


def test_what_is_edited_does_not_slide(page, qtbot, monkeypatch) -> None:
    monkeypatch.setattr(app.widgets.slide, "wants_motion", lambda: True)
    page.window_.resize(1366, 800)
    assert not page.rows._slide.running
    study = page.window_.document.study
    page.window_.document.change("tick", mixing.tick_paint(study, "sap_green", False))
    settle(page, qtbot)
    assert not page.rows._slide.running


def test_the_keyboard_walks_the_rows_and_into_the_open_one(page, qtbot) -> None:
    rows = page.rows
    page.choose(0)
    rows.focus_chosen()
    assert rows.heads[0].hasFocus()
    # A joint where nothing happens is passed over; one that has a line is stepped on.
    happens = [number for number, head in enumerate(rows.heads) if number % 2 and head.spoken_of]
    stops = [*range(0, len(rows.heads), 2), *happens]
    for number in sorted(stops)[1:]:
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Down)
        assert rows.heads[number].hasFocus()
        assert rows.meeting.isVisible() == bool(number % 2)
    for number in sorted(stops)[-2::-1]:
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Up)
        assert rows.heads[number].hasFocus()
    page.choose(1)
    rows.focus_chosen()
    reached = []
    for _ in range(80):
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        widget = QApplication.focusWidget()
        if widget in reached:
            break
        reached.append(widget)
    detail = rows.detail
    assert detail.wishes in reached
    assert detail.tone.choose in reached
    assert any(detail.stages.isAncestorOf(widget) for widget in reached)
    for line in detail.lines:
        assert line.button is None or line.button in reached
    assert page.plan_bar.button in reached
    assert page.box.boxes in reached
    assert page.box.more in reached
    assert page.box.white in reached
    assert any(row in reached for row in page.box.rows)
    inside = [widget for widget in reached if page.isAncestorOf(widget)]
    unnamed = [w for w in inside if not (w.accessibleName() or getattr(w, "text", lambda: "")())]
    assert unnamed == []


def test_ticks_change_the_box_and_the_plan(page, qtbot) -> None:
    document = page.window_.document
    before = [row.view.key for row in page.box.rows]
    row = page.box.row("ultramarine")
    assert row.isChecked()
    qtbot.mouseClick(row, LEFT, pos=QPoint(130, 10))
    assert "ultramarine" not in document.study.box.by_key
    settle(page, qtbot)
    assert all(
        "ultramarine" not in band.classroom.mix.keys for band in page.window_.planner.plan.bands
    )
    # No paint jumps away under the mouse, and the list says that the box was changed.
    assert [row.view.key for row in page.box.rows] == before
    assert not row.isChecked()
    assert "not in this box" in row.accessibleName()
    assert "changed" in page.box.boxes.currentText()
    qtbot.keyClick(row, Qt.Key.Key_Space)
    assert document.study.box.paints == TWELVE_PAN.paints
    assert "changed" not in page.box.boxes.currentText()
    assert document.stack.undoText() == "put paint into the box"
    document.stack.undo()
    document.stack.undo()
    assert document.study.box == TWELVE_PAN
    settle(page, qtbot)


def test_every_tick_is_planned_before_it_is_made(page, qtbot, monkeypatch) -> None:
    asked = []
    monkeypatch.setattr(page.window_.planner, "look_ahead", lambda studies: asked.extend(studies))
    study = page.window_.document.study
    page.window_.document.change("tick", mixing.tick_paint(study, "sap_green", False))
    settle(page, qtbot)
    qtbot.waitUntil(lambda: bool(asked))
    box = page.window_.document.study.box
    assert len(asked) == len(page.box.rows)
    assert {len(set(other.box.keys) ^ set(box.keys)) for other in asked} == {1}


def test_a_row_of_the_box_keeps_its_height_when_it_is_ticked(page, qtbot) -> None:
    """Else the rows below would slip away under the mouse."""
    row = next(row for row in page.box.rows if row.view.stand_in)
    places = [other.geometry() for other in page.box.rows]
    qtbot.mouseClick(row, LEFT, pos=QPoint(130, 10))
    settle(page, qtbot)
    assert not row.isChecked()
    assert [other.geometry() for other in page.box.rows] == places


def test_arrows_walk_the_paints(page, qtbot) -> None:
    rows = page.box.rows
    rows[0].setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.keyClick(rows[0], Qt.Key.Key_Down)
    assert rows[1].hasFocus()
    qtbot.keyClick(rows[1], Qt.Key.Key_Up)
    assert rows[0].hasFocus()


def test_stand_ins_and_cautions_are_said(page) -> None:
    assert "measured as cadmium yellow" in page.box.row("mid_yellow").accessibleName()
    assert "label of this paint lists" in page.box.row("cerulean_blue").accessibleDescription()
    assert page.box.row("ultramarine").accessibleDescription() == ""


def test_another_box_is_chosen_from_the_list(page, qtbot) -> None:
    names = [page.box.boxes.itemText(i) for i in range(page.box.boxes.count())]
    page.box.boxes.setCurrentIndex(1)
    page.box.boxes.activated.emit(1)
    assert page.window_.document.study.box == SPLIT_PRIMARY
    assert len(names) == 3
    # Its own paints stand first now.
    assert [row.view.key for row in page.box.rows[:6]] == list(SPLIT_PRIMARY.keys)
    settle(page, qtbot)
    assert page.window_.planner.plan.box == SPLIT_PRIMARY


def test_the_last_paint_cannot_be_taken_out(page, qtbot) -> None:
    document = page.window_.document
    one = document.study
    for key in TWELVE_PAN.keys[1:]:
        one = mixing.tick_paint(one, key, False)
    document.change("one", one)
    qtbot.mouseClick(page.box.row("lemon_yellow"), LEFT, pos=QPoint(130, 10))
    assert document.study == one
    assert "at least one paint" in page.window_.notice_display.text
    assert page.box.row("lemon_yellow").isChecked()
    settle(page, qtbot)


def name_it(name: str, qtbot) -> None:
    dialog = QApplication.activeModalWidget()
    dialog.field.clear()
    qtbot.keyClicks(dialog.field, name)
    qtbot.keyClick(dialog.field, Qt.Key.Key_Return)


@no_popups
def test_a_box_is_kept_saved_opened_and_forgotten(page, qtbot, monkeypatch, tmp_path) -> None:
    document, menu = page.window_.document, page.box_edits.menu
    qtbot.mouseClick(page.box.row("sap_green"), LEFT, pos=QPoint(130, 10))
    action(menu.open(QPoint(0, 0)), "Keep this box as...").trigger()
    name_it("Our cupboard", qtbot)
    assert document.study.box.name == "Our cupboard"
    assert page.box.boxes.currentText() == "Our cupboard"
    path = tmp_path / "ours.json"
    monkeypatch.setattr("app.mix.box_menu.ask_to_save", lambda *a: path)
    menu.save()
    assert open_box(path) == document.study.box
    kept = document.study.box
    page.box.boxes.activated.emit(0)
    assert document.study.box == TWELVE_PAN
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *a, **k: (str(path), ""))
    menu.load()
    assert document.study.box == kept
    action(menu.open(QPoint(0, 0)), "Forget the box Our cupboard").trigger()
    assert document.study.box == kept
    assert page.window_.workspace.boxes.boxes() == ()
    path.write_text("{", encoding="utf-8")
    menu.load()
    assert "not a paint box" in page.window_.notice_display.text
    menu.keep()
    assert QApplication.activeModalWidget().field.text() == "Our cupboard"
    name_it("twelve-pan school box", qtbot)
    assert "choose another name" in page.window_.notice_display.text
    settle(page, qtbot)


def test_a_paint_of_ones_own(page, qtbot) -> None:
    menu = page.box_edits.menu
    menu.add_paint()
    dialog = QApplication.activeModalWidget()
    assert not dialog.button.isEnabled()
    qtbot.keyClicks(dialog.name, "sky blue")
    dialog.like.setCurrentIndex(dialog.like.findData("cerulean_blue"))
    assert dialog.button.isEnabled()
    qtbot.keyClick(dialog.name, Qt.Key.Key_Return)
    assert "own_sky_blue" in page.window_.document.study.box.by_key
    assert "measured as cerulean blue" in page.box.row("own_sky_blue").accessibleName()
    menu.put("sky blue", "cerulean_blue")
    assert "choose another name" in page.window_.notice_display.text
    settle(page, qtbot)
    qtbot.mouseClick(page.box.row("own_sky_blue"), LEFT, pos=QPoint(130, 10))
    assert "own_sky_blue" not in page.window_.document.study.box.by_key
    settle(page, qtbot)


def test_pinning_and_leaving_out_from_the_menu(page, qtbot) -> None:
    menu = page.menu_of(1)
    action(menu, "Always use", "Prussian blue").trigger()
    assert choice(page, "B").pinned == ("prussian_blue",)
    settle(page, qtbot)
    plan = page.window_.planner.plan
    assert "prussian_blue" in plan.band("B").classroom.mix.keys
    assert "pinned: prussian blue" in page.rows.heads[2].accessibleName().lower()
    assert action(page.menu_of(1), "Always use", "Prussian blue").isChecked()
    action(page.menu_of(1), "Leave out of this band", "Prussian blue").trigger()
    assert choice(page, "B") == BandChoice(forbidden=("prussian_blue",))
    settle(page, qtbot)
    assert "prussian_blue" not in page.window_.planner.plan.band("B").classroom.mix.keys
    action(page.menu_of(1), "Forget what was asked here").trigger()
    assert choice(page, "B") == BandChoice()
    assert page.window_.document.stack.undoText() == "forget what was asked"
    settle(page, qtbot)


def test_a_paint_is_left_out_of_every_mix_and_used_again(page, qtbot) -> None:
    document = page.window_.document
    key = page.window_.planner.plan.band("A").classroom.mix.keys[0]
    name = page.box.row(key).view.name
    words = name[:1].upper() + name[1:]
    action(page.menu_of(0), "Leave out of every mix", words).trigger()
    assert document.study.mix.forbidden == (key,)
    assert key in document.study.box.by_key
    settle(page, qtbot)
    for band in page.window_.planner.plan.bands:
        assert key not in band.classroom.mix.keys
    row = page.box.row(key)
    assert row.isChecked()
    assert "left out of every mix" in row.accessibleName()
    assert row.view.colours
    assert action(page.menu_of(1), "Leave out of every mix", words).isChecked()
    document.stack.undo()
    assert document.study.mix.forbidden == ()
    assert "left out" not in row.accessibleName()
    settle(page, qtbot)


@no_popups
def test_a_paints_own_menu_leaves_it_out_and_takes_it_out_of_the_box(page, qtbot) -> None:
    document, row = page.window_.document, page.box.row("crimson")
    row.setFocus()
    for keys in ((Qt.Key.Key_Menu,), (Qt.Key.Key_F10, Qt.KeyboardModifier.ShiftModifier)):
        qtbot.keyClick(row, *keys)
        menu = QApplication.activePopupWidget()
        assert [(a.text(), a.isChecked()) for a in menu.actions()] == [
            ("In this box", True),
            ("Leave out of every mix", False),
        ]
        menu.close()
    qtbot.keyClick(row, Qt.Key.Key_Menu)
    action(QApplication.activePopupWidget(), "Leave out of every mix").trigger()
    QApplication.activePopupWidget().close()
    assert document.study.mix.forbidden == ("crimson",)
    assert document.stack.undoText() == "leave paint out of every mix"
    qtbot.keyClick(row, Qt.Key.Key_Menu)
    action(QApplication.activePopupWidget(), "In this box").trigger()
    QApplication.activePopupWidget().close()
    assert "crimson" not in document.study.box.by_key
    assert document.study.mix.forbidden == ()
    qtbot.keyClick(row, Qt.Key.Key_Menu)
    menu = QApplication.activePopupWidget()
    assert not action(menu, "Leave out of every mix").isEnabled()
    menu.close()
    settle(page, qtbot)


@no_popups
def test_the_boxs_menu_leaves_paints_out_too(page, qtbot) -> None:
    qtbot.mouseClick(page.box.more, LEFT)
    menu = QApplication.activePopupWidget()
    action(menu, "Leave out of every mix", "Black").trigger()
    menu.close()
    assert page.window_.document.study.mix.forbidden == ("black",)
    settle(page, qtbot)


def test_the_plan_is_printed_from_the_panel(page, qtbot) -> None:
    for size in ((1920, 1080), (1366, 768)):
        page.window_.resize(*size)
        page.show_plan(True)
        assert page.plan.print_button.isVisible()
        qtbot.mouseClick(page.plan.print_button, LEFT)
        dialog = QApplication.activeModalWidget()
        assert dialog.choice.kind == "plan"
        dialog.reject()
    page.show_plan(False)
    assert not page.plan.print_button.isVisible()


@no_popups
def test_the_rows_menu_is_reached_by_mouse_and_keyboard(page, qtbot) -> None:
    def shown() -> QMenu | None:
        return QApplication.activePopupWidget()

    head = page.rows.heads[2]
    page.choose(1)
    page.rows.focus_chosen()
    for keys in ((Qt.Key.Key_Menu,), (Qt.Key.Key_F10, Qt.KeyboardModifier.ShiftModifier)):
        qtbot.keyClick(head, *keys)
        assert "B" in shown().title()
        shown().close()
    qtbot.mouseClick(page.rows.detail.wishes, LEFT)
    assert "B" in shown().title()
    shown().close()
    edit = page.actions_for("edit")[0]
    assert "band B" in edit.text()
    assert edit.menu() is not None


def test_parts_by_hand_follow_at_once_and_undo_as_one_run(page, qtbot) -> None:
    page.choose(0)
    detail, document = page.rows.detail, page.window_.document
    detail.stages._segments["hand"].click()
    assert detail.hand.isVisible()
    before = page.window_.planner.plan.band("A").classroom.mix
    key, count = before.parts[0]
    stepper = detail.hand.stepper(key)
    # Two presses before the plan has followed count as two.
    qtbot.mouseClick(stepper._plus, LEFT)
    qtbot.mouseClick(stepper._plus, LEFT)
    assert dict(choice(page, "A").parts)[key] == count + 2
    settle(page, qtbot)
    mix = page.window_.planner.plan.band("A").classroom.mix
    assert dict(mix.parts)[key] == count + 2
    assert "set by hand" in page.rows.heads[0].accessibleName().lower()
    assert stepper is detail.hand.stepper(key)  # it stays under the mouse
    assert document.stack.undoText() == "set parts by hand"
    steps = document.stack.count()
    qtbot.mouseClick(detail.hand.stronger, LEFT)
    settle(page, qtbot)
    assert page.window_.planner.plan.band("A").classroom.mix.load_ml > mix.load_ml
    assert document.stack.count() == steps + 1
    document.stack.undo()
    document.stack.undo()
    settle(page, qtbot)
    assert page.window_.planner.plan.band("A").classroom.mix == before


@no_popups
def test_a_paint_is_added_and_one_goes_back(page, qtbot) -> None:
    page.choose(0)
    detail = page.rows.detail
    detail.stages._segments["hand"].click()
    qtbot.mouseClick(detail.hand.add, LEFT)
    menu = QApplication.activePopupWidget()
    added = next(a for a in menu.actions() if a.data() == "sap_green")
    added.trigger()
    menu.close()
    assert dict(choice(page, "A").parts)["sap_green"] == 1
    settle(page, qtbot)
    assert detail.hand.back.isEnabled()
    qtbot.mouseClick(detail.hand.back, LEFT)
    assert choice(page, "A") == BandChoice()
    settle(page, qtbot)
    assert not detail.hand.back.isEnabled()


def test_the_last_part_cannot_be_taken_away(page, qtbot) -> None:
    document = page.window_.document
    document.change("one", mixing.set_parts(document.study, "A", (("ultramarine", 1),)))
    settle(page, qtbot)
    page.choose(0)
    page.rows.detail.stages._segments["hand"].click()
    assert not page.rows.detail.hand.stepper("ultramarine")._minus.isEnabled()


def test_another_mix_is_taken_by_its_arrow(page, qtbot) -> None:
    plan = page.window_.planner.plan
    for number in range(len(plan.bands)):
        page.choose(number)
        lines = [line for line in page.rows.detail.lines if line.button is not None]
        if lines:
            break
    else:
        pytest.fail("the test's sky offers no other mix: choose other colours")
    band, wanted = plan.bands[page.chosen], lines[0].offer.mix
    qtbot.mouseClick(lines[0].button, LEFT)
    assert choice(page, band.letter).parts == wanted.parts
    settle(page, qtbot)
    taken = page.window_.planner.plan.band(band.letter).classroom
    assert taken.mix.parts == wanted.parts
    assert page.window_.document.stack.undoText() == "take another mix"


def test_the_blues_are_compared(page, qtbot) -> None:
    page.choose(0)
    detail = page.rows.detail
    segment = detail.stages._segments["compare"]
    assert segment.text() == "Compare blues"
    qtbot.mouseClick(segment, LEFT)
    assert detail.compare.isVisible()
    said = detail.compare.accessibleName()
    for name in ("ultramarine", "cerulean blue", "prussian blue"):
        assert name in said
    assert "one part more" in said


def test_another_toner_is_looked_at_without_an_edit(page, qtbot) -> None:
    page.choose(0)
    detail, document = page.rows.detail, page.window_.document
    title = detail.tone.title.text()
    toners = detail.tone._view.toners
    assert len(toners) > 1
    other = next(i for i, (_, chosen) in enumerate(toners) if not chosen)
    detail.tone.toner_asked.emit(other)
    assert detail.tone.title.text() != title
    assert toners[other][0].lower() in detail.tone.title.text().lower()
    assert document.stack.count() == 0
    page.choose(1)
    page.choose(0)
    assert detail.tone.title.text() == title


def test_the_plan_opens_over_a_narrow_page_and_closes_by_escape(page, qtbot) -> None:
    assert not page.plan.isVisible()
    assert "A4" in page.plan_bar._label.text()
    qtbot.mouseClick(page.plan_bar.button, LEFT)
    assert page.plan.isVisible()
    assert page.plan.close_button.hasFocus()
    qtbot.keyClick(page.plan.close_button, Qt.Key.Key_Escape)
    assert not page.plan.isVisible()


def test_the_plan_is_a_column_where_there_is_room(page, qtbot) -> None:
    page.window_.resize(1920, 1080)
    qtbot.waitUntil(lambda: page.width() == 1920)
    assert page.plan.isVisible()
    assert not page.plan.close_button.isVisible()
    assert not page.plan_bar.isVisible()
    assert page.plan.x() + page.plan.width() == page.width()


def test_sheet_and_own_figure(page, qtbot) -> None:
    document = page.window_.document
    page.show_plan(True)
    total = page.window_.planner.plan.amounts.total_ml
    a3 = next(i for i in range(page.plan.sheets.count()) if page.plan.sheets.itemText(i) == "A3")
    page.plan.sheets.activated.emit(a3)
    assert document.study.mix.sheet.name == "A3"
    settle(page, qtbot)
    assert page.window_.planner.plan.amounts.total_ml > total
    assert page.plan.sheets.currentText() == "A3"
    assert not page.plan.figure.isVisible()
    qtbot.mouseClick(page.plan.own, LEFT, pos=QPoint(10, page.plan.own.height() // 2))
    assert document.study.mix.own_ml_per_1000_cm2 == 6.5
    settle(page, qtbot)
    assert page.plan.figure.isVisible()
    before = document.stack.count()
    page.plan.figure.stepUp()
    page.plan.figure.stepUp()
    assert document.study.mix.own_ml_per_1000_cm2 == 7.5
    assert document.stack.count() <= before + 1
    settle(page, qtbot)
    assert page.window_.planner.plan.amounts.own_figure


def test_white_paint_is_allowed_on_request(page, qtbot) -> None:
    white = page.box.white
    qtbot.mouseClick(white, LEFT, pos=QPoint(10, white.height() // 2))
    assert page.window_.document.study.mix.allow_white
    page.window_.document.stack.undo()
    assert not white.isChecked()
    settle(page, qtbot)


def test_the_read_page_takes_its_parts_from_the_plan(page, qtbot) -> None:
    document, planner = page.window_.document, page.window_.planner
    # A toner asked for, so that there is something to say whatever is proposed.
    document.change("tone", mixing.pin(document.study, "C", "sap_green", True))
    settle(page, qtbot)
    read = page.window_.page("read")
    parts = [planner.toning(reading) for reading in page.window_.reader.readings]
    assert parts[2] is not None
    for number, reading in enumerate(page.window_.reader.readings):
        read.choose(number)
        sentence = tone_down_sentence(reading, Wording(), parts[number])
        assert sentence in read.strip.accessibleName()
    read.choose(2)
    assert parts[2].toner in read.strip.accessibleName()


@pytest.mark.parametrize(("width", "height"), [(960, 600), (1366, 768), (1920, 1080)])
@pytest.mark.parametrize("percent", [100, 150])
def test_every_size_draws_and_nothing_leaves_its_place(page, qtbot, width, height, percent) -> None:
    window = page.window_
    window.preferences.set(text_percent=percent)
    window.resize(width, height)
    for row in range(len(page.rows.heads)):
        page.choose_row(row)
        for stage in ("tone", "compare", "hand") if row % 2 == 0 else ("tone",):
            page.rows.detail.show_stage(stage)
            page._show_rows()
            window.grab()
            opened = page.rows._opened()
            drawer = page.rows._drawer
            assert drawer.y() + drawer.height() <= page.rows.widget().height()
            # Higher than its drawer it is scrolled there, to its very end.
            assert opened.y() + opened.height() <= drawer.shelf.height()
            hidden = drawer.shelf.height() - drawer.viewport().height()
            assert drawer.verticalScrollBar().maximum() == max(hidden, 0)
            assert opened.height() >= opened.height_for(opened.width())[0]
    for first, second in zip(page.rows.heads, page.rows.heads[1:], strict=False):
        assert first.y() + first.height() <= second.y()


def test_the_open_row_asks_for_what_it_takes_whatever_width_it_had(page) -> None:
    detail = page.rows.detail
    for stage in ("tone", "compare", "hand", "why"):
        detail.show_stage(stage)
        detail.resize(842, 400)
        wanted = detail.height_for(842)
        detail.resize(242, 400)
        assert detail.height_for(842) == wanted


def test_a_meeting_that_warns_bears_the_mark(qtbot) -> None:
    head = MeetingHead(1, None)
    qtbot.addWidget(head)
    passage = Passage((), ("#888888",), ((0.0, "grey"),))
    view = MeetingView("A", "B", "A and B meet in a mud.", True, passage)
    head.set_view(view)
    head.resize(500, head.height_for(500, compact=False))
    warned = head.grab().toImage()
    head.set_view(replace(view, warns=False))
    assert head.grab().toImage() != warned
    # Where nothing happens there is no line, until it is opened.
    head.set_view(replace(view, warns=False, quiet=True))
    assert head.height_for(500, compact=False) < 20
    head.opened = True
    assert head.height_for(500, compact=False) > 20
    head.opened = False
    head.set_view(None)
    assert head.height_for(500, compact=False) < 20


def test_the_band_most_in_need_of_toning_opens_first(page) -> None:
    plan = page.window_.planner.plan
    shares = [band.classroom.toner_share for band in plan.bands]
    assert page.chosen == shares.index(max(shares))


def test_an_open_band_says_one_line_and_the_rest_on_demand(page) -> None:
    detail = page.rows.detail
    for number in range(len(page.window_.planner.plan.bands)):
        page.choose(number)
        head = page.rows.heads[2 * number]
        assert len(head._texts(head.width(), False)) == 2
        assert len(head._texts(head.width(), False)[1].lines) == 1
        assert all(line.button is not None for line in detail.lines)
        detail.show_stage("why")
        assert detail.why.isVisible()
        assert detail.why.lines
        detail.show_stage("tone")


def test_the_box_lists_names_and_tells_of_pigments_when_asked(page, qtbot) -> None:
    rows = page.box.rows
    before = [row.height() for row in rows]
    assert all(len(row._texts(row.width(), row.view)) == 1 for row in rows if row.view.owned
               and not row.view.remark)  # fmt: skip
    assert all(row.view.note in row.toolTip() for row in rows if row.view.owned)
    page.box.details.click()
    assert any(len(row._texts(row.width(), row.view)) == 2 for row in rows)
    assert sum(row.height() for row in rows) > sum(before)
    page.box.details.click()
    assert [row.height() for row in rows] == before


def test_white_in_the_box_and_not_in_the_mixes_is_said(page, qtbot) -> None:
    white = page.box.row("white")
    assert white.view.owned
    assert white.view.remark == "in the box; no mix uses it"
    page.box.white.click()
    assert page.box.row("white").view.remark == ""


def test_a_box_without_a_pinned_paint_drops_the_wish(page, qtbot) -> None:
    document = page.window_.document
    document.change("pin", mixing.pin(document.study, "A", "sap_green", True))
    page.box.boxes.activated.emit(1)
    assert choice(page, "A") == BandChoice()
    settle(page, qtbot)
    assert page.window_.notice_display.text == ""


def test_how_wet_paint_looks_is_the_class_s_to_say(sky_window, qtbot):
    page = sky_window.page("mix")
    qtbot.waitUntil(lambda: not sky_window.planner.working)
    choices = {action.text(): action for action in page.drying.action.menu().actions()}
    assert choices["A quarter of a step"].isChecked()
    choices["Half a step"].trigger()
    document = sky_window.document
    assert document.study.mix.drying_steps == 0.5
    qtbot.waitUntil(lambda: sky_window.planner.plan.drying_steps == 0.5)
    document.stack.undo()
    assert choices["A quarter of a step"].isChecked()
    assert page.drying.action in page.actions_for("edit")


def test_all_bands_stay_in_sight_beside_the_open_row_in_large_text(window, qtbot, qapp) -> None:
    """At 150 % in a window of 1366 x 768: a line of each, and the open row scrolled by itself."""
    apply_look(qapp, Look(type=TypeScale(1.5)))
    window.resize(1366, 768)
    window.opener.open_sample("dusk")
    window.show_page(1)
    rows = window.page("mix").rows
    qtbot.waitUntil(lambda: bool(rows.heads) and not window.planner.working, timeout=30_000)
    seen = rows.viewport().height()
    for chosen in range(0, len(rows.heads), 2):
        rows.row_chosen.emit(chosen)
        qtbot.waitUntil(lambda: not rows._slide.running)
        QApplication.processEvents()
        places = [head.mapTo(rows.viewport(), QPoint(0, 0)).y() for head in rows.heads[::2]]
        ends = [y + head.height() for y, head in zip(places, rows.heads[::2], strict=True)]
        assert min(places) >= 0
        assert max(ends) <= seen
        # Nothing of what it opens is lost: the drawer's bar reaches its end.
        bar = rows._drawer.verticalScrollBar()
        bar.setValue(bar.maximum())
        detail = rows.detail
        foot = detail.mapTo(rows._drawer.viewport(), QPoint(0, detail.height())).y()
        assert foot <= rows._drawer.viewport().height() + 1
        assert detail.height() >= detail.height_for(detail.width())[0]
