"""Steps about placement, hard edges, blooms, corners and sides: what was seen, what to try.

Causes and cures are common practice: paint laid beside dried paint leaves a hard edge, a stiff or
dry brush breaks off, wetter paint runs back into paint that is drying.
"""

from __future__ import annotations

from core.i18n import translate
from core.reading.percent import percent_text
from core.reading.units import length_text
from core.sheet.findings.advice import Advice
from core.sheet.findings.compare import uneven_sides
from core.sheet.findings.facts import Facts
from core.sheet.findings.words import corner_word
from core.sheet.result import BandCheck, Finding, HardEdge, LineCheck
from core.words import family_name
from core.words.lists import listed

_PLACEMENT_WEIGHT = 1.05
_MOST_GAP = 6.0
_FULL, _INSIDE, _PARTIAL, _BLOOM, _CORNER, _SIDES = 3.0, 2.6, 2.2, 2.4, 1.6, 1.5


def paint_steps(facts: Facts) -> list[Advice]:
    """Every step about where and how the paint was laid."""
    return [
        *_placement(facts),
        *_edges(facts),
        *_blooms(facts),
        *_corners(facts),
        *_sides(facts),
    ]


def _placement(facts: Facts) -> list[Advice]:
    off = facts.lines_off
    if not off:
        return []
    worst = max(off, key=lambda line: abs(line.shift_pct or 0.0))
    high = (worst.shift_pct or 0.0) < 0
    alike = [line for line in off if ((line.shift_pct or 0.0) < 0) == high]
    weight = min(worst.gap or 0.0, _MOST_GAP) * _PLACEMENT_WEIGHT
    letters = tuple(line.letter for line in alike)
    if len(alike) > 1:
        text = _several_lines(facts, alike, high)
    else:
        text = _one_line(facts, worst, high, _band_of(facts, worst.letter))
    others = [line for line in off if line not in alike]
    if others:
        text = f"{text} {_seen_lines(facts, others, not high)}"
        letters = (*letters, *(line.letter for line in others))
    return [Advice(weight, ("placement",), Finding("step", "placement", letters, text))]


def _several_lines(facts: Facts, lines: list[LineCheck], high: bool) -> str:
    cure = translate("sheet", "Mark the lines on the tape before you wet the sheet.")
    return f"{_seen_lines(facts, lines, high)} {cure}"


def _seen_lines(facts: Facts, lines: list[LineCheck], high: bool) -> str:
    letters = listed([line.letter for line in lines])
    if len(lines) == 1:
        shift = _shift(facts, lines[0])
        seen = (
            translate("sheet", "Band {letter} ends {shift} too high.")
            if high
            else translate("sheet", "Band {letter} ends {shift} too low.")
        )
        return seen.format(letter=letters, shift=shift)
    if high:
        seen = translate("sheet", "Bands {letters} end too high, by {shifts}.")
    else:
        seen = translate("sheet", "Bands {letters} end too low, by {shifts}.")
    return seen.format(letters=letters, shifts=_shifts(facts, lines))


def _shift(facts: Facts, line: LineCheck) -> str:
    """How far a line is off: "6%", and "6% (1.1 cm)" where the size of the paper is known."""
    pct = round(abs(line.shift_pct or 0.0))  # the length is that of the per cent told
    text = percent_text(pct)
    if facts.height_mm is None or facts.planned is None:
        return text
    length = length_text(pct / 100 * facts.height_mm, facts.planned.units)
    return translate("sheet", "{share} ({length})").format(share=text, length=length)


def _shifts(facts: Facts, lines: list[LineCheck]) -> str:
    """By how much each line is off: "6% and 9%", and "6% each" where they agree."""
    shifts = [_shift(facts, line) for line in lines]
    if len(set(shifts)) == 1:
        return translate("sheet", "{shift} each").format(shift=shifts[0])
    return listed(shifts)


def _one_line(facts: Facts, line: LineCheck, high: bool, band: BandCheck) -> str:
    colour = band.reference.colour
    family = None if colour is None else colour.hue.family
    if high:
        if family is None:
            cure = translate(
                "sheet", "Reach further down with this wash while the sheet still shines."
            )
        else:
            cure = translate(
                "sheet", "Reach further down with the {hue} while the sheet still shines."
            )
    else:
        if family is None:
            cure = translate("sheet", "Stop this wash earlier, and bring the next one up to it.")
        else:
            cure = translate("sheet", "Stop the {hue} earlier, and bring the next wash up to it.")
    if family is not None:
        cure = cure.format(hue=family_name(family))
    return f"{_seen_lines(facts, [line], high)} {cure}"


def _band_of(facts: Facts, letter: str) -> BandCheck:
    return next(band for band in facts.bands if band.letter == letter)


def _edges(facts: Facts) -> list[Advice]:
    steps = []
    full = [edge for edge in facts.edges if edge.full and len(edge.letters) == 2]
    inside = [edge for edge in facts.edges if len(edge.letters) == 1]
    partial = [edge for edge in facts.edges if not edge.full and len(edge.letters) == 2]
    if full:
        text = _full_text(full)
        steps.append(_edge_step(_FULL + 0.3 * (len(full) - 1), full, text))
    if inside:
        edge = max(inside, key=lambda edge: edge.end - edge.start)
        text = translate(
            "sheet",
            "A hard edge runs through band {letter}: the wash probably dried there while you "
            "mixed more. Mix more than you think you need.",
        ).format(letter=edge.letters[0])
        steps.append(_edge_step(_INSIDE, [edge], text))
    if partial:
        edge = max(partial, key=lambda edge: edge.end - edge.start)
        steps.append(_edge_step(_PARTIAL, [edge], _partial_text(edge)))
    return steps


def _edge_step(weight: float, edges: list[HardEdge], text: str) -> Advice:
    letters = tuple(dict.fromkeys(letter for edge in edges for letter in edge.letters))
    return Advice(weight, ("edges",), Finding("step", "edges", letters, text))


def _full_text(edges: list[HardEdge]) -> str:
    pairs = [
        translate("sheet", "{above} and {below}").format(
            above=edge.letters[0], below=edge.letters[1]
        )
        for edge in edges
    ]
    if len(edges) == 1:
        return translate(
            "sheet",
            "A hard edge runs right across between bands {pair}: the first wash had probably "
            "dried. Lay the next one while the sheet still shines.",
        ).format(pair=pairs[0])
    return translate(
        "sheet",
        "Hard edges run right across in {n} places: each wash had probably dried before the "
        "next. Lay the next one while the sheet still shines.",
    ).format(n=len(edges))


def _partial_text(edge: HardEdge) -> str:
    middle = (edge.start + edge.end) / 2
    if middle < 0.38:
        text = translate(
            "sheet",
            "On the left a hard edge runs between bands {above} and {below}: probably a stiff or "
            "dry brush. Take a soft, well-filled one.",
        )
    elif middle > 0.62:
        text = translate(
            "sheet",
            "On the right a hard edge runs between bands {above} and {below}: probably a stiff "
            "or dry brush. Take a soft, well-filled one.",
        )
    else:
        text = translate(
            "sheet",
            "In the middle a hard edge runs between bands {above} and {below}: probably a stiff "
            "or dry brush. Take a soft, well-filled one.",
        )
    return text.format(above=edge.letters[0], below=edge.letters[1])


def _blooms(facts: Facts) -> list[Advice]:
    if not facts.blooms:
        return []
    letters = tuple(sorted({bloom.letter for bloom in facts.blooms}))
    cure = translate(
        "sheet",
        "wetter paint ran into paint that was drying. Once the shine is gone, leave the sheet "
        "until it is dry.",
    )
    if len(facts.blooms) == 1:
        seen = translate("sheet", "There is a bloom in band {letters}: {cure}")
    elif len(letters) == 1:
        seen = translate("sheet", "There are {n} blooms in band {letters}: {cure}")
    else:
        seen = translate("sheet", "There are {n} blooms, in bands {letters}: {cure}")
    text = seen.format(n=len(facts.blooms), letters=listed(list(letters)), cure=cure)
    weight = _BLOOM + 0.2 * (len(facts.blooms) - 1)
    return [Advice(weight, ("blooms",), Finding("step", "blooms", letters, text))]


def _corners(facts: Facts) -> list[Advice]:
    if not facts.corners:
        return []
    names = listed([corner_word(pale.corner) for pale in facts.corners])
    one = translate("sheet", "The {corners} corner is paler than the rest.")
    more = translate("sheet", "The {corners} corners are paler than the rest.")
    seen = (one if len(facts.corners) == 1 else more).format(corners=names)
    cure = translate("sheet", "Carry the wash out over the tape, right into the corners.")
    return [Advice(_CORNER, ("corners",), Finding("step", "corners", (), f"{seen} {cure}"))]


def _sides(facts: Facts) -> list[Advice]:
    uneven = facts.uneven
    if not uneven:
        return []
    band = max(uneven, key=_tilt)
    left = band.left.value_steps if band.left is not None else 0.0
    right = band.right.value_steps if band.right is not None else 0.0
    side = uneven_sides(band)
    lighter = left > right if side == "left" else right > left
    if side == "left":
        lighter_text = translate("sheet", "On the left band {letter} is lighter than the photo.")
        darker_text = translate("sheet", "On the left band {letter} is darker than the photo.")
    else:
        lighter_text = translate("sheet", "On the right band {letter} is lighter than the photo.")
        darker_text = translate("sheet", "On the right band {letter} is darker than the photo.")
    seen = lighter_text if lighter else darker_text
    cure = translate("sheet", "Draw each stroke across the whole width with a full brush.")
    text = f"{seen.format(letter=band.letter)} {cure}"
    return [Advice(_SIDES, ("sides",), Finding("step", "value", (band.letter,), text))]


def _tilt(band: BandCheck) -> float:
    if band.left is None or band.right is None:
        return 0.0
    return abs(band.left.value_steps - band.right.value_steps)
