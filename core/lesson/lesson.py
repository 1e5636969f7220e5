"""A lesson before the class: the band asked about, what has been answered, the hands raised.

A lesson begins anew each time the class view opens; the hands are kept with the study.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

Question = Literal["hue", "class", "value", "intensity", "second", "mix"]
QUESTIONS: tuple[Question, ...] = ("hue", "class", "value", "intensity", "mix")
"""In the order they are asked; each is answered before the next."""

QUESTIONS_OF_TWO: tuple[Question, ...] = (*QUESTIONS[:-1], "second", "mix")
"""The same for a band that holds two colours."""

MOST_HANDS = 99


@dataclass(frozen=True)
class Hands:
    """How many hands went up for one guess at a band, by the band's number from the top."""

    band: int
    question: Question
    choice: str
    count: int


@dataclass(frozen=True)
class Lesson:
    """Where the class is.

    Attributes
    ----------
    bands : int
        How many bands the sky has.
    band : int
        The one that is asked about.
    answered : tuple of int, one a band
        How many of QUESTIONS have been answered of each.
    hands : tuple of Hands
        Guesses with at least one hand.
    two : tuple of int
        Bands that hold two colours.
    """

    bands: int
    band: int = 0
    answered: tuple[int, ...] = ()
    hands: tuple[Hands, ...] = ()
    two: tuple[int, ...] = ()

    def __post_init__(self) -> None:
        if self.bands < 1 or not 0 <= self.band < self.bands:
            raise ValueError(f"no band {self.band} among {self.bands}")
        if not self.answered:
            object.__setattr__(self, "answered", (0,) * self.bands)
        if len(self.answered) != self.bands:
            raise ValueError(f"{len(self.answered)} counts of answers for {self.bands} bands")

    @property
    def shown(self) -> int:
        """How many questions of the present band are answered."""
        return self.answered[self.band]

    @property
    def questions(self) -> tuple[Question, ...]:
        """What is asked about the present band, in order."""
        return QUESTIONS_OF_TWO if self.band in self.two else QUESTIONS

    @property
    def question(self) -> Question | None:
        """What the class is asked now; None when all of the band is answered."""
        return self.questions[self.shown] if self.shown < len(self.questions) else None

    @property
    def finished(self) -> tuple[int, ...]:
        """The bands of which all is answered."""
        asked = (
            len(QUESTIONS_OF_TWO if band in self.two else QUESTIONS) for band in range(self.bands)
        )
        pairs = zip(self.answered, asked, strict=True)
        return tuple(band for band, (shown, count) in enumerate(pairs) if shown >= count)

    def is_answered(self, question: Question) -> bool:
        """Whether the present band's answer stands on the screen."""
        return question in self.questions[: self.shown]

    def hands_for(self, question: Question, choice: str) -> int:
        """Hands of the present band's guess."""
        for hands in self.hands:
            if (hands.band, hands.question, hands.choice) == (self.band, question, choice):
                return hands.count
        return 0

    def hands_for_right(self, question: Question, right: str | None) -> int:
        """Hands that went up for the right guess; 0 where there is none."""
        return 0 if right is None else self.hands_for(question, right)

    def hands_in_all(self, question: Question) -> int:
        """Hands of all guesses at a question of the present band."""
        return sum(
            hands.count
            for hands in self.hands
            if hands.band == self.band and hands.question == question
        )


def answer(lesson: Lesson) -> Lesson:
    """Show the next answer of the present band; nothing happens when all are shown."""
    return _with_shown(lesson, min(lesson.shown + 1, len(lesson.questions)))


def take_back(lesson: Lesson) -> Lesson:
    """Cover the last answer again."""
    return _with_shown(lesson, max(lesson.shown - 1, 0))


def go(lesson: Lesson, step: int) -> Lesson:
    """Go down (+1) or up (-1) by bands, stopping at the ends."""
    return go_to(lesson, min(max(lesson.band + step, 0), lesson.bands - 1))


def go_to(lesson: Lesson, band: int) -> Lesson:
    """Ask about another band.

    Raises
    ------
    ValueError
        There is no such band.
    """
    return replace(lesson, band=band)


def advance(lesson: Lesson) -> Lesson:
    """One button for all of it, as on a presenter's remote: the next answer, then the next band."""
    return answer(lesson) if lesson.question is not None else go(lesson, 1)


def set_hands(lesson: Lesson, question: Question, choice: str, count: int) -> Lesson:
    """Note how many hands went up for a guess at the present band, 0 to MOST_HANDS."""
    count = min(max(count, 0), MOST_HANDS)
    kept = [
        hands
        for hands in lesson.hands
        if (hands.band, hands.question, hands.choice) != (lesson.band, question, choice)
    ]
    if count:
        kept.append(Hands(lesson.band, question, choice, count))
    return replace(lesson, hands=tuple(kept))


def resized(lesson: Lesson, bands: int, two: tuple[int, ...] = ()) -> Lesson:
    """The lesson after its bands changed: it begins anew where lines were added or removed.

    Parameters
    ----------
    lesson : Lesson
    bands : int
        How many there are now.
    two : tuple of int
        Those that hold two colours.
    """
    return replace(lesson, two=two) if bands == lesson.bands else Lesson(bands, two=two)


def with_hands(lesson: Lesson, hands: tuple[Hands, ...]) -> Lesson:
    """The lesson with the hands that the study has; those of bands there are not are left out."""
    return replace(lesson, hands=tuple(one for one in hands if one.band < lesson.bands))


def _with_shown(lesson: Lesson, shown: int) -> Lesson:
    answered = list(lesson.answered)
    answered[lesson.band] = shown
    return replace(lesson, answered=tuple(answered))
