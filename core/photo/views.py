"""Ways to look at a picture: values only, values in steps, squint, and other eyes' colours.

A grey stands for a colour when both have the same Munsell value, that is the same Y: an average
of the three numbers of a pixel would make blues too light and yellows too dark.
"""

from __future__ import annotations

from functools import cache

import numpy as np
from numpy.typing import NDArray

from core.colour.lab import LINEAR_TO_XYZ
from core.colour.srgb import LINEAR_OF_8BIT, linear_to_srgb, srgb8_to_linear
from core.colour.value import munsell_value, munsell_Y
from core.colour.vision import CVD_MATRICES

Pixels = NDArray[np.uint8]

VALUE_STEPS = (3, 5, 9)
"""Numbers of steps a value study is taught with (common practice)."""

_FULL = 65535


@cache
def _Y16_of_code() -> NDArray[np.uint32]:
    """Share of Y of each code of red, green and blue, shape (3, 256), in 1/65535."""
    shares = LINEAR_TO_XYZ[1][:, None] * LINEAR_OF_8BIT.astype(np.float64)
    return np.asarray(np.rint(shares * _FULL), dtype=np.uint32)


@cache
def _code_of_Y16() -> Pixels:
    """sRGB code of each linear light in 1/65535."""
    return np.rint(linear_to_srgb(np.arange(_FULL + 1) / _FULL) * 255).astype(np.uint8)


def _Y16(pixels: Pixels) -> NDArray[np.uint32]:
    red, green, blue = _Y16_of_code()
    Y16 = red[pixels[..., 0]]
    Y16 += green[pixels[..., 1]]
    Y16 += blue[pixels[..., 2]]
    np.minimum(Y16, _FULL, out=Y16)
    return np.asarray(Y16)


def _grey(codes: Pixels) -> Pixels:
    return np.repeat(codes[..., None], 3, axis=-1)


def values_view(pixels: Pixels) -> Pixels:
    """Each pixel as the grey of its own Munsell value.

    Parameters
    ----------
    pixels : ndarray, shape (..., 3), uint8
        Encoded sRGB.

    Returns
    -------
    ndarray, shape (..., 3), uint8
    """
    return _grey(_code_of_Y16()[_Y16(pixels)])


def step_values(steps: int) -> tuple[float, ...]:
    """The Munsell values that stand for the steps of a value scale, dark to light.

    Each is in the middle of its step: of 5 steps the values 1, 3, 5, 7, 9.
    """
    return tuple((index + 0.5) * 10 / steps for index in range(steps))


@cache
def _step_code_of_Y16(steps: int) -> Pixels:
    value = munsell_value(np.arange(_FULL + 1) / _FULL * 100)
    step = np.minimum((value * steps / 10).astype(int), steps - 1)
    light = munsell_Y(step_values(steps)) / 100
    return np.asarray(np.rint(linear_to_srgb(light) * 255).astype(np.uint8)[step])


def value_steps_view(pixels: Pixels, steps: int) -> Pixels:
    """The picture in a few greys, evenly spaced in Munsell value.

    Parameters
    ----------
    pixels : ndarray, shape (..., 3), uint8
    steps : int
        2 or more; VALUE_STEPS are the ones taught.

    Raises
    ------
    ValueError
        Fewer than 2 steps.
    """
    if steps < 2:
        raise ValueError(f"a value scale needs 2 steps or more, not {steps}")
    return _grey(_step_code_of_Y16(steps)[_Y16(pixels)])


def _encode(linear: NDArray[np.float32]) -> Pixels:
    """8-bit sRGB of linear light; overwrites `linear`."""
    linear *= np.float32(_FULL)
    linear += np.float32(0.5)
    np.clip(linear, 0, _FULL, out=linear)
    return _code_of_Y16()[linear.astype(np.uint16)]


def squint_view(pixels: Pixels, strength: float) -> Pixels:
    """The picture as through half-closed eyes: small things melt, the large masses stay.

    Parameters
    ----------
    pixels : ndarray, shape (h, w, 3), uint8
    strength : float
        The blur's standard deviation as a share of the longer side, 0..0.1; 0.01 is a squint.

    Returns
    -------
    ndarray, shape (h, w, 3), uint8
        Blurred in linear light, as an eye out of focus does it.
    """
    if strength <= 0:
        return pixels.copy()
    sigma = min(strength, 0.1) * max(pixels.shape[:2])
    # A wide blur does not need every pixel: averaging blocks first saves most of the work.
    block = max(1, int(sigma / 2))
    small = _shrink(srgb8_to_linear(pixels), block)
    # One more block on each side, so that the outermost pixels are between two middles as well.
    small = np.pad(small, ((1, 1), (1, 1), (0, 0)), mode="edge")
    # Blocks blur too: the box by (n^2 - 1) / 12, the lines drawn between them by n^2 / 6.
    blurred = (block**2 - 1) / 12 + block**2 / 6 if block > 1 else 0
    rest = float(np.sqrt(max(sigma**2 - blurred, 0.0))) / block
    from scipy.ndimage import gaussian_filter1d  # deferred: start-up time

    for axis in (0, 1):
        small = gaussian_filter1d(small, rest, axis=axis, mode="nearest", truncate=3)
    if block == 1:
        return _encode(small[1:-1, 1:-1].copy())
    height, width = pixels.shape[:2]
    small = _between(small, np.arange(width), block, axis=1)
    result = np.empty_like(pixels)
    for top in range(0, height, _ROWS):
        rows = np.arange(top, min(top + _ROWS, height))
        result[rows] = _encode(_between(small, rows, block, axis=0))
    return result


_ROWS = 32  # the working arrays of so many rows stay in the processor's cache


def _shrink(linear: NDArray[np.float32], block: int) -> NDArray[np.float32]:
    """Means of blocks; the last row and column are repeated to fill their blocks."""
    if block == 1:
        return linear
    for axis in (0, 1):
        length = linear.shape[axis]
        first = np.arange(0, length, block)
        total = linear.take(first, axis=axis)
        for step in range(1, block):
            total += linear.take(np.minimum(first + step, length - 1), axis=axis)
        linear = total / np.float32(block)
    return linear


def _between(
    small: NDArray[np.float32], places: NDArray[np.intp], block: int, axis: int
) -> NDArray[np.float32]:
    """Rows or columns of the full picture, by lines drawn between the middles of blocks.

    `small` has one block more at each end than the picture.
    """
    at = (places + 0.5) / block + 0.5
    low = at.astype(np.intp)
    shape = [1, 1, 1]
    shape[axis] = len(places)
    weight = (at - low).astype(np.float32).reshape(shape)
    result: NDArray[np.float32] = small.take(low + 1, axis=axis)
    start = small.take(low, axis=axis)
    result -= start
    result *= weight
    result += start
    return result


def cvd_view(pixels: Pixels, kind: str) -> Pixels:
    """The picture as an eye without one kind of cone sees it.

    Parameters
    ----------
    pixels : ndarray, shape (..., 3), uint8
    kind : "protan", "deutan" or "tritan"

    Raises
    ------
    ValueError
        An unknown kind.
    """
    if kind not in CVD_MATRICES:
        raise ValueError(f"not a kind of colour vision: {kind!r}")
    matrix = CVD_MATRICES[kind].T.astype(np.float32)
    return _encode(srgb8_to_linear(pixels) @ matrix)
