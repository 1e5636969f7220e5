"""What each of the page's four parts is."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QWidget

from app.services.class_set.desk import ClassDesk
from app.workspace import Workspace


class ClassPart(QWidget):
    """A part of the Class page; made when it is first shown, and only while a class set is open.

    A part listens to `self.desk` (`opened`, `changed`, `sorted_changed`, `underway_changed`) and
    redraws in `refresh`, which is called for it whenever one of these says so while the part is
    shown, and when it is shown again.

    Attributes
    ----------
    ready : bool
        Of the class: whether the part is built. One that is not is not offered.

    Signals
    -------
    corners_asked(digest: str)
        The corners of a picture are to be set.
    """

    ready = True
    corners_asked = Signal(str)

    def __init__(self, workspace: Workspace, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.workspace = workspace
        self.desk: ClassDesk = workspace.desk
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)

    def refresh(self) -> None:
        """Show what the desk has now; cheap where nothing differs."""

    def begin(self) -> None:
        """Another class set is here: forget what was chosen."""

    def sheet_meant(self, index: int) -> str | None:
        """The picture whose corners the menu means; None where the part shows none."""
        return None

    def show_to_class(self) -> bool:
        """Show what there is for the class (F5); False where there is nothing."""
        return False

    def take_focus(self) -> None:
        """The part was chosen by key: give the keyboard to what is most wanted."""
        self.setFocus(Qt.FocusReason.OtherFocusReason)
