"""Which paint of a plan has which pattern on a black-and-white card, and the key that says so."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QRectF

from app.cards.page import Page
from app.cards.paper import MM
from app.cards.write import NOTE, put_line
from app.drawing.cards.patterns import PATTERNS, Pattern, PatternBoxView, paint_pattern_box
from app.drawing.cards.text import Run, line_height, line_width
from core.paint.box.names import paint_name
from core.paint.planned import MixPlan

_BOX, _HIGH, _CLEAR, _BETWEEN = 7.0 * MM, 3.6 * MM, 1.6 * MM, 5.0 * MM
_LINE: Final = 5.4 * MM


def patterns_of(plan: MixPlan) -> dict[str, Pattern]:
    """One pattern for each paint the mixes use, in the order of the bands.

    With more paints than there are patterns none has one: every part is white, with its count.
    """
    used: list[str] = []
    for band in plan.bands:
        if band.classroom is not None:
            used += [key for key, _ in band.classroom.mix.parts if key not in used]
    if len(used) > len(PATTERNS):
        return dict.fromkeys(used, "white")
    return dict(zip(used, PATTERNS, strict=False))


def _entries(plan: MixPlan) -> list[tuple[Pattern, str, float]]:
    """Pattern, name and width of each entry of the key; none where the patterns tell nothing."""
    patterns = patterns_of(plan)
    if len(set(patterns.values())) < len(patterns):
        return []
    found = []
    for key, pattern in patterns.items():
        name = paint_name(plan.box.paint(key))
        found.append((pattern, name, _BOX + _CLEAR + line_width((Run(name),), NOTE) + _BETWEEN))
    return found


def key_height(plan: MixPlan, width: float) -> float:
    """Height of the key at a width; 0 without one."""
    lines, x = 0, 0.0
    for _, _, wide in _entries(plan):
        if not lines or x + wide - _BETWEEN > width:
            lines, x = lines + 1, 0.0
        x += wide
    return lines * _LINE


def put_key(page: Page, plan: MixPlan, left: float, top: float, width: float) -> float:
    """The patterns, each with its paint's name; gives the lower end."""
    x, y = left, top
    for pattern, name, wide in _entries(plan):
        if x > left and x + wide - _BETWEEN > left + width:
            x, y = left, y + _LINE
        middle = y + _LINE / 2
        box = QRectF(x, middle - _HIGH / 2, _BOX, _HIGH)
        page.put(box, paint_pattern_box, PatternBoxView(pattern))
        put_line(page, x + _BOX + _CLEAR, middle - line_height(NOTE) / 2, name, NOTE)
        x += wide
    return top + key_height(plan, width)
