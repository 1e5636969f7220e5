"""Setting the corners of a sheet: its whole photo, and beside it turn, reset and a look at it."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.corners.canvas import CornerCanvas
from app.drawing.pyramid import Pyramid
from app.look import look
from app.look.space import GROUP, INSIDE, WITHIN
from app.look.theme import WALL
from app.widgets.buttons import EdgeButton, InkButton
from app.widgets.strip import SheetStrip, StripView
from core.i18n import translate

_PANEL = 348


@dataclass(frozen=True)
class EditorView:
    """What stands beside the photo.

    Attributes
    ----------
    heading : str
        Whose corners they are.
    status : str
        Where the corners come from.
    scan : bool
    by_hand : bool
        There is something to reset.
    question : StripView or None
    straight : Pyramid or None
        The sheet as it is seen with these corners.
    """

    heading: str
    status: str
    scan: bool
    by_hand: bool
    question: StripView | None
    straight: Pyramid | None


class CornerEditor(QWidget):
    """Photo and panel.

    Signals
    -------
    corners_moved(corners: Corners, gesture: Gesture)
    turn_asked(quarters: int)
        Clockwise.
    reset_asked(), done()
    scan_asked(scan: bool)
    question_asked(key: str)
        A button of the question was pressed.
    """

    corners_moved = Signal(object, object)
    turn_asked = Signal(int)
    reset_asked = Signal()
    done = Signal()
    scan_asked = Signal(bool)
    question_asked = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "wall")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.canvas = CornerCanvas(self)
        self.canvas.corners_moved.connect(self.corners_moved)
        self._panel = QWidget(self)
        self._panel.setProperty("ground", "paper")
        self._panel.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._heading = QLabel(self._panel)
        self._heading.setProperty("role", "line")
        self._heading.setWordWrap(True)
        self._how = self._label(
            translate(
                "sheets page",
                "Drag the four rings to the corners of the painting, where paint meets bare "
                "paper. The border stays outside.",
            )
        )
        self._keys = self._label(
            translate(
                "sheets page",
                "By keys: Tab to a corner, arrows move it one pixel, with Shift ten.",
            ),
            "second",
        )
        self._status = self._label("", "strong")
        self.question = SheetStrip(0, self._panel)
        self.question.asked.connect(lambda index, key: self.question_asked.emit(key))
        self.left = self._button(translate("sheets page", "Left"), "undo", -1)
        self.right = self._button(translate("sheets page", "Right"), "turn", 1)
        self.round = self._button(translate("sheets page", "Upside down"), "swap", 2)
        self.left.setAccessibleName(translate("sheets page", "Turn a quarter to the left"))
        self.right.setAccessibleName(translate("sheets page", "Turn a quarter to the right"))
        self.round.setAccessibleName(translate("sheets page", "Turn upside down"))
        self.reset = EdgeButton(
            translate("sheets page", "Back to the proposed corners"), "reset", self._panel
        )
        self.reset.clicked.connect(self.reset_asked)
        self.scan = QCheckBox(translate("sheets page", "This is a flat scan"), self._panel)
        self.scan.clicked.connect(self.scan_asked)
        self._scan_note = self._label(
            translate(
                "sheets page",
                "A scan has no perspective and even light, so smaller differences count.",
            ),
            "second",
        )
        self._straight_label = self._label(translate("sheets page", "Straightened"), "strong")
        self.straight = _Straight(self._panel)
        self.finish = InkButton(translate("sheets page", "Done"), "check", self._panel)
        self.finish.clicked.connect(self.done)
        self._lay_out()

    def set_view(self, view: EditorView) -> None:
        """Show other words beside the photo."""
        self._heading.setText(view.heading)
        self._status.setText(view.status)
        self._status.setVisible(bool(view.status))
        self.scan.setChecked(view.scan)
        self.reset.set_available(
            view.by_hand, translate("sheets page", "These are the proposed corners.")
        )
        self.question.set_view(view.question)
        self.straight.set_picture(view.straight)
        self._straight_label.setVisible(view.straight is not None)

    def begin(self) -> None:
        """The keyboard begins at the first corner."""
        self.canvas.handles[0].setFocus(Qt.FocusReason.OtherFocusReason)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Escape, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.done.emit()
        else:
            super().keyPressEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_scroll"):
            self._fit()

    def _label(self, text: str, role: str = "") -> QLabel:
        label = QLabel(text, self._panel)
        label.setWordWrap(True)
        if role:
            label.setProperty("role", role)
        return label

    def _button(self, text: str, icon: str, quarters: int) -> EdgeButton:
        button = EdgeButton(text, icon, self._panel)
        button.clicked.connect(lambda: self.turn_asked.emit(quarters))
        return button

    def _lay_out(self) -> None:
        self._column = QVBoxLayout(self._panel)
        self._column.setContentsMargins(INSIDE, GROUP, INSIDE, WITHIN)
        self._column.setSpacing(WITHIN)
        for widget in (self._heading, self._how, self._keys, self._status, self.question):
            self._column.addWidget(widget)
        self._column.addWidget(self.reset, 0, Qt.AlignmentFlag.AlignLeft)
        self._column.addSpacing(WITHIN)
        self._column.addWidget(self._label(translate("sheets page", "Turn"), "strong"))
        turns = QHBoxLayout()
        turns.setSpacing(WITHIN)
        turns.addWidget(self.left)
        turns.addWidget(self.right)
        turns.addStretch()
        self._column.addLayout(turns)
        self._column.addWidget(self.round, 0, Qt.AlignmentFlag.AlignLeft)
        self._column.addSpacing(WITHIN)
        self._column.addWidget(self.scan)
        self._column.addWidget(self._scan_note)
        self._column.addSpacing(WITHIN)
        self._column.addWidget(self._straight_label)
        self._column.addWidget(self.straight, 1)
        self._column.addStretch(0)
        self._scroll = QScrollArea(self)
        self._scroll.setWidgetResizable(True)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._scroll.setWidget(self._panel)
        # Done stays in sight, however large the text above it is.
        self._side = QWidget(self)
        self._side.setProperty("ground", "paper")
        self._side.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.finish.setParent(self._side)
        side = QVBoxLayout(self._side)
        side.setContentsMargins(0, 0, 0, 0)
        side.setSpacing(0)
        side.addWidget(self._scroll, 1)
        foot = QHBoxLayout()
        foot.setContentsMargins(INSIDE, WITHIN, INSIDE, GROUP)
        foot.addStretch()
        foot.addWidget(self.finish)
        side.addLayout(foot)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.canvas, 1)
        row.addWidget(self._side)
        self._fit()

    def _fit(self) -> None:
        self._side.setFixedWidth(look().type.grow(_PANEL))


class _Straight(QWidget):
    """The sheet as these corners make it."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._picture: Pyramid | None = None
        self.setAccessibleName(translate("sheets page", "The sheet, straightened"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(90)

    def set_picture(self, picture: Pyramid | None) -> None:
        """Show another one."""
        if picture is not self._picture:
            self._picture = picture
            self.update()

    def sizeHint(self) -> QSize:
        return QSize(300, 170)

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._picture is None:
            return
        image = self._picture.levels[0]
        wall = QRectF(self.rect())
        room = wall.adjusted(8, 8, -8, -8)
        scale = min(room.width() / image.width(), room.height() / image.height())
        target = QRectF(room.left(), room.top(), image.width() * scale, image.height() * scale)
        painter = QPainter(self)
        painter.fillRect(target.adjusted(-8, -8, 8, 8), QColor(WALL))
        self._picture.draw(painter, target, self.devicePixelRatioF())
        painter.end()
