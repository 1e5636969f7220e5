"""A picture of a sheet as the search looks at it: its light, and a small copy, each made once."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from core.colour import srgb8_to_linear
from core.colour.working_space import Floats, linear_to_W, shrunk
from core.photo import Photo
from core.sheet.find.hough import Gradient, gradient_of

SEARCH = 480
"""Pixels of the longer side of the picture that is searched."""

LEAST = 24
"""Pixels of the small picture's shorter side below which there is nothing to search."""


@dataclass(frozen=True, eq=False)
class Sight:
    """A picture in linear light, and what is made of it for the search.

    Attributes
    ----------
    linear : (h, w, 3) float32
    """

    linear: NDArray[np.float32]

    @classmethod
    def of(cls, photo: Photo) -> Sight:
        """A photo's working copy."""
        return cls(srgb8_to_linear(photo.pixels))

    @cached_property
    def _shrunk(self) -> tuple[NDArray[np.float32], int]:
        return shrunk(self.linear, SEARCH)

    @property
    def small(self) -> NDArray[np.float32]:
        """The small picture in linear light (h, w, 3)."""
        return self._shrunk[0]

    @property
    def block(self) -> int:
        """Pixels of the picture along a pixel of the small one."""
        return self._shrunk[1]

    @property
    def too_small(self) -> bool:
        """Whether there is nothing to search."""
        return bool(min(self.small.shape[:2]) < LEAST)

    @cached_property
    def W(self) -> Floats:
        """The small picture in working colours (h, w, 3)."""
        return linear_to_W(self.small.astype(np.float64))

    @cached_property
    def colours(self) -> Floats:
        """The small picture in working colours and in the logarithm of its light (h, w, 6)."""
        return np.concatenate([self.W, np.log(self.small.astype(np.float64) + 0.004)], axis=-1)

    @cached_property
    def gradient(self) -> Gradient:
        """Of the small picture."""
        return gradient_of(self.small, self.W)
