"""Fractal noise: what clouds, ridges, ripples and grain are made of."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy import ndimage

Field = NDArray[np.float64]


def fractal(
    shape: tuple[int, int],
    rng: np.random.Generator,
    *,
    slope: float = 2.2,
    stretch: float = 1.0,
    coarsest: float = 1.0,
) -> Field:
    """Fractal noise of mean 0 and standard deviation 1, by shaping white noise's spectrum.

    Parameters
    ----------
    shape : (rows, columns)
    slope : float
        Power falls as frequency^-slope: higher is smoother.
    stretch : float
        How many times longer than tall the shapes are.
    coarsest : float
        Shapes larger than 1/coarsest of the picture's height are left out.
    """
    rows, columns = shape
    # Twice the size, then cropped: such noise repeats itself at its own edges.
    tall, wide = 2 * rows, 2 * columns
    fy = np.fft.fftfreq(tall)[:, None] * rows
    fx = np.fft.rfftfreq(wide)[None, :] * rows * stretch
    frequency = np.hypot(fy, fx)
    gain = np.where(
        frequency < coarsest, 0.0, np.maximum(frequency, coarsest / 2) ** (-slope / 2 - 0.5)
    )
    white = np.fft.rfft2(rng.standard_normal((tall, wide)))
    field = np.fft.irfft2(white * gain, s=(tall, wide))[:rows, :columns]
    return (field - field.mean()) / field.std()


def swirled(field: Field, rng: np.random.Generator, amount: float, stretch: float = 1.0) -> Field:
    """The field pushed about by smoother noise, `amount` in pixels: makes blobs into wisps."""
    rows, columns = field.shape
    push_y = fractal(field.shape, rng, slope=3.0, stretch=stretch, coarsest=2) * amount
    push_x = fractal(field.shape, rng, slope=3.0, stretch=stretch, coarsest=2) * amount * stretch
    y, x = np.mgrid[0:rows, 0:columns]
    return ndimage.map_coordinates(field, [y + push_y, x + push_x], order=1, mode="reflect")


def ridge(columns: int, rng: np.random.Generator, *, slope: float = 2.4, lumps: float = 2) -> Field:
    """A skyline's relief over the columns, mean 0 and within about -1..1."""
    n = 2 * columns
    frequency = np.fft.rfftfreq(n) * columns
    gain = np.where(frequency < lumps, 0.0, np.maximum(frequency, lumps) ** (-slope / 2))
    line = np.fft.irfft(np.fft.rfft(rng.standard_normal(n)) * gain, n=n)[:columns]
    line -= line.mean()
    return line / np.abs(line).max()


def smoothstep(x: Field, low: float, high: float) -> Field:
    """0 below `low`, 1 above `high`, a soft S between them."""
    t = np.clip((x - low) / (high - low), 0.0, 1.0)
    return t * t * (3 - 2 * t)
