"""The pages of the window, in the order of their tabs: a new page is one line here."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from importlib import import_module
from typing import TYPE_CHECKING

from core.i18n import translate

if TYPE_CHECKING:
    from app.workspace import Page, Workspace


@dataclass(frozen=True)
class PageKind:
    """A page as the window knows it.

    Attributes
    ----------
    key : str
        Names the page in code and in tests.
    title : callable
        Gives the word on its tab, in the language in use.
    module : str
        Where the page's class is, so that it can be imported ahead.
    make : callable
        Makes the page; called when it is first shown.
    """

    key: str
    title: Callable[[], str]
    module: str
    make: Callable[[Workspace], Page]


def later(module: str, name: str) -> Callable[[Workspace], Page]:
    """A page's class by name: its module is imported when the page is first made.

    Every page imports a part of the program that the start need not wait for.
    """

    def make(workspace: Workspace) -> Page:
        page: Page = getattr(import_module(module), name)(workspace)
        return page

    return make


def _page(key: str, title: Callable[[], str], name: str) -> PageKind:
    module = f"app.{key}.page"
    return PageKind(key, title, module, later(module, name))


PAGES: tuple[PageKind, ...] = (
    _page("read", lambda: translate("pages", "Read"), "ReadPage"),
    _page("mix", lambda: translate("pages", "Mix"), "MixPage"),
    _page("sheets", lambda: translate("pages", "Sheets"), "SheetsPage"),
    _page("worksheet", lambda: translate("pages", "Worksheet"), "WorksheetPage"),
    _page("classset", lambda: translate("pages", "Class"), "ClassSetPage"),
)
