"""A new lesson from one there is: photo, lines, box and mixes kept, students' work left out."""

from __future__ import annotations

from pathlib import Path

from core.class_set.folder import ClassFolder, create_folder, read_picture
from core.class_set.model import ClassSet, new_class_set
from core.class_set.students import ClassList
from core.study import without_work


def next_lesson(
    class_set: ClassSet, class_list: ClassList | None = None, title: str | None = None
) -> ClassSet:
    """A class set of the same exercise without pictures, marks or words.

    Parameters
    ----------
    class_set : ClassSet
        Whatever was done in it stays where it is.
    class_list : ClassList, optional
        Another class; the same one otherwise, with its tag, so that its tickets serve again.
    title : str, optional
        What the other class is called. Another list without one has no title.
    """
    other = class_list is not None and class_list != class_set.class_list
    named = class_set.title if title is None and not other else title or ""
    return new_class_set(
        named, class_list or class_set.class_list, without_work(class_set.exercise)
    )


def begin_next_lesson(
    source: Path, class_set: ClassSet, target: Path, data_folder: Path
) -> ClassFolder:
    """Make the folder of a next lesson.

    Parameters
    ----------
    source : Path
        The folder it comes from: only its photo is read.
    class_set : ClassSet
        From `next_lesson`.
    target : Path
        New, or without a class set in it yet.
    data_folder : Path
        The user's data folder of the program.

    Raises
    ------
    ClassSetError
        The photo is gone, there is a class set in `target`, or it cannot be written.
    """
    photo = class_set.exercise.photo
    assert photo is not None, "a class set has a photo"
    return create_folder(target, class_set, read_picture(source, photo.digest), data_folder)
