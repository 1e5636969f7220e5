"""Why a mix is built so, why another would do or would not: reasons made into sentences."""

from __future__ import annotations

from collections.abc import Iterable
from typing import assert_never

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.pigment.primaries import PRIMARIES
from core.paint.planned import Alternative, PlannedMix
from core.paint.reasons import MERITS, Reason
from core.paint.words.fit import fault_text, shortfall_text
from core.paint.words.own import own_paints_text
from core.paint.words.parts import mix_text, parts_text
from core.words.lists import listed, sentence_case
from core.words.names import family_name

MOST_ODDITIES = 2
"""More would not be read."""

_TOUCHY = "one part too many"


def why_text(box: Box, planned: PlannedMix) -> str:
    """Why a mix is built so, what is odd about it, how far its own paints are known: sentences."""
    texts = [sentence_case(reason_text(box, reason)) + "." for reason in planned.why]
    return " ".join(filter(None, (*texts, own_paints_text(box, planned.mix))))


def reason_text(box: Box, reason: Reason) -> str:
    """One reason, without a capital and a full stop."""
    paints = listed([paint_name(box.paint(key)) for key in reason.paints])
    hue = family_name(reason.hue) if reason.hue is not None else translate("mix", "grey")
    leans = box.paint(reason.paints[0]).leans if reason.code == "leans" else ""
    return _template(reason).format(
        paints=paints,
        hue=family_name(leans) if leans else hue,
        one=_primary(box, reason, 0),
        other=_primary(box, reason, 1),
        letter=reason.letter or "",
        letters=_letters(reason.letters),
    )


def _primary(box: Box, reason: Reason, number: int) -> str:
    """Which primary a paint is, of a reason about two primaries."""
    if reason.code != "two primaries":
        return ""
    group = box.paint(reason.paints[number]).group
    return next(family_name(primary) for primary in PRIMARIES if primary == group)


def _letters(letters: tuple[str, ...]) -> str:
    """Bands that follow each other: "A and B", "A to D"."""
    if len(letters) < 3:
        return listed(letters)
    return translate("mix", "{first} to {last}").format(first=letters[0], last=letters[-1])


def _template(reason: Reason) -> str:
    several = len(reason.paints) > 1
    match reason.code:
        case "at hue":
            return translate("mix", "{paints} stands nearest {hue} on the wheel")
        case "either side":
            return translate("mix", "{paints} stand on either side of {hue}")
        case "two primaries":
            return translate(
                "mix", "{paints}: {one} and {other} are the two primaries that make {hue}"
            )
        case "toned by earth":
            return translate("mix", "{paints}, a dull orange, is its complement and tones it down")
        case "holds":
            return translate("mix", "a touch of {paints} keeps it from turning {hue}")
        case "toned":
            return translate("mix", "{paints}, from across the wheel, tones it down")
        case "toned and turned":
            return translate("mix", "{paints} tones it down and turns it a little towards {hue}")
        case "greys":
            return translate("mix", "{paints} grey each other: a clean grey")
        case "three primaries":
            return translate("mix", "{paints}, three primaries, make a grey between them")
        case "toned by orange":
            return translate("mix", "{paints} make an orange between them, which tones it down")
        case "steers":
            if reason.hue is not None:
                return translate("mix", "{paints} turns the grey towards {hue}")
            return translate("mix", "{paints} keeps the grey neutral")
        case "same mix":
            return translate("mix", "the same mix as {letter}")
        case "same mix thinner":
            return translate("mix", "the same mix as {letter}, with more water")
        case "same mix stronger":
            return translate("mix", "the same mix as {letter}, with less water")
        case "paper":
            return translate("mix", "leave the paper white: paint can only darken it")
        case "by hand":
            return translate("mix", "these parts were set by hand")
        case "pinned":
            return translate("mix", "{paints} was pinned")
        case "no neighbours":
            return translate(
                "mix",
                "no paint in this box stands beside {hue}, so this is only the nearest colour",
            )
        case "black":
            return translate("mix", "{paints} deadens a sky")
        case "white":
            return translate("mix", "{paints} makes a wash chalky")
        case "hard to steer":
            return translate("mix", "it is harder to steer")
        case "tiny strong":
            return translate("mix", "one drop too much {paints} shows")
        case "many parts":
            return translate("mix", "it has many parts to count")
        case "closer":
            return translate("mix", "nearer to the photo")
        case "fewer paints":
            return translate("mix", "fewer paints")
        case "fewer parts":
            return translate("mix", "fewer parts to count")
        case "forgiving":
            return translate("mix", "more forgiving when a part is miscounted")
        case "further":
            return translate("mix", "it is not quite as near")
        case "more paints":
            return translate("mix", "it takes one paint more")
        case "more parts":
            return translate("mix", "it has more parts to count")
        case "thick":
            return translate("mix", "it has to be laid thicker")
        case "far":
            return translate("mix", "{paints} stands far from {hue} on the wheel")
        case "wide":
            return translate("mix", "{paints} stand far apart on the wheel")
        case "leans":
            return translate("mix", "{paints} leans to {hue}")
        case "earth":
            return translate("mix", "{paints}, an earth colour, suits dull bands better")
        case "fights green":
            return translate("mix", "{paints} pulls it towards green")
        case "turns hue":
            return translate("mix", "{paints} turns the hue as well")
        case "to green":
            return translate("mix", "{paints} soon turns it green")
        case "same side":
            return translate("mix", "{paints} both stand on one side of {hue}")
        case "beside":
            return translate("mix", "{paints} stands beside {hue} on the wheel")
        case "greys less cleanly":
            return translate("mix", "it greys less cleanly")
        case "not shared":
            return translate("mix", "then {letters} no longer share one mix")
        case "new paint":
            return translate("mix", "it brings in {paints}")
        case "changes":
            return translate("mix", "the paints then change from band to band")
        case "granulates":
            if several:
                return translate("mix", "{paints} dry grainy")
            return translate("mix", "{paints} dries grainy")
        case "covers":
            if several:
                return translate("mix", "{paints} cover rather than glow")
            return translate("mix", "{paints} covers rather than glows")
        case "stains":
            if several:
                return translate("mix", "{paints} stain strongly")
            return translate("mix", "{paints} stains strongly")
        case "one part too many":
            return translate("mix", "one part too many and it is too strong")
        case "too hue":
            return translate("mix", "too {hue}")
        case "too weak":
            return translate("mix", "too weak, even at full strength")
        case "too light" | "too dark" | "too dull" | "too intense":
            return fault_text(reason.code)
        case _:
            assert_never(reason.code)


def _warnings_text(box: Box, planned: PlannedMix, reasons: Iterable[Reason]) -> str:
    """What speaks against a mix, as clauses after "but"; in what it is further off is named."""
    texts = []
    for reason in reasons:
        short = shortfall_text(planned) if reason.code == "further" else ""
        if short:
            texts.append(translate("mix", "it is {differences}").format(differences=short))
        else:
            texts.append(reason_text(box, reason))
    return listed(texts)


def alternative_text(box: Box, chosen: PlannedMix, alternative: Alternative) -> str:
    """Why to prefer or avoid another mix, in one sentence.

    "Or 4 crimson : 1 cerulean blue: nearer to the photo, but cerulean blue dries grainy.",
    "With ultramarine instead, the mix turns out too dark.", "Prussian blue would do too, but one
    part too many and it is too strong."
    """
    if alternative.prefer:
        return _preferred(box, chosen, alternative)
    return _avoided(box, chosen, alternative)


def _preferred(box: Box, chosen: PlannedMix, alternative: Alternative) -> str:
    planned = alternative.planned
    same = planned.strength == chosen.strength and len(planned.mix.parts) > 1
    mix = parts_text(box, planned.mix) if same else mix_text(box, planned)
    merits = listed([reason_text(box, r) for r in alternative.reasons if r.code in MERITS])
    warnings = _warnings_text(
        box, planned, (r for r in alternative.reasons if r.code not in MERITS)
    )
    if not warnings:
        return translate("mix", "Or {mix}: {reasons}.").format(mix=mix, reasons=merits)
    return translate("mix", "Or {mix}: {reasons}, but {warnings}.").format(
        mix=mix, reasons=merits, warnings=warnings
    )


def _avoided(box: Box, chosen: PlannedMix, alternative: Alternative) -> str:
    new = [key for key in alternative.planned.mix.keys if key not in chosen.mix.keys]
    keys = new or alternative.planned.mix.keys
    names = listed([paint_name(box.paint(key)) for key in keys])
    faults = [reason_text(box, r) for r in alternative.reasons if r.code != _TOUCHY]
    touchy = any(reason.code == _TOUCHY for reason in alternative.reasons)
    if not faults:
        text = translate(
            "mix", "{paints} would do too, but one part too many and it is too strong."
        )
        return text.format(paints=sentence_case(names))
    if touchy:
        text = translate(
            "mix",
            "With {paints} instead, the mix turns out {faults}, and one part too many is soon too "
            "strong.",
        )
    else:
        text = translate("mix", "With {paints} instead, the mix turns out {faults}.")
    return text.format(paints=names, faults=listed(faults))


def closest_text(box: Box, planned: PlannedMix) -> str:
    """The closest mix and what is odd about it, in one or two sentences."""
    mix = mix_text(box, planned)
    oddities = _warnings_text(box, planned, planned.why[:MOST_ODDITIES])
    if not oddities:
        return translate("mix", "Closer: {mix}.").format(mix=mix)
    return translate("mix", "Closer: {mix}, but {oddities}.").format(mix=mix, oddities=oddities)
