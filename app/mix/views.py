"""From a plan to what the Mix page shows: texts, colours and marks, without a widget."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from itertools import groupby
from typing import Literal

from core.colour.contrast import ink_on
from core.i18n import translate
from core.paint.alternatives import main_group
from core.paint.box import Box
from core.paint.catalogue import Group
from core.paint.compare import PaintCompared, compare_group
from core.paint.meeting import Meeting
from core.paint.mix import Mix, Triple
from core.paint.names import paint_name
from core.paint.options import BandChoice, MixOptions
from core.paint.plan import Transition
from core.paint.planned import BandMix, MixPlan, PlannedMix
from core.paint.shortfall import CLOSE_WITHIN, MATCHES_WITHIN
from core.paint.swatch import hexes_of_Lab, paint_colour
from core.paint.tone_down import Ladder
from core.paint.words_compare import compared_faults, compared_sensitivity
from core.paint.words_mix import (
    alternative_text,
    closest_text,
    listed,
    parts_text,
    reach_text,
    shortfall_text,
    strength_text,
    verdict_text,
    why_text,
)
from core.paint.words_plan import (
    drift_text,
    fraction_text,
    meeting_text,
    step_note_text,
)
from core.reading import read_colours
from core.words.names import family_name

VerdictKind = Literal["matches", "close", "off", "unknown"]
_VERDICTS: dict[str, VerdictKind] = {"matches": "matches", "close": "close", "far": "off"}


@dataclass(frozen=True)
class Part:
    """One paint of a mix: its parts, its name, its colour and black or white upon it."""

    key: str
    count: int
    name: str
    colour: str
    ink: str


@dataclass(frozen=True)
class BandView:
    """One band's row.

    Attributes
    ----------
    letter : str
    photo, paint : str or None
        The band's colour and its mix's; None where there is no sky.
    mix : str
        The mix in parts.
    second : str
        Strength, and in what it falls short.
    wishes : str
        What was pinned, left out or set by hand; empty for nothing.
    parts : tuple of Part
    verdict : VerdictKind
    verdict_word : str
    difference : str
        How close it comes, as a number.
    spoken : str
        The whole as sentences.
    """

    letter: str
    photo: str | None
    paint: str | None
    mix: str
    second: str
    wishes: str
    parts: tuple[Part, ...]
    verdict: VerdictKind
    verdict_word: str
    difference: str
    spoken: str


@dataclass(frozen=True)
class Offer:
    """Another mix: one to take instead, or one to avoid.

    Attributes
    ----------
    text : str
    mix : Mix or None
        To be taken at a press; None where it is one to avoid.
    """

    text: str
    mix: Mix | None


@dataclass(frozen=True)
class ToneStep:
    """One chip of the tone-down ladder in words; see `app.paint.mix_tone.ToneChip`."""

    colour: str
    fraction: str
    note: str
    drift: str
    framed: bool
    mud: bool


@dataclass(frozen=True)
class Compared:
    """One paint of a group in the band's mix, in words."""

    name: str
    colour: str
    mix: str
    verdict: VerdictKind
    verdict_word: str
    faults: str
    sensitivity: str
    used: bool


@dataclass(frozen=True)
class MeetingView:
    """Where two bands meet.

    Attributes
    ----------
    upper, lower : str
    text : str
    warns : bool
        It goes to mud, or to a hue the photo lacks.
    photo, paint : tuple of str
        Colours from the upper band to the lower.
    names : tuple of (share, str)
        The stretches of the paint's passage, by where they begin.
    """

    upper: str
    lower: str
    text: str
    warns: bool
    photo: tuple[str, ...]
    paint: tuple[str, ...]
    names: tuple[tuple[float, str], ...]


def parts_of_mix(box: Box, mix: Mix) -> tuple[Part, ...]:
    """The cells of a parts bar."""
    parts = []
    for key, count in mix.parts:
        paint = box.paint(key)
        colour = paint_colour(paint.measured_as)
        parts.append(Part(key, count, paint_name(paint), colour, ink_on(colour)))
    return tuple(parts)


def band_view(plan: MixPlan, band: BandMix, options: MixOptions) -> BandView:
    """A band's row."""
    photo = band.target.hex if band.target is not None else None
    chosen = band.classroom
    if chosen is None:
        nothing = translate("mix page", "No sky here")
        return BandView(band.letter, photo, None, nothing, "", "", (), "unknown", "", "", nothing)
    mix = (
        sentence_case(parts_text(plan.box, chosen.mix))
        if not chosen.mix.parts
        else (parts_text(plan.box, chosen.mix))
    )
    short = shortfall_text(chosen)
    second = strength_text(chosen.strength)
    if short:
        second = translate("mix page", "{strength}; {differences}").format(
            strength=second, differences=short
        )
    wishes = wishes_text(plan.box, options.choice(band.letter))
    verdict_word = verdict_text(chosen)
    spoken = translate("mix page", "Band {letter}: {mix}. {second}. {verdict}.").format(
        letter=band.letter, mix=mix, second=sentence_case(second), verdict=verdict_word
    )
    if wishes:
        spoken = f"{spoken} {wishes}."
    return BandView(
        band.letter,
        photo,
        chosen.mix.colour.hex,
        mix,
        second,
        wishes,
        parts_of_mix(plan.box, chosen.mix),
        _VERDICTS[chosen.verdict],
        verdict_word,
        translate(
            "mix page",
            "Colour difference {number:.1f} (CIEDE2000): up to {matches:g} it matches, up to "
            "{close:g} it is close.",
        ).format(number=chosen.delta_E_2000, matches=MATCHES_WITHIN, close=CLOSE_WITHIN),
        spoken,
    )


def wishes_text(box: Box, choice: BandChoice) -> str:
    """ "Pinned: ultramarine. Left out: crimson. Set by hand"; empty when nothing was asked."""
    pieces = []
    for keys, text in (
        (choice.pinned, translate("mix page", "pinned: {paints}")),
        (choice.forbidden, translate("mix page", "left out: {paints}")),
    ):
        names = [paint_name(box.paint(key)) for key in keys if key in box.by_key]
        if names:
            pieces.append(text.format(paints=listed(names)))
    if choice.parts is not None:
        pieces.append(translate("mix page", "set by hand"))
    return sentence_case("; ".join(pieces))


def about_text(plan: MixPlan, band: BandMix) -> str:
    """What is said of the chosen row's mix: strength, fit, reach, and why it is built so."""
    chosen = band.classroom
    if chosen is None:
        return ""
    short = shortfall_text(chosen)
    strength = sentence_case(strength_text(chosen.strength))
    if short:
        first = translate("mix page", "{strength}; {differences}.").format(
            strength=strength, differences=short
        )
    elif chosen.verdict == "matches":
        first = translate("mix page", "{strength}. Hue, value and intensity all match.").format(
            strength=strength
        )
    else:
        first = f"{strength}."
    pieces = [first, reach_text(band.reach), why_text(plan.box, chosen)]
    return " ".join(piece for piece in pieces if piece)


def offers(plan: MixPlan, band: BandMix) -> tuple[Offer, ...]:
    """The closest mix where it is clearly closer, then up to three alternatives."""
    chosen = band.classroom
    if chosen is None:
        return ()
    found = []
    closest = band.closest_to_show
    if closest is not None:
        found.append(Offer(closest_text(plan.box, closest), closest.mix))
    for item in band.alternatives:
        mix = item.planned.mix if item.prefer else None
        found.append(Offer(alternative_text(plan.box, chosen, item), mix))
    return tuple(found)


def tone_steps(box: Box, ladder: Ladder, letter: str) -> tuple[ToneStep, ...]:
    """The ladder's chips."""
    return tuple(
        ToneStep(
            step.colour.hex,
            fraction_text(box, ladder, step.fraction),
            step_note_text(step.note, letter),
            drift_text(step),
            number == ladder.matched,
            step.note == "mud",
        )
        for number, step in enumerate(ladder.steps)
    )


def group_to_compare(box: Box, band: BandMix) -> Group | None:
    """The group of paints whose choice matters for a band; None when the box has but one."""
    if band.classroom is None or band.target is None:
        return None
    group = main_group(box, band.classroom.mix)
    if group is None or sum(paint.group == group for paint in box.paints) < 2:
        return None
    return group


def compared(box: Box, band: BandMix, group: Group) -> tuple[Compared, ...]:
    """The paints of a group side by side, in the box's order so that they keep their places."""
    if band.classroom is None or band.target is None:
        return ()
    found = compare_group(box, group, band.target, band.classroom.mix)
    order = {key: place for place, key in enumerate(box.keys)}
    return tuple(
        _compared(box, item, band.classroom)
        for item in sorted(found, key=lambda item: order[item.paint])
    )


def _compared(box: Box, item: PaintCompared, chosen: PlannedMix) -> Compared:
    return Compared(
        paint_name(box.paint(item.paint)),
        item.mix.colour.hex,
        parts_text(box, item.mix),
        _VERDICTS[item.verdict],
        verdict_text_of(item.verdict),
        compared_faults(item),
        compared_sensitivity(item),
        item.paint in chosen.mix.keys,
    )


def verdict_text_of(verdict: str) -> str:
    """The word for a verdict."""
    return {
        "matches": translate("mix", "Matches"),
        "close": translate("mix", "Close"),
        "far": translate("mix", "Well off"),
    }[verdict]


def meeting_view(
    band: BandMix, below: BandMix, transition: Transition | None
) -> MeetingView | None:
    """Where a band meets the one below it; None where one of them has no mix."""
    meeting = band.meets_below
    if meeting is None:
        return None
    return MeetingView(
        band.letter,
        below.letter,
        meeting_text(band.letter, below.letter, meeting),
        meeting.note in ("mud", "photo lacks it"),
        hexes_of_Lab(tuple(transition or ())),
        hexes_of_Lab(meeting.path),
        stretches(meeting),
    )


def stretches(meeting: Meeting) -> tuple[tuple[float, str], ...]:
    """The names a wet edge passes through, each with the share of the way where it begins."""
    families = _families(meeting.path)
    found, at = [], 0
    for family, run in groupby(families):
        name = translate("mix page", "near neutral") if family is None else family_name(family)
        found.append((at / len(families), name))
        at += len(list(run))
    return tuple(found)


@lru_cache(maxsize=128)
def _families(path: tuple[Triple, ...]) -> tuple[str | None, ...]:
    return tuple(colour.hue.family for colour in read_colours(path))


def sentence_case(text: str) -> str:
    """The text with a capital first letter."""
    return text[:1].upper() + text[1:]
