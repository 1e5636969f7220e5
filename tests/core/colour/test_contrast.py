"""Contrast by WCAG 2.2; the grey limits are its own well-known examples."""

from __future__ import annotations

import pytest

from core.colour.contrast import contrast_ratio, ink_on, relative_luminance


def test_ends_of_the_scale() -> None:
    # W3C, WCAG 2.2, definition of contrast ratio: "ratios can range from 1 to 21".
    assert contrast_ratio("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast_ratio("#3c5a78", "#3c5a78") == pytest.approx(1.0)
    assert relative_luminance("#ffffff") == pytest.approx(1.0)


@pytest.mark.parametrize(
    ("grey", "at_least", "below"), [("#767676", 4.5, 4.6), ("#595959", 7.0, 7.1)]
)
def test_darkest_greys_named_by_the_guideline(grey: str, at_least: float, below: float) -> None:
    # W3C, Technique G18/G17 discussions: #767676 is the lightest grey at 4.5:1 on white,
    # #595959 the lightest at 7:1 (common practice among checkers).
    assert at_least <= contrast_ratio(grey, "#ffffff") < below


@pytest.mark.parametrize(("colour", "luminance"), [("#ff0000", 0.2126), ("#00ff00", 0.7152)])
def test_primaries_weigh_as_in_the_guideline(colour: str, luminance: float) -> None:
    assert relative_luminance(colour) == pytest.approx(luminance, abs=5e-5)


def test_ink_is_the_one_that_stands_out() -> None:
    assert ink_on("#f8d800") == "#0b0b0b"
    assert ink_on("#2a2a80") == "#ffffff"


def test_bad_colour_is_refused() -> None:
    with pytest.raises(ValueError, match="rrggbb"):
        relative_luminance("red")
