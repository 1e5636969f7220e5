"""The left side of the cards dialog: which card, for which paper and printer."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from app.cards.card import CardChoice
from app.cards.paper import PAPERS
from app.look.space import WITHIN
from app.widgets.segmented import SegmentedControl
from app.widgets.stepper import Stepper
from core.i18n import translate
from core.paint.wash.amounts import MOST_STUDENTS


class ChoicePanel(QWidget):
    """What can be chosen, each under its name.

    Signals
    -------
    chosen(choice: CardChoice)
        Another card is wanted, or another way to print it.
    """

    chosen = Signal(object)

    def __init__(self, choice: CardChoice, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._choice = choice
        kinds = (
            ("plan", translate("cards", "Plan")),
            ("worksheet", translate("cards", "Worksheet")),
            ("findings", translate("cards", "Findings")),
            ("kit", translate("cards", "Kit list")),
        )
        papers = (("a4", translate("cards", "A4")), ("letter", translate("cards", "US Letter")))
        inks = (
            ("colour", translate("cards", "Colour")),
            ("bw", translate("cards", "Black and white")),
        )
        fills = (("filled", translate("cards", "As it is")), ("blank", translate("cards", "Blank")))
        self.kind = SegmentedControl(kinds, translate("cards", "Card"), self)
        self.paper = SegmentedControl(papers, translate("cards", "Paper"), self)
        self.ink = SegmentedControl(inks, translate("cards", "Printer"), self)
        self.fill = SegmentedControl(fills, translate("cards", "Answers"), self)
        self.kind.chosen.connect(lambda key: self._choose(kind=key))
        self.paper.chosen.connect(lambda key: self._choose(paper=PAPERS[key]))
        self.ink.chosen.connect(lambda key: self._choose(bw=key == "bw"))
        self.fill.chosen.connect(lambda key: self._choose(blank=key == "blank"))
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(WITHIN)
        self.students = Stepper(
            translate("cards", "Students"),
            translate("cards", "Fewer students"),
            translate("cards", "More students"),
            self,
        )
        self.students.set_range(1, MOST_STUDENTS)
        self.students.stepped.connect(lambda n: self._choose(students=n))
        self._labelled(translate("cards", "Card"), self.kind)
        self._answers = self._labelled(translate("cards", "Answers"), self.fill)
        self.students.setContentsMargins(0, 0, 0, WITHIN)
        self._column.addWidget(self.students)
        self._labelled(translate("cards", "Paper"), self.paper)
        self._labelled(translate("cards", "Printer"), self.ink)
        self.show_choice(choice)

    def show_choice(self, choice: CardChoice) -> None:
        """Show what is chosen."""
        self._choice = choice
        self.kind.set_chosen(choice.kind)
        self.paper.set_chosen(choice.paper.name)
        self.ink.set_chosen("bw" if choice.bw else "colour")
        self.fill.set_chosen("blank" if choice.blank else "filled")
        self._answers.setVisible(choice.kind == "worksheet")
        self.students.set_value(choice.students)
        self.students.setVisible(choice.kind == "kit")

    def _choose(self, **other: Any) -> None:
        self.chosen.emit(replace(self._choice, **other))

    def _labelled(self, text: str, control: QWidget) -> QWidget:
        both = QWidget(self)
        inner = QVBoxLayout(both)
        inner.setContentsMargins(0, 0, 0, WITHIN)
        inner.setSpacing(WITHIN)
        label = QLabel(text, both)
        label.setProperty("role", "strong")
        inner.addWidget(label)
        inner.addWidget(control)
        self._column.addWidget(both)
        return both
