"""What the user prefers, kept in one small JSON file in the user's configuration folder.

What belongs to a lesson goes into the study, the window's geometry into a file of its own.
A damaged or newer file never stops the program: what cannot be read has its default.
"""

from __future__ import annotations

import json
import logging
from dataclasses import asdict, dataclass, replace
from functools import cached_property
from pathlib import Path
from typing import Any, Literal

from PySide6.QtCore import QLocale, QObject, Signal

from app.state.language import LANGUAGES
from core.files import make_private_folder, read_file, write_file
from core.photo.views import VALUE_STEPS
from core.places import data_folder as data_folder
from core.reading.units import Units
from core.reading.wording import Wording

log = logging.getLogger(__name__)

VERSION = 1
_MOST_BYTES = 1 << 20

TEXT_SIZES = (100, 125, 150, 175, 200)
"""Percent."""

_CHOICES: dict[str, tuple[Any, ...]] = {
    "tertiary": ("tertiary", "intermediate"),
    "white_is": (10, 0),
    "theme": ("system", "light", "dark"),
    "text_percent": TEXT_SIZES,
    "value_steps": VALUE_STEPS,
    "units": ("system", "cm", "in"),
    "paper": ("system", "a4", "letter"),
    "language": ("system", *LANGUAGES),
}


def _in_the_us() -> bool:
    """Whether the system is set to US customary measures; schools elsewhere use cm and A4."""
    us = QLocale.MeasurementSystem.ImperialUSSystem
    return QLocale.system().measurementSystem() == us


@dataclass(frozen=True)
class Settings:
    """The preferences, with their defaults.

    Attributes
    ----------
    tertiary, white_is
        See `core.reading.wording.Wording`.
    theme : "system", "light" or "dark"
        Of the paper that carries words; the wall behind colours never changes.
    text_percent : int
        Size of all text, one of `TEXT_SIZES`.
    value_steps : int
        Steps of the class's value scale, one of `core.photo.views.VALUE_STEPS`.
    units : "system", "cm" or "in"
        Lengths as they are shown; "system" follows the country the system is set to.
    paper : "system", "a4" or "letter"
        What cards are printed on, unless another size is asked for.
    language : "system", "en" or "es"
        Spoken from the next start.
    """

    tertiary: Literal["tertiary", "intermediate"] = "tertiary"
    white_is: Literal[10, 0] = 10
    theme: Literal["system", "light", "dark"] = "system"
    text_percent: int = 100
    value_steps: int = 5
    units: Literal["system", "cm", "in"] = "system"
    paper: Literal["system", "a4", "letter"] = "system"
    language: str = "system"

    @property
    def shown_units(self) -> Units:
        """Lengths as they are shown."""
        if self.units != "system":
            return self.units
        return "in" if _in_the_us() else "cm"

    @property
    def card_paper(self) -> Literal["a4", "letter"]:
        """What cards are printed on, unless another size is asked for."""
        if self.paper != "system":
            return self.paper
        return "letter" if _in_the_us() else "a4"

    @cached_property
    def wording(self) -> Wording:
        """The choices that `core` needs to put numbers into words."""
        return Wording(tertiary=self.tertiary, white_is=self.white_is, units=self.shown_units)


def config_folder() -> Path:
    """The user's configuration folder; it may not exist yet."""
    import platformdirs  # deferred: start-up time

    return Path(platformdirs.user_config_dir("gradewash", appauthor=False))


def settings_file(folder: Path | None = None) -> Path:
    """Where the preferences are in a configuration folder, the user's if none is named."""
    return (folder or config_folder()) / "settings.json"


def load_settings(path: Path) -> Settings:
    """The settings in `path`; defaults for what is missing or not understood."""
    found = read_json(path)
    known = {
        name: found[name]
        for name, choices in _CHOICES.items()
        if any(type(found.get(name)) is type(c) and found[name] == c for c in choices)
    }
    return replace(Settings(), **known)


def save_settings(settings: Settings, path: Path) -> None:
    """Write the settings to `path`."""
    write_json({"version": VERSION, **asdict(settings)}, path)


def read_json(path: Path) -> dict[str, Any]:
    """The JSON object in `path`; empty when there is none that can be read."""
    try:
        found = json.loads(read_file(path, _MOST_BYTES))
    except FileNotFoundError:
        return {}
    except (OSError, ValueError, RecursionError) as error:
        log.warning("cannot read %s: %s", path, error)
        return {}
    return found if isinstance(found, dict) else {}


def write_json(value: dict[str, Any], path: Path) -> None:
    """Write a JSON object; a full or read-only disk is logged, since work must go on.

    Text that is not UTF-8, such as an odd file name, is kept as JSON's escapes.
    """
    try:
        make_private_folder(path.parent)
        # Not waited for: what is lost in a power cut is a preference, and the window must not
        # stand still.
        write_file(path, json.dumps(value, indent=1).encode(), private=True, durable=False)
    except (OSError, ValueError) as error:
        log.warning("cannot write %s: %s", path, error)


class Preferences(QObject):
    """The settings in use; every change is kept at once.

    Signals
    -------
    changed(before: Settings, after: Settings)
    """

    changed = Signal(object, object)

    def __init__(self, folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._path = settings_file(folder)
        self._settings = load_settings(self._path)

    @property
    def settings(self) -> Settings:
        """The settings as they are now."""
        return self._settings

    def set(self, **values: Any) -> None:
        """Change some settings by name.

        Raises
        ------
        ValueError
            A value that is not among the choices.
        """
        for name, value in values.items():
            if value not in _CHOICES[name]:
                raise ValueError(f"{name} must be one of {_CHOICES[name]}, got {value!r}")
        before, self._settings = self._settings, replace(self._settings, **values)
        if self._settings != before:
            save_settings(self._settings, self._path)
            self.changed.emit(before, self._settings)
