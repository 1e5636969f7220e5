"""The cases of a run: number `n` of a kind is the same file whenever it is asked for."""

from __future__ import annotations

import shutil
from pathlib import Path

import numpy as np

from tests.fuzz import seeds
from tests.fuzz.mutators import damaged, strange_value, touch


class Cases:
    """Makes damaged files of one kind in a folder.

    Parameters
    ----------
    kind : a key of `targets.TARGETS`
    seed : int
    folder : Path
        Where the files are written; nothing else may be in it.
    """

    def __init__(self, kind: str, seed: int, folder: Path) -> None:
        self._kind, self._seed, self._folder = kind, seed, folder
        self._suffix = {"study": ".gradewash", "box": ".json"}.get(kind, "")
        if kind == "picture":
            self._sound = seeds.pictures()
        elif kind == "study":
            self._sound = seeds.studies()
        elif kind == "box":
            self._sound = seeds.boxes()
        else:
            self._class_set = seeds.class_set(folder)
            self._sound = {"class set": self._class_set.read_bytes()}
        self.names = tuple(self._sound)

    def make(self, number: int) -> tuple[str, Path]:
        """Which sound file was damaged, and the damaged one."""
        rng = np.random.default_rng((self._seed, number))
        name = self.names[number % len(self.names)]
        sound = self._sound[name]
        text = self._kind in ("box", "class set")
        if self._kind == "study" and number % 3 == 0:
            hurt = strange_value if number % 2 else damaged
            data = seeds.with_text_of(sound, hurt(seeds.text_of(sound), rng))
        elif self._kind == "study" and number % 3 == 1:
            data = touch(sound, rng)
        elif text and number % 3:
            data = strange_value(sound, rng)
        else:
            data = damaged(sound, rng, tuple(self._sound.values()))
        if self._kind == "class set":
            path = self._class_set
        else:
            path = self._folder / f"case{self._suffix}"
        path.write_bytes(data)
        return name, path

    def clear(self) -> None:
        """Remove what was made."""
        shutil.rmtree(self._folder, ignore_errors=True)
