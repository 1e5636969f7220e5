"""The scraps of a band before the class: try by try, beside the band."""

from __future__ import annotations

import pytest
from class_tools import LEAST_TEXT, SCREENS, texts_of
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.classview.tries import MOST_SHOWN
from core.pictures import Picture
from core.scrap.kept import ScrapEntry


def scraps(letter: str, count: int) -> tuple[ScrapEntry, ...]:
    return tuple(
        ScrapEntry(Picture("scrap"), letter, (40.0 + 5 * n, 10.0, 10.0), (("crimson", 2),), 0.01)
        for n in range(count)
    )


@pytest.mark.parametrize("size", SCREENS)
@pytest.mark.parametrize("count", [1, 2, 5])
def test_c_shows_the_tries_and_the_band_large(make_view, drawn, size, count):
    view = make_view(size=size)
    view.show_scraps(scraps("A", count))
    QTest.keyClick(view, Qt.Key.Key_C)
    words = texts_of(view, drawn)
    names = [text for text, *_ in words]
    assert names[-1] == "Band A"
    assert names[0] == "Try 1"
    assert len(names) == min(count, MOST_SHOWN) + 1
    if count > 1:
        assert names[-2] == f"Try {count}"
    for text, height, left, right, _ in words:
        assert height > LEAST_TEXT * size[1] - 1, text
        assert left >= 0
        assert right <= size[0]
    assert "Try 1" in view.accessibleName()
    QTest.keyClick(view, Qt.Key.Key_Space)
    assert not view.trying
    assert view.lesson.shown == 0  # the key gave no answer away


def test_without_scraps_of_the_band_nothing_changes(make_view):
    view = make_view()
    view.show_scraps(scraps("B", 2))
    QTest.keyClick(view, Qt.Key.Key_C)
    assert not view.trying
    QTest.keyClick(view, Qt.Key.Key_Down)
    QTest.keyClick(view, Qt.Key.Key_C)
    assert view.trying
    QTest.keyClick(view, Qt.Key.Key_Escape)
    assert not view.trying
