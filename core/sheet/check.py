"""Checking a sheet: from a photo or scan of it to findings a teacher can read aloud."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.bands.careful import read_bands
from core.bands.lines import MIN_BAND, Bands
from core.colour import linear_to_srgb, srgb8_to_linear
from core.colour.working_space import linear_to_W
from core.photo import Photo
from core.progress import Progress, ShouldStop, step
from core.reading.reading import BandReading
from core.sheet.find.corners import SURE, FoundCorners, find_corners
from core.sheet.find.surroundings import WHOLE, other_sheet, outline_of, touches_no_edge
from core.sheet.findings.compare import compare_bands, more_lenient
from core.sheet.findings.faults import blooms_in_bands, edges_in_bands
from core.sheet.findings.findings import in_plan_terms
from core.sheet.findings.notices import Scene, corner_notices, judge_light, orientation_notices
from core.sheet.findings.scores import score_sheet
from core.sheet.findings.strength import reading_at, strength_of
from core.sheet.light.light import Lit, undo_light
from core.sheet.light.straighten import Flat, aspect_of, straighten, upright_quad
from core.sheet.match.likeness import likeness, stronger
from core.sheet.match.lines import Line, match_lines
from core.sheet.match.order import profile_of
from core.sheet.match.orientation import LIGHT_LEFT, OTHER_SKY, judge_orientation
from core.sheet.match.reference import Reference
from core.sheet.match.washes import is_coloured, is_even, washes_of
from core.sheet.painted.blooms import find_blooms
from core.sheet.painted.density import density_of
from core.sheet.painted.pale_corners import find_pale_corners
from core.sheet.result import BandCheck, Corners, Light, LineCheck, SheetCheck, SheetOptions, Washes

Checks = tuple[BandCheck, ...]

COMMENTED_PCT = 2.0
"""A line's displacement, in percent of the height, from which it is spoken of."""

MELTED = 0.125
"""The same for washes that melt into each other, as a share of the width they melt over: on
simulated copies, lines that soft come out a few percent off their place."""

MISREAD = 0.01
"""A line misplaced by more, as a share of the height, can change what its bands are read as."""

_PROPOSED = 0.01  # confidence of corners that only the likeness to the photo speaks for
_DESK = 0.85  # of the brightest paint: paper would be brighter than any
_SIDE = 0.08  # of the width, at either side
_CLEARLY = 0.8  # share of the distance: what shows so much more of the photo's sky is taken
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
    found = _corners(photo, options, progress, should_stop)
    seen = _look(photo, found, options, should_stop)
    scene: Scene | None = None
    if options.corners is None and (found.confidence < SURE or _reaches_edge(seen)):
        found, seen, scene = _without_border(photo, reference, options, found, seen, should_stop)
    elif options.corners is None and other_sheet(photo, found.corners, should_stop):
        scene = "several"
    washes: Washes | None = None
    if options.corners is None and scene is None and found.confidence < SURE:
        found, seen, scene, washes = _of_one_colour(photo, options, found, seen, should_stop)
        if washes is not None and washes.kind == "one" and not reference.bands.lines:
            washes = Washes()
    step(0.55, progress, should_stop)
    W = linear_to_W(seen.lit.painted.astype(np.float64))
    step(0.6, progress, should_stop)
    profile = profile_of(W)
    orientation = judge_orientation(reference, W, profile, seen.light.sides_compared)
    step(0.65, progress, should_stop)
    white = seen.light.residual is not None and seen.corrected
    washes = washes or washes_of(reference.profile, reference.bands.lines, profile, white)
    lines = match_lines(
        stronger(reference.profile, orientation.strength), reference.bands.lines, profile
    )
    bands = _sheet_bands([line.at for line in lines])
    step(0.75, progress, should_stop)

    def read(bands: Bands) -> tuple[BandReading, ...]:
        return _read(seen.picture, photo.name, bands)

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
    hard = edges_in_bands(W, bands, reference, even_light=even_light, strength=orientation.strength)
    step(0.9, progress, should_stop)
    density = density_of(seen.lit.painted)
    spots = find_blooms(seen.lit.painted)
    blooms = blooms_in_bands(spots, density, bands, reference, orientation.strength)
    pale = find_pale_corners(seen.lit.painted, reference.corner_shares) if even_light else ()
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


@dataclass(frozen=True, eq=False)
class _Seen:
    """The sheet straightened and its light undone."""

    flat: Flat
    lit: Lit
    light: Light
    corrected: bool
    picture: NDArray[np.uint8]


def _corners(
    photo: Photo,
    options: SheetOptions,
    progress: Progress | None,
    should_stop: ShouldStop | None,
) -> FoundCorners:
    if options.corners is not None:
        return FoundCorners(options.corners, 1.0)

    def share(done: float) -> None:
        step(0.4 * done, progress, should_stop)

    return find_corners(photo, share, should_stop)


def _without_border(
    photo: Photo,
    reference: Reference,
    options: SheetOptions,
    found: FoundCorners,
    seen: _Seen,
    should_stop: ShouldStop | None,
) -> tuple[FoundCorners, _Seen, Scene | None]:
    """What was found unsurely, or the whole picture, or what stands out from the desk: whichever
    shows most of the photo's sky."""

    best = _apart(reference, seen)
    if _reaches_edge(seen):
        found, best = FoundCorners(found.corners, min(found.confidence, _PROPOSED)), np.inf
    kept = found, seen
    scene: Scene | None = None
    tried: list[tuple[Corners, Scene]] = []
    if found.corners != WHOLE and touches_no_edge(found.corners):
        tried.append((found.corners, "paper edge"))
    outline = outline_of(photo)
    if outline is not None:
        tried.append((outline, "paper edge"))
    tried.append((WHOLE, "whole picture"))
    for corners, kind in tried:
        step(0.5, None, should_stop)
        look = _look(photo, FoundCorners(corners, 0.0), options, should_stop, bare=True)
        far = _apart(reference, look, sides=kind == "whole picture")
        same = corners == found.corners == WHOLE
        near = OTHER_SKY * (LIGHT_LEFT if same else 1.0)
        if far < near and (same or far < _CLEARLY * best) and not is_even(look.lit.painted):
            confidence = min(found.confidence, _PROPOSED)
            kept, best, scene = (FoundCorners(corners, confidence), look), far, kind
    return (*kept, scene)


def _of_one_colour(
    photo: Photo,
    options: SheetOptions,
    found: FoundCorners,
    seen: _Seen,
    should_stop: ShouldStop | None,
) -> tuple[FoundCorners, _Seen, Scene | None, Washes | None]:
    """A picture in which nothing was painted, or a single wash to the paper's edge: what it is,
    and where the wash is. As it was, and None, of any other."""
    outline = outline_of(photo)
    kinds: tuple[tuple[Corners | None, Scene], ...] = (
        (outline, "paper edge"),
        (WHOLE, "whole picture"),
    )
    for corners, kind in kinds:
        if corners is None:
            continue
        at = FoundCorners(corners, min(found.confidence, _PROPOSED))
        look = _look(photo, at, options, should_stop, bare=True)
        if not is_even(look.lit.painted):
            continue
        if is_coloured(look.lit.painted):
            return at, look, kind, Washes("one")
        return found, seen, None, Washes("blank")
    return found, seen, None, None


def _reaches_edge(seen: _Seen) -> bool:
    """Whether what is round the paint is darker than the paint itself: no paper, but a desk."""
    flat = seen.flat
    height, width = flat.painted.shape[:2]
    near, far = round(0.01 * height), round(0.03 * height)
    m = flat.margin
    sides = (
        flat.linear[m - far : m - near, m : m + width],
        flat.linear[m + height + near : m + height + far, m : m + width],
        flat.linear[m : m + height, m - far : m - near],
        flat.linear[m : m + height, m + width + near : m + width + far],
    )
    around = [float(np.median(side.mean(axis=2))) for side in sides if side.size]
    bright = float(np.quantile(flat.painted.mean(axis=2), 0.95))
    return bool(around) and max(around) < _DESK * bright


def _apart(reference: Reference, seen: _Seen, *, sides: bool = False) -> float:
    """How far a look at a sheet is from the photo's sky; with `sides`, its left and right edges
    too, which a picture with a desk around the sheet fails."""
    W = linear_to_W(seen.lit.painted.astype(np.float64))
    parts = [W]
    if sides:
        width = max(1, round(_SIDE * W.shape[1]))
        parts += [W[:, :width], W[:, -width:]]
    return max(likeness(reference.profile, profile_of(part)).apart for part in parts)


def _look(
    photo: Photo,
    found: FoundCorners,
    options: SheetOptions,
    should_stop: ShouldStop | None,
    *,
    bare: bool = False,
) -> _Seen:
    """The sheet straightened; `bare` where no paper shows around it, so that nothing tells the
    light."""
    height, width = photo.pixels.shape[:2]
    quad = upright_quad(found.corners, options.turned, width, height)
    linear = srgb8_to_linear(photo.pixels)
    step(0.45, None, should_stop)
    flat = straighten(linear, quad, aspect_of(quad, width, height, options.scan))
    step(0.5, None, should_stop)
    lit = Lit(flat.painted, None, np.ones(3), np.empty((0, 3))) if bare else undo_light(flat)
    light, corrected = judge_light(flat, lit, options.scan)
    encoded = linear_to_srgb(np.clip(lit.painted, 0.0, 1.0))
    picture = (encoded * 255 + 0.5).astype(np.uint8)
    picture.setflags(write=False)
    return _Seen(flat, lit, light, corrected, picture)


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


def _read(picture: NDArray[np.uint8], name: str, bands: Bands) -> tuple[BandReading, ...]:
    height, width = picture.shape[:2]
    inside = np.zeros((height, width), dtype=bool)
    edge = max(1, round(_RAGGED * height))
    inside[edge:-edge, edge:-edge] = True
    return read_bands(Photo(picture, None, width, height, name), inside, bands)


def _line_check(letter: str, line: Line) -> LineCheck:
    if not line.sure:
        return LineCheck(letter, line.should, line.at, None, "cannot tell")
    shift = 100 * (line.at - line.should)
    allowed = max(COMMENTED_PCT, 100 * MELTED * line.width)
    gap = abs(shift) / allowed
    verdict = "matches" if gap <= 1 else "close" if gap <= 2 else "off"
    return LineCheck(letter, line.should, line.at, shift, verdict, allowed)  # type: ignore[arg-type]
