"""Where every text a user reads passes through, so that it can be translated.

The function is called `translate` and takes a context and a literal text, since that is the
form Qt's extraction tool finds; `core` itself knows no Qt. The window and the command line hand
in a catalogue with `set_catalogue`; without one the English text comes back.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from typing import ParamSpec, TypeVar, cast

_P = ParamSpec("_P")
_R = TypeVar("_R")

Catalogue = Callable[[str, str], str]
"""(context, text) -> text."""

_catalogue: Catalogue | None = None
_to_clear: list[Callable[[], None]] = []


def set_catalogue(catalogue: Catalogue | None) -> None:
    """Use `catalogue` from now on; None means English."""
    global _catalogue
    _catalogue = catalogue
    for clear in _to_clear:
        clear()


def remembered(most: int) -> Callable[[Callable[_P, _R]], Callable[_P, _R]]:
    """Remember what a function gives, as `functools.lru_cache` does, until the language changes.

    For functions whose answers hold texts a user reads.
    """

    def wrap(function: Callable[_P, _R]) -> Callable[_P, _R]:
        cache = lru_cache(maxsize=most)(function)
        _to_clear.append(cache.cache_clear)
        return cast("Callable[_P, _R]", cache)

    return wrap


def translate(context: str, text: str) -> str:
    """The text in the user's language.

    Parameters
    ----------
    context : str
        Where the text stands ("words", "read page"): tells equal texts apart.
    text : str
        A literal English text; values go in afterwards with `str.format`. Singular and plural
        are two texts, and the caller chooses.
    """
    if _catalogue is None:
        return text
    return _catalogue(context, text)
