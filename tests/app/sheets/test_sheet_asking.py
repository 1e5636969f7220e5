"""What the Sheets page says of a sheet that cannot be judged yet, and what it leaves out."""

from __future__ import annotations

from dataclasses import replace

import pytest
from sheet_checks import sheet_check

from app.sheets.asking import findings_view, strip_view
from app.sheets.findings import FindingsPanel
from core.sheet.result import Change, ChangeRow, Finding, Notice
from core.study import Study

LOST = Notice("corners not found", "The painted rectangle could not be found.")
OTHER = Notice("other sky", "This does not look like the same sky: is it the right picture?")
TAPE = Notice("tape", "The tape seems to be on still.")
PHONE = Notice("phone", "A phone photo does not show small differences.")


class Told:
    """As much of a checker as the findings ask for."""

    def __init__(self, *checks, change=None) -> None:
        self.checks = (*checks, None, None)[:2]
        self.change = change

    def is_open(self, index: int) -> bool:
        return True


def texts(view) -> list[str]:
    return [sentence.text for sentence in view.sentences]


def test_a_painting_not_found_is_asked_about_once_and_nothing_is_told() -> None:
    check = replace(sheet_check(), notices=(LOST, OTHER, TAPE, PHONE))
    strip = strip_view(check)
    assert strip.text == LOST.text
    view = findings_view(Study(), Told(check), "0")
    assert texts(view) == ["Nothing is told of this sheet until its corners are set.", TAPE.text]
    assert view.scores == ()


def test_another_sky_is_no_question_while_the_corners_are_being_set() -> None:
    check = replace(sheet_check(), notices=(LOST, OTHER))
    assert strip_view(check, buttons_for_corners=False) is None
    found = replace(sheet_check(), notices=(OTHER,))
    assert strip_view(found, buttons_for_corners=False).text == OTHER.text


def test_a_sheet_upside_down_waits_until_it_is_turned() -> None:
    check = replace(sheet_check(), better_turn=2, notices=(Notice("turn", "Upside down?"),))
    view = findings_view(Study(), Told(check), "0")
    assert texts(view) == ["Nothing is told of this sheet until it is upright."]


ROW = ChangeRow("value", "A", "matches", "matches", "stayed")


@pytest.mark.parametrize("compared", [True, False])
def test_the_change_is_offered_only_where_there_is_one(qtbot, compared) -> None:
    same = Finding("note", "sky", (), "The second sheet measures as the first did.")
    change = Change((ROW,) * 3, None, None, (same,)) if compared else None
    panel = FindingsPanel()
    qtbot.addWidget(panel)
    told = Told(sheet_check(), sheet_check(), change=change)
    panel.set_view(findings_view(Study(), told, "change"))
    panel.show()
    segment = panel.tabs._segments["change"]
    assert segment.isVisible() == compared
    assert panel.tabs.current == ("change" if compared else "1")
    # Nothing changed: no headings over an empty table.
    assert not panel.table.isVisible()
