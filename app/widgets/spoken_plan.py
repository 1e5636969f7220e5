"""Where the words of the strip below the photo stand, at which size."""

from __future__ import annotations

import re
from dataclasses import dataclass

from app.drawing.fit import Fitted, advance, fit, pitch_of
from app.look import look
from app.look.type import CHOSEN, SECOND
from app.widgets.readout_views import SpokenView
from core.i18n import translate

# Where the three columns begin, as shares of the text's width.
_COLUMNS = (0.0, 0.36, 0.66)
# Lines the sentences may always take, and when there is height for them.
FEW_LINES = 2
ALL_LINES = 4


@dataclass(frozen=True)
class Fullness:
    """How much room the strip takes: the photo above must not be the one that yields."""

    chip: int
    word_shares: tuple[float, ...]
    labels: bool


FULLNESS = (
    Fullness(131, (1.0, 28 / 34, 24 / 34), labels=True),
    Fullness(88, (24 / 34, 20 / 34), labels=True),
    Fullness(88, (22 / 34, 20 / 34), labels=False),
)
"""From the fullest to the barest; the second lines name the qualities where labels are gone."""


@dataclass(frozen=True)
class Block:
    """Label, big word and second line of one quality, and where they stand."""

    left: float
    top: float
    parts: tuple[Fitted, Fitted, Fitted]


@dataclass(frozen=True)
class Words:
    """The three qualities, the rule below them, and the sizes the sentences may have."""

    blocks: tuple[Block, ...]
    rule: float
    sizes: tuple[int, ...]


@dataclass(frozen=True)
class Plan:
    """The whole strip's texts."""

    blocks: tuple[Block, ...]
    rule: float
    sentence: Fitted
    height: float


@dataclass(frozen=True)
class Room:
    """Width and height a button takes beside the sentences; nothing while it is hidden."""

    across: float = 0.0
    down: float = 0.0


def plan_of(words: Words, sentence: str, button: Room, width: float, most_lines: int) -> Plan:
    """Where everything stands in a width, and how high that is.

    Parameters
    ----------
    words : Words
        Of the same width.
    button : Room
        What the button beside the sentences takes.
    most_lines : int
        Lines the sentences may take.
    """
    fitted = _leading(sentence, words.sizes, width - button.across, most_lines)
    low = max(fitted.height + look().type.grow(14), button.down)
    return Plan(words.blocks, words.rule, fitted, words.rule + low)


def steady_height(words: Words, button: Room, width: float) -> float:
    """Height that holds whatever is said of toning down.

    It is said differently once there is a plan, a second or two after the bands: the strip keeps
    the room for it, so that the photo above stays where it is.
    """
    # Never shown: as long as these sentences become.
    longest = translate(
        "spoken strip",
        "Ultramarine alone would be too intense: tone it down with about 1 part burnt sienna and "
        "warm red in 4.",
    )
    fitted = fit(longest, words.sizes, SECOND, width - button.across, FEW_LINES)
    lines = max(fitted.height, FEW_LINES * pitch_of(words.sizes[0], SECOND))
    return words.rule + max(lines + look().type.grow(14), button.down)


def words_of(view: SpokenView, fullness: Fullness, width: float) -> Words:
    """Where the large words of a view and what belongs to them stand in a width."""
    scale = look().type
    label, second = scale.px("control"), scale.px("aloud_second")
    texts: tuple[tuple[str, str, str], ...] = (
        (translate("spoken strip", "Hue"), view.hue, view.hue_second),
        (translate("spoken strip", "Value"), view.value, view.value_second),
        (translate("spoken strip", "Intensity"), view.intensity, view.intensity_second),
    )
    if not fullness.labels:
        texts = tuple(("", word, under) for _, word, under in texts)
    if view.colour is None:
        texts = (("", view.hue, ""),)
    sizes = tuple(round(scale.px("aloud") * share) for share in fullness.word_shares)
    seconds = tuple(range(second, scale.px("control") - 1, -1))
    if not fullness.labels:
        seconds = seconds[-1:]
    lefts, widths = _columns(texts, width, sizes[-1])
    stacked = len(set(lefts)) == 1 and len(texts) > 1
    # The three words share one size, the largest at which each fits; so do the second lines.
    sized = [fit(t[1], sizes, CHOSEN, room) for t, room in zip(texts, widths, strict=True)]
    larger = tuple(size for size in sizes if size <= min(part.size for part in sized))
    under = [fit(t[2], seconds, SECOND, room) for t, room in zip(texts, widths, strict=True)]
    unders = tuple(size for size in seconds if size <= min(part.size for part in under))
    blocks: list[Block] = []
    top = float(scale.grow(11))
    bottom = top
    for (name, word, second_line), left, room in zip(texts, lefts, widths, strict=False):
        parts = (
            fit(name, (label,), SECOND, room),
            fit(word, larger, CHOSEN, room),
            fit(second_line, unders, SECOND, room),
        )
        blocks.append(Block(left, top, parts))
        ends = top + sum(part.height * tight(i) for i, part in enumerate(parts) if part.width)
        bottom = max(bottom, ends)
        if stacked:
            top = ends + scale.grow(6)
    rule = bottom + scale.grow(9)
    return Words(tuple(blocks), rule, seconds)


def _columns(
    texts: tuple[tuple[str, str, str], ...], width: float, least: int
) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Left ends and widths; below each other when a word would not fit beside the others."""
    if len(texts) == 1:
        return (0.0,), (width,)
    gap = look().type.grow(16)
    needs = []
    for name, word, under in texts:
        pieces = word.replace("-", "- ").split()
        need = max((advance(piece, least, CHOSEN) for piece in pieces), default=0.0)
        size = look().type.px("control")
        rest = max((advance(piece, size, SECOND) for piece in under.split()), default=0.0)
        needs.append(max(need, rest, advance(name, size, SECOND)))
    ends = (*_COLUMNS[1:], 1.0)
    widths = tuple(
        (end - start) * width - (gap if end < 1.0 else 0.0)
        for start, end in zip(_COLUMNS, ends, strict=True)
    )
    if all(need <= room for need, room in zip(needs, widths, strict=True)):
        return tuple(share * width for share in _COLUMNS), widths
    return (0.0,) * 3, (width,) * 3


def _leading(text: str, sizes: tuple[int, ...], width: float, most_lines: int) -> Fitted:
    """As many whole sentences from the start as fit into so many lines; at least one."""
    sentences = re.split("(?<=[.?!]) ", text)
    for count in range(len(sentences), 0, -1):
        fitted = fit(" ".join(sentences[:count]), sizes, SECOND, width, most_lines)
        if len(fitted.lines) <= most_lines or count == 1:
            return fitted
    return fit("", sizes, SECOND, width)


def tight(number: int) -> float:
    """Line pitch of the big words, drawn in a little: they have no neighbours above."""
    return 0.94 if number == 1 else 1.0
