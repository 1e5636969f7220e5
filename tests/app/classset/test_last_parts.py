"""Found hard and the mark list: by keys alone, named for a screen reader, nothing cut off."""

from __future__ import annotations

from pathlib import Path

import pytest
from class_set_tools import TAG, made_folder, sheet_jpeg
from simulator.hard import planted_draw
from walk import assert_whole, controls, described, reached_by_tab, spoken_name

import app.classset.found_hard as found_hard_module
from app.state.language import use_language
from core.class_set.bringing import bring_in, files_in
from core.class_set.ticket import Ticket

PARTS = ("found_hard", "mark_list")


@pytest.fixture(params=["en", "es"])
def opened(request, qtbot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch):
    """A window on a class set of four, with the planted faults of a larger class."""
    from app.window.window import Window

    use_language(request.param)
    (tmp_path / "in").mkdir()
    (tmp_path / "in" / "IMG_1.jpg").write_bytes(sheet_jpeg(Ticket(TAG, 1, "1")))
    with made_folder(tmp_path) as folder:
        list(bring_in(folder, files_in([tmp_path / "in"])))
    spreads = tuple(
        one
        for one in planted_draw(7, 29)
        if one.letter in "ABC" and (one.letter, one.quality) != ("C", "placement")
    )
    monkeypatch.setattr(found_hard_module, "spreads_of", lambda *_: (spreads, ()))
    window = Window(tmp_path / "settings")
    qtbot.addWidget(window)
    window.resize(1366, 768)
    with qtbot.waitExposed(window):
        window.show()
    window.desk.open(tmp_path / "7b")
    desk = window.desk
    qtbot.waitUntil(lambda: desk.class_set is not None and not desk.working, timeout=60_000)
    yield window
    window.document.mark_saved()
    window.close()
    use_language("en")


@pytest.mark.parametrize("percent", [100, 150])
def test_they_are_whole_named_and_reached(opened, qtbot, percent: int) -> None:
    opened.preferences.set(text_percent=percent)
    for key in PARTS:
        part = opened.page("classset").show_part(key)
        opened.activateWindow()
        qtbot.wait(0)
        assert_whole(part, qtbot)
        for control in controls(part):
            assert spoken_name(control), described(control)
        part.take_focus()
        missed = set(controls(part)) - reached_by_tab(opened)
        assert not [described(each) for each in missed]
