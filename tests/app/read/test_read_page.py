from __future__ import annotations

import numpy as np
import pytest
from PIL import Image
from PySide6.QtCore import QEvent, QObject, QPoint, Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QAbstractButton, QApplication
from window_tools import (
    draw_sky,
    open_and_wait,
    read_page,
    wait_until_quiet,
    wait_until_still,
)

from app.services.reader import REST_MS
from app.state.document import Gesture
from app.widgets.readout_row import Row
from core.bands.lines import Bands
from core.study import WheelPlace, with_bands

LEFT = Qt.MouseButton.LeftButton


def at(page, y: float, x: float = 0.3) -> QPoint:
    view = page.canvas.viewport
    return QPoint(round(view.photo_left + x * view.shown_width), round(view.y_px(y)))


def test_a_drag_updates_readings_at_every_move_and_is_one_undo_step(sky_window, qtbot) -> None:
    page, document = read_page(sky_window), sky_window.document
    before = document.study
    seen = []
    sky_window.reader.readings_changed.connect(seen.append)
    # On a slow machine a line may rest between two moves, and would be read with care.
    rest = sky_window.reader._rest
    rest.setInterval(10**6)
    start = at(page, before.bands.lines[1])
    qtbot.mousePress(page.canvas, LEFT, pos=start)
    for step in range(1, 8):
        qtbot.mouseMove(page.canvas, start + QPoint(0, 5 * step))
        assert len(seen) == step
    qtbot.mouseRelease(page.canvas, LEFT, pos=start + QPoint(0, 35))
    assert document.stack.count() == 1
    assert document.study.bands.lines[1] > before.bands.lines[1]
    assert seen[-1][1].bottom == document.study.bands.lines[1]
    rest.setInterval(REST_MS)
    # The line rests now: a worker reads with care, and only the colours may change.
    wait_until_still(sky_window, qtbot)
    assert sky_window.reader.readings is not seen[6]
    assert sky_window.reader.readings[1].bottom == document.study.bands.lines[1]
    document.stack.undo()
    assert document.study == before
    wait_until_still(sky_window, qtbot)


def on_screen(window) -> np.ndarray:
    """What the screen shows, shape (h, w, 3)."""
    return pixels(window.screen().grabWindow(window.winId()).toImage())


def pixels(image: QImage) -> np.ndarray:
    image = image.convertToFormat(QImage.Format.Format_RGB32)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1, 4)
    return rows[:, : image.width(), :3].astype(np.int16)


@pytest.mark.parametrize("edge", [0, 1, -1])
def test_what_a_drag_paints_in_parts_is_what_a_whole_painting_shows(
    sky_window, qtbot, edge: int
) -> None:
    page, document = read_page(sky_window), sky_window.document
    # A reading with care in between would paint everything.
    sky_window.reader._rest.setInterval(10**6)
    heights = [*document.study.bands.lines, document.study.bands.horizon]
    start = at(page, heights[edge])
    qtbot.mousePress(page.canvas, LEFT, pos=start)
    for step in (1, 2, 7, 15, 26, 9, -4, -18, 0):
        qtbot.mouseMove(page.canvas, start + QPoint(0, step))
        QApplication.processEvents()
        shown = on_screen(sky_window)
        whole = pixels(sky_window.grab().toImage())
        # A slanting edge that is cut by the part's border may round differently by one level.
        assert np.abs(shown - whole).max() <= 1
    qtbot.mouseRelease(page.canvas, LEFT, pos=start)


def test_a_move_of_a_line_lays_out_nothing_and_paints_parts(sky_window, qtbot) -> None:
    page = read_page(sky_window)
    wait_until_quiet(sky_window, qtbot)  # what comes late is painted too
    sky_window.reader._rest.setInterval(10**6)
    start = at(page, sky_window.document.study.bands.lines[1])
    qtbot.mousePress(page.canvas, LEFT, pos=start)
    for first in (2, 3):  # with the first the title says that something is unsaved
        qtbot.mouseMove(page.canvas, start + QPoint(0, first))
        QApplication.processEvents()
    seen = Seen(sky_window)
    QApplication.instance().installEventFilter(seen)
    qtbot.mouseMove(page.canvas, start + QPoint(0, 4))
    QApplication.processEvents()
    QApplication.instance().removeEventFilter(seen)
    qtbot.mouseRelease(page.canvas, LEFT, pos=start)
    assert not {page, page.controls, page.controls.stepper} & set(seen.laid_out)
    # The page behind, its body, and the table's bands that stay are left alone.
    assert page not in seen.painted
    assert sum(isinstance(widget, Row) for widget in seen.painted) <= 2
    assert seen.painted[page.wheel] < 0.5 * page.wheel.width() * page.wheel.height()
    assert seen.painted[page.canvas] < 0.2 * page.canvas.width() * page.canvas.height()


class Seen(QObject):
    """What a window's widgets were told: which were laid out, and how many pixels were painted."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.laid_out: list[QObject] = []
        self.painted: dict[QObject, int] = {}

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.LayoutRequest:
            self.laid_out.append(watched)
        if event.type() == QEvent.Type.Paint:
            area = sum(rect.width() * rect.height() for rect in event.region())
            self.painted[watched] = self.painted.get(watched, 0) + area
        return False


@pytest.mark.parametrize("scene", ["marsh", "quay", "fell"])
def test_nothing_moves_when_the_plan_comes_after_the_bands(window, qtbot, scene: str) -> None:
    window.resize(1366, 768)
    page = read_page(window)
    places = set()
    tops: list[int] = []

    def note() -> None:
        QApplication.processEvents()
        places.add((page.strip.geometry().getRect(), page.canvas.geometry().getRect()))

    window.opener.open_sample(scene)
    qtbot.waitUntil(lambda: page.canvas.isVisible(), timeout=10_000)
    painted = page.canvas.paintEvent
    page.canvas.paintEvent = lambda event: (tops.append(page.canvas.y()), painted(event))[1]
    qtbot.waitUntil(lambda: bool(window.reader.readings), timeout=30_000)
    qtbot.waitUntil(lambda: page.status.geometry().isValid() and not page.strip.isHidden())
    assert window.planner.plan is None
    page._steady_strip(window.reader.readings, page._wording)
    note()
    wait_until_still(window, qtbot)
    qtbot.waitUntil(lambda: window.planner.plan is not None and not window.planner.working)
    note()
    # The words of the plan are longer than what was said before it.
    assert any(page._tonings(window.reader.readings))
    assert len({strip[3] for strip, _ in places}) == 1
    assert len(places) == 1
    # The row of controls, not yet shown, has its final height: the photo was never seen lower.
    assert set(tops) == {page.canvas.y()}


def test_a_drag_that_ends_where_it_began_leaves_no_step(sky_window, qtbot) -> None:
    page, document = read_page(sky_window), sky_window.document
    before, start = document.study, at(page, document.study.bands.lines[0])
    qtbot.mousePress(page.canvas, LEFT, pos=start)
    qtbot.mouseMove(page.canvas, start + QPoint(0, 30))
    qtbot.mouseMove(page.canvas, start)
    qtbot.mouseRelease(page.canvas, LEFT, pos=start)
    assert document.study.bands.lines == pytest.approx(before.bands.lines)
    assert document.stack.count() == 0


def test_lines_never_cross_under_the_mouse(sky_window, qtbot) -> None:
    page, document = read_page(sky_window), sky_window.document
    start = at(page, document.study.bands.lines[0])
    qtbot.mousePress(page.canvas, LEFT, pos=start)
    qtbot.mouseMove(page.canvas, start + QPoint(0, 400))
    bands = document.study.bands
    assert bands.lines[0] == pytest.approx(bands.lines[1] - 0.01)
    qtbot.mouseMove(page.canvas, start - QPoint(0, 400))
    assert document.study.bands.lines[0] == pytest.approx(0.01)
    qtbot.mouseRelease(page.canvas, LEFT, pos=start)


def test_the_horizon_can_be_dragged_and_its_sky_is_found_again(sky_window, qtbot) -> None:
    page, document = read_page(sky_window), sky_window.document
    start = at(page, document.study.bands.horizon)
    qtbot.mousePress(page.canvas, LEFT, pos=start)
    qtbot.mouseMove(page.canvas, start - QPoint(0, 40))
    qtbot.mouseRelease(page.canvas, LEFT, pos=start - QPoint(0, 40))
    horizon = document.study.bands.horizon
    assert horizon < 0.75
    wait_until_still(sky_window, qtbot)
    assert sky_window.reader.proposed_horizon == horizon
    assert sky_window.reader.readings[-1].bottom == horizon


def test_everything_shows_the_chosen_band(sky_window, qtbot) -> None:
    page = read_page(sky_window)
    page.canvas.setFocus()
    qtbot.keyClick(page.canvas, Qt.Key.Key_Down)
    assert page.chosen == 1
    assert page.canvas.grips[1].opened
    assert "Band B" in page.strip.accessibleName()
    for widget in (page.wheel, page.ladder):
        widget.band_chosen.emit(3)
        assert page.chosen == 3
        widget.band_chosen.emit(1)
    page.table.band_chosen.emit(2)
    assert page.chosen == 2
    assert page.canvas.grips[2].opened


def test_keyboard_alone_reaches_and_edits_everything(sky_window, qtbot) -> None:
    """Tab from the photo through its lines, stepper and table; split, remove and undo."""
    page, document = read_page(sky_window), sky_window.document
    page.canvas.setFocus(Qt.FocusReason.TabFocusReason)
    reached = []
    for _ in range(60):
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        widget = QApplication.focusWidget()
        if widget in reached:
            break
        reached.append(widget)
    names = [widget.accessibleName() for widget in reached]
    for grip in page.canvas.grips:
        assert grip in reached
    assert reached.index(page.canvas.grips[0]) == 0
    order = [reached.index(grip) for grip in page.canvas.grips]
    assert order == sorted(order)
    for name in ("Fewer bands", "More bands"):
        assert name in names
    assert page.controls.propose in reached
    assert page.wheel in reached
    assert page.ladder in reached
    assert any(widget is page.table or page.table.isAncestorOf(widget) for widget in reached)
    assert any(
        page.controls.isAncestorOf(w) and w.text() == "Colour"
        for w in reached
        if isinstance(w, QAbstractButton)
    )

    before, grip = document.study, page.canvas.grips[1]
    grip.setFocus(Qt.FocusReason.TabFocusReason)
    assert page.chosen == 1
    qtbot.keyClick(grip, Qt.Key.Key_Down)
    assert document.study.bands.lines[1] == pytest.approx(before.bands.lines[1] + 0.002)
    qtbot.keyClick(grip, Qt.Key.Key_Up, Qt.KeyboardModifier.ShiftModifier)
    assert document.study.bands.lines[1] == pytest.approx(before.bands.lines[1] - 0.018)
    assert document.stack.count() == 1  # one run of arrows
    qtbot.keyClick(grip, Qt.Key.Key_Insert)
    assert document.study.bands.count == 5
    qtbot.keyClick(page.canvas.grips[1], Qt.Key.Key_Delete)
    assert document.study.bands.count == 4
    for _ in range(3):
        qtbot.keyClick(
            QApplication.focusWidget(), Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier
        )
    assert document.study == before


def test_the_horizon_cannot_be_removed_and_says_so(sky_window, qtbot) -> None:
    page, before = read_page(sky_window), sky_window.document.study
    qtbot.keyClick(page.canvas.grips[-1], Qt.Key.Key_Delete)
    assert sky_window.document.study == before
    assert "horizon" in sky_window.notice_display.text


def test_a_band_too_thin_to_split_says_so(sky_window, qtbot) -> None:
    page, document = read_page(sky_window), sky_window.document
    thin = with_bands(document.study, Bands(0.8, (0.015, 0.4)))
    document.change("thin", thin)
    page.split(0)
    assert document.study == thin
    assert "too thin" in sky_window.notice_display.text


def test_double_click_adds_a_line(sky_window, qtbot) -> None:
    page, document = read_page(sky_window), sky_window.document
    qtbot.mouseDClick(page.canvas, LEFT, pos=at(page, 0.3))
    assert document.study.bands.count == 5
    assert any(abs(line - 0.3) < 0.01 for line in document.study.bands.lines)


def test_stepper_and_propose_again(sky_window, qtbot) -> None:
    page, document = read_page(sky_window), sky_window.document
    proposed = document.study
    assert page.controls.stepper.value == 4
    page.controls.stepper.stepped.emit(3)
    qtbot.waitUntil(lambda: document.study.bands.count == 3, timeout=20_000)
    assert page.controls.stepper.value == 3
    wait_until_still(sky_window, qtbot)
    assert len(sky_window.reader.readings) == 3
    qtbot.mouseClick(page.controls.propose, LEFT)
    qtbot.waitUntil(lambda: document.study == proposed, timeout=20_000)
    document.stack.undo()
    assert document.study.bands.count == 3
    document.stack.undo()
    assert document.study == proposed
    wait_until_still(sky_window, qtbot)


def test_fewer_bands_keep_a_horizon_set_by_hand(sky_window, qtbot) -> None:
    page, document = read_page(sky_window), sky_window.document
    page.canvas.edge_moved.emit(3, 0.7, None)
    page.controls.stepper.stepped.emit(2)
    qtbot.waitUntil(lambda: document.study.bands.count == 2, timeout=20_000)
    assert document.study.bands.horizon == 0.7
    wait_until_still(sky_window, qtbot)


def test_accepting_a_rival_moves_the_horizon(sky_window, qtbot) -> None:
    page, document = read_page(sky_window), sky_window.document
    page.canvas.set_rivals((0.6,))
    qtbot.mouseClick(page.canvas.rival_tags[0], LEFT)
    qtbot.waitUntil(lambda: document.study.bands.horizon == 0.6, timeout=20_000)
    assert document.stack.undoText() == "move horizon"
    wait_until_still(sky_window, qtbot)


def test_ways_of_looking(sky_window, qtbot) -> None:
    page = read_page(sky_window)

    def level() -> np.ndarray:
        image = page.canvas._picture.levels[0]
        rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1, 4)
        return rows[:, : image.width(), :3]

    colour = level().copy()
    for key, greys in (("values", None), ("steps 3", 3), ("steps 5", 5), ("steps 9", 9)):
        with qtbot.waitSignal(page._pictures.ready, timeout=10_000):
            page.look_at(key)
        assert np.ptp(level(), axis=2).max() == 0
        if greys:
            assert len(np.unique(level())) <= greys
        assert page.view_key == key
    with qtbot.waitSignal(page._pictures.ready, timeout=10_000):
        page.look_at("squint")
    assert abs(level().astype(int) - colour).max() > 5
    page.look_at("colour")
    assert (level() == colour).all()
    # Bands and view of the photo stayed.
    assert len(page.canvas.grips) == 4


def test_the_point_under_the_mouse_is_read(sky_window, qtbot) -> None:
    page = read_page(sky_window)
    qtbot.mouseMove(page.canvas, at(page, 0.1))
    page.canvas.hovered.emit((0.3, 0.1))
    assert "blue" in page.status.text
    assert "value" in page.status.text
    page.canvas.hovered.emit((0.3, 0.7))
    assert "orange" in page.status.text
    page.canvas.hovered.emit(None)
    assert "orange" not in page.status.text


def test_wording_changes_at_once(sky_window, qtbot) -> None:
    page, preferences = read_page(sky_window), sky_window.preferences
    page.choose(0)
    dark_first = page.strip.accessibleName()
    preferences.set(white_is=0)
    assert page.strip.accessibleName() != dark_first
    preferences.set(white_is=10)
    assert page.strip.accessibleName() == dark_first


@pytest.mark.parametrize(
    ("size", "percent"),
    [
        ((1366, 768), 100),
        ((1366, 768), 125),
        ((1366, 768), 150),
        ((1366, 700), 100),
        ((1366, 700), 125),
        ((1366, 700), 150),
        ((1920, 1080), 100),
        ((1920, 1080), 150),
    ],
)
def test_the_photo_yields_last(sky_window, qtbot, size, percent) -> None:
    page = read_page(sky_window)
    sky_window.preferences.set(text_percent=percent)
    sky_window.resize(*size)
    QApplication.processEvents()
    assert (sky_window.width(), sky_window.height()) == size
    assert page.canvas.viewport.shown_height >= page.strip.height()
    assert page.strip.height() >= page.strip._plan_now().height - 1


def test_controls_move_closer_before_they_take_a_second_row(sky_window, qtbot) -> None:
    page = read_page(sky_window)
    controls = page.controls
    sky_window.preferences.set(text_percent=150)
    sky_window.resize(1366, 700)
    QApplication.processEvents()
    assert controls.height() < 2 * controls.stepper.height()
    close = controls._views.width()
    sky_window.resize(1920, 1080)
    QApplication.processEvents()
    assert controls._views.width() > close
    assert controls.height() < 2 * controls.stepper.height()


def test_a_panorama_opens_in_its_middle_and_says_so(window, qtbot, tmp_path) -> None:
    pixels = np.repeat(np.linspace((70, 100, 190), (240, 200, 170), 40)[:, None], 3000, axis=1)
    Image.fromarray(pixels.astype(np.uint8)).save(tmp_path / "wide.png")
    open_and_wait(window, tmp_path / "wide.png", qtbot)
    assert read_page(window).canvas.viewport.zoom > 1
    assert "Ctrl+0" in window.notice_display.text
    open_and_wait(window, draw_sky(tmp_path / "usual.png"), qtbot)
    assert window.notice_display.text == ""


@pytest.mark.parametrize("size", [(120, 500), (1500, 60), (40, 40)])
def test_odd_shapes_open(window, qtbot, tmp_path, size) -> None:
    rows = np.linspace((70, 100, 190), (240, 200, 170), size[1])
    pixels = np.repeat(rows[:, None], size[0], axis=1).astype(np.uint8)
    path = tmp_path / "odd.png"
    Image.fromarray(pixels).save(path)
    open_and_wait(window, path, qtbot)
    assert window.reader.readings
    window.grab()


@pytest.mark.parametrize("value", [0, 128, 255])
def test_skies_of_one_colour_open(window, qtbot, tmp_path, value) -> None:
    path = tmp_path / "flat.png"
    Image.new("RGB", (200, 150), (value,) * 3).save(path)
    open_and_wait(window, path, qtbot)
    assert window.document.study.bands.count >= 1
    window.grab()
    assert window.notice_display.text == ""


def test_seven_bands_and_twenty_six(sky_window, qtbot) -> None:
    page, document = read_page(sky_window), sky_window.document
    for count in (7, 26):
        lines = tuple(0.9 * (i + 1) / count for i in range(count - 1))
        document.change("many", with_bands(document.study, Bands(0.9, lines)))
        assert len(page.canvas.grips) == count
        sky_window.grab()
    wait_until_still(sky_window, qtbot)


def places_of(page) -> list:
    parts = (page.controls._views, page.controls.stepper, page.controls.propose, page.canvas)
    return [(part.mapTo(page, QPoint(0, 0)), part.size()) for part in parts]


@pytest.mark.parametrize("size", [(1366, 768), (1920, 1080)])
def test_no_control_moves_when_another_way_of_looking_is_chosen(sky_window, qtbot, size) -> None:
    page = read_page(sky_window)
    sky_window.resize(*size)
    # The words below the photo say more once the mix is planned.
    planner = sky_window.planner
    qtbot.waitUntil(lambda: planner.plan is not None and not planner.working, timeout=20_000)
    QApplication.processEvents()
    before = places_of(page)
    for key in ("steps 5", "eyes deutan", "steps 9", "squint", "colour"):
        page.look_at(key)
        QApplication.processEvents()
        assert places_of(page) == before
    assert page.controls.propose.isVisible()


def test_steps_and_eyes_are_chosen_from_a_menu_of_their_own(sky_window, qtbot) -> None:
    page = read_page(sky_window)
    segment = page.controls._views._segments["steps"]
    qtbot.mouseClick(segment, LEFT)
    assert page.view_key == "steps 5"
    menu = page.controls.choices("steps")
    assert [action.text() for action in menu.actions()] == ["3 steps", "5 steps", "9 steps"]
    assert [action.isChecked() for action in menu.actions()] == [False, True, False]
    menu.actions()[0].trigger()
    assert page.view_key == "steps 3"
    page.controls._views.again.disconnect()  # a popup takes the keyboard, which is not there
    with qtbot.waitSignal(page.controls._views.again):
        qtbot.mouseClick(segment, LEFT)
    page.controls.choices("eyes").actions()[2].trigger()
    assert page.view_key == "eyes tritan"


@pytest.mark.parametrize(("size", "least"), [((1366, 768), 0.72), ((1920, 1080), 0.78)])
@pytest.mark.parametrize("picture", [(360, 640), (480, 640)])
def test_an_upright_photo_takes_the_height_there_is(
    window, qtbot, tmp_path, size, least, picture
) -> None:
    window.resize(*size)
    open_and_wait(window, draw_sky(tmp_path / "tall.png", size=picture), qtbot)
    QApplication.processEvents()
    page = read_page(window)
    assert page.canvas.viewport.shown_height >= least * page.height()
    for part in (page.wheel, page.ladder, page.table, page.strip):
        assert part.mapTo(page, QPoint(0, 0)).x() > page.canvas.viewport.visible[2]
        assert part.visibleRegion().boundingRect() == part.rect()
    # A photo wider than high has everything where it was.
    open_and_wait(window, draw_sky(tmp_path / "wide.png"), qtbot)
    QApplication.processEvents()
    assert page.strip.mapTo(page, QPoint(0, 0)).y() > page.canvas.viewport.visible[3]


def test_opening_says_so_and_shows_nothing_that_is_not_known(window, qtbot, tmp_path) -> None:
    """Not "No photo yet", no blank slabs, no "Bands 0": on the way from nothing to a photo."""
    page = read_page(window)
    assert not page.empty.opening
    window.opener.open_path(draw_sky(tmp_path / "sky.png"))
    assert page.empty.opening
    assert not page.empty.button.isVisible()
    seen = []

    def look(opened) -> None:
        seen.append([part.isVisible() for part in (page.strip, page.table, page.controls)])
        seen.append(page.status.text)
        seen.append(page.canvas.size() == page.canvas.size().expandedTo(page.size() / 3))

    window.reader.photo_changed.connect(look)
    wait_until_still(window, qtbot)
    assert seen[0] == [False, False, False]
    assert seen[1] == "Looking for the bands"
    assert seen[2]  # laid out before it is seen
    assert all(part.isVisible() for part in (page.strip, page.table, page.controls))
    assert page.status.text == ""
    assert not page.empty.opening


def test_a_file_that_does_not_open_brings_the_skies_back(window, qtbot, tmp_path) -> None:
    page = read_page(window)
    (tmp_path / "letter.jpg").write_text("no picture")
    window.opener.open_path(tmp_path / "letter.jpg")
    qtbot.waitUntil(lambda: not page.empty.opening, timeout=20_000)
    assert page.empty.button.isVisible()


def test_the_empty_page_offers_six_skies(window, qtbot) -> None:
    page = read_page(window)
    skies = page.empty.skies
    assert len(skies) == 6
    qtbot.waitUntil(lambda: all(sky._image is not None for sky in skies.values()), timeout=20_000)
    for sky in skies.values():
        assert page.rect().contains(sky.geometry())
        assert sky.text()
    with qtbot.waitSignal(window.reader.photo_changed, timeout=20_000):
        qtbot.mouseClick(skies["quay"], LEFT)
    wait_until_still(window, qtbot)
    assert window.document.study.title == skies["quay"].text()


def over_wheel(window, qtbot):
    page = read_page(window)
    window.resize(1366, 768)
    page.lay_wheel_over(True)
    qtbot.waitUntil(page.canvas.wheel.isVisible)
    return page, page.canvas.wheel


def lit_rows(page) -> tuple[float, float]:
    view, edges = page.canvas.viewport, page.canvas._bands.edges
    chosen = page.canvas._chosen
    return view.y_px(edges[chosen]), view.y_px(edges[chosen + 1])


def off_the_lit_band(page) -> bool:
    spot, (top, bottom) = page.canvas.wheel.spot, lit_rows(page)
    left, _, right, _ = page.canvas.viewport.visible
    beside = spot.x - spot.size / 2 >= right or spot.x + spot.size / 2 <= left
    return beside or spot.y - spot.size / 2 >= bottom or spot.y + spot.size / 2 <= top


def test_f6_lays_the_wheel_over_the_photo_and_puts_it_back(sky_window, qtbot) -> None:
    page = read_page(sky_window)
    qtbot.keyClick(page.canvas, Qt.Key.Key_F6)
    assert page.wheel_over
    assert page.canvas.wheel.isVisible()
    assert not page.wheel.isVisible()
    assert len(page.canvas.wheel._view.markers) >= len(sky_window.reader.readings)
    for band in range(len(sky_window.reader.readings)):
        page.choose(band)
        assert page.canvas.wheel.spot is None or off_the_lit_band(page)
    page.canvas.zoom(3.0)
    assert page.canvas.wheel.spot is None or off_the_lit_band(page)
    qtbot.keyClick(page.canvas, Qt.Key.Key_F6)
    assert not page.canvas.wheel.isVisible()
    assert page.wheel.isVisible()


def test_the_wheel_is_dragged_and_sized_and_keeps_its_place(sky_window, qtbot) -> None:
    page, wheel = over_wheel(sky_window, qtbot)
    document = sky_window.document
    begun = wheel.spot
    centre = QPoint(wheel.width() // 2, wheel.height() // 2 + 2)
    page.choose(0)
    qtbot.mousePress(wheel, LEFT, pos=centre)
    for step in range(1, 5):
        # The widget moves with the mouse, so every step is the same place on it.
        qtbot.mouseMove(wheel, centre + QPoint(-10, 0))
        assert document.stack.count() == 1, step
    qtbot.mouseRelease(wheel, LEFT, pos=centre)
    moved = wheel.spot
    assert moved.x < begun.x - 30
    assert moved.size == pytest.approx(begun.size)
    rim = QPoint(wheel.width() - 4, wheel.height() // 2)
    qtbot.mousePress(wheel, LEFT, pos=rim)
    qtbot.mouseMove(wheel, rim - QPoint(8, 0))
    qtbot.mouseRelease(wheel, LEFT, pos=rim)
    assert wheel.spot.size != moved.size
    kept = document.study.wheel
    assert kept is not None
    page.lay_wheel_over(False)
    page.lay_wheel_over(True)
    assert document.study.wheel == kept
    document.stack.undo()
    assert wheel.spot.size == pytest.approx(moved.size)
    document.stack.undo()
    assert document.study.wheel is None
    assert wheel.spot.x == pytest.approx(begun.x)


def test_nothing_is_read_through_the_wheel(sky_window, qtbot) -> None:
    page, wheel = over_wheel(sky_window, qtbot)
    page.canvas.wheel_put.emit(WheelPlace(0.5, 0.7, 0.4), Gesture())
    seen = []
    page.canvas.hovered.connect(seen.append)
    left, top, right, _ = page.canvas.viewport.visible
    qtbot.mouseMove(page.canvas, QPoint(round((left + right) / 2), round(top + 20)))
    assert seen[-1] is not None
    assert wheel._point is not None
    lines = sky_window.document.study.bands
    for away in (0, 20, wheel.width() // 2 - 6):
        spot = QPoint(wheel.width() // 2 + away, wheel.height() // 2)
        qtbot.mouseMove(wheel, spot)
        assert seen[-1] is None
        assert wheel._point is None
        qtbot.mouseDClick(wheel, LEFT, pos=spot)
    assert sky_window.document.study.bands == lines
    # Beside the disc, in the corners of its square, the photo is there.
    qtbot.mouseMove(wheel, QPoint(2, 2))
    assert seen[-1] is not None


def test_a_marker_on_it_chooses_its_band_and_the_keys_move_it(
    sky_window, qtbot, monkeypatch
) -> None:
    monkeypatch.setattr("app.canvas.over_wheel._RUN_S", 60)
    page, wheel = over_wheel(sky_window, qtbot)
    wheel.grab()
    last = len(sky_window.reader.readings) - 1
    place = wheel._geometry.placed[last].disc.toPoint()
    qtbot.mouseClick(wheel, LEFT, pos=place)
    assert page.chosen == last
    page.choose(0)
    before = wheel.spot
    qtbot.keyClick(wheel, Qt.Key.Key_Left)
    assert wheel.spot.x < before.x
    count = sky_window.document.stack.count()
    for _ in range(3):
        qtbot.keyClick(wheel, Qt.Key.Key_Left)
    assert sky_window.document.stack.count() == count  # one run of presses is one step
    qtbot.keyClick(wheel, "-")
    assert wheel.spot.size < before.size or wheel.spot.size == pytest.approx(150)


def test_where_one_band_fills_everything_it_says_that_there_is_no_room(
    window, qtbot, tmp_path
) -> None:
    open_and_wait(window, draw_sky(tmp_path / "sky.png"), qtbot)
    window.document.change("one", with_bands(window.document.study, Bands(1.0, ())))
    wait_until_still(window, qtbot)
    page = read_page(window)
    page.lay_wheel_over(True)
    page.canvas.wheel.grab()
    if page.canvas.wheel.spot is None:
        assert "no room for the wheel" in window.notice_display.text
    else:
        assert off_the_lit_band(page)


def test_the_first_words_of_a_row_stand_on_one_line(sky_window, qtbot) -> None:
    """Also where one cell wraps and the others do not."""
    table = read_page(sky_window).table
    for row in table._rows:
        first = row.first_line()
        tallest = max(sum(part.height for part in cell) for cell in row.cells)
        assert first - row.cells[0][0].pitch <= (row.height() - tallest) / 2 + 1
        for cell in row.cells:
            top = first - 0.74 * cell[0].pitch
            assert top >= -1
            assert top + sum(part.height for part in cell) <= row.height() + 2
