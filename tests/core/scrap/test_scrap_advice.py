"""What is said to add to a puddle, on puddles of known content."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from simulator.puddles import CASES, Wrong

from core.colour import delta_E_2000
from core.paint.box.box import TWELVE_PAN, Box
from core.paint.mixture.mix import Mix, make_mix
from core.paint.pigment.card_paint import CardPaint
from core.paint.pigment.catalogue import CATALOGUE
from core.paint.pigment.measured import measured_paints
from core.scrap.additions import MOST_GROWN, judge_additions
from core.scrap.advice import Advice, advise
from core.scrap.model import Stroke
from core.scrap.paints import paints_for
from core.scrap.puddle import estimate

VIOLET = make_mix(TWELVE_PAN, {"ultramarine": 2, "crimson": 3}, 0.006)
ORANGE = make_mix(TWELVE_PAN, {"mid_yellow": 3, "warm_red": 1}, 0.01)


def stroke_of(
    parts: dict[str, float], load_ml: float, added: dict[str, float] | None = None
) -> Stroke:
    total = sum(parts.values())
    paints = paints_for(TWELVE_PAN, make_mix(TWELVE_PAN, dict.fromkeys(parts, 1), load_ml))
    load = np.array([load_ml * parts.get(key, 0.0) / total for key in paints.keys])
    L, a, b = paints.Lab(load).tolist()
    return Stroke((L, a, b), added or {})


def advice_on(mix: Mix, parts: dict[str, float], load_ml: float | None = None) -> Advice:
    return advise(TWELVE_PAN, mix, mix.Lab, [stroke_of(parts, load_ml or mix.load_ml)])


@pytest.mark.parametrize("mix", [VIOLET, ORANGE])
def test_a_mix_that_came_out_right_serves(mix: Mix) -> None:
    advice = advice_on(mix, {key: float(count) for key, count in mix.parts})
    assert advice.deed == "serves"
    assert advice.addition.parts == ()
    assert advice.delta_E_2000 < 0.01


def test_too_strong_a_wash_gets_water_alone() -> None:
    advice = advice_on(ORANGE, dict(ORANGE.parts), 2.2 * ORANGE.load_ml)
    assert advice.deed == "water"
    assert advice.as_it_is.thinning == pytest.approx(1 / 2.2, rel=0.2)


def test_too_thin_a_wash_is_painted_stronger() -> None:
    assert advice_on(VIOLET, dict(VIOLET.parts), VIOLET.load_ml / 1.8).deed == "stronger"


def test_what_is_missing_is_added() -> None:
    advice = advice_on(VIOLET, {"ultramarine": 1.0, "crimson": 3.0})
    assert advice.deed == "add"
    assert advice.addition.parts[0][0] == "ultramarine"
    assert advice.addition.delta_E_2000 < advice.as_it_is.delta_E_2000


def test_nothing_is_taken_out_and_the_puddle_never_trebled() -> None:
    puddle = estimate(
        paints_for(TWELVE_PAN, VIOLET), [2, 3], 0.006, [stroke_of({"crimson": 1.0}, 0.006)]
    )
    judged = judge_additions(puddle, np.array(VIOLET.Lab))
    assert (judged.added >= 0).all()
    assert judged.added.sum(axis=1).max() <= (MOST_GROWN - 1) * 5


def test_a_puddle_full_of_another_colour_is_begun_again_and_the_paint_named() -> None:
    advice = advice_on(ORANGE, {"mid_yellow": 3.0, "warm_red": 1.0, "prussian_blue": 1.5})
    assert advice.deed == "begin again"
    assert advice.got_in in ("prussian_blue", "ultramarine", "cerulean_blue")


def test_a_puddle_given_up_is_offered_to_the_band_it_serves() -> None:
    spoiled = {"mid_yellow": 3.0, "warm_red": 1.0, "prussian_blue": 1.5}
    stroke = stroke_of(spoiled, ORANGE.load_ml)
    bands = {"B": (90.0, 0.0, 5.0), "C": stroke.Lab}
    advice = advise(TWELVE_PAN, ORANGE, ORANGE.Lab, [stroke], bands)
    assert advice.serves == "C"
    assert advise(TWELVE_PAN, ORANGE, ORANGE.Lab, [stroke], {"B": bands["B"]}).serves is None


def test_two_strokes_of_a_puddle_know_more_than_one() -> None:
    paints = paints_for(TWELVE_PAN, VIOLET)
    true = {"ultramarine": 1.0, "crimson": 3.0}
    strokes = [stroke_of(true, load) for load in (0.003, 0.008)]
    one, two = (estimate(paints, [2, 3], 0.006, some) for some in (strokes[:1], strokes))
    for puddle in (one, two):
        share = puddle.middle[0] / puddle.middle[:2].sum()
        assert share == pytest.approx(0.25, abs=0.08)
    assert _spread(two) < _spread(one)


def _spread(puddle: object) -> float:
    ratio = np.log(puddle.amounts[:, 0] / puddle.amounts[:, 1])  # type: ignore[attr-defined]
    middle = puddle.weight @ ratio  # type: ignore[attr-defined]
    return float(puddle.weight @ (ratio - middle) ** 2)  # type: ignore[attr-defined]


def test_strokes_of_two_mixes_are_told() -> None:
    orange = stroke_of({"mid_yellow": 3.0, "warm_red": 1.0}, 0.004)
    violet = stroke_of({"ultramarine": 2.0, "crimson": 3.0}, 0.006)
    alike = stroke_of({"ultramarine": 2.0, "crimson": 3.0}, 0.003)
    told = [
        advise(TWELVE_PAN, VIOLET, VIOLET.Lab, strokes).one_puddle
        for strokes in ([violet, orange], [violet, alike])
    ]
    assert told[:2] == [False, True]


def test_a_second_try_counts_what_was_added() -> None:
    first = stroke_of({"ultramarine": 1.0, "crimson": 3.0}, 0.006)
    after = stroke_of({"ultramarine": 2.0, "crimson": 3.0}, 0.006, {"ultramarine": 1.0})
    advice = advise(TWELVE_PAN, VIOLET, VIOLET.Lab, [first, after])
    assert advice.as_it_is.delta_E_2000 < 1.2
    assert sum(parts for _, parts in advice.addition.parts) <= 0.25
    fresh = advise(TWELVE_PAN, VIOLET, VIOLET.Lab, [first])
    assert dict(fresh.addition.parts)["ultramarine"] >= 0.5


def test_the_same_strokes_give_the_same_advice() -> None:
    stroke = stroke_of({"ultramarine": 1.0, "crimson": 3.0}, 0.006)
    assert advise(TWELVE_PAN, VIOLET, VIOLET.Lab, [stroke]) == advise(
        TWELVE_PAN, VIOLET, VIOLET.Lab, [stroke]
    )


def test_black_and_white_are_no_cure() -> None:
    keys = paints_for(TWELVE_PAN, VIOLET).keys
    assert "black" not in keys
    assert "white" not in keys


def test_bare_paper_has_no_puddle() -> None:
    with pytest.raises(ValueError, match="bare paper"):
        paints_for(TWELVE_PAN, Mix((), 0.0, (95.0, 0.0, 0.0)))


def test_no_stroke_is_refused() -> None:
    with pytest.raises(ValueError, match="at least one stroke"):
        estimate(paints_for(TWELVE_PAN, VIOLET), [2, 3], 0.02, [])


def test_advice_helps_puddles_of_another_film() -> None:
    """Few of benchmarks/scrap.py, so that a mistake shows at once; the figures stand there."""
    before, after = [], []
    for number, case in enumerate(CASES):
        for seed in range(12):
            wrong = Wrong(case, np.random.default_rng([77, seed, number]))
            before.append(wrong.off())
            target = tuple(wrong.target.tolist())
            stroke = Stroke(wrong.stroke(wrong.mix.load_ml, 0.35))
            advice = advise(wrong.box, wrong.mix, target, [stroke])
            if advice.deed == "begin again":
                wrong.begin_again()
            else:
                wrong.add(dict(advice.addition.parts))
            after.append(wrong.off())
    assert np.median(after) < 0.65 * np.median(before)
    assert np.percentile(after, 90) < 0.65 * np.percentile(before, 90)


def test_the_film_of_the_simulator_paints_single_paints_as_measured() -> None:
    from simulator.puddles import nature_Lab

    from core.paint.pigment.measured import load_Lab

    loads = np.concatenate([load * np.eye(13) for load in (0.0005, 0.004, 0.03)])
    off = np.asarray(delta_E_2000(nature_Lab(loads), load_Lab(loads)))
    assert np.median(off) < 1.5
    mixed = np.random.default_rng(3).dirichlet(np.ones(13), 40) * 0.02
    assert np.median(delta_E_2000(nature_Lab(mixed), load_Lab(mixed))) > 0.2


def test_paints_that_are_hardly_known_leave_more_open() -> None:
    """An own paint's uncertainty is carried through: it is measured ultramarine, doubted."""
    data = measured_paints()
    row = data.index("ultramarine")
    box_of = {}
    for trust, size in (("known well", 0.02), ("stands in", 0.4)):
        ways = tuple(tuple(size * np.cos(k * np.linspace(0, 3, 82))) for k in range(4))
        card = CardPaint(tuple(data.K[row]), tuple(data.S[row]), ways, 0.0, trust, "window", 0)
        own = replace(CATALOGUE["ultramarine"], key="our_blue", name="our blue", card=card)
        box_of[trust] = Box("ours", (own, CATALOGUE["crimson"], CATALOGUE["sap_green"]))
    spreads = []
    for box in box_of.values():
        mix = make_mix(box, {"our_blue": 2, "crimson": 3}, 0.006)
        paints = paints_for(box, mix)
        spreads.append(_spread(estimate(paints, [2, 3], 0.006, [Stroke(mix.Lab)])))
        assert advise(box, mix, mix.Lab, [Stroke(mix.Lab)]).deed == "serves"
    assert spreads[1] > 1.5 * spreads[0]
