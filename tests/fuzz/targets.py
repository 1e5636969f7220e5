"""What the program does with a file, and what must hold whatever is in it.

Each target gives a word for what came of it. An error meant for the user is "refused"; any other
exception, or a promise that does not hold, is a find.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np

from core.class_set.folder import read_class_set
from core.errors import GradewashError
from core.paint.box.box_file import open_box, save_box
from core.photo import open_photo, strip_private
from core.study_file.document import study_from_bytes, study_to_bytes
from core.study_file.opening import open_file


class BrokenPromise(AssertionError):
    """Something that must hold does not."""


def picture(path: Path) -> str:
    """Open a picture, keep it, open what was kept: the same pixels."""
    try:
        photo = open_photo(path)
        kept = strip_private(path.read_bytes())
    except GradewashError as error:
        return refused(error)
    try:
        again = open_photo(kept)
    except GradewashError as error:
        raise BrokenPromise(f"what was kept does not open: {error}") from error
    if not np.array_equal(photo.pixels, again.pixels):
        raise BrokenPromise("what was kept reads otherwise")
    return "opened"


def study(path: Path) -> str:
    """Open a study, save it, open it again: the same."""
    try:
        found = open_file(path)
    except GradewashError as error:
        return refused(error)
    if found.study is None:
        return "opened as a photo"
    opened = found.study
    again = study_from_bytes(study_to_bytes(opened.study, opened.pictures))
    if again.study != opened.study or again.gone:
        raise BrokenPromise("saved again it is another study")
    return "opened in part" if opened.gone else "opened"


def box(path: Path) -> str:
    """Open a box, save it, open it again: the same."""
    try:
        opened = open_box(path)
    except GradewashError as error:
        return refused(error)
    copy = path.with_name("copy.json")
    save_box(opened, copy)
    if open_box(copy) != opened:
        raise BrokenPromise("saved again it is another box")
    return "opened"


def class_set(path: Path) -> str:
    """Look at a class set."""
    try:
        read_class_set(path.parent)
    except GradewashError as error:
        return refused(error)
    return "opened"


def refused(error: GradewashError) -> str:
    """One sentence that can be shown anywhere."""
    text = str(error)
    text.encode("utf-8")
    if not text or "\n" in text or "Traceback" in text or "Error" in text or len(text) > 600:
        raise BrokenPromise(f"not a sentence: {text!r}")
    return "refused"


TARGETS = {"picture": picture, "study": study, "box": box, "class set": class_set}
