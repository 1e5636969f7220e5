"""The only door to the study: every edit passes here, and every edit can be undone.

Views receive `study_changed(before, after)` and redraw what differs. What is not the lesson's
(hover, zoom, the chosen band) stays outside, and so do the pixels.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QUndoCommand, QUndoStack

from core.study import Study

_GESTURE_COMMAND_ID = 1


class Gesture:
    """One drag, one run of arrow presses: its steps become one undo step.

    Only its identity counts; make a new one when the mouse goes down.
    """

    __slots__ = ()


class Document(QObject):
    """Holds the study and its undo stack.

    Signals
    -------
    study_changed(before: Study, after: Study)
        After every edit, undo, redo and `begin`.
    unsaved_changed(unsaved: bool)
        The study differs from what was saved or begun, or no longer does.
    beginning()
        Another study is about to be here: what changes next is no edit of the one before.
    begun()
        Another study is here now; the undo stack is empty.
    """

    study_changed = Signal(object, object)
    unsaved_changed = Signal(bool)
    beginning = Signal()
    begun = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._study = Study()
        self._fills: list[Callable[[Study], Study]] = []
        self.stack = QUndoStack(self)
        self.stack.cleanChanged.connect(self._on_clean)

    @property
    def study(self) -> Study:
        """The study as it is now."""
        return self._study

    @property
    def unsaved(self) -> bool:
        """Whether something would be lost on closing."""
        return not self.stack.isClean()

    def begin(self, study: Study, saved: bool = True) -> None:
        """Put another study here; nothing before it can be undone.

        Parameters
        ----------
        study : Study
        saved : bool
            False where it is on no disk as it is: recovered work, a copy.
        """
        self.beginning.emit()
        self._fills.clear()
        self.stack.clear()
        self.stack.setClean()
        if not saved:
            self.stack.resetClean()
        self._set(study)
        self.begun.emit()

    def complete(self, fill: Callable[[Study], Study]) -> None:
        """Fill in what belongs to the beginning but took a moment: the lines, the photo's bytes.

        It is no edit: there is nothing to undo, what was undone so far stays so, and nothing
        becomes unsaved by it.

        Parameters
        ----------
        fill : callable
            Gives a study with the gap filled, and one without the gap as it is; it meets every
            state that undo brings back.
        """
        self._fills.append(fill)
        self._set(self._study)

    def change(self, text: str, after: Study, gesture: Gesture | None = None) -> None:
        """Make `after` the study, as one undo step.

        Parameters
        ----------
        text : str
            What was done, in the user's words: "Undo {text}" stands in the menu.
        after : Study
            The edited study. Build it first: an edit that is not allowed raises there,
            before anything reaches the undo stack.
        gesture : Gesture, optional
            Steps that share it become one undo step; a gesture that ends where it began
            leaves none.
        """
        if after == self._study:
            return
        self.stack.push(Edit(text, self._set, self._study, after, gesture))

    def mark_saved(self) -> None:
        """The study as it is now is on disk."""
        self.stack.setClean()

    @Slot(bool)
    def _on_clean(self, clean: bool) -> None:
        self.unsaved_changed.emit(not clean)

    def _set(self, study: Study) -> None:
        for fill in self._fills:
            study = fill(study)
        before, self._study = self._study, study
        self.study_changed.emit(before, study)


class Edit(QUndoCommand):
    """A value before and after one edit; steps of one gesture become one."""

    def __init__(
        self,
        text: str,
        put: Callable[[Any], object],
        before: Any,
        after: Any,
        gesture: Gesture | None,
    ) -> None:
        """`put` takes the value that holds from now on."""
        super().__init__(text)
        self._put = put
        self._before = before
        self._after = after
        self._gesture = gesture

    def id(self) -> int:
        return -1 if self._gesture is None else _GESTURE_COMMAND_ID

    def mergeWith(self, other: QUndoCommand) -> bool:
        if not isinstance(other, Edit) or other._gesture is not self._gesture:
            return False
        self._after = other._after
        self.setObsolete(self._after == self._before)
        return True

    def redo(self) -> None:
        self._put(self._after)

    def undo(self) -> None:
        self._put(self._before)
