"""A plain page with codes and rows of boxes, drawn without Qt: for tests of the reading alone."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageDraw, ImageFont

from core.class_set.codes import code_modules
from core.class_set.page_crop import Box
from core.class_set.score_marks.form import PX_PER_MM, ScoreForm, ScoreRow, area_of
from core.class_set.ticket import PAGE_KINDS, Ticket
from simulator.pen_marks import PX

TALL, WIDE, CODE, INSET = 297.0, 210.0, 14.0, 8.0  # mm


def plain_boxes() -> tuple[tuple[Box, ...], ...]:
    """Four rows of ten boxes, in mm."""
    return tuple(
        tuple(Box(40 + 15.7 * k, 107 + 19 * row, 14.85, 7.6) for k in range(10)) for row in range(4)
    )


def plain_codes() -> dict[str, Box]:
    """Where the codes of page 1 are."""
    right, bottom = WIDE - INSET - CODE, TALL - INSET - CODE
    corners = ((INSET, INSET), (right, INSET), (right, bottom), (INSET, bottom))
    return {k: Box(x, y, CODE, CODE) for k, (x, y) in zip(PAGE_KINDS[0], corners, strict=True)}


def plain_page(px: float = PX, words: str = "far from it") -> NDArray[np.uint8]:
    """The page as it is printed, (h, w) uint8, with words under some boxes."""
    fine = 2
    scale = px * fine
    image = Image.new("L", (round(WIDE * scale), round(TALL * scale)), 255)
    draw = ImageDraw.Draw(image)
    number, small = (ImageFont.load_default(mm * scale) for mm in (3.8, 2.8))
    for row in plain_boxes():
        for k, box in enumerate(row, 1):
            edges = [box.x, box.y, box.x + box.width, box.y + box.height]
            width = max(1, round(0.27 * scale))
            draw.rounded_rectangle([v * scale for v in edges], 1.0 * scale, None, 110, width)
            middle = ((box.x + box.width / 2) * scale, (box.y + box.height / 2) * scale)
            draw.text(middle, str(k), 0, number, "mm")
            if k in (1, 4, 7):
                at = (box.x * scale, (box.y + box.height + 0.8) * scale)
                draw.text(at, words, 60, small, "lt")
    for kind, box in plain_codes().items():
        modules = code_modules(Ticket("7K3Q", 3, kind))
        code = Image.fromarray(np.where(modules, 0, 255).astype(np.uint8))
        side = round(box.width * scale)
        at = (round(box.x * scale), round(box.y * scale))
        image.paste(code.resize((side, side), Image.Resampling.NEAREST), at)
    small_size = (round(WIDE * px), round(TALL * px))
    return np.asarray(image.resize(small_size, Image.Resampling.BOX))


def plain_form() -> ScoreForm:
    """What a reader is told of that page."""
    page = plain_page(PX_PER_MM)
    rows = []
    for boxes in plain_boxes():
        area = area_of(boxes)
        top, left = round(area.y * PX_PER_MM), round(area.x * PX_PER_MM)
        high, wide = round(area.height * PX_PER_MM), round(area.width * PX_PER_MM)
        rows.append(ScoreRow(boxes, page[top : top + high, left : left + wide].copy()))
    return ScoreForm(tuple(plain_codes().items()), tuple(rows))
