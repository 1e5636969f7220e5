"""What takes long and is asked for by several workers of one run of the tests, kept in a folder.

For functions of values alone. The folder belongs to one run, so that nothing of older code is
found; what a process begun by a test works out stays its own.
"""

from __future__ import annotations

import hashlib
import os
import pickle
from collections.abc import Callable, Hashable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import fields, is_dataclass
from pathlib import Path
from typing import Any, TypeVar

import numpy as np

from core import i18n

Value = TypeVar("Value")

_folder: Path | None = None


@contextmanager
def shared_in(folder: Path) -> Iterator[None]:
    """Share through this folder; it is made if need be."""
    global _folder
    folder.mkdir(exist_ok=True)
    before, _folder = _folder, folder
    try:
        yield
    finally:
        _folder = before


def shared(key: Hashable, make: Callable[[], Value]) -> Value:
    """What another worker of this run made from the same, else what `make` gives.

    Parameters
    ----------
    key : hashable
        All the value depends on, from `content_of`; the language counts by itself.
    make : callable
        Its errors are not shared.
    """
    # Sentences of another language are few, and a catalogue has no name.
    if _folder is None or i18n._catalogue is not None:
        return make()
    said = repr(key)
    assert " at 0x" not in said, "an object that only this process knows"
    path = _folder / hashlib.blake2b(said.encode(), digest_size=16).hexdigest()
    if path.exists():
        value: Value = pickle.loads(path.read_bytes())
        return value
    value = make()
    part = path.with_suffix(f".{os.getpid()}")
    part.write_bytes(pickle.dumps(value, pickle.HIGHEST_PROTOCOL))
    part.replace(path)
    return value


def content_of(it: Any) -> Hashable:
    """A value by what is in it: arrays by their sums, dataclasses by their fields."""
    if isinstance(it, np.ndarray):
        data = np.ascontiguousarray(it)
        return (it.shape, it.dtype.str, hashlib.blake2b(data, digest_size=16).digest())
    if is_dataclass(it) and not isinstance(it, type):
        values = ((field.name, content_of(getattr(it, field.name))) for field in fields(it))
        return (type(it).__qualname__, *values)
    if isinstance(it, Mapping):
        return tuple((key, content_of(value)) for key, value in it.items())
    if isinstance(it, tuple | list):
        return tuple(map(content_of, it))
    if isinstance(it, bytes):
        return hashlib.blake2b(it, digest_size=16).digest()
    hash(it)
    return it
