from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from app.drawing.marks import PartsBarView
from app.drawing.mix.compare import ComparedChip, CompareView, paint_compare
from app.drawing.mix.meeting import MeetingStripView, Passage, paint_meeting
from app.drawing.mix.parts import NamedBarView, name_places, named_bar_height, paint_named_bar
from app.drawing.mix.strip import StripView, StripZone, paint_strip
from app.drawing.mix.swatch import SwatchView, paint_swatch
from app.drawing.mix.text import lines_of
from app.drawing.mix.tone import ToneChip, ToneView, captions_height, paint_tone
from app.look.theme import WALL

RECT = QRectF(0, 0, 500, 160)
INK = "#141414"

BAR = NamedBarView(
    PartsBarView(((3, "#2040c0", "#ffffff"), (1, "#c02040", "#ffffff"))),
    ("ultramarine", "alizarin crimson"),
    30,
    13,
    INK,
)
CHIPS = tuple(
    ToneChip(f"#{shade:02x}8090", f"1/{n} green", "too dull", "0.3 steps darker")
    for n, shade in enumerate((0x40, 0x60, 0x80, 0xA0, 0xC0), start=1)
)
TONE = ToneView(CHIPS, 13, INK, INK)
COMPARE = CompareView(
    "#5060a0",
    (
        ComparedChip("ultramarine", "#4050a0", "3 : 1", "close", "Close", "x", "", True),
        ComparedChip("cobalt", "#60a0c0", "2 : 1", "off", "Off", "", "", False),
    ),
    13,
    INK,
    INK,
    "#ededed",
)
MEETING = MeetingStripView(
    Passage(("#203080", "#c08020"), ("#303070", "#b09030"), ((0.0, "blue"), (0.5, "yellow"))),
    ("photo", "paint"),
    13,
    INK,
    INK,
)


def drawn(paint, *args, **kwargs) -> QImage:
    image = QImage(500, 160, QImage.Format.Format_RGB32)
    image.fill(QColor("#ededed"))
    painter = QPainter(image)
    painter.setPen(QColor("#123456"))
    state = (painter.pen(), painter.brush(), painter.font(), painter.transform())
    paint(painter, RECT, *args, **kwargs)
    # The painter is handed back as it came.
    assert (painter.pen(), painter.brush(), painter.font(), painter.transform()) == state
    painter.end()
    return image


def colour(image: QImage, x: float, y: float) -> str:
    return image.pixelColor(round(x), round(y)).name()


def test_photo_and_paint_touch_with_no_line_between(qapp) -> None:
    view = StripView((StripZone(0, 160, ("#405060",), ("#607080",)),))
    image = drawn(paint_strip, view)
    seen = {colour(image, x, 80) for x in range(500)}
    assert seen == {"#405060", "#607080"}
    assert colour(image, 249, 80) == "#405060"
    assert colour(image, 250, 80) == "#607080"


def test_equal_colours_leave_no_edge(qapp) -> None:
    image = drawn(paint_strip, StripView((StripZone(0, 160, ("#405060",), ("#405060",)),)))
    assert {colour(image, x, 80) for x in range(500)} == {"#405060"}


def test_a_zone_without_colours_shows_the_ground(qapp) -> None:
    image = drawn(paint_strip, StripView((StripZone(0, 160, (), ("#405060",)),)))
    assert colour(image, 100, 80) == "#ededed"


def test_a_swatch_is_drawn_out_or_dashed(qapp) -> None:
    image = drawn(paint_swatch, SwatchView(("#000000", "#ffffff")))
    greys = [image.pixelColor(x, 80).red() for x in range(500)]
    assert greys == sorted(greys)
    missing = drawn(paint_swatch, SwatchView())
    assert colour(missing, 250, 80) == "#ededed"
    edge = {colour(missing, x, 3) for x in range(500)}
    assert len(edge) > 1  # dashes and what is between


def test_a_named_bar_has_a_cell_a_part_and_its_names_never_touch(qapp) -> None:
    image = drawn(paint_named_bar, BAR)
    blue = sum(colour(image, x, 4) == "#2040c0" for x in range(500))
    red = sum(colour(image, x, 4) == "#c02040" for x in range(500))
    assert blue / red == pytest.approx(3, abs=0.1)
    for width in (120, 200, 500):
        places = name_places(width, BAR)
        assert len(places) == 2
        assert all(left >= 0 for left, _ in places)
        rows = [row for _, row in places]
        if width < 200:
            assert rows == [0, 1]
    assert named_bar_height(500, BAR) < named_bar_height(120, BAR)


def test_the_match_is_framed_and_mud_is_hatched(qapp) -> None:
    plain = drawn(paint_tone, TONE, wall=RECT)
    framed = drawn(
        paint_tone, replace(TONE, chips=(replace(CHIPS[0], framed=True), *CHIPS[1:])), wall=RECT
    )
    mud = drawn(
        paint_tone, replace(TONE, chips=(*CHIPS[:4], replace(CHIPS[4], mud=True))), wall=RECT
    )
    assert framed != plain
    middle = 40
    last = {colour(mud, x, middle) for x in range(405, 495)}
    assert CHIPS[4].colour in last
    assert len(last) > 2
    # The chips touch: no wall shows between them.
    assert WALL not in {colour(plain, x, middle) for x in range(500)}


def test_captions_without_drifts_are_lower(qapp) -> None:
    assert captions_height(500, replace(TONE, drifts=False)) < captions_height(500, TONE)


def test_comparison_lays_the_photo_over_each_paint(qapp) -> None:
    image = drawn(paint_compare, COMPARE, wall=RECT)
    column = [colour(image, 60, y) for y in range(160)]
    assert column.index("#5060a0") < column.index("#4050a0")
    between = column[column.index("#5060a0") : column.index("#4050a0") + 1]
    assert set(between) == {"#5060a0", "#4050a0"}
    assert colour(image, 499, 10) == WALL


def test_a_meeting_lays_the_photo_over_the_paint(qapp) -> None:
    image = drawn(paint_meeting, MEETING, wall=RECT, label=60)
    column = [colour(image, 70, y) for y in range(8, 110)]
    assert WALL not in column
    assert colour(image, 10, 6) == WALL
    passage = replace(MEETING.passage, photo=())
    without = drawn(paint_meeting, replace(MEETING, passage=passage), wall=RECT, label=60)
    assert without != image


def test_lines_break_at_spaces_only(qapp) -> None:
    assert lines_of("one two three", 13, 400, 1000) == ("one two three",)
    assert lines_of("one two three", 13, 400, 1) == ("one", "two", "three")
    assert lines_of("", 13, 400, 100) == ()
