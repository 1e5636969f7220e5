"""The pages of the window, in the order of their tabs: a new page is one line here."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from app.pages.base import Page, Workspace
from app.pages.mix import MixPage
from app.pages.read import ReadPage
from app.pages.sheets import SheetsPage
from app.pages.worksheet import WorksheetPage
from core.i18n import translate


@dataclass(frozen=True)
class PageKind:
    """A page as the window knows it.

    Attributes
    ----------
    key : str
        Names the page in code and in tests.
    title : callable
        Gives the word on its tab, in the language in use.
    make : callable
        Makes the page; called when it is first shown.
    """

    key: str
    title: Callable[[], str]
    make: Callable[[Workspace], Page]


PAGES: tuple[PageKind, ...] = (
    PageKind("read", lambda: translate("pages", "Read"), ReadPage),
    PageKind("mix", lambda: translate("pages", "Mix"), MixPage),
    PageKind("sheets", lambda: translate("pages", "Sheets"), SheetsPage),
    PageKind("worksheet", lambda: translate("pages", "Worksheet"), WorksheetPage),
)
