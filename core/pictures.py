"""The pictures of a lesson: what a study says of them, and their bytes kept beside it.

A study names a picture by the digest of its bytes, so undo brings back the right one and equal
studies are equal; the bytes themselves stay outside, shared and never changed.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from threading import Lock

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
        return Picture(name, digest)

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
