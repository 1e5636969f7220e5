"""Why a mix is built so, why another would do or would not: reasons made into sentences."""

from __future__ import annotations

from collections.abc import Iterable

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.planned import Alternative, PlannedMix
from core.paint.reasons import MERITS, Reason
from core.paint.words.fit import shortfall_text
from core.paint.words.parts import listed, mix_text, parts_text, sentence_case
from core.words.names import family_name

MOST_ODDITIES = 2
"""More would not be read."""

_TOUCHY = "one part too many"


def why_text(box: Box, planned: PlannedMix) -> str:
    """Why a mix is built so, or what is odd about it: one or more short sentences."""
    texts = [reason_text(box, reason) for reason in planned.why]
    return " ".join(sentence_case(text) + "." for text in texts)


def reason_text(box: Box, reason: Reason) -> str:
    """One reason, without a capital and a full stop."""
    paints = listed([paint_name(box.paint(key)) for key in reason.paints])
    hue = family_name(reason.hue) if reason.hue is not None else translate("mix", "grey")
    for texts in (_building, _oddity, _merit, _warning, _fault):
        text = texts(reason)
        if text is not None:
            break
    assert text is not None, reason.code
    leans = box.paint(reason.paints[0]).leans if reason.code == "leans" else ""
    return text.format(
        paints=paints,
        hue=family_name(leans) if leans else hue,
        letter=reason.letter or "",
        letters=_letters(reason.letters),
    )


def _letters(letters: tuple[str, ...]) -> str:
    """Bands that follow each other: "A and B", "A to D"."""
    if len(letters) < 3:
        return listed(letters)
    return translate("mix", "{first} to {last}").format(first=letters[0], last=letters[-1])


def _building(reason: Reason) -> str | None:
    return {
        "at hue": translate("mix", "{paints} stands nearest {hue} on the wheel"),
        "either side": translate("mix", "{paints} stand on either side of {hue}"),
        "toned": translate("mix", "{paints}, from across the wheel, tones it down"),
        "toned and turned": translate(
            "mix", "{paints} tones it down and turns it a little towards {hue}"
        ),
        "greys": translate("mix", "{paints} grey each other: a clean grey"),
        "three primaries": translate("mix", "{paints}, three primaries, make a grey between them"),
        "toned by orange": translate(
            "mix", "{paints} make an orange between them, which tones it down"
        ),
        "steers": translate("mix", "{paints} turns the grey towards {hue}")
        if reason.hue is not None
        else translate("mix", "{paints} keeps the grey neutral"),
        "same mix": translate("mix", "the same mix as {letter}"),
        "same mix thinner": translate("mix", "the same mix as {letter}, with more water"),
        "same mix stronger": translate("mix", "the same mix as {letter}, with less water"),
        "paper": translate("mix", "leave the paper white: paint can only darken it"),
        "by hand": translate("mix", "these parts were set by hand"),
        "pinned": translate("mix", "{paints} was pinned"),
        "no neighbours": translate(
            "mix", "no paint in this box stands beside {hue}, so this is only the nearest colour"
        ),
    }.get(reason.code)


def _oddity(reason: Reason) -> str | None:
    return {
        "black": translate("mix", "{paints} deadens a sky"),
        "white": translate("mix", "{paints} makes a wash chalky"),
        "hard to steer": translate("mix", "it is harder to steer"),
        "tiny strong": translate("mix", "one drop too much {paints} shows"),
        "many parts": translate("mix", "it has many parts to count"),
    }.get(reason.code)


def _merit(reason: Reason) -> str | None:
    return {
        "closer": translate("mix", "nearer to the photo"),
        "fewer paints": translate("mix", "fewer paints"),
        "fewer parts": translate("mix", "fewer parts to count"),
        "forgiving": translate("mix", "more forgiving when a part is miscounted"),
    }.get(reason.code)


def _warning(reason: Reason) -> str | None:
    """What speaks against a mix that would do, as a clause after "but"."""
    several = len(reason.paints) > 1
    return {
        "further": translate("mix", "it is not quite as near"),
        "more paints": translate("mix", "it takes one paint more"),
        "more parts": translate("mix", "it has more parts to count"),
        "thick": translate("mix", "it has to be thick"),
        "far": translate("mix", "{paints} stands far from {hue} on the wheel"),
        "wide": translate("mix", "{paints} stand far apart on the wheel"),
        "leans": translate("mix", "{paints} leans to {hue}"),
        "earth": translate("mix", "{paints} is an earth colour, better in dull bands"),
        "fights green": translate("mix", "{paints} pulls it towards green"),
        "turns hue": translate("mix", "{paints} turns the hue as well"),
        "to green": translate("mix", "{paints} soon turns it green"),
        "same side": translate("mix", "{paints} both stand on one side of {hue}"),
        "beside": translate("mix", "{paints} stands beside {hue} on the wheel"),
        "greys less cleanly": translate("mix", "it greys less cleanly"),
        "not shared": translate("mix", "then {letters} no longer share one mix"),
        "new paint": translate("mix", "it brings in {paints}"),
        "changes": translate("mix", "the paints then change from band to band"),
        "granulates": translate("mix", "{paints} dry grainy")
        if several
        else translate("mix", "{paints} dries grainy"),
        "covers": translate("mix", "{paints} cover rather than glow")
        if several
        else translate("mix", "{paints} covers rather than glows"),
        "stains": translate("mix", "{paints} stain strongly")
        if several
        else translate("mix", "{paints} stains strongly"),
    }.get(reason.code)


def _fault(reason: Reason) -> str | None:
    return {
        "one part too many": translate("mix", "one part too many and it is too strong"),
        "too hue": translate("mix", "too {hue}"),
        "too light": translate("mix", "too light"),
        "too dark": translate("mix", "too dark"),
        "too dull": translate("mix", "too dull"),
        "too intense": translate("mix", "too intense"),
        "too weak": translate("mix", "too weak, even at full strength"),
    }.get(reason.code)


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
    "Ultramarine is too dark and too violet here.", "Prussian blue reaches it too, but one part
    too many and it is too strong."
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
    paints = sentence_case(listed([paint_name(box.paint(key)) for key in keys]))
    faults = [reason_text(box, r) for r in alternative.reasons if r.code != _TOUCHY]
    touchy = any(reason.code == _TOUCHY for reason in alternative.reasons)
    if not faults:
        text = translate(
            "mix", "{paints} would do too, but one part too many and it is too strong."
        )
    elif touchy:
        text = translate(
            "mix", "{paints} would be {faults} here, and one part too many is soon too strong."
        )
    else:
        text = translate("mix", "{paints} would be {faults} here.")
    return text.format(paints=paints, faults=listed(faults))


def closest_text(box: Box, planned: PlannedMix) -> str:
    """The closest mix and what is odd about it, in one or two sentences."""
    mix = mix_text(box, planned)
    oddities = _warnings_text(box, planned, planned.why[:MOST_ODDITIES])
    if not oddities:
        return translate("mix", "Closer: {mix}.").format(mix=mix)
    return translate("mix", "Closer: {mix}, but {oddities}.").format(mix=mix, oddities=oddities)
