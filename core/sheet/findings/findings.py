"""At most five plain sentences: praise first where it is earned, then the most useful steps."""

from __future__ import annotations

from core.i18n import translate
from core.sheet.findings.advice import Advice
from core.sheet.findings.advice_colour import colour_steps
from core.sheet.findings.advice_paint import paint_steps
from core.sheet.findings.facts import Facts
from core.sheet.findings.praise import all_is_well, praise_of
from core.sheet.result import Finding

MOST = 5
"""Findings in all."""

BLOCKING = ("corners not found", "turn")
"""Notices that make everything measured meaningless until they are seen to."""

CAUSES = ("tape", "dark", "over-exposed")
"""Notices that may tell why a painting was not found."""

_FEW_STEPS = 2


def findings_of(facts: Facts) -> tuple[Finding, ...]:
    """The findings of a sheet.

    Steps are ordered by how far off they are, in tolerances; each quality has one at most
    (the same way up as in a lesson: a strength, then one thing at a time).
    """
    for notice in facts.notices:
        if notice.key in BLOCKING:
            return (Finding("note", "sky", (), notice.text),)
    strange = [notice for notice in facts.notices if notice.key == "other sky"]
    steps = [step.finding for step in _chosen([*colour_steps(facts), *paint_steps(facts)])]
    if strange:
        # Bands of two skies are hardly worth comparing: the question first, then the widest gaps.
        return (Finding("note", "sky", (), strange[0].text), *steps[:_FEW_STEPS])
    praise = praise_of(facts, second=len(steps) <= _FEW_STEPS)
    if not steps and not praise:
        text = translate("sheet", "Nothing on this sheet can be told for certain.")
        return (Finding("note", "sky", (), text),)
    if not steps and not all_is_well(facts):
        text = translate("sheet", "Nothing else stands out.")
        return (*praise, Finding("note", "sky", (), text))
    return (*praise, *steps)[:MOST]


def _chosen(steps: list[Advice]) -> list[Advice]:
    """The weightiest steps, no two about the same quality."""
    kept: list[Advice] = []
    for step in sorted(steps, key=lambda step: -step.weight):
        if not any(set(step.covers) & set(other.covers) for other in kept):
            kept.append(step)
    return kept
