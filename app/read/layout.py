"""Where the parts of the Read page lie: left photo and spoken words, right charts and table."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QHBoxLayout, QLayout, QStackedLayout, QVBoxLayout, QWidget

from app.look.space import GROUP, MARGIN

if TYPE_CHECKING:
    from app.read.page import ReadPage


def lay_out(page: ReadPage, body: QWidget) -> tuple[QStackedLayout, QWidget]:
    """Lay the page's parts out.

    Parameters
    ----------
    page : ReadPage
        Its parts are made, children of `body`.
    body : QWidget
        Shown where there is a photo, instead of the page's `empty`.

    Returns
    -------
    top : QStackedLayout
        Of `empty` and `body`.
    right : QWidget
        The right column, whose width the page sets.
    """
    top = QStackedLayout(page)
    top.addWidget(page.empty)
    top.addWidget(body)
    right = QWidget(body)
    right.setLayout(_right_column(page))
    columns = QHBoxLayout(body)
    columns.setContentsMargins(0, 0, 0, 0)
    columns.setSpacing(0)
    columns.addLayout(_left_column(page), 1)
    columns.addWidget(right)
    return top, right


def _left_column(page: ReadPage) -> QLayout:
    left = QVBoxLayout()
    left.setContentsMargins(0, 0, 0, 0)
    left.setSpacing(0)
    row = QHBoxLayout()
    row.setContentsMargins(MARGIN, 10, MARGIN, 6)
    row.addWidget(page.controls)
    left.addLayout(row)
    left.addWidget(page.canvas, 1)
    status = QHBoxLayout()
    status.setContentsMargins(60, 0, MARGIN, 4)
    status.addWidget(page.status)
    left.addLayout(status)
    left.addWidget(page.strip)
    return left


def _right_column(page: ReadPage) -> QLayout:
    right = QVBoxLayout()
    right.setContentsMargins(0, 0, 0, 0)
    right.setSpacing(GROUP)
    charts = QHBoxLayout()
    charts.setContentsMargins(12, 10, MARGIN, 0)
    charts.setSpacing(GROUP)
    charts.addWidget(page.wheel, 1)
    charts.addWidget(page.ladder)
    right.addLayout(charts, 10)
    right.addWidget(page.table, 12)
    return right
