"""What was measured of a sheet: a locked field until the own scores are in, then sentences."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import chain

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from app.drawing.fit import advance, pitch_of, wrap
from app.look import look
from app.look.icons import paint_icon
from app.look.space import EDGE, GROUP, INSIDE, RADIUS, WITHIN
from app.look.type import FIRST, SECOND, font
from core.i18n import translate

_BAR = 6
_ICON = 20
_PAST_BAR = _BAR + 14
_TITLES_MOST = 0.34
"""Share of the width the qualities may take before their sentences stand below them."""


@dataclass(frozen=True)
class MeasuredView:
    """What may be said of a sheet.

    Attributes
    ----------
    waiting : str
        What opens the findings, or why there are none; empty when they are shown.
    locked : bool
        Own scores are missing: the field has a lock.
    directions : tuple of str
        Which way own and measured differ, each way once.
    rows : tuple of (title, sentence)
        What is true of one quality, or of several.
    findings : tuple of (icon, sentence)
        Below a rule: what held, and one thing to try.
    """

    waiting: str = ""
    locked: bool = False
    directions: tuple[str, ...] = ()
    rows: tuple[tuple[str, str], ...] = ()
    findings: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True)
class _Line:
    """One line of text; `top` is that of its line height."""

    left: float
    top: float
    text: str
    size: int
    weight: int
    second: bool = False


@dataclass(frozen=True)
class _Plan:
    lines: tuple[_Line, ...]
    icons: tuple[tuple[QRectF, str], ...]
    rule: float | None
    height: float


class Rule(QWidget):
    """A thin line across, or down."""

    def __init__(self, parent: QWidget, *, down: bool = False) -> None:
        super().__init__(parent)
        if down:
            self.setFixedWidth(1)
        else:
            self.setFixedHeight(1)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(look().theme.rule))
        painter.end()


class _Writer:
    """Sets lines below each other."""

    def __init__(self, top: float) -> None:
        self.top = top
        self.lines: list[_Line] = []
        self.icons: list[tuple[QRectF, str]] = []

    def write(
        self, text: str, left: float, width: float, size: int, weight: int, second: bool = False
    ) -> None:
        """Words wrapped into a width."""
        pitch = pitch_of(size, weight)
        for line in wrap(text, size, weight, width):
            self.lines.append(_Line(left, self.top, line, size, weight, second))
            self.top += pitch


def _title() -> str:
    return translate("worksheet", "What was measured")


def _waiting_title() -> str:
    return translate("worksheet", "Measured findings wait here")


def _plan_sentences(view: MeasuredView, width: float) -> _Plan:
    scale = look().type
    label, size, icon = scale.px("label"), scale.px("row_second"), scale.grow(_ICON)
    writer = _Writer(2.0)
    room = width - _PAST_BAR
    writer.write(_title(), _PAST_BAR, room, label, FIRST)
    writer.top += WITHIN
    for sentence in view.directions:
        writer.write(sentence, _PAST_BAR, room, size, SECOND)
        writer.top += WITHIN / 2
    writer.top += WITHIN / 2 if view.directions else 0
    column = max((advance(title, size, FIRST) for title, _ in view.rows), default=0.0) + GROUP
    if column > _TITLES_MOST * room:
        column = 0.0
    for title, sentence in view.rows:
        if not column:
            writer.write(title, _PAST_BAR, room, size, FIRST)
            writer.write(sentence, _PAST_BAR, room, size, SECOND)
            writer.top += WITHIN
            continue
        writer.lines.append(_Line(_PAST_BAR, writer.top, title, size, FIRST))
        writer.write(sentence, _PAST_BAR + column, room - column, size, SECOND)
        writer.top += WITHIN
    rule = None
    if (view.rows or view.directions) and view.findings:
        rule = writer.top + 2
        writer.top += 12
    for name, sentence in view.findings:
        middle = writer.top + pitch_of(size, FIRST) / 2
        writer.icons.append((QRectF(_PAST_BAR, middle - icon / 2, icon, icon), name))
        left = _PAST_BAR + icon + 10
        writer.write(sentence, left, width - left, size, FIRST)
        writer.top += WITHIN
    return _Plan(tuple(writer.lines), tuple(writer.icons), rule, writer.top - WITHIN + 4)


def _plan_waiting(view: MeasuredView, width: float, height: float) -> _Plan:
    scale = look().type
    label, size, icon = scale.px("label"), scale.px("row_second"), scale.grow(_ICON)
    left = INSIDE + (icon + GROUP if view.locked else 0)
    writer = _Writer(0.0)
    writer.write(_waiting_title(), left, width - left - INSIDE, label, FIRST)
    writer.top += 2
    writer.write(view.waiting, left, width - left - INSIDE, size, SECOND, second=True)
    needed = writer.top + 2 * GROUP
    down = max((height - writer.top) / 2, GROUP)
    lines = tuple(
        _Line(one.left, one.top + down, one.text, one.size, one.weight, one.second)
        for one in writer.lines
    )
    middle = down + writer.top / 2
    spot = QRectF(INSIDE, middle - icon / 2, icon, icon)
    return _Plan(lines, ((spot, "lock"),) if view.locked else (), None, needed)


class MeasuredPanel(QWidget):
    """Dashed while it waits; then an ink bar and sentences."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view = MeasuredView()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    @property
    def view(self) -> MeasuredView:
        """What is said now."""
        return self._view

    def set_view(self, view: MeasuredView) -> None:
        """Say something else."""
        if view == self._view:
            return
        self._view = view
        if view.waiting:
            said = [_waiting_title() + ".", view.waiting]
        else:
            rows = translate("worksheet", "{title}: {sentence}")
            spoken = (rows.format(title=title, sentence=words) for title, words in view.rows)
            said = [
                _title() + ".",
                *self._view.directions,
                *spoken,
                *(words for _, words in view.findings),
            ]
        self.setAccessibleName(" ".join(said))
        self._fit()
        self.update()

    def texts(self) -> tuple[str, ...]:
        """Everything that is said, for tests and the clipboard."""
        if self._view.waiting:
            return _waiting_title(), self._view.waiting
        rows = chain(*self._view.rows)
        return _title(), *self._view.directions, *rows, *(words for _, words in self._view.findings)

    def heightForWidth(self, width: int) -> int:
        return round(self._plan(width, 0.0).height + 0.5)

    def sizeHint(self) -> QSize:
        return QSize(look().type.grow(320), self.minimumHeight())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_view"):
            self._fit()

    def _fit(self) -> None:
        """As high as the words need, whatever they are wrapped to."""
        # Said as a least height: layouts within layouts lose track of heights for widths.
        self.setMinimumHeight(self.heightForWidth(self.width()))

    def _plan(self, width: float, height: float) -> _Plan:
        if self._view.waiting:
            return _plan_waiting(self._view, width, height)
        return _plan_sentences(self._view, width)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        plan = self._plan(self.width(), self.height())
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self._view.waiting:
            pen = QPen(QColor(theme.edge), EDGE)
            pen.setCapStyle(Qt.PenCapStyle.FlatCap)
            pen.setDashPattern([5, 4])
            painter.setPen(pen)
            frame = QRectF(self.rect()).adjusted(EDGE, EDGE, -EDGE, -EDGE)
            painter.drawRoundedRect(frame, RADIUS, RADIUS)
        else:
            painter.fillRect(QRectF(0, 0, _BAR, self.height()), QColor(theme.ink))
        if plan.rule is not None:
            painter.fillRect(
                QRectF(_PAST_BAR, plan.rule, self.width() - _PAST_BAR, 1), QColor(theme.rule)
            )
        for spot, name in plan.icons:
            paint_icon(painter, spot, name, theme.ink)
        for line in plan.lines:
            painter.setPen(QColor(theme.second if line.second else theme.ink))
            face = font(line.size, line.weight)
            painter.setFont(face)
            ascent = painter.fontMetrics().ascent()
            painter.drawText(QPointF(line.left, line.top + ascent), line.text)
        painter.end()


def _preview() -> QWidget:
    page = QWidget()
    column = QVBoxLayout(page)
    panel = MeasuredPanel(page)
    panel.set_view(
        MeasuredView(
            rows=(
                ("Hue", "Matches in 4 of 5 bands."),
                ("Value", "Look at band A first: lighter by 2."),
            ),
            directions=("You saw it closer to the photo than it measured: hue.",),
            findings=(("check", "B kept its hue."), ("arrow_right", "Add a part of blue in A.")),
        )
    )
    locked = MeasuredPanel(page)
    locked.set_view(MeasuredView("Score intensity to open them.", locked=True))
    column.addWidget(panel)
    column.addWidget(locked)
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 620, 320))
