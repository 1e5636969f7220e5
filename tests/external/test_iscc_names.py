"""Families and intensity words against the ISCC-NBS centroids.

Kelly and Judd, 1976, "Color: universal language and dictionary of names", NBS Special
Publication 440. A centroid counts for the wheel when its noun is a name of the painter's wheel;
pinks, browns and olives are none. How standard names map to the wheel is a decision of ours:
purple and violet are both violet, greenish blue is blue-green, and so on, as written below.
"""

import csv
from pathlib import Path

import numpy as np
import pytest

from core.colour import hex_to_srgb, srgb_to_Lab
from core.reading.reading import read_colours
from core.reading.wheel import wheel_distance

FILE = Path(__file__).parents[1] / "data" / "iscc_nbs_centroids.csv"

FAMILY_OF_NOUN = {
    "red": "red",
    "reddish orange": "red-orange",
    "orange": "orange",
    "orange yellow": "yellow-orange",
    "yellow": "yellow",
    "greenish yellow": "yellow-green",
    "yellow green": "yellow-green",
    "yellowish green": "yellow-green",
    "green": "green",
    "bluish green": "blue-green",
    "greenish blue": "blue-green",
    "blue": "blue",
    "purplish blue": "blue-violet",
    "violet": "violet",
    "purple": "violet",
    "reddish purple": "red-violet",
    "purplish red": "red-violet",
}
MODIFIERS = {
    "vivid",
    "brilliant",
    "strong",
    "deep",
    "very",
    "light",
    "moderate",
    "dark",
    "pale",
    "grayish",
    "blackish",
}
DULL = {"grayish", "pale", "blackish"}
INTENSE = {"vivid", "brilliant", "strong", "deep"}
MODERATE = {"moderate", "light", "dark"}


def split_name(name):
    """("very deep", "red") of "Very Deep Red"; None when it is no name of the wheel."""
    words = name.split(",")[0].lower().split()
    for i in range(len(words)):
        noun = " ".join(words[i:])
        if noun in FAMILY_OF_NOUN and set(words[:i]) <= MODIFIERS:
            return words[:i], noun
    return None


def intensity_of(modifiers):
    if DULL & set(modifiers):
        return "dull"
    if INTENSE & set(modifiers):
        return "intense"
    if MODERATE & set(modifiers):
        return "moderate"
    return None


@pytest.fixture(scope="module")
def centroids():
    lines = FILE.read_text().splitlines()
    rows = list(csv.DictReader(line for line in lines if not line.startswith("# ")))
    assert len(rows) == 267
    readings = read_colours(srgb_to_Lab(np.array([hex_to_srgb(row["srgb"]) for row in rows])))
    return [(row["name"], reading) for row, reading in zip(rows, readings, strict=True)]


def test_families(centroids):
    distances = {}
    for name, reading in centroids:
        parsed = split_name(name)
        if parsed is not None:
            # A blackish green is near neutral; what it leans to is judged then.
            said = reading.hue.family or reading.hue.leaning
            distances[name] = wheel_distance(FAMILY_OF_NOUN[parsed[1]], said)
    assert len(distances) == 168
    steps = np.array(list(distances.values()))
    assert (steps == 0).mean() >= 0.80
    assert [name for name, step in distances.items() if step > 1] == []


def test_intensity_words(centroids):
    said, wanted = [], []
    for name, reading in centroids:
        parsed = split_name(name)
        if parsed is not None and intensity_of(parsed[0]) is not None:
            word = reading.intensity_word
            said.append("dull" if word == "near neutral" else word)
            wanted.append(intensity_of(parsed[0]))
    said, wanted = np.array(said), np.array(wanted)
    assert len(said) == 168
    assert (said == wanted).mean() >= 0.80
    opposite = ((said == "dull") & (wanted == "intense")) | (
        (said == "intense") & (wanted == "dull")
    )
    assert opposite.mean() <= 0.02


def test_intensity_words_of_the_names_left_out_of_the_wheel(centroids):
    """Pinks, browns and olives had no part in setting the hue bounds; same limits."""
    said, wanted = [], []
    for name, reading in centroids:
        words = name.split(",")[0].lower().split()
        if split_name(name) is None and words[-1] not in ("white", "gray", "black"):
            want = intensity_of(words[:-1])
            if want is not None:
                word = reading.intensity_word
                said.append("dull" if word == "near neutral" else word)
                wanted.append(want)
    said, wanted = np.array(said), np.array(wanted)
    assert len(said) >= 60
    opposite = ((said == "dull") & (wanted == "intense")) | (
        (said == "intense") & (wanted == "dull")
    )
    assert opposite.mean() <= 0.02


def test_greys_of_the_standard_are_near_neutral(centroids):
    """Names that end in white, gray or black; their charts end at chroma 1.5, as our bound does."""
    greys = {
        name: reading.hue
        for name, reading in centroids
        if name.split(",")[0].lower().split()[-1] in ("white", "gray", "black")
    }
    assert len(greys) == 33
    # One in twenty may fall on the other side: two of the centroids are on the bound itself.
    assert np.mean([hue.family is None for hue in greys.values()]) >= 0.95
    for name in ("White", "Light Gray", "Medium Gray", "Dark Gray", "Black"):
        plain = next(hue for key, hue in greys.items() if key.split(",")[0] == name)
        assert plain.family is None
        assert plain.leaning is None
