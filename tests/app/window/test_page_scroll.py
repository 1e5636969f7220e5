"""The scroll area that holds a page, where large text needs more room than the window has."""

from __future__ import annotations

from itertools import cycle

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.window.page_scroll import PageScroll


class Undecided(QWidget):
    """A page that wants another height whenever it is asked."""

    def __init__(self) -> None:
        super().__init__()
        self._heights = cycle((700, 900, 800))
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def least_size(self) -> QSize:
        return QSize(300, 200)

    def heightForWidth(self, width: int) -> int:
        return next(self._heights)


def test_a_page_that_cannot_decide_ends_no_program(qtbot) -> None:
    page = Undecided()
    scroll = PageScroll(page)
    qtbot.addWidget(scroll)
    scroll.resize(400, 500)
    with qtbot.waitExposed(scroll):
        scroll.show()
    scroll.resize(500, 600)
    assert page.height() in (700, 800, 900)
    assert page.width() > 400
