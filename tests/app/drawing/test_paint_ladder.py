"""The ladder: greys of the right value, letters at the right height, both ends in words."""

from __future__ import annotations

import itertools
import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from app.drawing.ladder import (
    GREYS,
    LadderMark,
    LadderView,
    ladder_geometry,
    ladder_hit,
    paint_ladder,
)
from app.drawing.views import ladder_view
from app.widgets.preview import sample_readings
from core.colour.contrast import relative_luminance
from core.colour.value import munsell_value
from core.reading.wording import Wording

TALL = QRectF(3, 5, 94, 310)


def view_of(values: list[float], **options: object) -> LadderView:
    marks = tuple(LadderMark("A", value, "#808080", "#0b0b0b") for value in values)
    return LadderView(marks, ends=("10 white", "0 black"), **options)  # type: ignore[arg-type]


def test_each_grey_is_in_the_middle_of_its_step() -> None:
    # ASTM D1535 through core: value 0.5, 1.5 .. 9.5. One 8-bit code is up to 0.08 of a value.
    for step, grey in enumerate(GREYS):
        value = float(munsell_value(100 * relative_luminance(grey)))
        assert value == pytest.approx(step + 0.5, abs=0.08)


def test_letters_point_at_their_exact_value(qapp: object) -> None:
    geometry = ladder_geometry(TALL, view_of([0.0, 4.4, 10.0]))
    bar = geometry.bar
    assert [p.y() for p in geometry.true] == pytest.approx(
        [bar.bottom(), bar.bottom() - 0.44 * bar.height(), bar.top()]
    )


@settings(deadline=None, max_examples=80)
@given(st.lists(st.floats(0, 10), min_size=1, max_size=26), st.booleans())
def test_letters_never_overlap_and_stay_inside(
    qapp: object, values: list[float], across: bool
) -> None:
    rect = QRectF(0, 0, 450, 180) if across else TALL
    geometry = ladder_geometry(rect, view_of(values, across=across))
    for one, other in itertools.combinations(geometry.letters, 2):
        apart = math.hypot(one.x() - other.x(), one.y() - other.y())
        assert apart >= 2 * geometry.letter_radius - 1e-6
    for letter in geometry.letters:
        assert rect.contains(letter)


@settings(deadline=None, max_examples=80)
@given(st.lists(st.floats(0, 10), min_size=2, max_size=9))
def test_letters_keep_the_order_of_their_values(qapp: object, values: list[float]) -> None:
    geometry = ladder_geometry(TALL, view_of(values))
    for (v, a), (w, b) in itertools.combinations(zip(values, geometry.letters, strict=True), 2):
        if abs(v - w) > 1e-6:
            assert (v > w) == (a.y() < b.y())


@pytest.mark.parametrize("white_is", [10, 0])
def test_both_ends_say_which_is_white(white_is: int) -> None:
    wording = Wording(white_is=white_is)  # type: ignore[arg-type]
    view = ladder_view(sample_readings(), wording)
    assert view.ends == (f"{white_is} white", f"{10 - white_is} black")


def test_hit_finds_the_letter_that_is_drawn(qapp: object) -> None:
    geometry = ladder_geometry(TALL, view_of([4.4, 4.5, 6.2, 6.2, 7.5]))
    for index, letter in enumerate(geometry.letters):
        assert ladder_hit(geometry, letter) == index
    assert ladder_hit(geometry, geometry.bar.center()) is None


@pytest.mark.parametrize("across", [False, True])
def test_light_is_on_top_or_right(qapp: object, across: bool) -> None:
    rect = QRectF(0, 0, 450, 180) if across else QRectF(0, 0, 94, 310)
    image = QImage(450, 320, QImage.Format.Format_RGB32)
    image.fill(QColor("#868686"))
    painter = QPainter(image)
    bar = paint_ladder(painter, rect, view_of([5.0], across=across)).bar
    painter.end()
    if across:
        light = image.pixelColor(round(bar.right() - 6), round(bar.center().y()))
        dark = image.pixelColor(round(bar.left() + 6), round(bar.center().y()))
    else:
        light = image.pixelColor(round(bar.left() + 4), round(bar.top() + 8))
        dark = image.pixelColor(round(bar.left() + 4), round(bar.bottom() - 8))
    assert light == QColor(GREYS[-1])
    assert dark == QColor(GREYS[0])


@pytest.mark.parametrize("scale", [1.25, 1.5])
def test_larger_text_grows_on_the_ladder_too(qapp: object, scale: float) -> None:
    """The widget grows in width with the text, so the words at the ends find room."""
    wide = QRectF(0, 0, round(94 * scale), 310)
    plain, grown = (
        ladder_geometry(TALL, view_of([5.0])),
        ladder_geometry(wide, view_of([5.0], scale=scale)),
    )
    assert grown.text >= 0.95 * scale * plain.text
    assert grown.letter_radius >= 1.2 * plain.letter_radius
    for rect in grown.ends:
        assert wide.contains(rect)
