"""A lesson with everything in it, for `tools.screenshots`: sheets, scores, answers, class view.

The sheets are painted by the simulator of the tests, so this needs a checkout.
"""

from __future__ import annotations

import sys
from dataclasses import replace
from functools import lru_cache
from pathlib import Path

import numpy as np
from PIL import Image
from PySide6.QtWidgets import QWidget

from core.bands.lines import Bands
from core.lesson.lesson import Question
from core.study import SheetEntry, with_bands, with_sheet, with_title, with_worksheet
from core.worksheet.worksheet import SheetPage, Worksheet, with_page, with_score
from tools.screenshot_stage import LARGE_TEXT, PLAIN, WIDE, Stage, scene

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "tests"))

from simulator import Scene, SheetSpec, Shot
from simulator import scene as painted

SEED = 12
_SIZE = (1600, 1200)


@lru_cache(maxsize=4)
def sheet(number: int) -> Scene:
    """Sheet 0 with its lines too high and a hard edge; sheet 1 nearer the photo."""

    def spec(plain: SheetSpec, rng: np.random.Generator) -> SheetSpec:
        raised = (0.06, 0.015)[number]
        widths = list(plain.widths)
        if number == 0:
            widths[-1] = 0.004
        lines = tuple(y - raised for y in plain.lines)
        return replace(plain, lines=lines, widths=tuple(widths), height=700)

    def shot(usual: Shot, rng: np.random.Generator) -> Shot:
        return Shot(
            size=_SIZE, fill=0.86, tilt_deg=1.5, perspective=0.02, light=(30.0, 1.15),
            noise=0.003, seed=3 + number,
        )  # fmt: skip

    return painted(SEED, spec_changes=spec, shot_changes=shot, copy=True)


def whole_lesson(stage: Stage, sheets: int = 2) -> None:
    """A study with photo, lines, sheets, scores, answers and a remark."""
    path = stage.folder / "evening.png"
    Image.fromarray(sheet(0).reference).save(path)
    stage.open(path)
    document = stage.window.document
    study = with_title(document.study, "Evening over the Linnet Moor")
    study = with_bands(study, Bands(1.0, sheet(0).lines))
    worksheet = study.worksheet
    for number in range(sheets):
        picture = stage.window.pictures.add(f"sheet {number + 1}.jpg", sheet(number).jpeg)
        study = with_sheet(study, number, SheetEntry(picture))
        scores = {"hue": 6 + number, "value": 7, "intensity": 5 + 2 * number, "placement": 6}
        answers = (
            "My yellow sits too high. I stopped with the blue too soon.",
            "Yes: I came down further with the blue while the sheet still shone.",
        )
        worksheet = with_page(
            worksheet, number, SheetPage(answer=answers[number], date="2027-03-04")
        )
        for quality, score in scores.items():
            worksheet = with_score(worksheet, number, quality, score)  # type: ignore[arg-type]
    first = replace(worksheet.pages[0], change_first="placement")
    worksheet = replace(
        with_page(worksheet, 0, first),
        student_code="7B-14",
        class_code="7B",
        remark="The second sky breathes. Keep the wet edge that well.",
    )
    document.change("lesson", with_worksheet(study, worksheet))
    stage.settle()


@scene(PLAIN, WIDE, LARGE_TEXT)
def lesson_sheets(stage: Stage) -> QWidget | None:
    """Both sheets, checked."""
    whole_lesson(stage)
    stage.page("sheets")
    return None


@scene(PLAIN, LARGE_TEXT)
def lesson_one_sheet(stage: Stage) -> QWidget | None:
    """Sheet 1 alone."""
    whole_lesson(stage, 1)
    stage.page("sheets")
    return None


@scene(PLAIN, WIDE, LARGE_TEXT)
def lesson_unscored(stage: Stage) -> QWidget | None:
    """Sheet 1 is there, its scores are not: the findings wait."""
    whole_lesson(stage, 1)
    document = stage.window.document
    document.change("lesson", with_worksheet(document.study, Worksheet()))
    stage.page("sheets")
    return None


@scene(PLAIN, WIDE, LARGE_TEXT)
def lesson_worksheet(stage: Stage) -> QWidget | None:
    """The worksheet, filled in."""
    whole_lesson(stage)
    stage.page("worksheet")
    return None


@scene(PLAIN, WIDE, LARGE_TEXT)
def lesson_mix(stage: Stage) -> QWidget | None:
    """The mixes of the lesson's sky."""
    whole_lesson(stage, 0)
    stage.page("mix")
    return None


def _class_view(stage: Stage, answers: int) -> QWidget | None:
    stage.open_sample("dusk")
    stage.window.class_room.open()
    view = stage.window.class_room.view
    assert view is not None
    view.showNormal()  # the offscreen screen is small
    view.resize(stage.window.size())
    stage.process()
    view.run("next band")
    for _ in range(answers):
        view.run("answer")
    return view


@scene(PLAIN, WIDE)
def class_view_asked(stage: Stage) -> QWidget | None:
    """Nothing answered yet."""
    return _class_view(stage, 0)


@scene(PLAIN, WIDE)
def class_view_half(stage: Stage) -> QWidget | None:
    """Hue, class and value answered, the demonstration begun."""
    view = _class_view(stage, 3)
    stage.window.class_room.view.run("step on")
    return view


@scene(PLAIN, WIDE)
def class_view_answered(stage: Stage) -> QWidget | None:
    """Everything answered."""
    return _class_view(stage, 5)


@scene(PLAIN)
def class_view_tally(stage: Stage) -> QWidget | None:
    """Hands counted."""
    view = _class_view(stage, 0)
    room = stage.window.class_room.view
    question: Question = "hue"
    room.run("tally")
    for choice, count in (("violet", 12), ("blue-violet", 14), ("red-violet", 3)):
        room.tally.choose(room.tally.keys.index(choice))
        room._set(room.tally.add(room.lesson, count))
    assert room.lesson.hands_in_all(question) == 29
    return view


@scene(PLAIN)
def class_view_keys(stage: Stage) -> QWidget | None:
    """The list of keys."""
    view = _class_view(stage, 0)
    stage.window.class_room.view.run("keys")
    return view


@scene(PLAIN, WIDE)
def class_view_viewfinder(stage: Stage) -> QWidget | None:
    """Grey card all over but for a window on the band."""
    view = _class_view(stage, 0)
    stage.window.class_room.view.run("viewfinder")
    return view


@scene(PLAIN, WIDE)
def class_view_over(stage: Stage) -> QWidget | None:
    """The photo full height, wheel and questions over it."""
    view = _class_view(stage, 3)
    stage.window.class_room.view.run("over")
    return view


@scene(PLAIN, WIDE)
def class_view_painted(stage: Stage) -> QWidget | None:
    """The sky has painted itself: photo and paint edge to edge."""
    view = _class_view(stage, 0)
    stage.window.class_room.view.run("paint")
    return view


@scene(PLAIN)
def class_view_painting(stage: Stage) -> QWidget | None:
    """The brush is in the third band."""
    view = _class_view(stage, 0)
    room = stage.window.class_room.view
    room.run("paint")
    room.brush._at = 2.6
    return view


@scene(PLAIN)
def class_view_all_answered(stage: Stage) -> QWidget | None:
    """Every band is answered: paint has come to all of the right half."""
    view = _class_view(stage, 0)
    room = stage.window.class_room.view
    room.run("band before")
    for _ in range(40):
        room.run("advance")
    return view


def _demonstration(stage: Stage, stage_name: str, number: int = 0) -> QWidget | None:
    view = _class_view(stage, 0)
    room = stage.window.class_room.view
    wanted = [i for i, pace in enumerate(room.pacing.steps) if pace.stage == stage_name]
    room.run("step on")
    for _ in range(wanted[number]):
        room.run("step on")
    return view


@scene(PLAIN, WIDE)
def demonstration_wet(stage: Stage) -> QWidget | None:
    """Clean water, the sheet as it lies."""
    return _demonstration(stage, "wet")


@scene(PLAIN, WIDE)
def demonstration_lay(stage: Stage) -> QWidget | None:
    """The third band is laid now."""
    return _demonstration(stage, "lay", 2)


@scene(PLAIN)
def demonstration_pull(stage: Stage) -> QWidget | None:
    """Pulled together while it is wet."""
    return _demonstration(stage, "pull")


@scene(PLAIN, WIDE)
def demonstration_stop(stage: Stage) -> QWidget | None:
    """Hands off."""
    return _demonstration(stage, "stop")


@scene(PLAIN)
def demonstration_dry(stage: Stage) -> QWidget | None:
    """The drying clock."""
    return _demonstration(stage, "dry")


@scene(PLAIN, LARGE_TEXT)
def first_run(stage: Stage) -> QWidget | None:
    """What a newcomer sees."""
    stage.open_sample("dusk")
    stage.window.greet()
    stage.process(900)
    return None


@scene(PLAIN, LARGE_TEXT)
def guide(stage: Stage) -> QWidget | None:
    """The guide, at the mixes."""
    stage.window.help.show_chapter("mix")
    stage.process(100)
    window = stage.window.help.guide
    window.resize(980, 680)
    stage.process(50)
    return window
