"""HEIC and AVIF: pictures in boxes (ISO/IEC 14496-12), which say themselves how they are turned.

The turn is part of decoding and happens there, once; the EXIF block's orientation only repeats
it and is not applied (ISO/IEC 23008-12, 6.5.10 and A.2.1).
"""

from __future__ import annotations

import io
from collections.abc import Iterator
from typing import Any

import numpy as np

from core.errors import PhotoError
from core.i18n import translate
from core.photo import meta
from core.photo.decoded import Decoded, check_size, damaged, from_image, incomplete
from core.photo.spaces import encoding_from_codes


def boxes(data: bytes, start: int, end: int) -> Iterator[tuple[bytes, int, int]]:
    """Name, start and end of the content of each box between two places."""
    at = start
    while at + 8 <= end:
        size = int.from_bytes(data[at : at + 4], "big")
        head = 8
        if size == 1:
            size, head = int.from_bytes(data[at + 8 : at + 16], "big"), 16
        if size == 0:
            size = end - at
        if size < head:
            return
        yield data[at + 4 : at + 8], at + head, at + size
        at += size


def _ends_early(data: bytes) -> bool:
    return any(end > len(data) for _, _, end in boxes(data, 0, len(data)))


def read_heif(data: bytes) -> Decoded:
    """Decode the main picture of a HEIC or HEIF file.

    Raises
    ------
    PhotoError
        Damaged, incomplete, too large, or compressed in a way nobody here decodes.
    """
    if _ends_early(data):
        raise PhotoError(incomplete())
    import pillow_heif  # deferred: start-up time

    try:
        container = pillow_heif.open_heif(data, convert_hdr_to_8bit=False)
        picture = container[container.primary_index]
        check_size(*picture.size)
        picture.load()
        array = np.asarray(picture)
    except (OSError, SyntaxError, ValueError, RuntimeError, EOFError, IndexError) as error:
        raise PhotoError(damaged()) from error
    info: dict[str, Any] = dict(picture.info)
    mode = str(picture.mode)
    height, width = array.shape[:2]
    if array.ndim == 2:
        array = array[..., np.newaxis]
    if mode.split(";")[0] not in ("L", "LA", "La", "RGB", "RGBA", "RGBa"):
        raise PhotoError(damaged())
    photo = Decoded(
        lambda top, bottom: array[top:bottom],
        width,
        height,
        width,
        height,
        "grey" if mode.startswith("L") else "rgb",
        alpha=array.shape[2] in (2, 4),
        icc=info.get("icc_profile") or None,
    )
    _name_colours(photo, info.get("nclx_profile"))
    return photo


def _name_colours(photo: Decoded, nclx: dict[str, int] | None) -> None:
    if photo.icc is None and nclx:
        primaries = int(nclx.get("color_primaries", 1))
        transfer = int(nclx.get("transfer_characteristics", 13))
        photo.encoding, notices = encoding_from_codes(primaries, transfer)
        photo.notices += notices


def read_avif(data: bytes) -> Decoded:
    """Decode the main picture of an AVIF file.

    Raises
    ------
    PhotoError
        Damaged, incomplete, too large, or this Pillow cannot decode AVIF.
    """
    if _ends_early(data):
        raise PhotoError(incomplete())
    from PIL import AvifImagePlugin  # deferred: start-up time

    if not AvifImagePlugin.SUPPORTED:
        raise PhotoError(
            translate(
                "photo", "AVIF pictures cannot be opened here: export this one as a JPEG or PNG."
            )
        )
    try:
        image = AvifImagePlugin.AvifImageFile(io.BytesIO(data))
        check_size(*image.size)
        # Pillow hands the container's turn on as EXIF orientation, the EXIF's own overruled.
        exif = image.info.get("exif")
        icc = image.info.get("icc_profile")
        image.load()
    except (OSError, SyntaxError, ValueError, RuntimeError, EOFError) as error:
        raise PhotoError(damaged()) from error
    rows, model, alpha = from_image(image)
    photo = Decoded(rows, *image.size, *image.size, model, alpha, icc)
    photo.orientation = meta.orientation(exif)
    _name_colours(photo, _nclx(data))
    return photo


def _nclx(data: bytes) -> dict[str, int] | None:
    """The colour code points of a file whose decoder does not tell them."""
    at = data.find(b"colrnclx", 0, 100_000)
    if at < 0 or at + 12 > len(data):
        return None
    return {
        "color_primaries": int.from_bytes(data[at + 8 : at + 10], "big"),
        "transfer_characteristics": int.from_bytes(data[at + 10 : at + 12], "big"),
    }
