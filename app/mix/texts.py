"""Texts that several views share."""

from __future__ import annotations

import re

from app.drawing.fit import Fitted, fit

SMALLER_AT_MOST = 0.85
"""How much smaller a mix may be written so that no paint's name is split."""


def held_together(mix: str) -> str:
    """A mix in parts that does not break into lines before a colon, nor after a count."""
    return re.sub(r"(\d) ", "\\1\u00a0", mix).replace(" : ", "\u00a0: ")


def fit_mix(mix: str, sizes: tuple[int, ...], weight: int, width: float) -> Fitted:
    """A mix in lines: broken between its paints where that fits; see `app.drawing.fit.fit`."""
    fitted = fit(held_together(mix), sizes, weight, width)
    if len(fitted.lines) == 1:
        return fitted
    between = fit(
        mix.replace(" ", "\u00a0").replace("\u00a0:\u00a0", "\u00a0: "), sizes, weight, width
    )
    whole = between.width <= width and between.size >= SMALLER_AT_MOST * fitted.size
    return between if whole else fitted
