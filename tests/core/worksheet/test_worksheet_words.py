"""What the worksheet asks and says: one scale, direction only, nothing graded or ranked."""

from __future__ import annotations

import re
from dataclasses import replace

import numpy as np
import pytest

from core import i18n
from core.bands.lines import Bands
from core.reading.reading import BandReading, read_colour
from core.sheet.findings.compare import compare_bands
from core.sheet.findings.scores import score_of_gap, score_sheet
from core.sheet.result import Change, Finding, Light, LineCheck, SheetCheck
from core.worksheet import words
from core.worksheet.compare import (
    change_sentence,
    direction,
    directions,
    measured_lines,
    nothing_to_compare,
    shown_score,
)
from core.worksheet.worksheet import CHANGES, QUALITIES, OwnScores

# CIELAB of the photo's bands, and what a sheet may have instead.
WANTED = ((45.0, 17.0, -42.0), (60.0, 17.0, -30.0), (78.0, 18.0, -12.0))
CORNERS = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))


def readings(colours):
    one = None
    return tuple(
        BandReading(
            "ABC"[n], n / 3, (n + 1) / 3, read_colour(Lab), one, one, one, 1.0, False, 0.0, 1.0
        )
        for n, Lab in enumerate(colours)
    )


def sheet_check(colours=WANTED, shifts=(0.0, 0.0)) -> SheetCheck:
    """A check of three bands whose gaps and scores the program itself reckons."""
    bands = compare_bands(
        readings(WANTED), readings(colours), scan=True, corrected=True, sides=False
    )
    lines = tuple(
        LineCheck(
            "AB"[n],
            (n + 1) / 3,
            (n + 1) / 3 + (shift or 0) / 100,
            shift,
            "cannot tell" if shift is None else "matches" if abs(shift) <= 2 else "off",
        )
        for n, shift in enumerate(shifts)
    )
    return SheetCheck(
        name="one.jpg",
        picture=np.zeros((4, 4, 3), np.uint8),
        corners=CORNERS,
        corner_confidence=1.0,
        turned=0,
        better_turn=None,
        light=Light(None, False, (1.0, 1.0, 1.0)),
        bands=Bands(1.0, (1 / 3, 2 / 3)),
        lines=lines,
        band_checks=bands,
        hard_edges=(),
        blooms=(),
        pale_corners=(),
        scores=score_sheet(bands, lines),
        findings=(),
    )


def test_anchors_say_what_the_measured_scores_mean() -> None:
    """The scale's ends and middle are those of `score_of_gap`: up to 1 tolerance it matches."""
    assert tuple(sorted(score_of_gap(gap) for gap in (1, 2, 4, 8))) == words.ANCHORS
    assert words.anchor_word(10) == "matches"
    assert words.anchor_word(7) == "close"
    assert len({words.anchor_word(score) for score in words.ANCHORS}) == 4
    with pytest.raises(ValueError, match="not 5"):
        words.anchor_word(5)


def test_every_score_of_every_quality_has_a_hint() -> None:
    for quality in QUALITIES:
        hints = [words.score_hint(quality, score) for score in range(1, 11)]
        assert hints[9].startswith("10: ")
        assert hints[7].startswith("near 7: ")
        assert len(set(hints)) == 8  # 1, 2 near 1, 3 and 5 near 4, 4, ...


@pytest.mark.parametrize(
    ("missing", "has_sheet", "sentence"),
    [
        (("intensity",), True, "Score intensity to open them."),
        (("hue", "value", "intensity"), True, "Score hue, value and intensity to open them."),
        (
            ("hue", "value"),
            False,
            "Score hue and value, and add the sheet's picture on the Sheets page.",
        ),
        ((), False, "Add the sheet's picture on the Sheets page to open them."),
        ((), True, ""),
    ],
)
def test_what_is_missing_is_said(missing, has_sheet, sentence) -> None:
    assert words.waiting_sentence(missing, has_sheet) == sentence


def test_questions_of_both_sheets() -> None:
    assert words.question(0) == "What would you do differently?"
    assert words.question(1) == "Did the change help?"
    for index in (0, 1):
        asked = {words.prompt_question(prompt, index) for prompt in words.PROMPTS}
        assert len(asked) == 4
        assert all(text.endswith("?") for text in asked)
    assert len({words.change_title(change) for change in CHANGES}) == len(CHANGES)
    assert words.change_reminder("edges") == "On sheet 1 you chose to change hard edges first."
    assert words.change_reminder(None) == "On sheet 1, choose one thing to change first."


@pytest.mark.parametrize(
    ("own", "measured", "way"),
    [
        (7, 5, "seen closer"),
        (5, 7, "measured closer"),
        (7, 6, "alike"),
        (6, 7, "alike"),
        (7, 7, "alike"),
        (10, 1, "seen closer"),
        (None, 7, None),
        (7, None, None),
    ],
)
def test_direction_is_of_two_whole_points_or_none(own, measured, way) -> None:
    assert direction(own, measured) == way


def test_two_points_are_never_more_than_the_photo_tells() -> None:
    """One point is at most a third of a tolerance: half of what still counts as a match."""
    steepest = max(score_of_gap(gap) - score_of_gap(gap + 0.1) for gap in np.arange(0.0, 10.0, 0.1))
    assert steepest / 0.1 == pytest.approx(3.0)


def test_measured_scores_are_shown_as_whole_numbers() -> None:
    assert [shown_score(score) for score in (1.0, 6.4, 6.5, 8.5, 10.0)] == [1, 6, 7, 9, 10]
    assert shown_score(9.9) == 9  # 10 says that all matches
    assert shown_score(None) is None


def test_a_sheet_like_the_photo_matches_everywhere() -> None:
    lines = measured_lines(OwnScores(7, 10, 9), sheet_check())
    assert [line.measured for line in lines] == [10, 10, 10, 10]
    assert [line.direction for line in lines] == ["measured closer", "alike", "alike", None]
    assert lines[0].sentence == lines[1].sentence == "Matches in every band."
    assert all(line.whole for line in lines)
    assert directions(lines) == (
        "It measured closer to the photo than you saw it: hue.",
        "It measured much as you saw it: value and intensity.",
    )
    assert lines[3].sentence == "Every line is in place."


def test_a_lighter_band_is_named_with_its_side() -> None:
    lighter = ((64.0, 17.0, -42.0), (72.0, 17.0, -30.0), WANTED[2])
    lines = {
        line.quality: line
        for line in measured_lines(
            OwnScores(10, 10, 10),
            sheet_check(
                lighter,
                (
                    6.0,
                    -3.0,
                ),
            ),
        )
    }
    value = lines["value"]
    assert value.measured is not None
    assert value.measured < 8
    assert value.direction == "seen closer"
    assert value.sentence == ("Matches in 1 of 3 bands. Look at band A first: lighter by 2.")
    assert not value.whole
    assert lines["placement"].sentence == "Look at the line below band A first: 6% low."


def test_a_sheet_of_another_sky_has_a_note_alone() -> None:
    check = sheet_check()
    assert nothing_to_compare(check) == ""
    note = Finding("note", "sky", (), "This sheet shows another sky.")
    assert nothing_to_compare(replace(check, findings=(note,))) == note.text
    praise = Finding("praise", "hue", (), "The hues match.")
    assert nothing_to_compare(replace(check, findings=(praise, note))) == ""


def test_what_cannot_be_told_is_said_so() -> None:
    check = sheet_check(shifts=(None, None))
    line = measured_lines(OwnScores(5, 5, 5, 5), check)[3]
    assert (line.measured, line.direction) == (None, None)
    assert line.sentence == "The picture cannot tell."


def test_no_sentence_grades_agreement_or_ranks() -> None:
    """Being near one's measurement is never praised, being far from it never blamed."""
    said = ""
    for own in range(1, 11):
        lines = measured_lines(OwnScores(own, own, own, own), sheet_check(shifts=(6.0, 0.0)))
        said += " ".join((*(line.sentence for line in lines), *directions(lines)))
    assert not re.search(
        r"wrong|right|correct|accura|agree|over-?rate|under-?rate|good|bad|too high|too low|rank"
        r"|average|total|overall",
        said,
        re.IGNORECASE,
    )


def test_the_change_is_told_without_blame() -> None:
    change = Change(rows=(), intended="placement", worked="improved")
    assert change_sentence(change) == "You set out to change placement: it came closer."
    worse = replace(change, worked="worse")
    assert change_sentence(worse) == "You set out to change placement: it moved away."
    blooms = replace(change, intended="blooms")
    assert change_sentence(blooms) == "You set out to change blooms: there are fewer."
    unknown = replace(change, worked=None)
    assert change_sentence(unknown).endswith("the pictures cannot tell.")
    assert change_sentence(replace(change, intended=None)) == ""
    assert change_sentence(None) == ""


@pytest.fixture
def in_another_tongue():
    """Every text in capitals, its slots kept: what passes untranslated stays small."""

    def shout(context, text):
        return re.sub(r"(\{\w+\})|([^{}]+)", lambda m: m[1] or m[2].upper(), text)

    i18n.set_catalogue(shout)
    yield
    i18n.set_catalogue(None)


def test_every_text_can_be_translated(in_another_tongue) -> None:
    lighter = ((60.0, 17.0, -42.0), *WANTED[1:])
    check = sheet_check(lighter, (6.0, 0.0))
    lines = measured_lines(OwnScores(9, 2, 5, 9), check)
    texts = [*(line.sentence for line in lines), *directions(lines)]
    for worked in ("improved", "worse", "stayed", None):
        texts += [change_sentence(Change((), thing, worked)) for thing in CHANGES]
    for index in (0, 1):
        texts += [words.question(index), words.sheet_title(index)]
        texts += [words.prompt_question(prompt, index) for prompt in words.PROMPTS]
    for quality in QUALITIES:
        texts += [words.quality_title(quality)]
        texts += [words.score_hint(quality, score) for score in range(1, 11)]
    texts += [words.anchor_word(score) for score in words.ANCHORS]
    texts += [words.prompt_word(prompt) for prompt in words.PROMPTS]
    texts += [words.change_title(change) for change in CHANGES]
    texts += [words.change_reminder(change) for change in (*CHANGES, None)]
    texts += [words.change_question(), words.waiting_sentence((), False)]
    texts += [words.waiting_sentence(("hue",), has) for has in (True, False)]
    assert all(text == text.upper() for text in texts)
