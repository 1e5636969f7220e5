"""A plan in words: tone-down ladder, meetings, order of work, amounts and cautions."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from core.i18n import translate
from core.paint.amounts import Amounts, PaintSheet
from core.paint.box import Box
from core.paint.catalogue import CATALOGUE, Paint
from core.paint.cautions import Caution
from core.paint.drying import DRYING_STEPS
from core.paint.meeting import Meeting
from core.paint.names import paint_name
from core.paint.order import Order, WorkStep
from core.paint.strength import STRENGTHS, Strength
from core.paint.tone_down import Ladder, LadderStep, StepNote
from core.paint.words_mix import listed, sentence_case, strength_note
from core.wheel import wheel_distance
from core.words.names import family_name


def ladder_title(box: Box, ladder: Ladder) -> str:
    """ "Toning down with sap green (close to the complement, green)"."""
    toner = listed([paint_name(box.paint(key)) for key, _ in ladder.toner])
    if ladder.complement is None:
        return translate("mix", "Toning down with {toner}").format(toner=toner)
    if ladder.toner_family == ladder.complement:
        text = translate("mix", "Toning down with {toner} ({complement} is the complement)")
    elif ladder.toner_family and wheel_distance(ladder.toner_family, ladder.complement) == 1:
        text = translate("mix", "Toning down with {toner} (close to the complement, {complement})")
    else:
        text = translate("mix", "Toning down with {toner} (the true complement is {complement})")
    return text.format(toner=toner, complement=family_name(ladder.complement))


def fraction_text(box: Box, ladder: Ladder, fraction: Fraction) -> str:
    """ "plain", "1/20 burnt sienna"."""
    if not fraction:
        return translate("mix", "plain")
    toner = listed([paint_name(box.paint(key)) for key, _ in ladder.toner])
    return translate("mix", "{fraction} {toner}").format(fraction=_fraction(fraction), toner=toner)


def _fraction(fraction: Fraction) -> str:
    return f"{fraction.numerator}/{fraction.denominator}"


def ladder_text(box: Box, ladder: Ladder, letter: str) -> str:
    """The whole ladder in a sentence; steps with the same note are said together.

    "Toning down with burnt sienna (close to the complement, orange): up to 1/10 more intense, 1/5
    matches A, 1/3 too dull."
    """
    groups: list[list[LadderStep]] = []
    for step in ladder.steps:
        if groups and groups[-1][-1].note == step.note:
            groups[-1].append(step)
        else:
            groups.append([step])
    pieces = []
    for number, group in enumerate(groups):
        first, last = _fraction(group[0].fraction), _fraction(group[-1].fraction)
        if not group[-1].fraction:
            text = translate("mix", "plain {note}")
        elif number == 0:
            text = translate("mix", "up to {last} {note}")
        elif len(group) == 1:
            text = translate("mix", "{first} {note}")
        elif number == len(groups) - 1:
            text = translate("mix", "from {first} {note}")
        else:
            text = translate("mix", "{first} to {last} {note}")
        note = step_note_text(group[0].note, letter)
        pieces.append(text.format(first=first, last=last, note=note))
    return translate("mix", "{title}: {steps}.").format(
        title=ladder_title(box, ladder), steps=", ".join(pieces)
    )


def step_note_text(note: StepNote, letter: str) -> str:
    """What a step of the ladder is for the band."""
    return {
        "more intense": translate("mix", "more intense"),
        "matches": translate("mix", "matches {letter}"),
        "nearest": translate("mix", "nearest to {letter}"),
        "duller": translate("mix", "too dull"),
        "mud": translate("mix", "mud"),
    }[note].format(letter=letter)


DRIFT_DEG, DRIFT_VALUE = 8.0, 0.3
"""From here a drift along the ladder is worth a word."""


def drift_text(step: LadderStep) -> str:
    """How hue and value moved by a step; empty when hardly."""
    pieces = []
    if step.value_drift < -DRIFT_VALUE:
        pieces.append(translate("mix", "{steps:.1f} steps darker").format(steps=-step.value_drift))
    if step.hue_drift_deg is not None and abs(step.hue_drift_deg) > DRIFT_DEG:
        family = step.colour.hue.family or step.colour.hue.leaning
        if family is not None:
            pieces.append(translate("mix", "turning {hue}").format(hue=family_name(family)))
    return listed(pieces)


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
    text = {
        "one hue": translate("mix", "{upper} runs into {lower}: {through}."),
        "clean": translate("mix", "{upper} runs into {lower}: {through}, clean."),
        "paper": translate(
            "mix", "{upper} and {lower}: let the wash fade out into the white paper."
        ),
        "photo has it": translate(
            "mix",
            "{upper} runs into {lower}: {through}. Let them run together: the photo's {hue} "
            "needs no mix of its own.",
        ),
        "photo lacks it": translate(
            "mix",
            "{upper} runs into {lower}: {through}. The photo shows no {hue} there: leave a strip "
            "of clean water between.",
        ),
        "grey": translate("mix", "{upper} runs into {lower}: {through}, soft and greyish."),
        "grey in photo too": translate(
            "mix",
            "{upper} runs into {lower}: {through}. It goes grey, and so does the photo: let it.",
        ),
        "mud": translate(
            "mix",
            "{upper} and {lower} meet in a mud: {through}. Leave a clear {keep} between them.",
        ),
    }[meeting.note]
    if meeting.note == "mud" and not keep:
        text = translate(
            "mix", "{upper} and {lower} meet in a mud: {through}. Leave clean water between them."
        )
    if meeting.note in ("one hue", "clean") and meeting.photo_agrees:
        text = {
            "one hue": translate("mix", "{upper} runs into {lower}: {through}, as in the photo."),
            "clean": translate(
                "mix", "{upper} runs into {lower}: {through}, clean, as in the photo."
            ),
        }[meeting.note]
    if meeting.note == "grey" and set(meeting.families) == {None}:
        text = translate("mix", "{upper} runs into {lower}: {through}.")
    return text.format(upper=upper, lower=lower, through=through, hue=hue, keep=keep)


def kind_text(order: Order) -> str:
    """Flat, graded or variegated wash."""
    return {
        "none": translate("mix", "No wash: this sky is the white of the paper."),
        "flat": translate("mix", "A flat wash: one mix, evenly."),
        "graded": translate("mix", "A graded wash: one mix, thinned from band to band."),
        "variegated": translate("mix", "A variegated wash: different mixes that run together."),
    }[order.kind]


def work_step_text(step: WorkStep, sheet: PaintSheet, *, first: bool = False) -> str:
    """One step of the work as an instruction."""
    low, high = step.minutes or (0, 0)
    width, height = sheet.painted_mm
    bands = listed(step.letters)
    text = {
        "tape": translate(
            "mix", "Tape the sheet: {width:.0f} x {height:.0f} mm. Mark where each band ends."
        ),
        "mix": translate("mix", "Mix everything before the sheet is wet; try each on a scrap."),
        "wet": translate(
            "mix", "Wet the whole sheet: even shine, no puddles. It keeps {low} to {high} min."
        ),
        "lay": translate("mix", "Lay {bands}, wet into wet."),
        "leave": translate("mix", "Leave {bands} without paint: the paper is its white."),
        "rinse": translate("mix", "Rinse the brush and take off the drip."),
        "stop": translate(
            "mix",
            "Stop when the shine goes. For {low} to {high} min a wet brush would leave blooms.",
        ),
        "dry": translate("mix", "Dry flat: {low} to {high} min, until no longer cool to the hand."),
        "peel": translate("mix", "Peel the tape away from the painting, slowly."),
    }[step.stage]
    if step.stage == "lay" and step.thinning and len(step.letters) > 1:
        text = translate(
            "mix",
            "Lay {first}, the strongest, then {rest} with more and more water, wet into wet.",
        )
    elif step.stage == "lay" and first and len(step.letters) > 1:
        text = translate("mix", "Lay {first}, the lightest, then {rest}, wet into wet.")
    elif step.stage == "lay" and first:
        text = translate("mix", "Lay {first}, the lightest, wet into wet.")
    return text.format(
        width=width,
        height=height,
        low=low,
        high=high,
        bands=bands,
        first=step.letters[0] if step.letters else "",
        rest=listed(step.letters[1:]),
    )


def order_texts(order: Order, sheet: PaintSheet) -> tuple[str, ...]:
    """The whole order of work, one instruction each."""
    texts = []
    laid = False
    several = sum(len(step.letters) for step in order.steps if step.stage == "lay") > 1
    for step in order.steps:
        first = step.stage == "lay" and not laid and several
        texts.append(work_step_text(step, sheet, first=first))
        laid = laid or step.stage == "lay"
        if step.stage == "wet" and order.turn_sheet:
            texts.append(
                translate("mix", "Turn the sheet upside down: the strongest band comes first.")
                if order.kind == "graded"
                else translate("mix", "Turn the sheet upside down: the lightest band comes first.")
            )
    return tuple(texts)


def amounts_note(amounts: Amounts) -> str:
    """Where the millilitres come from."""
    if amounts.own_figure:
        return translate("mix", "From your own figure, with about as much again to spare.")
    return translate(
        "mix", "A rule of thumb, with about as much again to spare: running out spoils a wash."
    )


def amount_text(ml: float, loads: int) -> str:
    """ "Mix 3.5 mL: one load of a large brush covers the band."; empty for bare paper."""
    if ml <= 0:
        return ""
    if loads == 1:
        text = translate("mix", "Mix {ml:g} mL: one load of a large brush covers the band.")
    else:
        text = translate("mix", "Mix {ml:g} mL: {n} loads of a large brush cover the band.", loads)
    return text.format(ml=ml, n=loads)


def brush_text() -> str:
    """Which brush for a wash."""
    return translate(
        "mix",
        "Brush: a large soft round, about size 12, or a flat of 25 mm. Synthetic hair holds less: "
        "fill it more often.",
    )


def water_text(amounts: Amounts) -> str:
    """How much clean water wets the sheet; a rule of thumb."""
    low, high = amounts.water_ml
    return translate("mix", "Clean water to wet the sheet: {low:.0f} to {high:.0f} mL.").format(
        low=low, high=high
    )


def wet_text(drying_steps: float) -> str:
    """That wet paint looks darker; empty when the setting says it does not."""
    if drying_steps <= 0:
        return ""
    if abs(drying_steps - DRYING_STEPS) < 0.01:
        return translate(
            "mix", "The chips are dry paint. Wet, a wash looks about a quarter of a step darker."
        )
    return translate(
        "mix", "The chips are dry paint. Wet, a wash looks about {steps:g} of a step darker."
    ).format(steps=drying_steps)


def strengths_text(strengths: Iterable[Strength]) -> str:
    """What the strengths used in a plan mean in paint and water; empty when there is none."""
    used = set(strengths)
    notes = [strength_note(strength) for strength in STRENGTHS if strength in used]
    notes = [note for note in notes if note]
    if not notes:
        return ""
    return translate("mix", "Roughly, with tube paint, {notes}.").format(notes=listed(notes))


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
    return translate(
        "mix", "Reckoned by a measured relative: {pairs}. Try these on a scrap first."
    ).format(pairs=listed(pairs))


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
    if paint.colour_index:
        pieces.append(translate("mix", "usually {code}").format(code=paint.colour_index[0]))
    pieces.append(
        {
            "transparent": translate("mix", "clear"),
            "half transparent": translate("mix", "half clear"),
            "half opaque": translate("mix", "half covering"),
            "opaque": translate("mix", "covers"),
        }[paint.transparency]
    )
    if paint.granulation == "high":
        pieces.append(translate("mix", "leaves grains"))
    if paint.staining == "high":
        pieces.append(translate("mix", "stains"))
    return ", ".join(pieces)
