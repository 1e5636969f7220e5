"""The paint boxes a teacher named, kept as small files in the configuration folder."""

from __future__ import annotations

import hashlib
import logging
import re
from pathlib import Path

from core.errors import BoxError
from core.i18n import translate
from core.paint.box.box import GENERIC_BOXES, Box
from core.paint.box.box_file import open_box, save_box

log = logging.getLogger(__name__)


class SavedBoxes:
    """Boxes by name; saving one under a name that is there replaces it."""

    def __init__(self, folder: Path) -> None:
        """`folder` need not exist yet."""
        self._folder = folder

    def boxes(self) -> tuple[Box, ...]:
        """All boxes of the teacher, by name; a damaged file is passed over."""
        found: dict[str, Box] = {}
        for path in sorted(self._folder.glob("*.json")):
            try:
                box = open_box(path)
            except BoxError as error:
                log.warning("a paint box is passed over: %s", error)
                continue
            found[box.name] = box
        return tuple(found[name] for name in sorted(found, key=str.casefold))

    def save(self, box: Box) -> None:
        """Keep a box under its name.

        Raises
        ------
        BoxError
            The name is one of the boxes that come along, or the file cannot be written.
        """
        if box.name in {generic.name for generic in GENERIC_BOXES.values()}:
            raise BoxError(
                translate("box", "That is the name of a box that comes along: choose another name.")
            )
        try:
            self._folder.mkdir(parents=True, exist_ok=True)
        except OSError as error:
            raise BoxError(
                translate(
                    "box",
                    "The paint box could not be kept: check that your home folder is not full.",
                )
            ) from error
        save_box(box, self._path(box.name))

    def remove(self, name: str) -> None:
        """Delete a saved box; nothing happens when it is not there."""
        self._path(name).unlink(missing_ok=True)

    def _path(self, name: str) -> Path:
        # Names may hold anything; the sum keeps two that look alike as files apart.
        slug = re.sub(r"[^\w-]+", "_", name.casefold()).strip("_")[:40]
        return self._folder / f"{slug}-{hashlib.sha256(name.encode()).hexdigest()[:8]}.json"
