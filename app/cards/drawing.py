"""What the dialog's worker does: gather, lay out, and draw pages for the screen."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter

from app.cards.card import CardChoice, card_title, lay_out_card
from app.cards.page import Page, paint_page
from app.cards.paper import UNITS_PER_INCH
from app.drawing.pyramid import Pyramid
from core.cards import CardData, gather
from core.pipeline import Worked
from core.progress import Progress, ShouldStop, step
from core.reading.wording import Wording
from core.study import Study

SCREEN_DPI = 150
"""Of the preview: an A4 page is as high as a large screen at 150 %."""


@dataclass(frozen=True, eq=False)
class Wish:
    """Everything a card is drawn from; nothing in it changes any more.

    Attributes
    ----------
    study, pictures, wording, known
        See `core.cards.gather`.
    date : str
        As "2027-03-04".
    show_measured : bool
        Findings although own scores are missing.
    """

    study: Study
    pictures: Mapping[str, bytes]
    wording: Wording
    known: Worked
    date: str
    show_measured: bool


@dataclass(frozen=True, eq=False)
class Drawn:
    """A card that is ready.

    Attributes
    ----------
    data : CardData
    choice : CardChoice
    title : str
    pages : tuple of Page
    images : tuple of Pyramid
        The pages for the screen.
    """

    data: CardData
    choice: CardChoice
    title: str
    pages: tuple[Page, ...]
    images: tuple[Pyramid, ...]

    @property
    def texts(self) -> tuple[str, ...]:
        """All that is said on each page, for a screen reader."""
        return tuple(
            " ".join(piece.text for piece in page.pieces if piece.text) for page in self.pages
        )


def draw_card(
    wish: Wish,
    choice: CardChoice,
    data: CardData | None = None,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> Drawn:
    """Gather what is missing, lay out, draw; runs in a worker.

    Parameters
    ----------
    wish : Wish
    choice : CardChoice
    data : CardData, optional
        Gathered before for a card of the same kind.
    progress, should_stop : callable, optional

    Raises
    ------
    GradewashError
        Why there is no such card, in one sentence.
    Cancelled
        `should_stop` answered True.
    """
    if data is None:
        data = gather(
            choice.kind,
            wish.study,
            wish.pictures,
            wish.wording,
            known=wish.known,
            date=wish.date,
            show_measured=wish.show_measured,
            progress=progress,
            should_stop=should_stop,
        )
    step(0.7, progress, should_stop)
    pages = lay_out_card(data, choice)
    images = []
    for page in pages:
        step(0.8, progress, should_stop)
        images.append(Pyramid.of(image_of_page(page)))
    return Drawn(data, choice, card_title(data, choice.kind), pages, tuple(images))


def image_of_page(page: Page, dpi: int = SCREEN_DPI) -> QImage:
    """A page as a picture."""
    scale = dpi / UNITS_PER_INCH
    size = page.paper.rect.size() * scale
    image = QImage(round(size.width()), round(size.height()), QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.scale(scale, scale)
    paint_page(painter, page)
    painter.end()
    return image
