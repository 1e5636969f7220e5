"""What happens where two washes meet on a wet sheet."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

import numpy as np

from core.paint.box.box import Box
from core.paint.mixture.mix import Mix, Triple
from core.paint.pigment.hues import turn
from core.reading.reading import ColourReading, read_colours
from core.reading.wheel import FAMILIES, Family, wheel_distance

STEPS = 9
MUD_CHROMA = 2.0
"""Munsell chroma below which a passage between two colours is mud."""

MeetingNote = Literal[
    "one hue",
    "clean",
    "photo has it",
    "photo lacks it",
    "grey",
    "grey in photo too",
    "mud",
    "paper",
]


@dataclass(frozen=True)
class Meeting:
    """The passage from one band's wash to the next one's.

    Attributes
    ----------
    path : tuple of Lab triples
        From the upper mix to the lower, mixed on the paper.
    families : tuple of str or None
        Names passed through, each once in a row; None is near neutral.
    lowest_chroma : float
        Munsell chroma of the dullest place between the two.
    note : MeetingNote
    new_hue : str or None
        The hue that appears between, though neither wash has it.
    keep_between : str or None
        A clear hue that would keep the two from going grey, if it lay between.
    keep_from : str
        The band whose mix has that hue; "" where none has, and nothing is to be said of it.
    photo_agrees : bool or None
        Whether the photo passes through no other hues than the paint, give or take one step of
        the wheel; None without a photo.
    """

    path: tuple[Triple, ...]
    families: tuple[Family | None, ...]
    lowest_chroma: float
    note: MeetingNote
    new_hue: Family | None
    keep_between: Family | None
    photo_agrees: bool | None = None
    keep_from: str = ""

    @property
    def runs_together(self) -> bool:
        """Whether the two may be laid wet into wet: else a strip stays clean between them."""
        return self.note not in ("mud", "photo lacks it")

    @property
    def happens(self) -> bool:
        """Whether anything happens that is worth a sentence."""
        return self.note not in ("one hue", "clean")


def meet(box: Box, upper: Mix, lower: Mix, transition: Sequence[Triple] | None = None) -> Meeting:
    """Follow the wet edge between two washes.

    Parameters
    ----------
    box : Box
    upper, lower : Mix
    transition : sequence of Lab triples, optional
        Colours of the photo, sampled downwards across the line between the two bands.
    """
    seen = tuple((L, a, b) for L, a, b in transition or ())
    return _meet(box.only((*upper.keys, *lower.keys)), upper, lower, seen)


# benchmarks/cache_hits.py: 140 calls, 37 misses of 0.8 ms.
@lru_cache(maxsize=256)
def _meet(box: Box, upper: Mix, lower: Mix, transition: tuple[Triple, ...]) -> Meeting:
    start, end = box.load_vector(upper.loads_ml), box.load_vector(lower.loads_ml)
    share = np.linspace(0, 1, STEPS)[:, None]
    path = box.pigments.Lab((1 - share) * start + share * end)
    colours = list(read_colours(path))
    families = _in_a_row(colours)
    inner = [colour.munsell.chroma for colour in colours[1:-1]]
    lowest = min(inner)
    ends = (colours[0], colours[-1])
    photo = list(read_colours(np.array(transition))) if transition else []
    note, new_hue = _judge(colours, families, lowest, photo)
    if not upper.parts or not lower.parts:
        note, new_hue = "paper", None
    keep = _between(*ends) if note == "mud" else None
    return Meeting(
        tuple((L, a, b) for L, a, b in path.tolist()),
        families,
        lowest,
        note,
        new_hue,
        keep,
        _agrees(families, photo) if photo else None,
    )


def _agrees(families: tuple[Family | None, ...], photo: list[ColourReading]) -> bool:
    own = [family for family in families if family is not None]
    seen = {colour.hue.family for colour in photo if colour.hue.family is not None}
    return bool(own) and all(
        any(wheel_distance(family, name) <= 1 for name in own) for family in seen
    )


def _in_a_row(colours: list[ColourReading]) -> tuple[Family | None, ...]:
    names: list[Family | None] = []
    for colour in colours:
        if not names or names[-1] != colour.hue.family:
            names.append(colour.hue.family)
    return tuple(names)


def _judge(
    colours: list[ColourReading],
    families: tuple[Family | None, ...],
    lowest: float,
    photo: list[ColourReading],
) -> tuple[MeetingNote, Family | None]:
    first, last = colours[0], colours[-1]
    ends_clear = min(first.munsell.chroma, last.munsell.chroma) >= MUD_CHROMA
    if lowest < MUD_CHROMA and ends_clear:
        photo_grey = bool(photo) and min(c.munsell.chroma for c in photo) < MUD_CHROMA
        return ("grey in photo too" if photo_grey else "mud"), None
    if not ends_clear:
        return "grey", None
    new = [family for family in families[1:-1] if family is not None and _is_new(family, families)]
    if not new:
        return ("one hue" if len(set(families)) == 1 else "clean"), None
    middle = new[len(new) // 2]
    if not photo:
        return "clean", middle
    seen = {c.hue.family for c in photo if c.hue.family is not None}
    if any(wheel_distance(middle, family) <= 1 for family in seen - {families[0], families[-1]}):
        return "photo has it", middle
    return "photo lacks it", middle


def _is_new(family: Family, families: tuple[Family | None, ...]) -> bool:
    """Whether a hue between is a hue of its own: two steps or more from both ends."""
    ends = [end for end in (families[0], families[-1]) if end is not None]
    return all(wheel_distance(family, end) >= 2 for end in ends)


def _between(first: ColourReading, last: ColourReading) -> Family | None:
    """A hue to leave clear between two that go grey: a primary on the warm way round.

    Yellow and violet, orange and blue are kept apart by the pinks and reds between them or by
    clear yellow (common practice: put pink or red between yellow and blue).
    """
    if first.hue.wheel_deg is None or last.hue.wheel_deg is None:
        return None
    start, way = first.hue.wheel_deg, turn(first.hue.wheel_deg, last.hue.wheel_deg)
    ways = [start + way / 2, start + way / 2 + 180]
    # Of the two ways round, the one that keeps away from green: skies have little of it.
    middle = max(ways, key=lambda angle: abs(turn(300.0, angle)))
    return FAMILIES[round((middle % 360) / 30) % 12]
