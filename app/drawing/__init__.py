"""Drawings as pure functions: `paint_x(painter, rect, view)`.

A view is a frozen dataclass of numbers and texts; every length comes from the rectangle; the
painter is left as it was found. The screen, the snapshot tests and the printed cards call the
same functions, and hit-testing uses the same geometry.

May import `look`, and readings and words of `core` to make views; everything above imports it.
"""

from app.drawing.ladder import LadderMark, LadderView, ladder_geometry, ladder_hit, paint_ladder
from app.drawing.lines import (
    BracketView,
    GripView,
    LineView,
    grip_width,
    paint_bracket,
    paint_grip,
    paint_line,
)
from app.drawing.marks import (
    BadgeView,
    ChipView,
    PartsBarView,
    TagView,
    VerdictView,
    paint_badge,
    paint_chip,
    paint_parts_bar,
    paint_tag,
    paint_verdict,
    tag_width,
)
from app.drawing.spread import spread_disc, spread_line
from app.drawing.views import ladder_view, wheel_view
from app.drawing.wheel.layout import wheel_geometry, wheel_hit
from app.drawing.wheel.shape import (
    WheelMarker,
    WheelView,
)
from app.drawing.wheel.wheel import paint_wheel

__all__ = [
    "BadgeView",
    "BracketView",
    "ChipView",
    "GripView",
    "LadderMark",
    "LadderView",
    "LineView",
    "PartsBarView",
    "TagView",
    "VerdictView",
    "WheelMarker",
    "WheelView",
    "grip_width",
    "ladder_geometry",
    "ladder_hit",
    "ladder_view",
    "paint_badge",
    "paint_bracket",
    "paint_chip",
    "paint_grip",
    "paint_ladder",
    "paint_line",
    "paint_parts_bar",
    "paint_tag",
    "paint_verdict",
    "paint_wheel",
    "spread_disc",
    "spread_line",
    "tag_width",
    "wheel_geometry",
    "wheel_hit",
    "wheel_view",
]
