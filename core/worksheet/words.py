"""What the worksheet asks, and what its scale means: the same on the page and on the cards.

The scale runs as the measured scores do (`core.sheet.findings.scores`): 10 where the sheet matches
the photo, 7 where it is close, 4 where it is off, 1 where it is far from it.
"""

from __future__ import annotations

from typing import Literal, assert_never

from core.i18n import translate
from core.sheet.findings.words import quality_word, score_meaning
from core.words.lists import listed
from core.worksheet.worksheet import ChangeFirst, Quality

ANCHORS = (1, 4, 7, 10)
"""The scores that have words."""

Prompt = Literal["technique", "brush", "water", "placement"]
PROMPTS: tuple[Prompt, ...] = ("technique", "brush", "water", "placement")


def anchor_word(score: int) -> str:
    """What 1, 4, 7 or 10 stands for, whatever is scored: stands once above the scales.

    Raises
    ------
    ValueError
        Another score: only these four have words.
    """
    words = {
        1: translate("worksheet", "far from it"),
        4: translate("worksheet", "some way off"),
        7: translate("worksheet", "close"),
        10: translate("worksheet", "matches"),
    }
    if score not in words:
        raise ValueError(f"only 1, 4, 7 and 10 have words, not {score}")
    return words[score]


def nearest_anchor(score: int) -> int:
    """The score with words that is nearest.

    >>> [nearest_anchor(score) for score in range(1, 11)]
    [1, 1, 4, 4, 4, 7, 7, 7, 10, 10]
    """
    return min(ANCHORS, key=lambda anchor: abs(anchor - score))


def score_hint(quality: Quality, score: int) -> str:
    """What a score says of a quality, in one short line.

    >>> score_hint("value", 8)
    'near 7: about one step lighter or darker'
    """
    anchor = nearest_anchor(score)
    meaning = score_meaning(quality, anchor)
    if anchor == score:
        return translate("worksheet", "{score}: {meaning}").format(score=score, meaning=meaning)
    return translate("worksheet", "near {score}: {meaning}").format(score=anchor, meaning=meaning)


def quality_title(quality: Quality) -> str:
    """A quality as the label of its scale."""
    match quality:
        case "hue":
            return translate("worksheet", "Hue")
        case "value":
            return translate("worksheet", "Value")
        case "intensity":
            return translate("worksheet", "Intensity")
        case "placement":
            return translate("worksheet", "Placement")
        case _:
            assert_never(quality)


def sheet_title(index: int) -> str:
    """ "Sheet 1" or "Sheet 2"."""
    return translate("worksheet", "Sheet {number}").format(number=index + 1)


def question(index: int) -> str:
    """What the written answer of sheet `index`, 0 or 1, replies to."""
    if index == 0:
        return translate("worksheet", "What would you do differently?")
    return translate("worksheet", "Did the change help?")


def prompt_word(prompt: Prompt) -> str:
    """The word a prompt begins with."""
    match prompt:
        case "technique":
            return translate("worksheet", "Technique")
        case "brush":
            return translate("worksheet", "Brush")
        case "water":
            return translate("worksheet", "Water")
        case "placement":
            return translate("worksheet", "Placement")
        case _:
            assert_never(prompt)


def prompt_question(prompt: Prompt, index: int) -> str:
    """What a prompt asks about sheet `index`, 0 or 1."""
    first = index == 0
    match prompt:
        case "technique":
            if first:
                return translate("worksheet", "one wash, or a second layer?")
            return translate("worksheet", "what did you do another way?")
        case "brush":
            if first:
                return translate("worksheet", "larger, fuller, fewer strokes?")
            return translate("worksheet", "how did it move this time?")
        case "water":
            if first:
                return translate("worksheet", "wetter or drier, and when?")
            return translate("worksheet", "was the paper wetter or drier?")
        case "placement":
            if first:
                return translate("worksheet", "which band ends too high or low?")
            return translate("worksheet", "which lines moved?")
        case _:
            assert_never(prompt)


def change_question() -> str:
    """What the one choice below the first answer is for."""
    return translate("worksheet", "One thing to change first")


def change_title(change: ChangeFirst) -> str:
    """A thing to change first, as a choice."""
    match change:
        case "hue":
            return translate("worksheet", "Hue")
        case "value":
            return translate("worksheet", "Value")
        case "intensity":
            return translate("worksheet", "Intensity")
        case "placement":
            return translate("worksheet", "Placement")
        case "edges":
            return translate("worksheet", "Hard edges")
        case "blooms":
            return translate("worksheet", "Blooms")
        case _:
            assert_never(change)


def change_reminder(change: ChangeFirst | None) -> str:
    """On the second sheet: what was named on the first."""
    if change is None:
        return translate("worksheet", "On sheet 1, choose one thing to change first.")
    return translate("worksheet", "On sheet 1 you chose to change {thing} first.").format(
        thing=quality_word(change)
    )


def waiting_sentence(missing: tuple[Quality, ...], has_sheet: bool) -> str:
    """What opens the measured findings of a sheet; empty when nothing is missing.

    Parameters
    ----------
    missing : tuple of Quality
        `OwnScores.missing`.
    has_sheet : bool
        The study has a picture of the sheet.
    """
    scores = listed([quality_word(quality) for quality in missing])
    if missing and has_sheet:
        return translate("worksheet", "Score {qualities} to open them.").format(qualities=scores)
    if missing:
        return translate(
            "worksheet", "Score {qualities}, and add the sheet's picture on the Sheets page."
        ).format(qualities=scores)
    if not has_sheet:
        return translate("worksheet", "Add the sheet's picture on the Sheets page to open them.")
    return ""
