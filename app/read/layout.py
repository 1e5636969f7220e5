"""Where the parts of the Read page are.

A photo wider than high stands over the spoken words, charts and table right of both. One that is
higher than wide takes the height there is, and everything else moves to its right.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QStackedLayout, QVBoxLayout, QWidget

from app.canvas.canvas import PhotoCanvas
from app.canvas.view import LEFT_GUTTER, RIGHT_GUTTER
from app.canvas.view import MARGIN as CANVAS_MARGIN
from app.look import look
from app.look.space import GROUP, MARGIN
from app.read.controls import ReadControls
from app.read.status import StatusLine
from app.widgets.layouts import layout_of
from app.widgets.readout import ReadoutTable
from app.widgets.sky_wall import SkyWall
from app.widgets.spoken import SpokenStrip
from app.widgets.wheel import LadderWidget, WheelWidget

RIGHT_SHARE = 0.33
RIGHT_LEAST, RIGHT_MOST = 452, 640
UPRIGHT_FROM = 1.0
"""Width over height up to which a photo counts as upright."""

_LEFT_MOST, _YIELDS = 0.54, 0.9
_BESIDE_FROM = 800
"""Room from which the table stands beside the charts of an upright photo."""

_WHEEL_LEAST, _TABLE_LARGE, _YIELDS_LARGE = 264, 560, 0.72
"""Where text is larger, a wheel of its own column asks more of the photo: else it is tiny."""

_UNLIMITED = (1 << 24) - 1

LYING = 104
"""Height of a ladder that lies below the wheel."""


@dataclass(frozen=True)
class ReadParts:
    """What stands on the page."""

    empty: SkyWall
    controls: ReadControls
    canvas: PhotoCanvas
    status: StatusLine
    strip: SpokenStrip
    wheel: WheelWidget
    ladder: LadderWidget
    table: ReadoutTable


class ReadLayout:
    """Lays the page's parts out, and again when the photo or the size is another."""

    def __init__(self, page: QWidget, body: QWidget, parts: ReadParts) -> None:
        """`body` is shown where there is a photo; the parts are its children but for `empty`."""
        self._parts, self._body = parts, body
        self.top = QStackedLayout(page)
        self.top.addWidget(parts.empty)
        self.top.addWidget(body)
        self._left, self._right = QWidget(body), QWidget(body)
        whole = QVBoxLayout(body)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(0)
        self._across = QHBoxLayout()
        whole.addLayout(self._across)
        columns = QHBoxLayout()
        columns.setSpacing(0)
        columns.addWidget(self._left, 1)
        columns.addWidget(self._right)
        whole.addLayout(columns, 1)
        self._row = QHBoxLayout()
        self._below = QVBoxLayout()
        self._fill_left()
        self._upper = QBoxLayout(QBoxLayout.Direction.TopToBottom)
        self._foot = QVBoxLayout()
        self._fill_right()
        self.upright = False
        self._beside = False
        self._charts = True
        self._put()

    @property
    def lies(self) -> bool:
        """Whether the ladder lies below the wheel."""
        return self._beside

    def show_charts(self, shown: bool) -> None:
        """Whether wheel and ladder stand beside the photo; without them it takes the width.

        Beside an upright photo the words stay: there is room for them.
        """
        self._charts = shown
        self._follow_charts()

    def _follow_charts(self) -> None:
        for chart in (self._parts.wheel, self._parts.ladder):
            chart.setVisible(self._charts)
        self._right.setVisible(self._charts or self.upright)

    def arrange(self, width: int, height: int, aspect: float) -> None:
        """Fit the page's size and the photo's width over height."""
        grow = look().type.grow
        upright = aspect <= UPRIGHT_FROM
        share = min(max(RIGHT_SHARE * width, RIGHT_LEAST), RIGHT_MOST)
        if upright:
            photo = height - self._parts.controls.sizeHint().height() - 16
            photo -= self._parts.status.sizeHint().height() + 4 + 2 * CANVAS_MARGIN
            left = photo * aspect + grow(LEFT_GUTTER) + grow(RIGHT_GUTTER)
            left = min(left, _LEFT_MOST * width)
            # A little of the photo's size buys charts and table their own columns.
            large = look().type.scale > 1.0
            least = _BESIDE_FROM
            if large:
                least = _WHEEL_LEAST + min(grow(RIGHT_LEAST), _TABLE_LARGE)
            beside = width - (_YIELDS_LARGE if large else _YIELDS) * left >= least
            if beside:
                left = min(left, width - least)
            self._left.setFixedWidth(round(left))
            self._right.setMinimumWidth(0)
            self._right.setMaximumWidth(_UNLIMITED)
        else:
            beside = False
            self._right.setFixedWidth(round(min(grow(share), 0.42 * width)))
            self._left.setMinimumWidth(0)
            self._left.setMaximumWidth(_UNLIMITED)
        table = min(grow(share), max(_TABLE_LARGE, round(share)))
        self._parts.table.setMaximumWidth(table if beside else _UNLIMITED)
        if (upright, beside) != (self.upright, self._beside):
            self.upright, self._beside = upright, beside
            self._put()
        elif beside:
            self._parts.ladder.setMaximumHeight(grow(LYING))
        self._follow_charts()
        self._lay_out()
        self._parts.controls.fit()  # what is hidden hears of its size only once it is shown
        self._lay_out()

    def _lay_out(self) -> None:
        for whole in (self._body, self._left, self._right):
            layout_of(whole).activate()

    def _fill_left(self) -> None:
        parts = self._parts
        column = QVBoxLayout(self._left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(self._row)
        column.addWidget(parts.canvas, 1)
        status = QHBoxLayout()
        status.setContentsMargins(60, 0, MARGIN, 4)
        status.addWidget(parts.status)
        column.addLayout(status)
        column.addLayout(self._below)

    def _fill_right(self) -> None:
        parts = self._parts
        column = QVBoxLayout(self._right)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(GROUP)
        self._pair = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._pair.setContentsMargins(12, 10, MARGIN, 0)
        self._pair.setSpacing(GROUP)
        self._pair.addWidget(parts.wheel, 1)
        self._pair.addWidget(parts.ladder)
        self._upper.setSpacing(GROUP)
        self._upper.addLayout(self._pair, 10)
        self._upper.addWidget(parts.table, 12)
        column.addLayout(self._upper, 1)
        column.addLayout(self._foot)

    def _put(self) -> None:
        """Controls and strip where they belong, the table below the charts or beside them."""
        controls, strip = self._parts.controls, self._parts.strip
        for home in (self._across, self._row):
            home.removeWidget(controls)
            home.setContentsMargins(0, 0, 0, 0)
        for below in (self._below, self._foot):
            below.removeWidget(strip)
        row = self._across if self.upright else self._row
        row.setContentsMargins(MARGIN, 10, MARGIN, 6)
        row.addWidget(controls)
        (self._foot if self.upright else self._below).addWidget(strip)
        directions = QBoxLayout.Direction
        self._upper.setDirection(directions.LeftToRight if self._beside else directions.TopToBottom)
        # In a column of their own the wheel takes the width, and the ladder lies below it.
        self._pair.setDirection(directions.TopToBottom if self._beside else directions.LeftToRight)
        ladder = self._parts.ladder
        ladder.setMaximumHeight(look().type.grow(LYING) if self._beside else _UNLIMITED)
