"""Opens the class view over a screen and keeps it in step with photo, readings and plan."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QWidget

from app.drawing.views import point_marker
from app.services.photo_jobs import OpenedPhoto
from app.services.pointing import reading_at
from app.state.document import Gesture
from app.state.language import language_in_use
from app.state.settings import Settings
from app.widgets.screens import class_screen
from app.workspace import Workspace
from core.i18n import translate
from core.lesson.lesson import Hands
from core.study import Study, WheelPlace, with_hands, with_wheel

if TYPE_CHECKING:
    from app.classview.view import ClassView


class ClassRoom(QObject):
    """The window's way into the class view; the view is made when it is first opened."""

    def __init__(self, workspace: Workspace, window: QWidget) -> None:
        super().__init__(window)
        self._workspace = workspace
        self._speech = workspace.speech
        self._window = window
        self.view: ClassView | None = None
        self._counting = Gesture()

    @property
    def is_open(self) -> bool:
        """Whether a class is looking at it."""
        return self.view is not None and self.view.isVisible()

    def toggle(self) -> None:
        """Open it, or leave it."""
        if self.is_open:
            self.close()
        else:
            self.open()

    def open(self) -> None:
        """Fill the screen the class looks at with the first band's questions."""
        if not self._workspace.reader.readings:
            self._workspace.notices.hint(
                translate("class view", "Open a photo first: the class view asks about its bands.")
            )
            return
        self._workspace.notices.move_on()
        view = self._made()
        view.can_speak = self._speech.available
        self._counting = Gesture()
        view.begin(0)
        screen = class_screen(self._window.screen(), QGuiApplication.screens())
        view.setGeometry(screen.geometry())
        view.showFullScreen()
        view.activateWindow()
        view.setFocus()

    def close(self) -> None:
        """Back to the window."""
        if self.view is not None and self.view.isVisible():
            self._speech.stop()
            self.view.hide()
            self.view.pacing.go_to(None)
            self._window.activateWindow()

    def _made(self) -> ClassView:
        if self.view is None:
            from app.classview.view import ClassView  # deferred: start-up time

            # A window of its own, that goes when the main one does.
            self.view = ClassView()
            self._window.destroyed.connect(self.view.deleteLater)
            self.view.left.connect(self.close)
            self.view.say_asked.connect(self._say)
            self.view.hands_changed.connect(self._keep_hands)
            document = self._workspace.document
            document.study_changed.connect(lambda before, after: self._show_hands(after.hands))
            self._show_hands(document.study.hands)
            self.view.wheel_put.connect(self._keep_wheel)
            self.view.pointed.connect(self._point_at)
            over = self.view.wheel_over
            document.study_changed.connect(lambda before, after: over.set_place(after.wheel))
            over.set_place(document.study.wheel)
            document.study_changed.connect(lambda before, after: self._show_scraps(after))
            self._show_scraps(document.study)
            reader, planner = self._workspace.reader, self._workspace.planner
            reader.photo_changed.connect(self._show_photo)
            reader.readings_changed.connect(self._show_readings)
            planner.plan_changed.connect(self.view.show_plan)
            self._workspace.preferences.changed.connect(self._on_settings)
            if reader.opened is not None:
                self._show_photo(reader.opened)
            self._show_readings()
            self.view.show_plan(planner.plan)
        return self.view

    def _show_photo(self, opened: OpenedPhoto) -> None:
        if self.view is not None:
            self.view.show_photo(opened.picture, opened.photo.width / opened.photo.height)

    def _show_readings(self) -> None:
        if self.view is not None:
            wording = self._workspace.preferences.settings.wording
            self.view.show_readings(self._workspace.reader.readings, wording)

    def _keep_hands(self, hands: tuple[Hands, ...]) -> None:
        """One lesson's counting is one undo step."""
        document = self._workspace.document
        text = translate("undo", "hands counted in class")
        document.change(text, with_hands(document.study, hands), self._counting)

    def _keep_wheel(self, place: WheelPlace, gesture: Gesture) -> None:
        document = self._workspace.document
        text = translate("undo", "move the wheel")
        document.change(text, with_wheel(document.study, place), gesture)

    def _point_at(self, point: tuple[float, float] | None) -> None:
        """Show the place of the point under the mouse on the wheel."""
        if self.view is not None:
            reading = reading_at(self._workspace.reader.photo, point)
            marker = None if reading is None else point_marker(reading)
            self.view.wheel_over.set_point(marker)

    def _show_hands(self, hands: tuple[Hands, ...]) -> None:
        if self.view is not None:
            self.view.show_hands(hands)

    def _show_scraps(self, study: Study) -> None:
        if self.view is not None:
            self.view.show_scraps(study.scraps)

    def _on_settings(self, before: Settings, after: Settings) -> None:
        if before.wording != after.wording:
            self._show_readings()

    def _say(self, text: str) -> None:
        self._speech.say(text, language_in_use())
