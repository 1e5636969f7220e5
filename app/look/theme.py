"""The colours of paper, ink and wall.

The wall carries whatever has its colour judged and is the same in both themes: the ground of a
judgement never changes. Paper carries words and changes with the theme. Ink is the one accent;
it has no hue, since any hue would be some band's reading.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication

ThemeChoice = Literal["light", "dark", "system"]

# The wall, Munsell N5.5, and what stands on it (both themes).
WALL = "#868686"
WALL_INK = "#0b0b0b"
WALL_LIGHT = "#ffffff"
VEIL = "#6c6c6c"


@dataclass(frozen=True)
class Theme:
    """One set of paper colours, "#rrggbb".

    Attributes
    ----------
    paper, raised, bar : str
        The ground of words; the ground of the chosen row and of controls; header and foot.
    ink, on_ink : str
        Text and chosen controls; text on them.
    second : str
        Second text, never the only carrier of something needed.
    rule, edge : str
        Lines between rows; the edge of a control.
    """

    name: Literal["light", "dark"]
    paper: str
    raised: str
    bar: str
    ink: str
    on_ink: str
    second: str
    rule: str
    edge: str
    wall: str = WALL
    wall_ink: str = WALL_INK
    wall_light: str = WALL_LIGHT


LIGHT = Theme(
    name="light",
    paper="#ededed",
    raised="#fbfbfb",
    bar="#e2e2e2",
    ink="#141414",
    on_ink="#ffffff",
    second="#3d3d3d",
    rule="#c2c2c2",
    edge="#6e6e6e",
)

DARK = Theme(
    name="dark",
    paper="#262626",
    raised="#383838",
    bar="#1c1c1c",
    ink="#f2f2f2",
    on_ink="#141414",
    second="#cccccc",
    rule="#474747",
    edge="#9c9c9c",
)


def system_is_dark() -> bool:
    """Whether the desktop asks for dark windows; False when it does not say."""
    hints = QGuiApplication.styleHints()
    return hints is not None and hints.colorScheme() == Qt.ColorScheme.Dark


def theme_for(choice: ThemeChoice) -> Theme:
    """The theme of a user's choice; "system" follows the desktop.

    Raises
    ------
    ValueError
        `choice` is none of "light", "dark", "system".
    """
    if choice == "light":
        return LIGHT
    if choice == "dark":
        return DARK
    if choice == "system":
        return DARK if system_is_dark() else LIGHT
    raise ValueError(f"unknown theme {choice!r}")
