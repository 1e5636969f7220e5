"""What is in a study file, and how much of it may."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

MOST_MEMBERS = 48
MOST_JSON = 4 << 20
MOST_PICTURE = 256 << 20
MOST_TOTAL = 600 << 20

_PICTURE_NAME = re.compile(r"[A-Za-z0-9][A-Za-z0-9._-]{0,120}", re.ASCII)


@dataclass(frozen=True)
class Contents:
    """What is in a study file.

    Attributes
    ----------
    json : bytes
        The study, UTF-8.
    pictures : mapping of str to bytes
        By their name in the file, without the folder; the bytes as they were kept.
    damaged : bool
        Something of the study did not come through, or may be wrong: `json` may be empty, and
        pictures it speaks of may be missing.
    """

    json: bytes
    pictures: Mapping[str, bytes]
    damaged: bool = False


def picture_name_allowed(name: str) -> bool:
    """Whether a picture may have this name in the file: plain letters, digits, dot, dash."""
    return _PICTURE_NAME.fullmatch(name) is not None
