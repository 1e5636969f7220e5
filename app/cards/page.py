"""A laid-out page: what is drawn where, as a list that can be painted, previewed and tested.

A card is first laid out and then painted. The list says of every piece where it is, so that a
test can ask whether anything overlaps or is cut, and printing can go piece by piece.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from typing import Any, Literal

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from app.cards.paper import Paper

Paint = Callable[[QPainter, QRectF, Any], object]
"""A painter of `app.drawing`: (painter, rect, view)."""

Layer = Literal["ground", "piece"]


@dataclass(frozen=True, eq=False)
class Piece:
    """One thing on a page.

    Attributes
    ----------
    rect : QRectF
        Where it is, in units.
    paint : callable
    view : object
        What it shows.
    layer : "piece" or "ground"
        Pieces never overlap; the ground (lines, frames) is beneath them.
    text : str
        What it says, where it is text.
    """

    rect: QRectF
    paint: Paint
    view: Any
    layer: Layer = "piece"
    text: str = ""


@dataclass(eq=False)
class Page:
    """The pieces of one page, in the order they are painted.

    Attributes
    ----------
    paper : Paper
    pieces : list of Piece
    """

    paper: Paper
    pieces: list[Piece] = field(default_factory=list)

    def put(
        self,
        rect: QRectF,
        paint: Paint,
        view: Any,
        *,
        layer: Layer = "piece",
        text: str = "",
    ) -> QRectF:
        """Add a piece; gives its rectangle back."""
        self.pieces.append(Piece(QRectF(rect), paint, view, layer, text))
        return rect


def paint_page(painter: QPainter, page: Page) -> None:
    """Draw a whole page in units; the caller scales the painter."""
    for _ in painting(painter, page):
        pass


def painting(painter: QPainter, page: Page) -> Iterator[None]:
    """Draw a page piece by piece, for a caller who must not wait long."""
    for piece in page.pieces:
        piece.paint(painter, piece.rect, piece.view)
        yield
