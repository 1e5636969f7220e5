"""Every control has a name, a size a hand can hit, and a way to it by Tab; no text is cut off."""

from __future__ import annotations

import pytest
import walk
from walk import KEYS, show


@pytest.mark.parametrize("key", KEYS)
def test_every_control_has_a_name(sky_window, qtbot, key):
    show(sky_window, qtbot, key)
    nameless = [walk.described(w) for w in walk.controls(sky_window) if not walk.spoken_name(w)]
    assert nameless == []


@pytest.mark.parametrize("key", KEYS)
def test_every_control_is_large_enough(sky_window, qtbot, key):
    show(sky_window, qtbot, key)
    small = [
        f"{walk.described(w)} {w.size().toTuple()}"
        for w in walk.controls(sky_window)
        if min(w.width(), w.height()) < walk.LEAST_TARGET
    ]
    assert small == []


@pytest.mark.parametrize("key", KEYS)
def test_every_control_is_reached_by_tab(sky_window, qtbot, key):
    show(sky_window, qtbot, key)
    reached = walk.reached_by_tab(sky_window)
    missed = [walk.described(w) for w in walk.controls(sky_window) if w not in reached]
    # The chosen one of a group stands for the group, whose others are reached by arrow keys.
    assert missed == []


@pytest.mark.parametrize("percent", [100, 150, 200])
@pytest.mark.parametrize("key", KEYS)
def test_no_text_is_cut_off(sky_window, qtbot, key, percent):
    show(sky_window, qtbot, key, percent)
    walk.assert_whole(sky_window, qtbot)
