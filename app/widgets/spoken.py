"""The strip below the photo: one band in words that are read aloud to a class."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.look import look
from app.look.space import CONTROL, GROUP, INSIDE
from app.look.theme import WALL
from app.look.type import CHOSEN, SECOND, font
from app.paint.marks import BadgeView, ChipView, paint_badge, paint_chip
from app.widgets.buttons import EdgeButton
from app.widgets.fit import Fitted, advance, fit
from app.widgets.readout_views import SpokenView
from core.i18n import translate

_GUTTER = 60
_ABOVE = 14
# Where the three columns begin, as shares of the text's width.
_COLUMNS = (0.0, 0.36, 0.66)
# Lines the sentences may always take, and when there is height for them.
_FEW_LINES = 2
_ALL_LINES = 4


@dataclass(frozen=True)
class _Fullness:
    """How much room the strip takes: the photo above must not be the one that yields."""

    chip: int
    word_shares: tuple[float, ...]
    labels: bool


FULLNESS = (
    _Fullness(131, (1.0, 28 / 34, 24 / 34), labels=True),
    _Fullness(88, (24 / 34, 20 / 34), labels=True),
    _Fullness(88, (22 / 34, 20 / 34), labels=False),
)
"""From the fullest to the barest; the second lines name the qualities where labels are gone."""


@dataclass(frozen=True)
class _Block:
    """Label, big word and second line of one quality, and where they stand."""

    left: float
    top: float
    parts: tuple[Fitted, Fitted, Fitted]


@dataclass(frozen=True)
class _Plan:
    blocks: tuple[_Block, ...]
    rule: float
    sentence: Fitted
    height: float


class SpokenStrip(QWidget):
    """One band's hue, value and intensity in large words, and how to tone it down.

    Signals
    -------
    say_asked()
        "Say it" was pressed; the button is hidden until speech is available.
    """

    say_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "paper")
        self._view: SpokenView | None = None
        self._gutter = _GUTTER
        self._fullness = FULLNESS[0]
        self._plans: dict[object, _Plan] = {}
        self._say = EdgeButton(translate("spoken strip", "Say it"), "speak", self)
        self._say.hide()
        self._say.clicked.connect(self.say_asked)
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def set_view(self, view: SpokenView | None) -> None:
        """Show a band, or nothing."""
        if view == self._view:
            return
        before = self._plan(self._text_width()).height if self._view is not None else 0.0
        self._view = view
        self._plans.clear()
        if view is not None:
            self.setAccessibleName(view.spoken)
            # The strip may have room for the first sentences only.
            self.setToolTip(view.sentence)
            if abs(self._plan(self._text_width()).height - before) > 1.0:
                self.updateGeometry()
        self._place_button()
        self.update()

    def set_speech_available(self, available: bool) -> None:
        """Show "Say it" only when the system can speak."""
        self._say.setVisible(available)
        self.updateGeometry()
        self.update()

    def set_gutter(self, gutter: int) -> None:
        """Width left of the chip, as left of the photo above."""
        if gutter != self._gutter:
            self._gutter = gutter
            self.updateGeometry()
            self._place_button()
            self.update()

    def set_fullness(self, level: int) -> None:
        """Take less room: a number of `FULLNESS`."""
        if FULLNESS[level] != self._fullness:
            self._fullness = FULLNESS[level]
            self.updateGeometry()
            self._place_button()
            self.update()

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        if self._view is None:
            return look().type.grow(152)
        return round(self._plan(self._text_width(width)).height + 0.5)

    def sizeHint(self) -> QSize:
        return QSize(900, self.heightForWidth(max(self.width(), 900)))

    def minimumSizeHint(self) -> QSize:
        return QSize(420, self.heightForWidth(max(self.width(), 900)))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_say"):
            self._place_button()

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._place_button()

    def _paper_left(self) -> float:
        return self._gutter + self._fullness.chip + GROUP

    def _text_width(self, width: int | None = None) -> float:
        whole = self.width() if width is None else width
        return max(whole - self._paper_left() - INSIDE - 20, 120.0)

    def _button_room(self) -> float:
        return self._say.sizeHint().width() + INSIDE if not self._say.isHidden() else 0.0

    def _place_button(self) -> None:
        if self._view is None:
            return
        size = self._say.sizeHint()
        plan = self._plan_now()
        extra = max(self.height() - plan.height, 0.0)
        middle = (plan.rule + 0.5 * extra + self.height()) / 2
        x = self.width() - 20 - size.width()
        self._say.setGeometry(round(x), round(middle - size.height() / 2), *size.toTuple())

    def _plan(self, width: float, most_lines: int = _FEW_LINES) -> _Plan:
        # Asked for several times while a line moves by one pixel.
        key = (width, most_lines, self._fullness, self._button_room(), self._low_row(), look())
        if key not in self._plans:
            self._plans[key] = self._planned(width, most_lines)
        return self._plans[key]

    def _planned(self, width: float, most_lines: int) -> _Plan:
        view = self._view
        assert view is not None
        scale = look().type
        label, second = scale.px("control"), scale.px("aloud_second")
        texts = (
            (translate("spoken strip", "Hue"), view.hue, view.hue_second),
            (translate("spoken strip", "Value"), view.value, view.value_second),
            (translate("spoken strip", "Intensity"), view.intensity, view.intensity_second),
        )
        if not self._fullness.labels:
            texts = tuple(("", word, under) for _, word, under in texts)
        if view.colour is None:
            texts = (("", view.hue, ""),)
        sizes = tuple(round(scale.px("aloud") * share) for share in self._fullness.word_shares)
        seconds = tuple(range(second, scale.px("control") - 1, -1))
        if not self._fullness.labels:
            seconds = seconds[-1:]
        lefts, widths = self._columns(texts, width, sizes[-1])
        stacked = len(set(lefts)) == 1 and len(texts) > 1
        # The three words share one size, the largest at which each fits; so do the second lines.
        sized = [fit(t[1], sizes, CHOSEN, room) for t, room in zip(texts, widths, strict=True)]
        words = tuple(size for size in sizes if size <= min(part.size for part in sized))
        under = [fit(t[2], seconds, SECOND, room) for t, room in zip(texts, widths, strict=True)]
        unders = tuple(size for size in seconds if size <= min(part.size for part in under))
        blocks: list[_Block] = []
        top = float(scale.grow(11))
        bottom = top
        for (name, word, second_line), left, room in zip(texts, lefts, widths, strict=False):
            parts = (
                fit(name, (label,), SECOND, room),
                fit(word, words, CHOSEN, room),
                fit(second_line, unders, SECOND, room),
            )
            blocks.append(_Block(left, top, parts))
            ends = top + sum(part.height * _tight(i) for i, part in enumerate(parts) if part.width)
            bottom = max(bottom, ends)
            if stacked:
                top = ends + scale.grow(6)
        rule = bottom + scale.grow(9)
        sizes = seconds
        sentence = _leading(view.sentence, sizes, width - self._button_room(), most_lines)
        low = max(sentence.height + scale.grow(14), self._low_row())
        return _Plan(tuple(blocks), rule, sentence, rule + low)

    def _plan_now(self) -> _Plan:
        """The plan for the present height: with all sentences when there is room for them."""
        for lines in range(_ALL_LINES, _FEW_LINES, -1):
            plan = self._plan(self._text_width(), lines)
            if plan.height <= self.height():
                return plan
        return self._plan(self._text_width())

    def _low_row(self) -> float:
        return look().type.grow(CONTROL + 18) if not self._say.isHidden() else 0.0

    def _columns(
        self, texts: tuple[tuple[str, str, str], ...], width: float, least: int
    ) -> tuple[tuple[float, ...], tuple[float, ...]]:
        """Left ends and widths; below each other when a word would not fit beside the others."""
        if len(texts) == 1:
            return (0.0,), (width,)
        gap = look().type.grow(16)
        needs = []
        for name, word, under in texts:
            pieces = word.replace("-", "- ").split()
            need = max((advance(piece, least, CHOSEN) for piece in pieces), default=0.0)
            size = look().type.px("control")
            rest = max((advance(piece, size, SECOND) for piece in under.split()), default=0.0)
            needs.append(max(need, rest, advance(name, size, SECOND)))
        ends = (*_COLUMNS[1:], 1.0)
        widths = tuple(
            (end - start) * width - (gap if end < 1.0 else 0.0)
            for start, end in zip(_COLUMNS, ends, strict=True)
        )
        if all(need <= room for need, room in zip(needs, widths, strict=True)):
            return tuple(share * width for share in _COLUMNS), widths
        return (0.0,) * 3, (width,) * 3

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(WALL))
        left = self._paper_left()
        paper = QRectF(left, 0, self.width() - left, self.height())
        painter.fillRect(paper, QColor(theme.paper))
        view = self._view
        if view is not None:
            self._paint_chip(painter, view)
            self._paint_words(painter, left + INSIDE, self._plan_now())
        painter.end()

    def _paint_chip(self, painter: QPainter, view: SpokenView) -> None:
        width = self._fullness.chip
        height = min(self.height() - 2 * _ABOVE, 1.2 * width)
        chip = QRectF(self._gutter, _ABOVE, width, height)
        paint_chip(painter, chip, ChipView(view.colour))
        radius = min(15.0 * min(look().type.scale, 1.3), self._gutter / 2 - 8)
        box = QRectF(0, 0, 2 * radius, 2 * radius)
        box.moveCenter(QPointF(self._gutter / 2 - 2, chip.center().y()))
        paint_badge(painter, box, BadgeView(view.letter, chosen=True))

    def _paint_words(self, painter: QPainter, left: float, plan: _Plan) -> None:
        theme = look().theme
        extra = max(self.height() - plan.height, 0.0)
        down = 0.28 * extra
        flags = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        flags |= int(Qt.TextFlag.TextDontClip)
        for block in plan.blocks:
            top = block.top + down
            for number, part in enumerate(block.parts):
                if not part.width:
                    continue
                painter.setFont(font(part.size, part.weight))
                painter.setPen(QColor(theme.second if number == 0 else theme.ink))
                pitch = part.pitch * _tight(number)
                for line in part.lines:
                    rect = QRectF(left + block.left, top, part.width + 4, pitch)
                    painter.drawText(rect, flags, line)
                    top += pitch
        rule = plan.rule + 0.5 * extra
        right = self.width() - 20
        painter.setPen(QPen(QColor(theme.rule), 1.25))
        painter.drawLine(QPointF(left, rule), QPointF(right, rule))
        part = plan.sentence
        painter.setFont(font(part.size, part.weight))
        painter.setPen(QColor(theme.ink))
        top = (rule + self.height()) / 2 - part.height / 2
        for line in part.lines:
            painter.drawText(QRectF(left, top, part.width + 4, part.pitch), flags, line)
            top += part.pitch


def _leading(text: str, sizes: tuple[int, ...], width: float, most_lines: int) -> Fitted:
    """As many whole sentences from the start as fit into so many lines; at least one."""
    sentences = text.replace(". ", ".\n").split("\n")
    for count in range(len(sentences), 0, -1):
        fitted = fit(" ".join(sentences[:count]), sizes, SECOND, width, most_lines)
        if len(fitted.lines) <= most_lines or count == 1:
            return fitted
    return fit("", sizes, SECOND, width)


def _tight(number: int) -> float:
    """Line pitch of the big words, drawn in a little: they have no neighbours above."""
    return 0.94 if number == 1 else 1.0


def _preview() -> QWidget:
    from PySide6.QtWidgets import QVBoxLayout

    from app.widgets.preview import sample_readings
    from app.widgets.readout_views import spoken_view
    from core.wording import Wording

    page = QWidget()
    column = QVBoxLayout(page)
    column.setContentsMargins(0, 0, 0, 0)
    for number, reading in enumerate((sample_readings()[2], sample_readings(crowded=True)[3])):
        strip = SpokenStrip()
        strip.set_speech_available(number == 0)
        strip.set_view(spoken_view(reading, Wording()))
        column.addWidget(strip)
    column.addStretch()
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 914, 340))
