"""Where everything on the wheel lies: shared by painting and hit-testing.

All lengths are fractions of R, the outer radius of the primaries' wedges; a few have a floor in
pixels. Angles run clockwise from yellow on top.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from PySide6.QtCore import QPointF, QRectF

from app.paint.ink import text_size
from app.paint.spread import spread_disc
from core.reading import INTENSITY_RINGS

WEDGES: Final = 12
STEP_DEG: Final = 30.0
INNER: Final = 0.655
# Class by shape: primaries reach furthest, tertiaries least.
OUTER_OF_CLASS: Final = (1.0, 0.95, 0.975, 0.95)
GAP_DEG: Final = 1.5
DISC: Final = 0.62
MARKER: Final = 0.078
LEAST_MARKER_PX: Final = 11.0
CLEAR_PX: Final = 6.0
NAME: Final = 0.083
LEAST_NAME_PX: Final = 12.0
# Widths a name of least size is squeezed to before it is broken or left out.
_SQUEEZES: Final = (1.0, 0.9, 0.82)
# Directions tried for the intensity words, never near horizontal, the quieter ones first.
_WORD_DIRECTIONS: Final = (
    *(320, 40, 220, 140, 330, 30, 210, 150, 310, 50, 230, 130, 340, 20, 200, 160),
    *(0, 180, 300, 60, 240, 120),
)
# Where each word may lie, as fractions of the disc: the middle of its ring first.
_WORD_PLACES: Final = ((0.29, 0.32, 0.26), (0.56, 0.53, 0.60), (0.85, 0.80, 0.88))
# Clearance beyond this, in fractions of R, is no better: so the words stay where they are.
_ENOUGH: Final = 0.05


@dataclass(frozen=True)
class WheelMarker:
    """One band on the wheel.

    Attributes
    ----------
    letter : str
    wheel_deg : float or None
        Clockwise from yellow; None has no direction at all and lies in the middle.
    place : float
        Distance from the middle as a fraction of the disc, from `core.reading.intensity_place`:
        a marker stands in the ring whose word it is given.
    colour, ink : str
        "#rrggbb" of the disc and of its letter.
    family, complement : int or None
        Number of its own wedge, and of the opposite one, from yellow; None when near neutral.
    band : int or None
        Number of the band; None: the marker's own number.
    """

    letter: str
    wheel_deg: float | None
    place: float
    colour: str
    ink: str
    family: int | None = None
    complement: int | None = None
    band: int | None = None


@dataclass(frozen=True)
class WheelView:
    """What the wheel shows.

    Attributes
    ----------
    markers : tuple of WheelMarker
    colours, inks, names : tuple of str, 12 each
        Fill of each wedge, black or white upon it, and its name, from yellow clockwise.
    chosen : int or None
        The marker whose way to the neutral middle is shown.
    intensity_words : (str, str, str)
        Dull, moderate, intense; () leaves them out.
    px : float
        One pixel in the rectangle's unit: the floors of text and marker follow it.
    lit : tuple of int or None
        Wedges in full colour, the others greyed; None lights all.
    muted : tuple of str, 12, or ()
        The greyed fills; only needed with `lit`.
    show_names : bool
    in_wedge : bool
        Markers wait inside their wedge: the intensity is not told yet.
    show_way : bool
        The arrow to the middle and the dashes on to the complement.
    marker : float
        Radius of a marker as a fraction of R.
    """

    markers: tuple[WheelMarker, ...]
    colours: tuple[str, ...]
    inks: tuple[str, ...]
    names: tuple[str, ...]
    chosen: int | None = None
    intensity_words: tuple[str, ...] = ()
    px: float = 1.0
    lit: tuple[int, ...] | None = None
    muted: tuple[str, ...] = ()
    show_names: bool = True
    in_wedge: bool = False
    show_way: bool = True
    marker: float = MARKER


@dataclass(frozen=True)
class Placed:
    """A marker's disc and its true place, which has a dot of its own once the disc left it."""

    disc: QPointF
    dot: QPointF
    moved: bool


@dataclass(frozen=True)
class Word:
    """A word with its place and size; `squeeze` is its width, 1 as the face has it."""

    text: str
    rect: QRectF
    size: float
    squeeze: float = 1.0


@dataclass(frozen=True)
class WheelGeometry:
    """Everything's place, in the rectangle's coordinates."""

    centre: QPointF
    radius: float
    marker_radius: float
    placed: tuple[Placed, ...]
    names: tuple[tuple[Word, ...], ...]
    words: tuple[Word, ...]
    way: tuple[QPointF, QPointF] | None
    """From the chosen band's place to the edge of the neutral core."""
    onward: tuple[QPointF, QPointF] | None
    """From the middle to the complement's wedge."""


def outer_of(wedge: int) -> float:
    """Outer radius of a wedge, as a fraction of R."""
    return OUTER_OF_CLASS[wedge % 4]


def polar(centre: QPointF, distance: float, deg: float) -> QPointF:
    """The point at a distance and an angle clockwise from straight up."""
    turn = math.radians(deg)
    return QPointF(centre.x() + distance * math.sin(turn), centre.y() - distance * math.cos(turn))


def wheel_geometry(rect: QRectF, view: WheelView) -> WheelGeometry:
    """Lay the wheel out in the middle of a rectangle."""
    px = view.px
    centre = rect.center()
    radius = max(min(rect.width(), rect.height()) / 2 - 2.0 * px, 1.0 * px)
    size = max(view.marker * radius, min(LEAST_MARKER_PX * px, 0.3 * radius))
    size, placed = _place_markers(view, centre, radius, size)
    way, onward = _ways(view, centre, radius, placed)
    names: tuple[tuple[Word, ...], ...] = ()
    if view.show_names:
        names = tuple(
            tuple(
                Word(text, QRectF(x, y, width, height).translated(centre), letter_size, squeeze)
                for text, x, y, width, height, letter_size, squeeze in words
            )
            for words in _names(view.names, radius, px)
        )
    words = _place_words(view, centre, radius, size, placed, way, onward)
    return WheelGeometry(centre, radius, size, placed, names, words, way, onward)


def wheel_hit(geometry: WheelGeometry, point: QPointF, slack: float = 4.0) -> int | None:
    """The marker under a point, or None; `slack` is added to the radius."""
    best, best_distance = None, geometry.marker_radius + slack
    for index, place in enumerate(geometry.placed):
        distance = math.hypot(point.x() - place.disc.x(), point.y() - place.disc.y())
        if distance <= best_distance:
            best, best_distance = index, distance
    return best


def wedge_at(geometry: WheelGeometry, point: QPointF) -> int | None:
    """The wedge under a point, or None."""
    x, y = point.x() - geometry.centre.x(), point.y() - geometry.centre.y()
    wedge = round(math.degrees(math.atan2(x, -y)) / STEP_DEG) % WEDGES
    distance = math.hypot(x, y) / geometry.radius
    return wedge if INNER <= distance <= outer_of(wedge) else None


def _place_markers(
    view: WheelView, centre: QPointF, radius: float, size: float
) -> tuple[float, tuple[Placed, ...]]:
    true = []
    for marker in view.markers:
        distance = DISC * marker.place if marker.wheel_deg is not None else 0.0
        if view.in_wedge and marker.family is not None:
            middle = 0.5 * (INNER + outer_of(marker.family))
            true.append(polar(QPointF(0, 0), middle * radius, marker.family * STEP_DEG))
        else:
            true.append(polar(QPointF(0, 0), distance * radius, marker.wheel_deg or 0.0))
    limit = radius * (1.0 if view.in_wedge else DISC * 0.985)
    size, moved = spread_disc(
        [(p.x(), p.y()) for p in true], size * 1.02, CLEAR_PX * view.px, limit
    )
    size /= 1.02
    placed = []
    for point, (x, y) in zip(true, moved, strict=True):
        away = math.hypot(point.x() - x, point.y() - y) > 0.8 * size
        placed.append(Placed(centre + QPointF(x, y), centre + point, away))
    return size, tuple(placed)


def _ways(
    view: WheelView, centre: QPointF, radius: float, placed: tuple[Placed, ...]
) -> tuple[tuple[QPointF, QPointF] | None, tuple[QPointF, QPointF] | None]:
    if view.chosen is None or not view.show_way or view.in_wedge:
        return None, None
    marker = view.markers[view.chosen]
    if marker.complement is None or marker.wheel_deg is None:
        return None, None
    onward_end = polar(centre, INNER * radius, marker.complement * STEP_DEG)
    onward = (centre, onward_end)
    start = placed[view.chosen].dot
    core = DISC * INTENSITY_RINGS[1] * radius
    distance = math.hypot(start.x() - centre.x(), start.y() - centre.y())
    if distance <= core:
        return None, onward
    return (start, polar(centre, core, marker.wheel_deg)), onward


@lru_cache(maxsize=64)
def _names(
    names: tuple[str, ...], radius: float, px: float
) -> tuple[tuple[tuple[str, float, float, float, float, float, float], ...], ...]:
    """Lines of each name with left, top, width, height, size and squeeze, round (0, 0)."""
    result = []
    for wedge, name in enumerate(names):
        fitting = _fitting(wedge, name, radius, px)
        if fitting is None:
            result.append(())
            continue
        lines, size, middle, squeeze = fitting
        spot = polar(QPointF(0, 0), middle, wedge * STEP_DEG)
        pitch = 1.04 * size
        top = spot.y() - pitch * len(lines) / 2
        placed = []
        for row, line in enumerate(lines):
            width = text_size(line, size)[0] * squeeze
            placed.append(
                (line, spot.x() - width / 2, top + row * pitch, width, pitch, size, squeeze)
            )
        result.append(tuple(placed))
    return tuple(result)


def _fitting(
    wedge: int, name: str, radius: float, px: float
) -> tuple[tuple[str, ...], float, float, float] | None:
    """Lines, size, distance and squeeze of a name; None when it cannot be got into its wedge."""
    least = LEAST_NAME_PX * px
    lines = broken_name(name)
    for squeeze in _SQUEEZES:
        fitting = _fitting_size(wedge, lines, radius, px, squeeze)
        if fitting is not None:
            return (lines, *fitting, squeeze)
    # Some languages have names too long for a small wheel: break the longest word.
    longest = max(lines, key=lambda line: text_size(line, least)[0])
    pieces = syllables(longest)
    if pieces is None:
        return None
    at = lines.index(longest)
    lines = (*lines[:at], *pieces, *lines[at + 1 :])
    for squeeze in _SQUEEZES:
        fitting = _fitting_size(wedge, lines, radius, px, squeeze)
        if fitting is not None:
            return (lines, *fitting, squeeze)
    return None


def broken_name(name: str) -> tuple[str, ...]:
    """Two lines at the hyphen, or at the space nearest the middle."""
    if "-" in name:
        first, second = name.split("-", 1)
        return first + "-", second
    if " " in name:
        spaces = [i for i, letter in enumerate(name) if letter == " "]
        cut = min(spaces, key=lambda i: abs(i - len(name) / 2))
        return name[:cut], name[cut + 1 :]
    return (name,)


def syllables(word: str) -> tuple[str, str] | None:
    """A word in two at the syllable's end nearest its middle; None for a short one.

    Before the last consonant between two vowels, the rule of Spanish and most languages near it.

    >>> syllables("anaranjado")
    ('anaran-', 'jado')
    """
    vowels = "aeiouyáéíóúàèìòùäëïöüâêîôûãõå"
    cuts = [
        i
        for i in range(2, len(word) - 1)
        if word[i] not in vowels
        and word[i + 1] in vowels
        and any(letter in vowels for letter in word[:i])
    ]
    if not cuts or len(word) < 6:
        return None
    cut = min(cuts, key=lambda i: abs(i - len(word) / 2))
    return word[:cut] + "-", word[cut:]


def _fitting_size(
    wedge: int, lines: tuple[str, ...], radius: float, px: float, squeeze: float
) -> tuple[float, float] | None:
    """Largest size and its distance from the middle; None when not even the least fits."""
    least = LEAST_NAME_PX * px
    size = max(NAME * radius, least)
    while size >= least - 1e-9:
        half_height = (0.98 * len(lines) - 0.28) * size / 2
        half_width = squeeze * max(text_size(line, size)[0] for line in lines) / 2
        for share in (0.5, 0.55, 0.6, 0.45, 0.65):
            middle = radius * (INNER + share * (outer_of(wedge) - INNER))
            margin = (0.004 if size == least else 0.018) * radius
            if _inside_wedge(wedge, middle, half_width, half_height, radius, margin):
                return size, middle
        if size == least:
            return None
        size = max(size * 0.96, least)
    return None


def _inside_wedge(
    wedge: int,
    middle: float,
    half_width: float,
    half_height: float,
    radius: float,
    margin: float,
) -> bool:
    spot = polar(QPointF(0, 0), middle, wedge * STEP_DEG)
    half_angle = math.radians(STEP_DEG / 2 - GAP_DEG / 2)
    for sx in (-1, 1):
        for sy in (-1, 1):
            x, y = spot.x() + sx * half_width, spot.y() + sy * half_height
            distance = math.hypot(x, y)
            off = math.atan2(x, -y) - math.radians(wedge * STEP_DEG)
            off = (off + math.pi) % (2 * math.pi) - math.pi
            side = distance * math.sin(half_angle - abs(off))
            if side < margin or distance > outer_of(wedge) * radius - margin:
                return False
    # The inner edge is an arc: the box comes nearest to the middle at one of its edges.
    near_x = max(abs(spot.x()) - half_width, 0.0)
    near_y = max(abs(spot.y()) - half_height, 0.0)
    return math.hypot(near_x, near_y) >= INNER * radius + margin


def _place_words(
    view: WheelView,
    centre: QPointF,
    radius: float,
    size: float,
    placed: tuple[Placed, ...],
    way: tuple[QPointF, QPointF] | None,
    onward: tuple[QPointF, QPointF] | None,
) -> tuple[Word, ...]:
    """The intensity words in the direction freest of markers; a crossed word is left out."""
    if len(view.intensity_words) != 3:
        return ()
    letter = max(0.075 * radius, LEAST_NAME_PX * view.px)
    if DISC * radius * (INTENSITY_RINGS[3] - INTENSITY_RINGS[2]) < 0.95 * letter:
        return ()
    obstacles = _obstacles(view, size, placed, way, onward)
    best: tuple[float, tuple[Word, ...]] = (0.0, ())
    widths = [text_size(text, letter)[0] for text in view.intensity_words]
    for direction in _WORD_DIRECTIONS:
        turn = math.radians(direction)
        words, score = [], 0.0
        for text, width, shares in zip(view.intensity_words, widths, _WORD_PLACES, strict=True):
            for share in shares:
                x = centre.x() + share * DISC * radius * math.sin(turn)
                y = centre.y() - share * DISC * radius * math.cos(turn)
                reach = math.hypot(
                    abs(x - centre.x()) + width / 2, abs(y - centre.y()) + letter / 2
                )
                if reach > INNER * radius:
                    continue
                free = _least_clearance(x, y, width / 2, letter / 2, obstacles)
                if free >= 0.0:
                    rect = QRectF(x - width / 2, y - letter / 2, width, letter)
                    words.append(Word(text, rect, letter))
                    score += 10.0 + min(free / radius, _ENOUGH) * 10.0
                    break
        if score > best[0] + 1e-9:
            best = (score, tuple(words))
        if score >= 3 * (10.0 + _ENOUGH * 10.0) - 1e-9:
            break
    return best[1]


_Obstacle = tuple[float, float, float]


def _obstacles(
    view: WheelView,
    size: float,
    placed: tuple[Placed, ...],
    way: tuple[QPointF, QPointF] | None,
    onward: tuple[QPointF, QPointF] | None,
) -> list[_Obstacle]:
    """Discs (x, y, radius) that no word may touch; lines as rows of small discs."""
    px = view.px
    result = [
        (p.disc.x(), p.disc.y(), px + size * (1.3 if i == view.chosen else 1.0))
        for i, p in enumerate(placed)
    ]
    for place in placed:
        if place.moved:
            result.append((place.dot.x(), place.dot.y(), 4.5 * px))
            middle = (place.dot + place.disc) / 2
            result.append((middle.x(), middle.y(), 3.0 * px))
    for line in (way, onward):
        if line is not None:
            for k in range(8):
                spot = line[0] + (line[1] - line[0]) * (k / 7)
                result.append((spot.x(), spot.y(), 5.0 * px))
    return result


def _least_clearance(
    x: float, y: float, half_width: float, half_height: float, obstacles: list[_Obstacle]
) -> float:
    least = math.inf
    for ox, oy, reach in obstacles:
        dx = abs(ox - x) - half_width
        dy = abs(oy - y) - half_height
        if dx > dy:
            free = dx - reach if dy <= 0.0 else math.hypot(dx, dy) - reach
        else:
            free = dy - reach if dx <= 0.0 else math.hypot(dx, dy) - reach
        if free < 0.0:
            return free
        if free < least:
            least = free
    return least
