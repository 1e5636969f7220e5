"""Buttons: an edge, or ink for the one that matters most on a page."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QPushButton, QSizePolicy, QWidget

from app.look import look
from app.look.icons import paint_icon
from app.look.space import CONTROL, EDGE, RADIUS, WITHIN
from app.look.type import CHOSEN, MEDIUM, SECOND

_SIDE = 14
_ICON = 20


class EdgeButton(QPushButton):
    """A button with an edge, an icon if it has one, and a note such as its key.

    Signals: QPushButton's.
    """

    filled = False

    def __init__(
        self, text: str, icon: str = "", parent: QWidget | None = None, *, note: str = ""
    ) -> None:
        super().__init__(text, parent)
        self._icon = icon
        self._note = note
        self._reason = ""
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def set_available(self, available: bool, reason: str = "") -> None:
        """Switch the button on or off; `reason` tells what would open it."""
        self.setEnabled(available)
        if self._reason or reason:
            self._reason = "" if available else reason
            self.setToolTip(self._reason)
            self.setAccessibleDescription(self._reason)

    def _font_weight(self) -> int:
        return CHOSEN if self.filled or self.isChecked() else MEDIUM

    def sizeHint(self) -> QSize:
        scale = look().type
        height = scale.grow(CONTROL)
        icon = scale.grow(_ICON) if self._icon else 0
        if not self.text():
            return QSize(height, height)
        # Measured bold, so that a button does not jump when it is chosen.
        width = QFontMetricsF(scale.font("control", CHOSEN)).horizontalAdvance(self._shown_text())
        width += 2 * scale.grow(_SIDE) + icon + (WITHIN if icon else 0)
        if self._note:
            note = QFontMetricsF(scale.font("note")).horizontalAdvance(self._note)
            width += note + 1.5 * WITHIN
        return QSize(round(width + 0.5), height)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        rect = QRectF(self.rect()).adjusted(EDGE / 2, EDGE / 2, -EDGE / 2, -EDGE / 2)
        ink = theme.ink
        if not self.isEnabled():
            pen = QPen(QColor(theme.edge), EDGE)
            pen.setCapStyle(Qt.PenCapStyle.FlatCap)
            pen.setDashPattern([3.2, 2.4])
            painter.setPen(pen)
            painter.setBrush(QColor(theme.paper) if self._on_wall() else Qt.BrushStyle.NoBrush)
            ink = theme.second
        elif self.filled or self.isChecked():
            painter.setPen(QPen(QColor(theme.ink), EDGE))
            # Under the mouse the second text's tone: darker paper or paler ink, still 7:1.
            fill = theme.second if self.underMouse() or self.isDown() else theme.ink
            painter.setBrush(QColor(fill))
            ink = theme.on_ink
        else:
            edge = theme.ink if self.underMouse() else theme.edge
            painter.setPen(QPen(QColor(edge), EDGE))
            painter.setBrush(QColor(theme.rule if self.isDown() else theme.raised))
        painter.drawRoundedRect(rect, RADIUS, RADIUS)
        self._paint_face(painter, QRectF(self.rect()), ink)
        painter.end()

    def _shown_text(self) -> str:
        """The text without the mark of its key."""
        return self.text().replace("&&", "\0").replace("&", "").replace("\0", "&")

    def _on_wall(self) -> bool:
        parent = self.parentWidget()
        while parent is not None:
            ground = parent.property("ground")
            if ground:
                return bool(ground == "wall")
            parent = parent.parentWidget()
        return False

    def _paint_face(self, painter: QPainter, rect: QRectF, ink: str) -> None:
        scale = look().type
        side = scale.grow(_ICON) if self._icon else 0
        if not self.text():
            square = QRectF(0, 0, side, side)
            square.moveCenter(rect.center())
            paint_icon(painter, square, self._icon, ink)
            return
        face = scale.font("control", self._font_weight())
        width = QFontMetricsF(face).horizontalAdvance(self._shown_text())
        note_face = scale.font("note", SECOND)
        note = QFontMetricsF(note_face).horizontalAdvance(self._note) if self._note else 0.0
        total = width + (side + WITHIN if side else 0) + (note + 1.5 * WITHIN if note else 0)
        x = rect.left() + (rect.width() - total) / 2
        if side:
            box = QRectF(x, rect.center().y() - side / 2, side, side)
            paint_icon(painter, box, self._icon, ink)
            x += side + WITHIN
        painter.setPen(QColor(ink))
        painter.setFont(face)
        middle = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        flags = int(middle) | int(Qt.TextFlag.TextShowMnemonic) | int(Qt.TextFlag.TextDontClip)
        painter.drawText(QRectF(x, rect.top(), width + 2, rect.height()), flags, self.text())
        if note:
            painter.setFont(note_face)
            x += width + 1.5 * WITHIN
            painter.drawText(QRectF(x, rect.top(), note + 2, rect.height()), flags, self._note)


class InkButton(EdgeButton):
    """The one button of a page that is filled with ink."""

    filled = True


class IconButton(EdgeButton):
    """A square button with an icon alone: undo, redo, plus, minus, close.

    `name` is what a screen reader says, and the tip under the mouse.
    """

    def __init__(self, icon: str, name: str, parent: QWidget | None = None) -> None:
        super().__init__("", icon, parent)
        self.setAccessibleName(name)
        self.setToolTip(name)

    def set_available(self, available: bool, reason: str = "") -> None:
        self.setEnabled(available)
        self.setToolTip(reason if reason and not available else self.accessibleName())
        self.setAccessibleDescription("" if available else reason)


def _preview() -> QWidget:
    from PySide6.QtWidgets import QHBoxLayout

    page = QWidget()
    row = QHBoxLayout(page)
    row.setSpacing(16)
    row.addWidget(EdgeButton("Propose again"))
    row.addWidget(InkButton("Class view", "class_view", note="F5"))
    closed = EdgeButton("Show")
    closed.set_available(False, "Score intensity to open it.")
    row.addWidget(closed)
    row.addWidget(IconButton("undo", "Undo"))
    row.addWidget(IconButton("redo", "Redo"))
    row.addWidget(EdgeButton("Say it", "speak"))
    row.addStretch()
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 700, 80))
