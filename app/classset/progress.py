"""How far a bringing in or a check is, with the way to call it off."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QProgressBar, QSizePolicy, QWidget

from app.look import look
from app.look.space import WITHIN
from app.services.class_set.underway import Underway
from app.widgets.buttons import EdgeButton
from core.i18n import translate


class WorkProgress(QWidget):
    """A bar, a count with the time left, and a button.

    Signals
    -------
    stop_asked(), go_on_asked()
    """

    stop_asked = Signal()
    go_on_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bar = QProgressBar(self)
        self.bar.setTextVisible(False)
        self.bar.setAccessibleName(translate("class set page", "Progress"))
        self.label = QLabel(self)
        self.label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.button = EdgeButton("", parent=self)
        self.button.clicked.connect(self._pressed)
        self._running = False
        self._whole = self._short = ""
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(WITHIN)
        row.addWidget(self.bar)
        row.addWidget(self.label, 1)
        row.addWidget(self.button)
        row.setAlignment(self.bar, Qt.AlignmentFlag.AlignVCenter)
        self.hide()

    @property
    def text(self) -> str:
        """What it says, whole."""
        return self._whole

    def least_width(self) -> int:
        """What it needs with its count; how long the rest will take gives way."""
        shown = [each for each in (self.bar, self.button) if not each.isHidden()]
        words = self.label.fontMetrics().horizontalAdvance(self._short)
        return sum(each.sizeHint().width() for each in shown) + words + 3 * WITHIN

    def show_work(self, underway: tuple[Underway, ...], unchecked: int) -> None:
        """Show what works, or what is left to be checked; hidden where there is neither."""
        self._running = bool(underway)
        if underway:
            one = underway[0]
            self.bar.setRange(0, one.of)  # 0 of 0 moves: how many is not known yet
            self.bar.setValue(one.done)
            self._say(words(one), words(one, with_time=False))
            self.button.setText(translate("class set page", "Stop"))
        elif unchecked:
            text = translate("class set page", "Not checked yet: {n}")
            self._say(text.format(n=unchecked), text.format(n=unchecked))
            self.button.setText(translate("class set page", "Check them"))
        self.bar.setVisible(bool(underway))
        self.bar.setFixedWidth(look().type.grow(110))
        self.button.updateGeometry()
        self.setVisible(bool(underway) or bool(unchecked))

    def _say(self, whole: str, short: str) -> None:
        self._whole, self._short = whole, short
        self.label.setToolTip(whole)
        self.label.setAccessibleName(whole)
        self._cut()

    def _cut(self) -> None:
        """Where there is no room for how long it will take, only the count is shown."""
        width = self.label.fontMetrics().horizontalAdvance(self._whole)
        self.label.setText(self._whole if width <= self.label.width() else self._short)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._cut()

    def _pressed(self) -> None:
        (self.stop_asked if self._running else self.go_on_asked).emit()


def words(one: Underway, *, with_time: bool = True) -> str:
    """How far work is, in words."""
    if one.stopping:
        return translate("class set page", "Stopping...")
    if one.what == "bringing":
        text = translate("class set page", "Bringing in {done} of {all}")
        begin = translate("class set page", "Looking at the files...")
    else:
        text = translate("class set page", "Checking: {done} of {all}")
        begin = translate("class set page", "Getting ready to check...")
    if not one.of:
        return begin
    said = text.format(done=one.done, all=one.of)
    return f"{said}, {one.left}" if one.left and with_time else said
