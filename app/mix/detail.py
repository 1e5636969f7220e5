"""What a chosen band opens: its parts bar, other mixes, and one of a few looks into it."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, Signal
from PySide6.QtWidgets import QWidget

from app.look import look
from app.look.space import GROUP, INSIDE, WITHIN
from app.mix.detail_parts import NamedBar, OfferLine
from app.mix.head import BAR_EDGE
from app.mix.row_detail import RowDetail
from app.mix.stage import LEFT, Stage
from app.mix.stage_compare import CompareStage
from app.mix.stage_hand import HandStage
from app.mix.stage_scrap import ScrapStage
from app.mix.stage_tone import ToneStage
from app.mix.stage_views import CompareStageView, HandStageView, ToneStageView
from app.mix.stage_why import WhyStage, WhyStageView
from app.mix.views import BandView, Offer
from app.widgets.buttons import EdgeButton
from app.widgets.segmented import SegmentedControl
from core.i18n import translate

_BAR_SHARE = 0.4
_OFFERS_LEAST = 330
_LINE_GAP = 2
_TITLE_LEAST = 210


@dataclass(frozen=True)
class DetailView:
    """Everything shown of an open band.

    Attributes
    ----------
    band : BandView
    offers : tuple of Offer
    tone : ToneStageView or None
    compare : CompareStageView or None
        None where the box has only one paint of the group.
    compare_word : str
        What the button says: "Compare the blues".
    hand : HandStageView
    why : WhyStageView
    second : CompareStageView or None
        The mix for the band's second colour, where it has one.
    """

    band: BandView
    offers: tuple[Offer, ...]
    tone: ToneStageView | None
    compare: CompareStageView | None
    compare_word: str
    hand: HandStageView
    why: WhyStageView
    second: CompareStageView | None = None


class BandDetail(RowDetail):
    """An open band.

    Signals
    -------
    mix_asked(mix: Mix), part_asked(key: str, count: int), load_asked(steps: int)
    back_asked(), wishes_asked(), toner_asked(number: int), stage_chosen(key: str)
    """

    mix_asked = Signal(object)
    part_asked = Signal(str, int)
    load_asked = Signal(int)
    back_asked = Signal()
    wishes_asked = Signal()
    toner_asked = Signal(int)
    stage_chosen = Signal(str)
    resized = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: DetailView | None = None
        self.bar = NamedBar(self)
        self.stages = SegmentedControl(
            [
                ("tone", translate("mix page", "Tone down")),
                ("compare", translate("mix page", "Compare")),
                ("hand", translate("mix page", "By hand")),
                ("scrap", translate("mix page", "On a scrap")),
                ("second", translate("mix page", "Second colour")),
                ("why", translate("mix page", "Why")),
            ],
            translate("mix page", "What to look at"),
            self,
        )
        self.wishes = EdgeButton(translate("mix page", "Pin or leave out"), "pin", self)
        self.tone, self.compare, self.hand = ToneStage(self), CompareStage(self), HandStage(self)
        self.second, self.why = CompareStage(self), WhyStage(self)
        self.scrap = ScrapStage(self)
        self.lines: list[OfferLine] = []
        self.stages.chosen.connect(self._choose)
        self.wishes.clicked.connect(self.wishes_asked)
        self.tone.toner_asked.connect(self.toner_asked)
        self.hand.part_asked.connect(self.part_asked)
        self.hand.load_asked.connect(self.load_asked)
        self.hand.back_asked.connect(self.back_asked)
        self.show_stage("tone")

    @property
    def stage(self) -> str:
        """Which look is shown: "tone", "compare", "hand", "scrap", "second" or "why"."""
        return self.stages.current

    def show_stage(self, key: str) -> None:
        """Show one of the looks."""
        self.stages.set_chosen(key)
        for name, stage in self._by_key().items():
            stage.setVisible(name == key)

    def set_view(self, view: DetailView) -> None:
        """Show a band."""
        before, self._view = self._view, view
        self.bar.set_view(view.band)
        nothing = translate("mix page", "No paint in this box tones this mix down.")
        if not view.band.parts:
            nothing = translate("mix page", "Bare paper: there is nothing to tone down.")
        self.tone.set_view(view.tone, nothing)
        self.compare.set_view(view.compare)
        self.second.set_view(view.second)
        self.hand.set_view(view.hand)
        self.why.set_view(view.why)
        self.stages.set_texts({"compare": view.compare_word})
        if before is None or before.offers != view.offers:
            self._set_offers(view.offers)
        missing = {"compare": view.compare, "second": view.second}
        if self.stage in missing and missing[self.stage] is None:
            self.show_stage("tone")
        self.stages.set_shown("second", view.second is not None)
        self.stages.set_available("compare", view.compare is not None)
        self._lay_out()

    def height_for(self, width: int) -> tuple[int, int]:
        self._fit_stages(width)  # as it will be laid out, not as it was in another width
        shown, top = self._by_key()[self.stage], self._top(width)
        if not self._measure_title(width):
            top += self._tools_line()
        least, most = shown.height_for(width - BAR_EDGE)
        return top + least, top + most

    def resizeEvent(self, event: object) -> None:
        self._lay_out()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "lines"):
            self._lay_out()

    def _by_key(self) -> dict[str, Stage]:
        return {
            "tone": self.tone,
            "compare": self.compare,
            "hand": self.hand,
            "scrap": self.scrap,
            "second": self.second,
            "why": self.why,
        }

    def _choose(self, key: str) -> None:
        self.show_stage(key)
        self._lay_out()
        self.stage_chosen.emit(key)
        self.resized.emit()

    def _set_offers(self, offers: tuple[Offer, ...]) -> None:
        for line in self.lines:
            line.hide()
            line.deleteLater()
        self.lines = []
        before: QWidget = self.bar
        for offer in offers:
            line = OfferLine(offer, self)
            line.taken.connect(lambda offer=offer: self.mix_asked.emit(offer.mix))
            line.show()
            if line.button is not None:
                QWidget.setTabOrder(before, line.button)
                before = line.button
            self.lines.append(line)

    def _columns(self, width: int) -> tuple[int, int, bool]:
        """Widths of the bar and of the offers, and whether they stand side by side."""
        room = width - 2 * INSIDE
        left = round(_BAR_SHARE * room)
        right = room - left - 2 * GROUP
        if not self.lines or right < look().type.grow(_OFFERS_LEAST):
            return room, room, False
        return left, right, True

    def _title_beside(self, width: int) -> bool:
        """Whether the stage's title fits into the line of the control that chooses it."""
        taken = INSIDE + self.stages.sizeHint().width() + GROUP
        room = width - taken - INSIDE - self._by_key()[self.stage].head_room()
        return room >= look().type.grow(_TITLE_LEAST)

    def _top(self, width: int) -> int:
        """Height above the line of the control that chooses the stage."""
        left, right, beside = self._columns(width)
        own = self.bar.height_for(left) + WITHIN + self.wishes.sizeHint().height()
        said = sum(line.height_for(right) + _LINE_GAP for line in self.lines)
        both = max(own, said) if beside else own + (WITHIN + said if self.lines else 0)
        return both + WITHIN

    def _lay_out(self) -> None:
        width = self.width()
        self._fit_stages(width)
        left, right, beside = self._columns(width)
        bar = self.bar.height_for(left)
        self.bar.setGeometry(INSIDE, 0, left, bar)
        wishes = self.wishes.sizeHint()
        self.wishes.setGeometry(INSIDE, bar + WITHIN, wishes.width(), wishes.height())
        x, y = INSIDE, bar + 2 * WITHIN + wishes.height()
        if beside:
            x, y = INSIDE + left + 2 * GROUP, 0
        for line in self.lines:
            height = line.height_for(right)
            line.setGeometry(x, y, right, height)
            y += height + _LINE_GAP
        top = self._top(width)
        shown = self._by_key()[self.stage]
        title_beside = self._measure_title(width)
        room = shown.head_height() - 6 if title_beside else self._tools_line() - WITHIN
        tools = self.stages.sizeHint()
        self.stages.setGeometry(
            INSIDE, top + (room - tools.height()) // 2, tools.width(), tools.height()
        )
        self.stages.raise_()
        if not title_beside:
            top += self._tools_line()
        # The drawing begins right of the ink bar.
        most = shown.height_for(width - BAR_EDGE)[1]
        tall = min(max(self.height() - top, 0), most)
        shown.setGeometry(BAR_EDGE, top, width - BAR_EDGE, tall)
        shown.place_head()

    def _fit_stages(self, width: int) -> None:
        """Leave less room beside the words of the control where they would not fit."""
        self.stages.set_close(False)
        self.stages.set_close(self.stages.sizeHint().width() > width - 2 * INSIDE)

    def _tools_line(self) -> int:
        return self.stages.sizeHint().height() + WITHIN

    def _measure_title(self, width: int) -> bool:
        """Have the stage's title measured; whether it stands in the line of the control."""
        beside = self._title_beside(width)
        left = LEFT + self.stages.sizeHint().width() + GROUP if beside else LEFT
        self._by_key()[self.stage].measure_head(width - BAR_EDGE, left)
        return beside
