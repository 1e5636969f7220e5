"""Keeps the plan of the mixes in step with the readings, the box, and what was asked of it.

The plan is made in a worker. While a line is dragged nothing is planned: the careful reading that
follows decides. The plan there is stays until the new one has come.
"""

from __future__ import annotations

import logging
from collections.abc import Iterable
from contextlib import suppress
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from app.services.notices import Notices
from app.services.reader import Reader
from app.state.document import Document
from app.state.tasks import Latest
from core.errors import BoxError
from core.pipeline import SkyReading, plan_sky, transitions_of
from core.progress import Progress, ShouldStop
from core.reading.reading import BandReading
from core.study import Study
from core.words import PlannedToning

if TYPE_CHECKING:
    from core.paint.mixture.transition import Transitions
    from core.paint.planned import MixPlan

log = logging.getLogger(__name__)

SETTLE_MS = 40
"""Readings that change this fast, as those of a moving line do, are planned for once."""


@dataclass(frozen=True, eq=False)
class _Planned:
    """A plan, and what it was made of."""

    sky: SkyReading
    transitions: Transitions
    plan: MixPlan


class Planner(QObject):
    """The plan of the study's mixes.

    Signals
    -------
    plan_changed(plan: MixPlan | None)
        None when there is nothing to plan: no photo, or a photo not yet read.
    busy(share: float), idle()
        Planning has taken 0.3 s and more.
    """

    plan_changed = Signal(object)
    busy = Signal(float)
    idle = Signal()

    def __init__(
        self,
        document: Document,
        reader: Reader,
        notices: Notices,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._reader = reader
        self._notices = notices
        self._plan: MixPlan | None = None
        self._waiting = False
        self._planned: _Planned | None = None
        self._place = Latest(self)
        self._place.busy.connect(self.busy)
        self._place.idle.connect(self.idle)
        self._ahead = Latest(self)
        self._settle = QTimer(self, singleShot=True, interval=SETTLE_MS)
        self._settle.timeout.connect(self._start)
        reader.readings_changed.connect(lambda readings: self._on_readings())
        reader.idle.connect(self._on_reader_idle)
        document.study_changed.connect(self._on_study)
        self._on_readings()

    @property
    def plan(self) -> MixPlan | None:
        """The newest plan; None while there is nothing to plan."""
        return self._plan

    @property
    def transitions(self) -> Transitions:
        """What the photo shows across each line between two bands of the plan."""
        return self._planned.transitions if self._plan is not None and self._planned else ()

    def toning(self, reading: BandReading) -> PlannedToning | None:
        """How the plan tones a band down; None while no plan is made of it yet."""
        plan = self._plan
        if plan is None:
            return None
        band = next((band for band in plan.bands if band.letter == reading.letter), None)
        if band is None or band.target != reading.colour:
            return None
        from core.paint.words.tone_sentence import planned_toning  # deferred: start-up time

        return planned_toning(plan.box, band)

    @property
    def working(self) -> bool:
        """Whether another plan is on its way."""
        return self._waiting or self._settle.isActive() or self._place.running

    def look_ahead(self, studies: Iterable[Study]) -> None:
        """Plan what is likely to be asked for next, so that it is there when it is.

        Nothing is shown of it; the first thing really asked for calls it off.

        Parameters
        ----------
        studies : iterable of Study
            Edits of the present study, the likeliest first.
        """
        sky = self._reader.sky
        if self.working or self._plan is None or sky is None:
            return
        transitions, likely = self.transitions, tuple(studies)

        def work(progress: Progress, should_stop: ShouldStop) -> None:
            for study in likely:
                with suppress(BoxError):  # said when it is asked for
                    plan_sky(sky, study.box, study.mix, transitions, None, should_stop)

        self._ahead.run(work, lambda nothing: None, _log_ahead)

    def _on_study(self, before: Study, after: Study) -> None:
        if before.box != after.box or before.mix != after.mix:
            self._ask(0)

    def _on_readings(self) -> None:
        if self._reader.readings:
            self._ask()
            return
        self._settle.stop()
        self._waiting = False
        self._ahead.cancel()
        self._place.cancel()
        self._set(None)

    def _ask(self, after_ms: int = SETTLE_MS) -> None:
        self._ahead.cancel()
        if self._reader.readings:
            self._settle.start(after_ms)

    def _on_reader_idle(self) -> None:
        if self._waiting:
            self._ask(0)

    def _start(self) -> None:
        # Readings of a moving line are passing: the careful ones follow, or the reader says idle.
        self._waiting = self._reader.working
        sky, study, last = self._reader.sky, self._document.study, self._planned
        if self._waiting or sky is None:
            return

        def work(progress: Progress, should_stop: ShouldStop) -> _Planned:
            if last is not None and (last.sky.photo, last.sky.bands) == (sky.photo, sky.bands):
                transitions = last.transitions
            else:
                transitions = transitions_of(sky)
            plan = plan_sky(sky, study.box, study.mix, transitions, progress, should_stop)
            return _Planned(sky, transitions, plan)

        self._place.run(work, self._take, self._notices.failed)

    def _take(self, planned: _Planned) -> None:
        self._planned = planned
        self._set(planned.plan)

    def _set(self, plan: MixPlan | None) -> None:
        if plan is not self._plan:
            self._plan = plan
            self.plan_changed.emit(plan)


def _log_ahead(error: Exception) -> None:
    log.warning("looking ahead failed", exc_info=error)
