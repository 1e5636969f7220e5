"""The photo under the user's hands: lines to drag, letters to press, zoom, the point below."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QWheelEvent
from PySide6.QtWidgets import QWidget

from app.canvas.geometry import Drag, edge_at
from app.canvas.over_wheel import OverWheel
from app.canvas.view import LEFT_GUTTER, RIGHT_GUTTER, PhotoView
from app.drawing.wheel.over import Spot, Surroundings, lay_wheel
from app.look import look
from app.state.document import Gesture
from core.i18n import translate
from core.study import WheelPlace, bounded_wheel

_ZOOM_STEP = 1.2
_LEAST_WHEEL = 150
_BY_KEYS = (
    Qt.FocusReason.TabFocusReason,
    Qt.FocusReason.BacktabFocusReason,
    Qt.FocusReason.ShortcutFocusReason,
)


@dataclass(frozen=True)
class _Held:
    """A line in the user's hand."""

    drag: Drag
    gesture: Gesture


class PhotoCanvas(PhotoView):
    """Shows one photo and its bands; knows neither document nor window.

    Edge i is the lower edge of band i: a line, or for the last band the horizon.

    Signals
    -------
    edge_moved(edge: int, y: float, gesture: Gesture)
        An edge is wanted at this fraction of the photo's height.
    band_chosen(band: int)
    split_asked(band: int), line_asked(y: float), remove_asked(edge: int)
    rival_accepted(y: float)
    hovered(point: tuple[float, float] | None)
        Fractions of the photo under the mouse; None beside it, and on the wheel over it.
    wheel_put(place: WheelPlace, gesture: Gesture)
        The wheel over the photo is wanted there.
    """

    edge_moved = Signal(int, float, object)
    band_chosen = Signal(int)
    split_asked = Signal(int)
    line_asked = Signal(float)
    remove_asked = Signal(int)
    rival_accepted = Signal(float)
    hovered = Signal(object)
    wheel_put = Signal(object, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._held: _Held | None = None
        self._pan_from: QPointF | None = None
        self.wheel = OverWheel(self)
        self._wheel_shown = False
        self._wheel_place: WheelPlace | None = None
        self.wheel.put.connect(self._put_wheel)
        self.wheel.band_chosen.connect(self.band_chosen)
        self.wheel.entered.connect(lambda: self.hovered.emit(None))
        self.setProperty("own_focus", True)
        self._grips.edge_moved.connect(self.edge_moved)
        self._grips.pressed.connect(self._take)
        self._grips.dragged.connect(self._drag_to)
        self._grips.released.connect(self._let_go)
        self._grips.focused.connect(self.band_chosen)
        self._grips.split_asked.connect(self.split_asked)
        self._grips.remove_asked.connect(self.remove_asked)
        self._grips.rival_accepted.connect(self.rival_accepted)
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(translate("canvas", "Photo with band lines"))
        self.setAccessibleDescription(
            translate(
                "canvas",
                "Arrows choose a band, Tab goes to its line, Insert splits the band, "
                "Delete removes the line below it.",
            )
        )

    @property
    def dragging(self) -> bool:
        """Whether a line is in the user's hand."""
        return self._held is not None

    # The wheel over the photo

    def show_wheel(self, shown: bool) -> None:
        """Lay the wheel over the photo, or take it away."""
        self._wheel_shown = shown
        self._place_wheel()

    def put_wheel(self, place: WheelPlace | None) -> None:
        """Where it lies; None lets it find its place."""
        if place != self._wheel_place:
            self._wheel_place = place
            self._place_wheel()

    @property
    def wheel_crowded(self) -> bool:
        """It should be shown, and there is no room off the chosen band."""
        return self._wheel_shown and self._bands is not None and self.wheel.spot is None

    def _place(self) -> None:
        super()._place()
        self._place_wheel()

    def _place_wheel(self) -> None:
        if not hasattr(self, "wheel"):
            return  # the view places itself before there is a wheel
        around = self._around_wheel() if self._wheel_shown else None
        spot = None
        if around is not None:
            left, top, width, height = self._fitted_photo()
            place, wanted = self._wheel_place, None
            if place is not None:
                wanted = Spot(left + place.x * width, top + place.y * height, place.size * height)
            spot = lay_wheel(around, wanted)
        if spot != self.wheel.spot:
            self.wheel.place(spot)
            half = spot.size / 2 if spot is not None else 0.0
            self._covered = (
                QRectF(spot.x - half, spot.y - half, spot.size, spot.size) if spot else None
            )
            self.update()

    def _fitted_photo(self) -> tuple[float, float, float, float]:
        """The whole photo's left, top, width and height: the wheel does not move with the zoom."""
        view = self._viewport.fitted()
        return view.photo_left, view.photo_top, view.shown_width, view.shown_height

    def _around_wheel(self) -> Surroundings | None:
        if self._bands is None or self._picture is None:
            return None
        view, edges = self._viewport, self._bands.edges
        photo = view.visible
        lit = (view.y_px(edges[self._chosen]), view.y_px(edges[self._chosen + 1]))
        grow = look().type.grow
        return Surroundings(
            area=(4, 4, self.width() - 4, self.height() - 4),
            photo=photo,
            ground=min(max(view.y_px(edges[-1]), photo[1]), photo[3]),
            lit=(min(max(lit[0], photo[1]), photo[3]), min(max(lit[1], photo[1]), photo[3])),
            beside=(grow(LEFT_GUTTER), grow(RIGHT_GUTTER)),
            least=grow(_LEAST_WHEEL),
        )

    def _put_wheel(self, spot: Spot, gesture: Gesture) -> None:
        left, top, width, height = self._fitted_photo()
        place = WheelPlace((spot.x - left) / width, (spot.y - top) / height, spot.size / height)
        self.wheel_put.emit(bounded_wheel(place), gesture)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        if event.button() == Qt.MouseButton.MiddleButton:
            self._pan_from = at
            return
        if event.button() != Qt.MouseButton.LeftButton or self._bands is None:
            return
        edge = self._edge_under(at)
        if edge is not None:
            self._take(edge, at.y())
            return
        band = self._bands.band_at(self._viewport.y_of(at.y()))
        if band is not None and at.x() <= self._viewport.visible[2]:
            self.band_chosen.emit(band)
        if self._viewport.zoom > 1.0:
            self._pan_from = at

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        if self._held is not None:
            self._drag_to(at.y())
        elif self._pan_from is not None:
            moved = at - self._pan_from
            self._pan_from = at
            self._set_viewport(self._viewport.panned(moved.x(), moved.y()))
        else:
            self._hover(at)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._let_go()
        self._pan_from = None
        self._hover(event.position())

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        if (
            event.button() == Qt.MouseButton.LeftButton
            and self._bands is not None
            and self._edge_under(at) is None
            and self._on_photo(at)
            and self._viewport.y_of(at.y()) < self._bands.horizon
        ):
            self.line_asked.emit(self._viewport.y_of(at.y()))

    def wheelEvent(self, event: QWheelEvent) -> None:
        if self._picture is None:
            event.ignore()
            return
        pixels = event.pixelDelta()
        control = event.modifiers() & Qt.KeyboardModifier.ControlModifier
        if not pixels.isNull() and not control and self._viewport.zoom > 1.0:
            self._set_viewport(self._viewport.panned(pixels.x(), pixels.y()))
        else:
            self.zoom(_ZOOM_STEP ** (event.angleDelta().y() / 120), event.position())
        event.accept()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._bands is None:
            super().keyPressEvent(event)
            return
        match event.key():
            case Qt.Key.Key_Up:
                self.band_chosen.emit(max(self._chosen - 1, 0))
            case Qt.Key.Key_Down:
                self.band_chosen.emit(min(self._chosen + 1, self._bands.count - 1))
            case Qt.Key.Key_Insert:
                self.split_asked.emit(self._chosen)
            case Qt.Key.Key_Delete:
                self.remove_asked.emit(self._chosen)
            case Qt.Key.Key_Escape if self._held is not None:
                held, self._held = self._held, None
                self.edge_moved.emit(held.drag.edge, held.drag.start, held.gesture)
            case _:
                super().keyPressEvent(event)

    def _take(self, edge: int, y_px: float) -> None:
        if self._bands is None:
            return
        drag = Drag.begin(self._viewport, edge, self._bands.edges[edge + 1], y_px)
        self._held = _Held(drag, Gesture())
        self.band_chosen.emit(edge)

    def _drag_to(self, y_px: float) -> None:
        if self._held is not None:
            y = self._held.drag.height_at(self._viewport, y_px)
            self.edge_moved.emit(self._held.drag.edge, y, self._held.gesture)

    def _let_go(self) -> None:
        self._held = None

    def _hover(self, at: QPointF) -> None:
        if self._edge_under(at) is not None:
            self.setCursor(Qt.CursorShape.SizeVerCursor)
        else:
            self.unsetCursor()
        on_photo = self._picture is not None and self._on_photo(at)
        point = (self._viewport.x_of(at.x()), self._viewport.y_of(at.y())) if on_photo else None
        self.hovered.emit(point)

    def _edge_under(self, at: QPointF) -> int | None:
        if self._bands is None:
            return None
        return edge_at(self._viewport, self._bands.edges[1:], at.x(), at.y())

    def _on_photo(self, at: QPointF) -> bool:
        left, top, right, bottom = self._viewport.visible
        return left <= at.x() < right and top <= at.y() < bottom

    def focusInEvent(self, event: QFocusEvent) -> None:
        # Only who moves by keys needs the ring.
        self._show_focus = event.reason() in _BY_KEYS
        super().focusInEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self._show_focus = False
        super().focusOutEvent(event)

    def leaveEvent(self, event: QEvent) -> None:
        self.hovered.emit(None)
