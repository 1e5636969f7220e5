"""What the kit list says: a line a thing, with how much of it for one student and for all."""

from __future__ import annotations

import math
from dataclasses import dataclass

from core.cards.words.plan import caution_lines
from core.i18n import translate
from core.paint.box.names import paint_name
from core.paint.kit import (
    JAR_ML,
    JARS_FOR_TWO,
    LOOK_MIN,
    SHEETS_EACH,
    TAPE_MIN,
    Kit,
    PaintNeed,
)
from core.paint.pigment.catalogue import Paint
from core.paint.planned import MixPlan
from core.paint.words.amounts import FLAT_BRUSH_MM, sheet_name
from core.paint.words.plan import parts_note
from core.reading.units import Units, length_text, size_text
from core.study import Study
from core.words.lists import sentence_case

_MM_PER_YARD = 914.4
_TAPE_WIDE_MM = 20.0


@dataclass(frozen=True)
class KitLine:
    """One thing of the list.

    Attributes
    ----------
    item : str
    note : str
        In smaller letters below; may be empty.
    each, whole : str
        How much for one student, and for all.
    paint : str
        Key of the paint it is; empty for everything else.
    """

    item: str
    note: str = ""
    each: str = ""
    whole: str = ""
    paint: str = ""


@dataclass(frozen=True)
class KitGroup:
    """Things under one heading, and what is said of all of them.

    Attributes
    ----------
    heading : str
    lines : tuple of KitLine
    notes : tuple of str
    caution : bool
        To be marked as one.
    """

    heading: str
    lines: tuple[KitLine, ...] = ()
    notes: tuple[str, ...] = ()
    caution: bool = False


def kit_title(study: Study) -> str:
    """The heading of the kit list."""
    return translate("cards", "Kit list: {title}").format(title=study.title)


def kit_intro(kit: Kit) -> str:
    """For how many it is."""
    if kit.students == 1:
        return translate("cards", "For one student and two sheets.")
    return translate("cards", "For {n} students, two sheets each.").format(n=kit.students)


def kit_heads(kit: Kit) -> tuple[str, str]:
    """Heads of the two columns of amounts."""
    return translate("cards", "each"), translate("cards", "for {n}").format(n=kit.students)


def kit_groups(kit: Kit, plan: MixPlan, units: Units = "cm") -> tuple[KitGroup, ...]:
    """The whole list.

    Parameters
    ----------
    kit : Kit
        Of `plan`.
    plan : MixPlan
    units : Units
        Tape is told in metres or in yards.
    """
    groups = (
        KitGroup(translate("cards", "Paper and tape"), _paper(kit, units)),
        _paints(kit, plan),
        KitGroup(translate("cards", "Brushes and palettes"), _brushes(kit, units)),
        KitGroup(translate("cards", "Water"), _water(kit)),
        KitGroup(translate("cards", "Time"), (), _time(kit)),
        KitGroup(translate("cards", "Cautions"), (), kit_cautions(plan), True),
    )
    return tuple(group for group in groups if group.lines or group.notes)


def kit_cautions(plan: MixPlan) -> tuple[str, ...]:
    """What labels usually list, and how rinse water is kept."""
    lines = caution_lines(plan.box, plan.cautions)
    if lines:
        return lines
    return (
        translate(
            "cards",
            "Read the labels of your paints; your school's rules come first. Keep rinse water "
            "apart from drinking water, and wash your hands.",
        ),
    )


def paint_with_code(paint: Paint) -> str:
    """ "Ultramarine, usually PB29"; the name alone where makers differ too much to say."""
    name = sentence_case(paint_name(paint))
    if not paint.colour_index:
        return name
    return translate("cards", "{paint}, usually {code}").format(
        paint=name, code=paint.colour_index[0]
    )


def _paper(kit: Kit, units: Units) -> tuple[KitLine, ...]:
    sheet, n = kit.sheet, kit.students
    if kit.spare == 1:
        painted = translate("cards", "{size} is painted, inside the tape; one sheet is spare.")
    else:
        painted = translate(
            "cards", "{size} is painted, inside the tape; {spare} of the sheets are spare."
        )
    border = length_text(sheet.border_mm, units)
    return (
        KitLine(
            translate("cards", "Watercolour paper, {paper}, 300 g/m²").format(
                paper=sheet_name(sheet.name)
            ),
            painted.format(size=size_text(*sheet.painted_mm, units), spare=kit.spare),
            str(SHEETS_EACH),
            str(kit.paper),
        ),
        KitLine(translate("cards", "Strip of the same paper to try mixes on"), "", "1", str(n)),
        KitLine(translate("cards", "Board to tape the sheet to"), "", "1", str(n)),
        KitLine(
            translate("cards", "Masking tape, about {width} wide").format(
                width=length_text(_TAPE_WIDE_MM, units)
            ),
            translate("cards", "Four strips a sheet, {border} of each on the paper.").format(
                border=border
            ),
            _tape_text(kit.tape_mm, units),
            _tape_text(kit.tape_mm * n, units),
        ),
        KitLine(translate("cards", "Pencil, ruler, paper towel"), "", "1", str(n)),
    )


def _paints(kit: Kit, plan: MixPlan) -> KitGroup:
    heading = translate("cards", "Paint, at most, as it comes from the tube")
    if not kit.paints:
        none = translate("cards", "None: this sky is the white of the paper.")
        return KitGroup(translate("cards", "Paint"), (), (none,))
    lines = tuple(_paint(need, plan.box.paint(need.key), kit.students) for need in kit.paints)
    notes = [
        translate(
            "cards",
            "From the plan: millilitres of each mix, its strength and its parts, with as much "
            "again to spare. A bead of paint 8 mm across is a quarter of a mL. With pans, one box "
            "serves two.",
        )
    ]
    if parts := parts_note(plan.box, plan.chosen_mixes):
        notes.append(parts)
    return KitGroup(heading, lines, tuple(notes))


def _paint(need: PaintNeed, paint: Paint, students: int) -> KitLine:
    return KitLine(
        paint_with_code(paint),
        "",
        _ml_text(_up(need.ml, 0.05)),
        _ml_text(_up(need.ml * students, 0.5 if need.ml * students < 10 else 1.0)),
        need.key,
    )


def _brushes(kit: Kit, units: Units) -> tuple[KitLine, ...]:
    n = str(kit.students)
    if not kit.paints:
        return ()
    wells = (
        translate("cards", "Palette with a well for its one mix")
        if kit.wells == 1
        else translate("cards", "Palette with {n} wells or more: one for each mix").format(
            n=kit.wells
        )
    )
    return (
        KitLine(
            translate(
                "cards", "Large soft round brush, about size 12, or a flat of {width}: to lay"
            ).format(width=length_text(FLAT_BRUSH_MM, units)),
            "",
            "1",
            n,
        ),
        KitLine(translate("cards", "Smaller round brush: to mix"), "", "1", n),
        KitLine(wells, "", "1", n),
        KitLine(
            translate("cards", "Dropper or teaspoon: 1 mL is about 20 drops, 5 mL a teaspoon"),
            "",
            translate("cards", "1 for two"),
            str(math.ceil(kit.students / 2)),
        ),
    )


def _water(kit: Kit) -> tuple[KitLine, ...]:
    if not kit.paints:
        return ()
    low, high = (_up(ml * kit.students / 1000, 0.1) for ml in kit.water_ml)
    return (
        KitLine(
            translate("cards", "Clean water to wet the sheets and to mix"),
            "",
            translate("cards", "{low:.0f} to {high:.0f} mL").format(
                low=kit.water_ml[0], high=kit.water_ml[1]
            ),
            translate("cards", "{low:g} to {high:g} L").format(low=low, high=high),
        ),
        KitLine(
            translate("cards", "Jars of a quarter litre: one to rinse, one kept clean"),
            translate("cards", "Filled anew for the second sheet: {litres:g} L in all.").format(
                litres=_up(kit.rinse_ml / 1000, JAR_ML / 1000)
            ),
            translate("cards", "{n} for two").format(n=JARS_FOR_TWO),
            str(kit.jars),
        ),
    )


def _time(kit: Kit) -> tuple[str, ...]:
    if not kit.paints:
        return ()
    low, high = kit.minutes
    (wet_low, wet_high), (dry_low, dry_high) = kit.wet_min, kit.dry_min
    return (
        translate(
            "cards",
            "One sheet takes {low} to {high} min: tape and mark {tape}, mix and try {mix}, wet "
            "and lay {wet_low} to {wet_high}, dry {dry_low} to {dry_high}, look and score "
            "{look}. The second takes as long: a double lesson, or two.",
        ).format(
            low=low,
            high=high,
            tape=TAPE_MIN,
            mix=kit.mix_min,
            wet_low=wet_low,
            wet_high=wet_high,
            dry_low=dry_low,
            dry_high=dry_high,
            look=LOOK_MIN,
        ),
    )


def _tape_text(mm: float, units: Units) -> str:
    if units == "cm":
        metres = mm / 1000
        return translate("cards", "{m:g} m").format(m=_up(metres, 0.1 if metres < 10 else 1.0))
    yards = mm / _MM_PER_YARD
    return translate("cards", "{yards:g} yd").format(yards=_up(yards, 0.1 if yards < 10 else 1.0))


def _ml_text(ml: float) -> str:
    return translate("cards", "{ml:g} mL").format(ml=ml)


def _up(amount: float, step: float) -> float:
    """Rounded up to whole steps: nobody should run short."""
    return round(math.ceil(amount / step - 1e-9) * step, 6)
