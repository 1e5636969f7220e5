"""From a meeting of two bands to what the Mix page shows of it."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import groupby

from app.drawing.mix.meeting import Passage
from core.i18n import translate
from core.paint.mixture.mix import Triple
from core.paint.mixture.swatch import hexes_of_Lab
from core.paint.mixture.transition import Transition
from core.paint.planned import BandMix
from core.paint.wash.meeting import Meeting
from core.paint.words.plan import (
    meeting_text,
)
from core.reading.reading import read_colours
from core.reading.wheel import Family
from core.words.names import family_name


@dataclass(frozen=True)
class MeetingView:
    """Where two bands meet.

    Attributes
    ----------
    upper, lower : str
    text : str
    warns : bool
        It goes to mud, or to a hue the photo lacks.
    passage : Passage
    quiet : bool
        Nothing happens that is worth a line; it opens all the same.
    """

    upper: str
    lower: str
    text: str
    warns: bool
    passage: Passage
    quiet: bool = False


def meeting_view(
    band: BandMix, below: BandMix, transition: Transition | None
) -> MeetingView | None:
    """Where a band meets the one below it; None where one of them has no mix."""
    meeting = band.meets_below
    if meeting is None:
        return None
    return MeetingView(
        band.letter,
        below.letter,
        meeting_text(band.letter, below.letter, meeting),
        meeting.note in ("mud", "photo lacks it"),
        Passage(
            hexes_of_Lab(tuple(transition or ())), hexes_of_Lab(meeting.path), stretches(meeting)
        ),
        quiet=not meeting.happens,
    )


def stretches(meeting: Meeting) -> tuple[tuple[float, str], ...]:
    """The names a wet edge passes through, each with the share of the way where it begins."""
    families = _families(meeting.path)
    found, at = [], 0
    for family, run in groupby(families):
        name = translate("mix page", "near neutral") if family is None else family_name(family)
        found.append((at / len(families), name))
        at += len(list(run))
    return tuple(found)


def _families(path: tuple[Triple, ...]) -> tuple[Family | None, ...]:
    return tuple(colour.hue.family for colour in read_colours(path))
