"""Where a page lies in a picture, by its codes, and a part of it straightened."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from core.class_set.page_crop import LEAST_CODES, Box, codes_in, homography_of
from core.class_set.score_marks.form import PX_PER_MM, ScoreForm

Floats = NDArray[np.float32]

_SMALL = 2_300_000
"""Pixels up to which a picture is looked at once more at twice its size for its codes."""

_WANTED = 3


@dataclass(frozen=True)
class Lying:
    """How a page lies in a picture, if it is the one with this form.

    Attributes
    ----------
    H : (3, 3) float64
        From mm on the page to pixels.
    form : ScoreForm
    """

    H: NDArray[np.float64]
    form: ScoreForm


def find_page(pixels: NDArray[np.uint8], forms: tuple[ScoreForm, ...]) -> tuple[Lying, ...]:
    """How the page lies, for each form whose codes may lie as those seen do.

    Parameters
    ----------
    pixels : (h, w, 3) uint8
    forms : tuple of ScoreForm
        The same page on either size of paper.

    Returns
    -------
    tuple of Lying
        None where fewer than two codes are seen. Codes of a bent page alone do not always tell
        which paper it is: the boxes do.
    """
    seen = _seen(pixels, {kind for form in forms for kind, _ in form.codes})
    found = []
    for form in forms:
        codes = dict(form.codes)
        kinds = [kind for kind in seen if kind in codes]
        if len(kinds) < LEAST_CODES:
            continue
        printed = np.concatenate([np.asarray(codes[kind].corners) for kind in kinds])
        found.append(
            Lying(
                homography_of(printed, np.concatenate([np.asarray(seen[k]) for k in kinds])), form
            )
        )
    return tuple(found)


def straightened(light: Floats, H: NDArray[np.float64], wanted: Box) -> Floats:
    """A part of the page, upright and flat as far as the codes tell.

    Parameters
    ----------
    light : (h, w) float32
    H : (3, 3) float64
    wanted : Box
        In mm.

    Returns
    -------
    (h, w) float32
        `PX_PER_MM` pixels a millimetre.
    """
    rows, columns = round(wanted.height * PX_PER_MM), round(wanted.width * PX_PER_MM)
    y = (np.arange(rows) + 0.5)[:, None] / PX_PER_MM + wanted.y
    x = (np.arange(columns) + 0.5)[None, :] / PX_PER_MM + wanted.x
    return sampled(light, H, x, y)


def sampled(
    channel: NDArray[np.generic], H: NDArray[np.float64], x: NDArray[Any], y: NDArray[Any]
) -> Floats:
    """A picture's channel at places in mm on the page."""
    from scipy.ndimage import map_coordinates  # deferred: start-up time

    u, v, w = (H[k, 0] * x + H[k, 1] * y + H[k, 2] for k in range(3))
    # A pixel's middle is at half; the codes' corners are given so, too.
    at = np.stack([v / w - 0.5, u / w - 0.5]).astype(np.float32)
    found = map_coordinates(channel, at, order=1, mode="nearest", output=np.float32)
    return np.asarray(found)


def _seen(
    pixels: NDArray[np.uint8], kinds: set[str]
) -> Mapping[str, tuple[tuple[float, float], ...]]:
    """The corners of each code of a page; those of the page most codes are of."""
    found = codes_in(pixels)
    if (
        len({ticket.kind for ticket, _ in found} & kinds) < _WANTED
        and pixels[..., 0].size <= _SMALL
    ):
        from PIL import Image  # deferred: start-up time

        size = (2 * pixels.shape[1], 2 * pixels.shape[0])
        large = np.asarray(Image.fromarray(pixels).resize(size, Image.Resampling.BICUBIC))
        again = [
            (ticket, [(x / 2, y / 2) for x, y in corners]) for ticket, corners in codes_in(large)
        ]
        found = list({**dict(found), **dict(again)}.items())
    by_student: dict[tuple[str, int], dict[str, tuple[tuple[float, float], ...]]] = {}
    for ticket, corners in found:
        if ticket.kind in kinds:
            whose = by_student.setdefault((ticket.tag, ticket.number), {})
            whose[ticket.kind] = tuple(corners)
    return max(by_student.values(), key=len, default={})
