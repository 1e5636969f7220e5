"""Data for cards, made up or painted by the simulator, and looks into the PDFs."""

from __future__ import annotations

import io
from collections.abc import Iterable
from dataclasses import replace
from functools import cache
from itertools import combinations

import numpy as np
import pypdf
from PySide6.QtCore import QBuffer, QIODevice, QRectF, QSize
from PySide6.QtGui import QImage
from PySide6.QtPdf import QPdfDocument
from simulator import Scene, scene
from simulator.measure import photo_of

import core.sheet
from app.cards.drawing import Wish
from app.cards.page import Page, Piece
from core.bands.careful import read_bands
from core.bands.lines import Bands
from core.cards.data import CardData
from core.paint.box.box import THIRTEEN, TWELVE_PAN
from core.paint.options import BandChoice, MixOptions
from core.paint.plan import plan_mixes
from core.photo import Photo, open_photo
from core.pictures import Picture
from core.pipeline import SkyReading, Worked
from core.reading.reading import BandReading, read_colour
from core.reading.wording import Wording
from core.sheet import compare_checks, make_reference
from core.study import Study
from core.worksheet.worksheet import OwnScores, SheetPage, Worksheet

# CIELAB of seven bands, dusk above and embers below.
SKY = (
    (42.0, 22.0, -50.0),
    (52.0, 20.0, -38.0),
    (60.0, 24.0, -20.0),
    (66.0, 30.0, -2.0),
    (70.0, 32.0, 18.0),
    (76.0, 24.0, 40.0),
    (82.0, 8.0, 48.0),
)
LONG_TITLE = "Sunset after the long rain behind the harbour and the hills " * 3
LONG_CODE = "the second class of the evening school 7"


def readings_of(count: int, *, long: bool = False) -> tuple[BandReading, ...]:
    """Bands of one height; `long` gives each the most words a readout can have."""
    readings = []
    for number in range(count):
        colour = read_colour(SKY[number])
        if long:
            colour = read_colour((30.0, 18.0, -36.0))
            assert colour.hue.family == "blue-violet"
            colour = replace(
                colour,
                hue=replace(colour.hue, also="blue"),
                value_word="very dark",
                intensity_word="moderate",
            )
        top, bottom = 0.8 * number / count, 0.8 * (number + 1) / count
        letter = chr(ord("A") + number)
        thirds = (colour, colour, colour)
        readings.append(BandReading(letter, top, bottom, colour, *thirds, 2.0, False, 0.0, 1.0))
    return tuple(readings)


def sky_pixels(count: int) -> np.ndarray:
    """A photo of the bands over dark ground."""
    rows = np.full((250, 400, 3), 60, np.uint8)
    for number in range(count):
        colour = [round(255 * c) for c in read_colour(SKY[number]).srgb]
        rows[200 * number // count : 200 * (number + 1) // count] = colour
    return rows


@cache
def plan_data(count: int, *, long: bool = False) -> CardData:
    """A plan card's data; `long` with the longest texts there can be."""
    readings = readings_of(count, long=long)
    box, options = TWELVE_PAN, MixOptions()
    if long:
        box = THIRTEEN
        # Three long names each, warm and cold in turn: every band is rinsed for.
        warm = (("alizarin_crimson", 7), ("cadmium_yellow", 5), ("burnt_sienna", 4))
        cold = (("cerulean_blue", 7), ("prussian_blue", 5), ("cobalt_blue", 4))
        for number, reading in enumerate(readings):
            parts = cold if number % 2 else warm
            options = options.with_choice(reading.letter, BandChoice(parts=parts))
    bands = Bands(0.8, tuple(reading.bottom for reading in readings[:-1]))
    worksheet = Worksheet(LONG_CODE if long else "7b 14", LONG_CODE if long else "7b")
    study = Study(
        title=LONG_TITLE if long else "Dusk over the lake",
        photo=Picture("dusk.jpg", "0" * 64),
        bands=bands,
        box=box,
        mix=options,
        worksheet=worksheet,
    )
    wording = Wording(tertiary="intermediate") if long else Wording()
    plan = plan_mixes(readings, box, options)
    return CardData(study, wording, sky_pixels(count), readings, plan, date="2027-03-04")


def with_worksheet(data: CardData, worksheet: Worksheet) -> CardData:
    """The same card with another worksheet."""
    return replace(data, study=replace(data.study, worksheet=worksheet))


def filled_worksheet(answer: str = "Keep the sheet wetter.") -> Worksheet:
    """Own scores and answers."""
    return Worksheet(
        "7b 14",
        "7b",
        (
            SheetPage(OwnScores(6, 7, 5, 6), answer, "value", "2027-03-04"),
            SheetPage(OwnScores(8, 7, 8, None), answer, None, "2027-03-11"),
        ),
    )


@cache
def painted(seed: int = 8001, *, copy: bool = False) -> Scene:
    """A sky and a sheet painted after it, with faults or as a true copy."""
    return scene(seed, faults=not copy, copy=copy)


@cache
def findings_data(seed: int = 8001) -> CardData:
    """Two painted sheets, checked: the first with faults, the second a copy of the sky."""
    first, second = painted(seed), painted(seed, copy=True)
    photo, bands = photo_of(first.reference), Bands(1.0, first.lines)
    sky = np.ones(photo.pixels.shape[:2], bool)
    readings = read_bands(photo, sky, bands)
    reference = make_reference(photo, bands, readings, sky)
    # Looked up here: what is checked once for all tests.
    checks = tuple(
        core.sheet.check_sheet(open_photo(one.jpeg), reference) for one in (first, second)
    )
    study = Study(
        title="Evening over the harbour",
        photo=Picture("evening.png", "0" * 64),
        bands=bands,
        worksheet=filled_worksheet(),
    )
    return CardData(
        study,
        photo=photo.pixels,
        readings=readings,
        checks=(checks[0], checks[1]),
        change=compare_checks(checks[0], checks[1], "value"),
        date="2027-03-18",
    )


LONG_REMARK = "more intense by 3, darker by 2, 2 steps towards red-violet"


def long_findings(count: int) -> CardData:
    """Checks of `count` bands, each with the longest remark, and five long findings a sheet."""
    data, sky = findings_data(), plan_data(count)
    found = []
    for check in data.checks:
        assert check is not None
        band = check.band_checks[0]
        bands = tuple(
            replace(
                band,
                letter=reading.letter,
                reference=reading,
                sheet=reading,
                overall="off",
                remark=LONG_REMARK,
            )
            for reading in sky.readings
        )
        finding = replace(check.findings[0], kind="step", text="Band A is darker than it. " * 5)
        findings = tuple(replace(finding, text=f"{n}: {finding.text}") for n in range(5))
        found.append(replace(check, band_checks=bands, findings=findings))
    study = replace(sky.study, worksheet=data.study.worksheet)
    return replace(data, study=study, photo=sky.photo, readings=sky.readings, checks=tuple(found))


# Looking at pages


def overlaps(page: Page) -> list[tuple[str, str]]:
    """Pairs of pieces that are on each other, by their texts or painters."""
    pieces = [piece for piece in page.pieces if piece.layer == "piece"]
    found = []
    for one, other in combinations(pieces, 2):
        # Touching is no overlap: chips touch on purpose, lines of text stand on each other.
        if _inner(one.rect).intersects(_inner(other.rect)):
            found.append((_name(one), _name(other)))
    return found


def outside(page: Page) -> list[str]:
    """Pieces that reach beyond the margins."""
    inside = page.paper.inside.adjusted(-1, -1, 1, 1)
    return [_name(piece) for piece in page.pieces if not inside.contains(_solid(piece.rect))]


def _inner(rect: QRectF) -> QRectF:
    return rect.adjusted(1, 1, -1, -1)


def _solid(rect: QRectF) -> QRectF:
    return QRectF(rect.x(), rect.y(), rect.width(), max(rect.height(), 0.1))


def _name(piece: Piece) -> str:
    return piece.text or piece.paint.__name__


def page_texts(pages: Iterable[Page]) -> str:
    """All that is said on pages, as laid out."""
    return "\n".join(piece.text for page in pages for piece in page.pieces if piece.text)


# Looking into PDFs


def pdf_text(data: bytes) -> str:
    """A PDF's text, all white space (Qt writes some spaces as tabs) as single spaces."""
    reader = pypdf.PdfReader(io.BytesIO(data))
    return " ".join(" ".join(page.extract_text() for page in reader.pages).split())


def rendered(data: bytes, dpi: int = 100) -> list[np.ndarray]:
    """The pages of a PDF as pixels, shape (h, w, 3)."""
    buffer = QBuffer()
    buffer.setData(data)
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    document = QPdfDocument()
    document.load(buffer)
    pages = []
    for number in range(document.pageCount()):
        size = document.pagePointSize(number) * dpi / 72
        image = QImage(round(size.width()), round(size.height()), QImage.Format.Format_RGB32)
        drawn = document.render(number, QSize(image.width(), image.height()))
        image = drawn.convertToFormat(QImage.Format.Format_RGBA8888)
        raw = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1, 4)
        alpha = raw[..., 3:].astype(float) / 255
        pages.append((raw[..., :3] * alpha + 255 * (1 - alpha)).round().astype(np.uint8))
    document.close()
    return pages


def wish_of(data) -> Wish:
    height, width = data.photo.shape[:2]
    photo = Photo(data.photo, None, width, height, "sky.png")
    bands = data.study.bands
    known = Worked(
        photo=photo,
        sky=SkyReading(photo, bands, data.readings, np.ones((height, width), bool))
        if bands is not None and data.readings
        else None,
        plan=data.plan,
        checks=data.checks if any(data.checks) else None,
        change=data.change,
    )
    return Wish(data.study, {}, data.wording, known, data.date, False)
