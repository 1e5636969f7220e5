"""How near a mix comes to its band, in words; and what no mix of the box reaches."""

from __future__ import annotations

from typing import assert_never

from core.i18n import translate
from core.paint.mixture.shortfall import Fault, MainHue
from core.paint.pigment.primaries import Primary
from core.paint.planned import BandMix, PlannedMix, Reach
from core.words.lists import listed
from core.words.names import family_name

CLEARLY_VALUE, CLEARLY_CHROMA, CLEARLY_HUE = 0.9, 2.5, 7.0
"""From here a fault is no longer "a little": Munsell value, chroma, CIELAB units of hue."""


def shortfall_text(planned: PlannedMix) -> str:
    """In what the mix differs from the photo; empty when the eye would not notice.

    "a little duller than the photo", "darker and a little more violet than the photo".
    """
    if planned.lacks:
        return _without(planned.lacks)
    pieces = _shortfall_pieces(planned)
    if not pieces:
        return ""
    if all(little for _, little in pieces):  # "a little" is said once for all
        differences = _a_little(listed([word for word, _ in pieces]))
    else:
        differences = listed([_a_little(word) if little else word for word, little in pieces])
    return translate("mix", "{differences} than the photo").format(differences=differences)


def _without(lacks: tuple[Primary, ...]) -> str:
    """ "no red in this box"."""
    if len(lacks) > 1:
        text = translate("mix", "no {one} and no {other} in this box")
        return text.format(one=family_name(lacks[0]), other=family_name(lacks[1]))
    return translate("mix", "no {hue} in this box").format(hue=family_name(lacks[0]))


def _shortfall_pieces(planned: PlannedMix) -> list[tuple[str, bool]]:
    """Each difference, and whether it is only a little."""
    short = planned.falls_short
    pieces = []
    for fault in planned.faults:
        size, limit = (
            (short.chroma, CLEARLY_CHROMA)
            if fault in ("too dull", "too intense")
            else (short.value, CLEARLY_VALUE)
        )
        pieces.append((_more_fault(fault), abs(size) < limit and planned.verdict != "off"))
    if planned.too is not None:
        # Of a near neutral the hue stands for its intensity too.
        told = {"too dull", "too intense"} & set(planned.faults)
        little = abs(short.hue_Lab) < CLEARLY_HUE and (told or abs(short.chroma) < CLEARLY_CHROMA)
        pieces.append((_more_hue(planned.too), bool(little)))
    return pieces


def _more_fault(fault: Fault) -> str:
    match fault:
        case "too dark":
            return translate("mix", "darker")
        case "too light":
            return translate("mix", "lighter")
        case "too weak":
            return translate("mix", "lighter even at full strength")
        case "too dull":
            return translate("mix", "duller")
        case "too intense":
            return translate("mix", "more intense")
        case _:
            assert_never(fault)


def fault_text(fault: Fault) -> str:
    """What a mix is: "too dark"."""
    match fault:
        case "too dark":
            return translate("mix", "too dark")
        case "too light":
            return translate("mix", "too light")
        case "too weak":
            return translate("mix", "too weak")
        case "too dull":
            return translate("mix", "too dull")
        case "too intense":
            return translate("mix", "too intense")
        case _:
            assert_never(fault)


def _more_hue(hue: MainHue) -> str:
    match hue:
        case "yellow":
            return translate("mix", "yellower")
        case "orange":
            return translate("mix", "more orange")
        case "red":
            return translate("mix", "redder")
        case "violet":
            return translate("mix", "more violet")
        case "blue":
            return translate("mix", "bluer")
        case "green":
            return translate("mix", "greener")
        case _:
            assert_never(hue)


def _a_little(word: str) -> str:
    return translate("mix", "a little {word}").format(word=word)


def band_reach_text(band: BandMix, like: str = "") -> str:
    """What to say of a band that goes beyond every mix of the box; empty when it does not.

    Parameters
    ----------
    band : BandMix
    like : str
        Letter of the band above when the same was said of it: then it is said shortly.
    """
    chosen = band.classroom
    if chosen is None or chosen.kind == "paper":
        return ""
    if chosen.lacks:
        return _lacks_text(chosen.lacks, like)
    return reach_text(band.reach, like, by_hand=chosen.kind == "by hand")


def _lacks_text(lacks: tuple[Primary, ...], like: str) -> str:
    if like:
        return translate("mix", "Like {letter}, out of this box's reach.").format(letter=like)
    names = [family_name(hue) for hue in lacks]
    if len(names) > 1:
        text = translate("mix", "This box has no {one} and no {other}: the nearest is shown.")
        return text.format(one=names[0], other=names[1])
    return translate("mix", "This box has no {hue}: the nearest is shown.").format(hue=names[0])


def reach_text(reach: Reach, like: str = "", *, by_hand: bool = False) -> str:
    """In what a band goes beyond every mix of the box; empty where the box reaches it.

    Parameters
    ----------
    reach : Reach
    like : str
        Letter of the band above when the same was said of it: then it is said shortly.
    by_hand : bool
        The parts were set by hand: then it is not the nearest that is shown.
    """
    if like:
        return _reach_like_text(reach).format(letter=like)
    if by_hand:
        return _reach_by_hand_text(reach)
    match reach:
        case "reached" | "lacks":
            return ""
        case "too intense":
            return translate(
                "mix",
                "More intense than this box can reach: the nearest is shown. Use clean water and a "
                "clean brush.",
            )
        case "too light":
            return translate(
                "mix",
                "Lighter and clearer than any mix here: the nearest is shown. Let the paper do "
                "more.",
            )
        case "too dark":
            return translate(
                "mix", "Darker than any mix here: the nearest is shown. Lay it twice, dry between."
            )
        case "too dull":
            return translate(
                "mix", "Duller than this box can reach: it has nothing to tone it down with."
            )
        case "out of reach":
            return translate("mix", "This box does not reach it: the nearest is shown.")
        case _:
            assert_never(reach)


def _reach_like_text(reach: Reach) -> str:
    match reach:
        case "reached" | "lacks":
            return ""
        case "too intense":
            return translate("mix", "Like {letter}, more intense than this box can reach.")
        case "too light":
            return translate("mix", "Like {letter}, lighter and clearer than any mix here.")
        case "too dark":
            return translate("mix", "Like {letter}, darker than any mix here.")
        case "too dull":
            return translate("mix", "Like {letter}, duller than this box can reach.")
        case "out of reach":
            return translate("mix", "Like {letter}, out of this box's reach.")
        case _:
            assert_never(reach)


def _reach_by_hand_text(reach: Reach) -> str:
    """Beside parts set by hand: it is not the nearest that is shown."""
    match reach:
        case "reached" | "lacks":
            return ""
        case "too intense":
            return translate("mix", "More intense than this box can reach.")
        case "too light":
            return translate("mix", "Lighter and clearer than any mix here.")
        case "too dark":
            return translate("mix", "Darker than any mix here.")
        case "too dull":
            return translate("mix", "Duller than this box can reach.")
        case "out of reach":
            return translate("mix", "This box does not reach it.")
        case _:
            assert_never(reach)


def reach_short_text(reach: Reach) -> str:
    """The same as `reach_text` in one short line, for a card; empty when the box reaches it."""
    match reach:
        case "reached" | "lacks":
            return ""
        case "too intense":
            return translate("cards", "More intense than the box can reach: keep it clean.")
        case "too light":
            return translate("cards", "Lighter than the box can mix: let the paper do more.")
        case "too dark":
            return translate("cards", "Darker than the box can mix: lay it twice, dry between.")
        case "too dull":
            return translate("cards", "Duller than the box can reach: nothing in it tones it down.")
        case "out of reach":
            return translate("cards", "The box does not reach it: this comes nearest.")
        case _:
            assert_never(reach)
