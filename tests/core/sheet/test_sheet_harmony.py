"""Nothing that is said of a sheet contradicts anything else that is said of it."""

from __future__ import annotations

import itertools
import re
from dataclasses import replace

import numpy as np
import pytest
from test_sheet_said import polar, reading_of

from core.reading.reading import SecondColour, read_colour
from core.sheet.findings.compare import compare_bands
from core.sheet.findings.facts import Facts, on_washes
from core.sheet.findings.findings import findings_of
from core.sheet.findings.strength import at_strength, reading_at, strength_of, stronger_Lab
from core.sheet.result import Bloom, HardEdge, LineCheck, Notice, Strength

AIMS = (polar(50, 40, 280), polar(60, 30, 320), polar(75, 40, 50))
OVER_EXPOSED = Notice("over-exposed", "The paper is over-exposed.")
IN_PLACE = tuple(
    LineCheck(letter, at, at, 0.0, "matches") for letter, at in (("A", 0.3), ("B", 0.6))
)
UNTOLD = (IN_PLACE[0], LineCheck("B", 0.6, 0.66, None, "cannot tell"))


def facts_of_shares(*shares: float, lines=IN_PLACE, notices=()) -> Facts:
    """A sheet with so many times the paint in each band."""
    wanted = reading_of(*AIMS)
    painted = [tuple(stronger_Lab(np.array(aim), share).tolist()) for aim, share in
               zip(AIMS, shares, strict=True)]  # fmt: skip
    found = reading_of(*painted)
    strength = strength_of(wanted, found)
    share = strength.share if strength.told else 1.0
    options = {"scan": True, "corrected": True, "sides": False}
    checks = compare_bands(wanted, found, strength=share, **options)
    aims = tuple(reading_at(reading, share) for reading in wanted)
    beyond = compare_bands(aims, found, strength=1.0, **options) if strength.told else ()
    return Facts(checks, lines, (), (), (), wanted, notices, strength, beyond)


def said(facts: Facts) -> str:
    return " ".join(finding.text for finding in findings_of(facts))


@pytest.mark.parametrize("notices", [(), (OVER_EXPOSED,)])
@pytest.mark.parametrize("shares", list(itertools.product((0.5, 1.0, 1.9), repeat=3)))
def test_all_of_it_is_not_said_where_a_band_is_right_or_off_the_other_way(shares, notices):
    text = said(facts_of_shares(*shares, notices=notices))
    for letter in "ABC":
        spared = f"Band {letter} has its strength" in text
        spared = spared or ("too pale" in text and f"More water in band {letter}" in text)
        assert not (spared and "All of it" in text)
        if spared and "so does the paper" not in text:
            assert re.search(f"All but bands? [^:]*{letter}", text)


def test_the_band_that_is_not_as_the_whole_is_spared():
    right, strong = said(facts_of_shares(0.7, 1.0, 0.7)), said(facts_of_shares(0.7, 0.7, 1.9))
    assert "All but band B is too pale" in right
    assert "All but band C is too pale" in strong
    assert "Beyond that" not in strong


def test_lines_that_cannot_be_told_are_not_praised():
    assert "every line is in its place" in said(facts_of_shares(1, 1, 1))
    assert "line" not in said(facts_of_shares(1, 1, 1, lines=UNTOLD))
    assert "Hues and lines are right" in said(facts_of_shares(0.5, 0.5, 0.5))
    assert "The hues are right" in said(facts_of_shares(0.5, 0.5, 0.5, lines=UNTOLD))


def test_a_grey_band_painted_in_a_colour_has_not_the_photo_s_hue():
    aims = (*AIMS[:2], (60.0, 0.0, 0.0))
    painted = [tuple(stronger_Lab(np.array(aim), 0.5).tolist()) for aim in AIMS[:2]]
    wanted, found = reading_of(*aims), reading_of(*painted, polar(75, 25, 30))
    checks = compare_bands(wanted, found, scan=True, corrected=True, sides=False, strength=0.5)
    text = said(Facts(checks, (), (), (), (), wanted, (), Strength(0.5, told=True), checks))
    assert text.startswith("Bands A and B have the photo's hue.")


@pytest.mark.parametrize("shares", [(0.5, 0.5, 0.5), (1.0, 0.4, 1.0)], ids=["all", "one"])
def test_no_more_paint_is_asked_for_while_the_photo_is_too_bright(shares):
    assert "more paint in" in said(facts_of_shares(*shares)).lower() or shares[0] == 1
    text = said(facts_of_shares(*shares, notices=(OVER_EXPOSED,)))
    assert "hotograph the sheet a little darker before you take more paint" in text
    assert "in the same water" not in text
    assert "into the same water" not in text


@pytest.mark.parametrize(
    ("shares", "words"),
    [
        ((0.45, 0.45, 1.0), "Band C has its strength: leave that mix as it is."),
        ((2.1, 1.0, 2.1), "Band B has its strength: leave that mix as it is."),
        ((0.4, 0.4, 0.7), "Band C needs less extra paint than the others."),
        ((2.6, 1.5, 2.6), "Band B needs less extra water than the others."),
    ],
)
def test_a_band_that_is_right_is_not_told_the_opposite_of_the_whole(shares, words):
    facts = facts_of_shares(*shares)
    assert facts.too_much
    assert words in said(facts)
    for opposite in ("Add water", "More water in", "Put more paint", "More paint in"):
        assert opposite not in said(facts)


@pytest.mark.parametrize(
    ("share", "much"),
    [(0.33, "three times as much"), (0.5, "twice as much"), (0.72, "half as much again"),
     (1.4, "half as much again"), (2.0, "twice as much"), (2.9, "three times as much")],
)  # fmt: skip
def test_as_much_paint_or_water_is_named_as_is_needed(share, much):
    assert f"about {much}" in said(facts_of_shares(share, share, share))


def test_greyed_paint_is_not_called_too_little():
    greyed = [(L, 0.45 * a, 0.45 * b) for L, a, b in AIMS]
    assert not strength_of(reading_of(*AIMS), reading_of(*greyed)).told


def test_strength_is_told_of_clouds_and_sky_each_beside_its_own():
    """The sheet's band is half cloud, and its cloud was read first."""
    sky, cloud = (read_colour(polar(*lch)) for lch in ((45, 35, 280), (80, 8, 60)))
    (plain,) = reading_of((45.0, 0.0, 0.0))
    wanted = replace(plain, colour=sky, second=SecondColour(cloud, 0.4, True))
    found = replace(plain, colour=cloud, second=SecondColour(sky, 0.4, True))
    assert not strength_of((wanted,), (found,)).told
    pale = [at_strength(colour, 0.5) for colour in (cloud, sky)]
    found = replace(plain, colour=pale[0], second=SecondColour(pale[1], 0.4, True))
    strength = strength_of((wanted,), (found,))
    assert strength.told
    assert strength.share == pytest.approx(0.5, rel=0.1)


def test_edges_and_blooms_are_between_the_washes_that_are_there():
    def edge(*letters: str) -> HardEdge:
        return HardEdge(0.5, 0.0, 1.0, 0.8, True, letters, "dried before the next wash")

    bloom = Bloom(0.5, 0.5, 0.05, "C")
    edges, blooms = on_washes((edge("A", "B"), edge("B", "C"), edge("C"), edge("D", "E")),
                              (bloom,), there="ADE", letters="ABCDE")  # fmt: skip
    assert [found.letters for found in edges] == [("A", "D"), ("A", "D"), ("A",), ("D", "E")]
    assert [found.letter for found in blooms] == ["A"]
    edges, blooms = on_washes((edge("A", "B"),), (replace(bloom, letter="A"),), "BC", "ABC")
    assert (edges[0].letters, blooms[0].letter) == (("B",), "B")


def test_one_side_that_is_lighter_is_not_the_photo_s_value_in_every_band():
    wanted = reading_of(*AIMS)
    found = list(wanted)
    light = read_colour(polar(66, 40, 280))
    found[0] = replace(found[0], right=light)
    checks = compare_bands(wanted, tuple(found), scan=True, corrected=True, sides=True)
    facts = Facts(checks, (), (), (), (), wanted, ())
    assert facts.uneven
    assert "On the right band A is lighter" in said(facts)
    assert "alue" not in said(facts)
