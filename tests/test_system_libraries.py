"""What `./run` asks the system for: nothing of the screen where no window is wanted."""

from __future__ import annotations

import ctypes
import sys

import pytest

from tools import system_libraries


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="asks nothing elsewhere")
def test_words_need_no_library_and_cards_none_of_the_screen(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def missing(name: str) -> None:
        raise OSError(name)

    monkeypatch.setattr(ctypes, "CDLL", missing)
    assert system_libraries.missing_packages("none") == []
    drawing = system_libraries.missing_packages("drawing")
    screen = system_libraries.missing_packages("screen")
    assert set(drawing) < set(screen)
    assert not any("xcb" in package or "x11" in package for package in drawing)
    assert any("xcb" in package for package in screen)
