"""Words strung together: lists with "and", and the capital a sentence begins with."""

from __future__ import annotations

import unicodedata
from collections.abc import Sequence

from core.i18n import translate


def listed(pieces: Sequence[str]) -> str:
    """ "a", "a and b", "a, b and c"."""
    if len(pieces) < 2:
        return "".join(pieces)
    first, last = ", ".join(pieces[:-1]), pieces[-1]
    if _sounds_like_i(last):
        return translate("before i", "{first} and {last}").format(first=first, last=last)
    return translate("words", "{first} and {last}").format(first=first, last=last)


def sentence_case(text: str) -> str:
    """The text with a capital first letter, as at the start of a sentence."""
    return text[:1].upper() + text[1:]


def _sounds_like_i(word: str) -> bool:
    """Whether it begins with the vowel i, before which some languages have another "and"."""
    plain = unicodedata.normalize("NFD", word.casefold())
    plain = "".join(letter for letter in plain if not unicodedata.combining(letter))
    return plain.removeprefix("h").startswith("i") and not plain.startswith(("hia", "hie", "io"))
