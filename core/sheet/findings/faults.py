"""Hard edges and blooms put in their bands, with what probably caused them."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.bands.lines import Bands
from core.colour.working_space import Floats
from core.sheet.match.foreground import clear_along, mostly_seen
from core.sheet.match.reference import Reference
from core.sheet.painted.blooms import Spot
from core.sheet.painted.edges import RawEdge, find_edges
from core.sheet.painted.photo_has import has_bloom, has_edge
from core.sheet.result import Bloom, HardEdge

_AT_LINE = 0.035  # of the height: an edge this near a line is on it
_SAME_PLACE = 0.04  # an edge of the reference this near is the sky's own


def edges_in_bands(
    W: Floats,
    bands: Bands,
    reference: Reference,
    where: NDArray[np.bool_] | None = None,
    *,
    even_light: bool = True,
    strength: float = 1.0,
) -> tuple[HardEdge, ...]:
    """Hard edges of a sheet (h, w, 3, working colours) that its reference does not have.

    `where` (h, w) is what of the sheet is compared, see `match.foreground`; None is everywhere.
    Without `even_light` an edge inside a band may be a shadow's, so only those on lines count.
    `strength` is how much paint the sheet has, over the photo's.

    Likely causes are common practice: across the whole width on a line, the first wash had
    dried before the next was laid; over a part of it, the brush was stiff or dry; inside a
    band, the wash ran out and dried.
    """
    own = _own_edges(reference, bands)
    found = []
    for edge in find_edges(W, where):
        if any(abs(edge.at - at) < _SAME_PLACE for at in own):
            continue
        if where is not None and not clear_along(where, edge.at, edge.start, edge.end):
            continue  # a hill's outline, painted
        letters, on_line = _letters(edge, bands)
        if not on_line and not even_light:
            continue
        if has_edge(reference.sky, W, bands, strength, edge.at, edge.start, edge.end):
            continue
        if not on_line:
            cause = "wash ran out and dried"
        elif edge.full:
            cause = "dried before the next wash"
        else:
            cause = "stiff or dry brush"
        found.append(
            HardEdge(edge.at, edge.start, edge.end, 100 * edge.width, edge.full, letters, cause)
        )
    return tuple(found)


def _own_edges(reference: Reference, bands: Bands) -> list[float]:
    """Where the reference's own hard edges would be on the sheet: lines move with lines."""
    should, at = reference.bands.edges, bands.edges
    moved = []
    for edge in reference.edges:
        k = max(0, sum(1 for y in should[1:-1] if y <= edge.at))
        share = (edge.at - should[k]) / (should[k + 1] - should[k])
        moved.append(at[k] + share * (at[k + 1] - at[k]))
        moved.append(edge.at)
    return moved


def _letters(edge: RawEdge, bands: Bands) -> tuple[tuple[str, ...], bool]:
    for k, line in enumerate(bands.lines):
        if abs(line - edge.at) < _AT_LINE:
            return (bands.letters[k], bands.letters[k + 1]), True
    return (_letter_at(edge.at, bands),), False


def _letter_at(y: float, bands: Bands) -> str:
    return bands.letters[bands.band_at(min(max(y, 0.0), 1.0)) or 0]


def blooms_in_bands(
    spots: tuple[Spot, ...],
    density: Floats,
    bands: Bands,
    reference: Reference,
    where: NDArray[np.bool_] | None = None,
    strength: float = 1.0,
) -> tuple[Bloom, ...]:
    """Blooms that the photo has not at their place too, with the letters of their bands.

    `density` (rows, columns) is the sheet's, see `density.density_of`; `where`
    as for edges.
    """
    return tuple(
        Bloom(x, y, radius, _letter_at(y, bands))
        for x, y, radius in spots
        if (where is None or mostly_seen(where, x, y, radius))
        and not has_bloom(reference.sky, density, bands, strength, x, y, radius)
    )
