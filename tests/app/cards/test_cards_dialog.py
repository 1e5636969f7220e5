"""The dialog for cards: choose, see, save as PDF, print; and nothing of it in the GUI's way."""

from __future__ import annotations

import io
from dataclasses import replace
from pathlib import Path

import pypdf
import pytest
from card_tools import filled_worksheet, findings_data, pdf_text, plan_data, wish_of, with_worksheet
from PySide6.QtCore import QMarginsF, Qt, QTimer
from PySide6.QtGui import QPageLayout, QPageSize
from PySide6.QtPrintSupport import QPrinter
from window_tools import wait_until_still

from app.cards import ask
from app.cards.card import lay_out_card
from app.cards.choice import CardChoice
from app.cards.dialog import CardDialog
from app.cards.paper import A4, LETTER
from app.cards.printing import PrintJob, paper_of, printer_for
from core.pictures import Picture
from core.study import SheetEntry


@pytest.fixture
def dialog(qtbot, tmp_path: Path):
    """The dialog on five bands, with its first card drawn."""

    def show(data=None, choice: CardChoice | None = None, **options) -> CardDialog:
        data = data or with_worksheet(plan_data(5), filled_worksheet())
        shown = CardDialog(None, wish_of(data), choice or CardChoice(), tmp_path, **options)
        qtbot.addWidget(shown)
        shown.show()
        qtbot.waitUntil(lambda: not shown.working, timeout=10_000)
        return shown

    return show


def test_it_shows_the_card_that_is_chosen(dialog, qtbot) -> None:
    shown = dialog()
    assert shown.drawn is not None
    assert shown.preview.count == 1
    qtbot.mouseClick(segment(shown.choices.kind, "worksheet"), Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: not shown.working, timeout=10_000)
    assert shown.choice == CardChoice("worksheet")
    assert shown.preview.count == 2
    assert "Keep the sheet wetter." in shown.preview.accessibleDescription()
    qtbot.mouseClick(segment(shown.choices.fill, "blank"), Qt.MouseButton.LeftButton)
    qtbot.mouseClick(segment(shown.choices.paper, "letter"), Qt.MouseButton.LeftButton)
    qtbot.mouseClick(segment(shown.choices.ink, "bw"), Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: not shown.working, timeout=10_000)
    assert shown.drawn.choice == CardChoice("worksheet", LETTER, bw=True, blank=True)
    assert "Keep the sheet wetter." not in shown.preview.accessibleDescription()


def segment(control, key: str):
    return control._segments[key]


def test_pages_can_be_turned_by_button_and_key(dialog, qtbot) -> None:
    shown = dialog(choice=CardChoice("worksheet"))
    assert not shown.back.isEnabled()
    shown.on.click()
    assert shown.preview.page == 1
    assert shown.page_label.text() == "page 2 of 2"
    assert not shown.on.isEnabled()
    qtbot.keyClick(shown.preview, Qt.Key.Key_PageUp)
    assert shown.preview.page == 0
    assert "page 1 of 2" in shown.preview.accessibleName()
    assert shown.page_label.text() == "page 1 of 2"


def test_blank_or_filled_is_only_asked_of_a_worksheet(dialog) -> None:
    shown = dialog()
    assert not shown.choices.fill.isVisible()
    shown.choose(CardChoice("worksheet"))
    assert shown.choices.fill.isVisible()


def test_how_many_students_is_only_asked_of_a_kit_list(dialog, qtbot) -> None:
    shown = dialog()
    assert not shown.choices.students.isVisible()
    shown.choose(CardChoice("kit"))
    qtbot.waitUntil(lambda: not shown.working, timeout=10_000)
    assert shown.choices.students.isVisible()
    assert "For 30 students" in shown.preview.accessibleDescription()
    qtbot.keyClick(shown.choices.students, Qt.Key.Key_Up)
    qtbot.waitUntil(lambda: not shown.working, timeout=10_000)
    assert shown.drawn.choice.students == 31
    assert "For 31 students" in shown.preview.accessibleDescription()


def test_a_card_that_cannot_be_is_one_sentence(dialog) -> None:
    shown = dialog(choice=CardChoice("findings"))
    assert shown.drawn is None
    assert "no painted sheet yet" in shown.preview.accessibleDescription()
    assert not shown.save_button.isEnabled()
    assert not shown.print_button.isEnabled()


def test_findings_need_no_second_check(dialog, monkeypatch: pytest.MonkeyPatch) -> None:
    def check(*arguments: object, **options: object) -> None:
        raise AssertionError("what the window knows is not worked out again")

    data = findings_data()
    monkeypatch.setattr("core.sheet.check_sheet", check)
    entry = SheetEntry(Picture("sheet.jpg", "1" * 64))
    data = replace(data, study=replace(data.study, sheets=(entry, entry)))
    shown = dialog(data, CardChoice("findings"))
    assert shown.drawn is not None
    # Only its findings are said again, in the plan's terms.
    for found, known in zip(shown.drawn.data.checks, data.checks, strict=True):
        assert found.picture is known.picture
        assert found.bands == known.bands


def test_saving_writes_the_pdf(dialog, qtbot, tmp_path: Path, monkeypatch) -> None:
    asked: list[Path] = []

    def answer(parent: object, suggestion: Path) -> Path:
        asked.append(suggestion)
        return tmp_path / "card.pdf"

    monkeypatch.setattr(ask, "ask_pdf_path", answer)
    shown = dialog()
    shown.save_button.click()
    qtbot.waitUntil(lambda: not shown.working, timeout=10_000)
    assert asked == [tmp_path / "Plan Dusk over the lake.pdf"]
    assert "Plan: Dusk over the lake" in pdf_text((tmp_path / "card.pdf").read_bytes())
    assert shown.status.text() == "Saved as card.pdf."
    assert [path.name for path in tmp_path.iterdir()] == ["card.pdf"]


def test_a_card_that_cannot_be_written_is_one_sentence(dialog, qtbot, tmp_path, monkeypatch):
    monkeypatch.setattr(ask, "ask_pdf_path", lambda parent, hint: tmp_path / "gone" / "card.pdf")
    shown = dialog()
    shown.save_button.click()
    qtbot.waitUntil(lambda: not shown.working, timeout=10_000)
    assert shown.status.text() == "There is no folder for card.pdf: make it, or save elsewhere."
    assert shown.save_button.isEnabled()


def test_thinking_better_of_saving(dialog, tmp_path, monkeypatch) -> None:
    monkeypatch.setattr(ask, "ask_pdf_path", lambda parent, hint: None)
    shown = dialog()
    shown.save_button.click()
    assert not shown.working
    assert list(tmp_path.iterdir()) == []


def test_without_any_printer_it_says_what_to_do(dialog, monkeypatch) -> None:
    monkeypatch.setattr(ask, "has_printer", lambda: False)
    shown = dialog()
    shown.print_button.click()
    assert (
        shown.status.text() == "No printer is set up here: save the card as a PDF, and print that."
    )


@pytest.mark.parametrize("chosen", [A4, LETTER])
def test_printing_goes_to_the_paper_chosen_in_the_systems_dialog(
    dialog, qtbot, tmp_path, monkeypatch, chosen
) -> None:
    """A printer that writes a PDF stands for one that prints."""
    path = tmp_path / "printed.pdf"

    def answer(parent: object, printer: QPrinter) -> bool:
        printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
        printer.setOutputFileName(str(path))
        printer.setPageSize(chosen.page_size)
        return True

    monkeypatch.setattr(ask, "has_printer", lambda: True)
    monkeypatch.setattr(ask, "ask_printer", answer)
    shown = dialog()
    shown.print_button.click()
    qtbot.waitUntil(lambda: not shown.working, timeout=10_000)
    assert shown.status.text() == "Sent to the printer."
    (page,) = pypdf.PdfReader(io.BytesIO(path.read_bytes())).pages
    assert float(page.mediabox.width) / 72 * 25.4 == pytest.approx(chosen.width_mm, abs=0.3)
    assert "Order of work" in pdf_text(path.read_bytes())


def test_the_window_answers_while_it_prints(qtbot, tmp_path) -> None:
    """Pieces are drawn one by one, and events come in between."""
    printer = printer_for(A4, "card")
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "card.pdf"))
    pages = lay_out_card(plan_data(7), CardChoice("plan"))
    job = PrintJob(printer, pages)
    answered: list[int] = []
    timer = QTimer(job, interval=0)
    timer.timeout.connect(lambda: answered.append(1))
    with qtbot.waitSignal(job.done, timeout=10_000):
        timer.start()
        job.start()
    assert len(answered) >= sum(len(page.pieces) for page in pages) / 2


@pytest.mark.qt_log_ignore("Returned false", extend=True)
def test_a_printer_that_refuses(qtbot, tmp_path) -> None:
    printer = printer_for(A4, "card")
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "gone" / "card.pdf"))
    job = PrintJob(printer, lay_out_card(plan_data(2), CardChoice("plan")))
    with qtbot.waitSignal(job.failed, timeout=10_000):
        job.start()


def test_paper_the_cards_do_not_know_leaves_the_one_wanted(qapp) -> None:
    printer = printer_for(LETTER, "card")
    assert paper_of(printer, A4) == LETTER
    printer.setPageSize(QPageSize(QPageSize.PageSizeId.A5))
    assert paper_of(printer, A4) == A4
    assert printer.pageLayout().margins(QPageLayout.Unit.Millimeter) == QMarginsF(0, 0, 0, 0)


# In the window


def test_the_study_menu_prints_what_the_window_shows(sky_window, qtbot) -> None:
    window = sky_window
    wait_until_still(window, qtbot)
    action = next(a for a in window.header.menu("study").actions() if "Print" in a.text())
    action.trigger()
    shown = window.findChild(CardDialog)
    qtbot.waitUntil(lambda: not shown.working, timeout=20_000)
    assert shown.drawn is not None
    assert shown.drawn.data.readings == window.reader.readings
    assert "Plan: test sky" in shown.preview.accessibleDescription()
    shown.choose(CardChoice("worksheet", bw=True))
    shown.reject()
    # The next dialog begins where the last one ended.
    again = window.cards.open()
    assert again.choice == CardChoice("worksheet", again.choice.paper, bw=True)
    qtbot.waitUntil(lambda: not again.working, timeout=20_000)
    again.reject()
    third = window.cards.open("plan")
    assert third.choice.kind == "plan"
    third.reject()


def test_a_window_without_a_photo_says_so(window, qtbot) -> None:
    shown = window.cards.open("plan")
    qtbot.waitUntil(lambda: not shown.working, timeout=10_000)
    assert "no photo yet" in shown.preview.accessibleDescription()
    shown.reject()


def test_the_worksheet_page_prints_its_worksheet(window, qtbot) -> None:
    window.page("worksheet").print_button.click()
    shown = window.findChild(CardDialog)
    assert shown.choice.kind == "worksheet"
    qtbot.waitUntil(lambda: not shown.working, timeout=10_000)
    assert shown.preview.count == 2
    shown.reject()
