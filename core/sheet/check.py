"""Checking a sheet: from a photo or scan of it to findings a teacher can read aloud."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.bands.careful import BandReader
from core.bands.lines import MIN_BAND, Bands
from core.photo import Photo
from core.progress import Progress, ShouldStop, step
from core.reading.reading import BandReading
from core.sheet.find.corners import SURE, FoundCorners, find_corners
from core.sheet.find.sight import Sight
from core.sheet.find.surroundings import other_sheet
from core.sheet.findings.compare import compare_bands, more_lenient
from core.sheet.findings.faults import blooms_in_bands, edges_in_bands
from core.sheet.findings.findings import in_plan_terms
from core.sheet.findings.notices import Scene, corner_notices, orientation_notices
from core.sheet.findings.scores import score_sheet
from core.sheet.findings.strength import reading_at, strength_of
from core.sheet.look import Glances, look, of_one_colour, reaches_edge, without_border
from core.sheet.match.foreground import compared, profiles_of, sides_seen
from core.sheet.match.likeness import stronger
from core.sheet.match.lines import COMMENTED, Line, match_lines
from core.sheet.match.orientation import judge_orientation
from core.sheet.match.reference import Reference
from core.sheet.match.washes import washes_of
from core.sheet.painted.blooms import find_blooms
from core.sheet.painted.density import density_of
from core.sheet.painted.pale_corners import find_pale_corners
from core.sheet.result import BandCheck, LineCheck, SheetCheck, SheetOptions, Washes

Bools = NDArray[np.bool_]
Checks = tuple[BandCheck, ...]

COMMENTED_PCT = 100 * COMMENTED
"""A line's displacement, in percent of the height, from which it is spoken of."""

MELTED = 0.125
"""The same for washes that melt into each other, as a share of the width they melt over: on
simulated copies, lines that soft come out a few percent off their place."""

MISREAD = 0.01
"""A line misplaced by more, as a share of the height, can change what its bands are read as."""

_RAGGED = 0.012  # of the height: what the tape's edge may leave pale or smeared


def check_sheet(
    photo: Photo,
    reference: Reference,
    options: SheetOptions | None = None,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> SheetCheck:
    """Check a painted sheet against its reference sky.

    Parameters
    ----------
    photo : Photo
        A photo or scan of the sheet, from `core.photo.open_photo`.
    reference : Reference
        From `core.sheet.make_reference`.
    options : SheetOptions, optional
        Corners and turn set by hand, a flat scan, the shape expected.
    progress : callable, optional
        Told the share done, 0..1.
    should_stop : callable, optional
        Asked often; True stops the work.

    Raises
    ------
    SheetError
        Corners set by hand that make no rectangle.
    Cancelled
        `should_stop` answered True.
    """
    options = options or SheetOptions()
    step(0.0, progress, should_stop)
    sight = Sight.of(photo)
    found = _corners(sight, options, progress, should_stop)
    seen = look(sight, found, options, should_stop)
    glances = Glances(sight, options)
    scene: Scene | None = None
    if options.corners is None and (found.confidence < SURE or reaches_edge(seen)):
        found, seen, scene = without_border(glances, reference, found, seen, should_stop)
    elif options.corners is None and other_sheet(sight, found.corners, should_stop):
        scene = "several"
    washes: Washes | None = None
    if options.corners is None and scene is None and found.confidence < SURE:
        found, seen, scene, washes = of_one_colour(glances, found, seen, should_stop)
        if washes is not None and washes.kind == "one" and not reference.bands.lines:
            washes = Washes()
    step(0.55, progress, should_stop)
    W = seen.W
    step(0.6, progress, should_stop)

    def counts(bands: Bands) -> Bools | None:
        return compared(reference.seen, reference.bands, bands, W.shape[:2])

    in_place = counts(reference.bands)
    profile, *others = profiles_of(reference.profile, seen.profile, W, in_place)
    orientation = judge_orientation(reference, W, profile, seen.light.sides_compared, in_place)
    step(0.65, progress, should_stop)
    white = seen.light.residual is not None and seen.corrected
    washes = washes or washes_of(
        reference.profile, reference.bands.lines, profile, white, orientation.strength_as_seen
    )
    lines = match_lines(
        stronger(reference.profile, orientation.strength), reference.bands.lines, profile, *others
    )
    bands = _sheet_bands([line.at for line in lines])
    step(0.75, progress, should_stop)

    everywhere = None if in_place is not None else _reader(seen.picture, photo.name)

    def read(bands: Bands) -> tuple[BandReading, ...]:
        where = counts(bands)
        reader = everywhere or _reader(seen.picture, photo.name, where)
        return tuple(sides_seen(reading, where) for reading in reader.read(bands))

    def compare(found: tuple[BandReading, ...], strength: float, *, beyond: bool = False) -> Checks:
        wanted = reference.readings
        if beyond:
            wanted = tuple(reading_at(reading, strength) for reading in wanted)
        return compare_bands(
            wanted,
            found,
            scan=options.scan,
            corrected=seen.corrected,
            sides=seen.light.sides_compared and not orientation.mirrored,
            strength=strength if not beyond else 1.0,
        )

    readings = read(bands)
    strength = strength_of(reference.readings, readings)
    share = strength.share if strength.told else 1.0
    checks = compare(readings, share)
    line_checks = tuple(
        _line_check(letter, line) for letter, line in zip(bands.letters, lines, strict=False)
    )
    if any(map(_in_doubt, line_checks)):
        step(0.78, progress, should_stop)
        checks = more_lenient(checks, compare(read(_doubted_bands(line_checks)), share))
    beyond = compare(readings, share, beyond=True) if strength.told else ()
    step(0.8, progress, should_stop)
    even_light = not any(notice.key == "shadow" for notice in seen.light.notices)
    where = counts(bands)
    hard = edges_in_bands(
        W, bands, reference, where, even_light=even_light, strength=orientation.strength
    )
    step(0.9, progress, should_stop)
    density = density_of(seen.lit.painted)
    spots = find_blooms(density)
    blooms = blooms_in_bands(spots, density, bands, reference, where, orientation.strength)
    pale = find_pale_corners(density, reference.corner_shares, where) if even_light else ()
    scores = score_sheet(checks, line_checks)
    better = (options.turned + orientation.turn) % 4 if orientation.turn else None
    notices = (
        *corner_notices(found, options, seen.flat.aspect, scene, washes),
        *orientation_notices(orientation, washes),
        *seen.light.notices,
    )
    step(1.0, progress, should_stop)
    check = SheetCheck(
        name=photo.name,
        picture=seen.picture,
        corners=found.corners,
        corner_confidence=found.confidence,
        turned=options.turned,
        better_turn=better,
        light=seen.light,
        bands=bands,
        lines=line_checks,
        band_checks=checks,
        hard_edges=hard,
        blooms=blooms,
        pale_corners=pale,
        scores=scores,
        findings=(),
        notices=notices,
        scan=options.scan,
        strength=strength,
        beyond=beyond,
        washes=washes,
        provisional=options.corners is None and found.confidence < SURE,
    )
    return in_plan_terms(check, None)


def _corners(
    sight: Sight,
    options: SheetOptions,
    progress: Progress | None,
    should_stop: ShouldStop | None,
) -> FoundCorners:
    if options.corners is not None:
        return FoundCorners(options.corners, 1.0)

    def share(done: float) -> None:
        step(0.4 * done, progress, should_stop)

    return find_corners(sight, share, should_stop)


def _sheet_bands(places: list[float]) -> Bands:
    """Lines at these places, kept far enough apart to be bands."""
    at: list[float] = []
    for number, place in enumerate(places):
        low = (at[-1] if at else 0.0) + MIN_BAND
        high = 1.0 - (len(places) - number) * MIN_BAND
        at.append(min(max(place, low), high))
    return Bands(1.0, tuple(at))


def _in_doubt(line: LineCheck) -> bool:
    """Found elsewhere, but not so surely that anything is said of it."""
    told_apart = line.verdict in ("close", "off")
    return not told_apart and abs(line.at - line.should) > MISREAD


def _doubted_bands(checks: tuple[LineCheck, ...]) -> Bands:
    """The sheet's bands as they would be with lines in doubt in their places."""
    return _sheet_bands([line.should if _in_doubt(line) else line.at for line in checks])


def _reader(picture: NDArray[np.uint8], name: str, where: Bools | None = None) -> BandReader:
    height, width = picture.shape[:2]
    inside = np.zeros((height, width), dtype=bool)
    edge = max(1, round(_RAGGED * height))
    inside[edge:-edge, edge:-edge] = True
    if where is not None:
        inside &= where
    return BandReader(Photo(picture, None, width, height, name), inside)


def _line_check(letter: str, line: Line) -> LineCheck:
    if not line.sure:
        return LineCheck(letter, line.should, line.at, None, "cannot tell")
    shift = 100 * (line.at - line.should)
    allowed = max(COMMENTED_PCT, 100 * MELTED * line.width)
    gap = abs(shift) / allowed
    verdict = "matches" if gap <= 1 else "close" if gap <= 2 else "off"
    return LineCheck(letter, line.should, line.at, shift, verdict, allowed)  # type: ignore[arg-type]
