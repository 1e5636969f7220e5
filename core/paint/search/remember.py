"""What the film has said once is remembered by the paints it was asked about, not by their box.

A paint put into the box or taken out changes few of the sets a search tries: all the others are
answered from here. The answers are the same to the last digits of rounding, since every set is
worked out by itself.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Hashable, Iterable
from threading import Lock
from typing import Generic, TypeVar

Value = TypeVar("Value")


class Remembered(Generic[Value]):
    """A bounded memory; the answers asked for longest ago go first.

    Planning runs in a worker while the window compares paints, so it is locked.
    """

    def __init__(self, most: int) -> None:
        self._most = most
        self._known: OrderedDict[Hashable, Value] = OrderedDict()
        self._lock = Lock()

    def __len__(self) -> int:
        return len(self._known)

    def get(self, key: Hashable) -> Value | None:
        """What is known; None for nothing."""
        with self._lock:
            found = self._known.get(key)
            if found is not None:
                self._known.move_to_end(key)
            return found

    def put(self, answers: Iterable[tuple[Hashable, Value]]) -> None:
        """Remember some answers."""
        with self._lock:
            self._known.update(answers)
            while len(self._known) > self._most:
                self._known.popitem(last=False)

    def forget(self) -> None:
        """Know nothing any more; for benchmarks, which time the first time."""
        with self._lock:
            self._known.clear()
