"""Other mixes for a band, and why to prefer or avoid them."""

from __future__ import annotations

from collections.abc import Iterable

from core.paint.box.box import Box
from core.paint.choice.classroom import Built
from core.paint.choice.faults import TOUCHY_DELTA_E, PaintCompared, compare_group, one_part_more
from core.paint.choice.preference import Chosen, against, new_paints, remarks, told_apart
from core.paint.mixture.mix import Mix
from core.paint.pigment.catalogue import Group
from core.paint.planned import Alternative, PlannedMix
from core.paint.reasons import Reason
from core.reading.reading import ColourReading

MOST, MOST_MERITS, MOST_REASONS = 3, 2, 3
CLOSER_BY, FORGIVING_BY, FEWER_PARTS_BY = 0.8, 2.0, 2
WORSE_AT_MOST = 2.5
"""Delta E 2000 an alternative may be further off than the chosen mix."""


def alternatives(
    box: Box,
    chosen: Chosen,
    others: Iterable[tuple[Built, PlannedMix]],
) -> tuple[Alternative, ...]:
    """Other mixes to prefer for a reason, each with what speaks against it all the same.

    Parameters
    ----------
    box : Box
    chosen : Chosen
        The band's mix.
    others : iterable of (Built, PlannedMix)
        Built as a teacher would, best first; the chosen one among them is passed over.
    """
    found: list[Alternative] = []
    own = chosen.planned
    for built, other in others:
        if set(other.mix.keys) == set(own.mix.keys) or other.verdict == "off":
            continue
        if other.delta_E_2000 > own.delta_E_2000 + WORSE_AT_MOST:
            continue
        good, bad = _for(box, own, other), _against(box, other)
        if len(new_paints(other.mix.keys, chosen)) > 1 and good[:1] != [Reason("closer")]:
            continue  # a class that opens two more paints wants to see what it gains
        if good and not bad and not _outdone(other, good, found):
            costs = against(chosen, built, other.mix, other.delta_E_2000)
            warnings = told_apart((*costs, *remarks(box, own, other.mix)))
            if warnings and warnings[0].code == "not shared":
                warnings = warnings[:1]  # decides alone
            reasons = (*good[:MOST_MERITS], *warnings)[:MOST_REASONS]
            found.append(Alternative(other, True, reasons))
        if len(found) == MOST - 1:
            break
    return tuple(found)


def _outdone(other: PlannedMix, good: list[Reason], found: list[Alternative]) -> bool:
    """Whether an alternative already offered has the same merits, with no more paints."""
    codes = {reason.code for reason in good}
    return any(
        codes <= {reason.code for reason in item.reasons}
        and item.planned.verdict == "matches"
        and len(item.planned.mix.parts) <= len(other.mix.parts)
        for item in found
    )


def _for(box: Box, chosen: PlannedMix, other: PlannedMix) -> list[Reason]:
    reasons: list[Reason] = []
    if other.delta_E_2000 < chosen.delta_E_2000 - CLOSER_BY:
        reasons.append(Reason("closer"))
    if len(other.mix.parts) < len(chosen.mix.parts):
        reasons.append(Reason("fewer paints"))
    elif other.mix.total <= chosen.mix.total - FEWER_PARTS_BY:
        reasons.append(Reason("fewer parts"))
    # More parts bear a miscount better only because each is smaller: that is no merit.
    plain = len(other.mix.parts) <= len(chosen.mix.parts) and not _strong(box, other.mix)
    plain = plain and other.mix.total <= chosen.mix.total
    if plain and touchiness(box, other.mix) <= touchiness(box, chosen.mix) - FORGIVING_BY:
        reasons.append(Reason("forgiving"))
    return reasons


def _against(box: Box, other: PlannedMix) -> list[Reason]:
    strong = _strong(box, other.mix)
    touchy = [key for key in strong if one_part_more(box, other.mix, key) > TOUCHY_DELTA_E]
    return [Reason("one part too many", tuple(touchy))] if touchy else []


def _strong(box: Box, mix: Mix) -> list[str]:
    return [key for key in mix.keys if box.paint(key).is_strong]


def touchiness(box: Box, mix: Mix) -> float:
    """Delta E 2000 of the worst single part too much."""
    return max((one_part_more(box, mix, key) for key in mix.keys), default=0.0)


def to_avoid(
    box: Box, target: ColourReading, chosen: PlannedMix, allowed: frozenset[str]
) -> tuple[PaintCompared, tuple[Reason, ...]] | None:
    """The relative of the mix's main paint that tempts and fails, with what goes wrong.

    Parameters
    ----------
    allowed : frozenset of str
        Paints that may be used at all.
    """
    group = main_group(box, chosen.mix)
    if group is None:
        return None
    worst: tuple[PaintCompared, tuple[Reason, ...]] | None = None
    for compared in compare_group(box, group, target, chosen.mix):
        if compared.paint in chosen.mix.keys or compared.paint not in allowed:
            continue
        reasons = tuple(_faults(box, compared, chosen))
        if not reasons:
            continue
        if worst is None or compared.delta_E_2000 > worst[0].delta_E_2000:
            worst = (compared, reasons)
    return worst


def main_group(box: Box, mix: Mix) -> Group | None:
    """The group whose choice matters: the blues where there is one, else the largest part's."""
    groups = {box.paint(key).group for key in mix.keys}
    if not groups:
        return None
    return "blue" if "blue" in groups else box.paint(max(mix.keys, key=mix.share)).group


def _faults(box: Box, compared: PaintCompared, chosen: PlannedMix) -> list[Reason]:
    reasons: list[Reason] = []
    paint = compared.paint
    strong = box.paint(paint).is_strong
    if strong and len(compared.mix.parts) > 1 and compared.one_part_more > TOUCHY_DELTA_E:
        reasons.append(Reason("one part too many", (paint,)))
    if compared.delta_E_2000 > chosen.delta_E_2000 + CLOSER_BY:
        if compared.too is not None:
            reasons.append(Reason("too hue", (paint,), compared.too))
        reasons.extend(Reason(fault, (paint,)) for fault in compared.faults)
    return reasons[:3]
