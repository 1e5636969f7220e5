"""The paints of one group compared, in words."""

from __future__ import annotations

from core.i18n import translate
from core.paint.choice.faults import TOUCHY_DELTA_E, PaintCompared
from core.paint.words.fit import fault_text
from core.words.lists import listed
from core.words.names import family_name

SHOWS_DELTA_E = 3.0
"""Below this one part more is hardly seen: the model itself cannot tell better."""


def compared_faults(compared: PaintCompared) -> str:
    """ "too dark and too violet"; "hue, value and intensity fit" when nothing would be noticed."""
    pieces = [fault_text(fault) for fault in compared.faults]
    if compared.too is not None:
        pieces.append(translate("mix", "too {hue}").format(hue=family_name(compared.too)))
    return listed(pieces) or translate("mix", "hue, value and intensity fit")


def compared_sensitivity(compared: PaintCompared) -> str:
    """What one part too much does; empty where a paint stands alone and has no parts."""
    if len(compared.mix.parts) < 2:
        return ""
    if compared.one_part_more > TOUCHY_DELTA_E:
        return translate("mix", "one part more is too much")
    if compared.one_part_more > SHOWS_DELTA_E:
        return translate("mix", "one part more shows")
    return translate("mix", "one part more is forgiven")
