"""What stands beside the photo and can be focused: a grip for each line, tags of rivals."""

from __future__ import annotations

import time
from itertools import pairwise

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from app.canvas.geometry import Viewport
from app.canvas.grip import PAD, Grip, RivalTag
from app.canvas.layout import grip_rows
from app.state.document import Gesture
from core.bands.lines import Bands
from core.i18n import translate
from core.reading.percent import percent_text

CLEAR = 4
"""From the photo to the grips; more where some stand aside on stems."""

_CLEAR_WITH_STEMS = 10

# Arrow presses closer together than this are one undo step.
_RUN_S = 1.0


class Grips(QObject):
    """Makes, fills and places grips and tags as children of the canvas.

    Signals
    -------
    edge_moved(edge: int, y: float, gesture: Gesture)
        By arrow or number.
    pressed(edge: int, y_px: float), dragged(y_px: float), released()
        By mouse, rows of the canvas.
    focused(edge: int), split_asked(band: int), remove_asked(edge: int)
    rival_accepted(y: float)
    resized()
    """

    edge_moved = Signal(int, float, object)
    pressed = Signal(int, float)
    dragged = Signal(float)
    released = Signal()
    focused = Signal(int)
    split_asked = Signal(int)
    remove_asked = Signal(int)
    rival_accepted = Signal(float)
    resized = Signal()

    def __init__(self, canvas: QWidget) -> None:
        super().__init__(canvas)
        self._canvas = canvas
        self._grips: list[Grip] = []
        self._tags: list[RivalTag] = []
        self._used = 0
        self._rivals: tuple[float, ...] = ()
        self._run: tuple[int, float, Gesture] | None = None

    @property
    def grips(self) -> tuple[Grip, ...]:
        """The grips in use, top to bottom; the last is the horizon's."""
        return tuple(self._grips[: self._used])

    @property
    def tags(self) -> tuple[RivalTag, ...]:
        """The tags in use."""
        return tuple(self._tags[: len(self._rivals)])

    def show_bands(self, bands: Bands | None, chosen: int) -> None:
        """As many grips as edges, each showing its own."""
        count = bands.count if bands else 0
        made = len(self._grips)
        while len(self._grips) < count:
            self._add_grip()
        if len(self._grips) > made:
            self._order_tabs()
        self._used = count
        if bands is None:
            return
        for edge, grip in enumerate(self.grips):
            grip.show_line(
                bands.edges[edge + 1],
                horizon=edge == count - 1,
                chosen=edge == chosen,
                name=_edge_name(bands, edge),
            )

    def show_rivals(self, rivals: tuple[float, ...]) -> None:
        """A tag for each other height at which the sky may end."""
        self._rivals = rivals
        while len(self._tags) < len(rivals):
            self._add_tag()
        for tag, y in zip(self.tags, rivals, strict=True):
            name = translate("canvas", "Or does the sky end here, at {height}?")
            tag.setAccessibleName(name.format(height=percent_text(y * 100)))
            tag.setToolTip(translate("canvas", "Click if the sky ends here."))

    def place(self, viewport: Viewport, bands: Bands | None, height: int) -> None:
        """Put everything beside the photo, apart from each other; hide what is out of view."""
        widgets: tuple[Grip | RivalTag, ...] = (*self.grips, *self.tags)
        places = (*(bands.edges[1:] if bands else ()), *self._rivals)
        tags = [w.tag_height for w in widgets]
        below = [w.below for w in widgets]
        rows = grip_rows(viewport, places, tags, height, below)
        moved = any(
            row is not None and abs(row - viewport.y_px(y)) > 1
            for row, y in zip(rows, places, strict=True)
        )
        x = round(viewport.visible[2]) + (_CLEAR_WITH_STEMS if moved else CLEAR) - PAD
        for widget, row in zip(widgets, rows, strict=True):
            if row is not None:
                size = widget.sizeHint()
                top = round(row - widget.tag_height / 2) - PAD
                widget.setGeometry(x, top, size.width(), size.height())
            widget.setVisible(row is not None)
        for spare in (*self._grips[self._used :], *self._tags[len(self._rivals) :]):
            spare.hide()

    def _add_grip(self) -> None:
        edge = len(self._grips)
        grip = Grip(self._canvas)
        self._grips.append(grip)
        grip.wanted.connect(lambda y: self.edge_moved.emit(edge, y, self._run_of(edge)))
        grip.pressed.connect(lambda y_px: self.pressed.emit(edge, y_px))
        grip.dragged.connect(self.dragged)
        grip.released.connect(self.released)
        grip.focused.connect(lambda: self.focused.emit(edge))
        grip.split_asked.connect(lambda: self.split_asked.emit(edge))
        grip.remove_asked.connect(lambda: self.remove_asked.emit(edge))
        grip.resized.connect(self.resized)

    def _add_tag(self) -> None:
        index = len(self._tags)
        tag = RivalTag(self._canvas)
        self._tags.append(tag)
        tag.clicked.connect(lambda: self.rival_accepted.emit(self._rivals[index]))
        self._order_tabs()

    def _order_tabs(self) -> None:
        for before, after in pairwise((self._canvas, *self._grips, *self._tags)):
            QWidget.setTabOrder(before, after)

    def _run_of(self, edge: int) -> Gesture:
        """The gesture of a run of arrow presses on one edge."""
        now = time.monotonic()
        gesture = Gesture()
        if self._run is not None and self._run[0] == edge and now - self._run[1] <= _RUN_S:
            gesture = self._run[2]
        self._run = (edge, now, gesture)
        return gesture


def _edge_name(bands: Bands, edge: int) -> str:
    if edge == bands.count - 1:
        return translate("canvas", "Horizon line, percent of the photo's height")
    name = translate(
        "canvas", "Line between bands {upper} and {lower}, percent of the photo's height"
    )
    return name.format(upper=bands.letters[edge], lower=bands.letters[edge + 1])
