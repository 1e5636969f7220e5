"""Drafts of one strength and one next step for a student, from what the checks found.

Drafts only: the teacher takes one, takes another, or writes their own.
"""

from __future__ import annotations

from core.pipeline import Checks
from core.sheet.result import Change, SheetCheck


def strengths(checks: Checks, change: Change | None = None) -> tuple[str, ...]:
    """Sentences of praise, the best first: of the last sheet, of the change, of the first sheet.

    Parameters
    ----------
    checks : Checks
        Without their pixels will do.
    change : Change, optional
        From `core.pipeline.change_between`.
    """
    first, last = checks[0], checks[1] or checks[0]
    found = _of_kind(last, "praise")
    if change is not None:
        found += [finding.text for finding in change.findings if finding.kind == "praise"]
    found += _of_kind(first, "praise")
    return tuple(dict.fromkeys(found))


def next_steps(checks: Checks, change: Change | None = None) -> tuple[str, ...]:
    """Things to try next, the most useful first: of the last sheet, then of the change."""
    found = _of_kind(checks[1] or checks[0], "step")
    if change is not None:
        found += [finding.text for finding in change.findings if finding.kind == "step"]
    return tuple(dict.fromkeys(found))


def _of_kind(check: SheetCheck | None, kind: str) -> list[str]:
    if check is None or not check.readable:
        return []
    return [finding.text for finding in check.findings if finding.kind == kind]
