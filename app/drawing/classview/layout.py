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

CHIP: Final = 0.2
"""Least height of the lit band's colour as a chip."""

_NAME: Final = 0.058
"""Height of a name's tag, which stands above or below the wheel."""

_BELOW: Final = (0.46, 0.58)
"""Least and largest height of what stands under the sky: a flat sky leaves it more."""

_LADDER: Final = 0.238
_STANDING: Final = 0.19
_LEAST_ACROSS: Final = 0.42
"""Width a lying ladder needs, so that the words at its ends stay apart; else it stands."""
_GUTTER: Final = 0.03
"""Right of the sky, for the stem from the lit band to its chip."""
_STEM: Final = 0.03
"""Left of the sky, for the stems from the letters."""
_LEFT_SHARE: Final = 0.59
# On a 4:3 projector the questions need their share.
_LEFT_SHARE_NARROW: Final = 0.58
_NARROW: Final = 1.5
_SQUAREST: Final = 0.8
"""5:4 is the squarest screen that still has text of 4 % of its height."""

_APART: Final = 0.014
"""Kept free below every question's place."""

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
    sky : QRectF
        What is seen of the photo: down to the horizon.
    photo : QRectF
        Where the whole photo would be.
    chip : QRectF
        The lit band's colour.
    tether : float
        Where the stem from the lit band down to the chip stands.
    wheel, ladder : QRectF
    ladder_across : bool
        It lies; on a narrow screen it stands.
    names : tuple of two QRectF
        Rows for the names of wedges, above the wheel and below it.
    letter_x : float
        Middle of the letters' column; their discs have the radius `letter_radius`.
    letters_end : float
        The letters' column ends here.
    slots : tuple of QRectF
        One for each question.
    """

    height: float
    wall: QRectF
    paper: QRectF
    strip: QRectF
    sky: QRectF
    photo: QRectF
    chip: QRectF
    tether: float
    wheel: QRectF
    ladder: QRectF
    ladder_across: bool
    names: tuple[QRectF, QRectF]
    letter_x: float
    letter_radius: float
    letters_end: float
    slots: tuple[QRectF, ...]

    def band(self, top: float, bottom: float) -> QRectF:
        """The part of the photo between two heights, fractions of the photo's."""
        photo = self.photo
        y = photo.top() + top * photo.height()
        return QRectF(photo.left(), y, photo.width(), (bottom - top) * photo.height())


def class_layout(
    width: float,
    height: float,
    aspect: float,
    *,
    horizon: float = 1.0,
    bands: int = 1,
    two: bool = False,
) -> ClassLayout:
    """Lay the class view out on a screen.

    Parameters
    ----------
    width, height : float
        Of the screen.
    aspect : float
        Width of the photo by its height.
    horizon : float
        Where the sky ends, a fraction of the photo's height: nothing below it is shown.
    bands : int
        How many letters want a place beside the sky.
    two : bool
        There is a question for a second colour.
    """
    unit = unit_of(width, height)
    share = _LEFT_SHARE if width / height >= _NARROW else _LEFT_SHARE_NARROW
    left, bottom = share * width, height - STRIP * unit
    margin = _MARGIN * unit
    column = 2 * 1.27 * _LETTER * unit + _STEM * unit
    room = bottom - 2.4 * margin
    area = QRectF(
        margin / 2 + column,
        margin,
        left - 1.5 * margin - column - _GUTTER * unit,
        room - _BELOW[0] * unit,
    )
    aspect = aspect / max(horizon, 1e-6)
    sky_height = min(area.height(), area.width() / aspect)
    # A flat sky leaves room; its letters may need some of it.
    letters = min(bands * _pitch(unit) - 1.5 * margin, area.height())
    taken = max(sky_height, letters)
    below = min(room - taken, _BELOW[1] * unit)
    area.setHeight(room - below)
    sky = _fitted(area, aspect)
    photo = QRectF(sky.left(), sky.top(), sky.width(), sky.height() / max(horizon, 1e-6))
    foot = QRectF(margin, bottom - 0.6 * margin - below, left - 2 * margin, below)
    row = _NAME * unit
    side = min(below - 2 * row - 0.012 * unit, 0.45 * foot.width())
    wheel = QRectF(foot.left() + 0.01 * unit, foot.center().y() - side / 2, side, side)
    letter_x = sky.left() - _STEM * unit - 1.27 * _LETTER * unit
    beside = letter_x + 1.3 * _LETTER * unit
    above = QRectF(foot.left() - margin / 2, wheel.top() - row - 0.006 * unit, 0, row)
    above.setRight(wheel.right() + 0.7 * margin)
    under = above.translated(0, wheel.bottom() - wheel.top() + row + 0.012 * unit)
    # The round wheel leaves its corner to the last letters; the names keep clear of them.
    letters_end = wheel.top() + 0.1 * side
    above.setLeft(beside + 0.01 * unit)
    start = wheel.right() + 1.2 * margin
    chip, ladder = _beside(
        QRectF(start, foot.top(), left - margin - start, below - 0.2 * margin), unit
    )
    paper = QRectF(left, 0, width - left, bottom)
    return ClassLayout(
        height=unit,
        wall=QRectF(0, 0, left, bottom),
        paper=paper,
        strip=QRectF(0, bottom, width, height - bottom),
        sky=sky,
        photo=photo,
        chip=chip,
        tether=chip.right() - 0.012 * unit,
        wheel=wheel,
        ladder=ladder,
        ladder_across=ladder.width() > ladder.height(),
        names=(above, under),
        letter_x=letter_x,
        letter_radius=_LETTER * unit,
        letters_end=letters_end,
        slots=_slots(paper, unit, _WEIGHTS_OF_TWO if two else _WEIGHTS),
    )


def unit_of(width: float, height: float) -> float:
    """What lengths are fractions of on a screen."""
    return min(height, _SQUAREST * width)


def letter_radius_of(unit: float) -> float:
    """Radius of a band's letter."""
    return _LETTER * unit


def letter_column(unit: float) -> float:
    """Width of the letters' column with their stems."""
    return 2 * 1.27 * _LETTER * unit + _STEM * unit + 0.008 * unit


def letter_places(
    layout: ClassLayout, edges: tuple[float, ...], chosen: int
) -> tuple[tuple[int, QPointF], ...]:
    """Bands whose letters fit beside the sky, with the middles of their discs.

    With more bands than there is room for, those nearest the chosen one keep their letters.
    """
    pitch = _pitch(layout.height)
    reach = 1.27 * layout.letter_radius
    low = layout.wall.top() + reach + 0.004 * layout.height
    high = layout.letters_end - reach
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


def _pitch(unit: float) -> float:
    """From one letter to the next."""
    return 2 * _LETTER * unit + 0.006 * unit


def _fitted(area: QRectF, aspect: float) -> QRectF:
    """Beside the letters, however narrow it is."""
    width = min(area.width(), area.height() * aspect)
    height = width / aspect
    return QRectF(area.left(), area.top() + (area.height() - height) / 2, width, height)


def _beside(area: QRectF, unit: float) -> tuple[QRectF, QRectF]:
    """Chip and ladder right of the wheel: one above the other, or side by side on narrow screens.

    The chip is always at the right, where the stem from the lit band comes down.
    """
    gap = 0.02 * unit
    if area.width() >= _LEAST_ACROSS * unit:
        tall = max(area.height() - _LADDER * unit - gap, CHIP * unit)
        chip = QRectF(area.left(), area.top(), area.width(), tall)
        ladder = QRectF(area.left(), chip.bottom() + gap, area.width(), _LADDER * unit)
        return chip, ladder
    wide = _STANDING * unit
    ladder = QRectF(area.left(), area.top(), wide, area.height())
    left = ladder.right() + gap
    return QRectF(left, area.top(), area.right() - left, area.height()), ladder


def _slots(paper: QRectF, unit: float, weights: tuple[float, ...]) -> tuple[QRectF, ...]:
    pad_x, pad_y = 0.06 * unit, 0.028 * unit
    rest = paper.height() - 2 * pad_y
    slots, y = [], paper.top() + pad_y
    for weight in weights:
        height = rest * weight / sum(weights)
        # What is below an answer belongs to it, so that it stays clear of the next question.
        place = QRectF(paper.left() + pad_x, y, paper.width() - 1.5 * pad_x, height - _APART * unit)
        slots.append(place)
        y += height
    return tuple(slots)
