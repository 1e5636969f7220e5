"""A box: the paints a class has."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property
from types import MappingProxyType

import numpy as np
from numpy.typing import NDArray

from core.paint.box.swatch_card import SwatchCard
from core.paint.pigment.catalogue import CATALOGUE, Paint
from core.paint.pigment.measured import measured_paints
from core.paint.pigment.own import pigments_with
from core.paint.pigment.pigments import Pigments


@dataclass(frozen=True)
class Box:
    """A named set of paints.

    Attributes
    ----------
    name : str
        English for the boxes that come along; else what the teacher typed.
    paints : tuple of Paint
        In the order shown; every key once.
    cards : tuple of SwatchCard
        Swatch cards that were printed for it.

    Raises
    ------
    ValueError
        A key stands twice.
    """

    name: str
    paints: tuple[Paint, ...]
    cards: tuple[SwatchCard, ...] = ()

    def __post_init__(self) -> None:
        keys = [paint.key for paint in self.paints]
        if len(set(keys)) != len(keys):
            raise ValueError(f"a paint stands twice in the box {self.name!r}: {keys}")

    @cached_property
    def by_key(self) -> MappingProxyType[str, Paint]:
        """The paints by key."""
        return MappingProxyType({paint.key: paint for paint in self.paints})

    @cached_property
    def keys(self) -> tuple[str, ...]:
        """Keys in the order shown."""
        return tuple(paint.key for paint in self.paints)

    @cached_property
    def pigments(self) -> Pigments:
        """What its paints are computed with: the measured ones and, beside them, its own."""
        own = tuple((paint.key, paint.card) for paint in self.paints if paint.card is not None)
        if not own:
            return measured_paints()
        return pigments_with(own, frozenset(paint.pigment for paint in self.paints))

    def paint(self, key: str) -> Paint:
        """The paint of a key; KeyError when it is not in this box."""
        return self.by_key[key]

    def only(self, keys: Iterable[str]) -> Box:
        """Some of the paints, nameless: what depends on these alone is remembered by them."""
        wanted = set(keys)
        return Box("", tuple(paint for paint in self.paints if paint.key in wanted))

    def load_vector(self, loads_ml: dict[str, float]) -> NDArray[np.float64]:
        """Loads of the box's pigments, shape (paints,), for loads of this box's paints."""
        data = self.pigments
        vector = np.zeros(len(data.keys))
        for key, load in loads_ml.items():
            vector[data.index(self.by_key[key].pigment)] += load
        return vector


def _box(name: str, *keys: str) -> Box:
    return Box(name, tuple(CATALOGUE[key] for key in keys))


TWELVE_PAN = _box(
    "twelve-pan school box",
    "lemon_yellow",
    "mid_yellow",
    "yellow_ochre",
    "warm_red",
    "crimson",
    "burnt_sienna",
    "sap_green",
    "cerulean_blue",
    "ultramarine",
    "prussian_blue",
    "black",
    "white",
)
"""What school sets of twelve commonly hold (common practice); five of them measured by name."""

SPLIT_PRIMARY = _box(
    "six-colour split primary box",
    "lemon_yellow",
    "mid_yellow",
    "warm_red",
    "crimson",
    "ultramarine",
    "cool_blue",
)
"""A warm and a cool paint of each primary (common practice)."""

THIRTEEN = _box("thirteen measured paints", *measured_paints().keys)
"""Every paint of the dataset."""

GENERIC_BOXES: MappingProxyType[str, Box] = MappingProxyType(
    {"school": TWELVE_PAN, "primary": SPLIT_PRIMARY, "measured": THIRTEEN}
)
"""Short name on the command line to box."""

DEFAULT_BOX = TWELVE_PAN
