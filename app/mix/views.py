"""From a plan to the rows of the Mix page: texts, colours and marks, without a widget."""

from __future__ import annotations

from dataclasses import dataclass, replace

from core.colour.contrast import ink_on
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.mixture.mix import Mix
from core.paint.mixture.shortfall import CLOSE_WITHIN, MATCHES_WITHIN
from core.paint.mixture.swatch import paint_colour
from core.paint.options import BandChoice, MixOptions
from core.paint.planned import BandMix, MixPlan
from core.paint.words.mix import (
    alternative_text,
    band_reach_text,
    closest_text,
    parts_text,
    shortfall_text,
    strength_text,
    why_text,
)
from core.paint.words.own import own_paints_short, own_paints_text
from core.reading.quality import Verdict
from core.words.lists import listed, sentence_case
from core.words.verdicts import verdict_word


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
    verdict : Verdict
    verdict_word : str
    difference : str
        How close it comes, as a number.
    spoken : str
        The whole as sentences.
    asked : str
        What was pinned or left out: an open row says in a sentence that it was set by hand.
    """

    letter: str
    photo: str | None
    paint: str | None
    mix: str
    second: str
    wishes: str
    parts: tuple[Part, ...]
    verdict: Verdict
    verdict_word: str
    difference: str
    spoken: str
    asked: str = ""


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


def parts_of_mix(box: Box, mix: Mix) -> tuple[Part, ...]:
    """The cells of a parts bar."""
    parts = []
    for key, count in mix.parts:
        paint = box.paint(key)
        colour = paint_colour(paint)
        parts.append(Part(key, count, paint_name(paint), colour, ink_on(colour)))
    return tuple(parts)


def band_view(plan: MixPlan, band: BandMix, options: MixOptions) -> BandView:
    """A band's row."""
    photo = band.target.hex if band.target is not None else None
    chosen = band.classroom
    if chosen is None:
        nothing = translate("mix page", "No sky here")
        return BandView(
            band.letter, photo, None, nothing, "", "", (), "cannot tell", "", "", nothing
        )
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
    trust = own_paints_short(plan.box, chosen.mix)
    if trust:
        second = translate("mix page", "{strength}; {differences}").format(
            strength=second, differences=trust
        )
    wishes = wishes_text(plan.box, options.choice(band.letter))
    verdict = verdict_word(chosen.verdict)
    spoken = translate("mix page", "Band {letter}: {mix}. {second}. {verdict}.").format(
        letter=band.letter, mix=mix, second=sentence_case(second), verdict=verdict
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
        chosen.verdict,
        verdict,
        translate(
            "mix page",
            "Colour difference {number:.1f} (CIEDE2000): up to {matches:g} it matches, up to "
            "{close:g} it is close.",
        ).format(number=chosen.delta_E_2000, matches=MATCHES_WITHIN, close=CLOSE_WITHIN),
        spoken,
        wishes_text(plan.box, replace(options.choice(band.letter), parts=None)),
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
    """The one line said of the chosen row's mix: strength and fit, and what the box lacks."""
    chosen = band.classroom
    if chosen is None:
        return ""
    short = "" if chosen.lacks else shortfall_text(chosen)  # said whole by the sentence of reach
    strength = sentence_case(strength_text(chosen.strength))
    first = f"{strength}."
    if short:
        first = translate("mix page", "{strength}; {differences}.").format(
            strength=strength, differences=short
        )
    reach = band_reach_text(band) if chosen.lacks else ""
    return " ".join(filter(None, (first, reach, own_paints_text(plan.box, chosen.mix))))


def why_sentences(plan: MixPlan, band: BandMix) -> tuple[str, ...]:
    """Why the mix is built so, and whether the box reaches the colour; for who asks."""
    chosen = band.classroom
    if chosen is None:
        return ()
    reach = "" if chosen.lacks else band_reach_text(band)
    pieces = [why_text(plan.box, chosen), reach]
    if chosen.verdict == "matches":
        pieces.append(translate("mix page", "Hue, value and intensity all match."))
    return tuple(piece for piece in pieces if piece)


def first_to_open(plan: MixPlan) -> int:
    """The band most in need of toning down: the largest share of toner; the first of equals."""
    shares = [
        band.classroom.toner_share if band.classroom is not None else 0 for band in plan.bands
    ]
    return shares.index(max(shares)) if shares else 0


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
