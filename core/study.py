"""The study: everything about one sky exercise, as one frozen value.

Edits are pure functions that return a new study, so every rule can be tested without a window.
Pixels stay outside: a study names its pictures, whoever holds them keeps the bytes.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import PurePath

from core.bands import lines
from core.bands.lines import Bands
from core.lesson.lesson import Hands
from core.paint.box.box import DEFAULT_BOX, Box
from core.paint.options import MixOptions
from core.pictures import Picture
from core.scrap.kept import ScrapEntry
from core.sheet.options import SheetOptions
from core.worksheet.worksheet import Worksheet

MOST_TITLE = 120
"""Letters of a title: what two lines of a card hold."""


@dataclass(frozen=True)
class SheetEntry:
    """A practice sheet: its picture, and how it is to be looked at."""

    picture: Picture
    options: SheetOptions = SheetOptions()


@dataclass(frozen=True)
class WheelPlace:
    """Where the wheel lies over the photo, as the teacher put it.

    Attributes
    ----------
    x, y : float
        Its middle, fractions of the photo's width and height.
    size : float
        Its diameter by the photo's height.
    """

    x: float
    y: float
    size: float


def bounded_wheel(place: WheelPlace) -> WheelPlace:
    """A place that a study can keep: near the photo, and of a size that can be."""
    return WheelPlace(
        min(max(place.x, -2.0), 3.0), min(max(place.y, -2.0), 3.0), min(max(place.size, 0.01), 10.0)
    )


@dataclass(frozen=True)
class Study:
    """One sky exercise.

    Attributes
    ----------
    title : str
        What the teacher calls it; from the photo's file name at first.
    photo : Picture or None
        The reference photo, None before one is chosen.
    bands : Bands or None
        Lines and horizon, as fractions of the photo's height; None until proposed.
    box : Box
        The paints the class has.
    mix : MixOptions
        What was asked of the plan.
    sheets : tuple of two, SheetEntry or None
        The practice sheets, the first and the second.
    worksheet : Worksheet
        What the student says of them, and the teacher's remark.
    scraps : tuple of ScrapEntry
        Dried strokes of the mixes, in the order they were kept.
    hands : tuple of Hands
        How many hands went up in class for each guess.
    wheel : WheelPlace or None
        Where the wheel lies over the photo; None where nobody has moved it.
    """

    title: str = ""
    photo: Picture | None = None
    bands: Bands | None = None
    box: Box = DEFAULT_BOX
    mix: MixOptions = MixOptions()
    sheets: tuple[SheetEntry | None, SheetEntry | None] = (None, None)
    worksheet: Worksheet = Worksheet()
    scraps: tuple[ScrapEntry, ...] = ()
    hands: tuple[Hands, ...] = ()
    wheel: WheelPlace | None = None

    @property
    def photo_name(self) -> str | None:
        """File name of the reference photo."""
        return self.photo.name if self.photo else None


def digests_of(study: Study) -> frozenset[str]:
    """What the bytes of the study's pictures are known by, where they are kept."""
    pictures = [study.photo, *(sheet.picture for sheet in study.sheets if sheet is not None)]
    pictures += [scrap.picture for scrap in study.scraps]
    return frozenset(picture.digest for picture in pictures if picture and picture.digest)


def study_of(photo: Picture, bands: Bands | None = None) -> Study:
    """A fresh study of one photo.

    Parameters
    ----------
    photo : Picture
        The title is made from its name; see `core.pictures.kept_name`.
    bands : Bands, optional
        The proposed lines, once there are any.

    Examples
    --------
    >>> study_of(Picture("dusk_over_the_lake.jpg")).title
    'dusk over the lake'
    """
    stem = PurePath(photo.name).stem
    title = " ".join(stem.replace("_", " ").split()) or photo.name
    return with_title(Study(photo=photo, bands=bands), title)


def with_title(study: Study, title: str) -> Study:
    """The study under another title, cut where it is too long; blanks alone change nothing."""
    title = " ".join(title.split())[:MOST_TITLE].rstrip()
    return replace(study, title=title) if title else study


def without_work(study: Study) -> Study:
    """What a new lesson begins with: photo, lines, box and mixes; no sheet, no word of anybody.

    Examples
    --------
    >>> done = Study(title="dusk", worksheet=Worksheet("K7", "7b", remark="Fine greys."))
    >>> without_work(done) == Study(title="dusk")
    True
    """
    return replace(study, sheets=(None, None), worksheet=Worksheet(), hands=(), scraps=())


def with_bands(study: Study, bands: Bands) -> Study:
    """The study with other lines; hands were counted for bands as they were, if as many."""
    same = study.bands is None or study.bands.count == bands.count
    return replace(study, bands=bands, hands=study.hands if same else ())


def with_sheet(study: Study, index: int, sheet: SheetEntry | None) -> Study:
    """The study with sheet `index`, 0 or 1, replaced or taken out."""
    first, second = study.sheets
    return replace(study, sheets=(sheet, second) if index == 0 else (first, sheet))


def with_worksheet(study: Study, worksheet: Worksheet) -> Study:
    """The study with another worksheet."""
    return replace(study, worksheet=worksheet)


def with_scraps(study: Study, scraps: tuple[ScrapEntry, ...]) -> Study:
    """The study with other scraps."""
    return replace(study, scraps=scraps)


def with_hands(study: Study, hands: tuple[Hands, ...]) -> Study:
    """The study with other hands counted."""
    return replace(study, hands=hands)


def with_wheel(study: Study, wheel: WheelPlace | None) -> Study:
    """The study with the wheel elsewhere over its photo."""
    return replace(study, wheel=wheel)


def move_line(study: Study, index: int, y: float) -> Study:
    """Line `index` moved to `y`, a fraction of the photo's height, as far as it may go."""
    return with_bands(study, lines.move_line(_bands(study), index, y))


def move_horizon(study: Study, y: float) -> Study:
    """The end of the sky moved to `y`, a fraction of the photo's height, as far as it may go."""
    return with_bands(study, lines.move_horizon(_bands(study), y))


def split_band(study: Study, index: int) -> Study:
    """Band `index` cut in the middle.

    Raises
    ------
    UsageError
        The band is too thin, or every letter is taken.
    """
    after = with_bands(study, lines.split_band(_bands(study), index))
    return _with_wishes_moved(study, after, index)


def add_line(study: Study, y: float) -> Study:
    """A new line at `y`.

    Raises
    ------
    UsageError
        `y` is not in the sky, the band there is too thin, or every letter is taken.
    """
    before = _bands(study)
    after = with_bands(study, lines.add_line(before, y))
    return _with_wishes_moved(study, after, before.band_at(y) or 0)


def remove_line(study: Study, index: int) -> Study:
    """Without line `index`: the bands above and below it become one."""
    after = with_bands(study, lines.remove_line(_bands(study), index))
    return _with_wishes_moved(study, after, index)


def _with_wishes_moved(before: Study, after: Study, index: int) -> Study:
    """What was asked for the bands below band `index`, and their scraps, go with them to their
    new letters.

    Of two bands that become one, the upper one's wishes stay. Hands were counted for a band as it
    was: they go with the bands that stay whole.
    """
    old, new = _bands(before).letters, _bands(after).letters
    grown = len(new) - len(old)
    moved = []
    for letter, choice in before.mix.choices:
        place = old.index(letter) if letter in old else len(old)
        if place > index:
            if place == index + 1 and grown < 0:
                continue  # it became part of the band above
            place += grown
        if place < len(new):
            moved.append((new[place], choice))
    scraps = []
    for scrap in before.scraps:
        place = old.index(scrap.letter) if scrap.letter in old else len(old)
        if place > index:
            place += grown
        if place < len(new):
            scraps.append(replace(scrap, letter=new[place]))
    return replace(
        after,
        mix=replace(after.mix, choices=tuple(moved)),
        scraps=tuple(scraps),
        hands=_moved_hands(before.hands, index, grown),
    )


def _moved_hands(hands: tuple[Hands, ...], index: int, grown: int) -> tuple[Hands, ...]:
    """Hands of whole bands, under their new numbers: `index` was cut, or joined the next."""
    changed = (index,) if grown > 0 else (index, index + 1)
    return tuple(
        replace(one, band=one.band + grown) if one.band > index else one
        for one in hands
        if one.band not in changed
    )


def _bands(study: Study) -> Bands:
    if study.bands is None:
        raise ValueError("the study has no bands yet")
    return study.bands
