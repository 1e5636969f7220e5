"""A mix: paints in whole parts, and how much of it is on the paper."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from math import gcd

from core.paint.box.box import Box
from core.paint.pigment.measured import FULL_LOAD_ML, paper_Lab
from core.reading.reading import ColourReading, read_colour

Triple = tuple[float, float, float]


@dataclass(frozen=True)
class Mix:
    """Paints in parts at one load.

    Attributes
    ----------
    parts : tuple of (paint key, parts)
        Whole numbers, in the order they go into the mix: see `in_order_of_mixing`. Empty for bare
        paper.
    load_ml : float
        All paint on a swatch together, in the dataset's millilitres; 0..0.16.
    Lab : tuple of 3 floats
        The dried wash.
    """

    parts: tuple[tuple[str, int], ...]
    load_ml: float
    Lab: Triple

    @property
    def total(self) -> int:
        """All parts together."""
        return sum(count for _, count in self.parts)

    @property
    def keys(self) -> tuple[str, ...]:
        """The paints, in the order of `parts`."""
        return tuple(key for key, _ in self.parts)

    @property
    def load_ml_per_unit(self) -> float:
        """Load of one part; 0 for bare paper."""
        return self.load_ml / self.total if self.parts else 0.0

    @property
    def loads_ml(self) -> dict[str, float]:
        """Load of each paint."""
        return {key: self.load_ml * count / self.total for key, count in self.parts}

    def share(self, key: str) -> float:
        """A paint's share of all parts, 0..1; 0 when it is not in the mix."""
        return dict(self.parts).get(key, 0) / max(self.total, 1)

    @cached_property
    def colour(self) -> ColourReading:
        """The dried wash on every scale."""
        return read_colour(self.Lab)


def bare_paper() -> Mix:
    """No paint at all: the paper left white."""
    return Mix((), 0.0, paper_Lab())


def make_mix(box: Box, parts: dict[str, int], load_ml: float) -> Mix:
    """The mix of `parts` at a load, with its colour worked out.

    Parameters
    ----------
    box : Box
    parts : dict of paint key to whole parts
        Zeros are dropped; a common factor is taken out (2 : 4 is 1 : 2).
    load_ml : float
        Clamped to 0..0.16.

    Raises
    ------
    ValueError
        No paint at all, a negative part, or a paint that is not in the box.
    """
    used = {key: int(count) for key, count in parts.items() if count}
    if not used or min(used.values()) < 0:
        raise ValueError(f"a mix needs at least one part, and none negative: {parts}")
    unknown = [key for key in used if key not in box.by_key]
    if unknown:
        raise ValueError(f"not in the box {box.name!r}: {', '.join(unknown)}")
    load_ml = min(max(float(load_ml), 0.0), FULL_LOAD_ML)
    total = sum(used.values())
    vector = box.load_vector({key: load_ml * count / total for key, count in used.items()})
    L, a, b = box.pigments.Lab(vector).tolist()
    return mix_of_known_colour(box, used, load_ml, (L, a, b))


def mix_of_known_colour(box: Box, parts: dict[str, int], load_ml: float, Lab: Triple) -> Mix:
    """The same when the search has worked the colour out already; `parts` are above 0."""
    factor = gcd(*parts.values())
    counted = {key: count // factor for key, count in parts.items()}
    return Mix(in_order_of_mixing(box, counted), load_ml, Lab)


def in_order_of_mixing(box: Box, parts: dict[str, int]) -> tuple[tuple[str, int], ...]:
    """Parts in the order they go into a mix.

    The greatest first; but of two primaries the one that tints strongly comes after the other,
    and in a mix of three after all but a mere touch: it is added last and little by little.
    """
    place = {key: number for number, key in enumerate(box.keys)}
    total, several = sum(parts.values()), len(parts) > 2
    groups = {box.paint(key).group for key in parts}
    primaries = len(groups) == len(parts) and groups <= {"yellow", "red", "blue"}

    def rank(key: str) -> int:
        if several and parts[key] == min(parts.values()) and 4 * parts[key] <= total:
            return 2
        return int((several or primaries) and box.paint(key).tints_strongly)

    def order(key: str) -> tuple[int, bool, int, int]:
        return rank(key), rank(key) == 2 and box.paint(key).tints_strongly, -parts[key], place[key]

    return tuple((key, parts[key]) for key in sorted(parts, key=order))
