"""Icons render in any ink at any pixel ratio; the stylesheet finds its pictures."""

from __future__ import annotations

import re

import pytest
from PySide6.QtCore import QFile, QRectF
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

from app.look.icons import FOLDER, icon, paint_icon, pixmap
from app.look.stylesheet import stylesheet
from app.look.theme import DARK, LIGHT, Theme
from app.look.type import TypeScale

NEEDED = [
    "undo",
    "redo",
    "plus",
    "minus",
    "check",
    "arrow_up",
    "arrow_down",
    "arrow_left",
    "arrow_right",
    "speak",
    "class_view",
    "lock",
    "print",
    "caution",
    "drop",
    "photo",
    "open",
    "grip",
    "turn",
    "corners",
    "help",
    "close",
]

ICONS = sorted(path.stem for path in FOLDER.glob("*.svg") if "." not in path.stem)


def test_all_icons_needed_are_there() -> None:
    assert set(NEEDED) <= set(ICONS)


@pytest.mark.parametrize("name", ICONS)
def test_icon_is_one_ink_inside_its_square(qapp: object, name: str) -> None:
    assert QSvgRenderer(str(FOLDER / f"{name}.svg")).viewBoxF() == QRectF(0, 0, 20, 20)
    image = QImage(60, 60, QImage.Format.Format_ARGB32)
    image.fill(QColor("#ffffff"))
    painter = QPainter(image)
    paint_icon(painter, QRectF(10, 10, 40, 40), name, "#141414")
    painter.end()
    dark = 0
    for y in range(60):
        for x in range(60):
            colour = image.pixelColor(x, y)
            assert colour.red() == colour.green() == colour.blue()
            if colour.red() < 128:
                dark += 1
                assert 9 <= x <= 50
                assert 9 <= y <= 50
    assert dark > 40


def test_icon_has_more_pixels_on_a_dense_screen(qapp: object) -> None:
    assert pixmap("undo", "#141414", 20, 2.0).width() == 40
    sizes = {size.width() for size in icon("undo", "#141414").availableSizes()}
    assert {20, 40} <= sizes


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
def test_stylesheet_is_whole(qapp: object, theme: Theme) -> None:
    text = stylesheet(theme, TypeScale(scale=1.5))
    assert "$" not in text
    pictures = re.findall(r'url\("([^"]+)"\)', text)
    assert pictures
    for picture in pictures:
        assert QFile.exists(picture), picture
