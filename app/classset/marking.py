"""The marking column: one student's two sheets, what is said of them, the mark as typed."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QComboBox,
    QFrame,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.classset.draft_field import DraftField, GrowingText
from app.classset.marking_view import MarkingView
from app.classset.read_scores import ReadScores
from app.drawing.classset.scores import ScoresView, paint_scores, scores_height
from app.drawing.classset.wall import PairView, paint_pair, pair_height
from app.drawing.pyramid import Pyramid
from app.look import look
from app.look.space import INSIDE, WITHIN
from app.widgets.buttons import EdgeButton, IconButton, InkButton
from app.widgets.flow import FlowLayout
from app.widgets.strip import SheetStrip
from core.class_set.model import MOST_MARK, State
from core.class_set.standing import state_word
from core.i18n import translate
from core.worksheet.words import sheet_title

_PAIR_SHARE = 0.22
"""Of the column's height: what the two sheets take at most."""

_OFFERED: tuple[State, ...] = ("in", "late", "missing", "excused")


class SheetPair(QWidget):
    """Two sheets large, on the wall."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view = PairView()
        self._most = 400.0
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_view(self, view: PairView) -> None:
        """Show two other sheets."""
        self._view = view
        self._fit()
        self.update()

    def set_most(self, height: float) -> None:
        """Grow no higher: the words below want room too."""
        if height != self._most:
            self._most = height
            self._fit()

    def _fit(self) -> None:
        height = round(pair_height(max(self.width(), 100), self._view.aspect, self._most))
        if self.minimumHeight() != height or self.maximumHeight() != height:
            self.setFixedHeight(height)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        paint_pair(painter, self.rect().toRectF(), self._view)
        painter.end()


class ScoreTable(QWidget):
    """Own scores beside measured ones."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view = ScoresView()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    @property
    def view(self) -> ScoresView:
        """What is shown."""
        return self._view

    def set_view(self, view: ScoresView) -> None:
        """Show other scores."""
        if view == self._view:
            return
        self._view = view
        self.setFixedHeight(round(scores_height(view)))
        said = []
        for label, cells in view.rows:
            pairs = zip(view.headings, cells, strict=True)
            said.append(
                f"{label}: " + ", ".join(f"{h} {a or '-'} {b or '-'}" for h, (a, b) in pairs)
            )
        self.setAccessibleName("; ".join(said))
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(200, self.minimumHeight())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        paint_scores(painter, QRectF(self.rect()), self._view)
        painter.end()


class WordsCrop(QWidget):
    """The student's lines as a picture, as wide as the column."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.picture: Pyramid | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_picture(self, picture: Pyramid | None) -> None:
        """Show another crop."""
        if picture is not self.picture:
            self.picture = picture
            self._fit()
            self.update()

    def _fit(self) -> None:
        if self.picture is not None:
            image = self.picture.levels[0]
            self.setFixedHeight(max(1, round(self.width() * image.height() / image.width())))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.picture is not None:
            painter = QPainter(self)
            self.picture.draw(painter, QRectF(self.rect()), self.devicePixelRatioF())
            painter.end()


class MarkingColumn(QWidget):
    """Shows a `MarkingView`.

    Signals
    -------
    edited(name: str, text: str)
        "strength", "next_step", "remark" or "mark", letter by letter.
    left()
        The field was left: what follows is another step of undo.
    another_asked(name: str)
    state_chosen(index: int, state: str)
    step_asked(way: int)
        To the student before (-1) or after (1), nothing marked.
    go_on_asked()
        This student is marked; on to the next.
    work_asked(key: str)
        The student's sheets or worksheet are to be shown on the page of that key.
    scores_taken(index: int, scores: dict)
        What was read of a sheet's worksheet page is the student's own.
    corners_asked(index: int), corners_kept(index: int)
        The corners of a sheet are to be set; are right as they were found.
    """

    edited = Signal(str, str)
    left = Signal()
    another_asked = Signal(str)
    state_chosen = Signal(int, str)
    step_asked = Signal(int)
    go_on_asked = Signal()
    work_asked = Signal(str)
    scores_taken = Signal(int, object)
    corners_asked = Signal(int)
    corners_kept = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "paper")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.title = QLabel(self)
        self.title.setProperty("role", "heading")
        self.count = QLabel(self)
        self.count.setProperty("role", "second")
        self.before = IconButton("chevron_left", translate("class set page", "Student before"))
        self.after = IconButton("chevron_right", translate("class set page", "Next student"))
        self.pair = SheetPair(self)
        self.states = tuple(self._state_box(index) for index in (0, 1))
        self.corners = tuple(self._corner_button(index) for index in (0, 1))
        self.doubts = tuple(SheetStrip(index, self) for index in (0, 1))
        self.strength = DraftField(translate("class set page", "One strength"), "check", self)
        self.next_step = DraftField(
            translate("class set page", "One next step"), "arrow_right", self
        )
        self.scores = ScoreTable(self)
        self.read = ReadScores(self)
        self.change = QLabel(self)
        self.to_sheets = self._work_button("sheets", translate("pages", "Sheets"), "sheet", "F7")
        self.to_worksheet = self._work_button(
            "worksheet", translate("pages", "Worksheet"), "pencil", "F8"
        )
        self.words_title = QLabel(self)
        self.words = QLabel(self)
        self.crop = WordsCrop(self)
        self.remark = GrowingText(self, least=1)
        self.mark = QLineEdit(self)
        self.go_on: EdgeButton = InkButton(
            translate("class set page", "Next"), "arrow_right", self, note="Ctrl+Enter"
        )
        self._halves: list[QBoxLayout] = []
        self._names: list[QLabel] = []
        self._lay_out()
        self._connect()

    @property
    def tab_order(self) -> tuple[QWidget, ...]:
        """What the keyboard walks through, in the order it is read."""
        first, second = zip(self.corners, self.states, strict=True)
        drafts = (self.strength, self.next_step)
        fields = tuple(each for draft in drafts for each in (draft.button, draft.field))
        work = (self.to_sheets, self.to_worksheet)
        last = (self.remark, self.mark, self.go_on)
        read = (*self.read.fields, self.read.take)
        return (self.before, self.after, *first, *second, *read, *fields, *work, *last)

    def show_marking(self, view: MarkingView) -> None:
        """Show a student; a field that is written in keeps its cursor."""
        self.title.setText(view.title)
        self.count.setText(view.count)
        self.title.setToolTip(view.count)
        self._make_room()
        self.before.setEnabled(view.has_before)
        self.after.setEnabled(view.has_after)
        self.pair.set_view(view.pair)
        for box, state in zip(self.states, view.states, strict=True):
            with QSignalBlocker(box):
                box.setItemText(0, state_word("in") if state.placed else state_word(""))
                box.setCurrentIndex(_OFFERED.index(state.state or "in"))
        for index, state in enumerate(view.states):
            self.corners[index].setVisible(state.placed)
            self.doubts[index].set_view(view.doubts[index])
        nothing = translate("class set page", "Write one, if you like.")
        for field, draft in ((self.strength, view.strength), (self.next_step, view.next_step)):
            field.show_text(draft.text, draft=draft.is_draft, more=draft.more, nothing=nothing)
        self.scores.set_view(view.scores)
        self.read.set_view(view.read)
        self.change.setText(view.change)
        self.change.setVisible(bool(view.change))
        self.words_title.setText(view.words_title)
        self.words.setText(view.words)
        self.words.setVisible(bool(view.words))
        self.words_title.setVisible(bool(view.words_title))
        self.crop.set_picture(view.crop)
        self.crop.setVisible(view.crop is not None)
        self.crop.setAccessibleName(view.words_title)
        self.remark.set_text(view.remark)
        if self.mark.text() != view.mark:
            with QSignalBlocker(self.mark):
                self.mark.setText(view.mark)

    def take_focus(self) -> None:
        """To the first thing one writes here."""
        self.mark.setFocus(Qt.FocusReason.TabFocusReason)
        self.mark.selectAll()

    # Putting together

    def _state_box(self, index: int) -> QComboBox:
        box = QComboBox(self)
        for state in _OFFERED:
            box.addItem(state_word(state), state)
        box.setAccessibleName(
            translate("class set page", "{sheet}: in time, late, missing or excused").format(
                sheet=sheet_title(index)
            )
        )
        box.activated.connect(lambda at, index=index: self.state_chosen.emit(index, _OFFERED[at]))
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        return box

    def _work_button(self, key: str, text: str, icon: str, keys: str) -> EdgeButton:
        button = EdgeButton(text, icon, self, note=keys)
        button.setToolTip(
            translate("class set page", "This student on the {page} page").format(page=text)
        )
        button.clicked.connect(lambda: self.work_asked.emit(key))
        return button

    def _corner_button(self, index: int) -> IconButton:
        text = translate("sheets page", "Corners of sheet {number}").format(number=index + 1)
        button = IconButton("corners", text, self)
        button.setToolTip(f"{text} (Ctrl+Shift+{index + 1})")
        button.clicked.connect(lambda: self.corners_asked.emit(index))
        return button

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._head())
        column.addWidget(self._on_wall())
        self.middle_scroll = QScrollArea(self)
        self.middle_scroll.setFrameShape(QFrame.Shape.NoFrame)
        self.middle_scroll.setWidgetResizable(True)
        self.middle_scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.middle_scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.middle_scroll.setWidget(self._middle())
        column.addWidget(self.middle_scroll, 1)
        column.addWidget(self._foot())

    def _head(self) -> QWidget:
        head = QWidget(self)
        row = QHBoxLayout(head)
        row.setContentsMargins(INSIDE, WITHIN, INSIDE, WITHIN)
        row.setSpacing(WITHIN)
        row.addWidget(self.title)
        row.addStretch(1)
        row.addWidget(self.count)
        row.addWidget(self.before)
        row.addWidget(self.after)
        return head

    def _on_wall(self) -> QWidget:
        wall = QWidget(self)
        wall.setProperty("ground", "wall")
        wall.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        column = QVBoxLayout(wall)
        column.setContentsMargins(INSIDE, WITHIN, INSIDE, WITHIN)
        column.setSpacing(6)
        row = QHBoxLayout()
        row.setSpacing(WITHIN)
        for index, box in enumerate(self.states):
            name = QLabel(sheet_title(index), wall)
            name.setProperty("role", "strong")
            name.setProperty("on", "wall")
            named = QHBoxLayout()
            named.setSpacing(WITHIN)
            named.addWidget(name)
            named.addWidget(self.corners[index])
            named.addStretch(1)
            half = QBoxLayout(QBoxLayout.Direction.LeftToRight)
            half.setSpacing(WITHIN)
            half.addLayout(named)
            half.addWidget(box)
            half.addStretch(1)
            self._halves.append(half)
            self._names.append(name)
            row.addLayout(half, 1)
        column.addLayout(row)
        column.addWidget(self.pair)
        return wall

    def _middle(self) -> QWidget:
        middle = QWidget(self)
        middle.setProperty("ground", "paper")
        column = QVBoxLayout(middle)
        column.setContentsMargins(INSIDE, 12, INSIDE, 12)
        column.setSpacing(10)
        for strip in self.doubts:
            column.addWidget(strip)
        # First what the student says; and until it is taken it asks for something.
        column.addWidget(self.read)
        column.addWidget(self.strength)
        column.addWidget(self.next_step)
        column.addWidget(self.scores)
        for label in (self.change, self.words_title, self.words):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
        self.change.setProperty("role", "note")
        self.words_title.setProperty("role", "strong")
        column.addWidget(self.change)
        work = FlowLayout()
        work.setSpacing(WITHIN)
        work.addWidget(self.to_sheets)
        work.addWidget(self.to_worksheet)
        column.addLayout(work)
        column.addWidget(self.words_title)
        column.addWidget(self.words)
        column.addWidget(self.crop)
        remark = QLabel(translate("class set page", "Remark"), middle)
        remark.setProperty("role", "strong")
        remark.setBuddy(self.remark)
        self.remark.setAccessibleName(remark.text())
        column.addWidget(remark)
        column.addWidget(self.remark)
        column.addStretch(1)
        return middle

    def _foot(self) -> QWidget:
        foot = QWidget(self)
        foot.setProperty("ground", "bar")
        foot.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        row = QHBoxLayout(foot)
        row.setContentsMargins(INSIDE, WITHIN, INSIDE, WITHIN)
        row.setSpacing(WITHIN + 4)
        name = QLabel(translate("class set page", "Mark"), foot)
        name.setProperty("role", "strong")
        name.setBuddy(self.mark)
        self.mark.setAccessibleName(name.text())
        self.mark.setMaxLength(MOST_MARK)
        self.mark.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.mark.setToolTip(translate("class set page", "As you type it: 7, B+, 0, or nothing"))
        row.addWidget(name)
        row.addWidget(self.mark)
        row.addStretch(1)
        row.addWidget(self.go_on)
        self._fit()
        return foot

    def _connect(self) -> None:
        for name, field in (("strength", self.strength), ("next_step", self.next_step)):
            field.edited.connect(lambda text, name=name: self.edited.emit(name, text))
            field.another.connect(lambda name=name: self.another_asked.emit(name))
            field.left.connect(self.left)
        self.remark.textChanged.connect(lambda: self.edited.emit("remark", self.remark.text))
        self.remark.left.connect(self.left)
        self.mark.textEdited.connect(lambda text: self.edited.emit("mark", text))
        self.mark.editingFinished.connect(self.left)
        self.before.clicked.connect(lambda: self.step_asked.emit(-1))
        self.after.clicked.connect(lambda: self.step_asked.emit(1))
        self.go_on.clicked.connect(self.go_on_asked)
        self.read.taken.connect(self.scores_taken)
        for strip in self.doubts:
            strip.asked.connect(self._answer)

    def _answer(self, index: int, key: str) -> None:
        (self.corners_asked if key == "corners" else self.corners_kept).emit(index)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.pair.set_most(_PAIR_SHARE * self.height())
        self._turn_halves()
        self._make_room()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "go_on"):
            self._fit()

    def _make_room(self) -> None:
        """The count gives way to whose sheets these are."""
        room = self.width() - 2 * INSIDE - 2 * self.before.sizeHint().width() - 4 * WITHIN
        self.count.setVisible(self.title.sizeHint().width() + self.count.sizeHint().width() <= room)

    def _turn_halves(self) -> None:
        """With large text the state stands below its sheet's name."""
        room = (self.width() - 2 * INSIDE - WITHIN) / 2
        beside, below = QBoxLayout.Direction.LeftToRight, QBoxLayout.Direction.TopToBottom
        for half, *parts in zip(self._halves, self._names, self.corners, self.states, strict=True):
            wanted = sum(each.sizeHint().width() + WITHIN for each in parts)
            half.setDirection(beside if wanted <= room else below)
            half.setSpacing(WITHIN if wanted <= room else 4)

    def _fit(self) -> None:
        self.mark.setFixedWidth(look().type.grow(76))
