"""Own paints fitted from readings: the fit, its doubts, how well it knows, and the words."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from core.colour import delta_E_2000
from core.errors import BoxError
from core.paint.box.box import TWELVE_PAN, Box
from core.paint.box.box_file import box_from_json, box_to_json, open_box, save_box
from core.paint.box.own_paint import own_paint, paint_of_card
from core.paint.mixture.mix import make_mix
from core.paint.own.doubts import doubts_of
from core.paint.own.fit import PaintedField, fit_card
from core.paint.own.known import mix_known
from core.paint.own.layer import Lab_slopes, film_slopes
from core.paint.own.phone import LOOSE
from core.paint.own.prior import prior_of
from core.paint.own.problem import Problem, Samples, Spreads
from core.paint.own.solve import solve
from core.paint.pigment.film import film_reflectance, paper_inside
from core.paint.pigment.measured import half_load_ml, measured_paints
from core.paint.words.own import own_paints_short, own_paints_text
from core.paint.words.parts import parts_note
from core.study import Study
from core.study_file.document import study_from_bytes, study_to_bytes

DATA = measured_paints()


def strong_crimson():
    """A school crimson: another spectrum than the measured one, and twice as strong."""
    row = DATA.index("alizarin_crimson")
    nm = np.arange(41)
    bent = np.exp(0.25 * np.sin(nm / 9.0))
    return 2 * DATA.K[row] * bent, 1.4 * DATA.S[row] / bent


def course(K, S, partner=None, ratio=0.0, pieces=6, seed=0, noise=0.6):
    """Readings along a stroke, from dark to pale, by the film itself."""
    rng = np.random.default_rng(seed)
    loads = np.geomspace(1.3, 0.03, pieces)
    share = 1.0 if partner is None else 1 / (1 + np.exp(-ratio))
    rows_K, rows_S, load = [K], [S], [loads * share]
    if partner is not None:
        row = DATA.index(partner)
        rows_K.append(DATA.K[row])
        rows_S.append(DATA.S[row])
        load.append(loads * (1 - share))
    R = film_reflectance(
        np.stack(load, 1), np.array(rows_K), np.array(rows_S), DATA.crowding, DATA.paper
    )
    Lab = DATA.spectrum_to_Lab(R) + rng.normal(0, noise, (pieces, 3))
    return tuple(map(tuple, Lab.tolist()))


def three_fields(key="own_crimson", one="ultramarine", two="cadmium_yellow"):
    K, S = strong_crimson()
    return [
        PaintedField(key, 0, "", course(K, S, pieces=8, seed=1)),
        PaintedField(key, 1, one, course(K, S, one, 0.2, seed=2)),
        PaintedField(key, 2, two, course(K, S, two, -0.2, seed=3)),
    ]


@pytest.fixture(scope="module")
def fitted():
    return fit_card(three_fields(), light="scan")


@pytest.fixture(scope="module")
def box(fitted):
    paint = paint_of_card("crimson of ours", "crimson", fitted.cards["own_crimson"])
    return Box("ours", (*TWELVE_PAN.paints, paint))


def test_slopes_of_the_film_and_of_CIELAB_are_those_of_small_steps():
    rng = np.random.default_rng(3)
    K, S = rng.uniform(0.02, 2, (4, 41)), rng.uniform(0.02, 2, (4, 41))
    ground = paper_inside(DATA.paper)
    R, by_K, by_S = film_slopes(K, S, ground)
    e = 1e-6
    np.testing.assert_allclose((film_slopes(K + e, S, ground)[0] - R) / e, by_K, atol=1e-4)
    np.testing.assert_allclose((film_slopes(K, S + e, ground)[0] - R) / e, by_S, atol=1e-4)
    XYZ = R @ DATA.weights
    Lab, J = Lab_slopes(XYZ)
    np.testing.assert_allclose(Lab, DATA.spectrum_to_Lab(R), atol=1e-9)
    for axis in range(3):
        moved = XYZ.copy()
        moved[:, axis] += e * 100
        slope = (Lab_slopes(moved)[0] - Lab) / (e * 100)
        np.testing.assert_allclose(slope, J[:, :, axis], rtol=1e-3)


@pytest.mark.parametrize("phone", [None, LOOSE])
def test_slopes_of_the_whole_problem_are_those_of_small_steps(phone):
    rng = np.random.default_rng(0)
    n = 12
    samples = Samples(
        rng.uniform(20, 90, (n, 3)) * [1, 0.3, 0.3],
        np.where(np.arange(n) < 6, 13, 14),
        np.array([-1, -1, 9, 9, 14, 14, -1, -1, 9, 9, 3, 3]),
        np.arange(n) // 2,
        np.geomspace(0.02, 0.6, n),
        np.zeros(n),
        np.ones(n),
    )
    problem = Problem(DATA, [prior_of()] * 2, samples, Spreads(), phone)
    x = rng.normal(0, 0.4, problem.size)
    Lab, J = problem._slopes(x)
    np.testing.assert_allclose(Lab, problem._seen(x), atol=1e-9)
    step = 1e-5 * np.eye(problem.size)
    near = np.stack([(problem._seen(x + e) - problem._seen(x - e)) / 2e-5 for e in step], -1)
    np.testing.assert_allclose(J, near, atol=2e-2 if phone else 1e-6)


def test_the_solver_ends_where_no_step_helps():
    fields = three_fields()
    fit = fit_card(fields, light="scan")
    cost, gradient, _ = fit.problem.normal(fit.x)
    assert np.abs(gradient).max() < 0.05 * np.sqrt(cost)
    other, other_cost, _ = solve(fit.problem, 0.5 * np.ones(fit.problem.size))
    assert other_cost == pytest.approx(cost, rel=2e-3)
    assert len(other) == fit.problem.size


def test_three_strokes_tell_washes_and_strength(fitted):
    """Against the film that painted them, loads unknown: thin mixes at matched strength."""
    card = fitted.cards["own_crimson"]
    K, S = strong_crimson()
    gaps = []
    for partner in ("ultramarine", "raw_sienna", "sap_green"):
        row = DATA.index(partner)
        load = np.array([[0.08, 0.08 * half_load_ml(partner) / half_load_ml("alizarin_crimson")]])

        def Lab(one, two, load=load, row=row):
            rows_K, rows_S = np.array([one, DATA.K[row]]), np.array([two, DATA.S[row]])
            ways = np.geomspace(0.5, 2, 40)[:, None]
            R = film_reflectance(load * ways, rows_K, rows_S, DATA.crowding, DATA.paper)
            return DATA.spectrum_to_Lab(R)

        gaps.append(delta_E_2000(Lab(card.K, card.S), Lab(K, S)[20]).min())
    assert max(gaps) < 2.5
    assert card.trust in ("known well", "roughly")
    own = paint_of_card("x", "crimson", card)
    measured = half_load_ml("alizarin_crimson")
    assert own.half_load_ml == pytest.approx(measured / 2, rel=0.35)
    assert (own.group, own.leans) == ("red", "violet")


def test_fewer_fields_are_known_less_well(fitted):
    alone = fit_card(three_fields()[:1], light="scan").cards["own_crimson"]
    assert alone.spread > 1.5 * fitted.cards["own_crimson"].spread
    assert len(alone.directions) == 4
    assert np.array(alone.directions).shape == (4, 82)


def test_right_fields_raise_no_doubt_and_wrong_ones_do(fitted):
    assert doubts_of(fitted, light="scan") == ()
    right = three_fields()
    swapped = [right[0], replace(right[1], Lab=right[2].Lab), replace(right[2], Lab=right[1].Lab)]
    (doubt,) = doubts_of(fit_card(swapped, light="scan"), light="scan")
    assert (doubt.kind, doubt.field) == ("swapped", 1)
    K, S = strong_crimson()
    other = [*right[:2], replace(right[2], Lab=course(K, S, "sap_green", seed=5))]
    (doubt,) = doubts_of(fit_card(other, light="scan"), light="scan")
    assert doubt.kind in ("wrong partner", "wrong paint", "swapped")
    assert doubt.gain > 14


def test_a_mix_says_how_well_it_is_known(box, fitted):
    mix = make_mix(box, {"own_crimson_of_ours": 2, "ultramarine": 1}, 0.0008)
    known = mix_known(box, mix.loads_ml)
    assert known.own == ("own_crimson_of_ours",)
    assert 0.85 <= known.error < 4.0
    assert mix_known(box, make_mix(box, {"ultramarine": 1}, 0.001).loads_ml) is None
    thick = make_mix(box, {"own_crimson_of_ours": 1}, 0.16)
    assert mix_known(box, thick.loads_ml).error >= 4.0
    share = make_mix(box, {"own_crimson_of_ours": 1, "ultramarine": 9}, 0.0008)
    assert mix_known(box, share.loads_ml).error < known.error
    lamps = replace(
        box.paint("own_crimson_of_ours"), card=replace(fitted.cards["own_crimson"], light="lamps")
    )
    dim = Box("dim", (*TWELVE_PAN.paints, lamps))
    assert mix_known(dim, mix.loads_ml).error == pytest.approx(1.4 * known.error)


def test_the_words_of_a_mix_follow_from_what_it_may_be_off_by(box, fitted):
    card = fitted.cards["own_crimson"]

    def said(wider, trust="roughly"):
        ways = tuple(tuple(wider * v for v in way) for way in card.directions)
        paint = replace(
            box.paint("own_crimson_of_ours"), card=replace(card, directions=ways, trust=trust)
        )
        ours = Box("ours", (*TWELVE_PAN.paints, paint))
        return own_paints_text(ours, make_mix(ours, {paint.key: 2, "ultramarine": 1}, 0.0008))

    assert said(0.0, "known well") == ""
    assert "Only a guide: what crimson of ours does in this mix is not known" in said(20.0)
    assert "Only a guide: crimson of ours is hardly known" in said(0.0, "stands in")
    middle = [said(wider) for wider in np.linspace(0.5, 6, 12)]
    assert "Crimson of ours is known from your card: try it on a scrap first." in middle


def test_a_box_with_a_card_goes_through_its_file(box, tmp_path):
    path = tmp_path / "ours.json"
    save_box(box, path)
    assert '"gradewash_box": 2' in path.read_text()
    again = open_box(path)
    one, other = box.paints[-1], again.paints[-1]
    assert (one.key, one.name, one.group, one.leans) == (
        other.key,
        other.name,
        other.group,
        other.leans,
    )
    np.testing.assert_allclose(one.card.K, other.card.K, rtol=1e-4)
    np.testing.assert_allclose(one.card.directions, other.card.directions, rtol=1e-4)
    assert other.card.trust == one.card.trust
    assert len(other.card.readings) == 20
    assert len(path.read_bytes()) < 20_000


def test_a_box_without_a_card_is_still_version_1():
    plain = Box("plain", (*TWELVE_PAN.paints, own_paint("sky", "cerulean_blue")))
    assert box_to_json(plain)["gradewash_box"] == 1
    assert box_from_json(box_to_json(plain)) == plain


@pytest.mark.parametrize(
    "damage",
    [
        {"K": [1.0] * 40},
        {"S": [-1.0] * 41},
        {"K": [float("nan")] * 41},
        {"K": ["1"] * 41},
        {"K": [True] * 41},
        {"directions": [[0.0] * 81]},
        {"directions": [[0.0] * 82] * 5},
        {"trust": "perfectly"},
        {"light": "moon"},
        {"prior": "1"},
        {"spread": None},
        {"readings": [[0, 0.5, "", 1, 2]]},
        {"readings": [[7, 0.5, "", 1, 2, 3]]},
        {"readings": "none"},
    ],
)
def test_a_damaged_card_is_refused_in_one_sentence(box, damage):
    value = box_to_json(box)
    value["paints"][-1]["card"] = {**value["paints"][-1]["card"], **damage}
    with pytest.raises(BoxError, match="damaged: read the card's picture again"):
        box_from_json(value)


def test_a_plan_says_once_which_own_paints_want_trying(box, fitted):
    card = fitted.cards["own_crimson"]
    ways = tuple(tuple(3 * v for v in way) for way in card.directions)
    paint = replace(box.paint("own_crimson_of_ours"), card=replace(card, directions=ways))
    ours = Box("ours", (*TWELVE_PAN.paints, paint))
    unsure = make_mix(ours, {paint.key: 2, "ultramarine": 1}, 0.0008)
    sure = make_mix(ours, {"crimson": 2, "ultramarine": 1}, 0.0008)
    assert own_paints_short(ours, unsure) in ("try it first", "only a guide")
    assert own_paints_short(ours, sure) == ""
    note = parts_note(ours, [unsure, sure, unsure])
    assert note.endswith("Try mixes with crimson of ours on a scrap first.")
    assert "scrap first" not in parts_note(ours, [sure])
    known = replace(paint, card=card_known_exactly(card))
    alone = Box("own", (known, replace(known, key="own_other", name="other")))
    mix = make_mix(alone, {known.key: 2, "own_other": 1}, 0.0008)
    assert parts_note(alone, [mix]) == "Parts fit your own paints, as your card shows them."


def card_known_exactly(card):
    return replace(card, directions=(), trust="known well")


def test_a_study_carries_its_own_paints(box):
    opened = study_from_bytes(study_to_bytes(Study("ours", box=box), {})).study
    one, other = box.paints[-1], opened.box.paints[-1]
    assert replace(one, card=None) == replace(other, card=None)
    np.testing.assert_allclose(one.card.K, other.card.K, rtol=1e-4)
    load = {other.key: 0.001, "ultramarine": 0.002}
    np.testing.assert_allclose(
        opened.box.pigments.Lab(opened.box.load_vector(load)),
        box.pigments.Lab(box.load_vector(load)),
        atol=0.02,
    )
