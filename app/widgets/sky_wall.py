"""A page with no photo yet: how to bring one, and six skies on the wall to begin with."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QImage,
    QImageReader,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
    QShowEvent,
)
from PySide6.QtWidgets import QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from app.look import look
from app.look.space import INSIDE, WITHIN
from app.look.theme import WALL_INK
from app.look.type import FIRST
from app.state.tasks import Latest
from app.widgets.buttons import InkButton
from core.i18n import translate
from core.memory import Memory
from core.progress import Progress, ShouldStop

ASPECT = 1.6
"""Width over height of the sample skies."""

_COLUMNS = 3
_GAP = 20
_TITLE, _TOLD = 26, 20
_CHIP = 14
_DECODED = 640
_MOST = 560

_shared: Memory[QImage] = Memory(12)
"""The walls of all pages show the same skies: one set of pictures instead of three, decoded once
(0.05 s of processor time a wall else)."""


@dataclass(frozen=True)
class SkyTold:
    """What a sky holds.

    Attributes
    ----------
    words, short : str
        Its bands: from which hue to which; how many, where there is no room for more.
    colours : tuple of str
        Theirs from the top, "#rrggbb".
    """

    words: str
    short: str
    colours: tuple[str, ...]


class SkyButton(QPushButton):
    """A sky with its title below, and what it holds; pressed, it opens. Signals: QPushButton's."""

    def __init__(self, title: str, parent: QWidget) -> None:
        super().__init__(title, parent)
        self._image: QImage | None = None
        self._told: SkyTold | None = None
        self.setStyleSheet("min-height: 0; padding: 0; border: none;")
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setAccessibleDescription(translate("sky wall", "Opens this sample sky"))
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Ignored)

    def set_image(self, image: QImage) -> None:
        """Show the picture."""
        self._image = image
        self.update()

    def tell(self, told: SkyTold) -> None:
        """Say what it holds."""
        self._told = told
        said = translate("sky wall", "Opens this sample sky")
        self.setAccessibleDescription(f"{said}: {told.words}")
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        title, below = look().type.grow(_TITLE), look().type.grow(_TOLD)
        place = QRectF(0, 0, self.width(), self.height() - title - below)
        if self._image is not None:
            painter.drawImage(place, self._image)
        if self.underMouse() or self._image is None:
            pen = QPen(QColor(WALL_INK), 3.0 if self.underMouse() else 1.25)
            pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
            painter.setPen(pen)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(place.adjusted(1.5, 1.5, -1.5, -1.5))
        painter.setFont(look().type.font("control", FIRST))
        painter.setPen(QColor(WALL_INK))
        words = QRectF(0, place.bottom(), self.width(), title)
        text = painter.fontMetrics().elidedText(
            self.text(), Qt.TextElideMode.ElideRight, self.width()
        )
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        painter.drawText(words, flags, text)
        if self._told is not None:
            self._paint_told(painter, QRectF(0, words.bottom(), self.width(), below), self._told)
        painter.end()

    def _paint_told(self, painter: QPainter, place: QRectF, told: SkyTold) -> None:
        """The bands' colours from the top down, side by side, and their names.

        In little room the colours go first: none is shown without its name.
        """
        side = look().type.grow(_CHIP)
        painter.setFont(look().type.font("note", FIRST))
        measure = painter.fontMetrics().horizontalAdvance
        strip = QRectF(0, 0, side * len(told.colours), side)
        strip.moveCenter(QPointF(place.left() + strip.width() / 2, place.center().y()))
        beside = place.adjusted(strip.width() + WITHIN, 0, 0, 0)
        text = told.words if measure(told.words) <= place.width() else told.short
        if measure(told.words) <= beside.width():
            place = beside
            self._paint_chips(painter, strip, told.colours)
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        painter.drawText(place, flags, text)

    def _paint_chips(self, painter: QPainter, strip: QRectF, colours: tuple[str, ...]) -> None:
        chip = QRectF(strip.left(), strip.top(), strip.height(), strip.height())
        for colour in colours:
            painter.fillRect(chip, QColor(colour))
            chip.translate(chip.width(), 0)
        # Greys like the wall's would vanish: a hairline holds them together.
        painter.setPen(QPen(QColor(WALL_INK), 1.0))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(strip.adjusted(0.5, 0.5, -0.5, -0.5))


class SkyWall(QWidget):
    """One bold line, one sentence, one ink button, and skies to press.

    Signals
    -------
    asked()
        The button was pressed.
    sky_chosen(name: str)
    """

    asked = Signal()
    sky_chosen = Signal(str)

    def __init__(
        self,
        line: str,
        sentence: str,
        skies: Mapping[str, tuple[str, Path]],
        parent: QWidget | None = None,
        *,
        tell: Callable[[str], SkyTold] | None = None,
    ) -> None:
        """`skies` are titles and picture files by name; `tell` is asked for each in a worker."""
        super().__init__(parent)
        self.setProperty("ground", "wall")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._texts = (line, sentence)
        self._head = QWidget(self)
        self._line = QLabel(line, self._head)
        self._line.setProperty("role", "heading")
        self._sentence = QLabel(sentence, self._head)
        for label in (self._line, self._sentence):
            label.setWordWrap(True)
            label.setProperty("on", "wall")
        self.button = InkButton(translate("sky wall", "Open a photo"), "open", self._head)
        self.button.clicked.connect(self.asked)
        for part in (self._sentence, self.button):
            # While a photo is opened the line stays where it was.
            policy = part.sizePolicy()
            policy.setRetainSizeWhenHidden(True)
            part.setSizePolicy(policy)
        column = QVBoxLayout(self._head)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(WITHIN)
        column.addWidget(self._line)
        column.addWidget(self._sentence)
        column.addSpacing(WITHIN)
        column.addWidget(self.button, 0, Qt.AlignmentFlag.AlignLeft)
        self.skies: dict[str, SkyButton] = {}
        for name, (title, _) in skies.items():
            self.skies[name] = SkyButton(title, self)
            self.skies[name].clicked.connect(
                lambda _checked=False, name=name: self.sky_chosen.emit(name)
            )
        self._tell = tell
        self._files = {name: path for name, (_, path) in skies.items()}
        self._loading = Latest(self)
        self._loaded = False
        self._opening = False

    def set_opening(self, opening: bool) -> None:
        """A file is being opened: say that alone, until there is something to show."""
        if opening == self._opening:
            return
        self._opening = opening
        line, sentence = self._texts
        self._line.setText(translate("sky wall", "Opening the photo") if opening else line)
        self._sentence.setText(sentence)
        for part in (self.button, self._sentence, *self.skies.values()):
            part.setVisible(not opening)
        self._place()

    @property
    def opening(self) -> bool:
        """Whether a file is being opened."""
        return self._opening

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if not self._loaded and not self._opening:
            self._loaded = True
            self._loading.run(partial(_look, dict(self._files), self._tell), self._show_skies)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._place()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_files"):
            self._place()

    def sizeHint(self) -> QSize:
        scale = look().type
        return QSize(scale.grow(420), scale.grow(190))

    def _show_skies(self, found: tuple[Mapping[str, QImage], Mapping[str, SkyTold]]) -> None:
        images, told = found
        for name, image in images.items():
            self.skies[name].set_image(image)
        for name, words in told.items():
            self.skies[name].tell(words)

    def _place(self) -> None:
        """The skies as large as the page allows, the words flush with them."""
        title, rows = look().type.grow(_TITLE + _TOLD), -(-len(self.skies) // _COLUMNS)
        room = self.width() - 2 * INSIDE
        self._head.setFixedWidth(max(room, 1))
        top = self._head.sizeHint().height() + 2 * INSIDE
        high = (self.height() - top - INSIDE - rows * title - (rows - 1) * WITHIN) / rows
        wide = min((room - (_COLUMNS - 1) * _GAP) / _COLUMNS, high * ASPECT, _MOST)
        wide = max(wide, 40.0)
        left = max((self.width() - _COLUMNS * wide - (_COLUMNS - 1) * _GAP) / 2, INSIDE)
        across = round(self.width() - 2 * left)
        self._head.setFixedWidth(max(across, 1))
        spare = high - wide / ASPECT
        above = INSIDE + max(round(spare * rows / 3), 0)
        height = max(self._head.sizeHint().height(), self._head.heightForWidth(across))
        self._head.setGeometry(round(left), above, across, height)
        y = above + height + INSIDE
        for number, sky in enumerate(self.skies.values()):
            row, column = divmod(number, _COLUMNS)
            sky.setGeometry(
                round(left + column * (wide + _GAP)),
                round(y + row * (wide / ASPECT + title + WITHIN)),
                round(wide),
                round(wide / ASPECT) + title,
            )


def _look(
    files: Mapping[str, Path],
    tell: Callable[[str], SkyTold] | None,
    progress: Progress,
    should_stop: ShouldStop,
) -> tuple[dict[str, QImage], dict[str, SkyTold]]:
    """The pictures, and what is to be said of them."""
    images = _decode(files, progress, should_stop)
    return images, {} if tell is None else {name: tell(name) for name in images}


def _decode(
    files: Mapping[str, Path], progress: Progress, should_stop: ShouldStop
) -> dict[str, QImage]:
    """The pictures, small; a file that cannot be read is left out."""
    images: dict[str, QImage] = {}
    for name, path in files.items():
        if should_stop is not None and should_stop():
            break
        image = _shared.get(path)
        if image is None:
            image = _small(path)
            if image.isNull():
                continue
            _shared.put(path, image)
        images[name] = image
    return images


def _small(path: Path) -> QImage:
    reader = QImageReader(str(path))
    size = reader.size()
    if size.isValid():
        reader.setScaledSize(size.scaled(_DECODED, _DECODED, Qt.AspectRatioMode.KeepAspectRatio))
    return reader.read()


def _preview() -> QWidget:
    import sample_scenes

    skies = {
        name: (sample_scenes.title(name), sample_scenes.path(name)) for name in ["dusk", "quay"]
    }
    return SkyWall("No photo yet.", "Open one, drop one here, or press a sky.", skies)


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 900, 600))
