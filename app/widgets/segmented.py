"""A row of choices in one frame; the chosen one is ink."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetricsF,
    QKeyEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QRadioButton, QSizePolicy, QWidget

from app.drawing.ink import draw_text, text_size
from app.look import look
from app.look.space import CONTROL, EDGE, RADIUS, WITHIN
from app.look.type import CHOSEN, MEDIUM
from app.widgets.layouts import layout_of

_SIDE = 15
_DISC = 21
_CLOSE_SIDE = 4
_CHEVRON = 9


class _Segment(QRadioButton):
    """One choice; a radio button to a screen reader."""

    moved = Signal(int)

    def __init__(self, text: str, parent: QWidget) -> None:
        super().__init__(text, parent)
        self.side = _SIDE
        self.count = 0
        self.opens = False
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)

    def hitButton(self, pos: object) -> bool:
        return True

    def sizeHint(self) -> QSize:
        scale = look().type
        width = QFontMetricsF(scale.font("control", CHOSEN)).horizontalAdvance(self.text())
        width += self._disc() + WITHIN if self.count else 0
        more = scale.grow(_CHEVRON) + (6 if self.side == _SIDE else 0) if self.opens else 0
        return QSize(round(width + 2 * scale.grow(self.side)) + more, scale.grow(CONTROL))

    def _disc(self) -> float:
        """The width of the disc with the count."""
        scale = look().type
        return max(scale.grow(_DISC), text_size(str(self.count), scale.px("note"))[0] + 12)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = {
            Qt.Key.Key_Left: -1,
            Qt.Key.Key_Up: -1,
            Qt.Key.Key_Right: 1,
            Qt.Key.Key_Down: 1,
        }.get(Qt.Key(event.key()))
        if step is None:
            super().keyPressEvent(event)
        else:
            self.moved.emit(step)

    def enterEvent(self, event: object) -> None:
        self.update()

    def leaveEvent(self, event: object) -> None:
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ink = theme.ink if self.isEnabled() else theme.second
        if self.isChecked():
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(theme.ink if self.isEnabled() else theme.edge))
            painter.drawRoundedRect(QRectF(self.rect()), RADIUS, RADIUS)
            ink = theme.on_ink
        elif self.underMouse() and self.isEnabled():
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(theme.rule))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(3, 3, -3, -3), 3, 3)
        painter.setPen(QColor(ink))
        painter.setFont(look().type.font("control", CHOSEN if self.isChecked() else MEDIUM))
        area = QRectF(self.rect())
        area.setRight(area.right() - (self._disc() + WITHIN if self.count else 0))
        if self.opens:
            wide = look().type.grow(_CHEVRON)
            gap = 6 if self.side == _SIDE else 2
            area.setRight(area.right() - wide - gap)
            words = painter.fontMetrics().horizontalAdvance(self.text())
            x, y = area.center().x() + words / 2 + gap + 1, area.center().y() + 1
            painter.setPen(QPen(QColor(ink), 1.8, c=Qt.PenCapStyle.RoundCap))
            painter.drawPolyline(
                [
                    QPointF(x, y - wide / 4),
                    QPointF(x + wide / 2, y + wide / 4),
                    QPointF(x + wide, y - wide / 4),
                ]
            )
        painter.drawText(area, Qt.AlignmentFlag.AlignCenter, self.text())
        if self.count:
            self._paint_count(painter, ink)
        painter.end()

    def _paint_count(self, painter: QPainter, ink: str) -> None:
        """How many wait, on a disc of the words' ink."""
        theme, scale = look().theme, look().type
        disc = QRectF(0, 0, self._disc(), scale.grow(_DISC))
        disc.moveCenter(QRectF(self.rect()).center())
        disc.moveRight(self.width() - scale.grow(self.side))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(ink))
        painter.drawRoundedRect(disc, disc.height() / 2, disc.height() / 2)
        ground = theme.on_ink if ink == theme.ink else theme.ink
        size = scale.px("note")
        draw_text(painter, disc.center(), str(self.count), size, ground, CHOSEN)


class SegmentedControl(QWidget):
    """One of a few choices.

    Signals
    -------
    chosen(str)
        The key the user chose; not sent by `set_chosen`.
    again(str)
        A chosen one that opens was pressed once more.
    """

    chosen = Signal(str)
    again = Signal(str)

    def __init__(
        self, options: Sequence[tuple[str, str]], name: str, parent: QWidget | None = None
    ) -> None:
        """`options` are (key, text) pairs; `name` is what a screen reader says of the group."""
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self._group = QButtonGroup(self)
        self._shown = options[0][0] if options else ""
        self._segments: dict[str, _Segment] = {}
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        for key, text in options:
            segment = _Segment(text, self)
            segment.setAccessibleDescription(name)
            segment.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
            segment.clicked.connect(lambda _checked=False, key=key: self._press(key))
            segment.moved.connect(self._move)
            self._group.addButton(segment)
            self._segments[key] = segment
            row.addWidget(segment)
        self._group.buttonToggled.connect(self._toggled)
        if options:
            self._segments[options[0][0]].setChecked(True)

    def _toggled(self, button: QRadioButton, checked: bool) -> None:
        # Tab goes to the chosen one; the arrow keys go on from there.
        policy = Qt.FocusPolicy.StrongFocus if checked else Qt.FocusPolicy.ClickFocus
        button.setFocusPolicy(policy)
        self.update()

    def _press(self, key: str) -> None:
        if key == self._shown and self._segments[key].opens:
            self.again.emit(key)
            return
        self._shown = key
        self.chosen.emit(key)

    def set_opens(self, key: str) -> None:
        """Mark a choice that has choices of its own: pressed once more it sends `again`."""
        self._segments[key].opens = True
        self._segments[key].updateGeometry()

    def place_of(self, key: str) -> QRect:
        """Where a choice is in this widget."""
        return self._segments[key].geometry()

    def _move(self, step: int) -> None:
        keys = list(self._segments)
        place = keys.index(self.current) + step
        while 0 <= place < len(keys) and not self._usable(keys[place]):
            place += step
        if 0 <= place < len(keys):
            self.set_chosen(keys[place])
            self._segments[keys[place]].setFocus(Qt.FocusReason.TabFocusReason)
            self.chosen.emit(keys[place])

    def set_chosen(self, key: str) -> None:
        """Show a key as chosen."""
        self._shown = key
        self._segments[key].setChecked(True)

    def set_shown(self, key: str, shown: bool) -> None:
        """Offer one choice or leave it out; the chosen one must be shown."""
        self._segments[key].setVisible(shown)

    def _usable(self, key: str) -> bool:
        return self._segments[key].isEnabled() and not self._segments[key].isHidden()

    def set_count(self, key: str, count: int, spoken: str) -> None:
        """Show how many wait behind a choice; none at 0.

        Parameters
        ----------
        spoken : str
            What a screen reader calls the choice then.
        """
        segment = self._segments[key]
        if segment.count != count:
            segment.count = count
            segment.updateGeometry()
            layout_of(self).invalidate()
            self.updateGeometry()
            segment.update()
        segment.setAccessibleName(spoken)

    def set_close(self, close: bool) -> None:
        """Leave less room beside the words, where a row would not hold them otherwise."""
        for segment in self._segments.values():
            segment.side = _CLOSE_SIDE if close else _SIDE
            segment.updateGeometry()
        layout_of(self).invalidate()
        self.updateGeometry()

    def set_available(self, key: str, available: bool) -> None:
        """Switch one choice on or off."""
        self._segments[key].setEnabled(available)

    @property
    def segments(self) -> tuple[QRadioButton, ...]:
        """The buttons, left to right."""
        return tuple(self._segments.values())

    def focus_chosen(self) -> None:
        """Give the keyboard to the chosen one."""
        self._segments[self.current].setFocus(Qt.FocusReason.TabFocusReason)

    @property
    def current(self) -> str:
        """The key chosen now."""
        return next(key for key, segment in self._segments.items() if segment.isChecked())

    def set_texts(self, texts: dict[str, str]) -> None:
        """Rename the choices, as when the language changes."""
        for key, text in texts.items():
            self._segments[key].setText(text)
            self._segments[key].updateGeometry()

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        frame = QRectF(self.rect()).adjusted(EDGE / 2, EDGE / 2, -EDGE / 2, -EDGE / 2)
        pen = QPen(QColor(theme.edge), EDGE)
        if not self.isEnabled():
            pen.setCapStyle(Qt.PenCapStyle.FlatCap)
            pen.setDashPattern([3.2, 2.4])
        painter.setPen(pen)
        painter.setBrush(QColor(theme.raised))
        path = QPainterPath()
        path.addRoundedRect(frame, RADIUS, RADIUS)
        painter.drawPath(path)
        segments = [one for one in self._segments.values() if not one.isHidden()]
        painter.setPen(QPen(QColor(theme.rule), 1.25))
        for left, right in pairwise(segments):
            if not (left.isChecked() or right.isChecked()):
                x = right.x() + 0.5
                inset = 0.26 * self.height()
                painter.drawLine(QPointF(x, inset), QPointF(x, self.height() - inset))
        painter.end()


def _preview() -> QWidget:
    page = QWidget()
    row = QHBoxLayout(page)
    control = SegmentedControl(
        [
            ("colour", "Colour"),
            ("values", "Values"),
            ("steps", "Value steps"),
            ("squint", "Squint"),
        ],
        "View",
    )
    control.set_chosen("values")
    row.addWidget(control)
    row.addStretch()
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 480, 80))
