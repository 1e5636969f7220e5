"""A step that could be advised, before it is chosen."""

from __future__ import annotations

from dataclasses import dataclass

from core.sheet.result import Finding


@dataclass(frozen=True)
class Advice:
    """A finding with its weight.

    Attributes
    ----------
    weight : float
        How far off it is, in tolerances, times how much it matters.
    covers : tuple of str
        The qualities it speaks of; others about them are left out.
    """

    weight: float
    covers: tuple[str, ...]
    finding: Finding
