"""WebP, GIF and BMP: Pillow decodes them, and little can be said about their colours."""

from __future__ import annotations

import io
from collections.abc import Iterator

from core.errors import PhotoError
from core.photo import meta
from core.photo.decoded import (
    MAX_PIXELS,
    Decoded,
    check_size,
    damaged,
    from_image,
    incomplete,
    several_pictures,
)

# Animated or not, Pillow's way of decoding WebP needs 16 bytes a pixel: 1 GB at this size.
MAX_WEBP_PIXELS = 60_000_000
# Pillow unpacks run lengths of BMP in Python, byte by byte where a row ends early: 10 million a
# second.
MAX_RLE_PIXELS = 20_000_000
_RUN_LENGTHS = (1, 2)


def riff_chunks(data: bytes) -> Iterator[tuple[bytes, int, int]]:
    """Name, start and end of the content of each chunk of a WebP file."""
    at = 12
    while at + 8 <= len(data):
        size = int.from_bytes(data[at + 4 : at + 8], "little")
        yield data[at : at + 4], at + 8, min(at + 8 + size, len(data))
        at += 8 + size + (size & 1)


def read_webp(data: bytes) -> Decoded:
    """Decode a WebP; of an animated one the first picture.

    Raises
    ------
    PhotoError
        Damaged, incomplete or too large.
    """
    if 8 + int.from_bytes(data[4:8], "little") > len(data) + 1:
        raise PhotoError(incomplete())
    side = {name: data[start:end] for name, start, end in riff_chunks(data) if name != b"ANMF"}
    for name in (b"VP8X", b"VP8 ", b"VP8L"):
        if name in side:
            check_size(*_webp_size(name, side[name]), MAX_WEBP_PIXELS)
    from PIL import WebPImagePlugin  # deferred: start-up time

    try:
        image = WebPImagePlugin.WebPImageFile(io.BytesIO(data))
        check_size(*image.size, MAX_WEBP_PIXELS)
        several = image.n_frames > 1
        image.load()
    except (OSError, SyntaxError, ValueError, RuntimeError, EOFError) as error:
        raise PhotoError(damaged()) from error
    rows, model, alpha = from_image(image)
    photo = Decoded(rows, *image.size, *image.size, model, alpha, side.get(b"ICCP") or None)
    photo.orientation = meta.orientation(side.get(b"EXIF"), side.get(b"XMP "))
    if several:
        photo.notices.append(several_pictures())
    return photo


def _webp_size(name: bytes, content: bytes) -> tuple[int, int]:
    """Source: RFC 9649, 2.5 to 2.7: the canvas, a lossy and a lossless frame header."""
    if len(content) < 10:
        raise PhotoError(damaged())
    if name == b"VP8X":
        width, height = (int.from_bytes(content[i : i + 3], "little") + 1 for i in (4, 7))
        return width, height
    if name == b"VP8 ":
        width, height = (int.from_bytes(content[i : i + 2], "little") & 0x3FFF for i in (6, 8))
        return width, height
    bits = int.from_bytes(content[1:5], "little")
    return (bits & 0x3FFF) + 1, (bits >> 14 & 0x3FFF) + 1


def read_gif(data: bytes) -> Decoded:
    """Decode a GIF's first picture.

    Raises
    ------
    PhotoError
        Damaged, incomplete or too large.
    """
    if len(data) < 13:
        raise PhotoError(incomplete())
    check_size(int.from_bytes(data[6:8], "little"), int.from_bytes(data[8:10], "little"))
    from PIL import GifImagePlugin  # deferred: start-up time

    try:
        image = GifImagePlugin.GifImageFile(io.BytesIO(data))
        check_size(*image.size)
        image.load()
        rows, model, alpha = from_image(image.copy())
    except (OSError, SyntaxError, ValueError, EOFError, IndexError) as error:
        raise PhotoError(damaged() if data.endswith(b";") else incomplete()) from error
    photo = Decoded(rows, *image.size, *image.size, model, alpha)
    try:
        several = image.is_animated
    except (OSError, SyntaxError, ValueError, EOFError, IndexError):
        several = False  # what follows the first picture is damaged, and not needed
    if several:
        photo.notices.append(several_pictures())
    return photo


def read_bmp(data: bytes) -> Decoded:
    """Decode a BMP.

    Raises
    ------
    PhotoError
        Damaged, incomplete or too large.
    """
    from PIL import BmpImagePlugin  # deferred: start-up time

    packed = int.from_bytes(data[30:34], "little") in _RUN_LENGTHS
    try:
        image = BmpImagePlugin.BmpImageFile(io.BytesIO(data))
        check_size(*image.size, MAX_RLE_PIXELS if packed else MAX_PIXELS)
        image.load()
    except (OSError, SyntaxError, ValueError, IndexError, EOFError) as error:
        cut = int.from_bytes(data[2:6], "little") > len(data)
        raise PhotoError(incomplete() if cut else damaged()) from error
    rows, model, alpha = from_image(image)
    return Decoded(rows, *image.size, *image.size, model, alpha)
