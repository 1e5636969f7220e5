"""The photo on its wall with its lines, letters and veil: how it lies and how it is drawn."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.canvas.backdrop import Backdrop
from app.canvas.geometry import Viewport
from app.canvas.grip import PAD, Grip, RivalTag
from app.canvas.grips import Grips
from app.canvas.layout import LetterRow, letter_rows
from app.canvas.painting import (
    DrawnLine,
    letter_rect,
    paint_focus_ring,
    paint_letters,
    paint_lines,
    paint_rival,
    paint_veil_words,
    veil_words_place,
)
from app.drawing.pieces import copy_region
from app.drawing.pyramid import Pyramid
from app.look import look
from app.look.type import FIRST
from core.bands.lines import Bands
from core.i18n import translate

LEFT_GUTTER = 60
RIGHT_GUTTER = 108
MARGIN = 10
BADGE_RADIUS, MOST_BADGE_SCALE = 15, 1.25
VEIL_SHARE = 0.66


@dataclass(frozen=True)
class _Parts:
    """What was drawn upon the photo and beside it."""

    lines: tuple[DrawnLine, ...] = ()
    letters: tuple[LetterRow, ...] = ()
    horizon: float | None = None
    chosen: int = 0


class PhotoView(QWidget):
    """One photo and its bands as they are shown; what the hands do with them is the canvas's.

    Signals
    -------
    zoom_changed(zoom: float)
    """

    zoom_changed = Signal(float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._picture: Pyramid | None = None
        self._veil: Pyramid | None = None
        self._bands: Bands | None = None
        self._chosen = 0
        self._rivals: tuple[float, ...] = ()
        self._covered: QRectF | None = None
        self._viewport = Viewport(3, 2, 0, 0, 300, 200)
        self._backdrop = Backdrop()
        self._parts = _Parts()
        self._as_opened = True
        self._show_focus = False
        self._grips = Grips(self)
        self._grips.resized.connect(self._place)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def set_photo(self, picture: Pyramid, width: int, height: int) -> None:
        """Show another photo; `width` and `height` only give its proportions.

        It is seen whole, or in its middle where it is a panorama.
        """
        self._picture, self._veil = picture, None
        self._viewport = Viewport(width, height, 0, 0, 300, 200)
        self._as_opened = True
        self._fit_area()
        self.zoom_changed.emit(self._viewport.zoom)

    def set_picture(self, picture: Pyramid) -> None:
        """Show the same photo in other colours (values, squint); the view of it stays."""
        self._picture = picture
        self.update()

    def set_veil(self, veil: Pyramid | None) -> None:
        """Cover what is not sky."""
        self._veil = veil
        self.update()

    def set_bands(self, bands: Bands | None) -> None:
        """Show these lines; None while there are none yet."""
        if bands != self._bands:
            self._bands = bands
            self._chosen = min(self._chosen, bands.count - 1) if bands else 0
            self._refresh()

    def set_chosen(self, band: int) -> None:
        """Show a band as the chosen one."""
        if band != self._chosen:
            self._chosen = band
            self._refresh()

    def set_rivals(self, rivals: tuple[float, ...]) -> None:
        """Show other places where the sky may end."""
        self._rivals = rivals
        self._grips.show_rivals(rivals)
        self._place()
        self.update()

    @property
    def viewport(self) -> Viewport:
        """How the photo lies on the canvas."""
        return self._viewport

    @property
    def grips(self) -> tuple[Grip, ...]:
        """The grips in use, top to bottom; the last is the horizon's."""
        return self._grips.grips

    @property
    def rival_tags(self) -> tuple[RivalTag, ...]:
        """The tags in use."""
        return self._grips.tags

    def zoom(self, factor: float, at: QPointF | None = None) -> None:
        """Larger or smaller around `at`, or around the middle."""
        view = self._viewport
        at = at or QPointF(view.left + view.width / 2, view.top + view.height / 2)
        self._set_viewport(view.zoomed(factor, at.x(), at.y()))

    def zoom_to_fit(self) -> None:
        """The whole photo."""
        self._set_viewport(self._viewport.fitted())

    # Qt

    def sizeHint(self) -> QSize:
        return QSize(900, 520)

    def minimumSizeHint(self) -> QSize:
        return QSize(360, 220)

    def resizeEvent(self, event: QEvent) -> None:
        self._fit_area()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self._fit_area()

    def paintEvent(self, event: QPaintEvent) -> None:
        theme, view = look().theme, self._viewport
        painter = QPainter(self)
        ratio = self.devicePixelRatioF()
        backdrop = self._backdrop.pixmap(
            self.size(), ratio, view, theme.wall, self._picture, self._veil
        )
        # Only what changed is drawn anew: a dragged line leaves most of the canvas alone.
        copy_region(painter, backdrop, event.region())
        left, top, right, bottom = view.visible
        photo = QRectF(left, top, right - left, bottom - top)
        if self._show_focus and self._picture is not None:
            paint_focus_ring(painter, photo, 0)
        if self._bands is None or self._picture is None:
            return
        region = event.region()
        if self._rivals or region.intersects(
            self._ground(photo, self._bands.horizon).toAlignedRect()
        ):
            painter.save()
            painter.setClipRect(photo, Qt.ClipOperation.IntersectClip)
            self._paint_ground(painter, photo, self._bands.horizon)
            if self._rivals:
                words = self._ground_words(photo, self._bands.horizon)
                for y in self._rivals:
                    paint_rival(painter, left, right, view.y_px(y), words)
            painter.restore()
        lines = [x for x in self._parts.lines if region.intersects(x.rect.toAlignedRect())]
        paint_lines(painter, lines)
        radius = self._badge_radius
        rows = [
            row
            for row in self._parts.letters
            if region.intersects(letter_rect(row, left, radius).toAlignedRect())
        ]
        paint_letters(painter, rows, self._bands.letters, self._chosen, left, radius)

    def _paint_ground(self, painter: QPainter, photo: QRectF, horizon: float) -> None:
        ground = self._ground(photo, horizon)
        if ground.height() <= 0:
            return
        veil = QColor(look().theme.wall)
        veil.setAlphaF(VEIL_SHARE)
        painter.fillRect(ground, veil)
        free = self._free_of(ground)
        paint_veil_words(painter, free, look().type.font("control", FIRST), _not_sky())

    def _ground(self, photo: QRectF, horizon: float) -> QRectF:
        """What is seen below the horizon."""
        return photo.adjusted(0, self._viewport.y_px(horizon) - photo.top(), 0, 0)

    def _ground_words(self, photo: QRectF, horizon: float) -> QRectF | None:
        """Where the words stand on what is not sky; None where there are none."""
        ground = self._ground(photo, horizon)
        if ground.height() <= 0:
            return None
        free = self._free_of(ground)
        return veil_words_place(free, look().type.font("control", FIRST), _not_sky())

    def _free_of(self, ground: QRectF) -> QRectF:
        """The wider part of the ground beside what covers it."""
        if self._covered is None or not self._covered.intersects(ground):
            return ground
        left, right = QRectF(ground), QRectF(ground)
        left.setRight(max(self._covered.left(), ground.left()))
        right.setLeft(min(self._covered.right(), ground.right()))
        return left if left.width() >= right.width() else right

    def _drawn_parts(self) -> _Parts:
        """Lines and letters as they are now."""
        if self._bands is None:
            return _Parts()
        left, top, right, bottom = self._viewport.visible
        lines = []
        for edge, (y, grip) in enumerate(zip(self._bands.edges[1:], self.grips, strict=True)):
            if grip.isHidden():
                continue
            heavy = edge in (self._chosen, self._bands.count - 1)
            row = min(max(self._viewport.y_px(y), top), bottom)
            grip_y = grip.y() + PAD + grip.tag_height / 2
            lines.append(DrawnLine(left, right, row, grip.x() + PAD + 1, grip_y, heavy))
        letters = letter_rows(self._viewport, self._bands, self._badge_radius, self.height())
        return _Parts(tuple(lines), letters, self._bands.horizon, self._chosen)

    @property
    def _badge_radius(self) -> float:
        # Letters in discs are legible early, and seven of them have to fit beside a low photo.
        return round(BADGE_RADIUS * min(look().type.scale, MOST_BADGE_SCALE))

    # Layout

    def _refresh(self) -> None:
        """The bands or the choice changed: repaint what differs."""
        before = self._parts
        self._grips.show_bands(self._bands, self._chosen)
        self._place()
        after = self._parts
        if before.horizon != after.horizon or len(before.letters) != len(after.letters):
            self.update()
            return
        left, radius = self._viewport.visible[0], self._badge_radius
        for line in set(before.lines) ^ set(after.lines):
            self.update(line.rect.toAlignedRect())
        changed = set(before.letters) ^ set(after.letters)
        if before.chosen != after.chosen:
            changed |= {
                row
                for row in (*before.letters, *after.letters)
                if row.band in (before.chosen, after.chosen)
            }
        for row in changed:
            self.update(letter_rect(row, left, radius).toAlignedRect())

    def _fit_area(self) -> None:
        grow = look().type.grow
        left, right = grow(LEFT_GUTTER), grow(RIGHT_GUTTER)
        width = max(self.width() - left - right, 80)
        height = max(self.height() - 2 * MARGIN, 80)
        view = self._viewport.resized(left, MARGIN, width, height)
        untouched = self._as_opened
        self._set_viewport(view.opened() if untouched else view)
        self._as_opened = untouched

    def _set_viewport(self, viewport: Viewport) -> None:
        zoomed = viewport.zoom != self._viewport.zoom
        self._as_opened = False
        self._viewport = viewport
        self._place()
        self.update()
        if zoomed:
            self.zoom_changed.emit(viewport.zoom)

    def _place(self) -> None:
        self._grips.place(self._viewport, self._bands, self.height())
        self._parts = self._drawn_parts()


def _not_sky() -> str:
    return translate("canvas", "Not sky: left out of the readings")
