"""The study: everything about one sky exercise, as one frozen value.

Edits are pure functions that return a new study, so every rule can be tested without a window.
Pixels stay outside: a study names its pictures, whoever holds them keeps the bytes.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from core.bands.lines import Bands


@dataclass(frozen=True)
class Study:
    """One sky exercise.

    Attributes
    ----------
    title : str
        What the teacher calls it; from the photo's file name at first.
    photo_name : str or None
        File name of the reference photo, None before one is chosen.
    bands : Bands or None
        Lines and horizon, as fractions of the photo's height; None until proposed.
    """

    title: str = ""
    photo_name: str | None = None
    bands: Bands | None = None


def with_bands(study: Study, bands: Bands) -> Study:
    """The study with other lines."""
    return replace(study, bands=bands)
