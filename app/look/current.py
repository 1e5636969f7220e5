"""The look in force, as the application's palette is: one, for every window.

`apply_look` hands Qt the font, palette and stylesheet, which sends every widget a StyleChange;
widgets that paint themselves read `look()` whenever they measure or paint, so they keep no copy.
"""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field

from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QApplication, QStyleFactory

from app.fonts import load_fonts
from app.look.stylesheet import stylesheet
from app.look.theme import LIGHT, Theme
from app.look.type import TypeScale


@dataclass(frozen=True)
class Look:
    """A theme and a type scale."""

    theme: Theme = LIGHT
    type: TypeScale = field(default_factory=TypeScale)


_current = Look()


def look() -> Look:
    """The look in force."""
    return _current


def _palette(theme: Theme) -> QPalette:
    palette = QPalette()
    roles = QPalette.ColorRole
    for role, colour in {
        roles.Window: theme.paper,
        roles.WindowText: theme.ink,
        roles.Base: theme.raised,
        roles.AlternateBase: theme.paper,
        roles.Text: theme.ink,
        roles.Button: theme.raised,
        roles.ButtonText: theme.ink,
        roles.BrightText: theme.ink,
        roles.ToolTipBase: theme.ink,
        roles.ToolTipText: theme.on_ink,
        roles.PlaceholderText: theme.second,
        roles.Highlight: theme.ink,
        roles.HighlightedText: theme.on_ink,
        roles.Link: theme.ink,
        roles.LinkVisited: theme.ink,
        roles.Light: theme.raised,
        roles.Midlight: theme.paper,
        roles.Mid: theme.rule,
        roles.Dark: theme.edge,
        roles.Shadow: theme.edge,
        roles.Accent: theme.ink,
    }.items():
        palette.setColor(role, QColor(colour))
    for role in (roles.WindowText, roles.Text, roles.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, role, QColor(theme.second))
    return palette


def apply_look(app: QApplication, new: Look) -> None:
    """Put a look in force for the whole application.

    Loads the typeface first. The style is Fusion on every system: the native ones would draw
    their own accent colour into what we do not paint ourselves.
    """
    global _current
    load_fonts()
    _current = new
    if app.style().objectName() != "fusion" and not app.styleSheet():
        app.setStyle(QStyleFactory.create("Fusion"))
    with _no_collecting():
        app.setPalette(_palette(new.theme))
        app.setFont(new.type.font("control"))
        app.setStyleSheet(stylesheet(new.theme, new.type))


@contextmanager
def _no_collecting() -> Iterator[None]:
    """Qt walks over a list of all widgets and our event handlers run meanwhile: a widget that
    Python's collector took away there would be visited when it is gone, which ends the program."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()
