"""What the one table of `benchmarks/table.py` measures: each step of the job beside a baseline.

Every measure gives points of growing size: the work, and what it is held against at that size. Both
take turns, so that what else the machine does slows both; the median of each stands in the table.
"""

from __future__ import annotations

import io
import os
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from statistics import median

import numpy as np
from PIL import Image

import sample_scenes

Act = Callable[[], object]


@dataclass(frozen=True)
class Point:
    """Seconds of the work and of its baseline at one size."""

    size: str
    work: float
    baseline: float


@dataclass(frozen=True)
class Measure:
    """One row of the table."""

    what: str
    against: str
    points: tuple[Point, ...]


def timed(size: str, work: Act, baseline: Act, times: int, often: int = 1) -> Point:
    """Both in turns; `often` the work in one turn, where it is too short to be timed."""
    taken: tuple[list[float], list[float]] = ([], [])
    for _ in range(times):
        for act, repeats, into in ((work, often, taken[0]), (baseline, 1, taken[1])):
            began = time.perf_counter()
            for _ in range(repeats):
                act()
            into.append((time.perf_counter() - began) / repeats)
    return Point(size, median(taken[0]), median(taken[1]))


def jpeg(megapixels: float, folder: Path) -> Path:
    """A sample sky of so many megapixels, with the grain of a camera."""
    width = round((megapixels * 1e6 * 1.5) ** 0.5)
    with Image.open(sample_scenes.path(sample_scenes.DEFAULT)) as small:
        size = (width, round(width / 1.5))
        large = np.asarray(small.convert("RGB").resize(size, Image.Resampling.BICUBIC))
    grain = np.random.default_rng(7).integers(-6, 7, large.shape, dtype=np.int16)
    path = folder / f"{megapixels:g}.jpg"
    Image.fromarray(np.clip(large + grain, 0, 255).astype(np.uint8)).save(path, quality=90)
    return path


def start(times: int, folder: Path) -> Measure:
    """From nothing to all bands and readouts in the window."""
    from start import _BASELINE, program, seconds

    os.environ["PYTHONPATH"] = str(Path(__file__).parents[1])
    points = []
    for megapixels in (6, 24):
        path = jpeg(megapixels, folder)
        program(path, folder / "settings")
        rows = [
            (program(path, folder / "settings")[1], seconds(_BASELINE, str(path)))
            for _ in range(times)
        ]
        work, base = (median(column) for column in zip(*rows, strict=True))
        points.append(Point(f"{megapixels} MP", work, base))
    return Measure("start, to all readouts", "import Qt and NumPy, decode the photo", tuple(points))


def opening(times: int, folder: Path) -> Measure:
    from core.photo import open_photo

    def point(megapixels: float) -> Point:
        path = jpeg(megapixels, folder)
        return timed(
            f"{megapixels:g} MP",
            lambda: open_photo(path),
            lambda: np.asarray(Image.open(path).convert("RGB")),
            times,
        )

    return Measure("open a photo", "decode all of it (Pillow)", tuple(map(point, (3, 12, 24))))


def bands(times: int, folder: Path) -> Measure:
    from core.photo import open_photo
    from core.pipeline import propose_for, read_sky

    def point(megapixels: float) -> Point:
        path = jpeg(megapixels, folder)
        photo = open_photo(path)
        return timed(
            f"{megapixels:g} MP",
            lambda: read_sky(photo, propose_for(photo)),
            lambda: np.asarray(Image.open(path).convert("RGB")),
            times,
        )

    return Measure("find and read the bands", "decode the photo", tuple(map(point, (3, 12, 24))))


def drag(times: int, folder: Path) -> Measure:
    from drag import naive

    from core.bands.lines import move_line
    from core.bands.propose import propose
    from core.bands.stats import BandStats
    from core.photo import open_photo

    photo = open_photo(jpeg(12, folder))

    def point(count: int) -> Point:
        proposal = propose(photo, count=count)
        stats = BandStats(photo, proposal.sky)
        line = proposal.bands.lines[0]
        moves = iter(range(10**6))  # never the same place twice: nothing remembered may help

        def move() -> None:
            moved = line + 0.01 * np.sin(0.7 * next(moves))
            stats.read(move_line(proposal.bands, 0, moved))

        return timed(
            f"{count} bands", move, lambda: naive(photo, proposal.sky, proposal.bands), times, 50
        )

    return Measure(
        "one move of a dragged line", "read every pixel again", tuple(map(point, (3, 5, 7)))
    )


def munsell(times: int, folder: Path) -> Measure:
    import colour

    from core.colour import srgb_to_munsell

    xyY = np.array([0.27, 0.29, 0.35])
    invert = colour.notation.munsell.xyY_to_munsell_specification
    invert(xyY)

    def point(pixels: int) -> Point:
        rgb = np.random.default_rng(0).random((pixels, 3))
        srgb_to_munsell(rgb[:10])
        one = timed(f"{pixels:,} pixels", lambda: srgb_to_munsell(rgb), lambda: invert(xyY), times)
        return Point(one.size, one.work, one.baseline * pixels)

    return Measure(
        "Munsell hue, value, chroma",
        "colour-science, one colour, times as many",
        tuple(map(point, (10_000, 100_000, 1_000_000))),
    )


def mixes(times: int, folder: Path) -> Measure:
    from mix_search import brute_force, reachable

    from core.paint.pigment.measured import measured_paints
    from core.paint.search.closest import closest_mixes
    from core.paint.search.recipes import known as known_rows
    from core.paint.search.refine import known as known_starts

    def point(paints: int) -> Point:
        keys = measured_paints().keys[:paints]
        targets = reachable(np.random.default_rng(2), 8, paints)

        def search() -> None:
            known_rows.forget()
            known_starts.forget()
            closest_mixes(keys, targets)

        search()
        return timed(
            f"{paints} paints", search, lambda: brute_force(keys, targets), min(times, 2), 3
        )

    return Measure(
        "the nearest mixes of 8 colours",
        "brute force, the exact film",
        tuple(map(point, (4, 8, 12))),
    )


def sheet(times: int, folder: Path) -> Measure:
    from simulator import REPORT_SEED, measure, scene

    from core.photo import open_photo
    from core.sheet import check_sheet

    one = scene(REPORT_SEED)
    reference = measure.reference_of(one)

    def point(megapixels: float) -> Point:
        small = Image.open(io.BytesIO(one.jpeg))
        scale = (megapixels * 1e6 / (small.width * small.height)) ** 0.5
        size = (round(small.width * scale), round(small.height * scale))
        path = folder / "sheet.jpg"
        small.resize(size, Image.Resampling.BICUBIC).save(path, quality=90)
        data = path.read_bytes()
        return timed(
            f"{megapixels:g} MP",
            lambda: check_sheet(open_photo(data, name="sheet.jpg"), reference),
            lambda: np.asarray(Image.open(io.BytesIO(data)).convert("RGB")),
            times,
        )

    return Measure("check a sheet", "decode its picture", tuple(map(point, (3, 12, 24))))


def class_set(times: int, folder: Path) -> Measure:
    from simulator import REPORT_SEED, measure, scene

    from core.class_set.check_all import check_all
    from core.class_set.check_one import Job, check_one
    from core.class_set.pool import CheckingPool
    from core.sheet.match.reference import slim_reference

    one = scene(REPORT_SEED)
    reference = slim_reference(measure.reference_of(one))
    path = folder / "one.jpg"
    path.write_bytes(one.jpeg)

    def jobs(count: int) -> Iterator[Job]:
        for number in range(count):
            yield Job(f"{number:064x}", f"{number:064x}", path, "IMG.jpg")

    with CheckingPool(2) as pool:
        list(check_all(jobs(2), reference, pool.executor))  # the workers have begun

        def point(count: int) -> Point:
            both = timed(
                f"{count} sheets",
                lambda: list(check_all(jobs(count), reference, pool.executor, renew=pool.renew)),
                lambda: check_one(next(jobs(1)), reference),
                min(times, 3),
            )
            return Point(both.size, both.work, both.baseline * count)

        points = tuple(map(point, (4, 8, 16)))
    return Measure("check a class, two processes", "one sheet, times as many", points)


def pdf(times: int, folder: Path) -> Measure:
    from dataclasses import replace

    from PySide6.QtCore import QBuffer, QIODevice
    from PySide6.QtGui import QGuiApplication, QPainter, QPdfWriter
    from PySide6.QtWidgets import QApplication

    from app.cards.card import CardChoice, lay_out_card
    from app.cards.paper import PAPERS
    from app.cards.pdf import pdf_of
    from core.bands.lines import Bands
    from core.cards import gather
    from core.photo import open_photo
    from core.pictures import PictureStore
    from core.pipeline import Worked, plan_sky, propose_for, read_sky
    from core.reading.wording import Wording
    from core.study import study_of, with_bands

    _app = QGuiApplication.instance() or QApplication([])
    path = sample_scenes.path(sample_scenes.DEFAULT)
    photo, store = open_photo(path), PictureStore()
    picture = store.add("sky.jpg", path.read_bytes())

    def empty() -> None:
        buffer = QBuffer()
        buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        writer = QPdfWriter(buffer)
        painter = QPainter(writer)
        painter.drawText(100, 100, "Gradewash")
        painter.end()

    def point(count: int) -> Point:
        proposal = propose_for(photo)
        end = proposal.bands.horizon
        even = Bands(end, tuple(end * n / count for n in range(1, count)))
        proposal = replace(proposal, bands=even)
        study = with_bands(study_of(picture), proposal.bands)
        sky = read_sky(photo, proposal)
        plan = plan_sky(sky, study.box, study.mix)
        known = Worked(photo=photo, sky=sky, plan=plan)
        data = gather("plan", study, dict(store), Wording(), known=known)
        card = lay_out_card(data, CardChoice("plan", PAPERS["a4"]))
        return timed(f"{count} bands", lambda: pdf_of(card, "plan"), empty, times)

    return Measure("the plan card as PDF", "a page of one word", tuple(map(point, (3, 5, 7))))


def save(times: int, folder: Path) -> Measure:
    from core.bands.lines import Bands
    from core.pictures import PictureStore
    from core.study import Study
    from core.study_file.document import study_to_bytes
    from core.study_file.save import write_bytes

    def point(megapixels: float) -> Point:
        store = PictureStore()
        picture = store.add("sky.jpg", jpeg(megapixels, folder).read_bytes())
        study = Study("Benchmark", picture, Bands(0.8, (0.2, 0.4)))
        data = study_to_bytes(study, store)
        path = folder / "lesson.gradewash"

        def plain() -> None:
            with (folder / "plain").open("wb") as stream:
                stream.write(data)
                os.fsync(stream.fileno())

        return timed(
            f"{megapixels:g} MP",
            lambda: write_bytes(path, study_to_bytes(study, store)),
            plain,
            times,
        )

    return Measure("save a study", "write the same bytes", tuple(map(point, (3, 12, 24))))


MEASURES = (start, opening, bands, drag, munsell, mixes, sheet, class_set, pdf, save)


def measured(which: Callable[[int, Path], Measure], times: int) -> Measure:
    """Take one measure in a folder of its own."""
    with tempfile.TemporaryDirectory() as name:
        return which(times, Path(name))


def machine() -> str:
    """What it was measured on, in a line."""
    model = "unknown processor"
    try:
        for line in Path("/proc/cpuinfo").read_text().splitlines():
            if line.startswith("model name"):
                model = line.partition(":")[2].strip()
                break
    except OSError:
        pass
    version = subprocess.run(
        [sys.executable, "--version"], capture_output=True, text=True, check=True
    ).stdout.strip()
    return f"{os.cpu_count()} x {model}, {version}"
