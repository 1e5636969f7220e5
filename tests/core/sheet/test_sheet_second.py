"""Bands of two colours on a sheet: cloud is compared with cloud, and sky with sky.

Skies are drawn here with clouds of known colour and share; the sheet is the same drawing with
one thing changed.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy.ndimage import gaussian_filter

from core.bands.careful import read_bands
from core.bands.lines import Bands
from core.photo import Photo
from core.reading.reading import BandReading
from core.sheet.findings.compare import compare_bands
from core.sheet.findings.facts import Facts
from core.sheet.findings.findings import findings_of
from core.sheet.match.pairing import like_with_like

SKY, CLOUD = (74, 84, 120), (236, 170, 110)


def band(sky, cloud, share: float, *, seed: int = 1) -> BandReading:
    field = gaussian_filter(np.random.default_rng(seed).normal(size=(160, 480)), (10, 24))
    pixels = np.empty((160, 480, 3), np.uint8)
    pixels[:] = sky
    pixels[field > np.quantile(field, 1 - share)] = cloud
    photo = Photo(pixels, None, 480, 160, "drawn.png")
    (reading,) = read_bands(photo, np.ones((160, 480), bool), Bands(1.0))
    return reading


def compared(reference: BandReading, sheet: BandReading):
    (check,) = compare_bands((reference,), (sheet,), scan=True, corrected=True, sides=False)
    return check


@pytest.mark.parametrize("share", [0.3, 0.42, 0.58, 0.7])
def test_the_same_two_colours_match_whichever_covers_more(share) -> None:
    check = compared(band(SKY, CLOUD, 0.4), band(SKY, CLOUD, share, seed=2))
    assert check.overall == "matches"
    assert check.second.verdict == "matches"
    assert check.remark == ""
    assert check.whole.delta_E_2000 < 2
    assert check.second.whole.delta_E_2000 < 2


def test_only_the_colour_that_differs_is_said_to_differ() -> None:
    reference = band(SKY, CLOUD, 0.35)
    duller = compared(reference, band(SKY, (214, 178, 150), 0.35))
    assert duller.overall == "matches"
    assert duller.second.verdict == "off"
    assert duller.remark.startswith("second colour duller by ")
    lighter = compared(reference, band((120, 130, 168), CLOUD, 0.35))
    assert (lighter.value, lighter.second.verdict) == ("off", "matches")
    assert lighter.remark.startswith("lighter by ")
    assert "second" not in lighter.remark


def test_a_sheet_of_one_colour_is_compared_with_the_main_one_and_told_so() -> None:
    check = compared(band(SKY, CLOUD, 0.35), band(SKY, SKY, 0.35))
    assert check.overall == "matches"
    assert check.second.whole is None
    assert check.second.verdict == "cannot tell"
    assert check.remark == "one colour only, the photo has two"


def test_a_second_colour_is_not_missed_where_a_hill_hides_most_of_the_band() -> None:
    reference, sheet = band(SKY, CLOUD, 0.35), band(SKY, SKY, 0.35)
    hidden = compared(replace(reference, pixel_share=0.4), sheet)
    assert hidden.second is None
    assert hidden.remark == ""
    both = compared(replace(reference, pixel_share=0.4), reference)
    assert both.second.verdict == "matches"


def test_streaks_on_the_sheet_are_no_second_colour_of_the_photo() -> None:
    """All the paint of the band is compared, as it was before anybody looked for two."""
    streaked = band(SKY, (150, 160, 190), 0.3)
    assert streaked.second is not None
    check = compared(band(SKY, SKY, 0.3), streaked)
    assert check.second is None
    assert check.sheet.colour == streaked.as_one
    assert like_with_like(streaked, streaked) == streaked


def test_a_second_colour_that_is_off_keeps_a_band_from_being_right() -> None:
    reference = band(SKY, CLOUD, 0.35)
    well = compared(reference, band(SKY, CLOUD, 0.3, seed=2))
    assert all(well.is_right(quality) for quality in ("hue", "value", "intensity"))
    duller = compared(reference, band(SKY, (214, 178, 150), 0.35))
    assert duller.intensity == "matches"
    assert not duller.is_right("intensity")
    missing = compared(reference, band(SKY, SKY, 0.35))
    assert not any(missing.is_right(quality) for quality in ("hue", "value", "intensity"))


def told_of(reference: BandReading, sheet: BandReading) -> list[str]:
    """What is said of a sheet of this one band; steps only."""
    check = compared(reference, sheet)
    found = findings_of(Facts((check,), (), (), (), (), (reference,), ()))
    assert "Nothing else stands out." not in [finding.text for finding in found]
    return [finding.text for finding in found if finding.kind == "step"]


@pytest.mark.parametrize(
    ("cloud", "said", "cure"),
    [
        ((214, 178, 150), "duller than the photo's", "fewer paints"),
        ((255, 214, 170), "lighter than the photo's", "More paint"),
        ((190, 122, 70), "darker than the photo's", "More water"),
        ((255, 160, 70), "more intense than the photo's", "Tone it down"),
        ((240, 160, 190), "where the photo has", "little by little"),
    ],
)
def test_a_second_colour_that_is_off_gets_one_step_of_advice(cloud, said, cure) -> None:
    (step,) = told_of(band(SKY, CLOUD, 0.35), band(SKY, cloud, 0.35))
    assert step.startswith("Band A: its second colour is ")
    assert said in step
    assert cure in step


def test_a_second_colour_that_is_missing_is_told_with_how_to_get_it() -> None:
    (lighter,) = told_of(band(SKY, CLOUD, 0.35), band(SKY, SKY, 0.35))
    assert lighter.startswith("Band A has one colour where the photo has two.")
    assert "Leave paper" in lighter
    (darker,) = told_of(band(CLOUD, SKY, 0.35), band(CLOUD, CLOUD, 0.35))
    assert "Touch the second in" in darker


def test_the_main_colour_comes_first_and_a_right_second_colour_is_not_advised() -> None:
    reference = band(SKY, CLOUD, 0.35)
    (main,) = told_of(reference, band((150, 160, 190), (214, 178, 150), 0.35))
    assert "second" not in main
    check = compared(reference, band(SKY, CLOUD, 0.35, seed=3))
    found = findings_of(Facts((check,), (), (), (), (), (reference,), ()))
    assert not any(finding.kind == "step" for finding in found)
