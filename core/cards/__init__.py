"""What a printed card shows, gathered from a study; drawing it is `app.cards`' work."""

from core.cards.data import KINDS, CardData, Kind
from core.cards.gathering import gather

__all__ = ["KINDS", "CardData", "Kind", "gather"]
