from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from app.drawing.pyramid import Pyramid, image_of
from app.drawing.sheets.board import paint_board
from app.drawing.sheets.corners import HandleView, LensView, paint_handle, paint_lens
from app.drawing.sheets.gutter import gutter_words
from app.drawing.sheets.hints import HintView, paint_hint
from app.drawing.sheets.rows import BandRowView, Detail, paint_band_row, row_height
from app.drawing.sheets.shape import (
    BoardView,
    LineOnSheet,
    MarkOnSheet,
    PictureOnBoard,
    board_shape,
)
from app.look.theme import WALL

pytestmark = pytest.mark.usefixtures("qapp")


def painted(width: int, height: int, paint, *args) -> np.ndarray:
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.fill(QColor(WALL))
    painter = QPainter(image)
    paint(painter, QRectF(0, 0, width, height), *args)
    painter.end()
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(height, -1, 4)
    return rows[:, :width, 2::-1].astype(int)


def flat(colour: tuple[int, int, int], size=(90, 60)) -> Pyramid:
    pixels = np.zeros((size[1], size[0], 3), np.uint8)
    pixels[:] = colour
    return Pyramid.of(image_of(pixels))


def board(**changes) -> BoardView:
    sheet = PictureOnBoard(
        flat((200, 180, 60)), lines=(LineOnSheet(0.3), LineOnSheet(0.6, "6% high", True))
    )
    view = BoardView(
        sky=PictureOnBoard(flat((60, 90, 200))),
        sheets=(sheet, PictureOnBoard()),
        letters=("A", "B", "C"),
        lines=(0.3, 0.66),
        aspect=1.5,
        text=13.0,
    )
    return replace(view, **changes)


def test_pictures_are_equal_level_and_inside() -> None:
    for width, height in ((1366, 300), (1920, 400), (960, 200), (700, 600)):
        shape = board_shape(QRectF(0, 0, width, height), 1.4, 13.0)
        first = shape.pictures[0]
        for place in shape.pictures:
            assert place.size() == first.size()
            assert place.top() == first.top()
            assert place.right() <= width
            assert place.bottom() <= height + 1e-6
            assert place.width() / place.height() == pytest.approx(1.4)
        assert all(
            b.left() - a.right() >= shape.gap - 1e-6
            for a, b in zip(shape.pictures, shape.pictures[1:], strict=False)
        )


def test_lines_stand_where_they_are_and_dashes_where_they_should_be() -> None:
    seen = painted(1366, 260, paint_board, board())
    shape = board_shape(QRectF(0, 0, 1366, 260), 1.5, 13.0)
    sky, sheet, empty = shape.pictures

    def row(share: float) -> int:
        return round(sheet.top() + share * sheet.height())

    middle = round(sheet.center().x())
    # White within black where the sheet's second line is, and the plain sheet elsewhere.
    assert seen[row(0.6) - 1 : row(0.6) + 2, middle].max() == 255
    assert tuple(seen[row(0.45), middle]) == (200, 180, 60)
    assert tuple(seen[row(0.66), middle]) == (200, 180, 60)
    # In the gutter the dashes are at the sky's line, and an arrow between.
    gutter = slice(round(sky.right()) + 8, round(sheet.left()) - 2)
    assert seen[row(0.66) - 1 : row(0.66) + 2, gutter].min() < 60  # between two pixel rows
    arrow = round(sheet.left() - 2.0 * 13)
    assert seen[row(0.645), arrow].max() < 30
    # The empty place is wall with an outline.
    assert tuple(seen[row(0.5), round(empty.center().x())]) == (134, 134, 134)


def test_a_line_that_cannot_be_told_is_not_drawn() -> None:
    sheet = PictureOnBoard(
        flat((200, 180, 60)), lines=(LineOnSheet(0.3), LineOnSheet(None, "cannot tell"))
    )
    seen = painted(1366, 260, paint_board, board(sheets=(sheet, PictureOnBoard())))
    place = board_shape(QRectF(0, 0, 1366, 260), 1.5, 13.0).pictures[1]
    column = seen[:, round(place.center().x())]
    for share in (0.6, 0.66):
        assert tuple(column[round(place.top() + share * place.height())]) == (200, 180, 60)


def test_marks_get_ink_tags_inside_the_sheet() -> None:
    marks = (
        MarkOnSheet("bloom", 0.9, 0.1, "bloom", radius=0.08),
        MarkOnSheet("edge", 0.3, 0.6, "hard edge", start=0.1, end=0.5),
        MarkOnSheet("corner", 0.0, 1.0, "pale corner"),
    )
    sheet = replace(board().sheets[0], marks=marks)
    plain = painted(1366, 260, paint_board, board())
    seen = painted(1366, 260, paint_board, board(sheets=(sheet, PictureOnBoard())))
    rows, columns = np.nonzero((plain != seen).any(axis=2))
    place = board_shape(QRectF(0, 0, 1366, 260), 1.5, 13.0).pictures[1]
    assert len(rows) > 3 * 26 * 40
    assert columns.min() >= place.left() - 1
    assert columns.max() <= place.right() + 1


def row_view(**changes) -> BandRowView:
    details = (
        Detail("matches", "hue: matches"),
        Detail("close", "value: lighter by 1"),
        Detail("cannot tell", "intensity: cannot tell"),
    )
    view = BandRowView("A", "#4050c0", "#5060c0", "close", "Close", "lighter by 1", details)
    return replace(view, **changes)


def test_the_two_chips_touch() -> None:
    seen = painted(
        430,
        60,
        paint_band_row,
        row_view(),
    )
    line = seen[30]
    first = np.flatnonzero((line == (0x40, 0x50, 0xC0)).all(axis=1))
    second = np.flatnonzero((line == (0x50, 0x60, 0xC0)).all(axis=1))
    assert len(first) > 40
    assert second[0] == first[-1] + 1


def test_an_open_row_is_higher_and_shows_every_quality() -> None:
    plain, opened = row_view(), row_view(open=True)
    assert row_height(opened, 430) > row_height(plain, 430) + 30
    height = round(row_height(opened, 430)) + 2
    assert (
        painted(430, height, paint_band_row, opened) != painted(430, height, paint_band_row, plain)
    ).any()


def test_a_narrow_row_wraps_its_remark() -> None:
    long = row_view(remark="lighter by 2, duller by 3, one step towards red-violet")
    assert row_height(long, 330) > row_height(long, 900)


def test_a_band_without_colour_has_dashed_chips() -> None:
    seen = painted(430, 60, paint_band_row, row_view(sheet=None))
    assert not (seen == (0x50, 0x60, 0xC0)).all(axis=2).any()


def test_the_lens_shows_the_corner_in_its_middle_turned_or_not() -> None:
    pixels = np.zeros((120, 160, 3), np.uint8)
    pixels[:] = (180, 170, 160)
    pixels[:60, :80] = (40, 60, 200)  # its corner is in the photo's middle
    picture = Pyramid.of(image_of(pixels))
    outline = ((0.5, 0.5), (0.9, 0.5), (0.9, 0.9), (0.5, 0.9))
    where = {0: (70, 70), 1: (130, 70), 2: (130, 130), 3: (70, 130)}
    for turned, (x, y) in where.items():
        view = LensView(picture, 160, 120, turned, (0.5, 0.5), outline, 4.0)
        seen = painted(200, 200, paint_lens, view)
        assert tuple(seen[y, x]) == (40, 60, 200), turned


def test_handles_and_hints_draw_something() -> None:
    for chosen in (False, True):
        seen = painted(40, 40, paint_handle, HandleView(chosen))
        assert seen.max() > 240
        assert seen.min() < 30
        # The corner itself stays free.
        assert tuple(seen[20, 20]) == (134, 134, 134)
    for kind in ("dry", "photo", "score"):
        assert painted(200, 100, paint_hint, HintView(kind, "#141414", "#3d3d3d")).min() < 40


def test_words_in_the_gutter_keep_clear_of_each_other(qapp) -> None:
    """A line far off is beyond its neighbour of which nothing can be told."""
    lines = (LineOnSheet(None, "cannot tell"), LineOnSheet(0.28, "17% high", True))
    sheet = PictureOnBoard(flat((200, 180, 60)), lines=lines)
    sky = PictureOnBoard(flat((200, 180, 60)))
    view = BoardView(sky, (sheet, sky), ("A", "B", "C"), (0.25, 0.45), 1.5, 13.0)
    place = QRectF(300, 20, 240, 160)
    words = gutter_words(place, lines, view)
    assert [word.line.text for word in words] == ["17% high"]
    apart = (LineOnSheet(None, "cannot tell"), LineOnSheet(0.8, "17% low", True))
    boxes = [word.box(13.0) for word in gutter_words(place, apart, view)]
    assert len(boxes) == 2
    assert not boxes[0].intersects(boxes[1])


def test_numbers_keep_the_order_of_their_lines(qapp) -> None:
    """A line too low above one too high: the words meet between them, and must not cross."""
    lines = (LineOnSheet(0.24, "4% low", True), LineOnSheet(0.33, "3% high", True))
    sky = PictureOnBoard(flat((200, 180, 60)))
    view = BoardView(sky, (sky, sky), ("A", "B", "C"), (0.2, 0.36), 1.5, 13.0)
    words = gutter_words(QRectF(300, 20, 240, 130), lines, view)
    assert [word.line.text for word in words] == ["4% low", "3% high"]
    assert not words[0].box(13.0).intersects(words[1].box(13.0))


def test_letters_never_touch_on_a_low_picture() -> None:
    # Five bands in a strip: the letters get smaller and reach a little beyond it.
    five = board(letters=tuple("ABCDE"), lines=(0.2, 0.4, 0.6, 0.8), aspect=3.0, text=20.0)
    shape = board_shape(QRectF(0, 40, 1366, 110), five.aspect, five.text)
    assert shape.pictures[0].height() <= 115
    image = painted(1366, 200, lambda p, r, v: paint_board(p, QRectF(0, 40, 1366, 110), v), five)
    wall = np.array(QColor(WALL).getRgb()[:3])
    x = round(shape.pictures[0].left() - 2.45 * 20)  # the middle of the letters' badges
    badges = (np.abs(image - wall).max(axis=2)[:, x - 8 : x + 1] > 8).any(axis=1)
    starts = int(np.sum(badges[1:] & ~badges[:-1]))
    assert starts == 5


def test_an_empty_place_can_be_taller_than_the_pictures() -> None:
    low = board(aspect=3.0, sheets=(PictureOnBoard(), PictureOnBoard()))
    tall = replace(low, empty_height=170.0)
    where = board_shape(QRectF(0, 0, 1366, 300), low.aspect, low.text).pictures[1]
    for view, height in ((low, where.height()), (tall, 170.0)):
        image = painted(1366, 300, paint_board, view)
        inside = image[:, round(where.left()) + 20 : round(where.right()) - 20]
        rows = np.flatnonzero((inside.max(axis=2) < 60).any(axis=1))
        assert rows.max() == pytest.approx(height, abs=2)
