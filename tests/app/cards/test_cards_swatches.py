"""The swatch card as it is printed: read back from its own PDF, by the reader of painted cards."""

from __future__ import annotations

import io

import numpy as np
import pypdf
import pytest
from PySide6.QtCore import QBuffer, QIODevice, QSize
from PySide6.QtGui import QImage, QPainter
from PySide6.QtPdf import QPdfDocument

from app.cards.paper import PAPERS
from app.cards.pdf import pdf_of
from app.cards.swatches import lay_out_swatches
from core.paint.box.box import TWELVE_PAN
from core.swatches import layout
from core.swatches.asking import cards_for, paints_of_box
from core.swatches.read import find_card, read_card

pytestmark = pytest.mark.usefixtures("qapp")

LONG = [
    (f"a paint of ours whose name is {number} words long", "ultramarine") for number in range(8)
]


def seen(data: bytes, number: int, width: int) -> np.ndarray:
    """A page as pixels, (h, w, 3)."""
    buffer = QBuffer()
    buffer.setData(data)
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    document = QPdfDocument(None)
    document.load(buffer)
    points = document.pagePointSize(number)
    size = QSize(width, round(width * points.height() / points.width()))
    page = QImage(size, QImage.Format.Format_RGB888)
    page.fill(0xFFEEEEEE)
    painter = QPainter(page)
    painter.drawImage(0, 0, document.render(number, size))
    painter.end()
    bits = np.frombuffer(page.constBits(), np.uint8).reshape(size.height(), page.bytesPerLine())
    return bits[:, : 3 * size.width()].reshape(size.height(), size.width(), 3).copy()


@pytest.mark.parametrize("paper", PAPERS.values(), ids=PAPERS)
@pytest.mark.parametrize("asked", [paints_of_box(TWELVE_PAN), LONG], ids=["box", "long names"])
def test_the_printed_card_is_found_and_its_fields_are_bare(paper, asked) -> None:
    cards = cards_for(asked, TWELVE_PAN)
    data = pdf_of(lay_out_swatches(cards, TWELVE_PAN, paper), "card")
    for number, card in enumerate(cards):
        picture = seen(data, number, 1100)
        corners, code = find_card(picture)
        assert code == card.code
        mm = np.array(corners) * [paper.width_mm, paper.height_mm]
        np.testing.assert_allclose(mm, layout.MARKS, atol=0.3)
        # Nothing printed lies where paper or paint is read.
        dimmed = (picture * 0.9).astype(np.uint8)
        reading = read_card(dimmed, corners, len(card.rows), code)
        assert {one.word for one in reading.fields} == {"bare"}


def test_nothing_on_a_page_overlaps_and_all_is_within_the_paper() -> None:
    for paper in PAPERS.values():
        for page in lay_out_swatches(cards_for(LONG, TWELVE_PAN), TWELVE_PAN, paper):
            pieces = [piece for piece in page.pieces if piece.layer == "piece"]
            for place, piece in enumerate(pieces):
                assert paper.rect.contains(piece.rect), piece.text
                for other in pieces[place + 1 :]:
                    assert not piece.rect.intersects(other.rect), (piece.text, other.text)


def test_what_is_printed_says_what_to_do() -> None:
    cards = cards_for((("sky blue", "cerulean_blue"), ("our blue", "ultramarine")), TWELVE_PAN)
    data = pdf_of(lay_out_swatches(cards, TWELVE_PAN, PAPERS["a4"]), "card")
    text = " ".join(pypdf.PdfReader(io.BytesIO(data)).pages[0].extract_text().split())
    for words in (
        "1 our blue",
        "2 sky blue",
        "3 brush loads + 3 of",
        "3 + 3 of mid yellow",
        "3 + 3 of crimson",
        "By a window, lamps off.",
        cards[0].code,
    ):
        assert words in text, (words, text)
