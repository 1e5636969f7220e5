"""How near a mix comes to its band, in words; and what no mix of the box reaches."""

from __future__ import annotations

from core.i18n import translate
from core.paint.planned import PlannedMix, Reach
from core.paint.words.parts import listed

CLEARLY_VALUE, CLEARLY_CHROMA, CLEARLY_HUE = 0.9, 2.5, 7.0
"""From here a fault is no longer "a little": Munsell value, chroma, CIELAB units of hue."""


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
    if all(little for _, little in pieces):  # "a little" is said once for all
        differences = _a_little(listed([word for word, _ in pieces]))
    else:
        differences = listed([_a_little(word) if little else word for word, little in pieces])
    return translate("mix", "{differences} than the photo").format(differences=differences)


def _shortfall_pieces(planned: PlannedMix) -> list[tuple[str, bool]]:
    """Each difference, and whether it is only a little."""
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
        pieces.append((words[fault], abs(size) < limit and planned.verdict != "far"))
    if planned.too is not None:
        pieces.append((_more_hue(planned.too), abs(short.hue_Lab) < CLEARLY_HUE))
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


def _a_little(word: str) -> str:
    return translate("mix", "a little {word}").format(word=word)


def reach_text(reach: Reach, like: str = "") -> str:
    """What to say of a band that goes beyond every mix of the box; empty when it does not.

    Parameters
    ----------
    reach : Reach
    like : str
        Letter of the band above when the same was said of it: then it is said shortly.
    """
    if like and reach != "reached":
        return {
            "too intense": translate("mix", "Like {letter}, more intense than this box can reach."),
            "too light": translate("mix", "Like {letter}, lighter and clearer than any mix here."),
            "too dark": translate("mix", "Like {letter}, darker than any mix here."),
            "too dull": translate("mix", "Like {letter}, duller than this box can reach."),
            "out of reach": translate("mix", "Like {letter}, out of this box's reach."),
        }[reach].format(letter=like)
    return {
        "reached": "",
        "too intense": translate(
            "mix",
            "More intense than this box can reach: the nearest is shown. Use clean water and a "
            "clean brush.",
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
