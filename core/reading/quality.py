"""What a painted sheet is looked at for: the four qualities, and what can be changed first."""

from __future__ import annotations

from typing import Literal

Quality = Literal["hue", "value", "intensity", "placement"]
QUALITIES: tuple[Quality, ...] = ("hue", "value", "intensity", "placement")

ChangeFirst = Literal["hue", "value", "intensity", "placement", "edges", "blooms"]
CHANGES: tuple[ChangeFirst, ...] = (*QUALITIES, "edges", "blooms")
"""What a student can choose to change on the second sheet."""
