"""The Help menu: the keys, and what this program is."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QMenu,
    QVBoxLayout,
    QWidget,
)

from app.menus import make_action
from core.i18n import translate


def fill_help_menu(menu: QMenu, window: QWidget) -> None:
    """The keys and the box about the program."""
    menu.addAction(make_action(menu, translate("menu", "&Keys..."), partial(show_keys, window)))
    menu.addAction(
        make_action(menu, translate("menu", "&About Gradewash..."), partial(show_about, window))
    )


def keys() -> tuple[tuple[str, str], ...]:
    """Each key with what it does."""
    return (
        (translate("keys", "Tab"), translate("keys", "Go to the next line or control")),
        (translate("keys", "Up, Down"), translate("keys", "Move the line by 0.2 %")),
        (translate("keys", "Shift+Up, Shift+Down"), translate("keys", "Move the line by 2 %")),
        (translate("keys", "Insert"), translate("keys", "Split the chosen band")),
        (translate("keys", "Delete"), translate("keys", "Remove the line")),
        (translate("keys", "Double click"), translate("keys", "Add a line there")),
        (translate("keys", "Escape"), translate("keys", "Put back a line while dragging it")),
        (translate("keys", "Mouse wheel"), translate("keys", "Zoom the photo")),
        (translate("keys", "Middle button"), translate("keys", "Push the zoomed photo")),
        (translate("keys", "Ctrl+0"), translate("keys", "Show the whole photo")),
    )


def show_keys(parent: QWidget) -> None:
    """The keys in a small window."""
    dialog = _dialog(parent, translate("help", "Keys"))
    form = QFormLayout()
    form.setHorizontalSpacing(24)
    form.setVerticalSpacing(8)
    for key, meaning in keys():
        name = QLabel(key)
        name.setProperty("role", "label")
        form.addRow(name, QLabel(meaning))
    _finish(dialog, form)


def show_about(parent: QWidget) -> None:
    """What this program is, and whose work it stands on."""
    dialog = _dialog(parent, translate("help", "About Gradewash"))
    text = QLabel(
        translate(
            "help",
            "Gradewash reads a photo of a sky in bands and says each band's hue, value and "
            "intensity.\n\nFree software under the MIT licence. The typeface is Atkinson "
            "Hyperlegible Next, SIL Open Font License 1.1.",
        )
    )
    text.setWordWrap(True)
    text.setMinimumWidth(420)
    column = QVBoxLayout()
    column.addWidget(text)
    _finish(dialog, column)


def _dialog(parent: QWidget, title: str) -> QDialog:
    dialog = QDialog(parent)
    dialog.setWindowTitle(title)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    return dialog


def _finish(dialog: QDialog, content: QFormLayout | QVBoxLayout) -> None:
    column = QVBoxLayout(dialog)
    column.setContentsMargins(24, 24, 24, 24)
    column.setSpacing(20)
    column.addLayout(content)
    buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
    buttons.button(QDialogButtonBox.StandardButton.Close).setText(translate("help", "Close"))
    buttons.rejected.connect(dialog.reject)
    column.addWidget(buttons)
    dialog.open()
