"""Blocks one below the other, over as many pages as they need."""

from __future__ import annotations

from collections.abc import Callable

from app.cards.foot import FOOT, put_foot
from app.cards.page import Page
from app.cards.paper import MM, Paper


class Flow:
    """Where the next block goes.

    Attributes
    ----------
    pages : list of Page
    y : float
        The next block's top on the last page.
    """

    def __init__(self, paper: Paper, begin: Callable[[Page, int], float]) -> None:
        """`begin(page, number)` draws the head of page `number`, from 0; gives its lower end."""
        self._paper = paper
        self._begin = begin
        self.pages: list[Page] = []
        self.y = 0.0
        self.next_page()

    @property
    def page(self) -> Page:
        """The page in hand."""
        return self.pages[-1]

    @property
    def room(self) -> float:
        """What is left of it, the foot apart."""
        return self._paper.inside.bottom() - FOOT - 3.0 * MM - self.y

    def next_page(self) -> None:
        """Begin another page."""
        page = Page(self._paper)
        self.pages.append(page)
        self.y = self._begin(page, len(self.pages) - 1)

    def need(self, height: float) -> None:
        """Begin another page unless so much room is left on this one."""
        if height > self.room:
            self.next_page()

    def end(self) -> tuple[Page, ...]:
        """All pages, with their feet."""
        for number, page in enumerate(self.pages, start=1):
            put_foot(page, number, len(self.pages))
        return tuple(self.pages)
