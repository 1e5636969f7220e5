"""The day a sheet was painted: one press for today, then changed where it was another."""

from __future__ import annotations

from PySide6.QtCore import QDate, QEvent, QObject, QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QDateEdit, QHBoxLayout, QSizePolicy, QWidget

from app.look import look
from app.look.space import WITHIN
from app.state.document import Gesture
from app.widgets.buttons import EdgeButton, IconButton
from app.worksheet.fields import undoes
from core.i18n import translate

_WIDTH = 154


class DayField(QWidget):
    """A date that may be missing.

    Signals
    -------
    dated(date: str or None, gesture: Gesture)
        "2027-03-04", or None when it was taken away; not sent by `set_date`.
    """

    dated = Signal(object, object)

    def __init__(self, sheet: str, parent: QWidget | None = None) -> None:
        """`sheet` names the sheet to a screen reader."""
        super().__init__(parent)
        self._run = Gesture()
        self.add = EdgeButton(translate("worksheet", "Painted today"), "", self)
        self.add.setAccessibleDescription(
            translate("worksheet", "Sets the date of {sheet}").format(sheet=sheet)
        )
        self.edit = QDateEdit(self)
        self.edit.setDisplayFormat(translate("worksheet", "d MMM yyyy"))
        self.edit.setMinimumDate(QDate(1990, 1, 1))
        self.edit.setAccessibleName(
            translate("worksheet", "{sheet}, date it was painted").format(sheet=sheet)
        )
        self.edit.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.clear = IconButton("close", translate("worksheet", "Take the date away"), self)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(WITHIN)
        row.addWidget(self.add)
        row.addWidget(self.edit)
        row.addWidget(self.clear)
        row.addStretch(1)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.add.clicked.connect(self._begin)
        self.clear.clicked.connect(self._take_away)
        self.edit.dateChanged.connect(self._tell)
        self.edit.editingFinished.connect(self._end_run)
        for watched in (self.edit, self.edit.lineEdit()):
            watched.installEventFilter(self)
        self._fit()
        self.set_date(None)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "clear"):
            self._fit()

    def _fit(self) -> None:
        # As wide as the picture above it.
        self.edit.setFixedWidth(look().type.grow(_WIDTH))

    def set_date(self, date: str | None) -> None:
        """Show a date as "2027-03-04", or none."""
        day = QDate.fromString(date, Qt.DateFormat.ISODate) if date else QDate()
        known = day.isValid()
        if known and day != self.edit.date():
            with QSignalBlocker(self.edit):
                self.edit.setDate(day)
            self._end_run()
        for part, shown in ((self.add, not known), (self.edit, known), (self.clear, known)):
            part.setVisible(shown)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if undoes(event):
            event.ignore()
            return True
        # A wheel that scrolls the page does not change the date on the way.
        if event.type() == QEvent.Type.Wheel and not self.edit.hasFocus():
            event.ignore()
            return True
        return super().eventFilter(watched, event)

    def _begin(self) -> None:
        today = QDate.currentDate().toString(Qt.DateFormat.ISODate)
        self.dated.emit(today, Gesture())
        self.edit.setFocus(Qt.FocusReason.OtherFocusReason)

    def _take_away(self) -> None:
        self.dated.emit(None, Gesture())
        self.add.setFocus(Qt.FocusReason.OtherFocusReason)

    def _tell(self, day: QDate) -> None:
        self.dated.emit(day.toString(Qt.DateFormat.ISODate), self._run)

    def _end_run(self) -> None:
        self._run = Gesture()


def _preview() -> QWidget:
    page = QWidget()
    row = QHBoxLayout(page)
    for date in (None, "2027-03-04"):
        field = DayField("Sheet 1", page)
        field.set_date(date)
        row.addWidget(field)
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 520, 70))
