"""What `gradewash check` prints: a table and sentences that can be read aloud, or JSON."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from core.cli.report import Report, report_as_json
from core.i18n import translate
from core.photo import Photo
from core.quality import QUALITIES
from core.sheet.result import (
    BandCheck,
    Change,
    Difference,
    Finding,
    LineCheck,
    Notice,
    SheetCheck,
)
from core.sheet.scores import nearest_meaning
from core.sheet.words import line_remark, outcome_word, quality_word, short_remark


@dataclass(frozen=True)
class CheckReport:
    """What was checked: the sky as it was read, each sheet's photo and check, the change."""

    sky: Report
    sheets: tuple[tuple[Photo, SheetCheck], ...]
    change: Change | None


def checks_as_json(report: CheckReport) -> dict[str, Any]:
    """The checks as JSON holds them; the README documents the form."""
    return {
        "reference": report_as_json(report.sky),
        "sheets": [_sheet_as_json(photo, check) for photo, check in report.sheets],
        "change": None if report.change is None else _change_as_json(report.change),
    }


def _sheet_as_json(photo: Photo, check: SheetCheck) -> dict[str, Any]:
    light = check.light
    lines = {line.letter: line for line in check.lines}
    return {
        "file": check.name,
        "corners": [
            [round(x * photo.width, 1), round(y * photo.height, 1)] for x, y in check.corners
        ],
        "corner_confidence": round(check.corner_confidence, 3),
        "turned": check.turned,
        "better_turn": check.better_turn,
        "notices": _notices_as_json(
            tuple(notice for notice in check.notices if notice not in light.notices)
        ),
        "light": {
            "residual": None if light.residual is None else round(light.residual, 4),
            "sides_compared": light.sides_compared,
            "notices": _notices_as_json(light.notices),
        },
        "bands": [_band_as_json(band, lines.get(band.letter)) for band in check.band_checks],
        "hard_edges": [
            {
                "at": round(edge.at, 4),
                "from": round(edge.start, 3),
                "to": round(edge.end, 3),
                "full": edge.full,
                "width_pct": round(edge.width_pct, 2),
                "bands": list(edge.letters),
                "cause": edge.cause,
            }
            for edge in check.hard_edges
        ],
        "blooms": [
            {
                "x": round(bloom.x, 3),
                "y": round(bloom.y, 3),
                "radius": round(bloom.radius, 3),
                "band": bloom.letter,
            }
            for bloom in check.blooms
        ],
        "pale_corners": [
            {"corner": pale.corner, "share": round(pale.share, 2)} for pale in check.pale_corners
        ],
        "scores": {quality: getattr(check.scores, quality) for quality in QUALITIES},
        "findings": [_finding_as_json(finding) for finding in check.findings],
    }


def _notices_as_json(notices: tuple[Notice, ...]) -> list[dict[str, str]]:
    return [{"key": notice.key, "text": notice.text} for notice in notices]


def _band_as_json(band: BandCheck, line: LineCheck | None) -> dict[str, Any]:
    whole = _difference_as_json(band.whole) or dict.fromkeys(_DIFFERENCE)
    shift = None if line is None or line.shift_pct is None else round(line.shift_pct, 1) + 0.0
    return {
        "letter": band.letter,
        "top": round(band.top, 4),
        "bottom": round(band.bottom, 4),
        "line_shift_pct": shift,
        **whole,
        "left": _difference_as_json(band.left),
        "centre": _difference_as_json(band.centre),
        "right": _difference_as_json(band.right),
        "verdicts": {"hue": band.hue, "value": band.value, "intensity": band.intensity},
    }


_DIFFERENCE = ("hue_steps", "value_steps", "chroma_steps", "delta_E_2000")


def _difference_as_json(difference: Difference | None) -> dict[str, Any] | None:
    if difference is None:
        return None
    numbers = {name: getattr(difference, name) for name in _DIFFERENCE}
    return {name: None if v is None else round(v, 2) + 0.0 for name, v in numbers.items()}


def _finding_as_json(finding: Finding) -> dict[str, Any]:
    return {
        "kind": finding.kind,
        "about": finding.about,
        "bands": list(finding.letters),
        "text": finding.text,
    }


def _change_as_json(change: Change) -> dict[str, Any]:
    return {
        "intended": change.intended,
        "worked": change.worked,
        "rows": [
            {
                "about": row.about,
                "band": row.letter,
                "before": row.before,
                "after": row.after,
                "outcome": row.outcome,
            }
            for row in change.rows
        ],
        "findings": [_finding_as_json(finding) for finding in change.findings],
    }


def checks_in_words(report: CheckReport, *, scores: bool) -> str:
    """The checks as plain text.

    Parameters
    ----------
    scores : bool
        Print the scores too; a student's own should come first.
    """
    parts = [*report.sky.notices]
    for number, (_, check) in enumerate(report.sheets, 1):
        if parts:
            parts.append("")
        head = translate("command line", "Sheet {number}, {name}")
        parts.append(head.format(number=number, name=check.name))
        parts += [f"! {notice.text}" for notice in check.notices if notice.key != "phone"]
        if not any(finding.kind == "note" for finding in check.findings):
            parts += ["", *_table(_band_rows(check))]
        parts += ["", *_findings(check.findings)]
        if scores:
            parts += ["", *_scores(check)]
    if report.change is not None:
        parts += ["", translate("command line", "Sheet 2 against sheet 1"), ""]
        parts += [*_table(_change_rows(report.change)), "", *_findings(report.change.findings)]
    said_once = dict.fromkeys(
        notice.text for _, check in report.sheets for notice in check.notices
        if notice.key == "phone"
    )  # fmt: skip
    for text in said_once:
        parts += ["", text]
    return "\n".join(parts)


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
    return rows


def _findings(findings: tuple[Finding, ...]) -> list[str]:
    marks = {"praise": "+", "step": ">", "note": "-"}
    return [f"{marks[finding.kind]} {finding.text}" for finding in findings]


def _scores(check: SheetCheck) -> list[str]:
    lines = [translate("command line", "Scores, a second opinion (10 is best):")]
    for quality in QUALITIES:
        score = getattr(check.scores, quality)
        name = quality_word(quality)
        name = name[0].upper() + name[1:]
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
    for row in change.rows:
        rows.append(
            (
                row.letter or "",
                quality_word(row.about),
                row.before,
                row.after,
                outcome_word(row.outcome),
            )
        )
    return rows


def _table(rows: list[tuple[str, ...]]) -> list[str]:
    widths = [max(len(cell) for cell in column) for column in zip(*rows, strict=True)]
    return [
        "  ".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)).rstrip()
        for row in rows
    ]
