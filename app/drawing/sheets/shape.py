"""The sky and two sheets side by side: what is shown of them, and where each is."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from PySide6.QtCore import QRectF

from app.drawing.pyramid import Pyramid

LEAST_ASPECT, MOST_ASPECT = 0.5, 3.0

# In sizes of the text: left of the sky letters and brackets, between pictures arrows and words.
_LEFT, _GAP, _RIGHT = 5.2, 8.0, 1.55


@dataclass(frozen=True)
class LineOnSheet:
    """Where a line is on a sheet; its place in the sky is the board's `lines`.

    Attributes
    ----------
    at : float or None
        Share of the height; None where it cannot be told.
    text : str
        What is written in the gutter, such as "6% high"; empty for a line in place.
    arrow : bool
        An arrow points from where it is to where it should be.
    """

    at: float | None
    text: str = ""
    arrow: bool = False


@dataclass(frozen=True)
class MarkOnSheet:
    """A bloom, a hard edge or a pale corner, with its tag.

    Attributes
    ----------
    kind : "bloom", "edge" or "corner"
    x, y : float
        Its middle, shares of width and height.
    text : str
        On the tag.
    radius : float
        Of a bloom, share of the height.
    start, end : float
        Of an edge, shares of the width.
    """

    kind: Literal["bloom", "edge", "corner"]
    x: float
    y: float
    text: str
    radius: float = 0.0
    start: float = 0.0
    end: float = 1.0


@dataclass(frozen=True, eq=False)
class PictureOnBoard:
    """One of the three pictures.

    Attributes
    ----------
    picture : Pyramid or None
        None: an empty place, outlined in dashes.
    crop : (left, top, right, bottom)
        The part of it that is shown, shares of its sides.
    lines : tuple of LineOnSheet
        A sheet's, one for each line of the sky; empty while they are not shown.
    marks : tuple of MarkOnSheet
    """

    picture: Pyramid | None = None
    crop: tuple[float, float, float, float] = (0.0, 0.0, 1.0, 1.0)
    lines: tuple[LineOnSheet, ...] = ()
    marks: tuple[MarkOnSheet, ...] = ()


@dataclass(frozen=True, eq=False)
class BoardView:
    """The sky and its sheets.

    Attributes
    ----------
    sky : PictureOnBoard
    sheets : tuple of PictureOnBoard
    letters : tuple of str
        Of the bands, from the top.
    lines : tuple of float
        Between the bands, shares of the sky's height.
    aspect : float
        Width over height of the pictures.
    text : float
        Size of the words in the gutters, in the painter's units; all else follows from it.
    chosen : int or None
        The band whose bracket is heavy.
    aimed : int or None
        The sheet's place a picture is held over.
    ratio : float
        Device pixels a unit, for the pictures.
    empty_height : float
        Least height of an empty place, which holds words: it may be taller than the pictures.
    """

    sky: PictureOnBoard
    sheets: tuple[PictureOnBoard, ...]
    letters: tuple[str, ...]
    lines: tuple[float, ...]
    aspect: float
    text: float
    chosen: int | None = None
    aimed: int | None = None
    ratio: float = 1.0
    empty_height: float = 0.0

    @property
    def edges(self) -> tuple[float, ...]:
        """0, every line, 1."""
        return (0.0, *self.lines, 1.0)


@dataclass(frozen=True)
class BoardShape:
    """Where the pictures are: the sky's first, all equal and level."""

    pictures: tuple[QRectF, ...]
    gap: float
    """Of the gutter left of each sheet."""


def board_shape(rect: QRectF, aspect: float, text: float, count: int = 3) -> BoardShape:
    """Where `count` pictures are in `rect`: their columns share the width, the height limits them.

    Parameters
    ----------
    aspect : float
        Width over height.
    text : float
        See `BoardView`.
    """
    gap = _GAP * text
    pitch = column_pitch(rect.width(), text, count)
    width = pitch - gap
    aspect = min(max(aspect, LEAST_ASPECT), MOST_ASPECT)
    height = width / aspect
    if height > rect.height():
        height = rect.height()
        width = height * aspect
    left = rect.left() + _LEFT * text
    pictures = tuple(QRectF(left + k * pitch, rect.top(), width, height) for k in range(count))
    return BoardShape(pictures, gap)


def column_pitch(width: float, text: float, count: int = 3) -> float:
    """From one column's left edge to the next, for a board of a width."""
    return (width - (_LEFT + _RIGHT - _GAP) * text) / count
