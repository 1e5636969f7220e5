"""What is said of a row of the second sheet fits the two values beside it."""

from __future__ import annotations

import itertools
from dataclasses import replace

import numpy as np
import pytest
from test_sheet_harmony import facts_of_shares
from test_sheet_said import polar, reading_of
from test_sheet_second import CLOUD, SKY, band

from core.reading.reading import read_colour
from core.sheet.findings.change import _colour_row, _findings, _together, change_word
from core.sheet.findings.compare import compare_bands
from core.sheet.findings.findings import findings_of
from core.sheet.findings.strength import is_seen, strength_of, stronger_Lab
from core.sheet.result import ChangeRow

SHARES = (0.4, 0.6, 0.75, 0.9, 1.0, 1.2, 1.5, 2.0)


def bands_at(share):
    aim = polar(55, 35, 280)
    painted = tuple(stronger_Lab(np.array(aim), share).tolist())
    return compare_bands(
        reading_of(aim), reading_of(painted), scan=True, corrected=True, sides=False
    )[0]


@pytest.mark.parametrize("quality", ["value", "intensity", "hue"])
def test_stayed_is_said_only_of_what_reads_the_same(quality):
    words = set()
    for before, after in itertools.product(SHARES, repeat=2):
        row = _colour_row(quality, bands_at(before), bands_at(after))
        if row is None:
            continue
        word = change_word(row)
        words.add(word)
        assert (word == "stayed") <= (row.before == row.after), (row, word)
        assert (word == "gone past") <= row.past
    if quality == "value":
        assert words >= {"nearer", "further", "stayed", "gone past", "about as near"}


@pytest.mark.parametrize(("before", "after", "outcome", "word"), [
    ("1 hard edge", "2 hard edges", "improved", "shorter in all"),
    ("2 hard edges", "1 hard edge", "worse", "longer in all"),
    ("1 hard edge", "2 hard edges", "stayed", "as long in all"),
    ("1 hard edge", "1 hard edge", "stayed", "stayed"),
])  # fmt: skip
def test_hard_edges_are_told_by_their_length(before, after, outcome, word):
    assert change_word(ChangeRow("edges", None, before, after, outcome)) == word


def test_fewer_blooms_are_fewer_not_nearer():
    assert change_word(ChangeRow("blooms", None, "2 blooms", "1 bloom", "improved")) == "fewer"
    assert change_word(ChangeRow("blooms", None, "1 bloom", "2 blooms", "worse")) == "more"


def test_what_came_nearer_in_one_band_and_went_further_in_another_is_not_as_before():
    rows = (
        ChangeRow("value", "A", "lighter by 2", "matches", "improved"),
        ChangeRow("value", "B", "matches", "lighter by 2", "worse"),
    )
    first, *_ = _findings(rows, "value", _together(rows, "value"))
    assert first.text == (
        "You set out to change the value: nearer now the value of band A, "
        "further now the value of band B."
    )


WHITE, BLUE = polar(97, 3, 90), polar(60, 30, 270)


def strength_at(aims, share):
    wanted = reading_of(*aims)
    found = reading_of(*(tuple(stronger_Lab(np.array(aim), share).tolist()) for aim in aims))
    strength = strength_of(wanted, found)
    checks = compare_bands(wanted, found, scan=True, corrected=True, sides=False)
    return strength.told and is_seen(strength, checks)


@pytest.mark.parametrize("share", [0.4, 0.6, 1.6, 2.2])
def test_strength_is_told_beside_bands_that_are_nearly_white(share):
    assert strength_at((BLUE, WHITE, WHITE, WHITE), share)
    assert not strength_at((WHITE, WHITE, WHITE), share)


def test_one_pale_band_of_three_that_show_it_is_no_strength_of_the_whole():
    assert "All of it" not in " ".join(f.text for f in findings_of(facts_of_shares(0.5, 1, 1)))


@pytest.mark.parametrize("share", [0.5, 1.0, 1.8])
def test_of_a_nearly_white_sky_its_strength_is_said_to_be_hard_to_tell(share):
    wanted = reading_of(WHITE, WHITE)
    painted = tuple(stronger_Lab(np.array(WHITE), share).tolist())
    facts = facts_of_shares(1, 1, 1)
    checks = compare_bands(
        wanted, reading_of(painted, painted), scan=True, corrected=True, sides=False
    )
    said = [f.text for f in findings_of(replace(facts, bands=checks, reference=wanted, lines=()))]
    assert said[-1].startswith("The photo's sky is nearly white")
    assert not any("nearly white" in f.text for f in findings_of(facts))


@pytest.mark.parametrize(("share", "said"), [(0.6, "a little pale"), (1.6, "a little strong"),
                                             (1.1, "")])  # fmt: skip
def test_a_strength_that_a_picture_hardly_shows_is_said_with_a_grain_of_salt(share, said):
    grey = polar(89, 0, 0) if share < 1 else polar(93, 0, 0)
    wanted = reading_of(grey, grey)
    painted = tuple(stronger_Lab(np.array(grey), share).tolist())
    found = reading_of(painted, painted)
    checks = compare_bands(wanted, found, scan=False, corrected=True, sides=False)
    facts = replace(facts_of_shares(1, 1, 1), bands=checks, reference=wanted, lines=())
    texts = [f.text for f in findings_of(replace(facts, strength=strength_of(wanted, found)))]
    assert texts[0] == "The sheet matches the photo in hue, value and intensity."
    assert any("If anything" in text and said in text for text in texts) is bool(said)


def test_strength_that_only_second_colours_show_is_seen():
    wanted = band(SKY, CLOUD, 0.4)
    aims = [wanted.colour, wanted.second.colour]
    painted = [tuple(stronger_Lab(np.array(aim.Lab), 0.6).tolist()) for aim in aims]
    second = replace(wanted.second, colour=read_colour(painted[1]))
    sheet = replace(wanted, colour=read_colour(painted[0]), second=second)
    checks = compare_bands((wanted,), (sheet,), scan=True, corrected=True, sides=False)
    level = tuple(replace(check, value_gap=0.0, intensity_gap=0.0) for check in checks)
    assert is_seen(strength_of((wanted,), (sheet,)), level)
