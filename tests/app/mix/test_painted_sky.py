"""The painted preview on the Mix page: the photo, and beside it the mixes as they dry."""

from __future__ import annotations

from PySide6.QtCore import QPoint

from core.study import with_bands


def test_the_mix_page_shows_the_sky_painted_beside_the_photo(sky_window, qtbot):
    window = sky_window
    window.resize(1366, 768)
    page = window.page("mix")
    window.show_page(1)
    qtbot.waitUntil(lambda: window.planner.plan is not None and not window.planner.working)
    qtbot.waitUntil(page.painted.isVisible)
    view = page.painted._view
    assert view.begins == 0.5
    plan = window.planner.plan
    flat = [wash.colours[0] for wash in view.washes if len(wash.colours) == 1]
    assert flat == [band.classroom.mix.colour.hex for band in plan.bands]
    # Paint is at the right of the preview, and only there.
    image, box = page.painted.grab().toImage(), page.painted.rect()
    y = box.height() - 12
    assert image.pixelColor(QPoint(box.center().x() + 6, y)).name() == flat[-1]
    assert image.pixelColor(QPoint(box.center().x() - 6, y)).name() != flat[-1]
    assert page.painted.geometry().bottom() < page.box.geometry().top() + 1


def test_it_follows_the_lines(sky_window, qtbot):
    window = sky_window
    page = window.page("mix")
    window.show_page(1)
    qtbot.waitUntil(lambda: window.planner.plan is not None and not window.planner.working)
    study = window.document.study
    bands = study.bands
    window.document.change(
        "horizon", with_bands(study, type(bands)(bands.horizon - 0.05, bands.lines))
    )
    qtbot.waitUntil(lambda: page.painted._view is not None)
    qtbot.waitUntil(lambda: abs(page.painted._view.horizon - (bands.horizon - 0.05)) < 1e-6)
