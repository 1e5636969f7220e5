"""What the Sheets page says of a sheet: in its empty place, over its bands, as findings."""

from __future__ import annotations

from app.services.checker import Checker
from app.sheets.change import change_lines
from app.sheets.findings import CHANGE, FindingsView
from app.sheets.place import PlaceView
from app.sheets.scores import score_cells
from app.sheets.sentences import Sentence
from app.widgets.strip import StripView
from core.i18n import translate
from core.sheet.findings.findings import CAUSES, in_plan_terms
from core.sheet.findings.planned import Planned
from core.sheet.result import SheetCheck
from core.study import Study

_ABOUT_CORNERS = ("several", "whole picture", "paper edge", "corners unsure", "corners not found")
_ABOUT_LIE = ("turn", "other sky", *_ABOUT_CORNERS)
"""Notices asked about over the bands: said once, they are not repeated among the findings."""


def place_view(study: Study, checker: Checker, index: int) -> PlaceView | None:
    """What stands where a sheet would be; None where it is shown."""
    number = index + 1
    if study.sheets[index] is None:
        return _none_yet(study, index)
    if checker.checks[index] is not None:
        return None
    if checker.stopped(index):
        return PlaceView(
            translate("sheets page", "The check was stopped."),
            buttons=(("check", translate("sheets page", "Check it now")),),
        )
    if checker.failure(index):
        buttons = [("replace", translate("sheets page", "Replace it"))]
        if checker.opened(index) is not None:
            buttons.insert(0, ("corners", translate("sheets page", "Set the corners")))
        line = translate("sheets page", "Sheet {number} could not be checked.")
        return PlaceView(line.format(number=number), checker.failure(index), tuple(buttons))
    return PlaceView(translate("sheets page", "Looking at sheet {number}").format(number=number))


def _none_yet(study: Study, index: int) -> PlaceView:
    add = ("add", translate("sheets page", "Add a sheet"))
    if index == 0:
        return PlaceView(
            translate("sheets page", "No sheet yet."),
            translate("sheets page", "Add a photo or a scan of it, drop one here, or paste one."),
            (add,),
            ink=True,
        )
    first = study.sheets[0] is not None
    return PlaceView(
        translate("sheets page", "No second sheet yet."),
        translate("sheets page", "Paint the sky once more, with one thing changed."),
        (add,),
        ink=first,
    )


def strip_view(check: SheetCheck | None, *, buttons_for_corners: bool = True) -> StripView | None:
    """The question or doubt that stands over a sheet's bands, the most pressing alone.

    Parameters
    ----------
    buttons_for_corners : bool
        False where the corners are being set already.
    """
    if check is None:
        return None
    texts = {notice.key: notice.text for notice in check.notices}
    if check.better_turn is not None and "turn" in texts:
        return StripView(texts["turn"], (("accept", translate("sheets page", "Turn it")),))
    for key in _ABOUT_CORNERS:
        if key in texts and buttons_for_corners:
            buttons = [("corners", translate("sheets page", "Set the corners"))]
            if check.readable:
                buttons.append(("confirm", translate("sheets page", "They are right")))
            return StripView(texts[key], tuple(buttons))
    if "other sky" in texts and check.readable:
        return StripView(
            texts["other sky"], (("replace", translate("sheets page", "Choose another picture")),)
        )
    return None


def findings_view(
    study: Study, checker: Checker, wanted: str, planned: Planned | None = None
) -> FindingsView | None:
    """The panel's content; None where no sheet has been checked.

    Parameters
    ----------
    wanted : str
        "0", "1", "change", or empty for the newest sheet.
    planned : Planned, optional
        What the sheets were painted by: cures then name its mixes.
    """
    checks = checker.checks
    there = [index for index in (0, 1) if checks[index] is not None]
    if not there:
        return None
    tabs = tuple(str(index) for index in there)
    if checker.change is not None:
        tabs += (CHANGE,)
    chosen = wanted if wanted in tabs else str(there[-1])
    if chosen == CHANGE:
        return _change_view(study, checker, tabs)
    index = int(chosen)
    missing = study.worksheet.pages[index].scores.missing
    if not checker.is_open(index):
        return FindingsView(tabs, chosen, missing=tuple(missing), index=index)
    check = checks[index]
    assert check is not None
    if planned is not None:
        check = in_plan_terms(check, planned)
    scores = score_cells(check.scores, study.worksheet.pages[index].scores)
    if not check.readable:
        scores = ()
    return FindingsView(
        tabs,
        chosen,
        _sentences(check) if check.readable else _unreadable(check),
        index=index,
        scores=scores,
        early=bool(missing),
    )


def _unreadable(check: SheetCheck) -> tuple[Sentence, ...]:
    """Why nothing is told of a sheet yet, and what may be the cause."""
    if check.better_turn is None:
        first = translate("sheets page", "Nothing is told of this sheet until its corners are set.")
    else:
        first = translate("sheets page", "Nothing is told of this sheet until it is upright.")
    causes = [notice.text for notice in check.notices if notice.key in CAUSES]
    return (Sentence("note", first), *(Sentence("light", text) for text in causes))


def _sentences(check: SheetCheck) -> tuple[Sentence, ...]:
    asked = {notice.text for notice in check.notices if notice.key in _ABOUT_LIE}
    said = [
        Sentence(finding.kind, finding.text)
        for finding in check.findings
        if finding.text not in asked
    ]
    if check.provisional:
        text = translate("sheets page", "Provisional, until the corners are sure.")
        said.insert(0, Sentence("note", text))
    known = {sentence.text for sentence in said} | asked
    light = [Sentence("light", notice.text) for notice in check.notices if notice.text not in known]
    return (*said, *light)


def _change_view(study: Study, checker: Checker, tabs: tuple[str, ...]) -> FindingsView:
    for index in (0, 1):
        if not checker.is_open(index):
            missing = tuple(study.worksheet.pages[index].scores.missing)
            return FindingsView(tabs, CHANGE, missing=missing, index=index)
    change = checker.change
    assert change is not None
    early = any(page.scores.missing for page in study.worksheet.pages)
    return FindingsView(
        tabs,
        CHANGE,
        tuple(Sentence(finding.kind, finding.text) for finding in change.findings),
        lines=change_lines(change),
        rest=_rest(change.unchanged),
        index=1,
        early=early,
    )


def _rest(count: int) -> str:
    """What stands below the rows, about all that has none."""
    if count == 0:
        return ""
    if count == 1:
        return translate("sheets page", "One more thing stayed as it was.")
    return translate("sheets page", "{number} more things stayed as they were.").format(
        number=count
    )
