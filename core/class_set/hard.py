"""What the class found hard, in at most three sentences with one thing to teach each.

It bears no code and no name: it may be shown to the class.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from statistics import median
from typing import assert_never

from core.class_set.spread import Spread
from core.i18n import translate
from core.reading.quality import Quality
from core.sheet.findings.words import quality_word
from core.words.lists import listed, sentence_case

MOST = 3
"""Steps in all."""

LEAST = 8
"""Sheets judged below which nothing is said: fewer, all of them off the same way, could be chance
(see `core.class_set.spread`). A small class gets the counts alone."""

_LEANS = 0.5
"""Tolerances of value by which a class's washes lean, so that their strength explains a colour."""


@dataclass(frozen=True)
class Hard:
    """One thing to say to the class.

    Attributes
    ----------
    kind : "step" or "praise"
    letter : str
    qualities : tuple of Quality
    text : str
        What came how often, first sheets and second ones.
    teach : str
        One thing to try; empty for praise.
    """

    kind: str
    letter: str
    qualities: tuple[Quality, ...]
    text: str
    teach: str = ""


def found_hard(first: Sequence[Spread], second: Sequence[Spread]) -> tuple[Hard, ...]:
    """The sentences, the widest spread first, then one thing that came right.

    Parameters
    ----------
    first, second : sequence of Spread
        Of the first sheets and the second; either may be empty.
    """
    return (*_steps(first, second), *_praise(first, second))


def matched_count(one: Spread) -> str:
    """How many match, in words: all that is said of a small class.

    >>> from core.class_set.spread import Spread
    >>> matched_count(Spread("A", "value", (0.2, 3.0)))
    '1 of 2'
    """
    return translate("class set", "{n} of {all}").format(n=one.matched, all=one.judged)


def _steps(first: Sequence[Spread], second: Sequence[Spread]) -> list[Hard]:
    told = first if any(one.told for one in first) else second
    groups: dict[tuple[str, bool], list[Spread]] = {}
    for one in told:
        if one.told:
            groups.setdefault((one.letter, one.quality == "placement"), []).append(one)
    ordered = sorted(groups.values(), key=lambda group: -max(one.share_off for one in group))
    later = second if told is first else ()
    return [_step(group, later, _strength_of(group[0].letter, told)) for group in ordered[:MOST]]


def _strength_of(letter: str, told: Sequence[Spread]) -> float:
    """How the class's washes lean in a band: tolerances lighter (+) or darker (-), the middle one.

    A thin wash comes out duller too, and a strong one more intense: then it is the paint in the
    water that has to be taught, not the complement.
    """
    gaps = next(
        (one.gaps for one in told if (one.letter, one.quality) == (letter, "value")), (0.0,)
    )
    return median(gaps)


def _step(group: list[Spread], later: Sequence[Spread], lighter: float) -> Hard:
    lead = max(group, key=lambda one: one.share_off)
    ways = listed([_way(one) for one in group])
    # Of two things said together, the smaller count holds for both.
    count = min(one.above if one.direction > 0 else one.below for one in group)
    if lead.quality == "placement":
        text = translate("class set", "The line below {letter} came {way} on {n} of {all} sheets.")
    else:
        text = translate("class set", "Band {letter} came {way} on {n} of {all} sheets.")
    text = text.format(letter=lead.letter, way=ways, n=count, all=lead.judged)
    after = [
        other
        for other in later
        for one in group
        if (other.letter, other.quality) == (one.letter, one.quality)
    ]
    if after:
        still = max(
            (other.above if one.direction > 0 else other.below)
            for one in group
            for other in after
            if other.quality == one.quality
        )
        then = translate("class set", "On the second sheets: {n} of {all}.")
        text += " " + then.format(n=still, all=after[0].judged)
    return Hard(
        "step", lead.letter, tuple(one.quality for one in group), text, _teach(lead, lighter)
    )


def _way(one: Spread) -> str:
    up = one.direction > 0
    match one.quality:
        case "hue":
            if up:
                return translate("class set", "turned clockwise on the wheel")
            return translate("class set", "turned anticlockwise on the wheel")
        case "value":
            return translate("class set", "lighter") if up else translate("class set", "darker")
        case "intensity":
            if up:
                return translate("class set", "more intense")
            return translate("class set", "duller")
        case "placement":
            return translate("class set", "too low") if up else translate("class set", "too high")
        case _:
            assert_never(one.quality)


def _teach(one: Spread, lighter: float) -> str:
    up = one.direction > 0
    if one.quality == "placement":
        return translate(
            "class set", "Mark the line's height in pencil on the tape before wetting the sheet."
        )
    if one.quality == "value":
        if up:
            return translate(
                "class set",
                "Dry a brush stroke of the wash on scrap first: it dries lighter than it looks.",
            )
        return translate(
            "class set", "Put more water to the wash, and dry a brush stroke of it on scrap first."
        )
    if one.quality == "intensity":
        if not up and lighter >= _LEANS:
            return translate(
                "class set", "Put more paint into the same water: a wash that is too thin is dull."
            )
        if up and lighter <= -_LEANS:
            return translate(
                "class set",
                "Put more water to the wash: what is too strong is too intense as well.",
            )
        if up:
            return translate(
                "class set", "Tone the wash down with a little of the complement, drop by drop."
            )
        return translate(
            "class set", "Rinse brush and well before mixing, and use less of the complement."
        )
    return translate(
        "class set", "Hold a dried stroke against the photo, and name both hues before painting."
    )


def _praise(first: Sequence[Spread], second: Sequence[Spread]) -> list[Hard]:
    """What came right on more of the second sheets than of the first; else on nearly all."""
    first = [one for one in first if one.judged >= LEAST]
    second = [one for one in second if one.judged >= LEAST]
    before = {(one.letter, one.quality): one for one in first}
    gained = [
        (one.matched / one.judged - was.matched / was.judged, was, one)
        for one in second
        if one.judged
        and (was := before.get((one.letter, one.quality))) is not None
        and was.judged
        and one.matched / one.judged >= was.matched / was.judged + 0.2
    ]
    if gained:
        _, was, one = max(gained, key=lambda found: found[0])
        text = translate(
            "class set",
            "{quality} of band {letter} matched on {n} of {all} first sheets, and on {m} of "
            "{others} second ones.",
        )
        if one.quality == "placement":
            text = translate(
                "class set",
                "The line below {letter} was in place on {n} of {all} first sheets, and on {m} of "
                "{others} second ones.",
            )
        name = quality_word(one.quality)
        filled = text.format(
            quality=sentence_case(name),
            letter=one.letter,
            n=was.matched,
            all=was.judged,
            m=one.matched,
            others=one.judged,
        )
        return [Hard("praise", one.letter, (one.quality,), filled)]
    whole = [one for one in (second or first) if one.judged and one.matched >= 0.9 * one.judged]
    if not whole:
        return []
    best = max(whole, key=lambda one: (one.matched / one.judged, one.quality == "value"))
    text = translate("class set", "{quality} of band {letter} matched on {n} of {all} sheets.")
    if best.quality == "placement":
        text = translate(
            "class set", "The line below {letter} was in place on {n} of {all} sheets."
        )
    name = quality_word(best.quality)
    filled = text.format(
        quality=sentence_case(name), letter=best.letter, n=best.matched, all=best.judged
    )
    return [Hard("praise", best.letter, (best.quality,), filled)]
