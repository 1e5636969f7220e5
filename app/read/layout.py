"""Where the parts of the Read page are: left photo and spoken words, right charts and table."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtWidgets import QHBoxLayout, QLayout, QStackedLayout, QVBoxLayout, QWidget

from app.canvas.canvas import PhotoCanvas
from app.look.space import GROUP, MARGIN
from app.read.controls import ReadControls
from app.read.status import StatusLine
from app.widgets.notice import EmptyState
from app.widgets.readout import ReadoutTable
from app.widgets.spoken import SpokenStrip
from app.widgets.wheel import LadderWidget, WheelWidget


@dataclass(frozen=True)
class ReadParts:
    """What stands on the page."""

    empty: EmptyState
    controls: ReadControls
    canvas: PhotoCanvas
    status: StatusLine
    strip: SpokenStrip
    wheel: WheelWidget
    ladder: LadderWidget
    table: ReadoutTable


def lay_out(page: QWidget, body: QWidget, parts: ReadParts) -> tuple[QStackedLayout, QWidget]:
    """Lay the page's parts out.

    Parameters
    ----------
    page : QWidget
    body : QWidget
        Shown where there is a photo, instead of `parts.empty`.
    parts : ReadParts
        Children of `body`, but for `empty`, which is the page's.

    Returns
    -------
    top : QStackedLayout
        Of `empty` and `body`.
    right : QWidget
        The right column, whose width the page sets.
    """
    top = QStackedLayout(page)
    top.addWidget(parts.empty)
    top.addWidget(body)
    right = QWidget(body)
    right.setLayout(_right_column(parts))
    columns = QHBoxLayout(body)
    columns.setContentsMargins(0, 0, 0, 0)
    columns.setSpacing(0)
    columns.addLayout(_left_column(parts), 1)
    columns.addWidget(right)
    return top, right


def _left_column(parts: ReadParts) -> QLayout:
    left = QVBoxLayout()
    left.setContentsMargins(0, 0, 0, 0)
    left.setSpacing(0)
    row = QHBoxLayout()
    row.setContentsMargins(MARGIN, 10, MARGIN, 6)
    row.addWidget(parts.controls)
    left.addLayout(row)
    left.addWidget(parts.canvas, 1)
    status = QHBoxLayout()
    status.setContentsMargins(60, 0, MARGIN, 4)
    status.addWidget(parts.status)
    left.addLayout(status)
    left.addWidget(parts.strip)
    return left


def _right_column(parts: ReadParts) -> QLayout:
    right = QVBoxLayout()
    right.setContentsMargins(0, 0, 0, 0)
    right.setSpacing(GROUP)
    charts = QHBoxLayout()
    charts.setContentsMargins(12, 10, MARGIN, 0)
    charts.setSpacing(GROUP)
    charts.addWidget(parts.wheel, 1)
    charts.addWidget(parts.ladder)
    right.addLayout(charts, 10)
    right.addWidget(parts.table, 12)
    return right
