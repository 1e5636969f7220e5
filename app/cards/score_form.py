"""Where a worksheet's score boxes are printed, told by the page itself: there is no second layout.

`core.class_set.score_marks` holds a photographed page against it.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QImage, QPainter

from app.cards.page import Page, paint_page
from app.cards.paper import MM
from app.drawing.cards.code import paint_code
from app.drawing.score_scale import paint_score_scale, score_boxes
from core.class_set.page_crop import Box
from core.class_set.score_marks.form import PX_PER_MM, ScoreForm, ScoreRow, area_of
from core.class_set.ticket import PAGE_KINDS


def score_form(page: Page, index: int) -> ScoreForm:
    """What is printed on a worksheet page with codes.

    Parameters
    ----------
    page : Page
        From `app.cards.class_pages.lay_out_worksheets`.
    index : int
        0 for the first sheet's page, 1 for the second's.
    """
    codes = [piece.rect for piece in page.pieces if piece.paint is paint_code]
    rows = []
    for piece in page.pieces:
        if piece.paint is paint_score_scale:
            boxes = tuple(_box(rect) for rect in score_boxes(piece.rect))
            rows.append(ScoreRow(boxes, painted(page, area_of(boxes), PX_PER_MM)))
    kinds = PAGE_KINDS[index]
    return ScoreForm(
        tuple((kind, _box(rect)) for kind, rect in zip(kinds, codes, strict=True)), tuple(rows)
    )


def painted(page: Page, area: Box, px_per_mm: float) -> NDArray[np.uint8]:
    """A part of a page as it is printed, (h, w) uint8, in greys."""
    wide, high = round(area.width * px_per_mm), round(area.height * px_per_mm)
    image = QImage(wide, high, QImage.Format.Format_Grayscale8)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.scale(px_per_mm / MM, px_per_mm / MM)
    painter.translate(-area.x * MM, -area.y * MM)
    paint_page(painter, page)
    painter.end()
    lines = np.frombuffer(image.constBits(), np.uint8).reshape(high, image.bytesPerLine())
    return lines[:, :wide].copy()


def _box(rect: QRectF) -> Box:
    return Box(rect.x() / MM, rect.y() / MM, rect.width() / MM, rect.height() / MM)
