"""The words of a reading: what is said, when, and that all of it can be translated."""

import itertools
import re
from dataclasses import replace

import pytest

from core import i18n
from core.colour import hex_to_srgb, srgb_to_Lab
from core.reading.reading import (
    INTENSITY_WORDS,
    VALUE_WORDS,
    BandReading,
    SecondColour,
    read_colour,
)
from core.reading.wheel import FAMILIES, complement, hue_class, wheel_distance
from core.reading.wording import Wording
from core.words import (
    PlannedToning,
    band_notes,
    band_sentence,
    box_family,
    class_word,
    family_name,
    hue_phrase,
    hue_short,
    intensity_text,
    second_line,
    share_text,
    tone_down_sentence,
    tones_on_wheel,
    touch_family,
    value_end,
    value_phrase,
    value_word_text,
    way_on_wheel_sentence,
)
from core.words.toning import toning_short

PLAIN = Wording()


def colour(text):
    return read_colour(srgb_to_Lab(hex_to_srgb(text)))


def band(text="#6085c0", **changes):
    one = None if text is None else colour(text)
    reading = BandReading("A", 0.0, 0.2, one, one, one, one, 1.0, False, 0.0, 1.0)
    return replace(reading, **changes)


@pytest.fixture
def in_another_tongue():
    """Every text in capitals, its slots kept: what passes untranslated stays small."""

    def shout(context, text):
        return re.sub(r"(\{\w+\})|([^{}]+)", lambda m: m[1] or m[2].upper(), text)

    i18n.set_catalogue(shout)
    yield
    i18n.set_catalogue(None)


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("#54509a", "Band A is blue-violet, a tertiary; dark, value 3.7; and intense."),
        ("#87ceeb", "Band A is blue, a primary; light, value 7.9; and of moderate intensity."),
        ("#d2b48c", "Band A is yellow-orange, a tertiary; light, value 7.4; and dull."),
        (
            "#c98a80",
            "Band A is red, a primary, near red-orange; of middle value, 6.2; and of moderate "
            "intensity.",
        ),
        ("#a4a8ac", "Band A is near neutral, leaning blue; light, value 6.8."),
        ("#f6f7fb", "Band A is near white, leaning blue-violet; very light, value 9.7."),
        ("#ffffff", "Band A is white; very light, value 10.0."),
        ("#808080", "Band A is neutral grey; of middle value, 5.3."),
        ("#000000", "Band A is black; very dark, value 0.0."),
    ],
)
def test_band_sentences(text, sentence):
    """Wording fixed on purpose: cards, window and command line say the same."""
    assert band_sentence(band(text), PLAIN) == sentence


def test_a_band_without_sky_says_what_to_do():
    assert band_sentence(band(None), PLAIN) == "Band A holds no sky: move its lines."
    assert tone_down_sentence(band(None), PLAIN) == ""
    assert band_notes(band(None), PLAIN) == ()


def test_the_word_for_tertiary_is_the_teachers():
    other = Wording(tertiary="intermediate")
    assert class_word("tertiary", PLAIN) == "tertiary"
    assert class_word("tertiary", other) == "intermediate"
    assert class_word("primary", other) == "primary"
    assert ", an intermediate" in hue_phrase(colour("#54509a").hue, other)
    assert second_line(colour("#54509a"), other) == "intermediate"


def test_the_value_scale_turns_round():
    other = Wording(white_is=0)
    assert value_phrase(colour("#87ceeb"), PLAIN) == "light, value 7.9"
    assert value_phrase(colour("#87ceeb"), other) == "light, value 2.1"
    assert (value_end(True, PLAIN), value_end(False, PLAIN)) == ("10 white", "0 black")
    assert (value_end(True, other), value_end(False, other)) == ("0 white", "10 black")
    assert value_phrase(colour("#ffffff"), other) == "very light, value 0.0"


def test_short_forms():
    assert hue_short(colour("#54509a").hue) == "blue-violet"
    assert hue_short(colour("#a4a8ac").hue) == "near neutral"
    assert second_line(colour("#a4a8ac"), PLAIN) == "leaning blue"
    assert second_line(colour("#808080"), PLAIN) == ""
    assert second_line(colour("#c98a80"), PLAIN) == "primary, near red-orange"
    assert {family_name(family) for family in FAMILIES} == set(FAMILIES)
    assert [value_word_text(word) for word in VALUE_WORDS] == list(VALUE_WORDS)
    assert [intensity_text(word) for word in INTENSITY_WORDS] == list(INTENSITY_WORDS)


def test_notes():
    assert band_notes(band(), PLAIN) == ()
    assert band_notes(band(stacked=True), PLAIN) == (
        "Two colours here, one above the other: split it?",
    )
    assert band_notes(band(clipped_share=0.019), PLAIN) == ()
    (part,) = band_notes(band(clipped_share=0.02), PLAIN)
    assert part == "Part of this band is clipped: the photo holds no more detail there."
    (most,) = band_notes(band(clipped_share=0.6), PLAIN)
    assert most.startswith("Most of this band is clipped")
    (few,) = band_notes(band(pixel_share=0.1), PLAIN)
    assert "Little of this band is sky" in few
    (sides,) = band_notes(band(left=colour("#ffb060"), right=colour("#6085c0")), PLAIN)
    assert sides == (
        "It changes from orange, value 7.7 on the left to blue, value 5.4 on the right."
    )
    assert band_notes(band(left=None), PLAIN) == ()


def sides(left, right):
    return band_notes(band(left=colour(left), right=colour(right)), PLAIN)


def test_sides_say_what_differs_and_nothing_else():
    """Never "from orange (light, intense) to orange (light, intense)"."""
    (note,) = sides("#e8883c", "#ffc48c")
    assert re.fullmatch(
        r"It changes from value \S+, intense on the left to value \S+, moderate on the right\.",
        note,
    )
    assert sides("#6085c0", "#6085c0") == ()
    for left, right in itertools.product(("#e8a060", "#f0c080", "#6085c0", "#8a8f98"), repeat=2):
        for note in sides(left, right):
            from_left, on_right = note.removeprefix("It changes from ").split(" on the left to ")
            assert from_left != on_right.removesuffix(" on the right.")


def test_a_second_colour_speaks_for_the_sides():
    two = band(
        left=colour("#ffb060"),
        right=colour("#6085c0"),
        second=SecondColour(colour("#ffb060"), 0.3, soft=True),
    )
    assert band_notes(two, PLAIN) == ()


@pytest.mark.parametrize(
    ("share", "text"),
    [
        (0.12, "about an eighth"),
        (0.17, "about a sixth"),
        (0.2, "about a fifth"),
        (0.24, "about a quarter"),
        (0.35, "about a third"),
        (0.4, "about two fifths"),
        (0.49, "nearly half"),
    ],
)
def test_shares_are_said_as_they_are_counted(share, text):
    assert share_text(share) == text


def test_a_band_of_two_colours_names_both():
    two = band("#4a4650", second=SecondColour(colour("#f0a050"), 0.31, soft=True))
    assert band_sentence(two, PLAIN) == (
        "Band A holds two colours. Most of it is near neutral, leaning violet; dark, value 3.0. "
        "About a third of it is orange, a secondary; light, value 7.2; and intense."
    )
    even = replace(two, second=replace(two.second, share=0.47))
    assert "A little more than half is near neutral" in band_sentence(even, PLAIN)


@pytest.mark.parametrize("family", FAMILIES)
def test_the_box_has_the_family_or_the_secondary_beside_it(family):
    nearest = box_family(family)
    assert hue_class(nearest) != "tertiary"
    assert wheel_distance(family, nearest) == (1 if "-" in family else 0)
    touch = touch_family(family)
    if hue_class(family) == "tertiary":
        assert {nearest, touch} == set(family.split("-"))
    else:
        assert touch is None


def test_a_hue_between_is_made_of_the_two_beside_it():
    """Red-orange's complement is blue-green, which few boxes hold: no box is spoken of."""
    text = tone_down_sentence(band("#c0806e"), PLAIN)
    assert colour("#c0806e").hue.family == "red-orange"
    assert "its complement, blue-green" in text
    assert text.endswith("A green with a touch of blue makes blue-green.")
    assert "box" not in text


def test_without_a_plan_nothing_is_claimed_of_a_box():
    for text in ("#c0806e", "#87ceeb", "#d2b48c", "#9fb090", "#8f7f9f", "#1060d0", "#a4a8ac"):
        assert "box" not in tone_down_sentence(band(text), PLAIN)


def test_intense_bands_need_little_toning():
    text = tone_down_sentence(band("#1060d0"), PLAIN)
    assert text == "This is intense: little or nothing to tone down."
    plain = PlannedToning("plain", ("ultramarine",))
    text = tone_down_sentence(band("#1060d0"), PLAIN, plain)
    assert text == "This is intense: nothing to tone down."
    toned = PlannedToning("toned", ("ultramarine",), "burnt sienna", 1, 6)
    text = tone_down_sentence(band("#1060d0"), PLAIN, toned)
    assert text.startswith("Ultramarine alone would be too intense: tone it down with about 1 part")
    assert "nothing to tone down" not in text


def test_pale_and_clean_is_not_dull():
    """A thin wash of blue, and a greyed blue as light: water for the one, orange for the other."""
    tint, greyed = band("#d3e2f2"), band("#bccad3")
    assert tint.colour.intensity_word == greyed.colour.intensity_word == "dull"
    assert "; and pale." in band_sentence(tint, PLAIN)
    assert "; and dull." in band_sentence(greyed, PLAIN)
    assert tone_down_sentence(tint, PLAIN) == "Pale, not dull: a clean blue with more water."
    assert tone_down_sentence(greyed, PLAIN).startswith("Tone blue down well")
    assert not tones_on_wheel(tint.colour)
    assert tones_on_wheel(greyed.colour)


def test_a_moderate_band_takes_little_and_a_dull_one_more():
    assert tone_down_sentence(band("#6f9fc4"), PLAIN).startswith("Tone blue down a little with")
    assert tone_down_sentence(band("#d2b48c"), PLAIN).startswith("Tone yellow-orange down well")


@pytest.mark.parametrize(
    ("text", "start"),
    [
        ("#a4a8ac", "Start with blue and add its complement, orange, until only a hint"),
        ("#f6f7fb", "Pale, not dull: a clean blue-violet with more water."),
        ("#e3e1dd", "This is nearly white: a very thin wash of"),
        ("#15171a", "This is nearly black: mix blue strongly with its complement, orange"),
        ("#ffffff", "No hue to tone down: leave the paper white."),
        ("#808080", "No hue to tone down: mix two complements, such as blue and orange"),
        ("#000000", "No hue to tone down: mix two complements strongly"),
    ],
)
def test_near_neutrals_have_advice_of_their_own(text, start):
    assert tone_down_sentence(band(text), PLAIN).startswith(start)


def test_the_plan_says_how_a_band_is_toned_down():
    one = PlannedToning("toned", ("ultramarine",), "burnt sienna", 1, 9)
    text = tone_down_sentence(band("#87ceeb"), PLAIN, one)
    assert text == (
        "Tone blue down a little with its complement, orange: about 1 part burnt sienna in 9."
    )
    two = PlannedToning("toned", ("ultramarine",), "burnt sienna", 3, 11)
    assert tone_down_sentence(band("#87ceeb"), PLAIN, two) == (
        "Tone blue down well with its complement, orange: about 3 parts burnt sienna in 11."
    )
    aside = PlannedToning("toned", ("crimson",), "lemon yellow", 1, 5, False, "orange")
    text = tone_down_sentence(band("#c0806e"), PLAIN, aside)
    assert "complement" not in text
    assert text.endswith("which also turns it a little towards orange.")


PLANNED = (
    PlannedToning("toned", ("ultramarine",), "burnt sienna", 1, 9),
    PlannedToning("toned", ("ultramarine", "cerulean blue"), "burnt sienna", 2, 7),
    PlannedToning("toned", ("ultramarine",), "burnt sienna", 1, 3, False, "green"),
    PlannedToning("toned", ("ultramarine",), "burnt sienna", 1, 3, False),
    PlannedToning("plain", ("ultramarine",)),
    PlannedToning("plain", ("ultramarine", "cerulean blue")),
    PlannedToning("speck", ("ultramarine",), "burnt sienna", 1, 20),
    PlannedToning("speck", ("ultramarine", "cerulean blue"), "burnt sienna", 1, 5),
    PlannedToning("too intense", ("ultramarine",)),
    PlannedToning("greys", ("ultramarine", "burnt sienna")),
    PlannedToning("paper"),
    PlannedToning("lacks", lacks=("red",)),
    PlannedToning("lacks", lacks=("yellow", "red")),
)


def all_texts():
    hexes = (
        *("#6085c0", "#87ceeb", "#d2b48c", "#c98a80", "#a4a8ac"),
        *("#f6f7fb", "#15171a", "#ffffff", "#808080", "#000000"),
    )
    marks = itertools.product((False, True), (0.0, 0.1, 0.9))
    for text, (two, clipped) in itertools.product(hexes, marks):
        one = band(text, stacked=two, clipped_share=clipped, right=colour("#ffb060"))
        for wording in (PLAIN, Wording("intermediate", 0)):
            yield band_sentence(one, wording)
            yield tone_down_sentence(one, wording)
            for toning in PLANNED:
                yield tone_down_sentence(one, wording, toning)
                yield toning_short(one.colour, toning)
            yield toning_short(one.colour)
            yield way_on_wheel_sentence(one.colour)
            yield from band_notes(one, wording)
            yield band_sentence(replace(one, second=SecondColour(one.right, 0.3, False)), wording)
            yield second_line(one.colour, wording)


def test_sentences_are_whole_and_plain():
    for text in all_texts():
        assert "{" not in text
        assert "None" not in text
        assert "  " not in text
        assert not re.search(r"\bsafe\b|non-toxic|\bwrong\b", text)


@pytest.mark.usefixtures("in_another_tongue")
def test_nothing_is_said_that_was_not_translated():
    for text in all_texts():
        # The paints' names are the caller's.
        rest = re.sub("(?i)burnt sienna|ultramarine|cerulean blue", "", text)
        assert rest == rest.upper()


def test_every_family_is_said_with_its_complement():
    for text in ("#c0806e", "#6f9fc4", "#d2b48c", "#9fb090", "#8f7f9f"):
        one = colour(text)
        assert one.hue.family is not None
        sentence = tone_down_sentence(one, PLAIN)
        assert f"its complement, {complement(one.hue.family)}" in sentence
