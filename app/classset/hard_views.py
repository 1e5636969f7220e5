"""From the class's spreads to what is drawn of them: the field, and one thing at a time."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from app.drawing.classview.hard import LineView, StepView
from app.drawing.dots import Column, DotsView, FieldView
from app.drawing.pyramid import Pyramid
from app.look.theme import Theme
from core.bands.lines import Bands
from core.class_set.field_words import column_title, field_word, ways
from core.class_set.hard import Hard
from core.class_set.spread import Spread
from core.i18n import translate
from core.reading.quality import QUALITIES, Quality


@dataclass(frozen=True, eq=False)
class Shown:
    """All that Found hard shows of a class; it bears no code.

    Attributes
    ----------
    title : str
        Of the exercise.
    bands : Bands
    sky : Pyramid or None
    spreads : two of tuple of Spread
        Of the first sheets, and of the second.
    sentences : tuple of Hard
    silent : str
        Why there is none; empty where there are some.
    """

    title: str
    bands: Bands
    sky: Pyramid | None
    spreads: tuple[tuple[Spread, ...], tuple[Spread, ...]]
    sentences: tuple[Hard, ...]
    silent: str


def field_view(shown: Shown, theme: Theme, text: float, note: float) -> FieldView:
    """The whole field, its words in `text` and `note` pixels."""
    lines = {}
    for index, spreads in enumerate(shown.spreads):
        for one in spreads:
            row, column = shown.bands.letters.index(one.letter), QUALITIES.index(one.quality)
            lines[row, column, index] = _dots(one, index, theme, note)
    horizon = shown.bands.horizon
    return FieldView(
        shown.bands.letters,
        tuple(edge / horizon for edge in shown.bands.edges),
        shown.sky,
        tuple(Column(column_title(quality), *ways(quality)) for quality in QUALITIES),
        lines,
        text,
        note,
        theme.ink,
        theme.second,
        theme.rule,
        theme.paper,
        theme.wall,
    )


def step_view(shown: Shown, step: int, theme: Theme, text: float, hint: str) -> StepView:
    """One of the sentences with the lines it speaks of."""
    hard = shown.sentences[step]
    quality = _lead(shown, hard)
    row = shown.bands.letters.index(hard.letter)
    edges = [edge / shown.bands.horizon for edge in shown.bands.edges]
    lines = tuple(
        _line(one, index, theme, text)
        for index, spreads in enumerate(shown.spreads)
        for one in spreads
        if (one.letter, one.quality) == (hard.letter, quality)
    )
    return StepView(
        hard.text, hard.teach, hard.letter, (edges[row], edges[row + 1]), shown.sky,
        column_title(quality), lines, hint,
    )  # fmt: skip


def _lead(shown: Shown, hard: Hard) -> Quality:
    """Of several qualities said together, the one most sheets are off in."""

    def off(quality: Quality) -> float:
        return max(
            (
                one.share_off
                for spreads in shown.spreads
                for one in spreads
                if (one.letter, one.quality) == (hard.letter, quality)
            ),
            default=0.0,
        )

    return max(hard.qualities, key=off)


def _line(one: Spread, index: int, theme: Theme, text: float) -> LineView:
    first, second = (
        translate("class set page", "First sheets"),
        translate("class set page", "Second sheets"),
    )
    counted = translate("class set page", "{n} of {all} match")
    return LineView(
        (first, second)[index],
        *ways(one.quality),
        counted.format(n=one.matched, all=one.judged),
        replace(_dots(one, index, theme, text), words="", bar=False),
    )


def _dots(one: Spread, index: int, theme: Theme, text: float) -> DotsView:
    return DotsView(
        one.gaps, field_word(one), index == 1, one.told, text, theme.ink, theme.rule, theme.paper
    )


def spoken(shown: Shown, cells: Sequence[str]) -> str:
    """All of it in words, for a screen reader."""
    said = [part for one in shown.sentences for part in (one.text, one.teach) if part] or [
        shown.silent
    ]
    return " ".join([*said, *cells])
