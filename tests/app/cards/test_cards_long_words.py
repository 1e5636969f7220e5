"""Words and texts of any length are fitted in time that grows with them, and no faster."""

from __future__ import annotations

import pytest

import app.drawing.cards.text as text_module
from app.cards.paper import MM, PT
from app.cards.write import elided, fitting_size
from app.drawing.cards.text import Run, broken, letters_that_fit, line_width

SIZE, WIDTH = 12 * PT, 60 * MM


@pytest.fixture
def measured(monkeypatch: pytest.MonkeyPatch, qapp) -> list[int]:
    """The length of every text that is measured."""
    lengths: list[int] = []
    real = text_module.text_size

    def counting(text: str, size: float, weight: int) -> tuple[float, float]:
        lengths.append(len(text))
        return real(text, size, weight)

    monkeypatch.setattr(text_module, "text_size", counting)
    return lengths


@pytest.mark.parametrize("text", ["x" * 9000, "wide " * 1800, "a" * 4000 + " " + "b" * 4000])
def test_breaking_measures_each_letter_a_few_times(measured: list[int], text: str) -> None:
    lines = broken([Run(text)], SIZE, WIDTH)
    assert "".join(run.text for line in lines for run in line).replace(" ", "") == text.replace(
        " ", ""
    )
    assert sum(measured) < 40 * len(text)
    assert all(line_width(line, SIZE) <= WIDTH + 1e-3 for line in lines)


def test_cutting_and_choosing_a_size_look_at_one_line(measured: list[int]) -> None:
    line = (Run("x" * 9000),)
    cut = elided(line, SIZE, WIDTH)
    assert cut[-1].text == "…"
    assert line_width(cut, SIZE) <= WIDTH
    assert fitting_size("x" * 9000, (SIZE, SIZE / 2), WIDTH, 400) == SIZE / 2
    assert sum(measured) < 3000


def test_the_letters_that_fit(qapp) -> None:
    text = "watercolour" * 3
    for width in (0.0, 1.0, 40.0, 90.0, 1e6):
        count = letters_that_fit(text, SIZE, 400, width)
        assert line_width([Run(text[:count], 400)], SIZE) <= max(width, 0.0) or count == 0
        if count < len(text):
            assert line_width([Run(text[: count + 1], 400)], SIZE) > width
