"""The strip below the photo: one band in words that are read aloud to a class."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.drawing.marks import BadgeView, ChipView, paint_badge, paint_chip
from app.look import look
from app.look.space import CONTROL, GROUP, INSIDE
from app.look.theme import WALL
from app.look.type import font
from app.widgets.buttons import EdgeButton
from app.widgets.readout_views import SpokenView
from app.widgets.spoken_plan import ALL_LINES, FEW_LINES, FULLNESS, Plan, Room, plan_of, tight
from core.i18n import translate

_GUTTER = 60
_ABOVE = 14


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
        return _GUTTER + self._fullness.chip + GROUP

    def _text_width(self, width: int | None = None) -> float:
        whole = self.width() if width is None else width
        return max(whole - self._paper_left() - INSIDE - 20, 120.0)

    def _room(self) -> Room:
        if self._say.isHidden():
            return Room()
        return Room(self._say.sizeHint().width() + INSIDE, look().type.grow(CONTROL + 18))

    def _place_button(self) -> None:
        if self._view is None:
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
        key = (width, most_lines, self._fullness, room, look())
        if key not in self._plans:
            self._plans[key] = plan_of(self._view, self._fullness, room, width, most_lines)
        return self._plans[key]

    def _plan_now(self) -> Plan:
        """The plan for the present height: with all sentences when there is room for them."""
        for lines in range(ALL_LINES, FEW_LINES, -1):
            plan = self._plan(self._text_width(), lines)
            if plan.height <= self.height():
                return plan
        return self._plan(self._text_width())

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
        chip = QRectF(_GUTTER, _ABOVE, width, height)
        other = view.other
        paint_chip(
            painter,
            chip,
            ChipView(view.colour)
            if other is None
            else ChipView(view.colour, second=other.colour, share=other.share),
        )
        radius = min(15.0 * min(look().type.scale, 1.3), _GUTTER / 2 - 8)
        box = QRectF(0, 0, 2 * radius, 2 * radius)
        box.moveCenter(QPointF(_GUTTER / 2 - 2, chip.center().y()))
        paint_badge(painter, box, BadgeView(view.letter, chosen=True))

    def _paint_words(self, painter: QPainter, left: float, plan: Plan) -> None:
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
                pitch = part.pitch * tight(number)
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
