"""Puts the photo's bytes into the store, stripped of what they say about people, in a worker.

Stripping opens the photo more than once, to be sure of it. At a start that would take a core from
the bands which the teacher waits for, so it begins when they are found, or when it is asked for.
"""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QObject, Qt, QTimer, Signal

from app.services.notices import Notices
from app.services.reader import Reader
from app.state.document import Document
from app.state.tasks import Latest
from core.pictures import Picture, PictureStore
from core.progress import Progress, ShouldStop

MOST_WAIT_MS = 2000
"""Longer than this the bytes wait for nothing: until they are stored, no work can be kept."""


class PhotoStorer(QObject):
    """Stores the photo of the study that is open.

    Signals
    -------
    stored()
        The bytes are in the store and the study names them, or they cannot be kept.
    """

    stored = Signal()

    def __init__(
        self,
        document: Document,
        reader: Reader,
        pictures: PictureStore,
        notices: Notices,
        parent: QObject,
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._reader = reader
        self._pictures = pictures
        self._notices = notices
        self._work = Latest(self)
        self._next: tuple[Picture, bytes] | None = None
        self._patience = QTimer(self, singleShot=True, interval=MOST_WAIT_MS)
        self._patience.timeout.connect(self.hurry)
        # Queued: where one reading ends, the next may only then begin.
        reader.idle.connect(self._look, Qt.ConnectionType.QueuedConnection)

    @property
    def running(self) -> bool:
        """Whether the bytes are on their way into the store."""
        return self._next is not None or self._work.running

    def cancel(self) -> None:
        """Another study takes this one's place."""
        self._next = None
        self._patience.stop()
        self._work.cancel()

    def store(self, photo: Picture, data: bytes) -> None:
        """Put the photo's bytes into the store, and their digest into the study.

        Begins once the bands are read.
        """
        self.cancel()
        self._next = (photo, data)
        self._patience.start()
        self._look()

    def _look(self) -> None:
        if not self._reader.working:
            self.hurry()

    def hurry(self) -> None:
        """Somebody waits for the bytes: begin."""
        if self._next is None:
            return
        (photo, data), self._next = self._next, None
        self._patience.stop()

        def work(progress: Progress, should_stop: ShouldStop) -> Picture:
            return self._pictures.add(photo.name, data)

        def done(kept: Picture) -> None:
            self._document.complete(
                lambda study: replace(study, photo=kept) if study.photo == photo else study
            )
            self.stored.emit()

        def failed(error: Exception) -> None:
            self.stored.emit()
            self._notices.failed(error)

        self._work.run(work, done, failed)
