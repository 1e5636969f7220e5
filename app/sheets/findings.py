"""The findings of a sheet: what is right, what to try, the light it was seen in, the scores."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from app.look import look
from app.look.space import GROUP, INSIDE, WITHIN
from app.sheets.change import ChangeLine, ChangeTable
from app.sheets.lock import LockField
from app.sheets.scores import ScoreCell, ScoresStrip
from app.sheets.sentences import Sentence, Sentences
from app.widgets.buttons import EdgeButton
from app.widgets.segmented import SegmentedControl
from core.i18n import translate
from core.reading.quality import Quality

CHANGE = "change"


@dataclass(frozen=True)
class FindingsView:
    """What the panel shows.

    Attributes
    ----------
    tabs : tuple of str
        Keys of what can be chosen: "0", "1", "change"; fewer than two need no choice.
    chosen : str
    sentences : tuple of Sentence
    missing : tuple of Quality or None
        Own scores that keep it closed; None where it is open.
    index : int
        The sheet a lock speaks of.
    scores : tuple of ScoreCell
    lines : tuple of ChangeLine
    rest : str
        About all that has no line.
    early : bool
        Shown by the teacher before the student's own scores are in.
    """

    tabs: tuple[str, ...] = ()
    chosen: str = "0"
    sentences: tuple[Sentence, ...] = ()
    missing: tuple[Quality, ...] | None = None
    index: int = 0
    scores: tuple[ScoreCell, ...] = ()
    lines: tuple[ChangeLine, ...] = ()
    rest: str = ""
    early: bool = False


class FindingsPanel(QWidget):
    """Shows a `FindingsView`.

    Signals
    -------
    chosen(key: str)
        "0", "1" or "change".
    score_asked()
        Own scores are wanted first.
    show_asked(), hide_asked()
        The teacher opens or closes what waits for own scores.
    """

    chosen = Signal(str)
    score_asked = Signal()
    show_asked = Signal()
    hide_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "paper")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._view = FindingsView()
        self._heading = QLabel(self)
        self._heading.setProperty("role", "line")
        self.tabs = SegmentedControl(
            [
                ("0", translate("sheets page", "Sheet 1")),
                ("1", translate("sheets page", "Sheet 2")),
                (CHANGE, translate("sheets page", "Change")),
            ],
            translate("sheets page", "Findings of"),
            self,
        )
        self.tabs.chosen.connect(self.chosen)
        self._scroll = QScrollArea(self)
        self._inside = QWidget()
        self.sentences = Sentences(self._inside)
        self.table = ChangeTable(self._inside)
        self.lock = LockField(self)
        self.lock.show_asked.connect(self.show_asked)
        self.lock.score_asked.connect(self.score_asked)
        self.scores = ScoresStrip(self)
        self._note = QLabel(self)
        self._note.setProperty("role", "note")
        self._note.setWordWrap(True)
        self.hide_button = EdgeButton(translate("sheets page", "Hide it"), parent=self)
        self.hide_button.clicked.connect(self.hide_asked)
        head = QHBoxLayout()
        head.setSpacing(WITHIN)
        head.addWidget(self._heading)
        head.addStretch(1)
        head.addWidget(self.tabs)
        self._column = QVBoxLayout(self)
        self._column.setSpacing(12)
        self._column.addLayout(head)
        self._column.addWidget(self.lock)
        self._column.addWidget(self._scroll, 1)
        self._lay_out_inside()
        foot = QVBoxLayout()
        foot.setSpacing(2)
        note = QHBoxLayout()
        note.addWidget(self._note, 1)
        note.addWidget(self.hide_button)
        foot.addLayout(note)
        foot.addWidget(self.scores)
        self._column.addLayout(foot)
        self._pad()

    def set_view(self, view: FindingsView) -> None:
        """Show something else."""
        self._view = view
        several = len(view.tabs) > 1
        self.tabs.setVisible(several)
        if view.chosen in ("0", "1", CHANGE):
            self.tabs.set_chosen(view.chosen)
        for key in ("0", "1", CHANGE):
            self.tabs.set_shown(key, key in view.tabs)
        self._heading.setText(
            translate("sheets page", "Findings")
            if several
            else translate("sheets page", "Findings, sheet {number}").format(number=view.index + 1)
        )
        self._fit_head()
        closed = view.missing is not None
        self.lock.setVisible(closed)
        self._scroll.setVisible(not closed)
        if view.missing is not None:
            self.lock.set_missing(view.index, view.missing)
        self.sentences.setVisible(bool(view.sentences) and not closed)
        self.sentences.set_items(view.sentences, roomy=bool(view.lines) and look().type.wide)
        self.table.setVisible(bool(view.lines) and not closed)
        self.table.set_lines(view.lines, view.rest)
        scored = bool(view.scores) and not closed
        self.scores.setVisible(scored)
        early = view.early and not closed
        self._note.setVisible(scored or early)
        self._note.setText(
            translate("sheets page", "Measured, shown before the student's own scores")
            if early
            else translate("sheets page", "Measured, as a second opinion")
        )
        self.hide_button.setVisible(early)
        self.scores.set_cells(view.scores)
        self._inside_column.setStretch(0, 0 if view.lines else 1)
        self._inside_column.setStretch(2, 1 if view.lines else 0)

    def _lay_out_inside(self) -> None:
        """Only what may be long scrolls: heading and scores stay."""
        self._inside_column = QVBoxLayout(self._inside)
        self._inside_column.setContentsMargins(0, 0, 0, 0)
        self._inside_column.setSpacing(GROUP)
        self._inside_column.addWidget(self.sentences, 1)
        self._inside_column.addWidget(self.table)
        self._inside_column.addStretch(0)
        self._inside.setProperty("ground", "paper")
        self._inside.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._scroll.setWidgetResizable(True)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setWidget(self._inside)
        self._scroll.setAccessibleName(translate("sheets page", "Findings"))

    @property
    def view(self) -> FindingsView:
        """What is shown."""
        return self._view

    def _fit_head(self) -> None:
        """Where heading and choice are too wide for a line, the choice speaks for itself."""
        room = self.width() - 2 * INSIDE
        several = len(self._view.tabs) > 1
        self.tabs.set_close(False)
        tight = several and self._heading.sizeHint().width() + WITHIN > (
            room - self.tabs.sizeHint().width()
        )
        self._heading.setVisible(not tight)
        self.tabs.set_close(tight and self.tabs.sizeHint().width() > room)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_head()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_column"):
            self._pad()
            self._fit_head()

    def _pad(self) -> None:
        top = look().type.grow(10)
        self._column.setContentsMargins(INSIDE, top, INSIDE, 10)
