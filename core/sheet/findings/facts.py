"""Everything the findings of a sheet speak of, in one value."""

from __future__ import annotations

from dataclasses import dataclass

from core.reading.reading import BandReading
from core.sheet.findings.compare import uneven_sides
from core.sheet.result import BandCheck, Bloom, HardEdge, LineCheck, Notice, PaleCorner


@dataclass(frozen=True, eq=False)
class Facts:
    """What was found of a sheet; `reference` has the readings of the photo's bands."""

    bands: tuple[BandCheck, ...]
    lines: tuple[LineCheck, ...]
    edges: tuple[HardEdge, ...]
    blooms: tuple[Bloom, ...]
    corners: tuple[PaleCorner, ...]
    reference: tuple[BandReading, ...]
    notices: tuple[Notice, ...]

    @property
    def lines_off(self) -> tuple[LineCheck, ...]:
        """Lines far enough from their place to be spoken of."""
        return tuple(line for line in self.lines if line.verdict in ("close", "off"))

    @property
    def uneven(self) -> tuple[BandCheck, ...]:
        """Bands one side of which differs more than the other."""
        return tuple(band for band in self.bands if uneven_sides(band) is not None)
