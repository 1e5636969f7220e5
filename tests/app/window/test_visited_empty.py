"""Every page may be looked at before there is a photo: it is as good as new once there is one."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QApplication

from app.window.pages import PAGES


@pytest.fixture
def visited(window, qtbot):
    """A window whose pages were all shown empty, before a photo was opened on the first."""
    window.resize(1366, 768)
    for index, kind in enumerate(PAGES):
        if kind.key != "classset":
            window.show_page(index)
            QApplication.processEvents()
    window.show_page(0)
    window.opener.open_sample("dusk")
    qtbot.waitUntil(
        lambda: window.planner.plan is not None and not window.planner.working, timeout=30_000
    )
    return window


def test_the_open_row_of_mix_is_open(visited, qtbot) -> None:
    page = visited.page("mix")
    visited.show_page(1)
    qtbot.waitUntil(lambda: page.rows.detail.isVisible())
    qtbot.waitUntil(lambda: page.rows.detail.visibleRegion().boundingRect().height() > 100)


def test_the_steps_of_sheets_stand_under_their_columns(visited) -> None:
    page = visited.page("sheets")
    visited.show_page(2)
    QApplication.processEvents()
    lefts = [picture.left() for picture in page.board.shape.pictures]
    for parts, left in zip(page.teach._columns, lefts, strict=True):
        for part in parts:
            assert part.width() > 200
            assert abs(part.mapTo(page, part.rect().topLeft()).x() - left) <= 2
