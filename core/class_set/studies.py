"""A student's study out of the class set, to be opened alone, and back into it."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace

from core.class_set import edits
from core.class_set.folder import ClassFolder
from core.class_set.model import Brought, ClassSet, Marking
from core.class_set.placing import Placement, place_all
from core.class_set.ticket import Slot
from core.i18n import translate
from core.study import SheetEntry, Study
from core.study_file.document import study_to_bytes


def study_of(class_set: ClassSet, number: int, placement: Placement | None = None) -> Study:
    """The study of one student: the exercise with their sheets and their worksheet.

    Strength and next step stand before the remark, as the teacher would write them; the mark and
    the states stay in the class set.

    Raises
    ------
    KeyError
        No student has this number.
    """
    placement = placement or place_all(class_set)
    entry = class_set.entry(number)
    student = class_set.class_list.student(number)
    sheets = tuple(_sheet(class_set, placement, Slot(number, index)) for index in (0, 1))
    worksheet = replace(
        entry.worksheet,
        student_code="" if student is None else student.code,
        class_code=class_set.title,
        remark=joined_remark(entry.marking),
    )
    return replace(
        class_set.exercise, sheets=(sheets[0], sheets[1]), worksheet=worksheet, scraps=()
    )


def with_study(class_set: ClassSet, number: int, study: Study) -> ClassSet:
    """The class set with what was done to a student's study: worksheet, corners, turn.

    The exercise is not touched, and pictures are brought in by `core.class_set.bringing`: here a
    sheet counts only where the class set has its picture already.
    """
    class_set = edits.with_worksheet(class_set, number, study.worksheet)
    placement = place_all(class_set)
    for index, sheet in enumerate(study.sheets):
        if sheet is None:
            continue
        digest, slot = sheet.picture.digest, Slot(number, index)
        if not any(each.digest == digest for each in class_set.brought):
            continue
        class_set = edits.with_options(class_set, digest, sheet.options)
        if placement.digest_at(slot) != digest:
            class_set = edits.place(class_set, digest, slot)
    return class_set


def open_study_of(class_set: ClassSet, number: int, placement: Placement) -> Study:
    """As `study_of`, to be worked at beside the class set: with the teacher's remark alone.

    Strength and next step stay where they are, in the marking.
    """
    study = study_of(class_set, number, placement)
    remark = class_set.entry(number).marking.remark
    return replace(study, worksheet=replace(study.worksheet, remark=remark))


def with_open_study(class_set: ClassSet, number: int, before: Study, after: Study) -> ClassSet:
    """The class set after an edit of the study from `open_study_of`.

    Worksheet and remark, how a sheet is looked at, a sheet taken out (its picture is laid aside).
    The exercise is not touched, and a picture that is new has to be brought in first.
    """
    if after.worksheet != before.worksheet:
        class_set = edits.with_worksheet(class_set, number, after.worksheet)
        marking = replace(class_set.entry(number).marking, remark=after.worksheet.remark)
        class_set = edits.with_marking(class_set, number, marking)
    known = {each.digest for each in class_set.brought}
    for index, (was, now) in enumerate(zip(before.sheets, after.sheets, strict=True)):
        if was == now:
            continue
        if (
            was is not None
            and was.picture.digest in known
            and (now is None or now.picture.digest != was.picture.digest)
        ):
            class_set = edits.lay_aside(class_set, was.picture.digest)
        if now is not None and now.picture.digest in known:
            if was is None or was.picture.digest != now.picture.digest:
                class_set = edits.place(class_set, now.picture.digest, Slot(number, index))
            class_set = edits.with_options(class_set, now.picture.digest, now.options)
    return class_set


def study_bytes(folder: ClassFolder, number: int) -> bytes:
    """The `.gradewash` file of one student.

    Raises
    ------
    ClassSetError
        A picture is gone from the folder.
    StudyFileError
        The pictures are too large for one file.
    """
    study = study_of(folder.class_set, number)
    wanted = [study.photo, *(sheet.picture for sheet in study.sheets if sheet is not None)]
    pictures: Mapping[str, bytes] = {
        picture.digest: folder.read_picture(picture.digest) for picture in wanted if picture
    }
    return study_to_bytes(study, pictures)


def file_stem(code: str, number: int) -> str:
    """A file's name for a code, with nothing in it that a file system refuses.

    >>> file_stem("K7", 1), file_stem("a/b", 2), file_stem("..", 3)
    ('K7', 'a_b-02', 'student-03')
    """
    stem = re.sub(r"[^\w-]+", "_", code).strip("_")
    if not stem:
        return f"student-{number:02d}"
    return stem if stem == code else f"{stem}-{number:02d}"


def joined_remark(marking: Marking) -> str:
    """Strength, next step and remark as one text, each on its line."""
    parts = []
    if marking.strength:
        parts.append(translate("class set", "Strength: {text}").format(text=marking.strength))
    if marking.next_step:
        parts.append(translate("class set", "Next step: {text}").format(text=marking.next_step))
    if marking.remark:
        parts.append(marking.remark)
    return "\n".join(parts)


def _sheet(class_set: ClassSet, placement: Placement, slot: Slot) -> SheetEntry | None:
    digest = placement.digest_at(slot)
    if digest is None:
        return None
    brought: Brought = class_set.picture(digest)
    return SheetEntry(brought.picture, brought.options)
