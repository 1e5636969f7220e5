"""Whose a picture is: by its own ticket, by the worksheet page taken just before, or by hand.

Nothing is guessed in silence: what these three do not settle is asked, with a proposal where
there is one. The outcome follows from the class set alone and is never kept.
"""

from __future__ import annotations

from collections.abc import Mapping, Set
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from core.class_set.model import Brought, ClassSet
from core.class_set.ticket import Slot

How = Literal["ticket", "follows", "hand"]

Reason = Literal["no ticket", "several tickets", "other class", "not on the list", "place taken"]
"""Why a picture found no place."""


@dataclass(frozen=True)
class Place:
    """A picture in its place."""

    digest: str
    slot: Slot
    how: How


@dataclass(frozen=True)
class Asked:
    """A picture without a place.

    Attributes
    ----------
    reason : Reason
    proposal : Slot or None
        Where it probably belongs.
    there_now : str or None
        The digest of the picture that has this place.
    between : two of Slot or None
        The nearest places before and after it in the order of the shots.
    """

    digest: str
    reason: Reason
    proposal: Slot | None = None
    there_now: str | None = None
    between: tuple[Slot | None, Slot | None] = (None, None)


@dataclass(frozen=True)
class Placement:
    """Where every picture is.

    Attributes
    ----------
    places : mapping of Slot to Place
    asked : tuple of Asked
        In the order the pictures were brought in.
    """

    places: Mapping[Slot, Place]
    asked: tuple[Asked, ...]

    def digest_at(self, slot: Slot) -> str | None:
        """The picture in a place; None while it is empty."""
        place = self.places.get(slot)
        return None if place is None else place.digest

    def place_of(self, digest: str) -> Place | None:
        """The place of a picture; None where it has none."""
        return next((place for place in self.places.values() if place.digest == digest), None)


def place_all(class_set: ClassSet, doubted: Set[str] = frozenset()) -> Placement:
    """Give every picture its place, or say why it has none.

    Parameters
    ----------
    class_set : ClassSet
    doubted : set of str
        Digests of pictures whose check speaks against a place that only follows from the order.
    """
    places: dict[Slot, Place] = {}
    asked: dict[str, Asked] = {}
    for each in class_set.brought:
        if each.hand is not None and class_set.class_list.student(each.hand.number):
            places[each.hand] = Place(each.digest, each.hand, "hand")
    settled = {place.digest for place in places.values()}
    silent: set[str] = set()
    for each in class_set.brought:
        if each.aside or each.digest in settled:
            continue
        if not each.tickets:
            silent.add(each.digest)
            continue
        slot, reason = _by_ticket(each, class_set)
        if slot is not None and reason is None and slot in places:
            reason = "place taken"
        if reason is None and slot is not None:
            places[slot] = Place(each.digest, slot, "ticket")
        elif reason is not None:
            there = places[slot].digest if reason == "place taken" and slot is not None else None
            asked[each.digest] = Asked(each.digest, reason, slot, there)
    for series in _series(class_set):
        _follow(series, class_set, places, asked, silent, doubted)
    for digest in silent:
        if digest not in asked and not any(p.digest == digest for p in places.values()):
            asked[digest] = Asked(digest, "no ticket")
    order = [each.digest for each in class_set.brought if each.digest in asked]
    return Placement(MappingProxyType(places), tuple(asked[digest] for digest in order))


def _by_ticket(each: Brought, class_set: ClassSet) -> tuple[Slot | None, Reason | None]:
    """The place a picture's tickets name, and what speaks against it."""
    tag = class_set.class_list.tag
    slots = {ticket.slot for ticket in each.tickets if ticket.tag == tag}
    foreign = any(ticket.tag != tag for ticket in each.tickets)
    if not slots:
        return None, "other class"
    if len(slots) > 1 or foreign:
        # A ticket beside its own worksheet page: one of the two places of that sheet.
        own = [slot for slot in slots if slot.what == each.looks_like]
        alone = len({(slot.number, slot.index) for slot in slots}) == 1 and not foreign
        return own[0] if alone and own else None, "several tickets"
    slot = slots.pop()
    if class_set.class_list.student(slot.number) is None:
        return None, "not on the list"
    return slot, None


def _series(class_set: ClassSet) -> list[list[Brought]]:
    """The pictures whose order is known, each series in the order of its shots."""
    by_series: dict[int, list[Brought]] = {}
    for each in class_set.brought:
        if each.order is not None:
            by_series.setdefault(each.order[0], []).append(each)
    return [
        sorted(series, key=lambda each: each.order or (0, 0))
        for _, series in sorted(by_series.items())
    ]


def _follow(
    series: list[Brought],
    class_set: ClassSet,
    places: dict[Slot, Place],
    asked: dict[str, Asked],
    silent: set[str],
    doubted: Set[str],
) -> None:
    """Place what stands alone between two worksheet pages; ask about all else without a ticket.

    A sheet taken before its own page would follow the page before: so the next page must have a
    picture of its own after it, or none may come at all.
    """
    named = [_named(each, class_set) for each in series]
    pages = [k for k, slot in enumerate(named) if slot is not None and slot.what == "page"]
    for k in pages:
        page = named[k]
        assert page is not None
        end = next((j for j in range(k + 1, len(series)) if series[j].tickets), len(series))
        run = series[k + 1 : end]
        sheet = Slot(page.number, page.index)
        free = sheet not in places
        at_end = end == len(series)
        next_is_page = not at_end and named[end] is not None and end in pages
        next_has_own = end + 1 < len(series) and end + 1 not in pages
        if len(run) == 1 and free and (at_end or (next_is_page and next_has_own)):
            only = run[0]
            if only.digest in silent and only.looks_like == "sheet" and only.digest not in doubted:
                places[sheet] = Place(only.digest, sheet, "follows")
                continue
        for each in run:
            if each.digest in silent and each.looks_like == "sheet" and free and len(run) <= 2:
                asked[each.digest] = Asked(each.digest, "no ticket", sheet)
    for k, each in enumerate(series):
        waits = each.digest in silent and not any(
            place.digest == each.digest for place in places.values()
        )
        if waits:
            before, after = _nearest(named[:k][::-1]), _nearest(named[k + 1 :])
            kept = asked.get(each.digest)
            proposal = kept.proposal if kept else _gap(before, after, each.looks_like, places)
            asked[each.digest] = Asked(each.digest, "no ticket", proposal, between=(before, after))


def _named(each: Brought, class_set: ClassSet) -> Slot | None:
    """The place of a picture that is sure by itself: by hand or by its ticket."""
    if each.hand is not None:
        return each.hand
    if not each.tickets:
        return None
    slot, reason = _by_ticket(each, class_set)
    return slot if reason is None else None


def _nearest(slots: list[Slot | None]) -> Slot | None:
    return next((slot for slot in slots if slot is not None), None)


def _gap(
    before: Slot | None,
    after: Slot | None,
    what: Literal["sheet", "page"],
    places: Mapping[Slot, Place],
) -> Slot | None:
    """The one free place of its kind among the students on either side."""
    numbers = {slot.number for slot in (before, after) if slot is not None}
    free = [
        slot
        for number in sorted(numbers)
        for slot in (Slot(number, 0, what), Slot(number, 1, what))
        if slot not in places
    ]
    return free[0] if len(free) == 1 else None
