"""How long work tells where it is, and learns that it should stop."""

from __future__ import annotations

from collections.abc import Callable

from core.errors import Cancelled

Progress = Callable[[float], None]
"""Called with the share done, 0..1."""

ShouldStop = Callable[[], bool]
"""Answers True once the work is no longer wanted."""


def step(
    share: float, progress: Progress | None = None, should_stop: ShouldStop | None = None
) -> None:
    """Report the share done; raise `Cancelled` if the work should stop.

    Parameters
    ----------
    share : float
        0..1.

    Raises
    ------
    Cancelled
        `should_stop` answered True.
    """
    if should_stop is not None and should_stop():
        raise Cancelled
    if progress is not None:
        progress(share)


def part_of(progress: Progress | None, start: float, end: float) -> Progress | None:
    """Progress of a part of the work, told as a share of the whole, from `start` to `end`."""
    if progress is None:
        return None
    return lambda share: progress(start + (end - start) * share)
