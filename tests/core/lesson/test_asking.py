from __future__ import annotations

from dataclasses import replace

import pytest

from core.colour import srgb_to_Lab
from core.lesson.asking import NO_FAMILY, answer_to, choices, question_text
from core.lesson.lesson import QUESTIONS
from core.reading.reading import BandReading, SecondColour, read_colour
from core.reading.wording import Wording

WORDING = Wording()


def band(rgb, letter="A"):
    colour = None if rgb is None else read_colour(srgb_to_Lab([c / 255 for c in rgb]))
    return BandReading(letter, 0.0, 1.0, colour, colour, colour, colour, 1.0, False, 0.0, 1.0)


BANDS = {
    "blue": band((60, 120, 190)),
    "pale": band((235, 205, 190)),
    "grey": band((128, 128, 128)),
    "leaning": band((130, 131, 136)),
    "white": band((255, 255, 255)),
    "black": band((0, 0, 0)),
}


@pytest.mark.parametrize("name", BANDS)
def test_the_right_guess_is_among_the_guesses(name):
    for question in QUESTIONS[:-1]:
        keys = [key for key, _ in choices(question, WORDING)]
        assert answer_to(question, BANDS[name], WORDING).choice in keys


@pytest.mark.parametrize("name", BANDS)
def test_every_answer_says_something(name):
    for question in QUESTIONS:
        answer = answer_to(question, BANDS[name], WORDING, "3 red : 1 blue")
        assert answer.text
        assert answer.text[0].isupper()
        assert "{" not in answer.text + answer.second


def test_a_blue_band():
    given = {q: answer_to(q, BANDS["blue"], WORDING, "2 blue") for q in QUESTIONS}
    assert given["hue"].text == "Blue"
    assert given["class"].text == "Primary"
    assert given["mix"].second == "2 blue"
    assert "orange" in given["mix"].text or "intense" in given["mix"].text


def test_a_near_neutral_has_no_class():
    assert answer_to("hue", BANDS["leaning"], WORDING).choice == NO_FAMILY
    assert "leaning" in answer_to("hue", BANDS["leaning"], WORDING).second
    assert answer_to("class", BANDS["grey"], WORDING).text.startswith("None")


def test_a_band_without_sky():
    assert answer_to("hue", band(None), WORDING).text == "No sky in this band"


def test_the_class_has_its_own_words_and_scale():
    wording = Wording(tertiary="intermediate", white_is=0)
    assert question_text("class", wording) == "Primary, secondary or intermediate?"
    assert answer_to("value", BANDS["white"], wording).text == "Very light, value 0.0"


def test_a_second_colour_is_asked_for_and_named_with_its_share():
    cloudy = replace(BANDS["blue"], second=SecondColour(BANDS["pale"].colour, 0.3, soft=True))
    assert "second colour" in question_text("second", WORDING)
    answer = answer_to("second", cloudy, WORDING)
    assert answer.choice in [key for key, _ in choices("second", WORDING)]
    assert answer.choice == BANDS["pale"].colour.hue.family
    assert answer.text.endswith(", a third")
    assert answer.second.startswith("light, value ") or answer.second.startswith("very light")
    grey = replace(cloudy, second=SecondColour(BANDS["grey"].colour, 0.3, soft=True))
    assert answer_to("second", grey, WORDING).choice == NO_FAMILY
