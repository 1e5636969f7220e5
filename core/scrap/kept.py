"""A scrap as the study keeps it: its picture, its colour, and what was in its puddle then."""

from __future__ import annotations

from dataclasses import dataclass

from core.pictures import Picture

Parts = tuple[tuple[str, float], ...]
"""Paint key and parts."""

MOST_SCRAPS = 36
"""In one study."""


@dataclass(frozen=True)
class ScrapEntry:
    """One dried stroke, kept with the study.

    Attributes
    ----------
    picture : Picture
        The stroke alone with a little paper around it, the light undone.
    letter : str
        Its band.
    Lab : tuple of 3 floats
        Its colour as read.
    parts : tuple of (paint key, parts)
        The mix as planned when it was painted.
    load_ml : float
        The strength planned.
    added : Parts
        What had been added to the puddle before.
    advised : Parts or None
        What was then said to add; empty: nothing; None: to begin again.
    """

    picture: Picture
    letter: str
    Lab: tuple[float, float, float]
    parts: tuple[tuple[str, int], ...]
    load_ml: float
    added: Parts = ()
    advised: Parts | None = ()


def tries_of(scraps: tuple[ScrapEntry, ...], letter: str) -> tuple[ScrapEntry, ...]:
    """The scraps of a band, in the order painted."""
    return tuple(scrap for scrap in scraps if scrap.letter == letter)


def same_puddle(
    scraps: tuple[ScrapEntry, ...], letter: str, parts: tuple[tuple[str, int], ...]
) -> tuple[ScrapEntry, ...]:
    """The last tries of a band that come from the puddle it has now, in the order painted.

    Parameters
    ----------
    parts : tuple of (paint key, parts)
        The band's mix as it is planned now: of another mix there is another puddle.
    """
    found: list[ScrapEntry] = []
    for scrap in reversed(tries_of(scraps, letter)):
        # What was in the puddle only grows: fewer additions than later on, or it is another one.
        if scrap.advised is None or scrap.parts != parts:
            break
        if found and not _grows(scrap.added, found[-1].added):
            break
        found.append(scrap)
    return tuple(reversed(found))


def added_now(tries: tuple[ScrapEntry, ...]) -> Parts:
    """What is in the puddle beyond the planned mix, if the last advice was followed."""
    if not tries or tries[-1].advised is None:
        return ()
    total: dict[str, float] = dict(tries[-1].added)
    for key, count in tries[-1].advised:
        total[key] = total.get(key, 0.0) + count
    return tuple(total.items())


def _grows(before: Parts, after: Parts) -> bool:
    later = dict(after)
    return all(count <= later.get(key, 0.0) + 1e-9 for key, count in before)
