"""A part of a photographed page, levelled by the page's codes."""

from __future__ import annotations

import numpy as np
import pytest
from class_set_tools import TAG
from PIL import Image

from core.class_set.codes import code_modules
from core.class_set.page_crop import PX_PER_MM, Box, crop_page, homography_of
from core.class_set.ticket import Ticket

SIDE, INSET, SCALE = 14.0, 8.0, 6  # mm, mm, pixels a mm
PAGE = (210.0, 297.0)
WANTED = Box(30.0, 150.0, 150.0, 40.0)


def places() -> dict[str, Box]:
    right, bottom = PAGE[0] - INSET - SIDE, PAGE[1] - INSET - SIDE
    corners = ((INSET, INSET), (right, INSET), (right, bottom), (INSET, bottom))
    return {kind: Box(x, y, SIDE, SIDE) for kind, (x, y) in zip("ABCD", corners, strict=True)}


def page_picture(kinds: str) -> np.ndarray:
    """White paper with codes in some corners; red where it is wanted, a blue square in it."""
    page = np.full((round(PAGE[1] * SCALE), round(PAGE[0] * SCALE), 3), 245, np.uint8)
    for kind in kinds:
        box = places()[kind]
        modules = code_modules(Ticket(TAG, 3, kind))
        image = Image.fromarray(np.where(modules, 20, 245).astype(np.uint8))
        side = round(SIDE * SCALE)
        code = np.asarray(image.resize((side, side), Image.Resampling.NEAREST))
        y, x = round(box.y * SCALE), round(box.x * SCALE)
        page[y : y + side, x : x + side] = code[..., None]
    left, top = round(WANTED.x * SCALE), round(WANTED.y * SCALE)
    page[top : top + round(WANTED.height * SCALE), left : left + round(WANTED.width * SCALE)] = (
        220,
        60,
        60,
    )
    page[top : top + 10 * SCALE, left : left + 10 * SCALE] = (40, 40, 220)
    return page


def photographed(page: np.ndarray, turn: int = 0) -> np.ndarray:
    """The page seen slantwise on a grey table."""
    h, w = page.shape[:2]
    to = np.array([[90, 60], [w + 10, 30], [w + 60, h + 20], [40, h + 70]], float)
    of = np.array([[0, 0], [w, 0], [w, h], [0, h]], float)
    H = homography_of(to, of)
    H = H / H[2, 2]
    seen = Image.fromarray(page).transform(
        (w + 120, h + 120),
        Image.Transform.PERSPECTIVE,
        tuple(H.ravel()[:8]),
        Image.Resampling.BICUBIC,
        fillcolor=(120, 120, 120),
    )
    return np.rot90(np.asarray(seen), turn).copy()


def test_a_known_perspective_is_found_again() -> None:
    H = np.array([[1.2, 0.1, 30], [-0.05, 0.9, 12], [0.0004, -0.0002, 1]])
    rng = np.random.default_rng(5)
    points = rng.uniform(0, 300, (12, 2))
    mapped = np.column_stack([points, np.ones(12)]) @ H.T
    found = homography_of(points, mapped[:, :2] / mapped[:, 2:])
    assert found == pytest.approx(H, rel=1e-6, abs=1e-9)


@pytest.mark.parametrize("turn", [0, 1, 2, 3])
def test_the_lines_of_writing_come_out_level_whichever_way_the_page_lies(turn: int) -> None:
    crop = crop_page(photographed(page_picture("ABCD"), turn), places(), WANTED)
    assert crop is not None
    assert crop.shape == (round(WANTED.height * PX_PER_MM), round(WANTED.width * PX_PER_MM), 3)
    inside = crop[4:-4, 4:-4].astype(int)
    blue = inside[..., 2] > inside[..., 0] + 80
    red = inside[..., 0] > inside[..., 2] + 80
    assert float((blue | red).mean()) > 0.98
    ys, xs = np.nonzero(blue)
    # The square of 10 mm is at the top left: within half a millimetre.
    assert (ys.max() + 4, xs.max() + 4) == pytest.approx((50, 50), abs=0.5 * PX_PER_MM)


def test_two_codes_are_enough_and_one_is_not() -> None:
    assert crop_page(photographed(page_picture("AC")), places(), WANTED) is not None
    assert crop_page(photographed(page_picture("B")), places(), WANTED) is None
    assert crop_page(np.full((400, 300, 3), 200, np.uint8), places(), WANTED) is None
