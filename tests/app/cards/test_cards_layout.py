"""The cards' pages: one page where there should be one, nothing overlapping, nothing cut."""

from __future__ import annotations

from dataclasses import replace

import pytest
from card_tools import (
    LONG_REMARK,
    filled_worksheet,
    findings_data,
    long_findings,
    outside,
    overlaps,
    page_texts,
    plan_data,
    with_worksheet,
)

from app.cards.findings import lay_out_findings
from app.cards.paper import A4, MM, PAPERS, PT
from app.cards.plan import lay_out_plan
from app.cards.worksheet import lay_out_worksheet
from app.drawing.cards.marks import paint_ruler, paint_writing
from app.drawing.cards.text import Run, balanced, broken, line_width
from app.drawing.ladder import paint_ladder
from app.drawing.wheel.layout import wheel_geometry
from app.drawing.wheel.wheel import paint_wheel
from app.look.type import FIRST
from core.cards import words
from core.cards.data import CardData
from core.paint.words.mix import parts_text, strength_text
from core.reading.units import length_number, size_text
from core.reading.wording import Wording
from core.sheet.result import Notice
from core.study import Study
from core.worksheet.words import ANCHORS, anchor_word

pytestmark = pytest.mark.usefixtures("qapp")

LONG_WORDS = " ".join(f"look{number}" for number in range(1500))

PAPER = pytest.mark.parametrize("paper", PAPERS.values(), ids=PAPERS)
BW = pytest.mark.parametrize("bw", [False, True], ids=["colour", "bw"])
LONG = pytest.mark.parametrize("long", [False, True], ids=["usual", "longest"])


@PAPER
@BW
@LONG
@pytest.mark.parametrize("count", range(1, 8))
def test_plan_is_one_page_with_nothing_overlapping_or_cut(paper, bw, long, count) -> None:
    pages = lay_out_plan(plan_data(count, long=long), paper, bw=bw)
    assert len(pages) == 1
    assert overlaps(pages[0]) == []
    assert outside(pages[0]) == []


@PAPER
@LONG
@pytest.mark.parametrize("count", [2, 7])
def test_plan_says_every_readout_mix_amount_and_end(paper, long, count) -> None:
    data = plan_data(count, long=long)
    said = " ".join(page_texts(lay_out_plan(data, paper)).split())
    for reading, band, amount in zip(
        data.readings, data.plan.bands, data.plan.amounts.bands, strict=True
    ):
        hue, near = words.hue_pieces(reading.colour, data.wording)
        assert hue + near in said
        for piece in words.scale_piece(reading.colour, data.wording).split():
            assert piece in said
        assert parts_text(data.plan.box, band.classroom.mix) in said
        assert strength_text(band.classroom.strength) in said
        assert length_number(amount.ends_mm, "cm") in said.split()
        assert f"{band.amount_ml:g}" in said.split()


@PAPER
@BW
@pytest.mark.parametrize("count", [2, 7])
def test_plan_in_inches_has_room_for_its_eighths(paper, bw, count) -> None:
    data = plan_data(count, long=True)
    data = replace(data, wording=replace(data.wording, units="in"))
    (page,) = lay_out_plan(data, paper, bw=bw)
    assert overlaps(page) == []
    assert outside(page) == []
    said = page_texts((page,))
    assert "inches down" in said
    assert size_text(*data.plan.sheet.painted_mm, "in") in " ".join(said.split())
    for amount in data.plan.amounts.bands:
        assert length_number(amount.ends_mm, "in") in said


@PAPER
@LONG
@pytest.mark.parametrize("count", [2, 5, 7])
def test_wheel_names_are_readable(paper, long, count) -> None:
    """Each hue's name stands in its wedge, 8 points high or more and hardly squeezed."""
    (page,) = lay_out_plan(plan_data(count, long=long), paper)
    (wheel,) = [piece for piece in page.pieces if piece.paint is paint_wheel]
    names = wheel_geometry(wheel.rect, wheel.view).names
    assert all(names)
    for word in (word for name in names for word in name):
        assert word.size >= 8 * PT
        assert word.squeeze >= 0.9


@PAPER
@BW
def test_many_bands_go_on_to_another_page(paper, bw) -> None:
    data = plan_data(7)
    many = replace(
        data,
        readings=data.readings * 3,
        plan=replace(
            data.plan,
            bands=data.plan.bands * 3,
            amounts=replace(data.plan.amounts, bands=data.plan.amounts.bands * 3),
        ),
    )
    pages = lay_out_plan(many, paper, bw=bw)
    assert len(pages) > 1
    for page in pages:
        assert overlaps(page) == []
        assert outside(page) == []
    assert sum(text == "A" for text in page_texts(pages).split("\n")) == 3


@PAPER
@BW
@pytest.mark.parametrize("filled", [False, True], ids=["blank", "filled"])
@LONG
def test_worksheet_is_a_page_a_sheet(paper, bw, filled, long) -> None:
    data = plan_data(7, long=long)
    if filled:
        data = with_worksheet(data, filled_worksheet())
    pages = lay_out_worksheet(data, paper, bw=bw, blank=not filled)
    assert len(pages) == 2
    for page in pages:
        assert overlaps(page) == []
        assert outside(page) == []
        (lines,) = [p for p in page.pieces if p.paint is paint_writing]
        assert lines.view.spacing == pytest.approx(8 * MM)
        assert lines.rect.height() / lines.view.spacing >= 5


@PAPER
@pytest.mark.parametrize("white", [10, 0])
def test_worksheet_has_anchors_and_both_ends_of_the_value_scale(paper, white) -> None:
    data = replace(plan_data(3), wording=Wording(white_is=white))
    for page in lay_out_worksheet(data, paper, blank=True):
        said = " ".join(page_texts([page]).split())
        assert all(anchor_word(score) in said for score in ANCHORS)
        (ladder,) = [piece for piece in page.pieces if piece.paint is paint_ladder]
        assert ladder.view.ends == (f"{white} white", f"{10 - white} black")


def test_blank_worksheet_keeps_the_students_words_out() -> None:
    data = with_worksheet(plan_data(3), filled_worksheet("My very own answer."))
    blank = page_texts(lay_out_worksheet(data, A4, blank=True))
    assert "own answer" not in blank
    assert "7b 14" not in blank
    assert "own answer" in page_texts(lay_out_worksheet(data, A4))


@PAPER
def test_a_long_answer_goes_on_to_further_pages_and_loses_nothing(paper) -> None:
    answer = "\n".join(f"Line {number}, and what I would do about it." for number in range(90))
    pages = lay_out_worksheet(with_worksheet(plan_data(3), filled_worksheet(answer)), paper)
    said = page_texts(pages)
    assert len(pages) > 4
    assert all(said.count(f"Line {number}, and") == 2 for number in range(90))
    for page in pages:
        assert overlaps(page) == []
        assert outside(page) == []


def test_worksheet_of_a_study_without_a_photo() -> None:
    pages = lay_out_worksheet(CardData(Study(title="Sky")), A4)
    assert len(pages) == 2
    assert all(overlaps(page) == [] for page in pages)


# Findings


@PAPER
@BW
@pytest.mark.parametrize("remark", ["", "A calm sky. " * 10, LONG_WORDS])
def test_findings_overlap_nowhere_and_keep_every_word(paper, bw, remark) -> None:
    data = findings_data()
    data = with_worksheet(data, replace(data.study.worksheet, remark=remark))
    pages = lay_out_findings(data, paper, bw=bw)
    assert len(pages) == (1 if len(remark) < 1000 else len(pages))
    said = " ".join(page_texts(pages).split())
    # On several pages feet and heads stand between its lines.
    assert set(remark.split()) <= set(said.split())
    for check in data.checks:
        assert all(finding.text in said for finding in check.findings)
        for band in check.band_checks:
            assert band.remark in said
            assert words.sheet_readout(band.sheet.colour, data.wording) in said
    assert all(finding.text in said for finding in data.change.findings)
    for page in pages:
        assert overlaps(page) == []
        assert outside(page) == []


@PAPER
@BW
@pytest.mark.parametrize("count", [2, 7])
def test_findings_with_many_bands_and_the_longest_remarks(paper, bw, count) -> None:
    pages = lay_out_findings(long_findings(count), paper, bw=bw)
    for page in pages:
        assert overlaps(page) == []
        assert outside(page) == []
    said = " ".join(page_texts(pages).split())
    assert said.count(LONG_REMARK) == 2 * count


def test_findings_wait_for_own_scores() -> None:
    data = findings_data()
    pages = data.study.worksheet.pages
    unscored = replace(pages[1], scores=replace(pages[1].scores, intensity=None))
    data = with_worksheet(data, replace(data.study.worksheet, pages=(pages[0], unscored)))
    said = " ".join(page_texts(lay_out_findings(data, A4)).split())
    open_check, closed = data.checks
    assert open_check.findings[0].text in said
    assert not any(
        finding.text in said
        for finding in closed.findings
        if finding.text not in {f.text for f in open_check.findings}
    )
    assert data.change.findings[0].text not in said
    assert "Score intensity to open them." in said
    shown = replace(data, show_measured=True)
    assert closed.findings[0].text in " ".join(page_texts(lay_out_findings(shown, A4)).split())


def test_findings_of_one_sheet() -> None:
    data = findings_data()
    data = replace(data, checks=(data.checks[0], None), change=None)
    (page,) = lay_out_findings(data, A4)
    assert overlaps(page) == []
    assert words.label("next change") in page_texts([page])


def test_findings_on_unsure_corners_are_marked_provisional() -> None:
    data = findings_data()
    first, second = data.checks
    assert first is not None
    assert words.label("provisional") not in page_texts(lay_out_findings(data, A4))
    unsure = replace(data, checks=(replace(first, provisional=True), second))
    pages = lay_out_findings(unsure, A4)
    assert words.label("provisional") in page_texts(pages)
    assert overlaps(pages[0]) == []
    assert outside(pages[0]) == []


# The foot


@PAPER
def test_every_page_has_the_ruler(paper) -> None:
    pages = (
        *lay_out_plan(plan_data(4), paper),
        *lay_out_worksheet(plan_data(4), paper),
        *lay_out_findings(findings_data(), paper),
    )
    for page in pages:
        (ruler,) = [piece for piece in page.pieces if piece.paint is paint_ruler]
        assert ruler.rect.width() / MM == pytest.approx(100)


def test_breaking_loses_no_word_and_keeps_to_the_width() -> None:
    text = (
        "5 ultramarine : 1 alizarin crimson, milk strength and Donaudampfschifffahrtsgesellschaft"
    )
    for width in (300, 700, 2000):
        lines = broken([Run(text[:20], FIRST), Run(text[20:])], 100, width)
        assert all(line_width(line, 100) <= width for line in lines)
        joined = "".join(run.text for line in lines for run in line)
        assert joined.replace(" ", "") == text.replace(" ", "")
    assert len(balanced([Run(text)], 100, 2000)) == len(broken([Run(text)], 100, 2000))


def test_cautions_are_for_the_paints_on_the_card() -> None:
    data = plan_data(7, long=True)
    said = page_texts(lay_out_plan(data, A4))
    assert "Cadmium yellow: The label of this paint" in said
    assert "Cerulean blue and cobalt blue" in said
    bare = replace(data, plan=replace(data.plan, cautions=data.plan.cautions[1:]))
    assert "Cadmium yellow: The label" not in page_texts(lay_out_plan(bare, A4))


def test_nothing_is_printed_of_a_sheet_that_cannot_be_judged() -> None:
    data = findings_data()
    lost = Notice("corners not found", "The painted rectangle could not be found.")
    first, second = data.checks
    blind = replace(second, notices=(lost,))
    data = replace(data, checks=(first, blind), change=None, show_measured=True)
    said = " ".join(page_texts(lay_out_findings(data, A4)).split())
    assert words.label("unreadable") in said
    assert words.label("no change yet") in said
    assert first.findings[0].text in said
    told = {finding.text for finding in second.findings} - {f.text for f in first.findings}
    assert not any(text in said for text in told)
