"""A mix in words: parts, strength, how near it comes, why it is built so, what else would do."""

from __future__ import annotations

from collections.abc import Sequence

from core.i18n import translate
from core.paint.box import Box
from core.paint.mix import Mix
from core.paint.names import paint_name
from core.paint.planned import Alternative, PlannedMix, Reach, Reason
from core.paint.strength import Strength
from core.words.names import family_name

CLEARLY_VALUE, CLEARLY_CHROMA, CLEARLY_HUE = 0.9, 2.5, 7.0
"""From here a fault is no longer "a little": Munsell value, chroma, CIELAB units of hue."""


def parts_text(box: Box, mix: Mix) -> str:
    """The parts as written on a board: "5 ultramarine : 1 crimson"; one paint has no number."""
    if not mix.parts:
        return translate("mix", "bare paper")
    if len(mix.parts) == 1:
        return paint_name(box.paint(mix.parts[0][0]))
    return " : ".join(f"{count} {paint_name(box.paint(key))}" for key, count in mix.parts)


def strength_text(strength: Strength) -> str:
    """The wash's strength: "milk strength"."""
    return {
        "paper": translate("mix", "no paint"),
        "weak tea": translate("mix", "weak tea strength"),
        "tea": translate("mix", "tea strength"),
        "coffee": translate("mix", "coffee strength"),
        "milk": translate("mix", "milk strength"),
        "cream": translate("mix", "cream strength"),
    }[strength]


def strength_note(strength: Strength) -> str:
    """About how much water a strength takes: a rule of thumb; empty for bare paper."""
    return {
        "paper": "",
        "weak tea": translate("mix", "weak tea is 1 part paint to 25 or more of water"),
        "tea": translate("mix", "tea is 1 part paint to 15 or 20 of water"),
        "coffee": translate("mix", "coffee is 1 part paint to 8 or 10 of water"),
        "milk": translate("mix", "milk is 1 part paint to 3 to 5 of water"),
        "cream": translate("mix", "cream is as much paint as water"),
    }[strength]


def mix_text(box: Box, planned: PlannedMix) -> str:
    """Parts and strength: "5 ultramarine : 1 crimson, milk strength"."""
    if not planned.mix.parts:
        return parts_text(box, planned.mix)
    if len(planned.mix.parts) == 1:
        return translate("mix", "{paint} alone, {strength}").format(
            paint=parts_text(box, planned.mix), strength=strength_text(planned.strength)
        )
    return translate("mix", "{parts}, {strength}").format(
        parts=parts_text(box, planned.mix), strength=strength_text(planned.strength)
    )


def verdict_text(planned: PlannedMix) -> str:
    """One word or two: "Matches", "Close", "As near as it gets"."""
    return {
        "matches": translate("mix", "Matches"),
        "close": translate("mix", "Close"),
        "far": translate("mix", "Well off"),
    }[planned.verdict]


def shortfall_text(planned: PlannedMix) -> str:
    """In what the mix differs from the photo; empty when the eye would not notice.

    "a little duller than the photo", "darker and a little more violet than the photo".
    """
    pieces = _shortfall_pieces(planned)
    if not pieces:
        return ""
    return translate("mix", "{differences} than the photo").format(differences=listed(pieces))


def _shortfall_pieces(planned: PlannedMix) -> list[str]:
    short = planned.falls_short
    words = {
        "too dark": translate("mix", "darker"),
        "too light": translate("mix", "lighter"),
        "too weak": translate("mix", "lighter, even at full strength,"),
        "too dull": translate("mix", "duller"),
        "too intense": translate("mix", "more intense"),
    }
    pieces = []
    for fault in planned.faults:
        size, limit = (
            (short.chroma, CLEARLY_CHROMA)
            if fault in ("too dull", "too intense")
            else (short.value, CLEARLY_VALUE)
        )
        pieces.append(_a_little(words[fault], abs(size) < limit and planned.verdict != "far"))
    if planned.too is not None:
        word = _more_hue(planned.too)
        pieces.append(_a_little(word, abs(short.hue_Lab) < CLEARLY_HUE))
    return pieces


def _more_hue(hue: str) -> str:
    return {
        "yellow": translate("mix", "yellower"),
        "orange": translate("mix", "more orange"),
        "red": translate("mix", "redder"),
        "violet": translate("mix", "more violet"),
        "blue": translate("mix", "bluer"),
        "green": translate("mix", "greener"),
    }[hue]


def _a_little(word: str, little: bool) -> str:
    return translate("mix", "a little {word}").format(word=word) if little else word


def listed(pieces: Sequence[str]) -> str:
    """ "a", "a and b", "a, b and c"."""
    if len(pieces) < 2:
        return "".join(pieces)
    return translate("mix", "{first} and {last}").format(
        first=", ".join(pieces[:-1]), last=pieces[-1]
    )


def why_text(box: Box, planned: PlannedMix) -> str:
    """Why a mix is built so, or what is odd about it: one or more short sentences."""
    texts = [reason_text(box, reason) for reason in planned.why]
    return " ".join(sentence_case(text) + "." for text in texts)


def sentence_case(text: str) -> str:
    """The text with a capital first letter, as at the start of a sentence."""
    return text[:1].upper() + text[1:]


def _paints(box: Box, reason: Reason) -> str:
    return listed([paint_name(box.paint(key)) for key in reason.paints])


def reason_text(box: Box, reason: Reason) -> str:
    """One reason, without a capital and a full stop."""
    paints = _paints(box, reason)
    hue = family_name(reason.hue) if reason.hue is not None else translate("mix", "grey")
    text = {
        "at hue": translate("mix", "{paints} stands nearest {hue} on the wheel"),
        "either side": translate("mix", "{paints} stand on either side of {hue}"),
        "toned": translate("mix", "{paints}, from across the wheel, tones it down"),
        "toned and turned": translate(
            "mix", "{paints} tones it down and turns it a little towards {hue}"
        ),
        "greys": translate("mix", "{paints} grey each other: a clean grey"),
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
        "black": translate("mix", "{paints} deadens a sky"),
        "white": translate("mix", "{paints} makes a wash chalky"),
        "hard to steer": translate("mix", "it is harder to steer"),
        "tiny strong": translate("mix", "one drop too much {paints} shows"),
        "many parts": translate("mix", "it has many parts to count"),
        "closer": translate("mix", "nearer to the photo"),
        "fewer paints": translate("mix", "fewer paints"),
        "fewer parts": translate("mix", "fewer parts to count"),
        "forgiving": translate("mix", "more forgiving when a part is miscounted"),
        "one part too many": translate("mix", "one part too many and it is too strong"),
        "too hue": translate("mix", "too {hue}"),
        "too light": translate("mix", "too light"),
        "too dark": translate("mix", "too dark"),
        "too dull": translate("mix", "too dull"),
        "too intense": translate("mix", "too intense"),
        "too weak": translate("mix", "too weak, even at full strength"),
        "granulates": translate("mix", "{paints} granulates"),
        "covers": translate("mix", "{paints} covers rather than glows"),
        "stains": translate("mix", "{paints} stains strongly"),
    }[reason.code]
    return text.format(paints=paints, hue=hue, letter=reason.letter or "")


MOST_ODDITIES = 2
"""More would not be read."""

_REMARKS = ("granulates", "covers", "stains")
_TOUCHY = "one part too many"


def alternative_text(box: Box, chosen: PlannedMix, alternative: Alternative) -> str:
    """Why to prefer or avoid another mix, in one sentence.

    "Or 4 crimson : 1 cerulean blue: nearer to the photo, though cerulean blue granulates.",
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
    merits = [reason_text(box, r) for r in alternative.reasons if r.code not in _REMARKS]
    remarks = [reason_text(box, r) for r in alternative.reasons if r.code in _REMARKS]
    if not remarks:
        return translate("mix", "Or {mix}: {reasons}.").format(mix=mix, reasons=listed(merits))
    return translate("mix", "Or {mix}: {reasons}, though {remarks}.").format(
        mix=mix, reasons=listed(merits), remarks=listed(remarks)
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
    oddities = [reason_text(box, reason) for reason in planned.why[:MOST_ODDITIES]]
    if not oddities:
        return translate("mix", "Closer: {mix}.").format(mix=mix)
    return translate("mix", "Closer: {mix}, but {oddities}.").format(
        mix=mix, oddities=listed(oddities)
    )


def reach_text(reach: Reach) -> str:
    """What to say of a band that goes beyond every mix of the box; empty when it does not."""
    return {
        "reached": "",
        "too intense": translate(
            "mix", "More intense than this box can reach: the nearest is shown. Keep it clean."
        ),
        "too light": translate(
            "mix",
            "Lighter and clearer than any mix here: the nearest is shown. Let the paper do more.",
        ),
        "too dark": translate(
            "mix", "Darker than any mix here: the nearest is shown. Lay it twice, dry between."
        ),
        "too dull": translate(
            "mix", "Duller than this box can reach: it has nothing to tone it down with."
        ),
        "out of reach": translate("mix", "This box does not reach it: the nearest is shown."),
    }[reach]
