"""Paints whose labels commonly name a metal.

The label of the tube in hand and the school's rules decide; nothing here judges a paint.
Source of the list: usual pigments (PR108, PY35 cadmium; PB28, PB35 cobalt): common practice.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from core.paint.box.box import Box


@dataclass(frozen=True)
class Caution:
    """One paint and what its label commonly lists.

    Attributes
    ----------
    paint : str
        Paint key.
    lists : tuple of str
        "cadmium", "cobalt", ...
    """

    paint: str
    lists: tuple[str, ...]


def cautions_for(box: Box, keys: Iterable[str]) -> tuple[Caution, ...]:
    """Cautions for some paints of a box, in the box's order, each once."""
    used = set(keys)
    return tuple(
        Caution(paint.key, paint.lists) for paint in box.paints if paint.key in used and paint.lists
    )
