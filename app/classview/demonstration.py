"""From the plan and the clocks to what the demonstration shows on the whole screen."""

from __future__ import annotations

from collections.abc import Sequence

from app.classview.pacing import Pacing
from app.drawing.classview.demonstration import ClockView, DemonstrationView, PartView
from app.drawing.marks import ChipView
from app.drawing.painting import PaintedView
from app.drawing.pyramid import Pyramid
from app.drawing.washes import wash_views
from core.colour.contrast import ink_on
from core.i18n import translate
from core.lesson.demonstration import Pace, shine_text, work_at
from core.paint.box.names import paint_name
from core.paint.mixture.swatch import paint_colour
from core.paint.planned import MixPlan
from core.paint.wash.order import SHINE_MIN
from core.reading.reading import BandReading


def demonstration_view(
    pacing: Pacing,
    plan: MixPlan | None,
    readings: Sequence[BandReading],
    picture: Pyramid,
    aspect: float,
) -> DemonstrationView | None:
    """The step the demonstration is at; None before it has begun.

    Parameters
    ----------
    pacing : Pacing
    plan : MixPlan or None
    readings : sequence of BandReading
    picture : Pyramid
        The photo.
    aspect : float
        Width of the photo by its height.
    """
    if pacing.present is None or not readings:
        return None
    pace = pacing.steps[pacing.present]
    work = work_at(pace, plan)
    edges = (readings[0].top, *(reading.bottom for reading in readings))
    letters = tuple(reading.letter for reading in readings)
    chosen = None
    if plan is not None and pace.letter:
        chosen = plan.band(pace.letter).classroom
    title = work.title
    if pace.stage == "dry":
        title = _time(pacing.left_s or 0) if pacing.left_s else translate("class view", "Feel it")
    return DemonstrationView(
        sky=PaintedView(picture, edges[-1], wash_views(plan, edges, pace.laid)),
        aspect=aspect / max(edges[-1], 1e-6),
        edges=edges,
        letters=letters,
        present=letters.index(pace.letter) if pace.letter in letters else None,
        turned=plan is not None and plan.order.turn_sheet,
        title=title,
        todo=work.todo,
        mix=work.mix,
        strength=work.strength,
        parts=()
        if plan is None or chosen is None
        else tuple(
            PartView(count, colour, ink_on(colour), paint_name(plan.box.paint(key)))
            for key, count in chosen.mix.parts
            for colour in (paint_colour(plan.box.paint(key)),)
        ),
        chip=None if chosen is None else ChipView(chosen.mix.colour.hex),
        clock=_clock(pace, pacing),
    )


def demonstration_text(pacing: Pacing, plan: MixPlan | None) -> str:
    """What is said of the step."""
    if pacing.present is None:
        return ""
    work = work_at(pacing.steps[pacing.present], plan)
    pieces = [work.title, work.todo, work.mix, work.strength]
    return ". ".join(piece.rstrip(".") for piece in pieces if piece) + "."


def _clock(pace: Pace, pacing: Pacing) -> ClockView | None:
    """The wet edge while the sheet shines, then the drying."""
    if pace.stage == "dry":
        whole, left = 60 * pacing.minutes, pacing.left_s or 0
        gone = translate("class view", "drying {minutes} min").format(minutes=pacing.minutes)
        bell = translate("class view", "D: bell") if not pacing.bell else ""
        bell = bell or translate("class view", "bell is on")
        return ClockView(1 - left / whole, gone, bell)
    if pacing.wet_s is None:
        return None
    low, high = SHINE_MIN
    counted = translate("class view", "wet {time}").format(time=_time(pacing.wet_s))
    return ClockView(pacing.wet_s / (60 * high), counted, shine_text(), (low / high,))


def _time(seconds: int) -> str:
    return f"{seconds // 60}:{seconds % 60:02d}"
