"""What was read of a worksheet page, row by row beside its crop, until the teacher takes it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QRectF, Qt, Signal
from PySide6.QtGui import QIntValidator, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QSizePolicy, QVBoxLayout, QWidget

from app.drawing.pyramid import Pyramid
from app.look import look
from app.look.space import WITHIN
from app.services.class_set.desk import ClassDesk
from app.widgets.buttons import EdgeButton
from core.class_set.kept_scores import offered, page_of
from core.class_set.model import ClassSet
from core.class_set.placing import Placement
from core.class_set.score_marks.words import reading_word
from core.i18n import translate
from core.reading.quality import QUALITIES, Quality
from core.worksheet.words import quality_title, sheet_title

TAKE_KEYS = "Ctrl+T"

_FIELD = 46  # pixels across, for two digits


@dataclass(frozen=True)
class ReadRow:
    """One quality: what was read, and what goes into its field."""

    name: str
    said: str
    score: int | None = None


@dataclass(frozen=True, eq=False)
class ReadScoresView:
    """A page that waits to be taken.

    Attributes
    ----------
    page : (str, int)
        Its picture's digest, and which page it is: another one empties what was typed.
    title : str
    rows : tuple of ReadRow
        One a quality, in their order.
    crops : Pyramid or None
        The rows one below the other, each as high.
    """

    page: tuple[str, int]
    title: str
    rows: tuple[ReadRow, ...]
    crops: Pyramid | None = None


def read_scores_view(
    desk: ClassDesk, class_set: ClassSet, placement: Placement, number: int
) -> ReadScoresView | None:
    """The first page of a student's that was read and not taken; None where there is none."""
    pages = class_set.entry(number).worksheet.pages
    for index in (0, 1):
        kept = desk.scores.of(placement, number, index)
        page = page_of(placement, number, index)
        if kept is None or page is None or not offered(kept, pages[index].scores):
            continue
        title = translate("class set page", "Own scores on the worksheet, {sheet}")
        crops = None if kept.crops is None else desk.pictures.painting(kept.crops)
        return ReadScoresView(
            page,
            title.format(sheet=sheet_title(index).lower()),
            tuple(
                ReadRow(quality_title(quality), reading_word(reading), reading.score)
                for quality, reading in zip(QUALITIES, kept.rows, strict=True)
            ),
            crops,
        )
    return None


class RowCrop(QWidget):
    """One row of the page as it was photographed, as wide as the column.

    Parameters
    ----------
    place, of : int
        Which of how many rows of the picture.
    """

    def __init__(self, place: int, of: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._place, self._of = place, of
        self._picture: Pyramid | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_picture(self, picture: Pyramid | None) -> None:
        """Show a row of another page."""
        if picture is not self._picture:
            self._picture = picture
            self._fit()
            self.update()

    def _fit(self) -> None:
        if self._picture is not None:
            image = self._picture.levels[0]
            high = self.width() * image.height() / (self._of * image.width())
            self.setFixedHeight(max(1, round(high)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._picture is not None:
            painter = QPainter(self)
            high = self.height()
            whole = QRectF(0, -self._place * high, self.width(), self._of * high)
            self._picture.draw(painter, whole, self.devicePixelRatioF())
            painter.end()


class ReadScores(QWidget):
    """Shows a `ReadScoresView`; hidden while there is none.

    Signals
    -------
    taken(index: int, scores: dict of Quality to int or None)
        The teacher accepts the page, with what stands in the fields.
    """

    taken = Signal(int, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: ReadScoresView | None = None
        self.title = QLabel(self)
        self.title.setProperty("role", "strong")
        self.title.setWordWrap(True)
        self.names = tuple(QLabel(self) for _ in QUALITIES)
        self.said = tuple(QLabel(self) for _ in QUALITIES)
        self.fields = tuple(self._field() for _ in QUALITIES)
        self.crops = tuple(RowCrop(k, len(QUALITIES), self) for k in range(len(QUALITIES)))
        self.take = EdgeButton(
            translate("class set page", "Take these scores"), "check", self, note=TAKE_KEYS
        )
        self.take.clicked.connect(self.take_them)
        self._lay_out()
        self.hide()

    @property
    def view(self) -> ReadScoresView | None:
        """What is offered; None while nothing is."""
        return self._view

    def set_view(self, view: ReadScoresView | None) -> None:
        """Offer a page, or nothing; what was typed stays while the page does."""
        same = view is not None and self._view is not None and view.page == self._view.page
        self._view = view
        self.setVisible(view is not None)
        if view is None:
            return
        self.title.setText(view.title)
        for k, row in enumerate(view.rows):
            self.names[k].setText(row.name)
            self.said[k].setText(row.said)
            self.crops[k].set_picture(view.crops)
            self.crops[k].setVisible(view.crops is not None)
            self.crops[k].setAccessibleName(f"{row.name}: {row.said}")
            self.fields[k].setAccessibleName(f"{row.name}, {row.said}")
            if not same:
                self.fields[k].setText("" if row.score is None else str(row.score))
        self._follow()

    @property
    def scores(self) -> Mapping[Quality, int | None]:
        """What stands in the fields; None for an empty one."""
        return {
            quality: int(field.text()) if field.hasAcceptableInput() else None
            for quality, field in zip(QUALITIES, self.fields, strict=True)
        }

    def take_them(self) -> None:
        """Accept the page; nothing where every field is empty."""
        if self._view is not None and self.take.isEnabled():
            self.taken.emit(self._view.page[1], dict(self.scores))

    def _field(self) -> QLineEdit:
        field = QLineEdit(self)
        field.setValidator(QIntValidator(1, 10, field))
        field.setMaxLength(2)
        field.setAlignment(Qt.AlignmentFlag.AlignCenter)
        field.textChanged.connect(self._follow)
        field.returnPressed.connect(self.take_them)
        return field

    def _follow(self) -> None:
        self.take.set_available(
            any(score is not None for score in self.scores.values()),
            translate("class set page", "Type the numbers you see."),
        )

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(self.title)
        rows = zip(self.names, self.said, self.fields, self.crops, strict=True)
        for name, said, field, crop in rows:
            name.setProperty("role", "medium")
            said.setProperty("role", "note")
            row = QHBoxLayout()
            row.setSpacing(WITHIN)
            row.addWidget(name)
            row.addStretch(1)
            row.addWidget(said)
            row.addWidget(field)
            column.addLayout(row)
            column.addWidget(crop)
        last = QHBoxLayout()
        last.addStretch(1)
        last.addWidget(self.take)
        column.addLayout(last)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "take"):
            self._fit()

    def _fit(self) -> None:
        for field in self.fields:
            field.setFixedWidth(look().type.grow(_FIELD))
