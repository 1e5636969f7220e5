"""The wheel over a picture: where it lies, and that it is never over the lit band."""

from __future__ import annotations

from hypothesis import assume, given
from hypothesis import strategies as st
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from app.drawing.views import point_marker, wheel_view
from app.drawing.wheel.over import Spot, Surroundings, lay_wheel, on_rim, on_wheel, paint_over_wheel
from app.look.theme import WALL
from app.widgets.preview import sample_readings


def around(horizon=0.6, lit=(0.0, 0.2), width=900, height=600, area=(1100, 640)):
    """A photo in the middle of an area."""
    left, top = (area[0] - width) / 2, (area[1] - height) / 2
    return Surroundings(
        (0, 0, *area),
        (left, top, left + width, top + height),
        top + horizon * height,
        (top + lit[0] * height, top + lit[1] * height),
        (60, 108),
    )


def test_it_lies_over_what_is_not_sky_where_there_is_room():
    place = around()
    spot = lay_wheel(place)
    assert spot.y - spot.size / 2 >= place.ground
    assert spot.y + spot.size / 2 <= place.photo[3]
    assert place.photo[0] <= spot.x - spot.size / 2
    assert spot.x + spot.size / 2 <= place.photo[2]


def test_without_ground_it_hides_least():
    # Nothing at all where there is wall beside an upright photo.
    tall = around(horizon=1.0, width=300)
    spot = lay_wheel(tall)
    assert spot.x - spot.size / 2 >= tall.photo[2] + 108
    # Else a corner, and less of the sky than where there is ground to lie on.
    wide = around(horizon=1.0)
    assert lay_wheel(wide).size < lay_wheel(around(horizon=0.4)).size


@given(
    st.floats(0.05, 1.0),
    st.floats(0, 0.9),
    st.floats(0.02, 0.9),
    st.sampled_from([(900, 600), (300, 620), (1090, 200), (1000, 636)]),
    st.none() | st.tuples(st.floats(-200, 1400), st.floats(-200, 900), st.floats(10, 2000)),
)
def test_it_is_never_over_the_lit_band(horizon, top, tall, size, wanted):
    assume(top + tall <= horizon)
    place = around(horizon, (top, top + tall), *size)
    spot = lay_wheel(place, None if wanted is None else Spot(*wanted))
    if spot is None:
        # Only where neither above, below nor beside has room for one that can be read.
        rooms = (place.lit[0], place.area[3] - place.lit[1])
        assert max(rooms) < place.least + 6
        return
    assert spot.size >= place.least
    assert spot.x - spot.size / 2 >= 0
    assert spot.x + spot.size / 2 <= place.area[2]
    assert spot.y - spot.size / 2 >= 0
    assert spot.y + spot.size / 2 <= place.area[3]
    beside = spot.x - spot.size / 2 >= place.photo[2] or spot.x + spot.size / 2 <= place.photo[0]
    over = spot.y - spot.size / 2 >= place.lit[1] or spot.y + spot.size / 2 <= place.lit[0]
    assert beside or over


def test_where_it_is_put_it_stays():
    place = around(lit=(0.0, 0.1))
    put = Spot(500, 400, 220)
    assert lay_wheel(place, put) == put


def test_it_stands_on_its_own_ground_on_any_photo(qapp):
    readings = sample_readings()
    for photo in ("#000000", "#ffffff", WALL, "#3c5aa0"):
        image = QImage(400, 400, QImage.Format.Format_RGB32)
        image.fill(QColor(photo))
        painter = QPainter(image)
        spot = Spot(200, 200, 360)
        geometry = paint_over_wheel(
            painter, spot, wheel_view(readings, 1), point_marker(readings[0].colour)
        )
        painter.end()
        rim = [image.pixelColor(200, y).name() for y in range(18, 32)]
        assert WALL in rim
        assert any(QColor(colour).lightness() < 60 for colour in rim)
        assert any(QColor(colour).lightness() > 200 for colour in rim)
        assert len(geometry.placed) >= len(readings)
        assert QRectF(20, 20, 360, 360).contains(geometry.centre)


def test_the_point_is_drawn_at_its_place(qapp):
    readings = sample_readings()

    def drawn(point):
        image = QImage(400, 400, QImage.Format.Format_RGB32)
        image.fill(QColor(WALL))
        painter = QPainter(image)
        geometry = paint_over_wheel(painter, Spot(200, 200, 360), wheel_view((), None), point)
        painter.end()
        return image, geometry

    point = point_marker(readings[0].colour)
    image, geometry = drawn(point)
    from app.drawing.wheel.shape import DISC, polar

    at = polar(geometry.centre, DISC * point.place * geometry.radius, point.wheel_deg).toPoint()
    assert image.pixelColor(at).name() == readings[0].colour.hex
    assert drawn(None)[0].pixelColor(at).name() != readings[0].colour.hex


def test_face_and_rim():
    spot = Spot(100, 100, 200)
    assert on_wheel(spot, 100, 100)
    assert not on_rim(spot, 100, 100)
    assert on_rim(spot, 197, 100)
    assert not on_wheel(spot, 195, 195)
