"""What `gradewash mix` prints: a plan in words, or JSON."""

from __future__ import annotations

from typing import Any

from core.cli.report import Report
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import box_name
from core.paint.planned import BandMix, MixPlan, PlannedMix
from core.paint.reasons import SAME_MIX
from core.paint.toning.tone_down import Ladder
from core.paint.toning.toners import compare_toners
from core.paint.wash.meeting import Meeting
from core.paint.words.mix import (
    alternative_text,
    band_reach_text,
    closest_text,
    mix_text,
    shortfall_text,
    why_text,
)
from core.paint.words.plan import (
    amount_of_it_text,
    amount_text,
    amounts_note,
    brush_text,
    caution_text,
    kind_text,
    ladder_text,
    meeting_text,
    order_texts,
    parts_note,
    puddle_text,
    stand_ins_text,
    step_note_text,
    strengths_text,
    total_text,
    water_text,
    wet_text,
)
from core.paint.words.second import second_mix_text
from core.paint.words.tone import toners_text
from core.reading.reading import read_colour
from core.reading.wording import Wording
from core.words import band_sentence
from core.words.lists import sentence_case
from core.words.verdicts import verdict_word


def plan_as_json(read_json: dict[str, Any], plan: MixPlan) -> dict[str, Any]:
    """The plan added to the JSON of `read`.

    Parameters
    ----------
    read_json : dict
        From `core.cli.report.report_as_json`.
    plan : MixPlan
    """
    letters = [band.letter for band in plan.bands]
    bands = [
        {**read_band, **_band(plan, band, below)}
        for read_band, band, below in zip(
            read_json["bands"], plan.bands, [*letters[1:], ""], strict=True
        )
    ]
    return {
        **read_json,
        "box": {"name": box_name(plan.box), "paints": list(plan.box.keys)},
        "bands": bands,
        "order": list(order_texts(plan.order, plan.sheet)),
        "cautions": [caution_text(plan.box, caution) for caution in plan.cautions],
    }


def _band(plan: MixPlan, band: BandMix, below: str) -> dict[str, Any]:
    mixes = [planned for planned in (band.classroom, band.closest) if planned is not None]
    meeting = band.meets_below
    return {
        "mixes": [_mix(plan, planned) for planned in mixes],
        "alternatives": [
            {
                **_mix(plan, item.planned),
                "prefer": item.prefer,
                "why": alternative_text(plan.box, band.classroom, item),
            }
            for item in band.alternatives
            if band.classroom is not None
        ],
        "reach": band_reach_text(band),
        "tone_down": [] if band.tone_down is None else _ladder(plan, band, band.tone_down),
        "meets_below": None if meeting is None else _meeting(band.letter, below, meeting),
        "amount_ml": band.amount_ml,
        "second_mix": None
        if band.second is None
        else {**_mix(plan, band.second.planned), "laid": band.second.way},
    }


def _mix(plan: MixPlan, planned: PlannedMix) -> dict[str, Any]:
    mix, short = planned.mix, planned.falls_short
    return {
        "kind": planned.kind,
        "parts": dict(mix.parts),
        "strength": planned.strength,
        "load_ml_per_unit": _significant(mix.load_ml_per_unit),
        "predicted_Lab": [round(number, 2) + 0.0 for number in mix.Lab],
        "predicted_srgb": mix.colour.hex,
        "delta_E_2000": round(planned.delta_E_2000, 2),
        "falls_short": {
            "hue": None if short.hue_deg is None else round(short.hue_deg, 1) + 0.0,
            "value": round(short.value, 2) + 0.0,
            "intensity": round(short.chroma, 2) + 0.0,
        },
        "why": why_text(plan.box, planned),
    }


def _significant(number: float) -> float:
    return float(f"{number:.3g}")


def _ladder(plan: MixPlan, band: BandMix, ladder: Ladder) -> list[dict[str, Any]]:
    return [
        {
            "fraction": round(float(step.fraction), 4),
            "toner": dict(ladder.toner),
            "srgb": step.colour.hex,
            "chroma": round(step.colour.munsell.chroma, 2),
            "hue": step.colour.hue.family,
            "note": step_note_text(step.note, band.letter),
        }
        for step in ladder.steps
    ]


def _meeting(upper: str, lower: str, meeting: Meeting) -> dict[str, Any]:
    return {
        "path": [read_colour(Lab).hex for Lab in meeting.path],
        "named": list(meeting.families),
        "note": meeting_text(upper, lower, meeting),
    }


def plan_in_words(report: Report, plan: MixPlan) -> str:
    """The plan as plain text, to be read or printed."""
    lines = [
        translate("command line", "{name}. Box: {box}.").format(
            name=report.sky.photo.name, box=box_name(plan.box)
        ),
        *report.notices,
    ]
    for number, (reading, band) in enumerate(zip(report.sky.readings, plan.bands, strict=True)):
        lines += ["", band_sentence(reading, Wording())]
        if band.classroom is not None:
            above = plan.bands[number - 1] if number else None
            lines += _band_lines(plan, band, band.classroom, above)
        if band.second is not None:
            lines.append("  " + second_mix_text(plan.box, band.letter, band.second))
        if band.meets_below is not None and band.meets_below.happens:
            below = plan.bands[number + 1].letter
            lines.append("  " + meeting_text(band.letter, below, band.meets_below))
    lines += ["", kind_text(plan.order)]
    if plan.order.kind != "none":
        lines += [
            f"  {number}. {text}"
            for number, text in enumerate(order_texts(plan.order, plan.sheet), start=1)
        ]
    if plan.amounts.total_ml:
        notes = [
            f"{total_text(plan.amounts.total_ml, plan.each_ml)} {amounts_note(plan.amounts)}",
            parts_note(plan.box, plan.chosen_mixes),
            puddle_text(),
            water_text(plan.amounts),
            brush_text(),
            strengths_text(band.classroom.strength for band in plan.bands if band.classroom),
            wet_text(plan.drying_steps),
            stand_ins_text(plan.box, _paints_used(plan)),
        ]
        lines += [note for note in notes if note]
    if plan.cautions:
        lines += ["", *(caution_text(plan.box, caution) for caution in plan.cautions)]
    return "\n".join(lines)


def _paints_used(plan: MixPlan) -> set[str]:
    mixes = [mix for band in plan.bands for mix in (band.classroom, band.closest_to_show) if mix]
    return {key for planned in mixes for key in planned.mix.keys}


def _band_lines(
    plan: MixPlan, band: BandMix, chosen: PlannedMix, above: BandMix | None
) -> list[str]:
    """What is said of a band; what was said word for word of the band above is left out."""
    box = plan.box
    head = translate("command line", "{mix}. {verdict}").format(
        mix=sentence_case(mix_text(box, chosen)), verdict=verdict_word(chosen.verdict)
    )
    short = shortfall_text(chosen)
    if chosen.kind == "paper":
        head, short = sentence_case(mix_text(box, chosen)), ""
    if chosen.lacks:
        short = ""  # said whole below
    lines = [f"{head}: {short}." if short else f"{head}."]
    why = why_text(box, chosen)
    if plan.each_ml is not None:
        lines.append(why)
    elif chosen.why and chosen.why[0].code in SAME_MIX:
        lines.append(f"{why} {amount_of_it_text(band.amount_ml)}")
    else:
        lines += [amount_text(band.amount_ml), why]
    lines.append(band_reach_text(band, _said_of(above, band)))
    if band.closest_to_show is not None:
        lines.append(closest_text(box, band.closest_to_show))
    said = set() if above is None else _alternatives(box, above)
    lines += [
        text
        for item in band.alternatives
        if (text := alternative_text(box, chosen, item)) not in said
    ]
    if band.tone_down is not None:
        lines.append(ladder_text(box, band.tone_down, band.letter, chosen))
        lines.append(toners_text(box, compare_toners(box, band.tone_down)))
    return ["  " + line for line in lines if line]


def _said_of(above: BandMix | None, band: BandMix) -> str:
    """The band above when the same reach was said of it; else empty."""
    if above is None or above.classroom is None or above.classroom.kind == "paper":
        return ""
    return above.letter if above.reach == band.reach else ""


def _alternatives(box: Box, band: BandMix) -> set[str]:
    if band.classroom is None:
        return set()
    return {alternative_text(box, band.classroom, item) for item in band.alternatives}
