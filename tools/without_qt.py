"""A pytest plugin that makes Qt impossible to import: proves that core works without it.

PYTHONPATH=tools python -m pytest -p no:pytest-qt -p without_qt tests/core tests/external
"""

from __future__ import annotations

import sys
from collections.abc import Sequence
from importlib.abc import MetaPathFinder

import pytest

BLOCKED = {"PySide6", "shiboken6", "app"}


class Blocker(MetaPathFinder):
    """Stands before every other finder and refuses Qt, and our own app with it."""

    def find_spec(self, name: str, path: Sequence[str] | None, target: object = None) -> None:
        if name.partition(".")[0] in BLOCKED:
            raise ModuleNotFoundError(f"{name} is blocked in this run", name=name)


def pytest_addoption(parser: pytest.Parser) -> None:
    # pytest-qt is left out of this run, and the project's settings name options of its.
    parser.addini("qt_log_level_fail", "Declared by pytest-qt; of no effect here.")


def pytest_configure() -> None:
    found = BLOCKED.intersection(sys.modules)
    if found:
        raise pytest.UsageError(f"{', '.join(sorted(found))} came in before it could be blocked.")
    sys.meta_path.insert(0, Blocker())
