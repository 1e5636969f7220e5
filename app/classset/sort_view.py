"""What Sort shows, as values made from the desk."""

from __future__ import annotations

from app.classset.question_card import CardView
from app.classset.views import tile_of
from app.drawing.classset.places import PlaceRow, PlacesView
from app.drawing.classset.tile import TileView
from app.look import look
from app.services.class_set.desk import ClassDesk
from core.class_set.answers import replies
from core.class_set.model import ClassSet
from core.class_set.questions import Question, Sorted, shown_slot
from core.class_set.standing import state_of, state_word
from core.class_set.ticket import Slot, What
from core.i18n import translate
from core.words.lists import sentence_case
from core.worksheet.words import sheet_title

PLACE_ORDER: tuple[tuple[int, What], ...] = ((0, "sheet"), (0, "page"), (1, "sheet"), (1, "page"))
"""The four places of a row."""


def card_view(desk: ClassDesk, class_set: ClassSet, question: Question) -> CardView:
    """A question on its card."""
    other = question.there_now or question.same_as
    shown = desk.painting(other) or desk.photo(other) if other else None
    if other is None and question.place is not None and question.place.what == "sheet":
        # Beside the photo what was found in it, to see whether its corners are right.
        kept = desk.checks.get(question.digest)
        if kept is not None and kept.found is not None:
            shown = desk.painting(question.digest)
    word = ""
    if question.there_now:
        word = translate("class set page", "there now:")
    elif question.same_as:
        word = translate("class set page", "the earlier one:")
    elif shown is not None:
        word = translate("class set page", "found in it:")
    return CardView(
        question.digest,
        desk.photo(question.digest),
        shown,
        class_set.picture(question.digest).picture.name,
        word,
        _title(question, class_set),
        question.sentence,
        replies(question),
    )


def places_view(desk: ClassDesk, class_set: ClassSet, found: Sorted) -> PlacesView:
    """All rows."""
    scale, theme = look().type, look().theme
    its = translate("class set page", "its page")
    return PlacesView(
        tuple(_row(desk, class_set, found, each.number) for each in class_set.students),
        (
            translate("class set page", "Code"),
            sheet_title(0),
            its,
            sheet_title(1),
            its,
            translate("class set page", "State"),
        ),
        text=scale.px("control"),
        note=scale.px("note"),
        grow=scale.scale,
        ink=theme.ink,
        second=theme.second,
    )


def digests_in(class_set: ClassSet, found: Sorted) -> tuple[tuple[str | None, ...], ...]:
    """The picture in each place of each row."""
    at = found.placement.digest_at
    return tuple(
        tuple(at(Slot(each.number, index, what)) for index, what in PLACE_ORDER)
        for each in class_set.students
    )


def slot_at(class_set: ClassSet, row: int, place: int) -> Slot:
    """The place of a row."""
    index, what = PLACE_ORDER[place]
    return Slot(class_set.students[row].number, index, what)


def _title(question: Question, class_set: ClassSet) -> str:
    slot = question.proposal or question.place
    if slot is None:
        return translate("class set page", "Whose is this?")
    where = shown_slot(slot, class_set)
    if question.proposal is None:
        return translate("class set page", "Student {where}").format(where=where)
    if question.there_now:
        return translate("class set page", "Student {where}, again").format(where=where)
    return translate("class set page", "Student {where}?").format(where=where)


def _row(desk: ClassDesk, class_set: ClassSet, found: Sorted, number: int) -> PlaceRow:
    student = class_set.class_list.student(number)
    tiles = []
    for index, what in PLACE_ORDER:
        slot = Slot(number, index, what)
        digest = found.placement.digest_at(slot)
        if what == "sheet":
            tiles.append(tile_of(desk, class_set, found, slot))
        elif digest is None:
            tiles.append(TileView(word=state_word("")))
        else:
            tiles.append(TileView(desk.photo(digest), own_shape=True))
    state, second = _standing(class_set, found, number)
    return PlaceRow("" if student is None else student.code, tuple(tiles), state, second)


def _standing(class_set: ClassSet, found: Sorted, number: int) -> tuple[str, str]:
    """How a student stands, in two short lines."""
    states = [state_of(class_set, found.placement, number, index) for index in (0, 1)]
    if states[0] == states[1]:
        state = sentence_case(state_word(states[0]))
    else:
        text = translate("class set page", "{sheet} {state}")
        odd = [k for k, each in enumerate(states) if each != "in"]
        state = ", ".join(
            text.format(sheet=sheet_title(k), state=state_word(states[k])) for k in odd
        )
    asked = [
        question
        for question in found.questions
        if (slot := question.proposal or question.place) is not None and slot.number == number
    ]
    if asked:
        return state, translate("class set page", "look at it on the left")
    pages = class_set.entry(number).worksheet.pages
    owed = any(
        found.placement.digest_at(Slot(number, index)) and pages[index].scores.missing
        for index in (0, 1)
    )
    return state, translate("class set page", "own scores still to come") if owed else ""
