"""The only door to the open class set: every edit passes here, and every edit can be undone.

As `app.state.document` is for a study. What arrives from the disk (pictures brought in) is no
edit: it is put into every state that undo brings back.
"""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoStack

from app.state.document import Edit, Gesture
from core.class_set.arrivals import Arrival, with_arrival
from core.class_set.model import ClassSet


class ClassDocument(QObject):
    """Holds the class set and its undo stack; None while no class set is open.

    Signals
    -------
    changed(before: ClassSet or None, after: ClassSet or None)
        After every edit, undo, redo, arrival and `begin`.
    begun()
        Another class set is here now, or none; the undo stack is empty.
    """

    changed = Signal(object, object)
    begun = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._class_set: ClassSet | None = None
        self._arrivals: list[Arrival] = []
        self.stack = QUndoStack(self)

    @property
    def class_set(self) -> ClassSet | None:
        """The class set as it is now."""
        return self._class_set

    @property
    def open_set(self) -> ClassSet:
        """The class set as it is now, where one is known to be open.

        Raises
        ------
        RuntimeError
            None is.
        """
        if self._class_set is None:
            raise RuntimeError("no class set is open")
        return self._class_set

    def begin(self, class_set: ClassSet | None) -> None:
        """Put another class set here, or none; nothing before it can be undone."""
        self._arrivals.clear()
        self.stack.clear()
        self._set(class_set)
        self.begun.emit()

    def change(self, text: str, after: ClassSet, gesture: Gesture | None = None) -> None:
        """Make `after` the class set, as one undo step.

        Parameters
        ----------
        text : str
            What was done, in the user's words: "Undo {text}" stands in the menu.
        after : ClassSet
            Build it first: an edit that is not allowed raises there.
        gesture : Gesture, optional
            Steps that share it become one undo step.
        """
        if self._class_set is None or after == self._class_set:
            return
        self.stack.push(Edit(text, self._set, self._class_set, after, gesture))

    def arrive(self, arrival: Arrival) -> None:
        """Take in what was brought: it is there whatever is undone."""
        if self._class_set is not None and arrival != Arrival():
            self._arrivals.append(arrival)
            self._set(self._class_set)

    def _set(self, class_set: ClassSet | None) -> None:
        if class_set is not None:
            for arrival in self._arrivals:
                class_set = with_arrival(class_set, arrival)
        before, self._class_set = self._class_set, class_set
        if before != class_set:
            self.changed.emit(before, class_set)
