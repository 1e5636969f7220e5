from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QWheelEvent
from PySide6.QtWidgets import QApplication

from app.canvas.canvas import PhotoCanvas
from app.canvas.grip import PAD, STEP
from app.drawing.pyramid import Pyramid, image_of, veil_of
from core.bands.lines import Bands

BANDS = Bands(0.8, (0.2, 0.5))
LEFT = Qt.MouseButton.LeftButton


def picture() -> np.ndarray:
    pixels = np.zeros((200, 300, 3), np.uint8)
    pixels[:100] = (90, 120, 200)
    pixels[100:] = (240, 190, 150)
    return pixels


@pytest.fixture
def canvas(qtbot) -> PhotoCanvas:
    canvas = PhotoCanvas()
    qtbot.addWidget(canvas)
    canvas.resize(900, 520)
    canvas.set_photo(Pyramid.of(image_of(picture())), 300, 200)
    canvas.set_bands(BANDS)
    with qtbot.waitExposed(canvas):
        canvas.show()
    return canvas


def moves_of(canvas: PhotoCanvas) -> list[tuple[int, float, object]]:
    moves: list[tuple[int, float, object]] = []
    canvas.edge_moved.connect(lambda *values: moves.append(values))
    return moves


def at(canvas: PhotoCanvas, y: float, x: float = 0.3) -> QPoint:
    view = canvas.viewport
    return QPoint(round(view.photo_left + x * view.shown_width), round(view.y_px(y)))


def test_image_keeps_its_pixels_after_the_array_is_gone() -> None:
    pixels = picture()
    image = image_of(pixels)
    pixels[:] = 0
    assert image.pixelColor(5, 5) == QColor(90, 120, 200)


def test_veil_covers_only_what_is_not_sky() -> None:
    sky = np.ones((4, 6), bool)
    sky[3] = False
    veil = veil_of(sky, "#868686", 0.66)
    assert veil.pixelColor(0, 0).alpha() == 0
    assert veil.pixelColor(0, 3).alpha() == 168
    assert abs(veil.pixelColor(0, 3).red() - 0x86) <= 1


def test_pyramid_ends_small() -> None:
    pyramid = Pyramid.of(image_of(np.zeros((100, 2000, 3), np.uint8)))
    assert pyramid.levels[0].width() == 2000
    assert pyramid.levels[-1].width() <= 512


def test_dragging_a_line_moves_it_with_the_mouse(canvas, qtbot) -> None:
    moves = moves_of(canvas)
    start = at(canvas, 0.5)
    qtbot.mousePress(canvas, LEFT, pos=start)
    for step in (10, 20, 30):
        qtbot.mouseMove(canvas, start + QPoint(0, step))
    qtbot.mouseRelease(canvas, LEFT, pos=start + QPoint(0, 30))
    edges, heights, gestures = zip(*moves, strict=True)
    assert set(edges) == {1}
    assert len(set(map(id, gestures))) == 1
    assert heights[-1] == pytest.approx(0.5 + 30 / canvas.viewport.shown_height, abs=1e-6)
    qtbot.mouseMove(canvas, start)
    assert len(moves) == 3  # let go


def test_dragging_a_grip_moves_its_line(canvas, qtbot) -> None:
    moves = moves_of(canvas)
    grip = canvas.grips[1]
    start = grip.rect().center()
    qtbot.mousePress(grip, LEFT, pos=start)
    qtbot.mouseMove(grip, start + QPoint(0, 12))
    qtbot.mouseRelease(grip, LEFT, pos=start + QPoint(0, 12))
    assert moves
    assert moves[-1][0] == 1
    assert moves[-1][1] == pytest.approx(0.5 + 12 / canvas.viewport.shown_height, abs=2e-3)


def test_escape_puts_a_dragged_line_back(canvas, qtbot) -> None:
    moves = moves_of(canvas)
    start = at(canvas, 0.2)
    qtbot.mousePress(canvas, LEFT, pos=start)
    qtbot.mouseMove(canvas, start + QPoint(0, 20))
    qtbot.keyClick(canvas, Qt.Key.Key_Escape)
    assert moves[-1][:2] == (0, 0.2)
    qtbot.mouseMove(canvas, start + QPoint(0, 40))
    assert moves[-1][:2] == (0, 0.2)


def test_clicking_a_band_chooses_it(canvas, qtbot) -> None:
    with qtbot.waitSignal(canvas.band_chosen) as chosen:
        qtbot.mouseClick(canvas, LEFT, pos=at(canvas, 0.35))
    assert chosen.args == [1]


def test_clicking_the_ground_chooses_nothing(canvas, qtbot) -> None:
    with qtbot.assertNotEmitted(canvas.band_chosen):
        qtbot.mouseClick(canvas, LEFT, pos=at(canvas, 0.9))


def test_double_click_asks_for_a_line(canvas, qtbot) -> None:
    with qtbot.waitSignal(canvas.line_asked) as asked:
        qtbot.mouseDClick(canvas, LEFT, pos=at(canvas, 0.35))
    assert asked.args[0] == pytest.approx(0.35, abs=3e-3)
    with qtbot.assertNotEmitted(canvas.line_asked):
        qtbot.mouseDClick(canvas, LEFT, pos=at(canvas, 0.9))


def test_hover_gives_the_point_of_the_photo(canvas, qtbot) -> None:
    qtbot.mouseMove(canvas, at(canvas, 0.4, 0.6))
    with qtbot.waitSignal(canvas.hovered) as hovered:
        qtbot.mouseMove(canvas, at(canvas, 0.35, 0.5))
    assert hovered.args[0] == pytest.approx((0.5, 0.35), abs=3e-3)
    with qtbot.waitSignal(canvas.hovered) as hovered:
        qtbot.mouseMove(canvas, QPoint(3, 3))
    assert hovered.args[0] is None


def wheel(canvas: PhotoCanvas, notches: int, spot: QPoint) -> None:
    event = QWheelEvent(
        QPointF(spot),
        QPointF(canvas.mapToGlobal(spot)),
        QPoint(),
        QPoint(0, 120 * notches),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(canvas, event)


def test_wheel_zooms_around_the_mouse_and_dragging_pans(canvas, qtbot) -> None:
    spot = at(canvas, 0.35, 0.5)
    before = canvas.viewport.x_of(spot.x()), canvas.viewport.y_of(spot.y())
    wheel(canvas, 4, spot)
    assert canvas.viewport.zoom == pytest.approx(1.2**4)
    after = canvas.viewport.x_of(spot.x()), canvas.viewport.y_of(spot.y())
    assert after == pytest.approx(before)
    qtbot.mousePress(canvas, LEFT, pos=spot)
    qtbot.mouseMove(canvas, spot + QPoint(25, 0))
    qtbot.mouseRelease(canvas, LEFT, pos=spot + QPoint(25, 0))
    moved = canvas.viewport.x_of(spot.x() + 25)
    assert moved == pytest.approx(before[0])
    canvas.zoom_to_fit()
    assert canvas.viewport.zoom == 1.0


def test_lines_out_of_view_have_no_grip(canvas) -> None:
    canvas.zoom(8, QPointF(at(canvas, 0.2)))
    assert [grip.isVisible() for grip in canvas.grips] == [True, False, False]


@pytest.mark.parametrize(
    ("key", "modifier", "step"),
    [
        (Qt.Key.Key_Up, Qt.KeyboardModifier.NoModifier, -STEP),
        (Qt.Key.Key_Down, Qt.KeyboardModifier.NoModifier, STEP),
        (Qt.Key.Key_Up, Qt.KeyboardModifier.ShiftModifier, -0.02),
        (Qt.Key.Key_Down, Qt.KeyboardModifier.ShiftModifier, 0.02),
    ],
)
def test_arrows_move_the_focused_line(canvas, qtbot, key, modifier, step) -> None:
    assert STEP == 0.002
    moves = moves_of(canvas)
    qtbot.keyClick(canvas.grips[1], key, modifier)
    assert moves[-1][0] == 1
    assert moves[-1][1] == pytest.approx(0.5 + step)


def test_a_run_of_arrows_is_one_gesture(canvas, qtbot) -> None:
    moves = moves_of(canvas)
    for _ in range(3):
        qtbot.keyClick(canvas.grips[0], Qt.Key.Key_Down)
    qtbot.keyClick(canvas.grips[1], Qt.Key.Key_Down)
    gestures = [gesture for _, _, gesture in moves]
    assert gestures[0] is gestures[1] is gestures[2]
    assert gestures[3] is not gestures[2]


def test_a_number_can_be_typed(canvas, qtbot) -> None:
    moves = moves_of(canvas)
    grip = canvas.grips[1]
    grip.setFocus()
    qtbot.keyClicks(grip, "42.5")
    assert not moves  # not at every digit
    qtbot.keyClick(grip, Qt.Key.Key_Return)
    assert moves[-1][:2] == (1, pytest.approx(0.425))


def test_delete_removes_unless_a_number_is_being_typed(canvas, qtbot) -> None:
    grip = canvas.grips[1]
    grip.setFocus()
    qtbot.keyClicks(grip, "42")
    with qtbot.assertNotEmitted(canvas.remove_asked):
        qtbot.keyClick(grip, Qt.Key.Key_Delete)
    qtbot.keyClick(grip, Qt.Key.Key_Escape)
    assert grip.value() == pytest.approx(50.0)
    grip.clearFocus()
    grip.setFocus()
    with qtbot.waitSignal(canvas.remove_asked) as removed:
        qtbot.keyClick(grip, Qt.Key.Key_Delete)
    assert removed.args == [1]
    with qtbot.waitSignal(canvas.split_asked) as split:
        qtbot.keyClick(grip, Qt.Key.Key_Insert)
    assert split.args == [1]


def test_focus_opens_a_grip_and_chooses_its_band(canvas, qtbot) -> None:
    grip = canvas.grips[2]
    closed = grip.width()
    with qtbot.waitSignal(canvas.band_chosen) as chosen:
        grip.setFocus(Qt.FocusReason.TabFocusReason)
    assert chosen.args == [2]
    assert grip.opened
    assert grip.lineEdit().isVisible()
    grip.clearFocus()
    assert not grip.opened
    assert grip.width() == closed


def test_arrows_of_an_open_grip_can_be_clicked(canvas, qtbot) -> None:
    canvas.set_chosen(1)
    moves = moves_of(canvas)
    grip = canvas.grips[1]
    middle = PAD + round(grip.tag_height / 2)
    qtbot.mouseClick(grip, LEFT, pos=QPoint(grip.width() - 18, middle - 7))
    assert moves[-1][1] == pytest.approx(0.5 - STEP)
    qtbot.mouseClick(grip, LEFT, pos=QPoint(grip.width() - 18, middle + 7))
    assert moves[-1][1] == pytest.approx(0.5 + STEP)


def test_rivals_can_be_clicked(canvas, qtbot) -> None:
    canvas.set_rivals((0.6, 0.7))
    assert [tag.isVisible() for tag in canvas.rival_tags] == [True, True]
    with qtbot.waitSignal(canvas.rival_accepted) as accepted:
        qtbot.mouseClick(canvas.rival_tags[1], LEFT)
    assert accepted.args == [0.7]
    canvas.set_rivals(())
    assert canvas.rival_tags == ()


def test_every_line_has_a_name_for_a_screen_reader(canvas) -> None:
    names = [grip.accessibleName() for grip in canvas.grips]
    assert names[0].startswith("Line between bands A and B")
    assert names[1].startswith("Line between bands B and C")
    assert names[2].startswith("Horizon line")


def test_a_panorama_is_tall_enough_in_any_window_until_somebody_zooms(canvas) -> None:
    canvas.set_photo(Pyramid.of(image_of(picture()[:6])), 30_000, 600)
    for size in ((900, 520), (1400, 900), (500, 300)):
        canvas.resize(*size)
        view = canvas.viewport
        assert view.shown_height == pytest.approx(0.4 * view.height)
    canvas.zoom_to_fit()
    canvas.resize(900, 520)
    assert canvas.viewport.zoom == 1.0


def test_grips_of_thin_bands_stand_apart(canvas) -> None:
    canvas.set_bands(Bands(0.08, (0.01, 0.02, 0.03, 0.04, 0.05, 0.06)))
    grips = canvas.grips
    tags = [(g.y() + 7, g.y() + 7 + g.tag_height) for g in grips]
    assert all(below[0] >= above[1] for above, below in pairwise(tags))
    assert tags[0][0] >= 0


@pytest.mark.parametrize("chosen", [0, 3, 6])
def test_an_opened_grip_says_what_its_number_is(canvas, chosen) -> None:
    canvas.set_bands(Bands(0.08, (0.01, 0.02, 0.03, 0.04, 0.05, 0.06)))
    canvas.set_chosen(chosen)
    for number, grip in enumerate(canvas.grips):
        words = grip._words_below()
        named = ("horizon", "from the top") if number == 6 else ("from the top",)
        assert words == (named if grip.opened else ())
    assert canvas.grips[chosen].opened
    # The words have room: no grip stands on them.
    spans = [(g.y() + 7, g.y() + 7 + g.tag_height + g.below) for g in canvas.grips]
    assert all(below[0] >= above[1] for above, below in pairwise(spans))


@pytest.mark.parametrize("size", [(300, 5000), (30000, 2000), (4000, 3000)])
def test_grips_stay_beside_any_photo(canvas, size) -> None:
    canvas.set_photo(Pyramid.of(image_of(picture())), *size)
    for grip in canvas.grips:
        assert canvas.rect().contains(grip.geometry().adjusted(7, 7, -7, -7))


def on_screen(canvas: PhotoCanvas) -> QImage:
    """What was painted, bit by bit, since the canvas was shown."""
    QApplication.processEvents()
    return canvas.screen().grabWindow(canvas.winId()).toImage()


def test_painting_only_what_changed_leaves_no_trace(canvas, qtbot) -> None:
    first = on_screen(canvas)
    for lines, horizon, chosen in (
        ((0.3, 0.5), 0.8, 0),
        ((0.25, 0.55), 0.8, 2),
        ((0.25, 0.26), 0.8, 1),
        ((0.25, 0.26), 0.7, 1),
        ((0.2, 0.5), 0.8, 1),
        ((0.24, 0.5), 0.8, 1),
    ):
        canvas.set_bands(Bands(horizon, lines))
        canvas.set_chosen(chosen)
        partly = on_screen(canvas)
        canvas.update()
        assert partly == on_screen(canvas), (lines, horizon, chosen)
        assert partly != first


def test_a_dotted_line_leaves_the_words_on_the_veil_free(qapp) -> None:
    from PySide6.QtCore import QRectF
    from PySide6.QtGui import QColor, QImage, QPainter

    from app.canvas.painting import paint_rival

    words = QRectF(140, 30, 120, 20)
    image = QImage(400, 80, QImage.Format.Format_RGB32)
    image.fill(QColor("#868686"))
    painter = QPainter(image)
    paint_rival(painter, 0, 400, 40, words)
    painter.end()
    inside = {image.pixelColor(x, y).name() for x in range(140, 260) for y in range(30, 50)}
    assert inside == {"#868686"}
    assert any(image.pixelColor(x, 40).name() != "#868686" for x in range(130))
    assert any(image.pixelColor(x, 40).name() != "#868686" for x in range(270, 400))


def test_the_words_on_what_is_not_sky_stand_beside_a_wheel_over_it(canvas) -> None:
    photo = QRectF(*canvas.viewport.visible[:2], 400, 300)
    whole = canvas._free_of(photo)
    assert whole == photo
    canvas._covered = QRectF(photo.left() + 250, photo.top() + 100, 200, 200)
    free = canvas._free_of(photo)
    assert not free.intersects(canvas._covered)
    assert free.width() == 250
