"""The pictures of a lesson: what a study says of them, and their bytes kept beside it.

A study names a picture by the digest of its bytes, so undo brings back the right one and equal
studies are equal; the bytes themselves stay outside, shared and never changed.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import PurePath
from threading import Lock

from core.i18n import translate
from core.photo import strip_private


@dataclass(frozen=True)
class Picture:
    """A picture of the study.

    Attributes
    ----------
    name : str
        The file's name when it was given, without its folder.
    digest : str
        SHA-256 of the bytes that are kept, in hex; empty while they are not kept yet.
    """

    name: str
    digest: str = ""


def may_name_somebody(name: str) -> bool:
    """Whether a file's name looks like a person's: "Anna Tester 7b.jpg".

    Two capitalised words and no other, or a word beside a class. A place may look like that
    too; a first name alone cannot be told.

    >>> [may_name_somebody(n) for n in ("Anna Tester.jpg", "tester 7b.png", "dusk over Ems.jpg")]
    [True, True, False]
    """
    words = [word for word in re.split(r"[\W_]+", PurePath(name).stem) if word]
    letters = [word for word in words if word.isalpha() and len(word) > 1]
    if letters and any(re.fullmatch(r"\d{1,2}[A-Za-z]", word) for word in words):
        return True
    capitalised = [word for word in letters if word[0].isupper() and word[1:].islower()]
    return len(letters) >= 2 and len(capitalised) == len(letters)


def kept_name(name: str) -> str:
    """What a picture is called in a study: its file's name, unless that may be a person's."""
    if not may_name_somebody(name):
        return name
    return translate("study", "picture") + PurePath(name).suffix.lower()


def not_kept_sentence(name: str) -> str:
    """What to say where a file's name is not kept."""
    return translate(
        "study",
        "{name} may be a person's name, so the study does not keep it: give it a title, and "
        "students a code.",
    ).format(name=PurePath(name).stem)


class PictureStore(Mapping[str, bytes]):
    """Bytes of pictures by digest; grows, so that undo always finds what it needs.

    May be added to from any thread: stripping a large picture is work for a worker.
    """

    def __init__(self) -> None:
        self._bytes: dict[str, bytes] = {}
        self._lock = Lock()

    def add(self, name: str, data: bytes) -> Picture:
        """Keep a picture's bytes, without what they say about people.

        Raises
        ------
        PhotoError
            Not a picture that can be opened.
        """
        return self.add_clean(name, strip_private(data))

    def add_clean(self, name: str, data: bytes) -> Picture:
        """Keep bytes that come from a study file, stripped when they went in."""
        digest = digest_of(data)
        with self._lock:
            self._bytes[digest] = data
        return Picture(kept_name(name), digest)

    def take_over(self, pictures: Mapping[str, bytes]) -> None:
        """Keep bytes whose digests are known, as a study file gives them."""
        with self._lock:
            self._bytes.update(pictures)

    def keep_only(self, digests: Iterable[str]) -> None:
        """Drop what no study or undo step speaks of any more."""
        wanted = set(digests)
        with self._lock:
            kept = {digest: data for digest, data in self._bytes.items() if digest in wanted}
            self._bytes = kept

    def __getitem__(self, digest: str) -> bytes:
        return self._bytes[digest]

    def __iter__(self) -> Iterator[str]:
        return iter(self._bytes)

    def __len__(self) -> int:
        return len(self._bytes)


def digest_of(data: bytes) -> str:
    """What a picture's bytes are known by."""
    return hashlib.sha256(data).hexdigest()
