"""What is done for a swatch card in a worker: its picture, its fields, its paints, its pages."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from PySide6.QtGui import QImage

from app.cards.paper import Paper
from app.cards.pdf import pdf_of
from app.cards.swatches import card_title, lay_out_swatches
from app.drawing.pyramid import image_of
from app.state.tasks import Work
from core.cards.file import write_card
from core.errors import SwatchCardError
from core.file_sentences import shown_name
from core.paint.box.box import Box
from core.paint.box.swatch_card import SwatchCard
from core.paint.pigment.card_paint import Light
from core.photo import open_photo
from core.progress import Progress, ShouldStop, step
from core.swatches.fitting import CardFit, fit_reading
from core.swatches.read import (
    CardReading,
    Corners,
    cut_to_card,
    find_card,
    read_card,
    turned_upright,
    with_field_left_out,
)

Place = tuple[int, int]
"""Row and field."""


@dataclass(frozen=True, eq=False)
class FoundCard:
    """A picture, and where a card is in it.

    Attributes
    ----------
    pixels : ndarray, shape (h, w, 3), uint8
    image : QImage
    corners : Corners or None
    code : str or None
    """

    pixels: NDArray[np.uint8]
    image: QImage
    corners: Corners | None
    code: str | None


@dataclass(frozen=True)
class ReadCard:
    """A card's fields, and the paints they make; `problem` says why they make none."""

    reading: CardReading
    fit: CardFit | None
    problem: str = ""


def finding(path: Path) -> Work:
    """Open a picture and look for the card; gives a `FoundCard`."""

    def work(progress: Progress, should_stop: ShouldStop) -> FoundCard:
        pixels = open_photo(path, should_stop=should_stop).pixels
        step(0.5, progress, should_stop)
        corners, code = find_card(pixels, should_stop)
        if corners is not None:
            pixels, corners = cut_to_card(*turned_upright(pixels, corners))
        return FoundCard(pixels, image_of(pixels), corners, code)

    return work


def fitting(
    found: FoundCard,
    corners: Corners,
    card: SwatchCard,
    box: Box,
    light: Light,
    left_out: frozenset[Place],
    trusted: frozenset[Place],
    known: CardReading | None,
) -> Work:
    """Read the fields, if they are not `known`, and fit the paints; gives a `ReadCard`."""

    def work(progress: Progress, should_stop: ShouldStop) -> ReadCard:
        reading = known or read_card(
            found.pixels, corners, len(card.rows), found.code, progress, should_stop
        )
        used = reading
        for row, field in left_out:
            used = with_field_left_out(used, row, field)
        try:
            fit = fit_reading(card, used, box, light, progress, should_stop, trusted)
        except SwatchCardError as error:
            return ReadCard(reading, None, str(error))
        return ReadCard(reading, fit)

    return work


def printing(path: Path, cards: tuple[SwatchCard, ...], box: Box, paper: Paper) -> Work:
    """Write a card's PDF; gives the name of its file."""

    def work(progress: Progress, should_stop: ShouldStop) -> str:
        pages = lay_out_swatches(cards, box, paper)
        write_card(path, pdf_of(pages, card_title(cards), progress, should_stop))
        return shown_name(path)

    return work
