"""The first run's hints: numbered ink tags on stems, closable for good."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QHideEvent, QKeyEvent, QPainter, QPaintEvent, QRegion
from PySide6.QtWidgets import QWidget

from app.drawing.fit import Fitted, fit
from app.drawing.ink import BLACK, WHITE, along, box, draw_text, haloed
from app.look import look
from app.look.space import WITHIN
from app.look.type import CHOSEN, MEDIUM, font
from app.widgets.buttons import EdgeButton
from core.i18n import translate

_STEM = 34
_PAD = 12


@dataclass(frozen=True)
class Hint:
    """A sentence about a place in the window; the tag is on `side` of it.

    What lies in `keep_off` is not covered: the tag moves left of it.
    """

    text: str
    anchor: QPoint
    side: Literal["left", "right", "above", "below"] = "above"
    keep_off: QRect | None = None


class HintTags(QWidget):
    """Numbered tags over a window. Only tags and stems take the mouse; the rest stays usable.

    Signals
    -------
    dismissed()
        The user closed the hints, for good.
    """

    dismissed = Signal()

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self.setAttribute(Qt.WidgetAttribute.WA_NoSystemBackground)
        self._hints: tuple[Hint, ...] = ()
        self._tags: list[tuple[QRectF, Fitted]] = []
        self._button = EdgeButton(translate("hints", "Close the hints"), "close", self)
        self._button.clicked.connect(self._dismiss)
        window.installEventFilter(self)
        self.setGeometry(window.rect())
        self.hide()

    def set_hints(self, hints: Sequence[Hint]) -> None:
        """Show hints, numbered in their order; none hides them. Anchors in window coordinates."""
        self._hints = tuple(hints)
        numbered = translate("hints", "{number}: {text}")
        spoken = (
            numbered.format(number=i + 1, text=hint.text) for i, hint in enumerate(self._hints)
        )
        self.setAccessibleName(" ".join(spoken))
        self.setVisible(bool(self._hints))
        self._lay_out()
        self.raise_()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        parent = self.parentWidget()
        if event.type() == QEvent.Type.Resize and parent is not None and watched is parent:
            # What they point at moves: they step aside until they are placed anew.
            self.hide()
            self.setGeometry(parent.rect())
            self._hints = ()
        return False

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_button"):
            self._lay_out()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self._dismiss()
        else:
            super().keyPressEvent(event)

    def _dismiss(self) -> None:
        self.hide()
        self.dismissed.emit()

    def _lay_out(self) -> None:
        if not self._hints:
            return
        size = look().type.px("control")
        number = 1.7 * size
        self._tags = []
        region = QRegion()
        for hint in self._hints:
            text = fit(hint.text, (size,), MEDIUM, 17.0 * size, 3)
            width = text.width + number + 2.5 * _PAD
            height = text.height + 1.4 * _PAD
            rect = QRectF(0, 0, width, height)
            rect.moveCenter(_beside(hint, width, height))
            area = QRectF(self.rect()).adjusted(6, 6, -6, -6)
            rect.moveLeft(min(max(rect.left(), area.left()), area.right() - width))
            rect.moveTop(min(max(rect.top(), area.top()), area.bottom() - height))
            if hint.keep_off is not None and rect.intersects(QRectF(hint.keep_off)):
                rect.moveRight(hint.keep_off.left() - WITHIN)
            self._clear_of_others(rect, area)
            self._tags.append((rect, text))
            stem = QRectF(rect.center(), QPointF(hint.anchor)).normalized()
            region += rect.toAlignedRect().adjusted(-3, -3, 3, 3)
            region += stem.toAlignedRect().adjusted(-8, -8, 8, 8)
        self._button.setGeometry(self._button_place())
        region += self._button.geometry().adjusted(-8, -8, 8, 8)
        uncovered = self.mask()
        self.setMask(region)
        self._renew(uncovered)
        self.update()

    def _renew(self, uncovered: QRegion) -> None:
        """Have what the tags covered drawn anew.

        Qt does that for what has no ground of its own; a canvas that paints all of itself would
        keep the old tags.
        """
        window = self.parentWidget()
        if window is None or uncovered.isEmpty():
            return
        for widget in window.findChildren(QWidget):
            if widget is self or widget.parentWidget() is self or not widget.isVisible():
                continue
            at = widget.mapTo(window, QPoint(0, 0))
            covered = uncovered.translated(-at).intersected(widget.rect())
            if not covered.isEmpty():
                widget.update(covered)
        window.update(uncovered)

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self._renew(self.mask())

    def _clear_of_others(self, rect: QRectF, area: QRectF) -> None:
        """Move a tag down, or at the foot up, until it covers no earlier one."""
        gap = 2.0 * WITHIN
        for _ in range(len(self._tags)):
            for other, _text in self._tags:
                if not rect.adjusted(-gap, -gap, gap, gap).intersects(other):
                    continue
                if other.bottom() + gap + rect.height() <= area.bottom():
                    rect.moveTop(other.bottom() + gap)
                else:
                    rect.moveBottom(other.top() - gap)

    def _button_place(self) -> QRect:
        """Below the last tag, or above it at the window's foot."""
        rect = self._tags[-1][0]
        size = self._button.sizeHint()
        top = rect.bottom() + WITHIN
        if top + size.height() > self.height() - 6:
            top = rect.top() - WITHIN - size.height()
        left = min(rect.left(), self.width() - 6.0 - size.width())
        return QRect(QPoint(round(left), round(top)), size)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for hint, (rect, _) in zip(self._hints, self._tags, strict=True):
            haloed(painter, along(rect.center(), QPointF(hint.anchor)), 2.0, 5.0, flat=False)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(WHITE))
            painter.drawEllipse(QPointF(hint.anchor), 6.5, 6.5)
            painter.setBrush(QColor(BLACK))
            painter.drawEllipse(QPointF(hint.anchor), 4.5, 4.5)
        for number, (rect, text) in enumerate(self._tags):
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(WHITE))
            painter.drawPath(box(rect.adjusted(-2, -2, 2, 2), 7))
            painter.setBrush(QColor(BLACK))
            painter.drawPath(box(rect, 5))
            radius = 0.75 * text.size
            spot = QPointF(rect.left() + _PAD + radius, rect.center().y())
            painter.setBrush(QColor(WHITE))
            painter.drawEllipse(spot, radius, radius)
            draw_text(painter, spot, str(number + 1), text.size, BLACK, CHOSEN)
            painter.setPen(QColor(WHITE))
            painter.setFont(font(text.size, text.weight))
            top = rect.center().y() - text.height / 2
            left = spot.x() + radius + 0.7 * _PAD
            for line in text.lines:
                place = QRectF(left, top, text.width + 4, text.pitch)
                painter.drawText(place, Qt.AlignmentFlag.AlignVCenter, line)
                top += text.pitch
        painter.end()


def _beside(hint: Hint, width: float, height: float) -> QPointF:
    x, y = float(hint.anchor.x()), float(hint.anchor.y())
    return {
        "left": QPointF(x - _STEM - width / 2, y),
        "right": QPointF(x + _STEM + width / 2, y),
        "above": QPointF(x, y - _STEM - height / 2),
        "below": QPointF(x, y + _STEM + height / 2),
    }[hint.side]


def _preview() -> QWidget:
    page = QWidget()
    page.resize(900, 420)
    tags = HintTags(page)
    tags.set_hints(
        [
            Hint("Drag a grip: everything beside it follows.", QPoint(700, 60), "left"),
            Hint("Read these words aloud to the class.", QPoint(300, 360), "above"),
            Hint("Class view asks the questions one by one.", QPoint(820, 30), "below"),
        ]
    )
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 900, 420))
