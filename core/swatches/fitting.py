"""A read card becomes paints, and the paints go into a box."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from core.errors import SwatchCardError
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.box.own_paint import paint_of_card
from core.paint.box.swatch_card import SwatchCard
from core.paint.own.doubts import Doubt, doubts_of
from core.paint.own.fit import PaintedField, fit_card
from core.paint.pigment.card_paint import Light
from core.paint.pigment.catalogue import CATALOGUE
from core.paint.pigment.paint import Paint
from core.paint.pigment.pigments import Pigments
from core.progress import Progress, ShouldStop, step
from core.swatches.fields import FieldReading
from core.swatches.read import CardReading


@dataclass(frozen=True)
class CardFit:
    """A card read and fitted.

    Attributes
    ----------
    card : SwatchCard
    reading : CardReading
        Fields that are doubted say "check", and were not used.
    light : Light
    paints : tuple of Paint
        Those that could be fitted, in the order of the rows.
    doubts : tuple of Doubt
    """

    card: SwatchCard
    reading: CardReading
    light: Light
    paints: tuple[Paint, ...]
    doubts: tuple[Doubt, ...]


def fit_reading(
    card: SwatchCard,
    reading: CardReading,
    box: Box,
    light: Light,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
    trusted: frozenset[tuple[int, int]] = frozenset(),
) -> CardFit:
    """Fit a card's paints; fields that do not fit with the rest are left out until confirmed.

    Parameters
    ----------
    card : SwatchCard
    reading : CardReading
    box : Box
        Partners that are not on the card are its paints.
    light : Light
        What the picture was taken by.
    progress, should_stop : callable, optional
    trusted : frozenset of (row, field)
        Fields that somebody says are right.

    Raises
    ------
    SwatchCardError
        No paint of the card can be fitted.
    Cancelled
        `should_stop` answered True.
    """
    stored = box.pigments
    before = _page_before(card, box)
    if before is not None:
        raise SwatchCardError(
            translate(
                "swatches",
                "Read page {number} of this card first: the paints of this page are mixed with "
                "those of that one.",
            ).format(number=before)
        )
    fields = _painted(card, reading, box, stored)
    if not fields:
        raise SwatchCardError(
            translate(
                "swatches",
                "Nothing is painted on this card, or nothing of it can be read: paint a stroke in "
                "every field, and photograph it dry.",
            )
        )
    fitted = fit_card(fields, stored, light, should_stop)
    step(0.6, progress, should_stop)
    row_of = {row.key: number for number, row in enumerate(card.rows)}
    doubts = tuple(
        doubt
        for doubt in doubts_of(fitted, stored, light, should_stop)
        if (row_of[doubt.paint], doubt.field) not in trusted
    )
    doubted = {place for doubt in doubts for place in _places(doubt, row_of)}
    if doubted:
        reading = _with_word(reading, doubted)
        left = [f for f in fields if (row_of[f.paint], f.field) not in doubted]
        if left:
            fitted = fit_card(left, stored, light, should_stop)
    step(0.95, progress, should_stop)
    by_key = {row.key: row for row in card.rows}
    paints = tuple(
        paint_of_card(by_key[key].name, by_key[key].like, found)
        for key, found in fitted.cards.items()
    )
    return CardFit(card, reading, light, paints, doubts)


def into_box(box: Box, fit: CardFit) -> Box:
    """The box with a card's paints: each takes the place of what bore its name."""
    paints = list(box.paints)
    for new in fit.paints:
        same = next((n for n, old in enumerate(paints) if _same_tube(old, new)), None)
        if same is None:
            paints.append(new)
        else:
            paints[same] = new
    cards = tuple(card for card in box.cards if card.code != fit.card.code)
    return replace(box, paints=tuple(paints), cards=(*cards, fit.card))


def _same_tube(old: Paint, new: Paint) -> bool:
    names = (old.name.casefold(), paint_name(old).casefold())
    return old.key == new.key or new.name.casefold() in names


def _painted(
    card: SwatchCard, reading: CardReading, box: Box, stored: Pigments
) -> list[PaintedField]:
    on_card = {row.key for row in card.rows}
    usable = {(one.row, one.field): one for one in reading.fields if one.used}
    # A row of which nothing can be read is no partner either.
    present = {card.rows[row].key for row, _ in usable if row < len(card.rows)}
    fields = []
    for (row, field), one in sorted(usable.items()):
        if row >= len(card.rows):
            continue
        partner = ""
        if field:
            wanted = card.rows[row].partners[field - 1]
            if wanted in on_card and wanted in present:
                partner = wanted
            else:
                partner = _stored(wanted, box, stored)
            if not partner or partner == card.rows[row].key:
                continue
        fields.append(PaintedField(card.rows[row].key, field, partner, one.Lab))
    return fields


def _page_before(card: SwatchCard, box: Box) -> int | None:
    """The page whose paints are partners here and are not in the box yet, from 1."""
    own = {row.key for row in card.rows}
    for row in card.rows:
        for key in row.partners:
            if key in own or key in box.by_key:
                continue
            for number, other in enumerate(box.cards, start=1):
                if other.code != card.code and any(one.key == key for one in other.rows):
                    return number
    return None


def _stored(key: str, box: Box, stored: Pigments) -> str:
    """The row of the stored pigments that a partner is; "" where nobody knows it."""
    paint = box.by_key.get(key) or CATALOGUE.get(key)
    return paint.pigment if paint is not None and paint.pigment in stored.keys else ""


def _places(doubt: Doubt, row_of: Mapping[str, int]) -> list[tuple[int, int]]:
    row = row_of[doubt.paint]
    return [(row, 1), (row, 2)] if doubt.kind == "swapped" else [(row, doubt.field)]


def _with_word(reading: CardReading, doubted: set[tuple[int, int]]) -> CardReading:
    def said(one: FieldReading) -> FieldReading:
        return replace(one, word="check") if (one.row, one.field) in doubted else one

    return replace(reading, fields=tuple(map(said, reading.fields)))
