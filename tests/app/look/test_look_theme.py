"""Contrast of every pair of theme colours that meets, by WCAG 2.2 (W3C, 2023)."""

from __future__ import annotations

from typing import ClassVar

import pytest

from app.drawing.views import WEDGE_COLOURS, WEDGE_INKS
from app.drawing.wheel.wheel import RING_GREYS
from app.look.theme import DARK, LIGHT, WALL, WALL_INK, Theme, theme_for
from core.colour.contrast import contrast_ratio

THEMES = pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)


@THEMES
@pytest.mark.parametrize("ground", ["paper", "raised", "bar"])
@pytest.mark.parametrize("text", ["ink", "second"])
def test_text_on_paper_reaches_the_strictest_level(theme: Theme, ground: str, text: str) -> None:
    # WCAG 2.2, 1.4.6 Contrast (Enhanced), level AAA: 7:1.
    assert contrast_ratio(getattr(theme, text), getattr(theme, ground)) >= 7.0


@THEMES
def test_text_on_ink_reaches_the_strictest_level(theme: Theme) -> None:
    assert contrast_ratio(theme.on_ink, theme.ink) >= 7.0
    # Under the mouse an ink button takes the second text's tone.
    assert contrast_ratio(theme.on_ink, theme.second) >= 7.0


@THEMES
@pytest.mark.parametrize("ground", ["paper", "raised", "bar"])
def test_edges_of_controls_are_seen(theme: Theme, ground: str) -> None:
    # WCAG 2.2, 1.4.11 Non-text Contrast: 3:1.
    assert contrast_ratio(theme.edge, getattr(theme, ground)) >= 3.0


@pytest.mark.parametrize(
    ("one", "other", "ratio"),
    [
        # The figures of the design document, printed with one decimal.
        (LIGHT.ink, LIGHT.paper, 15.7),
        (DARK.ink, DARK.paper, 13.5),
        (LIGHT.second, LIGHT.paper, 9.3),
        (DARK.second, DARK.paper, 9.4),
        (DARK.second, DARK.raised, 7.3),
        (LIGHT.edge, LIGHT.paper, 4.4),
        (DARK.edge, DARK.paper, 5.5),
        (WALL_INK, WALL, 5.4),
        (WALL_INK, RING_GREYS[-1], 4.8),
        ("#000000", WALL, 5.8),
    ],
)
def test_contrast_is_as_designed(one: str, other: str, ratio: float) -> None:
    assert contrast_ratio(one, other) == pytest.approx(ratio, abs=0.05)


def test_names_on_wedges_can_be_read() -> None:
    # WCAG 2.2, 1.4.3 Contrast (Minimum), level AA: 4.5:1.
    ratios = [contrast_ratio(i, c) for i, c in zip(WEDGE_INKS, WEDGE_COLOURS, strict=True)]
    assert min(ratios) >= 4.5


def test_words_on_the_wheels_rings_can_be_read() -> None:
    assert min(contrast_ratio(WALL_INK, grey) for grey in RING_GREYS) >= 4.5


@THEMES
def test_paper_and_ink_have_no_hue(theme: Theme) -> None:
    """Any hue would be some band's reading."""
    for name in ("paper", "raised", "bar", "ink", "on_ink", "second", "rule", "edge", "wall"):
        colour = getattr(theme, name)
        assert colour[1:3] == colour[3:5] == colour[5:7], name


def test_wall_is_the_same_in_both_themes() -> None:
    assert LIGHT.wall == DARK.wall == WALL


def test_theme_for(qapp: object) -> None:
    assert theme_for("light") is LIGHT
    assert theme_for("dark") is DARK
    assert theme_for("system") in (LIGHT, DARK)
    with pytest.raises(ValueError, match="pink"):
        theme_for("pink")  # type: ignore[arg-type]


def test_no_widget_is_collected_while_the_look_changes(qtbot):
    """Qt visits every widget it knows; one that went away meanwhile would end the program."""
    import gc

    from PySide6.QtWidgets import QApplication, QWidget

    from app.look import Look, TypeScale, apply_look

    class Heavy(QWidget):
        """Makes so much garbage when the style changes that the collector would run."""

        collecting: ClassVar[list[bool]] = []

        def changeEvent(self, event):
            self.collecting.append(gc.isenabled())
            for _ in range(3000):
                circle: list[object] = []
                circle.append(circle)
            super().changeEvent(event)

    for _ in range(20):
        lost = QWidget()
        lost.cycle = lost  # only the collector frees it
    heavy = Heavy()
    qtbot.addWidget(heavy)
    heavy.show()
    Heavy.collecting.clear()
    apply_look(QApplication.instance(), Look(type=TypeScale(1.25)))
    assert Heavy.collecting
    assert not any(Heavy.collecting)
    assert gc.isenabled()
    apply_look(QApplication.instance(), Look())
