"""What dried scraps teach a box of its own paints: an own paint here is ultramarine, misjudged."""

from __future__ import annotations

import json
from dataclasses import replace

import numpy as np
import pytest
from own_paint_tools import KEY, OTHERS, TRUE, WRONG

from core.colour import delta_E_2000
from core.errors import BoxError
from core.paint.box.box import TWELVE_PAN, Box
from core.paint.box.box_file import box_from_json, box_to_json
from core.paint.mixture.mix import make_mix
from core.paint.own.known import mix_known, trust_of
from core.scrap.advice import advise
from core.scrap.model import Stroke
from core.scrap.strokes import FoundStroke
from core.scrap.teach import Lesson, lesson_of, taught_keys, with_lesson
from core.scrap.words import nothing_taught, taught_sentence, teach_question

MIXES = tuple(
    ({KEY: blue, other: many}, load)
    for other in OTHERS
    for blue, many, load in ((1, 1, 0.006), (2, 1, 0.003), (1, 3, 0.01))
)


def strokes_of(seed: int) -> list[tuple[dict[str, int], float, Stroke]]:
    """Strokes of the true blue, parts and strength as hands and brushes have them."""
    rng = np.random.default_rng(seed)
    found = []
    for parts, load in MIXES:
        off = {key: count * float(np.exp(rng.normal(0, 0.25))) for key, count in parts.items()}
        whole = sum(off.values())
        vector = TRUE.load_vector({key: 0.9 * load * n / whole for key, n in off.items()})
        L, a, b = (TRUE.pigments.Lab(vector) + rng.normal(0, 1, 3)).tolist()
        found.append((parts, load, Stroke((L, a, b))))
    return found


def off_true(box: Box) -> float:
    """Median CIEDE2000 of mixes against the true blue's, water adjusted."""
    water = np.exp(np.linspace(-1, 1, 41))
    off = []
    for parts, load in MIXES:
        vectors = [
            one.load_vector({key: load * n / sum(parts.values()) for key, n in parts.items()})
            for one in (TRUE, box)
        ]
        goal = TRUE.pigments.Lab(vectors[0])
        seen = box.pigments.Lab(water[:, None] * vectors[1])
        off.append(float(np.asarray(delta_E_2000(seen, goal)).min()))
    return float(np.median(off))


def taught(box: Box, count: int, seed: int = 1) -> Box:
    for parts, load, stroke in strokes_of(seed)[:count]:
        lesson = lesson_of(box, make_mix(box, parts, load), [stroke])
        assert lesson is not None
        box = with_lesson(box, lesson)
    return box


@pytest.mark.parametrize("seed", range(4))
def test_scraps_bring_a_misjudged_paint_nearer_and_it_is_known_better(seed: int) -> None:
    before, after = WRONG, taught(WRONG, 6, seed)
    assert off_true(before) > 4
    assert off_true(after) < 0.6 * off_true(before)
    parts, load = MIXES[0]
    errors = []
    for box in (before, after):
        known = mix_known(box, make_mix(box, parts, load).loads_ml)
        assert known is not None
        errors.append(known.error)
    assert errors[1] < errors[0]
    card = after.paint(KEY).card
    assert card is not None
    assert len(card.scraps) == 6
    assert card.spread < 4.0
    assert card.trust == trust_of(card.spread)


def test_one_scrap_moves_it_less_far_than_six() -> None:
    assert off_true(taught(WRONG, 6)) < off_true(taught(WRONG, 1)) < off_true(WRONG)


def test_a_stroke_as_foretold_changes_little() -> None:
    mix = make_mix(WRONG, {KEY: 1, "crimson": 1}, 0.006)
    lesson = lesson_of(WRONG, mix, [Stroke(mix.Lab)])
    assert lesson is not None
    card, old = lesson.paints[KEY], WRONG.paint(KEY).card
    assert old is not None
    np.testing.assert_allclose(np.log(card.K), np.log(old.K), atol=0.02)
    assert len(card.directions) == len(old.directions)


def test_no_stroke_teaches_twice() -> None:
    parts, load, stroke = strokes_of(1)[0]
    mix = make_mix(WRONG, parts, load)
    after = taught(WRONG, 1)
    assert lesson_of(after, mix, [stroke]) is None
    again = lesson_of(after, mix, [stroke, Stroke((60.0, 5.0, -20.0))])
    assert again is None or len(again.paints[KEY].scraps) == 2


def test_a_doubted_a_spoiled_or_a_foreign_stroke_teaches_nothing() -> None:
    parts, load, stroke = strokes_of(1)[0]
    mix = make_mix(WRONG, parts, load)
    whole = (0.0, 0.0, 1.0, 1.0)
    shines = FoundStroke(whole, stroke.Lab, ("shines",))
    assert lesson_of(WRONG, mix, [stroke], [shines]) is None
    assert lesson_of(WRONG, mix, [stroke], [FoundStroke(whole, stroke.Lab)]) is not None
    advice = advise(WRONG, mix, mix.Lab, [stroke])
    spoiled = replace(advice, got_in="crimson", got_in_chance=0.8)
    assert lesson_of(WRONG, mix, [stroke], advice=spoiled) is None
    assert lesson_of(WRONG, mix, [stroke], advice=replace(advice, one_puddle=False)) is None
    # Yellow of a puddle of blue and crimson: no such blue is likely.
    assert lesson_of(WRONG, mix, [Stroke((88.0, 5.0, 70.0))]) is None


def test_measured_paints_are_not_taught() -> None:
    mix = make_mix(TWELVE_PAN, {"ultramarine": 1, "crimson": 1}, 0.006)
    assert lesson_of(TWELVE_PAN, mix, [Stroke(mix.Lab)]) is None
    assert "read a card first" in nothing_taught(TWELVE_PAN)


def test_what_was_learned_is_kept_in_the_box_file() -> None:
    after = taught(WRONG, 3)
    text = json.dumps(box_to_json(after))
    again = box_from_json(json.loads(text))
    old, new = after.paint(KEY).card, again.paint(KEY).card
    assert old is not None
    assert new is not None
    assert new.scraps == old.scraps
    np.testing.assert_allclose(new.K, old.K, rtol=1e-4)
    parts, load, stroke = strokes_of(1)[2]
    assert lesson_of(again, make_mix(again, parts, load), [stroke]) is None


@pytest.mark.parametrize(
    "damaged",
    [
        "no list",
        [["no parts", 1, 2, 3]],
        [[{}, 1, 2, 3]],
        [[{"a": -1}, 1, 2, 3]],
        [[{"a": 1}, 1, 2]],
        [[{"a": 1}, 1, 2, "x"]],
        [[{"a": 1}, 1, 2, 3]] * 41,
    ],
)
def test_a_damaged_lesson_is_one_sentence(damaged: object) -> None:
    value = json.loads(json.dumps(box_to_json(taught(WRONG, 1))))
    value["paints"][0]["card"]["scraps"] = damaged
    with pytest.raises(BoxError, match="is damaged"):
        box_from_json(value)


def test_the_question_and_what_was_learned_in_words() -> None:
    parts, load, stroke = strokes_of(1)[0]
    lesson = lesson_of(WRONG, make_mix(WRONG, parts, load), [stroke])
    assert isinstance(lesson, Lesson)
    assert teach_question(WRONG, lesson) == ("Let this scrap teach the box what your our blue is?")
    said = taught_sentence(with_lesson(WRONG, lesson), taught_keys([lesson]))
    assert said.startswith("Our blue is ")
    assert said.endswith("from your card and a scrap.")
