"""The preferences in one small window; all but the language takes effect at once."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QCloseEvent, QShowEvent
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.look import look
from app.look.space import GROUP, INSIDE, WITHIN
from app.state.language import LANGUAGES
from app.state.settings import TEXT_SIZES, Preferences, Settings
from app.widgets.answers import Answers
from app.widgets.buttons import InkButton
from app.widgets.focus import FocusRing
from app.widgets.layouts import layout_of
from app.widgets.segmented import SegmentedControl
from core.i18n import translate
from core.photo.views import VALUE_STEPS
from core.reading.percent import percent_text


@dataclass(frozen=True)
class Choice:
    """One preference: its name among the settings, what it is called, and what may be chosen."""

    name: str
    title: str
    options: tuple[tuple[Any, str], ...]
    note: str = ""


def _as_the_system() -> tuple[str, str]:
    return "system", translate("preferences", "As the system")


def _groups() -> tuple[tuple[str, tuple[Choice, ...]], ...]:
    return (
        (translate("preferences", "In class"), _class_choices()),
        (translate("preferences", "On paper"), _paper_choices()),
        (translate("preferences", "On the screen"), _screen_choices()),
    )


def _class_choices() -> tuple[Choice, ...]:
    return (
        Choice(
            "white_is",
            translate("preferences", "Value scale"),
            (
                (10, translate("preferences", "10 is white")),
                (0, translate("preferences", "0 is white")),
            ),
        ),
        Choice(
            "value_steps",
            translate("preferences", "Value steps"),
            tuple((steps, str(steps)) for steps in VALUE_STEPS),
        ),
        Choice(
            "tertiary",
            translate("preferences", "The six mixed hues"),
            (
                ("tertiary", translate("preferences", "tertiary")),
                ("intermediate", translate("preferences", "intermediate")),
            ),
        ),
    )


def _paper_choices() -> tuple[Choice, ...]:
    system = _as_the_system()
    return (
        Choice(
            "units",
            translate("preferences", "Lengths"),
            (
                system,
                ("cm", translate("preferences", "centimetres")),
                ("in", translate("preferences", "inches")),
            ),
        ),
        Choice(
            "paper",
            translate("preferences", "Cards are printed on"),
            (
                system,
                ("a4", translate("preferences", "A4")),
                ("letter", translate("preferences", "US Letter")),
            ),
        ),
    )


def _screen_choices() -> tuple[Choice, ...]:
    system = _as_the_system()
    return (
        Choice(
            "text_percent",
            translate("preferences", "Text size"),
            tuple((size, percent_text(size)) for size in TEXT_SIZES),
        ),
        Choice(
            "theme",
            translate("preferences", "Theme"),
            (
                system,
                ("light", translate("preferences", "Light")),
                ("dark", translate("preferences", "Dark")),
            ),
        ),
        Choice(
            "language",
            translate("preferences", "Language"),
            (system, *LANGUAGES.items()),
            translate("preferences", "The language changes at the next start."),
        ),
    )


class PreferencesWindow(QDialog):
    """A row of choices for each preference. It does not block the window behind it.

    Signals
    -------
    closed()
    """

    closed = Signal()

    def __init__(self, preferences: Preferences, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._preferences = preferences
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(translate("preferences", "Preferences"))
        self.controls: dict[str, SegmentedControl] = {}
        self._notes: dict[str, QLabel] = {}
        body = QWidget(self)
        body.setProperty("ground", "paper")
        self._grid = QGridLayout(body)
        self._grid.setContentsMargins(INSIDE, GROUP, INSIDE, GROUP)
        self._grid.setHorizontalSpacing(INSIDE)
        self._grid.setVerticalSpacing(WITHIN + 2)
        self._grid.setColumnStretch(1, 1)
        for title, choices in _groups():
            self._add_group(title, choices)
        self._grid.setRowStretch(self._grid.rowCount(), 1)
        self._body = body
        self._scroll = QScrollArea(self)
        self._scroll.setWidget(body)
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        note = QLabel(translate("preferences", "All but the language takes effect at once."), self)
        note.setProperty("role", "second")
        self.close_button = InkButton(translate("preferences", "Close"), "", self)
        self.close_button.clicked.connect(self.accept)
        foot = QHBoxLayout()
        foot.setContentsMargins(INSIDE, WITHIN, INSIDE, GROUP)
        foot.setSpacing(GROUP)
        foot.addWidget(note, 1)
        foot.addWidget(Answers(self, (), self.close_button))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._scroll, 1)
        column.addLayout(foot)
        preferences.changed.connect(self._show)
        self._show(preferences.settings, preferences.settings)
        self._ring = FocusRing(self)
        self.finished.connect(lambda _result: self._leave())
        self.controls["white_is"].focus_chosen()

    def _add_group(self, title: str, choices: tuple[Choice, ...]) -> None:
        heading = QLabel(title, self)
        heading.setProperty("role", "label")
        row = self._grid.rowCount()
        if self.controls:
            self._grid.setRowMinimumHeight(row, GROUP)
            row += 1
        self._grid.addWidget(heading, row, 0, 1, 2)
        for choice in choices:
            row += 1
            label = QLabel(choice.title, self)
            options = [(str(value), text) for value, text in choice.options]
            control = SegmentedControl(options, choice.title, self)
            values = {str(value): value for value, _ in choice.options}
            control.chosen.connect(
                lambda key, name=choice.name, values=values: self._preferences.set(
                    **{name: values[key]}
                )
            )
            self.controls[choice.name] = control
            self._grid.addWidget(label, row, 0)
            self._grid.addWidget(control, row, 1, Qt.AlignmentFlag.AlignLeft)
            if choice.note:
                row += 1
                note = QLabel(choice.note, self)
                note.setProperty("role", "second")
                self._grid.addWidget(note, row, 1)

    def _show(self, before: Settings, after: Settings) -> None:
        for name, control in self.controls.items():
            control.set_chosen(str(getattr(after, name)))

    def _leave(self) -> None:
        self._ring.stop()
        self._preferences.changed.disconnect(self._show)
        self.closed.emit()

    # Qt

    def sizeHint(self) -> QSize:
        wanted = self._body.sizeHint()
        foot = self.close_button.sizeHint().height() + WITHIN + GROUP
        size = QSize(wanted.width() + 2, wanted.height() + foot + 2)
        screen = self.screen().availableSize() if self.screen() else size
        most = QSize(round(0.96 * screen.width()), round(0.92 * screen.height()))
        if size.height() > most.height():
            size.setWidth(size.width() + self._scroll.verticalScrollBar().sizeHint().width())
        return size.boundedTo(most)

    def minimumSizeHint(self) -> QSize:
        return QSize(min(self.sizeHint().width(), look().type.grow(360)), look().type.grow(200))

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.resize(self.sizeHint())

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        # Larger words need a larger window, at once.
        if event.type() == QEvent.Type.StyleChange and self.isVisible():
            layout_of(self._body).activate()
            self.resize(self.sizeHint())

    def closeEvent(self, event: QCloseEvent) -> None:
        self.reject()
        super().closeEvent(event)


def _preview() -> QWidget:
    from pathlib import Path
    from tempfile import mkdtemp

    return PreferencesWindow(Preferences(Path(mkdtemp())))


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 700, 560))
