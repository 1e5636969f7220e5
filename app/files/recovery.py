"""Unsaved work of a window that was cut off is offered: opened, or given up."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QDate, QDateTime, QLocale, Qt
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from app.look import look
from app.look.space import GROUP, INSIDE, WITHIN
from app.widgets.answers import Answers
from app.widgets.buttons import EdgeButton, InkButton
from app.widgets.focus import FocusRing
from core.file_sentences import shown_name
from core.i18n import translate
from core.study_file.recovery import Recovered

WIDTH = 620
MOST_SHOWN = 5
"""More than these wait for the next start."""


def when_words(when: float, now: QDateTime | None = None) -> str:
    """The time of a change as one says it.

    Parameters
    ----------
    when : float
        Seconds since 1970.
    now : QDateTime, optional
        What "today" is; the clock otherwise.
    """
    moment, locale = QDateTime.fromSecsSinceEpoch(int(when)), QLocale()
    time = locale.toString(moment.time(), QLocale.FormatType.ShortFormat)
    today: QDate = (now or QDateTime.currentDateTime()).date()
    if moment.date() == today:
        return translate("recovery", "today at {time}").format(time=time)
    if moment.date() == today.addDays(-1):
        return translate("recovery", "yesterday at {time}").format(time=time)
    day = locale.toString(moment.date(), QLocale.FormatType.LongFormat)
    return translate("recovery", "{day}, {time}").format(day=day, time=time)


def place_words(path: Path | None) -> str:
    """Where the work had been saved before."""
    if path is None:
        return translate("recovery", "It was never saved.")
    return translate("recovery", "Its last saved version is {name}.").format(name=shown_name(path))


class RecoveryDialog(QDialog):
    """Lists what was found; what is given up goes when the dialog closes, and not before.

    Parameters
    ----------
    found : sequence of Recovered
        The newest first.
    open_it, give_up : callable
        Take one of them.
    """

    def __init__(
        self,
        parent: QWidget | None,
        found: tuple[Recovered, ...],
        open_it: Callable[[Recovered], object],
        give_up: Callable[[Recovered], object],
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(translate("recovery", "Unsaved work"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._open_it = open_it
        self._give_up = give_up
        self._chosen: Recovered | None = None
        line = QLabel(translate("recovery", "Your unsaved work is still here."), self)
        line.setProperty("role", "line")
        sentence = QLabel(
            translate(
                "recovery",
                "Gradewash did not end as it should, so your changes were kept. "
                "Open them, or give them up if you do not need them.",
            ),
            self,
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(INSIDE, INSIDE, INSIDE, INSIDE)
        column.setSpacing(WITHIN)
        for label in (line, sentence):
            label.setWordWrap(True)
            column.addWidget(label)
        self.rows = tuple(
            RecoveredRow(one, self, newest=number == 0)
            for number, one in enumerate(found[:MOST_SHOWN])
        )
        for number, row in enumerate(self.rows):
            column.addSpacing(WITHIN)
            rule = QWidget(self)
            rule.setFixedHeight(1)
            rule.setStyleSheet(f"background: {look().theme.rule};")
            column.addWidget(rule)
            column.addSpacing(WITHIN)
            column.addWidget(row)
            row.open_button.clicked.connect(lambda checked=False, at=number: self._choose(at))
        column.addSpacing(GROUP)
        self.later = EdgeButton(translate("recovery", "Decide &later"), parent=self)
        self.later.clicked.connect(self.reject)
        column.addWidget(Answers(self, (), self.later))
        width = max(look().type.grow(WIDTH), self.sizeHint().width())
        self.setFixedSize(width, column.totalHeightForWidth(width))
        self.setAccessibleName(line.text())
        self.setAccessibleDescription(sentence.text())
        self._ring = FocusRing(self)
        self.rows[0].open_button.setDefault(True)
        self.rows[0].open_button.setFocus()

    def _choose(self, number: int) -> None:
        self._chosen = self.rows[number].recovered
        self.accept()

    def done(self, result: int) -> None:
        self._ring.stop()
        super().done(result)
        for row in self.rows:
            if row.given_up and row.recovered is not self._chosen:
                self._give_up(row.recovered)
        chosen, self._chosen = self._chosen, None
        if chosen is not None:
            self._open_it(chosen)


class RecoveredRow(QWidget):
    """One piece of unsaved work: what, when, and what to do with it."""

    def __init__(self, recovered: Recovered, parent: QWidget, *, newest: bool = False) -> None:
        super().__init__(parent)
        self.recovered = recovered
        self.given_up = False
        self._title = QLabel(recovered.title or translate("recovery", "A study without title"))
        self._title.setProperty("role", "strong")
        self._about = QLabel(self)
        self._about.setProperty("role", "second")
        for label in (self._title, self._about):
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(True)
        words = QVBoxLayout()
        words.setSpacing(2)
        words.addWidget(self._title)
        words.addWidget(self._about)
        # One ink button: the newest work is the likeliest to be wanted.
        kind = InkButton if newest else EdgeButton
        self.open_button = kind(translate("recovery", "Open it"), parent=self)
        self.give_up_button = EdgeButton(translate("recovery", "Discard it"), parent=self)
        for button in (self.open_button, self.give_up_button):
            button.setAutoDefault(True)
            button.setAccessibleDescription(self._title.text())
        self.give_up_button.clicked.connect(self._turn)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(WITHIN + 4)
        row.addLayout(words, 1)
        row.addWidget(self.open_button, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(self.give_up_button, 0, Qt.AlignmentFlag.AlignTop)
        self._show()

    def _turn(self) -> None:
        self.given_up = not self.given_up
        self._show()

    def _show(self) -> None:
        if self.given_up:
            self._about.setText(
                translate("recovery", "Set aside once you close this window.")
                if self.recovered.partial
                else translate("recovery", "Gone once you close this window.")
            )
            self.give_up_button.setText(translate("recovery", "Keep it after all"))
        else:
            when = when_words(self.recovered.when)
            # Some languages end an hour with a stop of its own: "8:06 p.m.".
            changed = translate("recovery", "Last changed {when}.").format(when=when.rstrip("."))
            words = [changed, place_words(self.recovered.path)]
            if self.recovered.partial:
                words.append(translate("recovery", "Not all of it can be read."))
            self._about.setText(" ".join(words))
            self.give_up_button.setText(translate("recovery", "Discard it"))
        self.give_up_button.updateGeometry()
        self.open_button.setEnabled(not self.given_up)


def _preview() -> QWidget:
    from core.study_file.contents import Contents

    nothing = Contents(b"", {})
    found = (
        Recovered("1", "Dusk over the lake", Path("lesson.gradewash"), 1.8e9, nothing),
        Recovered("2", "A winter morning behind the school", None, 1.79e9, nothing),
    )
    dialog = RecoveryDialog(None, found, lambda one: None, lambda one: None)
    dialog.rows[1].give_up_button.click()
    return dialog


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, WIDTH, 300))
