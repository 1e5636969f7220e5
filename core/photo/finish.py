"""From decoded samples to a `Photo`: one colour space, one size, upright."""

from __future__ import annotations

from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from core.colour.srgb import linear_to_srgb
from core.errors import PhotoError
from core.i18n import translate
from core.photo.decoded import Decoded
from core.photo.linear import conversion, split
from core.photo.model import Photo
from core.photo.reduce import block_sizes, block_sums, wanted_factor
from core.progress import Progress, ShouldStop, step

_STRIP_PIXELS = 60_000  # fits the processor's cache
# A channel this far outside 0..1 in linear light is 3 to 6 of 255 codes away from the colour
# shown; fewer pixels than this share never move a band's reading.
_BELOW, _ABOVE = -0.0015, 1.02
_OUTSIDE_SHARE = 0.01


def finish(
    decoded: Decoded,
    max_work_pixels: int,
    name: str,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> Photo:
    """Convert, reduce and turn a decoded picture.

    Parameters
    ----------
    decoded : Decoded
    max_work_pixels : int
        Most pixels of the result; blocks of pixels are averaged in linear light.
    name : str

    Raises
    ------
    PhotoError
        Not one pixel is opaque.
    Cancelled
    """
    notices = list(decoded.notices)
    encoding, to_linear = conversion(decoded, notices)
    factor = wanted_factor(decoded.width, decoded.height, max_work_pixels)
    height, width = -(-decoded.height // factor), -(-decoded.width // factor)
    pixels = np.empty((height, width, 3), dtype=np.uint8)
    opaque = np.ones((height, width), dtype=np.bool_)
    outside = 0
    strip = max(1, _STRIP_PIXELS // (decoded.width * factor)) * factor
    plain = encoding is not None and factor == 1 and not decoded.alpha and encoding.is_srgb()
    for top in range(0, decoded.height, strip):
        step(0.3 + 0.7 * top / decoded.height, progress, should_stop)
        stored = decoded.rows(top, min(top + strip, decoded.height))
        if plain and stored.dtype == np.uint8:
            pixels[top : top + strip] = stored  # 8-bit sRGB already; grey spreads over three
            continue
        colours, weights = split(stored, decoded.alpha)
        linear = to_linear(colours)
        blocks = block_sizes(stored.shape[0], stored.shape[1], factor)
        if weights is not None:
            linear = np.where(weights > 0, linear, np.float32(0)) * weights
        sums = block_sums(linear, factor)
        rows = slice(top // factor, top // factor + sums.shape[0])
        if weights is None:
            light = sums if factor == 1 else sums / blocks
        else:
            weight = block_sums(weights, factor)
            opaque[rows] = weight[..., 0] >= 0.5 * blocks[..., 0]
            light = sums / np.maximum(weight, np.float32(1e-6))
            light[~opaque[rows]] = 1.0  # what is left out is shown as white paper
        if light.min() < _BELOW or light.max() > _ABOVE:
            vivid = (light < _BELOW) | (light > _ABOVE)
            vivid = vivid[..., 0] | vivid[..., 1] | vivid[..., 2]
            outside += int(np.count_nonzero(vivid & opaque[rows]))
        pixels[rows] = _encode(light)
    counted = int(np.count_nonzero(opaque))
    if counted == 0:
        raise PhotoError(
            translate("photo", "This picture is completely transparent: there is nothing to read.")
        )
    if counted < opaque.size:
        notices.append(
            translate(
                "photo",
                "Part of this picture is transparent: it is shown white and left out of every "
                "reading.",
            )
        )
    if outside > _OUTSIDE_SHARE * counted:
        notices.append(
            translate(
                "photo",
                "Some colours here are more vivid than a screen's colour space (sRGB) can hold: "
                "their intensity is at least what is read.",
            )
        )
    return _photo(pixels, opaque if counted < opaque.size else None, decoded, name, notices)


@lru_cache(maxsize=1)
def _encode_table() -> NDArray[np.uint8]:
    return np.rint(linear_to_srgb(np.arange(65536) / 65535) * 255).astype(np.uint8)


def _encode(light: NDArray[np.float32]) -> NDArray[np.uint8]:
    """8-bit sRGB of linear light, clipped."""
    codes = np.clip(light, 0, 1) * np.float32(65535) + np.float32(0.5)
    encoded: NDArray[np.uint8] = _encode_table()[codes.astype(np.uint16)]
    return encoded


def _photo(
    pixels: NDArray[np.uint8],
    opaque: NDArray[np.bool_] | None,
    decoded: Decoded,
    name: str,
    notices: list[str],
) -> Photo:
    width, height = decoded.full_width, decoded.full_height
    if decoded.orientation >= 5:
        width, height = height, width
    pixels = np.ascontiguousarray(_turn(pixels, decoded.orientation))
    pixels.flags.writeable = False
    if opaque is not None:
        opaque = np.ascontiguousarray(_turn(opaque, decoded.orientation))
        opaque.flags.writeable = False
    return Photo(pixels, opaque, width, height, name, tuple(dict.fromkeys(notices)))


def _turn(array: NDArray[Any], orientation: int) -> NDArray[Any]:
    """Upright from stored; source: EXIF 3.0 (CIPA DC-008), tag 0x0112."""
    if orientation >= 5:
        array = array.swapaxes(0, 1)
    if orientation in (3, 4, 7, 8):
        array = array[::-1]
    if orientation in (2, 3, 6, 7):
        array = array[:, ::-1]
    return array
