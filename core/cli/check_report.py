"""What `gradewash check` prints: a table and sentences that can be read aloud."""

from __future__ import annotations

from dataclasses import dataclass

from core.cli.layout import table
from core.cli.report import Report
from core.i18n import translate
from core.photo import Photo
from core.reading.quality import QUALITIES
from core.sheet.findings.change import change_word
from core.sheet.findings.findings import CAUSES
from core.sheet.findings.scores import nearest_meaning
from core.sheet.findings.words import line_remark, quality_word, short_remark
from core.sheet.result import (
    Change,
    Finding,
    SheetCheck,
)
from core.words.lists import sentence_case


@dataclass(frozen=True)
class CheckReport:
    """What was checked: the sky as it was read, each sheet's photo and check, the change."""

    sky: Report
    sheets: tuple[tuple[Photo, SheetCheck], ...]
    change: Change | None


def checks_in_words(report: CheckReport, *, scores: bool, width: int | None = None) -> str:
    """The checks as plain text.

    Parameters
    ----------
    scores : bool
        Print the scores too; a student's own should come first.
    width : int, optional
        What a table may measure.
    """
    parts = [*report.sky.notices]
    for number, (_, check) in enumerate(report.sheets, 1):
        if parts:
            parts.append("")
        head = translate("command line", "Sheet {number}, {name}")
        parts.append(head.format(number=number, name=check.name))
        parts += _sheet(check, scores=scores, width=width)
    if report.change is not None:
        parts += _change(report.change, width)
    phone = {
        notice.text
        for _, check in report.sheets
        for notice in check.notices
        if notice.key == "phone" and check.readable
    }
    for text in phone:
        parts += ["", text]
    return "\n".join(parts)


def _sheet(check: SheetCheck, *, scores: bool, width: int | None) -> list[str]:
    said = {finding.text for finding in check.findings}
    notices = [
        f"! {notice.text}"
        for notice in check.notices
        if notice.text not in said and (notice.key in CAUSES or check.readable)
        if notice.key != "phone"
    ]
    if not check.readable:
        return [*notices, *_findings(check.findings)]
    # A first try can be so far off that it looks like another sky: its readings stay in sight.
    parts = [*notices, "", *table(_band_rows(check), width), ""]
    if check.provisional:
        parts.append(translate("command line", "Provisional, until the corners are sure:"))
    parts += _findings(check.findings)
    if scores:
        parts += ["", *_scores(check)]
    return parts


def _change(change: Change, width: int | None) -> list[str]:
    parts = ["", translate("command line", "Sheet 2 against sheet 1"), ""]
    if change.telling:
        parts += [*table(_change_rows(change), width), ""]
    parts += _findings(change.findings)
    if not change.telling:
        return parts
    if change.unchanged == 1:
        parts.append(translate("command line", "- One thing reads the same on both sheets."))
    elif change.unchanged:
        text = translate("command line", "- {number} things read the same on both sheets.")
        parts.append(text.format(number=change.unchanged))
    return parts


def _band_rows(check: SheetCheck) -> list[tuple[str, ...]]:
    lines = {line.letter: line for line in check.lines}
    rows: list[tuple[str, ...]] = [
        (
            translate("command line", "Band"),
            translate("command line", "Hue"),
            translate("command line", "Value"),
            translate("command line", "Intensity"),
            translate("command line", "Lower line"),
        )
    ]
    for band in check.band_checks:
        line = lines.get(band.letter)
        rows.append(
            (
                band.letter,
                *(short_remark(band, quality) for quality in ("hue", "value", "intensity")),
                "" if line is None else line_remark(line),
            )
        )
        if band.second is not None and band.second.remark:
            rows.append(("", band.second.remark, "", "", ""))
    return rows


def _findings(findings: tuple[Finding, ...]) -> list[str]:
    marks = {"praise": "+", "step": ">", "note": "-"}
    return [f"{marks[finding.kind]} {finding.text}" for finding in findings]


def _scores(check: SheetCheck) -> list[str]:
    lines = [translate("command line", "Scores, a second opinion (10 is best):")]
    for quality in QUALITIES:
        score = getattr(check.scores, quality)
        name = sentence_case(quality_word(quality))
        if score is None:
            lines.append(
                translate("command line", "  {quality}: cannot be judged").format(quality=name)
            )
            continue
        lines.append(
            translate("command line", "  {quality}: {score:g}, {meaning}").format(
                quality=name, score=score, meaning=nearest_meaning(quality, score)
            )
        )
    return lines


def _change_rows(change: Change) -> list[tuple[str, ...]]:
    rows: list[tuple[str, ...]] = [
        (
            translate("command line", "Band"),
            translate("command line", "What"),
            translate("command line", "Sheet 1"),
            translate("command line", "Sheet 2"),
            translate("command line", "Change"),
        )
    ]
    for row in change.telling:
        rows.append(
            (
                row.letter or "",
                quality_word(row.about),
                row.before,
                row.after,
                change_word(row),
            )
        )
    return rows
