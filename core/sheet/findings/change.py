"""The second sheet against the first: what improved, what got worse, what stayed."""

from __future__ import annotations

from typing import Literal, assert_never

from core.i18n import translate
from core.reading.quality import ChangeFirst, Outcome
from core.sheet.findings.facts import facts_of, lines_gone
from core.sheet.findings.praise import all_is_well
from core.sheet.findings.words import line_remark, quality_word, short_remark
from core.sheet.result import BandCheck, Change, ChangeRow, Finding, LineCheck, SheetCheck
from core.words.lists import listed
from core.words.verdicts import outcome_word

_LEAST = 0.5
"""Tolerances by which a difference must shrink or grow to count: half of what still matches."""
_LEAST_LENGTH = 0.25
"""Widths of the sheet by which the hard edges must get shorter or longer."""

_COLOURS: tuple[ChangeFirst, ...] = ("value", "hue", "intensity")


def compare_checks(
    first: SheetCheck, second: SheetCheck, intended: ChangeFirst | None = None
) -> Change:
    """Compare two checks against the same reference.

    Parameters
    ----------
    first, second : SheetCheck
        Of sheet 1 and sheet 2; bands are paired by their letters.
    intended : one of CHANGES, optional
        What the student meant to change.

    Examples
    --------
    A difference within the tolerance counts as none, so a match that gets closer has stayed.
    """
    rows = tuple(_rows(first, second))
    worked = None if intended is None else _together(rows, intended)
    if _is_well(first) and _is_well(second):
        return Change(rows, intended, worked, (_challenge(),))
    return Change(rows, intended, worked, tuple(_findings(rows, intended, worked)))


def change_word(row: ChangeRow) -> str:
    """What became of a row, in a word or two beside its two values."""
    if row.past and row.outcome == "stayed":
        return translate("sheet", "gone past")
    if row.about == "edges":
        return _length_word(row)
    if row.about == "blooms" and row.outcome != "stayed":
        fewer = row.outcome == "improved"
        return translate("sheet", "fewer") if fewer else translate("sheet", "more")
    if row.outcome == "stayed" and row.before != row.after:
        return translate("sheet", "about as near")
    return outcome_word(row.outcome)


def _length_word(row: ChangeRow) -> str:
    """Hard edges are compared by their length: one long one may have become two short ones."""
    match row.outcome:
        case "improved":
            return translate("sheet", "shorter in all")
        case "worse":
            return translate("sheet", "longer in all")
        case "stayed":
            if row.before == row.after:
                return outcome_word(row.outcome)
            return translate("sheet", "as long in all")
        case _:
            assert_never(row.outcome)


def _is_well(check: SheetCheck) -> bool:
    return check.readable and all_is_well(facts_of(check))


def _challenge() -> Finding:
    """Two sheets with nothing left to measure: the next thing to reach for."""
    text = translate(
        "sheet",
        "Both sheets match the photo in all that was measured. A new challenge: the same sky with "
        "one paint fewer, or a photo with one band more.",
    )
    return Finding("praise", "sky", (), text)


def _rows(first: SheetCheck, second: SheetCheck) -> list[ChangeRow]:
    rows = []
    before = {band.letter: band for band in first.band_checks}
    for band in second.band_checks:
        if band.letter in before:
            for quality in _COLOURS:
                row = _colour_row(quality, before[band.letter], band)
                if row is not None:
                    rows.append(row)
    lines = {line.letter: line for line in _lines_of_washes(first)}
    for line in _lines_of_washes(second):
        if line.letter in lines:
            row = _line_row(lines[line.letter], line)
            if row is not None:
                rows.append(row)
    rows.append(_edge_row(first, second))
    rows.append(_bloom_row(first, second))
    return rows


def _lines_of_washes(check: SheetCheck) -> list[LineCheck]:
    """The lines that washes meet at: a band that is missing has none."""
    gone = lines_gone(check.washes)
    return [line for k, line in enumerate(check.lines) if k not in gone]


def _outcome(before: float, after: float, least: float) -> Outcome:
    """Whether something got smaller; what is within 1 is no difference at all."""
    change = max(after, 1.0) - max(before, 1.0)
    if change <= -least:
        return "improved"
    return "worse" if change >= least else "stayed"


def _colour_row(quality: ChangeFirst, before: BandCheck, after: BandCheck) -> ChangeRow | None:
    gap = f"{quality}_gap"
    old, new = getattr(before, gap), getattr(after, gap)
    if old is None or new is None:
        return None
    past = min(old, new) > 1 and _way(before, quality) * _way(after, quality) < 0
    outcome = _outcome(old, new, _LEAST)
    if past and outcome == "improved":
        outcome = "stayed"
    return ChangeRow(
        quality,
        after.letter,
        short_remark(before, quality),
        short_remark(after, quality),
        outcome,
        past,
    )


def _way(band: BandCheck, quality: ChangeFirst) -> float:
    """In which way a quality is off: above or below 0; 0 where that cannot be told."""
    if band.whole is None:
        return 0.0
    if quality == "value":
        return band.whole.value_steps
    if quality == "intensity":
        return band.whole.chroma_steps
    return band.whole.hue_steps or 0.0


def _line_row(before: LineCheck, after: LineCheck) -> ChangeRow | None:
    if before.gap is None or after.gap is None:
        return None
    outcome = _outcome(before.gap, after.gap, _LEAST)
    past = min(before.gap, after.gap) > 1 and (before.shift_pct or 0) * (after.shift_pct or 0) < 0
    if past and outcome == "improved":
        outcome = "stayed"
    return ChangeRow(
        "placement", after.letter, line_remark(before), line_remark(after), outcome, past
    )


def _edge_row(first: SheetCheck, second: SheetCheck) -> ChangeRow:
    def length(check: SheetCheck) -> float:
        return sum(edge.end - edge.start for edge in check.hard_edges)

    change = length(second) - length(first)
    outcome: Outcome = "stayed"
    if abs(change) >= _LEAST_LENGTH:
        outcome = "improved" if change < 0 else "worse"
    counts = [len(check.hard_edges) for check in (first, second)]
    return ChangeRow("edges", None, _edge_count(counts[0]), _edge_count(counts[1]), outcome)


def _edge_count(n: int) -> str:
    if n == 0:
        return translate("sheet", "no hard edges")
    if n == 1:
        return translate("sheet", "1 hard edge")
    return translate("sheet", "{n} hard edges").format(n=n)


def _bloom_row(first: SheetCheck, second: SheetCheck) -> ChangeRow:
    before, after = len(first.blooms), len(second.blooms)
    outcome: Outcome = "stayed"
    if before != after:
        outcome = "improved" if after < before else "worse"
    return ChangeRow("blooms", None, _bloom_count(before), _bloom_count(after), outcome)


def _bloom_count(n: int) -> str:
    if n == 0:
        return translate("sheet", "no blooms")
    if n == 1:
        return translate("sheet", "1 bloom")
    return translate("sheet", "{n} blooms").format(n=n)


def _together(rows: tuple[ChangeRow, ...], about: ChangeFirst) -> Outcome | None:
    """All rows of one quality: more improved than worse, or the other way round."""
    outcomes = [row.outcome for row in rows if row.about == about]
    if not outcomes:
        return None
    balance = outcomes.count("improved") - outcomes.count("worse")
    if balance == 0:
        return "stayed"
    return "improved" if balance > 0 else "worse"


def _findings(
    rows: tuple[ChangeRow, ...], intended: ChangeFirst | None, worked: Outcome | None
) -> list[Finding]:
    found = []
    if intended is not None:
        found.append(_intended(rows, intended, worked))
    better = [row for row in rows if row.outcome == "improved" and row.about != intended]
    worse = [row for row in rows if row.outcome == "worse" and row.about != intended]
    if better:
        text = translate("sheet", "Nearer to the photo now: {what}.").format(what=_named(better))
        found.append(Finding("praise", better[0].about, _letters(better), text))
    if worse:
        text = translate("sheet", "Further from the photo now: {what}.").format(what=_named(worse))
        found.append(Finding("step", worse[0].about, _letters(worse), text))
    if not found:
        text = translate("sheet", "The second sheet measures as the first did.")
        found.append(Finding("note", "sky", (), text))
    return found


def _intended(
    rows: tuple[ChangeRow, ...], intended: ChangeFirst, worked: Outcome | None
) -> Finding:
    name = quality_word(intended)
    mine = [row for row in rows if row.about == intended]
    kind: Literal["praise", "step", "note"] = "note"
    past = [row for row in mine if row.past]
    if past and worked != "improved":
        return Finding("step", intended, _letters(past), _past_text(intended, past))
    if worked == "improved":
        kind = "praise"
        text = translate("sheet", "You set out to change the {quality}, and it worked.")
    elif worked == "worse":
        kind = "step"
        text = translate(
            "sheet", "You set out to change the {quality}: it is further from the photo now."
        )
    elif worked == "stayed" and any(row.outcome == "improved" for row in mine):
        return Finding(kind, intended, _letters(mine), _mixed_text(intended, mine))
    elif worked == "stayed":
        text = translate("sheet", "You set out to change the {quality}: it measures as before.")
    else:
        text = translate(
            "sheet", "You set out to change the {quality}: whether it did cannot be told."
        )
    return Finding(kind, intended, _letters(mine), text.format(quality=name))


def _mixed_text(intended: ChangeFirst, rows: list[ChangeRow]) -> str:
    """As many came nearer as went further."""
    nearer = _named([row for row in rows if row.outcome == "improved"])
    further = _named([row for row in rows if row.outcome == "worse"])
    text = translate(
        "sheet",
        "You set out to change the {quality}: nearer now {nearer}, further now {further}.",
    )
    return text.format(quality=quality_word(intended), nearer=nearer, further=further)


def _past_text(intended: ChangeFirst, rows: list[ChangeRow]) -> str:
    """Gone past the photo: enough was done, and a little more than that."""
    letters = listed([row.letter for row in rows if row.letter is not None])
    if intended == "placement":
        one = translate(
            "sheet", "You moved where {letters} ends, past its place: go half the way back."
        )
        more = translate(
            "sheet", "You moved where {letters} end, past their place: go half the way back."
        )
    else:
        one = translate(
            "sheet",
            "You changed the {quality} of band {letters} past the photo's: go half the way back.",
        )
        more = translate(
            "sheet",
            "You changed the {quality} of bands {letters} past the photo's: go half the way back.",
        )
    text = one if len(rows) == 1 else more
    return text.format(quality=quality_word(intended), letters=letters)


def _letters(rows: list[ChangeRow]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(row.letter for row in rows if row.letter is not None))


def _named(rows: list[ChangeRow]) -> str:
    """ "the value of bands A and C, the hue of band B"."""
    parts = []
    for about in dict.fromkeys(row.about for row in rows):
        letters = [row.letter for row in rows if row.about == about and row.letter is not None]
        if not letters:
            parts.append(translate("sheet", "the {quality}").format(quality=quality_word(about)))
            continue
        if about == "placement":
            one = translate("sheet", "where {letters} ends")
            more = translate("sheet", "where {letters} end")
            form = one if len(letters) == 1 else more
        elif len(letters) == 1:
            form = translate("sheet", "the {quality} of band {letters}")
        else:
            form = translate("sheet", "the {quality} of bands {letters}")
        parts.append(form.format(quality=quality_word(about), letters=listed(letters)))
    return listed(parts)
