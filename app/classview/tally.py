"""Counting hands: which guess the keys speak to, and the number being typed."""

from __future__ import annotations

from PySide6.QtCore import Qt

from core.lesson.asking import choices
from core.lesson.lesson import Lesson, Question, set_hands
from core.reading.wording import Wording

_KEYS = Qt.Key


class Tally:
    """Open for one question of one band."""

    def __init__(self, lesson: Lesson, wording: Wording) -> None:
        self._wording = wording
        self.question = _question_for(lesson)
        self.ask(self.question)

    def ask(self, question: Question) -> None:
        """Count for a question, or see its hands again."""
        self.question = question
        self.keys = tuple(key for key, _ in choices(question, self._wording))
        self.chosen = 0
        self._typed = ""

    def press(self, key: int, text: str, lesson: Lesson) -> Lesson | None:
        """The lesson after a key; None when the key is not the tally's."""
        if key in (_KEYS.Key_Down, _KEYS.Key_Up):
            self.choose(self.chosen + (1 if key == _KEYS.Key_Down else -1))
            return lesson
        if key in (_KEYS.Key_Left, _KEYS.Key_Right):
            asked = _asked(lesson)
            at = asked.index(self.question) + (1 if key == _KEYS.Key_Right else -1)
            self.ask(asked[min(max(at, 0), len(asked) - 1)])
            return lesson
        if key == _KEYS.Key_Backspace:
            self._typed = self._typed[:-1]
            return self._with(lesson, int(self._typed or 0))
        if text.isdecimal() and text.isascii():
            self._typed = (self._typed + text)[-2:]
            return self._with(lesson, int(self._typed))
        if text in ("+", "-") or key == _KEYS.Key_Space:
            return self.add(lesson, -1 if text == "-" else 1)
        return None

    def choose(self, row: int) -> None:
        """Speak to another guess."""
        self.chosen = min(max(row, 0), len(self.keys) - 1)
        self._typed = ""

    def add(self, lesson: Lesson, count: int) -> Lesson:
        """Some hands more, or fewer, for the chosen guess."""
        self._typed = ""
        now = lesson.hands_for(self.question, self.keys[self.chosen])
        return self._with(lesson, now + count)

    def _with(self, lesson: Lesson, count: int) -> Lesson:
        return set_hands(lesson, self.question, self.keys[self.chosen], count)


def _asked(lesson: Lesson) -> tuple[Question, ...]:
    """What hands could go up for so far."""
    return lesson.questions[: min(lesson.shown + 1, len(lesson.questions) - 1)]


def _question_for(lesson: Lesson) -> Question:
    """What the class guesses at now, or the last thing it guessed at."""
    return _asked(lesson)[-1]
