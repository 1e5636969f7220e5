"""From a picture of a painted card to the readings of its fields."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.colour.srgb import srgb8_to_linear
from core.errors import SwatchCardError
from core.i18n import translate
from core.paint.box.swatch_card import ROWS, SwatchCard
from core.progress import Progress, ShouldStop, step
from core.swatches.code import read_card_code
from core.swatches.fields import FieldReading, read_field, strips_of
from core.swatches.layout import MARKS, Floats, corners_of, field_rect
from core.swatches.marks import ACCEPT, find_marks, grey_of, likeness, refined
from core.swatches.projective import card_map, through

Corners = tuple[tuple[float, float], ...]
"""Four places as shares of a picture's width and height."""

OVEREXPOSED = 0.02
"""Share of the paper beside the fields that may be as white as a picture can be."""

BEYOND_MARKS = 0.17
"""How far the paper goes on beyond its marks, as a share of their distance."""

_REFINED_MM = 4.0


@dataclass(frozen=True)
class CardReading:
    """What a picture shows of a card.

    Attributes
    ----------
    corners : tuple of four (x, y)
        Centres of the marks, clockwise from the card's top left, as shares of the picture.
    code : str or None
        What its QR code says; None where it was not read.
    fields : tuple of FieldReading
        Row by row.
    """

    corners: Corners
    code: str | None
    fields: tuple[FieldReading, ...]


def find_card(
    pixels: NDArray[np.uint8], should_stop: ShouldStop | None = None
) -> tuple[Corners | None, str | None]:
    """Where a card is in a picture, (h, w, 3) uint8, and its code; None for what is not found."""
    grey = grey_of(pixels)
    quad = find_marks(grey, should_stop)
    step(0.3, None, should_stop)
    code = read_card_code(grey, quad)
    return (None if quad is None else _as_shares(quad, pixels)), code


def shows_card(pixels: NDArray[np.uint8], should_stop: ShouldStop | None = None) -> bool:
    """Whether a picture, (h, w, 3) uint8, shows a swatch card's four marks."""
    return find_marks(grey_of(pixels), should_stop) is not None


def read_card(
    pixels: NDArray[np.uint8],
    corners: Corners,
    rows: int = ROWS,
    code: str | None = None,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> CardReading:
    """Read the fields of a card that was found.

    Parameters
    ----------
    pixels : ndarray, shape (h, w, 3), uint8
        Encoded sRGB.
    corners : tuple of four (x, y)
        Centres of its marks; by hand is near enough.
    rows : int
        How many rows the card has.
    code : str, optional
        As it was read.
    progress, should_stop : callable, optional

    Raises
    ------
    SwatchCardError
        The corners make no rectangle, or the picture is over-exposed.
    Cancelled
        `should_stop` answered True.
    """
    quad = np.array(corners) * [pixels.shape[1], pixels.shape[0]] - 0.5
    H = _map_of(quad)
    grey = grey_of(pixels)
    better: Floats = refined(grey, quad)
    moved = np.linalg.norm(
        through(np.asarray(np.linalg.inv(H), dtype=np.float64), better) - MARKS, axis=1
    )
    # Where a mark is hidden, what was set by hand is not moved after something else.
    if moved.max() < _REFINED_MM and likeness(grey, better) >= ACCEPT:
        quad, H = better, _map_of(better)
    linear = srgb8_to_linear(pixels)
    strips = []
    for row in range(rows):
        step(0.3 + 0.6 * row / rows, progress, should_stop)
        strips += [strips_of(linear, H, row, field) for field in range(3)]
    if np.mean([strip.clipped for strip in strips]) > OVEREXPOSED:
        raise SwatchCardError(
            translate(
                "swatches",
                "The paper is over-exposed in this picture: photograph the card a little darker, "
                "or scan it.",
            )
        )
    tint = np.median([strip.tint for strip in strips], axis=0)
    fields = tuple(read_field(strip, tint) for strip in strips)
    return CardReading(_as_shares(quad, pixels), code, fields)


def turned_upright(
    pixels: NDArray[np.uint8], corners: Corners
) -> tuple[NDArray[np.uint8], Corners]:
    """A picture and its card's corners, by quarters so that the card's top is above."""
    for _ in range(4):
        height, width = pixels.shape[:2]
        along = (np.array(corners[1]) - np.array(corners[0])) * [width, height]
        if along[0] >= abs(along[1]):
            break
        pixels = np.ascontiguousarray(np.rot90(pixels))
        corners = tuple((y, 1 - x) for x, y in corners)
    return pixels, corners


def cut_to_card(pixels: NDArray[np.uint8], corners: Corners) -> tuple[NDArray[np.uint8], Corners]:
    """A picture and its card's corners, with little more than the card."""
    height, width = pixels.shape[:2]
    places = np.array(corners) * [width, height]
    margin = BEYOND_MARKS * np.ptp(places, axis=0)
    low = np.maximum(np.floor(places.min(axis=0) - margin), 0).astype(int)
    high = np.minimum(np.ceil(places.max(axis=0) + margin), [width, height]).astype(int)
    cut = np.ascontiguousarray(pixels[low[1] : high[1], low[0] : high[0]])
    moved = (places - low) / (high - low)
    return cut, tuple((float(x), float(y)) for x, y in moved)


def outlines(corners: Corners, rows: int, width: int, height: int) -> tuple[Corners, ...]:
    """The four corners of every field, as shares of a picture of this size; row by row."""
    H = _map_of(np.array(corners) * [width, height] - 0.5)
    found = []
    for row in range(rows):
        for field in range(3):
            quad = (through(H, corners_of(field_rect(row, field))) + 0.5) / [width, height]
            found.append(tuple((float(x), float(y)) for x, y in quad))
    return tuple(found)


def with_field_left_out(reading: CardReading, row: int, field: int) -> CardReading:
    """The same with one field left out, or taken in again."""
    fields = []
    for one in reading.fields:
        if (one.row, one.field) == (row, field) and one.Lab:
            one = replace(one, word="read" if one.word == "left out" else "left out")
        fields.append(one)
    return replace(reading, fields=tuple(fields))


def card_of_code(cards: tuple[SwatchCard, ...], code: str | None) -> SwatchCard | None:
    """The card of a box that has this code; the only card where no code was read."""
    if code is None:
        return cards[0] if len(cards) == 1 else None
    return next((card for card in cards if card.code == code), None)


def _map_of(quad: Floats) -> Floats:
    sides = np.roll(quad, -1, axis=0) - quad
    after = np.roll(sides, -1, axis=0)
    turns = sides[:, 0] * after[:, 1] - sides[:, 1] * after[:, 0]
    if not np.isfinite(quad).all() or turns.min() <= 100:
        raise SwatchCardError(
            translate(
                "swatches",
                "These corners make no card: place them clockwise on the middles of its four "
                "black marks, the top left one first.",
            )
        )
    return card_map(MARKS, quad)


def _as_shares(quad: Floats, pixels: NDArray[np.uint8]) -> Corners:
    shares = (quad + 0.5) / [pixels.shape[1], pixels.shape[0]]
    return tuple((float(x), float(y)) for x, y in shares)
