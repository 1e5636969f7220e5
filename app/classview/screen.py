"""How the class view is laid out and drawn."""

from __future__ import annotations

from PySide6.QtCore import QRect, QRectF
from PySide6.QtGui import (
    QColor,
    QPainter,
    QPaintEvent,
)

from app.classview import content
from app.classview.demonstration import demonstration_view
from app.classview.keys import key_list, paint_key_list
from app.classview.state import ClassState
from app.drawing.classview.demonstration import demonstration_places, paint_demonstration
from app.drawing.classview.layout import ClassLayout, class_layout
from app.drawing.classview.lines import paint_class_lines
from app.drawing.classview.names import paint_names
from app.drawing.classview.over import over_layout, paint_panel
from app.drawing.classview.painted import paint_painted_screen
from app.drawing.classview.photo import PAINT_BEGINS, ClassPhotoView, paint_class_photo
from app.drawing.classview.strip import StripView, paint_strip
from app.drawing.classview.tally import paint_tally
from app.drawing.classview.tries import paint_tries_screen
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
from core.lesson.lesson import Lesson
from core.reading.reading import BandReading


class ClassScreen(ClassState):
    """Draws what the state says; hands and keys are the view's."""

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
        if self._is_over:
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

    def update_strip(self) -> None:
        self.update(QRect(self._layout().strip.toAlignedRect()))
