"""Own scores beside measured ones: which way they differ, said kindly.

A score tells how near to the photo the student saw the sheet, not whether they saw it lighter or
darker. So the direction between own and measured is "closer than it measured" or the reverse;
what is lighter, duller or higher is measured alone and said of one band. Agreement is never
graded (ratings became less accurate where it was: Raaijmakers et al. 2019), nothing is ranked,
and the qualities are never put together.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal, assert_never

from core.i18n import translate
from core.reading.quality import Outcome
from core.sheet.findings.words import line_remark, quality_word, remark_of
from core.sheet.result import BandCheck, Change, LineCheck, SheetCheck
from core.words.lists import listed
from core.worksheet.worksheet import QUALITIES, OwnScores, Quality

Direction = Literal["seen closer", "measured closer", "alike"]
DIRECTIONS: tuple[Direction, ...] = ("seen closer", "measured closer", "alike")

TELLS = 2
"""Whole points own and measured must be apart before a direction is named: one point is at most
a third of a tolerance (`core.sheet.findings.scores`), less than a photo of a sheet can tell."""


@dataclass(frozen=True)
class MeasuredLine:
    """One quality of one sheet, own beside measured.

    Attributes
    ----------
    own : int or None
        The student's score.
    measured : int or None
        The measured score as shown, a whole number; None where it cannot be told.
    direction : Direction or None
        None while one of the two is missing.
    sentence : str
        What holds, and where to look first; the direction is told once for all (`directions`).
    whole : bool
        It matches wherever it could be told.
    """

    quality: Quality
    own: int | None
    measured: int | None
    direction: Direction | None
    sentence: str
    whole: bool = False


def shown_score(score: float | None) -> int | None:
    """A measured score on the student's scale of whole numbers.

    A 10 says that all matches: what is a little less is not rounded up to it.

    >>> shown_score(6.5), shown_score(6.4), shown_score(9.9)
    (7, 6, 9)
    """
    if score is None:
        return None
    return 10 if score >= 10 else min(math.floor(score + 0.5), 9)


def direction(own: int | None, measured: int | None) -> Direction | None:
    """Which of the two is closer to the photo; None while one is missing.

    >>> direction(8, 5), direction(5, 8), direction(6, 7)
    ('seen closer', 'measured closer', 'alike')
    """
    if own is None or measured is None:
        return None
    if abs(own - measured) < TELLS:
        return "alike"
    return "seen closer" if own > measured else "measured closer"


def directions(lines: Sequence[MeasuredLine]) -> tuple[str, ...]:
    """Which way own and measured differ: each way once, with the qualities it is true of."""
    said = []
    for way in DIRECTIONS:
        words = [quality_word(line.quality) for line in lines if line.direction == way]
        if words:
            said.append(_direction_template(way).format(qualities=listed(words)))
    return tuple(said)


def _direction_template(way: Direction) -> str:
    match way:
        case "seen closer":
            return translate(
                "worksheet", "You saw it closer to the photo than it measured: {qualities}."
            )
        case "measured closer":
            return translate(
                "worksheet", "It measured closer to the photo than you saw it: {qualities}."
            )
        case "alike":
            return translate("worksheet", "It measured much as you saw it: {qualities}.")
        case _:
            assert_never(way)


def measured_lines(own: OwnScores, check: SheetCheck) -> tuple[MeasuredLine, ...]:
    """Hue, value, intensity and placement of a sheet, each with its sentence.

    Parameters
    ----------
    own : OwnScores
        Whether they are complete is the caller's to ask (`OwnScores.missing`).
    check : SheetCheck
    """
    lines = []
    for quality in QUALITIES:
        measured = shown_score(getattr(check.scores, quality))
        way = direction(own.of(quality), measured)
        held, where = _held(quality, check), _where(quality, check)
        sentence = " ".join(part for part in (held, where) if part)
        if measured is None:
            sentence = translate("worksheet", "The picture cannot tell.")
        whole = measured is not None and _is_whole(quality, check)
        lines.append(MeasuredLine(quality, own.of(quality), measured, way, sentence, whole))
    return tuple(lines)


def nothing_to_compare(check: SheetCheck) -> str:
    """Why nothing measured means anything yet (another sky, corners not found); empty if it does.

    A check that can say nothing of the painting has a note alone.
    """
    notes = [finding.text for finding in check.findings if finding.kind == "note"]
    return notes[0] if notes and len(notes) == len(check.findings) else ""


def change_sentence(change: Change | None) -> str:
    """Whether what was named on the first sheet changed on the second; empty if it is not known."""
    if change is None or change.intended is None:
        return ""
    if change.intended == "edges":
        sentence = _edges_template(change.worked)
    else:
        sentence = _worked_template(change.worked, counted=change.intended == "blooms")
    return sentence.format(thing=quality_word(change.intended))


def _edges_template(worked: Outcome | None) -> str:
    """Hard edges are compared by their length, not by their number."""
    match worked:
        case "improved":
            return translate("worksheet", "You set out to change {thing}: they are shorter in all.")
        case "worse":
            return translate("worksheet", "You set out to change {thing}: they are longer in all.")
        case None | "stayed":
            return _worked_template(worked, counted=False)
        case _:
            assert_never(worked)


def _worked_template(worked: Outcome | None, counted: bool) -> str:
    match worked:
        case None:
            return translate(
                "worksheet", "You set out to change {thing}: the pictures cannot tell."
            )
        case "improved":
            if counted:
                return translate("worksheet", "You set out to change {thing}: there are fewer.")
            return translate("worksheet", "You set out to change {thing}: it came closer.")
        case "worse":
            if counted:
                return translate("worksheet", "You set out to change {thing}: there are more.")
            return translate("worksheet", "You set out to change {thing}: it moved away.")
        case "stayed":
            if counted:
                return translate("worksheet", "You set out to change {thing}: as many as before.")
            return translate("worksheet", "You set out to change {thing}: much as before.")
        case _:
            assert_never(worked)


def _held(quality: Quality, check: SheetCheck) -> str:
    """How many bands, or lines, match."""
    if quality == "placement":
        judged = [line for line in check.lines if line.verdict != "cannot tell"]
        held = sum(line.verdict == "matches" for line in judged)
        if held and held == len(judged):
            return translate("worksheet", "Every line is in place.")
        if held:
            return translate("worksheet", "In place: {count} of {total} lines.").format(
                count=held, total=len(judged)
            )
        return ""
    verdicts = [getattr(band, quality) for band in check.band_checks]
    judged_bands = [verdict for verdict in verdicts if verdict != "cannot tell"]
    held = judged_bands.count("matches")
    if held and held == len(judged_bands):
        return translate("worksheet", "Matches in every band.")
    if held:
        return translate("worksheet", "Matches in {count} of {total} bands.").format(
            count=held, total=len(judged_bands)
        )
    return ""


def _is_whole(quality: Quality, check: SheetCheck) -> bool:
    """Whether every band, or line, that can be told of matches."""
    verdicts = (
        [line.verdict for line in check.lines]
        if quality == "placement"
        else [getattr(band, quality) for band in check.band_checks]
    )
    judged = [verdict for verdict in verdicts if verdict != "cannot tell"]
    return bool(judged) and all(verdict == "matches" for verdict in judged)


def _where(quality: Quality, check: SheetCheck) -> str:
    """The one band or line to look at first; empty when all that can be told matches."""
    if quality == "placement":
        return _where_line(check.lines)
    gap_name = f"{quality}_gap"
    judged = [band for band in check.band_checks if (getattr(band, gap_name) or 0.0) > 1]
    if not judged:
        return ""
    band = max(judged, key=lambda one: float(getattr(one, gap_name)))
    remark = _remark(band, quality)
    if not remark:
        return ""
    return translate("worksheet", "Look at band {letter} first: {remark}.").format(
        letter=band.letter, remark=remark
    )


def _remark(band: BandCheck, quality: Quality) -> str:
    gaps = tuple(
        getattr(band, f"{name}_gap") if name == quality else None
        for name in ("hue", "value", "intensity")
    )
    return remark_of(band.sheet.colour, band.whole, (gaps[0], gaps[1], gaps[2]))


def _where_line(lines: tuple[LineCheck, ...]) -> str:
    moved = [
        (abs(line.shift_pct), line)
        for line in lines
        if line.shift_pct is not None and line.verdict in ("close", "off")
    ]
    if not moved:
        return ""
    line = max(moved, key=lambda pair: pair[0])[1]
    return translate("worksheet", "Look at the line below band {letter} first: {remark}.").format(
        letter=line.letter, remark=line_remark(line)
    )
