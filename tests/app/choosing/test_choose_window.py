"""The window of a folder's skies: they come one by one, sort, and open by one press."""

from __future__ import annotations

import shutil
from itertools import pairwise
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, Qt, QUrl
from window_tools import wait_until_still

import sample_scenes
from app.choosing.window import SkyChoice
from app.window.window import Window


@pytest.fixture
def folder(tmp_path) -> Path:
    skies = tmp_path / "skies"
    skies.mkdir()
    for name in ("dusk", "fell"):
        shutil.copy(sample_scenes.path(name), skies / f"{name}.jpg")
    (skies / "bad.jpg").write_bytes(b"nothing of the kind")
    return skies


@pytest.fixture
def window(tmp_path, qtbot) -> Window:
    window = Window(tmp_path / "settings")
    qtbot.addWidget(window)
    window.show()
    return window


def choice_of(window: Window, qtbot) -> SkyChoice:
    (found,) = window.findChildren(SkyChoice)
    qtbot.waitUntil(lambda: not found.looking.running, timeout=20_000)
    return found


def test_a_dropped_folder_is_looked_through_and_one_press_opens(window, folder, qtbot) -> None:
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(folder))])
    assert window.opener.open_mime(mime)
    choice = choice_of(window, qtbot)
    assert [tile.view.name for tile in choice.tiles] == ["dusk.jpg", "fell.jpg"]
    assert "bad.jpg: " in choice.refused.text()
    assert choice.count.text() == "2 photos"
    assert choice.tiles[0].view.text.startswith("5 bands: ")
    qtbot.keyClick(choice.tiles[1], Qt.Key.Key_Space)
    wait_until_still(window, qtbot)
    assert window.document.study.bands.count == 4
    qtbot.waitUntil(lambda: not window.findChildren(SkyChoice))


def test_sorting_moves_the_tiles_and_the_tab_order(window, folder, qtbot) -> None:
    shutil.copy(sample_scenes.path("marsh"), folder / "a marsh.jpg")
    window.choose_sky(folder)
    choice = choice_of(window, qtbot)
    assert choice.tiles[0].view.name == "a marsh.jpg"
    choice.sorting.setCurrentIndex(1)
    assert [tile.view.name for tile in choice.tiles] == ["dusk.jpg", "fell.jpg", "a marsh.jpg"]
    places = [(tile.y(), tile.x()) for tile in choice.tiles]
    assert places == sorted(places)
    choice.close()


def test_words_are_whole_at_large_text(window, folder, qtbot) -> None:
    window.choose_sky(folder)
    choice = choice_of(window, qtbot)
    window.preferences.set(text_percent=150)
    choice.resize(1366, 700)
    for tile in choice.tiles:
        assert tile.height() >= tile.height_at(tile.width())
        assert tile.geometry().right() <= choice.wall.width()
    choice.close()


def test_stopping_keeps_what_was_seen(window, folder, qtbot) -> None:
    for number in range(8):
        shutil.copy(sample_scenes.path("fell"), folder / f"more {number}.jpg")
    window.choose_sky(folder)
    (choice,) = window.findChildren(SkyChoice)
    qtbot.waitUntil(lambda: len(choice.tiles) >= 1, timeout=20_000)
    choice.stop_button.click()
    shown = len(choice.tiles)
    qtbot.wait(300)
    assert len(choice.tiles) == shown < 10
    assert not choice.looking.running
    choice.close()


def test_a_folder_without_photos_is_told(window, tmp_path, qtbot) -> None:
    (tmp_path / "empty").mkdir()
    window.choose_sky(tmp_path / "empty")
    assert window.notice_display.text.startswith("There is no photo in the folder empty")
    qtbot.waitUntil(lambda: not window.findChildren(SkyChoice))


@pytest.mark.parametrize("percent", [100, 150])
def test_every_band_of_a_tile_has_its_letter(window, folder, qtbot, percent) -> None:
    window.choose_sky(folder)
    choice = choice_of(window, qtbot)
    window.preferences.set(text_percent=percent)
    choice.resize(1366, 700)
    for tile in choice.tiles:
        height = tile.picture_place().height()
        edges = tile.view.edges
        middles = [(a + b) / 2 * height for a, b in pairwise(edges)]
        disc = tile.disc_radius(height)
        assert all(b - a >= 2 * disc for a, b in pairwise(middles)), "they would touch"
        assert disc >= 6
    choice.close()
