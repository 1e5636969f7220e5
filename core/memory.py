"""The one memory of results: bounded, and locked, since workers and the window share it.

For what is worked out from the same things again and again by callers that know nothing of each
other. Whoever has a value hands it on instead.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Hashable, Iterable
from threading import Lock
from typing import Generic, TypeVar

Value = TypeVar("Value")


class Memory(Generic[Value]):
    """Remembers results by what they were made from; those asked for longest ago go first."""

    def __init__(self, most: int) -> None:
        """
        Parameters
        ----------
        most : int
            How many results are kept.
        """
        self._most = most
        self._kept: OrderedDict[Hashable, Value] = OrderedDict()
        self._lock = Lock()

    def __len__(self) -> int:
        return len(self._kept)

    def get(self, key: Hashable) -> Value | None:
        """What is kept under `key`; None for nothing."""
        with self._lock:
            found = self._kept.get(key)
            if found is not None:
                self._kept.move_to_end(key)
            return found

    def put(self, key: Hashable, value: Value) -> Value:
        """Keep `value` from now on."""
        self.put_all([(key, value)])
        return value

    def put_all(self, results: Iterable[tuple[Hashable, Value]]) -> None:
        """Keep some results from now on."""
        with self._lock:
            for key, value in results:
                self._kept[key] = value
                self._kept.move_to_end(key)
            while len(self._kept) > self._most:
                self._kept.popitem(last=False)

    def either(self, key: Hashable, make: Callable[[], Value]) -> Value:
        """What is kept under `key`, else what `make` gives, kept from now on."""
        found = self.get(key)
        return self.put(key, make()) if found is None else found

    def forget(self) -> None:
        """Know nothing any more; for benchmarks, which time the first time."""
        with self._lock:
            self._kept.clear()
