"""The demonstration before the class, step by step: what is done now, with which mix."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, assert_never

from core.i18n import translate
from core.paint.planned import BandMix, MixPlan
from core.paint.wash.order import SHINE_MIN, Order
from core.paint.words.parts import parts_text, strength_text
from core.reading.wheel import Family, wheel_distance
from core.words.lists import sentence_case
from core.words.names import family_name

Stage = Literal["wet", "lay", "pull", "stop", "dry"]


@dataclass(frozen=True)
class Pace:
    """One step of the demonstration.

    Attributes
    ----------
    stage : Stage
    text : str
        One to three words, for the strip.
    letter : str
        The band to lay now; "" for other stages, and without a plan.
    laid : tuple of str
        The bands laid before.
    rinse : bool
        The brush is rinsed first.
    beside, apart : str
        The wet band that it runs into; the one from which a strip is kept.
    """

    stage: Stage
    text: str
    letter: str = ""
    laid: tuple[str, ...] = ()
    rinse: bool = False
    beside: str = ""
    apart: str = ""


@dataclass(frozen=True)
class Work:
    """What the screen says of a step.

    Attributes
    ----------
    title : str
    todo : str
        One short sentence.
    mix, strength : str
        Of the band to lay: parts and how strong; empty for other stages.
    """

    title: str
    todo: str
    mix: str = ""
    strength: str = ""


def paces(order: Order | None) -> tuple[Pace, ...]:
    """The steps of a demonstration, from the plan's order of work; in general without a plan."""
    wet = Pace("wet", translate("class view", "Clean water"))
    if order is None:
        lays = [Pace("lay", translate("class view", "Lay"))]
        pulls = True
    else:
        lays = _lays(order)
        pulls = any(step.stage == "pull" for step in order.steps)
    laid = tuple(lay.letter for lay in lays if lay.letter)
    ending = [
        Pace("stop", translate("class view", "Stop"), laid=laid),
        Pace("dry", translate("class view", "Dry"), laid=laid),
    ]
    if pulls:
        ending.insert(0, Pace("pull", translate("class view", "Pull together"), laid=laid))
    return (wet, *lays, *ending)


def _lays(order: Order) -> list[Pace]:
    """A step a band; the first of all says that it is laid."""
    lays: list[Pace] = []
    laid: list[str] = []
    rinse = False
    for step in order.steps:
        if step.stage == "rinse":
            rinse = True
        if step.stage != "lay":
            continue
        for number, letter in enumerate(step.letters):
            text = translate("class view", "Lay {bands}").format(bands=letter)
            first = number == 0
            lays.append(
                Pace(
                    "lay",
                    letter if laid else text,
                    letter,
                    tuple(laid),
                    rinse=rinse,
                    beside=step.beside if first else _beside(letter, laid),
                    apart=step.apart if first else "",
                )
            )
            rinse = False
            laid.append(letter)
    return lays


def _beside(letter: str, laid: list[str]) -> str:
    """The wet neighbour among the bands that are laid."""
    return next((other for other in laid if abs(ord(other) - ord(letter)) == 1), "")


def work_at(pace: Pace, plan: MixPlan | None) -> Work:
    """What the screen says of a step."""
    match pace.stage:
        case "wet":
            return Work(translate("class view", "Clean water"), _wetting(plan))
        case "lay":
            return _laying(pace, plan)
        case "pull":
            return Work(translate("class view", "Pull together"), pull_text(plan))
        case "stop":
            todo = translate("class view", "A wet brush now leaves blooms.")
            return Work(translate("class view", "Stop: hands off"), todo)
        case "dry":
            todo = translate("class view", "Flat, then feel it: cool is still damp.")
            return Work(translate("class view", "Drying"), todo)
        case _:
            assert_never(pace.stage)


def _wetting(plan: MixPlan | None) -> str:
    text = translate("class view", "Damp everywhere, no puddle.")
    if plan is None or not plan.order.turn_sheet:
        return text
    turned = translate("class view", "The sheet is upside down.")
    return f"{turned} {text}"


def _laying(pace: Pace, plan: MixPlan | None) -> Work:
    if plan is None or not pace.letter:
        return Work(translate("class view", "Lay the washes"), _how(pace, plan))
    chosen = plan.band(pace.letter).classroom
    title = translate("class view", "Lay {bands}").format(bands=pace.letter)
    if chosen is None:
        return Work(title, _how(pace, plan))
    strength = strength_text(chosen.strength) if chosen.mix.parts else ""
    mix = sentence_case(parts_text(plan.box, chosen.mix))
    return Work(title, _how(pace, plan), mix, strength)


def _how(pace: Pace, plan: MixPlan | None) -> str:
    """Where a band is laid, and what comes before."""
    texts = []
    if pace.rinse:
        texts.append(translate("class view", "Rinse first."))
    if pace.apart:
        text = translate("class view", "Keep a strip of clean water from {letter}.")
        texts.append(text.format(letter=pace.apart))
    elif pace.beside and _one_mix(pace, plan):
        text = translate("class view", "Into the wet {letter}: the same mix, more or less water.")
        texts.append(text.format(letter=pace.beside))
    elif pace.beside:
        texts.append(translate("class view", "Into the wet {letter}.").format(letter=pace.beside))
    elif not pace.rinse:
        texts.append(translate("class view", "On the wet sheet."))
    return " ".join(texts)


def _one_mix(pace: Pace, plan: MixPlan | None) -> bool:
    if plan is None:
        return False
    one, other = (plan.band(letter).classroom for letter in (pace.letter, pace.beside))
    return one is not None and other is not None and one.mix.parts == other.mix.parts


def pull_text(plan: MixPlan | None) -> str:
    """What is pulled into what: named by its hue, where two clear hues meet."""
    joint = _clearest_joint(plan)
    if plan is None or joint is None:
        return translate("class view", "Lower colour up into the wet, upper one down, once.")
    # On a turned sheet the sky's upper band is the lower one.
    upper, lower = reversed(joint) if plan.order.turn_sheet else joint
    return translate(
        "class view", "Pull the {lower} up into the wet, the {upper} down into it, once."
    ).format(lower=_hue(lower), upper=_hue(upper))


def _clearest_joint(plan: MixPlan | None) -> tuple[BandMix, BandMix] | None:
    """The two neighbours that run together and are of the furthest hues."""
    if plan is None:
        return None
    found: list[tuple[int, BandMix, BandMix]] = []
    for upper, lower in zip(plan.bands, plan.bands[1:], strict=False):
        meeting = upper.meets_below
        one, other = _family(upper), _family(lower)
        if meeting is None or not meeting.runs_together or one is None or other is None:
            continue
        if one != other:
            found.append((wheel_distance(one, other), upper, lower))
    if not found:
        return None
    _, upper, lower = max(found, key=lambda each: each[0])
    return upper, lower


def _family(band: BandMix) -> Family | None:
    return None if band.classroom is None else band.classroom.mix.colour.hue.family


def _hue(band: BandMix) -> str:
    family = _family(band)
    return family_name(family) if family else band.letter


def shine_text() -> str:
    """How long the sheet stays wet, for the clock's end."""
    low, high = SHINE_MIN
    return translate("class view", "shine: {low} to {high} min").format(low=low, high=high)
