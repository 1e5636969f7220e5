"""Errors about a file that name it: a command may be given several."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from core.errors import GradewashError


@contextmanager
def naming(name: str) -> Iterator[None]:
    """Put a file's name before an error that does not say which file it is about."""
    try:
        yield
    except GradewashError as error:
        if name in str(error):
            raise
        raise type(error)(f"{name}: {error}") from error
