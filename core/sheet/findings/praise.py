"""What went well, said first; nothing is praised that was not measured."""

from __future__ import annotations

from core.i18n import translate
from core.reading.quality import Quality
from core.sheet.findings.compare import worst_gap
from core.sheet.findings.facts import Said
from core.sheet.findings.words import quality_word
from core.sheet.result import Finding
from core.words.lists import listed, sentence_case

_MOST_LETTERS = 4


def all_is_well(said: Said) -> bool:
    """Everything that can be told matches, and no fault was found."""
    faults = said.edges or said.blooms or said.corners or said.uneven or said.lines_off
    return not faults and all(worst_gap(band) <= 1 for band in said.bands)


def praise_of(said: Said, *, second: bool) -> tuple[Finding, ...]:
    """One sentence of praise, two when `second` and both are earned, or none."""
    if all_is_well(said):
        return (Finding("praise", "sky", (), _everything(said)),)
    found = [praise for praise in (_qualities(said) or _bands(said), _soft(said)) if praise]
    if not found:
        found = [praise for praise in (_nearest(said),) if praise]
    return tuple(found[: 2 if second else 1])


def _everything(said: Said) -> str:
    if not said.lines:
        return translate("sheet", "The sheet matches the photo in hue, value and intensity.")
    return translate(
        "sheet",
        "Every band matches the photo in hue, value and intensity, and every line is in its place.",
    )


def _qualities(said: Said) -> Finding | None:
    """Qualities that match in every band."""
    if len(said.bands) < 2:
        return None
    of_bands: tuple[Quality, ...] = ("hue", "value", "intensity")
    matched = [
        quality
        for quality in of_bands
        if all(getattr(band, quality) == "matches" for band in said.bands)
    ]
    placed = bool(said.lines) and all(line.verdict == "matches" for line in said.lines)
    if not matched:
        if not placed:
            return None
        text = translate("sheet", "Every line is where the photo has it.")
        return Finding("praise", "placement", (), text)
    names = sentence_case(listed([quality_word(quality) for quality in matched]))
    if placed:
        one = translate(
            "sheet", "{qualities} matches the photo in every band, and every line is in its place."
        )
        more = translate(
            "sheet", "{qualities} match the photo in every band, and every line is in its place."
        )
    else:
        one = translate("sheet", "{qualities} matches the photo in every band.")
        more = translate("sheet", "{qualities} match the photo in every band.")
    text = (one if len(matched) == 1 else more).format(qualities=names)
    return Finding("praise", matched[0], (), text)


def _bands(said: Said) -> Finding | None:
    letters = [
        band.letter
        for band in said.bands
        if band.hue == band.value == band.intensity == "matches"
    ]  # fmt: skip
    if not letters:
        return None
    letters = letters[:_MOST_LETTERS]
    one = translate("sheet", "Band {letters} matches the photo in hue, value and intensity.")
    more = translate("sheet", "Bands {letters} match the photo in hue, value and intensity.")
    text = (one if len(letters) == 1 else more).format(letters=listed(letters))
    return Finding("praise", "sky", tuple(letters), text)


def _soft(said: Said) -> Finding | None:
    if len(said.bands) < 2 or said.edges or said.blooms:
        return None
    return Finding(
        "praise", "edges", (), translate("sheet", "The washes melt into each other softly.")
    )


def _nearest(said: Said) -> Finding | None:
    """The band that comes nearest, if it comes near at all."""
    told = [band for band in said.bands if band.whole is not None]
    if len(told) < 2:
        return None
    best = min(told, key=worst_gap)
    if worst_gap(best) > 2:
        return None
    text = translate("sheet", "Band {letter} comes close to the photo.").format(letter=best.letter)
    return Finding("praise", "sky", (best.letter,), text)
