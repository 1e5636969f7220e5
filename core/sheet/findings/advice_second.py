"""Steps about the second colour of a band: clouds, or a glow between them, beside the photo's.

A band whose main colour is off is told of that first (`cures`); one thing at a time.
"""

from __future__ import annotations

from typing import Literal, assert_never

from core.i18n import translate
from core.sheet.findings.advice import Advice
from core.sheet.findings.cures import WEIGHTS, cures_of, primary_beyond
from core.sheet.findings.facts import Facts
from core.sheet.result import BandCheck, Finding
from core.words import family_name
from core.words.lists import listed

_MISSING, _OFF, _CLOSE = 1.9, 1.8, 1.2  # weights, as tolerances

Fault = Literal["no second", "hue", "lighter", "darker", "duller", "more intense"]


def second_steps(facts: Facts) -> list[Advice]:
    """A step for each way in which second colours are off; none for bands with a cure."""
    cured = {band.letter for cure in cures_of(facts) for band in cure.bands}
    groups: dict[Fault, list[BandCheck]] = {}
    for band in facts.to_cure:
        fault = _fault_of(band)
        if fault == "lighter" and facts.over_exposed:
            continue  # it may be the photo that is too pale
        if fault is not None and band.letter not in cured:
            groups.setdefault(fault, []).append(band)
    steps = []
    for fault, bands in groups.items():
        for some in [[band] for band in bands] if fault == "hue" else [bands]:
            steps.append(_step(fault, some))
    return steps


def _fault_of(band: BandCheck) -> Fault | None:
    """What is most off in a band's second colour; None where nothing is said of it."""
    second = band.second
    if second is None:
        return None
    whole = second.whole
    if whole is None:
        return "no second"
    if second.verdict not in ("close", "off"):
        return None
    told = {"hue": second.hue, "value": second.value, "intensity": second.intensity}
    worst = max(
        (quality for quality, verdict in told.items() if verdict == second.verdict),
        key=lambda quality: WEIGHTS[quality],
    )
    if worst == "hue" and whole.hue_steps is not None:
        return "hue"
    if worst == "value":
        return "lighter" if whole.value_steps > 0 else "darker"
    return "more intense" if whole.chroma_steps > 0 else "duller"


def _step(fault: Fault, bands: list[BandCheck]) -> Advice:
    letters = tuple(band.letter for band in bands)
    off = any(band.second is not None and band.second.verdict == "off" for band in bands)
    weight = _MISSING if fault == "no second" else _OFF if off else _CLOSE
    about = "hue" if fault in ("hue", "no second") else "intensity"
    if fault in ("lighter", "darker"):
        about = "value"
    finding = Finding("step", about, letters, _text(fault, bands))
    return Advice(weight, (f"second {fault} {letters[0]}",), finding)


def _text(fault: Fault, bands: list[BandCheck]) -> str:
    letters = listed([band.letter for band in bands])
    match fault:
        case "no second":
            one, more = _missing_forms(bands)
        case "hue":
            return _hue_text(bands[0])
        case "lighter":
            one = translate(
                "sheet",
                "Band {letters}: its second colour is lighter than the photo's. More paint in it.",
            )
            more = translate(
                "sheet",
                "Bands {letters}: their second colours are lighter than the photo's. More paint "
                "in them.",
            )
        case "darker":
            one = translate(
                "sheet",
                "Band {letters}: its second colour is darker than the photo's. More water in it.",
            )
            more = translate(
                "sheet",
                "Bands {letters}: their second colours are darker than the photo's. More water "
                "in them.",
            )
        case "duller":
            one = translate(
                "sheet",
                "Band {letters}: its second colour is duller than the photo's. Mix it from fewer "
                "paints, in clean water.",
            )
            more = translate(
                "sheet",
                "Bands {letters}: their second colours are duller than the photo's. Mix them from "
                "fewer paints, in clean water.",
            )
        case "more intense":
            one = translate(
                "sheet",
                "Band {letters}: its second colour is more intense than the photo's. Tone it down "
                "with a speck of its complement.",
            )
            more = translate(
                "sheet",
                "Bands {letters}: their second colours are more intense than the photo's. Tone "
                "each down with a speck of its complement.",
            )
        case _:
            assert_never(fault)
    return (one if len(bands) == 1 else more).format(letters=letters)


def _missing_forms(bands: list[BandCheck]) -> tuple[str, str]:
    """For one band and for several; how the second colour is got is common practice."""
    if all(_is_lighter(band) for band in bands):
        return translate(
            "sheet",
            "Band {letters} has one colour where the photo has two. Leave paper for the lighter "
            "one, or lift it out while the wash is wet.",
        ), translate(
            "sheet",
            "Bands {letters} have one colour where the photo has two. Leave paper for the lighter "
            "one, or lift it out while the wash is wet.",
        )
    return translate(
        "sheet",
        "Band {letters} has one colour where the photo has two. Touch the second in while the "
        "wash still shines.",
    ), translate(
        "sheet",
        "Bands {letters} have one colour where the photo has two. Touch the second in while the "
        "wash still shines.",
    )


def _is_lighter(band: BandCheck) -> bool:
    """Whether the photo's second colour is the lighter of the two."""
    main, second = band.reference.colour, band.reference.second
    if main is None or second is None:
        return False
    return second.colour.munsell.value > main.munsell.value


def _hue_text(band: BandCheck) -> str:
    """ "Band B: its second colour is orange where the photo has red-orange. Add red to it."."""
    found, wanted = band.sheet.second, band.reference.second
    assert found is not None
    assert wanted is not None
    assert band.second is not None
    assert band.second.whole is not None
    reached, aim = found.colour.hue.family, wanted.colour.hue.family
    steps = band.second.whole.hue_steps
    if reached is None or aim is None or steps is None:
        raise ValueError(f"band {band.letter} has a hue difference without a hue")
    return translate(
        "sheet",
        "Band {letter}: its second colour is {hue} where the photo has {wanted}. Add {touch} to "
        "it little by little.",
    ).format(
        letter=band.letter,
        hue=family_name(reached),
        wanted=family_name(aim),
        touch=family_name(primary_beyond(reached, aim, steps)),
    )
