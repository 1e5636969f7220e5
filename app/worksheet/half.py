"""The worksheet's half for one sheet, as parts the page puts level with the other half's."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QEvent, QObject, QSignalBlocker, Qt, Signal
from PySide6.QtGui import QFontMetricsF, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QComboBox,
    QHBoxLayout,
    QLabel,
    QSizePolicy,
    QSpacerItem,
    QVBoxLayout,
    QWidget,
)

from app.look import look
from app.look.space import CONTROL, GROUP, WITHIN
from app.look.type import FIRST
from app.worksheet.day import DayField
from app.worksheet.fields import AnswerBox
from app.worksheet.measured import MeasuredPanel
from app.worksheet.pair import SheetPair
from app.worksheet.prompt import PromptButton
from app.worksheet.scale import STRIP, AnchorWords, ScoreScale
from app.worksheet.turning import turn
from app.worksheet.words import Words
from core.i18n import translate
from core.reading.quality import CHANGES, QUALITIES, ChangeFirst, Quality
from core.worksheet.words import (
    PROMPTS,
    Prompt,
    change_question,
    change_reminder,
    change_title,
    prompt_question,
    prompt_word,
    question,
    sheet_title,
)
from core.worksheet.worksheet import MOST_ANSWER, SheetPage

_BESIDE_FROM = 540
"""Width from which what was measured stands beside the words."""

_TALL_FROM = 900
_STRIP_TALL = 36


class ScoresPart(QWidget):
    """The sheet beside the photo, with its date; and the four scales.

    Signals
    -------
    scored(quality: Quality, score: int or None, gesture: Gesture)
    dated(date: str or None, gesture: Gesture)
    """

    scored = Signal(str, object, object)
    dated = Signal(object, object)

    def __init__(self, index: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        title = sheet_title(index)
        self._title = QLabel(title, self)
        self._title.setProperty("role", "heading")
        self.pair = SheetPair(title, self)
        self.day = DayField(title, self)
        self.day.dated.connect(self.dated)
        head = QHBoxLayout()
        head.setSpacing(GROUP)
        head.addWidget(self._title)
        head.addWidget(self.day)
        self._anchors = AnchorWords(self)
        self.scales: dict[Quality, ScoreScale] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(head)
        column.addWidget(self.pair)
        scales = QVBoxLayout()
        scales.setSpacing(0)
        scales.addWidget(self._anchors)
        for quality in QUALITIES:
            scale = ScoreScale(quality, title, self)
            scale.scored.connect(partial(self.scored.emit, quality))
            self.scales[quality] = scale
            scales.addWidget(scale)
        column.addLayout(scales)
        column.addStretch(1)
        self._fit()

    def set_page(self, page: SheetPage, measured: dict[Quality, int | None]) -> None:
        """Show scores and date, and measured scores that may be seen."""
        begun = any(page.scores.of(quality) is not None for quality in QUALITIES)
        for quality, scale in self.scales.items():
            asked = begun and quality in page.scores.missing
            scale.set_score(page.scores.of(quality), measured.get(quality), asked=asked)
        self.day.set_date(page.date)

    def set_room(self, page_height: int, pictures: int) -> None:
        """Grow with the page: higher strips, and pictures of at most so many pixels."""
        self.pair.set_most(pictures)
        strip = _STRIP_TALL if page_height >= look().type.grow(_TALL_FROM) else STRIP
        for scale in self.scales.values():
            scale.set_strip(strip)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "scales"):
            self._fit()

    def _fit(self) -> None:
        width = max(scale.label_width() for scale in self.scales.values())
        self._anchors.set_label_width(width)
        for scale in self.scales.values():
            scale.set_label_width(width)


class AnswerPart(QWidget):
    """The question, what to think of, the answer, and the one thing to change first.

    Signals
    -------
    answered(text: str, gesture: Gesture), full()
    change_chosen(change: ChangeFirst or None)
    """

    answered = Signal(str, object)
    full = Signal()
    change_chosen = Signal(object)

    def __init__(self, index: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._index = index
        self._strut = QSpacerItem(0, 0)
        asked = Words(question(index), "label", self)
        asked.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        name = translate("worksheet", "{sheet}: {question}").format(
            sheet=sheet_title(index), question=question(index)
        )
        self.prompts = tuple(self._prompt(prompt) for prompt in PROMPTS)
        self.answer = AnswerBox(name, MOST_ANSWER, self, lines=4)
        asked.setBuddy(self.answer)
        line = translate("worksheet", "{word}: {question}")
        self.answer.setPlaceholderText(
            "\n".join(
                line.format(word=prompt_word(prompt), question=prompt_question(prompt, index))
                for prompt in PROMPTS
            )
        )
        self.answer.edited.connect(self.answered)
        self.answer.full.connect(self.full)
        prompts = QHBoxLayout()
        prompts.setSpacing(6)
        for button in self.prompts:
            prompts.addWidget(button)
        prompts.addStretch(1)
        self._asked = asked
        self._head = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._head.setSpacing(WITHIN)
        self._head.addWidget(asked, 1)
        self._head.addLayout(prompts)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(WITHIN)
        column.addLayout(self._head)
        column.addWidget(self.answer, 1)
        column.addLayout(self._change_row())

    def set_page(self, page: SheetPage, named: ChangeFirst | None) -> None:
        """Show the answer; `named` is what was to change first according to sheet 1."""
        self.answer.set_text(page.answer)
        if self.change is not None:
            with QSignalBlocker(self.change):
                self.change.setCurrentIndex(self.change.findData(page.change_first))
        self._reminder.say(change_reminder(named))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_head"):
            self._fit()

    def _fit(self) -> None:
        """Question and prompts in one row where both have room."""
        metrics = QFontMetricsF(look().type.font("label", FIRST))
        # Of both sheets' questions, so that the answers stay level.
        needed = max(metrics.horizontalAdvance(question(index)) for index in (0, 1)) + GROUP
        needed += sum(button.sizeHint().width() + 6 for button in self.prompts)
        two_lines = round(2 * metrics.lineSpacing())
        self._strut.changeSize(0, max(look().type.grow(CONTROL), two_lines))
        turn(self._head, needed <= self.width(), self)

    def _change_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(12)
        # As high in both halves, so that the answers end level.
        row.addItem(self._strut)
        self._reminder = Words("", "medium", self)
        self.change: QComboBox | None = None
        if self._index == 1:
            row.addWidget(self._reminder, 1)
            return row
        self._reminder.hide()
        label = Words(change_question(), "strong", self)
        self.change = QComboBox(self)
        self.change.addItem(translate("worksheet", "Choose one"), None)
        for change in CHANGES:
            self.change.addItem(change_title(change), change)
        # Narrower than its longest choice where it has to be: the halves share the page evenly.
        self.change.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.change.setMinimumContentsLength(9)
        self.change.setAccessibleName(change_question())
        self.change.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.change.installEventFilter(self)
        self.change.currentIndexChanged.connect(self._choose_change)
        label.setBuddy(self.change)
        row.addWidget(label, 1)
        row.addWidget(self.change)
        return row

    def _prompt(self, prompt: Prompt) -> PromptButton:
        button = PromptButton(prompt_word(prompt), self)
        asks = prompt_question(prompt, self._index)
        button.setToolTip(asks)
        button.setAccessibleDescription(asks)
        start = translate("worksheet", "{word}: ").format(word=prompt_word(prompt))
        button.clicked.connect(lambda: self.answer.begin_line(start))
        return button

    def _choose_change(self, place: int) -> None:
        if self.change is not None:
            self.change_chosen.emit(self.change.itemData(place))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        # A wheel that scrolls the page does not change the choice on the way.
        if event.type() == QEvent.Type.Wheel and watched is self.change:
            event.ignore()
            return True
        return super().eventFilter(watched, event)


class WordsPart(QWidget):
    """Own words, and beside or below them what was measured."""

    def __init__(self, index: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.answer = AnswerPart(index, self)
        self.measured = MeasuredPanel(self)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(GROUP)
        self._row.addWidget(self.answer, 59)
        self._row.addWidget(self.measured, 41)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_row"):
            self._fit()

    def _fit(self) -> None:
        beside = self.width() >= look().type.grow(_BESIDE_FROM)
        turn(self._row, beside, self)


class SheetHalf(QObject):
    """The parts of one sheet, from the top down."""

    def __init__(self, index: int, parent: QWidget) -> None:
        super().__init__(parent)
        self.scores = ScoresPart(index, parent)
        self.words = WordsPart(index, parent)
        self.answer, self.measured = self.words.answer, self.words.measured

    @property
    def parts(self) -> tuple[QWidget, QWidget]:
        """Own scores, then own words and measure: the order of asking."""
        return self.scores, self.words


def _preview() -> QWidget:
    page = QWidget()
    column = QVBoxLayout(page)
    column.setSpacing(GROUP)
    half = SheetHalf(0, page)
    for part in half.parts:
        column.addWidget(part)
    half.scores.set_page(SheetPage(), {})
    half.answer.set_page(SheetPage(), None)
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 660, 700))
