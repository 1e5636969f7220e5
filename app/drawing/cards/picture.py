"""A picture filling its place."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from app.drawing.ink import kept


@dataclass(frozen=True, eq=False)
class PictureView:
    """A picture that fills the rectangle, whatever its own shape."""

    image: QImage


def paint_picture(painter: QPainter, rect: QRectF, view: PictureView) -> None:
    """Draw it."""
    with kept(painter):
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawImage(rect, view.image)
