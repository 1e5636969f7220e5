"""The same sky and the same sheets are opened by hundreds of window tests: worked out once.

What is remembered are functions of values alone, whose own tests are those of the core. A worker
of the tests remembers for itself, by what goes in: pixels, options and language.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Hashable, Iterator
from contextlib import contextmanager
from typing import Any

import numpy as np
import pytest

import core.bands.careful
import core.bands.propose
import core.sheet.check
from app.services import photo_jobs
from core import i18n, pipeline
from core.memory import Memory
from core.photo import Photo
from core.progress import step
from core.sheet.match.reference import Reference


@contextmanager
def work_done_once() -> Iterator[None]:
    """Proposals, careful readings and checks in the window are made once each."""
    propose = _once(lambda *given, **options: core.bands.propose.propose(*given, **options))
    read = _once(lambda *given, **options: core.bands.careful.read_bands(*given, **options))
    check = _once(lambda *given, **options: core.sheet.check.check_sheet(*given, **options))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(photo_jobs, "propose", propose)
        patch.setattr(pipeline, "propose", propose)
        patch.setattr(pipeline, "read_bands", read)
        patch.setattr(core.sheet, "check_sheet", check, raising=False)
        yield


def _once(function: Callable[..., Any]) -> Callable[..., Any]:
    memory: Memory[Any] = Memory(100)

    def remembered(*given: Any, progress: Any = None, should_stop: Any = None, **options: Any):
        key = (*map(_key, given), *sorted((name, _key(it)) for name, it in options.items()))
        found = memory.get((i18n._catalogue, key))
        if found is None:
            made = function(*given, progress=progress, should_stop=should_stop, **options)
            return memory.put((i18n._catalogue, key), made)
        for share in (0.0, 0.5, 1.0):
            step(share, progress, should_stop)
        return found

    return remembered


def _key(it: Any) -> Hashable:
    if isinstance(it, np.ndarray):
        data = np.ascontiguousarray(it)
        return (it.shape, it.dtype.str, hashlib.blake2b(data).digest())
    if isinstance(it, Photo):
        return (it.name, it.width, it.height, it.notices, _key(it.pixels), _key(it.opaque))
    if isinstance(it, Reference):
        return (it.name, it.bands, it.readings, _key(it.picture), _key(it.mask))
    return it
