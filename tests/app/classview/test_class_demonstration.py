"""The demonstration takes the screen: one band at a time, the sheet as it lies, two clocks."""

from __future__ import annotations

from dataclasses import replace
from itertools import product

import pytest
from class_tools import LEAST_TEXT, SCREENS, texts_of
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtTest import QTest

from app.classview.demonstration import demonstration_view
from app.drawing.classview.demonstration import band_on_sheet, demonstration_places
from core.paint.preview import laying_order


def step_view(view):
    return demonstration_view(view.pacing, view._plan, view._readings, view._picture, view._aspect)


@pytest.mark.parametrize(("size", "shape"), list(product(SCREENS, ((400, 600), (600, 400)))))
def test_every_step_is_large_and_on_the_screen(make_view, drawn, size, shape):
    view = make_view(size=size, shape=shape)
    for number in range(len(view.pacing.steps)):
        QTest.keyClick(view, Qt.Key.Key_P)
        assert view.pacing.present == number
        texts = texts_of(view, drawn)
        assert texts
        for text, height, left, right, y in texts:
            assert height > LEAST_TEXT * size[1] - 1, text
            assert left >= 0, text
            assert right <= size[0], text
            assert height / 2 <= y <= size[1] - height / 2, text
        words = [text for text, *_ in texts]
        assert not any("hue is it" in word for word in words)
        if view.pacing.steps[number].stage == "lay":
            assert max(height for _, height, *_ in texts) > 0.12 * size[1]


def test_the_mix_of_the_band_stands_with_its_paints_by_name(make_view, drawn):
    view = make_view()
    view.run("step on")
    letters = laying_order(view._plan)
    for letter in letters:
        view.run("step on")
        words = [text for text, *_ in texts_of(view, drawn)]
        assert f"Lay {letter}" in words
        mix = view._plan.band(letter).classroom.mix
        for key, count in mix.parts:
            assert any(view._plan.box.paint(key).name.split()[0] in word for word in words)
            assert len(mix.parts) == 1 or str(count) in words
        shown = step_view(view)
        assert shown.chip.colour == mix.colour.hex
        assert {shown.letters[shown.present]} | set(
            view.pacing.steps[view.pacing.present].laid
        ) <= set(letters)
        assert letter in view.accessibleName()


@pytest.mark.parametrize("turned", [False, True])
def test_the_sheet_lies_as_the_teacher_works(make_view, turned):
    view = make_view()
    plan = view._plan
    view.show_plan(replace(plan, order=replace(plan.order, turn_sheet=turned)))
    view.run("step on")
    view.run("step on")
    shown = step_view(view)
    layout = view._layout()
    screen = layout.wall.united(layout.paper)
    places = demonstration_places(screen, layout.height, layout.wall.right(), shown)
    tops = [band_on_sheet(places.sky, shown, band).top() for band in range(5)]
    assert tops == sorted(tops, reverse=turned)
    assert QRectF(places.wall).contains(places.sky)
    # The band to lay now glows: the photo's own pixels, unveiled. (The photo here is black.)
    middle = band_on_sheet(places.sky, shown, shown.present).center().toPoint()
    assert view.grab().toImage().pixelColor(middle).name() == "#000000"


def test_laid_bands_are_painted_in_their_mixes_colour(make_view):
    view = make_view()
    while view.pacing.present != len(view.pacing.steps) - 1:
        view.run("step on")
    shown, layout = step_view(view), view._layout()
    screen = layout.wall.united(layout.paper)
    places = demonstration_places(screen, layout.height, layout.wall.right(), shown)
    image = view.grab().toImage()
    for number, band in enumerate(view._plan.bands):
        spot = band_on_sheet(places.sky, shown, number).center().toPoint()
        assert image.pixelColor(spot).name() == band.classroom.mix.colour.hex


def test_it_gives_the_screen_back_and_its_clock_runs_on(make_view, drawn):
    view = make_view()
    for _ in view.pacing.steps:
        QTest.keyClick(view, Qt.Key.Key_P)
    assert view.pacing.left_s is not None
    QTest.keyClick(view, Qt.Key.Key_Escape)
    assert not view.demonstrating
    assert view.pacing.left_s is not None
    assert any("hue is it" in text for text, *_ in texts_of(view, drawn))
    QTest.keyClick(view, Qt.Key.Key_P)
    assert view.demonstrating
    assert view.pacing.present == len(view.pacing.steps) - 1
    QTest.keyClick(view, Qt.Key.Key_Backspace)
    assert view.pacing.steps[view.pacing.present].stage == "stop"
    for _ in view.pacing.steps:
        QTest.keyClick(view, Qt.Key.Key_Up)
    assert view.pacing.present is None
    assert not view.demonstrating
    view.pacing.stop()


def test_the_wet_edge_is_counted_from_the_water_on(make_view, monkeypatch):
    view = make_view()
    assert view.pacing.wet_s is None
    view.run("step on")
    clock = type(
        "Clock",
        (),
        {
            "elapsed": staticmethod(lambda: 150_000),
            "isValid": staticmethod(lambda: True),
            "start": staticmethod(lambda: None),
            "invalidate": staticmethod(lambda: None),
        },
    )
    monkeypatch.setattr(view.pacing, "_wet", clock())
    assert step_view(view).clock.left == "wet 2:30"
    assert step_view(view).clock.share == pytest.approx(0.25)
    assert "1 to 10 min" in step_view(view).clock.right
    view.run("step on")
    assert step_view(view).clock.left == "wet 2:30"
    view.pacing.stop()


def test_without_a_plan_the_steps_are_general(make_view, drawn):
    view = make_view()
    view.show_plan(None)
    for _ in view.pacing.steps:
        view.run("step on")
        assert texts_of(view, drawn)
        assert view.accessibleName()
    view.pacing.stop()


def test_the_wheel_over_the_photo_is_no_handle_while_the_work_has_the_screen(make_view):
    view = make_view()
    view.run("over")
    spot = view._spot
    view.run("step on")
    before = view.wheel_over.place
    place = QPointF(spot.x, spot.y).toPoint()
    QTest.mouseClick(view, Qt.MouseButton.LeftButton, pos=place)
    assert view.wheel_over.place == before
    assert view.pacing.present == 1
    view.pacing.stop()
