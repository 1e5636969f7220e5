"""Sheets with fewer washes than the photo has bands: what is not there is named."""

from __future__ import annotations

from core.i18n import translate
from core.sheet.findings.advice import Advice
from core.sheet.findings.facts import Facts
from core.sheet.findings.words import number_word
from core.sheet.result import Finding
from core.words.lists import listed

_MISSING_WEIGHT = 8.0  # before any band is spoken of by itself


def few_washes(facts: Facts) -> tuple[Finding, ...]:
    """All that is said of a sheet with no paint, or with a single wash; nothing of any other."""
    letters = tuple(band.letter for band in facts.bands)
    if facts.washes.kind == "blank":
        text = translate(
            "sheet",
            "There is no paint on this sheet yet: lay the first wash, then take its photo again.",
        )
        return (Finding("note", "sky", (), text),)
    if facts.washes.kind != "one":
        return ()
    found: list[Finding] = []
    if not (facts.edges or facts.blooms or facts.corners):
        text = translate("sheet", "The wash is laid evenly.")
        found.append(Finding("praise", "edges", (), text))
    text = translate(
        "sheet",
        "I see one wash where the photo has {number} bands. Lay {first} and {last} first, and let "
        "them meet while the sheet still shines.",
    ).format(number=number_word(len(letters)), first=letters[0], last=letters[-1])
    return (*found, Finding("step", "sky", letters, text))


def missing_step(facts: Facts) -> list[Advice]:
    """Bands that are not on the sheet, counted and named."""
    missing = facts.missing
    if not missing:
        return []
    there = len(facts.bands) - len(missing)
    if there == 1:
        one = translate("sheet", "I see one wash: {letters} is missing.")
        more = translate("sheet", "I see one wash: {letters} are missing.")
    else:
        one = translate("sheet", "I see {number} washes: {letters} is missing.")
        more = translate("sheet", "I see {number} washes: {letters} are missing.")
    seen = (one if len(missing) == 1 else more).format(
        number=number_word(there), letters=listed(list(missing))
    )
    cure = translate("sheet", "Mark every line on the tape, and mix each paint before you begin.")
    finding = Finding("step", "placement", missing, f"{seen} {cure}")
    return [Advice(_MISSING_WEIGHT, ("washes",), finding)]
