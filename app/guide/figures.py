"""The guide's drawings, by the same painters as the pages."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from app.drawing.ladder import paint_ladder
from app.drawing.mix.tone import ToneChip, ToneView, paint_tone
from app.drawing.views import ladder_view, wheel_view
from app.drawing.wheel.wheel import paint_wheel
from app.look import look
from app.look.theme import WALL
from core.paint.box.box import DEFAULT_BOX
from core.paint.mixture.mix import make_mix
from core.paint.mixture.swatch import hex_of_Lab
from core.paint.toning.tone_down import tone_down_ladder
from core.paint.words.plan import fraction_text, step_note_text
from core.reading.reading import BandReading, read_colours
from core.reading.wording import Wording

# CIELAB of an invented sunset, top band first.
_SKY = ((45.0, 17.0, -42.0), (62.0, 26.0, -12.0), (70.0, 30.0, 22.0), (80.0, 12.0, 45.0))
_BASE = {"warm_red": 1, "mid_yellow": 4}
_TONER = {"cerulean_blue": 1}
_BASE_ML = 0.05
_MATCHED = 2

_SIZES = {"wheel": (380, 380), "ladder": (150, 320), "toning": (600, 118)}


def figure(
    name: str, wording: Wording, most_width: float = 4000, device_ratio: float = 1.0
) -> QImage:
    """A drawing of the guide.

    Parameters
    ----------
    name : "wheel", "ladder" or "toning"
    wording : Wording
    most_width : float
        Pixels the drawing may take.
    device_ratio : float
        Device pixels per pixel.

    Raises
    ------
    KeyError
        There is no such figure.
    """
    grow = look().type.grow
    width, height = (grow(length) for length in _SIZES[name])
    if name == "toning":
        width = min(width, max(round(most_width), 200))
    image = QImage(
        round(width * device_ratio), round(height * device_ratio), QImage.Format.Format_RGB32
    )
    image.setDevicePixelRatio(device_ratio)
    image.fill(QColor(look().theme.paper if name == "toning" else WALL))
    painter = QPainter(image)
    painters: dict[str, Callable[[QPainter, QRectF, Wording], None]] = {
        "wheel": _wheel,
        "ladder": _ladder,
        "toning": _toning,
    }
    painters[name](painter, QRectF(0, 0, width, height), wording)
    painter.end()
    return image


def _bands() -> tuple[BandReading, ...]:
    colours = read_colours(_SKY)
    step = 1 / len(colours)
    return tuple(
        BandReading(
            "ABCD"[i], i * step, (i + 1) * step, colour, None, None, None, 1.0, False, 0.0, 1.0
        )
        for i, colour in enumerate(colours)
    )


def _wheel(painter: QPainter, rect: QRectF, wording: Wording) -> None:
    view = wheel_view(_bands(), chosen=1, px=look().type.scale)
    margin = look().type.grow(12)
    paint_wheel(painter, rect.adjusted(margin, margin, -margin, -margin), view)


def _ladder(painter: QPainter, rect: QRectF, wording: Wording) -> None:
    margin = look().type.grow(14)
    view = ladder_view(_bands(), wording, px=look().type.scale)
    paint_ladder(painter, rect.adjusted(margin, margin, -margin, -margin), view)


def _toning(painter: QPainter, rect: QRectF, wording: Wording) -> None:
    box = DEFAULT_BOX
    base = make_mix(box, _BASE, _BASE_ML)
    target = tone_down_ladder(box, base, _TONER).steps[_MATCHED].colour
    ladder = tone_down_ladder(box, base, _TONER, target)
    chips = tuple(
        ToneChip(
            hex_of_Lab(step.colour.Lab),
            fraction_text(box, ladder, step.fraction),
            step_note_text(step.note, "D"),
            framed=number == ladder.matched,
            mud=step.note == "mud",
        )
        for number, step in enumerate(ladder.steps)
    )
    theme = look().theme
    view = ToneView(chips, look().type.px("note"), theme.ink, theme.second, drifts=False)
    paint_tone(painter, rect, view, wall=rect)
