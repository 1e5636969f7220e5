"""Everything that is said of one mix for one band, as numbers and reasons."""

from __future__ import annotations

import numpy as np

from core.colour import delta_E_2000
from core.paint.box import Box
from core.paint.classroom import Built
from core.paint.compare import faults_of, too_hue
from core.paint.mix import Mix
from core.paint.planned import Kind, PlannedMix, Reason
from core.paint.shortfall import shortfall, verdict
from core.paint.strength import strength_of
from core.reading import ColourReading


def describe(
    box: Box,
    target: ColourReading,
    kind: Kind,
    mix: Mix,
    base: tuple[str, ...] = (),
    toner: str | None = None,
    why: tuple[Reason, ...] = (),
) -> PlannedMix:
    """A mix with everything that is said of it for a band."""
    colour = mix.colour
    difference = float(delta_E_2000(np.array(mix.Lab), np.array(target.Lab)))
    short = shortfall(colour, target)
    return PlannedMix(
        kind,
        mix,
        base or mix.keys,
        toner,
        strength_of(box, mix),
        difference,
        verdict(difference),
        short,
        faults_of(short, mix),
        too_hue(short, target),
        why,
    )


def describe_built(
    box: Box, target: ColourReading, built: Built, pinned: tuple[str, ...] = ()
) -> PlannedMix:
    """The same for a teacher's mix."""
    structure = built.structure
    hue = target.hue.family or target.hue.leaning
    why = [Reason("at hue" if len(structure.base) == 1 else "either side", structure.base, hue)]
    if structure.toner is not None:
        why.append(Reason("toned", (structure.toner,)))
    if pinned:
        why.append(Reason("pinned", pinned))
    return describe(
        box, target, "classroom", built.mix, structure.base, structure.toner, tuple(why)
    )


def oddities(box: Box, mix: Mix, steerable: bool) -> tuple[Reason, ...]:
    """What a teacher would find odd about a mix found by colour difference alone.

    Parameters
    ----------
    box : Box
    mix : Mix
    steerable : bool
        Whether a teacher would build the hue from these paints.
    """
    reasons = []
    groups = {box.paint(key).group: key for key in mix.keys}
    if "black" in groups:
        reasons.append(Reason("black", (groups["black"],)))
    if "white" in groups:
        reasons.append(Reason("white", (groups["white"],)))
    tiny = tuple(key for key in mix.keys if box.paint(key).is_strong and mix.share(key) < 0.25)
    if tiny and "black" not in groups:
        reasons.append(Reason("tiny strong", tiny))
    if len(mix.parts) > 1 and not steerable and not reasons:
        reasons.append(Reason("hard to steer", mix.keys))
    if mix.total > 8:
        reasons.append(Reason("many parts"))
    return tuple(reasons)
