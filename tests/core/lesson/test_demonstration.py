"""The demonstration's steps: in the order of work, one band at a time, in few words."""

from __future__ import annotations

import pytest
from paint_tools import sky_plan

import sample_scenes
from core.lesson.demonstration import paces, pull_text, work_at
from core.paint.preview import laying_order
from core.paint.wash.order import order_of_work
from core.paint.words.parts import parts_text


def test_without_a_plan_the_steps_are_general():
    assert [pace.stage for pace in paces(None)] == ["wet", "lay", "pull", "stop", "dry"]
    assert all(work_at(pace, None).title and work_at(pace, None).todo for pace in paces(None))
    order = order_of_work([], [])
    assert [pace.stage for pace in paces(order)] == ["wet", "stop", "dry"]


@pytest.mark.parametrize("name", sample_scenes.names())
def test_bands_are_laid_one_at_a_time_in_the_order_of_work(name):
    plan = sky_plan(name)
    steps = paces(plan.order)
    lays = [pace for pace in steps if pace.stage == "lay"]
    assert tuple(pace.letter for pace in lays) == laying_order(plan)
    for number, pace in enumerate(lays):
        assert pace.laid == tuple(each.letter for each in lays[:number])
        assert pace.beside in ("", *pace.laid)
        assert pace.apart in ("", *pace.laid)
    assert steps[0].stage == "wet"
    assert [pace.stage for pace in steps[-2:]] == ["stop", "dry"]
    rinses = sum(step.stage == "rinse" for step in plan.order.steps)
    assert sum(pace.rinse for pace in lays) == rinses
    assert any(pace.stage == "pull" for pace in steps) == any(
        step.stage == "pull" for step in plan.order.steps
    )


@pytest.mark.parametrize("name", sample_scenes.names())
def test_every_step_says_what_to_do_and_a_band_its_mix(name):
    plan = sky_plan(name)
    for pace in paces(plan.order):
        work = work_at(pace, plan)
        assert work.title
        assert work.todo[0].isupper() or work.todo[0].isdigit()
        assert "{" not in work.title + work.todo
        assert bool(work.mix) == (pace.stage == "lay")
        if pace.stage == "lay":
            mix = plan.band(pace.letter).classroom.mix
            assert work.mix.lower() == parts_text(plan.box, mix).lower()
            assert f"from {pace.letter}" not in work.todo


def test_what_is_pulled_is_named_by_its_hue():
    # The sheet of this sky lies upside down: orange, the lowest, is on top of it.
    assert sky_plan("dusk").order.turn_sheet
    assert "the red up into the wet, the orange down" in pull_text(sky_plan("dusk"))
    assert not sky_plan("pines").order.turn_sheet
    assert "the orange up into the wet, the yellow down" in pull_text(sky_plan("pines"))
    assert "once" in pull_text(None)
