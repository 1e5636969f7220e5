"""Reference libraries that take a second to import: every worker collects all test files."""

from __future__ import annotations

from importlib import import_module
from typing import Any


class Later:
    """A module that is imported when a test first uses it."""

    def __init__(self, name: str) -> None:
        self._name = name

    def __getattr__(self, attribute: str) -> Any:
        if attribute.startswith(("_", "pytest")):  # pytest's own questions, while it collects
            raise AttributeError(attribute)
        return getattr(import_module(self._name), attribute)
