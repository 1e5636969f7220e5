"""The Mix page's menus, dialogs and extremes, for `tools.screenshots`."""

from __future__ import annotations

import numpy as np
from PIL import Image
from PySide6.QtWidgets import QApplication, QDialog, QMenu, QWidget

from app.mix.page import MixPage
from core import mixing
from core.paint.mixture.mix import make_mix
from tools.screenshot_scenes import sample_study, set_bands
from tools.screenshot_stage import LARGE_TEXT, PLAIN, WIDE, Stage, Variation, scene

SPANISH = Variation((1366, 768), "light", 100, "es")
LARGE_SPANISH = Variation((1366, 768), "light", 150, "es")
MENUS = (PLAIN, LARGE_TEXT, SPANISH)


def _mix(stage: Stage) -> MixPage:
    sample_study(stage)
    page = stage.page("mix")
    assert isinstance(page, MixPage)
    return page


def _popup(stage: Stage) -> QMenu:
    stage.process(100)
    menu = QApplication.activePopupWidget()
    assert isinstance(menu, QMenu)
    return menu


@scene(*MENUS)
def mix_menu_box(stage: Stage) -> QWidget | None:
    """What can be done with the box."""
    _mix(stage).box.more.click()
    return _popup(stage)


@scene(*MENUS)
def mix_menu_paint(stage: Stage) -> QWidget | None:
    """What can be done with one paint."""
    page = _mix(stage)
    row = page.box.rows[3]
    row.menu_asked.emit(row.view.key, row.mapToGlobal(row.rect().center()))
    return _popup(stage)


@scene(*MENUS)
def mix_menu_band(stage: Stage) -> QWidget | None:
    """What can be asked for one band."""
    page = _mix(stage)
    stage.window.document.change("", mixing.pin(stage.window.document.study, "A", "crimson", True))
    stage.settle()
    page.rows.detail.wishes.click()
    return _popup(stage)


@scene(*MENUS)
def mix_menu_band_paints(stage: Stage) -> QWidget | None:
    """The paints to leave out of every mix."""
    page = _mix(stage)
    page.edits.leave_out("sap_green", True)
    menu = page.menu_of(0)
    sub = menu.actions()[2].menu()
    sub.popup(page.mapToGlobal(page.rect().center()))
    return _popup(stage)


@scene(*MENUS)
def mix_menu_drying(stage: Stage) -> QWidget | None:
    """How much darker wet paint looks."""
    page = _mix(stage)
    menu = page.drying.action.menu()
    menu.popup(page.mapToGlobal(page.rect().center()))
    return _popup(stage)


@scene(*MENUS)
def mix_menu_edit(stage: Stage) -> QWidget | None:
    """The Edit menu, with what the page puts there."""
    _mix(stage)
    menu = stage.window.header.menu("edit")
    menu.popup(stage.window.mapToGlobal(stage.window.rect().center()))
    return _popup(stage)


@scene(*MENUS)
def mix_dialog_paint(stage: Stage) -> QWidget | None:
    """A paint of one's own."""
    _mix(stage).box_edits.menu.add_paint()
    return _dialog(stage)


@scene(*MENUS)
def mix_dialog_keep(stage: Stage) -> QWidget | None:
    """The name of a box that is kept."""
    _mix(stage).box_edits.menu.keep()
    return _dialog(stage)


def _dialog(stage: Stage) -> QWidget:
    stage.process(200)
    return next(
        w for w in QApplication.topLevelWidgets() if isinstance(w, QDialog) and w.isVisible()
    )


@scene(PLAIN, LARGE_SPANISH)
def mix_plan_over(stage: Stage) -> QWidget | None:
    """The plan laid over a narrow page."""
    _mix(stage).show_plan(True)
    stage.settle()
    return None


@scene(PLAIN, WIDE, LARGE_SPANISH)
def mix_by_hand(stage: Stage) -> QWidget | None:
    """Parts counted by hand, and wishes said."""
    page = _mix(stage)
    document = stage.window.document
    study = mixing.set_part(
        document.study, "B", stage.window.planner.plan.band("B").classroom.mix, "sap_green", 1
    )
    document.change("", mixing.forbid_everywhere(study, "black", True))
    stage.settle()
    page.choose(1)
    page.rows.detail.stages._segments["hand"].click()
    return None


@scene(PLAIN, WIDE, LARGE_SPANISH)
def mix_compared(stage: Stage) -> QWidget | None:
    """The blues side by side."""
    page = _mix(stage)
    page.rows.detail.stages._segments["compare"].click()
    return None


@scene(PLAIN, WIDE, LARGE_SPANISH)
def mix_meeting(stage: Stage) -> QWidget | None:
    """A meeting of two bands, opened."""
    _mix(stage).choose_row(3)
    return None


@scene(PLAIN, WIDE)
def mix_seven_bands(stage: Stage) -> QWidget | None:
    """As many bands as a sky may have."""
    sample_study(stage)
    set_bands(stage, 0.08, 0.16, 0.25, 0.33, 0.41, 0.5, horizon=0.61)
    page = stage.page("mix")
    assert isinstance(page, MixPage)
    page.choose(2)
    return None


@scene(PLAIN, WIDE)
def mix_one_band(stage: Stage) -> QWidget | None:
    """A sky of one band."""
    sample_study(stage)
    set_bands(stage, horizon=0.61)
    stage.page("mix")
    return None


@scene(PLAIN)
def mix_empty(stage: Stage) -> QWidget | None:
    """No sky yet."""
    stage.page("mix")
    stage.settle()
    return None


@scene(PLAIN, WIDE, LARGE_SPANISH)
def mix_on_a_scrap(stage: Stage) -> QWidget | None:
    """A scrap of three strokes, one try kept before."""
    page = _scrap(stage, 2)
    page.scrap.desk.keep()
    _held(stage, page)
    page.scrap.desk.add_path(stage.folder / "scrap.png")
    _held(stage, page)
    page.rows.reveal()
    return None


@scene(PLAIN, LARGE_SPANISH)
def mix_scrap_asked_for(stage: Stage) -> QWidget | None:
    """Before there is any scrap."""
    page = _mix(stage)
    page.rows.detail.stages._segments["scrap"].click()
    return None


def _scrap(stage: Stage, band: int) -> MixPage:
    """The stage of scraps with a picture drawn for it: strokes of the mixes, each a little off."""
    page = _mix(stage)
    plan = stage.window.planner.plan
    assert plan is not None
    pixels = np.full((300, 460, 3), 226, np.uint8)
    for number, letter in enumerate("BCD"):
        chosen = plan.band(letter).classroom
        assert chosen is not None
        (key, count), *rest = chosen.mix.parts
        parts = {key: 2 * count + 1, **{other: 2 * parts for other, parts in rest}}
        wash = make_mix(plan.box, parts, 1.2 * chosen.mix.load_ml)
        left = 40 + 140 * number
        pixels[70:210, left : left + 100] = np.round(226 * np.array(wash.colour.srgb))
    path = stage.folder / "scrap.png"
    Image.fromarray(pixels).save(path)
    page.choose(band)
    page.rows.detail.stages._segments["scrap"].click()
    page.scrap.desk.add_path(path)
    _held(stage, page)
    return page


def _held(stage: Stage, page: MixPage) -> None:
    for _ in range(300):
        stage.process(30)
        if not page.scrap.desk.running:
            return
