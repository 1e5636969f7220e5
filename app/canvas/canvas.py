"""The photo on its wall: band lines to drag, grips, brackets, zoom and the point under the mouse."""

from __future__ import annotations

import time
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.canvas.backdrop import Backdrop
from app.canvas.geometry import Drag, Viewport, edge_at, spread_within
from app.canvas.grip import PAD, Grip, RivalTag
from app.canvas.images import Pyramid
from app.canvas.painting import (
    LineView,
    paint_bracket,
    paint_lines,
    paint_rival,
    paint_stem,
    paint_veil_words,
)
from app.document import Gesture
from app.look import look
from app.look.type import FIRST
from app.paint.badge import BadgeView, paint_badge
from core.bands.lines import Bands
from core.i18n import translate

LEFT_GUTTER = 60
RIGHT_GUTTER = 100
BADGE_RADIUS = 14
VEIL_SHARE = 0.66

# Arrow presses closer together than this are one undo step.
_RUN_S = 1.0
_ZOOM_STEP = 1.2


@dataclass
class _Held:
    """A line in the user's hand."""

    drag: Drag
    gesture: Gesture


class PhotoCanvas(QWidget):
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
        Fractions of the photo under the mouse; None beside it.
    zoom_changed(zoom: float)
    """

    edge_moved = Signal(int, float, object)
    band_chosen = Signal(int)
    split_asked = Signal(int)
    line_asked = Signal(float)
    remove_asked = Signal(int)
    rival_accepted = Signal(float)
    hovered = Signal(object)
    zoom_changed = Signal(float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._photo: Pyramid | None = None
        self._veil: Pyramid | None = None
        self._bands: Bands | None = None
        self._chosen = 0
        self._rivals: tuple[float, ...] = ()
        self._viewport = Viewport(3, 2, 0, 0, 300, 200)
        self._backdrop = Backdrop()
        self._held: _Held | None = None
        self._pan_from: QPointF | None = None
        self._run: tuple[int, float, Gesture] | None = None
        self._grips: list[Grip] = []
        self._tags: list[RivalTag] = []
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(translate("canvas", "Photo with band lines"))
        self.setAccessibleDescription(
            translate(
                "canvas",
                "Arrows choose a band, Tab goes to its line, Insert splits the band, "
                "Delete removes the line below it.",
            )
        )

    # What is shown

    def set_photo(self, photo: Pyramid, width: int, height: int) -> None:
        """Show another photo, whole; `width` and `height` only give its proportions."""
        self._photo, self._veil = photo, None
        self._viewport = Viewport(width, height, 0, 0, 300, 200)
        self._fit_area()
        self.zoom_changed.emit(1.0)

    def set_picture(self, picture: Pyramid) -> None:
        """Show the same photo in other colours (values, squint); the view of it stays."""
        self._photo = picture
        self.update()

    def set_veil(self, veil: Pyramid | None) -> None:
        """Cover what is not sky."""
        self._veil = veil
        self.update()

    def set_bands(self, bands: Bands | None) -> None:
        """Show these lines; None while there are none yet."""
        if bands == self._bands:
            return
        self._bands = bands
        self._chosen = min(self._chosen, bands.count - 1) if bands else 0
        self._match_grips()
        self.update()

    def set_chosen(self, band: int) -> None:
        """Show a band as the chosen one."""
        if band != self._chosen:
            self._chosen = band
            self._match_grips()
            self.update()

    def set_rivals(self, rivals: tuple[float, ...]) -> None:
        """Show other places where the sky may end."""
        self._rivals = rivals
        while len(self._tags) < len(rivals):
            tag = RivalTag(self)
            self._tags.append(tag)
            tag.clicked.connect(lambda _=False, i=len(self._tags) - 1: self._accept(i))
        for tag, y in zip(self._tags, rivals, strict=False):
            tag.setAccessibleName(
                translate("canvas", "Or does the sky end here, at {percent} %?").format(
                    percent=round(y * 100)
                )
            )
            tag.setToolTip(translate("canvas", "Click if the sky ends here."))
        self._place()
        self.update()

    @property
    def viewport(self) -> Viewport:
        """How the photo lies on the canvas."""
        return self._viewport

    @property
    def grips(self) -> tuple[Grip, ...]:
        """The grips in use, top to bottom; the last is the horizon's."""
        return tuple(self._grips[: self._bands.count]) if self._bands else ()

    @property
    def rival_tags(self) -> tuple[RivalTag, ...]:
        """The tags in use."""
        return tuple(self._tags[: len(self._rivals)])

    # Zoom

    def zoom(self, factor: float, at: QPointF | None = None) -> None:
        """Larger or smaller around `at`, or around the middle."""
        view = self._viewport
        at = at or QPointF(view.left + view.width / 2, view.top + view.height / 2)
        self._set_viewport(view.zoomed(factor, at.x(), at.y()))

    def zoom_to_fit(self) -> None:
        """The whole photo."""
        self._set_viewport(self._viewport.fitted())

    # Qt

    def sizeHint(self) -> QSize:
        return QSize(900, 520)

    def minimumSizeHint(self) -> QSize:
        return QSize(360, 220)

    def resizeEvent(self, event: QEvent) -> None:
        self._fit_area()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self._fit_area()

    def leaveEvent(self, event: QEvent) -> None:
        self.hovered.emit(None)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        if event.button() == Qt.MouseButton.MiddleButton:
            self._pan_from = at
            return
        if event.button() != Qt.MouseButton.LeftButton or self._bands is None:
            return
        edge = edge_at(self._viewport, self._bands.edges[1:], at.x(), at.y())
        if edge is not None:
            self._take(edge, at.y())
            return
        band = self._band_under(at)
        if band is not None:
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
        self._held = None
        self._pan_from = None
        self._hover(event.position())

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        if event.button() != Qt.MouseButton.LeftButton or self._bands is None:
            return
        over_line = edge_at(self._viewport, self._bands.edges[1:], at.x(), at.y()) is not None
        if not over_line and self._band_under(at) is not None and self._on_photo(at):
            self.line_asked.emit(self._viewport.y_of(at.y()))

    def wheelEvent(self, event: QWheelEvent) -> None:
        if self._photo is None:
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
                self._let_go_where_it_was()
            case _:
                super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.drawPixmap(
            0,
            0,
            self._backdrop.pixmap(
                self.size(),
                self.devicePixelRatioF(),
                self._viewport,
                theme.wall,
                self._photo,
                self._veil,
            ),
        )
        if self._bands is None or self._photo is None:
            return
        left, top, right, bottom = self._viewport.visible
        painter.save()
        painter.setClipRect(QRectF(left, top, right - left, bottom - top))
        self._paint_ground(painter, left, right, bottom)
        for y in self._rivals:
            paint_rival(painter, left, right, self._viewport.y_px(y))
        painter.restore()
        paint_lines(painter, self._line_views())
        self._paint_letters(painter, left, top, bottom)

    # Drawing

    def _paint_ground(self, painter: QPainter, left: float, right: float, bottom: float) -> None:
        top = self._viewport.y_px(self._bands.edges[-1])
        if top >= bottom:
            return
        ground = QRectF(left, top, right - left, bottom - top)
        if self._veil is None:
            veil = QColor(look().theme.wall)
            veil.setAlphaF(VEIL_SHARE)
            painter.fillRect(ground, veil)
        paint_veil_words(
            painter,
            ground,
            look().type.font("control", FIRST),
            translate("canvas", "Not sky: left out of the readings"),
        )

    def _line_views(self) -> list[LineView]:
        left, top, right, bottom = self._viewport.visible
        views = []
        for edge, (y, grip) in enumerate(zip(self._bands.edges[1:], self.grips, strict=True)):
            y_px = self._viewport.y_px(y)
            if not grip.isVisibleTo(self):
                continue
            last = edge == self._bands.count - 1
            views.append(
                LineView(
                    left,
                    right,
                    min(max(y_px, top), bottom),
                    grip.x() + PAD + 1,
                    grip.y() + grip.height() / 2,
                    heavy=last or edge == self._chosen,
                )
            )
        return views

    def _paint_letters(self, painter: QPainter, left: float, top: float, bottom: float) -> None:
        rows = []
        for band in range(self._bands.count):
            upper = max(self._viewport.y_px(self._bands.edges[band]), top)
            lower = min(self._viewport.y_px(self._bands.edges[band + 1]), bottom)
            if lower - upper >= 1:
                rows.append((band, upper, lower))
        grow = look().type.grow
        radius = grow(BADGE_RADIUS)
        middles = spread_within(
            [(upper + lower) / 2 for _, upper, lower in rows],
            [2 * radius] * len(rows),
            4,
            2,
            self.height() - 2,
        )
        for (band, upper, lower), middle in zip(rows, middles, strict=True):
            chosen = band == self._chosen
            bracket_x = left - 10
            badge_x = left - 14 - grow(2) - radius
            paint_bracket(painter, bracket_x, upper, lower, chosen)
            if not upper <= middle <= lower:
                paint_stem(
                    painter,
                    QPointF(badge_x + radius, middle),
                    QPointF(bracket_x, (upper + lower) / 2),
                )
            paint_badge(
                painter,
                QPointF(badge_x, middle),
                radius,
                BadgeView(letter=self._bands.letters[band], chosen=chosen),
            )

    # Layout

    def _fit_area(self) -> None:
        grow = look().type.grow
        left, right, margin = grow(LEFT_GUTTER), grow(RIGHT_GUTTER), 8
        self._set_viewport(
            self._viewport.resized(
                left,
                margin,
                max(self.width() - left - right, 80),
                max(self.height() - 2 * margin, 80),
            )
        )

    def _set_viewport(self, viewport: Viewport) -> None:
        zoomed = viewport.zoom != self._viewport.zoom
        self._viewport = viewport
        self._place()
        self.update()
        if zoomed:
            self.zoom_changed.emit(viewport.zoom)

    def _match_grips(self) -> None:
        """As many grips as edges, each showing its own."""
        bands = self._bands
        count = bands.count if bands else 0
        while len(self._grips) < count:
            self._add_grip()
        for edge in range(count):
            self._grips[edge].show_line(
                bands.edges[edge + 1],
                horizon=edge == count - 1,
                chosen=edge == self._chosen,
                name=_edge_name(bands, edge),
            )
        self._place()

    def _add_grip(self) -> None:
        edge = len(self._grips)
        grip = Grip(self)
        self._grips.append(grip)
        grip.wanted.connect(lambda y: self.edge_moved.emit(edge, y, self._run_of(edge)))
        grip.pressed.connect(lambda y_px: self._take(edge, y_px))
        grip.dragged.connect(self._drag_to)
        grip.released.connect(self._let_go)
        grip.focused.connect(lambda: self.band_chosen.emit(edge))
        grip.split_asked.connect(lambda: self.split_asked.emit(edge))
        grip.remove_asked.connect(lambda: self.remove_asked.emit(edge))
        grip.resized.connect(self._place)
        before = self._grips[edge - 1] if edge else self
        QWidget.setTabOrder(before, grip)

    def _place(self) -> None:
        """Put grips and tags beside the photo, apart from each other."""
        _left, top, right, bottom = self._viewport.visible
        items: list[tuple[float, QWidget]] = [
            (self._viewport.y_px(y), grip)
            for y, grip in zip(self._bands.edges[1:] if self._bands else (), self.grips, strict=False)
        ] + [
            (self._viewport.y_px(y), tag) for y, tag in zip(self._rivals, self._tags, strict=False)
        ]
        items.sort(key=lambda item: item[0])
        shown = [(y, w) for y, w in items if top - 1 <= y <= bottom + 1]
        heights = [widget.sizeHint().height() - 2 * PAD for _, widget in shown]
        middles = spread_within([y for y, _ in shown], heights, 4, 2, self.height() - 2)
        moved = any(abs(m - y) > 1 for m, (y, _) in zip(middles, shown, strict=True))
        x = round(right) + (12 if moved else 4) - PAD
        for middle, (_, widget) in zip(middles, shown, strict=True):
            size = widget.sizeHint()
            widget.setGeometry(x, round(middle - size.height() / 2), size.width(), size.height())
        visible = {id(widget) for _, widget in shown}
        for widget in (*self._grips, *self._tags):
            widget.setVisible(id(widget) in visible)

    # The user's hands

    def _take(self, edge: int, y_px: float) -> None:
        if self._bands is None:
            return
        self.setCursor(Qt.CursorShape.SizeVerCursor)
        drag = Drag.begin(self._viewport, edge, self._bands.edges[edge + 1], y_px)
        self._held = _Held(drag, Gesture())
        self.band_chosen.emit(edge)

    def _drag_to(self, y_px: float) -> None:
        if self._held is not None:
            y = self._held.drag.height_at(self._viewport, y_px)
            self.edge_moved.emit(self._held.drag.edge, y, self._held.gesture)

    def _let_go(self) -> None:
        self._held = None

    def _let_go_where_it_was(self) -> None:
        held, self._held = self._held, None
        self.edge_moved.emit(held.drag.edge, held.drag.start, held.gesture)

    def _run_of(self, edge: int) -> Gesture:
        """The gesture of a run of arrow presses on one edge."""
        now = time.monotonic()
        if self._run is None or self._run[0] != edge or now - self._run[1] > _RUN_S:
            self._run = (edge, now, Gesture())
        else:
            self._run = (edge, now, self._run[2])
        return self._run[2]

    def _accept(self, index: int) -> None:
        self.rival_accepted.emit(self._rivals[index])

    def _hover(self, at: QPointF) -> None:
        over_line = (
            self._bands is not None
            and edge_at(self._viewport, self._bands.edges[1:], at.x(), at.y()) is not None
        )
        if over_line:
            self.setCursor(Qt.CursorShape.SizeVerCursor)
        else:
            self.unsetCursor()
        on_photo = self._photo is not None and self._on_photo(at)
        point = (self._viewport.x_of(at.x()), self._viewport.y_of(at.y())) if on_photo else None
        self.hovered.emit(point)

    def _on_photo(self, at: QPointF) -> bool:
        left, top, right, bottom = self._viewport.visible
        return left <= at.x() < right and top <= at.y() < bottom

    def _band_under(self, at: QPointF) -> int | None:
        """The band at a point of the photo, or of the letters beside it."""
        right = self._viewport.visible[2]
        return self._bands.band_at(self._viewport.y_of(at.y())) if at.x() <= right else None


def _edge_name(bands: Bands, edge: int) -> str:
    if edge == bands.count - 1:
        return translate("canvas", "Horizon line, percent of the photo's height")
    return translate(
        "canvas", "Line between bands {upper} and {lower}, percent of the photo's height"
    ).format(upper=bands.letters[edge], lower=bands.letters[edge + 1])
