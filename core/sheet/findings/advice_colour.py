"""Steps about hue, value and intensity: what differs, and one thing to try.

What to try is common practice: more or less water for strength, a clean mix for intensity, a
speck of the complement to tone down, a touch of the next primary to turn a hue; and a wash dries
lighter than it looks wet.
"""

from __future__ import annotations

from core.i18n import translate
from core.reading.quality import Quality
from core.reading.wheel import FAMILIES, Family, complement
from core.sheet.findings.advice import Advice
from core.sheet.findings.facts import Facts
from core.sheet.findings.words import amount_of
from core.sheet.result import BandCheck, Finding
from core.words import family_name
from core.words.lists import listed

_WEIGHT = {"value": 1.1, "hue": 1.0, "intensity": 0.95}
_MOST_GAP = 6.0
_PRIMARIES = (0, 4, 8)  # yellow, red, blue on the wheel
_GREENS = ("yellow-green", "green", "blue-green")
_WARM = ("yellow-orange", "yellow", "orange")
_COOL = ("blue", "blue-violet")

Kind = tuple[int, int]
"""Signs of the difference in value and in intensity: (1, -1) is lighter and duller."""


def colour_steps(facts: Facts) -> list[Advice]:
    """Every step about the colours of the bands."""
    return [*_strength_steps(facts), *_hue_steps(facts)]


def _strength_steps(facts: Facts) -> list[Advice]:
    """Value and intensity together: the same fault often shows in both, and one cure helps."""
    groups: dict[Kind, list[BandCheck]] = {}
    for band in facts.bands:
        kind = _kind(band)
        if kind != (0, 0):
            groups.setdefault(kind, []).append(band)
    return [_strength_step(kind, bands, len(facts.bands)) for kind, bands in groups.items()]


def _kind(band: BandCheck) -> Kind:
    if band.whole is None:
        return (0, 0)

    def sign(gap: float | None, difference: float) -> int:
        if gap is None or gap <= 1:
            return 0
        return 1 if difference > 0 else -1

    return (
        sign(band.value_gap, band.whole.value_steps),
        sign(band.intensity_gap, band.whole.chroma_steps),
    )


def _strength_step(kind: Kind, bands: list[BandCheck], of: int) -> Advice:
    value, intensity = kind
    gaps: dict[Quality, float] = {}
    if value:
        gaps["value"] = max(band.value_gap or 0.0 for band in bands)
    if intensity:
        gaps["intensity"] = max(band.intensity_gap or 0.0 for band in bands)
    weight = max(min(gap, _MOST_GAP) * _WEIGHT[quality] for quality, gap in gaps.items())
    about = max(gaps, key=lambda quality: min(gaps[quality], _MOST_GAP) * _WEIGHT[quality])
    letters = tuple(band.letter for band in bands)
    whole = len(bands) == of and of > 1
    text = f"{_strength_seen(kind, bands, whole)} {_strength_try(kind, bands)}"
    # Many bands with the same fault weigh a little more than one.
    weight *= 1 + 0.05 * (len(bands) - 1)
    return Advice(weight, tuple(gaps), Finding("step", about, letters, text))


def _strength_seen(kind: Kind, bands: list[BandCheck], whole: bool) -> str:
    words = {
        (1, 0): translate("sheet", "lighter"),
        (-1, 0): translate("sheet", "darker"),
        (0, 1): translate("sheet", "more intense"),
        (0, -1): translate("sheet", "duller"),
        (1, -1): translate("sheet", "lighter and duller"),
        (-1, 1): translate("sheet", "darker and more intense"),
        (-1, -1): translate("sheet", "darker and duller"),
        (1, 1): translate("sheet", "lighter and more intense"),
    }
    words_here = words[kind]
    if len(bands) == 1 and bands[0].whole is not None and 0 in kind:
        steps = bands[0].whole.value_steps if kind[0] else bands[0].whole.chroma_steps
        words_here = amount_of("value" if kind[0] else "intensity", steps)
    if whole:
        return translate("sheet", "The whole sheet is {how} than the photo.").format(how=words_here)
    one = translate("sheet", "Band {letters} is {how} than the photo.")
    more = translate("sheet", "Bands {letters} are {how} than the photo.")
    letters = listed([band.letter for band in bands])
    return (one if len(bands) == 1 else more).format(letters=letters, how=words_here)


def _strength_try(kind: Kind, bands: list[BandCheck]) -> str:
    if kind in ((1, 0), (1, -1)):
        return translate(
            "sheet", "Put more paint into the same water: a wash dries lighter than it looks wet."
        )
    if kind in ((-1, 0), (-1, 1)):
        return translate("sheet", "Add water to the mix, and try it on a scrap of paper first.")
    if kind == (0, -1):
        return translate(
            "sheet", "Mix again from fewer paints, with a clean brush and clean water."
        )
    if kind == (-1, -1):
        return translate(
            "sheet", "Mix again from fewer paints, in clean water and a little more of it."
        )
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


def _hue_steps(facts: Facts) -> list[Advice]:
    steps = []
    for number, band in enumerate(facts.bands):
        if band.hue_gap is None or band.hue_gap <= 1 or band.whole is None:
            continue
        if band.whole.hue_steps is None:
            continue
        text = _hue_text(facts, number, band, band.whole.hue_steps)
        weight = min(band.hue_gap, _MOST_GAP) * _WEIGHT["hue"]
        steps.append(Advice(weight, ("hue",), Finding("step", "hue", (band.letter,), text)))
    return steps


def _hue_text(facts: Facts, number: int, band: BandCheck, steps: float) -> str:
    wanted, found = _family(band.reference), _family(band.sheet)
    if wanted is None or found is None:
        raise ValueError(f"band {band.letter} has a hue difference without a hue")
    if wanted not in _GREENS and found in _GREENS and _between_yellow_and_blue(facts, number):
        return translate(
            "sheet",
            "Band {letter} has turned green where yellow meets blue. Let one of them dry first, "
            "or keep a little pink between them.",
        ).format(letter=band.letter)
    touch = family_name(_primary_beyond(found, wanted, steps))
    if abs(steps) < 1.5:
        return translate(
            "sheet",
            "Band {letter} has gone one step towards {hue}. A touch of {touch} in the mix brings "
            "it back.",
        ).format(letter=band.letter, hue=family_name(found), touch=touch)
    return translate(
        "sheet",
        "Band {letter} is {hue} where the photo has {wanted}. Mix it again, and add {touch} "
        "little by little.",
    ).format(letter=band.letter, hue=family_name(found), wanted=family_name(wanted), touch=touch)


def _family(reading: object) -> Family | None:
    colour = getattr(reading, "colour", None)
    return None if colour is None else colour.hue.family


def _primary_beyond(found: Family, wanted: Family, steps: float) -> Family:
    """The primary that is in the direction from the hue found to the one wanted."""
    start = FAMILIES.index(found)
    way = -1 if steps > 0 else 1  # the sheet went clockwise: come back the other way
    reach = (FAMILIES.index(wanted) - start) * way % 12
    for ahead in range(max(1, reach), 12):
        if (start + way * ahead) % 12 in _PRIMARIES:
            return FAMILIES[(start + way * ahead) % 12]
    return wanted


def _between_yellow_and_blue(facts: Facts, number: int) -> bool:
    around = [
        _family(facts.reference[k]) for k in range(len(facts.reference)) if abs(k - number) < 2
    ]
    return any(f in _WARM for f in around) and any(f in _COOL for f in around)
