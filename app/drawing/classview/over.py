"""The class view on a small screen: the photo full height, wheel and questions over it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter

from app.drawing.classview.layout import (
    ClassLayout,
    letter_column,
    letter_radius_of,
    unit_of,
)
from app.drawing.ink import kept
from app.drawing.wheel.over import EDGE, Spot, Surroundings, lay_wheel
from app.look.theme import Theme

PANEL = (0.68, 0.44)
"""Width and height of the questions' panel, by the screen's height."""

LEAST_WHEEL = 0.3
_MARGIN = 0.025


def over_layout(
    width: float,
    height: float,
    aspect: float,
    edges: Sequence[float],
    chosen: int,
    wanted: tuple[float, float, float] | None = None,
) -> tuple[ClassLayout, Spot | None]:
    """Lay the class view out with everything over the photo.

    Parameters
    ----------
    width, height : float
        Of the screen.
    aspect : float
        Width of the photo by its height.
    edges : sequence of float
        Of the bands, fractions of the photo's height.
    chosen : int
        The lit band.
    wanted : (x, y, size), optional
        Where the wheel was put: its middle in fractions of the photo, its diameter by the photo's
        height.

    Returns
    -------
    layout : ClassLayout
        With two places for questions, and neither chip, ladder nor strip.
    spot : Spot or None
        The wheel's ground; None where the lit band leaves no room for it.
    """
    unit = unit_of(width, height)
    column = letter_column(unit)
    tall = min(height, (width - column) / aspect)
    photo = QRectF(column, 0, tall * aspect, tall)
    lit = (photo.top() + edges[chosen] * tall, photo.top() + edges[chosen + 1] * tall)
    ground = photo.top() + edges[-1] * tall
    panel = _panel(width, height, unit, lit)
    margin = _MARGIN * unit
    around = Surroundings(
        area=(margin, margin, panel.left() - margin, height - margin),
        photo=(
            photo.left(),
            photo.top(),
            min(photo.right(), panel.left() - margin),
            photo.bottom(),
        ),
        ground=ground,
        lit=lit,
        least=LEAST_WHEEL * unit,
    )
    place = None
    if wanted is not None:
        x, y, size = wanted
        place = Spot(photo.left() + x * photo.width(), photo.top() + y * tall, size * tall)
    spot = lay_wheel(around, place)
    wheel = QRectF()
    if spot is not None:
        side = spot.size * (1 - 2 * EDGE)
        wheel = QRectF(spot.x - side / 2, spot.y - side / 2, side, side)
    screen = QRectF(0, 0, width, height)
    nothing = QRectF()
    layout = ClassLayout(
        height=unit,
        wall=screen,
        paper=panel,
        strip=QRectF(0, height, width, 0),
        sky=photo,
        photo=photo,
        chip=nothing,
        tether=0.0,
        wheel=wheel,
        ladder=nothing,
        ladder_across=True,
        names=(nothing, nothing),
        letter_x=1.35 * letter_radius_of(unit),
        letter_radius=letter_radius_of(unit),
        letters_end=height,
        slots=_slots(panel, unit),
    )
    return layout, spot


def paint_panel(painter: QPainter, panel: QRectF, unit: float, theme: Theme) -> None:
    """Paper for the questions, within an edge that is seen on any photo."""
    with kept(painter):
        painter.setPen(Qt.PenStyle.NoPen)
        for grow, colour in ((0.006, theme.edge), (0.0, theme.paper)):
            painter.setBrush(QColor(colour))
            inset = grow * unit
            rect = panel.adjusted(-inset, -inset, inset, inset)
            painter.drawRoundedRect(rect, 0.016 * unit, 0.016 * unit)


def _panel(width: float, height: float, unit: float, lit: tuple[float, float]) -> QRectF:
    """At the right, below the lit band or above it; lower where it must be."""
    margin = _MARGIN * unit
    wide = min(PANEL[0] * unit, 0.6 * width)
    below = QRectF(QPointF(0, lit[1] + margin), QPointF(wide, height - margin))
    above = QRectF(QPointF(0, margin), QPointF(wide, lit[0] - margin))
    best = below if below.height() >= min(PANEL[1] * unit, above.height()) else above
    tall = min(PANEL[1] * unit, best.height())
    least = 0.2 * unit
    if tall < least:  # a band that fills the screen: its foot gives way
        best, tall = QRectF(QPointF(0, 0), QPointF(wide, height - margin)), least
    top = best.bottom() - tall if best is not above else best.top()
    return QRectF(width - wide - margin, top, wide, tall)


def _slots(panel: QRectF, unit: float) -> tuple[QRectF, ...]:
    """Two places, or one where the panel is low."""
    inside = panel.adjusted(0.06 * unit, 0.02 * unit, -0.03 * unit, -0.012 * unit)
    count = 2 if inside.height() >= 0.3 * unit else 1
    tall = inside.height() / count
    return tuple(
        QRectF(inside.left(), inside.top() + k * tall, inside.width(), tall - 0.01 * unit)
        for k in range(count)
    )
