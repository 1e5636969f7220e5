"""From a plan to what the plan panel says."""

from __future__ import annotations

from app.mix.plan_shown import AmountRow, PlanView
from core.i18n import translate
from core.paint.options import MixOptions
from core.paint.planned import MixPlan
from core.paint.wash.amounts import BRUSH_CM2, PAINT_ML_PER_1000_CM2, SHEETS
from core.paint.words.amounts import sheet_name
from core.paint.words.mix import strength_text
from core.paint.words.plan import (
    amounts_note,
    caution_text,
    kind_text,
    measure_text,
    order_texts,
    parts_note,
    puddle_text,
    wet_text,
)
from core.reading.units import Units, size_text
from core.words.lists import sentence_case


def plan_view(plan: MixPlan, options: MixOptions, units: Units = "cm") -> PlanView:
    """The plan in words."""
    rows: list[AmountRow] = []
    for band in plan.bands:
        if band.classroom is None or not band.amount_ml:
            continue
        rows.append(
            AmountRow(
                band.letter,
                sentence_case(strength_text(band.classroom.strength)),
                measure_text(band.amount_ml) if plan.each_ml is None else "",
                f"{band.amount_ml:g}" if plan.each_ml is None else "",
            )
        )
    sheets = tuple(SHEETS)
    return PlanView(
        line=_line(plan, plan.different_mixes, units),
        sheets=tuple(sentence_case(sheet_name(name)) for name in sheets),
        sheet=sheets.index(plan.sheet.name) if plan.sheet.name in sheets else -1,
        painted=translate("mix page", "painted {painted}").format(
            painted=painted_text(plan, units)
        ),
        amounts=tuple(rows),
        total=_total(plan),
        total_ml=f"{plan.amounts.total_ml:g}",
        notes=_notes(plan),
        own_figure=options.own_ml_per_1000_cm2,
        usual_figure=PAINT_ML_PER_1000_CM2,
        kind=kind_text(plan.order),
        steps=order_texts(plan.order, plan.sheet, units),
        cautions=tuple(caution_text(plan.box, caution) for caution in plan.cautions),
    )


def painted_text(plan: MixPlan, units: Units = "cm") -> str:
    """ "27.7 × 19 cm"."""
    return size_text(*plan.sheet.painted_mm, units)


def _total(plan: MixPlan) -> str:
    if plan.each_ml is None:
        return translate("mix page", "in all, with some to spare")
    return translate("mix page", "{ml:g} mL each, {measure}; in all, with some to spare").format(
        ml=plan.each_ml, measure=measure_text(plan.each_ml)
    )


def laying_order(plan: MixPlan) -> tuple[str, ...]:
    """Letters in the order in which they are laid."""
    return tuple(
        letter for step in plan.order.steps if step.stage == "lay" for letter in step.letters
    )


def _line(plan: MixPlan, mixes: int, units: Units) -> str:
    if not mixes:
        return translate("mix page", "{sheet}, painted {painted}: no mix to prepare.").format(
            sheet=sentence_case(sheet_name(plan.sheet.name)), painted=painted_text(plan, units)
        )
    return translate(
        "mix page",
        "{sheet}, painted {painted}: {ml:g} mL in {mixes}. Lay {order}.",
    ).format(
        sheet=sentence_case(sheet_name(plan.sheet.name)),
        painted=painted_text(plan, units),
        ml=plan.amounts.total_ml,
        mixes=_mixes_text(mixes),
        order=", ".join(laying_order(plan)),
    )


def _mixes_text(count: int) -> str:
    if count == 1:
        return translate("mix page", "{n} mix").format(n=count)
    return translate("mix page", "{n} mixes").format(n=count)


def _notes(plan: MixPlan) -> tuple[str, ...]:
    low, high = plan.amounts.water_ml
    water = translate("mix page", "Clean water to wet the sheet: {low:.0f} to {high:.0f} mL.")
    brush = translate(
        "mix page",
        "Brush for laying: a large soft round, about size 12; one filling covers {low:.0f} to "
        "{high:.0f} cm², less with synthetic hair. Mix with another.",
    )
    pieces = [
        amounts_note(plan.amounts),
        parts_note(plan.box, plan.chosen_mixes),
        puddle_text(),
        water.format(low=low, high=high),
        brush.format(low=BRUSH_CM2[0], high=BRUSH_CM2[1]),
        wet_text(plan.drying_steps),
    ]
    return tuple(piece for piece in pieces if piece)
