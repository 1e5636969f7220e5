"""Asks what a new class set is called, who is in it, and where its folder goes."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from app.files.file_dialogs import ask_for_folder
from app.look import look
from app.look.space import INSIDE, WITHIN
from app.widgets.answers import Answers
from app.widgets.buttons import EdgeButton, InkButton
from app.widgets.focus import FocusRing
from app.widgets.layouts import layout_of
from core.class_set.folder import holds_class_set
from core.class_set.students import ClassList, class_list_of, codes_from, looks_like_name
from core.errors import GradewashError
from core.i18n import translate

WIDTH = 560


@dataclass(frozen=True)
class NewClass:
    """What was asked for."""

    title: str
    class_list: ClassList
    folder: Path


class NewClassDialog(QDialog):
    """A field for the class, one for the codes, and the folder.

    Parameters
    ----------
    exercise : str
        What the exercise is called whose photo, lines and paints the class set gets.
    home : Path
        Where the folder is proposed.
    known : ClassList or None
        The list of the class set that is open: its tickets serve again.
    make : callable
        Takes the `NewClass`.
    """

    def __init__(
        self,
        parent: QWidget | None,
        exercise: str,
        home: Path,
        known: tuple[str, ClassList] | None,
        make: Callable[[NewClass], object],
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(translate("class set page", "New class set"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._make, self._home, self._known = make, home, known
        self._chosen: Path | None = None
        about = translate(
            "class set page",
            "It takes the photo, the lines and the paints of {title}. Students go by codes, so "
            "that names stay with you.",
        ).format(title=exercise)
        self.title = QLineEdit("" if known is None else known[0], self)
        self.title.setPlaceholderText("7b")
        self.codes = QLineEdit("01-30", self)
        self.same = QCheckBox(
            translate("class set page", "The same students as in the class set that is open"), self
        )
        self.same.setChecked(known is not None)
        self.same.setVisible(known is not None)
        self.same.toggled.connect(self._follow)
        self.names = QCheckBox(translate("class set page", "These are codes, not names"), self)
        self.names.hide()
        self.names.toggled.connect(self._follow)
        self.folder = QLabel(self)
        self.folder.setWordWrap(True)
        self.problem = QLabel(self)
        self.problem.setWordWrap(True)
        self.problem.setProperty("role", "strong")
        self.button: EdgeButton = InkButton(translate("class set page", "Make it"), parent=self)
        self._lay_out(about)
        self.title.textChanged.connect(self._follow)
        self.codes.textChanged.connect(self._follow)
        self.button.clicked.connect(self.accept)
        self.setFixedWidth(look().type.grow(WIDTH))
        self._ring = FocusRing(self)
        self._follow()
        self.title.setFocus()

    @property
    def target(self) -> Path:
        """The folder it will be made in."""
        if self._chosen is not None:
            return self._chosen
        name = " ".join(self.title.text().split()) or translate("class set page", "class set")
        name = "".join(c if c.isalnum() or c in " ._-" else "_" for c in name).strip(" .")
        name = name or translate("class set page", "class set")
        for number in range(2, 100):
            wanted = self._home / (name if number == 2 else f"{name} {number - 1}")
            if not holds_class_set(wanted):
                return wanted
        return self._home / name

    def accept(self) -> None:
        found = self._class_list()
        if isinstance(found, str):
            self._tell(found)
            return
        target = self.target
        self.done(QDialog.DialogCode.Accepted)
        self._make(NewClass(self.title.text(), found, target))

    def done(self, result: int) -> None:
        self._ring.stop()
        super().done(result)

    def _lay_out(self, about: str) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(INSIDE, INSIDE, INSIDE, INSIDE)
        column.setSpacing(WITHIN)
        line = QLabel(translate("class set page", "A class set keeps one class's sheets."), self)
        line.setProperty("role", "line")
        text = QLabel(about, self)
        text.setTextFormat(Qt.TextFormat.PlainText)
        for label in (line, text):
            label.setWordWrap(True)
            column.addWidget(label)
        column.addSpacing(WITHIN)
        column.addWidget(self._named(translate("class set page", "Class"), self.title))
        column.addWidget(self.title)
        column.addWidget(self.same)
        codes = translate("class set page", "Codes: a range, a list with commas, or a file")
        column.addWidget(self._named(codes, self.codes))
        column.addWidget(self.codes)
        column.addWidget(self.names)
        column.addSpacing(4)
        place = QHBoxLayout()
        other = EdgeButton(translate("class set page", "Another folder..."), parent=self)
        other.setAutoDefault(False)
        other.clicked.connect(self._choose)
        place.addWidget(self.folder, 1)
        place.addWidget(other)
        column.addLayout(place)
        column.addWidget(self.problem)
        column.addSpacing(WITHIN)
        cancel = EdgeButton(translate("question", "Cancel"), parent=self)
        cancel.clicked.connect(self.reject)
        column.addWidget(Answers(self, (self.button,), cancel))

    def _named(self, text: str, field: QLineEdit) -> QLabel:
        label = QLabel(text, self)
        label.setProperty("role", "strong")
        label.setBuddy(field)
        field.setAccessibleName(text)
        return label

    def _choose(self) -> None:
        path = ask_for_folder(
            self, translate("class set page", "Folder of the class set"), self._home
        )
        if path is not None:
            self._chosen = path
            self._follow()

    def _follow(self, *_: object) -> None:
        same = self.same.isChecked() and self._known is not None
        self.codes.setEnabled(not same)
        target = self.target
        self.folder.setText(translate("class set page", "Folder: {path}").format(path=target))
        found = self._class_list()
        self.names.setVisible(self.names.isChecked() or self._named_somebody())
        if isinstance(found, str) and self.codes.text().strip():
            self._tell(found)
        elif holds_class_set(target):
            self._tell(
                translate("class set page", "There is a class set already: choose another folder.")
            )
        else:
            self._tell("")
        self.button.set_available(not isinstance(found, str) and not holds_class_set(target))

    def _tell(self, sentence: str) -> None:
        self.problem.setText(sentence)
        self.problem.setVisible(bool(sentence))
        # Wrapped lines need their height told: a dialog of a fixed width asks for none.
        layout = layout_of(self)
        layout.invalidate()
        self.setFixedHeight(layout.totalHeightForWidth(self.width()))

    def _named_somebody(self) -> bool:
        try:
            return any(looks_like_name(code) for code in codes_from(self.codes.text()))
        except GradewashError:
            return False

    def _class_list(self) -> ClassList | str:
        """Who is in the class; a sentence where that cannot be told."""
        if self.same.isChecked() and self._known is not None:
            return self._known[1]
        if self._named_somebody() and not self.names.isChecked():
            return translate(
                "class set page",
                "A code looks like a name, and names stay with you: give a code instead, or say "
                "that it is none.",
            )
        try:
            return class_list_of(codes_from(self.codes.text()), names_too=self.names.isChecked())
        except GradewashError as error:
            return str(error)


def _preview() -> QWidget:
    return NewClassDialog(None, "dusk over the lake", Path.home(), None, lambda new: None)


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, WIDTH, 320))
