"""A plan in words: tone-down ladder, meetings, order of work, amounts and cautions."""

from __future__ import annotations

from fractions import Fraction

from core.i18n import translate
from core.paint.amounts import Amounts, PaintSheet
from core.paint.box import Box
from core.paint.catalogue import CATALOGUE, Paint
from core.paint.cautions import Caution
from core.paint.meeting import Meeting
from core.paint.names import paint_name
from core.paint.order import Order, WorkStep
from core.paint.tone_down import Ladder, LadderStep, StepNote
from core.paint.words_mix import listed
from core.words.names import family_name


def ladder_title(box: Box, ladder: Ladder) -> str:
    """ "Toning down with burnt sienna, near its complement orange"."""
    toner = listed([paint_name(box.paint(key)) for key, _ in ladder.toner])
    if ladder.complement is None:
        return translate("mix", "Toning down with {toner}").format(toner=toner)
    if ladder.toner_family == ladder.complement:
        text = translate("mix", "Toning down with {toner}, its complement {complement}")
    else:
        text = translate("mix", "Toning down with {toner}; the true complement is {complement}")
    return text.format(toner=toner, complement=family_name(ladder.complement))


def fraction_text(box: Box, ladder: Ladder, fraction: Fraction) -> str:
    """ "no burnt sienna", "1/20 burnt sienna"."""
    toner = listed([paint_name(box.paint(key)) for key, _ in ladder.toner])
    if not fraction:
        return translate("mix", "no {toner}").format(toner=toner)
    return translate("mix", "{fraction} {toner}").format(
        fraction=f"{fraction.numerator}/{fraction.denominator}", toner=toner
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
        translate("mix", "near neutral") if family is None else family_name(family)
        for family in meeting.families
    ]
    through = translate("mix", "{first} to {last}").format(first=names[0], last=names[-1])
    if len(names) > 2:
        through = translate("mix", "{first} through {middle} to {last}").format(
            first=names[0], middle=listed(names[1:-1]), last=names[-1]
        )
    hue = family_name(meeting.new_hue) if meeting.new_hue else ""
    keep = family_name(meeting.keep_between) if meeting.keep_between else ""
    text = {
        "one hue": translate("mix", "{upper} runs into {lower}: one {only}, clean."),
        "clean": translate("mix", "{upper} runs into {lower}: {through}, clean."),
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
    return text.format(upper=upper, lower=lower, through=through, hue=hue, keep=keep, only=names[0])


def kind_text(order: Order) -> str:
    """Flat, graded or variegated wash."""
    return {
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
        "rinse": translate("mix", "Rinse the brush and take off the drip."),
        "stop": translate(
            "mix",
            "Stop when the shine goes. For {low} to {high} min a wet brush would leave blooms.",
        ),
        "dry": translate("mix", "Dry flat: {low} to {high} min, until no longer cool to the hand."),
        "peel": translate("mix", "Peel the tape away from the painting, slowly."),
    }[step.stage]
    if step.stage == "lay" and first and len(step.letters) > 1:
        text = translate("mix", "Lay {first}, the lightest, then {rest}, wet into wet.")
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
    for step in order.steps:
        texts.append(work_step_text(step, sheet, first=step.stage == "lay" and not laid))
        laid = laid or step.stage == "lay"
        if step.stage == "wet" and order.turn_sheet:
            texts.append(
                translate("mix", "Turn the sheet upside down: the lightest band comes first.")
            )
    return tuple(texts)


def amounts_note(amounts: Amounts) -> str:
    """Where the millilitres come from."""
    if amounts.own_figure:
        return translate("mix", "From your own figure, with about as much again to spare.")
    return translate(
        "mix", "A rule of thumb, with about as much again to spare: running out spoils a wash."
    )


def caution_text(box: Box, caution: Caution) -> str:
    """ "Cadmium red: the label of this paint lists ..."."""
    paint = box.paint(caution.paint)
    metals = {
        "cadmium": translate("mix", "cadmium"),
        "cobalt": translate("mix", "cobalt"),
        "manganese": translate("mix", "manganese"),
        "lead": translate("mix", "lead"),
        "chromate": translate("mix", "chromate"),
    }
    lists = listed([metals.get(name, name) for name in caution.lists])
    name = paint_name(paint)
    return translate(
        "mix",
        "{paint}: The label of this paint lists what it holds, usually {lists}; your school's "
        "rules come first.",
    ).format(paint=name[:1].upper() + name[1:], lists=lists)


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
