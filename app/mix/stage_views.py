"""From a plan to the three looks into a band: toning down, paints compared, parts by hand."""

from __future__ import annotations

from dataclasses import dataclass

from app.drawing.mix.compare import ComparedChip
from app.drawing.mix.tone import ToneChip
from app.mix.views import Part
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.choice.alternatives import main_group
from core.paint.choice.faults import PaintCompared, compare_group
from core.paint.pigment.catalogue import Group
from core.paint.planned import BandMix, PlannedMix
from core.paint.toning.tone_down import Ladder
from core.paint.words.compare import compared_faults, compared_sensitivity
from core.paint.words.mix import parts_text
from core.paint.words.plan import drift_text, fraction_text, step_note_text
from core.words.verdicts import verdict_word


@dataclass(frozen=True)
class ToneStageView:
    """Title, steps, the toners one may choose as (name, chosen), and how they compare.

    Folded, the title says in a line that no toner is needed, and there are no steps.
    """

    title: str
    steps: tuple[ToneChip, ...]
    toners: tuple[tuple[str, bool], ...]
    comparison: str = ""

    @property
    def folded(self) -> bool:
        """Whether there is only a line to read."""
        return not self.steps


@dataclass(frozen=True)
class CompareStageView:
    """Title, the band's colour in the photo, the paints."""

    title: str
    photo: str
    paints: tuple[ComparedChip, ...]


@dataclass(frozen=True)
class HandStageView:
    """The mix as it can be counted by hand.

    Attributes
    ----------
    letter : str
        The band.
    parts : tuple of Part
    addable : tuple of (key, name)
        Paints of the box that are not in it.
    strength : str
    by_hand : bool
        Whether it was set by hand: then one can go back.
    most : int
        Parts a paint may have.
    """

    letter: str
    parts: tuple[Part, ...]
    addable: tuple[tuple[str, str], ...]
    strength: str
    by_hand: bool
    most: int


def tone_steps(box: Box, ladder: Ladder, letter: str) -> tuple[ToneChip, ...]:
    """The ladder's chips."""
    return tuple(
        ToneChip(
            step.colour.hex,
            fraction_text(box, ladder, step.fraction),
            step_note_text(step.note, letter),
            drift_text(step),
            number == ladder.matched,
            step.note == "mud",
        )
        for number, step in enumerate(ladder.steps)
    )


def group_to_compare(box: Box, band: BandMix) -> Group | None:
    """The group of paints whose choice matters for a band; None when the box has but one."""
    if band.classroom is None or band.target is None:
        return None
    group = main_group(box, band.classroom.mix)
    if group is None or sum(paint.group == group for paint in box.paints) < 2:
        return None
    return group


def compared(box: Box, band: BandMix, group: Group) -> tuple[ComparedChip, ...]:
    """The paints of a group side by side, in the box's order so that they keep their places."""
    if band.classroom is None or band.target is None:
        return ()
    found = compare_group(box, group, band.target, band.classroom.mix)
    order = {key: place for place, key in enumerate(box.keys)}
    return tuple(
        _compared(box, item, band.classroom)
        for item in sorted(found, key=lambda item: order[item.paint])
    )


def _compared(box: Box, item: PaintCompared, chosen: PlannedMix) -> ComparedChip:
    return ComparedChip(
        paint_name(box.paint(item.paint)),
        item.mix.colour.hex,
        parts_text(box, item.mix),
        item.verdict,
        verdict_word(item.verdict),
        compared_faults(item),
        compared_sensitivity(item),
        item.paint in chosen.mix.keys,
    )
