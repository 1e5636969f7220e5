"""What is done with a scrap on the Mix page: brought, corrected, held against the bands, kept."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from pathlib import Path

from PySide6.QtCore import QMimeData, QObject, Signal
from PySide6.QtWidgets import QWidget

from app.files.brought import image_in, paths_in
from app.files.file_dialogs import any_files, ask_to_open, photos
from app.mix.scrap_jobs import Read, ReadScrap, from_image, from_path, read_scrap
from app.services.notices import Notices
from app.state.document import Document
from app.state.tasks import Latest
from core import mixing
from core.errors import PhotoError
from core.i18n import translate
from core.paint.planned import MixPlan
from core.pictures import PictureStore
from core.progress import Progress, ShouldStop
from core.scrap.held import Held, hold, nearest_band, teach_box
from core.scrap.keeping import earlier_of, entries_of, with_entries
from core.scrap.kept import ScrapEntry
from core.scrap.strokes import FoundStroke, Region, read_region
from core.scrap.teach import taught_keys
from core.scrap.words import taught_sentence
from core.study import Study, with_scraps


@dataclass(frozen=True)
class Marked:
    """A stroke on the picture, and the band it is for."""

    stroke: FoundStroke
    letter: str


@dataclass(frozen=True)
class OnDesk:
    """What lies on the desk.

    Attributes
    ----------
    read : ReadScrap or None
    strokes : tuple of Marked
    chosen : int
        Number of the stroke that is looked at.
    held : tuple of Held
        The strokes' bands; empty while they are being held against them.
    fresh : frozenset of str
        Bands whose strokes come from a fresh puddle, whatever was kept before.
    """

    read: ReadScrap | None = None
    strokes: tuple[Marked, ...] = ()
    chosen: int = 0
    held: tuple[Held, ...] = ()
    fresh: frozenset[str] = field(default_factory=frozenset)

    @property
    def letter(self) -> str | None:
        """The band of the chosen stroke."""
        return self.strokes[self.chosen].letter if self.strokes else None

    @property
    def held_now(self) -> Held | None:
        """The band of the chosen stroke, once it is held."""
        return next((held for held in self.held if held.letter == self.letter), None)


class ScrapDesk(QObject):
    """Takes pictures of scraps and says what is on them.

    Signals
    -------
    changed()
        `on_desk` shows something else.
    busy(share: float), idle()
        A picture has been read for 0.3 s and more, and no longer is.
    """

    changed = Signal()
    busy = Signal(float)
    idle = Signal()

    def __init__(
        self,
        document: Document,
        pictures: PictureStore,
        notices: Notices,
        keeps: Callable[[], bool],
        window: QWidget,
    ) -> None:
        """`keeps` tells whether the study that is open can hold scraps."""
        super().__init__(window)
        self._document, self._pictures, self._notices = document, pictures, notices
        self._keeps = keeps
        self._window = window
        self._folder = Path.home()
        self._plan: MixPlan | None = None
        self._open = "A"
        self.on_desk = OnDesk()
        self._reading, self._holding = Latest(self), Latest(self)
        self._reading.busy.connect(self.busy)
        self._reading.idle.connect(self.idle)
        document.begun.connect(self.clear)
        document.study_changed.connect(self._on_study)

    @property
    def running(self) -> bool:
        """Whether something is being worked out."""
        return self._reading.running or self._holding.running

    @property
    def keeps(self) -> bool:
        """Whether a scrap can be kept: the study of a student of the class set holds none."""
        return self._keeps()

    @property
    def kept(self) -> tuple[ScrapEntry, ...]:
        """The scraps of the study."""
        return self._document.study.scraps

    def set_plan(self, plan: MixPlan | None, letter: str) -> None:
        """The plan, and the letter of the band whose row is open."""
        self._open = letter
        if plan is self._plan:
            return
        self._plan = plan
        known = () if plan is None else tuple(band.letter for band in plan.bands)
        strokes = tuple(
            mark if mark.letter in known or not known else replace(mark, letter=known[-1])
            for mark in self.on_desk.strokes
        )
        self._put(replace(self.on_desk, strokes=strokes, held=()))
        self._hold()

    # Bringing a picture

    def choose(self) -> None:
        """Ask for a picture."""
        title = translate("mix page", "A photo of the dried strokes")
        path = ask_to_open(self._window, title, self._folder, photos(), any_files())
        if path is not None:
            self.add_path(path)

    def add_path(self, path: Path) -> None:
        """Take a file."""
        self._folder = path.parent
        self._add(from_path(path))

    def add_mime(self, mime: QMimeData) -> bool:
        """Take the first file or picture in `mime`; False when there is none."""
        paths, image = paths_in(mime), image_in(mime)
        if paths:
            self.add_path(paths[0])
        elif image is not None:
            self._add(from_image(image))
        return bool(paths) or image is not None

    def cancel(self) -> None:
        """Call off what is being worked out."""
        self._reading.cancel()
        self._holding.cancel()

    def clear(self) -> None:
        """Nothing on the desk."""
        self.cancel()
        self._put(OnDesk())

    def _add(self, read: Read) -> None:
        def work(progress: Progress, should_stop: ShouldStop) -> ReadScrap:
            return read_scrap(read, progress, should_stop)

        self._reading.run(work, self._take, self._notices.failed)

    def _take(self, read: ReadScrap) -> None:
        found = read.scrap.strokes
        strokes = tuple(Marked(stroke, self._proposed(stroke, len(found))) for stroke in found)
        chosen = next((i for i, mark in enumerate(strokes) if mark.letter == self._open), 0)
        self._notices.settle()
        self._put(OnDesk(read, strokes, chosen))
        self._hold()

    def _proposed(self, stroke: FoundStroke, count: int) -> str:
        """The nearest band; a stroke alone is for the band whose row is open."""
        if self._plan is None or count == 1:
            return self._open
        return nearest_band(self._plan, stroke) or self._open

    # Correcting

    def look_at(self, number: int) -> None:
        """Look at another stroke."""
        if 0 <= number < len(self.on_desk.strokes):
            self._put(replace(self.on_desk, chosen=number))

    def draw(self, region: Region) -> None:
        """A stroke by hand, for the band whose row is open."""
        read = self.on_desk.read
        if read is None:
            return
        try:
            stroke = read_region(read.scrap, region)
        except PhotoError as error:
            self._notices.problem(str(error))
            return
        self._notices.settle()
        strokes = (*self.on_desk.strokes, Marked(stroke, self._open))
        self._put(replace(self.on_desk, strokes=strokes, chosen=len(strokes) - 1, held=()))
        self._hold()

    def leave_out(self) -> None:
        """The chosen stroke is none."""
        here = self.on_desk
        strokes = here.strokes[: here.chosen] + here.strokes[here.chosen + 1 :]
        chosen = min(here.chosen, max(len(strokes) - 1, 0))
        self._put(replace(here, strokes=strokes, chosen=chosen, held=()))
        self._hold()

    def assign(self, letter: str) -> None:
        """The chosen stroke is for another band."""
        here = self.on_desk
        if not here.strokes or here.letter == letter:
            return
        strokes = list(here.strokes)
        strokes[here.chosen] = replace(strokes[here.chosen], letter=letter)
        self._put(replace(here, strokes=tuple(strokes), held=()))
        self._hold()

    def set_fresh(self, fresh: bool) -> None:
        """Say whether the chosen stroke's band has a fresh puddle."""
        letter = self.on_desk.letter
        if letter is not None:
            one = frozenset((letter,))
            known = self.on_desk.fresh | one if fresh else self.on_desk.fresh - one
            self._put(replace(self.on_desk, fresh=known, held=()))
            self._hold()

    def mixed_before(self, letter: str) -> bool:
        """Whether the study keeps a try of the puddle a band has now."""
        return self._plan is not None and letter in earlier_of(self.kept, self._plan)

    # Keeping

    def keep(self) -> None:
        """Keep the strokes of the chosen one's band in the study."""
        held, read = self.on_desk.held_now, self.on_desk.read
        if held is None or read is None or not self.keeps:
            return
        with self._notices.reporting():
            entries = entries_of(read.scrap, held, self._pictures)
            study = self._document.study
            text = translate("undo", "keep scrap of band {letter}").format(letter=held.letter)
            scraps = with_entries(study.scraps, entries)
            self._put_away(held.letter)
            self._document.change(text, with_scraps(study, scraps))

    def teach(self) -> None:
        """Let the strokes of the chosen one's band teach the box, and keep them: one edit.

        The box is taught too where scraps cannot be kept: it is the whole class's.
        """
        held, read = self.on_desk.held_now, self.on_desk.read
        if held is None or held.lesson is None or read is None or self._plan is None:
            return
        with self._notices.reporting():
            study = self._document.study
            box, lessons = teach_box(study.box, [held])
            if not lessons:
                return
            if self.keeps:
                entries = entries_of(read.scrap, held, self._pictures)
                study = with_scraps(study, with_entries(study.scraps, entries))
            text = translate("undo", "let a scrap teach the box")
            self._put_away(held.letter)
            self._document.change(text, mixing.choose_box(study, box))
            said = taught_sentence(box, taught_keys(lessons))
            self._notices.note(
                translate("mix page", "{learned} Keep the box to use it elsewhere.").format(
                    learned=said
                ),
                "swatches",
            )

    def _put_away(self, letter: str) -> None:
        """The strokes of a band are kept: they leave the desk."""
        left = tuple(mark for mark in self.on_desk.strokes if mark.letter != letter)
        self.on_desk = OnDesk(self.on_desk.read, left) if left else OnDesk()

    def take_out(self, letter: str) -> None:
        """Take the last scrap of a band out of the study."""
        study = self._document.study
        places = [i for i, scrap in enumerate(study.scraps) if scrap.letter == letter]
        if places:
            scraps = study.scraps[: places[-1]] + study.scraps[places[-1] + 1 :]
            text = translate("undo", "take out scrap of band {letter}").format(letter=letter)
            self._document.change(text, with_scraps(study, scraps))

    def _on_study(self, before: Study, after: Study) -> None:
        if before.scraps != after.scraps:
            self._put(replace(self.on_desk, held=()))
            self._hold()

    # Holding

    def _hold(self) -> None:
        plan, strokes = self._plan, self.on_desk.strokes
        if plan is None or not strokes:
            self._holding.cancel()
            return
        marked = [(mark.stroke, mark.letter) for mark in strokes]
        fresh, kept = self.on_desk.fresh, self.kept

        def work(progress: Progress, should_stop: ShouldStop) -> tuple[Held, ...]:
            earlier = earlier_of(kept, plan)
            return hold(plan, marked, {key: earlier[key] for key in earlier.keys() - fresh})

        self._holding.run(work, lambda held: self._put(replace(self.on_desk, held=held)))

    def _put(self, on_desk: OnDesk) -> None:
        self.on_desk = on_desk
        self.changed.emit()
