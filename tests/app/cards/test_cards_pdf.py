"""The PDFs themselves: text that can be found, fonts within, millimetres that are true."""

from __future__ import annotations

import io
import re
from functools import cache

import numpy as np
import pypdf
import pytest
from card_tools import (
    filled_worksheet,
    findings_data,
    pdf_text,
    plan_data,
    rendered,
    with_worksheet,
)

from app.cards.card import CardChoice, card_title, lay_out_card
from app.cards.paper import MARGIN_MM, PAPERS
from app.cards.pdf import pdf_of
from core.cards import words
from core.errors import Cancelled

pytestmark = pytest.mark.usefixtures("qapp")

PAPER = pytest.mark.parametrize("paper", PAPERS.values(), ids=PAPERS)
BW = pytest.mark.parametrize("bw", [False, True], ids=["colour", "bw"])
KIND = pytest.mark.parametrize("kind", ["plan", "worksheet", "findings"])


@cache
def pdf(kind: str, paper, *, bw: bool = False, count: int = 5, long: bool = False) -> bytes:
    data = findings_data() if kind == "findings" else plan_data(count, long=long)
    if kind == "worksheet":
        data = with_worksheet(data, filled_worksheet())
    choice = CardChoice(kind, paper, bw)
    return pdf_of(lay_out_card(data, choice), card_title(data, kind))


@PAPER
@KIND
def test_paper_and_title(kind, paper) -> None:
    reader = pypdf.PdfReader(io.BytesIO(pdf(kind, paper)))
    for page in reader.pages:
        # Qt rounds the page to whole points: a third of a millimetre.
        assert float(page.mediabox.width) / 72 * 25.4 == pytest.approx(paper.width_mm, abs=0.2)
        assert float(page.mediabox.height) / 72 * 25.4 == pytest.approx(paper.height_mm, abs=0.2)
    assert reader.metadata is not None
    assert reader.metadata.title == card_title(
        findings_data() if kind == "findings" else plan_data(5), kind
    )


@PAPER
@BW
@pytest.mark.parametrize("long", [False, True], ids=["usual", "longest"])
@pytest.mark.parametrize("count", [2, 7])
def test_every_readout_can_be_found_in_the_pdf(paper, bw, long, count) -> None:
    data = plan_data(count, long=long)
    text = pdf_text(pdf("plan", paper, bw=bw, count=count, long=long))
    for reading in data.readings:
        hue, near = words.hue_pieces(reading.colour, data.wording)
        assert hue in text
        assert near in text
        assert words.value_piece(reading.colour, data.wording) in text


@KIND
def test_all_fonts_are_embedded(kind) -> None:
    reader = pypdf.PdfReader(io.BytesIO(pdf(kind, PAPERS["a4"])))
    fonts = {}
    for page in reader.pages:
        for name, font in page["/Resources"]["/Font"].items():
            fonts[name] = font.get_object()
    assert fonts
    for font in fonts.values():
        (inner,) = font["/DescendantFonts"]
        descriptor = inner.get_object()["/FontDescriptor"].get_object()
        assert "/FontFile2" in descriptor or "/FontFile3" in descriptor
        assert "AtkinsonHyperlegibleNext" in descriptor["/FontName"]
        assert "/ToUnicode" in font


def lines_of(page: pypdf.PageObject) -> list[tuple[float, float, float, float]]:
    """The straight lines drawn on a page, in points."""
    stream = page.get_contents().get_data().decode("latin-1")
    scale = [float(x) for x in re.search(r"^([-\d. ]+) cm$", stream, re.M).group(1).split()]
    assert scale[1] == scale[2] == 0
    number = r"(-?[\d.]+)"
    drawn = re.finditer(rf"{number} {number} m\s+{number} {number} l\s+S", stream)
    return [
        (
            float(x1) * scale[0],
            float(y1) * scale[3],
            float(x2) * scale[0],
            float(y2) * scale[3],
        )
        for x1, y1, x2, y2 in (match.groups() for match in drawn)
    ]


@PAPER
@KIND
def test_the_ruler_measures_100_mm(kind, paper) -> None:
    for page in pypdf.PdfReader(io.BytesIO(pdf(kind, paper))).pages:
        assert page.get("/UserUnit", 1) == 1
        flat = [abs(x2 - x1) for x1, y1, x2, y2 in lines_of(page) if y1 == y2]
        millimetres = [length / 72 * 25.4 for length in flat]
        assert min(abs(length - 100.0) for length in millimetres) < 0.02


@PAPER
@KIND
@BW
def test_margins_stay_white(kind, paper, bw) -> None:
    for pixels in rendered(pdf(kind, paper, bw=bw), dpi=100):
        margin = round((MARGIN_MM - 0.6) / 25.4 * 100)
        inner = pixels[margin:-margin, margin:-margin]
        assert inner.min() < 60, "an empty page"
        frame = pixels.copy()
        frame[margin:-margin, margin:-margin] = 255
        assert frame.min() == 255


@PAPER
@KIND
def test_black_and_white_has_no_hue(kind, paper) -> None:
    for pixels in rendered(pdf(kind, paper, bw=True), dpi=60):
        spread = pixels.max(axis=2).astype(int) - pixels.min(axis=2)
        assert np.percentile(spread, 99.99) <= 3  # what a JPEG's rounding may leave in the photo


@KIND
def test_colour_has_hue_where_there_is_something_to_match(kind) -> None:
    pixels = rendered(pdf(kind, PAPERS["a4"]), dpi=60)[0]
    spread = pixels.max(axis=2).astype(int) - pixels.min(axis=2)
    assert (spread > 40).mean() > 0.005


def test_writing_can_be_called_off() -> None:
    pages = lay_out_card(plan_data(2), CardChoice("plan"))
    with pytest.raises(Cancelled):
        pdf_of(pages, "x", should_stop=lambda: True)


def test_a_card_may_be_drawn_in_a_worker(qtbot) -> None:
    """The same bytes of text, drawn while the GUI thread draws too."""
    from app.state.tasks import Latest

    done: list[bytes] = []
    place = Latest()
    draw = pdf.__wrapped__
    place.run(lambda progress, should_stop: draw("plan", PAPERS["a4"]), done.append)
    here = pdf_text(draw("plan", PAPERS["a4"]))
    qtbot.waitUntil(lambda: bool(done), timeout=10_000)
    assert pdf_text(done[0]) == here
