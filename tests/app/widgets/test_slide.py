"""The one motion: a row slides open, and at once where stillness is asked for."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication
from sheet_checks import sheet_check
from window_tools import run_through

import app.widgets.slide
from app.drawing.sheets.views import band_rows
from app.look import look
from app.sheets.bands import SheetBands
from app.widgets.slide import Slide


@pytest.fixture
def watched(monkeypatch) -> None:
    monkeypatch.setattr(app.widgets.slide, "wants_motion", lambda: True)


def test_values_slide_to_their_end(qtbot, watched) -> None:
    slide, seen = Slide(parent := QObject()), []
    slide.to((10.0, 20.0), slide=True)
    assert slide.values == (10.0, 20.0)  # nothing to come from
    slide.moved.connect(lambda: seen.append(slide.values))
    slide.to((30.0, 0.0), slide=True)
    assert slide.running
    qtbot.waitUntil(lambda: not slide.running)
    assert slide.values == (30.0, 0.0)
    # Once more by hand: a slow machine shows few of the steps, or none.
    slide.to((10.0, 20.0), slide=False)
    seen.clear()
    slide.to((30.0, 0.0), slide=True)
    run_through(slide._motion)
    assert not slide.running
    assert len(seen) > 10
    assert [first for first, _ in seen] == sorted(first for first, _ in seen)
    parent.deleteLater()


def test_there_is_no_motion_where_none_is_wanted(qtbot, monkeypatch) -> None:
    monkeypatch.setattr(app.widgets.slide, "wants_motion", lambda: False)
    slide = Slide(parent := QObject())
    slide.to((10.0,), slide=True)
    slide.to((30.0,), slide=True)
    assert not slide.running
    assert slide.values == (30.0,)
    parent.deleteLater()


def test_a_system_without_animations_gets_none(qapp, monkeypatch) -> None:
    monkeypatch.setattr(app.widgets.slide.QGuiApplication, "platformName", lambda: "xcb")

    class Still:
        def __init__(self, ms: int) -> None:
            self.ms = ms

        def styleHint(self, hint) -> int:
            return self.ms

    for ms, wanted in ((0, False), (200, True)):
        monkeypatch.setattr(QApplication, "style", lambda ms=ms: Still(ms))
        assert app.widgets.slide.wants_motion() == wanted


def test_a_row_of_a_sheet_slides_open(qtbot, watched) -> None:
    bands = SheetBands("Bands of sheet 1")
    qtbot.addWidget(bands)
    bands.resize(420, 300)
    check = sheet_check()
    bands.set_rows("Band by band", band_rows(check, look(), None))
    bands.show()
    before = [row.height() for row in bands.row_widgets]
    bands.set_rows("Band by band", band_rows(check, look(), 1))
    assert [row.height() for row in bands.row_widgets] == before
    qtbot.waitUntil(lambda: not bands._heights.running)
    after = [row.height() for row in bands.row_widgets]
    assert after[1] > before[1]
    # The rows stay one below the other all the way.
    tops = [row.y() for row in bands.row_widgets]
    assert tops[1] == tops[0] + after[0]
