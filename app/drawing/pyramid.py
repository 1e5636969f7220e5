"""Pictures for the canvas, made from arrays; everything here may run in a worker."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QImage, QPainter

_LEAST_SIDE = 256


def image_of(pixels: NDArray[np.uint8]) -> QImage:
    """A QImage with its own memory.

    Parameters
    ----------
    pixels : ndarray, shape (h, w, 3), uint8
        sRGB.
    """
    height, width = pixels.shape[:2]
    pixels = np.ascontiguousarray(pixels)
    lent = QImage(pixels.data, width, height, 3 * width, QImage.Format.Format_RGB888)
    # Converting copies, so the array need not outlive the image; 32 bits draw fastest.
    return lent.convertToFormat(QImage.Format.Format_RGB32)


def veil_of(sky: NDArray[np.bool_] | NDArray[np.float32], colour: str, share: float) -> QImage:
    """A veil over everything that is not sky.

    Parameters
    ----------
    sky : ndarray, shape (h, w), bool or float32
        How much of each place is sky, 0..1.
    colour : str
        "#rrggbb".
    share : float
        How much of the veil's colour covers the photo, 0..1.
    """
    covered = (share * (1 - sky.astype(np.float32)))[..., None]
    channels = [int(colour[i : i + 2], 16) for i in (5, 3, 1)] + [255]  # blue first, as Qt has it
    argb = np.ascontiguousarray(np.rint(covered * np.array(channels, np.float32)), np.uint8)
    height, width = sky.shape
    image = QImage(argb.data, width, height, 4 * width, QImage.Format.Format_ARGB32_Premultiplied)
    return image.copy()  # own memory: the array goes


@dataclass(frozen=True, eq=False)
class Pyramid:
    """One picture at full size, half size, quarter size...

    Drawing from the level just above the wanted size looks as good as a careful reduction of
    the whole, and takes a few milliseconds at any zoom.
    """

    levels: tuple[QImage, ...]

    @classmethod
    def of(cls, image: QImage) -> Pyramid:
        """Halve `image` until it is small."""
        levels = [image]
        while max(levels[-1].width(), levels[-1].height()) > 2 * _LEAST_SIDE:
            last = levels[-1]
            levels.append(
                last.scaled(
                    max(1, (last.width() + 1) // 2),
                    max(1, (last.height() + 1) // 2),
                    Qt.AspectRatioMode.IgnoreAspectRatio,
                    Qt.TransformationMode.SmoothTransformation,
                )
            )
        return cls(tuple(levels))

    def draw(self, painter: QPainter, target: QRectF, device_pixels_per_unit: float) -> None:
        """Draw the whole picture into `target`; the painter clips."""
        wanted = target.width() * device_pixels_per_unit
        level = next(
            (image for image in reversed(self.levels) if image.width() >= wanted * 0.999),
            self.levels[0],
        )
        # Beyond its own pixels a photo shows them, as they are what is read.
        enlarged = wanted > 3 * self.levels[0].width()
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, not enlarged)
        painter.drawImage(target, level)
