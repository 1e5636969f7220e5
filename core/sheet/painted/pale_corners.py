"""Corners the wash did not reach: with less paint than the middle of their rows."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats
from core.sheet.painted.density import density_of
from core.sheet.result import PaleCorner

PALE_SHARE = 0.8
"""A corner with less paint than this share of the middle's is remarked on."""
LEAST_LESS = 0.15
"""And it must lack this much density, over the three channels together: the light in a corner is
known to a few hundredths only, which in a very pale wash looks like half the paint."""
_STANDS_OUT = 3.0
"""And this many times what patches of its size differ by anyway, where the wash is blotchy."""

_NEAR, _FAR = 0.02, 0.10  # of the height: a corner's patch
_MIDDLE = (0.25, 0.75)  # of the width
_SEEN = 0.5  # of a corner's patch, that must be compared


@dataclass(frozen=True, eq=False)
class _Corners:
    """Density (4,) in the middle of each corner's rows, in the corner, and how patches vary."""

    middle: Floats
    corner: Floats
    uneven: Floats

    @property
    def shares(self) -> Floats:
        full = self.middle > 0.15
        return np.where(full, (self.corner + 0.06) / (self.middle + 0.06), 1.0)


def find_pale_corners(
    density: Floats, usual: Floats | None = None, where: NDArray[np.bool_] | None = None
) -> tuple[PaleCorner, ...]:
    """Corners with less paint than the middle of their rows.

    Parameters
    ----------
    density : (rows, columns) float64
        Of the painted rectangle, see `density.density_of`.
    usual : (4,) float64, optional
        The reference's `corner_shares`: a corner as pale there as well is right.
    where : (h, w) bool, optional
        What is compared: of a corner that lies outside of it nothing is said.
    """
    seen = _corners(density)
    wanted = np.ones(4) if usual is None else np.minimum(usual, 1.0)
    less = seen.middle - seen.corner
    pale = (seen.shares < PALE_SHARE * wanted) & (less >= LEAST_LESS)
    pale &= less >= _STANDS_OUT * seen.uneven
    if where is not None:
        pale &= np.array([where[patch].mean() >= _SEEN for patch in _patches(*where.shape)])
    names = ("top left", "top right", "bottom right", "bottom left")
    return tuple(
        PaleCorner(name, float(share))  # type: ignore[arg-type]
        for name, share, is_pale in zip(names, seen.shares, pale, strict=True)
        if is_pale
    )


def corner_shares(picture: NDArray[np.float32]) -> Floats:
    """Paint (4,) in each corner of a picture in linear light, over the middle's of its rows."""
    return _corners(density_of(picture)).shares


def _corners(density: Floats) -> _Corners:
    h, w = density.shape
    near, far = round(_NEAR * h), round(_FAR * h)
    starts = np.arange(round(_MIDDLE[0] * w), round(_MIDDLE[1] * w) - (far - near), far - near)
    middle, corner, uneven = [], [], []
    for rows, columns in _patches(h, w):
        patches = [float(np.median(density[rows, x : x + far - near])) for x in starts]
        middle.append(float(np.median(patches)))
        uneven.append(float(np.std(patches)))
        corner.append(float(np.median(density[rows, columns])))
    return _Corners(np.asarray(middle), np.asarray(corner), np.asarray(uneven))


def _patches(h: int, w: int) -> tuple[tuple[slice, slice], ...]:
    """Rows and columns of the corners: top left, top right, bottom right, bottom left."""
    near, far = round(_NEAR * h), round(_FAR * h)
    top, bottom = slice(near, far), slice(h - far, h - near)
    left, right = slice(near, far), slice(w - far, w - near)
    return (top, left), (top, right), (bottom, right), (bottom, left)
