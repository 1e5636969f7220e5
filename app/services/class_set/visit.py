"""One student of the class set in the window's study, to be worked at on the other pages.

The study is composed from the exercise and the student's entry; every edit of it is an edit of
the class set at once, so nothing of it is ever kept in a second place. The photo, its lines and
the paints are the exercise's: when they change they change for the whole class, and lines ask
first, because every sheet is checked again.
"""

from __future__ import annotations

import io
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace

import numpy as np
from PySide6.QtCore import QObject, QTimer, Signal

from app.drawing.pyramid import Pyramid, image_of
from app.services.class_set.desk import ClassDesk
from app.services.photo_jobs import OpenedPhoto, for_screen
from app.services.sheet_jobs import CheckedSheet, Wanted
from app.state.document import Document, Gesture
from core.class_set import edits
from core.class_set.checking import to_check
from core.class_set.folder import ClassFolder
from core.class_set.kept_checks import Kept, KeptChecks
from core.class_set.model import ClassSet
from core.class_set.studies import open_study_of, with_open_study
from core.class_set.ticket import Slot
from core.i18n import translate
from core.photo import open_photo
from core.pictures import PictureStore
from core.study import Study, digests_of, without_work

REST_MS = 700
"""Lines that have not moved for so long are asked about."""

Show = Callable[[Study, OpenedPhoto, Mapping[str, bytes]], None]
AskLines = Callable[[int, Callable[[], None], Callable[[], None]], None]


@dataclass(frozen=True, eq=False)
class _Fetched:
    """What a student's study needs from the folder."""

    opened: OpenedPhoto
    pictures: dict[str, bytes]
    checked: dict[str, CheckedSheet]


class StudentVisit(QObject):
    """Which student is in the study, if one is.

    Signals
    -------
    changed()
        Another student is here, or none any more.
    """

    changed = Signal()

    def __init__(
        self,
        desk: ClassDesk,
        document: Document,
        pictures: PictureStore,
        show: Show,
        ask_lines: AskLines,
        parent: QObject | None = None,
    ) -> None:
        """`show` puts a study up; `ask_lines(count, yes, no)` asks whether to check all again."""
        super().__init__(parent)
        self._desk, self._document, self._pictures = desk, document, pictures
        self._show, self._ask_lines = show, ask_lines
        self._number: int | None = None
        self._opened: OpenedPhoto | None = None
        self._opened_of = ""
        self._checked: dict[str, CheckedSheet] = {}
        self._gesture: Gesture | None = None
        self._lines_may_change = False
        self._fetching = 0
        self._busy = False  # what changes now is our own doing
        self._stale = False
        self._rest = QTimer(self, singleShot=True, interval=REST_MS)
        self._rest.timeout.connect(self._ask_about_lines)
        document.study_changed.connect(self._on_study)
        document.beginning.connect(self.leave)
        desk.changed.connect(lambda before, after: self._on_class_set())
        desk.sorted_changed.connect(self._on_class_set)
        desk.opened.connect(self._on_opened)
        desk.saved.connect(self._on_saved)

    @property
    def number(self) -> int | None:
        """The student's number; None while the study is nobody's of the class."""
        return self._number

    @property
    def place(self) -> int | None:
        """Where the student stands in the list, counted from 0."""
        class_set = self._desk.class_set
        if class_set is None or self._number is None:
            return None
        numbers = [each.number for each in class_set.students]
        return numbers.index(self._number) if self._number in numbers else None

    @property
    def code(self) -> str:
        """The student's code; empty while it is nobody."""
        class_set, place = self._desk.class_set, self.place
        return "" if class_set is None or place is None else class_set.students[place].code

    @property
    def title(self) -> str:
        """Who it is: "7b, student 14"; empty while it is nobody."""
        class_set = self._desk.class_set
        if class_set is None or not self.code:
            return ""
        who = translate("class set page", "student {code}").format(code=self.code)
        return ", ".join(filter(None, (class_set.title, who)))

    def may_step(self, way: int) -> bool:
        """Whether there is a student before (-1) or after (1)."""
        class_set, place = self._desk.class_set, self.place
        return (
            class_set is not None
            and place is not None
            and (0 <= place + way < len(class_set.students))
        )

    def begin(self, place: int, then: Callable[[], object] | None = None) -> None:
        """Put a student into the study; `then` is called once they are there.

        Whatever is open must have been left before.
        """
        class_set, found = self._desk.class_set, self._desk.sorted
        if class_set is None or found is None or not 0 <= place < len(class_set.students):
            return
        number = class_set.students[place].number
        study = open_study_of(class_set, number, found.placement)
        kept = {digest: self._desk.fresh_check(digest) for digest in digests_of(study)}
        opened = self._opened if self._opened_of == _photo_of(class_set) else None
        self._fetching += 1
        turn = self._fetching

        def work(folder: ClassFolder) -> _Fetched:
            return _fetch(folder, study, kept, opened)

        def done(fetched: _Fetched) -> None:
            if turn != self._fetching or self._desk.class_set is None:
                return  # another student is wanted by now
            self._put(number, fetched)
            if then is not None:
                then()

        self._desk.with_folder(work, done)

    def step(self, way: int) -> None:
        """To the student before or after; lines that moved are asked about first."""
        place = self.place
        if place is not None and self.may_step(way):
            self._settle_lines()
            self.begin(place + way)

    def refresh(self) -> None:
        """The study's pages are shown again: what the class set says meanwhile is shown there."""
        if self._stale and self.place is not None:
            self.begin(self.place)

    def known_check(self, wanted: Wanted) -> CheckedSheet | None:
        """The class set's own check of a sheet, where it is one of the lines there are now."""
        class_set = self._desk.class_set
        if class_set is None or self._number is None:
            return None
        if self._document.study.bands != class_set.exercise.bands:
            return None
        brought = [one for one in class_set.brought if one.digest == wanted.picture.digest]
        if not brought or brought[0].options != wanted.options:
            return None
        return self._checked.get(wanted.picture.digest)

    def leave(self) -> None:
        """The study is no student's any more: another one is opened, or it is saved as a file."""
        if not self._busy and self._number is not None:
            self._leave()

    # Within

    def _put(self, number: int, fetched: _Fetched) -> None:
        class_set, found = self._desk.class_set, self._desk.sorted
        if class_set is None or found is None:
            return
        if number != self._number:
            self._gesture = Gesture()
        self._number, self._stale = number, False
        self._desk.place = [each.number for each in class_set.students].index(number)
        self._opened, self._opened_of = fetched.opened, _photo_of(class_set)
        self._checked = fetched.checked
        self._busy = True
        try:
            study = open_study_of(class_set, number, found.placement)
            self._show(study, fetched.opened, fetched.pictures)
        finally:
            self._busy = False
        self.changed.emit()

    def _on_study(self, before: Study, after: Study) -> None:
        class_set = self._desk.class_set
        if self._busy or self._number is None or class_set is None:
            return
        self._take_new_pictures(class_set, after)
        self._busy = True
        try:
            written = with_open_study(class_set, self._number, before, after)
            written = self._with_exercise(written, after)
            if written != class_set:
                student = class_set.class_list.student(self._number)
                text = translate("undo", "study of student {code}")
                code = "" if student is None else student.code
                self._desk.change(text.format(code=code), written, self._gesture)
        finally:
            self._busy = False
        if after.bands != class_set.exercise.bands and not self._lines_may_change:
            self._rest.start()

    def _take_new_pictures(self, class_set: ClassSet, after: Study) -> None:
        known = {each.digest for each in class_set.brought}
        assert self._number is not None
        for index, sheet in enumerate(after.sheets):
            if sheet is None or sheet.picture.digest in known:
                continue
            data = self._pictures.get(sheet.picture.digest)
            if data is not None:
                self._desk.bring_picture(sheet.picture.name, data, Slot(self._number, index))

    def _with_exercise(self, class_set: ClassSet, study: Study) -> ClassSet:
        """Paints and mixes are the whole class's; lines once that was said."""
        exercise = replace(without_work(study), hands=study.hands)
        had = class_set.exercise
        if not self._lines_may_change and not _as_many(study, had):
            # What is said of each band waits with the lines: it has other letters by now.
            exercise = replace(exercise, mix=had.mix, hands=had.hands)
        if not self._lines_may_change:
            exercise = replace(exercise, bands=had.bands)
        exercise = replace(exercise, photo=had.photo)
        return class_set if exercise == had else edits.with_exercise(class_set, exercise)

    def _settle_lines(self) -> None:
        if self._rest.isActive():
            self._rest.stop()
            self._ask_about_lines()

    def _ask_about_lines(self) -> None:
        class_set, bands = self._desk.class_set, self._document.study.bands
        if class_set is None or self._number is None or bands == class_set.exercise.bands:
            return

        def yes() -> None:
            self._lines_may_change = True
            self._on_study(self._document.study, self._document.study)

        def no() -> None:
            now = self._desk.class_set
            if now is not None and self._number is not None:
                had, study = now.exercise, self._document.study
                if not _as_many(study, had):
                    study = replace(study, mix=had.mix, hands=had.hands)
                study = replace(study, bands=had.bands)
                self._document.change(translate("undo", "lines as the class has them"), study)

        self._ask_lines(len(to_check(class_set)), yes, no)

    def _on_opened(self) -> None:
        """Another class set is open, or none: the study holds its exercise alone from now on."""
        if self._number is None:
            return
        self._rest.stop()  # whose lines they were is closed
        study, opened = without_work(self._document.study), self._opened
        self._leave()
        self._opened, self._opened_of = None, ""
        if opened is not None and study.photo is not None:
            data = self._pictures.get(study.photo.digest)
            held = {} if data is None else {study.photo.digest: data}
            self._show(study, opened, held)

    def _ask_once_left(self) -> None:
        """Lines that were moved a moment ago are asked about though the study is gone."""
        class_set, study = self._desk.class_set, self._document.study
        if class_set is None or study.bands == class_set.exercise.bands:
            return

        def yes() -> None:
            now = self._desk.class_set
            if now is None or now.class_list != class_set.class_list:
                return  # another class set is open by now
            exercise = replace(without_work(study), hands=study.hands, photo=now.exercise.photo)
            self._desk.change(translate("undo", "move line"), edits.with_exercise(now, exercise))

        self._ask_lines(len(to_check(class_set)), yes, lambda: None)

    def _leave(self) -> None:
        if self._rest.isActive():
            self._ask_once_left()
        self._rest.stop()
        self._fetching += 1
        self._number, self._checked, self._stale = None, {}, False
        self._lines_may_change = False
        self.changed.emit()

    def _on_class_set(self) -> None:
        """What was changed elsewhere is put into the study when it is looked at again."""
        class_set, found = self._desk.class_set, self._desk.sorted
        if self._busy or self._stale or self._number is None:
            return
        if class_set is None or found is None:
            return
        if class_set.class_list.student(self._number) is None:
            return
        study = self._document.study
        now = open_study_of(class_set, self._number, found.placement)
        # While its lines are being asked about they are the study's own.
        self._stale = replace(now, bands=study.bands) != study

    def _on_saved(self) -> None:
        if self._number is not None:
            self._document.mark_saved()


def _as_many(study: Study, other: Study) -> bool:
    """Whether both have the same number of bands."""
    counts = {0 if one.bands is None else one.bands.count for one in (study, other)}
    return len(counts) == 1


def _photo_of(class_set: ClassSet) -> str:
    photo = class_set.exercise.photo
    return "" if photo is None else photo.digest


def _fetch(
    folder: ClassFolder, study: Study, kept: Mapping[str, Kept | None], opened: OpenedPhoto | None
) -> _Fetched:
    """In the folder's thread: bytes, the photo for the screen, and the checks with their pixels."""
    assert study.photo is not None, "a class set has a photo"
    pictures = {digest: folder.read_picture(digest) for digest in digests_of(study)}
    if opened is None:
        data = pictures[study.photo.digest]
        opened = for_screen(open_photo(data, name=study.photo.name))
    checks, checked = KeptChecks(folder.path), {}
    for digest, one in kept.items():
        jpeg = None if one is None or one.check is None else checks.jpeg(one.key)
        if one is not None and one.check is not None and jpeg is not None:
            pixels = _pixels(jpeg)
            whole = replace(one.check, picture=pixels)
            checked[digest] = CheckedSheet(whole, Pyramid.of(image_of(pixels)))
    return _Fetched(opened, pictures, checked)


def _pixels(jpeg: bytes) -> np.ndarray:
    from PIL import Image  # deferred: start-up time

    with Image.open(io.BytesIO(jpeg)) as image:
        return np.asarray(image.convert("RGB"))
