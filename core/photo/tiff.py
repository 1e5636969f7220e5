"""TIFF: Pillow reads the common kinds, tifffile those with decimal numbers.

A camera's raw file is a TIFF too, but what is in it openly is a thumbnail: it is refused.
"""

from __future__ import annotations

import struct
import sys
import zlib
from collections.abc import Sequence
from typing import IO, TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from core.errors import PhotoError
from core.i18n import translate
from core.photo.decoded import (
    Decoded,
    check_size,
    damaged,
    from_image,
    incomplete,
    several_pictures,
)
from core.photo.sniff import raw_sentence
from core.photo.spaces import LINEAR
from core.photo.tiff_header import MOST_PAGES, check_layout

if TYPE_CHECKING:
    from PIL import TiffImagePlugin

_SUBFILE, _PHOTOMETRIC, _STRIPS, _STRIP_BYTES, _ICC, _DNG = 254, 262, 273, 279, 34675, 50706
_RAW_PHOTOMETRICS = (32803, 34892)
_MAX_16_BIT_PIXELS = 50_000_000
_MAX_BYTES = 500_000_000
_PLAIN, _DEFLATED = 1, (8, 32946)
_ERRORS = (
    OSError,
    SyntaxError,
    ValueError,
    KeyError,
    IndexError,
    TypeError,
    EOFError,
    AttributeError,
    ZeroDivisionError,
    OverflowError,
    RuntimeError,
    zlib.error,
    struct.error,
)


def read_tiff(stream: IO[bytes]) -> Decoded:
    """Decode a TIFF's first full picture.

    Parameters
    ----------
    stream : binary file
        Seekable; not read into memory as a whole when it is a file on disk.

    Raises
    ------
    PhotoError
        Damaged, too large, a camera's raw file, or numbers nobody here can read.
    """
    from PIL import TiffImagePlugin  # deferred: start-up time

    check_layout(stream)
    try:
        image = TiffImagePlugin.TiffImageFile(stream)
    except _ERRORS:
        return _read_unusual(stream)
    cut = False
    try:
        frame = _main_page(image)
        several = _has_another(image, frame)
        check_size(*image.size)
        if image.mode in ("F", "I"):
            return _read_unusual(stream)
        cut = _ends_early(image, stream)
        photo = _load(image, stream, frame)
    except _ERRORS as error:
        raise PhotoError(incomplete() if cut else damaged()) from error
    if cut:
        raise PhotoError(incomplete())
    if several:
        photo.notices.append(several_pictures())
    return photo


def _main_page(image: TiffImagePlugin.TiffImageFile) -> int:
    """Go to the first page that is no thumbnail; refuse what a camera has left undeveloped."""
    for page in range(MOST_PAGES):
        try:
            image.seek(page)
        except EOFError:
            break
        tags = image.tag_v2
        if _DNG in tags or tags.get(_PHOTOMETRIC) in _RAW_PHOTOMETRICS:
            raise PhotoError(raw_sentence())
        if not int(tags.get(_SUBFILE, 0)) & 1:
            return page
    # Nothing but thumbnails in the open: the picture itself is in a sub-directory.
    raise PhotoError(raw_sentence())


def _has_another(image: TiffImagePlugin.TiffImageFile, frame: int) -> bool:
    """Whether a page follows the first; they are not all counted, for there may be thousands."""
    try:
        image.seek(1)
    except EOFError:
        return False
    finally:
        image.seek(frame)
    return True


def _ends_early(image: TiffImagePlugin.TiffImageFile, stream: IO[bytes]) -> bool:
    starts, sizes = image.tag_v2.get(_STRIPS, ()), image.tag_v2.get(_STRIP_BYTES, ())
    end = stream.seek(0, 2)
    return any(start + size > end for start, size in zip(starts, sizes, strict=False))


def _load(image: TiffImagePlugin.TiffImageFile, stream: IO[bytes], frame: int) -> Decoded:
    from PIL import TiffImagePlugin

    tags = image.tag_v2
    icc = tags.get(_ICC)
    inverted = tags.get(_PHOTOMETRIC) == 0 and image.mode.startswith("I;16")
    tiles = list(image.tile)
    pixels = image.width * image.height
    image.load()  # turned upright by Pillow, which does that for TIFF alone
    if image.mode == "LAB":
        return _from_lab(image)
    rows, model, alpha = from_image(image)
    raw = str(tiles[0].args[0]) if tiles and isinstance(tiles[0].args, tuple) else ""
    if ";16" in raw and not image.mode.startswith("I") and pixels <= _MAX_16_BIT_PIXELS:
        # Pillow keeps the upper byte of each sample. Told that the bytes stand the other way
        # round, it keeps the lower one: two passes give all 16 bits.
        stream.seek(0)
        lower = TiffImagePlugin.TiffImageFile(stream)
        lower.seek(frame)
        lower.tile = [_with_raw_mode(tile, _swapped(raw)) for tile in tiles]
        lower.load()
        lower_rows, _, _ = from_image(lower)
        upper_rows = rows

        def rows(top: int, bottom: int) -> NDArray[Any]:
            upper = upper_rows(top, bottom).astype(np.uint16)
            both: NDArray[np.uint16] = (upper << 8) | lower_rows(top, bottom)
            return both

    elif inverted:
        stored = rows
        rows = lambda top, bottom: 65535 - stored(top, bottom)  # noqa: E731
    photo = Decoded(rows, *image.size, *image.size, model, alpha)
    photo.icc = bytes(icc) if isinstance(icc, bytes) and icc else None
    return photo


def _with_raw_mode(tile: Any, raw: str) -> Any:
    return tile._replace(args=(raw, *tile.args[1:]))


def _swapped(raw: str) -> str:
    native = "L" if sys.byteorder == "little" else "B"
    order = native if raw[-1] == "N" else raw[-1]
    return raw[:-1] + ("B" if order == "L" else "L")


def _from_lab(image: TiffImagePlugin.TiffImageFile) -> Decoded:
    def rows(top: int, bottom: int) -> NDArray[Any]:
        part = np.asarray(image.crop((0, top, image.width, bottom)))
        Lab = part.astype(np.float32)
        Lab[..., 0] *= 100 / 255
        Lab[..., 1:] = part[..., 1:].view(np.int8)  # TIFF 6.0, section 23: signed
        return Lab

    return Decoded(rows, *image.size, *image.size, "lab")


def _read_unusual(stream: IO[bytes]) -> Decoded:
    """Decimal numbers, and what else Pillow does not know, through tifffile."""
    import tifffile  # deferred: start-up time

    stream.seek(0)
    try:
        with tifffile.TiffFile(stream) as file:
            page: Any = file.pages[0]
            if _DNG in page.tags or page.photometric in _RAW_PHOTOMETRICS:
                raise PhotoError(raw_sentence())
            check_size(page.imagewidth, page.imagelength)
            if page.nbytes > _MAX_BYTES or int(page.compression) not in (_PLAIN, *_DEFLATED):
                raise PhotoError(_save_as_16_bit())
            if int(page.compression) in _DEFLATED:
                _refuse_bomb(stream, page.dataoffsets, page.databytecounts, page.nbytes)
            array = page.asarray()
            photometric = int(page.photometric)
            icc = page.tags.get(_ICC)
            turn = page.tags.get(274)
            if page.planarconfig == 2 and array.ndim == 3:
                array = np.moveaxis(array, 0, -1)
            several = len(file.pages) > 1
    except (*_ERRORS, tifffile.TiffFileError) as error:
        raise PhotoError(damaged()) from error
    if array.ndim == 2:
        array = array[..., np.newaxis]
    colours = {0: 1, 1: 1, 2: 3}.get(photometric)
    if array.ndim != 3 or colours is None or array.shape[2] < colours:
        raise PhotoError(_save_as_16_bit())
    if array.dtype.kind == "f":
        array = array.astype(np.float32, copy=False)
    elif array.dtype not in (np.uint8, np.uint16):
        raise PhotoError(_save_as_16_bit())
    array = array[..., : colours + (array.shape[2] > colours)]
    if photometric == 0:
        array = (1.0 if array.dtype.kind == "f" else np.iinfo(array.dtype).max) - array
    height, width = array.shape[:2]
    photo = Decoded(
        lambda top, bottom: array[top:bottom],
        width,
        height,
        width,
        height,
        "rgb" if colours == 3 else "grey",
        alpha=array.shape[2] > colours,
    )
    photo.icc = bytes(icc.value) if icc is not None and isinstance(icc.value, bytes) else None
    turned = int(turn.value) if turn is not None else 1
    photo.orientation = turned if 1 <= turned <= 8 else 1
    if array.dtype.kind == "f" and photo.icc is None:
        photo.encoding = LINEAR
        photo.notices.append(
            translate(
                "photo",
                "This TIFF holds decimal numbers without a colour profile: they are read as "
                "linear light, with 1 as white.",
            )
        )
    if several:
        photo.notices.append(several_pictures())
    return photo


def _refuse_bomb(
    stream: IO[bytes], starts: Sequence[int], sizes: Sequence[int], expected: int
) -> None:
    """Refuse strips that unpack to more than the picture: tifffile unpacks them without a limit.

    Raises
    ------
    PhotoError
    """
    # Strips and tiles may be padded; a small picture may have one large tile.
    left = 2 * expected + 64_000_000
    for start, size in zip(starts, sizes, strict=False):
        stream.seek(start)
        packed = stream.read(size)
        inflater = zlib.decompressobj()
        while packed and not inflater.eof:
            unpacked = inflater.decompress(packed, 1 << 20)
            left -= len(unpacked)
            if left < 0:
                raise PhotoError(damaged())
            if not unpacked and not inflater.unconsumed_tail:
                break
            packed = inflater.unconsumed_tail


def _save_as_16_bit() -> str:
    return translate(
        "photo",
        "This TIFF holds numbers that this program does not read: save it as a 16-bit TIFF, "
        "a PNG or a JPEG.",
    )
