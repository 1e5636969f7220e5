"""Reads the scores crossed on worksheet pages, in a worker, once a page has its place.

What was read is kept in the folder; nothing of it is a student's score until the teacher takes it.
"""

from __future__ import annotations

import logging
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from app.state.tasks import Latest, give_back, own_pool
from core.class_set.folder import ClassFolder
from core.class_set.kept_scores import (
    Forms,
    KeptScores,
    find_scores,
    page_of,
    pages_to_read,
    read_page,
)
from core.class_set.model import ClassSet
from core.class_set.placing import Placement
from core.errors import GradewashError
from core.progress import Progress, ShouldStop

logger = logging.getLogger(__name__)

FormsOf = Callable[[Path, ClassSet], Forms]
"""What is printed on the worksheets of a class set in a folder."""

PageKey = tuple[str, int]
"""A picture's digest, and which worksheet page it is."""


class ScoreReader(QObject):
    """One page at a time; those that were read before are only looked up.

    Signals
    -------
    read()
        One or more pages were read.
    """

    read = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = own_pool()
        self.destroyed.connect(lambda *_, pool=self._pool: give_back(pool))
        self._work = Latest(self, self._pool)
        self._folder: ClassFolder | None = None
        self._forms: Forms | None = None
        self._found: dict[PageKey, KeptScores] = {}
        self._wanted: list[PageKey] = []
        self._forms_of: FormsOf | None = None

    @property
    def working(self) -> bool:
        """Whether a page is still to be read."""
        return self._work.running

    def of(self, placement: Placement, number: int, index: int) -> KeptScores | None:
        """What was read of a student's page; None where there is none, or not yet."""
        page = page_of(placement, number, index)
        return None if page is None else self._found.get(page)

    def forget(self) -> None:
        """Another class set is here, or none."""
        self._work.cancel()
        self._folder, self._forms = None, None
        self._found.clear()
        self._wanted.clear()

    def read_with(self, forms_of: FormsOf) -> None:
        """Whoever prints says what is printed; until then nothing is read."""
        self._forms_of = forms_of
        self._next()

    def look_at(self, folder: ClassFolder, placement: Placement) -> None:
        """Read what has its place and was not read yet."""
        self._folder = folder
        self._wanted = [page for page in pages_to_read(placement) if page not in self._found]
        self._next()

    def _next(self) -> None:
        folder, make, forms = self._folder, self._forms_of, self._forms
        if self._work.running or folder is None or make is None or not self._wanted:
            return
        page = self._wanted[0]

        def work(progress: Progress, should_stop: ShouldStop) -> tuple[KeptScores, Forms | None]:
            kept = find_scores(folder.path, *page)
            if kept is not None:
                return kept, forms
            try:
                known = forms or make(folder.path, folder.class_set)
                picture = folder.picture_path(page[0])
                return read_page(folder.path, *page, picture, known, should_stop), known
            except GradewashError as error:
                # The page stays what it was without this: a picture the teacher reads.
                logger.warning("scores of %s were not read: %s", page[0], error)
                return KeptScores(), forms

        def done(found: tuple[KeptScores, Forms | None]) -> None:
            self._found[page], self._forms = found
            if page in self._wanted:
                self._wanted.remove(page)
            self.read.emit()
            self._next()

        self._work.run(work, done)
