"""What an opened photo is: upright sRGB pixels, and which of them count."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray


@dataclass(frozen=True, eq=False)
class Photo:
    """A photo ready for reading and for the screen.

    Attributes
    ----------
    pixels : ndarray, shape (h, w, 3), uint8
        sRGB-encoded, upright, read-only. A working copy: large photos are held smaller
        than they are (`width` and `height` tell the full size). Transparent pixels are white.
    opaque : ndarray, shape (h, w), bool, or None
        False where the picture is transparent (or holds no number); None when every
        pixel counts. Read-only.
    width, height : int
        Full size of the upright picture in pixels.
    name : str
        File name without folders.
    notices : tuple of str
        Sentences for the user, already translated; mostly empty.
    """

    pixels: NDArray[np.uint8]
    opaque: NDArray[np.bool_] | None
    width: int
    height: int
    name: str
    notices: tuple[str, ...] = ()
