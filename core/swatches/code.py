"""The card's QR code: written and read by zxing-cpp."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.paint.box.swatch_card import is_code
from core.swatches.layout import CODE_AT, CODE_SIDE, MARKS, Floats
from core.swatches.projective import card_map, seen_at, through

_AROUND_MM, _PX_PER_MM = 4.0, 8
_BLURS = (0.0, 2.0, 4.0)


def card_code_modules(code: str) -> NDArray[np.bool_]:
    """A code as modules, True is black; without the white around it."""
    import zxingcpp  # deferred: start-up time

    barcode = zxingcpp.create_barcode(code, zxingcpp.BarcodeFormat.QRCode, ec_level="M")
    picture = np.array(zxingcpp.write_barcode_to_image(barcode, scale=1, add_quiet_zones=False))
    modules: NDArray[np.bool_] = (
        picture.reshape(picture.shape[0], picture.shape[1], -1)[..., 0] < 128
    )
    return modules


def read_card_code(grey: NDArray[np.float32], quad: Floats | None) -> str | None:
    """The code of a card; None where it cannot be read.

    Parameters
    ----------
    grey : ndarray, shape (h, w), float32
        0..255.
    quad : ndarray, shape (4, 2), or None
        The card's marks in pixels: a code is looked for where it stands, straightened.
    """
    found = _read(grey)
    if found is not None or quad is None:
        return found
    from scipy.ndimage import gaussian_filter  # deferred: start-up time

    start = np.array(CODE_AT) - _AROUND_MM
    steps = np.arange(0.0, CODE_SIDE + 2 * _AROUND_MM, 1 / _PX_PER_MM)
    at = np.stack(np.meshgrid(start[0] + steps, start[1] + steps), axis=-1)
    flat = seen_at(grey, through(card_map(MARKS, quad), at))
    for blur in _BLURS:
        view = gaussian_filter(flat, blur) if blur else flat
        view = (view - view.min()) / max(float(np.ptp(view)), 1e-6) * 255
        found = _read(view)
        if found is not None:
            return found
    return None


def _read(grey: NDArray[np.float32]) -> str | None:
    import zxingcpp  # deferred: start-up time

    codes = zxingcpp.read_barcodes(
        np.ascontiguousarray(grey.astype(np.uint8)),
        formats=zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.QRCode),
        try_invert=False,
    )
    return next((code.text for code in codes if is_code(code.text)), None)
