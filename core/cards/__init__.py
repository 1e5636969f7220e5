"""What a printed card shows, gathered from a study; drawing it is `app.cards`' work.

May import everything of `core` but `cli`; `app.cards` imports it.
"""

from core.cards.data import KINDS, CardData, Kind
from core.cards.gathering import gather

__all__ = ["KINDS", "CardData", "Kind", "gather"]
