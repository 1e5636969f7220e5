"""What a mix and a painted sheet are judged by: qualities, verdicts, and what became of them."""

from __future__ import annotations

from typing import Literal

Quality = Literal["hue", "value", "intensity", "placement"]
ColourQuality = Literal["hue", "value", "intensity"]
COLOUR_QUALITIES: tuple[ColourQuality, ...] = ("hue", "value", "intensity")
"""Those of a colour: placement is a line's."""

QUALITIES: tuple[Quality, ...] = ("hue", "value", "intensity", "placement")

ChangeFirst = Literal["hue", "value", "intensity", "placement", "edges", "blooms"]
CHANGES: tuple[ChangeFirst, ...] = (*QUALITIES, "edges", "blooms")
"""What a student can choose to change on the second sheet."""

Verdict = Literal["matches", "close", "off", "cannot tell"]
"""How near a mix or a sheet comes to the photo."""

Outcome = Literal["improved", "worse", "stayed"]
"""What became of something on the second sheet."""
