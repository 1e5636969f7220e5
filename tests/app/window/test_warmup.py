from __future__ import annotations

from app.window.pages import PAGES
from app.window.warmup import Warmup


def test_pages_are_made_ahead_and_stay_hidden(sky_window, qtbot):
    sky_window.warm_up()
    # The class's page waits for a class set.
    ahead = {number for number, kind in enumerate(PAGES) if kind.key != "classset"}
    qtbot.waitUntil(lambda: sky_window._pages.keys() == ahead, timeout=20_000)
    assert sky_window._stack.currentWidget().page is sky_window.page("read")
    qtbot.waitUntil(lambda: not sky_window._warmup.running, timeout=5000)


def test_nothing_is_done_while_work_runs(qtbot):
    taken, ready = [], []
    warmup = Warmup(iter([lambda: taken.append(1), lambda: taken.append(2)]), lambda: bool(ready))
    warmup.begin()
    qtbot.wait(900)
    assert taken == []
    ready.append(True)
    qtbot.waitUntil(lambda: taken == [1, 2])
    qtbot.waitUntil(lambda: not warmup.running)


def test_it_stops_when_told(qtbot):
    taken = []
    warmup = Warmup(iter([lambda: taken.append(1)] * 9), lambda: True)
    warmup.begin()
    qtbot.waitUntil(lambda: len(taken) > 1)
    warmup.stop()
    count = len(taken)
    qtbot.wait(300)
    assert len(taken) == count
