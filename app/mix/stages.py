"""The three looks into a chosen band: toning down, a group of paints compared, parts by hand."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPoint, QRectF, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QMenu, QSizePolicy, QWidget

from app.look import look
from app.look.space import INSIDE, WITHIN
from app.mix.head import BAR_EDGE
from app.mix.views import Compared, Part, ToneStep
from app.paint.marks import VerdictView
from app.paint.mix_compare import (
    ComparedChip,
    CompareView,
    compare_captions_height,
    paint_compare,
)
from app.paint.mix_tone import ToneChip, ToneView, captions_height, paint_tone
from app.widgets.buttons import EdgeButton, IconButton
from app.widgets.flow import FlowLayout
from app.widgets.stepper import Stepper
from core.i18n import translate

LEAST_CHIPS, MOST_CHIPS = 56, 150
LEFT = INSIDE - BAR_EDGE
"""A stage begins right of the ink bar."""


# Under this width a chip's words leave the drift out, else they would grow taller than the chip.
_DRIFT_FROM = 118


@dataclass(frozen=True)
class ToneStageView:
    """Title, steps, the toners one may choose as (name, chosen), and how they compare."""

    title: str
    steps: tuple[ToneStep, ...]
    toners: tuple[tuple[str, bool], ...]
    comparison: str = ""


@dataclass(frozen=True)
class CompareStageView:
    """Title, the band's colour in the photo, the paints."""

    title: str
    photo: str
    paints: tuple[Compared, ...]


@dataclass(frozen=True)
class HandStageView:
    """The mix as it can be counted by hand.

    Attributes
    ----------
    letter : str
        The band.
    parts : tuple of Part
    addable : tuple of (key, name)
        Paints of the box that are not in it.
    strength : str
    by_hand : bool
        Whether it was set by hand: then one can go back.
    most : int
        Parts a paint may have.
    """

    letter: str
    parts: tuple[Part, ...]
    addable: tuple[tuple[str, str], ...]
    strength: str
    by_hand: bool
    most: int


class Stage(QWidget):
    """What the three have in common: a title, and a drawing as wide as the row.

    The title may begin further right, beside the control that chooses among the stages.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.head_left = LEFT
        self._head = look().type.grow(46)
        self.title = QLabel(self)
        self.title.setProperty("role", "strong")
        self.title.setWordWrap(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def head_height(self) -> int:
        """Height of the title's line, as last measured."""
        return self._head

    def measure_head(self, width: int, left: int) -> int:
        """Height the title needs when it begins at `left` in a stage of a width."""
        self.head_left = left
        room = max(width - left - INSIDE - self.head_room(), 40)
        self._head = max(self.title.heightForWidth(room) + 10, look().type.grow(46))
        return self._head

    def head_room(self) -> int:
        """Width that stands in the title's line beside the title."""
        return 0

    def place_head(self) -> None:
        """Lay the title out."""
        room = self.width() - self.head_left - INSIDE - self.head_room()
        self.title.setGeometry(self.head_left, 0, room, self.head_height() - 6)

    def resizeEvent(self, event: object) -> None:
        self.place_head()

    def height_for(self, width: int) -> tuple[int, int]:
        """Least height, and the height beyond which more room does nothing; with the title."""
        raise NotImplementedError


class ToneStage(Stage):
    """The tone-down ladder.

    Signals
    -------
    toner_asked(number: int)
        Another toner of the view's list.
    """

    toner_asked = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: ToneStageView | None = None
        self.comparison = QLabel(self)
        self.comparison.setWordWrap(True)
        self.choose = EdgeButton(translate("mix page", "Another toner"), "chevron_down", self)
        self.choose.clicked.connect(self._open_menu)

    def set_view(self, view: ToneStageView | None, nothing: str = "") -> None:
        """Show a ladder, or say why there is nothing to tone down."""
        self._view = view
        if view is None:
            self.title.setText(nothing)
        else:
            self.title.setText(view.title)
            steps = "; ".join(f"{step.fraction}: {step.note}" for step in view.steps)
            self.setAccessibleName(f"{view.title}. {steps}. {view.comparison}".strip())
            self.comparison.setText(view.comparison)
        self.comparison.setVisible(view is not None and bool(view.comparison))
        self.choose.setVisible(view is not None and len(view.toners) > 1)
        self.place_head()
        self.update()

    def height_for(self, width: int) -> tuple[int, int]:
        if self._view is None:
            return self.head_height(), self.head_height()
        scale = look().type
        words = captions_height(width - LEFT - INSIDE, self._drawing())
        words += self._comparison_height(width)
        least = self.head_height() + words + scale.grow(LEAST_CHIPS)
        return round(least), round(least + scale.grow(MOST_CHIPS - LEAST_CHIPS))

    def _comparison_height(self, width: int) -> int:
        if self._view is None or not self._view.comparison:
            return 0
        return self.comparison.heightForWidth(width - LEFT - INSIDE) + WITHIN

    def resizeEvent(self, event: object) -> None:
        super().resizeEvent(event)
        tall = self._comparison_height(self.width())
        room = self.width() - LEFT - INSIDE
        self.comparison.setGeometry(LEFT, self.height() - tall, room, max(tall - WITHIN, 0))

    def head_room(self) -> int:
        shown = self.choose.isVisibleTo(self)
        return self.choose.sizeHint().width() + WITHIN if shown else 0

    def place_head(self) -> None:
        super().place_head()
        hint = self.choose.sizeHint()
        top = (self.head_height() - 6 - hint.height()) // 2
        self.choose.setGeometry(
            self.width() - INSIDE - hint.width(), top, hint.width(), hint.height()
        )

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._view is None:
            return
        painter = QPainter(self)
        top = self.head_height()
        tall = self.height() - top - self._comparison_height(self.width())
        rect = QRectF(LEFT, top, self.width() - LEFT - INSIDE, tall)
        paint_tone(painter, rect, self._drawing(), wall=QRectF(self.rect()))
        painter.end()

    def _drawing(self) -> ToneView:
        assert self._view is not None
        theme = look().theme
        chips = tuple(
            ToneChip(step.colour, step.fraction, step.note, step.drift, step.framed, step.mud)
            for step in self._view.steps
        )
        roomy = self.width() / max(len(chips), 1) >= look().type.grow(_DRIFT_FROM)
        return ToneView(chips, look().type.px("note"), theme.ink, theme.second, roomy)

    def _open_menu(self) -> None:
        if self._view is None:
            return
        menu = QMenu(self)
        for number, (name, chosen) in enumerate(self._view.toners):
            action = menu.addAction(name)
            action.setCheckable(True)
            action.setChecked(chosen)
            action.triggered.connect(
                lambda _checked=False, number=number: self.toner_asked.emit(number)
            )
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        menu.popup(self.choose.mapToGlobal(QPoint(0, self.choose.height() + 2)))


class CompareStage(Stage):
    """The paints of one group side by side."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: CompareStageView | None = None

    def set_view(self, view: CompareStageView | None) -> None:
        """Show the paints; None where the box has only one of them."""
        self._view = view
        if view is not None:
            self.title.setText(view.title)
            said = " ".join(
                f"{item.name}: {item.mix}. {item.verdict_word}, {item.faults}. {item.sensitivity}"
                for item in view.paints
            )
            self.setAccessibleName(f"{view.title}. {said}")
        self.update()

    def height_for(self, width: int) -> tuple[int, int]:
        if self._view is None:
            return self.head_height(), self.head_height()
        scale = look().type
        words = compare_captions_height(width - LEFT - INSIDE, self._drawing())
        least = self.head_height() + words + scale.grow(LEAST_CHIPS)
        return round(least), round(least + scale.grow(MOST_CHIPS - LEAST_CHIPS))

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._view is None:
            return
        painter = QPainter(self)
        top = self.head_height()
        rect = QRectF(LEFT, top, self.width() - LEFT - INSIDE, self.height() - top)
        paint_compare(painter, rect, self._drawing(), wall=QRectF(self.rect()))
        painter.end()

    def _drawing(self) -> CompareView:
        assert self._view is not None
        theme = look().theme
        chips = tuple(
            ComparedChip(
                item.name,
                item.colour,
                item.mix,
                VerdictView(item.verdict, item.verdict_word, theme.ink, theme.raised),
                (item.faults, item.sensitivity),
                item.used,
            )
            for item in self._view.paints
        )
        note = look().type.px("note")
        return CompareView(self._view.photo, chips, note, theme.ink, theme.second)


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
        for part in (self.weaker, self._strength, self.stronger):
            row.addWidget(part)
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
            stepper = self._steppers.pop(key)
            self._flow.removeWidget(stepper)
            stepper.hide()
            stepper.deleteLater()
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
