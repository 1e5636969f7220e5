"""What is said of a scrap: the stroke against its band, what to add, what is doubtful."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import assert_never

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.mixture.mix import Mix
from core.paint.mixture.shortfall import verdict
from core.paint.pigment.card_paint import Trust
from core.paint.words.own import own_paints_text
from core.paint.words.parts import parts_text
from core.reading.quality import COLOUR_QUALITIES, Verdict
from core.reading.reading import read_colour
from core.reading.wording import Wording
from core.scrap.additions import TOUCH
from core.scrap.advice import Addition, Advice
from core.scrap.held import Held
from core.scrap.kept import Parts, ScrapEntry
from core.scrap.strokes import Doubt
from core.scrap.teach import Lesson
from core.sheet.findings.words import quality_remark
from core.sheet.result import BandCheck
from core.words.lists import listed, sentence_case
from core.words.phrases import colour_sentence_part

_LITTLE, _HALF_AGAIN, _TWICE = 0.8, 0.6, 0.42


def dry_note() -> str:
    """That only dry strokes are judged."""
    return translate("scrap", "Only dry strokes are judged: wet paint looks darker.")


def against_text(check: BandCheck) -> str:
    """A stroke against its band: "Hue: matches; value: darker by 1; intensity: matches"."""
    said = [quality_remark(check, quality) for quality in COLOUR_QUALITIES]
    return sentence_case(translate("scrap", "; ").join(said))


def against_sentence(letter: str, check: BandCheck) -> str:
    """ "Against band C: hue: matches; value: darker by 1; intensity: matches."."""
    if all(getattr(check, quality) == "matches" for quality in COLOUR_QUALITIES):
        return translate("scrap", "It matches band {letter} in hue, value and intensity.").format(
            letter=letter
        )
    said = translate("scrap", "; ").join(
        quality_remark(check, quality) for quality in COLOUR_QUALITIES
    )
    return translate("scrap", "Against band {letter}: {remarks}.").format(
        letter=letter, remarks=said
    )


def stroke_sentence(check: BandCheck, wording: Wording) -> str:
    """What the stroke is: "The stroke is orange, a secondary; light, value 7; and dull."."""
    assert check.sheet.colour is not None
    return translate("scrap", "The stroke is {colour}.").format(
        colour=colour_sentence_part(check.sheet.colour, wording)
    )


def amount_text(box: Box, key: str, parts: float) -> str:
    """How much of a paint: "a touch of sap green", "2 parts of crimson"."""
    name = paint_name(box.paint(key))
    if parts < TOUCH:
        text = translate("scrap", "the least touch of {paint}")
    elif parts < 2 * TOUCH:
        text = translate("scrap", "a touch of {paint} (a quarter of a part)")
    elif parts < 1:
        text = translate("scrap", "two touches of {paint} (half a part)")
    elif parts < 2:
        text = translate("scrap", "1 part of {paint}")
    else:
        text = translate("scrap", "{count} parts of {paint}")
    return text.format(paint=name, count=round(parts))


def addition_text(box: Box, addition: Addition) -> str:
    """Everything that is added: "a touch of sap green and 1 part of crimson"."""
    return listed([amount_text(box, key, parts) for key, parts in addition.parts])


def same_puddle_sentence(box: Box, added: Parts) -> str:
    """What is taken for granted of a puddle that was tried before."""
    additions = listed([amount_text(box, key, parts) for key, parts in added])
    return translate("scrap", "Taken as the same puddle, with {additions} added.").format(
        additions=additions
    )


def advised_sentence(box: Box, scrap: ScrapEntry) -> str:
    """What was said of a kept scrap: "Advised: add 1 part of crimson."."""
    if scrap.advised is None:
        return translate("scrap", "Advised: begin again.")
    known = [(key, parts) for key, parts in scrap.advised if key in box.by_key]
    if not known:
        return translate("scrap", "Advised: add no paint.")
    additions = listed([amount_text(box, key, parts) for key, parts in known])
    return translate("scrap", "Advised: add {additions}.").format(additions=additions)


def water_text(thinning: float) -> str:
    """How the next stroke's strength differs: as much water as that takes; empty where it does not.

    Parameters
    ----------
    thinning : float
        Strength of the next stroke over that of the last one.
    """
    if thinning < _TWICE:
        return translate("scrap", "more than as much water again")
    if thinning < _HALF_AGAIN:
        return translate("scrap", "as much water again")
    if thinning < _LITTLE:
        return translate("scrap", "half as much water again")
    return ""


def advice_sentences(held: Held, box: Box, wording: Wording) -> tuple[str, ...]:
    """What to do, most important first; the first sentence is the deed."""
    advice, mix = held.advice, held.mix
    if advice is None or mix is None:
        return (
            translate("scrap", "Band {letter} is bare paper: it needs no mix.").format(
                letter=held.letter
            ),
        )
    near = all(getattr(held.checks[-1], quality) == "matches" for quality in COLOUR_QUALITIES)
    said = [_deed(held.letter, advice, mix, box, near=near)]
    if not advice.one_puddle:
        said.append(
            translate("scrap", "The strokes do not look like one mix: give each its own band.")
            if len(held.strokes) > 1
            else translate("scrap", "It does not follow from the try before: is it a fresh puddle?")
        )
    if advice.deed == "add":
        said.append(_then(advice.addition, wording))
        if advice.other is not None:
            said.append(
                translate(
                    "scrap",
                    "Try this first; {other} may do as well, and the scrap cannot tell which.",
                ).format(other=addition_text(box, advice.other))
            )
    if advice.got_in is not None and advice.deed in ("add", "begin again"):
        said.append(
            translate("scrap", "It looks as if some {paint} got in: rinse brush and dish.").format(
                paint=paint_name(box.paint(advice.got_in))
            )
        )
    doubted = own_paints_text(box, mix) if advice.deed == "add" else ""
    if doubted:
        said.append(doubted)
    if advice.serves is not None:
        said.append(
            translate(
                "scrap", "Keep this puddle for band {letter}: it serves there, thinned as needed."
            ).format(letter=advice.serves)
        )
    return tuple(said)


def _deed(letter: str, advice: Advice, mix: Mix, box: Box, *, near: bool) -> str:
    match advice.deed:
        case "serves":
            return translate("scrap", "Paint band {letter} with it.").format(letter=letter)
        case "water":
            water = water_text(advice.as_it_is.thinning)
            return translate("scrap", "Add only water: {water}.").format(water=water)
        case "stronger":
            return translate(
                "scrap", "The mix is right, the wash too thin: stir in more of {parts}."
            ).format(parts=parts_text(box, mix))
        case "add":
            text = (
                translate("scrap", "Near enough to paint with. To come nearer, add {additions}.")
                if near
                else translate("scrap", "Add {additions}.")
            )
            return text.format(additions=addition_text(box, advice.addition))
        case "begin again":
            return translate(
                "scrap", "Begin again: nothing you can add brings this puddle to band {letter}."
            ).format(letter=letter)
        case _:
            assert_never(advice.deed)


def _then(addition: Addition, wording: Wording) -> str:
    """What should come of an addition, and how much water it takes."""
    colour = colour_sentence_part(read_colour(addition.Lab), wording)
    water = water_text(addition.thinning)
    near = _near(verdict(addition.delta_E_2000))
    if water:
        return translate("scrap", "With {water} it should dry to {colour}: {near}.").format(
            water=water, colour=colour, near=near
        )
    return translate("scrap", "It should dry to {colour}: {near}.").format(colour=colour, near=near)


def _near(said: Verdict) -> str:
    match said:
        case "matches":
            return translate("scrap", "a match")
        case "close":
            return translate("scrap", "close")
        case "off" | "cannot tell":
            return translate("scrap", "nearer, still off")
        case _:
            assert_never(said)


def teach_question(box: Box, lesson: Lesson) -> str:
    """ "Let this scrap teach the box what your crimson is?"."""
    text = (
        translate("scrap", "Let this scrap teach the box what your {paints} is?")
        if len(lesson.paints) == 1
        else translate("scrap", "Let this scrap teach the box what your {paints} are?")
    )
    return text.format(paints=_names(box, lesson.paints))


def teaching_hint(box: Box, lesson: Lesson) -> str:
    """The same for the command line, with the switch that says yes."""
    return translate(
        "scrap", "With --teach BOX this scrap teaches the box what {paints} really does."
    ).format(paints=_names(box, lesson.paints))


def nothing_taught(box: Box) -> str:
    """Why strokes teach a box nothing."""
    if not any(paint.card is not None for paint in box.paints):
        return translate(
            "scrap",
            "This box has no paint of a swatch card that a scrap could teach it more of: read a "
            "card first (gradewash paints).",
        )
    return translate(
        "scrap",
        "These strokes teach the box nothing: their mixes hold no paint of your card, they taught "
        "it before, another paint got in, or the photo leaves them in doubt.",
    )


def taught_sentence(box: Box, keys: Sequence[str]) -> str:
    """What the box has learned: "Crimson is now known well, from your card and 3 scraps."."""
    said = []
    for key in keys:
        card = box.paint(key).card
        if card is None:
            continue
        count = len(card.scraps)
        text = (
            translate("scrap", "{paint} is {trust} and a scrap.")
            if count == 1
            else translate("scrap", "{paint} is {trust} and {count} scraps.")
        )
        name = sentence_case(paint_name(box.paint(key)))
        said.append(text.format(paint=name, trust=_known(card.trust), count=count))
    return " ".join(said)


def _known(trust: Trust) -> str:
    match trust:
        case "known well":
            return translate("scrap", "now known well, from your card")
        case "roughly":
            return translate("scrap", "now known roughly, from your card")
        case "stands in":
            return translate("scrap", "still hardly known, from your card")
        case _:
            assert_never(trust)


def _names(box: Box, keys: Iterable[str]) -> str:
    return listed([paint_name(box.paint(key)) for key in keys])


def doubt_text(doubt: Doubt) -> str:
    """What makes a stroke's colour uncertain, and what to do."""
    match doubt:
        case "no paper":
            return translate(
                "scrap",
                "No white paper is seen around it: the colour is taken as the camera gives it.",
            )
        case "over-exposed":
            return translate(
                "scrap", "The paper is overexposed: photograph it again, a little darker."
            )
        case "shines":
            return translate(
                "scrap", "It shines: is it still wet? Photograph it dry, from the side."
            )
        case "shadow":
            return translate(
                "scrap", "A shadow lies on the paper beside it: photograph it in even light."
            )
        case "uneven":
            return translate(
                "scrap", "The stroke is uneven: its middle is read. Lay one even stroke."
            )
        case _:
            assert_never(doubt)
