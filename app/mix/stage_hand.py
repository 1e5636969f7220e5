"""The parts of a chosen band, counted by hand."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QMenu, QWidget

from app.look.space import INSIDE, WITHIN
from app.mix.stage import LEFT, Stage
from app.mix.stage_views import HandStageView
from app.mix.views import Part
from app.widgets.buttons import EdgeButton, IconButton
from app.widgets.flow import FlowLayout
from app.widgets.stepper import Stepper
from core.i18n import translate


class HandStage(Stage):
    """A stepper for every paint, one for the wash's strength, and a way back.

    Signals
    -------
    part_asked(key: str, count: int), load_asked(steps: int), back_asked()
    """

    part_asked = Signal(str, int)
    load_asked = Signal(int)
    back_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: HandStageView | None = None
        self._steppers: dict[str, Stepper] = {}
        self.title.setText(
            translate("mix page", "Count the parts yourself: strip and words follow at once.")
        )
        self._paints = QWidget(self)
        self._flow = FlowLayout(self._paints, gap=3 * WITHIN)
        self._tools = below = QWidget(self)
        self._below = FlowLayout(below, gap=WITHIN)
        self.add = EdgeButton(translate("mix page", "Add a paint"), "plus", below)
        self.add.clicked.connect(self._open_menu)
        wash = QWidget(below)
        row = QHBoxLayout(wash)
        row.setContentsMargins(2 * WITHIN, 0, 2 * WITHIN, 0)
        row.setSpacing(WITHIN)
        self.weaker = IconButton("minus", translate("mix page", "More water"), wash)
        self.stronger = IconButton("plus", translate("mix page", "More paint"), wash)
        self._strength = QLabel(wash)
        self._strength.setProperty("role", "strong")
        self._strength.setAlignment(Qt.AlignmentFlag.AlignCenter)
        for step in (self.weaker, self._strength, self.stronger):
            row.addWidget(step)
        self.back = EdgeButton(translate("mix page", "Back to the proposed mix"), "reset", below)
        for part in (self.add, wash, self.back):
            self._below.addWidget(part)
        self.weaker.clicked.connect(lambda: self.load_asked.emit(-1))
        self.stronger.clicked.connect(lambda: self.load_asked.emit(1))
        self.back.clicked.connect(self.back_asked)

    def set_view(self, view: HandStageView) -> None:
        """Show a mix."""
        before, self._view = self._view, view
        keys = [part.key for part in view.parts]
        # Of one band the steppers keep their places: none may slip away under the mouse.
        kept = keys if before is not None and before.letter == view.letter else []
        for key in [key for key in self._steppers if key not in kept]:
            gone = self._steppers.pop(key)
            self._flow.removeWidget(gone)
            gone.hide()
            gone.deleteLater()
        for part in view.parts:
            stepper = self._steppers.get(part.key)
            if stepper is None:
                stepper = self._add_stepper(part)
            # The last paint left cannot be taken out: a mix has at least one part.
            stepper.set_range(1 if len(keys) == 1 else 0, view.most)
            stepper.set_value(part.count)
        self._strength.setText(view.strength)
        self.weaker.set_available(bool(keys))
        self.stronger.set_available(bool(keys))
        self.add.set_available(bool(view.addable))
        self.back.set_available(
            view.by_hand, translate("mix page", "Change a part first; then you can go back.")
        )
        self._flow.invalidate()
        self._place()

    def set_counts(self, counts: dict[str, int]) -> None:
        """Show counts at once; a paint not yet there waits for the next view."""
        for key, stepper in self._steppers.items():
            stepper.set_value(counts.get(key, 0))

    def stepper(self, key: str) -> Stepper:
        """The stepper of a paint."""
        return self._steppers[key]

    def height_for(self, width: int) -> tuple[int, int]:
        room = width - LEFT - INSIDE
        flows = self._flow.heightForWidth(room) + self._below.heightForWidth(room)
        height = self.head_height() + flows + 3 * WITHIN
        return height, height

    def resizeEvent(self, event: object) -> None:
        super().resizeEvent(event)
        self._place()

    def _place(self) -> None:
        room = self.width() - LEFT - INSIDE
        top, paints = self.head_height(), self._flow.heightForWidth(room)
        self._paints.setGeometry(LEFT, top, room, paints)
        tools = self._below.heightForWidth(room)
        self._tools.setGeometry(LEFT, top + paints + 2 * WITHIN, room, tools)

    def _add_stepper(self, part: Part) -> Stepper:
        stepper = Stepper(
            part.name,
            translate("mix page", "One part less of {paint}").format(paint=part.name),
            translate("mix page", "One part more of {paint}").format(paint=part.name),
            self._paints,
        )
        stepper.stepped.connect(lambda count, key=part.key: self.part_asked.emit(key, count))
        self._flow.addWidget(stepper)
        stepper.show()
        self._steppers[part.key] = stepper
        return stepper

    def _open_menu(self) -> None:
        menu = add_menu(self, self._view.addable if self._view else ())
        menu.triggered.connect(lambda action: self.part_asked.emit(action.data(), 1))
        menu.popup(self.add.mapToGlobal(QPoint(0, self.add.height() + 2)))


def add_menu(parent: QWidget, paints: Sequence[tuple[str, str]]) -> QMenu:
    """A menu of paints; each action's data is its key."""
    menu = QMenu(parent)
    menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    for key, name in paints:
        menu.addAction(name).setData(key)
    return menu
