"""A part of a photographed worksheet page, level: found by the codes in the page's corners.

Two of the four codes are enough: each gives four points of the plane the page lies in.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.class_set.ticket import Ticket, ticket_of

LEAST_CODES = 2
"""One code of 14 mm tells the far end of a page too badly."""

PX_PER_MM = 5.0


@dataclass(frozen=True)
class Box:
    """A rectangle on a printed page, in mm from its top left corner."""

    x: float
    y: float
    width: float
    height: float

    @property
    def corners(self) -> tuple[tuple[float, float], ...]:
        """From the top left clockwise."""
        right, bottom = self.x + self.width, self.y + self.height
        return ((self.x, self.y), (right, self.y), (right, bottom), (self.x, bottom))


def crop_page(
    pixels: NDArray[np.uint8], codes: Mapping[str, Box], wanted: Box
) -> NDArray[np.uint8] | None:
    """The wanted part of the page, upright; None where fewer than two of its codes can be read.

    Parameters
    ----------
    pixels : (h, w, 3) uint8
        The picture, as it was taken.
    codes : mapping of str to Box
        Where the codes are printed, by a ticket's kind.
    wanted : Box

    Returns
    -------
    (h, w, 3) uint8 or None
        `PX_PER_MM` pixels a millimetre.
    """
    from PIL import Image  # deferred: start-up time

    printed: list[tuple[float, float]] = []
    seen: list[tuple[float, float]] = []
    for ticket, corners in codes_in(pixels):
        if ticket.kind in codes:
            printed += codes[ticket.kind].corners
            seen += corners
    if len(printed) < 4 * LEAST_CODES:
        return None
    H = homography_of(np.asarray(printed), np.asarray(seen))
    size = (round(wanted.width * PX_PER_MM), round(wanted.height * PX_PER_MM))
    to_mm = np.array([[1 / PX_PER_MM, 0, wanted.x], [0, 1 / PX_PER_MM, wanted.y], [0, 0, 1]])
    whole = H @ to_mm
    whole = whole / whole[2, 2]
    coefficients = tuple(float(v) for v in whole.ravel()[:8])
    image = Image.fromarray(pixels).transform(
        size, Image.Transform.PERSPECTIVE, coefficients, Image.Resampling.BICUBIC
    )
    return np.asarray(image)


def homography_of(printed: NDArray[np.float64], seen: NDArray[np.float64]) -> NDArray[np.float64]:
    """The perspective that maps points to points, by least squares; four at least.

    Parameters
    ----------
    printed, seen : (n, 2) float

    Returns
    -------
    (3, 3) float64
        H with `seen ~ H printed`, its last entry 1.

    Notes
    -----
    Direct linear transformation: Hartley and Zisserman (2004), Multiple View Geometry in Computer
    Vision, section 4.1, with the last entry set to 1, after each set of points is centred and
    scaled (section 4.4.4).
    """
    T, U = _normalising(printed), _normalising(seen)
    x, y = _mapped(T, printed).T
    u, v = _mapped(U, seen).T
    one, zero = np.ones_like(x), np.zeros_like(x)
    rows = np.concatenate(
        [
            np.stack([x, y, one, zero, zero, zero, -u * x, -u * y], -1),
            np.stack([zero, zero, zero, x, y, one, -v * x, -v * y], -1),
        ]
    )
    h, *_ = np.linalg.lstsq(rows, np.concatenate([u, v]), rcond=None)
    H = np.linalg.inv(U) @ np.append(h, 1.0).reshape(3, 3) @ T
    return np.asarray(H / H[2, 2])


def _normalising(points: NDArray[np.float64]) -> NDArray[np.float64]:
    middle = points.mean(axis=0)
    scale = np.sqrt(2) / np.linalg.norm(points - middle, axis=1).mean()
    return np.array([[scale, 0, -scale * middle[0]], [0, scale, -scale * middle[1]], [0, 0, 1]])


def _mapped(H: NDArray[np.float64], points: NDArray[np.float64]) -> NDArray[np.float64]:
    found = np.column_stack([points, np.ones(len(points))]) @ H.T
    return np.asarray(found[:, :2] / found[:, 2:])


def codes_in(pixels: NDArray[np.uint8]) -> list[tuple[Ticket, list[tuple[float, float]]]]:
    """The tickets' codes in a picture, each with its corners in pixels, clockwise as printed.

    Parameters
    ----------
    pixels : (h, w, 3) uint8
    """
    import zxingcpp  # deferred: start-up time

    grey = np.ascontiguousarray(pixels[..., 1])
    qr = zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.QRCode)
    found: dict[Ticket, list[tuple[float, float]]] = {}
    for code in zxingcpp.read_barcodes(grey, formats=qr, try_invert=False):
        ticket, at = ticket_of(code.text), code.position
        if ticket is not None:
            corners = (at.top_left, at.top_right, at.bottom_right, at.bottom_left)
            found[ticket] = [(float(point.x), float(point.y)) for point in corners]
    return list(found.items())
