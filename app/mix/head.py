"""The head of a row: one band's mix, its parts and verdict; or what a wet edge becomes."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QContextMenuEvent,
    QKeyEvent,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QWidget

from app.drawing.fit import Fitted, fit
from app.drawing.marks import (
    PartsBarView,
    VerdictView,
    paint_parts_bar,
    paint_verdict,
    verdict_width,
)
from app.look import look
from app.look.space import FOCUS_WIDTH, INSIDE
from app.look.type import CHOSEN, FIRST, SECOND, font
from app.mix.texts import fit_mix
from app.mix.views import BandView
from app.widgets.choice_row import ChoiceRow

BY_KEY = (
    Qt.FocusReason.TabFocusReason,
    Qt.FocusReason.BacktabFocusReason,
    Qt.FocusReason.ShortcutFocusReason,
)
"""Reasons for which a focus is shown."""

BAR_EDGE = 6
"""The ink bar at the left of the chosen row."""

_GAP = 20
_BAR_SHARE = 0.25
_MOST_BAR = 240


class RowHead(ChoiceRow):
    """What every row's head has in common, beside what all rows have: a menu, and opening.

    Signals
    -------
    menu_asked(number: int, x: int, y: int)
        The row's menu, at a place on the screen.
    """

    menu_asked = Signal(int, int, int)

    def __init__(self, number: int, parent: QWidget) -> None:
        super().__init__(number, parent)
        self.opened = False

    def sizeHint(self) -> QSize:
        return QSize(400, self.height_for(400, compact=False))

    def height_for(self, width: int, *, compact: bool) -> int:
        """Height the head needs at a width."""
        raise NotImplementedError

    def shows_focus(self, reason: Qt.FocusReason) -> bool:
        return reason in BY_KEY

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._by_key = True
            self.asked.emit(self.number)
        elif event.key() == Qt.Key.Key_Menu or (
            event.key() == Qt.Key.Key_F10 and event.modifiers() == Qt.KeyboardModifier.ShiftModifier
        ):
            self._by_key = True
            spot = self.mapToGlobal(self.rect().bottomLeft())
            self.menu_asked.emit(self.number, spot.x() + INSIDE, spot.y())
        else:
            super().keyPressEvent(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        self.menu_asked.emit(self.number, event.globalX(), event.globalY())

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        whole = QRectF(self.rect())
        painter.fillRect(whole, QColor(theme.raised if self.opened else theme.paper))
        if self.opened:
            painter.fillRect(QRectF(0, 0, BAR_EDGE, whole.height()), QColor(theme.ink))
        elif self.underMouse():
            painter.fillRect(QRectF(0, 0, 2, whole.height()), QColor(theme.edge))
        if self.ruled:
            painter.setPen(QPen(QColor(theme.rule), 1.25))
            y = whole.bottom() - 0.7
            painter.drawLine(QPointF(INSIDE, y), QPointF(whole.right() - INSIDE, y))
        self.paint_face(painter)
        if self.hasFocus() and self._by_key:
            painter.setPen(QPen(QColor(theme.ink), FOCUS_WIDTH))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(whole.adjusted(BAR_EDGE + 4, 2, -5, -3), 5, 5)
        painter.end()

    def paint_face(self, painter: QPainter) -> None:
        """What this kind of row shows."""
        raise NotImplementedError


class BandHead(RowHead):
    """A band's mix in words, its parts bar while closed, and its verdict."""

    def __init__(self, number: int, parent: QWidget) -> None:
        super().__init__(number, parent)
        self.view: BandView | None = None
        self.about = ""
        self.compact = False
        self.verdict_room = 0.0

    def set_view(self, view: BandView, about: str) -> None:
        """Show a band; `about` is said below the mix while the row is open."""
        self.view, self.about = view, about
        if self.accessibleName() != view.spoken:
            self.setAccessibleName(view.spoken)
        self.setAccessibleDescription(" ".join(text for text in (about, view.difference) if text))
        self.setToolTip(view.difference)
        self.update()

    def height_for(self, width: int, *, compact: bool) -> int:
        texts = self._texts(width, compact)
        if compact and not self.opened:
            texts = texts[:1]
        pad = look().type.grow(20 if self.opened else 8 if compact else 12)
        return round(sum(text.height for text in texts) + pad + 0.5)

    def _verdict(self) -> VerdictView:
        assert self.view is not None
        theme = look().theme
        ground = theme.raised if self.opened else theme.paper
        return VerdictView(self.view.verdict, self.view.verdict_word, theme.ink, ground)

    def _columns(self, width: float) -> tuple[float, float, float]:
        """Left ends of bar and verdict, and the width of the mix's words."""
        verdict_left = width - INSIDE - max(self.verdict_room, self.own_verdict_room())
        if self.opened:
            return verdict_left, verdict_left, verdict_left - _GAP - INSIDE
        room = verdict_left - INSIDE
        bar = min(_BAR_SHARE * room, look().type.grow(_MOST_BAR))
        left = verdict_left - _GAP - bar
        return left, verdict_left, left - _GAP - INSIDE

    def own_verdict_room(self) -> float:
        """Width of the verdict; `verdict_room` is that of the widest, so that bars align."""
        assert self.view is not None
        height = 1.2 * look().type.px("label")
        return verdict_width(self._verdict(), height) if self.view.verdict_word else 0.0

    def _texts(self, width: float, compact: bool) -> tuple[Fitted, ...]:
        if self.view is None:
            return ()
        scale = look().type
        room = self._columns(width)[2]
        row, second = scale.px("row"), scale.px("row_second")
        control = scale.px("control")
        if self.opened:
            big = round(1.3 * scale.px("heading")) if scale.wide else scale.px("heading")
            sizes = (big, scale.px("heading"), row, scale.px("label"))
            falling = tuple(sorted(set(sizes), reverse=True))
            mix = fit_mix(self.view.mix, falling, CHOSEN, room)
            said = [
                fit(text, (control,), SECOND, room, 9)
                for text in (self.about, self.view.asked)
                if text
            ]
            return (mix, *said)
        sizes = (row, round(0.9 * row), round(0.82 * row), control)
        mix = fit_mix(self.view.mix, sizes, FIRST, room)
        text = "; ".join(part for part in (self.view.second, self.view.wishes.lower()) if part)
        if compact and self.view.second:
            # One line holds strength, and what was asked, where it can.
            strength = self.view.second.split(";")[0]
            for more in (f", {strength}; {self.view.wishes.lower()}", f", {strength}"):
                beside = fit(more.rstrip("; "), (control,), SECOND, room)
                whole = fit_mix(self.view.mix, sizes, FIRST, room - beside.width)
                if len(whole.lines) == 1 and whole.width + beside.width <= room:
                    return whole, beside
        if compact or not text:
            return (mix,)
        return mix, fit(text, (second, control), SECOND, room)

    def paint_face(self, painter: QPainter) -> None:
        if self.view is None:
            return
        theme, scale = look().theme, look().type
        width, height = self.width(), self.height()
        texts = self._texts(width, self.compact)
        bar_left, verdict_left, _ = self._columns(width)
        in_line = self.compact and not self.opened and len(texts) == 2
        tall = texts[0].height if in_line else sum(text.height for text in texts)
        top = scale.grow(12) if self.opened else (height - tall) / 2
        for number, text in enumerate(texts):
            painter.setFont(font(text.size, text.weight))
            painter.setPen(QColor(theme.ink if number == 0 or self.opened else theme.second))
            if in_line and number == 1:
                first = texts[0]
                foot = QPointF(INSIDE + first.width, top - first.pitch + 0.78 * first.pitch)
                painter.drawText(foot, text.lines[0])
                break
            for line in text.lines:
                painter.drawText(QPointF(INSIDE, top + 0.78 * text.pitch), line)
                top += text.pitch
        size = 1.2 * scale.px("label")
        middle = scale.grow(12) + texts[0].pitch / 2 if self.opened else height / 2
        if self.view.verdict_word:
            place = QRectF(verdict_left, middle - size / 2, width - verdict_left, size)
            paint_verdict(painter, place, self._verdict())
        if not self.opened and self.view.parts:
            tallest = scale.grow(21 if self.compact else 26)
            place = QRectF(bar_left, middle - tallest / 2, verdict_left - _GAP - bar_left, tallest)
            paint_parts_bar(painter, place, bar_view(self.view))


def bar_view(view: BandView) -> PartsBarView:
    """The parts bar of a row."""
    return PartsBarView(tuple((part.count, part.colour, part.ink) for part in view.parts))
