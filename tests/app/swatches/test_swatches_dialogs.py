"""The two dialogs of a swatch card, by mouse and by keys, over one simulated scan."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from simulator.swatch_photos import LOADS, Stroke, painted, printed
from window_tools import draw_sky, wait_until_still

from app.cards import ask
from app.cards.paper import PAPERS
from app.swatches.print_dialog import PrintCardDialog
from app.swatches.read_dialog import ReadCardDialog
from core.colour import XYZ_to_linear, linear_to_srgb
from core.paint.box.box import TWELVE_PAN
from core.paint.box.box_file import box_to_json
from core.paint.pigment.measured import half_load_ml, measured_paints
from core.swatches.asking import box_with_cards, cards_for
from core.swatches.layout import field_rect

pytestmark = pytest.mark.usefixtures("qapp")

ASKED = (("our blue", "ultramarine"), ("our yellow", "mid_yellow"), ("crimson", "crimson"))
NATURE = ("ultramarine", "cadmium_yellow", "alizarin_crimson")
CARDS = cards_for(ASKED, TWELVE_PAN)
BOX = box_with_cards(TWELVE_PAN, CARDS)


def linear_of(*keys: str) -> np.ndarray:
    data = measured_paints()
    vector = np.zeros(len(data.keys))
    for key in keys:
        vector[data.index(key)] += 1 / len(keys)
    seen = XYZ_to_linear(data.reflectance(LOADS[:, None] * vector / 100) @ data.weights)
    return np.maximum(seen / XYZ_to_linear(data.paper @ data.weights), 0)


@pytest.fixture(scope="module")
def scans(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """scan.png; swapped.png with two mixes changed about; hidden.png with a mark covered."""
    (card,) = CARDS
    nature = dict(zip((row.key for row in card.rows), NATURE, strict=True))
    strokes = {}
    for number, row in enumerate(card.rows):
        for field in range(3):
            keys = [nature[row.key]] + ([nature[row.partners[field - 1]]] if field else [])
            half = half_load_ml(keys[0]) * 100
            strokes[number, field] = Stroke(linear_of(*keys), half * 22, half * 0.6)
    page = printed(card.code, [row.name for row in card.rows])
    folder = tmp_path_factory.mktemp("scans")

    def write(name: str, fields: dict, hide: bool = False) -> None:
        scene = painted(page, fields, np.random.default_rng(2))[::2, ::2]
        pixels = np.round(linear_to_srgb(np.clip(scene * 0.85, 0, 1)) * 255).astype(np.uint8)
        if hide:
            pixels[:140, :140] = (90, 60, 40)
        Image.fromarray(pixels).save(folder / name)

    write("scan.png", strokes)
    write("hidden.png", strokes, hide=True)
    write("swapped.png", {**strokes, (2, 1): strokes[2, 2], (2, 2): strokes[2, 1]})
    return folder


def opened(qtbot, path: Path, taken: list) -> ReadCardDialog:
    dialog = ReadCardDialog(None, BOX, path, taken.append)
    qtbot.addWidget(dialog)
    dialog.light.set_chosen("scan")
    dialog.show()
    qtbot.waitUntil(lambda: not dialog.working, timeout=20_000)
    return dialog


def words(dialog: ReadCardDialog) -> list[str]:
    return [field.word for field in dialog.picture.view.fields]


def click(dialog: ReadCardDialog, number: int) -> None:
    place = dialog.picture.place()
    quad = np.array(dialog.picture.view.fields[number].quad).mean(axis=0)
    at = place.topLeft().toPoint() + QPoint(
        round(quad[0] * place.width()), round(quad[1] * place.height())
    )
    QTest.mouseClick(dialog.picture, Qt.MouseButton.LeftButton, pos=at)


def test_a_card_is_read_and_put_into_the_box(qtbot, scans) -> None:
    taken: list = []
    dialog = opened(qtbot, scans / "scan.png", taken)
    assert words(dialog) == ["read"] * 9
    assert dialog.put.isEnabled()
    QTest.mouseClick(dialog.put, Qt.MouseButton.LeftButton)
    (box,) = taken
    assert {"own_our_blue", "own_our_yellow", "own_crimson"} <= set(box.keys)
    # The class's crimson takes the place of the box's.
    assert "crimson" not in box.by_key
    assert box_to_json(box)["gradewash_box"] == 2


def test_a_click_or_a_key_leaves_a_field_out_and_takes_it_in(qtbot, scans) -> None:
    dialog = opened(qtbot, scans / "scan.png", [])
    click(dialog, 4)
    qtbot.waitUntil(lambda: not dialog.working, timeout=20_000)
    assert words(dialog)[4] == "left out"
    assert not dialog.picture.view.fields[4].used
    dialog.picture.setFocus()
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Right, Qt.Key.Key_Space):
        QTest.keyClick(dialog.picture, key)
    qtbot.waitUntil(lambda: not dialog.working, timeout=20_000)
    assert words(dialog)[4] == "read"


def test_a_question_is_asked_until_somebody_says_it_is_right(qtbot, scans) -> None:
    dialog = opened(qtbot, scans / "swapped.png", [])
    assert words(dialog)[7] == words(dialog)[8] == "check"
    click(dialog, 7)
    qtbot.waitUntil(lambda: not dialog.working, timeout=20_000)
    assert words(dialog)[7] == words(dialog)[8] == "read"


def test_corners_by_hand_where_the_marks_are_not_found(qtbot, scans) -> None:
    dialog = opened(qtbot, scans / "hidden.png", [])
    corners = dialog.picture.view.corners
    assert corners is not None
    assert dialog.fields.isVisibleTo(dialog)
    assert not dialog.put.isVisibleTo(dialog)
    # By keys: the first mark to its place (21 mm, 21 mm) on a page of 210 by 297.
    dialog.picture.setFocus()
    wanted = ((0.1, 21 / 297), (0.9, 21 / 297), (0.9, 257 / 297), (0.1, 257 / 297))
    image = dialog.picture._image
    for number, (x, y) in enumerate(wanted):
        QTest.keyClick(dialog.picture, str(number + 1))
        for along, size, less, more in (
            (x - corners[number][0], image.width(), Qt.Key.Key_Left, Qt.Key.Key_Right),
            (y - corners[number][1], image.height(), Qt.Key.Key_Up, Qt.Key.Key_Down),
        ):
            for _ in range(abs(round(along * size))):
                QTest.keyClick(dialog.picture, more if along > 0 else less)
    QTest.mouseClick(dialog.fields, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: not dialog.working, timeout=20_000)
    assert words(dialog).count("read") >= 8
    x, y, *_ = field_rect(2, 2)
    quad = np.array(dialog.picture.view.fields[8].quad) * [210, 297]
    np.testing.assert_allclose(quad[0], (x, y), atol=0.5)


def test_a_picture_that_cannot_be_opened_is_told(qtbot, tmp_path) -> None:
    path = tmp_path / "text.jpg"
    path.write_text("no picture")
    dialog = opened(qtbot, path, [])
    assert "picture" in dialog._status.text()
    assert not dialog.put.isEnabled()


def test_closing_the_dialog_calls_the_work_off(qtbot, scans) -> None:
    dialog = ReadCardDialog(None, BOX, scans / "scan.png", lambda box: None)
    dialog.reject()
    QApplication.processEvents()


def test_a_card_is_asked_for_and_written(qtbot, tmp_path, monkeypatch) -> None:
    kept: list = []
    dialog = PrintCardDialog(
        None, TWELVE_PAN, PAPERS["a4"], lambda box, name: kept.append((box, name))
    )
    qtbot.addWidget(dialog)
    dialog.show()
    assert len(dialog.rows) == 11  # all of the box but its white
    for row in dialog.rows[2:]:
        row.wanted.setChecked(False)
    QTest.mouseClick(dialog.another, Qt.MouseButton.LeftButton)
    QTest.keyClicks(dialog.rows[-1].name, "sky blue")
    assert dialog.rows[-1].like.currentData() == "cerulean_blue"
    path = tmp_path / "card.pdf"
    monkeypatch.setattr(ask, "ask_pdf_path", lambda parent, suggestion: path)
    QTest.mouseClick(dialog.button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: bool(kept), timeout=20_000)
    ((box, name),) = kept
    assert name == "card.pdf"
    assert path.read_bytes().startswith(b"%PDF")
    (card,) = box.cards
    assert [row.name for row in card.rows] == ["mid yellow", "lemon yellow", "sky blue"]
    assert json.dumps(box_to_json(box))


def test_a_name_twice_is_said_and_nothing_is_written(qtbot) -> None:
    dialog = PrintCardDialog(None, TWELVE_PAN, PAPERS["letter"], lambda box, name: None)
    qtbot.addWidget(dialog)
    dialog.add("Lemon yellow", "lemon_yellow")
    dialog.save()
    assert "stands twice" in dialog._status.text()


def dropped(path: Path) -> QMimeData:
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(path))])
    return mime


def test_a_card_dropped_on_the_window_is_read_and_a_photo_is_opened(
    scans, sky_window, qtbot, tmp_path
) -> None:
    window = sky_window
    study = window.document.study
    window.opener.open_mime(dropped(scans / "scan.png"))
    qtbot.waitUntil(
        lambda: isinstance(QApplication.activeModalWidget(), ReadCardDialog), timeout=20_000
    )
    dialog = QApplication.activeModalWidget()
    qtbot.waitUntil(lambda: not dialog.working, timeout=20_000)
    assert window.document.study == study
    # Another picture may be dropped on it; one without a card says so.
    sky = draw_sky(tmp_path / "sky.png")
    brought = dropped(sky)  # the event does not keep it alive
    drop = QDropEvent(
        QPointF(50, 50),
        Qt.DropAction.CopyAction,
        brought,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    dialog.dropEvent(drop)
    qtbot.waitUntil(lambda: not dialog.working, timeout=20_000)
    assert "No swatch card was found" in dialog._status.text()
    dialog.reject()
    with qtbot.waitSignal(window.reader.photo_changed, timeout=20_000):
        window.opener.open_mime(dropped(sky))
    wait_until_still(window, qtbot)
    assert window.document.study.photo_name == "sky.png"
