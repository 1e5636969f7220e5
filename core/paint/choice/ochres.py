"""Dull yellows from an ochre: the hazy horizon a class paints with its yellow earth."""

from __future__ import annotations

from itertools import product

from core.paint.choice.structure import Structure
from core.paint.pigment.catalogue import Paint
from core.paint.reasons import Cost
from core.reading.wheel import Family

DULL_YELLOW_CHROMA = 4.5
OCHRES = ("raw_sienna",)
"""Whose measurements the yellow earths use."""

HELD_PRICE = 0.4


def is_ochre(paint: Paint) -> bool:
    """Whether a paint is a yellow earth."""
    return paint.measured_as in OCHRES


def wants_ochre(paints: tuple[Paint, ...], family: Family | None, chroma: float) -> bool:
    """Whether a band is a dull yellow and the box has the earth for it (common practice)."""
    dull = family in ("yellow", "yellow-orange") and chroma < DULL_YELLOW_CHROMA
    return dull and any(map(is_ochre, paints))


def held_ochres(paints: tuple[Paint, ...]) -> list[Structure]:
    """An ochre toned down with a blue, and a touch of brown or red that keeps it from green."""
    ochres = [paint for paint in paints if is_ochre(paint)]
    blues = [paint for paint in paints if paint.group == "blue" and not paint.is_strong]
    holding = [paint for paint in paints if paint.group in ("brown", "red")]
    return [
        Structure((ochre.key,), blue.key, (Cost("earth", HELD_PRICE, (ochre.key,)),), hold.key)
        for ochre, blue, hold in product(ochres, blues, holding)
    ]
