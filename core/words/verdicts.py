"""Verdicts in words: the same on a mix, a sheet, a card and the command line."""

from __future__ import annotations

from typing import assert_never

from core.i18n import translate
from core.reading.quality import Outcome, Verdict


def verdict_word(verdict: Verdict) -> str:
    """How near something comes to the photo."""
    match verdict:
        case "matches":
            return translate("words", "Matches")
        case "close":
            return translate("words", "Close")
        case "off":
            return translate("words", "Off")
        case "cannot tell":
            return translate("words", "Cannot tell")
        case _:
            assert_never(verdict)


def outcome_word(outcome: Outcome) -> str:
    """What became of something on the second sheet."""
    match outcome:
        case "improved":
            return translate("words", "nearer")
        case "worse":
            return translate("words", "further")
        case "stayed":
            return translate("words", "stayed")
        case _:
            assert_never(outcome)
