"""The lower half of the Sheets page: findings and the bands of each sheet, under the pictures."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QScrollArea, QWidget

from app.sheets.column import SheetColumn
from app.sheets.findings import FindingsPanel, FindingsView
from app.sheets.teach import Teach


class LowerPart(QScrollArea):
    """Findings, sheet 1 and sheet 2 side by side; scrolls where the window is low."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._body = QWidget()
        self._body.setProperty("ground", "wall")
        self._body.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.findings = FindingsPanel(self._body)
        self.columns = (SheetColumn(0, self._body), SheetColumn(1, self._body))
        for column in self.columns:
            column.bands.share_heading_size(self._heading_size)
        self.teach = Teach(self._body)
        self._row = QHBoxLayout(self._body)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(0)
        for part in (self.findings, *self.columns, self.teach):
            self._row.addWidget(part)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(self._body)

    def _heading_size(self) -> float:
        shown = [column.bands for column in self.columns if column.bands.isVisible()]
        return min(bands.heading_size() for bands in shown)

    def show_findings(self, view: FindingsView | None, *, nothing: bool) -> None:
        """Show the findings, none before a check; `nothing` shows how it is done instead."""
        self.findings.setVisible(view is not None)
        if view is not None:
            self.findings.set_view(view)
            # While they wait, their paper ends below the lock: an empty one would be the loudest
            # thing on the page.
            closed = view.missing is not None
            top = Qt.AlignmentFlag.AlignTop
            self._row.setAlignment(self.findings, top if closed else Qt.AlignmentFlag(0))
        self.teach.setVisible(nothing)
        for column in self.columns:
            column.setVisible(not nothing)

    def arrange(self, lefts: Sequence[float]) -> None:
        """Put the columns of both sheets under their pictures."""
        first, second = (round(left) for left in lefts)
        self.findings.setFixedWidth(first)
        self.columns[0].setFixedWidth(second - first)
        alone = self.findings.isHidden() and not self.teach.isVisibleTo(self._body)
        self._row.setContentsMargins(first if alone else 0, 0, 0, 0)
