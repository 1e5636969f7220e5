"""The wheel's geometry: places, crowds, words, hits."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from app.drawing.views import WEDGE_COLOURS, WEDGE_INKS, wheel_view
from app.drawing.wheel.layout import wedge_at, wheel_geometry, wheel_hit
from app.drawing.wheel.shape import (
    DISC,
    INNER,
    WheelMarker,
    WheelView,
    outer_of,
)
from app.drawing.wheel.wheel import paint_wheel
from app.widgets.preview import sample_readings
from core.reading.reading import INTENSITY_RINGS
from core.reading.wheel import FAMILIES, complement, hue_class

SQUARE = QRectF(7, 11, 300, 300)

marker = st.builds(
    lambda deg, place: WheelMarker("A", deg, place, "#808080", "#0b0b0b", int(deg / 30) % 12, 0),
    st.floats(0, 359.9),
    st.floats(0, 0.97),
)


def view_of(markers: tuple[WheelMarker, ...], chosen: int | None = None) -> WheelView:
    return WheelView(
        markers, WEDGE_COLOURS, WEDGE_INKS, FAMILIES, chosen, ("dull", "moderate", "intense")
    )


def distance(one: QPointF, other: QPointF) -> float:
    return math.hypot(one.x() - other.x(), one.y() - other.y())


def test_class_is_told_by_shape() -> None:
    reach = {"primary": 1.0, "secondary": 0.975, "tertiary": 0.95}
    for wedge, family in enumerate(FAMILIES):
        assert outer_of(wedge) == reach[hue_class(family)]


def test_families_stand_clockwise_from_yellow_on_top(qapp: object) -> None:
    """Orange at 60, red 120, violet 180, blue 240, green 300 degrees."""
    geometry = wheel_geometry(SQUARE, view_of(()))
    for family, deg in (("yellow", 0), ("orange", 60), ("red", 120), ("blue", 240)):
        turn = math.radians(deg)
        offset = QPointF(math.sin(turn), -math.cos(turn)) * 0.8 * geometry.radius
        wedge = wedge_at(geometry, geometry.centre + offset)
        assert wedge is not None
        assert FAMILIES[wedge] == family
    assert wedge_at(geometry, geometry.centre) is None


def test_marker_stands_in_the_ring_of_its_word(qapp: object) -> None:
    """With nobody to make room for, a marker is exactly at its angle and its place."""
    for reading in sample_readings():
        geometry = wheel_geometry(SQUARE, wheel_view([reading]))
        assert reading.colour is not None
        offset = geometry.placed[0].disc - geometry.centre
        share = math.hypot(offset.x(), offset.y()) / (DISC * geometry.radius)
        words = ("near neutral", "dull", "moderate", "intense")
        ring = words.index(reading.colour.intensity_word)
        assert INTENSITY_RINGS[ring] - 1e-9 <= share <= INTENSITY_RINGS[ring + 1] + 1e-9
        deg = math.degrees(math.atan2(offset.x(), -offset.y())) % 360
        assert deg == pytest.approx(reading.colour.hue.wheel_deg)


def test_colour_without_any_hue_lies_in_the_middle(qapp: object) -> None:
    grey = WheelMarker("A", None, 0.05, "#808080", "#0b0b0b")
    geometry = wheel_geometry(SQUARE, view_of((grey,), 0))
    assert distance(geometry.placed[0].disc, geometry.centre) < 1e-9
    assert geometry.way is None
    assert geometry.onward is None


@settings(deadline=None, max_examples=60)
@given(st.lists(marker, max_size=26))
def test_markers_never_overlap(qapp: object, markers: list[WheelMarker]) -> None:
    geometry = wheel_geometry(SQUARE, view_of(tuple(markers)))
    for one, other in itertools.combinations(geometry.placed, 2):
        assert distance(one.disc, other.disc) >= 2 * geometry.marker_radius
    for place in geometry.placed:
        assert distance(place.disc, geometry.centre) < INNER * geometry.radius


@settings(deadline=None, max_examples=60)
@given(st.lists(marker, max_size=9), st.integers(0, 8))
def test_no_marker_touches_an_intensity_word(
    qapp: object, markers: list[WheelMarker], chosen: int
) -> None:
    view = view_of(tuple(markers), chosen if chosen < len(markers) else None)
    geometry = wheel_geometry(SQUARE, view)
    for word in geometry.words:
        for place in geometry.placed:
            near = QPointF(
                min(max(place.disc.x(), word.rect.left()), word.rect.right()),
                min(max(place.disc.y(), word.rect.top()), word.rect.bottom()),
            )
            assert distance(near, place.disc) >= geometry.marker_radius


def test_all_three_words_are_there_when_there_is_room(qapp: object) -> None:
    geometry = wheel_geometry(SQUARE, wheel_view(sample_readings(), 2))
    assert [word.text for word in geometry.words] == ["dull", "moderate", "intense"]


def test_every_name_fits_its_wedge_at_300_pixels(qapp: object) -> None:
    geometry = wheel_geometry(SQUARE, view_of(()))
    for wedge, words in enumerate(geometry.names):
        assert words, FAMILIES[wedge]
        assert "".join(word.text for word in words) == FAMILIES[wedge]
        for word in words:
            assert word.size >= 12.0
            # The letters' own height, without the line's leading.
            for x in (word.rect.left(), word.rect.right()):
                assert wedge_at(geometry, QPointF(x, word.rect.center().y())) == wedge


SPANISH = (
    "amarillo",
    "amarillo anaranjado",
    "naranja",
    "rojo anaranjado",
    "rojo",
    "rojo violáceo",
    "violeta",
    "azul violáceo",
    "azul",
    "azul verdoso",
    "verde",
    "amarillo verdoso",
)


@pytest.mark.parametrize("side", [296, 310, 460])
def test_longer_names_of_another_language_are_all_there(qapp: object, side: int) -> None:
    view = replace(view_of(()), names=SPANISH)
    geometry = wheel_geometry(QRectF(0, 0, side, side), view)
    for name, words in zip(SPANISH, geometry.names, strict=True):
        assert words, name
        assert all(word.size >= 12.0 and word.squeeze >= 0.75 for word in words)
        text = "".join(word.text for word in words).replace("-", "")
        assert text == name.replace(" ", "")


@pytest.mark.parametrize("text", [1.25, 1.5, 2.0])
@pytest.mark.parametrize("names", [FAMILIES, SPANISH])
def test_larger_text_makes_every_name_larger_that_has_room(
    qapp: object, text: float, names: tuple[str, ...]
) -> None:
    plain = wheel_geometry(SQUARE, replace(view_of(()), names=names))
    geometry = wheel_geometry(SQUARE, replace(view_of(()), names=names, text=text))
    grown = []
    for wedge, words in enumerate(geometry.names):
        assert words, names[wedge]
        for word in words:
            before = max(one.size * one.squeeze for one in plain.names[wedge])
            grown.append(word.size * word.squeeze / before)
            for x in (word.rect.left(), word.rect.right()):
                assert wedge_at(geometry, QPointF(x, word.rect.center().y())) == wedge
    assert min(grown) >= 0.99
    assert sum(grown) / len(grown) >= (1.1 if names is SPANISH else 1.15)
    sizes = [word.size for word in geometry.words]
    assert sizes
    assert min(sizes) >= 1.2 * plain.words[0].size


@settings(deadline=None, max_examples=30)
@given(st.lists(marker, max_size=26), st.sampled_from([1.25, 1.5, 2.0]))
def test_larger_markers_keep_apart_and_inside(
    qapp: object, markers: list[WheelMarker], text: float
) -> None:
    geometry = wheel_geometry(SQUARE, replace(view_of(tuple(markers)), text=text))
    for one, other in itertools.combinations(geometry.placed, 2):
        assert distance(one.disc, other.disc) >= 2 * geometry.marker_radius
    for place in geometry.placed:
        assert distance(place.disc, geometry.centre) < geometry.inner * geometry.radius


@pytest.mark.parametrize("side", range(120, 320, 10))
def test_a_small_wheel_names_all_tertiaries_or_none(qapp: object, side: int) -> None:
    geometry = wheel_geometry(QRectF(0, 0, side, side), view_of(()))
    named = [bool(words) for words in geometry.names]
    assert len({named[wedge] for wedge in range(1, 12, 2)}) == 1


def test_chosen_band_points_to_the_middle_and_on_to_its_complement(qapp: object) -> None:
    readings = sample_readings()
    geometry = wheel_geometry(SQUARE, wheel_view(readings, 2))
    colour = readings[2].colour
    assert colour is not None
    assert colour.hue.family is not None
    assert geometry.way is not None
    assert geometry.onward is not None
    assert distance(geometry.way[0], geometry.placed[2].dot) < 1e-9
    core = DISC * INTENSITY_RINGS[1] * geometry.radius
    assert distance(geometry.way[1], geometry.centre) == pytest.approx(core)
    end = geometry.onward[1] - geometry.centre
    wedge = wedge_at(geometry, geometry.centre + end * 1.1)
    assert wedge is not None
    assert FAMILIES[wedge] == complement(colour.hue.family)


def test_marker_waits_inside_its_wedge_until_intensity_is_told(qapp: object) -> None:
    view = replace(wheel_view(sample_readings()[2:3], 0), waiting=True, marker=0.19)
    geometry = wheel_geometry(SQUARE, view)
    away = geometry.placed[0].disc - geometry.centre
    length = math.hypot(away.x(), away.y())
    # Its disc leaves the wedge free, and the wedge is the one it points at.
    assert length + geometry.marker_radius <= 0.62 * geometry.radius
    beyond = geometry.centre + away * (0.8 * geometry.radius / length)
    assert wedge_at(geometry, beyond) == view.markers[0].family
    assert geometry.way is None
    assert geometry.onward is None


def test_hit_finds_the_disc_that_is_drawn(qapp: object) -> None:
    geometry = wheel_geometry(SQUARE, wheel_view(sample_readings(crowded=True), 1))
    for index, place in enumerate(geometry.placed):
        assert wheel_hit(geometry, place.disc) == index
    assert wheel_hit(geometry, SQUARE.topLeft()) is None


def test_band_without_sky_has_no_marker_and_keeps_the_others_numbers(qapp: object) -> None:
    readings = list(sample_readings())
    readings[1] = replace(readings[1], colour=None)
    view = wheel_view(readings, 2)
    assert [m.letter for m in view.markers] == ["A", "C", "D", "E"]
    assert [m.band for m in view.markers] == [0, 2, 3, 4]
    assert view.markers[view.chosen or 0].letter == "C"


@pytest.mark.parametrize("side", [120, 300, 900])
def test_drawing_stays_inside_its_rectangle_and_restores_the_painter(
    qapp: object, side: int
) -> None:
    image = QImage(side + 40, side + 40, QImage.Format.Format_RGB32)
    image.fill(QColor("#123456"))
    painter = QPainter(image)
    before = (painter.pen(), painter.brush(), painter.renderHints(), painter.transform())
    paint_wheel(painter, QRectF(20, 20, side, side), wheel_view(sample_readings(), 2))
    assert (painter.pen(), painter.brush(), painter.renderHints(), painter.transform()) == before
    painter.end()
    outside = {image.pixel(i, j) for i in (5, 15, side + 30) for j in range(side + 40)}
    assert outside == {QColor("#123456").rgb()}
    # Between the name and the outer edge of yellow.
    yellow = image.pixelColor(20 + side // 2, 22 + round(0.035 * side))
    assert yellow == QColor(WEDGE_COLOURS[0])
