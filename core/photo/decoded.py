"""What every format's reader hands on: rows of samples, and what the numbers mean."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, Literal

import numpy as np
from numpy.typing import NDArray

from core.errors import PhotoError
from core.i18n import translate
from core.photo.spaces import SRGB, Encoding

if TYPE_CHECKING:
    from PIL import Image

MAX_PIXELS = 130_000_000
"""Larger pictures are refused from their header: decoding one would need more than 1 GB."""

MAX_ALPHA_PIXELS = 80_000_000
"""Where opacity is weighed, each pixel takes three times as long."""

MAX_SIDE = 65_535
"""A longer side is refused from the header: decoders make room for whole rows, and columns."""

MAX_JPEG_PIXELS = 250_000_000
"""JPEGs are decoded at a reduced scale, so larger ones open too, halved at least."""

Model = Literal["grey", "rgb", "cmyk", "lab"]


@dataclass(eq=False)
class Decoded:
    """A decoded picture before its numbers become sRGB.

    Attributes
    ----------
    rows : callable
        `rows(top, bottom)` gives those stored rows, shape (n, width, channels): uint8, uint16
        or float32. Integers span their whole range; CMYK counts ink; Lab is L, a, b in its
        own units (float32).
    width, height : int
        Size of what `rows` gives, as stored (before any turn).
    full_width, full_height : int
        Size of the whole picture as stored; larger when the decoder has reduced it.
    model : "grey", "rgb", "cmyk" or "lab"
    alpha : bool
        The last channel is opacity (not multiplied into the colours).
    icc : bytes or None
        Embedded colour profile.
    encoding : Encoding
        What the numbers mean when there is no profile.
    orientation : int
        EXIF orientation still to be applied, 1..8.
    notices : list of str
    """

    rows: Callable[[int, int], NDArray[Any]]
    width: int
    height: int
    full_width: int
    full_height: int
    model: Model
    alpha: bool = False
    icc: bytes | None = None
    encoding: Encoding = SRGB
    orientation: int = 1
    notices: list[str] = field(default_factory=list)


def check_size(width: int, height: int, limit: int = MAX_PIXELS) -> None:
    """Refuse a picture that is too large, from its header.

    Raises
    ------
    PhotoError
        More than `limit` pixels, a side longer than `MAX_SIDE`, or no pixel at all.
    """
    if width <= 0 or height <= 0:
        raise PhotoError(damaged())
    if max(width, height) > MAX_SIDE and width * height <= limit:
        text = translate(
            "photo",
            "This picture is too long to open ({width} x {height} pixels): the limit is {limit} "
            "pixels a side, so cut it and open a part.",
        )
        raise PhotoError(text.format(width=width, height=height, limit=MAX_SIDE))
    if width * height > limit:
        text = translate(
            "photo",
            "This picture is too large to open ({width} x {height} pixels): the limit is "
            "{limit} million pixels, so save a smaller copy and open that.",
        )
        raise PhotoError(text.format(width=width, height=height, limit=limit // 1_000_000))


def damaged() -> str:
    """The sentence for a file whose content makes no sense."""
    return translate(
        "photo", "This picture file is damaged: copy or download it again, or save it again."
    )


def incomplete() -> str:
    """The sentence for a file that ends too early."""
    return translate(
        "photo",
        "This picture file is incomplete (it ends before the bottom of the picture): copy or "
        "download it again.",
    )


def several_pictures() -> str:
    """The notice for a file that holds more than one picture."""
    return translate("photo", "This file holds several pictures: the first (main) one is used.")


def from_image(image: Image.Image) -> tuple[Callable[[int, int], NDArray[Any]], Model, bool]:
    """Rows, model and opacity of a loaded Pillow picture; palettes are looked up.

    Parameters
    ----------
    image : PIL.Image.Image
        Of any mode but LAB, I and F, which only TIFF has.
    """
    modes: dict[str, tuple[str, Model, bool]] = {
        "1": ("L", "grey", False),
        "L": ("L", "grey", False),
        "I;16": ("I;16", "grey", False),
        "I;16L": ("I;16L", "grey", False),
        "I;16B": ("I;16B", "grey", False),
        "LA": ("LA", "grey", True),
        "La": ("LA", "grey", True),
        "PA": ("RGBA", "rgb", True),
        "RGB": ("RGB", "rgb", False),
        "RGBX": ("RGB", "rgb", False),
        "RGBA": ("RGBA", "rgb", True),
        "RGBa": ("RGBA", "rgb", True),
        "YCbCr": ("RGB", "rgb", False),
        "CMYK": ("CMYK", "cmyk", False),
    }
    if image.mode in ("P", "1", "L", "RGB") and "transparency" in image.info:
        target: tuple[str, Model, bool] = ("RGBA", "rgb", True)
    elif image.mode == "P":
        target = ("RGB", "rgb", False)
    elif image.mode in modes:
        target = modes[image.mode]
    else:
        raise PhotoError(damaged())
    mode, model, alpha = target

    def rows(top: int, bottom: int) -> NDArray[Any]:
        whole = top == 0 and bottom == image.height
        part = image if whole else image.crop((0, top, image.width, bottom))
        if part.mode != mode:
            part = part.convert(mode)
        array = np.asarray(part)
        return array[..., np.newaxis] if array.ndim == 2 else array

    return rows, model, alpha
