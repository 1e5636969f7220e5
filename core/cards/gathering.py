"""From a study to the data of a card: opens, reads, plans and checks what is not known yet."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from core.cards.data import CardData, Kind
from core.errors import BoxError, CardError
from core.i18n import translate
from core.pipeline import Checks, Step, Worked, work_out
from core.progress import Progress, ShouldStop, part_of, step
from core.reading.wording import Wording
from core.sheet.findings.findings import in_plan_terms
from core.sheet.findings.planned import Planned
from core.study import Study, with_bands

_WANTED: Final[Mapping[Kind, tuple[Step, ...]]] = {
    "plan": ("reading", "plan"),
    "worksheet": (),
    "findings": ("reading", "checks"),
    "kit": ("reading", "plan"),
}
"""What a card is about; lines that are missing are proposed for every card."""


def gather(
    kind: Kind,
    study: Study,
    pictures: Mapping[str, bytes],
    wording: Wording,
    *,
    known: Worked | None = None,
    date: str = "",
    show_measured: bool = False,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> CardData:
    """The data of one card.

    Parameters
    ----------
    kind : Kind
    study : Study
    pictures : mapping
        Digest to the bytes of the study's pictures.
    wording : Wording
    known : Worked, optional
        What somebody has worked out already, so that it is not done again.
    date : str
        Printed on the card, as "2027-03-04".
    show_measured : bool
        Show findings although own scores are missing.
    progress, should_stop : callable, optional

    Raises
    ------
    CardError
        The study lacks what the card is about.
    PhotoError, SheetError, BoxError
        A picture cannot be read, or a wish of the plan cannot be met.
    Cancelled
        `should_stop` answered True.
    """
    _refuse_empty(kind, study)
    step(0.0, progress, should_stop)
    wanted = _WANTED[kind]
    if study.bands is None:
        wanted = (*wanted, "reading")
    share = 0.7 if kind == "findings" else 1.0
    worked = work_out(study, pictures, wanted, known, part_of(progress, 0.0, share), should_stop)
    sky = worked.sky
    if study.bands is None and sky is not None:
        study = with_bands(study, sky.bands)
    return CardData(
        study,
        wording,
        None if worked.photo is None else worked.photo.pixels,
        () if sky is None else sky.readings,
        worked.plan if kind in ("plan", "kit") else None,
        _findings(study, pictures, wording, worked, progress, should_stop)
        if kind == "findings"
        else (None, None),
        worked.change if kind == "findings" else None,
        show_measured,
        date,
    )


def _findings(
    study: Study,
    pictures: Mapping[str, bytes],
    wording: Wording,
    worked: Worked,
    progress: Progress | None,
    should_stop: ShouldStop | None,
) -> Checks:
    """The checks in the plan's terms: cures name the planned mixes, lines are told in lengths."""
    if worked.checks is None:
        return None, None
    wanted: tuple[Step, ...] = ("plan",)
    share = part_of(progress, 0.7, 1.0)
    try:
        plan = work_out(study, pictures, wanted, worked, share, should_stop).plan
    except BoxError:  # a wish that cannot be met is told on the plan's own card
        plan = None
    planned = Planned(plan, study.mix.sheet, wording.units)
    first, second = (
        None if check is None else in_plan_terms(check, planned) for check in worked.checks
    )
    return first, second


def _refuse_empty(kind: Kind, study: Study) -> None:
    if study.photo is None and kind == "plan":
        raise CardError(
            translate("cards", "This study has no photo yet: open one, then print its plan.")
        )
    if study.photo is None and kind == "kit":
        raise CardError(
            translate("cards", "This study has no photo yet: open one, then print its kit list.")
        )
    if kind == "findings" and (study.photo is None or not any(study.sheets)):
        raise CardError(
            translate(
                "cards",
                "This study has no painted sheet yet: add one on the Sheets page, then print its "
                "findings.",
            )
        )
