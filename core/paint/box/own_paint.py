"""Paints a teacher named: standing in for what they behave like, or known from a swatch card."""

from __future__ import annotations

from dataclasses import replace

from core.errors import BoxError
from core.file_sentences import clean_text
from core.i18n import translate
from core.paint.box.swatch_card import own_key
from core.paint.pigment.card_paint import CardPaint
from core.paint.pigment.catalogue import CATALOGUE, Paint
from core.paint.pigment.leaning import group_of, lean_of

MAX_NAME = 80


def own_paint(name: str, like: str) -> Paint:
    """A paint the teacher named, behaving like a known one.

    Parameters
    ----------
    name : str
    like : str
        Key of a paint in the catalogue.

    Raises
    ------
    BoxError
        `like` is not known, or the name is empty or too long.
    """
    if like not in CATALOGUE:
        raise BoxError(
            translate(
                "box", "Nobody measured {paint}: name a paint of the list that it behaves like."
            ).format(paint=clean_text(like))
        )
    name = clean_text(name.strip())
    if not name or len(name) > MAX_NAME:
        raise BoxError(translate("box", "A paint needs a name of 1 to 80 letters."))
    return replace(CATALOGUE[like], key=own_key(name), name=name, colour_index=())


def paint_of_card(name: str, like: str, card: CardPaint) -> Paint:
    """The same, known from a swatch card: its group and leaning are those of its colour.

    Raises
    ------
    BoxError
        As `own_paint`.
    """
    group = group_of(card)
    return replace(own_paint(name, like), card=card, group=group, leans=lean_of(card, group))
