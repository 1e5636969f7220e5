"""The plan: what to mix before the sheet is wet, then what to do in which order."""

from __future__ import annotations

from dataclasses import dataclass
from html import escape

from PySide6.QtCore import QEvent, QPointF, QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDoubleSpinBox,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.look import look
from app.look.icons import paint_icon
from app.look.space import INSIDE, WITHIN
from app.look.type import CHOSEN, FIRST, SECOND
from app.paint.marks import BadgeView, paint_badge
from app.widgets.buttons import EdgeButton, IconButton
from app.widgets.fit import fit
from core.i18n import translate


@dataclass(frozen=True)
class AmountRow:
    """One mix: its band, its strength, brush loads and millilitres, in words."""

    letter: str
    strength: str
    loads: str
    ml: str


@dataclass(frozen=True)
class PlanView:
    """The plan in words.

    Attributes
    ----------
    line : str
        All in one line, for the foot of a narrow window.
    sheets : tuple of str
        Sizes to choose among.
    sheet : int
        Which it is; -1 for one that is not in the list.
    painted : str
        The painted rectangle.
    amounts : tuple of AmountRow
    total : str
        In all, with the margin said.
    total_ml : str
    notes : tuple of str
        Water, brush, where the figures come from, what drying does.
    own_figure : float or None
        What the class measured, mL on 1000 cm2.
    usual_figure : float
    kind : str
        Flat, graded or variegated.
    steps : tuple of str
    cautions : tuple of str
    """

    line: str
    sheets: tuple[str, ...]
    sheet: int
    painted: str
    amounts: tuple[AmountRow, ...]
    total: str
    total_ml: str
    notes: tuple[str, ...]
    own_figure: float | None
    usual_figure: float
    kind: str
    steps: tuple[str, ...]
    cautions: tuple[str, ...]


class AmountsTable(QWidget):
    """Badge, strength, loads and millilitres of every mix, and their sum."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: PlanView | None = None

    def set_view(self, view: PlanView) -> None:
        """Show the amounts."""
        self._view = view
        said = "; ".join(f"{row.letter}: {row.ml} mL, {row.loads}" for row in view.amounts)
        self.setAccessibleName(f"{said}. {view.total}: {view.total_ml} mL")
        self.updateGeometry()
        self.update()

    def _row(self) -> int:
        return look().type.grow(46 if not look().type.wide else 48)

    def sizeHint(self) -> QSize:
        rows = len(self._view.amounts) if self._view else 0
        return QSize(320, rows * self._row() + look().type.grow(52))

    def minimumSizeHint(self) -> QSize:
        return QSize(200, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._view is None:
            return
        theme, scale = look().theme, look().type
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        width, row = self.width(), self._row()
        radius = min(scale.grow(13), row // 2 - 4)
        left = 2 * radius + 14
        numbers = scale.grow(64)
        control, note = scale.px("control"), scale.px("note")
        for place, item in enumerate(self._view.amounts):
            top = place * row
            painter.setPen(QPen(QColor(theme.rule), 1.25))
            painter.drawLine(QPointF(0, top + 0.7), QPointF(width, top + 0.7))
            middle = top + row / 2
            spot = QRectF(1, middle - radius, 2 * radius, 2 * radius)
            paint_badge(painter, spot, BadgeView(item.letter))
            room = width - left - numbers
            texts = (
                fit(item.strength, (control,), FIRST, room),
                fit(item.loads, (note,), SECOND, room),
            )
            y = middle - sum(text.height for text in texts) / 2
            for text, colour in zip(texts, (theme.ink, theme.second), strict=True):
                painter.setFont(scale.font("control" if text is texts[0] else "note", text.weight))
                painter.setPen(QColor(colour))
                for line in text.lines:
                    painter.drawText(QPointF(left, y + 0.78 * text.pitch), line)
                    y += text.pitch
            self._number(painter, item.ml, middle, CHOSEN)
        top = len(self._view.amounts) * row
        painter.setPen(QPen(QColor(theme.ink), 2))
        painter.drawLine(QPointF(0, top + 1), QPointF(width, top + 1))
        painter.setPen(QColor(theme.ink))
        painter.setFont(scale.font("control"))
        text = fit(self._view.total, (control, note), SECOND, width - left - numbers, 3)
        y = top + scale.grow(26) - text.height / 2
        painter.setFont(scale.font("control" if text.size == control else "note"))
        for line in text.lines:
            painter.drawText(QPointF(left, y + 0.78 * text.pitch), line)
            y += text.pitch
        self._number(painter, self._view.total_ml, top + scale.grow(26), CHOSEN)
        painter.end()

    def _number(self, painter: QPainter, text: str, middle: float, weight: int) -> None:
        painter.setPen(QColor(look().theme.ink))
        painter.setFont(look().type.font("label", weight, columns=True))
        place = QRectF(0, middle - 20, self.width(), 40)
        flags = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        painter.drawText(place, int(flags) | int(Qt.TextFlag.TextDontClip), text)


class StepList(QWidget):
    """Numbered steps, a rule between them."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)
        self._rows: list[_Step] = []

    def set_texts(self, texts: tuple[str, ...]) -> None:
        """Show steps."""
        while len(self._rows) > len(texts):
            row = self._rows.pop()
            self._column.removeWidget(row)
            row.hide()
            row.deleteLater()
        while len(self._rows) < len(texts):
            row = _Step(len(self._rows) + 1, self)
            self._column.addWidget(row)
            self._rows.append(row)
        for row, text in zip(self._rows, texts, strict=True):
            row.set_text(text)


class _Step(QWidget):
    def __init__(self, number: int, parent: QWidget) -> None:
        super().__init__(parent)
        self._label = QLabel(self)
        self._label.setWordWrap(True)
        self._count = QLabel(str(number), self)
        self._count.setProperty("role", "strong")
        self._count.setAlignment(Qt.AlignmentFlag.AlignTop)
        row = QHBoxLayout(self)
        row.setContentsMargins(4, 9, 0, 9)
        row.setSpacing(WITHIN)
        row.addWidget(self._count)
        row.addWidget(self._label, 1)

    def set_text(self, text: str) -> None:
        self._label.setText(text)
        self._count.setFixedWidth(look().type.grow(26))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setPen(QPen(QColor(look().theme.rule), 1.25))
        painter.drawLine(QPointF(0, 0.7), QPointF(self.width(), 0.7))
        painter.end()


class Caution(QWidget):
    """A caution behind its mark."""

    def __init__(self, text: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        label = QLabel(text, self)
        label.setWordWrap(True)
        row = QHBoxLayout(self)
        row.setContentsMargins(look().type.grow(30), 4, 0, 4)
        row.addWidget(label)

    def paintEvent(self, event: QPaintEvent) -> None:
        side = look().type.grow(18)
        painter = QPainter(self)
        paint_icon(painter, QRectF(1, 5, side, side), "caution", look().theme.ink)
        painter.end()


class PlanPanel(QWidget):
    """The whole plan, in a column or over the page.

    Signals
    -------
    sheet_chosen(number: int)
    figure_asked(ml: float or None)
    closed()
        Only where it lies over the page.
    """

    sheet_chosen = Signal(int)
    figure_asked = Signal(object)
    closed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "bar")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._view: PlanView | None = None
        self.close_button = IconButton("close", translate("mix page", "Close the plan"), self)
        self.close_button.clicked.connect(self.closed)
        self.sheets = QComboBox(self)
        self.sheets.setAccessibleName(translate("mix page", "Size of the sheet"))
        self.sheets.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.sheets.activated.connect(self.sheet_chosen)
        self._painted = _label("second")
        self.amounts = AmountsTable()
        self._notes = _label("note")
        self._notes.setWordWrap(True)
        self._notes.setTextFormat(Qt.TextFormat.RichText)
        self.own = QCheckBox(translate("mix page", "Our class has measured it"))
        self.own.setToolTip(
            translate(
                "mix page",
                "Weigh the board before and after a wash: one gram is one millilitre.",
            )
        )
        self.figure = QDoubleSpinBox()
        self.figure.setRange(1.0, 30.0)
        self.figure.setSingleStep(0.5)
        self.figure.setDecimals(1)
        self.figure.setSuffix(translate("mix page", " mL"))
        self.figure.setAccessibleName(
            translate("mix page", "Millilitres that 1000 square centimetres take")
        )
        self._per = QLabel(translate("mix page", "on 1000 cm²"))
        self._kind = _label("second")
        self.steps = StepList()
        self._cautions = QWidget()
        self._caution_column = QVBoxLayout(self._cautions)
        self._caution_column.setContentsMargins(0, 0, 0, 0)
        self._caution_column.setSpacing(4)
        self.own.clicked.connect(self._ask_own)
        self.figure.valueChanged.connect(lambda value: self.figure_asked.emit(value))
        self._lay_out()

    def set_overlay(self, overlay: bool) -> None:
        """Whether it lies over the page and can be closed."""
        self.close_button.setVisible(overlay)

    def set_view(self, view: PlanView) -> None:
        """Show a plan."""
        if view == self._view:
            return
        before, self._view = self._view, view
        with QSignalBlocker(self.sheets):
            if before is None or before.sheets != view.sheets:
                self.sheets.clear()
                self.sheets.addItems(view.sheets)
            self.sheets.setCurrentIndex(view.sheet)
        with QSignalBlocker(self.own):
            self.own.setChecked(view.own_figure is not None)
        with QSignalBlocker(self.figure):
            self.figure.setValue(view.usual_figure if view.own_figure is None else view.own_figure)
        self.figure.setVisible(view.own_figure is not None)
        self._per.setVisible(view.own_figure is not None)
        self._painted.setText(view.painted)
        self.amounts.set_view(view)
        self._notes.setText("".join(f"<p>{escape(note)}</p>" for note in view.notes))
        self._kind.setText(view.kind)
        self.steps.set_texts(view.steps)
        if before is None or before.cautions != view.cautions:
            self._set_cautions(view.cautions)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.close_button.isVisible():
            self.closed.emit()
        else:
            super().keyPressEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and self._view is not None:
            self._set_cautions(self._view.cautions)
            self.amounts.updateGeometry()

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(theme.bar))
        over = self.close_button.isVisibleTo(self)
        painter.fillRect(
            QRectF(0, 0, 2 if over else 1.25, self.height()),
            QColor(theme.ink if over else theme.rule),
        )
        painter.end()

    def _ask_own(self, checked: bool) -> None:
        usual = self._view.usual_figure if self._view is not None else None
        self.figure_asked.emit(usual if checked else None)

    def _set_cautions(self, texts: tuple[str, ...]) -> None:
        while self._caution_column.count():
            item = self._caution_column.takeAt(0)
            widget = item.widget() if item is not None else None
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        for text in texts:
            self._caution_column.addWidget(Caution(text))
        self._cautions.setVisible(bool(texts))

    def _lay_out(self) -> None:
        inside = QWidget()
        inside.setProperty("ground", "bar")
        column = QVBoxLayout(inside)
        column.setContentsMargins(INSIDE, 16, INSIDE, 20)
        column.setSpacing(WITHIN)
        title = QLabel(translate("mix page", "The plan"))
        title.setProperty("role", "heading")
        head = QHBoxLayout()
        head.addWidget(title, 1)
        head.addWidget(self.close_button)
        column.addLayout(head)
        sheet = QHBoxLayout()
        sheet.addWidget(self.sheets)
        sheet.addStretch(1)
        column.addLayout(sheet)
        column.addWidget(self._painted)
        column.addSpacing(WITHIN)
        mixing = QHBoxLayout()
        mixing.addWidget(_label("strong", translate("mix page", "Mix before wetting")), 1)
        mixing.addWidget(_label("note", translate("mix page", "mL")))
        column.addLayout(mixing)
        column.addWidget(self.amounts)
        column.addWidget(self.own)
        own = QHBoxLayout()
        own.setContentsMargins(28, 0, 0, 0)
        own.addWidget(self.figure)
        own.addWidget(self._per)
        own.addStretch(1)
        column.addLayout(own)
        column.addSpacing(WITHIN)
        column.addWidget(_label("strong", translate("mix page", "Then, in this order")))
        column.addWidget(self._kind)
        column.addWidget(self.steps)
        column.addSpacing(WITHIN)
        column.addWidget(self._cautions)
        column.addWidget(_label("strong", translate("mix page", "Good to know")))
        column.addWidget(self._notes)
        column.addStretch(1)
        scroll = QScrollArea(self)
        scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        scroll.setWidgetResizable(True)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setWidget(inside)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(2, 0, 0, 0)
        whole.addWidget(scroll)


class PlanBar(QWidget):
    """The plan in one line at the foot of a narrow window.

    Signals
    -------
    asked()
        The whole plan.
    """

    asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "bar")
        self._label = QLabel(self)
        self._label.setWordWrap(True)
        self.button = EdgeButton(translate("mix page", "The plan"), "", self)
        self.button.clicked.connect(self.asked)
        row = QHBoxLayout(self)
        row.setContentsMargins(INSIDE, 10, INSIDE, 10)
        row.setSpacing(2 * WITHIN)
        row.addWidget(self._label, 1)
        row.addWidget(self.button)

    def set_line(self, line: str) -> None:
        """Show the line."""
        self._label.setText(line)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(theme.bar))
        painter.fillRect(QRectF(0, 0, self.width(), 1.25), QColor(theme.rule))
        painter.end()


def _label(role: str, text: str = "") -> QLabel:
    label = QLabel(text)
    label.setProperty("role", role)
    label.setWordWrap(role == "second")
    return label
