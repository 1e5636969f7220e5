"""Keeps the open photo, and its readings in step with the study's lines.

The bands are proposed and read in workers. While a line moves the readings come
from histograms, fast enough for every mouse move; once it rests a worker reads with care.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer, Signal

from app.services.notices import Notices
from app.services.photo_jobs import (
    CarefulReading,
    OpenedPhoto,
    Proposed,
    proposing,
    reading_with_care,
    veiling,
)
from app.state.document import Document
from app.state.tasks import Latest
from core.bands.lines import Bands
from core.i18n import translate
from core.photo import Photo
from core.pipeline import SkyReading
from core.reading.reading import BandReading
from core.study import with_bands

REST_MS = 250
"""A line that has not moved for so long rests, and its bands are read with care."""

VEIL_AFTER_MS = 20
"""The veil is made once the bands are on the screen: its filter would slow their painting."""

_TOPIC = "photo"


class Reader(QObject):
    """The photo of the study, what was proposed for it, and what its bands read.

    Attributes
    ----------
    opened : OpenedPhoto or None
    sky : SkyReading or None
        As it was read last; None while nobody knows.

    Signals
    -------
    photo_changed(opened: OpenedPhoto)
    photo_closed()
        There is no photo any more.
    sky_changed(veil: Pyramid | None)
        What counts as sky; None while nobody knows.
    rivals_changed(rivals: tuple[float, ...])
    doubt_changed(sentence: str)
        Why the proposal may be wrong; empty when nothing speaks against it.
    readings_changed(readings: tuple[BandReading, ...])
    busy(text: str, share: float), idle()
        Work has run for 0.3 s and more.
    """

    photo_changed = Signal(object)
    photo_closed = Signal()
    sky_changed = Signal(object)
    rivals_changed = Signal(object)
    doubt_changed = Signal(str)
    readings_changed = Signal(object)
    busy = Signal(str, float)
    idle = Signal()

    def __init__(
        self,
        document: Document,
        notices: Notices,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._notices = notices
        self.opened: OpenedPhoto | None = None
        self.sky: SkyReading | None = None
        self._proposed: Proposed | None = None
        self._proposing = self._place(lambda: translate("reader", "Looking for the bands"))
        self._careful = self._place(lambda: translate("reader", "Reading the bands"))
        self._veil = Latest(self)
        self._veil_soon = QTimer(self, singleShot=True, interval=VEIL_AFTER_MS)
        self._veil_soon.timeout.connect(self._make_veil)
        self._rest = QTimer(self, singleShot=True, interval=REST_MS)
        self._rest.timeout.connect(self._read_with_care)
        document.study_changed.connect(self._on_study)

    @property
    def photo(self) -> Photo | None:
        """The photo of the study."""
        return self.opened.photo if self.opened else None

    @property
    def readings(self) -> tuple[BandReading, ...]:
        """What the bands read; empty while nobody knows."""
        return self.sky.readings if self.sky else ()

    @property
    def working(self) -> bool:
        """Whether bands are being proposed or read, or will be shortly."""
        return self._rest.isActive() or self._proposing.running or self._careful.running

    def put_away(self) -> None:
        """Stop reading and forget the photo: another study takes its place."""
        for place in (self._proposing, self._careful, self._veil):
            place.cancel()
        self._rest.stop()
        self._veil_soon.stop()
        self.opened, self._proposed, self.sky = None, None, None
        self._notices.withdraw(_TOPIC)

    def show(self, opened: OpenedPhoto | None) -> None:
        """Read the photo of the study that has begun.

        Parameters
        ----------
        opened : OpenedPhoto or None
            None where it has none. A study without bands has them proposed; those it has stay
            as they are.
        """
        self.put_away()
        self.opened = opened
        if opened is None:
            self.photo_closed.emit()
        else:
            self.photo_changed.emit(opened)
        self.sky_changed.emit(None)
        self.rivals_changed.emit(())
        self.readings_changed.emit(())
        self.doubt_changed.emit("")
        if opened is None:
            return
        if opened.photo.notices:
            self._notices.note(" ".join(opened.photo.notices), _TOPIC)
        bands = self._document.study.bands
        if bands is None:
            self._propose(None, None, self._take_as_beginning)
        else:
            self._propose(None, bands.horizon, self._take_sky)

    def propose(self, text: str, count: int | None = None, horizon: float | None = None) -> None:
        """Look for the bands again; the study changes once they are found.

        Parameters
        ----------
        text : str
            What was done, for the undo step.
        count : int, optional
            How many are wanted; without it, as many as the sky has.
        horizon : float, optional
            Where the sky ends; without it, that is looked for too.
        """
        self._propose(count, horizon, lambda proposed: self._take_as_edit(text, proposed))

    @property
    def proposed_horizon(self) -> float | None:
        """Where the sky ends for the readings; None while nobody knows."""
        return self._proposed.proposal.bands.horizon if self._proposed else None

    def _place(self, text: Callable[[], str]) -> Latest:
        place = Latest(self)
        place.busy.connect(lambda share: self.busy.emit(text(), share))
        place.idle.connect(self.idle)
        return place

    def _propose(
        self, count: int | None, horizon: float | None, take: Callable[[Proposed], None]
    ) -> None:
        if self.opened is None:
            return
        work = proposing(self.opened.photo, count, horizon)
        self._proposing.run(work, take, self._notices.failed)

    def _take_as_beginning(self, proposed: Proposed) -> None:
        """The first proposal belongs to the opening: there is nothing to undo yet."""
        self._take(proposed)
        bands = proposed.proposal.bands
        self._document.complete(
            lambda study: study if study.bands is not None else with_bands(study, bands)
        )

    def _take_sky(self, proposed: Proposed) -> None:
        """The lines are the study's own: only what counts as sky is new."""
        self._take(proposed)
        self._read_fast(self._document.study.bands)

    def _take_as_edit(self, text: str, proposed: Proposed) -> None:
        self._take(proposed)
        bands = proposed.proposal.bands
        self._document.change(text, with_bands(self._document.study, bands))
        self._read_fast(self._document.study.bands)  # also when the lines came out the same

    def _take(self, proposed: Proposed) -> None:
        self._put(proposed)
        self.rivals_changed.emit(proposed.proposal.rivals)
        proposal = proposed.proposal
        said = proposal.remarks if proposal.reason is None else (proposal.reason,)
        self.doubt_changed.emit(said[0] if said else "")

    def _put(self, proposed: Proposed) -> None:
        """What counts as sky from now on; the veil follows when it is made."""
        self._proposed = proposed
        self._veil_soon.start()

    def _make_veil(self) -> None:
        if self.opened is not None and self._proposed is not None:
            work = veiling(self.opened.photo, self._proposed.proposal)
            self._veil.run(work, self.sky_changed.emit, self._notices.failed)

    def _on_study(self, before: object, after: object) -> None:
        bands = self._document.study.bands
        if bands is not None and bands != getattr(before, "bands", None):
            self._read_fast(bands)

    def _read_fast(self, bands: Bands | None) -> None:
        if bands is None or self._proposed is None or self.opened is None:
            return
        self._careful.cancel()
        readings, mask = self._proposed.stats.read(bands), self._proposed.proposal.sky
        self.sky = SkyReading(self.opened.photo, bands, readings, mask)
        self.readings_changed.emit(readings)
        self._rest.start()

    def _read_with_care(self) -> None:
        bands, proposed = self._document.study.bands, self._proposed
        if bands is None or proposed is None or self.opened is None:
            return
        work = reading_with_care(self.opened.photo, bands, proposed)
        self._careful.run(work, self._show_careful, self._notices.failed)

    def _show_careful(self, read: CarefulReading) -> None:
        if read.proposed is not self._proposed:
            self._put(read.proposed)
        self.sky = read.sky
        self.readings_changed.emit(self.readings)
