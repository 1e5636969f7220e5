"""What is under a sheet's picture: a question if there is one, then its bands or a lock."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from app.drawing.sheets.views import band_rows
from app.look import look
from app.look.icons import pixmap
from app.look.space import GROUP, INSIDE, WITHIN
from app.sheets.asking import strip_view
from app.sheets.bands import SheetBands
from app.widgets.strip import SheetStrip
from core.i18n import translate
from core.sheet.result import SheetCheck


class SheetColumn(QWidget):
    """Strip, bands and lock of one sheet; an empty one is bare wall."""

    def __init__(self, index: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "wall")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        name = translate("sheets page", "Bands of sheet {number} beside the photo's")
        self.strip = SheetStrip(index, self)
        self.bands = SheetBands(name.format(number=index + 1), self)
        self._paper = QWidget(self)
        self._paper.setProperty("ground", "paper")
        self._paper.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._waiting = QLabel(
            translate("sheets page", "Band by band: waits for the student's own scores."),
            self._paper,
        )
        self._waiting.setProperty("role", "second")
        self._waiting.setWordWrap(True)
        self._icon = QLabel(self._paper)
        self._pad = QHBoxLayout(self._paper)
        self._pad.setSpacing(WITHIN)
        self._pad.addWidget(self._icon, 0, Qt.AlignmentFlag.AlignTop)
        self._pad.addWidget(self._waiting, 1, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.strip)
        column.addWidget(self.bands, 1)
        # What waits is one line: no paper is left empty below it.
        self._paper.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        column.addWidget(self._paper)
        column.addStretch(0)
        self._fit()

    def show_check(
        self,
        check: SheetCheck | None,
        count: int,
        *,
        shown: bool,
        is_open: bool,
        heading: str,
        chosen: int | None,
        badge: float,
        chip: float,
    ) -> None:
        """Show what was found of a sheet.

        Parameters
        ----------
        count : int
            Bands of the study: a check of other bands is an old one.
        shown, is_open : bool
            Whether verdicts may be seen, and whether it is the own scores that they wait for.
        chosen : int or None
            The band whose row is open.
        badge, chip : float
            Widths that put the chips under the picture.
        """
        fits = check is not None and len(check.band_checks) == count
        self.strip.set_view(strip_view(check))
        self.show_closed(not shown, fits, is_open)
        if check is not None and fits:
            rows = band_rows(check, look(), chosen, badge_width=badge, chip_width=chip)
            self.bands.set_rows(heading, rows)

    def show_closed(self, closed: bool, there: bool, is_open: bool) -> None:
        """Show paper instead of the bands, with a lock unless it is open; else bare wall."""
        self.bands.setVisible(there and not closed)
        self._paper.setVisible(there and closed)
        self._icon.setVisible(not is_open)
        self._waiting.setVisible(not is_open)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_pad"):
            self._fit()

    def _fit(self) -> None:
        scale, theme = look().type, look().theme
        self._icon.setPixmap(pixmap("lock", theme.second, scale.grow(20), self.devicePixelRatioF()))
        self._pad.setContentsMargins(INSIDE, scale.grow(14), INSIDE, GROUP)
