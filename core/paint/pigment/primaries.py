"""The three primaries of a class's colour wheel, and what two of them make."""

from __future__ import annotations

from collections.abc import Iterable
from types import MappingProxyType
from typing import Literal

from core.paint.pigment.catalogue import Paint
from core.reading.wheel import Family

Primary = Literal["yellow", "red", "blue"]

PRIMARIES: tuple[Primary, ...] = ("yellow", "red", "blue")
"""Groups of paints, in the order they are named."""

MADE_OF: MappingProxyType[frozenset[str], tuple[Family, ...]] = MappingProxyType(
    {
        frozenset({"yellow", "red"}): ("yellow-orange", "orange", "red-orange"),
        frozenset({"red", "blue"}): ("red-violet", "violet", "blue-violet"),
        frozenset({"yellow", "blue"}): ("blue-green", "green", "yellow-green"),
    }
)
"""Two primaries, and the tertiaries and the secondary they make (every class's colour wheel)."""


def primaries_for(family: Family) -> tuple[Primary, ...]:
    """The primaries a hue is made of.

    >>> primaries_for("red-orange")
    ('yellow', 'red')
    >>> primaries_for("blue")
    ('blue',)
    """
    if family in PRIMARIES:
        return tuple(primary for primary in PRIMARIES if primary == family)
    pair = next(pair for pair, made in MADE_OF.items() if family in made)
    return tuple(primary for primary in PRIMARIES if primary in pair)


def make_together(one: Paint, other: Paint, family: Family | None) -> bool:
    """Whether two paints are the two primaries a class makes a hue from."""
    return family in MADE_OF.get(frozenset({one.group, other.group}), ())


def all_primaries(paints: Iterable[Paint]) -> bool:
    """Whether some paints are primaries, no two of them the same."""
    groups = [paint.group for paint in paints]
    return set(groups) <= set(PRIMARIES) and len(set(groups)) == len(groups)


def lacking(paints: Iterable[Paint], family: Family | None) -> tuple[Primary, ...]:
    """Primaries that a hue is made of and that no paint is."""
    if family is None:
        return ()
    groups = {paint.group for paint in paints}
    return tuple(primary for primary in primaries_for(family) if primary not in groups)
