"""The board as a widget: the sky and two sheets side by side, a title with buttons over each."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QEvent, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QMouseEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

from app.drawing.sheets.board import paint_board
from app.drawing.sheets.shape import BoardShape, BoardView, PictureOnBoard, board_shape
from app.drawing.sheets.views import board_text
from app.look import look
from app.look.space import PHOTO_CLEAR
from app.sheets.place import PlaceView, SheetPlace
from app.sheets.title import SheetTitle
from core.i18n import translate

_TITLES = 46
_SHARES = (0.42, 0.5)
"""Of the page's height: what the pictures may take at least, and at most."""
_LOWER = 360
"""What findings and bands want."""


class SheetBoard(QWidget):
    """Shows a `BoardView`; titles and empty places are widgets over it.

    Signals
    -------
    band_chosen(band: int)
        Somebody pressed a band in one of the pictures.
    corners_asked(index: int)
        A sheet was pressed twice.
    moved()
        The pictures have other places now: what stands below follows them.
    """

    band_chosen = Signal(int)
    corners_asked = Signal(int)
    moved = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "wall")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        empty = PictureOnBoard()
        self._view = BoardView(empty, (empty, empty), (), (), 1.5, board_text(look()))
        self._most = 400
        self._empty = 0.0
        self.sky_title = QLabel(translate("sheets page", "The photo"), self)
        self.sky_title.setProperty("role", "line")
        self.sky_title.setProperty("on", "wall")
        self.titles = (SheetTitle(0, self), SheetTitle(1, self))
        self.places = (SheetPlace(0, self), SheetPlace(1, self))

    def set_view(
        self, view: BoardView, places: tuple[PlaceView | None, PlaceView | None] | None = None
    ) -> None:
        """Show another board.

        Parameters
        ----------
        view : BoardView
        places : tuple of (PlaceView or None), optional
            What stands where a sheet cannot be shown, None where it is; as before if left out.
        """
        self._view = view
        if places is not None:
            for place, said in zip(self.places, places, strict=True):
                place.set_view(said)
        self._arrange()
        self.update()

    def set_room(self, height: int) -> None:
        """How high the page is; the pictures take a share of it."""
        low, high = _SHARES
        wanted = min(high * height, height - look().type.grow(_LOWER))
        self._most = round(max(wanted, low * height))
        self._arrange()

    @property
    def view(self) -> BoardView:
        """What is shown."""
        return self._view

    @property
    def shape(self) -> BoardShape:
        """Where the pictures are, in this widget."""
        top = look().type.grow(_TITLES)
        area = QRectF(0, top, self.width(), max(self._most - top - PHOTO_CLEAR, 60))
        return board_shape(area, self._view.aspect, self._view.text)

    @property
    def chip_widths(self) -> tuple[float, float]:
        """Of badge and chip in the rows below: the chips stand under the picture's left edge."""
        gap, width = self.shape.gap, self.column(0).width()
        return 0.62 * gap, min(0.2 * width, 4.4 * self._view.text)

    def place_at(self, x: float, y: float) -> int | None:
        """Which sheet's column a point is in; None over the sky."""
        shape = self.shape
        for index in (1, 0):
            if x >= shape.pictures[index + 1].left() - shape.gap / 2:
                return index
        return None

    def sizeHint(self) -> QSize:
        return QSize(960, self.height())

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "places"):
            self._arrange()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()
        self.moved.emit()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        band = self._band_at(event.position().x(), event.position().y())
        if band is not None and event.button() == Qt.MouseButton.LeftButton:
            self.band_chosen.emit(band)
        else:
            super().mousePressEvent(event)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        shape = self.shape
        for index in (0, 1):
            shown = self._view.sheets[index].picture is not None
            if shown and shape.pictures[index + 1].contains(event.position()):
                self.corners_asked.emit(index)
                return
        super().mouseDoubleClickEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        shape = self.shape
        first = shape.pictures[0]
        area = QRectF(0, first.top(), self.width(), first.height())
        paint_board(painter, area, replace(self._view, empty_height=self._empty))
        painter.end()

    def _band_at(self, x: float, y: float) -> int | None:
        for number, place in enumerate(self.shape.pictures):
            if number == 0:
                place = place.adjusted(-place.left(), 0, 0, 0)  # its letters too
            if place.contains(x, y) and self._view.letters:
                edges = self._view.edges
                if number and self._view.sheets[number - 1].lines:
                    lines = self._view.sheets[number - 1].lines
                    wanted = self._view.lines
                    edges = (
                        0.0,
                        *(
                            should if line.at is None else line.at
                            for line, should in zip(lines, wanted, strict=True)
                        ),
                        1.0,
                    )
                share = (y - place.top()) / place.height()
                return max(0, sum(1 for edge in edges[1:-1] if edge <= share))
        return None

    def _arrange(self) -> None:
        shape = self.shape
        titles = look().type.grow(_TITLES)
        sky = shape.pictures[0]
        # A small picture leaves its title the gutter too, which is empty at that height.
        room = round(shape.pictures[1].left() - sky.left()) - PHOTO_CLEAR
        words = min(self.sky_title.sizeHint().width(), room)
        self.sky_title.setGeometry(round(sky.left()), 0, max(words, round(sky.width())), titles)
        # Both titles have the same room, so that both show the same buttons.
        room = min(self.column(index).width() for index in (0, 1)) - 1
        wides: list[QRectF] = []
        for index, title in enumerate(self.titles):
            area = shape.pictures[index + 1]
            column = self.column(index)
            left = round(area.left())
            title.setGeometry(left, 0, max(room, title.least), titles)
            wide = QRectF(area)
            wide.setRight(max(area.right(), column.right()))
            wides.append(wide)
        self._empty = self._empty_height(wides)
        for place, wide in zip(self.places, wides, strict=True):
            wide.setHeight(max(wide.height(), self._empty))
            place.setGeometry(wide.toAlignedRect())
            place.fit()
        low = sky.top() + max(sky.height(), self._empty)
        height = max(round(low) + PHOTO_CLEAR, titles)
        if height != self.height() or self.minimumHeight() != height:
            self.setFixedHeight(height)

    def _empty_height(self, wides: list[QRectF]) -> float:
        """Words in an empty place may need more height than a low picture has, 0 without any."""
        said = [
            place.needed(int(wide.width()))
            for place, wide in zip(self.places, wides, strict=True)
            if place.view is not None
        ]
        return float(min(max(said, default=0), self._most - wides[0].top() - PHOTO_CLEAR))

    def column(self, index: int) -> QRect:
        """The whole column of a sheet, as wide as its picture may be."""
        shape = self.shape
        left = shape.pictures[index + 1].left()
        pitch = shape.pictures[1].left() - shape.pictures[0].left()
        return QRect(round(left), 0, round(pitch - shape.gap), self.height())
