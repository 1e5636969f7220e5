"""Steps about hue, value and intensity: what differs, and the one thing to try, in words."""

from __future__ import annotations

from typing import assert_never

from core.i18n import translate
from core.paint.box.names import paint_name
from core.reading.reading import BandReading
from core.reading.wheel import Family, complement
from core.sheet.findings.advice import Advice
from core.sheet.findings.cures import (
    Cure,
    Way,
    cures_of,
    family_of,
    kind_of,
)
from core.sheet.findings.facts import Facts
from core.sheet.findings.planned import Correction
from core.sheet.findings.words import amount_of
from core.sheet.result import BandCheck, Finding
from core.words import family_name
from core.words.lists import listed, sentence_case

_STRENGTH_WEIGHT = 9.0  # said before any single band
_THRICE, _TWICE = 0.38, 0.6  # of the photo's paint, or less
_HALF_AGAIN, _DOUBLE = 1.7, 2.6  # times the photo's, or more


def colour_steps(facts: Facts, most: int = 4) -> list[Advice]:
    """Every step about the colours of the bands; with more cures than `most`, the lightest ones
    share one."""
    cures = cures_of(facts)
    strength = _strength(facts, _spared(facts, cures))
    room = max(1, most - len(strength))
    apart = cures if len(cures) <= room else cures[: room - 1]
    steps = [*strength, *(_step(facts, cure) for cure in apart)]
    rest = cures[len(apart) :]
    if rest:
        steps.append(_together(facts, rest))
    return steps


# The strength of the whole sheet


def _against(facts: Facts, cure: Cure) -> bool:
    """Whether it takes back what the whole sheet is told to do: its bands are off the other way."""
    return bool(facts.too_much) and cure.way == ("water" if facts.too_much < 0 else "paint")


def _spared(facts: Facts, cures: list[Cure]) -> tuple[str, ...]:
    """Letters of the bands that are not as the whole sheet is: right, or off the other way."""
    apart = [cure for cure in cures if cure.way == "enough" or _against(facts, cure)]
    return tuple(sorted(band.letter for cure in apart for band in cure.bands))


def _strength(facts: Facts, spared: tuple[str, ...]) -> list[Advice]:
    """One step for the whole sheet, or for all of it but the bands that are `spared`."""
    if not facts.too_much:
        return []
    letters = tuple(band.letter for band in facts.bands if band.letter not in spared)
    if facts.too_much < 0 and facts.over_exposed:
        text = translate(
            "sheet",
            "The paint looks too pale, but so does the paper: photograph the sheet a little darker "
            "before you take more paint.",
        )
        return [Advice(_STRENGTH_WEIGHT, ("strength",), Finding("step", "value", letters, text))]
    text = translate("sheet", "{seen}, {much}").format(
        seen=_strength_seen(facts, spared), much=_times(facts.strength.share)
    )
    finding = Finding("step", "value", letters, f"{text} {_dries(facts)}")
    return [Advice(_STRENGTH_WEIGHT, ("strength",), finding)]


def _strength_seen(facts: Facts, spared: tuple[str, ...]) -> str:
    pale = facts.too_much < 0
    if len(facts.bands) == 1:
        return (
            translate("sheet", "The wash is too pale: more paint in the same water")
            if pale
            else translate("sheet", "The wash is too strong: more water to the same paint")
        )
    if not spared:
        return (
            translate("sheet", "All of it is too pale: more paint in the same water")
            if pale
            else translate("sheet", "All of it is too strong: more water to the same paint")
        )
    if len(spared) == 1:
        text = (
            translate("sheet", "All but band {letters} is too pale: more paint in the same water")
            if pale
            else translate(
                "sheet", "All but band {letters} is too strong: more water to the same paint"
            )
        )
    else:
        text = (
            translate("sheet", "All but bands {letters} is too pale: more paint in the same water")
            if pale
            else translate(
                "sheet", "All but bands {letters} is too strong: more water to the same paint"
            )
        )
    return text.format(letters=listed(spared))


def _times(share: float) -> str:
    """How much more paint, or water, in everyday words."""
    if share <= _THRICE or share >= _DOUBLE:
        return translate("sheet", "about three times as much.")
    if share <= _TWICE or share >= _HALF_AGAIN:
        return translate("sheet", "about twice as much.")
    return translate("sheet", "about half as much again.")


def _dries(facts: Facts) -> str:
    if facts.too_much < 0:
        return translate("sheet", "A wash dries lighter than it looks wet.")
    return translate("sheet", "Try it on a scrap of paper first.")


# A cure and its bands


def _step(facts: Facts, cure: Cure) -> Advice:
    bands = list(cure.bands)
    against = _against(facts, cure)
    if against:
        # Of bands that the whole sheet's strength is not said of, how they are beside the photo.
        bands = [band for band in facts.bands if band.letter in {one.letter for one in bands}]
    whole = len(bands) == len(facts.bands) and len(bands) > 1 and not facts.too_much
    letters = tuple(band.letter for band in bands)
    hue = cure.way in ("hue", "green")
    if cure.way == "green":
        text = _green_text(bands)
    elif cure.way in ("enough", "less paint", "less water"):
        text = _short(cure)
    else:
        beyond = bool(facts.too_much) and not against
        seen = _hue_seen(bands) if hue else _seen(bands, whole, beyond=beyond)
        text = f"{seen} {_try(facts, cure)}"
    strength = cure.way in ("paint", "water", "enough", "less paint", "less water")
    about = "hue" if hue else "value" if strength else "intensity"
    return Advice(cure.weight, (f"colour {cure.way} {cure.touch}",),
                Finding("step", about, letters, text))  # fmt: skip


def _together(facts: Facts, cures: list[Cure]) -> Advice:
    """Several light faults in one sentence each: what to do alone."""
    parts = [_short(cure) for cure in cures]
    bands = sorted((band for cure in cures for band in cure.bands), key=lambda band: band.letter)
    letters = tuple(band.letter for band in bands)
    about = "hue" if cures[0].way in ("hue", "green") else "value"
    return Advice(
        cures[0].weight, ("colour rest",), Finding("step", about, letters, " ".join(parts))
    )


def _short(cure: Cure) -> str:
    letters = listed([band.letter for band in cure.bands])
    one, more = _short_forms(cure.way)
    text = one if len(cure.bands) == 1 else more
    return text.format(letters=letters, touch=_touch(cure))


def _short_forms(way: Way) -> tuple[str, str]:
    """For one band and for several."""
    match way:
        case "paint":
            one = translate("sheet", "More paint in band {letters}.")
            return one, translate("sheet", "More paint in bands {letters}.")
        case "water":
            one = translate("sheet", "More water in band {letters}.")
            return one, translate("sheet", "More water in bands {letters}.")
        case "enough":
            one = translate("sheet", "Band {letters} has its strength: leave that mix as it is.")
            more = translate(
                "sheet", "Bands {letters} have their strength: leave those mixes as they are."
            )
            return one, more
        case "less paint":
            one = translate("sheet", "Band {letters} needs less extra paint than the others.")
            return one, translate("sheet", "Bands {letters} need less extra paint than the others.")
        case "less water":
            one = translate("sheet", "Band {letters} needs less extra water than the others.")
            return one, translate("sheet", "Bands {letters} need less extra water than the others.")
        case "clean":
            one = translate("sheet", "Fewer paints in band {letters}.")
            return one, translate("sheet", "Fewer paints in bands {letters}.")
        case "tone":
            one = translate("sheet", "Tone down band {letters}.")
            return one, translate("sheet", "Tone down bands {letters}.")
        case "hue":
            one = translate("sheet", "A touch of {touch} in band {letters}.")
            return one, translate("sheet", "A touch of {touch} in bands {letters}.")
        case "green":
            one = translate("sheet", "Keep yellow and blue apart in band {letters}.")
            return one, translate("sheet", "Keep yellow and blue apart in bands {letters}.")
        case _:
            assert_never(way)


def _seen(bands: list[BandCheck], whole: bool, *, beyond: bool) -> str:
    """ "Bands A and C are lighter and duller than the photo, band D is lighter."."""
    groups: dict[str, list[BandCheck]] = {}
    for band in bands:
        groups.setdefault(_how(band, alone=len(bands) == 1), []).append(band)
    if whole and len(groups) == 1:
        return translate("sheet", "The whole sheet is {how} than the photo.").format(
            how=next(iter(groups))
        )
    first, *others = groups.items()
    one = translate("sheet", "Band {letters} is {how} than the photo")
    more = translate("sheet", "Bands {letters} are {how} than the photo")
    if beyond:
        one = translate("sheet", "Beyond that, band {letters} is {how}")
        more = translate("sheet", "Beyond that, bands {letters} are {how}")
    text = _bands_text(one, more, first[1], first[0])
    for how, some in others:
        one = translate("sheet", "band {letters} is {how}")
        more = translate("sheet", "bands {letters} are {how}")
        text = translate("sheet", "{text}, {other}").format(
            text=text, other=_bands_text(one, more, some, how)
        )
    return translate("sheet", "{text}.").format(text=text)


def _bands_text(one: str, more: str, bands: list[BandCheck], how: str) -> str:
    letters = listed([band.letter for band in bands])
    return (one if len(bands) == 1 else more).format(letters=letters, how=how)


def _how(band: BandCheck, *, alone: bool) -> str:
    kind = kind_of(band)
    if alone and band.whole is not None and 0 in kind:
        steps = band.whole.value_steps if kind[0] else band.whole.chroma_steps
        return amount_of("value" if kind[0] else "intensity", steps)
    return {
        (1, 0): translate("sheet", "lighter"),
        (-1, 0): translate("sheet", "darker"),
        (0, 1): translate("sheet", "more intense"),
        (0, -1): translate("sheet", "duller"),
        (1, -1): translate("sheet", "lighter and duller"),
        (-1, 1): translate("sheet", "darker and more intense"),
        (-1, -1): translate("sheet", "darker and duller"),
        (1, 1): translate("sheet", "lighter and more intense"),
    }[kind]


def _hue_seen(bands: list[BandCheck]) -> str:
    """ "Band B has gone one step towards violet, band C two."."""
    if len(bands) == 1:
        band = bands[0]
        found = _name(band.sheet)
        steps = abs(band.whole.hue_steps or 0.0) if band.whole else 0.0
        if steps < 1.5:
            return translate("sheet", "Band {letter} has gone one step towards {hue}.").format(
                letter=band.letter, hue=found
            )
        return translate("sheet", "Band {letter} is {hue} where the photo has {wanted}.").format(
            letter=band.letter, hue=found, wanted=_name(band.reference)
        )
    pieces = [
        translate("sheet", "band {letter} is {hue} where the photo has {wanted}").format(
            letter=band.letter,
            hue=_name(band.sheet),
            wanted=_name(band.reference),
        )
        for band in bands
    ]
    text = listed(pieces)
    return translate("sheet", "{text}.").format(text=sentence_case(text))


def _name(reading: BandReading) -> str:
    family = family_of(reading)
    return "" if family is None else family_name(family)


def _touch(cure: Cure) -> str:
    return "" if cure.touch is None else family_name(cure.touch)


def _green_text(bands: list[BandCheck]) -> str:
    one = translate("sheet", "Band {letters} has turned green where yellow meets blue.")
    more = translate("sheet", "Bands {letters} have turned green where yellow meets blue.")
    seen = (one if len(bands) == 1 else more).format(letters=listed([b.letter for b in bands]))
    cure = translate("sheet", "Let one of them dry first, or keep a little pink between them.")
    return f"{seen} {cure}"


# What to try


def _try(facts: Facts, cure: Cure) -> str:
    if cure.way == "paint" and facts.over_exposed:
        return translate(
            "sheet", "Photograph the sheet a little darker before you take more paint."
        )
    if cure.way == "paint":
        return translate(
            "sheet", "Put more paint into the same water: a wash dries lighter than it looks wet."
        )
    if cure.way == "water":
        return translate("sheet", "Add water to the mix, and try it on a scrap of paper first.")
    planned = _in_plan_terms(facts, cure)
    if planned:
        return planned
    if cure.way == "clean":
        if any(kind_of(band) == (-1, -1) for band in cure.bands):
            return translate(
                "sheet", "Mix again from fewer paints, in clean water and a little more of it."
            )
        return translate(
            "sheet", "Mix again from fewer paints, with a clean brush and clean water."
        )
    if cure.way == "tone":
        return _tone_text(list(cure.bands))
    return _touch_text(cure)


def _touch_text(cure: Cure) -> str:
    touch = _touch(cure)
    if len(cure.bands) > 1:
        return translate("sheet", "A touch of {touch} in each mix brings them back.").format(
            touch=touch
        )
    whole = cure.bands[0].whole
    if whole is not None and abs(whole.hue_steps or 0.0) < 1.5:
        return translate("sheet", "A touch of {touch} in the mix brings it back.").format(
            touch=touch
        )
    return translate("sheet", "Mix it again, and add {touch} little by little.").format(touch=touch)


def _tone_text(bands: list[BandCheck]) -> str:
    opposite = _complement(bands)
    if opposite is None and len(bands) > 1:
        return translate("sheet", "Tone each mix down with a speck of its own complement.")
    if opposite is None:
        return translate("sheet", "Tone it down with a speck of its complement.")
    one = translate("sheet", "Tone it down with a speck of its complement, {hue}.")
    more = translate("sheet", "Tone each mix down with a speck of the complement, {hue}.")
    return (one if len(bands) == 1 else more).format(hue=family_name(opposite))


def _complement(bands: list[BandCheck]) -> Family | None:
    """The complement, when all these bands share it."""
    families = {
        band.sheet.colour.hue.family or band.sheet.colour.hue.leaning
        for band in bands
        if band.sheet.colour is not None
    }
    if len(families) != 1:
        return None
    family = families.pop()
    return None if family is None else complement(family)


# In the plan's terms


def _in_plan_terms(facts: Facts, cure: Cure) -> str:
    """ "Less crimson, more ultramarine: 2 : 2 instead of 3 : 2."; empty where the plan does not
    help with every one of these bands."""
    plan = facts.planned
    if plan is None or plan.plan is None:
        return ""
    texts: dict[str, list[str]] = {}
    for band in cure.bands:
        found = band.sheet.colour
        change = None if found is None else plan.correction(band.letter, found)
        if change is None:
            return ""
        texts.setdefault(_change_text(facts, change), []).append(band.letter)
    if len(texts) == 1:
        text = next(iter(texts))
        return translate("sheet", "{text}.").format(text=sentence_case(text))
    parts = [
        translate("sheet", "{letters}: {change}.").format(letters=listed(letters), change=text)
        for text, letters in texts.items()
    ]
    return " ".join(parts)


def _change_text(facts: Facts, change: Correction) -> str:
    assert facts.planned is not None
    assert facts.planned.plan is not None
    paints = facts.planned.plan.box.by_key
    less = listed([paint_name(paints[key]) for key in change.less])
    more = listed([paint_name(paints[key]) for key in change.more])
    return translate("sheet", "less {less}, more {more}: {new} instead of {old}").format(
        less=less,
        more=more,
        new=" : ".join(str(part) for part in change.new),
        old=" : ".join(str(part) for part in change.old),
    )
