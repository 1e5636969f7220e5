"""Printing and reading codes: QR codes by zxing-cpp, both ways.

A 20 mm code on a ticket is read from every usual picture of a sheet; see DEVELOPERS.md for the
rates, and `benchmarks/class_set.py` for how they were measured.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.class_set.ticket import Ticket, ticket_of, ticket_text
from core.photo import Photo, open_full

SIDE = 21
"""Modules of a code along a side: QR version 1, level Q (ISO/IEC 18004)."""

QUIET = 4
"""Modules of white around it that the standard asks for."""

_LOOKS = (1, 2, 3)
"""A picture is read at its size, then smaller by these: blur shrinks away."""

_SMALL = 2_300_000
"""Pixels up to which a picture is read once more at twice its size: what a messenger made small
has too few of them a module, and 3 of 300 codes at 1280 pixels were missed."""


def code_modules(ticket: Ticket) -> NDArray[np.bool_]:
    """The code as (21, 21) modules, True is black; without the white around it."""
    import zxingcpp  # deferred: start-up time

    barcode = zxingcpp.create_barcode(
        ticket_text(ticket), zxingcpp.BarcodeFormat.QRCode, ec_level="Q"
    )
    picture = np.array(zxingcpp.write_barcode_to_image(barcode, scale=1, add_quiet_zones=False))
    modules = picture.reshape(picture.shape[0], picture.shape[1], -1)[..., 0] < 128
    if modules.shape != (SIDE, SIDE):
        raise ValueError(f"a ticket's code has {SIDE} modules a side, not {modules.shape}")
    return np.asarray(modules)


def read_tickets(grey: NDArray[np.uint8]) -> tuple[Ticket, ...]:
    """The tickets to be seen in a picture, each once.

    Parameters
    ----------
    grey : (h, w) uint8
    """
    for smaller in _LOOKS:
        view = grey if smaller == 1 else _shrunk(grey, smaller)
        if found := _read(view):
            return found
    return _read(_enlarged(grey)) if grey.size <= _SMALL else ()


def tickets_of_picture(photo: Photo, data: bytes) -> tuple[Ticket, ...]:
    """The tickets of an opened picture; where its working copy shows none, of the whole.

    Parameters
    ----------
    photo : Photo
        The working copy.
    data : bytes
        The picture it was opened from.

    Raises
    ------
    PhotoError
        The picture cannot be opened whole.
    """
    found = read_tickets(_grey(photo))
    if found or photo.pixels.shape[0] * photo.pixels.shape[1] >= photo.width * photo.height:
        return found
    return read_tickets(_grey(open_full(data, name=photo.name)))


def _read(grey: NDArray[np.uint8]) -> tuple[Ticket, ...]:
    import zxingcpp  # deferred: start-up time

    qr = zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.QRCode)
    codes = zxingcpp.read_barcodes(np.ascontiguousarray(grey), formats=qr, try_invert=False)
    # Each once, in the order found; a code of anything else is no ticket.
    tickets = (ticket_of(code.text) for code in codes)
    return tuple(dict.fromkeys(ticket for ticket in tickets if ticket is not None))


def _grey(photo: Photo) -> NDArray[np.uint8]:
    # BT.601 weights on encoded values: contrast is all that matters here.
    red, green, blue = (photo.pixels[..., k].astype(np.uint16) for k in range(3))
    return ((77 * red + 150 * green + 29 * blue) >> 8).astype(np.uint8)


def _shrunk(grey: NDArray[np.uint8], by: int) -> NDArray[np.uint8]:
    """Every block of `by` by `by` pixels as one, its mean."""
    rows, columns = grey.shape[0] // by, grey.shape[1] // by
    blocks = grey[: rows * by, : columns * by].reshape(rows, by, columns, by)
    return np.asarray((blocks.mean(axis=(1, 3)) + 0.5).astype(np.uint8))


def _enlarged(grey: NDArray[np.uint8]) -> NDArray[np.uint8]:
    """Twice as large, with soft steps between the pixels."""
    from PIL import Image  # deferred: start-up time

    picture = Image.fromarray(np.ascontiguousarray(grey))
    size = (2 * grey.shape[1], 2 * grey.shape[0])
    return np.asarray(picture.resize(size, Image.Resampling.BICUBIC))
