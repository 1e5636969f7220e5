"""Rows that become columns where they lack room."""

from __future__ import annotations

from PySide6.QtWidgets import QBoxLayout, QWidget

from app.widgets.layouts import layout_of


def turn(layout: QBoxLayout, across: bool, widget: QWidget) -> None:
    """Lay out in a row, or in a column; `widget` is the one that owns the layout."""
    directions = QBoxLayout.Direction
    wanted = directions.LeftToRight if across else directions.TopToBottom
    if layout.direction() == wanted:
        return
    layout.setDirection(wanted)
    # The layouts around it keep heights they asked for before.
    layout_of(widget).invalidate()
    widget.updateGeometry()
