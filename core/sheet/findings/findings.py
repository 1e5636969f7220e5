"""At most five plain sentences: praise first where it is earned, then the most useful steps."""

from __future__ import annotations

from dataclasses import replace

from core.i18n import translate
from core.sheet.findings.advice import Advice
from core.sheet.findings.advice_colour import colour_steps
from core.sheet.findings.advice_paint import paint_steps
from core.sheet.findings.advice_second import second_steps
from core.sheet.findings.advice_washes import few_washes, missing_step
from core.sheet.findings.facts import Facts, facts_of
from core.sheet.findings.planned import Planned
from core.sheet.findings.praise import all_is_well, praise_of
from core.sheet.findings.strength import hardly_shows
from core.sheet.result import Finding, SheetCheck

MOST = 5
"""Findings in all."""

BLOCKING = ("corners not found", "turn")
"""Notices that make everything measured meaningless until they are seen to."""

CAUSES = ("tape", "dark", "over-exposed")
"""Notices that may tell why a painting was not found."""

_FEW_STEPS = 2
_NEAR_ENOUGH = 0.7, 1.45  # times the paint, of which nothing is said where every band matches


def findings_of(facts: Facts) -> tuple[Finding, ...]:
    """The findings of a sheet.

    A strength first, then one thing at a time (the same way up as in a lesson): every band that is
    off is spoken of once, with one cure, the widest gap first. Whether it is the right picture is
    asked beside the findings, never in their place.
    """
    for notice in facts.notices:
        if notice.key in BLOCKING:
            return (Finding("note", "sky", (), notice.text),)
    strange = tuple(
        Finding("note", "sky", (), notice.text)
        for notice in facts.notices
        if notice.key == "other sky"
    )
    few = few_washes(facts)
    if few:
        return (*strange, *few)[:MOST]
    steps = _steps(facts, MOST - 1 - len(strange))
    praise = praise_of(facts, second=len(steps) + len(strange) <= _FEW_STEPS)
    found = (*strange, *praise, *steps)
    if not steps and not praise:
        text = translate("sheet", "Nothing on this sheet can be told for certain.")
        return (*strange, Finding("note", "sky", (), text))
    if not steps and not all_is_well(facts):
        text = translate("sheet", "Nothing else stands out.")
        return (*found, Finding("note", "sky", (), text))
    if not steps:
        return (*found, *(Finding("note", "value", (), text) for text in _hardly_seen(facts)))
    return found[:MOST]


def _hardly_seen(facts: Facts) -> tuple[str, ...]:
    """Of a sheet that matches: what a picture of so light a sky hardly shows of its strength."""
    if hardly_shows(facts.bands):
        text = translate(
            "sheet",
            "The photo's sky is nearly white: whether the washes have a little too much paint or "
            "too little, a picture hardly shows.",
        )
        return (text,)
    if not facts.strength.told or _NEAR_ENOUGH[0] < facts.strength.share < _NEAR_ENOUGH[1]:
        return ()
    if facts.strength.share < 1:
        text = translate(
            "sheet", "If anything, all of it is a little pale, but a picture hardly shows that."
        )
    else:
        text = translate(
            "sheet", "If anything, all of it is a little strong, but a picture hardly shows that."
        )
    return (text,)


def _steps(facts: Facts, room: int) -> list[Finding]:
    """The steps, weightiest first: all those about colour, and of the others what room is left."""
    colours = colour_steps(facts, room)
    others = [*missing_step(facts), *second_steps(facts), *paint_steps(facts)]
    kept = _chosen([*colours, *others])
    while len(kept) > room:
        spare = [step for step in kept if step not in colours]
        kept.remove(spare[-1] if spare else kept[-1])
    return [step.finding for step in kept]


def _chosen(steps: list[Advice]) -> list[Advice]:
    """The weightiest steps, no two about the same thing."""
    kept: list[Advice] = []
    for step in sorted(steps, key=lambda step: -step.weight):
        if not any(set(step.covers) & set(other.covers) for other in kept):
            kept.append(step)
    return kept


def in_plan_terms(check: SheetCheck, planned: Planned | None) -> SheetCheck:
    """The check with its findings said anew: cures name the planned mixes, lines are told in the
    paper's lengths; without a plan as they are said of any sheet."""
    return replace(check, findings=findings_of(facts_of(check, planned)))
