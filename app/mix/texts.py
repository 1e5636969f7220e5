"""Texts that several views share."""

from __future__ import annotations

import re
from typing import Literal

from core.i18n import translate

VerdictKind = Literal["matches", "close", "off", "unknown"]

VERDICTS: dict[str, VerdictKind] = {"matches": "matches", "close": "close", "far": "off"}


def sentence_case(text: str) -> str:
    """The text with a capital first letter."""
    return text[:1].upper() + text[1:]


def held_together(mix: str) -> str:
    """A mix in parts that does not break into lines before a colon, nor after a count."""
    return re.sub(r"(\d) ", "\\1\u00a0", mix).replace(" : ", "\u00a0: ")


def verdict_text_of(verdict: str) -> str:
    """The word for a verdict."""
    return {
        "matches": translate("mix", "Matches"),
        "close": translate("mix", "Close"),
        "far": translate("mix", "Well off"),
    }[verdict]
