"""Functions of values alone that remember: what many tests ask for is worked out once.

A worker of the tests remembers for itself, by what goes in: pixels, options and language.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from shared_work import content_of, shared

import core.sheet.check
from core import i18n
from core.memory import Memory
from core.photo import Photo
from core.progress import step
from core.sheet.match.reference import Reference
from core.sheet.result import SheetCheck, SheetOptions


def once(function: Callable[..., Any]) -> Callable[..., Any]:
    """A function that tells its progress, may be called off, and remembers."""
    memory: Memory[Any] = Memory(100)

    def remembered(*given: Any, progress: Any = None, should_stop: Any = None, **options: Any):
        key = (i18n._catalogue, content_of(given), content_of(sorted(options.items())))
        found = memory.get(key)
        if found is None:
            made = function(*given, progress=progress, should_stop=should_stop, **options)
            return memory.put(key, made)
        for share in (0.0, 0.5, 1.0):
            step(share, progress, should_stop)
        return found

    return remembered


def quick_once(function: Callable[..., Any]) -> Callable[..., Any]:
    """A function that remembers, too quick to be called off."""
    memory: Memory[Any] = Memory(100)

    def remembered(*given: Any):
        return memory.either((i18n._catalogue, content_of(given)), lambda: function(*given))

    return remembered


def check_sheet_once() -> Callable[..., SheetCheck]:
    """`check_sheet`, of the same picture once, whatever it is called."""

    def made(photo: Photo, reference: Reference, options: SheetOptions, **ways: Any) -> SheetCheck:
        key = ("check", content_of((photo, reference, options)))
        return shared(key, lambda: core.sheet.check.check_sheet(photo, reference, options, **ways))

    check = once(made)

    def remembered(
        photo: Photo, reference: Reference, options: SheetOptions | None = None, **ways: Any
    ) -> SheetCheck:
        found = check(replace(photo, name=""), reference, options or SheetOptions(), **ways)
        return replace(found, name=photo.name)

    return remembered
