"""What went well, said first; nothing is praised that was not measured."""

from __future__ import annotations

from core.i18n import translate
from core.reading.quality import COLOUR_QUALITIES, ColourQuality
from core.sheet.findings.compare import worst_gap
from core.sheet.findings.facts import Facts
from core.sheet.findings.words import quality_word
from core.sheet.result import BandCheck, Finding
from core.words.lists import listed, sentence_case

_MOST_LETTERS = 4


def all_is_well(facts: Facts) -> bool:
    """Everything that can be told matches, and no fault was found."""
    faults = (
        facts.edges,
        facts.blooms,
        facts.corners,
        facts.uneven,
        facts.lines_off,
        facts.missing,
    )
    if any(faults) or any(worst_gap(band) > 1 for band in facts.bands):
        return False
    seconds = [band.second for band in facts.bands if band.second is not None]
    return all(second.verdict == "matches" for second in seconds)


def praise_of(facts: Facts, *, second: bool) -> tuple[Finding, ...]:
    """One sentence of praise, two when `second` and both are earned, or none."""
    if all_is_well(facts):
        return (Finding("praise", "sky", (), _everything(facts)),)
    first = (_strength(facts) if facts.too_much else None) or _qualities(facts) or _bands(facts)
    found = [praise for praise in (first, _soft(facts)) if praise]
    if not found:
        found = [praise for praise in (_nearest(facts),) if praise]
    return tuple(found[: 2 if second else 1])


def _everything(facts: Facts) -> str:
    """What matches; of lines that cannot be told nothing is said."""
    if not facts.lines:
        return translate("sheet", "The sheet matches the photo in hue, value and intensity.")
    if not _all_placed(facts):
        return translate("sheet", "Every band matches the photo in hue, value and intensity.")
    return translate(
        "sheet",
        "Every band matches the photo in hue, value and intensity, and every line is in its place.",
    )


def _all_placed(facts: Facts) -> bool:
    """Whether every line can be told, and is in its place."""
    return bool(facts.lines) and all(line.verdict == "matches" for line in facts.lines)


def _strength(facts: Facts) -> Finding | None:
    """Of a sheet that is right but for its strength: what is right, and that it is only that."""
    hues = [band for band in facts.bands if band.hue == "matches"]
    told = [band for band in facts.bands if band.hue != "cannot tell" or _colours_a_grey(band)]
    letters = tuple(band.letter for band in hues)
    if not hues:
        return None
    if len(hues) < len(told):
        one = translate("sheet", "Band {letters} has the photo's hue.")
        more = translate("sheet", "Bands {letters} have the photo's hue.")
        text = (one if len(hues) == 1 else more).format(letters=listed(list(letters)))
        return Finding("praise", "hue", letters, text)
    if len(facts.bands) == 1:
        text = translate("sheet", "The hue is right: what is left is its strength.")
    elif _all_placed(facts):
        text = translate("sheet", "Hues and lines are right: what is left is the strength.")
    else:
        text = translate("sheet", "The hues are right: what is left is the strength.")
    return Finding("praise", "hue", letters, text)


def _colours_a_grey(band: BandCheck) -> bool:
    """Whether a band has a colour where the photo's is too grey to have a hue."""
    stronger = band.whole is not None and band.whole.chroma_steps > 0
    return band.hue == "cannot tell" and stronger and (band.intensity_gap or 0.0) > 1


def _qualities(facts: Facts) -> Finding | None:
    """Qualities that match in every band."""
    if len(facts.bands) < 2 or facts.missing:
        return None
    matched: list[ColourQuality] = [
        quality
        for quality in COLOUR_QUALITIES
        if all(band.is_right(quality) for band in facts.bands)
        # One side of a band lighter than the photo is a step of its own.
        and not (quality == "value" and facts.uneven)
    ]
    placed = _all_placed(facts)
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


def _bands(facts: Facts) -> Finding | None:
    letters = [
        band.letter
        for band in facts.bands
        if all(band.is_right(quality) for quality in COLOUR_QUALITIES)
        and band.letter not in facts.missing
    ]  # fmt: skip
    if not letters:
        return None
    letters = letters[:_MOST_LETTERS]
    one = translate("sheet", "Band {letters} matches the photo in hue, value and intensity.")
    more = translate("sheet", "Bands {letters} match the photo in hue, value and intensity.")
    text = (one if len(letters) == 1 else more).format(letters=listed(letters))
    return Finding("praise", "sky", tuple(letters), text)


def _soft(facts: Facts) -> Finding | None:
    if len(facts.bands) < 2 or facts.edges or facts.blooms:
        return None
    return Finding(
        "praise", "edges", (), translate("sheet", "The washes melt into each other softly.")
    )


def _nearest(facts: Facts) -> Finding | None:
    """The band that comes nearest, if it comes near at all."""
    told = [
        band for band in facts.bands if band.whole is not None and band.letter not in facts.missing
    ]
    if len(told) < 2:
        return None
    best = min(told, key=worst_gap)
    if worst_gap(best) > 2:
        return None
    text = translate("sheet", "Band {letter} comes close to the photo.").format(letter=best.letter)
    return Finding("praise", "sky", (best.letter,), text)
