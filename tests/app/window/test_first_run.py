from __future__ import annotations

from app.widgets.hints import HintTags
from app.window.first_run import FirstRun


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
