"""The wheel and the ladder as widgets: they show a view and say which band was pressed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Generic, TypeVar

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QHelpEvent,
    QImage,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPixmap,
)
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from app.drawing.ink import kept
from app.drawing.ladder import (
    LadderGeometry,
    LadderMark,
    LadderView,
    ladder_geometry,
    ladder_hit,
    ladder_pieces,
    paint_ladder_ground,
)
from app.drawing.pieces import Piece, changed, copy_region, paint_pieces
from app.drawing.wheel.layout import wedge_at, wheel_geometry, wheel_hit
from app.drawing.wheel.shape import (
    WheelGeometry,
    WheelMarker,
    WheelView,
)
from app.drawing.wheel.wheel import paint_wheel_ground, wheel_pieces
from app.look import look
from app.look.theme import WALL
from core.i18n import translate

View = TypeVar("View", WheelView, LadderView)
Geometry = TypeVar("Geometry", WheelGeometry, LadderGeometry)


class _BandChart(QWidget, Generic[View, Geometry]):
    """A view of the bands; one is chosen by mouse and by arrow keys."""

    band_chosen = Signal(int)

    def __init__(self, name: str, across: QSizePolicy.Policy, parent: QWidget | None) -> None:
        super().__init__(parent)
        self._view: View | None = None
        self._geometry: Geometry | None = None
        self._pieces: tuple[Piece, ...] | None = None
        self._still: QPixmap | None = None
        self._still_key: object = None
        # The ground covers all of it: what is behind need not be drawn while a line is dragged.
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setProperty("ground", "wall")
        self.setSizePolicy(across, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(name)

    def set_view(self, view: View | None, description: str = "") -> None:
        """Show a view; `description` is what a screen reader says of it."""
        if self.accessibleDescription() != description:
            self.setAccessibleDescription(description)
        view = view if view is None else self._to_read(view)
        if view == self._view:
            return
        before, drawn = self._view, self._pieces
        self._view, self._geometry, self._pieces = view, None, None
        if view is None or before is None or drawn is None:
            self.update()
            return
        region = changed(drawn, self._pieces_now)
        if region is None or self._ground_key(before) != self._ground_key(view):
            self.update()
        elif not region.isEmpty():
            self.update(region)

    @property
    def layout_now(self) -> Geometry | None:
        """Where everything is at the widget's present size."""
        if self._geometry is None and self._view is not None:
            self._geometry = self._lay_out(QRectF(self.rect()), self._view)
        return self._geometry

    @property
    def _pieces_now(self) -> tuple[Piece, ...]:
        """The bands upon the ground."""
        if self._pieces is None:
            geometry = self.layout_now
            if self._view is None or geometry is None:
                return ()
            self._pieces = self._pieces_of(self._view, geometry)
        return self._pieces

    def resizeEvent(self, event: QEvent) -> None:
        self._geometry = self._pieces = None

    def paintEvent(self, event: QPaintEvent) -> None:
        view, geometry = self._view, self.layout_now
        painter = QPainter(self)
        if view is None or geometry is None:
            painter.fillRect(self.rect(), QColor(WALL))
            painter.end()
            return
        ground = self._ground(
            self._ground_key(view), lambda on: self._paint_ground(on, view, geometry)
        )
        # Only what changed is drawn anew: a dragged line leaves most bands alone.
        copy_region(painter, ground, event.region())
        with kept(painter):
            paint_pieces(painter, self._pieces_now, event.region())
        painter.end()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and self._view is not None:
            self._view, self._geometry, self._pieces = self._to_read(self._view), None, None
            self.updateGeometry()
            self.update()

    def _to_read(self, view: View) -> View:
        """The view with text as large as the reader wants it."""
        raise NotImplementedError

    def _lay_out(self, area: QRectF, view: View) -> Geometry:
        raise NotImplementedError

    def _ground_key(self, view: View) -> object:
        """All of the view that the ground depends on."""
        raise NotImplementedError

    def _paint_ground(self, painter: QPainter, view: View, geometry: Geometry) -> None:
        raise NotImplementedError

    def _pieces_of(self, view: View, geometry: Geometry) -> tuple[Piece, ...]:
        raise NotImplementedError

    def _marks_of(self, view: View) -> tuple[WheelMarker, ...] | tuple[LadderMark, ...]:
        raise NotImplementedError

    def _hit_in(self, geometry: Geometry, point: QPointF) -> int | None:
        raise NotImplementedError

    def _ground(self, key: object, paint: Callable[[QPainter], None]) -> QPixmap:
        """What stays while the bands move, drawn once for each key, size and look."""
        ratio = self.devicePixelRatioF()
        key = (key, self.size(), ratio, look())
        if key != self._still_key or self._still is None:
            self._still = QPixmap(self.size() * ratio)
            self._still.setDevicePixelRatio(ratio)
            self._still.fill(Qt.GlobalColor.transparent)
            painter = QPainter(self._still)
            paint(painter)
            # The wall behind it all, so that copying it is enough.
            painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_DestinationOver)
            painter.fillRect(self.rect(), QColor(WALL))
            painter.end()
            # Without a share of see-through in each pixel it is copied, not mixed.
            self._still = QPixmap.fromImage(
                self._still.toImage().convertToFormat(QImage.Format.Format_RGB32)
            )
            self._still_key = key
        return self._still

    def _chosen(self) -> int | None:
        return self._view.chosen if self._view is not None else None

    def _hit(self, point: QPointF) -> int | None:
        geometry = self.layout_now
        return self._hit_in(geometry, point) if geometry is not None else None

    def _marks(self) -> tuple[WheelMarker, ...] | tuple[LadderMark, ...]:
        return self._marks_of(self._view) if self._view is not None else ()

    def _count(self) -> int:
        """How many bands have a mark: second colours come after them."""
        return sum(not mark.second for mark in self._marks())

    def _band(self, index: int) -> int:
        band = self._marks()[index].band
        return index if band is None else band

    def mousePressEvent(self, event: QMouseEvent) -> None:
        index = self._hit(event.position())
        if index is not None and event.button() == Qt.MouseButton.LeftButton:
            self.band_chosen.emit(self._band(index))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        over = self._hit(event.position()) is not None
        self.setCursor(Qt.CursorShape.PointingHandCursor if over else Qt.CursorShape.ArrowCursor)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = {
            Qt.Key.Key_Down: 1,
            Qt.Key.Key_Right: 1,
            Qt.Key.Key_Up: -1,
            Qt.Key.Key_Left: -1,
        }.get(Qt.Key(event.key()))
        if step is None or not self._count():
            super().keyPressEvent(event)
            return
        chosen = self._chosen()
        wanted = 0 if chosen is None else min(max(chosen + step, 0), self._count() - 1)
        if wanted != chosen:
            self.band_chosen.emit(self._band(wanted))


class WheelWidget(_BandChart[WheelView, WheelGeometry]):
    """The painter's wheel with one marker a band.

    Signals
    -------
    band_chosen(int)
        A marker was pressed, or an arrow key moved on from the chosen one.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(translate("wheel", "Colour wheel"), QSizePolicy.Policy.Expanding, parent)

    def sizeHint(self) -> QSize:
        return QSize(310, 310)

    def minimumSizeHint(self) -> QSize:
        return QSize(160, 160)

    def _to_read(self, view: WheelView) -> WheelView:
        return replace(view, text=look().type.scale)

    def _lay_out(self, area: QRectF, view: WheelView) -> WheelGeometry:
        return wheel_geometry(area, view)

    def _ground_key(self, view: WheelView) -> object:
        return (
            view.colours,
            view.names,
            view.lit,
            view.muted,
            view.show_names,
            view.waiting,
            view.px,
            view.text,
        )

    def _paint_ground(self, painter: QPainter, view: WheelView, geometry: WheelGeometry) -> None:
        paint_wheel_ground(painter, view, geometry)

    def _pieces_of(self, view: WheelView, geometry: WheelGeometry) -> tuple[Piece, ...]:
        return wheel_pieces(view, geometry)

    def _marks_of(self, view: WheelView) -> tuple[WheelMarker, ...]:
        return view.markers

    def _hit_in(self, geometry: WheelGeometry, point: QPointF) -> int | None:
        return wheel_hit(geometry, point)

    def event(self, event: QEvent) -> bool:
        is_tip = event.type() == QEvent.Type.ToolTip  # "What is this?" is a help event as well
        if is_tip and isinstance(event, QHelpEvent) and self._view is not None:
            geometry = self.layout_now
            place = QPointF(event.pos())
            wedge = wedge_at(geometry, place) if geometry is not None else None
            if wedge is not None and (self._view.lit is None or wedge in self._view.lit):
                QToolTip.showText(event.globalPos(), self._view.names[wedge], self)
            else:
                QToolTip.hideText()
            return True
        return super().event(event)


class LadderWidget(_BandChart[LadderView, LadderGeometry]):
    """The value ladder with one letter a band.

    Signals
    -------
    band_chosen(int)
        A letter was pressed, or an arrow key moved on from the chosen one.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(translate("ladder", "Value ladder"), QSizePolicy.Policy.Preferred, parent)

    def sizeHint(self) -> QSize:
        across = self._view is not None and self._view.across
        return QSize(450, look().type.grow(104)) if across else QSize(look().type.grow(94), 310)

    def minimumSizeHint(self) -> QSize:
        across = self._view is not None and self._view.across
        return QSize(200, look().type.grow(96)) if across else QSize(look().type.grow(78), 160)

    def _to_read(self, view: LadderView) -> LadderView:
        return replace(view, scale=look().type.scale)

    def _lay_out(self, area: QRectF, view: LadderView) -> LadderGeometry:
        geometry = ladder_geometry(area, view)
        # Letters that crowd give way to each other: on whole pixels most stay where they are
        # while one of them moves by a hair, and stand in the middle of their discs.
        letters = tuple(QPointF(letter.toPoint()) for letter in geometry.letters)
        return replace(geometry, letters=letters)

    def _ground_key(self, view: LadderView) -> object:
        return (
            view.white_is,
            view.ends,
            view.across,
            view.px,
            view.numbers,
            view.tag_text,
            view.letter_px,
            view.scale,
        )

    def _paint_ground(self, painter: QPainter, view: LadderView, geometry: LadderGeometry) -> None:
        paint_ladder_ground(painter, view, geometry)

    def _pieces_of(self, view: LadderView, geometry: LadderGeometry) -> tuple[Piece, ...]:
        return ladder_pieces(view, geometry)

    def _marks_of(self, view: LadderView) -> tuple[LadderMark, ...]:
        return view.marks

    def _hit_in(self, geometry: LadderGeometry, point: QPointF) -> int | None:
        return ladder_hit(geometry, point)


def _preview() -> QWidget:
    from PySide6.QtWidgets import QHBoxLayout

    from app.drawing.views import ladder_view, wheel_view
    from app.widgets.preview import sample_readings
    from core.reading.wording import Wording

    readings = sample_readings()
    page = QWidget()
    page.setProperty("ground", "wall")
    page.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
    row = QHBoxLayout(page)
    wheel, ladder = WheelWidget(), LadderWidget()

    def choose(number: int) -> None:
        wheel.set_view(wheel_view(readings, number))
        ladder.set_view(ladder_view(readings, Wording(), number))

    for chart in (wheel, ladder):
        chart.band_chosen.connect(choose)
        row.addWidget(chart)
    choose(2)
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 452, 338))
