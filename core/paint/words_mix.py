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


def mix_text(box: Box, planned: PlannedMix) -> str:
    """Parts and strength: "5 ultramarine : 1 crimson, milk strength"."""
    if not planned.mix.parts:
        return parts_text(box, planned.mix)
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
        pieces.append(_a_little(words[fault], abs(size) < limit))
    if planned.too is not None:
        word = translate("mix", "more {hue}").format(hue=family_name(planned.too))
        pieces.append(_a_little(word, abs(short.hue_Lab) < CLEARLY_HUE))
    return pieces


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
    return " ".join(_sentence(text) for text in texts)


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:] + "."


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
        "paper": translate("mix", "leave the paper white: it is as light as this band"),
        "by hand": translate("mix", "these parts were set by hand"),
        "pinned": translate("mix", "{paints} was pinned"),
        "no neighbours": translate(
            "mix", "no paint in this box stands beside {hue}, so this is only the nearest colour"
        ),
        "black": translate("mix", "it is built with {paints}, which deadens a sky"),
        "white": translate("mix", "it holds {paints}: the wash will be chalky"),
        "hard to steer": translate("mix", "it is built from {paints}: harder to steer"),
        "tiny strong": translate(
            "mix", "{paints} is the smallest part and stains strongly: one drop too many shows"
        ),
        "many parts": translate("mix", "it has many parts to count"),
        "closer": translate("mix", "closer"),
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
        "granulates": translate("mix", "{paints} leaves grains"),
        "covers": translate("mix", "{paints} covers rather than glows"),
        "stains": translate("mix", "{paints} stains the paper"),
    }[reason.code]
    return text.format(paints=paints, hue=hue)


def alternative_text(box: Box, chosen: PlannedMix, alternative: Alternative) -> str:
    """ "Or 3 cerulean : 1 crimson: closer." and "Not prussian blue: one part too many ..."."""
    reasons = listed([reason_text(box, reason) for reason in alternative.reasons])
    if alternative.prefer:
        return translate("mix", "Or {mix}: {reasons}.").format(
            mix=mix_text(box, alternative.planned), reasons=reasons
        )
    new = [key for key in alternative.planned.mix.keys if key not in chosen.mix.keys]
    paints = listed([paint_name(box.paint(key)) for key in new or alternative.planned.mix.keys])
    return translate("mix", "Not {paints}: {reasons}.").format(paints=paints, reasons=reasons)


def closest_text(box: Box, planned: PlannedMix) -> str:
    """The closest mix and what is odd about it, in one or two sentences."""
    mix = mix_text(box, planned)
    oddities = [reason_text(box, reason) for reason in planned.why]
    if not oddities:
        return translate("mix", "Closer: {mix}.").format(mix=mix)
    return translate("mix", "Closer: {mix}; but {oddities}.").format(
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
        "out of reach": translate("mix", "This box does not reach it: the nearest is shown."),
    }[reach]
