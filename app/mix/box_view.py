"""From the study's box to what the box panel shows."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from app.mix.box_panel import BoxView
from app.mix.paint_row import PaintRowView
from core.i18n import remembered, translate
from core.paint.box.box import GENERIC_BOXES, Box
from core.paint.box.cautions import Caution
from core.paint.box.names import box_name, paint_name
from core.paint.mixture.swatch import drawn_out
from core.paint.options import MixOptions
from core.paint.pigment.catalogue import CATALOGUE, Paint
from core.paint.words.plan import caution_text, paint_note
from core.words.lists import sentence_case


def boxes_to_choose(own: Sequence[Box], current: Box) -> tuple[tuple[Box, ...], int]:
    """The boxes of the list, and which of them is in use.

    A box that was changed since it was chosen stands last, until it is kept under a name.
    """
    boxes = (*GENERIC_BOXES.values(), *own)
    for number, box in enumerate(boxes):
        if box.name == current.name and set(box.paints) == set(current.paints):
            return boxes, number
    return (*boxes, current), len(boxes)


def box_title(box: Box, known: Sequence[Box]) -> str:
    """A box in the list; a changed one says so."""
    name = sentence_case(box_name(box))
    if any(box.name == other.name and box is not other for other in known):
        return translate("mix page", "{box}, changed").format(box=name)
    return name


def box_view(
    boxes: Sequence[Box], current: int, before: Sequence[str], options: MixOptions
) -> BoxView:
    """The panel's view.

    Parameters
    ----------
    boxes : sequence of Box
        Those of the list.
    current : int
    before : sequence of str
        Keys in the order shown until now; empty when another box was chosen.
    options : MixOptions
    """
    box = boxes[current]
    order = shown_order(before, box.keys, tuple(CATALOGUE))
    titles = tuple(
        box_title(other, boxes[:number] if number == len(boxes) - 1 else ())
        for number, other in enumerate(boxes)
    )
    rows = tuple(
        _row(
            box.by_key[key] if key in box.by_key else CATALOGUE[key],
            key in box.by_key,
            key in options.forbidden,
            options.allow_white,
        )
        for key in order
        if key in box.by_key or key in CATALOGUE
    )
    return BoxView(titles, current, rows, options.allow_white)


@remembered(128)
def _row(paint: Paint, owned: bool, left_out: bool, allow_white: bool) -> PaintRowView:
    # The panel says whose measurements are used in a line of its own.
    note = (
        paint_note(replace(paint, measured_as=paint.key))
        if paint.is_stand_in
        else (paint_note(paint))
    )
    stand_in = ""
    if paint.is_stand_in:
        stand_in = translate("mix page", "measured as {paint}").format(
            paint=paint_name(CATALOGUE[paint.measured_as])
        )
    unused = ""
    if not owned:
        unused = translate("mix page", "not in this box")
    elif left_out:
        unused = translate("mix page", "left out of every mix")
    caution = ""
    if paint.lists:
        caution = caution_text(Box("", (paint,)), Caution(paint.key, paint.lists))
    return PaintRowView(
        paint.key,
        paint_name(paint),
        note,
        drawn_out(paint),
        owned,
        stand_in,
        caution,
        unused,
        "card" if paint.card is not None else "stand in" if paint.is_stand_in else "measured",
        # Ticked here and not allowed below would contradict each other.
        translate("mix page", "in the box; no mix uses it")
        if paint.group == "white" and not allow_white
        else "",
    )


def shown_order(before: Sequence[str], owned: Sequence[str], known: Sequence[str]) -> list[str]:
    """In which order to show paints: none jumps away when it is ticked on or off.

    Parameters
    ----------
    before : sequence of str
        Keys as they are shown now; empty when another box was chosen.
    owned : sequence of str
        The box, in its order.
    known : sequence of str
        Every paint of the catalogue.

    Returns
    -------
    list of str
        A new box first shows its own paints, then those it lacks.
    """
    wanted = [*owned, *(key for key in known if key not in owned)]
    if not before or any(key not in wanted for key in before if key in known):
        return wanted
    kept = [key for key in before if key in wanted]
    return kept + [key for key in wanted if key not in kept]
