"""A line across a page that says what happened and what to do; and a page with nothing yet."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from app.look import look
from app.look.icons import paint_icon
from app.look.space import GROUP, INSIDE, WITHIN
from app.widgets.buttons import EdgeButton, IconButton, InkButton
from core.i18n import translate


class NoticeBar(QWidget):
    """One sentence, an action if there is one, and a close button. Hidden until told something.

    Signals
    -------
    action_asked()
        The action was pressed.
    closed()
        The user closed it.
    """

    action_asked = Signal()
    closed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._icon = "info"
        self._label = QLabel(self)
        self._label.setProperty("role", "medium")
        self._label.setWordWrap(True)
        self._label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._action = EdgeButton("", parent=self)
        self._close = IconButton("close", translate("notice", "Close this notice"), self)
        self._row = QHBoxLayout(self)
        self._row.setSpacing(GROUP)
        self._row.addWidget(self._label, 1)
        self._row.addWidget(self._action)
        self._row.addWidget(self._close)
        self._action.clicked.connect(self.action_asked)
        self._close.clicked.connect(self._shut)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        self._refresh()
        self.hide()

    def tell(self, sentence: str, action: str = "", *, caution: bool = False) -> None:
        """Show a sentence; `action` is the text of its button; `caution` warns."""
        self._icon = "caution" if caution else "info"
        self._label.setText(sentence)
        self.setAccessibleName(sentence)
        self._action.setText(action)
        self._action.setVisible(bool(action))
        self.show()
        self.update()

    def clear(self) -> None:
        """Nothing to say any more."""
        self.hide()

    @property
    def sentence(self) -> str:
        """What it says now."""
        return self._label.text()

    def _shut(self) -> None:
        self.hide()
        self.closed.emit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_row"):
            self._refresh()

    def _refresh(self) -> None:
        scale = look().type
        side = scale.grow(20)
        self._row.setContentsMargins(INSIDE + side + WITHIN, WITHIN, GROUP, WITHIN)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme, scale = look().theme, look().type
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(theme.raised))
        painter.fillRect(QRectF(0, 0, 6, self.height()), QColor(theme.ink))
        side = scale.grow(20)
        icon = QRectF(INSIDE - 2, (self.height() - side) / 2, side, side)
        paint_icon(painter, icon, self._icon, theme.ink)
        painter.end()


class EmptyState(QWidget):
    """What a page shows before there is anything: one bold line, one sentence, one ink button.

    Signals
    -------
    asked()
        The button was pressed.
    """

    asked = Signal()

    def __init__(
        self, line: str, sentence: str, button: str, icon: str = "", parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._line = QLabel(line, self)
        self._sentence = QLabel(sentence, self)
        self._line.setProperty("role", "line")
        for label in (self._line, self._sentence):
            label.setWordWrap(True)
        self.button = InkButton(button, icon, self)
        self.button.clicked.connect(self.asked)
        column = QVBoxLayout(self)
        column.setContentsMargins(INSIDE, INSIDE, INSIDE, INSIDE)
        column.setSpacing(WITHIN)
        column.addStretch(2)
        column.addWidget(self._line)
        column.addWidget(self._sentence)
        column.addSpacing(WITHIN)
        column.addWidget(self.button, 0, Qt.AlignmentFlag.AlignLeft)
        column.addStretch(3)

    def set_texts(self, line: str, sentence: str, button: str) -> None:
        """Say something else."""
        self._line.setText(line)
        self._sentence.setText(sentence)
        self.button.setText(button)
        self.button.updateGeometry()

    def sizeHint(self) -> QSize:
        scale = look().type
        return QSize(scale.grow(420), scale.grow(190))


def _preview() -> QWidget:
    page = QWidget()
    column = QVBoxLayout(page)
    column.setContentsMargins(0, 0, 0, 0)
    bar = NoticeBar()
    bar.tell(
        "The end of the sky is not sure here: drag the horizon line, or press the other one.",
        "Use the other line",
        caution=True,
    )
    column.addWidget(bar)
    column.addWidget(
        EmptyState(
            "No sheet yet.", "Photograph it flat, the whole tape border in view.", "Add a sheet"
        )
    )
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 900, 260))
