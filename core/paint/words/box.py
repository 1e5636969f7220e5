"""The paints of a box in words: stand-ins, cautions, behaviour."""

from __future__ import annotations

from collections.abc import Iterable
from typing import assert_never

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.cautions import Caution
from core.paint.box.names import paint_name
from core.paint.pigment.catalogue import CATALOGUE, Paint
from core.paint.pigment.paint import Transparency
from core.paint.words.own import trust_word
from core.words.lists import listed, sentence_case


def stand_ins_text(box: Box, keys: Iterable[str] | None = None) -> str:
    """Which paints use another's measurements; empty when none does.

    Parameters
    ----------
    box : Box
    keys : iterable of str, optional
        Only these paints; the whole box without it.
    """
    wanted = set(box.keys if keys is None else keys)
    pairs = [
        translate("mix", "{paint} ({measured})").format(
            paint=paint_name(paint), measured=paint_name(CATALOGUE[paint.measured_as])
        )
        for paint in box.paints
        if paint.key in wanted and paint.is_stand_in
    ]
    if not pairs:
        return ""
    text = (
        translate(
            "mix", "Not measured, so a near relative stands in: {pairs}. Try it on a scrap first."
        )
        if len(pairs) == 1
        else translate(
            "mix",
            "Not measured, so near relatives stand in: {pairs}. Try these on a scrap first.",
        )
    )
    return text.format(pairs=listed(pairs))


def metal_name(name: str) -> str:
    """What a paint's label may list, as shown."""
    return {
        "cadmium": translate("mix", "cadmium"),
        "cobalt": translate("mix", "cobalt"),
        "manganese": translate("mix", "manganese"),
        "lead": translate("mix", "lead"),
        "chromate": translate("mix", "chromate"),
    }.get(name, name)


def caution_text(box: Box, caution: Caution) -> str:
    """ "Cadmium red: the label of this paint lists ..."."""
    paint = box.paint(caution.paint)
    lists = listed([metal_name(name) for name in caution.lists])
    name = sentence_case(paint_name(paint))
    if paint.colour_index:
        return translate(
            "mix",
            "{paint} (usually {code}): The label of this paint lists {lists}; your school's rules "
            "come first.",
        ).format(paint=name, code=paint.colour_index[0], lists=lists)
    return translate(
        "mix",
        "{paint}: The label of this paint lists what it holds, perhaps {lists}; your school's "
        "rules come first.",
    ).format(paint=name, lists=lists)


def paint_note(paint: Paint) -> str:
    """ "usually PR108, covers" or "using cadmium yellow's measurements; usually PY74"."""
    pieces = []
    if paint.is_stand_in:
        measured = CATALOGUE[paint.measured_as]
        pieces.append(
            translate("mix", "using {paint}'s measurements").format(paint=paint_name(measured))
        )
    if paint.card is not None:
        pieces.append(trust_word(paint.card.trust))
    if paint.colour_index:
        pieces.append(translate("mix", "usually {code}").format(code=paint.colour_index[0]))
    pieces.append(transparency_word(paint.transparency))
    if paint.granulation == "high":
        pieces.append(translate("mix", "granulates"))
    if paint.staining == "high":
        pieces.append(translate("mix", "stains"))
    return ", ".join(pieces)


def transparency_word(transparency: Transparency) -> str:
    """How much light a wash lets through to the paper."""
    match transparency:
        case "transparent":
            return translate("mix", "transparent")
        case "half transparent":
            return translate("mix", "half transparent")
        case "half opaque":
            return translate("mix", "half opaque")
        case "opaque":
            return translate("mix", "opaque")
        case _:
            assert_never(transparency)
