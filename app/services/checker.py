"""Keeps the checks of the two sheets in step with their pictures, the lines and the readings.

Checking happens in a worker, once lines and corners rest. The check there is stays until the new
one has come, unless its picture is gone. What is measured of a sheet is meant as a second opinion:
it stays closed until the student's own scores are in, or the teacher opens it.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from app.drawing.pyramid import Pyramid
from app.services.notices import Notices
from app.services.photo_jobs import OpenedPhoto
from app.services.reader import Reader
from app.services.sheet_jobs import CheckedSheet, SheetJobs, Wanted
from app.state.document import Document
from app.state.tasks import Latest
from core.i18n import translate
from core.pictures import PictureStore
from core.pipeline import Checks, change_between
from core.progress import Progress, ShouldStop
from core.study import Study

if TYPE_CHECKING:
    from core.sheet.result import Change

REST_MS = 250
"""Lines, corners and choices that have not changed for so long are checked with."""

SHEETS = 2


@dataclass(frozen=True, eq=False)
class _Answer:
    """What came of a wish: a check, or a sentence that says why there is none."""

    wanted: Wanted
    checked: CheckedSheet | None
    sentence: str = ""


class Checker(QObject):
    """The checks of the study's sheets.

    Signals
    -------
    checks_changed()
        A check, a failure or the change between the sheets is new.
    opened_changed()
        What may be shown of a sheet (`is_open`) is more or less than before.
    busy(index: int, text: str, share: float), idle(index: int)
        A sheet has been worked on for 0.3 s and more, and no longer is.
    """

    checks_changed = Signal()
    opened_changed = Signal()
    busy = Signal(int, str, float)
    idle = Signal(int)

    def __init__(
        self,
        document: Document,
        reader: Reader,
        pictures: PictureStore,
        notices: Notices,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._reader = reader
        self._pictures = pictures
        self._notices = notices
        self.jobs = SheetJobs()
        self.known_elsewhere: Callable[[Wanted], CheckedSheet | None] = lambda wanted: None
        """A check that somebody else has made of the same."""
        self._answers: list[_Answer | None] = [None] * SHEETS
        self._asked: list[Wanted | None] = [None] * SHEETS
        self._stopped = [False] * SHEETS
        self._change: Change | None = None
        self._change_of: tuple[object, ...] = ()
        self._show_measured = False
        self._open = self._openness()
        self._places = [self._place(index) for index in range(SHEETS)]
        self._rest = QTimer(self, singleShot=True, interval=REST_MS)
        self._rest.timeout.connect(self._start)
        document.study_changed.connect(self._on_study)
        reader.readings_changed.connect(lambda readings: self._ask())
        reader.photo_changed.connect(lambda opened: self._forget_photo())
        reader.photo_closed.connect(self._forget_photo)
        reader.idle.connect(self._ask)

    # What there is

    @property
    def checks(self) -> Checks:
        """The newest check of each sheet; None while there is none."""
        first, second = (
            answer.checked.check if answer and answer.checked else None for answer in self._answers
        )
        return first, second

    @property
    def pictures(self) -> tuple[Pyramid | None, Pyramid | None]:
        """The straightened paintings, for the screen."""
        first, second = (
            answer.checked.picture if answer and answer.checked else None
            for answer in self._answers
        )
        return first, second

    @property
    def change(self) -> Change | None:
        """Sheet 2 against sheet 1; None until both are checked."""
        return self._change

    @property
    def working(self) -> bool:
        """Whether a check runs, or will shortly."""
        return self._rest.isActive() or any(place.running for place in self._places)

    def failure(self, index: int) -> str:
        """Why a sheet could not be checked, as a sentence; empty when nothing failed."""
        answer = self._answers[index]
        return answer.sentence if answer else ""

    def stopped(self, index: int) -> bool:
        """Whether the user called the check off."""
        return self._stopped[index]

    def running(self, index: int) -> bool:
        """Whether this sheet is being checked now."""
        return self._places[index].running

    def opened(self, index: int) -> OpenedPhoto | None:
        """The whole photo of a sheet, once it has been decoded for a check."""
        sheet = self._document.study.sheets[index]
        return self.jobs.opened.get(sheet.picture.digest) if sheet else None

    # What may be shown of it

    @property
    def show_measured(self) -> bool:
        """The teacher shows what was measured before the student's own scores are in."""
        return self._show_measured

    @show_measured.setter
    def show_measured(self, show: bool) -> None:
        if show != self._show_measured:
            self._show_measured = show
            self._open = self._openness()
            self.opened_changed.emit()

    def is_open(self, index: int) -> bool:
        """Whether findings and scores of a sheet may be shown."""
        return self._open[index]

    # What the user asks for

    def cancel(self, index: int) -> None:
        """Call off the check of a sheet; it is checked again when something changes."""
        if self._places[index].running:
            self._stopped[index] = True
            self._places[index].cancel()
            self.checks_changed.emit()

    def check_now(self, index: int) -> None:
        """Check a sheet again after it was called off or failed."""
        self._stopped[index] = False
        self._asked[index] = None
        self._answers[index] = None
        self._start()
        self.checks_changed.emit()

    # In step

    def _place(self, index: int) -> Latest:
        place = Latest(self)

        def busy(share: float) -> None:
            text = translate("checker", "Checking sheet {number}").format(number=index + 1)
            self.busy.emit(index, text, share)

        place.busy.connect(busy)
        place.idle.connect(lambda: self.idle.emit(index))
        return place

    def _on_study(self, before: Study, after: Study) -> None:
        gone = False
        for index in range(SHEETS):
            old, new = before.sheets[index], after.sheets[index]
            if (old and old.picture) != (new and new.picture):
                gone = self._forget(index) or gone
        if before.sheets != after.sheets or before.bands != after.bands:
            self._ask()
        if before.worksheet != after.worksheet:
            gone = self._compare() or gone
        self._tell_openness()
        if gone:
            self.checks_changed.emit()

    def _forget_photo(self) -> None:
        forgotten = [self._forget(index) for index in range(SHEETS)]
        if any(forgotten):
            self.checks_changed.emit()

    def _forget(self, index: int) -> bool:
        """Drop what is known of a sheet; whether there was anything."""
        self._places[index].cancel()
        known = self._answers[index] is not None or self._stopped[index]
        self._answers[index] = self._asked[index] = None
        self._stopped[index] = False
        return self._compare() or known

    def _ask(self) -> None:
        if any(self._document.study.sheets):
            self._rest.start()

    def _start(self) -> None:
        # While a line moves the readings pass by: the careful ones follow, or the reader says idle.
        if self._reader.working:
            return
        wanted = [self._wanted(index) for index in range(SHEETS)]
        for index, wish in enumerate(wanted):
            if wish is None:
                self._places[index].cancel()
            elif wish != self._asked[index]:
                self._asked[index], self._stopped[index] = wish, False
                self._run(index, wish)

    def _wanted(self, index: int) -> Wanted | None:
        sky, sheet = self._reader.sky, self._document.study.sheets[index]
        if sheet is None or sky is None:
            return None
        return Wanted(sky, sheet.picture, sheet.options)

    def _run(self, index: int, wanted: Wanted) -> None:
        known = self.jobs.checked.get(wanted) or self.known_elsewhere(wanted)
        if known is not None:
            self._places[index].cancel()
            self._take(index, _Answer(wanted, known))
            return
        data, jobs = self._pictures.get(wanted.picture.digest), self.jobs

        def work(progress: Progress, should_stop: ShouldStop) -> _Answer:
            found = jobs.check(wanted, data, progress, should_stop)
            if isinstance(found, str):
                return _Answer(wanted, None, found)
            return _Answer(wanted, found)

        self._places[index].run(
            work, lambda answer: self._take(index, answer), self._notices.failed
        )

    def _take(self, index: int, answer: _Answer) -> None:
        self._answers[index] = answer
        self._compare()
        self.checks_changed.emit()

    def _compare(self) -> bool:
        """Compare the sheets anew if need be; whether anything changed."""
        first, second = self.checks
        intended = self._document.study.worksheet.pages[0].change_first
        if (first, second, intended) == self._change_of:
            return False
        self._change_of = (first, second, intended)
        before = self._change
        self._change = change_between((first, second), intended)
        return self._change is not None or before is not None

    def _openness(self) -> list[bool]:
        pages = self._document.study.worksheet.pages
        return [self._show_measured or not page.scores.missing for page in pages]

    def _tell_openness(self) -> None:
        now = self._openness()
        if now != self._open:
            self._open = now
            self.opened_changed.emit()
