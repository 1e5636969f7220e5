"""The row above the photo: how to look at it, how many bands, propose again."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QSizePolicy, QWidget

from app.look.space import GROUP, WITHIN
from app.widgets.buttons import EdgeButton
from app.widgets.segmented import SegmentedControl
from app.widgets.stepper import Stepper
from core.i18n import translate

MOST_PROPOSED = 7


class ReadControls(QWidget):
    """Two groups side by side, or one above the other where the words need it.

    Where it is narrow, "Propose again" is left to the menu before a second row is begun.

    Signals
    -------
    view_chosen(key: str)
        A key of `app.services.pictures.Pictures.ask`.
    count_asked(count: int), propose_asked()
    """

    view_chosen = Signal(str)
    count_asked = Signal(int)
    propose_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._steps = 5
        self._views = SegmentedControl(
            [
                ("colour", translate("read page", "Colour")),
                ("values", translate("read page", "Values")),
                ("steps", translate("read page", "Value steps")),
                ("squint", translate("read page", "Squint")),
                ("eyes", translate("read page", "Other eyes")),
            ],
            translate("read page", "How to look at the photo"),
            self,
        )
        self._step_numbers = SegmentedControl(
            [("3", "3"), ("5", "5"), ("9", "9")],
            translate("read page", "Number of value steps"),
            self,
        )
        self._step_numbers.set_chosen("5")
        self._step_numbers.hide()
        self._eye = "deutan"
        self._eyes = SegmentedControl(
            [
                ("protan", translate("read page", "No red cones")),
                ("deutan", translate("read page", "No green")),
                ("tritan", translate("read page", "No blue")),
            ],
            translate("read page", "Which cones the eye lacks"),
            self,
        )
        self._eyes.set_chosen(self._eye)
        self._eyes.hide()
        self.stepper = Stepper(
            translate("read page", "Bands"),
            translate("read page", "Fewer bands"),
            translate("read page", "More bands"),
            self,
        )
        self.propose = EdgeButton(translate("read page", "Propose again"), "", self)
        self._views.chosen.connect(self._choose_view)
        self._step_numbers.chosen.connect(self._choose_steps)
        self._eyes.chosen.connect(lambda eye: self.view_chosen.emit(f"eyes {eye}"))
        self.stepper.stepped.connect(self.count_asked)
        self.propose.clicked.connect(self.propose_asked)
        left, right = QWidget(self), QWidget(self)
        self._groups = (left, right)
        for group, parts in (
            (left, (self._views, self._step_numbers, self._eyes)),
            (right, (self.stepper, self.propose)),
        ):
            row = QHBoxLayout(group)
            row.setContentsMargins(0, 0, 0, 0)
            row.setSpacing(WITHIN if group is left else GROUP + 12)
            for part in parts:
                row.addWidget(part)
            if group is left:
                row.addStretch(1)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(WITHIN)
        self._row.addWidget(left, 1)
        self._row.addWidget(right)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_view(self, key: str) -> None:
        """Show which way of looking is in use."""
        kind, _, which = key.partition(" ")
        self._views.set_chosen(kind)
        self._step_numbers.setVisible(kind == "steps")
        self._eyes.setVisible(kind == "eyes")
        if kind == "steps":
            self._steps = int(which)
            self._step_numbers.set_chosen(which)
        elif kind == "eyes":
            self._eye = which
            self._eyes.set_chosen(which)
        self._arrange()

    def set_steps(self, steps: int) -> None:
        """How many value steps the class works with; they are shown when asked for next."""
        self._steps = steps
        self._step_numbers.set_chosen(str(steps))
        if self._views.current == "steps":
            self.view_chosen.emit(f"steps {steps}")

    def show_count(self, count: int) -> None:
        """Show how many bands there are; 0 while there is no photo."""
        self.stepper.set_range(1 if count else 0, max(MOST_PROPOSED, count) if count else 0)
        self.stepper.set_value(count)
        for part in (self._views, self._step_numbers, self._eyes, self.propose):
            part.setEnabled(count > 0)

    def minimumSizeHint(self) -> QSize:
        wider = max(group.sizeHint().width() for group in self._groups)
        return QSize(wider, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_row"):
            self._arrange()

    def _choose_view(self, key: str) -> None:
        whole = {"steps": f"steps {self._steps}", "eyes": f"eyes {self._eye}"}
        self.view_chosen.emit(whole.get(key, key))

    def _choose_steps(self, number: str) -> None:
        self.view_chosen.emit(f"steps {number}")

    def _arrange(self) -> None:
        room = self.width() - GROUP
        # A second row would take its height from the photo: the words move closer first.
        for close in (False, True):
            self._views.set_close(close)
            views, bands = self._widths()
            one_row = views + bands - WITHIN <= room
            if one_row:
                break
        else:
            self._views.set_close(False)
        propose = GROUP + 12 + self.propose.sizeHint().width()
        self.propose.setVisible(views + bands + propose <= room or not one_row)
        directions = QBoxLayout.Direction
        self._row.setDirection(directions.LeftToRight if one_row else directions.TopToBottom)

    def _widths(self) -> tuple[int, int]:
        """What the ways of looking and the number of bands need."""
        groups = ((self._views, self._step_numbers, self._eyes), (self.stepper,))
        views, bands = (
            sum(part.sizeHint().width() + WITHIN for part in parts if not part.isHidden())
            for parts in groups
        )
        return views, bands
