"""Black-and-white plans: one pattern a paint on the whole card, and a key that names it."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations

import numpy as np
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter
from sheet_checks import WANTED, readings

from app.cards.patterns import patterns_of
from app.drawing.cards.patterns import PATTERNS, PatternBoxView, paint_pattern_box
from core.paint.box.box import TWELVE_PAN
from core.paint.options import MixOptions
from core.paint.plan import plan_mixes

PLAN = plan_mixes(readings(WANTED), TWELVE_PAN, MixOptions())


def drawn(pattern) -> np.ndarray:
    image = QImage(160, 60, QImage.Format.Format_Grayscale8)
    image.fill(QColor("#ffffff"))
    painter = QPainter(image)
    paint_pattern_box(painter, QRectF(0, 0, 160, 60), PatternBoxView(pattern))
    painter.end()
    return np.array(image.constBits()).reshape(60, -1)[:, :160].astype(float)


def test_every_paint_has_one_pattern_and_no_two_share_one() -> None:
    told = patterns_of(PLAN)
    used = {key for band in PLAN.bands for key, _ in band.classroom.mix.parts}
    assert set(told) == used
    assert len(set(told.values())) == len(used)
    assert sum(pattern == "solid" for pattern in told.values()) <= 1


def test_more_paints_than_patterns_have_none() -> None:
    keys = TWELVE_PAN.keys[: len(PATTERNS) + 1]
    mix = replace(PLAN.bands[0].classroom.mix, parts=tuple((key, 1) for key in keys))
    band = replace(PLAN.bands[0], classroom=replace(PLAN.bands[0].classroom, mix=mix))
    assert set(patterns_of(replace(PLAN, bands=(band,))).values()) == {"white"}


def test_patterns_look_different(qapp) -> None:
    """By far more pixels than two drawings of one pattern, moved by a little, would differ in."""
    pictures = {pattern: drawn(pattern) for pattern in PATTERNS}
    for one, other in combinations(PATTERNS, 2):
        assert np.abs(pictures[one] - pictures[other]).mean() > 25, (one, other)
