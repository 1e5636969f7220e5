"""How the rows share the height there is, as plain numbers."""

from __future__ import annotations

from collections.abc import Sequence

from app.look import look

_COMFORTABLE = 92
_TALLEST_MEETING = 44


def share_height(
    least: Sequence[int],
    closed: Sequence[int],
    meetings: Sequence[int],
    opens: tuple[int, int] | None,
    available: int,
) -> tuple[list[int], int]:
    """Spare room goes where it helps; without any, every row has what it needs.

    Parameters
    ----------
    least : sequence of int
        Height every row's head needs, pixels.
    closed, meetings : sequences of int
        Numbers of the closed bands' rows, and of the closed meetings'.
    opens : tuple of int or None
        What the open row opens: least height, and the height beyond which more does nothing.
    available : int

    Returns
    -------
    heights : list of int
        Of the heads.
    detail : int
        Of what the open row opens.
    """
    heights = list(least)
    detail, most = opens or (0, 0)
    spare = available - sum(heights) - detail
    if spare <= 0:
        return heights, detail
    more = (min(most, detail + spare // 2) if closed else most) - detail
    detail, spare = detail + more, spare - more
    # Rows share what is left, as the bands share the sky; first up to a good height.
    spare -= _spread(heights, closed, spare, look().type.grow(_COMFORTABLE))
    if opens is not None:
        more = max(min(spare, most - detail), 0)
        detail, spare = detail + more, spare - more
    spare -= _spread(heights, meetings, spare, look().type.grow(_TALLEST_MEETING))
    left = spare - _spread(heights, closed, spare, None)
    return heights, detail + (0 if closed or opens is None else left)


def _spread(heights: list[int], rows: Sequence[int], spare: int, limit: int | None) -> int:
    """Make rows higher, evenly and up to a limit; what they took of the spare room."""
    taken = 0
    for place, number in enumerate(rows):
        share = max(spare - taken, 0) // (len(rows) - place)
        more = share if limit is None else max(min(share, limit - heights[number]), 0)
        heights[number] += more
        taken += more
    return taken
