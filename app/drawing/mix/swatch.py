"""A paint of the box: drawn out from strong to pale, or a dashed outline where it is missing.

How it is known shows in its edge, not in a colour: a measured paint fills its place; one of the
class's own lies in an outline, as on its card; one that a relative stands in for, in a broken one.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from app.drawing.ink import BLACK, WHITE, kept
from app.drawing.mix.strip import run_of

Known = Literal["measured", "card", "stand in"]
"""Where a paint's colours come from."""

_INSET = 6.0


@dataclass(frozen=True)
class SwatchView:
    """Colours from strong to pale, "#rrggbb"; none when the class does not own the paint."""

    colours: tuple[str, ...] = ()
    known: Known = "measured"


def paint_swatch(painter: QPainter, rect: QRectF, view: SwatchView) -> None:
    """The swatch filling `rect`, strong at the left."""
    with kept(painter):
        if view.colours:
            _paint_known(painter, rect, view)
            return
        unit = rect.height() / 44
        pen = QPen(QColor(BLACK), 1.25 * unit)
        pen.setDashPattern([4, 3])
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(rect.adjusted(unit, unit, -unit, -unit))


def _paint_known(painter: QPainter, rect: QRectF, view: SwatchView) -> None:
    unit = rect.height() / 44
    inner = rect
    if view.known != "measured":
        pen = QPen(QColor(BLACK), 1.25 * unit)
        if view.known == "stand in":
            pen.setDashPattern([4, 3])
        painter.setPen(pen)
        painter.setBrush(QColor(WHITE))
        painter.drawRect(rect.adjusted(unit, unit, -unit, -unit))
        inset = _INSET * unit
        inner = rect.adjusted(inset, inset, -inset, -inset)
    painter.fillRect(inner, run_of(inner, view.colours))
