"""From what lies on the desk to what the stage of scraps shows."""

from __future__ import annotations

from app.drawing.mix.scrap import ScrapPictureView, StrokeMark, TryChip
from app.mix.scrap_desk import ScrapDesk
from app.mix.scrap_shown import ScrapStageView
from core.i18n import translate
from core.paint.planned import MixPlan
from core.reading.reading import read_colour
from core.reading.wording import Wording
from core.scrap.held import Held
from core.scrap.kept import tries_of
from core.scrap.words import (
    advice_sentences,
    against_sentence,
    doubt_text,
    dry_note,
    same_puddle_sentence,
    stroke_sentence,
    teach_question,
)
from core.words.names import hue_short

MOST_TRIES = 3
"""Of a band's kept scraps, so many are shown: the last ones."""


def scrap_view(
    desk: ScrapDesk, plan: MixPlan, open_letter: str, wording: Wording, *, busy: bool
) -> ScrapStageView:
    """The desk as the stage shows it, in the row of a band.

    Parameters
    ----------
    busy : bool
        A picture is being read, and has been for a while.
    """
    here = desk.on_desk
    letter = here.letter or open_letter
    letters = tuple(band.letter for band in plan.bands if band.target is not None)
    kept = tries_of(desk.kept, letter)
    take_out = ""
    if kept:
        take_out = translate("mix page", "Take out the last scrap of {letter}").format(
            letter=letter
        )
    title = translate("mix page", "Paint a stroke of the mix on white paper, and let it dry")
    chips = _chips(desk, plan, letter)
    if here.read is None:
        words = translate(
            "mix page",
            "Drop or paste a photo of it here, white paper all around. Two strokes of one mix, the "
            "second thinner, tell more than one: give both the same letter. {dry}",
        ).format(dry=dry_note())
        if busy:
            words = translate("mix page", "Looking for the strokes.")
        return ScrapStageView(
            title, "", words, chips=chips, letters=letters, busy=busy, take_out=take_out
        )
    marks = tuple(
        StrokeMark(mark.stroke.region, mark.letter, number == here.chosen)
        for number, mark in enumerate(here.strokes)
    )
    if not here.strokes:
        words = translate(
            "mix page", "No stroke was found: draw a box over one, or choose another picture."
        )
        said = translate("mix page", "The scrap: no stroke found")
        picture = ScrapPictureView(here.read.image)
        return ScrapStageView(
            title, "", words, picture, said, chips, letters=letters, busy=busy, take_out=take_out
        )
    held = here.held_now
    title = translate("mix page", "Stroke {number} of {count}, for band {letter}").format(
        number=here.chosen + 1, count=len(here.strokes), letter=letter
    )
    lead, words = translate("mix page", "Working out what to add."), ""
    if held is not None:
        lead, words = _words(desk, plan, held, wording)
    return ScrapStageView(
        title,
        lead,
        words,
        ScrapPictureView(here.read.image, marks),
        title,
        chips,
        letter,
        letters,
        busy,
        desk.mixed_before(letter),
        letter in here.fresh,
        desk.keeps and held is not None and held.advice is not None,
        take_out,
        "" if held is None or held.lesson is None else teach_question(plan.box, held.lesson),
    )


def _words(desk: ScrapDesk, plan: MixPlan, held: Held, wording: Wording) -> tuple[str, str]:
    """What to do, and what the stroke is."""
    stroke = desk.on_desk.strokes[desk.on_desk.chosen].stroke
    number = held.strokes.index(stroke) if stroke in held.strokes else 0
    check = held.checks[number]
    said = [stroke_sentence(check, wording), against_sentence(held.letter, check)]
    doubts = [doubt_text(doubt) for doubt in held.strokes[number].doubts]
    lead, *rest = advice_sentences(held, plan.box, wording)
    if held.added:
        rest.insert(0, same_puddle_sentence(plan.box, held.added))
    where = ""
    if not desk.keeps:
        where = translate(
            "mix page",
            "It is looked at and not kept: what you see is the study of a student of the class, "
            "and scraps are kept in a study of your own.",
        )
    lines = (" ".join(rest), " ".join(said), " ".join([*doubts, dry_note()]), where)
    return lead, "\n".join(line for line in lines if line)


def _chips(desk: ScrapDesk, plan: MixPlan, letter: str) -> tuple[TryChip, ...]:
    """The band, its tries, the stroke looked at, and what should come of the addition."""
    target = plan.band(letter).target
    here, held = desk.on_desk, desk.on_desk.held_now
    kept = tries_of(desk.kept, letter)
    if target is None or (not kept and held is None):
        return ()
    chips = [
        TryChip(
            target.hex, translate("mix page", "Band {letter}").format(letter=letter),
            hue_short(target.hue),
        )
    ]  # fmt: skip
    for number, scrap in list(enumerate(kept, 1))[-MOST_TRIES:]:
        colour = read_colour(scrap.Lab)
        name = translate("mix page", "Try {number}").format(number=number)
        chips.append(TryChip(colour.hex, name, hue_short(colour.hue)))
    if held is not None:
        colour = read_colour(here.strokes[here.chosen].stroke.Lab)
        name = translate("mix page", "This stroke")
        chips.append(TryChip(colour.hex, name, hue_short(colour.hue)))
        advice = held.advice
        if advice is not None and advice.deed in ("add", "water", "stronger"):
            come = read_colour(advice.addition.Lab)
            name = translate("mix page", "Should come")
            chips.append(TryChip(come.hex, name, hue_short(come.hue)))
    return tuple(chips)
