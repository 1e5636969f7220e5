"""Where everything is in the class view: lengths are fractions of the screen's height."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF

from app.drawing.spread import spread_line

LEAST_TEXT: Final = 0.04
"""Nothing in the class view is set smaller: it is read from 8 m."""

QUESTION: Final = 0.043
ANSWER: Final = 0.076
STRIP: Final = 0.094
_MARGIN: Final = 0.033
_LETTER: Final = 0.0315
"""Radius of a band's letter left of the photo."""

LETTER_SHARE: Final = 1.3
"""Letters fill their discs here, so that small discs hold letters of 4 %."""

_WHEEL: Final = 0.335
_LADDER: Final = 0.25
_LEAST_ACROSS: Final = 0.4
"""Width a lying ladder needs, so that the words at its ends stay apart; else it stands."""
_LEFT_SHARE: Final = 0.59
# On a 4:3 projector the questions need their share.
_LEFT_SHARE_NARROW: Final = 0.56
_NARROW: Final = 1.5
_SQUAREST: Final = 0.8
"""5:4 is the squarest screen that still has text of 4 % of its height."""

_WEIGHTS: Final = (1.25, 1.0, 0.95, 0.95, 1.52)
"""Height of each question's place; hue and mix have a line more."""

_WEIGHTS_OF_TWO: Final = (1.4, 0.95, 0.95, 0.95, 1.4, 1.5)
"""The same with a question for the second colour."""


@dataclass(frozen=True)
class ClassLayout:
    """Everything's place, in the screen's coordinates.

    Attributes
    ----------
    height : float
        What text sizes are fractions of: the screen's height, less on a nearly square one.
    wall, paper, strip : QRectF
        The grounds.
    photo, wheel, ladder : QRectF
    ladder_across : bool
        It lies; on a narrow screen it stands.
    letter_x : float
        Middle of the letters' column; their discs have the radius `letter_radius`.
    slots : tuple of QRectF
        One for each question.
    """

    height: float
    wall: QRectF
    paper: QRectF
    strip: QRectF
    photo: QRectF
    wheel: QRectF
    ladder: QRectF
    ladder_across: bool
    letter_x: float
    letter_radius: float
    slots: tuple[QRectF, ...]

    def band(self, top: float, bottom: float) -> QRectF:
        """The part of the photo between two heights, fractions of the photo's."""
        photo = self.photo
        y = photo.top() + top * photo.height()
        return QRectF(photo.left(), y, photo.width(), (bottom - top) * photo.height())


def class_layout(width: float, height: float, aspect: float, *, two: bool = False) -> ClassLayout:
    """Lay the class view out on a screen.

    Parameters
    ----------
    width, height : float
        Of the screen.
    aspect : float
        Width of the photo by its height.
    two : bool
        There is a question for a second colour.
    """
    unit = min(height, _SQUAREST * width)
    share = _LEFT_SHARE if width / height >= _NARROW else _LEFT_SHARE_NARROW
    left, bottom = share * width, height - STRIP * unit
    margin = _MARGIN * unit
    column = 2 * 1.27 * _LETTER * unit + 0.018 * unit
    below = _WHEEL * unit
    area = QRectF(
        margin / 2 + column,
        margin,
        left - margin - margin / 2 - column,
        bottom - 2.6 * margin - below,
    )
    photo = _fitted(area, aspect)
    wheel = QRectF(area.left(), bottom - 0.8 * margin - below, below, below)
    ladder = _beside(wheel, left - margin, unit)
    paper = QRectF(left, 0, width - left, bottom)
    return ClassLayout(
        height=unit,
        wall=QRectF(0, 0, left, bottom),
        paper=paper,
        strip=QRectF(0, bottom, width, height - bottom),
        photo=photo,
        wheel=wheel,
        ladder=ladder,
        ladder_across=ladder.width() > ladder.height(),
        letter_x=photo.left() - 0.024 * unit - 1.27 * _LETTER * unit,
        letter_radius=_LETTER * unit,
        slots=_slots(paper, unit, _WEIGHTS_OF_TWO if two else _WEIGHTS),
    )


def letter_places(
    layout: ClassLayout, edges: tuple[float, ...], chosen: int
) -> tuple[tuple[int, QPointF], ...]:
    """Bands whose letters fit beside the photo, with the middles of their discs.

    With more bands than there is room for, those nearest the chosen one keep their letters.
    """
    pitch = 2 * layout.letter_radius + 0.006 * layout.height
    reach = 1.27 * layout.letter_radius
    low = layout.wall.top() + reach + 0.004 * layout.height
    high = layout.wheel.top() - reach - 0.004 * layout.height
    room = 1 + int((high - low) / pitch)
    count = len(edges) - 1
    first = min(max(chosen - room // 2, 0), max(count - room, 0))
    shown = range(first, min(first + room, count))
    middles = []
    for band in shown:
        rect = layout.band(edges[band], edges[band + 1])
        middles.append(min(max(rect.center().y(), low), high))
    places = spread_line(middles, pitch, low, high)
    return tuple((band, QPointF(layout.letter_x, y)) for band, y in zip(shown, places, strict=True))


def _fitted(area: QRectF, aspect: float) -> QRectF:
    width = min(area.width(), area.height() * aspect)
    height = width / aspect
    left = area.left() + (area.width() - width) / 2
    return QRectF(left, area.top() + (area.height() - height) / 2, width, height)


def _beside(wheel: QRectF, right: float, unit: float) -> QRectF:
    """The ladder's place right of the wheel: lying, or standing where it is narrow."""
    left = wheel.right() + 1.6 * _MARGIN * unit
    width, height = right - left, _LADDER * unit
    if width < _LEAST_ACROSS * unit:
        left -= 0.8 * _MARGIN * unit
        return QRectF(left, wheel.top(), min(right - left, 0.24 * unit), wheel.height())
    return QRectF(left, wheel.center().y() - height / 2, width, height)


def _slots(paper: QRectF, unit: float, weights: tuple[float, ...]) -> tuple[QRectF, ...]:
    pad_x, pad_y = 0.06 * unit, 0.028 * unit
    rest = paper.height() - 2 * pad_y
    slots, y = [], paper.top() + pad_y
    for weight in weights:
        height = rest * weight / sum(weights)
        slots.append(QRectF(paper.left() + pad_x, y, paper.width() - 1.5 * pad_x, height))
        y += height
    return tuple(slots)
