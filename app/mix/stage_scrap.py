"""A scrap of the mix: its picture, what each stroke is against its band, and what to add."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QMenu, QWidget

from app.drawing.mix.scrap import TriesView, paint_tries, tries_height
from app.look import look
from app.look.space import GROUP, INSIDE, WITHIN
from app.mix.scrap_picture import ScrapPicture
from app.mix.scrap_shown import ScrapStageView
from app.mix.stage import LEFT, Stage
from app.widgets.buttons import EdgeButton
from app.widgets.flow import FlowLayout
from core.i18n import translate

_CHIP = 56
_PICTURE_SHARE = 0.42
_MOST_PICTURE = 460
_SIDE_BY_SIDE = 560


class ScrapStage(Stage):
    """The picture at the left, words and chips at the right, tools below.

    Signals
    -------
    picture_asked(), cancelled(), left_out(), kept(), taught(), taken_out()
    stroke_chosen(number: int), band_chosen(letter: str), drawn(region), fresh_asked(fresh: bool)
    dropped(mime: QMimeData)
    """

    picture_asked = Signal()
    cancelled = Signal()
    left_out = Signal()
    kept = Signal()
    taught = Signal()
    taken_out = Signal()
    stroke_chosen = Signal(int)
    band_chosen = Signal(str)
    drawn = Signal(object)
    fresh_asked = Signal(bool)
    dropped = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view = ScrapStageView()
        self._chips_at = QRect()
        self.setAcceptDrops(True)
        self.picture = ScrapPicture(self)
        self.lead, self.words, self.question = QLabel(self), QLabel(self), QLabel(self)
        for label in (self.lead, self.question):
            label.setProperty("role", "strong")
        for label in (self.lead, self.words, self.question):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
        self._tools = QWidget(self)
        self._flow = FlowLayout(self._tools, gap=WITHIN)
        self.open = EdgeButton(translate("mix page", "Choose a picture"), "open", self._tools)
        self.stop = EdgeButton(translate("mix page", "Stop"), "", self._tools)
        self.band = EdgeButton("", "chevron_down", self._tools)
        self.out = EdgeButton(translate("mix page", "Leave it out"), "minus", self._tools)
        self.fresh = EdgeButton(translate("mix page", "A fresh puddle"), "", self._tools)
        self.fresh.setCheckable(True)
        self.keep = EdgeButton(translate("mix page", "Keep the scrap"), "", self._tools)
        self.teach = EdgeButton(translate("mix page", "Yes, teach the box"), "", self._tools)
        self.undo_keep = EdgeButton("", "", self._tools)
        tools = (self.teach, self.band, self.out, self.fresh, self.keep, self.open, self.stop)
        for tool in tools:
            self._flow.addWidget(tool)
        self._flow.addWidget(self.undo_keep)
        self.open.clicked.connect(self.picture_asked)
        self.stop.clicked.connect(self.cancelled)
        self.out.clicked.connect(self.left_out)
        self.keep.clicked.connect(self.kept)
        self.teach.clicked.connect(self.taught)
        self.undo_keep.clicked.connect(self.taken_out)
        self.fresh.clicked.connect(self.fresh_asked)
        self.band.clicked.connect(self._open_menu)
        self.picture.chosen.connect(self.stroke_chosen)
        self.picture.left_out.connect(self.left_out)
        self.picture.lettered.connect(self._letter)
        self.picture.drawn.connect(self.drawn)
        self.set_view(self._view)

    def set_view(self, view: ScrapStageView) -> None:
        """Show what lies on the desk."""
        self._view = view
        self.title.setText(view.title)
        self.lead.setText(view.lead)
        self.lead.setVisible(bool(view.lead))
        self.words.setText(view.words)
        self.question.setText(view.teach)
        self.question.setVisible(bool(view.teach))
        self.setAccessibleName(view.title)
        self.setAccessibleDescription(
            " ".join((view.lead, *view.spoken_chips, view.words, view.teach)).strip()
        )
        self.picture.set_view(view.picture, view.said)
        self.picture.setVisible(view.picture is not None)
        stroke = view.letter is not None
        self.band.setText(translate("mix page", "For band {letter}").format(letter=view.letter))
        for tool, shown in (
            (self.band, stroke),
            (self.out, stroke),
            (self.fresh, stroke and view.mixed_before),
            (self.keep, stroke and view.can_keep),
            (self.teach, bool(view.teach)),
            (self.stop, view.busy),
            (self.open, not view.busy),
            (self.undo_keep, bool(view.take_out)),
        ):
            tool.setVisible(shown)
        self.fresh.setChecked(view.fresh)
        self.undo_keep.setText(view.take_out)
        self.open.setText(
            translate("mix page", "Choose a picture")
            if view.picture is None
            else translate("mix page", "Another picture")
        )
        for tool in (self.band, self.open, self.undo_keep):
            tool.updateGeometry()
        self._flow.invalidate()
        self._place()
        self.update()

    def height_for(self, width: int) -> tuple[int, int]:
        room = width - LEFT - INSIDE
        below = self._question_height(room) + self._tools_height(room)
        height = self.head_height() + self._body(room) + WITHIN + below
        return height + 2 * WITHIN, height + 2 * WITHIN

    def resizeEvent(self, event: object) -> None:
        super().resizeEvent(event)
        self._place()

    def paintEvent(self, event: QPaintEvent) -> None:
        if not self._view.chips:
            return
        painter = QPainter(self)
        paint_tries(painter, QRectF(self._chips_at), self._tries(), self._chip())
        painter.end()

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if event.mimeData().hasUrls() or event.mimeData().hasImage():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        self.dropped.emit(event.mimeData())
        event.acceptProposedAction()

    def _letter(self, letter: str) -> None:
        if letter in self._view.letters:
            self.band_chosen.emit(letter)

    def _open_menu(self) -> None:
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        for letter in self._view.letters:
            text = translate("mix page", "For band {letter}").format(letter=letter)
            action = menu.addAction(text)
            action.setCheckable(True)
            action.setChecked(letter == self._view.letter)
            action.setData(letter)
        menu.triggered.connect(lambda action: self.band_chosen.emit(action.data()))
        menu.popup(self.band.mapToGlobal(QPoint(0, self.band.height() + 2)))

    def _question_height(self, room: int) -> int:
        """Height of the question above the tools, and of what parts it from them."""
        return self.question.heightForWidth(room) + WITHIN if self._view.teach else 0

    def _tools_height(self, room: int) -> int:
        return self._flow.heightForWidth(room)

    def _columns(self, room: int) -> tuple[int, int, bool]:
        """Width of picture and of words, and whether they stand side by side."""
        if self._view.picture is None:
            return 0, room, True
        if room < look().type.grow(_SIDE_BY_SIDE):
            return min(room, _MOST_PICTURE), room, False
        wide = min(round(_PICTURE_SHARE * room), look().type.grow(_MOST_PICTURE))
        return wide, room - wide - GROUP, True

    def _body(self, room: int) -> int:
        """Height of picture, words and chips."""
        wide, words, beside = self._columns(room)
        tall, said = self.picture.height_for(wide), self._said(words)
        return max(tall, said) if beside else tall + WITHIN + said

    def _said(self, width: int) -> int:
        """Height of the words and the chips below them."""
        lead = self.lead.heightForWidth(width) + WITHIN // 2 if self._view.lead else 0
        return lead + self.words.heightForWidth(width) + self._chips_height(width)

    def _chips_height(self, width: int) -> int:
        if not self._view.chips:
            return 0
        return WITHIN + round(tries_height(width, self._tries(), self._chip()))

    def _place(self) -> None:
        room = self.width() - LEFT - INSIDE
        if room < 60:
            return
        wide, words, beside = self._columns(room)
        top, tall = self.head_height(), self.picture.height_for(wide)
        self.picture.setGeometry(LEFT, top, wide, tall)
        x = LEFT + wide + GROUP if beside and wide else LEFT
        y = top if beside else top + tall + WITHIN
        if self._view.lead:
            lead = self.lead.heightForWidth(words)
            self.lead.setGeometry(x, y, words, lead)
            y += lead + WITHIN // 2
        said = self.words.heightForWidth(words)
        self.words.setGeometry(x, y, words, said)
        chips = self._chips_height(words)
        self._chips_at = QRect(x, y + said + WITHIN, words, max(chips - WITHIN, 0))
        y = top + self._body(room) + WITHIN
        asked = self._question_height(room)
        self.question.setGeometry(LEFT, y, room, max(asked - WITHIN, 0))
        y += asked
        self._tools.setGeometry(LEFT, y, room, self._tools_height(room))

    def _chip(self) -> float:
        return float(look().type.grow(_CHIP))

    def _tries(self) -> TriesView:
        theme = look().theme
        return TriesView(self._view.chips, look().type.px("note"), theme.ink, theme.second)
