from __future__ import annotations

import numpy as np
import pytest
from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from app.widgets.hints import HintTags
from app.window.first_run import FirstRun
from app.window.window import _first_size


def tags_of(window):
    return [tags for tags in window.findChildren(HintTags) if tags.isVisible()]


def begin(window, qtbot):
    window.greet()
    qtbot.waitUntil(lambda: len(tags_of(window)) == 1)
    return tags_of(window)[0]


def test_three_hints_point_into_the_window(sky_window, qtbot):
    tags = begin(sky_window, qtbot)
    for number in ("1:", "2:", "3:"):
        assert number in tags.accessibleName()
    for hint in tags._hints:
        assert sky_window.rect().contains(hint.anchor)


def test_closed_once_they_are_closed_for_good(sky_window, qtbot):
    begin(sky_window, qtbot)._dismiss()
    assert tags_of(sky_window) == []
    run = sky_window.findChildren(FirstRun)[0]
    assert not run.wanted
    sky_window.greet()
    assert sky_window.findChildren(FirstRun)[-1].tags is None


def test_another_photo_sends_them_away_for_now(sky_window, qtbot, tmp_path):
    from window_tools import draw_sky, open_and_wait

    begin(sky_window, qtbot)
    open_and_wait(sky_window, draw_sky(tmp_path / "other.png"), qtbot)
    assert tags_of(sky_window) == []
    assert sky_window.findChildren(FirstRun)[0].wanted


def pixels_of(image: QImage) -> np.ndarray:
    image = image.convertToFormat(QImage.Format.Format_RGB32)
    return np.array(image.constBits()).reshape(image.height(), image.width(), 4)[..., :3].copy()


@pytest.mark.parametrize("size", [(1920, 1080), (1100, 700)])
def test_no_old_pixels_stay_where_the_hints_were(sky_window, qtbot, size):
    """The window's own pixels against the window drawn anew, after it grew or shrank."""
    begin(sky_window, qtbot)
    QApplication.processEvents()
    sky_window.resize(*size)
    QApplication.processEvents()
    assert tags_of(sky_window) == []  # they step aside while everything moves
    qtbot.waitUntil(lambda: len(tags_of(sky_window)) == 1)
    qtbot.waitUntil(lambda: not sky_window.reader.working and not sky_window.planner.working)
    QApplication.processEvents()
    seen = pixels_of(sky_window.screen().grabWindow(sky_window.winId()).toImage())
    anew = pixels_of(sky_window.grab().toImage())
    assert seen.shape == anew.shape
    differ = (np.abs(seen.astype(int) - anew) > 24).any(axis=2)
    assert differ.mean() < 0.0005


@pytest.mark.parametrize("size", [(1366, 768), (1920, 1080)])
def test_the_hints_leave_wheel_and_ladder_free(sky_window, qtbot, size):
    sky_window.resize(*size)
    tags = begin(sky_window, qtbot)
    charts = QRectF(sky_window.findChildren(FirstRun)[0]._charts())
    for rect, _ in tags._tags:
        assert not rect.intersects(charts)
    assert not QRectF(tags._button.geometry()).intersects(charts)


def test_the_first_window_stays_on_the_screen_with_its_title_bar():
    assert _first_size(QSize(1366, 768)).height() <= 728
    assert _first_size(QSize(1366, 728)).height() <= 688
    assert _first_size(QSize(1920, 1080)) == QSize(1366, 768)
    assert _first_size(QSize(800, 600)) == QSize(1366, 768)
