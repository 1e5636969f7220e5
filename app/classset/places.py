"""The students' places as a widget: scrolled, walked over by keys, pictures dropped on it."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QEvent, QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QApplication, QFrame, QWidget

from app.classset.dragged import begin_drag, digest_in
from app.drawing.classset.places import (
    PLACES,
    PlacesShape,
    PlacesView,
    paint_headings,
    paint_places,
    places_shape,
)
from app.look import look
from core.i18n import translate

_HEAD = 44


class PlacesList(QAbstractScrollArea):
    """Shows a `PlacesView`.

    Signals
    -------
    placed(digest: str, row: int, place: int)
        A picture was dropped on a place.
    picked(row: int, place: int)
        Enter on a place: what is asked about belongs here.
    emptied(row: int, place: int)
        Delete: what is here does not belong here.
    """

    placed = Signal(str, int, int)
    picked = Signal(int, int)
    emptied = Signal(int, int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setProperty("own_focus", True)
        self.setProperty("ground", "paper")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAcceptDrops(True)
        self.setAccessibleName(translate("class set page", "Places of all students"))
        self._view = PlacesView()
        self._shape = places_shape(self._view, 400)
        self._digests: tuple[tuple[str | None, ...], ...] = ()
        self._at = (0, 0)
        self._pressed: QPointF | None = None
        self._fit()

    @property
    def view(self) -> PlacesView:
        """What is shown."""
        return self._view

    @property
    def shape_now(self) -> PlacesShape:
        """What is where, below the headings."""
        return self._shape

    def set_view(self, view: PlacesView, digests: tuple[tuple[str | None, ...], ...]) -> None:
        """Show other rows; `digests` are the pictures in them."""
        self._digests = digests
        chosen = self._at if self.hasFocus() else None
        self._view = replace(view, chosen=chosen, aimed=self._view.aimed)
        self._fit()
        self.viewport().update()

    def show_row(self, number: int) -> None:
        """Bring a row in sight."""
        top, bar = number * self._shape.pitch_y, self.verticalScrollBar()
        room = self.viewport().height() - self._head
        if top < bar.value():
            bar.setValue(round(top))
        elif top + self._shape.pitch_y > bar.value() + room:
            bar.setValue(round(top + self._shape.pitch_y - room))

    @property
    def _head(self) -> int:
        return look().type.grow(_HEAD)

    def _fit(self) -> None:
        self._shape = places_shape(self._view, self.viewport().width())
        bar = self.verticalScrollBar()
        bar.setPageStep(max(1, self.viewport().height() - self._head))
        bar.setSingleStep(round(self._shape.pitch_y / 2))
        rest = round(self._shape.height) + self._head - self.viewport().height()
        bar.setRange(0, max(0, rest))

    def _place_under(self, at: QPointF) -> tuple[int, int] | None:
        if at.y() < self._head:
            return None
        return self._shape.place_at(at + QPointF(0, self.verticalScrollBar().value() - self._head))

    def _digest_at(self, at: tuple[int, int] | None) -> str | None:
        return None if at is None else self._digests[at[0]][at[1]]

    def _aim(self, at: tuple[int, int] | None) -> None:
        if at != self._view.aimed:
            self._view = replace(self._view, aimed=at)
            self.viewport().update()

    def _go(self, row: int, place: int) -> None:
        last = max(0, len(self._view.rows) - 1)
        self._at = (max(0, min(last, row)), max(0, min(PLACES - 1, place)))
        self._view = replace(self._view, chosen=self._at)
        if self._view.rows:
            self.show_row(self._at[0])
            shown = self._view.rows[self._at[0]]
            what = self._view.headings[1 + self._at[1]]
            word = shown.places[self._at[1]].word or translate("class set page", "a picture")
            self.setAccessibleDescription(f"{shown.code}, {what}: {word}")
        self.viewport().update()

    # Qt

    def keyPressEvent(self, event: QKeyEvent) -> None:
        row, place = self._at
        page = max(1, int(self.viewport().height() // self._shape.pitch_y) - 1)
        steps = {
            Qt.Key.Key_Left: (0, -1),
            Qt.Key.Key_Right: (0, 1),
            Qt.Key.Key_Up: (-1, 0),
            Qt.Key.Key_Down: (1, 0),
            Qt.Key.Key_PageUp: (-page, 0),
            Qt.Key.Key_PageDown: (page, 0),
            Qt.Key.Key_Home: (-len(self._view.rows), 0),
            Qt.Key.Key_End: (len(self._view.rows), 0),
        }
        key = Qt.Key(event.key())
        if key in steps:
            self._go(row + steps[key][0], place + steps[key][1])
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._view.rows:
            self.picked.emit(row, place)
        elif key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace) and self._view.rows:
            self.emptied.emit(row, place)
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self._go(*self._at)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self._view = replace(self._view, chosen=None)
        self.viewport().update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._pressed = event.position()
        at = self._place_under(event.position())
        if at is not None:
            self._go(*at)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._pressed is None:
            return
        far = (event.position() - self._pressed).manhattanLength()
        at = self._place_under(self._pressed)
        digest = self._digest_at(at)
        if far >= QApplication.startDragDistance() and digest is not None and at is not None:
            self._pressed = None
            begin_drag(self, digest, self._view.rows[at[0]].places[at[1]].picture)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._pressed = None

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if digest_in(event.mimeData()) is not None:
            event.acceptProposedAction()

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        if digest_in(event.mimeData()) is None:
            event.ignore()
            return
        self._aim(self._place_under(event.position()))
        event.acceptProposedAction()

    def dragLeaveEvent(self, event: QDragLeaveEvent) -> None:
        self._aim(None)

    def dropEvent(self, event: QDropEvent) -> None:
        digest, at = digest_in(event.mimeData()), self._place_under(event.position())
        self._aim(None)
        if digest is not None and at is not None:
            event.acceptProposedAction()
            self.placed.emit(digest, *at)

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_shape"):
            self._fit()

    def paintEvent(self, event: QPaintEvent) -> None:
        theme, top = look().theme, self.verticalScrollBar().value()
        width, head = self.viewport().width(), self._head
        painter = QPainter(self.viewport())
        painter.fillRect(event.rect(), QColor(theme.paper))
        painter.save()
        painter.setClipRect(QRect(0, head, width, self.viewport().height() - head))
        painter.translate(0, head - top)
        visible = QRectF(0, top, width, self.viewport().height() - head)
        paint_places(painter, self._view, self._shape, visible)
        painter.restore()
        paint_headings(painter, QRectF(0, 0, width, head - 6), self._view, self._shape)
        painter.fillRect(QRectF(24, head - 7, width - 48, 1), QColor(theme.rule))
        painter.end()
