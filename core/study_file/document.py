"""A study to the bytes of its file, and back."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from string import ascii_uppercase
from types import MappingProxyType

import msgspec
from msgspec import UNSET, UnsetType

from core.bands.lines import Bands
from core.errors import StudyFileError
from core.i18n import translate
from core.lesson.lesson import Hands
from core.paint.box.box_file import box_to_json
from core.paint.options import MixOptions
from core.photo.sniff import suffix_of
from core.pictures import Picture
from core.scrap.kept import ScrapEntry
from core.study import SheetEntry, Study, WheelPlace
from core.study_file import schema
from core.study_file.container import pack, unpack_what_is_whole
from core.study_file.contents import Contents
from core.study_file.reading import StudyReader
from core.worksheet.worksheet import SheetPage, Worksheet


@dataclass(frozen=True)
class Opened:
    """A study and the bytes of its pictures by digest.

    Attributes
    ----------
    study : Study
    pictures : mapping of str to bytes
    gone : tuple of str
        Of a damaged file: what is not there any more, as words to list ("the remark").
    """

    study: Study
    pictures: Mapping[str, bytes]
    gone: tuple[str, ...] = ()


def study_to_bytes(study: Study, pictures: Mapping[str, bytes]) -> bytes:
    """The bytes of the study's file.

    Parameters
    ----------
    study : Study
    pictures : mapping
        Digest to bytes; has every picture the study speaks of.

    Raises
    ------
    StudyFileError
        The pictures are too large, or the bytes of one are not there.
    """
    return pack(study_to_contents(study, pictures))


def study_from_bytes(data: bytes) -> Opened:
    """Read a study's file; of a damaged one, what is whole.

    Raises
    ------
    StudyFileError
        Not a study, from a newer version, wrong in itself, or nothing of it is whole: in one
        sentence.
    """
    return study_from_contents(unpack_what_is_whole(data))


def study_to_contents(study: Study, pictures: Mapping[str, bytes]) -> Contents:
    """The members of the study's file; as `study_to_bytes`."""
    members: dict[str, bytes] = {}

    def keep(picture: Picture, stem: str) -> schema.Picture1:
        if picture.digest not in pictures:
            raise StudyFileError(
                translate(
                    "study file",
                    "The picture {name} could not be kept, so the study cannot be saved with it; "
                    "open a smaller copy of the picture.",
                ).format(name=picture.name)
            )
        data = pictures[picture.digest]
        member = stem + suffix_of(data)
        members[member] = data
        return schema.Picture1(picture.name, member)

    kept = schema.Study1(
        format="gradewash study",
        version=2 if study.scraps or study.hands or study.wheel else 1,
        title=study.title,
        photo=keep(study.photo, "photo") if study.photo else None,
        bands=_bands_out(study.bands),
        box=box_to_json(study.box),
        mix=_mix_out(study.mix),
        sheets=(
            _sheet_out(study.sheets[0], keep, "sheet1"),
            _sheet_out(study.sheets[1], keep, "sheet2"),
        ),
        worksheet=worksheet_to_schema(study.worksheet),
        scraps=[
            _scrap_out(scrap, keep, f"scrap{number}")
            for number, scrap in enumerate(study.scraps, 1)
        ]
        or msgspec.UNSET,
        hands=_hands_out(study.hands),
        wheel=UNSET if study.wheel is None else _wheel_out(study.wheel),
    )
    json = msgspec.json.format(msgspec.json.encode(kept), indent=1)
    return Contents(json, MappingProxyType(members))


def study_from_contents(contents: Contents) -> Opened:
    """The study of a file's members; as `study_from_bytes`."""
    reader = StudyReader(contents)
    study = reader.read()
    return Opened(study, MappingProxyType(reader.pictures), tuple(reader.gone))


def _bands_out(bands: Bands | None) -> schema.Bands1 | None:
    return None if bands is None else schema.Bands1(bands.horizon, list(bands.lines))


def _mix_out(mix: MixOptions) -> schema.Mix1:
    paper = mix.sheet
    return schema.Mix1(
        paper=schema.Paper1(paper.name, paper.width_mm, paper.height_mm, paper.border_mm),
        own_ml_per_1000_cm2=mix.own_ml_per_1000_cm2,
        drying_steps=mix.drying_steps,
        allow_white=mix.allow_white,
        forbidden=list(mix.forbidden),
        choices=[
            schema.Choice1(
                letter,
                list(choice.pinned),
                list(choice.forbidden),
                None if choice.parts is None else list(choice.parts),
                choice.load_ml,
            )
            for letter, choice in mix.choices
        ],
    )


def _hands_out(hands: tuple[Hands, ...]) -> list[schema.Hands1] | UnsetType:
    if not hands:
        return UNSET
    return [schema.Hands1(ascii_uppercase[h.band], h.question, h.choice, h.count) for h in hands]


def _wheel_out(wheel: WheelPlace) -> schema.Wheel1:
    return schema.Wheel1(wheel.x, wheel.y, wheel.size)


def _sheet_out(
    sheet: SheetEntry | None, keep: Callable[[Picture, str], schema.Picture1], stem: str
) -> schema.Sheet1 | None:
    if sheet is None:
        return None
    options = sheet.options
    return schema.Sheet1(
        keep(sheet.picture, stem),
        None if options.corners is None else list(options.corners),
        options.turned,
        options.scan,
        options.aspect,
    )


def _scrap_out(
    scrap: ScrapEntry, keep: Callable[[Picture, str], schema.Picture1], stem: str
) -> schema.Scrap2:
    return schema.Scrap2(
        keep(scrap.picture, stem),
        scrap.letter,
        scrap.Lab,
        list(scrap.parts),
        scrap.load_ml,
        list(scrap.added),
        None if scrap.advised is None else list(scrap.advised),
    )


def worksheet_to_schema(worksheet: Worksheet) -> schema.Worksheet1:
    """A worksheet as the file keeps it."""
    first, second = worksheet.pages
    return schema.Worksheet1(
        worksheet.student_code,
        worksheet.class_code,
        (_page_out(first), _page_out(second)),
        worksheet.remark,
    )


def _page_out(page: SheetPage) -> schema.Page1:
    own = page.scores
    return schema.Page1(
        own.hue,
        own.value,
        own.intensity,
        own.placement,
        page.answer,
        page.change_first,
        page.date,
    )
