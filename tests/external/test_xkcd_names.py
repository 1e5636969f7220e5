"""Families against names that people gave to colours.

R. Munroe, 2010, "Color survey results" (CC0): the names that matplotlib carries. A name is in
when it is one hue word, or two neighbours of the wheel ("greeny blue"), after words that tell
only lightness or strength ("pale", "dusty", "neon"). Names after a thing ("brick red") are out.
"""

import csv
from pathlib import Path

import numpy as np
import pytest

from core.colour import hex_to_srgb, srgb_to_Lab
from core.reading.reading import read_colours
from core.reading.wheel import FAMILIES, wheel_distance

FILE = Path(__file__).parents[1] / "data" / "xkcd_wheel_names.csv"

HUE_WORDS = {
    "red": "red reddish",
    "orange": "orange orangey orangish",
    "yellow": "yellow yellowish yellowy",
    "green": "green greenish greeny",
    "blue": "blue bluish bluey",
    "violet": "violet purple purplish purply purpley purpleish",
}
HUE_OF = {word: hue for hue, words in HUE_WORDS.items() for word in words.split()}
PLAIN = {"red", "orange", "yellow", "green", "blue", "violet", "purple"}
TERTIARY = {frozenset(family.split("-")): family for family in FAMILIES if "-" in family}
STRENGTH = {
    "light",
    "lightish",
    "lighter",
    "dark",
    "darkish",
    "very",
    "really",
    "pale",
    "bright",
    "deep",
    "dull",
    "vivid",
    "vibrant",
    "strong",
    "rich",
    "pure",
    "true",
    "medium",
    "mid",
    "muted",
    "faded",
    "soft",
    "pastel",
    "dusty",
    "dirty",
    "off",
    "flat",
    "neon",
    "electric",
    "primary",
    "sky",
    "baby",
}
RUN_TOGETHER = {
    "orangered": "orange red",
    "greenblue": "green blue",
    "bluegreen": "blue green",
    "yellowgreen": "yellow green",
    "darkblue": "dark blue",
    "darkgreen": "dark green",
    "lightblue": "light blue",
    "lightgreen": "light green",
}


def family_meant(name):
    """The family of the wheel a name means; None when the name is out."""
    words = RUN_TOGETHER.get(name, name.replace("/", " ")).split()
    while words and words[0] in STRENGTH:
        words = words[1:]
    if len(words) == 1 and words[0] in PLAIN:
        return HUE_OF[words[0]]
    if len(words) == 2 and all(word in HUE_OF for word in words):
        return TERTIARY.get(frozenset(HUE_OF[word] for word in words))
    return None


@pytest.fixture(scope="module")
def names():
    lines = FILE.read_text().splitlines()
    rows = csv.DictReader(line for line in lines if not line.startswith("# "))
    return {row["name"]: row["srgb"] for row in rows}


@pytest.fixture(scope="module")
def said(names):
    readings = read_colours(srgb_to_Lab(np.array([hex_to_srgb(text) for text in names.values()])))
    return {
        name: reading.hue.family or reading.hue.leaning
        for name, reading in zip(names, readings, strict=True)
    }


def test_the_carried_names_are_all_that_the_rule_lets_in(names):
    from matplotlib.colors import XKCD_COLORS

    survey = {name.removeprefix("xkcd:"): text for name, text in XKCD_COLORS.items()}
    assert names == {name: text for name, text in survey.items() if family_meant(name)}


def test_families(said):
    distances = {name: wheel_distance(family_meant(name), family) for name, family in said.items()}
    assert len(distances) >= 200
    steps = np.array(list(distances.values()))
    assert (steps == 0).mean() >= 0.75
    assert [name for name, step in distances.items() if step > 1] == []


@pytest.mark.parametrize("name", ["sky blue", "light blue", "baby blue"])
def test_the_blues_of_skies_are_blue(said, name):
    assert said[name] == "blue"


@pytest.mark.parametrize("name", ["red", "orange", "yellow", "green", "blue", "violet", "purple"])
def test_the_plain_names_are_what_they_say(said, name):
    assert said[name] == family_meant(name)
