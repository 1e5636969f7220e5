"""The kit list: amounts by the plan's own chain of measures, counts for the class."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache
from math import pi

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.cards.words import kit_groups, kit_intro, paint_with_code
from core.paint.box.box import THIRTEEN, TWELVE_PAN, Box
from core.paint.kit import Kit, kit_for
from core.paint.mixture.strength import STRENGTHS, WATER_TO_ONE
from core.paint.options import MixOptions
from core.paint.plan import plan_mixes
from core.paint.planned import MixPlan
from core.paint.wash.amounts import SHEETS
from core.paint.words.parts import strength_note
from core.reading.reading import BandReading, read_colour


def plan_of(*Labs: tuple[float, float, float], box: Box = TWELVE_PAN, sheet: str = "A4") -> MixPlan:
    readings = []
    for number, Lab in enumerate(Labs):
        colour, top = read_colour(Lab), number / len(Labs)
        readings.append(
            BandReading(
                "ABCDEFG"[number], top, top + 1 / len(Labs),
                colour, colour, colour, colour, 2.0, False, 0.0, 1.0,
            )
        )  # fmt: skip
    return plan_mixes(tuple(readings), box, MixOptions(sheet=SHEETS[sheet]))


DUSK = ((42.0, 22.0, -50.0), (60.0, 24.0, -20.0), (70.0, 32.0, 18.0))


def by_hand(plan: MixPlan) -> MixPlan:
    """One band of 5 mL, milk strength, three parts ultramarine and one crimson."""
    band = plan.bands[0]
    assert band.classroom is not None
    mix = replace(band.classroom.mix, parts=(("ultramarine", 3), ("crimson", 1)))
    planned = replace(band.classroom, mix=mix, strength="milk", toners=())
    only = replace(band, classroom=planned, amount_ml=5.0, second=None)
    amounts = replace(plan.amounts, bands=plan.amounts.bands[:1])
    return replace(plan, bands=(only,), amounts=amounts)


def test_paint_follows_millilitres_strength_and_parts() -> None:
    """5 mL of 1 part paint to 4 of water are 1 mL of paint; three quarters of it twice is 1.5."""
    kit = kit_for(by_hand(plan_of(*DUSK)), 30)
    assert {need.key: need.ml for need in kit.paints} == pytest.approx(
        {"ultramarine": 1.5, "crimson": 0.5}
    )
    assert kit.wells == 1
    groups = {group.heading: group for group in kit_groups(kit, by_hand(plan_of(*DUSK)))}
    paints = next(group for group in groups.values() if group.lines and group.lines[0].paint)
    assert [(line.each, line.whole) for line in paints.lines] == [
        ("1.5 mL", "45 mL"),
        ("0.5 mL", "15 mL"),
    ]


@pytest.mark.parametrize("strength", [s for s in STRENGTHS if s != "paper"])
def test_water_to_paint_is_what_the_words_say(strength) -> None:
    """The first figure after "1 part paint to"; cream is as much paint as water."""
    numbers = re.findall(r"\d+", strength_note(strength))
    said = float(numbers[1]) if numbers else 1.0
    assert said == WATER_TO_ONE[strength]


def test_a_class_of_thirty_on_a4() -> None:
    """60 sheets and one in ten to spare; 2 (297 + 210) + 4 x 20 mm of tape a sheet."""
    kit = kit_for(plan_of(*DUSK), 30)
    assert (kit.paper, kit.spare) == (66, 6)
    assert kit.tape_mm == 2 * 1094
    assert (kit.jars, kit.rinse_ml) == (30, 15_000)
    assert kit.dry_min == (10, 15)
    assert kit.minutes[0] < kit.minutes[1]
    assert kit.minutes[0] % 5 == kit.minutes[1] % 5 == 0


def test_a_bead_of_8_mm_is_a_quarter_of_a_millilitre() -> None:
    """The card says so: a ball's volume, 4/3 pi r cubed."""
    assert 4 / 3 * pi * 4**3 / 1000 == pytest.approx(0.25, abs=0.02)


@given(st.integers(1, 99), st.sampled_from(sorted(SHEETS)))
def test_nobody_runs_short(students: int, sheet: str) -> None:
    plan = plan_for(sheet)
    kit = kit_for(plan, students)
    assert kit.paper >= 2 * students
    wash = 2 * students * sum(band.amount_ml for band in plan.bands)
    assert 0 < sum(need.ml for need in kit.paints) * students < wash
    for group in kit_groups(kit, plan, "cm"):
        for line in group.lines:
            if line.paint:
                need = next(need.ml for need in kit.paints if need.key == line.paint)
                assert float(line.each.split()[0]) >= need - 1e-9
                assert float(line.whole.split()[0]) >= need * students - 1e-9


@cache
def plan_for(sheet: str) -> MixPlan:
    """The plan of one sky, on this paper."""
    return plan_of(*DUSK, sheet=sheet)


def test_larger_paper_takes_more_of_all() -> None:
    small, large = (kit_for(plan_for(sheet), 20) for sheet in ("A4", "A3"))
    assert large.tape_mm > small.tape_mm
    assert sum(n.ml for n in large.paints) > 1.5 * sum(n.ml for n in small.paints)


def test_a_white_sky_takes_no_paint() -> None:
    plan = plan_of((97.0, 0.0, 0.0))
    kit = kit_for(plan, 30)
    assert kit.paints == ()
    said = " ".join(note for group in kit_groups(kit, plan) for note in group.notes)
    assert "white of the paper" in said


def test_one_student_is_said_as_one() -> None:
    kit = kit_for(plan_of(*DUSK), 1)
    assert kit_intro(kit) == "For one student and two sheets."


@pytest.mark.parametrize("students", [0, 100, -1])
def test_no_class_has_none_or_a_hundred(students: int) -> None:
    with pytest.raises(ValueError, match="1 to 99"):
        kit_for(plan_of(*DUSK), students)


def test_paints_go_by_generic_and_colour_index_name() -> None:
    assert paint_with_code(TWELVE_PAN.paint("ultramarine")) == "Ultramarine, usually PB29"
    assert paint_with_code(TWELVE_PAN.paint("lemon_yellow")) == "Lemon yellow"


def test_cautions_name_metals_and_defer_to_label_and_school() -> None:
    plan = plan_of((70.0, 40.0, 55.0), (60.0, -5.0, -35.0), box=THIRTEEN)
    for made in (plan, plan_of(*DUSK, box=TWELVE_PAN.only(("ultramarine", "crimson")))):
        (cautions,) = [group for group in kit_groups(kit_for(made, 5), made) if group.caution]
        said = " ".join(cautions.notes)
        assert "label" in said
        assert "your school's rules come first" in said
        assert "drinking water" in said
        assert not re.search(r"\bsafe|non-toxic", said)


def test_tape_in_yards_where_lengths_are_inches() -> None:
    """66 m are 72 yards and a bit (international yard, 0.9144 m)."""
    plan = plan_of(*DUSK)
    kit: Kit = kit_for(plan, 30)
    said = {line.item: line.whole for line in kit_groups(kit, plan, "in")[0].lines}
    assert "72 yd" in said.values()
