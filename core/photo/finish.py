"""From decoded samples to a `Photo`: one colour space, one size, upright."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from core.colour.srgb import linear_to_srgb, srgb8_to_linear
from core.errors import PhotoError
from core.i18n import translate
from core.photo.decoded import Decoded
from core.photo.icc import (
    ProfileDamagedError,
    matrix_encoding,
    profile_damaged_notice,
    profile_misfit_notice,
    profile_model,
    table_transform,
)
from core.photo.model import Photo
from core.photo.reduce import block_sizes, block_sums, wanted_factor
from core.photo.spaces import D50_XYZ, SRGB, XYZ_D50_TO_LINEAR, Encoding
from core.progress import Progress, ShouldStop, step

_STRIP_SAMPLES = 500_000
# A channel this far outside 0..1 in linear light is 3 to 6 of 255 codes away from the colour
# shown; fewer pixels than this share never move a band's reading.
_BELOW, _ABOVE = -0.0015, 1.02
_OUTSIDE_SHARE = 0.01

ToLinear = Callable[[NDArray[Any]], NDArray[np.float32]]


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
    encoding, to_linear = _conversion(decoded, notices)
    factor = wanted_factor(decoded.width, decoded.height, max_work_pixels)
    if encoding is not None and factor == 1 and not decoded.alpha and encoding.is_srgb():
        pixels = _as_stored(decoded)
        if pixels is not None:
            return _photo(pixels, None, decoded, name, notices)
    height, width = -(-decoded.height // factor), -(-decoded.width // factor)
    pixels = np.empty((height, width, 3), dtype=np.uint8)
    opaque = np.ones((height, width), dtype=np.bool_)
    outside = 0
    strip = max(1, _STRIP_SAMPLES // (decoded.width * factor)) * factor
    for top in range(0, decoded.height, strip):
        step(0.3 + 0.7 * top / decoded.height, progress, should_stop)
        stored = decoded.rows(top, min(top + strip, decoded.height))
        colours, weights = _split(stored, decoded.alpha)
        linear = to_linear(colours)
        if weights is not None:
            linear = np.where(weights > 0, linear, np.float32(0)) * weights
        sums = block_sums(linear, factor)
        rows = slice(top // factor, top // factor + sums.shape[0])
        if weights is None:
            light = sums if factor == 1 else sums / block_sizes(*stored.shape[:2], factor)
        else:
            weight = block_sums(weights, factor)
            opaque[rows] = weight[..., 0] >= 0.5 * block_sizes(*stored.shape[:2], factor)[..., 0]
            light = sums / np.maximum(weight, np.float32(1e-6))
            light[~opaque[rows]] = 1.0  # what is left out is shown as white paper
        outside += np.count_nonzero(
            ((light < _BELOW) | (light > _ABOVE)).any(axis=-1) & opaque[rows]
        )
        pixels[rows] = _encode(light)
    counted = np.count_nonzero(opaque)
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


def _conversion(decoded: Decoded, notices: list[str]) -> tuple[Encoding | None, ToLinear]:
    """The encoding, when the numbers have one, and the way to linear sRGB light."""
    if decoded.model == "lab":
        return None, _lab_to_linear
    if decoded.icc is not None:
        try:
            wanted = profile_model(decoded.icc)
            if wanted != decoded.model and not (wanted == "rgb" and decoded.model == "grey"):
                notices.append(profile_misfit_notice())
            elif decoded.model != "cmyk":
                encoding = matrix_encoding(decoded.icc)
                if encoding is not None:
                    return encoding, _by_encoding(encoding)
                return None, _by_tables(table_transform(decoded.icc, wanted), wanted)
            else:
                return None, _by_tables(table_transform(decoded.icc, "cmyk"), "cmyk")
        except ProfileDamagedError:
            notices.append(profile_damaged_notice())
        decoded.encoding = SRGB
    if decoded.model == "cmyk":
        notices.append(
            translate(
                "photo",
                "This is a picture for printing (CMYK) without a usable colour profile: its "
                "colours are approximate.",
            )
        )
        return None, _cmyk_to_linear
    return decoded.encoding, _by_encoding(decoded.encoding)


def _split(stored: NDArray[Any], alpha: bool) -> tuple[NDArray[Any], NDArray[np.float32] | None]:
    """Colours, and opacity 0..1, shape (n, w, 1); what is no number is not opaque."""
    colours = stored[..., :-1] if alpha else stored
    weights = None
    if alpha:
        full = 1.0 if stored.dtype.kind == "f" else np.iinfo(stored.dtype).max
        weights = stored[..., -1:].astype(np.float32) / np.float32(full)
    if stored.dtype.kind == "f" and not np.isfinite(stored).all():
        finite = np.isfinite(stored).all(axis=-1, keepdims=True)
        weights = finite.astype(np.float32) if weights is None else np.where(finite, weights, 0)
        colours = np.where(finite, colours, 0)
    return colours, weights


def _by_encoding(encoding: Encoding) -> ToLinear:
    matrix = encoding.matrix.T.astype(np.float32)
    identity = np.array_equal(encoding.matrix, np.eye(3))

    def convert(rows: NDArray[Any]) -> NDArray[np.float32]:
        linear = _linear_channels(encoding, rows)
        if linear.shape[-1] == 1:  # grey is neutral in whatever space
            return np.repeat(linear, 3, axis=-1)
        return linear if identity else linear @ matrix

    return convert


def _linear_channels(encoding: Encoding, rows: NDArray[Any]) -> NDArray[np.float32]:
    if rows.dtype.kind == "f":
        parts = [
            encoding.curves[min(i, len(encoding.curves) - 1)](rows[..., i].astype(np.float64))
            for i in range(rows.shape[-1])
        ]
        return np.stack(parts, axis=-1).astype(np.float32)
    levels = int(np.iinfo(rows.dtype).max) + 1
    linear = np.empty(rows.shape, dtype=np.float32)
    for i in range(rows.shape[-1]):
        linear[..., i] = encoding.table(i, levels)[rows[..., i]]
    return linear


def _by_tables(transform: Callable[[Any], Any], model: str) -> ToLinear:
    def convert(rows: NDArray[Any]) -> NDArray[np.float32]:
        if rows.dtype == np.uint16:
            rows = ((rows.astype(np.uint32) * 255 + 32767) // 65535).astype(np.uint8)
        elif rows.dtype.kind == "f":
            rows = np.rint(np.clip(rows, 0, 1) * 255).astype(np.uint8)
        if model == "rgb" and rows.shape[-1] == 1:
            rows = np.repeat(rows, 3, axis=-1)
        return srgb8_to_linear(transform(np.ascontiguousarray(rows)))

    return convert


def _cmyk_to_linear(rows: NDArray[Any]) -> NDArray[np.float32]:
    """Paper less ink, channel by channel: right in hue, too vivid in intensity."""
    part = rows.astype(np.float32) / np.float32(np.iinfo(rows.dtype).max)
    encoded = (1 - part[..., :3]) * (1 - part[..., 3:4])
    return srgb8_to_linear(np.rint(encoded * 255).astype(np.uint8))


def _lab_to_linear(rows: NDArray[Any]) -> NDArray[np.float32]:
    """CIELAB under D50 (ISO 13655's white, as picture editors store it); CIE 15:2018, 8.2.1."""
    fy = (rows[..., 0] + 16) / 116
    f = np.stack([fy + rows[..., 1] / 500, fy, fy - rows[..., 2] / 200], axis=-1)
    XYZ = np.where(f > 6 / 29, f**3, (f - 4 / 29) * 3 * (6 / 29) ** 2) * D50_XYZ
    return (XYZ @ XYZ_D50_TO_LINEAR.T).astype(np.float32)


@lru_cache(maxsize=1)
def _encode_table() -> NDArray[np.uint8]:
    return np.rint(linear_to_srgb(np.arange(65536) / 65535) * 255).astype(np.uint8)


def _encode(light: NDArray[np.float32]) -> NDArray[np.uint8]:
    """8-bit sRGB of linear light, clipped."""
    codes = np.clip(light, 0, 1) * np.float32(65535) + np.float32(0.5)
    return _encode_table()[codes.astype(np.uint16)]


def _as_stored(decoded: Decoded) -> NDArray[np.uint8] | None:
    """The rows themselves when they are 8-bit sRGB already."""
    rows = decoded.rows(0, decoded.height)
    if rows.dtype != np.uint8:
        return None
    return np.repeat(rows, 3, axis=-1) if rows.shape[-1] == 1 else rows


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
