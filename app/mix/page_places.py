"""Where box, rows and plan stand on the Mix page, as plain numbers."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRect

from app.look import look

BOX_WIDTH, BOX_WIDTH_WIDE = 318, 340
PLAN_WIDTH = 384
ROWS_LEAST = 760
"""The plan stands beside the rows where it leaves them this width, wall and strip apart."""

BOX_SHARE_MOST = 0.3
PLAN_SHARE = 0.34
"""Of the page, for the plan laid over a narrow one."""

BAR_LEAST = 54


@dataclass(frozen=True)
class Widths:
    """How the page's width is shared.

    Attributes
    ----------
    box : int
    column : int
        The plan's; 0 where it has no column of its own.
    middle : int
        The rows', and the bar's below them.
    """

    box: int
    column: int
    middle: int


def widths(page: int, wall: int) -> Widths:
    """Share a page's width; `wall` is that of badges and strip."""
    scale = look().type
    box = min(scale.grow(BOX_WIDTH_WIDE if scale.wide else BOX_WIDTH), int(BOX_SHARE_MOST * page))
    column = scale.grow(PLAN_WIDTH)
    if page - box - column - wall < scale.grow(ROWS_LEAST):
        column = 0
    return Widths(box, column, page - box - column)


def plan_place(page: int, height: int, column: int) -> QRect:
    """The plan in its column, or over the page's right side."""
    over = min(max(look().type.grow(PLAN_WIDTH), int(PLAN_SHARE * page)), page - 40)
    width = column or over
    return QRect(page - width, 0, width, height)
