"""Headings, names and the foot of every card."""

from __future__ import annotations

from core.i18n import translate
from core.study import Study


def plan_title(study: Study) -> str:
    """The heading of the plan card."""
    return translate("cards", "Plan: {title}").format(title=study.title)


def worksheet_title(study: Study) -> str:
    """The heading of the worksheet."""
    if not study.title:
        return translate("cards", "Worksheet")
    return translate("cards", "Worksheet: {title}").format(title=study.title)


def findings_title(study: Study) -> str:
    """The heading of the findings page."""
    return translate("cards", "Findings: {title}").format(title=study.title)


def class_text(code: str) -> str:
    """ "Class 7b"."""
    return translate("cards", "Class {code}").format(code=code)


def student_text(code: str) -> str:
    """ "Student 7b 14": a code, never a name."""
    return translate("cards", "Student {code}").format(code=code)


def continued(title: str) -> str:
    """The heading of a further page."""
    return translate("cards", "{title} (continued)").format(title=title)


def page_text(number: int, total: int) -> str:
    """ "page 2 of 3"."""
    return translate("cards", "page {number} of {total}").format(number=number, total=total)
