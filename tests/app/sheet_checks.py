"""Checks of invented sheets, and a checker that hands them out: no picture has to be measured."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from PySide6.QtCore import QObject, Signal

from app.drawing.pyramid import Pyramid, image_of
from core.bands.lines import Bands
from core.reading.reading import BandReading, read_colour
from core.sheet.findings.compare import compare_bands
from core.sheet.findings.scores import score_sheet
from core.sheet.result import Change, Finding, Light, LineCheck, SheetCheck

WANTED = ((45.0, 17.0, -42.0), (60.0, 17.0, -30.0), (78.0, 18.0, -12.0))
LIGHTER = ((64.0, 17.0, -42.0), (72.0, 17.0, -30.0), WANTED[2])
CORNERS = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))
FINDINGS = (
    Finding("praise", "hue", (), "The hues match in every band."),
    Finding("step", "value", ("A",), "Band A is lighter: use less water."),
    Finding("step", "placement", ("B",), "Band B ends 6% low: stop the wash earlier."),
)


def readings(colours) -> tuple[BandReading, ...]:
    return tuple(
        BandReading(
            "ABC"[n], n / 3, (n + 1) / 3, read_colour(Lab), None, None, None, 1.0, False, 0.0, 1.0
        )
        for n, Lab in enumerate(colours)
    )


def sheet_check(colours=LIGHTER, shifts=(0.0, 6.0)) -> SheetCheck:
    """A check of three bands, its gaps and scores as the program reckons them."""
    bands = compare_bands(
        readings(WANTED), readings(colours), scan=True, corrected=True, sides=False
    )
    lines = tuple(
        LineCheck("AB"[n], 0.3, 0.3 + shift / 100, shift, "matches" if abs(shift) <= 2 else "off")
        for n, shift in enumerate(shifts)
    )
    return SheetCheck(
        name="sheet.jpg",
        picture=np.full((60, 90, 3), 150, np.uint8),
        corners=CORNERS,
        corner_confidence=1.0,
        turned=0,
        better_turn=None,
        light=Light(None, False, (1.0, 1.0, 1.0)),
        bands=Bands(1.0, (1 / 3, 2 / 3)),
        lines=lines,
        band_checks=bands,
        hard_edges=(),
        blooms=(),
        pale_corners=(),
        scores=score_sheet(bands, lines),
        findings=FINDINGS,
    )


def other_sky() -> SheetCheck:
    """A sheet nothing can be said of."""
    note = Finding("note", "sky", (), "This sheet shows another sky: is it the right photo?")
    return replace(sheet_check(), findings=(note,))


class FakeChecker(QObject):
    """Answers like the checker, with checks handed to it."""

    checks_changed = Signal()
    opened_changed = Signal()
    busy = Signal(int, str, float)
    idle = Signal(int)

    def __init__(self, document) -> None:
        super().__init__(document)
        self._document = document
        self.checks: tuple = (None, None)
        self.change: Change | None = None
        self.sentences = ["", ""]
        self._show = False

    @property
    def pictures(self) -> tuple[Pyramid | None, Pyramid | None]:
        first, second = (
            Pyramid.of(image_of(check.picture)) if check else None for check in self.checks
        )
        return first, second

    @property
    def show_measured(self) -> bool:
        return self._show

    @show_measured.setter
    def show_measured(self, show: bool) -> None:
        self._show = show
        self.opened_changed.emit()

    def failure(self, index: int) -> str:
        return self.sentences[index]

    def running(self, index: int) -> bool:
        return False

    def is_open(self, index: int) -> bool:
        return self._show or not self._document.study.worksheet.pages[index].scores.missing

    def hand_out(self, first: SheetCheck | None, second: SheetCheck | None) -> None:
        """New checks are there."""
        self.checks = (first, second)
        self.checks_changed.emit()
