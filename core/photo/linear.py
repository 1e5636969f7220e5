"""From a picture's own numbers to linear light with the primaries of sRGB."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np
from numpy.typing import NDArray

from core.colour.srgb import srgb8_to_linear
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
from core.photo.spaces import D50_XYZ, SRGB, XYZ_D50_TO_LINEAR, Encoding

ToLinear = Callable[[NDArray[Any]], NDArray[np.float32]]


def conversion(decoded: Decoded, notices: list[str]) -> tuple[Encoding | None, ToLinear]:
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


def split(stored: NDArray[Any], alpha: bool) -> tuple[NDArray[Any], NDArray[np.float32] | None]:
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
    tables: dict[np.dtype[Any], list[NDArray[np.float32]]] = {}

    def channels(rows: NDArray[Any]) -> NDArray[np.float32]:
        if rows.dtype.kind == "f":
            parts = [encoding.curve(i)(rows[..., i]) for i in range(rows.shape[-1])]
            return np.stack(parts, axis=-1).astype(np.float32)
        if rows.dtype not in tables:
            levels = int(np.iinfo(rows.dtype).max) + 1
            tables[rows.dtype] = [encoding.table(i, levels) for i in range(3)]
        red, green, blue = tables[rows.dtype]
        if np.array_equal(red, green) and np.array_equal(red, blue):
            return np.take(red, rows)
        linear = np.empty(rows.shape, dtype=np.float32)
        for i in range(rows.shape[-1]):
            linear[..., i] = tables[rows.dtype][i][rows[..., i]]
        return linear

    def convert(rows: NDArray[Any]) -> NDArray[np.float32]:
        if rows.shape[-1] == 1 and len(encoding.curves) > 1:
            rows = np.repeat(rows, 3, axis=-1)  # a grey picture with an RGB profile
        linear = channels(rows)
        if linear.shape[-1] == 1:  # grey is neutral in whatever space
            return np.repeat(linear, 3, axis=-1)
        if identity:
            return linear
        flat = linear.reshape(-1, 3) @ matrix  # one product of matrices, not one a row
        return flat.reshape(linear.shape)

    return convert


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
    return np.asarray(XYZ @ XYZ_D50_TO_LINEAR.T, dtype=np.float32)
