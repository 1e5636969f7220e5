"""The tone-down ladder in words."""

from __future__ import annotations

from fractions import Fraction
from typing import assert_never

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.planned import PlannedMix
from core.paint.toning.tone_down import Ladder, LadderStep, StepNote
from core.reading.wheel import wheel_distance
from core.words.lists import listed
from core.words.names import family_name


def ladder_title(box: Box, ladder: Ladder) -> str:
    """ "Toning down with sap green (near the complement, green)"."""
    toner = listed([paint_name(box.paint(key)) for key, _ in ladder.toner])
    if ladder.complement is None:
        return translate("mix", "Toning down with {toner}").format(toner=toner)
    if ladder.toner_family == ladder.complement:
        text = translate("mix", "Toning down with {toner} ({complement} is the complement)")
    elif ladder.toner_family and wheel_distance(ladder.toner_family, ladder.complement) == 1:
        text = translate("mix", "Toning down with {toner} (near the complement, {complement})")
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


def ladder_text(box: Box, ladder: Ladder, letter: str, chosen: PlannedMix | None = None) -> str:
    """The whole ladder in a sentence: what matches first, then what is too little and too much.

    "Toning down with burnt sienna (near the complement, orange): 1 part in 6 matches A; 1 in 10
    is still too intense, 1 in 3 too dull."

    Parameters
    ----------
    box : Box
    ladder : Ladder
    letter : str
    chosen : PlannedMix, optional
        The band's mix: its own share of the toner is named rather than the nearest step.
    """
    share, exact = _matching_share(ladder, chosen)
    if share is None:
        said = _out_of_reach(ladder, letter)
    else:
        rest = _too_much(ladder, share)
        if not share:
            head = translate("mix", "none is needed")
        else:
            head = _suits(share, letter, exact=exact)
            rest = [*_too_little(ladder, share), *rest]
        said = "; ".join([head, ", ".join(rest)]) if rest else head
    return translate("mix", "{title}: {steps}.").format(title=ladder_title(box, ladder), steps=said)


def untoned_text(box: Box, ladder: Ladder) -> str:
    """Of a mix that needs no toner, in a line: and what the first step too much would be."""
    dull = next((step for step in ladder.steps[1:] if step.note in ("duller", "mud")), None)
    if dull is None:
        return translate("mix", "Nothing to tone down.")
    toner = listed([paint_name(box.paint(key)) for key, _ in ladder.toner])
    return translate(
        "mix", "Nothing to tone down: 1 part {toner} in {n} is already too dull."
    ).format(toner=toner, n=dull.fraction.denominator)


def _matching_share(ladder: Ladder, chosen: PlannedMix | None) -> tuple[Fraction | None, bool]:
    """The share of toner that suits the band, and whether it matches; None where none does."""
    if chosen is not None and chosen.toners and chosen.verdict == "off":
        return None, False
    if ladder.matched is None:
        return None, False
    step = ladder.steps[ladder.matched]
    return step.fraction, step.note == "matches"


def _suits(share: Fraction, letter: str, *, exact: bool) -> str:
    """ "1 part in 6 matches A", "2 parts in 7 come nearest to A"."""
    if share.numerator == 1:
        text = (
            translate("mix", "1 part in {n} matches {letter}")
            if exact
            else translate("mix", "1 part in {n} comes nearest to {letter}")
        )
    else:
        text = (
            translate("mix", "{parts} parts in {n} match {letter}")
            if exact
            else translate("mix", "{parts} parts in {n} come nearest to {letter}")
        )
    return text.format(parts=share.numerator, n=share.denominator, letter=letter)


def _too_little(ladder: Ladder, share: Fraction) -> list[str]:
    """The largest step that does not tone down enough."""
    weak = [step for step in ladder.steps if step.fraction < share and step.note == "more intense"]
    if not weak:
        return []
    before = weak[-1].fraction
    if not before:
        return [translate("mix", "plain is too intense")]
    return [translate("mix", "1 in {n} is still too intense").format(n=before.denominator)]


def _too_much(ladder: Ladder, share: Fraction) -> list[str]:
    """The first step that is too dull, and the first that is mud."""
    said = []
    after = [step for step in ladder.steps if step.fraction > share]
    dull = next((step for step in after if step.note == "duller"), None)
    mud = next((step for step in after if step.note == "mud"), None)
    if dull is not None:
        text = (
            translate("mix", "1 in {n} too dull")
            if share
            else translate("mix", "1 part in {n} is already too dull")
        )
        said.append(text.format(n=dull.fraction.denominator))
    if mud is not None:
        text = translate("mix", "1 in {n} is mud")
        said.append(text.format(n=mud.fraction.denominator))
    return said


def _out_of_reach(ladder: Ladder, letter: str) -> str:
    notes = {step.note for step in ladder.steps}
    if notes == {"more intense"}:
        return translate("mix", "even 1 part in {n} stays too intense").format(
            n=ladder.steps[-1].fraction.denominator
        )
    if "more intense" not in notes:
        return translate("mix", "leave it out, it only makes {letter} duller").format(letter=letter)
    return translate("mix", "no amount comes near {letter}").format(letter=letter)


def step_note_text(note: StepNote, letter: str) -> str:
    """What a step of the ladder is for the band."""
    match note:
        case "more intense":
            return translate("mix", "more intense")
        case "matches":
            return translate("mix", "matches {letter}").format(letter=letter)
        case "nearest":
            return translate("mix", "nearest to {letter}").format(letter=letter)
        case "mix":
            return translate("mix", "the mix")
        case "duller":
            return translate("mix", "too dull")
        case "mud":
            return translate("mix", "mud")
        case _:
            assert_never(note)


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
