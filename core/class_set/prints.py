"""What the class set's prints show: each student's paintings, straightened, and what is said.

The photo around a painting is never printed, and no mark is. What was measured of a student waits
for the student's own scores.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from core.class_set.kept_checks import Kept, KeptChecks
from core.class_set.model import ClassSet, State
from core.class_set.placing import Placement
from core.class_set.standing import state_of
from core.class_set.students import Student
from core.class_set.ticket import Slot
from core.photo import open_photo
from core.reading.quality import QUALITIES, Quality
from core.worksheet.compare import shown_score
from core.worksheet.worksheet import OwnScores


@dataclass(frozen=True)
class ShownScore:
    """One quality of the last sheet: the student's own score, and the measured one."""

    quality: Quality
    own: int | None
    measured: int | None


@dataclass(frozen=True)
class ShownStudent:
    """A student on a print.

    Attributes
    ----------
    paintings : two of bytes or None
        JPEGs, straightened and upright; None too where no painting was found in the picture, which
        then shows what was around it.
    states : two of State
    scores : tuple of ShownScore
        Of the last sheet that is in; measured ones are None until the own ones are complete.
    last : int
        Which sheet the scores are of, 0 or 1.
    not_found : two of bool
        A picture is there, and no painting was found in it.
    """

    student: Student
    paintings: tuple[bytes | None, bytes | None]
    states: tuple[State, State]
    strength: str
    next_step: str
    remark: str
    scores: tuple[ShownScore, ...]
    last: int
    not_found: tuple[bool, bool] = (False, False)


def sky_of(photo: bytes, horizon: float) -> NDArray[np.uint8]:
    """The sky of the exercise's photo, (h, w, 3) uint8, from its top to the horizon."""
    pixels = open_photo(photo).pixels
    return pixels[: max(1, round(horizon * len(pixels)))]


def shown_students(
    folder: Path, class_set: ClassSet, placement: Placement, checks: Mapping[str, Kept]
) -> tuple[ShownStudent, ...]:
    """Everybody, in the list's order.

    Parameters
    ----------
    folder : Path
        The class set's, where the straightened paintings are.
    checks : mapping
        From `core.class_set.kept_checks.found_checks`.
    """
    kept = KeptChecks(folder)

    def painting(digest: str | None) -> bytes | None:
        one = checks.get(digest or "")
        if one is None or one.check is None or no_painting(digest):
            return None
        return kept.jpeg(one.key)

    def no_painting(digest: str | None) -> bool:
        one = checks.get(digest or "")
        notices = () if one is None or one.check is None else one.check.notices
        return any(notice.key == "corners not found" for notice in notices)

    shown = []
    for student in class_set.students:
        digests = [placement.digest_at(Slot(student.number, index)) for index in (0, 1)]
        entry = class_set.entry(student.number)
        last = 1 if digests[1] is not None else 0
        own = entry.worksheet.pages[last].scores
        shown.append(
            ShownStudent(
                student,
                (painting(digests[0]), painting(digests[1])),
                (
                    state_of(class_set, placement, student.number, 0),
                    state_of(class_set, placement, student.number, 1),
                ),
                entry.marking.strength,
                entry.marking.next_step,
                entry.marking.remark,
                _scores(own, checks.get(digests[last] or "")),
                last,
                (no_painting(digests[0]), no_painting(digests[1])),
            )
        )
    return tuple(shown)


def _scores(own: OwnScores, kept: Kept | None) -> tuple[ShownScore, ...]:
    check = None if kept is None else kept.check
    open_now = check is not None and check.readable and not own.missing
    scores = []
    for quality in QUALITIES:
        measured = getattr(check.scores, quality) if check is not None and open_now else None
        scores.append(ShownScore(quality, own.of(quality), shown_score(measured)))
    return tuple(scores)
