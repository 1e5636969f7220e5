"""From study and checks to what the halves show: what may be seen, and in which words."""

from __future__ import annotations

from typing import Protocol

from app.drawing.pyramid import Pyramid
from app.worksheet.measured import MeasuredView
from core.i18n import translate
from core.reading.quality import QUALITIES, Quality
from core.sheet.result import Change, SheetCheck
from core.study import Study
from core.worksheet.compare import (
    change_sentence,
    measured_lines,
    nothing_to_compare,
    shown_score,
)
from core.worksheet.words import quality_title, sheet_title, waiting_sentence


class Checks(Protocol):
    """What this page reads of the checker."""

    @property
    def checks(self) -> tuple[SheetCheck | None, SheetCheck | None]: ...
    @property
    def pictures(self) -> tuple[Pyramid | None, Pyramid | None]: ...
    @property
    def change(self) -> Change | None: ...
    def failure(self, index: int) -> str: ...
    def running(self, index: int) -> bool: ...
    def is_open(self, index: int) -> bool: ...


def measured_scores(checks: Checks, index: int) -> dict[Quality, int | None]:
    """The measured scores of a sheet; empty while they must not be seen."""
    check = checks.checks[index]
    if check is None or not checks.is_open(index) or nothing_to_compare(check):
        return {}
    return {quality: shown_score(getattr(check.scores, quality)) for quality in QUALITIES}


def measured_view(study: Study, checks: Checks, index: int) -> MeasuredView:
    """What the last part of a half says."""
    page, check = study.worksheet.pages[index], checks.checks[index]
    if not checks.is_open(index):
        sentence = waiting_sentence(page.scores.missing, study.sheets[index] is not None)
        return MeasuredView(sentence, locked=True)
    if check is None:
        return MeasuredView(_why_none(study, checks, index))
    unfit = nothing_to_compare(check)
    if unfit:
        return MeasuredView(findings=(("info", unfit),))
    rows = tuple(
        (quality_title(line.quality), line.sentence) for line in measured_lines(page.scores, check)
    )
    findings = []
    if index == 1:
        findings.append(("pencil", change_sentence(checks.change)))
    findings += [("check", f.text) for f in check.findings if f.kind == "praise"][:1]
    findings += [("arrow_right", f.text) for f in check.findings if f.kind == "step"][:1]
    return MeasuredView(rows=rows, findings=tuple(f for f in findings if f[1]))


def picture_words(study: Study, checks: Checks, index: int) -> str:
    """What stands in place of the picture, and what a screen reader says of it."""
    if checks.pictures[index] is not None:
        return sheet_title(index)
    if study.sheets[index] is None:
        return translate("worksheet", "No picture yet")
    if checks.running(index):
        return translate("worksheet", "Looking at the picture")
    return translate("worksheet", "The picture has not been looked at yet")


def _why_none(study: Study, checks: Checks, index: int) -> str:
    if study.sheets[index] is None:
        return waiting_sentence((), has_sheet=False)
    if checks.failure(index):
        return checks.failure(index)
    if study.photo is None:
        return translate(
            "worksheet", "Open the photo of the sky first: the sheet is compared with it."
        )
    if checks.running(index):
        return translate("worksheet", "The sheet is being looked at.")
    return translate("worksheet", "The sheet has not been looked at yet: see the Sheets page.")
