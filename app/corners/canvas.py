"""The photo of a sheet with four corners to drag, each by mouse or keys, under a magnifier."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRect, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.corners.geometry import (
    WHOLE,
    PhotoOnScreen,
    lens_place,
    screen_order,
    with_corner,
)
from app.corners.handle import CornerHandle
from app.corners.lens import Lens
from app.drawing.pyramid import Pyramid
from app.drawing.sheets.corners import (
    LensView,
    paint_outline,
    paint_turned,
)
from app.look import look
from app.look.theme import WALL
from app.state.document import Gesture
from core.i18n import translate
from core.sheet.result import Corners, Point

_HANDLE = 40
_MARGIN = 44
_LENS = 104
_LENS_ZOOM = 4.0


class CornerCanvas(QWidget):
    """Shows the whole photo of a sheet and its corners; knows no document.

    Signals
    -------
    corners_moved(corners: Corners, gesture: Gesture)
        One of them is wanted elsewhere.
    """

    corners_moved = Signal(object, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "wall")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setAccessibleName(translate("sheets page", "Photo of the sheet with its corners"))
        self._picture: Pyramid | None = None
        self._size = (4, 3)
        self._turned = 0
        self._corners: Corners = WHOLE
        self._gesture: Gesture | None = None
        self._looked: int | None = None
        self.handles = tuple(CornerHandle(spot, self) for spot in range(4))
        for handle in self.handles:
            handle.moved.connect(self._drag)
            handle.stepped.connect(self._step)
            handle.taken.connect(lambda spot: self._begin())
            handle.let_go.connect(lambda spot: self._end())
            handle.looked_at.connect(self._look_at)
        self._lens = Lens(self.lens_view, self)

    def set_photo(self, picture: Pyramid | None, size: tuple[int, int], turned: int) -> None:
        """Show a photo of a size (width, height), turned by quarter turns clockwise."""
        self._picture, self._size, self._turned = picture, size, turned % 4
        for handle in self.handles:
            handle.setVisible(picture is not None)
        self._place()

    def set_corners(self, corners: Corners) -> None:
        """Show corners, fractions of the photo as it is."""
        self._corners = corners
        self._place()

    @property
    def corners(self) -> Corners:
        """What is shown."""
        return self._corners

    @property
    def lens(self) -> QWidget:
        """The magnifier; visible while a corner is held or has the focus."""
        return self._lens

    @property
    def placed(self) -> PhotoOnScreen:
        """How the photo lies on the canvas."""
        margin = float(_MARGIN)
        return PhotoOnScreen(
            self._size[0],
            self._size[1],
            self._turned,
            margin,
            margin,
            max(self.width() - 2 * margin, 40.0),
            max(self.height() - 2 * margin, 40.0),
        )

    def lens_view(self, spot: int) -> LensView | None:
        """What the magnifier shows of a corner."""
        if self._picture is None:
            return None
        at = self._corners[screen_order(self._turned)[spot]]
        shown = self._picture.levels[0].width() / self._size[0]
        zoom = max(_LENS_ZOOM * self.placed.scale, 2.5 * shown)
        return LensView(
            self._picture,
            self._size[0],
            self._size[1],
            self._turned,
            at,
            self._corners,
            zoom,
            self.devicePixelRatioF(),
        )

    def sizeHint(self) -> QSize:
        return QSize(900, 600)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._place()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_lens"):
            self._place()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(WALL))
        if self._picture is not None:
            placed = self.placed
            width, height = self._size[0] * placed.scale, self._size[1] * placed.scale
            middle = QPointF(*placed.middle)
            ratio = self.devicePixelRatioF()
            paint_turned(painter, middle, self._picture, width, height, self._turned, ratio)
            points = tuple(placed.to_screen(corner) for corner in self._corners)
            paint_outline(painter, points, 1.0)
        painter.end()

    def _begin(self) -> None:
        self._gesture = Gesture()

    def _end(self) -> None:
        self._gesture = None

    def _drag(self, spot: int, at: QPointF) -> None:
        self._move(spot, self.placed.to_photo((at.x(), at.y())), self._gesture or Gesture())

    def _step(self, spot: int, right: int, down: int) -> None:
        number = screen_order(self._turned)[spot]
        # Arrows pressed while a corner keeps the focus are one edit.
        if self._gesture is None:
            self._gesture = Gesture()
        point = self.placed.stepped(self._corners[number], right, down)
        self._move(spot, point, self._gesture)

    def _move(self, spot: int, point: Point, gesture: Gesture) -> None:
        number = screen_order(self._turned)[spot]
        moved = with_corner(self._corners, number, point, *self._size)
        if moved is not None and moved != self._corners:
            self.corners_moved.emit(moved, gesture)

    def _look_at(self, spot: int, looked: bool) -> None:
        self._gesture = None
        if looked:
            self._looked = spot
        elif self._looked == spot:
            self._looked = None
        self._place()

    def _place(self) -> None:
        placed = self.placed
        side = look().type.grow(_HANDLE)
        order = screen_order(self._turned)
        points = [placed.to_screen(self._corners[number]) for number in order]
        for handle, (x, y) in zip(self.handles, points, strict=True):
            handle.setGeometry(round(x - side / 2), round(y - side / 2), side, side)
        shown = self._looked is not None and self._picture is not None
        self._lens.setVisible(shown)
        if shown and self._looked is not None:
            radius = float(_LENS)
            middle = (sum(p[0] for p in points) / 4, sum(p[1] for p in points) / 4)
            area = (4.0, 4.0, self.width() - 4.0, self.height() - 4.0)
            x, y = lens_place(points[self._looked], middle, radius, area)
            self._lens.show_corner(self._looked)
            self._lens.setGeometry(
                QRect(round(x - radius), round(y - radius), 2 * _LENS, 2 * _LENS)
            )
            self._lens.raise_()
        self.update()
