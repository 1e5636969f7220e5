"""A read card in words: what each field is, what to do about it, how well a paint is known."""

from __future__ import annotations

from typing import assert_never

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.box.swatch_card import SwatchCard
from core.paint.own.doubts import Doubt
from core.paint.pigment.paint import Paint
from core.paint.words.own import trust_word
from core.swatches.asking import partner_name
from core.swatches.fields import FieldReading, FieldWord
from core.swatches.fitting import CardFit
from core.words.lists import sentence_case


def field_word(word: FieldWord) -> str:
    """What a field is, beside its outline."""
    match word:
        case "read":
            return translate("swatches", "read")
        case "bare":
            return translate("swatches", "bare")
        case "shines":
            return translate("swatches", "shines")
        case "over the edge":
            return translate("swatches", "over the edge")
        case "too dark":
            return translate("swatches", "too dark")
        case "hard shadow":
            return translate("swatches", "hard shadow")
        case "check":
            return translate("swatches", "check")
        case "left out":
            return translate("swatches", "left out")
        case _:
            assert_never(word)


def field_name(card: SwatchCard, row: int, field: int, box: Box) -> str:
    """ "sky blue alone", "sky blue with ultramarine"."""
    name = card.rows[row].name
    if field == 0:
        return translate("swatches", "{paint} alone").format(paint=name)
    partner = partner_name(card.rows[row].partners[field - 1], card, box)
    return translate("swatches", "{paint} with {partner}").format(paint=name, partner=partner)


def field_sentence(card: SwatchCard, one: FieldReading, box: Box) -> str:
    """What is wrong with a field and what to do about it; "" for one that is right."""
    where = sentence_case(field_name(card, one.row, one.field, box))
    match one.word:
        case "read" | "left out" | "check":
            return ""
        case "bare":
            text = translate(
                "swatches",
                "{field}: Nothing is painted there, or the stroke is too short: paint it, or go on "
                "without it.",
            )
        case "shines":
            text = translate(
                "swatches",
                "{field}: It shines, or is wet: photograph it dry, with the light from the side.",
            )
        case "over the edge":
            text = translate(
                "swatches",
                "{field}: Paint went over the edge, where the paper is read: the field is left "
                "out.",
            )
        case "too dark":
            text = translate(
                "swatches",
                "{field}: Its palest end is dark: draw it out with water, and more will be known.",
            )
        case "hard shadow":
            text = translate(
                "swatches",
                "{field}: A shadow's edge lies across it: lay the card in even light and "
                "photograph it again.",
            )
        case _:
            assert_never(one.word)
    return text.format(field=where)


def doubt_sentence(card: SwatchCard, doubt: Doubt, box: Box) -> str:
    """A question about a field that does not fit with the rest."""
    row = next(number for number, one in enumerate(card.rows) if one.key == doubt.paint)
    name = card.rows[row].name
    match doubt.kind:
        case "swapped":
            text = translate(
                "swatches",
                "Were the two mixes of {paint} changed about? Both are left out until you say "
                "they are right.",
            )
            return text.format(paint=name)
        case "wrong paint":
            text = translate(
                "swatches",
                "Is this {paint}? Alone it does not look like the paint in its mixes; the field is "
                "left out until you say it is right.",
            )
            return text.format(paint=name)
        case "wrong partner":
            partner = partner_name(card.rows[row].partners[doubt.field - 1], card, box)
            text = translate(
                "swatches",
                "Is this {partner} that {paint} was mixed with? The field is left out until you "
                "say it is right.",
            )
            return text.format(partner=partner, paint=name)
        case _:
            assert_never(doubt.kind)


def fit_sentences(fit: CardFit, box: Box) -> tuple[str, ...]:
    """All that is to be said of a card: questions first, then what is wrong with fields."""
    asked = [doubt_sentence(fit.card, doubt, box) for doubt in fit.doubts]
    rows = len(fit.card.rows)
    wrong = [field_sentence(fit.card, one, box) for one in fit.reading.fields if one.row < rows]
    unread = [
        translate("swatches", "Nothing of {paint} could be read: it stays as it is.").format(
            paint=row.name
        )
        for row in fit.card.rows
        if row.key not in {paint.key for paint in fit.paints}
    ]
    return (*asked, *filter(None, wrong), *unread)


def paint_sentence(paint: Paint) -> str:
    """ "Sky blue: known well"."""
    if paint.card is None:
        return ""
    return translate("swatches", "{paint}: {trust}").format(
        paint=sentence_case(paint_name(paint)), trust=trust_word(paint.card.trust)
    )


def not_found() -> str:
    """Where the marks are not found, on the command line."""
    return translate(
        "swatches",
        "No swatch card was found in this picture: let all four black marks be seen, from straight "
        "above and sharp.",
    )


def another_card() -> str:
    """Where the code is of a card that the box does not know."""
    return translate(
        "swatches",
        "This is a card of other paints: it was not printed for this box. Choose the box it was "
        "printed for.",
    )
