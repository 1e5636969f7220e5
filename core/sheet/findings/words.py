"""The short words of a sheet check: verdicts, remarks, sides, and what the scores mean."""

from __future__ import annotations

from typing import assert_never

from core.i18n import translate
from core.reading.percent import percent_text
from core.reading.quality import ChangeFirst, Quality
from core.reading.reading import ColourReading
from core.reading.wheel import FAMILIES
from core.sheet.measuring import Corner
from core.sheet.result import BandCheck, Difference, LineCheck
from core.words import family_name
from core.words.verdicts import verdict_word

Gaps = tuple[float | None, float | None, float | None]


def quality_word(quality: ChangeFirst) -> str:
    """A quality, or what else a sheet is looked at for, in the middle of a sentence."""
    match quality:
        case "hue":
            return translate("sheet", "hue")
        case "value":
            return translate("sheet", "value")
        case "intensity":
            return translate("sheet", "intensity")
        case "placement":
            return translate("sheet", "placement")
        case "edges":
            return translate("sheet", "hard edges")
        case "blooms":
            return translate("sheet", "blooms")
        case _:
            assert_never(quality)


def score_meaning(quality: Quality, score: int) -> str:
    """What a score of 10, 7, 4 or 1 means, in a few words.

    Raises
    ------
    ValueError
        Another score: only these four have words.
    """
    meanings = _meanings(quality)
    if score not in meanings:
        raise ValueError(f"only 10, 7, 4 and 1 have words, not {score}")
    return meanings[score]


def _meanings(quality: Quality) -> dict[int, str]:
    match quality:
        case "hue":
            return {
                10: translate("sheet", "every band is in the photo's hue"),
                7: translate("sheet", "a neighbour hue here or there"),
                4: translate("sheet", "several bands in another hue"),
                1: translate("sheet", "other hues than the photo's"),
            }
        case "value":
            return {
                10: translate("sheet", "as light and dark as the photo everywhere"),
                7: translate("sheet", "about one step lighter or darker"),
                4: translate("sheet", "about two steps lighter or darker"),
                1: translate("sheet", "light and dark are not the photo's"),
            }
        case "intensity":
            return {
                10: translate("sheet", "as bright or dull as the photo everywhere"),
                7: translate("sheet", "a little too bright or too dull"),
                4: translate("sheet", "clearly too bright or too dull"),
                1: translate("sheet", "bright and dull are not the photo's"),
            }
        case "placement":
            return {
                10: translate("sheet", "every line is where the photo has it"),
                7: translate("sheet", "the lines are a little high or low"),
                4: translate("sheet", "the lines are clearly high or low"),
                1: translate("sheet", "the bands are elsewhere"),
            }
        case _:
            assert_never(quality)


def remark_of(found: ColourReading | None, whole: Difference | None, gaps: Gaps) -> str:
    """What differs, in a few words; empty when all that can be told matches."""
    if found is None or whole is None:
        return translate("sheet", "nothing to compare")
    parts = []
    hue_gap, value_gap, intensity_gap = gaps
    if value_gap is not None and value_gap > 1:
        parts.append(_value_remark(whole.value_steps))
    if intensity_gap is not None and intensity_gap > 1:
        parts.append(_intensity_remark(whole.chroma_steps))
    if hue_gap is not None and hue_gap > 1 and whole.hue_steps is not None:
        parts.append(_hue_remark(found, whole.hue_steps))
    return translate("sheet", ", ").join(parts)


def second_remark(found: ColourReading | None, whole: Difference | None, gaps: Gaps) -> str:
    """What differs between the second colours of a band; empty when all that can be told matches.

    Parameters
    ----------
    found : ColourReading or None
        The sheet's second colour; None where its band shows one colour only.
    whole : Difference or None
    gaps : three floats or None
    """
    if found is None:
        return translate("sheet", "one colour only, the photo has two")
    remark = remark_of(found, whole, gaps)
    if not remark:
        return ""
    return translate("sheet", "second colour {remark}").format(remark=remark)


def short_remark(check: BandCheck, quality: str) -> str:
    """One quality of a band in a few words: "lighter by 2", "matches", "cannot tell"."""
    gap = getattr(check, f"{quality}_gap")
    if gap is None or check.whole is None or check.sheet.colour is None:
        return translate("sheet", "cannot tell")
    if gap <= 1:
        return translate("sheet", "matches")
    if quality == "value":
        return _value_remark(check.whole.value_steps)
    if quality == "intensity":
        return _intensity_remark(check.whole.chroma_steps)
    if check.whole.hue_steps is None:
        return translate("sheet", "cannot tell")
    return _hue_remark(check.sheet.colour, check.whole.hue_steps)


def amount_of(quality: Quality, steps: float) -> str:
    """How much lighter, darker, duller or more intense: "2 steps lighter"."""
    number = round(abs(steps))
    small = abs(steps) < (0.75 if quality == "value" else 1.5)
    if quality == "value":
        if small:
            return (
                translate("sheet", "a little lighter")
                if steps > 0
                else translate("sheet", "a little darker")
            )
        if number <= 1:
            return (
                translate("sheet", "one step lighter")
                if steps > 0
                else translate("sheet", "one step darker")
            )
        if steps > 0:
            return translate("sheet", "{number} steps lighter").format(number=number)
        return translate("sheet", "{number} steps darker").format(number=number)
    if small:
        return (
            translate("sheet", "a little more intense")
            if steps > 0
            else translate("sheet", "a little duller")
        )
    if abs(steps) < 3:
        return translate("sheet", "more intense") if steps > 0 else translate("sheet", "duller")
    return (
        translate("sheet", "much more intense") if steps > 0 else translate("sheet", "much duller")
    )


def _value_remark(steps: float) -> str:
    number = round(abs(steps))
    if abs(steps) < 0.75:
        if steps > 0:
            return translate("sheet", "a little lighter")
        return translate("sheet", "a little darker")
    if steps > 0:
        return translate("sheet", "lighter by {number}").format(number=number)
    return translate("sheet", "darker by {number}").format(number=number)


def _intensity_remark(steps: float) -> str:
    number = round(abs(steps))
    if steps > 0:
        return translate("sheet", "more intense by {number}").format(number=number)
    return translate("sheet", "duller by {number}").format(number=number)


def _hue_remark(found: ColourReading, steps: float) -> str:
    # The family it reached tells the direction; a hue that has one is compared only.
    towards = family_name(found.hue.family or found.hue.leaning or FAMILIES[0])
    number = round(abs(steps))
    if number <= 1:
        return translate("sheet", "one step towards {hue}").format(hue=towards)
    return translate("sheet", "{number} steps towards {hue}").format(number=number, hue=towards)


def line_remark(line: LineCheck) -> str:
    """Where a line is: "6% high", "3% low", "in place", "cannot tell"."""
    if line.shift_pct is None:
        return translate("sheet", "cannot tell")
    shift = percent_text(abs(line.shift_pct))
    if line.verdict == "matches":
        return translate("sheet", "in place")
    if line.shift_pct < 0:
        return translate("sheet", "{shift} high").format(shift=shift)
    return translate("sheet", "{shift} low").format(shift=shift)


def number_word(number: int) -> str:
    """A small number as a word; figures from eight on."""
    words = {
        1: translate("sheet", "one"),
        2: translate("sheet", "two"),
        3: translate("sheet", "three"),
        4: translate("sheet", "four"),
        5: translate("sheet", "five"),
        6: translate("sheet", "six"),
        7: translate("sheet", "seven"),
    }
    return words.get(number, str(number))


def corner_word(corner: Corner) -> str:
    """A corner in the middle of a sentence."""
    match corner:
        case "top left":
            return translate("sheet", "top left")
        case "top right":
            return translate("sheet", "top right")
        case "bottom right":
            return translate("sheet", "bottom right")
        case "bottom left":
            return translate("sheet", "bottom left")
        case _:
            assert_never(corner)


def quality_remark(band: BandCheck, quality: Quality) -> str:
    """One quality of a band as "value: lighter by 1", "hue: matches" or "hue: cannot tell"."""
    said = {"hue": band.hue, "value": band.value, "intensity": band.intensity}[quality]
    found, whole = band.sheet.colour, band.whole
    text = verdict_word(said)[:1].lower() + verdict_word(said)[1:]
    if said in ("close", "off") and whole is not None and found is not None:
        if quality == "value":
            text = _value_remark(whole.value_steps)
        elif quality == "intensity":
            text = _intensity_remark(whole.chroma_steps)
        elif whole.hue_steps is not None:
            text = _hue_remark(found, whole.hue_steps)
    return translate("sheet", "{quality}: {remark}").format(
        quality=quality_word(quality), remark=text
    )
