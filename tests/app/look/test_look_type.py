"""The type scale, and that the typeface shipped is the one drawn."""

from __future__ import annotations

from pathlib import Path
from typing import get_args

import pytest
from PySide6.QtGui import QFontInfo, QRawFont

import app.fonts
from app.fonts import FAMILY, STYLES
from app.look.type import Role, TypeScale, font


@pytest.mark.parametrize("scale", [1.0, 1.5, 2.0])
@pytest.mark.parametrize("wide", [False, True])
def test_nothing_is_set_under_13_pixels(scale: float, wide: bool) -> None:
    sizes = TypeScale(scale=scale, wide=wide)
    assert min(sizes.px(role) for role in get_args(Role)) >= 13


def test_rows_grow_on_a_wide_window() -> None:
    narrow, wide = TypeScale(), TypeScale(wide=True)
    assert wide.px("row") == round(1.2 * narrow.px("row"))
    assert (narrow.px("aloud"), wide.px("aloud")) == (34, 45)


@pytest.mark.parametrize("scale", [0.9, 2.1])
def test_scale_outside_its_range_is_refused(scale: float) -> None:
    with pytest.raises(ValueError, match="outside"):
        TypeScale(scale=scale)


@pytest.mark.parametrize("weight", [400, 500, 600, 700])
def test_each_weight_is_the_shipped_face(qapp: object, weight: int) -> None:
    info = QFontInfo(font(20, weight))
    assert info.family() == FAMILY
    assert info.weight() == weight
    assert info.exactMatch()


@pytest.mark.parametrize("style", STYLES)
def test_face_holds_the_letters_we_print(qapp: object, style: str) -> None:
    file = Path(app.fonts.__file__).parent / f"AtkinsonHyperlegibleNext-{style}.ttf"
    raw = QRawFont(str(file), 20)
    for letter in "AZaz09ñÑáéíóúüÁÉÍÓÚ¿¡«»“”‘’–—×%½…·čřžőßåø€":
        assert raw.supportsCharacter(ord(letter)), letter


def test_figures_of_one_width(qapp: object) -> None:
    from PySide6.QtGui import QFontMetricsF

    metrics = QFontMetricsF(font(20, columns=True))
    widths = {round(metrics.horizontalAdvance(figure * 8), 2) for figure in "0123456789"}
    assert len(widths) == 1


def test_licence_is_shipped_beside_the_face() -> None:
    text = (Path(app.fonts.__file__).parent / "OFL.txt").read_text(encoding="utf-8")
    assert "SIL Open Font License, Version 1.1" in text
