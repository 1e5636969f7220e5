"""The paper a card is printed on, and its unit: a tenth of a point.

Everything on a card is laid out and painted in tenths of a point, 720 to the inch. A PDF writer
at that resolution takes them as they are, so millimetres come out as millimetres; and since the
painters round text to whole units, sizes are true to a tenth of a point.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final, Literal

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPageSize

UNITS_PER_INCH: Final = 720
MM: Final = UNITS_PER_INCH / 25.4
PT: Final = UNITS_PER_INCH / 72

MARGIN_MM: Final = 14.0

PaperName = Literal["a4", "letter"]


@dataclass(frozen=True)
class Paper:
    """A size of paper, upright.

    Attributes
    ----------
    name : "a4" or "letter"
    width_mm, height_mm : float
    codes_mm : float
        Further margin above and below, where codes stand in the corners.
    """

    name: PaperName
    width_mm: float
    height_mm: float
    codes_mm: float = 0.0

    @property
    def rect(self) -> QRectF:
        """The whole sheet, in units."""
        return QRectF(0.0, 0.0, self.width_mm * MM, self.height_mm * MM)

    @property
    def inside(self) -> QRectF:
        """What is within the margins, in units."""
        margin, codes = MARGIN_MM * MM, self.codes_mm * MM
        return self.rect.adjusted(margin, margin + codes, -margin, -margin - codes)

    @property
    def page_size(self) -> QPageSize:
        """The size as Qt's printing knows it."""
        known = QPageSize.PageSizeId.A4 if self.name == "a4" else QPageSize.PageSizeId.Letter
        return QPageSize(known)


A4: Final = Paper("a4", 210.0, 297.0)
LETTER: Final = Paper("letter", 215.9, 279.4)
PAPERS: Final[dict[str, Paper]] = {paper.name: paper for paper in (A4, LETTER)}
"""By the name used on the command line."""
