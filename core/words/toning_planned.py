"""How the plan tones a band down, in a sentence and in the few words of the class view."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, assert_never

from core.i18n import translate
from core.reading.reading import ColourReading
from core.reading.wheel import Family
from core.words.lists import listed, sentence_case
from core.words.names import family_name

Toned = Literal["toned", "plain", "speck", "too intense", "greys", "paper", "lacks"]

WELL_FROM = 0.22
"""Share of all paint from which a mix is toned down well, not a little."""


SPECK_AT_MOST = 0.1
"""Share up to which a toner is a speck that nobody counts."""


@dataclass(frozen=True)
class PlannedToning:
    """How a band's mix is toned down.

    Attributes
    ----------
    kind : Toned
        "plain" needs no toner; "speck" has none, and a little of it would bring the mix
        nearer; "too intense" has none and would need one; "greys" is made of paints
        that grey each other; "lacks" stands in for a hue that the box cannot make.
    paints : tuple of str
        Names of the mix's paints without its toner.
    lacks : tuple of Family
        Primaries the box has no paint of, with "lacks".
    toner : str
        The toner's name; empty without one.
    parts, whole : int
        So many parts of the toner in so many of the mix.
    across : bool
        Whether the toner is the complement or stands beside it.
    towards : Family or None
        The main hue the toner also turns the mix to.
    """

    kind: Toned
    paints: tuple[str, ...] = ()
    toner: str = ""
    parts: int = 0
    whole: int = 1
    across: bool = True
    towards: Family | None = None
    lacks: tuple[Family, ...] = ()


def short_as_planned(colour: ColourReading, toning: PlannedToning) -> str:
    """What the band's mix does about its intensity, in two to four words."""
    match toning.kind:
        case "paper":
            return translate("class view", "Leave the paper white")
        case "greys":
            return translate("class view", "They grey each other")
        case "lacks":
            return translate("class view", "No {hue} in this box").format(hue=_either(toning.lacks))
        case "too intense":
            return translate("class view", "Nothing here tones it enough")
        case "plain":
            if colour.pale:
                return translate("class view", "Pale: more water")
            if colour.intensity_word == "intense":
                return translate("class view", "Keep it intense")
            return translate("class view", "Nothing to tone down")
        case "speck" | "toned":
            return _short_toned(colour, toning)
        case _:
            assert_never(toning.kind)


def _short_toned(colour: ColourReading, toning: PlannedToning) -> str:
    share = toning.parts / toning.whole
    if toning.kind == "speck" and share <= SPECK_AT_MOST:
        return translate("class view", "A speck of {paint}").format(paint=toning.toner)
    name = toning.toner
    if toning.kind == "toned" and toning.across and colour.complement is not None:
        name = family_name(colour.complement)
    text = (
        translate("class view", "A little {complement}")
        if share < WELL_FROM
        else translate("class view", "More {complement}")
    )
    return text.format(complement=name)


def as_planned(colour: ColourReading, toning: PlannedToning) -> str:
    """What the band's mix does about its intensity, in a sentence."""
    paints = listed(toning.paints)
    match toning.kind:
        case "paper":
            return translate("words", "Leave the paper white: there is nothing to tone down.")
        case "greys":
            return _greys(colour, paints)
        case "lacks":
            return translate("words", "This box has no {hue}: it cannot make this.").format(
                hue=_either(toning.lacks)
            )
        case "speck":
            text = (
                translate("words", "{paints} alone is too intense; {share} brings it nearer.")
                if len(toning.paints) == 1
                else translate("words", "{paints} are too intense; {share} brings them nearer.")
            )
            return sentence_case(text.format(paints=paints, share=_share(toning)))
        case "too intense":
            return _too_intense(colour)
        case "plain":
            return _plain(colour, toning, paints)
        case "toned":
            return _toned(colour, toning, paints)
        case _:
            assert_never(toning.kind)


def _either(hues: tuple[Family, ...]) -> str:
    """ "red", "red or blue"."""
    names = [family_name(hue) for hue in hues]
    if len(names) < 2:
        return "".join(names)
    return translate("words", "{one} or {other}").format(one=names[0], other=names[1])


def _greys(colour: ColourReading, paints: str) -> str:
    if colour.hue.leaning is not None:
        text = translate("words", "{paints} grey each other: only a hint of {hue} is left.")
        return sentence_case(text.format(paints=paints, hue=family_name(colour.hue.leaning)))
    return translate("words", "No hue to tone down: {paints} grey each other.").format(
        paints=paints
    )


def _plain(colour: ColourReading, toning: PlannedToning, paints: str) -> str:
    if colour.pale:
        return pale_text(colour)
    if colour.intensity_word == "intense":
        return translate("words", "This is intense: nothing to tone down.")
    text = (
        translate("words", "Nothing to tone down: {paints} alone is no more intense than this.")
        if len(toning.paints) == 1
        else translate("words", "Nothing to tone down: {paints} are no more intense than this.")
    )
    return text.format(paints=paints)


def pale_text(colour: ColourReading) -> str:
    """Of a colour that is weak because it is thin: more water, not more complement."""
    own = colour.hue.family or colour.hue.leaning
    assert own is not None
    return translate("words", "Pale, not dull: a clean {hue} with more water.").format(
        hue=family_name(own)
    )


def _too_intense(colour: ColourReading) -> str:
    if colour.complement is None:
        return translate("words", "No paint in this box tones it down enough.")
    return translate(
        "words", "No paint in this box tones it down enough: the complement is {complement}."
    ).format(complement=family_name(colour.complement))


def _toned(colour: ColourReading, toning: PlannedToning, paints: str) -> str:
    share = _share(toning)
    own = colour.hue.family or colour.hue.leaning
    if colour.intensity_word == "intense":
        text = (
            translate("words", "{paints} alone would be too intense: tone it down with {share}.")
            if len(toning.paints) == 1
            else translate("words", "{paints} would be too intense: tone them down with {share}.")
        )
        return sentence_case(text.format(paints=paints, share=share))
    if toning.across and own is not None and colour.complement is not None:
        text = (
            translate(
                "words", "Tone {hue} down a little with its complement, {complement}: {share}."
            )
            if toning.parts / toning.whole < WELL_FROM
            else translate(
                "words", "Tone {hue} down well with its complement, {complement}: {share}."
            )
        )
        return text.format(
            hue=family_name(own), complement=family_name(colour.complement), share=share
        )
    if toning.towards is not None:
        return translate(
            "words", "Tone it down with {share}, which also turns it a little towards {hue}."
        ).format(share=share, hue=family_name(toning.towards))
    return translate("words", "Tone it down with {share}.").format(share=share)


def _share(toning: PlannedToning) -> str:
    """ "about 1 part burnt sienna in 6"."""
    if toning.parts == 1:
        text = translate("words", "about 1 part {paint} in {whole}")
    else:
        text = translate("words", "about {parts} parts {paint} in {whole}")
    return text.format(parts=toning.parts, paint=toning.toner, whole=toning.whole)
