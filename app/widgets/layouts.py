"""What Qt may answer with None and never does where it is asked: a widget's own layout."""

from __future__ import annotations

from PySide6.QtWidgets import QBoxLayout, QLayout, QWidget


def layout_of(widget: QWidget) -> QLayout:
    """The layout a widget was given.

    Raises
    ------
    ValueError
        It was given none.
    """
    layout = widget.layout()
    if layout is None:
        raise ValueError(f"{widget} has no layout")
    return layout


def widgets_in(layout: QBoxLayout) -> list[QWidget]:
    """The widgets of a row or column, without its stretches."""
    items = [layout.itemAt(number) for number in range(layout.count())]
    widgets = [None if item is None else item.widget() for item in items]
    return [widget for widget in widgets if widget is not None]


def clear(layout: QLayout) -> None:
    """Take everything out of a row, column or grid, and let its widgets go."""
    while (item := layout.takeAt(0)) is not None:
        widget = item.widget()
        if widget is not None:
            widget.hide()
            widget.deleteLater()
