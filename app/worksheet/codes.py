"""Whose worksheet it is: codes the teacher gives, never a name that is asked for."""

from __future__ import annotations

from PySide6.QtCore import QSize, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget

from app.look.space import GROUP, WITHIN
from app.worksheet.fields import CodeField
from core.i18n import translate
from core.worksheet.worksheet import MOST_CODE


class CodesRow(QWidget):
    """Student and class.

    Signals
    -------
    written(name: str, code: str, gesture: Gesture)
        `name` is "student_code" or "class_code".
    """

    written = Signal(str, str, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = QHBoxLayout(self)
        row.setSpacing(WITHIN)
        self.fields: dict[str, CodeField] = {}
        for name, title, hint in (
            (
                "student_code",
                translate("worksheet", "Student"),
                translate("worksheet", "a code, not a name"),
            ),
            ("class_code", translate("worksheet", "Class"), translate("worksheet", "such as 7b")),
        ):
            label = QLabel(title, self)
            label.setProperty("role", "label")
            field = CodeField(title, hint, MOST_CODE, self)
            field.changed.connect(
                lambda text, gesture, name=name: self.written.emit(name, text, gesture)
            )
            label.setBuddy(field)
            self.fields[name] = field
            row.addWidget(label)
            row.addWidget(field)
            row.addSpacing(GROUP)
        row.addStretch(1)  # or the labels would take what is left over, away from their fields
        row.setContentsMargins(0, 0, 0, 0)
        self._row = row
        self.set_fixed(False)

    def minimumSizeHint(self) -> QSize:
        return QSize(self._row.minimumSize().width(), super().minimumSizeHint().height())

    def set_fixed(self, fixed: bool) -> None:
        """Whether the codes are the class list's, and cannot be changed here."""
        why = translate("worksheet", "You may leave it empty. The key to names stays with you.")
        if fixed:
            why = translate(
                "worksheet", "Whose work this is, the class list says: it cannot be changed here."
            )
        for field in self.fields.values():
            field.setEnabled(not fixed)
            field.setToolTip(why)

    def set_codes(self, student: str, class_: str) -> None:
        """Show the codes."""
        self.fields["student_code"].set_text(student)
        self.fields["class_code"].set_text(class_)


def _preview() -> QWidget:
    return CodesRow()


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 900, 60))
