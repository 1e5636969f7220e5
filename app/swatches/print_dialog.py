"""Ask for a swatch card: the class's paints by name, and what each behaves like."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.cards import ask
from app.cards.paper import PAPERS, Paper
from app.cards.printing import PrintJob, printer_for
from app.cards.swatches import card_title, lay_out_swatches
from app.errors import sentence_of
from app.look import look
from app.look.space import GROUP, INSIDE, WITHIN
from app.state.tasks import Latest
from app.swatches.jobs import printing
from app.widgets.answers import Answers
from app.widgets.buttons import EdgeButton, InkButton
from app.widgets.focus import FocusRing
from app.widgets.segmented import SegmentedControl
from core.errors import GradewashError
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.box.own_paint import MAX_NAME
from core.paint.box.swatch_card import SwatchCard
from core.paint.pigment.catalogue import CATALOGUE
from core.swatches.asking import box_with_cards, cards_for, paints_of_box, proposed_like
from core.words.lists import sentence_case

WIDTH, HEIGHT = 640, 620
Cards = tuple[SwatchCard, ...]


class PaintAsked(QWidget):
    """One paint: whether it goes on the card, its name, what it behaves like."""

    def __init__(self, name: str, like: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.wanted = QCheckBox(self)
        self.wanted.setChecked(True)
        self.name = QLineEdit(name, self)
        self.name.setMaxLength(MAX_NAME)
        self.name.setPlaceholderText(translate("swatches", "as the tube says"))
        self.like = QComboBox(self)
        self._by_hand = bool(name)
        for paint in CATALOGUE.values():
            self.like.addItem(sentence_case(paint_name(paint)), paint.key)
        self._choose(like)
        self.wanted.setAccessibleName(translate("swatches", "On the card"))
        self.name.setAccessibleName(translate("swatches", "The paint's name"))
        self.like.setAccessibleName(translate("swatches", "It behaves like"))
        self.name.textEdited.connect(self._propose)
        self.like.activated.connect(lambda index: self._settle())
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(WITHIN)
        row.addWidget(self.wanted)
        row.addWidget(self.name, 3)
        row.addWidget(self.like, 2)

    def asked(self) -> tuple[str, str] | None:
        """Name and like; None where it is not wanted or has no name."""
        name = self.name.text().strip()
        return (name, self.like.currentData()) if name and self.wanted.isChecked() else None

    def _propose(self, text: str) -> None:
        if not self._by_hand and text.strip():
            self._choose(proposed_like(text))

    def _settle(self) -> None:
        self._by_hand = True

    def _choose(self, like: str) -> None:
        self.like.setCurrentIndex(max(self.like.findData(like), 0))


class PrintCardDialog(QDialog):
    """The dialog.

    Parameters
    ----------
    parent : QWidget or None
    box : Box
    paper : Paper
        Chosen at first.
    keep : callable
        Takes the box with the cards that were printed for it.
    """

    def __init__(
        self, parent: QWidget | None, box: Box, paper: Paper, keep: Callable[[Box, str], object]
    ) -> None:
        super().__init__(parent)
        self._box, self._keep, self._paper = box, keep, paper
        self._work = Latest(self)
        self._job: PrintJob | None = None
        self.setWindowTitle(translate("swatches", "Print a swatch card"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setModal(True)
        self.rows: list[PaintAsked] = []
        self._list = QVBoxLayout()
        self._list.setSpacing(WITHIN)
        self._make_controls()
        self._lay_out()
        for name, like in paints_of_box(box):
            self.add(name, like)
        self._ring = FocusRing(self)
        self._say("")

    @property
    def working(self) -> bool:
        """Whether a card is being written or printed."""
        return self._work.running or self._job is not None

    def add(self, name: str = "", like: str = "ultramarine") -> PaintAsked:
        """One paint more."""
        row = PaintAsked(name, like, self)
        self.rows.append(row)
        self._list.addWidget(row)
        return row

    def done(self, result: int) -> None:
        self._work.cancel()
        self._ring.stop()
        super().done(result)

    def cards(self) -> Cards:
        """The pages asked for.

        Raises
        ------
        GradewashError
            Nothing asked for, or a paint twice.
        """
        return cards_for([asked for row in self.rows if (asked := row.asked())], self._box)

    def save(self) -> None:
        """Ask where, and write the PDF in a worker."""
        cards = self._asked()
        if cards is None:
            return
        suggestion = Path.home() / f"{card_title(cards)}.pdf"
        path = ask.ask_pdf_path(self, suggestion)
        if path is None:
            return
        work = printing(path, cards, self._box, self._paper)
        self._work.run(work, lambda name: self._done(cards, name), self._failed)

    def print(self) -> None:
        """Ask for a printer, and print."""
        cards = self._asked()
        if cards is None:
            return
        if not ask.has_printer():
            self._say(
                translate(
                    "cards",
                    "No printer is set up here: save the card as a PDF, and print that.",
                )
            )
            return
        printer = printer_for(self._paper, card_title(cards))
        if ask.ask_printer(self, printer):
            self._print_on(printer, cards)

    def _print_on(self, printer: QPrinter, cards: Cards) -> None:
        self._job = PrintJob(printer, lay_out_swatches(cards, self._box, self._paper), self)
        self._job.done.connect(lambda: self._done(cards, ""))
        self._job.failed.connect(self._not_printed)
        self._job.start()

    def _not_printed(self) -> None:
        self._job = None
        self._say(
            translate("swatches", "The printer took no page: save the card as a PDF instead.")
        )

    def _asked(self) -> Cards | None:
        if self.working:
            return None
        try:
            return self.cards()
        except GradewashError as error:
            self._say(str(error))
            return None

    def _done(self, cards: Cards, name: str) -> None:
        box = box_with_cards(self._box, cards)
        self.accept()
        self._keep(box, name)

    def _failed(self, error: Exception) -> None:
        self._say(sentence_of(error))

    def _say(self, text: str) -> None:
        self._status.setText(text)
        self._status.setVisible(bool(text))

    def _make_controls(self) -> None:
        self.another = EdgeButton(translate("swatches", "Another paint"), parent=self)
        self.another.clicked.connect(lambda: self.add().name.setFocus())
        self.paper = SegmentedControl(
            [("a4", "A4"), ("letter", "Letter")], translate("swatches", "Paper"), self
        )
        self.paper.set_chosen(self._paper.name)
        self.paper.chosen.connect(self._choose_paper)
        self.button = InkButton(translate("cards", "Save as PDF"), parent=self)
        self.button.clicked.connect(self.save)
        self.printer = EdgeButton(translate("cards", "Print"), parent=self)
        self.printer.clicked.connect(self.print)
        self.cancel = EdgeButton(translate("question", "Cancel"), parent=self)
        self.cancel.clicked.connect(self.reject)
        self.another.setAutoDefault(False)

    def _choose_paper(self, name: str) -> None:
        self._paper = next(paper for key, paper in PAPERS.items() if key == name)

    def _lay_out(self) -> None:
        title = QLabel(translate("swatches", "Print a swatch card"), self)
        title.setProperty("role", "heading")
        explained = QLabel(
            translate(
                "swatches",
                "The class paints three strokes of each paint: alone, and mixed with two others. "
                "From a picture of the dry card the program learns your paints. Eight go on a "
                "page; untick what you do not want, or change a name.",
            ),
            self,
        )
        explained.setWordWrap(True)
        self._status = QLabel(self)
        self._status.setWordWrap(True)
        self._status.setProperty("role", "strong")
        inner = QWidget()
        holder = QVBoxLayout(inner)
        holder.setContentsMargins(0, 0, WITHIN, 0)
        holder.addLayout(self._list)
        holder.addStretch(1)
        scroll = QScrollArea(self)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidgetResizable(True)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setWidget(inner)
        tools = QHBoxLayout()
        tools.setSpacing(GROUP)
        tools.addWidget(self.another)
        tools.addStretch(1)
        tools.addWidget(self.paper)
        column = QVBoxLayout(self)
        column.setContentsMargins(INSIDE, INSIDE, INSIDE, INSIDE)
        column.setSpacing(WITHIN)
        for widget in (title, explained):
            column.addWidget(widget)
        column.addWidget(scroll, 1)
        column.addLayout(tools)
        column.addWidget(self._status)
        column.addWidget(Answers(self, (self.button,), self.cancel, others=(self.printer,)))
        screen, grow = self.screen().availableSize(), look().type.grow
        self.resize(min(grow(WIDTH), screen.width() - 40), min(grow(HEIGHT), screen.height() - 60))
