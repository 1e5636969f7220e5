"""From the desk to what the parts draw: no widget here."""

from __future__ import annotations

from app.drawing.classset.tile import TileView
from app.drawing.classset.wall import StudentView, WallView
from app.look import look
from app.services.class_set.desk import ClassDesk
from core.class_set.model import ClassSet
from core.class_set.questions import Question, Sorted
from core.class_set.standing import state_of, state_word
from core.class_set.students import Student
from core.class_set.ticket import Slot
from core.i18n import translate

WHOLE = "whole"
"""The key of whole sheets beside the bands' letters."""


def sky_edges(class_set: ClassSet) -> tuple[float, ...]:
    """The bands' edges as shares of the sky's height."""
    bands = class_set.exercise.bands
    if bands is None:
        return (0.0, 1.0)
    return tuple(y / bands.horizon for y in bands.edges)


def letters_of(class_set: ClassSet) -> tuple[str, ...]:
    """The bands' letters."""
    bands = class_set.exercise.bands
    return () if bands is None else bands.letters


def wall_view(desk: ClassDesk, chosen: int | None, shown: str) -> WallView:
    """The whole wall.

    Parameters
    ----------
    chosen : int or None
        A student, counted from 0.
    shown : str
        A band's letter, or WHOLE.
    """
    class_set, found, sky = desk.class_set, desk.sorted, desk.sky
    scale = look().type
    if class_set is None or found is None or sky is None:
        return WallView(grow=scale.scale, text=scale.px("note"))
    letters, edges = letters_of(class_set), sky_edges(class_set)
    lit = None
    if shown in letters:
        at = letters.index(shown)
        lit = (edges[at], edges[at + 1])
    asked = asked_by_student(found)
    top = sky.levels[0]
    return WallView(
        photo=TileView(sky, lit=lit),
        photo_word=translate("class set page", "Photo"),
        letters=letters,
        edges=edges,
        students=tuple(
            _student(desk, class_set, found, each, asked.get(each.number), shown)
            for each in class_set.students
        ),
        chosen=chosen,
        text=scale.px("note"),
        grow=scale.scale,
        aspect=top.width() / max(1, top.height()),
    )


def tile_of(
    desk: ClassDesk, class_set: ClassSet, found: Sorted, slot: Slot, shown: str = WHOLE
) -> TileView:
    """A sheet in its place, or what stands there instead."""
    digest = found.placement.digest_at(slot)
    state = state_of(class_set, found.placement, slot.number, slot.index)
    if digest is None:
        return TileView(word=state_word(state))
    kept, picture = desk.checks.get(digest), desk.painting(digest)
    if picture is None:
        if kept is None:
            return TileView(word=translate("class set page", "not checked yet"))
        if kept.check is None:
            return TileView(word=translate("class set page", "cannot be checked"))
        return TileView(word="")
    if kept is None or kept.found is None:
        return TileView(picture, own_shape=True)
    lit = None
    if shown != WHOLE:
        bands = [band for band in kept.found.band_checks if band.letter == shown]
        lit = (bands[0].top, bands[0].bottom) if bands else (0.0, 0.0)
    return TileView(picture, lit=lit)


def asked_by_student(found: Sorted) -> dict[int, Question]:
    """The first question about each student."""
    asked: dict[int, Question] = {}
    for question in found.questions:
        slot = question.proposal or question.place
        if slot is not None:
            asked.setdefault(slot.number, question)
    return asked


def _student(
    desk: ClassDesk,
    class_set: ClassSet,
    found: Sorted,
    student: Student,
    question: Question | None,
    shown: str,
) -> StudentView:
    number = student.number
    tiles = [tile_of(desk, class_set, found, Slot(number, index), shown) for index in (0, 1)]
    marking = class_set.entry(number).marking
    tag = ""
    if question is not None:
        tag = _tag(question, student)
        slot = question.proposal
        if slot is not None and slot.what == "sheet" and question.there_now is None:
            tiles[slot.index] = TileView(desk.painting(question.digest), tag, proposed=True)
    if not tag and "late" in marking.states:
        tag = state_word("late")
    done = translate("class set page", "marked") if marking.done else ""
    return StudentView(student.code, (tiles[0], tiles[1]), tag, done)


def _tag(question: Question, student: Student) -> str:
    """The question in two or three words."""
    if question.reason == "place taken" or question.same_as is not None:
        return translate("class set page", "which of two?")
    if question.place is None:
        return translate("class set page", "is this {code}?").format(code=student.code)
    return translate("class set page", "look at it")
