"""Embedded colour profiles: those of curves and a matrix by arithmetic, the others by LittleCMS.

Nearly every camera, phone and screen profile holds three curves and three primaries. Those are
computed here, unclipped, so that a colour outside sRGB is noticed. Profiles made of tables
(all CMYK ones, few RGB ones) go through Pillow's LittleCMS, which gives 8-bit sRGB.
"""

from __future__ import annotations

import io
import struct
from collections.abc import Callable
from typing import Any

import numpy as np
from numpy.typing import NDArray

from core.i18n import translate
from core.photo.spaces import D50_XYZ, XYZ_D50_TO_LINEAR, Curve, Encoding, Floats

_SPACES = {b"RGB ": "rgb", b"GRAY": "grey", b"CMYK": "cmyk", b"Lab ": "lab"}


def profile_damaged_notice() -> str:
    """The notice for a profile that cannot be used."""
    return translate(
        "photo", "The colour profile in this file is damaged: its colours are read as sRGB."
    )


def profile_misfit_notice() -> str:
    """The notice for a profile that belongs to another kind of picture."""
    return translate("photo", "The colour profile in this file does not fit it and was ignored.")


class ProfileDamagedError(Exception):
    """The profile's bytes make no sense."""


def profile_model(icc: bytes) -> str:
    """What kind of numbers a profile is for: "grey", "rgb", "cmyk", "lab" or another word.

    Raises
    ------
    ProfileDamagedError
        Too short, or not a profile at all (ICC.1:2022, 7.2).
    """
    if len(icc) < 132 or icc[36:40] != b"acsp":
        raise ProfileDamagedError("no profile header")
    if int.from_bytes(icc[:4], "big") > len(icc):
        raise ProfileDamagedError("cut short")
    return _SPACES.get(icc[16:20], "other")


def matrix_encoding(icc: bytes) -> Encoding | None:
    """The curves and matrix of a grey or RGB profile.

    Returns
    -------
    Encoding or None
        None: the profile works with tables instead.

    Raises
    ------
    ProfileDamagedError
        Tags missing, cut short, or not finite.

    Notes
    -----
    Source: ICC.1:2022, 8.3 (which tags), annex F.3 (the computation), 10.6 curveType,
    10.18 parametricCurveType, 10.31 XYZType.
    """
    tags = tags_of(icc)
    model = profile_model(icc)
    if b"A2B0" in tags or (icc[20:24] != b"XYZ " and model == "rgb"):
        return None
    if model == "grey":
        if b"kTRC" not in tags:
            raise ProfileDamagedError("no grey curve")
        return Encoding((_curve(tags[b"kTRC"]),), np.eye(3))
    names = (b"rTRC", b"gTRC", b"bTRC", b"rXYZ", b"gXYZ", b"bXYZ")
    if any(name not in tags for name in names):
        raise ProfileDamagedError("tags missing")
    columns = np.stack([_xyz(tags[name]) for name in names[3:]], axis=1)
    white = columns.sum(axis=1)
    # Primaries that do not add up to the profiles' white belong to a broken profile.
    if not 0.5 < white[1] < 1.5 or np.abs(white / white[1] - D50_XYZ).max() > 0.25:
        raise ProfileDamagedError("primaries do not make white")
    return Encoding(tuple(_curve(tags[name]) for name in names[:3]), XYZ_D50_TO_LINEAR @ columns)


def table_transform(icc: bytes, model: str) -> Callable[[NDArray[np.uint8]], NDArray[np.uint8]]:
    """8-bit rows to 8-bit sRGB through LittleCMS, relative colorimetric.

    Parameters
    ----------
    icc : bytes
    model : "rgb", "cmyk" or "grey"
        Of the rows, shape (n, width, channels); CMYK counts ink.

    Raises
    ------
    ProfileDamagedError
        LittleCMS cannot use the profile.
    """
    from PIL import Image, ImageCms  # deferred: start-up time

    mode = {"rgb": "RGB", "cmyk": "CMYK", "grey": "L"}[model]
    try:
        transform = ImageCms.buildTransform(
            ImageCms.ImageCmsProfile(io.BytesIO(icc)),
            ImageCms.createProfile("sRGB"),
            mode,
            "RGB",
            ImageCms.Intent.RELATIVE_COLORIMETRIC,
        )
    except (ImageCms.PyCMSError, OSError, ValueError, TypeError) as error:
        raise ProfileDamagedError(str(error)) from error

    def apply(rows: NDArray[np.uint8]) -> NDArray[np.uint8]:
        flat = rows[..., 0] if mode == "L" else rows
        done = ImageCms.applyTransform(Image.fromarray(flat, mode), transform)
        return np.asarray(done)

    return apply


def tags_of(icc: bytes) -> dict[bytes, bytes]:
    """The content of each tag of a profile, by its signature.

    Raises
    ------
    ProfileDamagedError
        The table of tags, or a tag, does not fit into the profile.
    """
    try:
        (count,) = struct.unpack_from(">I", icc, 128)
        if count > 200:
            raise ProfileDamagedError("too many tags")
        tags = {}
        for i in range(count):
            name, offset, size = struct.unpack_from(">4sII", icc, 132 + 12 * i)
            if offset + size > len(icc):
                raise ProfileDamagedError("cut short")
            tags[name] = icc[offset : offset + size]
    except struct.error as error:
        raise ProfileDamagedError("cut short") from error
    return tags


def _xyz(tag: bytes) -> Floats:
    if tag[:4] != b"XYZ " or len(tag) < 20:
        raise ProfileDamagedError("not an XYZ tag")
    return np.array(struct.unpack_from(">3i", tag, 8)) / 65536


def _curve(tag: bytes) -> Curve:
    try:
        if tag[:4] == b"curv":
            (count,) = struct.unpack_from(">I", tag, 8)
            if len(tag) < 12 + 2 * count:
                raise ProfileDamagedError("cut short")
            numbers = np.frombuffer(tag, ">u2", count, 12)
            if count == 0:
                return _sampled(np.array([0.0, 1.0]))
            if count == 1:
                return _parametric(0, [numbers[0] / 256])
            return _sampled(numbers / 65535)
        if tag[:4] == b"para":
            (kind,) = struct.unpack_from(">H", tag, 8)
            if kind > 4:
                raise ProfileDamagedError("unknown curve")
            values = struct.unpack_from(f">{(1, 3, 4, 5, 7)[kind]}i", tag, 12)
            return _parametric(kind, [value / 65536 for value in values])
    except struct.error as error:
        raise ProfileDamagedError("cut short") from error
    raise ProfileDamagedError("unknown curve")


def _sampled(values: Floats) -> Curve:
    grid = np.linspace(0.0, 1.0, len(values))
    return lambda x: np.interp(x, grid, values)


def _parametric(kind: int, values: list[Any]) -> Curve:
    """ICC.1:2022, table 68: g a b c d e f; what a kind does not have is neutral."""
    g = values[0]
    a, b = values[1:3] if kind else (1.0, 0.0)
    c = values[3] if kind >= 2 else 0.0
    d = values[4] if kind >= 3 else (-b / a if kind and a else -np.inf)
    e, f = values[5:7] if kind == 4 else (c, 0.0)
    if not 0.05 < g < 20:
        raise ProfileDamagedError("impossible curve")
    if kind == 3:  # Y = c X below d, and nothing is added above
        below = (c, 0.0, 0.0)
    elif kind == 4:  # Y = c X + f below d, and e is added above
        below = (c, f, e)
    else:  # Y = c below -b/a, and c is added above
        below = (0.0, c, c)
    slope, offset, added = below

    def curve(x: Floats) -> Floats:
        high = np.clip(a * x + b, 0.0, None) ** g + added
        return np.clip(np.where(x >= d, high, slope * x + offset), 0.0, 1.0)

    return curve
