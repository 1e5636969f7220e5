"""Which paints go on a card, and which partners each is mixed with."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from core.errors import SwatchCardError
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.box.own_paint import own_paint
from core.paint.box.swatch_card import ROWS, SwatchCard, SwatchRow, card_of, own_key
from core.paint.pigment.catalogue import CATALOGUE

Asked = tuple[str, str]
"""A paint's name, and the key of the paint it behaves like."""

MOST_PAINTS = 24

_ROLES: tuple[tuple[str, ...], ...] = (
    ("ultramarine", "cobalt_blue", "cerulean_blue", "prussian_blue"),
    ("cadmium_yellow", "lemon_yellow", "raw_sienna"),
    ("alizarin_crimson", "cadmium_red"),
)
"""Partners by what they are like: a blue, a yellow, and a red for the partners themselves. Which
ones hardly matters; ultramarine with a mid yellow came out a little ahead."""

_LIKE_WORDS: tuple[tuple[str, str], ...] = (
    (r"lemon|lim[oó]n|primrose", "lemon_yellow"),
    (r"ochre|ocre|raw sienna|siena natural|gold|oro", "yellow_ochre"),
    (r"yellow|amarillo|gamboge", "mid_yellow"),
    (r"orange|naranja", "warm_red"),
    (
        r"crimson|carm[ií]n|rose|rosa|magenta|madder|purple|violet|morado|mauve|pink",
        "crimson",
    ),
    (r"burnt|tostad|umber|sombra|brown|marr[oó]n|sienna|siena|sepia", "burnt_sienna"),
    (r"red|rojo|vermil|scarlet|bermell[oó]n|escarlata", "warm_red"),
    (r"green|verde|viridian|olive|oliva", "sap_green"),
    (
        r"sky|celeste|cielo|cerulean|cer[uú]leo|turquoise|turquesa|light blue|azul claro|cyan|cian",
        "cerulean_blue",
    ),
    (
        r"prussian|prusia|phthalo|ftalo|dark blue|azul oscuro|navy|marino|indigo|[ií]ndigo",
        "prussian_blue",
    ),
    (r"cobalt", "cobalt_blue"),
    (r"blue|azul|ultramar", "ultramarine"),
    (r"black|negro|payne|grey|gray|gris", "black"),
    (r"white|blanco", "white"),
)


def proposed_like(name: str) -> str:
    """The catalogue's paint that a paint of this name most likely behaves like.

    >>> proposed_like("Sky blue"), proposed_like("azul marino")
    ('cerulean_blue', 'prussian_blue')
    """
    plain = name.casefold().strip()
    for paint in CATALOGUE.values():
        if plain in (paint.name, paint_name(paint).casefold()):
            return paint.key
    for words, key in _LIKE_WORDS:
        if re.search(words, plain):
            return key
    return "ultramarine"


def paints_of_box(box: Box) -> tuple[Asked, ...]:
    """The paints of a box that a card can tell of, as a class would paint them: all but whites."""
    return tuple(
        (paint.name if paint.key not in CATALOGUE else paint_name(paint), _like(paint.key, box))
        for paint in box.paints
        if paint.group != "white"
    )


def cards_for(asked: Sequence[Asked], box: Box) -> tuple[SwatchCard, ...]:
    """The pages of a card for some paints.

    Parameters
    ----------
    asked : sequence of (name, like)
        The class's ultramarine, mid yellow and crimson come first on the card, if they are among
        them: the others are mixed with these.
    box : Box
        Partners that are not asked for are its paints, those known from a card first.

    Raises
    ------
    SwatchCardError
        No paint, too many, or one twice.
    BoxError
        A name or a like paint cannot be used.
    """
    if not asked:
        raise SwatchCardError(
            translate("swatches", "A swatch card needs at least one paint: type its name.")
        )
    if len(asked) > MOST_PAINTS:
        raise SwatchCardError(
            translate("swatches", "A swatch card takes up to 24 paints: leave some out.")
        )
    paints = [own_paint(name, like) for name, like in asked]
    keys = [paint.key for paint in paints]
    twice = next((paint.name for paint in paints if keys.count(paint.key) > 1), None)
    if twice is not None:
        raise SwatchCardError(
            translate("swatches", "{paint} stands twice on the card: keep one.").format(paint=twice)
        )
    likes = {paint.key: paint.measured_as for paint in paints}
    roles = tuple(_partner(role, likes, box) for role in _ROLES)
    order = sorted(paints, key=lambda paint: roles.index(paint.key) if paint.key in roles else 3)
    rows = [
        SwatchRow(paint.name, _like_key(paint.key, asked), _partners(paint.key, roles))
        for paint in order
    ]
    return tuple(card_of(rows[start : start + ROWS]) for start in range(0, len(rows), ROWS))


def box_with_cards(box: Box, cards: Sequence[SwatchCard]) -> Box:
    """The box, with cards that were printed for it."""
    new = {card.code for card in cards}
    return replace(box, cards=(*(card for card in box.cards if card.code not in new), *cards))


def cards_of_box(box: Box) -> tuple[SwatchCard, ...]:
    """The cards that were printed for a box; else the one it would print of all its paints."""
    return box.cards or cards_for(paints_of_box(box)[:MOST_PAINTS], box)


def partner_name(key: str, card: SwatchCard, box: Box) -> str:
    """What a partner is called on a card."""
    named = next((row.name for row in card.rows if row.key == key), None)
    if named is not None:
        return named
    paint = box.by_key.get(key) or CATALOGUE.get(key)
    return key.removeprefix("own_").replace("_", " ") if paint is None else paint_name(paint)


def _like(key: str, box: Box) -> str:
    paint = box.by_key[key]
    return key if key in CATALOGUE else paint.measured_as


def _like_key(key: str, asked: Sequence[Asked]) -> str:
    return next(like for name, like in asked if own_key(name.strip()) == key)


def _partner(role: Sequence[str], likes: dict[str, str], box: Box) -> str:
    """Who plays a partner: of the card, of the box's own, of the box, else a measured paint."""
    own = {paint.key: paint.measured_as for paint in box.paints if paint.card is not None}
    rest = {paint.key: paint.measured_as for paint in box.paints if paint.card is None}
    for like in role:
        for known in (likes, own, rest):
            for key, measured_as in known.items():
                if measured_as == like:
                    return key
    return role[0]


def _partners(key: str, roles: Sequence[str]) -> tuple[str, str]:
    blue, yellow, red = roles
    if key == blue:
        return red, yellow
    return (blue, red) if key == yellow else (blue, yellow)
