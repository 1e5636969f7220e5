"""Text on a printed card: lines that break at words, with runs of different weight."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from app.drawing.ink import BLACK, draw_text, kept, text_size
from app.look.type import SECOND

LEADING: Final = 1.22
"""Distance of two baselines, in sizes."""


@dataclass(frozen=True)
class Run:
    """Some words in one weight."""

    text: str
    weight: int = SECOND


@dataclass(frozen=True)
class LineView:
    """One line of runs.

    Attributes
    ----------
    runs : tuple of Run
    size : float
        In the painter's units.
    align : float
        0 left, 0.5 middle, 1 right within the rectangle.
    colour : str
    """

    runs: tuple[Run, ...]
    size: float
    align: float = 0.0
    colour: str = BLACK


def line_width(runs: Sequence[Run], size: float) -> float:
    """Width of one line."""
    return sum(text_size(run.text, size, run.weight)[0] for run in runs)


def line_height(size: float) -> float:
    """Height of one line."""
    return LEADING * size


def paint_text_line(painter: QPainter, rect: QRectF, view: LineView) -> None:
    """One line in `rect`, its capitals in the middle of the height."""
    x = rect.left() + view.align * (rect.width() - line_width(view.runs, view.size))
    with kept(painter):
        for run in view.runs:
            spot = QPointF(x, rect.center().y())
            draw_text(painter, spot, run.text, view.size, view.colour, run.weight, align=0.0)
            x += text_size(run.text, view.size, run.weight)[0]


def broken(runs: Sequence[Run], size: float, width: float) -> tuple[tuple[Run, ...], ...]:
    """Break runs into lines no wider than `width`.

    Parameters
    ----------
    runs : sequence of Run
        A line break in a run's text begins a new line.
    size, width : float
        In the painter's units.

    Returns
    -------
    tuple of lines, each a tuple of Run
        A word wider than a line is cut between letters.
    """
    lines: list[list[Run]] = [[]]
    room = width
    for word in _words(runs):
        if word[0].text == "\n":
            lines.append([])
            room = width
            continue
        if lines[-1] and _wider(word, size, room + 1e-6):
            lines.append([])
            room = width
        if not lines[-1]:
            word = [Run(word[0].text.lstrip(" "), word[0].weight), *word[1:]]
        for run in word:
            text = run.text
            while (fits := letters_that_fit(text, size, run.weight, room + 1e-6)) < len(text):
                fits = max(fits, 1)
                lines[-1].append(Run(text[:fits], run.weight))
                lines.append([])
                text, room = text[fits:], width
            if text:
                lines[-1].append(Run(text, run.weight))
                room -= text_size(text, size, run.weight)[0]
    return tuple(_joined(line) for line in lines)


def balanced(runs: Sequence[Run], size: float, width: float) -> tuple[tuple[Run, ...], ...]:
    """Broken into as few lines as `broken` makes, but of lengths as even as can be."""
    lines = broken(runs, size, width)
    if len(lines) < 2:
        return lines
    low, high = width / len(lines), width
    for _ in range(12):
        middle = (low + high) / 2
        narrower = broken(runs, size, middle)
        if len(narrower) > len(lines):
            low = middle
        else:
            high, lines = middle, narrower
    return lines


def _words(runs: Sequence[Run]) -> list[list[Run]]:
    """Words, each with the space before it; a line break is a word of its own.

    A word may go on from one run into the next, as "violet" and a comma in another weight do.
    """
    words: list[list[Run]] = []
    for run in runs:
        for text in re.findall(r"\n| *[^ \n]+| +", run.text):
            piece = Run(text, run.weight)
            glued = words and words[-1][0].text != "\n" and text[0] not in " \n"
            if glued:
                words[-1].append(piece)
            else:
                words.append([piece])
    return words


def letters_that_fit(text: str, size: float, weight: int, width: float) -> int:
    """How many letters of a text fit into a width; all of them, or none, may be.

    No more than about two lines are ever measured, however long the text is.
    """
    high = 16
    while high < len(text) and text_size(text[:high], size, weight)[0] <= width:
        high *= 2
    high = min(high, len(text))
    if text_size(text[:high], size, weight)[0] <= width:
        return high
    low = 0
    while high - low > 1:
        middle = (low + high) // 2
        if text_size(text[:middle], size, weight)[0] <= width:
            low = middle
        else:
            high = middle
    return low


def _wider(word: Sequence[Run], size: float, room: float) -> bool:
    """Whether a word is wider than the room; a long one is not measured to its end."""
    for run in word:
        if letters_that_fit(run.text, size, run.weight, room) < len(run.text):
            return True
        room -= text_size(run.text, size, run.weight)[0]
    return False


def _joined(line: list[Run]) -> tuple[Run, ...]:
    """Neighbouring runs of one weight as one run: kerned, and found whole in the PDF."""
    joined: list[Run] = []
    for run in line:
        if joined and joined[-1].weight == run.weight:
            joined[-1] = Run(joined[-1].text + run.text, run.weight)
        elif run.text:
            joined.append(run)
    return tuple(joined)
