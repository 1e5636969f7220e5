"""What a user is shown of the sample skies, kept: a change of any price of the choice shows here.

Our own output: a regression test, no proof of rightness (test_paint_teacher.py and
test_paint_sense.py hold what a teacher would say). `GRADEWASH_NEW_PLANS=1` writes the file anew:
read the difference before keeping it.
"""

from __future__ import annotations

import json
import os
from pathlib import Path
from types import SimpleNamespace

import numpy as np
import pytest
from paint_tools import bands, lab, sky_plan

import sample_scenes
from core.colour import delta_E_2000
from core.paint.box.box import SPLIT_PRIMARY, THIRTEEN, TWELVE_PAN
from core.paint.choice import runs
from core.paint.choice.closest_plan import reach_of
from core.paint.pigment.measured import load_Lab, measured_paints
from core.paint.plan import plan_mixes

KEPT = Path(__file__).parents[2] / "data" / "kept_plans.json"


def shown(planned) -> str:
    if planned is None:
        return ""
    parts = " : ".join(f"{count} {key}" for key, count in planned.mix.parts)
    return f"{parts or planned.kind} ({planned.verdict})"


def plan_of(name, box) -> dict[str, list[str]]:
    return {
        band.letter: [
            shown(band.classroom),
            shown(band.closest),
            band.reach,
            *(shown(item.planned) for item in band.alternatives),
        ]
        for band in sky_plan(name, box).bands
    }


def test_the_plans_of_the_sample_skies_are_as_kept():
    plans = {
        f"{name}, {box.name}": plan_of(name, box)
        for name in sample_scenes.names()
        for box in (TWELVE_PAN, SPLIT_PRIMARY, THIRTEEN)
    }
    if os.environ.get("GRADEWASH_NEW_PLANS"):
        KEPT.write_text(json.dumps(plans, indent=1, sort_keys=True) + "\n", encoding="utf-8")
    assert plans == json.loads(KEPT.read_text(encoding="utf-8"))


def short_of(*, delta_E=9.0, value=0.0, chroma=0.0, load_ml=0.001, target_value=4.0):
    """A closest mix that misses, and its band, as far as the reach looks at them."""
    closest = SimpleNamespace(
        delta_E_2000=delta_E,
        falls_short=SimpleNamespace(value=value, chroma=chroma),
        mix=SimpleNamespace(load_ml=load_ml),
    )
    return closest, SimpleNamespace(munsell=SimpleNamespace(value=target_value))


@pytest.mark.parametrize(
    ("case", "says"),
    [
        ({"delta_E": 2.9, "chroma": 5.0}, "reached"),
        ({"chroma": 1.2}, "too dull"),
        ({"chroma": 0.8}, "out of reach"),
        ({"chroma": -0.8}, "too intense"),
        ({"chroma": -0.6}, "out of reach"),
        ({"value": 0.5, "load_ml": 1.0}, "too dark"),
        ({"value": 0.3, "load_ml": 1.0}, "out of reach"),
        ({"value": 0.5, "load_ml": 0.0001}, "out of reach"),
        ({"value": -0.3, "target_value": 7.0}, "too light"),
        ({"value": -0.1, "target_value": 7.0}, "out of reach"),
        ({"value": -0.3, "target_value": 6.0}, "out of reach"),
    ],
)
def test_what_a_box_does_not_reach_is_named_from_where_it_is_seen(case, says):
    assert reach_of(*short_of(**case)) == says


@pytest.mark.parametrize(
    ("gaps", "chosen"),
    [
        # A puddle of four parts must come nearer by .2 than one of two, no more and no less.
        ({4: 0.5, 2: 0.8}, 4),
        ({4: 0.5, 2: 0.6}, 2),
    ],
)
def test_one_puddle_for_many_bands_has_few_parts_unless_more_come_nearer(monkeypatch, gaps, chosen):
    monkeypatch.setattr(runs, "_serves", lambda box, parts, target, mix: gaps[parts[0][1]])
    mixes = [SimpleNamespace(parts=(("ultramarine", count),)) for count in gaps]
    bands = [SimpleNamespace()]
    found = [runs._shared_parts(None, bands, [mix]) for mix in mixes]
    assert found == [mix.parts for mix in mixes]
    # Both bands may take either; the gap counts once a band.
    halves = {count: gap / 2 for count, gap in gaps.items()}
    monkeypatch.setattr(runs, "_serves", lambda box, parts, target, mix: halves[parts[0][1]])
    assert runs._shared_parts(None, bands * 2, mixes) == (("ultramarine", chosen),)


@pytest.mark.parametrize(("away", "kind"), [(1.5, "paper"), (3.0, "classroom")])
def test_bare_paper_serves_only_what_the_eye_takes_for_it(away, kind):
    L, a, b = load_Lab(np.zeros(len(measured_paints().keys)))
    here, step = np.array([L, a, b]), np.array([-0.02, 0.0, 0.02])
    there = here
    while delta_E_2000(here, there) < away:
        there = there + step
    (band,) = plan_mixes(bands([lab(*there)]), TWELVE_PAN).bands
    assert band.classroom.kind == kind
