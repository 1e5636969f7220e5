"""Sample skies of our own, in places that do not exist, and the truth about each.

They are what the window shows to a newcomer, and what the tests read: `draw.py` made every sky
from the colours and lines that `truth` gives back.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import cache
from importlib import resources
from pathlib import Path
from typing import Any

from core.i18n import translate

DEFAULT = "dusk"
"""The scene the window opens with."""


@dataclass(frozen=True)
class BandTruth:
    """One band as it was drawn: `top` and `bottom` are fractions of the picture's height."""

    letter: str
    top: float
    bottom: float
    Lab: tuple[float, float, float]


@dataclass(frozen=True)
class SceneTruth:
    """A scene as it was drawn.

    Attributes
    ----------
    lines : tuple of float
        Heights of the lines between bands, fractions of the picture's height.
    horizon : float
        Where the sky ends, as one height.
    bands : tuple of BandTruth
        From the top; `Lab` (CIELAB, D65, 2 degrees) is the middle of the band's sky pixels.
    skyline : tuple of float
        For equal steps across the picture, the height down to which all is sky.
    """

    name: str
    title: str
    lines: tuple[float, ...]
    horizon: float
    bands: tuple[BandTruth, ...]
    skyline: tuple[float, ...]

    @property
    def Lab(self) -> tuple[tuple[float, float, float], ...]:
        """The bands' colours alone, from the top."""
        return tuple(band.Lab for band in self.bands)


def names() -> tuple[str, ...]:
    """The scenes' names, the default first."""
    return tuple(_entries())


def path(name: str) -> Path:
    """The picture file of a scene.

    Raises
    ------
    KeyError
        No scene has this name.
    """
    # Both a checkout and an installed wheel are unpacked on the disk.
    return Path(str(resources.files(__name__).joinpath(str(_entries()[name]["file"]))))


def title(name: str) -> str:
    """What the scene is called in the user's language."""
    titles = {
        "dusk": translate("sample scenes", "Dusk over Lake Fennary"),
        "fell": translate("sample scenes", "Noon above Harrow Fell"),
        "ember": translate("sample scenes", "Ember sunset at Quillet Head"),
        "marsh": translate("sample scenes", "Grey morning, Tillow Marsh"),
        "quay": translate("sample scenes", "Harbour fog at Vennick Quay"),
        "pines": translate("sample scenes", "Late light, the Oskerry pines"),
    }
    return titles[name]


def truth(name: str) -> SceneTruth:
    """How a scene was drawn; KeyError when no scene has this name."""
    entry = _entries()[name]
    lines = tuple(entry["lines"])
    edges = (0.0, *lines, entry["horizon"])
    bands = tuple(
        BandTruth(chr(ord("A") + i), edges[i], edges[i + 1], (float(L), float(a), float(b)))
        for i, (L, a, b) in enumerate(entry["Lab"])
    )
    return SceneTruth(name, title(name), lines, entry["horizon"], bands, tuple(entry["skyline"]))


@cache
def _entries() -> dict[str, dict[str, Any]]:
    text = resources.files(__name__).joinpath("scenes.json").read_text(encoding="utf-8")
    return {entry["name"]: entry for entry in json.loads(text)}
