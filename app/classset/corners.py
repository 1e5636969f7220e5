"""Setting the corners of a sheet of the class: each change is an edit of the class set."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QWidget

from app.corners.editor import CornerEditor, EditorView
from app.corners.standing import corners_shown, corners_status
from app.drawing.pyramid import Pyramid, image_of
from app.services.photo_jobs import OpenedPhoto
from app.state.document import Gesture
from app.state.tasks import Latest
from app.widgets.strip import StripView
from app.workspace import Workspace
from core.class_set import edits
from core.class_set.kept_checks import Kept
from core.class_set.model import Brought, ClassSet
from core.class_set.placing import Placement
from core.class_set.questions import found_options, shown_slot
from core.i18n import translate
from core.photo import open_photo
from core.progress import Progress, ShouldStop
from core.sheet.options import Corners, SheetOptions


class ClassCorners(QObject):
    """Owns the editor, and shows it one picture of the class set that is open.

    Signals
    -------
    closed()
        The editor is done with.
    """

    closed = Signal()

    def __init__(self, workspace: Workspace, parent: QWidget) -> None:
        super().__init__(parent)
        self._notices, self.desk = workspace.notices, workspace.desk
        self._digest = ""
        self._opened: OpenedPhoto | None = None
        self._opening = Latest(self)
        self.editor = editor = CornerEditor(parent)
        editor.corners_moved.connect(self._move)
        editor.turn_asked.connect(self._turn)
        editor.reset_asked.connect(self._reset)
        editor.scan_asked.connect(self._set_scan)
        editor.question_asked.connect(self._answer)
        editor.done.connect(self.finish)
        self.desk.changed.connect(lambda before, after: self._show())
        self.desk.sorted_changed.connect(self._show)
        self.desk.pictures.ready.connect(self._show)

    @property
    def digest(self) -> str:
        """The picture whose corners are set; empty while none is."""
        return self._digest

    def begin(self, digest: str) -> None:
        """Show a picture whole, as soon as it is decoded."""
        path = self.desk.picture_path(digest)
        brought = self._brought(digest)
        if path is None or brought is None:
            return
        if digest != self._digest:
            self.put_away()
            self._digest = digest
        self._show()
        # The rings come with the picture.
        self.editor.finish.setFocus(Qt.FocusReason.OtherFocusReason)
        name = brought.picture.name

        def work(progress: Progress, should_stop: ShouldStop) -> OpenedPhoto:
            photo = open_photo(path, name=name, progress=progress, should_stop=should_stop)
            return OpenedPhoto(photo, Pyramid.of(image_of(photo.pixels)))

        if self._opened is None:
            self._opening.run(work, self._on_opened, self._on_failed)

    def put_away(self) -> None:
        """Let the picture go."""
        self._opening.cancel()
        self._digest, self._opened = "", None
        self.editor.canvas.set_photo(None, (4, 3), 0)

    def finish(self) -> None:
        """Let the picture go, and say so."""
        self.put_away()
        self.closed.emit()

    # What the editor asks

    def _move(self, corners: Corners, gesture: Gesture) -> None:
        options = self._options
        if options is not None:
            self._change(replace(options, corners=corners, turned=self._turned), gesture)

    def _turn(self, quarters: int) -> None:
        kept = self._as_shown()
        if kept is not None:
            self._change(replace(kept, turned=(self._turned + quarters) % 4))

    def _reset(self) -> None:
        options = self._options
        if options is not None:
            self._change(replace(options, corners=None, turned=0))

    def _set_scan(self, scan: bool) -> None:
        options = self._options
        if options is not None:
            self._change(replace(options, scan=scan))

    def _answer(self, key: str) -> None:
        if key == "keep":
            kept = self._as_shown()
            if kept is not None:
                self._change(kept)

    def _as_shown(self) -> SheetOptions | None:
        """How the picture is looked at with the corners that are shown, as if set by hand."""
        brought, kept = self._brought(self._digest), self._kept
        if brought is None:
            return None
        if brought.options.corners is None and kept is not None and kept.check is not None:
            return found_options(brought, kept.check)
        shown = corners_shown(brought.options, None)
        return replace(brought.options, corners=shown)

    def _change(self, options: SheetOptions, gesture: Gesture | None = None) -> None:
        class_set = self.desk.class_set
        if class_set is not None and self._digest:
            text = translate("undo", "corners of {where}").format(where=self._where(class_set))
            after = edits.with_options(class_set, self._digest, options)
            self.desk.change(text, after, gesture)

    # What there is

    def _brought(self, digest: str) -> Brought | None:
        class_set = self.desk.class_set
        if class_set is None:
            return None
        return next((each for each in class_set.brought if each.digest == digest), None)

    @property
    def _options(self) -> SheetOptions | None:
        brought = self._brought(self._digest)
        return None if brought is None else brought.options

    @property
    def _kept(self) -> Kept | None:
        return self.desk.checks.get(self._digest)

    @property
    def _turned(self) -> int:
        """How the sheet is shown: as the teacher said, else as its check turned it."""
        options, kept = self._options, self._kept
        if options is None:
            return 0
        if options.corners is not None or kept is None or kept.check is None:
            return options.turned
        return kept.check.turned

    def _where(self, class_set: ClassSet) -> str:
        """The sheet in words: its place, else the name of its picture."""
        found = self.desk.sorted
        placement = Placement({}, ()) if found is None else found.placement
        place = placement.place_of(self._digest)
        if place is not None:
            return shown_slot(place.slot, class_set)
        return class_set.picture(self._digest).picture.name

    # In step

    def _on_opened(self, opened: OpenedPhoto) -> None:
        self._opened = opened
        self._show()
        if self.editor.finish.hasFocus():
            self.editor.begin()

    def _on_failed(self, error: Exception) -> None:
        self._notices.failed(error)
        self.finish()

    def _show(self) -> None:
        if not self._digest:
            return
        class_set, options = self.desk.class_set, self._options
        if class_set is None or options is None:
            self.finish()
            return
        kept = self._kept
        check = None if kept is None else kept.check
        canvas = self.editor.canvas
        if self._opened is not None:
            height, width = self._opened.photo.pixels.shape[:2]
            canvas.set_photo(self._opened.picture, (width, height), self._turned)
        canvas.set_corners(corners_shown(options, check))
        by_hand = options.corners is not None
        status = corners_status(options, check)
        if by_hand and self.desk.checking(self._digest):
            status = translate("class set page", "Set by hand; the sheet is being checked again.")
        failed = "" if kept is None else kept.sentence
        if failed and not self.desk.checking(self._digest):
            status = failed
        self.editor.set_view(
            EditorView(
                translate("class set page", "Corners of {where}").format(
                    where=self._where(class_set)
                ),
                status,
                options.scan,
                by_hand,
                self._question(),
                self.desk.painting(self._digest),
            )
        )

    def _question(self) -> StripView | None:
        """Corners that were found, but not surely, can be kept as they are."""
        options, found = self._options, self.desk.sorted
        if options is None or options.corners is not None or found is None:
            return None
        asked = [each for each in found.questions if each.digest == self._digest]
        if not any(each.reason == "corners unsure" for each in asked):
            return None
        return StripView(
            translate("class set page", "Do they lie where paint meets bare paper?"),
            (("keep", translate("class set page", "They are right")),),
        )
