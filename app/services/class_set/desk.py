"""The class set that is open: one place for all that pages and menus want of it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal

from app.drawing.pyramid import Pyramid, image_of
from app.services.class_set.bringer import Bringer
from app.services.class_set.checker import ClassChecker
from app.services.class_set.document import ClassDocument
from app.services.class_set.keeper import ClassKeeper
from app.services.class_set.pictures import ClassPictures, levels_of
from app.services.class_set.score_reader import ScoreReader
from app.services.class_set.underway import Underway
from app.services.notices import Notices
from app.state.document import Gesture
from app.state.language import language_in_use
from app.state.tasks import Latest
from core.class_set.arrivals import Arrival, arrival_of
from core.class_set.bringing import Told, bring_picture
from core.class_set.checking import to_check
from core.class_set.deleting import Ours, delete_class_set
from core.class_set.folder import ClassFolder, create_folder, open_folder
from core.class_set.kept_checks import Kept, KeptChecks, check_key, found_checks
from core.class_set.model import ClassSet
from core.class_set.prints import sky_of
from core.class_set.questions import Sorted, same_sheets, sort_pictures
from core.class_set.ticket import Slot
from core.class_set.tidying import Tidied, tidy
from core.errors import GradewashError
from core.i18n import translate
from core.progress import Progress, ShouldStop

REST_MS = 250
"""Corners that have not moved for so long are checked with."""

_SETTLE_MS = 150
"""Results that come faster are sorted together."""


@dataclass(frozen=True, eq=False)
class _Opened:
    folder: ClassFolder
    checks: dict[str, Kept]
    same: dict[str, str]
    sky: Pyramid


class ClassDesk(QObject):
    """The open class set.

    Attributes
    ----------
    document : ClassDocument
        The door for edits; `document.class_set` is None while none is open.
    pictures : ClassPictures
        Small images for the screen.
    scores : ScoreReader
        What was read of the worksheet pages; no score of a student's before it is taken.
    checks : dict of str to Kept
        By the picture's digest, as far as there are any; without pixels.
    sorted : Sorted or None
        Where every picture is, and what is asked about them.
    sky : Pyramid or None
        The exercise's photo from its top to the horizon.
    place : int
        The student who is looked at, counted from 0 in the list's order.

    Signals
    -------
    opened()
        Another class set is here, or none any more.
    changed(before: ClassSet or None, after: ClassSet or None)
        The document's.
    sorted_changed()
        `sorted` or `checks` are others now.
    underway_changed()
    stopped()
        A check was called off: `unchecked` says how many are left.
    saved()
        The disk has what there was a moment ago.
    """

    opened = Signal()
    changed = Signal(object, object)
    sorted_changed = Signal()
    underway_changed = Signal()
    stopped = Signal()
    saved = Signal()

    def __init__(self, notices: Notices, data_folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._notices, self._data = notices, data_folder
        self.document = ClassDocument(self)
        self.pictures = ClassPictures(self)
        self.scores = ScoreReader(self)
        self._keeper = ClassKeeper(self.document, self)
        self._bringer = Bringer(self.document, self._keeper, self)
        self._checker = ClassChecker(self)
        self._opening, self._comparing = Latest(self), Latest(self)
        self._again = False
        self._about_to_check = False
        self.checks: dict[str, Kept] = {}
        self._same: dict[str, str] = {}
        self.sorted: Sorted | None = None
        self.sky: Pyramid | None = None
        self.place = 0
        self._settle = QTimer(self, singleShot=True, interval=_SETTLE_MS)
        self._settle.timeout.connect(self._compare)
        self._rest = QTimer(self, singleShot=True, interval=REST_MS)
        self._rest.timeout.connect(self._check_again)
        self.document.changed.connect(self._on_changed)
        self._keeper.failed.connect(notices.failed)
        self._keeper.saved.connect(self.saved)
        self._bringer.changed.connect(self.underway_changed)
        self._bringer.ended.connect(self._on_brought)
        self._bringer.failed.connect(notices.failed)
        self._checker.changed.connect(self.underway_changed)
        self._checker.checked.connect(self._on_checked)
        self._checker.ended.connect(self._on_check_ended)
        self._checker.failed.connect(notices.failed)

    # What there is

    @property
    def class_set(self) -> ClassSet | None:
        """The class set as it is now; None while none is open."""
        return self.document.class_set

    @property
    def path(self) -> Path | None:
        """Its folder."""
        return None if self._keeper.folder is None else self._keeper.folder.path

    @property
    def underway(self) -> tuple[Underway, ...]:
        """What works on many pictures now."""
        both = (self._bringer.underway, self._checker.underway)
        return tuple(one for one in both if one is not None)

    @property
    def working(self) -> bool:
        """Whether anything is still to come."""
        opening = self._opening.running or self._comparing.running or self._settle.isActive()
        opening = opening or self._rest.isActive() or self.scores.working
        opening = opening or self._about_to_check
        return bool(self.underway) or opening or self.pictures.working or self._keeper.unsaved

    @property
    def unchecked(self) -> int:
        """Sheets without a check, or with one of other corners, lines or photo."""
        class_set = self.class_set
        if class_set is None:
            return 0
        fresh = self._fresh()
        return sum(each.digest not in fresh for each in to_check(class_set))

    def checking(self, digest: str) -> bool:
        """Whether a sheet's check is still to come."""
        return digest not in self._fresh()

    def fresh_check(self, digest: str) -> Kept | None:
        """A sheet's check, where it is of the corners, the lines and the photo there are now."""
        return self.checks.get(digest) if digest in self._fresh() else None

    def painting(self, digest: str | None) -> Pyramid | None:
        """A sheet's painting straightened; None while it is not checked, or not there yet."""
        kept, path = self.checks.get(digest or ""), self.path
        if kept is None or kept.check is None or path is None:
            return None
        return self.pictures.painting(KeptChecks(path).picture(kept.key))

    def photo(self, digest: str | None) -> Pyramid | None:
        """A picture as it was brought in; None while it is not there yet."""
        folder = self._keeper.folder
        if not digest or folder is None:
            return None
        return self.pictures.photo(folder.picture_path(digest))

    def picture_path(self, digest: str) -> Path | None:
        """Where a picture's bytes are; None while no class set is open."""
        folder = self._keeper.folder
        return None if folder is None else folder.picture_path(digest)

    # Opening and closing

    def open(self, path: Path) -> None:
        """Open a class set's folder; what is open is closed first."""
        self._leave_then(lambda: self._open(lambda: open_folder(path, self._data)))

    def create(
        self,
        path: Path,
        class_set: ClassSet,
        photo: bytes,
        then: Callable[[], object] | None = None,
    ) -> None:
        """Make a class set's folder and open it; `then` is called once that has succeeded."""
        make = lambda: create_folder(path, class_set, photo, self._data)  # noqa: E731
        self._leave_then(lambda: self._open(make, then))

    def close(self, then: Callable[[], object] | None = None) -> None:
        """Close the class set, all of it saved; `then` is called once that is done."""

        def closed() -> None:
            self._put_away()
            self.opened.emit()
            if then is not None:
                then()

        self._leave_then(closed)

    def finish(self) -> None:
        """The program ends, and no worker runs any more."""
        try:
            self._keeper.finish()
        except GradewashError:
            self._keeper.let_go()
            raise

    # Work on many pictures

    def add(self, paths: Sequence[Path]) -> None:
        """Bring in pictures, folders of them, and studies; then they are checked."""
        if self.class_set is not None:
            self._bringer.add(paths)

    def check(self) -> None:
        """Check what has not been checked."""
        folder = self._keeper.folder
        if folder is not None:
            self._keeper.save()
            self._about_to_check = True
            # After the save, so that what is checked is what is seen.
            self._keeper.run(lambda progress, stop: None, lambda nothing: self._check_now(folder))

    def stop(self) -> None:
        """Call off what works on many pictures; what was told is kept."""
        self._bringer.stop()
        self._checker.stop()

    def change(self, text: str, after: ClassSet, gesture: Gesture | None = None) -> None:
        """As `ClassDocument.change`."""
        self.document.change(text, after, gesture)

    def with_folder(
        self, work: Callable[[ClassFolder], object], done: Callable[..., object]
    ) -> None:
        """Do something with the folder as it is now, saved, in its thread: an export, a print.

        Parameters
        ----------
        work : callable
            Must not change the class set.
        done : callable
            Takes what `work` gave.
        """
        folder = self._keeper.folder
        if folder is None:
            return
        self._keeper.save()

        def run(progress: Progress, should_stop: ShouldStop) -> object:
            return work(folder)

        self._keeper.run(run, done, self._notices.failed)

    def bring_picture(self, name: str, data: bytes, slot: Slot) -> None:
        """Bring one picture in, to a place; then it is checked."""
        folder, keeper = self._keeper.folder, self._keeper
        if folder is None:
            return
        self._keeper.save()

        def work(progress: Progress, should_stop: ShouldStop) -> Arrival:
            before = folder.class_set
            bring_picture(folder, name, data, slot)
            arrival = arrival_of(before, folder.class_set)
            keeper.arrived(arrival)
            return arrival

        def done(arrival: Arrival) -> None:
            self.document.arrive(arrival)
            self._check_again()

        self._keeper.run(work, done, self._notices.failed)

    def tidy(self, done: Callable[[Tidied], object]) -> None:
        """Keep of each sheet its painting alone; nothing before it can be undone."""
        folder, checks, language = self._keeper.folder, dict(self.checks), language_in_use()
        if folder is None or self.underway:
            return
        self._keeper.save()

        def work(progress: Progress, should_stop: ShouldStop) -> tuple[Tidied, dict[str, Kept]]:
            tidied = tidy(folder, checks, language)
            return tidied, found_checks(folder.path, folder.class_set, language)

        def after(found: tuple[Tidied, dict[str, Kept]]) -> None:
            tidied, self.checks = found
            self._same = {}
            self._keeper.hold(folder)
            self.document.begin(folder.class_set)
            done(tidied)

        self._keeper.run(work, after, self._notices.failed)

    def delete(self, done: Callable[[Ours], None]) -> None:
        """Close the class set and remove what it wrote."""
        path = self.path
        if path is None:
            return

        def gone() -> None:
            def work(progress: Progress, should_stop: ShouldStop) -> Ours:
                return delete_class_set(path, self._data)

            self._opening.run(work, done, self._notices.failed)

        self.close(gone)

    # Within

    def _open(
        self, make: Callable[[], ClassFolder], then: Callable[[], object] | None = None
    ) -> None:
        language = language_in_use()
        if self._opening.running:
            return  # what is opened then would be held and shown by nobody

        def work(progress: Progress, should_stop: ShouldStop) -> _Opened:
            folder = make()
            try:
                return _look_into(folder, language)
            except BaseException:
                folder.close()
                raise

        def done(found: _Opened) -> None:
            self._put(found)
            if then is not None:
                then()

        self._opening.run(work, done, self._notices.failed)

    def _put(self, found: _Opened) -> None:
        self._put_away()
        self.checks, self._same = found.checks, found.same
        self.sky, self.place = found.sky, 0
        self._keeper.hold(found.folder)
        self.document.begin(found.folder.class_set)
        self.opened.emit()
        if found.folder.missing:
            self._notices.problem(
                translate(
                    "class set page",
                    "{n} pictures of this class set are gone from its folder, {name} among them: "
                    "bring them in again.",
                ).format(n=len(found.folder.missing), name=found.folder.missing[0])
            )
        if self.unchecked:
            self.check()

    def _put_away(self) -> None:
        self._bringer.forget()
        self._checker.stop()
        self._comparing.cancel()
        self._settle.stop()
        self._rest.stop()
        self.pictures.forget()
        self.scores.forget()
        self._keeper.let_go()
        self.checks, self._same, self.sorted, self.sky = {}, {}, None, None
        self.document.begin(None)

    def _leave_then(self, then: Callable[[], object]) -> None:
        """Call `then` once nothing of the open class set is unsaved."""
        if self._keeper.folder is None:
            then()
            return
        self._bringer.stop()
        self._checker.stop()
        self._keeper.save()

        def saved(nothing: object) -> None:
            if self._keeper.unsaved and self._bringer.underway is None:
                return  # it failed, and that was said: the class set stays open
            then()

        # Behind the save and what the bringing in is at.
        self._keeper.run(lambda progress, should_stop: None, saved)

    def _check_now(self, folder: ClassFolder) -> None:
        self._about_to_check = False
        if self._keeper.folder is not folder:
            return
        if self._checker.underway is None:
            self._checker.begin(folder, language_in_use(), self._fresh())
        else:
            self._again = True  # brought in while the rest is checked

    def _on_changed(self, before: ClassSet | None, after: ClassSet | None) -> None:
        if after is not None:
            told = (
                before is None
                or before.brought != after.brought
                or before.exercise != after.exercise
                or self.sorted is None
            )
            if told:
                self._sort()
            if before is not None and _looks_otherwise(before, after):
                self._rest.start()
        self.changed.emit(before, after)

    def _check_again(self) -> None:
        if self.unchecked:
            self.check()

    def _fresh(self) -> frozenset[str]:
        """The pictures whose check is of the corners, the lines and the photo there are now."""
        class_set, checks, language = self.class_set, self.checks, language_in_use()
        if class_set is None:
            return frozenset()
        return frozenset(
            each.digest
            for each in class_set.brought
            if (kept := checks.get(each.digest)) is not None
            and kept.key == check_key(each, class_set.exercise, language)
        )

    def _sort(self) -> None:
        class_set = self.class_set
        if class_set is not None:
            self.sorted = sort_pictures(class_set, self.checks, self._same)
            if self._keeper.folder is not None:
                self.scores.look_at(self._keeper.folder, self.sorted.placement)
            self.sorted_changed.emit()

    def _on_checked(self, digest: str, kept: Kept) -> None:
        self.checks[digest] = kept
        if not self._settle.isActive():
            self._settle.start()

    def _compare(self) -> None:
        """Which pictures show the same sheet; the rest is quick once that is known."""
        class_set, checks = self.class_set, dict(self.checks)
        if class_set is None:
            return
        if self._comparing.running:
            self._settle.start()
            return

        def work(progress: Progress, should_stop: ShouldStop) -> dict[str, str]:
            return same_sheets(class_set, checks)

        def done(same: dict[str, str]) -> None:
            self._same = same
            self._sort()

        self._comparing.run(work, done)

    def _on_brought(self, told: tuple[Told, ...]) -> None:
        failed = [one for one in told if one.sentence]
        if failed:
            text = failed[0].sentence
            if len(failed) > 1:
                more = translate("class set page", "{n} files could not be brought in. The first: ")
                text = more.format(n=len(failed)) + text
            self._notices.problem(text)
        for one in told:
            # It was damaged, perhaps, and is whole now.
            if one.digest in self.checks and self.checks[one.digest].check is None:
                del self.checks[one.digest]
        if self.unchecked and self._bringer.underway is None:
            self.check()

    def _on_check_ended(self, stopped: bool) -> None:
        self._settle.start()
        again, self._again = self._again, False
        if stopped:
            self.stopped.emit()
        elif again:
            self.check()


def _looks_otherwise(before: ClassSet, after: ClassSet) -> bool:
    """Whether a picture that was there is to be looked at in another way."""
    if before.exercise != after.exercise:
        return True
    if before.brought is after.brought:
        return False
    had = {each.digest: each.options for each in before.brought}
    return any(had.get(each.digest, each.options) != each.options for each in after.brought)


def _look_into(folder: ClassFolder, language: str) -> _Opened:
    class_set = folder.class_set
    checks = found_checks(folder.path, class_set, language)
    photo, bands = class_set.exercise.photo, class_set.exercise.bands
    assert photo is not None, "a class set has a photo"
    horizon = 1.0 if bands is None else bands.horizon
    sky = levels_of(image_of(sky_of(folder.read_picture(photo.digest), horizon)))
    return _Opened(folder, checks, same_sheets(class_set, checks), sky)
