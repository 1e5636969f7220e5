"""A paint of the box: drawn out from strong to pale, or a dashed outline where it is missing."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from app.drawing.ink import BLACK, kept
from app.drawing.mix.strip import run_of


@dataclass(frozen=True)
class SwatchView:
    """Colours from strong to pale, "#rrggbb"; none when the class does not own the paint."""

    colours: tuple[str, ...] = ()


def paint_swatch(painter: QPainter, rect: QRectF, view: SwatchView) -> None:
    """The swatch filling `rect`, strong at the left."""
    with kept(painter):
        if view.colours:
            painter.fillRect(rect, run_of(rect, view.colours))
            return
        unit = rect.height() / 44
        pen = QPen(QColor(BLACK), 1.25 * unit)
        pen.setDashPattern([4, 3])
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(rect.adjusted(unit, unit, -unit, -unit))
