"""The class view: a whole screen before the class, with answers only when they are asked for."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QRect, QRectF, Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleEvent,
    QCloseEvent,
    QColor,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QWidget

from app.classview import content
from app.classview.brush import Brush
from app.classview.demonstration import demonstration_text, demonstration_view
from app.classview.finder import Finder
from app.classview.keys import Command, command_of, key_list, paint_key_list
from app.classview.pacing import Pacing
from app.classview.tally import Tally
from app.classview.tries import tries_text, try_colours
from app.classview.wheel_over import ClassWheel
from app.drawing.classview.demonstration import demonstration_places, paint_demonstration
from app.drawing.classview.layout import ClassLayout, class_layout
from app.drawing.classview.lines import paint_class_lines
from app.drawing.classview.names import paint_names
from app.drawing.classview.over import over_layout, paint_panel
from app.drawing.classview.painted import paint_painted_screen
from app.drawing.classview.photo import PAINT_BEGINS, ClassPhotoView, band_at, paint_class_photo
from app.drawing.classview.strip import StripView, paint_strip, strip_places
from app.drawing.classview.tally import paint_tally, tally_places
from app.drawing.classview.tries import TryColour, paint_tries_screen
from app.drawing.classview.viewfinder import paint_viewfinder
from app.drawing.ladder import paint_ladder
from app.drawing.painting import PaintedView
from app.drawing.pyramid import Pyramid
from app.drawing.washes import wash_views
from app.drawing.wheel.over import Spot, paint_over_wheel
from app.drawing.wheel.wheel import paint_wheel
from app.look import look
from app.look.theme import WALL
from core.i18n import translate
from core.lesson import lesson as steps
from core.lesson.demonstration import paces
from core.lesson.lesson import Hands, Lesson
from core.paint.planned import MixPlan
from core.paint.preview import laying_order
from core.reading.reading import BandReading
from core.reading.wording import Wording
from core.scrap.kept import ScrapEntry

_STEPS = {
    Qt.Key.Key_Space: 1,
    Qt.Key.Key_Return: 1,
    Qt.Key.Key_Enter: 1,
    Qt.Key.Key_Right: 1,
    Qt.Key.Key_Down: 1,
    Qt.Key.Key_PageDown: 1,
    Qt.Key.Key_Left: -1,
    Qt.Key.Key_Up: -1,
    Qt.Key.Key_Backspace: -1,
    Qt.Key.Key_PageUp: -1,
}
"""What keys do while the demonstration has the screen."""


_ENDING = (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Escape)
"""What gives the screen back to the questions once the sky has painted itself."""


class ClassView(QWidget):
    """One band at a time, with its questions; knows neither document nor window.

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

    # What is shown

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

    # What keys and mouse do

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

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if (
            self.lesson is not None
            and (band := self.finder.press(event.key(), self._edges)) is not None
        ):
            self._set(steps.go_to(self.lesson, band))
            return
        if self.tally is not None and self.lesson is not None:
            lesson = self.tally.press(event.key(), event.text(), self.lesson)
            if lesson is not None:
                self._set(lesson)
                return
            if event.key() in (Qt.Key.Key_Escape, Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self.run("tally")
                return
        if self.trying and event.key() in _ENDING:
            self.run("scraps")
            return
        if self.watching and event.key() in _ENDING:
            self._watch(False)
            return
        if self.demonstrating and event.key() in _STEPS and not self.keys_shown:
            self._step(_STEPS[Qt.Key(event.key())])
            return
        shift = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        command = command_of(event.key(), shift)
        if command is None:
            super().keyPressEvent(event)
        elif command == "leave" and self.keys_shown:
            self.run("keys")
        elif command == "leave" and self.demonstrating and event.key() == Qt.Key.Key_Escape:
            self._demonstrate(False)
        else:
            self.run(command)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        layout, point = self._layout(), event.position()
        if self.finder.shown:
            self.finder.open()
            self._changed()
            return
        if self.trying:
            self.run("scraps")
            return
        if self.watching:
            self._watch(False)
            return
        if self.keys_shown:
            self.run("keys")
            return
        spot = self._spot
        if self._is_over and spot is not None and self.wheel_over.press(event, spot, layout.photo):
            return
        if layout.strip.contains(point):
            self._press_strip(layout, event)
        elif self.demonstrating:
            self._step(-1 if event.button() == Qt.MouseButton.RightButton else 1)
        elif layout.paper.contains(point):
            self._press_paper(layout, event)
        elif self.lesson is not None and self._picture is not None:
            band = band_at(layout, self._photo_view(self._picture, self.lesson), point)
            if band is not None:
                self._set(steps.go_to(self.lesson, band))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        spot = self._spot
        if not self._is_over or spot is None:
            return
        layout, at = self._layout(), event.position()
        if self.wheel_over.move(event, spot, layout.photo):
            self.pointed.emit(None)
            return
        told = self.lesson is not None and self.lesson.is_answered("intensity")
        photo = layout.photo
        if told and photo.contains(at) and not layout.paper.contains(at):
            x, y = (at.x() - photo.left()) / photo.width(), (at.y() - photo.top()) / photo.height()
            self.pointed.emit((x, y))
        else:
            self.pointed.emit(None)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self.wheel_over.release()

    def _press_strip(self, layout: ClassLayout, event: QMouseEvent) -> None:
        places = strip_places(layout.strip, self._strip_view(), layout.height)
        for number, place in enumerate(places):
            if place is not None and place.contains(event.position()):
                self.pacing.go_to(number)
                self._demonstrate(True)

    def _press_paper(self, layout: ClassLayout, event: QMouseEvent) -> None:
        taking = event.button() == Qt.MouseButton.RightButton
        if self.tally is None or self.lesson is None:
            self.run("take back" if taking else "answer")
            return
        places = tally_places(layout.paper, layout.height, len(self.tally.keys))
        for row, place in enumerate(places):
            if place.contains(event.position()):
                self.tally.choose(row)
                self._set(self.tally.add(self.lesson, -1 if taking else 1))

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

    # Drawing

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        layout, theme = self._layout(), look().theme
        if self._paint_finder(painter, layout) or self._paint_painted(painter, layout):
            return
        if self.trying and not self.keys_shown and (tries := self._tries()):
            paint_tries_screen(painter, QRectF(self.rect()), layout.height, tries)
            return
        if not layout.strip.isEmpty():
            paint_strip(painter, layout.strip, self._strip_view(), layout.height, theme)
        if layout.strip.contains(QRectF(event.rect())):
            return
        if self.keys_shown:
            rows = key_list(can_speak=self.can_speak)
            above = layout.wall.united(layout.paper)
            paint_key_list(painter, above, layout.height, rows, theme)
            return
        if self.demonstrating and self._paint_demonstration(painter, layout):
            return
        painter.fillRect(layout.wall, QColor(WALL))
        if not self._is_over:
            painter.fillRect(layout.paper, QColor(theme.paper))
        reading, lesson = self.reading, self.lesson
        if lesson is None or reading is None or self._picture is None:
            return
        photo = self._photo_view(self._picture, lesson)
        paint_class_photo(painter, layout, photo, self.devicePixelRatioF())
        if self._is_over:
            self._paint_over(painter, layout, lesson, reading)
            return
        paint_wheel(painter, layout.wheel, content.class_wheel(lesson, reading, layout, self._plan))
        names = content.wedge_names(lesson, reading, self._plan)
        paint_names(painter, layout.wheel, layout.names, layout.height, names)
        ladder = content.class_ladder(lesson, reading, self._wording, layout)
        paint_ladder(painter, layout.ladder, ladder)
        self._paint_paper(painter, layout, lesson, reading)

    def _tries(self) -> tuple[TryColour, ...]:
        """The present band's scraps and the band; empty without any."""
        return () if self.reading is None else try_colours(self._scraps, self.reading)

    def _paint_finder(self, painter: QPainter, layout: ClassLayout) -> bool:
        """Draw the viewfinder where it is held; tells whether it is."""
        screen = QRectF(self.rect())
        place = self.finder.place(screen, layout, self._aspect, self._edges)
        if place is None or self._picture is None:
            return False
        paint_viewfinder(painter, screen, place, self._picture, self.devicePixelRatioF())
        return True

    def _paint_painted(self, painter: QPainter, layout: ClassLayout) -> bool:
        """Draw the sky that paints itself; tells whether it has the screen."""
        if not self.watching or self.keys_shown or self._picture is None:
            return False
        laid = self.brush.laid if self.brush.running else None
        washes = wash_views(self._plan, self._edges, laid, self.brush.now)
        view = PaintedView(self._picture, self._edges[-1], washes, PAINT_BEGINS)
        aspect = self._aspect / max(self._edges[-1], 1e-6)
        screen, ratio = QRectF(self.rect()), self.devicePixelRatioF()
        words = (translate("class view", "photo"), translate("class view", "paint, predicted"))
        paint_painted_screen(painter, screen, layout.height, aspect, view, words, ratio)
        return True

    def _paint_demonstration(self, painter: QPainter, layout: ClassLayout) -> bool:
        """Draw the demonstration's step; tells whether there is one."""
        if self._picture is None:
            return False
        view = demonstration_view(
            self.pacing, self._plan, self._readings, self._picture, self._aspect
        )
        if view is None:
            return False
        screen, unit = layout.wall.united(layout.paper), layout.height
        places = demonstration_places(screen, unit, layout.wall.right(), view)
        paint_demonstration(painter, places, unit, view, look().theme, self.devicePixelRatioF())
        return True

    def _paint_paper(
        self, painter: QPainter, layout: ClassLayout, lesson: Lesson, reading: BandReading
    ) -> None:
        theme, height, wording = look().theme, layout.height, self._wording
        if self.tally is not None:
            question, chosen = self.tally.question, self.tally.chosen
            hint = translate("class view", "Type hands; Left: back")
            view = content.tally_view(lesson, question, chosen, reading, wording, hint)
            paint_tally(painter, layout.paper, height, view, theme)
        else:
            lines = content.line_views(lesson, reading, wording, self._plan)
            paint_class_lines(painter, layout.slots, height, lines, theme)

    def _paint_over(
        self, painter: QPainter, layout: ClassLayout, lesson: Lesson, reading: BandReading
    ) -> None:
        """Wheel and questions upon the photo: what was answered last, and what is asked now."""
        theme, spot = look().theme, self._spot
        if spot is not None:
            wheel = content.class_wheel(lesson, reading, layout, self._plan)
            paint_over_wheel(painter, spot, wheel, self.wheel_over.point)
        paint_panel(painter, layout.paper, layout.height, theme)
        lines = content.line_views(lesson, reading, self._wording, self._plan)
        count = len(layout.slots)
        last = min(max(lesson.shown + 1, count), len(lines))
        paint_class_lines(painter, layout.slots, layout.height, lines[last - count : last], theme)

    @property
    def _is_over(self) -> bool:
        """Wheel and questions are over the photo; a tally needs all of the paper."""
        return self.over and self.tally is None and self.lesson is not None

    @property
    def _spot(self) -> Spot | None:
        return self._over_layout()[1] if self._is_over else None

    def _over_layout(self) -> tuple[ClassLayout, Spot | None]:
        assert self.lesson is not None
        place = self.wheel_over.place
        wanted = None if place is None else (place.x, place.y, place.size)
        return over_layout(
            self.width(), self.height(), self._aspect, self._edges, self.lesson.band, wanted
        )

    def _layout(self) -> ClassLayout:
        if self._is_over and not (self.demonstrating or self.watching or self.finder.shown):
            return self._over_layout()[0]
        two = self.lesson is not None and self.lesson.band in self.lesson.two
        return class_layout(
            self.width(),
            self.height(),
            self._aspect,
            horizon=self._edges[-1] if self._edges else 1.0,
            bands=max(len(self._edges) - 1, 1),
            two=two,
        )

    def _photo_view(self, picture: Pyramid, lesson: Lesson) -> ClassPhotoView:
        letters = content.letters_of(self._readings)
        chip = content.class_chip(lesson, self._readings[lesson.band])
        finished = [letters[band] for band in lesson.finished]
        under = self.brush.now
        laid = [letter for letter in finished if under is None or letter != under[0]]
        done = len(finished) == len(letters)
        return ClassPhotoView(
            picture,
            self._edges,
            letters,
            lesson.band,
            chip,
            washes=wash_views(self._plan, self._edges, laid, under),
            veiled=not done,
        )

    def _strip_view(self) -> StripView:
        return StripView(self.pacing.texts(), self.pacing.present, self.hint)

    def _follow_pacing(self) -> None:
        if self.demonstrating and self.pacing.present is None:
            self._demonstrate(False)
        elif self.demonstrating:
            self.update()
        else:
            self.update(QRect(self._layout().strip.toAlignedRect()))

    def closeEvent(self, event: QCloseEvent) -> None:
        self.pacing.stop()
        super().closeEvent(event)
        self.left.emit()
