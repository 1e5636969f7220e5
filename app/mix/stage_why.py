"""Why a mix is built as it is, and what not to do: sentences for who asks."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtWidgets import QLabel, QWidget

from app.look import look
from app.look.space import INSIDE, WITHIN
from app.mix.detail_parts import OfferLine
from app.mix.stage import LEFT, Stage
from app.mix.views import Offer
from core.i18n import translate


@dataclass(frozen=True)
class WhyStageView:
    """Sentences of the mix, and mixes to avoid."""

    sentences: tuple[str, ...]
    avoid: tuple[Offer, ...]


class WhyStage(Stage):
    """Sentences below each other; before a mix to avoid stands a minus."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view = WhyStageView((), ())
        self.lines: list[QLabel | OfferLine] = []
        self.title.setText(translate("mix page", "Why this mix"))

    def set_view(self, view: WhyStageView) -> None:
        """Say something else."""
        if view == self._view:
            return
        self._view = view
        for line in self.lines:
            line.hide()
            line.deleteLater()
        self.lines = []
        for sentence in view.sentences:
            label = QLabel(sentence, self)
            label.setWordWrap(True)
            self.lines.append(label)
        self.lines += [OfferLine(offer, self) for offer in view.avoid]
        for line in self.lines:
            line.show()
        said = (*view.sentences, *(offer.text for offer in view.avoid))
        self.setAccessibleName(" ".join((self.title.text() + ".", *said)))
        self._lay_out()

    def height_for(self, width: int) -> tuple[int, int]:
        room = width - LEFT - INSIDE
        tall = sum(self._height(line, room) + WITHIN for line in self.lines)
        needed = self.head_height() + tall + look().type.grow(4)
        return needed, needed

    def resizeEvent(self, event: object) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def _height(self, line: QLabel | OfferLine, room: int) -> int:
        return line.height_for(room) if isinstance(line, OfferLine) else line.heightForWidth(room)

    def _lay_out(self) -> None:
        room, top = self.width() - LEFT - INSIDE, self.head_height()
        for line in self.lines:
            height = self._height(line, max(room, 40))
            line.setGeometry(LEFT, top, max(room, 40), height)
            top += height + WITHIN
