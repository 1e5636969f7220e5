"""The strip below the photo: one band in words that are read aloud to a class."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.drawing.marks import BadgeView, ChipView, paint_badge, paint_chip
from app.drawing.pieces import Piece, changed, paint_pieces, text_piece
from app.look import Look, look
from app.look.space import CONTROL, GROUP, INSIDE
from app.look.theme import WALL
from app.widgets.buttons import EdgeButton
from app.widgets.readout_views import SpokenView
from app.widgets.spoken_plan import (
    ALL_LINES,
    FEW_LINES,
    FULLNESS,
    Fullness,
    Plan,
    Room,
    Words,
    plan_of,
    steady_height,
    tight,
    words_of,
)
from core.i18n import remembered, translate

_GUTTER = 60
_ABOVE = 14


def strip_height(view: SpokenView, level: int, width: int) -> int:
    """Height of a strip in which a view stays when more is said of it.

    Parameters
    ----------
    view : SpokenView
    level : int
        A number of `FULLNESS`.
    width : int
        Of the whole strip.
    """
    return _strip_height(view, FULLNESS[level], width, look())


@remembered(128)
def _strip_height(view: SpokenView, fullness: Fullness, width: int, _look: Look) -> int:
    # Measured when bands, their plan and the window's size come: mostly the same bands again.
    across = _text_width(width, fullness)
    words = words_of(view, fullness, across)
    plan = plan_of(words, view.sentence, Room(), across, FEW_LINES)
    return round(max(plan.height, steady_height(words, Room(), across)) + 0.5)


def _paper_left(fullness: Fullness) -> float:
    return _GUTTER + fullness.chip + GROUP


def _text_width(width: int, fullness: Fullness) -> float:
    return max(width - _paper_left(fullness) - INSIDE - 20, 120.0)


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
        self._fullness = FULLNESS[0]
        self._plans: dict[object, Plan] = {}
        self._words: dict[object, Words] = {}
        self._look: Look | None = None
        self._pieces: tuple[Piece, ...] = ()
        self._made_for: tuple[object, ...] = ()
        # It fills all it covers: what is behind need not be drawn while a line is dragged.
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
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
        self._forget()
        if view is not None:
            self.setAccessibleName(view.spoken)
            # The strip may have room for the first sentences only.
            if view.sentence != self.toolTip():
                self.setToolTip(view.sentence)
            fixed = self.minimumHeight() == self.maximumHeight()
            if not fixed and abs(self._plan(self._text_width()).height - before) > 1.0:
                self.updateGeometry()
        self._place_button()
        drawn = self._pieces
        self._make_pieces()
        region = changed(drawn, self._pieces)
        if region is None:
            self.update()
        elif not region.isEmpty():
            self.update(region)

    def _forget(self) -> None:
        self._plans.clear()
        self._words.clear()

    def set_speech_available(self, available: bool) -> None:
        """Show "Say it" only when the system can speak."""
        self._say.setVisible(available)
        self._place_button()
        self.updateGeometry()
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
        return _paper_left(self._fullness)

    def _text_width(self, width: int | None = None) -> float:
        return _text_width(self.width() if width is None else width, self._fullness)

    def _room(self) -> Room:
        if self._say.isHidden():
            return Room()
        return Room(self._say.sizeHint().width() + INSIDE, look().type.grow(CONTROL + 18))

    def _place_button(self) -> None:
        if self._view is None or self._say.isHidden():
            return
        size = self._say.sizeHint()
        plan = self._plan_now()
        extra = max(self.height() - plan.height, 0.0)
        middle = (plan.rule + 0.5 * extra + self.height()) / 2
        x = self.width() - 20 - size.width()
        self._say.setGeometry(round(x), round(middle - size.height() / 2), *size.toTuple())

    def _plan(self, width: float, most_lines: int = FEW_LINES) -> Plan:
        # Asked for several times while a line moves by one pixel.
        assert self._view is not None
        room = self._room()
        if self._look is not look():
            self._forget()
            self._look = look()
        key = (width, most_lines, self._fullness, room)
        if key not in self._plans:
            base = (width, self._fullness)
            if base not in self._words:
                self._words[base] = words_of(self._view, self._fullness, width)
            words, sentence = self._words[base], self._view.sentence
            self._plans[key] = plan_of(words, sentence, room, width, most_lines)
        return self._plans[key]

    def _plan_now(self) -> Plan:
        """The plan for the present height: with all sentences when there is room for them."""
        for lines in range(ALL_LINES, FEW_LINES, -1):
            plan = self._plan(self._text_width(), lines)
            if plan.height <= self.height():
                return plan
        return self._plan(self._text_width())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        left = self._paper_left()
        # Only what changed is drawn anew: of a dragged line often one number.
        painter.fillRect(self.rect(), QColor(WALL))
        paper = QRectF(left, 0, self.width() - left, self.height())
        painter.fillRect(paper, QColor(look().theme.paper))
        if self._made_for != self._makes:
            self._make_pieces()
        paint_pieces(painter, self._pieces, event.region())
        painter.end()

    @property
    def _makes(self) -> tuple[object, ...]:
        """What else the pieces depend on."""
        return self.size(), self._fullness, self._room(), look(), self._view

    def _make_pieces(self) -> None:
        """Chip, letter and words as they are to be drawn."""
        self._made_for = self._makes
        self._pieces = ()
        if self._view is not None:
            texts = self._texts(self._paper_left() + INSIDE, self._plan_now())
            self._pieces = (*self._chip(self._view), *texts)

    def _chip(self, view: SpokenView) -> Iterator[Piece]:
        width = self._fullness.chip
        height = min(self.height() - 2 * _ABOVE, 1.2 * width)
        rect = QRectF(_GUTTER, _ABOVE, width, height)
        other = view.other
        chip = (
            ChipView(view.colour)
            if other is None
            else ChipView(view.colour, second=other.colour, share=other.share)
        )
        yield Piece((chip, height), rect, lambda painter: paint_chip(painter, rect, chip))
        radius = min(15.0 * min(look().type.scale, 1.3), _GUTTER / 2 - 8)
        box = QRectF(0, 0, 2 * radius, 2 * radius)
        box.moveCenter(QPointF(_GUTTER / 2 - 2, rect.center().y()))
        badge = BadgeView(view.letter, chosen=True)
        reach = 0.3 * radius
        around = box.adjusted(-reach, -reach, reach, reach)
        yield Piece((badge, height), around, lambda painter: paint_badge(painter, box, badge))

    def _texts(self, left: float, plan: Plan) -> Iterator[Piece]:
        theme = look().theme
        extra = max(self.height() - plan.height, 0.0)
        down = 0.28 * extra
        for block in plan.blocks:
            top = block.top + down
            for number, part in enumerate(block.parts):
                if not part.width:
                    continue
                colour = theme.second if number == 0 else theme.ink
                pitch = part.pitch * tight(number)
                for line in part.lines:
                    rect = QRectF(left + block.left, top, part.width + 4, pitch)
                    yield text_piece(rect, line, part.size, part.weight, colour)
                    top += pitch
        rule = plan.rule + 0.5 * extra
        right = self.width() - 20

        def paint_rule(painter: QPainter) -> None:
            painter.setPen(QPen(QColor(theme.rule), 1.25))
            painter.drawLine(QPointF(left, rule), QPointF(right, rule))

        yield Piece(
            ("rule", left, right, rule, theme.rule),
            QRectF(left - 1, rule - 2, right - left + 2, 4),
            paint_rule,
        )
        part = plan.sentence
        top = (rule + self.height()) / 2 - part.height / 2
        for line in part.lines:
            rect = QRectF(left, top, part.width + 4, part.pitch)
            yield text_piece(rect, line, part.size, part.weight, theme.ink)
            top += part.pitch


def _preview() -> QWidget:
    from PySide6.QtWidgets import QVBoxLayout

    from app.widgets.preview import sample_readings
    from app.widgets.readout_views import spoken_view
    from core.reading.wording import Wording

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
