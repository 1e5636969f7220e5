"""What the three looks into a chosen band have in common."""

from __future__ import annotations

from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

from app.look import look
from app.look.space import INSIDE
from app.mix.head import BAR_EDGE

LEAST_CHIPS, MOST_CHIPS = 56, 150
LEFT = INSIDE - BAR_EDGE
"""A stage begins right of the ink bar."""


class Stage(QWidget):
    """What the three have in common: a title, and a drawing as wide as the row.

    The title may begin further right, beside the control that chooses among the stages.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.head_left = LEFT
        self._head = look().type.grow(46)
        self.title = QLabel(self)
        self.title.setProperty("role", "strong")
        self.title.setWordWrap(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def head_height(self) -> int:
        """Height of the title's line, as last measured."""
        return self._head

    def measure_head(self, width: int, left: int) -> int:
        """Height the title needs when it begins at `left` in a stage of a width."""
        self.head_left = left
        room = max(width - left - INSIDE - self.head_room(), 40)
        self._head = max(self.title.heightForWidth(room) + 10, look().type.grow(46))
        return self._head

    def head_room(self) -> int:
        """Width that stands in the title's line beside the title."""
        return 0

    def place_head(self) -> None:
        """Lay the title out."""
        room = self.width() - self.head_left - INSIDE - self.head_room()
        self.title.setGeometry(self.head_left, 0, room, self.head_height() - 6)

    def resizeEvent(self, event: object) -> None:
        self.place_head()

    def height_for(self, width: int) -> tuple[int, int]:
        """Least height, and the height beyond which more room does nothing; with the title."""
        raise NotImplementedError
