"""The pages of the window, in the order of their tabs: a new page is one line here."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from importlib import import_module
from typing import TYPE_CHECKING

from core.i18n import translate

if TYPE_CHECKING:
    from app.pages.base import Page, Workspace


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


def later(module: str, name: str) -> Callable[[Workspace], Page]:
    """A page's class by name: its module is imported when the page is first made.

    Every page imports a part of the program that the start need not wait for.
    """

    def make(workspace: Workspace) -> Page:
        page: Page = getattr(import_module(module), name)(workspace)
        return page

    return make


PAGES: tuple[PageKind, ...] = (
    PageKind("read", lambda: translate("pages", "Read"), later("app.pages.read", "ReadPage")),
    PageKind("mix", lambda: translate("pages", "Mix"), later("app.pages.mix", "MixPage")),
    PageKind(
        "sheets", lambda: translate("pages", "Sheets"), later("app.pages.sheets", "SheetsPage")
    ),
    PageKind(
        "worksheet",
        lambda: translate("pages", "Worksheet"),
        later("app.pages.worksheet", "WorksheetPage"),
    ),
)
