"""Pages as a PDF: vector drawing, embedded fonts, sizes that are true on paper."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QBuffer, QIODevice, QMarginsF
from PySide6.QtGui import QPageLayout, QPainter, QPdfWriter

from app.cards.page import Page, paint_page
from app.cards.paper import UNITS_PER_INCH
from core.errors import CardError
from core.i18n import translate
from core.progress import Progress, ShouldStop, step


def pdf_of(
    pages: Sequence[Page],
    title: str,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> bytes:
    """The bytes of a PDF with these pages; may run in a worker.

    Parameters
    ----------
    pages : sequence of Page
        At least one, all of the same paper.
    title : str
        For the file's own description.
    progress, should_stop : callable, optional

    Raises
    ------
    CardError
        Qt could not begin a PDF.
    Cancelled
        `should_stop` answered True.
    """
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(UNITS_PER_INCH)
    writer.setTitle(title)
    writer.setCreator("Gradewash")
    writer.setPageSize(pages[0].paper.page_size)
    writer.setPageMargins(QMarginsF(0, 0, 0, 0), QPageLayout.Unit.Millimeter)
    painter = QPainter()
    if not painter.begin(writer):
        raise CardError(translate("cards", "The card could not be drawn: try again."))
    try:
        for number, page in enumerate(pages):
            step(number / len(pages), progress, should_stop)
            if number:
                writer.newPage()
            paint_page(painter, page)
    finally:
        painter.end()
    return bytes(buffer.data().data())
