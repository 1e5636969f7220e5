"""The guide's drawings: the sample sky, drawn by the same painters as the pages."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QColor, QImage, QImageReader, QLinearGradient, QPainter

import sample_scenes
from app.drawing.brush_scale import (
    BrushScaleView,
    ScaleInks,
    brush_scale_height,
    paint_anchor_words,
    paint_brush_scale,
)
from app.drawing.classview.viewfinder import finder_place, paint_viewfinder
from app.drawing.ink import BLACK, FIRST, draw_text
from app.drawing.ladder import paint_ladder
from app.drawing.lines import (
    GRIP_HEIGHT,
    HEAVY_PX,
    BracketView,
    GripView,
    LineView,
    grip_width,
    paint_bracket,
    paint_grip,
    paint_line,
)
from app.drawing.marks import BadgeView, paint_badge
from app.drawing.mix.tone import ToneChip, ToneView, captions_height, paint_tone
from app.drawing.pyramid import Pyramid
from app.drawing.sheets.board import paint_board
from app.drawing.sheets.shape import BoardView, LineOnSheet, PictureOnBoard
from app.drawing.views import ladder_view, wheel_view
from app.drawing.wheel.wheel import paint_wheel
from app.look import look
from app.look.theme import WALL
from core.i18n import translate
from core.paint.box.box import DEFAULT_BOX
from core.paint.mixture.mix import make_mix
from core.paint.mixture.swatch import hex_of_Lab
from core.paint.toning.tone_down import tone_down_ladder
from core.paint.words.plan import fraction_text, step_note_text
from core.reading.percent import percent_text
from core.reading.reading import BandReading, read_colours
from core.reading.wording import Wording
from core.sheet.findings.words import quality_word
from core.words import family_name
from core.words.lists import sentence_case
from core.worksheet.words import ANCHORS, anchor_word

WIDTH = 580
"""All drawings are as wide as the text may be."""

_BASE = {"warm_red": 1, "mid_yellow": 4}
_TONER = {"cerulean_blue": 1}
_BASE_ML = 0.05
_MATCHED = 2
_TONING = 44
_TOO_HIGH = (0.07, 0.07, 0.0, 0.0)

_HEIGHTS = {"sky": 260, "charts": 330, "board": 204, "scale": 84, "viewfinder": 230}


def figure(
    name: str, wording: Wording, most_width: float = 4000, device_ratio: float = 1.0
) -> QImage:
    """A drawing of the guide.

    Parameters
    ----------
    name : "sky", "charts", "toning", "board", "scale" or "viewfinder"
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
    painters: dict[str, Callable[[QPainter, QRectF, Wording], None]] = {
        "sky": _sky,
        "charts": _charts,
        "toning": _toning,
        "board": _board,
        "scale": _scale,
        "viewfinder": _viewfinder,
    }
    paint = painters[name]
    width = max(min(look().type.grow(WIDTH), round(most_width)), 240)
    if name == "toning":
        height = round(captions_height(width, _tones()) + look().type.grow(_TONING))
    else:
        # A narrow window makes the whole drawing smaller, not only narrower.
        height = round(_HEIGHTS[name] * width / WIDTH)
    image = QImage(
        round(width * device_ratio), round(height * device_ratio), QImage.Format.Format_RGB32
    )
    image.setDevicePixelRatio(device_ratio)
    image.fill(QColor(look().theme.paper if name in ("toning", "scale") else WALL))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
    paint(painter, QRectF(0, 0, width, height), wording)
    painter.end()
    return image


def _truth() -> sample_scenes.SceneTruth:
    return sample_scenes.truth(sample_scenes.DEFAULT)


@lru_cache(maxsize=1)  # a guide shows it up to four times: 20 ms each
def _photo() -> QImage:
    reader = QImageReader(str(sample_scenes.path(sample_scenes.DEFAULT)))
    reader.setScaledSize(QSize(1200, 750))
    return reader.read().convertToFormat(QImage.Format.Format_RGB32)


def _bands() -> tuple[BandReading, ...]:
    truth = _truth()
    return tuple(
        BandReading(
            band.letter, band.top, band.bottom, colour, None, None, None, 1.0, False, 0.0, 1.0
        )
        for band, colour in zip(truth.bands, read_colours(truth.Lab), strict=True)
    )


def _sky(painter: QPainter, rect: QRectF, wording: Wording) -> None:
    """The photo as the Read page shows it, with each band's hue beside it."""
    unit = rect.width() / WIDTH
    photo = QRectF(54 * unit, 14 * unit, 372 * unit, 232 * unit)
    painter.drawImage(photo, _photo())
    truth = _truth()

    def row(y: float) -> float:
        return photo.top() + y * photo.height()

    heavy = HEAVY_PX * unit
    for y in (*truth.lines, truth.horizon):
        kind = "heavy" if y == truth.horizon else "plain"
        line = QRectF(photo.left(), row(y) - heavy / 2, photo.width(), heavy)
        paint_line(painter, line, LineView(kind))  # type: ignore[arg-type]
    radius, text = 11.5 * unit, 15 * unit
    for band, reading in zip(truth.bands, _bands(), strict=True):
        top, bottom = row(band.top), row(band.bottom)
        middle = (top + bottom) / 2
        bracket = QRectF(
            photo.left() - 10 * unit, top + 3 * unit, 6 * unit, bottom - top - 6 * unit
        )
        paint_bracket(painter, bracket, BracketView())
        left = photo.left() - 16 * unit - 2 * radius
        badge = QRectF(left, middle - radius, 2 * radius, 2 * radius)
        paint_badge(painter, badge, BadgeView(band.letter))
        if reading.colour is not None and reading.colour.hue.family is not None:
            chip = QRectF(
                photo.right() + 14 * unit, top + 2 * unit, 30 * unit, bottom - top - 4 * unit
            )
            painter.fillRect(chip, QColor(reading.colour.hex))
            words = family_name(reading.colour.hue.family)
            spot = chip.center()
            spot.setX(chip.right() + 10 * unit)
            draw_text(painter, spot, words, text, BLACK, FIRST, align=0.0)
    grip = GripView("named", translate("canvas", "horizon"))
    height = GRIP_HEIGHT * unit
    place = QRectF(
        photo.right() + 4 * unit, row(truth.horizon) + 3 * unit, grip_width(grip, height), height
    )
    paint_grip(painter, place, grip)


def _charts(painter: QPainter, rect: QRectF, wording: Wording) -> None:
    """Wheel and ladder side by side, as on the Read page."""
    unit, scale = rect.width() / WIDTH, look().type.scale
    side, bands = rect.height() - 24 * unit, _bands()
    wheel = QRectF(60 * unit, 12 * unit, side, side)
    paint_wheel(painter, wheel, wheel_view(bands, chosen=4, px=scale))
    ladder = QRectF(rect.right() - 160 * unit, 14 * unit, 100 * unit, rect.height() - 28 * unit)
    paint_ladder(painter, ladder, ladder_view(bands, wording, chosen=4, px=scale))


def _tones() -> ToneView:
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
    return ToneView(chips, look().type.px("note"), theme.ink, theme.second, drifts=False)


def _toning(painter: QPainter, rect: QRectF, wording: Wording) -> None:
    paint_tone(painter, rect, _tones(), wall=rect)


def _washes(size: QSize) -> QImage:
    """The sample sky as somebody painted it, with its upper lines too high."""
    truth = _truth()
    wash = QLinearGradient(0, 0, 0, size.height())
    edges = [0.0, *_lines_on_sheet(), 1.0]
    for number, band in enumerate(truth.bands):
        top, bottom = edges[number], edges[number + 1]
        soft = min(0.03, (bottom - top) / 3)
        colour = QColor(hex_of_Lab(band.Lab))
        wash.setColorAt(max(top + soft, 0.0), colour)
        wash.setColorAt(min(bottom - soft, 1.0), colour)
    image = QImage(size, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    painter.fillRect(image.rect(), wash)
    painter.end()
    return image


def _lines_on_sheet() -> list[float]:
    truth = _truth()
    return [y / truth.horizon - high for y, high in zip(truth.lines, _TOO_HIGH, strict=True)]


def _board(painter: QPainter, rect: QRectF, wording: Wording) -> None:
    """The sky and one sheet, level: dashes where a line should be, an arrow from where it is."""
    unit, truth = rect.width() / WIDTH, _truth()
    sky = PictureOnBoard(Pyramid.of(_photo()), (0.26, 0.0, 0.74, truth.horizon))
    lines = tuple(
        LineOnSheet(
            at,
            translate("sheet", "{shift} high").format(shift=percent_text(100 * high))
            if high
            else "",
            arrow=high > 0,
        )
        for at, high in zip(_lines_on_sheet(), _TOO_HIGH, strict=True)
    )
    sheet = PictureOnBoard(Pyramid.of(_washes(QSize(384, 300))), lines=lines)
    view = BoardView(
        sky,
        (sheet,),
        tuple(band.letter for band in truth.bands),
        tuple(y / truth.horizon for y in truth.lines),
        1.28,
        13 * unit,
        ratio=painter.device().devicePixelRatio(),
    )
    margin = 14 * unit
    paint_board(painter, rect.adjusted(margin, margin, -margin, -margin), view)


def _scale(painter: QPainter, rect: QRectF, wording: Wording) -> None:
    """One quality, scored with one stroke, and where it measured."""
    unit, theme, grow = rect.width() / WIDTH, look().theme, look().type
    inks = ScaleInks(theme.ink, theme.on_ink, theme.raised, theme.second, theme.edge, theme.rule)
    words = translate("worksheet", "measured {score}").format(score=8)
    view = BrushScaleView(own=6, measured=8, measured_text=words, words=grow.px("note"), inks=inks)
    left, top = 110 * unit, 22 * unit
    place = QRectF(left, top, rect.width() - left, brush_scale_height(36 * unit))
    paint_brush_scale(painter, place, view)
    label = QRectF(0, top, left, 36 * unit)
    spot = label.center()
    spot.setX(0.0)
    hue = sentence_case(quality_word("hue"))
    draw_text(painter, spot, hue, grow.px("label") * min(unit, 1.0), theme.ink, FIRST, align=0.0)
    paint_anchor_words(
        painter,
        QRectF(left, 0, rect.width() - left, top),
        tuple((score, anchor_word(score)) for score in ANCHORS),
        grow.px("note"),
        theme.second,
    )


def _viewfinder(painter: QPainter, rect: QRectF, wording: Wording) -> None:
    """Grey card all over, but for a window on the sky."""
    truth = _truth()
    edges = (0.0, *truth.lines, truth.horizon)
    place = finder_place(rect, rect.height(), 1.6, edges, (0.5, 0.35))
    paint_viewfinder(
        painter, rect, place, Pyramid.of(_photo()), painter.device().devicePixelRatio()
    )
