"""The dialogs, and the class view at its extremes, for `tools.screenshots`."""

from __future__ import annotations

import shutil
import time
from pathlib import Path

from PySide6.QtWidgets import QApplication, QDialog, QMenu, QWidget

import sample_scenes
from app.cards.paper import PAPERS
from app.choosing.window import ask_and_show
from app.files.files_ask import ask_title, ask_unsaved
from app.files.recovery import RecoveryDialog
from app.swatches.print_dialog import PrintCardDialog
from app.window.help_menu import show_about
from core.reading.wording import Wording
from core.study_file.contents import Contents
from core.study_file.recovery import Recovered
from tools.screenshot_lesson import whole_lesson
from tools.screenshot_scenes import BLUE, PALE, PEACH, draw_sky, sample_study, set_bands
from tools.screenshot_stage import LARGE_TEXT, PLAIN, WIDE, Stage, Variation, scene

SPANISH = Variation((1366, 768), "light", 100, "es")
SMALL_WALL = Variation((1024, 768), "light", 100, "en")
SMALL_LARGE = Variation((960, 600), "light", 150, "en")
LOW_LARGE = Variation((1366, 700), "light", 150, "en")


def _dialog(stage: Stage, ms: int = 200) -> QWidget:
    """The dialog that is open."""
    stage.process(ms)
    return next(
        w for w in QApplication.topLevelWidgets() if isinstance(w, QDialog) and w.isVisible()
    )


def _nothing() -> None:
    """What no button of a picture does."""


@scene(PLAIN, LARGE_TEXT, SPANISH)
def dialog_preferences(stage: Stage) -> QWidget | None:
    """The preferences."""
    stage.window.preferences_control.show()
    return _dialog(stage)


@scene(PLAIN, LARGE_TEXT, SPANISH)
def dialog_card(stage: Stage) -> QWidget | None:
    """Print a card."""
    sample_study(stage)
    dialog = stage.window.cards.open("plan")
    while dialog.working:
        stage.process()
    return _dialog(stage)


@scene(PLAIN, LARGE_TEXT, SPANISH)
def dialog_unsaved(stage: Stage) -> QWidget | None:
    """The question before changes are lost."""
    ask_unsaved(stage.window, "Dusk over Lake Fennary", _nothing, _nothing)
    return _dialog(stage)


@scene(PLAIN, LARGE_TEXT, SPANISH)
def dialog_title(stage: Stage) -> QWidget | None:
    """What the study is called."""
    ask_title(stage.window, "Dusk over Lake Fennary", lambda title: None)
    return _dialog(stage)


@scene(PLAIN, LARGE_TEXT, SPANISH)
def dialog_recovery(stage: Stage) -> QWidget | None:
    """Unsaved work of two windows that were cut off."""
    day = 86_400
    found = (
        _recovered(stage, "Dusk over Lake Fennary", "dusk.gradewash", day / 24),
        _recovered(stage, "Evening over the Linnet Moor, second try of class 7b", None, 3 * day),
    )
    RecoveryDialog(stage.window, found, lambda one: None, lambda one: None).open()
    return _dialog(stage)


def _recovered(stage: Stage, title: str, name: str | None, ago_s: float) -> Recovered:
    place = None if name is None else stage.folder / name
    return Recovered(title, title, place, time.time() - ago_s, Contents(b"", {}))


@scene(PLAIN, LARGE_TEXT, SPANISH)
def dialog_about(stage: Stage) -> QWidget | None:
    """About the program."""
    show_about(stage.window, _nothing)
    return _dialog(stage)


@scene(PLAIN, LARGE_TEXT, SPANISH)
def corner_editor(stage: Stage) -> QWidget | None:
    """The corners of a sheet."""
    whole_lesson(stage, 1)
    stage.page("sheets").set_corners(0)
    stage.settle()
    return None


def _menu(stage: Stage, name: str) -> QMenu:
    menu = stage.window.header.menu(name)
    menu.popup(stage.window.mapToGlobal(stage.window.rect().topLeft()))
    stage.process(100)
    return menu


@scene(PLAIN, LARGE_TEXT)
def menu_study(stage: Stage) -> QWidget | None:
    """The Study menu."""
    return _menu(stage, "study")


@scene(PLAIN, LARGE_TEXT)
def menu_edit_sheets(stage: Stage) -> QWidget | None:
    """The Edit menu on the Sheets page."""
    sample_study(stage)
    stage.page("sheets")
    return _menu(stage, "edit")


@scene(PLAIN, LARGE_TEXT)
def menu_view(stage: Stage) -> QWidget | None:
    """The View menu on the Read page."""
    sample_study(stage)
    return _menu(stage, "view")


@scene(SMALL_LARGE)
def sheets_small(stage: Stage) -> QWidget | None:
    """Both sheets in the smallest window with large text."""
    whole_lesson(stage)
    stage.page("sheets")
    return None


@scene(LOW_LARGE, SMALL_LARGE)
def read_low(stage: Stage) -> QWidget | None:
    """The Read page in a low window with large text."""
    sample_study(stage)
    return None


@scene(PLAIN, LARGE_TEXT, SPANISH, WIDE)
def choose_a_sky(stage: Stage) -> QWidget | None:
    """A folder's photos on the wall; one of them cannot be read."""
    folder = stage.folder / "photos"
    folder.mkdir()
    for name in sample_scenes.names():
        shutil.copy(sample_scenes.path(name), folder)
    (folder / "letter.jpg").write_text("no picture")
    box = stage.window.document.study.box
    choice = ask_and_show(stage.window, folder, box, Wording(), print, print)
    assert choice is not None
    choice.resize(stage.window.size())
    while choice.looking.running:
        stage.process()
    stage.process(100)
    return choice


@scene(PLAIN, LARGE_TEXT, SPANISH)
def guide_first(stage: Stage) -> QWidget | None:
    """The guide's first page."""
    stage.window.help.show_chapter("job")
    guide = stage.window.help.guide
    assert guide is not None
    guide.resize(guide.sizeHint().boundedTo(stage.window.size()))  # the offscreen screen is small
    stage.process(100)
    return guide


@scene(PLAIN, LARGE_TEXT)
def dialog_swatch_card(stage: Stage) -> QWidget | None:
    """Print a swatch card."""
    PrintCardDialog(
        stage.window, stage.window.document.study.box, PAPERS["a4"], lambda box, name: None
    ).open()
    return _dialog(stage)


@scene(PLAIN)
def guide_keys(stage: Stage) -> QWidget | None:
    """The guide, at the keys."""
    stage.window.help.show_chapter("keys")
    stage.process(100)
    window = stage.window.help.guide
    window.resize(980, 1400)
    stage.process(50)
    return window


def _class_view(stage: Stage, answers: int) -> QWidget | None:
    stage.window.class_room.open()
    view = stage.window.class_room.view
    assert view is not None
    view.showNormal()  # the offscreen screen is small
    view.resize(stage.window.size())
    stage.process()
    for _ in range(answers):
        view.run("answer")
    return view


def _sky(stage: Stage, width: int, height: int) -> Path:
    return draw_sky(stage.folder, (width, height), BLUE, PALE, PEACH)


@scene(PLAIN, SMALL_WALL)
def class_view_one_band(stage: Stage) -> QWidget | None:
    """The whole sky as one band."""
    sample_study(stage)
    set_bands(stage, horizon=0.61)
    return _class_view(stage, 5)


@scene(PLAIN, SMALL_WALL)
def class_view_seven_bands(stage: Stage) -> QWidget | None:
    """As many bands as are proposed at most."""
    sample_study(stage)
    set_bands(stage, 0.08, 0.16, 0.25, 0.33, 0.41, 0.5, horizon=0.61)
    return _class_view(stage, 5)


@scene(PLAIN, SMALL_WALL)
def class_view_portrait(stage: Stage) -> QWidget | None:
    """A photo held upright."""
    stage.open(_sky(stage, 900, 1600))
    return _class_view(stage, 3)


@scene(PLAIN, SMALL_WALL)
def class_view_panorama(stage: Stage) -> QWidget | None:
    """A very wide photo."""
    stage.open(_sky(stage, 9000, 900))
    return _class_view(stage, 3)
