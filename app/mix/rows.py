"""The page's middle: rows in band order beside one strip, wet edges between the rows they join."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import accumulate

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QScrollArea, QWidget

from app.drawing.marks import BadgeView
from app.look import look
from app.mix.detail import BandDetail, DetailView
from app.mix.head import BandHead, RowHead
from app.mix.meeting_head import MeetingHead
from app.mix.meeting_view import MeetingView
from app.mix.row_detail import MeetingDetail, RowDetail
from app.mix.row_heights import share_height
from app.mix.strip_ground import WALL_WIDTH, WALL_WIDTH_WIDE, StripGround, strip_zones
from app.mix.views import BandView
from app.widgets.slide import Slide
from core.i18n import translate

_TOP = 40
_END = 10
_BAR = 14
"""Width of a scroll bar."""
_LEAST_OPEN = 104
"""Of an open row that is scrolled by itself, before text grows."""


@dataclass(frozen=True)
class RowsContent:
    """All rows.

    Attributes
    ----------
    bands : tuple of BandView
    abouts : tuple of str
        What is said of each band's mix while its row is open.
    meetings : tuple of MeetingView or None
        One fewer than bands.
    """

    bands: tuple[BandView, ...] = ()
    abouts: tuple[str, ...] = ()
    meetings: tuple[MeetingView | None, ...] = ()


class MixRows(QScrollArea):
    """Rows and strip. Row 0 is band A, row 1 its meeting with B, row 2 band B...

    Signals
    -------
    row_chosen(number: int)
        A row was pressed or reached with the arrow keys.
    menu_asked(band: int, x: int, y: int)
        A band's menu at a place on the screen.
    """

    row_chosen = Signal(int)
    menu_asked = Signal(int, int, int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFrameShape(QScrollArea.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._content = RowsContent()
        self._chosen = 0
        self._inside = StripGround()
        self._inside.setProperty("ground", "paper")
        self.setWidget(self._inside)
        self.setAccessibleName(translate("mix page", "Mix for each band, top to bottom"))
        self.heads: list[RowHead] = []
        self._drawer = _Drawer(self._inside)
        self.detail = BandDetail(self._drawer.shelf)
        self.meeting = MeetingDetail(self._drawer.shelf)
        self.detail.hide()
        self.meeting.hide()
        self._opens = self._whole = 0
        self._follows = False
        self._slide = Slide(self)
        self._slide.moved.connect(self._place)
        self.detail.resized.connect(self._lay_out)

    @property
    def chosen(self) -> int:
        """The open row."""
        return self._chosen

    def set_content(
        self, content: RowsContent, chosen: int, detail: DetailView | None = None
    ) -> None:
        """Show rows, one of them open.

        Parameters
        ----------
        chosen : int
            Number of the open row.
        detail : DetailView or None
            What it opens, where it is a band with a mix.
        """
        opening = chosen != self._chosen and self.isVisible()
        if chosen != self._chosen:
            self._drawer.verticalScrollBar().setValue(0)
        self._content, self._chosen = content, chosen
        self._match_heads(max(2 * len(content.bands) - 1, 0))
        for number, head in enumerate(self.heads):
            head.opened = number == chosen
            head.setChecked(head.opened)
            policies = Qt.FocusPolicy
            head.setFocusPolicy(policies.StrongFocus if head.opened else policies.ClickFocus)
            if isinstance(head, BandHead):
                head.set_view(content.bands[number // 2], content.abouts[number // 2])
            elif isinstance(head, MeetingHead):
                head.set_view(content.meetings[number // 2])
        bands = [head for head in self.heads if isinstance(head, BandHead)]
        widest = max((head.own_verdict_room() for head in bands), default=0.0)
        for head in bands:
            head.verdict_room = widest
        meeting = content.meetings[chosen // 2] if chosen % 2 else None
        if detail is not None:
            self.detail.set_view(detail)
        if meeting is not None:
            self.meeting.set_view(meeting)
        self.detail.setVisible(detail is not None and not chosen % 2)
        self.meeting.setVisible(meeting is not None)
        if chosen < len(self.heads) and not self.detail.isHidden():
            QWidget.setTabOrder(self.heads[chosen], self.detail.stages)
        self._lay_out(slide=opening)

    def reveal(self) -> None:
        """Scroll so that the open row is seen, all the way while it opens."""
        self._follows = self._slide.running
        self._reveal()

    def _reveal(self) -> None:
        if self._chosen < len(self.heads):
            head, opened = self.heads[self._chosen], self._opened()
            last = head if opened is None else self._drawer
            self.ensureVisible(0, last.geometry().bottom(), 0, 4)
            self.ensureVisible(0, head.y(), 0, 4)

    def focus_chosen(self, reason: Qt.FocusReason = Qt.FocusReason.TabFocusReason) -> None:
        """Give the open row the focus."""
        if self._chosen < len(self.heads):
            self.heads[self._chosen].setFocus(reason)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "meeting"):
            self._lay_out()

    def sizeHint(self) -> QSize:
        return QSize(860, 600)

    def _match_heads(self, count: int) -> None:
        while len(self.heads) > count:
            head = self.heads.pop()
            head.hide()
            head.deleteLater()
        while len(self.heads) < count:
            number = len(self.heads)
            kind = MeetingHead if number % 2 else BandHead
            head = kind(number, self._inside)
            head.asked.connect(self.row_chosen)
            head.moved.connect(self._move)
            head.menu_asked.connect(self._ask_menu)
            head.show()
            self.heads.append(head)

    def _ask_menu(self, number: int, x: int, y: int) -> None:
        if number % 2 == 0:
            self.menu_asked.emit(number // 2, x, y)

    def _move(self, number: int) -> None:
        if not 0 <= number < len(self.heads):
            return
        step = 1 if number > self._chosen else -1
        # A meeting about which there is nothing to say is passed over.
        while isinstance(head := self.heads[number], MeetingHead) and not head.spoken_of:
            number += step
        self.row_chosen.emit(number)
        self.focus_chosen()

    def _opened(self) -> RowDetail | None:
        for detail in (self.detail, self.meeting):
            if not detail.isHidden():  # its drawer is hidden while there is nothing to open
                return detail
        return None

    # Layout

    def wall_width(self) -> int:
        """Width of the wall with badges and strip."""
        return WALL_WIDTH_WIDE if look().type.wide else WALL_WIDTH

    def _lay_out(self, *, slide: bool = False) -> None:
        """Share the height out; a row that is opened slides to its part."""
        available = self.viewport().height()
        room = self.viewport().width() - self.wall_width()
        if not self.heads or room < 50:
            self._slide.to((), slide=False)
        else:
            heights, opens = self._heights(room, available - look().type.grow(_TOP) - _END)
            self._opens = opens
            self._drawer.set_scrolled(self._whole > opens)
            parts = [(height, 0) for height in heights]
            if self._opened() is not None:
                parts[self._chosen] = (heights[self._chosen], opens)
            self._slide.to(
                [part for pair in parts for part in pair], slide=slide or self._slide.running
            )
        self._place()

    def _place(self) -> None:
        """Put everything where it is now."""
        width, available = self.viewport().width(), self.viewport().height()
        wall, top = self.wall_width(), look().type.grow(_TOP)
        values = self._slide.values
        if len(values) != 2 * len(self.heads):
            return  # between two skies
        edges = [top + round(y) for y in accumulate(values, initial=0.0)]
        opened = self._opened()
        for number, head in enumerate(self.heads):
            start, end, over = edges[2 * number : 2 * number + 3]
            head.setGeometry(wall, start, width - wall, end - start)
            if number == self._chosen and opened is not None:
                # Uncovered rather than stretched: what it shows is laid out once.
                self._drawer.setGeometry(wall, end, width - wall, over - end)
                room = width - wall - (_BAR if self._whole > self._opens else 0)
                self._drawer.shelf.resize(room, self._whole)
                opened.setGeometry(0, 0, room, self._whole)
            last = number == len(self.heads) - 1
            beside = number == self._chosen or number + 1 == self._chosen
            head.ruled = not number % 2 and not last and not beside
            head.update()
        self._drawer.setVisible(opened is not None)
        zones = [(edges[2 * n], edges[2 * n + 2]) for n in range(len(self.heads))]
        self._inside.zones = strip_zones(self._content.bands, self._content.meetings, zones, top)
        self._inside.badges = tuple(
            (BadgeView(view.letter, chosen=2 * number == self._chosen), sum(zone) / 2)
            for number, (view, zone) in enumerate(zip(self._content.bands, zones[::2], strict=True))
        )
        self._inside.strip_top, self._inside.wall = top, wall
        self._inside.resize(width, max(edges[-1] + _END if self.heads else 0, available))
        self._inside.update()
        if self._follows:
            self._reveal()
            self._follows = self._slide.running

    def _heights(self, room: int, available: int) -> tuple[list[int], int]:
        """Heights of the heads and of what the open row opens.

        Where not even lines of one row would fit beside it, it is scrolled by itself: the other
        bands stay in sight.
        """
        opened = self._opened()
        least, most = opened.height_for(room) if opened is not None else (0, 0)
        for compact in (False, True):
            heights = [head.height_for(room, compact=compact) for head in self.heads]
            for head in self.heads:
                if isinstance(head, BandHead):
                    head.compact = compact
            if available >= sum(heights) + least:
                break
        else:
            if opened is not None:
                self._whole = opened.height_for(room - _BAR)[0]
                floor = min(look().type.grow(_LEAST_OPEN), self._whole)
                return heights, max(available - sum(heights), floor)
        closed = [i for i in range(0, len(heights), 2) if not self.heads[i].opened]
        meetings = [
            i
            for i, head in enumerate(self.heads)
            if isinstance(head, MeetingHead) and head.spoken_of and not head.opened
        ]
        opens = None if opened is None else (least, most)
        heights, self._whole = share_height(heights, closed, meetings, opens, available)
        return heights, self._whole


class _Drawer(QScrollArea):
    """What a row opens, on a shelf that may be higher than the drawer."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.shelf = QWidget()
        self.setFrameShape(QScrollArea.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setProperty("ground", "raised")
        self.setWidget(self.shelf)
        self.set_scrolled(False)

    def set_scrolled(self, scrolled: bool) -> None:
        """Whether it has a bar; while it slides open it needs none."""
        policy = Qt.ScrollBarPolicy
        self.setVerticalScrollBarPolicy(
            policy.ScrollBarAlwaysOn if scrolled else policy.ScrollBarAlwaysOff
        )
        if not scrolled:
            self.verticalScrollBar().setValue(0)
