"""How large a fault must be before anything is said of it.

Each pair has one side just under a threshold of the check and one just over it, with a fifth or so
to spare: a constant moved by more than that changes what a user reads, and fails here.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy.ndimage import gaussian_filter1d
from sheet_pictures import BOX, PAINT, PAPER, photo_from, plain_reference, sheet_picture
from simulator.measure import keys, reference_from

from core.bands.careful import read_bands
from core.bands.lines import Bands
from core.photo import Photo
from core.reading.reading import BandReading, read_colour
from core.sheet import check_sheet
from core.sheet.findings.compare import compare_bands
from core.sheet.findings.facts import Facts
from core.sheet.findings.findings import findings_of
from core.sheet.findings.strength import strength_of, stronger_Lab
from core.sheet.painted.density import density_of
from core.sheet.painted.pale_corners import find_pale_corners
from core.sheet.result import SheetOptions

LEFT, TOP, RIGHT, BOTTOM = BOX
CORNERS = tuple(
    (x / 640, y / 480) for x, y in ((LEFT, TOP), (RIGHT, TOP), (RIGHT, BOTTOM), (LEFT, BOTTOM))
)
BLUE = (55.0, 0.0, -35.0)


def reading_of(*colours: tuple[float, float, float]) -> tuple[BandReading, ...]:
    """Readings of bands of one colour each, CIELAB."""
    n = len(colours)
    photo = Photo(np.full((40 * n, 60, 3), 128, np.uint8), None, 60, 40 * n, "drawn.png")
    bands = Bands(1.0, tuple((k + 1) / n for k in range(n - 1)))
    plain = read_bands(photo, np.ones((40 * n, 60), bool), bands)
    seen = [read_colour(colour) for colour in colours]
    return tuple(
        replace(one, colour=colour, left=colour, centre=colour, right=colour, overall=None)
        for one, colour in zip(plain, seen, strict=True)
    )


def polar(lightness: float, chroma: float, hue_deg: float) -> tuple[float, float, float]:
    hue = np.radians(hue_deg)
    return lightness, float(chroma * np.cos(hue)), float(chroma * np.sin(hue))


def said(wanted, found, *, scan: bool = True, corrected: bool = True) -> str:
    """The steps advised for one band that has `found` where the photo has `wanted`."""
    reference, sheet = reading_of(wanted), reading_of(found)
    checks = compare_bands(reference, sheet, scan=scan, corrected=corrected, sides=False)
    found_ = findings_of(Facts(checks, (), (), (), (), reference, ()))
    return " ".join(finding.text for finding in found_ if finding.kind == "step")


@pytest.mark.parametrize(
    ("wanted", "near", "far", "word"),
    [
        pytest.param(BLUE, (59.0, 0.0, -35.0), (61.0, 0.0, -35.0), "lighter", id="value"),
        pytest.param(
            polar(60, 40, 60), polar(60, 36, 60), polar(60, 32.5, 60), "duller", id="intensity"
        ),
        pytest.param(
            polar(60, 30, 40), polar(60, 30, 44), polar(60, 30, 53), "towards orange", id="hue"
        ),
    ],
)
def test_a_band_s_colour_is_spoken_of_from_a_step_on(wanted, near, far, word):
    assert said(wanted, near) == ""
    assert word in said(wanted, far)


def test_a_phone_and_light_that_was_not_undone_say_less():
    little, more, much = ((55.0 + up, 0.0, -35.0) for up in (5.3, 6.6, 9.5))
    assert said(BLUE, little, scan=True)
    assert not said(BLUE, little, scan=False)
    assert said(BLUE, more, scan=False)
    assert not said(BLUE, more, scan=False, corrected=False)
    assert said(BLUE, much, scan=False, corrected=False)


@pytest.mark.parametrize(("share", "told"), [(0.7, True), (0.92, False), (1.1, False), (1.4, True)])
def test_the_strength_of_the_whole_is_spoken_of_from_a_fifth_on(share, told):
    aims = (polar(50, 40, 280), polar(70, 30, 320), polar(80, 40, 70))
    sheet = [tuple(stronger_Lab(np.array(aim), share).tolist()) for aim in aims]
    assert strength_of(reading_of(*aims), reading_of(*sheet)).told is told


@pytest.mark.parametrize(("share", "told"), [(0.65, True), (0.9, False)])
def test_a_corner_is_pale_from_a_fifth_less_paint_on(share, told):
    y, x = np.mgrid[0:300, 0:400]
    paint = 1 - (1 - share) * np.exp(-(((x / 60) ** 2 + (y / 60) ** 2) ** 2))
    picture = np.exp(-0.5 * paint[..., None] * np.array([1.0, 0.7, 0.4])).astype(np.float32)
    found = find_pale_corners(density_of(picture))
    assert [found_one.corner for found_one in found] == (["top left"] if told else [])


@pytest.mark.parametrize(("off", "told"), [(0.014, False), (0.03, True)])
def test_a_line_is_spoken_of_from_two_per_cent_on(off, told):
    picture = sheet_picture()
    rows = round(off * (BOTTOM - TOP))
    first = TOP + (BOTTOM - TOP) // 3
    picture[first : first + rows, LEFT:RIGHT] = np.asarray(PAPER) * PAINT[0]
    check = check_sheet(photo_from(picture), plain_reference(), SheetOptions(corners=CORNERS))
    assert any(finding.about == "placement" for finding in check.findings
               if finding.kind == "step") is told  # fmt: skip


@pytest.mark.parametrize(("red_over_blue", "told"), [(1.6, False), (2.5, True)])
def test_light_is_warm_from_twice_the_red_on(red_over_blue, told):
    light = np.array([red_over_blue**0.5, 1.0, red_over_blue**-0.5]) * 0.7
    check = check_sheet(photo_from(sheet_picture() * light), plain_reference(),
                        SheetOptions(corners=CORNERS))  # fmt: skip
    assert ("warm light" in keys(check)) is told


@pytest.mark.parametrize(("bright", "told"), [(1.03, False), (1.3, True)])
def test_glare_is_brighter_than_the_paper(bright, told):
    picture = sheet_picture() * 0.6
    y, x = np.mgrid[0:480, 0:640]
    picture[np.hypot(y - 150, x - 300) < 20] = 0.6 * bright * np.asarray(PAPER)
    check = check_sheet(photo_from(picture), plain_reference(), SheetOptions(corners=CORNERS))
    assert ("glare" in keys(check)) is told


@pytest.mark.parametrize(("rise", "told"), [(1.06, False), (1.3, True)])
def test_tape_is_darker_than_the_paper_beside_it(rise, told):
    """Cream tape along the painting, bare paper outside of it."""
    picture = sheet_picture()
    painting = picture[TOP:BOTTOM, LEFT:RIGHT].copy()
    picture[50:430, 170:450] = np.asarray(PAPER) / rise
    picture[TOP:BOTTOM, LEFT:RIGHT] = painting
    check = check_sheet(photo_from(picture), plain_reference(), SheetOptions(corners=CORNERS))
    assert ("tape" in keys(check)) is told


@pytest.mark.parametrize(("width", "told"), [(0.008, True), (0.06, False)])
def test_an_edge_is_hard_where_the_photo_melts_and_the_sheet_does_not(width, told):
    """10 to 90% widths, shares of the height: those of a Gaussian blur are 2.56 deviations."""

    def painted(rows: int, wide: float) -> np.ndarray:
        density = -np.log(np.repeat(np.asarray(PAINT), rows // 3, axis=0))
        return np.exp(-gaussian_filter1d(density, wide / 2.56 * rows, axis=0, mode="nearest"))

    sky = painted(300, 0.2)[:, None] * np.ones((1, 240, 1))
    encoded = np.where(sky <= 0.0031308, 12.92 * sky, 1.055 * sky ** (1 / 2.4) - 0.055)
    reference = reference_from((encoded * 255 + 0.5).astype(np.uint8), (1 / 3, 2 / 3))
    picture = sheet_picture()
    rows = BOTTOM - TOP - (BOTTOM - TOP) % 3
    picture[TOP : TOP + rows, LEFT:RIGHT] = np.asarray(PAPER) * painted(rows, width)[:, None]
    check = check_sheet(photo_from(picture), reference, SheetOptions(corners=CORNERS))
    assert any(edge.letters == ("A", "B") for edge in check.hard_edges) is told
