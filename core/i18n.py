"""Where every text a user reads passes through, so that it can be translated.

The function is called `translate` and takes a context and a literal text, since that is the
form Qt's extraction tool finds; `core` itself knows no Qt. The window and the command line hand
in a catalogue with `set_catalogue`; without one the English text comes back.
"""

from __future__ import annotations

from collections.abc import Callable

Catalogue = Callable[[str, str], str]
"""(context, text) -> text."""

_catalogue: Catalogue | None = None


def set_catalogue(catalogue: Catalogue | None) -> None:
    """Use `catalogue` from now on; None means English."""
    global _catalogue
    _catalogue = catalogue


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
