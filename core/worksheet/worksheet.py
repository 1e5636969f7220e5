"""The worksheet: what the student says of the two sheets, before anything measured is shown.

A student goes by a code, never by a required name. Own scores come first: seeing a measurement
before rating oneself makes the rating worse (Raaijmakers et al. 2019).
"""

from __future__ import annotations

from dataclasses import dataclass, fields, replace

from core.reading.quality import CHANGES, QUALITIES, ChangeFirst, Quality

__all__ = [
    "ASKED",
    "CHANGES",
    "MOST_ANSWER",
    "MOST_CODE",
    "QUALITIES",
    "ChangeFirst",
    "OwnScores",
    "Quality",
    "SheetPage",
    "Worksheet",
    "with_page",
    "with_score",
]

ASKED: tuple[Quality, ...] = ("hue", "value", "intensity")
"""The scores that open the findings; placement may stay empty."""

MOST_ANSWER = 4000
"""Characters of a written answer."""

MOST_CODE = 40


@dataclass(frozen=True)
class OwnScores:
    """The student's own scores, 1 to 10; None where there is none yet."""

    hue: int | None = None
    value: int | None = None
    intensity: int | None = None
    placement: int | None = None

    def __post_init__(self) -> None:
        for field in fields(self):
            score = getattr(self, field.name)
            if score is not None and not 1 <= score <= 10:
                raise ValueError(f"a score is 1 to 10, not {score}")

    def of(self, quality: Quality) -> int | None:
        """The score for one quality."""
        score: int | None = getattr(self, quality)
        return score

    @property
    def missing(self) -> tuple[Quality, ...]:
        """What still has to be scored before the findings open."""
        return tuple(quality for quality in ASKED if self.of(quality) is None)


@dataclass(frozen=True)
class SheetPage:
    """The worksheet's half for one sheet.

    Attributes
    ----------
    scores : OwnScores
    answer : str
        Of sheet 1 "what would you do differently?", of sheet 2 "did the change help?".
    change_first : one of CHANGES, or None
        The one thing to change first, named on sheet 1 and looked for on sheet 2.
    date : str or None
        When it was painted, as "2027-03-04".
    """

    scores: OwnScores = OwnScores()
    answer: str = ""
    change_first: ChangeFirst | None = None
    date: str | None = None


@dataclass(frozen=True)
class Worksheet:
    """Both halves, whose they are, and the teacher's remark.

    Attributes
    ----------
    student_code, class_code : str
        Codes the teacher gives; the key to names stays with the teacher.
    pages : two SheetPage
    remark : str
        The teacher's.
    """

    student_code: str = ""
    class_code: str = ""
    pages: tuple[SheetPage, SheetPage] = (SheetPage(), SheetPage())
    remark: str = ""


def with_page(worksheet: Worksheet, index: int, page: SheetPage) -> Worksheet:
    """The worksheet with another half, 0 or 1."""
    first, second = worksheet.pages
    return replace(worksheet, pages=(page, second) if index == 0 else (first, page))


def with_score(worksheet: Worksheet, index: int, quality: Quality, score: int | None) -> Worksheet:
    """The worksheet with one score of sheet `index` set, or taken back.

    Raises
    ------
    ValueError
        A score outside 1 to 10.
    """
    page = worksheet.pages[index]
    scores = replace(page.scores, **{quality: score})
    return with_page(worksheet, index, replace(page, scores=scores))
