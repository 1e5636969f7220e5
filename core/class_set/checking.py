"""From a class set's folder to its checks: what has to be done, done, and kept.

    with CheckingPool() as pool:
        for outcome in check_folder(folder, executor=pool.executor, renew=pool.renew):
            ...

What was checked before is not checked again; whoever stops in between loses nothing.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from concurrent.futures import Executor

from core.class_set.check_all import AHEAD, check_all
from core.class_set.check_one import Job, Outcome
from core.class_set.folder import ClassFolder
from core.class_set.kept_checks import KeptChecks, check_key
from core.class_set.model import Brought, ClassSet
from core.errors import ClassSetError
from core.i18n import translate
from core.photo import open_photo
from core.pipeline import propose_for, read_sky, reference_of
from core.progress import ShouldStop
from core.sheet.match.reference import Reference, slim_reference
from core.study import Study


def to_check(class_set: ClassSet) -> tuple[Brought, ...]:
    """The pictures of sheets, placed or not; worksheet pages and what was laid aside are not."""
    return tuple(each for each in class_set.brought if not each.aside and shows_sheet(each))


def shows_sheet(brought: Brought) -> bool:
    """Whether a picture is to be looked at as a painting."""
    if brought.hand is not None:
        return brought.hand.what == "sheet"
    if brought.tickets:
        return any(ticket.slot.what == "sheet" for ticket in brought.tickets)
    return brought.looks_like == "sheet"


def exercise_reference(exercise: Study, photo: bytes) -> Reference:
    """What the class's sheets are checked against, light enough to travel with each job.

    Parameters
    ----------
    exercise : Study
        With its lines.
    photo : bytes
        Its photo.

    Raises
    ------
    ClassSetError
        The exercise has no lines yet.
    PhotoError, SheetError
        The photo cannot be opened, or a band of it holds no sky.
    """
    bands = exercise.bands
    if bands is None:
        raise ClassSetError(
            translate("class set", "The photo has no lines yet: set them on the Read page first.")
        )
    opened = open_photo(photo, name=exercise.photo_name or "")
    sky = read_sky(opened, propose_for(opened, bands), bands)
    return slim_reference(reference_of(sky))


def still_to_check(
    folder: ClassFolder, language: str = "en", only: str | None = None
) -> tuple[tuple[str, Brought], ...]:
    """The pictures whose check is not kept yet, each with the key it will be kept under.

    Parameters
    ----------
    only : str, optional
        The digest of the one picture that is wanted.
    """
    class_set, kept = folder.class_set, KeptChecks(folder.path)
    wanted = (each for each in to_check(class_set) if only in (None, each.digest))
    keyed = ((check_key(each, class_set.exercise, language), each) for each in wanted)
    return tuple(
        (key, each)
        for key, each in keyed
        if (one := kept.find(key)) is None
        or (one.sentence and kept.older_than(key, folder.picture_path(each.digest)))
    )


def check_folder(
    folder: ClassFolder,
    language: str = "en",
    executor: Executor | None = None,
    *,
    renew: Callable[[], Executor] | None = None,
    ahead: int = AHEAD,
    carry: bool = False,
    only: str | None = None,
    should_stop: ShouldStop | None = None,
) -> Iterator[Outcome]:
    """Check what has not been checked, keep each outcome, then hand it on.

    Parameters
    ----------
    folder : ClassFolder
    language : str
        Of the sentences in the checks.
    executor, renew, ahead, should_stop
        As `check_all`.
    carry : bool
        Each job carries its picture, for workers that do not see this folder.
    only : str, optional
        The digest of the one picture that is wanted.

    Raises
    ------
    Cancelled
        `should_stop` answered True; what was handed on is kept.
    ClassSetError
        The disk is full or gone.
    PhotoError, SheetError
        The exercise's photo cannot be read.
    """
    undone = still_to_check(folder, language, only)
    if not undone:
        return
    class_set, kept = folder.class_set, KeptChecks(folder.path)
    photo = class_set.exercise.photo
    assert photo is not None, "a class set has a photo"
    reference = exercise_reference(class_set.exercise, folder.read_picture(photo.digest))

    def jobs() -> Iterator[Job]:
        for key, each in undone:
            path = folder.picture_path(each.digest)
            source = folder.read_picture(each.digest) if carry else path
            yield Job(key, each.digest, source, each.picture.name, each.options)

    for outcome in check_all(
        jobs(), reference, executor, renew=renew, ahead=ahead, should_stop=should_stop
    ):
        kept.keep(outcome.key, outcome.check, outcome.jpeg, outcome.grain, outcome.sentence)
        yield outcome
