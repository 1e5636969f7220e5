"""A study to the bytes of its file, and back."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import PurePath
from types import MappingProxyType

import msgspec

from core.bands.lines import Bands
from core.errors import BoxError, StudyFileError
from core.i18n import translate
from core.paint.box.box_file import box_from_json, box_to_json
from core.paint.options import BandChoice, MixOptions
from core.paint.wash.amounts import PaintSheet
from core.pictures import Picture, digest_of
from core.sheet.result import Corners, SheetOptions
from core.study import SheetEntry, Study
from core.study_file import schema
from core.study_file.container import pack, unpack
from core.study_file.contents import Contents, picture_name_allowed
from core.worksheet.worksheet import OwnScores, SheetPage, Worksheet


@dataclass(frozen=True)
class Opened:
    """A study and the bytes of its pictures by digest."""

    study: Study
    pictures: Mapping[str, bytes]


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
    """Read a study's file.

    Raises
    ------
    StudyFileError
        Not a study, damaged, from a newer version, or with a picture missing: in one sentence.
    """
    return study_from_contents(unpack(data))


def study_to_contents(study: Study, pictures: Mapping[str, bytes]) -> Contents:
    """The members of the study's file; as `study_to_bytes`."""
    members: dict[str, bytes] = {}

    def keep(picture: Picture, stem: str) -> schema.Picture1:
        suffix = PurePath(picture.name).suffix.lower()
        member = stem + (suffix if picture_name_allowed(stem + suffix) else "")
        if picture.digest not in pictures:
            raise StudyFileError(
                translate(
                    "study file",
                    "The picture {name} could not be kept, so the study cannot be saved with it; "
                    "open a smaller copy of the picture.",
                ).format(name=picture.name)
            )
        members[member] = pictures[picture.digest]
        return schema.Picture1(picture.name, member)

    kept = schema.Study1(
        format="gradewash study",
        version=1,
        title=study.title,
        photo=keep(study.photo, "photo") if study.photo else None,
        bands=_bands_out(study.bands),
        box=box_to_json(study.box),
        mix=_mix_out(study.mix),
        sheets=(
            _sheet_out(study.sheets[0], keep, "sheet1"),
            _sheet_out(study.sheets[1], keep, "sheet2"),
        ),
        worksheet=_worksheet_out(study.worksheet),
    )
    json = msgspec.json.format(msgspec.json.encode(kept), indent=1)
    return Contents(json, MappingProxyType(members))


def study_from_contents(contents: Contents) -> Opened:
    """The study of a file's members; as `study_from_bytes`."""
    kept = _parse(contents.json)
    pictures: dict[str, bytes] = {}

    def picture_of(picture: schema.Picture1) -> Picture:
        data = contents.pictures.get(picture.member)
        if data is None:
            raise StudyFileError(
                translate(
                    "study file",
                    "The picture {name} is missing from this study file; "
                    "open an older copy or a backup of it.",
                ).format(name=picture.name)
            )
        digest = digest_of(data)
        pictures[digest] = data
        return Picture(picture.name, digest)

    try:
        study = Study(
            title=kept.title,
            photo=picture_of(kept.photo) if kept.photo else None,
            bands=Bands(kept.bands.horizon, tuple(kept.bands.lines)) if kept.bands else None,
            box=box_from_json(kept.box),
            mix=_mix_in(kept.mix),
            sheets=(_sheet_in(kept.sheets[0], picture_of), _sheet_in(kept.sheets[1], picture_of)),
            worksheet=_worksheet_in(kept.worksheet),
        )
    except (ValueError, BoxError) as error:
        raise _wrong(str(error)) from error
    return Opened(study, MappingProxyType(pictures))


def _parse(json: bytes) -> schema.Study1:
    try:
        about = msgspec.json.decode(json, type=dict[str, msgspec.Raw])
        form = msgspec.json.decode(about.get("format", b"null"))
        version = msgspec.json.decode(about.get("version", b"null"))
    except (msgspec.MsgspecError, UnicodeDecodeError, RecursionError) as error:
        raise _wrong(str(error)) from error
    if form != schema.FORMAT:
        raise StudyFileError(
            translate(
                "study file",
                "This is not a Gradewash study; choose a file whose name ends in .gradewash.",
            )
        )
    if isinstance(version, int) and version > schema.VERSION:
        raise StudyFileError(
            translate(
                "study file",
                "This study was made by a newer Gradewash; update this one to open it.",
            )
        )
    try:
        return msgspec.json.decode(json, type=schema.Study1)
    except (msgspec.MsgspecError, UnicodeDecodeError, RecursionError) as error:
        raise _wrong(str(error)) from error


def _wrong(detail: str) -> StudyFileError:
    return StudyFileError(
        translate(
            "study file",
            "This study file holds something that cannot be right ({detail}); "
            "open an older copy or a backup of it.",
        ).format(detail=detail.rstrip(".")[:160])
    )


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


def _mix_in(mix: schema.Mix1) -> MixOptions:
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


def _sheet_in(
    sheet: schema.Sheet1 | None, picture_of: Callable[[schema.Picture1], Picture]
) -> SheetEntry | None:
    if sheet is None:
        return None
    corners: Corners | None = None
    if sheet.corners is not None:
        first, second, third, fourth = sheet.corners
        corners = (first, second, third, fourth)
    options = SheetOptions(corners, sheet.turned, sheet.scan, sheet.aspect)
    return SheetEntry(picture_of(sheet.picture), options)


def _worksheet_out(worksheet: Worksheet) -> schema.Worksheet1:
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


def _worksheet_in(kept: schema.Worksheet1) -> Worksheet:
    first, second = kept.pages
    return Worksheet(
        kept.student_code, kept.class_code, (_page_in(first), _page_in(second)), kept.remark
    )


def _page_in(page: schema.Page1) -> SheetPage:
    scores = OwnScores(page.hue, page.value, page.intensity, page.placement)
    return SheetPage(scores, page.answer, page.change_first, page.date)
