"""Text set larger while the program runs comes out as after a restart."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QLineEdit, QPlainTextEdit
from window_tools import draw_sky, open_and_wait

from app.window.pages import PAGES
from app.window.window import Window

_WRITTEN = (QLabel, QAbstractButton, QLineEdit, QPlainTextEdit)


def settle() -> None:
    for _ in range(4):
        QApplication.processEvents()


Sizes = dict[str, tuple[int, int]]


def sizes(window: Window, key: str) -> Sizes:
    """Font and height of everything written on a page, in the order it was made."""
    page = window.page(key)
    window.show_page(next(i for i, kind in enumerate(PAGES) if kind.key == key))
    settle()
    written = [w for kind in _WRITTEN for w in page.findChildren(kind) if w.isVisible()]
    return {
        f"{number} {type(widget).__name__} {widget.accessibleName()}": (
            widget.fontInfo().pixelSize(),
            widget.height(),
        )
        for number, widget in enumerate(written)
    }


def wait_for_plan(window: Window, qtbot) -> None:
    """Until the Mix page has its mixes."""
    planner = window.planner
    qtbot.waitUntil(lambda: planner.plan is not None and not planner.working, timeout=20_000)


_found: list[dict[str, Sizes]] = []


@pytest.fixture
def found(qtbot, tmp_path) -> list[dict[str, Sizes]]:
    """By page, with large text set over every page, and with every page made in large text.

    The first test measures all pages of both windows; no test changes anything of them.
    """
    if not _found:
        _found.extend(pages_of(tmp_path / str(live), qtbot, live=live) for live in (True, False))
    return _found


def pages_of(folder: Path, qtbot, *, live: bool) -> dict[str, Sizes]:
    window = Window(folder)
    qtbot.addWidget(window)
    window.resize(1366, 768)
    if not live:
        window.preferences.set(text_percent=150)
    with qtbot.waitExposed(window):
        window.show()
    open_and_wait(window, draw_sky(folder.with_suffix(".png")), qtbot)
    wait_for_plan(window, qtbot)
    if live:
        for kind in PAGES:
            sizes(window, kind.key)
        window.preferences.set(text_percent=150)
        settle()
    pages = {kind.key: sizes(window, kind.key) for kind in PAGES}
    window.preferences.set(text_percent=100)
    window.document.mark_saved()
    window.close()
    return pages


@pytest.mark.parametrize("key", [kind.key for kind in PAGES])
def test_large_text_set_while_running_is_large_everywhere(found, key) -> None:
    live, fresh = (pages[key] for pages in found)
    assert live.keys() == fresh.keys()
    for name, (font, height) in fresh.items():
        assert live[name][0] == font, name
        assert abs(live[name][1] - height) <= 2, name


def test_wheel_and_ladder_grow_with_the_text_at_once(qtbot, tmp_path) -> None:
    sky = draw_sky(tmp_path / "sky.png")
    window = Window(tmp_path)
    qtbot.addWidget(window)
    window.resize(1366, 768)
    with qtbot.waitExposed(window):
        window.show()
    open_and_wait(window, sky, qtbot)
    page = window.page("read")

    def sizes_now() -> list[float]:
        settle()
        wheel, ladder = page.wheel.layout_now, page.ladder.layout_now
        names = [min(word.size for word in words) for words in wheel.names]
        return [*names, wheel.marker_radius, ladder.text, ladder.letter_radius]

    before = sizes_now()
    window.preferences.set(text_percent=150)
    large = sizes_now()
    assert all(late >= early for early, late in zip(before, large, strict=True))
    assert sum(large) >= 1.25 * sum(before)
    page.lay_wheel_over(True)
    settle()
    assert page.canvas.wheel._view.text == 1.5
    page.lay_wheel_over(False)
    window.preferences.set(text_percent=100)
    assert sizes_now() == before
    window.document.mark_saved()
