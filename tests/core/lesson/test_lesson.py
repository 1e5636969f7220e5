from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.lesson import lesson as steps
from core.lesson.lesson import MOST_HANDS, QUESTIONS, Lesson


def test_answers_come_one_at_a_time_in_order():
    lesson = Lesson(3)
    for number, question in enumerate(QUESTIONS):
        assert lesson.question == question
        assert not lesson.is_answered(question)
        lesson = steps.answer(lesson)
        assert lesson.is_answered(question)
        assert lesson.shown == number + 1
    assert lesson.question is None
    assert steps.answer(lesson) == lesson


def test_each_band_keeps_its_own_answers():
    lesson = steps.answer(steps.answer(Lesson(2)))
    below = steps.go(lesson, 1)
    assert below.shown == 0
    assert steps.go(below, -1).shown == 2


def test_bands_end_where_the_sky_ends():
    assert steps.go(Lesson(2), -1).band == 0
    assert steps.go(steps.go(Lesson(2), 1), 1).band == 1
    with pytest.raises(ValueError, match="no band 2"):
        steps.go_to(Lesson(2), 2)


def test_an_answer_can_be_covered_again():
    lesson = steps.take_back(steps.answer(Lesson(1)))
    assert lesson.question == "hue"
    assert steps.take_back(lesson) == lesson


def test_a_remote_goes_through_the_whole_sky():
    lesson = Lesson(2)
    for _ in range(2 * len(QUESTIONS) + 1):
        lesson = steps.advance(lesson)
    assert lesson.band == 1
    assert lesson.question is None


@given(st.integers(-5, 200), st.integers(-5, 200))
def test_hands_are_set_per_band_question_and_guess(first, second):
    lesson = steps.set_hands(Lesson(2), "hue", "red", first)
    lesson = steps.set_hands(lesson, "hue", "orange", second)
    kept = [min(max(count, 0), MOST_HANDS) for count in (first, second)]
    assert lesson.hands_for("hue", "red") == kept[0]
    assert lesson.hands_in_all("hue") == sum(kept)
    assert lesson.hands_in_all("value") == 0
    assert steps.go(lesson, 1).hands_in_all("hue") == 0


def test_other_bands_begin_anew():
    lesson = steps.answer(Lesson(3))
    assert steps.resized(lesson, 3) == lesson
    assert steps.resized(lesson, 4) == Lesson(4)


def test_a_band_of_two_colours_is_asked_for_the_second():
    lesson = Lesson(2, two=(1,))
    assert lesson.questions == QUESTIONS
    lesson = steps.go(lesson, 1)
    assert lesson.questions == ("hue", "class", "value", "intensity", "second", "mix")
    for question in lesson.questions:
        assert lesson.question == question
        assert not lesson.is_answered(question)
        lesson = steps.answer(lesson)
    assert lesson.question is None
    assert not steps.go(lesson, -1).is_answered("second")


def test_what_is_known_of_second_colours_may_change():
    lesson = steps.answer(Lesson(2, two=(0,)))
    again = steps.resized(lesson, 2, (1,))
    assert (again.two, again.answered) == ((1,), lesson.answered)
    assert steps.resized(lesson, 3, (1,)) == Lesson(3, two=(1,))
