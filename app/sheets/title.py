"""The row over a sheet: its name, what can be done with it, and how far its check is."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QAction, QFontMetricsF, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QMenu, QProgressBar, QSizePolicy, QWidget

from app.look import look
from app.look.space import WITHIN
from app.widgets.buttons import EdgeButton, IconButton
from core.i18n import translate


class SheetTitle(QWidget):
    """Name and buttons of a sheet; while it is checked, progress and a way to call it off.

    Signals
    -------
    asked(index: int, key: str)
        "corners", "turn", "replace", "remove", "scan" or "cancel".
    """

    asked = Signal(int, str)

    def __init__(self, index: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._index = index
        self._there = False
        self._busy = False
        self.label = QLabel(_name(index), self)
        self.label.setProperty("role", "line")
        self.label.setProperty("on", "wall")
        self.corners = self._button("corners", translate("sheets page", "Corners"), "")
        self.turn = self._button("turn", translate("sheets page", "Turn"), "turn")
        self.corners.setAccessibleName(
            translate("sheets page", "Corners of sheet {number}").format(number=index + 1)
        )
        self.turn.setAccessibleName(
            translate("sheets page", "Turn sheet {number} a quarter to the right").format(
                number=index + 1
            )
        )
        self.turn.setToolTip(translate("sheets page", "A quarter turn to the right"))
        self.more = IconButton(
            "more",
            translate("sheets page", "More for sheet {number}").format(number=index + 1),
            self,
        )
        self.menu = QMenu(self)
        self._actions: dict[str, QAction] = {}
        for key, text in (
            ("corners", translate("sheets page", "Set the &corners...")),
            ("turn", translate("sheets page", "&Turn a quarter to the right")),
            ("scan", translate("sheets page", "This is a flat &scan")),
            ("replace", translate("sheets page", "&Replace with another picture...")),
            ("remove", translate("sheets page", "Re&move from the study")),
        ):
            action = QAction(text, self.menu)
            action.triggered.connect(
                lambda _checked=False, key=key: self.asked.emit(self._index, key)
            )
            self.menu.addAction(action)
            self._actions[key] = action
        self._actions["scan"].setCheckable(True)
        self.more.clicked.connect(self._open_menu)
        self._progress = QProgressBar(self)
        self._progress.setRange(0, 100)
        self._progress.setTextVisible(False)
        self._cancel = EdgeButton(translate("sheets page", "Cancel"), parent=self)
        self._cancel.clicked.connect(lambda: self.asked.emit(self._index, "cancel"))
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(WITHIN)
        self._row.addWidget(self.label)
        self._row.addStretch(1)
        for widget in (self._progress, self._cancel, self.corners, self.turn, self.more):
            self._row.addWidget(widget, 0, Qt.AlignmentFlag.AlignVCenter)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self._fit()

    def show_sheet(self, there: bool, scan: bool) -> None:
        """Whether there is a sheet to do something with, and whether it is a flat scan."""
        self._there = there
        self._actions["scan"].setChecked(scan)
        self._fit()

    def show_busy(self, text: str, share: float) -> None:
        """The sheet is being checked; `share` of it is done."""
        self._busy = True
        self._progress.setValue(round(100 * share))
        self._progress.setAccessibleName(text)
        self._progress.setToolTip(text)
        self._fit()

    def show_idle(self) -> None:
        """The sheet is checked."""
        self._busy = False
        self._fit()

    @property
    def busy(self) -> bool:
        """Whether progress is shown."""
        return self._busy

    @property
    def cancel(self) -> EdgeButton:
        """The button that calls a check off."""
        return self._cancel

    @property
    def least(self) -> int:
        """Width that name and menu need."""
        return self._name_width() + self.more.sizeHint().width() + 3 * WITHIN

    def action(self, key: str) -> QAction:
        """An entry of the menu."""
        return self._actions[key]

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_row"):
            self._fit()

    def _button(self, key: str, text: str, icon: str) -> EdgeButton:
        button = EdgeButton(text, icon, self)
        button.clicked.connect(lambda: self.asked.emit(self._index, key))
        return button

    def _open_menu(self) -> None:
        self.menu.exec(self.more.mapToGlobal(self.more.rect().bottomLeft()))

    def _name_width(self) -> int:
        """As much for both sheets, so that both show the same buttons."""
        self.label.ensurePolished()
        metrics = QFontMetricsF(self.label.font())
        return round(max(metrics.horizontalAdvance(_name(index)) for index in (0, 1)) + 1.5)

    def _fit(self) -> None:
        """Buttons as far as there is room; what has none is in the menu all the same."""
        self._progress.setFixedSize(look().type.grow(84), look().type.grow(12))
        self._progress.setVisible(self._busy)
        self._cancel.setVisible(self._busy)
        usable = self._there and not self._busy
        room = self.width() - self._name_width() - WITHIN
        for button in (self.more, self.corners, self.turn):
            needed = button.sizeHint().width() + WITHIN
            # The menu holds everything, so its button always stays.
            fits = usable and (room >= needed or button is self.more)
            button.setVisible(fits)
            if fits:
                room -= needed


def _name(index: int) -> str:
    return translate("sheets page", "Sheet {number}").format(number=index + 1)
