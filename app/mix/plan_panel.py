"""The plan: what to mix before the sheet is wet, then what to do in which order."""

from __future__ import annotations

from html import escape

from PySide6.QtCore import QEvent, QRectF, QSignalBlocker, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDoubleSpinBox,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.look import look
from app.look.space import INSIDE, WITHIN
from app.mix.plan_parts import AmountsTable, Caution, StepList
from app.mix.plan_shown import PlanView
from app.widgets.buttons import EdgeButton, IconButton
from core.i18n import translate

FOOT = 12
"""Above and below the button at the foot, which stays while the plan scrolls."""


class PlanPanel(QWidget):
    """The whole plan, in a column or over the page.

    Signals
    -------
    sheet_chosen(number: int)
    figure_asked(ml: float or None)
    print_asked()
        The plan as a card.
    closed()
        Only where it is over the page.
    """

    sheet_chosen = Signal(int)
    figure_asked = Signal(object)
    print_asked = Signal()
    closed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "bar")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._view: PlanView | None = None
        self.close_button = IconButton("close", translate("mix page", "Close the plan"), self)
        self.close_button.clicked.connect(self.closed)
        self.print_button = EdgeButton(translate("mix page", "Print the plan"), "print", self)
        self.print_button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.print_button.clicked.connect(self.print_asked)
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
        """Whether it is over the page and can be closed."""
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
        foot = self.print_button.y() - FOOT
        painter.fillRect(QRectF(0, foot, self.width(), 1.25), QColor(theme.rule))
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
        head.setSpacing(WITHIN)
        head.addWidget(title, 1)
        head.addWidget(self.sheets)
        head.addWidget(self.close_button)
        column.addLayout(head)
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
        foot = QHBoxLayout()
        foot.setContentsMargins(INSIDE, FOOT, INSIDE, FOOT)
        foot.addWidget(self.print_button)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(2, 0, 0, 0)
        whole.setSpacing(0)
        whole.addWidget(scroll, 1)
        whole.addLayout(foot)


def _label(role: str, text: str = "") -> QLabel:
    label = QLabel(text)
    label.setProperty("role", role)
    label.setWordWrap(role == "second")
    return label
