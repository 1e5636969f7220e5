"""A field that stays closed until the student's own scores are in, and says what opens it."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from app.look import look
from app.look.icons import paint_icon
from app.look.space import EDGE, GROUP, RADIUS, WITHIN
from app.widgets.buttons import EdgeButton
from core.i18n import translate
from core.reading.quality import Quality
from core.sheet.findings.words import quality_word
from core.words.lists import listed


class LockField(QWidget):
    """A dashed field with a lock.

    Signals
    -------
    score_asked()
        The way on: the student scores the sheet first.
    show_asked()
        The teacher wants it shown anyway.
    """

    score_asked = Signal()
    show_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._text = QLabel(self)
        self._text.setWordWrap(True)
        self._text.setProperty("role", "medium")
        self._column = QVBoxLayout(self)
        self._column.setSpacing(WITHIN)
        self._column.addWidget(self._text)
        self.score = EdgeButton(translate("sheets page", "Score it now"), "pencil", self)
        self.score.setToolTip(translate("sheets page", "Goes to the worksheet"))
        self.score.clicked.connect(self.score_asked)
        self._column.addWidget(self.score, 0, Qt.AlignmentFlag.AlignLeft)
        self.button = EdgeButton(translate("sheets page", "Show it anyway"), "eye", self)
        self.button.setToolTip(
            translate("sheets page", "For the teacher: before the student's own scores are in")
        )
        self.button.clicked.connect(self.show_asked)
        self._column.addWidget(self.button, 0, Qt.AlignmentFlag.AlignLeft)
        self._pad()

    def set_missing(self, index: int, missing: tuple[Quality, ...]) -> None:
        """Say which of a sheet's own scores are missing."""
        text = translate(
            "sheets page",
            "What was measured of sheet {number} waits for the student's own scores. "
            "Still missing on the worksheet: {qualities}.",
        )
        words = listed([quality_word(quality) for quality in missing])
        self._text.setText(text.format(number=index + 1, qualities=words))

    @property
    def text(self) -> str:
        """What it says."""
        return self._text.text()

    def changeEvent(self, event: object) -> None:
        super().changeEvent(event)  # type: ignore[arg-type]
        if hasattr(self, "_column"):
            self._pad()

    def _pad(self) -> None:
        side = look().type.grow(20)
        self._column.setContentsMargins(GROUP + side + WITHIN + 2, GROUP, GROUP, GROUP)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme, side = look().theme, look().type.grow(20)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        pen = QPen(QColor(theme.edge), EDGE)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        pen.setDashPattern([4, 3])
        painter.setPen(pen)
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), RADIUS, RADIUS)
        paint_icon(painter, QRectF(GROUP, GROUP, side, side), "lock", theme.ink)
        painter.end()
