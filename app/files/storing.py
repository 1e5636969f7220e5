"""Puts the photo's bytes into the store, stripped of what they say about people, in a worker."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QObject, Signal

from app.services.notices import Notices
from app.state.document import Document
from app.state.tasks import Latest
from core.pictures import Picture, PictureStore
from core.progress import Progress, ShouldStop


class PhotoStorer(QObject):
    """Stores the photo of the study that is open.

    Signals
    -------
    stored()
        The bytes are in the store and the study names them, or they cannot be kept.
    """

    stored = Signal()

    def __init__(
        self, document: Document, pictures: PictureStore, notices: Notices, parent: QObject
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._pictures = pictures
        self._notices = notices
        self._work = Latest(self)

    @property
    def running(self) -> bool:
        """Whether the bytes are on their way into the store."""
        return self._work.running

    def cancel(self) -> None:
        """Another study takes this one's place."""
        self._work.cancel()

    def store(self, photo: Picture, data: bytes) -> None:
        """Put the photo's bytes into the store, and their digest into the study."""

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
