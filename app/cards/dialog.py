"""Choose a card, see it as it will be, save it as a PDF or print it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from app.cards import ask
from app.cards.card import CardChoice, lay_out_card
from app.cards.choice_panel import ChoicePanel
from app.cards.drawing import Drawn, Wish, draw_card
from app.cards.page import Page
from app.cards.pdf import pdf_of
from app.cards.preview import CardPreview
from app.cards.printing import PrintJob, paper_of, printer_for
from app.errors import sentence_of
from app.files.files_ask import file_name_for
from app.look import look
from app.look.space import GROUP, INSIDE, WITHIN
from app.state.tasks import Latest
from app.widgets.answers import Answers
from app.widgets.buttons import EdgeButton, IconButton, InkButton
from app.widgets.focus import FocusRing
from core.cards import CardData, Kind
from core.cards.file import write_card
from core.file_sentences import shown_name
from core.i18n import translate
from core.progress import Progress, ShouldStop
from core.study_file.opening import SUFFIX

WIDTH, HEIGHT = 940, 660


class CardDialog(QDialog):
    """The dialog.

    Parameters
    ----------
    wish : Wish
        What the card is drawn from.
    choice : CardChoice
        What is chosen at first.
    folder : Path
        Where a PDF is most likely wanted.
    keep : callable
        Told every choice, so that the next dialog begins with it.
    """

    def __init__(
        self,
        parent: QWidget | None,
        wish: Wish,
        choice: CardChoice,
        folder: Path,
        keep: Callable[[CardChoice], object] = lambda choice: None,
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(translate("cards", "Print a card"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setModal(True)
        self._wish, self._choice, self._folder, self._keep = wish, choice, folder, keep
        self._gathered: dict[Kind, CardData] = {}
        self._drawn: Drawn | None = None
        self._job: PrintJob | None = None
        self._drawing, self._writing = Latest(self), Latest(self)
        self._drawing.busy.connect(lambda share: self._say(_drawing_text()))
        self._make_controls()
        self._lay_out()
        self._ring = FocusRing(self)
        self.draw()

    @property
    def choice(self) -> CardChoice:
        """Which card, and how."""
        return self._choice

    @property
    def drawn(self) -> Drawn | None:
        """The card as it is shown; None while it is being drawn."""
        return self._drawn

    @property
    def working(self) -> bool:
        """Whether something is being drawn, written or printed."""
        return self._drawing.running or self._writing.running or self._job is not None

    def choose(self, choice: CardChoice) -> None:
        """Another card, or another way to print it."""
        if choice == self._choice:
            return
        self._choice = choice
        self._keep(choice)
        self.choices.show_choice(choice)
        self.draw()

    def draw(self) -> None:
        """Draw the card that is chosen, in a worker."""
        wish, choice, data = self._wish, self._choice, self._gathered.get(self._choice.kind)
        self._drawn = None
        self._follow()

        def work(progress: Progress, should_stop: ShouldStop) -> Drawn:
            return draw_card(wish, choice, data, progress, should_stop)

        self._drawing.run(work, self._take, self._cannot_draw)

    def save(self) -> None:
        """Ask where, and write the PDF in a worker."""
        drawn = self._drawn
        if drawn is None or self.working:
            return
        path = ask.ask_pdf_path(self, self._folder / _file_name(drawn.title))
        if path is None:
            return

        def work(progress: Progress, should_stop: ShouldStop) -> str:
            write_card(path, pdf_of(drawn.pages, drawn.title, progress, should_stop))
            return shown_name(path)

        self._writing.run(work, self._saved, self._failed)
        self._follow()

    def print(self) -> None:
        """Ask for a printer, and print."""
        drawn = self._drawn
        if drawn is None or self.working:
            return
        if not ask.has_printer():
            self._say(
                translate(
                    "cards",
                    "No printer is set up here: save the card as a PDF, and print that.",
                )
            )
            return
        printer = printer_for(drawn.choice.paper, drawn.title)
        if not ask.ask_printer(self, printer):
            return
        self._print_on(printer, drawn)

    # What came of it

    def _take(self, drawn: Drawn) -> None:
        self._drawn = drawn
        self._gathered[drawn.choice.kind] = drawn.data
        self.preview.set_pages(drawn.images, drawn.texts)
        self._say("")
        self._follow()

    def _cannot_draw(self, error: Exception) -> None:
        self.preview.say(sentence_of(error))
        self._say("")
        self._follow()

    def _saved(self, name: str) -> None:
        self._say(translate("cards", "Saved as {name}.").format(name=name))
        self._follow()

    def _failed(self, error: Exception) -> None:
        self._say(sentence_of(error))
        self._follow()

    def _print_on(self, printer: QPrinter, drawn: Drawn) -> None:
        paper = paper_of(printer, drawn.choice.paper)
        if paper == drawn.choice.paper:
            self._begin_job(printer, drawn.pages)
            return
        # Another paper was chosen in the system's dialog: lay the card out for that.
        choice, data = replace(drawn.choice, paper=paper), drawn.data

        def work(progress: Progress, should_stop: ShouldStop) -> tuple[Page, ...]:
            return lay_out_card(data, choice)

        self._writing.run(work, lambda pages: self._begin_job(printer, pages), self._failed)
        self._follow()

    def _begin_job(self, printer: QPrinter, pages: tuple[Page, ...]) -> None:
        self._job = PrintJob(printer, pages, self)
        self._job.done.connect(lambda: self._job_ended(translate("cards", "Sent to the printer.")))
        self._job.failed.connect(
            lambda: self._job_ended(
                translate("cards", "The printer did not take the card: see whether it is ready.")
            )
        )
        self._job.start()
        self._follow()

    def _job_ended(self, sentence: str) -> None:
        self._job = None
        self._say(sentence)
        self._follow()

    def _say(self, sentence: str) -> None:
        self.status.setText(sentence)
        self.status.setAccessibleName(sentence)

    # Controls

    def _make_controls(self) -> None:
        self.choices = ChoicePanel(self._choice, self)
        self.choices.chosen.connect(self.choose)
        self.preview = CardPreview(self)
        self.status = QLabel(self)
        self.status.setWordWrap(True)
        self.status.setTextFormat(Qt.TextFormat.PlainText)
        self.save_button = InkButton(translate("cards", "Save as PDF..."), "save", self)
        self.print_button = EdgeButton(translate("cards", "Print..."), "print", self)
        self.close_button = EdgeButton(translate("cards", "Close"), "", self)
        self.back = IconButton("chevron_left", translate("cards", "Page before"), self)
        self.on = IconButton("chevron_right", translate("cards", "Next page"), self)
        self.page_label = QLabel(self)
        self.save_button.clicked.connect(self.save)
        self.print_button.clicked.connect(self.print)
        self.close_button.clicked.connect(self.reject)
        self.back.clicked.connect(lambda: self.preview.turn(-1))
        self.on.clicked.connect(lambda: self.preview.turn(1))
        self.preview.turned.connect(self._follow)

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setContentsMargins(INSIDE, INSIDE, INSIDE, INSIDE)
        left.setSpacing(WITHIN)
        left.addWidget(self.choices)
        left.addWidget(self.status)
        left.addStretch(1)
        left.addWidget(
            Answers(
                self,
                (self.save_button,),
                self.close_button,
                others=(self.print_button,),
                orientation=Qt.Orientation.Vertical,
            )
        )
        turn = QHBoxLayout()
        turn.setContentsMargins(GROUP, WITHIN, GROUP, WITHIN)
        turn.addStretch(1)
        for part in (self.back, self.page_label, self.on):
            turn.addWidget(part)
        turn.addStretch(1)
        right = QVBoxLayout()
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(0)
        right.addWidget(self.preview, 1)
        self._turning = QWidget(self)
        self._turning.setLayout(turn)
        right.addWidget(self._turning)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        column = QWidget(self)
        column.setLayout(left)
        column.setFixedWidth(max(look().type.grow(340), column.sizeHint().width()))
        row.addWidget(column)
        row.addLayout(right, 1)
        self.resize(look().type.grow(WIDTH), look().type.grow(HEIGHT))

    def _follow(self) -> None:
        """What can be done now."""
        ready = self._drawn is not None and not self._writing.running and self._job is None
        for button in (self.save_button, self.print_button):
            button.setEnabled(ready)
        at, count = self.preview.page, self.preview.count
        self._turning.setVisible(count > 1)
        self.back.setEnabled(at > 0)
        self.on.setEnabled(at < count - 1)
        self.page_label.setText(
            translate("cards", "page {number} of {total}").format(number=at + 1, total=count)
        )

    def done(self, result: int) -> None:
        self._drawing.cancel()
        if self._job is not None:
            self._job.stop()
        self._ring.stop()
        super().done(result)


def _drawing_text() -> str:
    return translate("cards", "Drawing the card...")


def _file_name(title: str) -> str:
    return file_name_for(title).removesuffix(SUFFIX) + ".pdf"
