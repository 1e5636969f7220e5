"""What `study.json` holds, versions 1 and 2: the file's own types, apart from the program's.

They change only together with `VERSION`, so that a file written today opens in ten years; the
program's types may change as they like. A part that came later is left out of the file where there
is nothing of it. Fields the version does not know mean a damaged or
foreign file. `json_schema()` gives the same as a JSON Schema.
"""

from __future__ import annotations

from typing import Annotated, Any, Literal

from msgspec import UNSET, Meta, Struct, UnsetType

VERSION = 2
"""Version 2 may hold scraps, hands counted in class, and the wheel's place over the photo; a study
without any of them is written as version 1, as it always was."""


FORMAT = "gradewash study"

Fraction = Annotated[float, Meta(ge=0, le=1)]
Near = Annotated[float, Meta(ge=-2, le=3)]
"""A corner may be outside the photo, within reason."""

Key = Annotated[str, Meta(max_length=120)]
Letter = Annotated[str, Meta(pattern="^[A-Z]$")]
Score = Annotated[int, Meta(ge=1, le=10)]
Part = Annotated[int, Meta(ge=0, le=999)]
Positive = Annotated[float, Meta(gt=0, le=1e5)]
LabPart = Annotated[float, Meta(ge=-300, le=300)]


class Picture1(Struct, frozen=True, forbid_unknown_fields=True):
    """A picture: `member` is its name in the file's `pictures` folder."""

    name: str
    member: Key


class Bands1(Struct, frozen=True, forbid_unknown_fields=True):
    """Fractions of the photo's height, lines from the top down."""

    horizon: Fraction
    lines: Annotated[list[Fraction], Meta(max_length=25)]


class Choice1(Struct, frozen=True, forbid_unknown_fields=True):
    """What was asked for one band's mix."""

    letter: Letter
    pinned: Annotated[list[Key], Meta(max_length=40)] = []
    forbidden: Annotated[list[Key], Meta(max_length=40)] = []
    parts: Annotated[list[tuple[Key, Part]], Meta(max_length=40)] | None = None
    load_ml: Positive | None = None


class Paper1(Struct, frozen=True, forbid_unknown_fields=True):
    """The sheet of paper, in millimetres."""

    name: str
    width_mm: Positive
    height_mm: Positive
    border_mm: Annotated[float, Meta(ge=0, le=1e4)]


class Mix1(Struct, frozen=True, forbid_unknown_fields=True):
    """What was asked for the whole plan."""

    paper: Paper1
    own_ml_per_1000_cm2: Positive | None = None
    drying_steps: Annotated[float, Meta(ge=0, le=5)] = 0.25
    allow_white: bool = False
    forbidden: Annotated[list[Key], Meta(max_length=40)] = []
    choices: Annotated[list[Choice1], Meta(max_length=26)] = []


class Sheet1(Struct, frozen=True, forbid_unknown_fields=True):
    """A practice sheet: four corners as x, y in the photo, clockwise from the top left."""

    picture: Picture1
    corners: Annotated[list[tuple[Near, Near]], Meta(min_length=4, max_length=4)] | None = None
    turned: Annotated[int, Meta(ge=0, le=3)] = 0
    scan: bool = False
    aspect: Positive | None = None


class Page1(Struct, frozen=True, forbid_unknown_fields=True):
    """The worksheet's half for one sheet."""

    hue: Score | None = None
    value: Score | None = None
    intensity: Score | None = None
    placement: Score | None = None
    answer: str = ""
    change_first: Literal["hue", "value", "intensity", "placement", "edges", "blooms"] | None = None
    date: Annotated[str, Meta(pattern=r"^\d{4}-\d{2}-\d{2}$")] | None = None


class Worksheet1(Struct, frozen=True, forbid_unknown_fields=True):
    """Both halves, the codes, the teacher's remark."""

    student_code: str = ""
    class_code: str = ""
    pages: tuple[Page1, Page1] = (Page1(), Page1())
    remark: str = ""


class Scrap2(Struct, frozen=True, forbid_unknown_fields=True):
    """A dried stroke of a band's mix: its colour, the mix then, what was added and advised."""

    picture: Picture1
    letter: Letter
    Lab: tuple[LabPart, LabPart, LabPart]
    parts: Annotated[list[tuple[Key, Part]], Meta(min_length=1, max_length=40)]
    load_ml: Positive
    added: Annotated[list[tuple[Key, Positive]], Meta(max_length=40)] = []
    advised: Annotated[list[tuple[Key, Positive]], Meta(max_length=40)] | None = []


class Hands1(Struct, frozen=True, forbid_unknown_fields=True):
    """How many hands went up for one guess at one band."""

    letter: Letter
    question: Literal["hue", "class", "value", "intensity", "second", "mix"]
    choice: Key
    count: Annotated[int, Meta(ge=1, le=99)]


class Wheel1(Struct, frozen=True, forbid_unknown_fields=True):
    """The wheel over the photo: its middle by width and height, its diameter by the height."""

    x: Near
    y: Near
    size: Annotated[float, Meta(gt=0, le=10)]


class Study1(Struct, frozen=True, forbid_unknown_fields=True):
    """The whole of `study.json`. The box is kept in the form of a box file."""

    format: Literal["gradewash study"]
    version: Literal[1, 2]
    title: str
    box: dict[str, Any]
    mix: Mix1
    photo: Picture1 | None = None
    bands: Bands1 | None = None
    sheets: tuple[Sheet1 | None, Sheet1 | None] = (None, None)
    worksheet: Worksheet1 = Worksheet1()
    scraps: Annotated[list[Scrap2], Meta(max_length=40)] | UnsetType = UNSET
    hands: Annotated[list[Hands1], Meta(max_length=2000)] | UnsetType = UNSET
    wheel: Wheel1 | UnsetType = UNSET
