"""How long the rest of many pictures will take, in words."""

from __future__ import annotations

from core.i18n import translate


def time_left(done: int, of: int, seconds: float) -> str:
    """How long the rest will take at the pace so far.

    >>> time_left(10, 60, 8.0)
    'about 1 minute left'
    """
    rest = seconds / max(done, 1) * (of - done)
    if rest < 50:
        text = translate("class set", "about {n} seconds left")
        return text.format(n=max(5, 5 * round(rest / 5)))
    minutes = max(1, round(rest / 60))
    one = translate("class set", "about {n} minute left")
    more = translate("class set", "about {n} minutes left")
    return (one if minutes == 1 else more).format(n=minutes)
