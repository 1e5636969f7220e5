"""The Read page: the photo with its lines, and what each band reads, in pictures and words."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QAction, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QWidget

from app.canvas.canvas import PhotoCanvas
from app.drawing.pyramid import Pyramid
from app.drawing.views import ladder_view, point_marker, wheel_view
from app.look import look
from app.read.actions import ReadActions
from app.read.controls import ReadControls
from app.read.layout import ReadLayout, ReadParts
from app.read.lines import LineEdits
from app.read.status import StatusLine
from app.services.photo_jobs import OpenedPhoto
from app.services.pictures import COLOUR, Pictures
from app.services.pointing import reading_at
from app.state.document import Gesture
from app.state.language import language_in_use
from app.state.settings import Settings
from app.widgets.readout import ReadoutTable
from app.widgets.readout_views import ReadoutRow, SpokenView, readout_rows, spoken_view
from app.widgets.sky_wall import SkyWall
from app.widgets.spoken import SpokenStrip, strip_height
from app.widgets.spoken_plan import FULLNESS
from app.widgets.wheel import LadderWidget, WheelWidget
from app.workspace import Menu, Page, Workspace
from core.i18n import translate
from core.reading.reading import BandReading
from core.reading.wording import Wording
from core.study import Study, WheelPlace, with_wheel
from core.words import PlannedToning, band_sentence, first_on_wheel, tones_on_wheel

STRIP_LEAST, STRIP_LEAST_WIDE = 150, 214
STRIP_MOST, STRIP_MOST_UPRIGHT = 0.31, 0.24
"""Share of the page's height beyond which the strip says less: the photo yields last."""

_PANORAMA = "panorama"
_WHEEL = "wheel"
_LETTER = 12
"""Radius of a letter on a ladder that lies."""


class ReadPage(Page):
    """Left the photo and the spoken words, right wheel, ladder and table."""

    def __init__(self, workspace: Workspace, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._workspace = workspace
        self.lines = LineEdits(workspace)
        self._chosen = 0
        self._view_key = COLOUR
        self._behind_plan = False
        self._told: tuple[tuple[BandReading, ...], tuple[ReadoutRow, ...]] = ((), ())
        self._told_in: Wording | None = None
        self.wheel_over = False
        self.setProperty("ground", "wall")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._body = body = QWidget(self)
        self.controls = ReadControls(body)
        self.canvas = PhotoCanvas(body)
        self.status = StatusLine(body)
        self.strip = SpokenStrip(body)
        self.wheel = WheelWidget(body)
        self.ladder = LadderWidget(body)
        self.table = ReadoutTable(body)
        self.empty = SkyWall(
            translate("read page", "Which sky will you paint?"),
            translate(
                "read page",
                "Open a photo of a sky, drop one here, paste one, or press one of these skies.",
            ),
            workspace.opener.samples(),
            self,
            tell=workspace.opener.tell_of,
        )
        self._pictures = Pictures(self)
        self._actions = ReadActions(
            self,
            self.canvas,
            self.split,
            self.remove,
            self.lines.propose_again,
            self.look_at,
            self.lay_wheel_over,
        )
        parts = ReadParts(
            self.empty,
            self.controls,
            self.canvas,
            self.status,
            self.strip,
            self.wheel,
            self.ladder,
            self.table,
        )
        self._layout = ReadLayout(self, body, parts)
        self._keep_places()
        self._connect()
        self.empty.set_opening(workspace.files.opening)
        self._show_study(workspace.document.study)
        if workspace.reader.opened is not None:
            self._show_photo(workspace.reader.opened)
            self._show_readings()

    @property
    def chosen(self) -> int:
        """The chosen band."""
        return self._chosen

    @property
    def view_key(self) -> str:
        """How the photo is looked at."""
        return self._view_key

    def least_size(self) -> QSize:
        return QSize(look().type.grow(740), look().type.grow(470))

    def actions_for(self, menu: Menu) -> tuple[QAction, ...]:
        return self._actions.in_menu(menu)

    # What the user asks for

    def choose(self, band: int) -> None:
        """Choose a band; the line below it opens its number box."""
        count = len(self._workspace.reader.readings)
        bands = self._workspace.document.study.bands
        if bands is not None:
            count = bands.count
        band = min(max(band, 0), max(count - 1, 0))
        if band != self._chosen:
            self._chosen = band
            self.canvas.set_chosen(band)
            self._show_readings()
            self._tell_of_wheel()

    def look_at(self, key: str) -> None:
        """Look at the photo in another way; see `Pictures.ask`."""
        self._view_key = key
        self.controls.show_view(key)
        self._actions.show_view(key)
        self._pictures.ask(key)

    def lay_wheel_over(self, over: bool) -> None:
        """Lay the wheel over the photo, which takes the room of the charts; or put it back."""
        self.wheel_over = over
        self._actions.show_wheel(over)
        self._layout.show_charts(not over)
        self._arrange()
        self._show_readings()
        self.canvas.show_wheel(over)
        self._tell_of_wheel()

    def _tell_of_wheel(self) -> None:
        """Say so where the chosen band leaves the wheel no room."""
        notices = self._workspace.notices
        if self.wheel_over and self.canvas.wheel_crowded:
            notices.note(
                translate(
                    "read page",
                    "The chosen band leaves no room for the wheel: choose another, or press F6 to "
                    "have it beside the photo.",
                ),
                _WHEEL,
            )
        else:
            notices.withdraw(_WHEEL)

    def _put_wheel(self, place: WheelPlace, gesture: Gesture) -> None:
        document = self._workspace.document
        text = translate("undo", "move the wheel")
        document.change(text, with_wheel(document.study, place), gesture)

    def split(self, band: int | None = None) -> None:
        """Split a band, the chosen one if none is named."""
        self.lines.split(self._chosen if band is None else band)

    def remove(self, edge: int | None = None) -> None:
        """Remove the line below a band, the chosen one if none is named."""
        self.lines.remove(self._chosen if edge is None else edge)

    # Connections

    def _connect(self) -> None:
        reader, document = self._workspace.reader, self._workspace.document
        self.canvas.edge_moved.connect(self.lines.move)
        self.canvas.band_chosen.connect(self.choose)
        self.canvas.split_asked.connect(self.split)
        self.canvas.remove_asked.connect(self.remove)
        self.canvas.line_asked.connect(self.lines.add)
        self.canvas.rival_accepted.connect(self.lines.accept_rival)
        self.canvas.hovered.connect(self._show_point)
        self.canvas.wheel_put.connect(self._put_wheel)
        self.wheel.band_chosen.connect(self.choose)
        self.ladder.band_chosen.connect(self.choose)
        self.table.band_chosen.connect(self.choose)
        self.controls.view_chosen.connect(self.look_at)
        self.controls.count_asked.connect(self.lines.ask_count)
        self.controls.propose_asked.connect(self.lines.propose_again)
        self.empty.asked.connect(self._workspace.opener.choose)
        self.empty.sky_chosen.connect(self._workspace.opener.open_sample)
        files = self._workspace.files
        files.began.connect(lambda: self.empty.set_opening(True))
        files.idle.connect(lambda: self.empty.set_opening(False))
        self._workspace.speech.found.connect(self._offer_speech)
        self.strip.say_asked.connect(self._say)
        self._offer_speech()
        document.study_changed.connect(lambda before, after: self._show_study(after))
        reader.photo_changed.connect(self._show_photo)
        reader.photo_closed.connect(self._show_none)
        reader.sky_changed.connect(self.canvas.set_veil)
        reader.rivals_changed.connect(self.canvas.set_rivals)
        reader.readings_changed.connect(lambda readings: self._show_readings())
        self._workspace.planner.plan_changed.connect(lambda plan: self._follow_plan())
        reader.doubt_changed.connect(self.status.show_doubt)
        reader.idle.connect(lambda: self.status.show_waiting(""))
        for work in (files, reader):
            work.busy.connect(self.status.show_busy)
            work.idle.connect(self.status.show_idle)
        self._pictures.ready.connect(self._show_picture)
        self._pictures.busy.connect(
            lambda share: self.status.show_busy(translate("read page", "Making the picture"), share)
        )
        self._pictures.idle.connect(self.status.show_idle)
        self._workspace.preferences.changed.connect(self._follow_preferences)
        self.controls.set_steps(self._workspace.preferences.settings.value_steps)

    def _offer_speech(self) -> None:
        self.strip.set_speech_available(self._workspace.speech.available)

    def _say(self) -> None:
        readings = self._workspace.reader.readings
        if self._chosen < len(readings):
            text = _spoken(readings[self._chosen : self._chosen + 1], self._wording)
            self._workspace.speech.say(text, language_in_use())

    def _follow_preferences(self, before: Settings, after: Settings) -> None:
        if before.value_steps != after.value_steps:
            self.controls.set_steps(after.value_steps)
        self._show_readings()

    # What is shown

    def _show_photo(self, opened: OpenedPhoto) -> None:
        self._pictures.set_photo(opened)
        self.canvas.set_photo(opened.picture, opened.photo.width, opened.photo.height)
        self._workspace.notices.withdraw(_PANORAMA)
        if self.canvas.viewport.zoom > 1.0:
            self._workspace.notices.note(
                translate(
                    "read page",
                    "You see the middle of a wide photo: drag it sideways for the rest, "
                    "or press Ctrl+0 to see it whole.",
                ),
                _PANORAMA,
            )
        if self._view_key != COLOUR:
            self._pictures.ask(self._view_key)
        self._chosen = 0
        self.canvas.set_chosen(0)
        # Laid out before it is seen; until it is read, nothing stands where nothing is known.
        if not self._workspace.reader.readings:
            self.status.show_waiting(translate("read page", "Looking for the bands"))
            self._show_known(False)
        # Shown first, since what is hidden is given no size; it is painted only after this.
        self._layout.top.setCurrentWidget(self._body)
        self._arrange()
        self.canvas.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_none(self) -> None:
        self._layout.top.setCurrentWidget(self.empty)

    def _keep_places(self) -> None:
        """What is not shown yet keeps its place, so that nothing moves when it comes."""
        for part in (self.strip, self.table, self.controls):
            policy = part.sizePolicy()
            policy.setRetainSizeWhenHidden(True)
            part.setSizePolicy(policy)

    def _show_known(self, known: bool) -> None:
        for part in (self.strip, self.table, self.controls):
            part.setVisible(known)

    def _show_picture(self, key: str, picture: Pyramid) -> None:
        if key == self._view_key:
            self.canvas.set_picture(picture)

    def _show_study(self, study: Study) -> None:
        bands = study.bands
        count = bands.count if bands else 0
        self._chosen = min(self._chosen, max(count - 1, 0))
        self.canvas.set_bands(bands)
        self.canvas.put_wheel(study.wheel)
        if not (self.canvas.dragging and count == self.controls.stepper.value):
            self.controls.show_count(count)  # lays the page out, which no move of a line needs
        self._actions.show_bands(bands, self._chosen)

    def _follow_plan(self) -> None:
        """Say with what to tone down; while another page is shown, once this one is again."""
        self._behind_plan = not self.isVisible()
        if not self._behind_plan:
            self._show_readings()

    def _show_readings(self) -> None:
        readings, wording = self._workspace.reader.readings, self._wording
        chosen = self._chosen if self._chosen < len(readings) else None
        words = "" if self.canvas.dragging else _spoken(readings, wording)
        tonings = self._tonings(readings)
        shows_way = chosen is not None and tones_on_wheel(readings[chosen].colour, tonings[chosen])
        wheel = wheel_view(readings, chosen, show_way=shows_way)
        self.wheel.set_view(wheel, words)
        if self.wheel_over:
            self.canvas.wheel.set_view(wheel if readings else None)
            self.canvas.wheel.setAccessibleDescription(words)
        lies = self._layout.lies
        ladder = ladder_view(
            readings,
            wording,
            chosen,
            across=lies,
            letter_px=look().type.grow(_LETTER) if lies else 0,
        )
        self.ladder.set_view(ladder, words)
        self.table.set_rows(self._rows(readings, wording), chosen)
        self.strip.set_view(
            None if chosen is None else self._spoken_view(readings, tonings, chosen)
        )
        if not self.canvas.dragging:
            self._steady_strip(readings, wording)
        self._actions.show_bands(self._workspace.document.study.bands, self._chosen)
        if readings and self.strip.isHidden():
            self.status.show_waiting("")
            self._show_known(True)

    def _rows(self, readings: Sequence[BandReading], wording: Wording) -> tuple[ReadoutRow, ...]:
        """The table's rows: of the bands that a dragged line leaves alone, the same as before."""
        kept = zip(*self._told, strict=True) if self._told_in == wording else ()
        before = {reading.letter: (reading, row) for reading, row in kept}
        rows = []
        for reading in readings:
            known = before.get(reading.letter)
            same = known is not None and known[0] == reading
            rows.append(known[1] if known and same else readout_rows((reading,), wording)[0])
        self._told, self._told_in = (tuple(readings), tuple(rows)), wording
        return self._told[1]

    def _steady_strip(self, readings: Sequence[BandReading], wording: Wording) -> None:
        """Make the strip as high as its tallest band, so that the photo stays where it is."""
        if not readings:
            # As high as it is at least, or was for the last photo: less has to move.
            self.strip.setMinimumHeight(look().type.grow(STRIP_LEAST))
            return
        share = STRIP_MOST_UPRIGHT if self._layout.upright else STRIP_MOST
        most = share * self.height()
        for level in range(len(FULLNESS)):
            tallest = self._tallest_strip(readings, wording, level)
            if tallest <= most:
                break
        self.strip.set_fullness(level)
        least = look().type.grow(STRIP_LEAST_WIDE if self.height() > 900 else STRIP_LEAST)
        self.strip.setFixedHeight(max(tallest, min(least, round(most))))

    def _tonings(self, readings: Sequence[BandReading]) -> list[PlannedToning | None]:
        return [self._workspace.planner.toning(reading) for reading in readings]

    def _spoken_view(
        self,
        readings: Sequence[BandReading],
        tonings: Sequence[PlannedToning | None],
        number: int,
    ) -> SpokenView:
        says_way = number == first_on_wheel(readings, tonings)
        return spoken_view(readings[number], self._wording, tonings[number], says_way=says_way)

    def _tallest_strip(self, readings: Sequence[BandReading], wording: Wording, level: int) -> int:
        width, tonings = self.strip.width(), self._tonings(readings)
        views = (self._spoken_view(readings, tonings, number) for number in range(len(readings)))
        return max(strip_height(view, level, width) for view in views)

    def _show_point(self, point: tuple[float, float] | None) -> None:
        reading = reading_at(self._workspace.reader.photo, point)
        self.status.show_point(reading, self._wording)
        if self.wheel_over:
            self.canvas.wheel.set_point(None if reading is None else point_marker(reading))

    @property
    def _wording(self) -> Wording:
        return self._workspace.preferences.settings.wording

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._behind_plan:
            self._follow_plan()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        photo = self._workspace.reader.photo
        aspect = photo.width / photo.height if photo is not None else 1.5
        lay = self._layout.lies
        self._layout.arrange(self.width(), self.height(), aspect)
        if self._layout.lies != lay:
            self._show_readings()
        self._steady_strip(self._workspace.reader.readings, self._wording)


def _spoken(readings: Sequence[BandReading], wording: Wording) -> str:
    """All bands in sentences, for a screen reader."""
    return " ".join(band_sentence(reading, wording) for reading in readings)
