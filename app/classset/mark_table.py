"""The mark list as a model: every cell as it will be exported, some of them to be written in."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Literal, assert_never

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from app.services.class_set.desk import ClassDesk
from core.class_set import edits
from core.class_set.model import MOST_MARK, MOST_WORDS, STATES, ClassSet, State
from core.class_set.standing import state_word
from core.class_set.table import COLUMNS, IMPORT, heading, mark_list
from core.i18n import translate

Columns = Literal["all", "import"]
"""The whole list, or what a gradebook takes in."""

Index = QModelIndex | QPersistentModelIndex
Role = Qt.ItemDataRole

WORDS = ("strength", "next_step", "remark")
STATE_COLUMNS = ("sheet1", "sheet2")
WRITTEN = (*STATE_COLUMNS, *WORDS, "mark")
"""Columns that can be written in; codes are the list's, own scores the students'."""


def columns_of(choice: Columns) -> tuple[str, ...]:
    """The columns of a choice, in the order they are exported; the code stands at the left of
    them all and does not scroll away."""
    match choice:
        case "all":
            return tuple(column for column in COLUMNS if column not in ("id", "code"))
        case "import":
            return tuple(column for column in IMPORT if column != "code")
        case _:
            assert_never(choice)


class MarkTable(QAbstractTableModel):
    """A row a student in the list's order, which nothing changes."""

    def __init__(self, desk: ClassDesk, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.columns = columns_of("all")
        self._rows: tuple[tuple[str, ...], ...] = ()

    def refresh(self) -> None:
        """Take over what the desk has now; the chosen cell stays where the rows do."""
        class_set, found = self._desk.class_set, self._desk.sorted
        rows: tuple[tuple[str, ...], ...] = ()
        if class_set is not None and found is not None:
            rows = mark_list(class_set, found.placement, self.columns)[1:]
        if len(rows) != len(self._rows):
            self.beginResetModel()
            self._rows = rows
            self.endResetModel()
            return
        changed = [y for y, (a, b) in enumerate(zip(self._rows, rows, strict=True)) if a != b]
        self._rows = rows
        if changed:
            last = len(self.columns) - 1
            self.dataChanged.emit(self.index(changed[0], 0), self.index(changed[-1], last))

    def choose(self, columns: Columns) -> None:
        """Show other columns."""
        self.beginResetModel()
        self.columns = columns_of(columns)
        self._rows = ()
        self.endResetModel()
        self.refresh()

    def column(self, index: Index) -> str:
        """The key of a cell's column."""
        return self.columns[index.column()]

    def number(self, index: Index) -> int:
        """The number of a cell's student."""
        return self._class_set.students[index.row()].number

    @property
    def marked(self) -> int:
        """How many students have a mark that was typed."""
        class_set = self._desk.class_set
        entries = () if class_set is None else class_set.entries
        return sum(bool(entry.marking.mark) for entry in entries)

    @property
    def _class_set(self) -> ClassSet:
        return self._desk.document.open_set

    # Qt

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self.columns)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Role.DisplayRole
    ) -> Any:
        if orientation == Qt.Orientation.Horizontal and role in (
            Role.DisplayRole,
            Role.ToolTipRole,
        ):
            return heading(self.columns[section])
        if orientation == Qt.Orientation.Vertical and role == Role.DisplayRole:
            return self._class_set.students[section].code
        return None

    def data(self, index: Index, role: int = Role.DisplayRole) -> Any:
        if not index.isValid() or index.row() >= len(self._rows):
            return None
        text, column = self._rows[index.row()][index.column()], self.column(index)
        if role == Role.DisplayRole:
            return text
        if role == Role.EditRole:
            return self._state(index) if column in STATE_COLUMNS else text
        if role == Role.ToolTipRole:
            return text if column in WORDS and text else None
        if role == Role.AccessibleTextRole:
            whose = self._class_set.students[index.row()].code
            said = translate("class set page", "{code}, {heading}: {text}")
            empty = translate("class set page", "empty")
            return said.format(code=whose, heading=heading(column), text=text or empty)
        if role == Role.TextAlignmentRole and column.startswith("own_"):
            return Qt.AlignmentFlag.AlignCenter
        return None

    def flags(self, index: Index) -> Qt.ItemFlag:
        flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        if index.isValid() and self.column(index) in WRITTEN:
            flags |= Qt.ItemFlag.ItemIsEditable
        return flags

    def setData(self, index: Index, value: Any, role: int = Role.EditRole) -> bool:
        """One undo step; a mark is kept as it was typed."""
        if role != Role.EditRole or not index.isValid():
            return False
        column, number, before = self.column(index), self.number(index), self._class_set
        if column in STATE_COLUMNS:
            state = next((each for each in STATES if each == value), None)
            if state is None:
                return False
            after = edits.with_state(before, number, STATE_COLUMNS.index(column), state)
            self._desk.change(translate("class set page", "set a state"), after)
            return True
        marking = before.entry(number).marking
        if column == "mark":
            mark = " ".join(str(value).split())[:MOST_MARK]
            after = edits.with_marking(before, number, replace(marking, mark=mark))
            self._desk.change(translate("class set page", "mark"), after)
            return True
        written = str(value).strip()[:MOST_WORDS]
        if column == "strength":
            marking = replace(marking, strength=written)
        elif column == "next_step":
            marking = replace(marking, next_step=written)
        elif column == "remark":
            marking = replace(marking, remark=written)
        else:
            return False
        after = edits.with_marking(before, number, marking)
        self._desk.change(translate("class set page", "write"), after)
        return True

    def _state(self, index: Index) -> State:
        """As the teacher said it: empty where nothing was."""
        marking = self._class_set.entry(self.number(index)).marking
        return marking.states[STATE_COLUMNS.index(self.column(index))]


def state_choices() -> tuple[tuple[State, str], ...]:
    """What a sheet's state can be set to; the first leaves it to whether a picture is there."""
    by_itself = translate("class set page", "by its picture")
    return tuple((state, state_word(state) if state else by_itself) for state in STATES)
