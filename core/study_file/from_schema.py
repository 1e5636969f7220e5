"""The parts of a study as the program knows them, from those of `schema`."""

from __future__ import annotations

from collections.abc import Sequence
from string import ascii_uppercase

from core.bands.lines import Bands
from core.lesson.lesson import Hands
from core.paint.options import BandChoice, MixOptions
from core.paint.wash.amounts import PaintSheet
from core.pictures import Picture
from core.scrap.kept import ScrapEntry
from core.sheet.result import Corners, SheetOptions
from core.study import WheelPlace
from core.study_file import schema
from core.worksheet.worksheet import OwnScores, SheetPage, Worksheet


def bands_from(bands: schema.Bands1) -> Bands:
    """The lines of the bands."""
    return Bands(bands.horizon, tuple(bands.lines))


def hands_from(hands: Sequence[schema.Hands1]) -> tuple[Hands, ...]:
    """The hands counted in class."""
    return tuple(
        Hands(ascii_uppercase.index(h.letter), h.question, h.choice, h.count) for h in hands
    )


def wheel_from(wheel: schema.Wheel1 | None) -> WheelPlace | None:
    """Where the wheel lies over the photo; None where it does not."""
    return None if wheel is None else WheelPlace(wheel.x, wheel.y, wheel.size)


def mix_from(mix: schema.Mix1) -> MixOptions:
    """What was asked of the mixes."""
    paper = mix.paper
    return MixOptions(
        sheet=PaintSheet(paper.name, paper.width_mm, paper.height_mm, paper.border_mm),
        own_ml_per_1000_cm2=mix.own_ml_per_1000_cm2,
        drying_steps=mix.drying_steps,
        allow_white=mix.allow_white,
        forbidden=tuple(mix.forbidden),
        choices=tuple(
            (
                choice.letter,
                BandChoice(
                    tuple(choice.pinned),
                    tuple(choice.forbidden),
                    None if choice.parts is None else tuple(choice.parts),
                    choice.load_ml,
                ),
            )
            for choice in mix.choices
        ),
    )


def options_from(sheet: schema.Sheet1) -> SheetOptions:
    """How a sheet is to be looked at."""
    corners: Corners | None = None
    if sheet.corners is not None:
        first, second, third, fourth = sheet.corners
        corners = (first, second, third, fourth)
    return SheetOptions(corners, sheet.turned, sheet.scan, sheet.aspect)


def scrap_from(scrap: schema.Scrap2, picture: Picture) -> ScrapEntry:
    """A dried stroke, with its picture."""
    return ScrapEntry(
        picture,
        scrap.letter,
        scrap.Lab,
        tuple(scrap.parts),
        scrap.load_ml,
        tuple(scrap.added),
        None if scrap.advised is None else tuple(scrap.advised),
    )


def worksheet_from_schema(kept: schema.Worksheet1) -> Worksheet:
    """A worksheet as the program knows it."""
    first, second = kept.pages
    return Worksheet(
        kept.student_code, kept.class_code, (page_from(first), page_from(second)), kept.remark
    )


def page_from(page: schema.Page1) -> SheetPage:
    """What was written of a sheet."""
    scores = OwnScores(page.hue, page.value, page.intensity, page.placement)
    return SheetPage(scores, page.answer, page.change_first, page.date)
