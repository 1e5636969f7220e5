"""The buttons that end a dialog: one rule for all of them, the platform's.

The deed is in ink, named after what it does, and Enter does it; leaving comes where the platform
puts it. Buttons that change something in the dialog stand with what they change, not here.
"""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QEvent, Qt
from PySide6.QtWidgets import QDialogButtonBox, QWidget

from app.look.space import WITHIN
from app.widgets.buttons import EdgeButton

_ROLES = QDialogButtonBox.ButtonRole


class Answers(QDialogButtonBox):
    """The row of buttons, or the column.

    Parameters
    ----------
    parent : QWidget
    deeds : iterable of EdgeButton
        What the dialog is for: the first is the default. Several where only one shows at a time.
    leave : EdgeButton or None
        Cancel, Close, Decide later: does no harm. It is the default where there is no deed.
    others : iterable of EdgeButton
        Other ways to go on.
    harmful : iterable of EdgeButton
        Ways that lose something.
    orientation : Qt.Orientation
    """

    def __init__(
        self,
        parent: QWidget,
        deeds: Iterable[EdgeButton] = (),
        leave: EdgeButton | None = None,
        *,
        others: Iterable[EdgeButton] = (),
        harmful: Iterable[EdgeButton] = (),
        orientation: Qt.Orientation = Qt.Orientation.Horizontal,
    ) -> None:
        super().__init__(orientation, parent)
        for buttons, role in (
            (deeds, _ROLES.AcceptRole),
            (harmful, _ROLES.DestructiveRole),
            (others, _ROLES.ActionRole),
            ((leave,) if leave is not None else (), _ROLES.RejectRole),
        ):
            for button in buttons:
                # Enter on a button that has the focus presses that one.
                button.setAutoDefault(True)
                button.setDefault(False)
                self.addButton(button, role)
        first = next((b for b in self.buttons() if self.buttonRole(b) == _ROLES.AcceptRole), leave)
        if isinstance(first, EdgeButton):
            first.setDefault(True)
        self._space()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self._space()

    def _space(self) -> None:
        layout = self.layout()
        if layout is not None:  # Qt makes a new one with another style
            layout.setSpacing(WITHIN + 4)
