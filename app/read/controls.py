"""The row above the photo: how to look at it, how many bands, propose again."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QMenu, QSizePolicy, QWidget

from app.look.space import WITHIN
from app.widgets.buttons import EdgeButton, IconButton
from app.widgets.segmented import SegmentedControl
from app.widgets.stepper import Stepper
from core.i18n import translate
from core.photo.views import VALUE_STEPS

MOST_PROPOSED = 7


class ReadControls(QWidget):
    """Two groups side by side, or one above the other where the words need it.

    Where it is narrow, "Propose again" shrinks to its icon before a second row is begun.

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
        # Their own choices are a menu: a row of them would push everything beside it away.
        self._views.set_opens("steps")
        self._views.set_opens("eyes")
        self._eye = "deutan"
        self.stepper = Stepper(
            translate("read page", "Bands"),
            translate("read page", "Fewer bands"),
            translate("read page", "More bands"),
            self,
        )
        self.propose = EdgeButton(translate("read page", "Propose again"), "", self)
        self._views.chosen.connect(self._choose_view)
        self._views.again.connect(self._open_menu)
        self.stepper.stepped.connect(self.count_asked)
        self.propose_small = IconButton("reset", translate("read page", "Propose again"), self)
        for button in (self.propose, self.propose_small):
            button.clicked.connect(self.propose_asked)
        left, right = QWidget(self), QWidget(self)
        self._groups = (left, right)
        for group, parts in (
            (left, (self._views,)),
            (right, (self.stepper, self.propose, self.propose_small)),
        ):
            row = QHBoxLayout(group)
            row.setContentsMargins(0, 0, 0, 0)
            row.setSpacing(WITHIN)
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
        if kind == "steps":
            self._steps = int(which)
        elif kind == "eyes":
            self._eye = which

    def set_steps(self, steps: int) -> None:
        """How many value steps the class works with; they are shown when asked for next."""
        self._steps = steps
        if self._views.current == "steps":
            self.view_chosen.emit(f"steps {steps}")

    def show_count(self, count: int) -> None:
        """Show how many bands there are; 0 while there is no photo."""
        self.stepper.set_range(1 if count else 0, max(MOST_PROPOSED, count) if count else 0)
        self.stepper.set_value(count)
        for part in (self._views, self.propose, self.propose_small):
            part.setEnabled(count > 0)

    def minimumSizeHint(self) -> QSize:
        wider = max(group.sizeHint().width() for group in self._groups)
        return QSize(wider, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_row"):
            self.fit()

    def _choose_view(self, key: str) -> None:
        whole = {"steps": f"steps {self._steps}", "eyes": f"eyes {self._eye}"}
        self.view_chosen.emit(whole.get(key, key))

    def choices(self, kind: str) -> QMenu:
        """The menu of value steps, or of other eyes."""
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        if kind == "steps":
            many = translate("read page", "{count} steps")
            offers = [(str(count), many.format(count=count)) for count in VALUE_STEPS]
            current = str(self._steps)
        else:
            offers = [
                ("protan", translate("read page", "No red cones")),
                ("deutan", translate("read page", "No green cones")),
                ("tritan", translate("read page", "No blue cones")),
            ]
            current = self._eye
        for which, text in offers:
            action = menu.addAction(text)
            action.setCheckable(True)
            action.setChecked(which == current)
            action.triggered.connect(
                lambda _checked=False, key=f"{kind} {which}": self.view_chosen.emit(key)
            )
        return menu

    def _open_menu(self, kind: str) -> None:
        place = self._views.place_of(kind)
        self.choices(kind).popup(self._views.mapToGlobal(place.bottomLeft()))

    def fit(self) -> None:
        """Stand in one row or two, as the width allows; also before being shown."""
        room = self.width()
        # A second row would take its height from the photo: the words move closer first.
        for close, label in ((False, True), (True, True), (True, False)):
            self._views.set_close(close)
            self.stepper.set_close(not label)
            views, bands = self._widths()
            one_row = views + bands <= room
            if one_row:
                break
        else:
            self._views.set_close(False)
            self.stepper.set_close(False)
        propose = self.propose.sizeHint().width() - self.propose_small.sizeHint().width()
        in_words = views + bands + propose <= room or not one_row
        self.propose.setVisible(in_words)
        self.propose_small.setVisible(not in_words)
        directions = QBoxLayout.Direction
        direction = directions.LeftToRight if one_row else directions.TopToBottom
        if direction != self._row.direction():
            self._row.setDirection(direction)
            self.updateGeometry()  # a hidden widget's layout does not tell the one around it

    def _widths(self) -> tuple[int, int]:
        """What the ways of looking and the number of bands need."""
        small = self.propose_small.sizeHint().width() + WITHIN
        bands = self.stepper.sizeHint().width() + small
        return self._views.sizeHint().width() + WITHIN, bands
