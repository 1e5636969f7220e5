from __future__ import annotations

from dataclasses import replace

import pytest
from window_tools import wait_until_still

from app.state.tasks import wait_for_tasks
from core import mixing
from core import study as edits
from core.errors import BoxError
from core.paint import plan as core_plan
from core.paint.box.box import SPLIT_PRIMARY
from core.paint.mixture.transition import sample_transitions
from core.paint.options import BandChoice, MixOptions
from core.paint.plan import plan_mixes
from core.paint.wash.amounts import SHEETS


def wait_for_plan(window, qtbot) -> None:
    qtbot.waitUntil(
        lambda: not window.planner.working and not window.reader.working, timeout=20_000
    )


def test_nothing_is_planned_without_a_photo(window, qtbot) -> None:
    assert window.workspace.planner is window.planner
    assert window.planner.plan is None
    assert not window.planner.working
    window.document.change("box", replace(window.document.study, box=SPLIT_PRIMARY))
    assert not window.planner.working


def test_the_plan_is_that_of_the_readings_and_of_the_photo(sky_window, qtbot) -> None:
    wait_for_plan(sky_window, qtbot)
    study, readings = sky_window.document.study, sky_window.reader.readings
    photo = sky_window.reader.photo
    edges = (0.0, *(reading.bottom for reading in readings))
    transitions = sample_transitions(photo.pixels, edges, photo.opaque)
    assert sky_window.planner.plan == plan_mixes(readings, study.box, study.mix, transitions)
    assert [band.letter for band in sky_window.planner.plan.bands] == ["A", "B", "C", "D"]
    assert sky_window.planner.plan.bands[0].meets_below is not None


def test_box_and_wishes_are_planned_for_and_undone(sky_window, qtbot) -> None:
    wait_for_plan(sky_window, qtbot)
    planner, document = sky_window.planner, sky_window.document
    first = planner.plan
    seen = []
    planner.plan_changed.connect(seen.append)
    document.change("box", replace(document.study, box=SPLIT_PRIMARY))
    assert planner.working
    assert planner.plan is first  # the old plan stays until the new one has come
    wait_for_plan(sky_window, qtbot)
    assert planner.plan.box == SPLIT_PRIMARY
    parts = (("ultramarine", 4), ("crimson", 1))
    wished = MixOptions(SHEETS["A3"]).with_choice("B", BandChoice(parts=parts))
    document.change("parts", replace(document.study, mix=wished))
    wait_for_plan(sky_window, qtbot)
    assert planner.plan.sheet == SHEETS["A3"]
    assert planner.plan.band("B").classroom.mix.parts == parts
    document.stack.undo()
    document.stack.undo()
    wait_for_plan(sky_window, qtbot)
    assert planner.plan == first
    assert seen[-1] is planner.plan


def test_a_dragged_line_is_planned_for_once_it_rests(sky_window, qtbot, monkeypatch) -> None:
    wait_for_plan(sky_window, qtbot)
    planner, document = sky_window.planner, sky_window.document
    asked = []
    monkeypatch.setattr(
        "core.paint.plan.plan_mixes", lambda *args: (asked.append(args[0]), plan_mixes(*args))[1]
    )
    for step in range(6):
        document.change("move", edits.move_line(document.study, 1, 0.42 + 0.01 * step))
    wait_until_still(sky_window, qtbot)
    wait_for_plan(sky_window, qtbot)
    assert planner.plan.amounts.bands[1].letter == "B"
    assert asked == [sky_window.reader.readings]


def test_another_edit_overtakes_a_plan_on_its_way(sky_window, qtbot) -> None:
    wait_for_plan(sky_window, qtbot)
    planner, document = sky_window.planner, sky_window.document
    for size in ("A3", "A5", "letter"):
        with qtbot.waitSignal(document.study_changed):
            document.change("sheet", replace(document.study, mix=MixOptions(SHEETS[size])))
    wait_for_plan(sky_window, qtbot)
    assert planner.plan.sheet == SHEETS["letter"]


def test_what_is_likely_is_planned_ahead_and_called_off_by_what_is_asked(
    sky_window, qtbot, monkeypatch
) -> None:
    wait_for_plan(sky_window, qtbot)
    planner, document = sky_window.planner, sky_window.document
    first, planned, plans = planner.plan, [], []
    monkeypatch.setattr(
        "core.paint.plan.plan_mixes", lambda *args: (planned.append(args[1]), plan_mixes(*args))[1]
    )
    planner.plan_changed.connect(plans.append)
    study = document.study
    likely = [mixing.tick_paint(study, key, False) for key in ("sap_green", "crimson")]
    planner.look_ahead(likely)
    assert not planner.working
    qtbot.waitUntil(lambda: len(planned) == 2 and wait_for_tasks(0), timeout=20_000)
    assert planned == [study.box for study in likely]
    assert planner.plan is first
    assert not plans
    planner.look_ahead(likely * 20)
    document.change("tick", likely[0])
    wait_for_plan(sky_window, qtbot)
    assert planner.plan.box == likely[0].box
    assert wait_for_tasks()
    assert len(planned) < 2 + len(likely) * 20
    assert len(plans) == 1


def test_a_wish_that_cannot_be_met_is_said_and_the_plan_stays(sky_window, qtbot) -> None:
    wait_for_plan(sky_window, qtbot)
    planner, document = sky_window.planner, sky_window.document
    first = planner.plan
    strange = MixOptions().with_choice("A", BandChoice(pinned=("cobalt_blue",)))
    with pytest.raises(BoxError) as raised:
        core_plan.plan_mixes(sky_window.reader.readings, document.study.box, strange)
    document.change("pin", replace(document.study, mix=strange))
    wait_for_plan(sky_window, qtbot)
    assert planner.plan is first
    assert sky_window.notice_display.text == str(raised.value)


def test_another_photo_takes_the_plan_away_until_it_is_read(sky_window, qtbot, tmp_path) -> None:
    from window_tools import draw_sky

    wait_for_plan(sky_window, qtbot)
    plans = []
    sky_window.planner.plan_changed.connect(plans.append)
    with qtbot.waitSignal(sky_window.reader.photo_changed, timeout=20_000):
        sky_window.opener.open_path(draw_sky(tmp_path / "another.png"))
    assert sky_window.planner.plan is None
    wait_until_still(sky_window, qtbot)
    wait_for_plan(sky_window, qtbot)
    assert plans[0] is None
    assert plans[-1] is sky_window.planner.plan
    assert len(plans) == 2
