"""Read a painted card: its picture with every field outlined, what its paints became, one click."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import get_args

from PySide6.QtCore import Qt
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.drawing.fields import FieldMark, FieldsView, Quad
from app.errors import sentence_of
from app.files.brought import paths_in
from app.files.file_dialogs import ask_to_open, photos
from app.look import look
from app.look.space import GROUP, INSIDE, WITHIN
from app.state.tasks import Latest
from app.swatches.jobs import FoundCard, Place, ReadCard, finding, fitting
from app.swatches.paint_line import PaintLine
from app.swatches.picture import CardPicture
from app.widgets.answers import Answers
from app.widgets.buttons import EdgeButton, InkButton
from app.widgets.focus import FocusRing
from app.widgets.segmented import SegmentedControl
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.swatch_card import SwatchCard
from core.paint.pigment.card_paint import Light
from core.swatches.asking import cards_of_box
from core.swatches.fields import FieldReading
from core.swatches.fitting import into_box
from core.swatches.read import CardReading, Corners, card_of_code, outlines
from core.swatches.words import another_card, field_word, fit_sentences

WIDTH, HEIGHT = 1060, 680
PANEL = 380
FIRST_CORNERS: Corners = ((0.12, 0.1), (0.88, 0.1), (0.88, 0.85), (0.12, 0.85))


class ReadCardDialog(QDialog):
    """The dialog.

    Parameters
    ----------
    parent : QWidget or None
    box : Box
        The box whose cards are known, and that the paints are to go into.
    path : Path
        The picture.
    take : callable
        Takes the box with the card's paints.
    """

    def __init__(
        self, parent: QWidget | None, box: Box, path: Path, take: Callable[[Box], object]
    ) -> None:
        super().__init__(parent)
        self._box, self._take, self._folder = box, take, path.parent
        self._cards = cards_of_box(box)
        self._found: FoundCard | None = None
        self._corners: Corners | None = None
        self._reading: CardReading | None = None
        self._read: ReadCard | None = None
        self._left_out: frozenset[Place] = frozenset()
        self._trusted: frozenset[Place] = frozenset()
        self._light: Light = "window"
        self._work = Latest(self)
        self.setWindowTitle(translate("swatches", "Read a swatch card"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setModal(True)
        self._make_controls()
        self._lay_out()
        self._ring = FocusRing(self)
        self.setAcceptDrops(True)
        self.open_picture(path)

    @property
    def working(self) -> bool:
        """Whether something is being looked for or worked out."""
        return self._work.running

    @property
    def read(self) -> ReadCard | None:
        """What was read last."""
        return self._read

    @property
    def card(self) -> SwatchCard:
        """The card it is taken for."""
        return self._cards[max(self.which.currentIndex(), 0)]

    def open_picture(self, path: Path) -> None:
        """Look for the card in another picture."""
        self._folder = path.parent
        self._found = self._corners = self._reading = self._read = None
        self._left_out = self._trusted = frozenset()
        self.picture.wait(translate("swatches", "Looking for the card..."))
        self._say(translate("swatches", "Looking for the card..."))
        self._show_paints()
        self._work.run(finding(path), self._on_found, self._on_failed)
        self._follow()

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if paths_in(event.mimeData()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Another picture of the card."""
        paths = paths_in(event.mimeData())
        if paths:
            self.open_picture(paths[0])
            event.acceptProposedAction()

    def done(self, result: int) -> None:
        self._work.cancel()
        self._ring.stop()
        super().done(result)

    # The controls

    def _make_controls(self) -> None:
        self.picture = CardPicture(self)
        self.picture.field_asked.connect(self._ask_field)
        self.picture.corners_moved.connect(self._move_corners)
        self.light = SegmentedControl(
            [
                ("window", translate("swatches", "Window")),
                ("lamps", translate("swatches", "Lamps")),
                ("scan", translate("swatches", "Scan")),
            ],
            translate("swatches", "How the picture was taken"),
            self,
        )
        self.light.set_chosen("window")
        self.light.chosen.connect(self._choose_light)
        self.which = QComboBox(self)
        self.which.setAccessibleName(translate("swatches", "Which card it is"))
        for number, card in enumerate(self._cards, start=1):
            names = card.rows[0].name
            text = translate("swatches", "Card {code}: {paints}...")
            self.which.addItem(text.format(code=card.code, paints=names, number=number))
        self.which.setMinimumContentsLength(16)
        self.which.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.which.activated.connect(lambda index: self._choose_card())
        self.put = InkButton(translate("swatches", "Put into the box"), parent=self)
        self.put.clicked.connect(self._put)
        self.fields = InkButton(translate("swatches", "Read the fields"), parent=self)
        self.fields.clicked.connect(self._fit)
        self.by_hand = EdgeButton(translate("swatches", "Set the corners by hand"), parent=self)
        self.by_hand.clicked.connect(self._set_by_hand)
        self.other = EdgeButton(translate("swatches", "Another picture..."), parent=self)
        self.other.clicked.connect(self._ask_picture)
        self.cancel = EdgeButton(translate("question", "Cancel"), parent=self)
        self.cancel.clicked.connect(self.reject)
        for button in (self.by_hand, self.other):
            button.setAutoDefault(False)

    def _lay_out(self) -> None:
        self._status = _label("", "strong")
        self._problems = _label("")
        self._hint = _label(
            translate(
                "swatches",
                "A click on a field leaves it out, or says that it is right. By keys: arrows, "
                "then Space.",
            ),
            "note",
        )
        self._paints = QVBoxLayout()
        self._paints.setSpacing(WITHIN)
        inner = QWidget()
        column = QVBoxLayout(inner)
        column.setContentsMargins(0, 0, WITHIN, 0)
        column.setSpacing(WITHIN)
        column.addWidget(self._status)
        column.addWidget(self._problems)
        column.addWidget(self._hint)
        column.addLayout(self._paints)
        column.addStretch(1)
        scroll = QScrollArea(self)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidgetResizable(True)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setWidget(inner)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        panel = QWidget(self)
        panel.setFixedWidth(look().type.grow(PANEL))
        side = QVBoxLayout(panel)
        side.setContentsMargins(INSIDE, GROUP, INSIDE, GROUP)
        side.setSpacing(WITHIN)
        side.addWidget(_label(translate("swatches", "Read a swatch card"), "heading"))
        side.addWidget(self.light)
        side.addWidget(self.which)
        side.addWidget(scroll, 1)
        more = QHBoxLayout()
        more.setSpacing(WITHIN)
        more.addWidget(self.by_hand)
        more.addStretch(1)
        side.addLayout(more)
        row = QHBoxLayout()
        row.setSpacing(WITHIN)
        row.addWidget(self.other)
        row.addStretch(1)
        side.addLayout(row)
        side.addWidget(Answers(self, (self.put, self.fields), self.cancel))
        whole = QHBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(0)
        whole.addWidget(self.picture, 1)
        whole.addWidget(panel)
        screen = self.screen().availableSize()
        grow = look().type.grow
        self.resize(min(grow(WIDTH), screen.width() - 40), min(grow(HEIGHT), screen.height() - 60))

    # What is asked

    def _choose_light(self, key: str) -> None:
        self._light = next(light for light in get_args(Light) if light == key)
        if self._reading is not None:
            self._fit()

    def _choose_card(self) -> None:
        self._reading, self._left_out, self._trusted = None, frozenset(), frozenset()
        if self._corners is not None and self.picture.view.corners is None:
            self._fit()

    def _ask_picture(self) -> None:
        title = translate("swatches", "A picture of the painted card")
        path = ask_to_open(self, title, self._folder, photos())
        if path is not None:
            self.open_picture(path)

    def _set_by_hand(self) -> None:
        self._corners = self._corners or FIRST_CORNERS
        self._reading = self._read = None
        self._say(
            translate(
                "swatches",
                "Drag the four rings to the middles of the black marks; the one without a white "
                "ring is at the card's bottom right. By keys: 1 to 4 choose a ring, arrows move "
                "it.",
            )
        )
        self._show_paints()
        self.picture.set_view(FieldsView(corners=self._corners))
        self.picture.setFocus()
        self._follow()

    def _move_corners(self, corners: Quad) -> None:
        self._corners = tuple((x, y) for x, y in corners)

    def _ask_field(self, number: int) -> None:
        if self._read is None:
            return
        place = divmod(number, 3)
        shown = self._shown_fields()
        word = shown[number].word if number < len(shown) else "bare"
        if word == "check":
            doubts = self._read.fit.doubts if self._read.fit is not None else ()
            row = self.card.rows[place[0]].key
            swapped = any(doubt.paint == row and doubt.kind == "swapped" for doubt in doubts)
            also = {(place[0], 1), (place[0], 2)} if swapped else {place}
            self._trusted |= also
        elif word == "left out":
            self._left_out -= {place}
        elif word in ("read", "too dark"):
            self._left_out |= {place}
        else:
            return
        self._fit()

    def _put(self) -> None:
        if self._read is not None and self._read.fit is not None:
            box = into_box(self._box, self._read.fit)
            self.accept()
            self._take(box)

    # What came of it

    def _on_found(self, found: FoundCard) -> None:
        self._found = found
        self.picture.set_image(found.image)
        card = card_of_code(self._cards, found.code)
        if card is not None:
            self.which.setCurrentIndex(self._cards.index(card))
        if found.corners is None:
            self._set_by_hand()
            self._say(
                translate(
                    "swatches",
                    "No swatch card was found in this picture. Is it another one? Else drag the "
                    "four rings to the middles of its black marks; the one without a white ring "
                    "is at the card's bottom right. By keys: 1 to 4 choose a ring, arrows move it.",
                )
            )
            return
        self._corners = found.corners
        if card is None:
            self._say(another_card() if found.code is not None else _choose_text())
            self._show_outlines(())
            self._follow()
            return
        self._fit()

    def _fit(self) -> None:
        if self._found is None or self._corners is None:
            return
        self._say(translate("swatches", "Reading the fields..."))
        work = fitting(
            self._found,
            self._corners,
            self.card,
            self._box,
            self._light,
            self._left_out,
            self._trusted,
            self._reading,
        )
        self._work.run(work, self._on_read, self._on_failed)
        self._follow()

    def _on_read(self, read: ReadCard) -> None:
        self._read, self._reading = read, read.reading
        self._corners = read.reading.corners
        fields, fit = self._shown_fields(), read.fit
        self._show_outlines(fields)
        self._show_paints()
        if fit is None:
            self._say(read.problem)
        else:
            text = translate("swatches", "{used} of {all} fields are read.")
            self._say(text.format(used=sum(one.used for one in fields), all=len(fields)))
            self._problems.setText("\n\n".join(fit_sentences(fit, self._box)))
        self._problems.setVisible(bool(self._problems.text()))
        self._follow()

    def _on_failed(self, error: Exception) -> None:
        self._say(sentence_of(error))
        self._follow()

    def _shown_fields(self) -> tuple[FieldReading, ...]:
        if self._read is None:
            return ()
        fit = self._read.fit
        return self._read.reading.fields if fit is None else fit.reading.fields

    def _show_outlines(self, fields: tuple[FieldReading, ...]) -> None:
        if self._found is None or self._corners is None:
            return
        height, width = self._found.pixels.shape[:2]
        quads = outlines(self._corners, len(self.card.rows), width, height)
        marks = tuple(
            FieldMark(quad, field_word(one.word), one.used)
            for quad, one in zip(quads, fields, strict=False)
        )
        self.picture.set_view(FieldsView(marks))

    def _show_paints(self) -> None:
        while self._paints.count():
            item = self._paints.takeAt(0)
            widget = item.widget() if item is not None else None
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        fit = self._read.fit if self._read is not None else None
        for paint in fit.paints if fit is not None else ():
            self._paints.addWidget(PaintLine(paint, self))
        if fit is None:
            self._problems.setText("")

    def _follow(self) -> None:
        """Offer what can be done now."""
        by_hand = self.picture.view.corners is not None and self._read is None
        ready = self._read is not None and self._read.fit is not None and not self._work.running
        self.put.setVisible(not by_hand)
        self.fields.setVisible(by_hand)
        (self.fields if by_hand else self.put).setDefault(True)
        self.put.set_available(ready, translate("swatches", "Nothing is read yet."))
        self.which.setVisible(len(self._cards) > 1)
        self.by_hand.set_available(self._found is not None)
        self._hint.setVisible(self._read is not None)

    def _say(self, text: str) -> None:
        self._status.setText(text)


def _label(text: str, role: str = "") -> QLabel:
    label = QLabel(text)
    label.setWordWrap(True)
    if role:
        label.setProperty("role", role)
    return label


def _choose_text() -> str:
    return translate(
        "swatches", "The card's code could not be read: choose above which card it is."
    )
