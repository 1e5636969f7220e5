"""PNG: only the chunks that make the picture reach the decoder; the others are read here.

So a side chunk that is damaged, or that unpacks to gigabytes, neither stops a picture nor
fills the memory.
"""

from __future__ import annotations

import io
import struct
import zlib
from collections.abc import Iterator
from typing import Any

import numpy as np
from numpy.typing import NDArray

from core.colour.srgb import srgb_to_linear
from core.errors import PhotoError
from core.photo import meta
from core.photo.decoded import (
    MAX_ALPHA_PIXELS,
    MAX_PIXELS,
    Decoded,
    check_size,
    damaged,
    from_image,
    incomplete,
    several_pictures,
)
from core.photo.icc import profile_damaged_notice
from core.photo.spaces import (
    BT709,
    D65,
    SRGB,
    Encoding,
    encoding_from_codes,
    encoding_of,
    gamma_curve,
)

_SIGNATURE = b"\x89PNG\r\n\x1a\n"
_MAX_SIDE_BYTES = 8_000_000
# Both halves of a 16-bit picture are in memory at once; beyond this only the upper one is read.
_MAX_16_BIT_PIXELS = 50_000_000
_CHANNELS = {0: 1, 2: 3, 3: 1, 4: 2, 6: 4}


def chunks(data: bytes) -> Iterator[tuple[bytes, int, int]]:
    """Name, start and end of the content of each chunk; a last one that is cut ends early."""
    at = 8
    while at + 8 <= len(data):
        (size,) = struct.unpack_from(">I", data, at)
        name = data[at + 4 : at + 8]
        yield name, at + 8, min(at + 8 + size, len(data))
        if name == b"IEND":
            return
        at += 12 + size


def unpack(data: bytes, limit: int = _MAX_SIDE_BYTES) -> bytes | None:
    """Inflate a side chunk; None when it is damaged or larger than any honest one."""
    inflater = zlib.decompressobj()
    try:
        content = inflater.decompress(data, limit)
    except zlib.error:
        return None
    return content if inflater.eof else None


def read_png(data: bytes) -> Decoded:
    """Decode a PNG; of an animated one the still picture.

    Raises
    ------
    PhotoError
        Damaged, incomplete or too large.
    """
    side: dict[bytes, bytes] = {}
    xmp = None
    kept: list[tuple[bytes, bytes]] = []
    picture: list[memoryview] = []
    whole = False
    view = memoryview(data)
    for name, start, end in chunks(data):
        if name == b"IDAT":
            picture.append(view[start:end])
        elif name in (b"IHDR", b"PLTE", b"tRNS"):
            kept.append((name, data[start:end]))
            if name != b"tRNS" and data[start - 8 : end + 4] != _chunk(*kept[-1]):
                raise PhotoError(damaged())  # wrong check sum: size and colours may be wrong
        elif name in (b"iCCP", b"gAMA", b"cHRM", b"sRGB", b"cICP", b"eXIf", b"acTL"):
            side.setdefault(name, data[start : min(end, start + _MAX_SIDE_BYTES)])
        elif name == b"iTXt" and data[start : start + 18] == b"XML:com.adobe.xmp\0":
            xmp = data[start + 18 : min(end, start + _MAX_SIDE_BYTES)]
        whole |= name == b"IEND"
    header = dict(kept).get(b"IHDR", b"")
    if len(header) != 13:
        raise PhotoError(damaged() if whole else incomplete())
    width, height, bits, colour = struct.unpack(">IIBB", header[:10])
    see_through = colour in (4, 6) or any(name == b"tRNS" for name, _ in kept)
    check_size(width, height, MAX_ALPHA_PIXELS if see_through else MAX_PIXELS)
    packed = b"".join(picture)
    clean = _SIGNATURE + b"".join(
        _chunk(name, content)
        for name, content in [*kept, (b"IDAT", packed), (b"IEND", b"")]
        if name != b"tRNS" or colour == 3
    )
    del picture, packed
    try:
        photo = _decode(clean, width, height, bits, colour)
    except (OSError, SyntaxError, ValueError, KeyError, struct.error) as error:
        raise PhotoError(damaged() if whole else incomplete()) from error
    _cut_out(photo, dict(kept).get(b"tRNS"), bits, colour)
    photo.orientation = meta.orientation(side.get(b"eXIf"), xmp)
    _colours(photo, side)
    if b"acTL" in side:
        photo.notices.append(several_pictures())
    return photo


def _chunk(name: bytes, content: bytes) -> bytes:
    check = zlib.crc32(content, zlib.crc32(name))
    return struct.pack(">I", len(content)) + name + content + struct.pack(">I", check)


def _decode(clean: bytes, width: int, height: int, bits: int, colour: int) -> Decoded:
    from PIL import PngImagePlugin  # deferred: start-up time

    image = PngImagePlugin.PngImageFile(io.BytesIO(clean))
    tile = image.tile[0]
    image.load()
    rows, model, alpha = from_image(image)
    if bits == 16 and colour in (2, 6) and width * height <= _MAX_16_BIT_PIXELS:
        # Pillow keeps the upper byte of each sample. Told that the bytes stand the other way
        # round, it keeps the lower one: two passes give all 16 bits.
        lower = PngImagePlugin.PngImageFile(io.BytesIO(clean))
        raw = tile.args[0] if isinstance(tile.args, tuple) else tile.args
        lower.tile = [tile._replace(args=str(raw).replace("16B", "16L"))]
        lower.load()
        lower_rows, _, _ = from_image(lower)
        upper_rows = rows

        def rows(top: int, bottom: int) -> NDArray[Any]:
            upper = upper_rows(top, bottom).astype(np.uint16)
            both: NDArray[np.uint16] = (upper << 8) | lower_rows(top, bottom)
            return both

    return Decoded(rows, width, height, width, height, model, alpha)


def _cut_out(photo: Decoded, key: bytes | None, bits: int, colour: int) -> None:
    """Make the one colour that tRNS names transparent (grey and RGB pictures)."""
    if key is None or colour not in (0, 2) or len(key) < 2 * _CHANNELS[colour]:
        return
    numbers = np.array(struct.unpack_from(f">{_CHANNELS[colour]}H", key), dtype=np.int64)
    if bits < 8:
        numbers = numbers * 255 // ((1 << bits) - 1)
    stored = photo.rows

    def rows(top: int, bottom: int) -> NDArray[Any]:
        array = stored(top, bottom)
        levels = numbers >> 8 if bits == 16 and array.dtype == np.uint8 else numbers
        opaque = (array != levels).any(axis=-1, keepdims=True)
        full = np.iinfo(array.dtype).max
        return np.concatenate([array, opaque.astype(array.dtype) * full], axis=-1)

    photo.rows, photo.alpha = rows, True


def _colours(photo: Decoded, side: dict[bytes, bytes]) -> None:
    """Source: PNG (Third Edition), 4.3 and 11.3.2: cICP, iCCP, sRGB, then gAMA with cHRM."""
    if len(side.get(b"cICP", b"")) == 4:
        primaries, transfer = side[b"cICP"][:2]
        photo.encoding, notices = encoding_from_codes(primaries, transfer)
        photo.notices += notices
        return
    if b"iCCP" in side:
        name_end = side[b"iCCP"].find(b"\0", 0, 80)
        photo.icc = unpack(side[b"iCCP"][name_end + 2 :]) if name_end > 0 else None
        if photo.icc is None:
            photo.notices.append(profile_damaged_notice())
        return
    if b"sRGB" not in side:
        photo.encoding = _gamma(side.get(b"gAMA", b""), side.get(b"cHRM", b""))


def _gamma(gamma: bytes, chromaticities: bytes) -> Encoding:
    if len(gamma) != 4:
        return SRGB
    (number,) = struct.unpack(">I", gamma)
    if not 20_000 <= number <= 250_000:  # no display or scanner ever had such a curve
        return SRGB
    # 1/2.2 is how sRGB has always been announced to readers that know only a power.
    curve = srgb_to_linear if 45_000 <= number <= 46_000 else gamma_curve(100_000 / number)
    if len(chromaticities) != 32:
        return encoding_of(curve)
    xy = np.array(struct.unpack(">8I", chromaticities)).reshape(4, 2) / 100_000
    white, *primaries = [tuple(pair) for pair in xy.tolist()]
    # A white far from any white, or primaries on one line, cannot be meant.
    area = np.linalg.det(np.column_stack([xy[1:], np.ones(3)]))
    if abs(area) < 0.02 or not (0.2 < white[0] < 0.5 and 0.2 < white[1] < 0.5):
        return encoding_of(curve, BT709, D65)
    return encoding_of(curve, tuple(primaries), white)
