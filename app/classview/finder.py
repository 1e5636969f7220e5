"""The viewfinder in the teacher's hands: where it is, how it slides, how it opens."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QObject, QRectF, Qt, Signal

from app.drawing.classview.layout import ClassLayout
from app.drawing.classview.viewfinder import FinderPlace, finder_place
from app.widgets.slide import Slide

_KEYS = Qt.Key
_STEP = 0.02
"""Of the sky's height, or of its width: what one press of an arrow slides it by."""

_ARROWS = {
    _KEYS.Key_Up: (0, -1),
    _KEYS.Key_Down: (0, 1),
    _KEYS.Key_Left: (-1, 0),
    _KEYS.Key_Right: (1, 0),
}
_TO_BAND = {_KEYS.Key_PageDown: 1, _KEYS.Key_PageUp: -1}
_OPENING = (_KEYS.Key_Space, _KEYS.Key_Return, _KEYS.Key_Enter, _KEYS.Key_Escape, _KEYS.Key_V)


class Finder(QObject):
    """A window in grey card, held over the sky.

    Signals
    -------
    moved()
        It has slid, or is on its way open.
    """

    moved = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._spot: tuple[float, float] | None = None
        self._opening = Slide(self)
        self._opening.moved.connect(self._go_on)

    @property
    def shown(self) -> bool:
        """Whether it is before the class, closed or on its way open."""
        return self._spot is not None

    def hold(self, edges: Sequence[float], band: int) -> None:
        """Hold it over the middle of a band."""
        self._opening.to((0.0,), slide=False)
        self._spot = (0.5, (edges[band] + edges[band + 1]) / 2)
        self.moved.emit()

    def open(self) -> None:
        """Let the rest come back: at once where the system asks for stillness."""
        if self._spot is not None:
            self._opening.to((1.0,), slide=True)

    def put_away(self) -> None:
        """Gone, without a motion."""
        self._spot = None
        self._opening.to((0.0,), slide=False)

    def press(self, key: int, edges: Sequence[float]) -> int | None:
        """Slide or open by a key; the band that is seen then, None where it is not its key."""
        if self._spot is None:
            return None
        x, y = self._spot
        if key in _OPENING:
            self.open()
        elif key in _ARROWS:
            across, down = _ARROWS[Qt.Key(key)]
            sky = edges[-1] - edges[0]
            x = min(max(x + _STEP * across, 0.0), 1.0)
            y = min(max(y + _STEP * sky * down, edges[0]), edges[-1])
        elif key in _TO_BAND:
            band = band_of(edges, y) + _TO_BAND[Qt.Key(key)]
            band = min(max(band, 0), len(edges) - 2)
            y = (edges[band] + edges[band + 1]) / 2
        else:
            return None
        if self._spot is not None:
            self._spot = (x, y)
            self.moved.emit()
        return band_of(edges, y)

    def place(
        self, screen: QRectF, layout: ClassLayout, aspect: float, edges: Sequence[float]
    ) -> FinderPlace | None:
        """Where the window and the photo behind it are now."""
        if self._spot is None:
            return None
        place = finder_place(screen, layout.height, aspect, edges, self._spot)
        share = self._opening.values[0] if self._opening.values else 0.0
        return place.towards(layout.sky, layout.photo, share)

    def _go_on(self) -> None:
        if self._opening.values == (1.0,) and not self._opening.running:
            self._spot = None
        self.moved.emit()


def band_of(edges: Sequence[float], y: float) -> int:
    """The band at a height, the nearest one beyond the ends."""
    lower = [band for band in range(len(edges) - 1) if y < edges[band + 1]]
    return lower[0] if lower else len(edges) - 2
