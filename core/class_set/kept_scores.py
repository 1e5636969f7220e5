"""What was read of worksheet pages, kept beside the checks: made once, thrown away at no loss.

Nothing of it counts as a student's score until the teacher takes it (`taken`).
"""

from __future__ import annotations

import contextlib
import hashlib
import io
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Annotated, Literal

import msgspec
import numpy as np
from msgspec import Meta

from core.class_set.edits import with_worksheet
from core.class_set.folder import CHECKS
from core.class_set.kept_checks import SCORES_FORMAT
from core.class_set.model import ClassSet
from core.class_set.placing import Placement
from core.class_set.score_marks.decide import Reading, RowReading
from core.class_set.score_marks.form import ScoreForm
from core.class_set.score_marks.read import PageReading, read_scores
from core.class_set.ticket import Slot
from core.errors import Cancelled, ClassSetError
from core.file_sentences import why_not_written
from core.files import read_file, write_file
from core.photo import open_photo
from core.progress import ShouldStop
from core.reading.quality import QUALITIES, Quality
from core.worksheet.worksheet import OwnScores, with_score

SCORES_VERSION = 2
"""Raise it when `read_scores` comes to find something else: what was kept then counts no more."""

_MOST = 4 << 20
_QUALITY = 85  # of the crops as they are kept
_PAPER, _BRIGHTEST = 236.0, 3.0

Forms = tuple[tuple[ScoreForm, ...], tuple[ScoreForm, ...]]
"""For either worksheet page what may be printed on it."""


@dataclass(frozen=True)
class KeptScores:
    """What was read of one worksheet page.

    Attributes
    ----------
    rows : tuple of RowReading
        One a quality, in their order; empty where the page could not be read at all.
    crops : Path or None
        A JPEG of the rows, one below the other, each as high.
    """

    rows: tuple[RowReading, ...] = ()
    crops: Path | None = None

    def of(self, quality: Quality) -> RowReading | None:
        """What was read for one quality; None where the page could not be read."""
        return self.rows[QUALITIES.index(quality)] if self.rows else None


class _Row1(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    kind: Reading
    score: Annotated[int, Meta(ge=1, le=10)] | None = None


class _Scores1(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    format: Literal["gradewash scores"]
    rows: list[_Row1]


def scores_key(digest: str, index: int) -> str:
    """What the reading of a picture is kept under, as page 1 (0) or 2 (1) of a worksheet."""
    return hashlib.sha256(repr(("scores", SCORES_VERSION, digest, index)).encode()).hexdigest()


def pages_to_read(placement: Placement) -> tuple[tuple[str, int], ...]:
    """The worksheet pages that have their place: each picture's digest, and which page it is."""
    return tuple(
        (place.digest, place.slot.index)
        for place in placement.places.values()
        if place.slot.what == "page"
    )


def read_page(
    folder: Path,
    digest: str,
    index: int,
    picture: Path,
    forms: Forms,
    should_stop: ShouldStop | None = None,
) -> KeptScores:
    """Read a page and keep what came of it; in a worker.

    Parameters
    ----------
    folder : Path
        The class set's.
    picture : Path
        The page's picture.
    forms : Forms
    should_stop : callable, optional
        Asked before anything is written: the class set may be closed meanwhile, or deleted.

    Raises
    ------
    Cancelled
        `should_stop` answered True.
    ClassSetError
        The disk is full or gone.
    PhotoError
        The picture cannot be opened.
    """
    found = read_scores(open_photo(picture).pixels, forms[index])
    if found is None or len(found.rows) != len(QUALITIES):
        found = PageReading((), ())
    if should_stop is not None and should_stop():
        raise Cancelled
    key, checks = scores_key(digest, index), folder / CHECKS
    rows = [_Row1(row.kind, row.score) for row in found.rows]
    data = msgspec.json.encode(_Scores1(SCORES_FORMAT, rows))
    try:
        checks.mkdir(exist_ok=True)
        if found.crops:
            write_file(checks / f"{key}.jpg", _jpeg(found), durable=False)
        # Last, so that where it is there the crops are too.
        write_file(checks / f"{key}.json", data, durable=False)
    except OSError as error:
        raise ClassSetError(why_not_written(checks, error)) from error
    kept = find_scores(folder, digest, index)
    return KeptScores() if kept is None else kept


def find_scores(folder: Path, digest: str, index: int) -> KeptScores | None:
    """What is kept of a page; None where it was not read yet."""
    path = folder / CHECKS / scores_key(digest, index)
    try:
        kept = msgspec.json.decode(read_file(path.with_suffix(".json"), _MOST), type=_Scores1)
        rows = tuple(RowReading(row.kind, row.score) for row in kept.rows)
    except (OSError, ValueError, msgspec.MsgspecError):
        return None
    crops = path.with_suffix(".jpg")
    if len(rows) not in (0, len(QUALITIES)) or (rows and not crops.is_file()):
        return None
    return KeptScores(rows, crops if rows else None)


def found_scores(folder: Path, placement: Placement) -> dict[tuple[str, int], KeptScores]:
    """What is kept of the placed pages, by digest and page."""
    found = {}
    for page in pages_to_read(placement):
        with contextlib.suppress(OSError):
            kept = find_scores(folder, *page)
            if kept is not None:
                found[page] = kept
    return found


def offered(kept: KeptScores | None, own: OwnScores) -> bool:
    """Whether a page that was read waits to be taken: nothing of it is the student's yet.

    A page on which nothing is marked is not: there is nothing to take.
    """
    nothing_yet = all(own.of(quality) is None for quality in QUALITIES)
    marked = kept is not None and any(row.kind != "blank" for row in kept.rows)
    return nothing_yet and marked


def taken(
    class_set: ClassSet, number: int, index: int, scores: Mapping[Quality, int | None]
) -> ClassSet:
    """The class set with a page's scores as the student's own, as if they had been typed.

    Parameters
    ----------
    scores : mapping
        What the teacher accepts; None leaves a score as it is.

    Raises
    ------
    KeyError
        No student has this number.
    ValueError
        A score outside 1 to 10.
    """
    worksheet = class_set.entry(number).worksheet
    for quality, score in scores.items():
        if score is not None:
            worksheet = with_score(worksheet, index, quality, score)
    return with_worksheet(class_set, number, worksheet)


def page_of(placement: Placement, number: int, index: int) -> tuple[str, int] | None:
    """A student's worksheet page, as `found_scores` knows it."""
    digest = placement.digest_at(Slot(number, index, "page"))
    return None if digest is None else (digest, index)


def _jpeg(found: PageReading) -> bytes:
    from PIL import Image  # deferred: start-up time

    buffer = io.BytesIO()
    rows = np.concatenate(found.crops).astype(np.float32)
    # As bright as paper, however dim the room was: it is to be looked at, beside other paper.
    rows *= min(_PAPER / max(float(np.percentile(rows, 80)), 1.0), _BRIGHTEST)
    stacked = Image.fromarray(np.clip(rows + 0.5, 0, 255).astype(np.uint8))
    # The comment says whose file it is: only such a one is ever removed.
    stacked.save(buffer, "JPEG", quality=_QUALITY, comment=SCORES_FORMAT.encode())
    return buffer.getvalue()
