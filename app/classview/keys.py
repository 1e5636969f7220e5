"""What each key does in the class view, and the list of them that F1 shows."""

from __future__ import annotations

from typing import Literal

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter

from app.drawing.classview.layout import LEAST_TEXT
from app.drawing.ink import draw_text, kept, text_size
from app.look.theme import Theme
from app.look.type import CHOSEN, SECOND
from core.i18n import translate

Command = Literal[
    "answer",
    "take back",
    "next band",
    "band before",
    "advance",
    "tally",
    "viewfinder",
    "paint",
    "over",
    "scraps",
    "step on",
    "step back",
    "longer",
    "shorter",
    "bell",
    "say",
    "keys",
    "leave",
]

_KEYS = Qt.Key

COMMANDS: dict[Qt.Key, Command] = {
    _KEYS.Key_Space: "answer",
    _KEYS.Key_Return: "answer",
    _KEYS.Key_Enter: "answer",
    _KEYS.Key_Backspace: "take back",
    _KEYS.Key_Down: "next band",
    _KEYS.Key_Right: "next band",
    _KEYS.Key_Up: "band before",
    _KEYS.Key_Left: "band before",
    # What a presenter's remote sends.
    _KEYS.Key_PageDown: "advance",
    _KEYS.Key_PageUp: "take back",
    _KEYS.Key_T: "tally",
    _KEYS.Key_V: "viewfinder",
    _KEYS.Key_W: "paint",
    _KEYS.Key_F6: "over",
    _KEYS.Key_C: "scraps",
    _KEYS.Key_P: "step on",
    _KEYS.Key_Plus: "longer",
    _KEYS.Key_Minus: "shorter",
    # Not B: other programs that show slides blank the screen with it.
    _KEYS.Key_D: "bell",
    _KEYS.Key_S: "say",
    _KEYS.Key_F1: "keys",
    _KEYS.Key_F5: "leave",
    _KEYS.Key_Escape: "leave",
}


def command_of(key: int, shift: bool) -> Command | None:
    """The command of a key; Shift and P goes a step back."""
    try:
        command = COMMANDS.get(Qt.Key(key))
    except ValueError:  # a key Qt has no name for
        return None
    return "step back" if command == "step on" and shift else command


def key_list(*, can_speak: bool) -> tuple[tuple[str, str], ...]:
    """Keys and what they do."""
    rows = [
        (translate("class view", "Space"), translate("class view", "next answer")),
        (translate("class view", "Backspace"), translate("class view", "cover it again")),
        (translate("class view", "Up, Down"), translate("class view", "another band")),
        (translate("class view", "Page Down"), translate("class view", "on, by remote")),
        ("T", translate("class view", "count hands")),
        ("V", translate("class view", "viewfinder")),
        ("W", translate("class view", "watch it being painted")),
        ("F6", translate("class view", "wheel on the photo")),
        ("C", translate("class view", "scraps, try by try")),
        ("P", translate("class view", "demonstration, its next step")),
        (translate("class view", "Shift P"), translate("class view", "step before")),
        ("+  -", translate("class view", "drying minutes")),
        ("D", translate("class view", "bell when dry")),
        ("S", translate("class view", "say it")),
        (translate("class view", "Esc"), translate("class view", "leave")),
    ]
    return tuple(row for row in rows if can_speak or row[0] != "S")


def paint_key_list(
    painter: QPainter,
    place: QRectF,
    height: float,
    rows: tuple[tuple[str, str], ...],
    theme: Theme,
) -> None:
    """Draw the list, in two columns where they fit beside each other; `height` is the screen's."""
    size = LEAST_TEXT * height
    inside = place.adjusted(0.06 * height, 0.04 * height, -0.06 * height, -0.04 * height)
    keys = max(text_size(key, size, CHOSEN)[0] for key, _ in rows) + 0.6 * size
    widest = keys + max(text_size(text, size, SECOND)[0] for _, text in rows)
    columns = 2 if 2 * widest + size <= inside.width() else 1
    per_column = -(-len(rows) // columns)
    pitch = min(0.085 * height, inside.height() / per_column)
    with kept(painter):
        painter.fillRect(place, QColor(theme.paper))
        for number, (key, text) in enumerate(rows):
            column, row = divmod(number, per_column)
            left = inside.left() + column * inside.width() / 2
            y = inside.top() + (row + 0.5) * pitch
            draw_text(painter, QPointF(left, y), key, size, theme.ink, CHOSEN, align=0.0)
            spot = QPointF(left + keys, y)
            draw_text(painter, spot, text, size, theme.ink, SECOND, align=0.0)
