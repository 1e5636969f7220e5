"""The window of a folder's photos: sorted as the teacher likes, one press opens one."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QCloseEvent, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLabel,
    QProgressBar,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.choosing.looking import Looking, Seen
from app.choosing.tile import SkyTile, TileView
from app.files.file_dialogs import ask_for_folder
from app.look import look
from app.look.space import GROUP, INSIDE, MARGIN, WITHIN
from app.widgets.buttons import EdgeButton
from app.widgets.focus import FocusRing
from app.widgets.screens import open_large
from core.choosing.look import SkyLook
from core.choosing.through import SORTINGS, Looked, in_order, photos_in
from core.choosing.words import against, refusal_text, sky_sentences, sorting_word
from core.colour.contrast import ink_on
from core.errors import UsageError
from core.file_sentences import shown_name
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import box_name
from core.reading.wording import Wording
from core.words.lists import sentence_case

TILE = 300
"""Least width of a photo."""


class SkyChoice(QWidget):
    """A folder's skies on the wall.

    Signals
    -------
    chosen(path: Path)
        A photo was pressed.
    """

    chosen = Signal(object)

    def __init__(self, wording: Wording, parent: QWidget | None = None) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(translate("choosing", "Choose a sky"))
        self.setProperty("ground", "paper")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._wording = wording
        self._folder: Path | None = None
        self._box: Box | None = None
        self._refused: list[Looked] = []
        self._tiles: dict[SkyLook, SkyTile] = {}
        self.looking = Looking(self)
        self.looking.seen.connect(self._add)
        self.looking.moved.connect(self._show_progress)
        self._make_parts()
        self._assemble()
        self._ring = FocusRing(self)
        open_large(self)

    def sizeHint(self) -> QSize:
        return QSize(look().type.grow(1120), look().type.grow(680))

    @property
    def tiles(self) -> tuple[SkyTile, ...]:
        """Those shown, in the order chosen."""
        sorting = SORTINGS[self.sorting.currentIndex()]
        return tuple(self._tiles[each] for each in in_order(tuple(self._tiles), sorting))

    def show_folder(self, folder: Path, box: Box) -> None:
        """Look through a folder.

        Raises
        ------
        UsageError
            It holds no photo, or cannot be read: one sentence.
        """
        paths = photos_in(folder)
        self._folder, self._box = folder, box
        for tile in self._tiles.values():
            tile.deleteLater()
        self._tiles, self._refused = {}, []
        title = translate("choosing", "Choose a sky: {folder}")
        self.title.setText(title.format(folder=shown_name(folder)))
        text = translate(
            "choosing", "What each would teach, with the box: {box}. Press one to open it."
        )
        self.note.setText(text.format(box=box_name(box)))
        self.looking.begin(paths, box)

    # Parts

    def _make_parts(self) -> None:
        self.title = QLabel(self)
        self.title.setProperty("role", "line")
        self.title.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.note = QLabel(self)
        self.note.setWordWrap(True)
        self.bar = QProgressBar(self)
        self.bar.setTextVisible(False)
        self.bar.setAccessibleName(translate("choosing", "Progress"))
        self.count = QLabel(self)
        self.sort_label = QLabel(translate("choosing", "Sort"), self)
        self.sorting = QComboBox(self)
        self.sort_label.setBuddy(self.sorting)
        self.sorting.addItems([sentence_case(sorting_word(each)) for each in SORTINGS])
        self.sorting.setAccessibleName(translate("choosing", "Sort the photos"))
        self.sorting.currentIndexChanged.connect(lambda _: self._place())
        self.stop_button = EdgeButton(translate("choosing", "Stop"), "", self)
        self.stop_button.clicked.connect(self.looking.stop)
        self.other_button = EdgeButton(translate("choosing", "Another folder..."), "", self)
        self.other_button.clicked.connect(self._ask_for_other)
        self.close_button = EdgeButton(translate("choosing", "Close"), "", self)
        self.close_button.clicked.connect(self.close)
        self.refused = QLabel(self)
        self.refused.setWordWrap(True)
        self.refused.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.wall = QWidget()
        self.wall.setProperty("ground", "wall")
        self.wall.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.frame = QScrollArea(self)
        self.frame.setWidget(self.wall)
        self.frame.setFrameShape(QScrollArea.Shape.NoFrame)
        self.frame.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.frame.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        self.frame.setProperty("ground", "wall")
        self.frame.viewport().setProperty("ground", "wall")
        self.frame.viewport().setAttribute(Qt.WidgetAttribute.WA_StyledBackground)

    def _assemble(self) -> None:
        top = QHBoxLayout()
        top.setSpacing(GROUP)
        top.addWidget(self.title, 1)
        top.addWidget(self.bar)
        top.addWidget(self.count)
        top.addWidget(self.stop_button)
        top.addWidget(self.sort_label)
        top.addWidget(self.sorting)
        top.addWidget(self.other_button)
        top.addWidget(self.close_button)
        column = QVBoxLayout(self)
        column.setContentsMargins(MARGIN, MARGIN, MARGIN, MARGIN)
        column.setSpacing(WITHIN)
        column.addLayout(top)
        column.addWidget(self.note)
        column.addWidget(self.frame, 1)
        column.addWidget(self.refused)

    # What comes

    def _add(self, seen: Seen) -> None:
        found = seen.looked.look
        if found is None or seen.image is None:
            self._refused.append(seen.looked)
            return
        letters = tuple(
            (reading.letter, *_on(reading.colour.hex if reading.colour else None))
            for reading in found.readings
        )
        view = TileView(
            shown_name(found.path),
            " ".join(sky_sentences(found, self._wording)),
            " ".join(against(found)),
            seen.image,
            found.bands.edges,
            letters,
        )
        tile = SkyTile(view, self.wall)
        tile.clicked.connect(lambda: self.chosen.emit(found.path))
        self._tiles[found] = tile
        tile.show()
        self._place()

    def _show_progress(self) -> None:
        looking = self.looking
        running = looking.running
        for part in (self.bar, self.stop_button):
            part.setVisible(running)
        self.bar.setRange(0, max(looking.of, 1))
        self.bar.setValue(looking.done)
        self.bar.setFixedWidth(look().type.grow(110))
        if running:
            text = translate("choosing", "{done} of {of}")
            self.count.setText(text.format(done=looking.done, of=looking.of))
        else:
            shown = len(self._tiles)
            one = translate("choosing", "1 photo")
            several = translate("choosing", "{n} photos").format(n=shown)
            self.count.setText(one if shown == 1 else several)
        self.refused.setText(" ".join(map(refusal_text, self._refused)))
        self.refused.setVisible(bool(self._refused))

    def _ask_for_other(self) -> None:
        title = translate("choosing", "Choose a folder of photos")
        folder = ask_for_folder(self, title, self._folder or Path.home())
        if folder is None or self._box is None:
            return
        try:
            self.show_folder(folder, self._box)
        except UsageError as error:
            self.note.setText(str(error))

    # Placing

    def _place(self) -> None:
        """The tiles in rows, each row as high as its tallest."""
        gap, least = GROUP, look().type.grow(TILE)
        room = self.frame.viewport().width() - 2 * INSIDE
        columns = max(1, (room + gap) // (least + gap))
        width = max(80, (room - (columns - 1) * gap) // columns)
        tiles = self.tiles
        y, before = INSIDE, None
        for start in range(0, len(tiles), columns):
            row = tiles[start : start + columns]
            height = max(tile.height_at(width) for tile in row)
            for number, tile in enumerate(row):
                tile.setGeometry(INSIDE + number * (width + gap), y, width, height)
                if before is not None:
                    QWidget.setTabOrder(before, tile)
                before = tile
            y += height + gap
        self.wall.resize(self.frame.viewport().width(), max(y, self.frame.viewport().height()))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._place()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "frame"):
            self._place()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.close()
        else:
            super().keyPressEvent(event)

    def closeEvent(self, event: QCloseEvent) -> None:
        self.looking.stop()
        self._ring.stop()
        super().closeEvent(event)


def _on(fill: str | None) -> tuple[str, str]:
    """A colour, and what is legible on it; white where there is none."""
    ground = fill or "#ffffff"
    return ground, ink_on(ground)


def ask_and_show(
    parent: QWidget,
    folder: Path | None,
    box: Box,
    wording: Wording,
    open_path: Callable[[Path], object],
    tell: Callable[[str], object],
) -> SkyChoice | None:
    """Show a folder's skies, asking for the folder where none is given.

    Parameters
    ----------
    parent : QWidget
    folder : Path, optional
    box : Box
        What the sky is to be mixed from.
    wording : Wording
    open_path : callable
        Opens the photo that was chosen; the window then closes.
    tell : callable
        Takes a sentence: why there is nothing to show.
    """
    if folder is None:
        title = translate("choosing", "Choose a folder of photos")
        folder = ask_for_folder(parent, title, Path.home())
        if folder is None:
            return None
    window = SkyChoice(wording, parent)

    def chosen(path: Path) -> None:
        window.close()
        open_path(path)

    window.chosen.connect(chosen)
    try:
        window.show_folder(folder, box)
    except UsageError as error:
        window.close()
        tell(str(error))
        return None
    window.show()
    return window
