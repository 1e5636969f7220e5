"""Asks for a paint of one's own: its name, and the paint of the list it behaves like."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFormLayout,
    QLabel,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from app.drawing.mix.swatch import SwatchView, paint_swatch
from app.look import look
from app.look.space import CONTROL, INSIDE, WITHIN
from app.look.theme import WALL
from app.widgets.answers import Answers
from app.widgets.buttons import EdgeButton, InkButton
from app.widgets.focus import FocusRing
from core.i18n import translate
from core.paint.box.names import paint_name
from core.paint.box.own_paint import MAX_NAME
from core.paint.mixture.swatch import drawn_out
from core.paint.pigment.catalogue import CATALOGUE
from core.words.lists import sentence_case

WIDTH = 460


class OwnPaintDialog(QDialog):
    """A name, and the paint of the list it behaves like.

    Parameters
    ----------
    take : callable
        Takes the name and the key of the like paint; not called without a name.
    """

    def __init__(self, take: Callable[[str, str], object], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._take = take
        self.setWindowTitle(translate("mix page", "A paint of your own"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        title = QLabel(translate("mix page", "A paint of your own"), self)
        title.setProperty("role", "heading")
        explained = QLabel(
            translate(
                "mix page",
                "Nobody measured your tube: its mixes are computed with the paint it behaves "
                "like, and the box says so.",
            ),
            self,
        )
        explained.setWordWrap(True)
        self.name = QLineEdit(self)
        self.name.setMaxLength(MAX_NAME)
        self.like = QComboBox(self)
        for paint in CATALOGUE.values():
            self.like.addItem(sentence_case(paint_name(paint)), paint.key)
        self._swatch = _Swatch(self)
        self.button = InkButton(translate("mix page", "Put it into the box"), parent=self)
        cancel = EdgeButton(translate("question", "Cancel"), parent=self)
        form = QFormLayout()
        form.setSpacing(WITHIN)
        form.setHorizontalSpacing(2 * WITHIN)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.addRow(translate("mix page", "Its name"), self.name)
        form.addRow(translate("mix page", "It behaves like"), self.like)
        form.addRow("", self._swatch)
        column = QVBoxLayout(self)
        column.setContentsMargins(INSIDE, INSIDE, INSIDE, INSIDE)
        column.setSpacing(WITHIN)
        column.addWidget(title)
        column.addWidget(explained)
        column.addSpacing(WITHIN)
        column.addLayout(form)
        column.addSpacing(2 * WITHIN)
        column.addWidget(Answers(self, (self.button,), cancel))
        self.setFixedWidth(look().type.grow(WIDTH))
        self.name.textChanged.connect(self._follow)
        self.like.currentIndexChanged.connect(lambda index: self._show_like())
        self.button.clicked.connect(self.accept)
        cancel.clicked.connect(self.reject)
        self._ring = FocusRing(self)
        self._follow("")
        self._show_like()
        self.setFixedHeight(column.totalHeightForWidth(self.width()))
        self.name.setFocus()

    def accept(self) -> None:
        name, like = self.name.text().strip(), self.like.currentData()
        if name:
            super().accept()
            self._take(name, like)

    def done(self, result: int) -> None:
        self._ring.stop()
        super().done(result)

    def _follow(self, text: str) -> None:
        self.button.set_available(
            bool(text.strip()), translate("mix page", "Give the paint a name first.")
        )

    def _show_like(self) -> None:
        paint = CATALOGUE[self.like.currentData()]
        self._swatch.view = SwatchView(drawn_out(paint))
        self._swatch.update()


class _Swatch(QWidget):
    """The like paint drawn out, on the wall."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.view = SwatchView(())
        self.setFixedHeight(look().type.grow(CONTROL) + 16)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(WALL))
        paint_swatch(painter, QRectF(self.rect()).adjusted(8, 8, -8, -8), self.view)
        painter.end()
