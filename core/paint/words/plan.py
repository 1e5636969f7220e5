"""A plan in words: meetings, order of work; and, from their own modules, the rest of a plan."""

from __future__ import annotations

from typing import assert_never

from core.i18n import translate
from core.paint.wash.amounts import PaintSheet
from core.paint.wash.meeting import Meeting
from core.paint.wash.order import Order, WorkStep
from core.paint.words.amounts import (
    amount_of_it_text,
    amount_text,
    amounts_note,
    brush_text,
    measure_text,
    puddle_text,
    strengths_text,
    total_text,
    water_text,
    wet_text,
)
from core.paint.words.box import caution_text, metal_name, paint_note, stand_ins_text
from core.paint.words.ladder import (
    drift_text,
    fraction_text,
    ladder_text,
    ladder_title,
    step_note_text,
    untoned_text,
)
from core.paint.words.parts import parts_note
from core.reading.units import Units, size_text
from core.words.lists import listed
from core.words.names import family_name

__all__ = [
    "amount_of_it_text",
    "amount_text",
    "amounts_note",
    "brush_text",
    "caution_text",
    "drift_text",
    "fraction_text",
    "kind_text",
    "ladder_text",
    "ladder_title",
    "measure_text",
    "meeting_text",
    "metal_name",
    "order_texts",
    "paint_note",
    "parts_note",
    "puddle_text",
    "stand_ins_text",
    "step_note_text",
    "strengths_text",
    "total_text",
    "turn_text",
    "untoned_text",
    "water_text",
    "wet_text",
    "work_step_text",
]


def meeting_text(upper: str, lower: str, meeting: Meeting) -> str:
    """What the wet edge between two bands becomes, in a sentence or two.

    Parameters
    ----------
    upper, lower : str
        Letters of the two bands.
    meeting : Meeting
    """
    names = [
        translate("mix", "grey") if family is None else family_name(family)
        for family in meeting.families
    ]
    if len(names) == 1:
        through = translate("mix", "{only} all the way").format(only=names[0])
    elif len(names) == 2:
        through = translate("mix", "{first} to {last}").format(first=names[0], last=names[-1])
    else:
        through = translate("mix", "{first} through {middle} to {last}").format(
            first=names[0], middle=listed(names[1:-1]), last=names[-1]
        )
    hue = family_name(meeting.new_hue) if meeting.new_hue else ""
    keep = family_name(meeting.keep_between) if meeting.keep_between else ""
    return _meeting_template(meeting).format(
        upper=upper,
        lower=lower,
        through=through,
        hue=hue,
        keep=keep,
        lender=meeting.keep_from,
    )


def _meeting_template(meeting: Meeting) -> str:
    match meeting.note:
        case "one hue":
            return translate("mix", "{upper} runs into {lower}: {through}.")
        case "clean":
            return translate("mix", "{upper} runs into {lower}, {through}.")
        case "paper":
            return translate(
                "mix", "{upper} and {lower}: let the wash fade out into the white paper."
            )
        case "photo has it":
            return translate(
                "mix",
                "{upper} runs into {lower}: {through}. Let them run together: the photo's {hue} "
                "needs no mix of its own.",
            )
        case "photo lacks it":
            return translate(
                "mix",
                "{upper} runs into {lower}: {through}. The photo shows no {hue} there: leave a "
                "strip of clean water between.",
            )
        case "grey":
            if set(meeting.families) == {None}:
                return translate("mix", "{upper} runs into {lower}: {through}.")
            return translate("mix", "{upper} runs into {lower}: {through}, soft and greyish.")
        case "grey in photo too":
            return translate(
                "mix",
                "{upper} runs into {lower}: {through}. It goes grey, and so does the photo: let "
                "it.",
            )
        case "mud":
            if not meeting.keep_from:
                return translate(
                    "mix",
                    "{upper} and {lower} meet in a mud: {through}. Leave a strip of clean water "
                    "between.",
                )
            return translate(
                "mix",
                "{upper} and {lower} meet in a mud: {through}. Leave a strip of clean water "
                "between, or a breath of the {keep} of {lender}.",
            )
        case _:
            assert_never(meeting.note)


def kind_text(order: Order) -> str:
    """Flat, graded or variegated wash."""
    match order.kind:
        case "none":
            return translate("mix", "No wash: this sky is the white of the paper.")
        case "flat":
            return translate("mix", "A flat wash: one mix, evenly.")
        case "graded":
            return translate("mix", "A graded wash: one mix, thinned from band to band.")
        case "variegated":
            return translate("mix", "A variegated wash: different mixes that run together.")
        case _:
            assert_never(order.kind)


def work_step_text(
    step: WorkStep, sheet: PaintSheet, *, first: bool = False, units: Units = "cm"
) -> str:
    """One step of the work as an instruction.

    Parameters
    ----------
    step : WorkStep
    sheet : PaintSheet
    first : bool
        The first of several bands is laid in this step.
    units : Units
    """
    low, high = step.minutes or (0, 0)
    return _step_template(step, first).format(
        size=size_text(*sheet.painted_mm, units),
        low=low,
        high=high,
        bands=listed(step.letters),
        first=step.letters[0] if step.letters else "",
        rest=listed(step.letters[1:]),
        beside=step.beside,
        apart=step.apart,
    )


def _step_template(step: WorkStep, first: bool) -> str:
    match step.stage:
        case "tape":
            return translate("mix", "Tape the sheet: {size}. Mark where each band ends.")
        case "mix":
            return translate("mix", "Mix everything before the sheet is wet; try each on a scrap.")
        case "wet":
            return translate(
                "mix",
                "With a soft round brush, not the one you mixed with, wet the sheet with clean "
                "water: damp everywhere, no puddle. The shine lasts {low} to {high} min.",
            )
        case "lay":
            return _lay_text(step, first)
        case "leave":
            return translate("mix", "Leave {bands} without paint: the paper is its white.")
        case "rinse":
            return translate("mix", "Rinse the brush and take off the drip.")
        case "stop":
            return translate(
                "mix", "Stop when the shine goes: until it is dry a wet brush leaves blooms."
            )
        case "pull":
            return translate(
                "mix",
                "Where bands should meet, pull the lower colour up into the wet and the upper one "
                "down into it, once.",
            )
        case "dry":
            return translate(
                "mix",
                "Leave it flat {low} to {high} min, then feel it: if it is still cool it is still "
                "damp, wait 5 min more.",
            )
        case "peel":
            return translate("mix", "Peel the tape away from the painting, slowly.")
        case _:
            assert_never(step.stage)


def _lay_text(step: WorkStep, first: bool) -> str:
    """Wet into wet only beside a band that is wet; the first goes on the wetted sheet."""
    several = len(step.letters) > 1
    if several and (step.thinning or step.uneven):
        return _one_puddle(step)
    if step.apart:
        if step.beside:
            text = translate(
                "mix",
                "Lay {first} into the wet {beside}, with a strip of clean water between it and "
                "{apart}",
            )
        else:
            text = translate(
                "mix", "Lay {first}, with a strip of clean water between it and {apart}"
            )
        return _and_the_rest(text, several=several)
    if step.beside:
        return (
            translate("mix", "Lay {first} beside the wet {beside}, then {rest}, wet into wet.")
            if several
            else translate("mix", "Lay {first} beside the wet {beside}, wet into wet.")
        )
    if first:
        text = translate("mix", "Lay {first}, the lightest, on the wet sheet")
    else:
        text = translate("mix", "Lay {first} on the wet sheet")
    text = _and_the_rest(text, several=several)
    if step.outwards:
        outwards = translate("mix", "Go on outwards from it, the lighter side first.")
        text = f"{text} {outwards}"
    return text


def _and_the_rest(text: str, *, several: bool) -> str:
    if several:
        return translate("mix", "{laying}; then {rest}, wet into wet.").replace("{laying}", text)
    return translate("mix", "{laying}.").replace("{laying}", text)


def _one_puddle(step: WorkStep) -> str:
    """One mix for several bands, laid in one direction."""
    if step.thinning:
        return translate(
            "mix",
            "Lay {first}, the strongest, on the wet sheet; then {rest} with more and more water, "
            "wet into wet.",
        )
    return translate(
        "mix",
        "Lay {first} on the wet sheet; then {rest} of the same puddle, more water where a band is "
        "lighter, wet into wet.",
    )


def turn_text(order: Order) -> str:
    """That the sheet is turned, and why; empty where it is not."""
    if not order.turn_sheet:
        return ""
    if order.kind == "graded":
        return translate("mix", "Turn the sheet upside down: the strongest band comes first.")
    return translate("mix", "Turn the sheet upside down: the lightest band comes first.")


def order_texts(order: Order, sheet: PaintSheet, units: Units = "cm") -> tuple[str, ...]:
    """The whole order of work, one instruction each."""
    texts = []
    laid = False
    several = sum(len(step.letters) for step in order.steps if step.stage == "lay") > 1
    for step in order.steps:
        first = step.stage == "lay" and not laid and several
        texts.append(work_step_text(step, sheet, first=first, units=units))
        laid = laid or step.stage == "lay"
        if step.stage == "wet" and order.turn_sheet:
            texts.append(turn_text(order))
    return tuple(texts)
