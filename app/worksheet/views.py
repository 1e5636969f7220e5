"""From study and checks to what the halves show: what may be seen, and in which words."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from app.drawing.pyramid import Pyramid
from app.drawing.sheets.views import aspect_of, sky_on_board
from app.services.photo_jobs import OpenedPhoto
from app.worksheet.measured import MeasuredView
from app.worksheet.pair import Shown
from core.i18n import translate
from core.reading.quality import QUALITIES, Quality
from core.sheet.findings.words import quality_word
from core.sheet.result import Change, SheetCheck
from core.study import Study
from core.words.lists import listed, sentence_case
from core.worksheet.compare import (
    MeasuredLine,
    change_sentence,
    directions,
    measured_lines,
    nothing_to_compare,
    shown_score,
)
from core.worksheet.words import sheet_title, waiting_sentence


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
    lines = measured_lines(page.scores, check)
    praise = next((f for f in check.findings if f.kind == "praise"), None)
    # Praise of whole qualities names what matches everywhere: said once is enough.
    praised = praise is not None and not praise.letters and praise.about in (*QUALITIES, "sky")
    findings = []
    if index == 1:
        findings.append(("pencil", change_sentence(checks.change)))
    if praise is not None:
        findings.append(("check", praise.text))
    findings += [("arrow_right", f.text) for f in check.findings if f.kind == "step"][:1]
    return MeasuredView(
        directions=directions(lines),
        rows=_rows([line for line in lines if not (line.whole and praised)]),
        findings=tuple(f for f in findings if f[1]),
    )


def _rows(lines: Sequence[MeasuredLine]) -> tuple[tuple[str, str], ...]:
    """What holds of each quality; those of which the same is true share a row."""
    grouped: dict[str, list[Quality]] = {}
    for line in lines:
        if line.sentence:
            grouped.setdefault(line.sentence, []).append(line.quality)
    return tuple(
        (sentence_case(listed([quality_word(quality) for quality in qualities])), sentence)
        for sentence, qualities in grouped.items()
    )


def pair_of(
    study: Study, checks: Checks, opened: OpenedPhoto | None, index: int
) -> tuple[Shown, Shown, float]:
    """The sky of the photo cut to a sheet's shape, the painting, and that shape."""
    check = next((one for one in checks.checks if one is not None), None)
    horizon = study.bands.horizon if study.bands else 1.0
    sky_aspect = 3.0  # low, while there is nothing to look at
    if opened is not None:
        sky_aspect = opened.photo.width / (horizon * opened.photo.height)
    aspect = aspect_of(check, sky_aspect)
    if opened is None:
        sky = Shown(words=translate("worksheet", "No photo yet"))
    else:
        cut = sky_on_board(opened.picture, sky_aspect, horizon, aspect)
        sky = Shown(cut.picture, cut.crop, translate("worksheet", "Photo"))
    sheet = Shown(checks.pictures[index], words=picture_words(study, checks, index))
    return sky, sheet, aspect


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
