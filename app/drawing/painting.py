"""The sky as it is painted: the photo gives way to the washes that the plan predicts."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QBrush, QColor, QLinearGradient, QPainter

from app.drawing.ink import kept
from app.drawing.pyramid import Pyramid


@dataclass(frozen=True)
class WashView:
    """A stretch of paint.

    Attributes
    ----------
    top, bottom : float
        Fractions of the photo's height.
    colours : tuple of str
        From top to bottom, "#rrggbb"; one is flat.
    share : float
        How much of its width the brush has covered, 0..1, from the left.
    """

    top: float
    bottom: float
    colours: tuple[str, ...]
    share: float = 1.0


@dataclass(frozen=True, eq=False)
class PaintedView:
    """A sky, partly painted.

    Attributes
    ----------
    picture : Pyramid
    horizon : float
        Where the sky ends, a fraction of the photo's height.
    washes : tuple of WashView
    begins : float
        Paint begins at this share of the width; the photo stays left of it.
    """

    picture: Pyramid
    horizon: float
    washes: tuple[WashView, ...]
    begins: float = 0.0


def photo_of(sky: QRectF, horizon: float) -> QRectF:
    """Where the whole photo would be behind its sky."""
    return QRectF(sky.left(), sky.top(), sky.width(), sky.height() / max(horizon, 1e-6))


def paint_painted(
    painter: QPainter, sky: QRectF, view: PaintedView, device_pixels_per_unit: float
) -> None:
    """Draw the sky into `sky`: the photo, and paint over it, with no line between."""
    photo = photo_of(sky, view.horizon)
    with kept(painter):
        painter.setClipRect(sky)
        view.picture.draw(painter, photo, device_pixels_per_unit)
        paint_washes(painter, photo, view.washes, view.begins)


def paint_washes(
    painter: QPainter, photo: QRectF, washes: Sequence[WashView], begins: float = 0.0
) -> None:
    """Draw washes where the whole photo would be at `photo`."""
    left = photo.left() + begins * photo.width()
    for wash in washes:
        # Whole pixels: stretches that touch leave no seam.
        top = round(photo.top() + wash.top * photo.height())
        bottom = round(photo.top() + wash.bottom * photo.height())
        width = wash.share * (photo.right() - left)
        rect = QRectF(left, top, width, bottom - top)
        painter.fillRect(rect, _run(rect, wash.colours))


def _run(rect: QRectF, colours: tuple[str, ...]) -> QBrush:
    if len(colours) == 1:
        return QBrush(QColor(colours[0]))
    gradient = QLinearGradient(QPointF(0, rect.top()), QPointF(0, rect.bottom()))
    for number, colour in enumerate(colours):
        gradient.setColorAt(number / (len(colours) - 1), QColor(colour))
    return QBrush(gradient)
