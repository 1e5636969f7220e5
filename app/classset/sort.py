"""Sort: what could not be placed, each with its reason and a proposal."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, QTimer
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.classset.part import ClassPart
from app.classset.places import PlacesList
from app.classset.question_card import QuestionCard
from app.classset.sort_view import card_view, digests_in, places_view, slot_at
from app.look import look
from app.look.space import MARGIN, WITHIN
from app.workspace import Workspace
from core.class_set import edits
from core.class_set.answers import answered, replies
from core.class_set.model import ClassSet
from core.class_set.place_text import place_typed
from core.class_set.questions import Question
from core.class_set.ticket import Slot
from core.i18n import translate

MOST_CARDS = 6
"""Questions on the wall at a time: a class without tickets has more than a hundred."""

_LEFT = 430


class SortPart(ClassPart):
    """Left what is to be placed, right a row a student."""

    def __init__(self, workspace: Workspace, parent: QWidget | None = None) -> None:
        super().__init__(workspace, parent)
        self._at = 0
        self._first = 0
        self.cards: list[QuestionCard] = []
        self.places = PlacesList(self)
        self.field = QLineEdit(self)
        self.title, self.count = QLabel(self), QLabel(self)
        self.done_line, self.done_text = QLabel(self), QLabel(self)
        self.rest = QLabel(self)
        self._more = QTimer(self, singleShot=True, interval=0)
        self._more.timeout.connect(self.refresh)
        self._lay_out()
        self._connect()

    @property
    def current(self) -> Question | None:
        """The question that Enter answers."""
        asked = self._questions
        return asked[self._at] if self._at < len(asked) else None

    # What the user asks for

    def choose(self, digest: str) -> None:
        """Make a question the current one."""
        for number, question in enumerate(self._questions):
            if question.digest == digest:
                self._at = number
        self.refresh()

    def step(self, way: int) -> None:
        """To the question before or after."""
        self._at = max(0, min(len(self._questions) - 1, self._at + way))
        self.refresh()

    def enter(self) -> None:
        """What is typed names the place; nothing typed gives the first answer."""
        class_set, question = self.desk.class_set, self.current
        text = self.field.text().strip()
        if class_set is None or question is None:
            return
        if not text:
            self.answer(question.digest, replies(question)[0])
            return
        with self.workspace.notices.reporting():
            slot = place_typed(text, class_set.class_list)
            if slot is None:
                self.workspace.notices.problem(
                    translate(
                        "class set page",
                        "{text} is no place: type 14 1 for the first sheet of student 14, 14 w1 "
                        "for the worksheet page about it.",
                    ).format(text=text)
                )
                return
            self.field.clear()
            self.put(question.digest, slot)

    def answer(self, digest: str, reply: str) -> None:
        """Answer a question."""
        class_set = self.desk.class_set
        question = next((each for each in self._questions if each.digest == digest), None)
        known = (
            next((each for each in replies(question) if each == reply), None) if question else None
        )
        if class_set is None or question is None or known is None:
            return
        self.choose(digest)
        if known == "elsewhere":
            self.field.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        if known == "corners":
            self.corners_asked.emit(digest)
            return
        self._change(answered(class_set, question, known))

    def put(self, digest: str, slot: Slot) -> None:
        """Put a picture in a place by hand."""
        class_set = self.desk.class_set
        if class_set is None:
            return
        self._change(edits.place(class_set, digest, slot))
        self._show_number(slot.number)

    # A part

    def begin(self) -> None:
        self._at = self._first = 0
        self.field.clear()

    def take_focus(self) -> None:
        (self.field if self._questions else self.places).setFocus(Qt.FocusReason.TabFocusReason)

    def refresh(self) -> None:
        class_set, found = self.desk.class_set, self.desk.sorted
        if class_set is None or found is None:
            return
        asked = found.questions
        self._at = max(0, min(self._at, len(asked) - 1))
        self._show_cards(class_set, asked)
        self.places.set_view(places_view(self.desk, class_set, found), digests_in(class_set, found))

    def sheet_meant(self, index: int) -> str | None:
        """The picture that is asked about, or the other sheet of its student."""
        question, found = self.current, self.desk.sorted
        if question is None or found is None:
            return None
        slot = question.proposal or question.place
        if slot is None or (slot.what == "sheet" and slot.index == index):
            return question.digest
        return found.placement.digest_at(Slot(slot.number, index))

    # Within

    @property
    def _questions(self) -> tuple[Question, ...]:
        return () if self.desk.sorted is None else self.desk.sorted.questions

    def _change(self, after: ClassSet) -> None:
        self.desk.change(translate("undo", "place of a picture"), after)

    def _show_cards(self, class_set: ClassSet, asked: tuple[Question, ...]) -> None:
        last = max(0, len(asked) - MOST_CARDS)
        self._first = max(0, min(self._first, self._at, last))
        self._first = max(self._first, self._at - MOST_CARDS + 1)
        shown = asked[self._first : self._first + MOST_CARDS]
        if len(self.cards) < len(shown):
            self._add_card()
            if len(self.cards) < len(shown):
                # Each takes some milliseconds to be made and dressed: one a turn.
                self._more.start()
        for number, card in enumerate(self.cards):
            card.setVisible(number < len(shown))
        for number, (card, question) in enumerate(zip(self.cards, shown, strict=False)):
            view = card_view(self.desk, class_set, question)
            card.set_view(view, chosen=self._first + number == self._at)
        some = bool(asked)
        text = translate("class set page", "{n}, in the order they were brought in")
        self.count.setText(text.format(n=len(asked)) if some else "")
        for widget in (self.field, self.field_label):
            widget.setVisible(some)
        for widget in (self.done_line, self.done_text):
            widget.setVisible(not some)
        more = len(asked) - self._first - len(shown)
        self.rest.setText(translate("class set page", "{n} more below").format(n=more))
        self.rest.setVisible(more > 0)
        if some and self._at - self._first < len(self.cards):
            self._see(self.cards[self._at - self._first])

    def _see(self, card: QuestionCard) -> None:
        # Once the layout has placed it.
        self._cards_column.activate()
        self.scroll_cards.ensureWidgetVisible(card, 0, 8)

    def _add_card(self) -> None:
        card = QuestionCard(self)
        card.pressed.connect(self.choose)
        card.answered.connect(self.answer)
        self._cards_column.insertWidget(len(self.cards), card)
        self.cards.append(card)

    def _show_number(self, number: int) -> None:
        class_set = self.desk.class_set
        if class_set is not None:
            numbers = [each.number for each in class_set.students]
            self.places.show_row(numbers.index(number))

    def _lay_out(self) -> None:
        left = self._left = QWidget(self)
        left.setProperty("ground", "wall")
        left.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        head = QHBoxLayout()
        head.setContentsMargins(MARGIN, 14, MARGIN, 6)
        head.setSpacing(MARGIN)
        self.title.setText(translate("class set page", "To place"))
        self.done_line.setText(translate("class set page", "Every picture has its place."))
        self.done_text.setText(
            translate("class set page", "Drag one to another place, should it lie wrong.")
        )
        self.field_label = QLabel(
            translate("class set page", "Type where it belongs, or Enter for the first answer"),
            left,
        )
        for label, role in (
            (self.title, "label"),
            (self.count, "strong"),
            (self.done_line, "line"),
            (self.done_text, "strong"),
            (self.rest, "strong"),
            (self.field_label, "strong"),
        ):
            label.setProperty("role", role)
            label.setProperty("on", "wall")
            label.setWordWrap(label is not self.title)
        head.addWidget(self.title)
        head.addWidget(self.count, 1)
        self.field.setPlaceholderText(translate("class set page", "such as 14 1"))
        self.field.setAccessibleName(self.field_label.text())
        self.field_label.setBuddy(self.field)
        inside = QWidget(left)
        inside.setProperty("ground", "wall")
        self._cards_column = QVBoxLayout(inside)
        self._cards_column.setContentsMargins(MARGIN - 3, 3, MARGIN - 3, 8)
        self._cards_column.setSpacing(12)
        for widget in (self.rest, self.done_line, self.done_text):
            self._cards_column.addWidget(widget)
        self._cards_column.addStretch(1)
        self.scroll_cards = QScrollArea(left)
        self.scroll_cards.setFrameShape(QFrame.Shape.NoFrame)
        self.scroll_cards.setWidgetResizable(True)
        self.scroll_cards.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.scroll_cards.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.scroll_cards.setWidget(inside)
        foot = QVBoxLayout()
        foot.setContentsMargins(MARGIN, WITHIN, MARGIN, 12)
        foot.setSpacing(WITHIN)
        foot.addWidget(self.field_label)
        foot.addWidget(self.field)
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(head)
        column.addWidget(self.scroll_cards, 1)
        column.addLayout(foot)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(left)
        row.addWidget(self.places, 1)
        self._fit()

    def _connect(self) -> None:
        self.field.installEventFilter(self)
        self.places.placed.connect(self._on_placed)
        self.places.picked.connect(self._on_picked)
        self.places.emptied.connect(self._on_emptied)

    def _on_placed(self, digest: str, row: int, place: int) -> None:
        class_set = self.desk.class_set
        if class_set is not None and any(each.digest == digest for each in class_set.brought):
            self.put(digest, slot_at(class_set, row, place))

    def _on_picked(self, row: int, place: int) -> None:
        class_set, question = self.desk.class_set, self.current
        if class_set is not None and question is not None:
            self.put(question.digest, slot_at(class_set, row, place))

    def _on_emptied(self, row: int, place: int) -> None:
        class_set, found = self.desk.class_set, self.desk.sorted
        if class_set is None or found is None:
            return
        digest = found.placement.digest_at(slot_at(class_set, row, place))
        if digest is not None:
            self._change(edits.lay_aside(class_set, digest))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """In the field: Enter answers, Up and Down go through the questions."""
        if watched is self.field and isinstance(event, QKeyEvent):
            if event.type() != QEvent.Type.KeyPress:
                return False
            key = event.key()
            if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self.enter()
                return True
            if key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
                self.step(-1 if key == Qt.Key.Key_Up else 1)
                return True
        return False

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_left"):
            self._fit()

    def _fit(self) -> None:
        wanted = look().type.grow(_LEFT)
        self._left.setFixedWidth(max(320, min(wanted, round(0.42 * self.width()))))
