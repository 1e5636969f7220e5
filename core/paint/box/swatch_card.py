"""What a printed swatch card asks to be painted: kept in the box until its picture comes."""

from __future__ import annotations

import hashlib
import re
from collections.abc import Sequence
from dataclasses import dataclass

ROWS = 8
"""Rows of one page."""

CODE_BEGINS = "GWS"
_LETTERS = "ABCDEFGHJKLMNPQRTUVWXY2346789"
"""No letter that is taken for another one."""
_CODE_LENGTH = 5


@dataclass(frozen=True)
class SwatchRow:
    """One paint of a card.

    Attributes
    ----------
    name : str
        As the class calls it.
    like : str
        Key of a paint in the catalogue that it behaves like.
    partners : tuple of two str
        Keys of the paints it is mixed with, in the second and third field: of another row
        (`own_key`), or of a paint that is in the box or the catalogue.
    """

    name: str
    like: str
    partners: tuple[str, str]

    @property
    def key(self) -> str:
        """The key of the paint once it is in a box."""
        return own_key(self.name)


@dataclass(frozen=True)
class SwatchCard:
    """One printed page.

    Attributes
    ----------
    code : str
        What its QR code says: the same for the same paints.
    rows : tuple of SwatchRow
        One to eight, from the top.
    """

    code: str
    rows: tuple[SwatchRow, ...]


def own_key(name: str) -> str:
    """The key of a paint the teacher named.

    >>> own_key("Sky blue")
    'own_sky_blue'
    """
    slug = re.sub(r"\W+", "_", name.lower()).strip("_") or "paint"
    return f"own_{slug}"


def card_of(rows: Sequence[SwatchRow]) -> SwatchCard:
    """The card of some rows, with its code."""
    said = "\n".join("\t".join((row.key, row.like, *row.partners)) for row in rows)
    number = int.from_bytes(hashlib.sha256(said.encode()).digest()[:8])
    letters = ""
    for _ in range(_CODE_LENGTH):
        number, place = divmod(number, len(_LETTERS))
        letters += _LETTERS[place]
    return SwatchCard(CODE_BEGINS + letters, tuple(rows))


def is_code(text: str) -> bool:
    """Whether a QR code's text is a swatch card's."""
    rest = text.removeprefix(CODE_BEGINS)
    return rest != text and len(rest) == _CODE_LENGTH and all(c in _LETTERS for c in rest)
