"""One picture that is asked about: what it shows, why it is asked, and the ways to answer."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QApplication, QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from app.classset.dragged import begin_drag
from app.drawing.pyramid import Pyramid
from app.look.space import WITHIN
from app.look.theme import WALL_INK, WALL_LIGHT
from app.widgets.buttons import EdgeButton
from app.widgets.flow import FlowLayout
from core.class_set.answers import Reply, reply_word

_INSIDE = 14


@dataclass(frozen=True, eq=False)
class CardView:
    """A question as it is shown.

    Attributes
    ----------
    digest : str
        The picture's.
    picture : Pyramid or None
        As it was brought in.
    other : Pyramid or None
        The picture it is held against.
    name, other_word : str
        The file's name; what stands over the other picture.
    title, sentence : str
    replies : tuple of Reply
    """

    digest: str = ""
    picture: Pyramid | None = None
    other: Pyramid | None = None
    name: str = ""
    other_word: str = ""
    title: str = ""
    sentence: str = ""
    replies: tuple[Reply, ...] = ()


class _Picture(QWidget):
    """A picture whole, at the top of its room."""

    def __init__(self, height: int, parent: QWidget) -> None:
        super().__init__(parent)
        self._height = height
        self.picture: Pyramid | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_picture(self, picture: Pyramid | None) -> None:
        """Show another one."""
        if picture is not self.picture:
            self.picture = picture
            self.update()

    def sizeHint(self) -> QSize:
        return QSize(160, self._height)

    def minimumSizeHint(self) -> QSize:
        return QSize(80, self._height)

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.picture is None:
            return
        image = self.picture.levels[0]
        scale = min(self.width() / image.width(), self.height() / image.height())
        painter = QPainter(self)
        size = QRectF(0, 0, image.width() * scale, image.height() * scale)
        self.picture.draw(painter, size, self.devicePixelRatioF())
        painter.end()


class QuestionCard(QWidget):
    """Shows a `CardView`; the chosen one is framed.

    Signals
    -------
    pressed(digest: str)
    answered(digest: str, reply: str)
    """

    pressed = Signal(str)
    answered = Signal(str, str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.view = CardView()
        self._chosen = False
        self._grip: QPointF | None = None
        self.picture, self.other = _Picture(152, self), _Picture(118, self)
        self.name, self.other_word = QLabel(self), QLabel(self)
        self.title, self.sentence = QLabel(self), QLabel(self)
        self._buttons: dict[Reply, EdgeButton] = {}
        self._lay_out()

    def set_view(self, view: CardView, *, chosen: bool) -> None:
        """Show a question."""
        if view.replies != self.view.replies:
            self._make_buttons(view.replies)
        self.view = view
        self.picture.set_picture(view.picture)
        self.other.set_picture(view.other)
        for label, text in (
            (self.name, view.name),
            (self.other_word, view.other_word),
            (self.title, view.title),
            (self.sentence, view.sentence),
        ):
            label.setText(text)
            label.setVisible(bool(text))
        self.other.setVisible(view.other is not None)
        self.setAccessibleName(f"{view.title} {view.sentence}")
        if chosen != self._chosen:
            self._chosen = chosen
            self.update()

    def button(self, reply: Reply) -> EdgeButton:
        """The button of an answer."""
        return self._buttons[reply]

    def _make_buttons(self, replies: tuple[Reply, ...]) -> None:
        for button in self._buttons.values():
            self._row.removeWidget(button)
            button.hide()
            button.deleteLater()
        self._buttons = {reply: self._button(reply) for reply in replies}

    def _button(self, reply: Reply) -> EdgeButton:
        button = EdgeButton(reply_word(reply), parent=self)
        button.clicked.connect(lambda: self.answered.emit(self.view.digest, reply))
        self._row.addWidget(button)
        return button

    def _lay_out(self) -> None:
        for label, role in (
            (self.name, "strong"),
            (self.other_word, "strong"),
            (self.title, "label"),
            (self.sentence, "strong"),
        ):
            label.setProperty("role", role)
            label.setProperty("on", "wall")
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(True)
        beside = QVBoxLayout()
        beside.setSpacing(2)
        beside.addWidget(self.name)
        beside.addWidget(self.other_word)
        beside.addWidget(self.other)
        beside.addStretch(1)
        pictures = QHBoxLayout()
        pictures.setSpacing(_INSIDE)
        pictures.addWidget(self.picture, 6, Qt.AlignmentFlag.AlignTop)
        pictures.addLayout(beside, 5)
        self._row = FlowLayout()
        column = QVBoxLayout(self)
        column.setContentsMargins(_INSIDE, _INSIDE, _INSIDE, _INSIDE)
        column.setSpacing(WITHIN)
        column.addLayout(pictures)
        column.addWidget(self.title)
        column.addWidget(self.sentence)
        column.addLayout(self._row)

    # Qt

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._grip = event.position()
        self.pressed.emit(self.view.digest)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._grip is None:
            return
        if (event.position() - self._grip).manhattanLength() >= QApplication.startDragDistance():
            self._grip = None
            begin_drag(self, self.view.digest, self.view.picture)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._grip = None

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        rect = QRectF(self.rect()).adjusted(2.5, 2.5, -2.5, -2.5)
        if self._chosen:
            painter.setPen(QPen(QColor(WALL_LIGHT), 5.0))
            painter.drawRoundedRect(rect, 6, 6)
        painter.setPen(QPen(QColor(WALL_INK), 3.0 if self._chosen else 1.25))
        painter.drawRoundedRect(rect, 6, 6)
        painter.end()
