"""Checking a practice sheet against its reference sky.

`check.py` leads through the folders: `find` the painting, undo its `light`, see what is `painted`,
`match` it with the reference, say the `findings`. `measuring.py` and `result.py` are what is found.

What checks is imported when it is first asked for: a study only names the options, and the window
is not to wait for the rest. May import `bands`, `photo`, `reading`, `words`; never `paint`.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from core.sheet.check import check_sheet
    from core.sheet.findings.change import compare_checks
    from core.sheet.match.reference import Reference, make_reference

__all__ = ["Reference", "check_sheet", "compare_checks", "make_reference"]

_HOMES = {
    "Reference": "core.sheet.match.reference",
    "check_sheet": "core.sheet.check",
    "compare_checks": "core.sheet.findings.change",
    "make_reference": "core.sheet.match.reference",
}


def __getattr__(name: str) -> Any:
    if name not in _HOMES:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(_HOMES[name]), name)
