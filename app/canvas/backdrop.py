"""What is still behind the lines: wall, photo and veil, drawn once for a view of it."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QColor, QPainter, QPixmap

from app.canvas.geometry import Viewport
from app.drawing.pyramid import Pyramid


class Backdrop:
    """A picture of the canvas without its lines, remade only when something in it changes."""

    def __init__(self) -> None:
        self._pixmap: QPixmap | None = None
        self._key: tuple[object, ...] | None = None

    def pixmap(
        self,
        size: QSize,
        ratio: float,
        viewport: Viewport,
        wall: str,
        photo: Pyramid | None,
        veil: Pyramid | None,
    ) -> QPixmap:
        """The backdrop at `size`, with `ratio` device pixels a unit."""
        key = (size, ratio, viewport, wall, photo, veil)
        if self._pixmap is None or key != self._key:
            self._pixmap = _draw(size, ratio, viewport, wall, photo, veil)
            self._key = key
        return self._pixmap


def _draw(
    size: QSize,
    ratio: float,
    viewport: Viewport,
    wall: str,
    photo: Pyramid | None,
    veil: Pyramid | None,
) -> QPixmap:
    pixmap = QPixmap(size * ratio)
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(QColor(wall))
    left, top, right, bottom = viewport.visible
    painter = QPainter(pixmap)
    painter.setClipRect(QRectF(left, top, right - left, bottom - top))
    target = QRectF(
        viewport.photo_left, viewport.photo_top, viewport.shown_width, viewport.shown_height
    )
    for layer in (photo, veil):
        if layer is not None:
            layer.draw(painter, target, ratio)
    painter.end()
    return pixmap
