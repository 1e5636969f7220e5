"""Mark list: the table as it will be exported, edited in place."""

from __future__ import annotations

from typing import get_args

from PySide6.QtCore import QEvent, QModelIndex, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from app.classset.mark_editing import CellEditing
from app.classset.mark_table import STATE_COLUMNS, WORDS, Columns, MarkTable
from app.classset.part import ClassPart
from app.look import look
from app.look.space import GROUP, MARGIN, WITHIN
from app.widgets.buttons import EdgeButton
from app.widgets.segmented import SegmentedControl
from app.workspace import Workspace
from core.class_set.model import State
from core.class_set.standing import state_word
from core.class_set.table import heading
from core.i18n import translate

_LINES = 2
"""Of a row; longer words are told whole in a tip, and where they are written."""

_PADDING = 20
"""Pixels beside a word in its cell."""


class MarkListPart(ClassPart):
    """A row a student.

    Signals
    -------
    save_asked(kind: str)
        A table is wanted as "csv", "xlsx" or "import".
    """

    save_asked = Signal(str)

    def __init__(self, workspace: Workspace, parent: QWidget | None = None) -> None:
        super().__init__(workspace, parent)
        self.setProperty("ground", "paper")
        self.model = MarkTable(self.desk, self)
        self.table = MarkView(self.model, self)
        choices = (
            ("all", translate("class set page", "Whole list")),
            ("import", translate("class set page", "For a gradebook")),
        )
        self.choice = SegmentedControl(choices, translate("class set page", "Columns"), self)
        self.count = QLabel(self)
        self.count.setProperty("role", "strong")
        self.note = QLabel(
            translate(
                "class set page",
                "Enter writes in a cell. A mark is what you type; nothing is added up, and an "
                "empty one stays empty.",
            ),
            self,
        )
        self.note.setProperty("role", "note")
        self.note.setWordWrap(True)
        self.csv = EdgeButton(translate("class set page", "Save as CSV"), "save", self)
        self.xlsx = EdgeButton(translate("class set page", "Save as XLSX"), "save", self)
        self.csv.clicked.connect(lambda: self.save_asked.emit(self._kind))
        self.xlsx.clicked.connect(lambda: self.save_asked.emit("xlsx"))
        self._columns: Columns = "all"
        self.choice.chosen.connect(lambda key: self.choose("import" if key == "import" else "all"))
        self._lay_out()

    def choose(self, columns: Columns) -> None:
        """Show the whole list, or what a gradebook takes in."""
        self._columns = columns
        self.choice.set_chosen(columns)
        self.model.choose(columns)
        self.table.fit()
        self.xlsx.setVisible(columns == "all")

    def refresh(self) -> None:
        self.model.refresh()
        class_set = self.desk.class_set
        of = 0 if class_set is None else len(class_set.students)
        text = translate("class set page", "{n} of {all} have a mark")
        self.count.setText(text.format(n=self.model.marked, all=of))

    def begin(self) -> None:
        self.choose("all")

    def take_focus(self) -> None:
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    @property
    def _kind(self) -> str:
        return "csv" if self._columns == "all" else "import"

    def _lay_out(self) -> None:
        row = QHBoxLayout()
        row.setSpacing(GROUP)
        row.addWidget(self.choice)
        row.addWidget(self.count)
        row.addStretch(1)
        save = QHBoxLayout()
        save.setSpacing(WITHIN)
        save.addWidget(self.csv)
        save.addWidget(self.xlsx)
        row.addLayout(save)
        column = QVBoxLayout(self)
        column.setContentsMargins(MARGIN, GROUP, MARGIN, WITHIN)
        column.setSpacing(WITHIN)
        column.addLayout(row)
        column.addWidget(self.table, 1)
        column.addWidget(self.note)


class MarkView(QTableView):
    """The table. Rows cannot be put in another order, and nothing sorts them."""

    def __init__(self, model: MarkTable, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._marks = model
        self.setModel(model)
        self.setItemDelegate(CellEditing(self))
        self.setAccessibleName(translate("class set page", "Mark list"))
        self.setProperty("own_focus", True)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(
            QAbstractItemView.EditTrigger.DoubleClicked
            | QAbstractItemView.EditTrigger.SelectedClicked
            | QAbstractItemView.EditTrigger.EditKeyPressed
            | QAbstractItemView.EditTrigger.AnyKeyPressed
        )
        self.setTabKeyNavigation(False)  # Tab leaves the table, arrows move in it
        self.setSortingEnabled(False)
        self.setWordWrap(True)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        side = self.verticalHeader()
        side.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        side.setSectionsClickable(False)
        side.setHighlightSections(False)
        side.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.setCornerButtonEnabled(False)
        self._corner = QLabel(heading("code"), self)
        self._corner.setProperty("role", "note")
        self._corner.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom)
        self._corner.setContentsMargins(8, 0, 0, 4)
        head = self.horizontalHeader()
        head.setSectionsClickable(False)
        head.setHighlightSections(False)
        head.setDefaultAlignment(
            Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom | Qt.TextFlag.TextWordWrap
        )
        model.modelReset.connect(self._on_reset)
        self.fit()

    def fit(self) -> None:
        """Columns and rows as the text size and the width of the window want them."""
        grow = look().type.grow
        self.verticalHeader().setDefaultSectionSize(grow(10 + 19 * _LINES))
        long = any(column.startswith("own_") for column in self._marks.columns)
        self.horizontalHeader().setFixedHeight(grow(62 if long else 30))
        self.verticalHeader().setMinimumWidth(grow(54))
        words = [
            self.fontMetrics().horizontalAdvance(state_word(state)) for state in get_args(State)
        ]
        states = max(grow(82), max(words) + grow(_PADDING))
        widths = {"mark": grow(76), **dict.fromkeys(STATE_COLUMNS, states)}
        columns = self._marks.columns
        fixed = {c: widths.get(c, grow(74)) for c in columns if c not in WORDS}
        room = self.viewport().width() - sum(fixed.values())
        shared = [c for c in columns if c in WORDS]
        each = max(room // max(len(shared), 1), grow(108))
        for number, column in enumerate(columns):
            self.setColumnWidth(number, fixed.get(column, each))
        side, head = self.verticalHeader().width(), self.horizontalHeader().height()
        self._corner.setGeometry(1, 1, side, head)

    # Qt

    def closeEditor(self, editor: QWidget, hint: QAbstractItemDelegate.EndEditHint) -> None:
        """Enter goes on to the next student, as on a list of paper."""
        super().closeEditor(editor, hint)
        if hint == QAbstractItemDelegate.EndEditHint.SubmitModelCache:
            below = self.currentIndex().siblingAtRow(self.currentIndex().row() + 1)
            if below.isValid():
                self.setCurrentIndex(below)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        index = self.currentIndex()
        writable = bool(index.flags() & Qt.ItemFlag.ItemIsEditable)
        clears = event.key() in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace)
        if self.state() == QAbstractItemView.State.EditingState:
            super().keyPressEvent(event)  # Enter of an editor comes here too
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and writable:
            self.edit(index)
        elif clears and writable:
            self._marks.setData(index, "")
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: object) -> None:
        super().focusInEvent(event)  # type: ignore[arg-type]
        if not self.currentIndex().isValid():
            self._begin()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_marks"):
            self.fit()

    def _begin(self) -> None:
        """The first student's mark: what is most wanted."""
        if self._marks.rowCount():
            self.setCurrentIndex(self._marks.index(0, self._marks.columns.index("mark")))

    def _on_reset(self) -> None:
        self.setCurrentIndex(QModelIndex())
        self.fit()
        if self.hasFocus():
            self._begin()
