"""The corners of one sheet of a class set, given by hand; then that sheet alone is checked."""

from __future__ import annotations

from dataclasses import replace

from core.class_set import edits
from core.class_set.checking import check_folder
from core.class_set.folder import ClassFolder
from core.class_set.kept_checks import Kept, KeptChecks, check_key, found_checks
from core.class_set.questions import found_options, shown_slot, sort_pictures
from core.cli.class_set.common import picture_meant
from core.cli.corners import corners_from, turned_from
from core.cli.layout import say
from core.errors import UsageError
from core.i18n import translate
from core.photo import open_photo
from core.sheet.options import SheetOptions

AS_FOUND, RIGHT = "auto", "right"


def set_corners(folder: ClassFolder, picture: str, corners: str, turned: str | None) -> int:
    """Keep the corners, check the sheet with them, and say what came of it.

    Parameters
    ----------
    picture : str
        As `picture_meant` takes it.
    corners : str
        Eight numbers in pixels; "right" keeps those that were found, "auto" looks for them again.
    turned : str, optional
        Quarter turns clockwise; without it the sheet turns itself.

    Returns
    -------
    int
        2 where the sheet could not be checked.
    """
    digest = picture_meant(picture, folder)
    options = _options(folder, digest, corners, turned)
    folder.save(edits.with_options(folder.class_set, digest, options))
    kept = _check(folder, digest)
    turn = None if kept is None or kept.check is None else kept.check.better_turn
    if turn is not None and turned is None:
        upright = replace(options, turned=turn)
        folder.save(edits.with_options(folder.class_set, digest, upright))
        kept = _check(folder, digest)
    return _tell(folder, digest, kept)


def _options(folder: ClassFolder, digest: str, corners: str, turned: str | None) -> SheetOptions:
    brought = folder.class_set.picture(digest)
    kept = found_checks(folder.path, folder.class_set).get(digest)
    check = None if kept is None else kept.check
    word = corners.strip().lower()
    if word == AS_FOUND:
        options = replace(brought.options, corners=None, turned=0)
    elif word == RIGHT:
        if check is None:
            raise UsageError(
                translate(
                    "command line",
                    "No corners were found in {name} yet: check it first, or give eight numbers.",
                ).format(name=brought.picture.name)
            )
        options = found_options(brought, check)
    else:
        photo = open_photo(folder.picture_path(digest), name=brought.picture.name)
        at = corners_from(corners, photo.width, photo.height)
        # As the check had turned it, if there was one: only the corners are said anew.
        before = brought.options.turned if check is None else check.turned
        options = replace(brought.options, corners=at, turned=before)
    return options if turned is None else replace(options, turned=turned_from(turned))


def _check(folder: ClassFolder, digest: str) -> Kept | None:
    for _ in check_folder(folder, only=digest):
        pass
    class_set = folder.class_set
    key = check_key(class_set.picture(digest), class_set.exercise)
    return KeptChecks(folder.path).find(key)


def _tell(folder: ClassFolder, digest: str, kept: Kept | None) -> int:
    class_set = folder.class_set
    name = class_set.picture(digest).picture.name
    found = sort_pictures(class_set, found_checks(folder.path, class_set))
    place = found.placement.place_of(digest)
    where = name if place is None else shown_slot(place.slot, class_set)
    if kept is None or kept.check is None:
        said = "" if kept is None else kept.sentence
        say(f"! {name}: {said}" if said else f"! {name}")
        return 2
    say(translate("command line", "{where} was checked with these corners.").format(where=where))
    for question in found.questions:
        if question.digest == digest:
            say(f"> {name}: {question.sentence}")
    return 0
