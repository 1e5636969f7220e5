"""The ground of the rows: paper, and the wall with badges and strip beside it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from app.drawing.ink import BLACK, draw_text, text_size
from app.drawing.marks import BadgeView, paint_badge
from app.drawing.mix.strip import StripView, StripZone, paint_strip
from app.look import look
from app.look.theme import WALL
from app.look.type import FIRST
from app.mix.meeting_view import MeetingView
from app.mix.views import BandView
from core.i18n import translate

WALL_WIDTH, WALL_WIDTH_WIDE = 206, 258
_BADGE_AT = 34
_STRIP_LEFT, _STRIP_RIGHT = 64, 20


class StripGround(QWidget):
    """Paper for the rows, the wall with badges and strip left of them."""

    def __init__(self) -> None:
        super().__init__()
        self.zones: tuple[StripZone, ...] = ()
        self.badges: tuple[tuple[BadgeView, float], ...] = ()
        self.strip_top = 0
        self.wall = WALL_WIDTH

    def paintEvent(self, event: QPaintEvent) -> None:
        theme, scale = look().theme, look().type
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(theme.paper))
        painter.fillRect(QRectF(0, 0, self.wall, self.height()), QColor(WALL))
        if not self.zones:
            painter.end()
            return
        strip = QRectF(
            _STRIP_LEFT,
            self.strip_top,
            self.wall - _STRIP_LEFT - _STRIP_RIGHT,
            self.zones[-1].bottom,
        )
        words = (translate("mix page", "photo"), translate("mix page", "paint"))
        widest = max(text_size(word, 1.0, FIRST)[0] for word in words)
        size = min(scale.px("control"), 0.47 * strip.width() / widest)
        for share, text in zip((0.25, 0.75), words, strict=True):
            spot = QPointF(strip.left() + share * strip.width(), self.strip_top / 2 + 4)
            draw_text(painter, spot, text, size, BLACK, FIRST)
        paint_strip(painter, strip, StripView(self.zones))
        radius = 15.0
        for badge, y in self.badges:
            place = QRectF(_BADGE_AT - radius, y - radius, 2 * radius, 2 * radius)
            paint_badge(painter, place, badge)
        heading = translate("mix page", "Mix for each band, top to bottom")
        painter.setFont(scale.font("control"))
        painter.setPen(QColor(theme.second))
        place = QRectF(self.wall + 24, 0, self.width() - self.wall - 24, self.strip_top)
        painter.drawText(place, int(Qt.AlignmentFlag.AlignVCenter), heading)
        painter.end()


def strip_zones(
    bands: Sequence[BandView],
    meetings: Sequence[MeetingView | None],
    rows: Sequence[tuple[int, int]],
    top: int,
) -> tuple[StripZone, ...]:
    """The strip beside all rows: a band's colours, and the runs where two meet.

    Parameters
    ----------
    bands, meetings
        What the rows show; one meeting fewer than bands.
    rows : sequence of (top, bottom)
        Where every row stands, pixels.
    top : int
        Where the strip begins.
    """
    found = []
    for number, (start, end) in enumerate(rows):
        if number % 2 == 0:
            view = bands[number // 2]
            photo: tuple[str, ...] = (view.photo,) if view.photo else ()
            paint: tuple[str, ...] = (view.paint,) if view.paint else ()
        else:
            upper, lower = bands[number // 2 : number // 2 + 2]
            meeting = meetings[number // 2]
            photo = _joined(upper.photo, meeting.passage.photo if meeting else (), lower.photo)
            paint = _joined(upper.paint, meeting.passage.paint if meeting else (), lower.paint)
        found.append(StripZone(start - top, end - top, photo, paint))
    return tuple(found)


def _joined(upper: str | None, between: tuple[str, ...], lower: str | None) -> tuple[str, ...]:
    """The run from one band's colour to the next one's."""
    if upper is None or lower is None:
        return ()
    return (upper, *between[1:-1], lower)
