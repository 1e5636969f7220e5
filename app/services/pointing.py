"""What is under the mouse on the photo."""

from __future__ import annotations

from core.colour.lab import srgb_to_Lab
from core.photo import Photo
from core.reading.reading import ColourReading, read_colour


def reading_at(photo: Photo | None, point: tuple[float, float] | None) -> ColourReading | None:
    """The colour at a point, fractions of the photo; None beside it and where it is see-through."""
    if photo is None or point is None:
        return None
    height, width = photo.pixels.shape[:2]
    row = min(max(int(point[1] * height), 0), height - 1)
    column = min(max(int(point[0] * width), 0), width - 1)
    if photo.opaque is not None and not photo.opaque[row, column]:
        return None
    return read_colour(srgb_to_Lab(photo.pixels[row, column] / 255))
