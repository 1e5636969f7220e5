"""Pictures of the drawings, with tolerance; and the same drawings as vectors in a PDF.

`GRADEWASH_NEW_SNAPSHOTS=1 pytest tests/app/drawing/test_paint_snapshots.py` writes new pictures:
look at them before keeping them. They are our own output: regression tests, no proof of rightness.
"""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QMarginsF, QRectF, QSizeF
from PySide6.QtGui import QColor, QImage, QPageSize, QPainter, QPdfWriter

from app.drawing import (
    BadgeView,
    BracketView,
    ChipView,
    GripView,
    LineView,
    PartsBarView,
    TagView,
    VerdictView,
    grip_width,
    ladder_view,
    paint_badge,
    paint_bracket,
    paint_chip,
    paint_grip,
    paint_ladder,
    paint_line,
    paint_parts_bar,
    paint_tag,
    paint_verdict,
    paint_wheel,
    tag_width,
    wheel_view,
)
from app.widgets.preview import sample_readings
from core.reading.wording import Wording

FOLDER = Path(__file__).parent / "snapshots"


def draw_wheel(painter: QPainter) -> None:
    paint_wheel(painter, QRectF(6, 6, 308, 308), wheel_view(sample_readings(), 2))
    readings = sample_readings()
    paint_ladder(painter, QRectF(330, 6, 94, 308), ladder_view(readings, Wording(), 2))


def draw_crowd(painter: QPainter) -> None:
    readings = sample_readings(crowded=True)
    paint_wheel(painter, QRectF(6, 6, 308, 308), wheel_view(readings, 1))
    paint_ladder(painter, QRectF(330, 6, 94, 308), ladder_view(readings, Wording(white_is=0), 1))


def draw_marks(painter: QPainter) -> None:
    for number, ground in enumerate(("#0c1430", "#f6f1e7", "#c62429")):
        left = 8.0 + 102 * number
        painter.fillRect(QRectF(left, 8, 98, 80), QColor(ground))
        paint_line(painter, QRectF(left, 20, 98, 6), LineView())
        paint_line(painter, QRectF(left, 60, 98, 6), LineView("heavy"))
        paint_line(painter, QRectF(left, 74, 98, 6), LineView("dotted"))
        paint_badge(painter, QRectF(left + 12, 29, 28, 28), BadgeView("B"))
        paint_badge(painter, QRectF(left + 56, 29, 28, 28), BadgeView("8", chosen=True))
    left = 8.0
    for grip in (GripView(), GripView("open", "33.5 %"), GripView("rival", "or here?")):
        paint_grip(painter, QRectF(left, 100, grip_width(grip), 26), grip)
        left += grip_width(grip) + 10
    grip = GripView("named", "horizon")
    paint_grip(painter, QRectF(left, 100, grip_width(grip), 26), grip)
    paint_bracket(painter, QRectF(380, 100, 7, 40), BracketView())
    paint_bracket(painter, QRectF(400, 100, 7, 40), BracketView(chosen=True))
    chips = (ChipView("#b9a5d6"), ChipView("#b9a5d6", framed=True))
    for number, chip in enumerate((*chips, ChipView("#a0997c", hatched=True), ChipView(None))):
        paint_chip(painter, QRectF(12 + 82 * number, 146, 70, 50), chip)
    painter.fillRect(QRectF(8, 210, 420, 100), QColor("#ededed"))
    words = ("Matches", "Close", "Off", "unsure")
    verdicts = zip(("matches", "close", "off", "cannot tell"), words, strict=True)
    for number, (kind, word) in enumerate(verdicts):
        verdict = VerdictView(kind, word)  # type: ignore[arg-type]
        paint_verdict(painter, QRectF(16 + 104 * number, 218, 100, 20), verdict)
    bar = PartsBarView(((5, "#27318f", "#ffffff"), (1, "#8c1c3b", "#ffffff")))
    paint_parts_bar(painter, QRectF(16, 250, 200, 26), bar)
    tag = TagView("hard edge", (300.0, 300.0))
    paint_tag(painter, QRectF(310, 250, tag_width("hard edge", 28), 28), tag)


DRAWINGS: dict[str, Callable[[QPainter], None]] = {
    "wheel": draw_wheel,
    "crowd": draw_crowd,
    "marks": draw_marks,
}


def as_array(image: QImage) -> np.ndarray:
    image = image.convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3).astype(float)


def drawn(draw: Callable[[QPainter], None], ratio: int = 1) -> QImage:
    image = QImage(436 * ratio, 320 * ratio, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(ratio)
    image.fill(QColor("#868686"))
    painter = QPainter(image)
    draw(painter)
    painter.end()
    return image


@pytest.mark.parametrize("name", sorted(DRAWINGS))
def test_drawing_looks_as_it_did(qapp: object, name: str) -> None:
    image = drawn(DRAWINGS[name])
    path = FOLDER / f"{name}.png"
    if os.environ.get("GRADEWASH_NEW_SNAPSHOTS"):
        FOLDER.mkdir(exist_ok=True)
        image.save(str(path))
    known = QImage(str(path))
    assert known.size() == image.size()
    off = np.abs(as_array(image) - as_array(known)).max(axis=-1)
    # Other systems smooth letters differently: edges may differ, shapes may not.
    assert off.mean() < 2.0
    assert (off > 64).mean() < 0.01


@pytest.mark.parametrize("name", sorted(DRAWINGS))
def test_drawing_is_the_same_twice_as_large(qapp: object, name: str) -> None:
    """Every length comes from the rectangle: at two device pixels a pixel nothing moves."""
    once, twice = as_array(drawn(DRAWINGS[name])), as_array(drawn(DRAWINGS[name], 2))
    halved = twice.reshape(320, 2, 436, 2, 3).mean(axis=(1, 3))
    off = np.abs(once - halved).max(axis=-1)
    assert off.mean() < 3.0
    assert (off > 96).mean() < 0.01


def test_drawing_goes_into_a_pdf_as_vectors_and_letters(qapp: object, tmp_path: Path) -> None:
    pypdf = pytest.importorskip("pypdf")
    path = tmp_path / "wheel.pdf"
    writer = QPdfWriter(str(path))
    writer.setPageSize(QPageSize(QSizeF(100, 100), QPageSize.Unit.Millimeter))
    writer.setPageMargins(QMarginsF(0, 0, 0, 0))
    painter = QPainter(writer)
    # In millimetres: the floors follow px, here a tenth of a millimetre.
    painter.scale(writer.width() / 100, writer.width() / 100)
    view = wheel_view(sample_readings(), 2, px=0.1)
    paint_wheel(painter, QRectF(5, 5, 60, 60), view)
    ladder = ladder_view(sample_readings(), Wording(), 2, px=0.1)
    paint_ladder(painter, QRectF(70, 5, 20, 60), ladder)
    painter.end()
    page = pypdf.PdfReader(str(path)).pages[0]
    # Qt writes a space as a tab into the PDF's table of letters.
    text = page.extract_text().replace("\t", " ")
    for word in ("yellow", "violet", "dull", "intense", "10 white", "0 black", "A"):
        assert word in text
    assert not page.images
