"""The study in `study.json`, part by part: of a damaged file, every part that is whole."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, TypeVar, get_type_hints

import msgspec

from core.errors import BoxError, StudyFileError
from core.i18n import translate
from core.paint.box.box import DEFAULT_BOX
from core.paint.box.box_file import box_from_json
from core.paint.options import MixOptions
from core.pictures import Picture, digest_of
from core.scrap.kept import MOST_SCRAPS, ScrapEntry
from core.study import SheetEntry, Study
from core.study_file import schema
from core.study_file.contents import Contents
from core.study_file.from_schema import (
    bands_from,
    hands_from,
    mix_from,
    options_from,
    page_from,
    scrap_from,
    wheel_from,
    worksheet_from_schema,
)
from core.study_file.gone import (
    hands_words,
    lines_words,
    mixes_words,
    page_words,
    paints_words,
    photo_words,
    scraps_words,
    sheet_words,
    sheets_words,
    wheel_words,
    wrong,
)
from core.worksheet.worksheet import Worksheet

T = TypeVar("T")
Part = msgspec.Raw
_ERRORS = (msgspec.MsgspecError, UnicodeError, RecursionError, ValueError, BoxError)
_NOTHING = msgspec.Raw(b"null")
_NONE = msgspec.Raw(b"[]")


class StudyReader:
    """Reads one study.

    Parameters
    ----------
    contents : Contents
        Where it is damaged, a part that makes no sense is left out; else the study is refused.

    Attributes
    ----------
    gone : list of str
        What was left out, as words to list.
    pictures : dict of str to bytes
        The pictures the study speaks of, by digest.
    """

    def __init__(self, contents: Contents) -> None:
        self._contents = contents
        self.gone: list[str] = []
        self.pictures: dict[str, bytes] = {}

    def read(self) -> Study:
        """The study.

        Raises
        ------
        StudyFileError
            Not a study, from a newer version, or (of a file that is not damaged) wrong in a part.
        """
        parts = self._parts()
        study = self._from_pictures() if parts is None else self._from_parts(parts)
        if self._contents.damaged and not self.gone:
            self.gone.append(translate("study file", "perhaps a word or a number"))
        return study

    def _from_parts(self, parts: Mapping[str, Part]) -> Study:
        worksheet = self._worksheet(parts.get("worksheet"))
        sheets = self._part(
            parts.get("sheets"), tuple[Part, Part], sheets_words(), (_NOTHING, _NOTHING)
        )
        photo = self._part(parts.get("photo"), schema.Picture1 | None, photo_words(), None)
        bands = self._part(parts.get("bands"), schema.Bands1 | None, lines_words(), None)
        return Study(
            title=self._part(parts.get("title"), str, translate("study file", "the title"), ""),
            photo=None if photo is None else self._picture(photo, photo_words()),
            bands=self._made(bands, bands_from, lines_words(), None),
            box=self._made(
                self._part(parts.get("box"), dict[str, Any], paints_words(), None),
                box_from_json,
                paints_words(),
                DEFAULT_BOX,
            ),
            mix=self._made(
                self._part(parts.get("mix"), schema.Mix1, mixes_words(), None),
                mix_from,
                mixes_words(),
                MixOptions(),
            ),
            sheets=(self._sheet(sheets[0], 1), self._sheet(sheets[1], 2)),
            worksheet=worksheet,
            scraps=self._scraps(parts.get("scraps", _NONE)),
            hands=hands_from(
                self._later(parts.get("hands"), list[schema.Hands1], hands_words(), [])
            ),
            wheel=wheel_from(
                self._later(parts.get("wheel"), schema.Wheel1 | None, wheel_words(), None)
            ),
        )

    def _parts(self) -> Mapping[str, Part] | None:
        """The parts of the text; None where nothing of it came through.

        Raises
        ------
        StudyFileError
            Not a study, a newer one, or one with parts that no study has.
        """
        try:
            parts = msgspec.json.decode(self._contents.json, type=dict[str, Part])
            form = msgspec.json.decode(parts.get("format", b"null"))
            version = msgspec.json.decode(parts.get("version", b"null"))
        except _ERRORS as error:
            if self._contents.damaged:
                return None
            raise wrong(translate("study file", "its beginning")) from error
        if self._contents.damaged:
            return parts
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
            msgspec.json.decode(self._contents.json, type=schema.Study1)
        except _ERRORS as error:
            raise wrong(_culprit(parts)) from error
        return parts

    def _from_pictures(self) -> Study:
        """Where the text is lost: the pictures, by the names they have in the file."""
        self.gone.append(translate("study file", "the lines, the paints and all that was written"))
        found: dict[str, Picture] = {}
        for member, data in self._contents.pictures.items():
            digest = digest_of(data)
            self.pictures[digest] = data
            found[member.partition(".")[0]] = Picture(member, digest)
        first, second = (
            SheetEntry(found[stem]) if stem in found else None for stem in ("sheet1", "sheet2")
        )
        return Study(photo=found.get("photo"), sheets=(first, second))

    def _part(self, raw: Part | None, kind: Any, words: str, default: T) -> T:
        """A part as the schema has it; the default where it is not there."""
        if raw is None:
            if self._contents.damaged:
                self._note(words)
            return default
        try:
            decoded: T = msgspec.json.decode(raw, type=kind)
        except _ERRORS as error:
            return self._left_out(words, error, default)
        return decoded

    def _later(self, raw: Part | None, kind: Any, words: str, default: T) -> T:
        """A part that came later: where it is not there, there was nothing of it."""
        return default if raw is None else self._part(raw, kind, words, default)

    def _made(self, part: Any, make: Callable[[Any], T], words: str, default: T) -> T:
        """What the program makes of a part."""
        if part is None:
            return default
        try:
            return make(part)
        except _ERRORS as error:
            return self._left_out(words, error, default)

    def _left_out(self, words: str, error: Exception, default: T) -> T:
        if not self._contents.damaged:
            raise wrong(words) from error
        self._note(words)
        return default

    def _note(self, words: str) -> None:
        if words not in self.gone:
            self.gone.append(words)

    def _picture(self, picture: schema.Picture1, words: str) -> Picture | None:
        """A picture whose bytes are there; one that is missing never costs the rest."""
        data = self._contents.pictures.get(picture.member)
        if data is None:
            self._note(words)
            return None
        digest = digest_of(data)
        self.pictures[digest] = data
        return Picture(picture.name, digest)

    def _sheet(self, raw: Part, number: int) -> SheetEntry | None:
        words = sheet_words(number)
        sheet = self._part(raw, schema.Sheet1 | None, words, None)
        if sheet is None:
            return None
        picture = self._picture(sheet.picture, words)
        return None if picture is None else SheetEntry(picture, options_from(sheet))

    def _scraps(self, raw: Part) -> tuple[ScrapEntry, ...]:
        """The scraps that are whole; one whose picture is missing is left out, and told."""
        words = scraps_words()
        each: list[Part] = self._part(raw, list[Part], words, [])
        found: list[ScrapEntry] = []
        for one in each[:MOST_SCRAPS]:
            scrap = self._part(one, schema.Scrap2 | None, words, None)
            picture = None if scrap is None else self._picture(scrap.picture, words)
            if scrap is not None and picture is not None:
                found.append(scrap_from(scrap, picture))
        return tuple(found)

    def _worksheet(self, raw: Part | None) -> Worksheet:
        words = translate("study file", "the worksheet")
        if not self._contents.damaged:
            kept = self._part(raw, schema.Worksheet1, words, schema.Worksheet1())
            return worksheet_from_schema(kept)
        parts: dict[str, Part] = self._part(raw, dict[str, Part], words, {})

        def text(name: str, what: str) -> str:
            return self._part(parts[name], str, what, "") if name in parts else ""

        pages = self._part(
            parts.get("pages", msgspec.Raw(b"[{},{}]")), tuple[Part, Part], words, (None, None)
        )
        first, second = (
            page_from(
                schema.Page1()
                if page is None
                else self._part(page, schema.Page1, page_words(number), schema.Page1())
            )
            for number, page in enumerate(pages, 1)
        )
        return Worksheet(
            text("student_code", translate("study file", "the student's code")),
            text("class_code", translate("study file", "the class's code")),
            (first, second),
            text("remark", translate("study file", "the remark")),
        )


def _culprit(parts: Mapping[str, Part]) -> str:
    """Which part of a study is not as the schema has it, in words."""
    words = {
        "title": translate("study file", "the title"),
        "photo": photo_words(),
        "bands": lines_words(),
        "box": paints_words(),
        "mix": mixes_words(),
        "sheets": sheets_words(),
        "worksheet": translate("study file", "the worksheet"),
        "scraps": scraps_words(),
        "hands": hands_words(),
        "wheel": wheel_words(),
    }
    kinds = get_type_hints(schema.Study1, include_extras=True)
    for name, said in words.items():
        try:
            if name in parts:
                msgspec.json.decode(parts[name], type=kinds[name])
        except _ERRORS:
            return said
    return translate("study file", "its beginning")
