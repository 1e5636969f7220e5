"""One rounding of the measured scores, wherever they are shown."""

from __future__ import annotations

from dataclasses import replace

import pytest
from sheet_checks import sheet_check

from app.sheets.scores import score_cells
from app.worksheet.views import measured_scores
from core.worksheet.worksheet import OwnScores


class Opened:
    """A checker whose findings may be seen."""

    def __init__(self, check) -> None:
        self.checks = (check, None)

    def is_open(self, index: int) -> bool:
        return True


@pytest.mark.parametrize("placement", [5.4, 5.5, 5.6, 6.5, 9.95, None])
def test_sheets_and_worksheet_round_alike(placement) -> None:
    check = sheet_check()
    check = replace(check, scores=replace(check.scores, placement=placement))
    cells = score_cells(check.scores, OwnScores())
    shown = measured_scores(Opened(check), 0)
    for cell, score in zip(cells, shown.values(), strict=True):
        assert cell.measured == ("-" if score is None else str(score))
