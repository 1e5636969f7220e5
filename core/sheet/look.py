"""Looking at a sheet straightened; and, in doubt, at what else in the picture may be the painting.

What may be is looked at small first: only what is taken is worth a full look.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from core.colour import linear_to_srgb8
from core.colour.working_space import Floats, brightness, linear_to_W_planes
from core.progress import ShouldStop, step
from core.sheet.find.corners import FoundCorners
from core.sheet.find.sight import Sight
from core.sheet.find.surroundings import WHOLE, outline_of, touches_no_edge
from core.sheet.findings.notices import Scene, judge_light
from core.sheet.light.light import Lit, undo_light
from core.sheet.light.straighten import HEIGHT, MARGIN, Flat, aspect_of, straighten, upright_quad
from core.sheet.match.likeness import likeness, likenesses
from core.sheet.match.order import profile_of
from core.sheet.match.orientation import LIGHT_LEFT, OTHER_SKY
from core.sheet.match.reference import Reference
from core.sheet.match.washes import is_coloured, is_even
from core.sheet.result import Corners, Light, SheetOptions, Washes

_GLANCE = HEIGHT // 2  # rows of a first look
_PROPOSED = 0.01  # confidence of corners that only the likeness to the photo speaks for
_DESK = 0.85  # of the brightest paint: paper would be brighter than any
_SIDE = 0.08  # of the width, at either side
_CLEARLY = 0.8  # share of the distance: what shows so much more of the photo's sky is taken


@dataclass(frozen=True, eq=False)
class Seen:
    """A sheet straightened and its light undone.

    Attributes
    ----------
    flat : Flat
    lit : Lit
    light : Light
        What is said of it.
    corrected : bool
        The border could undo it.
    """

    flat: Flat
    lit: Lit
    light: Light
    corrected: bool

    @cached_property
    def W(self) -> Floats:
        """The painted rectangle (h, w, 3) in working colours."""
        # A channel at a time in memory, as most of what looks at it does.
        return np.moveaxis(linear_to_W_planes(self.lit.painted), 0, -1)

    @cached_property
    def profile(self) -> Floats:
        """Of its rows, see `order.profile_of`."""
        return profile_of(self.W)

    @cached_property
    def picture(self) -> NDArray[np.uint8]:
        """The painted rectangle (h, w, 3), sRGB."""
        picture = linear_to_srgb8(self.lit.painted)
        picture.setflags(write=False)
        return picture


def look(
    sight: Sight,
    found: FoundCorners,
    options: SheetOptions,
    should_stop: ShouldStop | None = None,
    *,
    bare: bool = False,
) -> Seen:
    """The sheet straightened; `bare` where no paper shows around it, so that nothing tells the
    light.

    Raises
    ------
    SheetError
        The corners make no rectangle.
    Cancelled
        `should_stop` answered True.
    """
    step(0.45, None, should_stop)
    flat = _straightened(sight, found.corners, options, HEIGHT)
    step(0.5, None, should_stop)
    lit = Lit(flat.painted, None, np.ones(3), np.empty((0, 3))) if bare else undo_light(flat)
    light, corrected = judge_light(flat, lit, options.scan)
    return Seen(flat, lit, light, corrected)


@dataclass(frozen=True, eq=False)
class Glances:
    """First looks at what else in a picture may be the painting, each taken once."""

    sight: Sight
    options: SheetOptions
    _taken: dict[Corners, NDArray[np.float32]] = field(default_factory=dict)

    @cached_property
    def outline(self) -> Corners | None:
        """Of what stands out from its surroundings, see `surroundings.outline_of`."""
        return outline_of(self.sight)

    def at(self, corners: Corners) -> NDArray[np.float32]:
        """What is between these corners, straightened to few rows."""
        if corners not in self._taken:
            flat = _straightened(self.sight, corners, self.options, _GLANCE, margin=0.0)
            self._taken[corners] = flat.painted
        return self._taken[corners]


def without_border(
    glances: Glances,
    reference: Reference,
    found: FoundCorners,
    seen: Seen,
    should_stop: ShouldStop | None,
) -> tuple[FoundCorners, Seen, Scene | None]:
    """What was found unsurely, or the whole picture, or what stands out from the desk: whichever
    shows most of the photo's sky."""
    best = likeness(reference.profile, seen.profile).apart
    if reaches_edge(seen):
        found, best = FoundCorners(found.corners, min(found.confidence, _PROPOSED)), np.inf
    taken: tuple[Corners, Scene] | None = None
    tried: list[tuple[Corners, Scene]] = []
    if found.corners != WHOLE and touches_no_edge(found.corners):
        tried.append((found.corners, "paper edge"))
    if glances.outline is not None:
        tried.append((glances.outline, "paper edge"))
    tried.append((WHOLE, "whole picture"))
    for corners, kind in tried:
        step(0.5, None, should_stop)
        painted = glances.at(corners)
        far = _apart(reference, painted, sides=kind == "whole picture")
        same = corners == found.corners == WHOLE
        near = OTHER_SKY * (LIGHT_LEFT if same else 1.0)
        if far < near and (same or far < _CLEARLY * best) and not is_even(painted):
            taken, best = (corners, kind), far
    if taken is None:
        return found, seen, None
    corners, kind = taken
    at = FoundCorners(corners, min(found.confidence, _PROPOSED))
    return at, look(glances.sight, at, glances.options, should_stop, bare=True), kind


def of_one_colour(
    glances: Glances,
    found: FoundCorners,
    seen: Seen,
    should_stop: ShouldStop | None,
) -> tuple[FoundCorners, Seen, Scene | None, Washes | None]:
    """A picture in which nothing was painted, or a single wash to the paper's edge: what it is,
    and where the wash is. As it was, and None, of any other."""
    kinds: tuple[tuple[Corners | None, Scene], ...] = (
        (glances.outline, "paper edge"),
        (WHOLE, "whole picture"),
    )
    for corners, kind in kinds:
        if corners is None:
            continue
        painted = glances.at(corners)
        if not is_even(painted):
            continue
        if is_coloured(painted):
            at = FoundCorners(corners, min(found.confidence, _PROPOSED))
            seen = look(glances.sight, at, glances.options, should_stop, bare=True)
            return at, seen, kind, Washes("one")
        return found, seen, None, Washes("blank")
    return found, seen, None, None


def reaches_edge(seen: Seen) -> bool:
    """Whether what is round the paint is darker than the paint itself: no paper, but a desk."""
    flat = seen.flat
    height, width = flat.painted.shape[:2]
    near, far = round(0.01 * height), round(0.03 * height)
    m = flat.margin
    sides = (
        flat.linear[m - far : m - near, m : m + width],
        flat.linear[m + height + near : m + height + far, m : m + width],
        flat.linear[m : m + height, m - far : m - near],
        flat.linear[m : m + height, m + width + near : m + width + far],
    )
    around = [float(np.median(brightness(side))) for side in sides if side.size]
    bright = float(np.quantile(brightness(flat.painted), 0.95))
    return bool(around) and max(around) < _DESK * bright


def _straightened(
    sight: Sight, corners: Corners, options: SheetOptions, rows: int, margin: float = MARGIN
) -> Flat:
    height, width = sight.linear.shape[:2]
    quad = upright_quad(corners, options.turned, width, height)
    aspect = aspect_of(quad, width, height, options.scan)
    return straighten(sight.linear, quad, aspect, rows, margin)


def _apart(reference: Reference, painted: NDArray[np.float32], *, sides: bool = False) -> float:
    """How far a painting is from the photo's sky; with `sides`, its left and right edges too,
    which a picture with a desk around the sheet fails."""
    W = np.moveaxis(linear_to_W_planes(painted), 0, -1)
    parts = [W]
    if sides:
        width = max(1, round(_SIDE * W.shape[1]))
        parts += [W[:, :width], W[:, -width:]]
    found = likenesses(reference.profile, [profile_of(part) for part in parts])
    return max(each.apart for each in found)
