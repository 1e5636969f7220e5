"""How a cell of the mark list is written in: a line for a mark, a few for words, a choice."""

from __future__ import annotations

from PySide6.QtCore import QAbstractItemModel, QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from app.classset.mark_table import STATE_COLUMNS, WORDS, MarkTable, state_choices
from app.look import look
from core.class_set.model import MOST_MARK
from core.class_set.table import heading

Index = QModelIndex | QPersistentModelIndex
_LINES = 5
Hint = QAbstractItemDelegate.EndEditHint


class WordsEditor(QPlainTextEdit):
    """A few lines; Enter is done, Shift+Enter begins a new one.

    Signals
    -------
    done()
    """

    done = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if enter and not event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self.done.emit()
        else:
            super().keyPressEvent(event)


class CellEditing(QStyledItemDelegate):
    """Makes the editors of a `MarkTable`."""

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        if not index.flags() & Qt.ItemFlag.ItemIsEditable:
            painter.fillRect(option.rect, QColor(look().theme.paper))
        super().paint(painter, option, index)

    def createEditor(self, parent: QWidget, option: QStyleOptionViewItem, index: Index) -> QWidget:
        model = index.model()
        assert isinstance(model, MarkTable)
        column = model.column(index)
        editor: QWidget
        if column in STATE_COLUMNS:
            editor = self._choice(parent)
        elif column in WORDS:
            words = WordsEditor(parent)
            words.setTabChangesFocus(True)
            words.done.connect(lambda: self._submit(words))
            editor = words
        else:
            line = QLineEdit(parent)
            line.setMaxLength(MOST_MARK)
            editor = line
        editor.setAccessibleName(heading(column))
        return editor

    def setEditorData(self, editor: QWidget, index: Index) -> None:
        value = index.data(Qt.ItemDataRole.EditRole)
        if isinstance(editor, QComboBox):
            editor.setCurrentIndex(max(editor.findData(value), 0))
        elif isinstance(editor, QPlainTextEdit):
            editor.setPlainText(value)
            editor.selectAll()
        elif isinstance(editor, QLineEdit):
            editor.setText(value)

    def setModelData(self, editor: QWidget, model: QAbstractItemModel, index: Index) -> None:
        if isinstance(editor, QComboBox):
            model.setData(index, editor.currentData())
        elif isinstance(editor, QPlainTextEdit):
            model.setData(index, editor.toPlainText())
        elif isinstance(editor, QLineEdit):
            model.setData(index, editor.text())

    def updateEditorGeometry(
        self, editor: QWidget, option: QStyleOptionViewItem, index: Index
    ) -> None:
        place = option.rect
        around = editor.parentWidget()
        if isinstance(editor, QPlainTextEdit) and around is not None:
            # Words need more room than their cell: downwards, or upwards near the foot.
            wide = max(place.width(), look().type.grow(280))
            tall = look().type.grow(22 * _LINES)
            room = around.rect()
            left = max(min(place.left(), room.right() - wide), 0)
            top = max(min(place.top(), room.bottom() - tall), 0)
            editor.setGeometry(left, top, wide, tall)
        else:
            editor.setGeometry(place)

    def _choice(self, parent: QWidget) -> QComboBox:
        box = QComboBox(parent)
        for state, word in state_choices():
            box.addItem(word, state)
        box.activated.connect(lambda _: self._submit(box))
        return box

    def _submit(self, editor: QWidget) -> None:
        self.commitData.emit(editor)
        self.closeEditor.emit(editor, Hint.SubmitModelCache)
