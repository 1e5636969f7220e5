"""The reference a sheet is checked against: the sky of the photo, its lines and readings."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.bands.lines import Bands
from core.colour import srgb8_to_linear
from core.colour.medians import channels_first, medians
from core.colour.working_space import Floats, linear_to_W_planes, thinned
from core.errors import SheetError
from core.i18n import translate
from core.photo import Photo
from core.reading.reading import BandReading
from core.sheet.match.foreground import sky_seen
from core.sheet.match.order import profile_of
from core.sheet.painted.edges import RawEdge, find_edges
from core.sheet.painted.pale_corners import corner_shares
from core.sheet.painted.photo_has import PhotoSky, photo_sky

_ROWS = 640
"""The sky is measured at most this high, as sheets are, so that like is compared with like."""


@dataclass(frozen=True, eq=False)
class Reference:
    """The sky to be painted.

    Attributes
    ----------
    picture : (h, w, 3) uint8
        The sky alone, from the photo's top to the horizon, sRGB.
    mask : (h, w) bool
        Its usable pixels.
    bands : Bands
        Its lines as shares of the sky's height (horizon 1).
    readings : tuple of BandReading
        As read from the photo.
    profile : (SAMPLES, 3) float64
        See `core.sheet.match.order`.
    sides : (bands, 3, 3) float64
        Working colour of each band's left, centre and right third.
    edges : tuple of RawEdge
        Hard edges of the sky itself: a sheet that repeats them is right.
    corner_shares : (4,) float64
        How much colour its corners have; see `core.sheet.painted.blooms`.
    sky : PhotoSky
        What a faithful copy has too: clouds, rims, glows.
    seen : (about 200, w) bool or None
        Where sheets are compared, see `core.sheet.match.foreground`; None is everywhere.
    """

    name: str
    picture: NDArray[np.uint8]
    mask: NDArray[np.bool_]
    bands: Bands
    readings: tuple[BandReading, ...]
    profile: Floats
    sides: Floats
    edges: tuple[RawEdge, ...]
    corner_shares: Floats
    sky: PhotoSky
    seen: NDArray[np.bool_] | None = None


LEAST_SIDE = 16
"""Pixels of a sky's width and height: below that there is nothing to compare."""


def make_reference(
    photo: Photo,
    bands: Bands,
    readings: tuple[BandReading, ...],
    sky_mask: NDArray[np.bool_],
) -> Reference:
    """Cut the photo to its sky and measure what sheets are compared with.

    Parameters
    ----------
    photo : Photo
    bands : Bands
        Fractions of the photo's height.
    readings : tuple of BandReading
        One a band, from `core.bands.careful.read_bands`.
    sky_mask : (h, w) bool
        As `Proposal.sky`, at the working copy's size.

    Raises
    ------
    SheetError
        A band without any sky, or a sky of a few pixels.
    """
    if any(reading.colour is None for reading in readings):
        raise SheetError(
            translate("sheet", "A band of the photo holds no sky: move its lines, then check.")
        )
    rows = max(1, min(len(photo.pixels), round(bands.horizon * len(photo.pixels))))
    if min(rows, photo.pixels.shape[1]) < LEAST_SIDE:
        raise SheetError(
            translate(
                "sheet",
                "The sky of this photo is too small to check a sheet against it: take a photo "
                "whose sky is at least {least} pixels wide and tall.",
            ).format(least=LEAST_SIDE)
        )
    picture, mask = photo.pixels[:rows], sky_mask[:rows]
    lines = tuple(line / bands.horizon for line in bands.lines)
    small, small_mask = thinned(picture, _ROWS), thinned(mask, _ROWS)
    linear = srgb8_to_linear(small)
    W = np.moveaxis(linear_to_W_planes(linear), 0, -1)
    own = Bands(1.0, lines)
    return Reference(
        name=photo.name,
        picture=picture,
        mask=mask,
        bands=own,
        readings=readings,
        profile=profile_of(W, small_mask),
        sides=side_colours(W, lines, small_mask),
        edges=find_edges(W, small_mask),
        corner_shares=corner_shares(linear),
        sky=photo_sky(linear.astype(np.float64), small_mask, own),
        seen=sky_seen(mask, own),
    )


def slim_reference(reference: Reference) -> Reference:
    """The reference without its picture, which no check looks at: small enough to send along."""
    picture, mask = reference.picture[:0], reference.mask[:0]
    return replace(reference, picture=picture.copy(), mask=mask.copy())


def side_colours(
    W: Floats, lines: tuple[float, ...], mask: NDArray[np.bool_] | None = None
) -> Floats:
    """Median working colour (bands, 3, 3) of each band's left, centre and right third."""
    h, w = W.shape[:2]
    channels = channels_first(W)
    partly = None if mask is None or mask.all() else mask
    edges = np.array([0.0, *lines, 1.0])
    colours = np.full((len(edges) - 1, 3, 3), np.nan)
    for k in range(len(edges) - 1):
        trim = 0.15 * (edges[k + 1] - edges[k])
        low = min(h - 1, round((edges[k] + trim) * h))
        high = max(low + 1, round((edges[k + 1] - trim) * h))
        for third in range(3):
            a, b = round((third + 0.05) * w / 3), round((third + 0.95) * w / 3)
            part = channels[:, low:high, a:b].reshape(3, -1)
            if partly is not None:
                part = part[:, partly[low:high, a:b].ravel()]
            if part.size:
                colours[k, third] = medians(part)
    return colours
