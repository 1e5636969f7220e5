"""The tone-down ladder in words."""

from __future__ import annotations

from fractions import Fraction

from core.i18n import translate
from core.paint.box import Box
from core.paint.names import paint_name
from core.paint.tone_down import Ladder, LadderStep, StepNote
from core.paint.words_mix import listed
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
