"""Printing on paper, piece by piece, so that the window goes on answering."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QMarginsF, QObject, QTimer, Signal
from PySide6.QtGui import QPageLayout, QPageSize, QPainter
from PySide6.QtPrintSupport import QPrinter

from app.cards.page import Page, painting
from app.cards.paper import PAPERS, UNITS_PER_INCH, Paper


def printer_for(paper: Paper, title: str) -> QPrinter:
    """A printer set up for true sizes on a paper."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(title)
    printer.setPageSize(paper.page_size)
    printer.setFullPage(True)
    printer.setPageMargins(QMarginsF(0, 0, 0, 0), QPageLayout.Unit.Millimeter)
    return printer


def paper_of(printer: QPrinter, wanted: Paper) -> Paper:
    """The paper chosen in the system's dialog, where a card knows it; else the one wanted."""
    chosen = printer.pageLayout().pageSize()
    for paper in PAPERS.values():
        if QPageSize(paper.page_size).isEquivalentTo(chosen):
            return paper
    return wanted


class PrintJob(QObject):
    """Draws pages on a printer, a few milliseconds at a time.

    Signals
    -------
    done()
        All pages were handed to the printer.
    failed()
        The printer could not be begun, or refused a page.
    """

    done = Signal()
    failed = Signal()

    def __init__(
        self, printer: QPrinter, pages: tuple[Page, ...], parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._printer = printer
        self._painter = QPainter()
        self._steps = self._work(pages)
        self._timer = QTimer(self, interval=0)
        self._timer.timeout.connect(self._go_on)

    def start(self) -> None:
        """Begin; the signals tell how it ends."""
        # Sizes are the card's own: what the dialog may have set is undone.
        self._printer.setFullPage(True)
        if not self._painter.begin(self._printer):
            self.failed.emit()
            return
        self._timer.start()

    def stop(self) -> None:
        """Give up; pages already handed on may still be printed."""
        self._timer.stop()
        if self._painter.isActive():
            self._painter.end()

    def _work(self, pages: tuple[Page, ...]) -> Iterator[bool]:
        """Draw piece by piece; False when the printer refuses a page."""
        scale = self._printer.resolution() / UNITS_PER_INCH
        for number, page in enumerate(pages):
            if number and not self._printer.newPage():
                yield False
                return
            self._painter.save()
            self._painter.scale(scale, scale)
            for _ in painting(self._painter, page):
                yield True
            self._painter.restore()

    def _go_on(self) -> None:
        going = next(self._steps, None)
        if going:
            return
        self.stop()
        if going is None:
            self.done.emit()
        else:
            self.failed.emit()
