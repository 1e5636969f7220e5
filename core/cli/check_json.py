"""What `gradewash check --json` prints; the README documents the form."""

from __future__ import annotations

from typing import Any

from core.cli.check_report import CheckReport
from core.cli.report import report_as_json
from core.photo import Photo
from core.reading.quality import QUALITIES
from core.sheet.result import (
    BandCheck,
    Change,
    Difference,
    Finding,
    LineCheck,
    Notice,
    SecondCheck,
    SheetCheck,
)


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
        "provisional": check.provisional,
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
        "strength": {
            "share": round(check.strength.share, 2),
            "told": check.strength.told,
        },
        "washes": {
            "kind": check.washes.kind,
            "missing": [check.band_checks[k].letter for k in check.washes.missing],
        },
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
        "second": _second_as_json(band.second),
        "verdicts": {"hue": band.hue, "value": band.value, "intensity": band.intensity},
    }


def _second_as_json(second: SecondCheck | None) -> dict[str, Any] | None:
    if second is None:
        return None
    whole = _difference_as_json(second.whole) or dict.fromkeys(_DIFFERENCE)
    return {**whole, "verdict": second.verdict}


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
                "past": row.past,
            }
            for row in change.rows
        ],
        "findings": [_finding_as_json(finding) for finding in change.findings],
    }
