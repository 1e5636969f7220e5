"""What the class view shows now: the lesson, and what takes the screen instead of it."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleEvent,
)
from PySide6.QtWidgets import QWidget

from app.classview import content
from app.classview.brush import Brush
from app.classview.demonstration import demonstration_text
from app.classview.finder import Finder
from app.classview.keys import Command
from app.classview.pacing import Pacing
from app.classview.tally import Tally
from app.classview.tries import tries_text, try_colours
from app.classview.wheel_over import ClassWheel
from app.drawing.classview.tries import TryColour
from app.drawing.pyramid import Pyramid
from core.i18n import translate
from core.lesson import lesson as steps
from core.lesson.demonstration import paces
from core.lesson.lesson import Hands, Lesson
from core.paint.planned import MixPlan
from core.paint.preview import laying_order
from core.reading.reading import BandReading
from core.reading.wording import Wording
from core.scrap.kept import ScrapEntry


class ClassState(QWidget):
    """What is before the class now, and what each command makes of it; draws nothing itself.

    Signals
    -------
    left()
        The teacher is done.
    band_changed(band: int)
    say_asked(text: str)
    hands_changed(hands: tuple of Hands)
        Hands were counted, of any band.
    wheel_put(place: WheelPlace, gesture: Gesture)
        The wheel over the photo is wanted there.
    pointed(point: tuple[float, float] | None)
        Fractions of the photo under the mouse, while the wheel over it may show their place.
    """

    left = Signal()
    band_changed = Signal(int)
    say_asked = Signal(str)
    hands_changed = Signal(object)
    wheel_put = Signal(object, object)
    pointed = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(translate("class view", "Class view"))
        self.setProperty("own_focus", True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(640, 400)
        self.can_speak = False
        self.lesson: Lesson | None = None
        self.tally: Tally | None = None
        self.keys_shown = False
        self.demonstrating = False
        self.watching = False
        self.over = False
        self.wheel_over = ClassWheel(self)
        self.wheel_over.put.connect(self.wheel_put)
        self.wheel_over.changed.connect(self.update)
        self.setMouseTracking(True)
        self.trying = False
        self.brush = Brush(self)
        self.brush.moved.connect(self.update)
        self.finder = Finder(self)
        self.finder.moved.connect(self.update)
        self.pacing = Pacing(self)
        self.pacing.changed.connect(self._follow_pacing)
        self._picture: Pyramid | None = None
        self._aspect = 1.5
        self._edges: tuple[float, ...] = ()
        self._readings: tuple[BandReading, ...] = ()
        self._wording = Wording()
        self._plan: MixPlan | None = None
        self._hands: tuple[Hands, ...] = ()
        self._scraps: tuple[ScrapEntry, ...] = ()

    def show_photo(self, picture: Pyramid, aspect: float) -> None:
        """Another photo; `aspect` is its width by its height."""
        self._picture, self._aspect = picture, aspect
        self.update()

    def show_readings(self, readings: Sequence[BandReading], wording: Wording) -> None:
        """The bands' readings, from the top down."""
        self._readings, self._wording = tuple(readings), wording
        if not readings:
            self.lesson, self.tally = None, None
        else:
            self._edges = (readings[0].top, *(reading.bottom for reading in readings))
            count = len(readings)
            lesson = steps.resized(self.lesson or Lesson(count), count, self._two())
            self.lesson = steps.with_hands(lesson, self._hands)
        self._changed()

    def show_plan(self, plan: MixPlan | None) -> None:
        """The plan of the mixes; None while there is none."""
        self._plan = plan
        self.pacing.set_steps(paces(plan.order if plan else None))
        self._changed()

    def show_hands(self, hands: tuple[Hands, ...]) -> None:
        """The hands that are kept in the study."""
        self._hands = hands
        if self.lesson is not None and self.lesson.hands != hands:
            self.lesson = steps.with_hands(self.lesson, hands)
            self._changed()

    def show_scraps(self, scraps: tuple[ScrapEntry, ...]) -> None:
        """The scraps that are kept in the study."""
        self._scraps = scraps
        self._changed()

    def begin(self, band: int) -> None:
        """A fresh lesson, at a band."""
        if self._readings:
            count = len(self._readings)
            lesson = Lesson(count, min(band, count - 1), two=self._two())
            self.lesson = steps.with_hands(lesson, self._hands)
        self.tally, self.keys_shown, self.demonstrating = None, False, False
        self.watching = self.trying = False
        self.brush.lay(())
        self.finder.put_away()
        self.pacing.go_to(None)
        self._changed()

    def _two(self) -> tuple[int, ...]:
        """Numbers of the bands that hold two colours."""
        return tuple(i for i, reading in enumerate(self._readings) if reading.second is not None)

    @property
    def reading(self) -> BandReading | None:
        """The band that is asked about."""
        return self._readings[self.lesson.band] if self.lesson else None

    @property
    def hint(self) -> str:
        """What the next key does."""
        if self.lesson is None:
            return ""
        if self.demonstrating:
            return translate("class view", "Esc: questions")
        if self.tally is not None:
            return translate("class view", "T: back")
        if self.lesson.question is not None:
            return translate("class view", "Space: answer")
        if self.lesson.band + 1 < self.lesson.bands:
            letter = self._readings[self.lesson.band + 1].letter
            return translate("class view", "Down: band {letter}").format(letter=letter)
        if len(self.lesson.finished) == self.lesson.bands:
            return translate("class view", "W: watch it painted")
        return translate("class view", "F1: keys")

    def run(self, command: Command) -> None:
        """Do what a key asks."""
        lesson = self.lesson
        if command == "leave":
            self.left.emit()
        elif command == "keys":
            self.keys_shown = not self.keys_shown
            self._changed()
        elif command in ("step on", "step back"):
            self._step(1 if command == "step on" else -1)
        elif command in ("longer", "shorter"):
            self.pacing.change_minutes(1 if command == "longer" else -1)
        elif command == "viewfinder":
            if lesson is not None:
                self.finder.hold(self._edges, lesson.band)
                self._changed()
        elif command == "scraps":
            self.trying = not self.trying and bool(self._tries())
            self._changed()
        elif command == "paint":
            self._watch(not self.watching)
        elif command == "over":
            self.over = not self.over
            self._changed()
        elif command == "bell":
            self.pacing.toggle_bell()
        elif lesson is not None:
            self._run_on(command, lesson)

    def _step(self, by: int) -> None:
        """Go on or back in the demonstration; one that is out of sight comes back where it was."""
        if self.demonstrating or self.pacing.present is None:
            self.pacing.go(by)
        self._demonstrate(self.pacing.present is not None)

    def _demonstrate(self, shown: bool) -> None:
        """Give the screen to the work, or back to the questions; its clocks run on."""
        self.demonstrating = shown
        if shown:
            self.tally = None
        self._changed()

    def _watch(self, shown: bool) -> None:
        """Let the sky paint itself before the class, or go back to the questions."""
        self.watching = shown and self._plan is not None
        self.demonstrating = False
        letters = laying_order(self._plan) if self._plan is not None and self.watching else ()
        self.brush.lay(letters)
        self._changed()

    def _run_on(self, command: Command, lesson: Lesson) -> None:
        if command == "tally":
            self.tally = None if self.tally else Tally(lesson, self._wording)
            self._changed()
        elif command == "say":
            reading = self.reading
            if self.can_speak and reading is not None:
                text = content.spoken_text(lesson, reading, self._wording, self._plan)
                self.say_asked.emit(text)
        else:
            edits: dict[Command, Callable[[Lesson], Lesson]] = {
                "answer": steps.answer,
                "take back": steps.take_back,
                "advance": steps.advance,
                "next band": lambda now: steps.go(now, 1),
                "band before": lambda now: steps.go(now, -1),
            }
            self._set(edits[command](lesson))

    def _set(self, lesson: Lesson) -> None:
        before, self.lesson = self.lesson, lesson
        come = set(lesson.finished) - set(before.finished if before is not None else ())
        self.brush.lay([self._readings[band].letter for band in sorted(come)])
        if before is None or before.band != lesson.band:
            self.tally = None
            self.band_changed.emit(lesson.band)
        self._changed()
        if before is not None and before.hands != lesson.hands:
            self._hands = lesson.hands
            self.hands_changed.emit(lesson.hands)

    def _changed(self) -> None:
        reading = self.reading
        if reading is not None and self.lesson is not None:
            if self.finder.shown:
                text = content.finder_text(reading)
            elif self.trying:
                text = tries_text(self._tries())
            elif self.watching:
                text = content.painted_text()
            elif self.demonstrating:
                text = demonstration_text(self.pacing, self._plan)
            else:
                text = content.spoken_text(self.lesson, reading, self._wording, self._plan)
            self.setAccessibleName(text)
            if self.isVisible():
                event = QAccessibleEvent(self, QAccessible.Event.NameChanged)
                QAccessible.updateAccessibility(event)
        self.update()

    def _tries(self) -> tuple[TryColour, ...]:
        """The present band's scraps and the band; empty without any."""
        return () if self.reading is None else try_colours(self._scraps, self.reading)

    @property
    def _is_over(self) -> bool:
        """Wheel and questions are over the photo: a tally, and what takes the screen, are not."""
        elsewhere = self.demonstrating or self.watching or self.trying or self.finder.shown
        return self.over and self.tally is None and self.lesson is not None and not elsewhere

    def _follow_pacing(self) -> None:
        if self.demonstrating and self.pacing.present is None:
            self._demonstrate(False)
        elif self.demonstrating:
            self.update()
        else:
            self.update_strip()

    def update_strip(self) -> None:
        """The strip reads differently: draw it anew."""
        self.update()
