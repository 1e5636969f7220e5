"""Scores crossed on a worksheet page: what is a number, and what must not be one."""

from __future__ import annotations

import io
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from class_set_tools import made_folder
from PIL import Image
from scipy.ndimage import gaussian_filter
from scipy.spatial import ConvexHull
from simulator.page_camera import photographed
from simulator.pen_marks import Paper, Row, draw_row
from simulator.plain_form import plain_boxes, plain_form, plain_page

from core.class_set import kept_scores
from core.class_set.bringing import bring_in
from core.class_set.deleting import delete_class_set, written_by
from core.class_set.folder import CHECKS
from core.class_set.kept_checks import KeptChecks
from core.class_set.kept_scores import find_scores, found_scores, offered, read_page, taken
from core.class_set.placing import place_all
from core.class_set.score_marks.decide import BLANK, CANNOT_TELL, RowReading, reading_of
from core.class_set.score_marks.hull import area, clipped, hull_of
from core.class_set.score_marks.pieces import Mark
from core.class_set.score_marks.read import read_scores
from core.class_set.score_marks.sharpness import sharpness
from core.class_set.score_marks.words import reading_word
from core.class_set.ticket import Slot
from core.reading.quality import QUALITIES
from core.worksheet.worksheet import OwnScores


def mark(box: int, **other: object) -> Mark:
    shares = tuple(1.0 if k == box - 1 else 0.0 for k in range(10))
    return replace(Mark(shares, 0.9, 2.5, drawn=True, length=7.0, inset=6.5), **other)


# What is a number


def test_one_mark_on_one_box_is_its_number() -> None:
    assert reading_of([mark(7)], 10) == RowReading("number", 7)
    # A speck of dust beside it, and handwriting below the row, change nothing.
    dust = mark(2, mass=0.1, length=0.6, drawn=False)
    assert reading_of([mark(10), dust, mark(1, on_boxes=0.05)], 10) == RowReading("number", 10)


@pytest.mark.parametrize(
    "marks",
    [
        [mark(3), mark(8)],
        [mark(3, mass=30.0), mark(8, mass=1.2)],  # scribbled out, then a thin tick
        [mark(4, shares=(0, 0, 0, 0.55, 0.45, 0, 0, 0, 0, 0))],  # over two boxes
        [mark(4, inset=0.6)],  # at the gap
        [mark(5), mark(6, inset=1.0, mass=1.0)],
        [mark(5, length=2.4)],  # a dot
        [mark(5, drawn=False)],  # a smudge
        [mark(5, mass=0.3)],  # too little
    ],
)
def test_what_is_not_plain_is_no_number(marks: list[Mark]) -> None:
    assert reading_of(marks, 10) == CANNOT_TELL


def test_nothing_is_blank() -> None:
    assert reading_of([], 10) == BLANK
    assert reading_of([mark(1, on_boxes=0.1)], 10) == BLANK


def test_a_reading_has_a_score_only_with_a_number() -> None:
    with pytest.raises(ValueError, match="a number has one"):
        RowReading("blank", 4)
    with pytest.raises(ValueError, match="a number has one"):
        RowReading("number")
    said = {reading_word(one) for one in (BLANK, CANNOT_TELL, RowReading("number", 7))}
    assert said == {"nothing marked", "cannot tell", "read: 7"}


# The hull


def test_the_hull_is_that_of_a_reference_library() -> None:
    """SciPy's, which is Qhull: Barber, Dobkin and Huhdanpaa (1996), ACM TOMS 22(4)."""
    rng = np.random.default_rng(4)
    for _ in range(20):
        mask = rng.random((rng.integers(3, 40), rng.integers(3, 60))) > 0.9
        mask[1, 2] = True
        y, x = np.nonzero(mask)
        corners = np.concatenate([np.stack([x + i, y + j], -1) for i in (0, 1) for j in (0, 1)])
        assert area(hull_of(mask)) == pytest.approx(ConvexHull(corners).volume, rel=1e-9)


def test_a_hull_is_cut_by_a_box() -> None:
    disc = np.hypot(*np.mgrid[-20:21, -20:21]) < 20
    whole = hull_of(disc)
    half = clipped(whole, (0.0, 0.0, 20.5, 41.0))
    assert area(half) == pytest.approx(area(whole) / 2, rel=1e-6)
    assert clipped(whole, (50.0, 50.0, 60.0, 60.0)) == []
    assert hull_of(np.zeros((4, 4), bool)) == []


# A page, as a phone takes it


def read_rows(
    rows: list[Row],
    seed: int,
    *,
    words: str = "far from it",
    size: str = "1280",
    care: str = "usual",
):
    rng = np.random.default_rng(seed)
    paper = Paper(plain_page(words=words), rng)
    for boxes, row in zip(plain_boxes(), rows, strict=True):
        draw_row(paper, boxes, row)
    return pixels_of(photographed(paper.done(), size, care, rng))


def pixels_of(jpeg: bytes) -> np.ndarray:
    return np.asarray(Image.open(io.BytesIO(jpeg)).convert("RGB"))


@pytest.mark.parametrize("turn", [0, 1])
def test_marks_are_read_from_a_bent_and_shaded_page(turn: int) -> None:
    rows = [
        Row("one", 7, "cross", "ball pen"),
        Row("one", 1, "tick", "pencil"),
        Row("one", 10, "fill", "felt pen"),
        Row("blank", None, "-", "pencil"),
    ]
    pixels = np.rot90(read_rows(rows, 3), turn).copy()
    found = read_scores(pixels, (plain_form(),))
    assert found is not None
    assert [row.score for row in found.rows] == [7, 1, 10, None]
    assert found.rows[3] == BLANK
    high, wide = plain_form().rows[0].printed.shape
    assert {crop.shape for crop in found.crops} == {(high, wide, 3)}
    # The crop shows the cross where the seventh box is, and paper in the second.
    dark = found.crops[0].min(axis=2) < 0.6 * np.median(found.crops[0])
    boxes = plain_boxes()[0]
    area_left = boxes[0].x - 4.0
    shares = [
        dark[24:64, round((b.x - area_left + 1) * 6) : round((b.x - area_left + 13) * 6)].mean()
        for b in boxes
    ]
    assert int(np.argmax(shares)) == 6


def test_second_thoughts_dots_and_smudges_are_left_to_the_teacher() -> None:
    rows = [
        Row("corrected", 4, "cross", "ball pen", (9,)),
        Row("smudge", None, "-", "pencil", (5,)),
        Row("dot", None, "-", "pencil", (2,)),
        Row("struck", None, "-", "ball pen"),
    ]
    for seed in (11, 12):
        found = read_scores(read_rows(rows, seed), (plain_form(),))
        assert found is not None
        assert all(row.kind != "number" for row in found.rows), found.rows
        assert found.rows[0] == CANNOT_TELL


def test_dots_are_no_numbers_however_small_or_blurred_the_picture_is() -> None:
    pens = ("fountain pen", "ball pen", "felt pen", "pencil")
    for seed, care in ((300, "usual"), (301, "usual"), (302, "blurred"), (303, "usual")):
        rows = [Row("dot", None, "-", pen, (3 + k,)) for k, pen in enumerate(pens)]
        found = read_scores(read_rows(rows, seed, care=care), (plain_form(),))
        if found is not None:  # its codes are still seen
            assert all(row.kind != "number" for row in found.rows), (seed, found.rows)


def test_a_page_too_blurred_is_left_to_the_teacher() -> None:
    rows = [Row("one", score, "cross", "ball pen") for score in (7, 2, 9, 4)]
    pixels = read_rows(rows, 41, size="1600").copy()
    found = read_scores(pixels, (plain_form(),))
    assert found is not None
    assert [row.score for row in found.rows] == [7, 2, 9, 4]
    # A page that does not lie flat: its codes are sharp, its middle is not.
    middle = slice(round(0.27 * len(pixels)), round(0.73 * len(pixels)))
    pixels[middle] = gaussian_filter(pixels[middle], (2.0, 2.0, 0))
    found = read_scores(pixels, (plain_form(),))
    assert found is not None
    assert found.rows == (CANNOT_TELL,) * 4
    assert len(found.crops) == 4


def test_sharpness_falls_with_blur_and_not_with_light() -> None:
    row = plain_form().rows[0]
    ink = 1 - row.printed.astype(np.float32) / 255
    soft = [sharpness(gaussian_filter(ink, spread), row) for spread in (1.0, 2.0, 3.0)]
    assert soft == sorted(soft, reverse=True)
    # A thin line blurred by s mm, seen through the filter's own spread of one pixel.
    s = np.hypot(3.0, 1.0) / 6.0
    assert soft[-1] == pytest.approx(np.exp(-0.5) / s, rel=0.35)
    assert sharpness(0.4 * ink, row) == pytest.approx(sharpness(ink, row), rel=1e-3)


def test_words_printed_in_another_language_are_no_marks() -> None:
    rows = [Row("one", 1, "cross", "ball pen"), *[Row("blank", None, "-", "pencil")] * 3]
    found = read_scores(read_rows(rows, 21, words="lejos, otra cosa"), (plain_form(),))
    assert found is not None
    assert found.rows == (RowReading("number", 1), BLANK, BLANK, BLANK)


def test_a_picture_without_codes_or_boxes_tells_nothing() -> None:
    assert read_scores(np.full((500, 400, 3), 230, np.uint8), (plain_form(),)) is None
    # The codes alone, the rows torn off or covered: no number, and not blank either.
    page = np.repeat(plain_page()[..., None], 3, axis=2)
    page[(95 * 8) : (190 * 8)] = 250
    found = read_scores(page, (plain_form(),))
    assert found is not None
    assert found.rows == (CANNOT_TELL,) * 4


# Kept, offered, taken


@pytest.fixture
def read_class(tmp_path: Path):
    """A class set with a worksheet page of student 3, read."""
    rows = [Row("one", score, "cross", "ball pen") for score in (7, 6, 9)]
    rng = np.random.default_rng(5)
    paper = Paper(plain_page(), rng)
    for boxes, row in zip(plain_boxes(), [*rows, Row("blank", None, "-", "pencil")], strict=True):
        draw_row(paper, boxes, row)
    picture = tmp_path / "page.jpg"
    picture.write_bytes(photographed(paper.done(), "1600", "usual", rng))
    with made_folder(tmp_path) as folder:
        for _ in bring_in(folder, (picture,)):
            pass
        digest = place_all(folder.class_set).digest_at(Slot(3, 0, "page"))
        assert digest is not None
        path, forms = folder.picture_path(digest), ((plain_form(),), (plain_form(),))
        kept = read_page(folder.path, digest, 0, path, forms)
        yield folder, digest, kept


def test_what_was_read_is_kept_and_found_again(read_class) -> None:
    folder, digest, kept = read_class
    assert [row.score for row in kept.rows] == [7, 6, 9, None]
    assert find_scores(folder.path, digest, 0) == kept
    assert found_scores(folder.path, place_all(folder.class_set)) == {(digest, 0): kept}
    assert find_scores(folder.path, digest, 1) is None
    assert kept.crops is not None
    with Image.open(kept.crops) as crops:
        high, wide = plain_form().rows[0].printed.shape
        assert crops.size == (wide, 4 * high)


def test_a_damaged_or_half_kept_reading_is_made_again(read_class) -> None:
    folder, digest, kept = read_class
    file = kept.crops.with_suffix(".json")
    whole = file.read_bytes()
    for damage in (b"", whole[:-4], whole.replace(b"7", b"70", 1), b'{"format": "other"}'):
        file.write_bytes(damage)
        assert find_scores(folder.path, digest, 0) is None
    file.write_bytes(whole)
    kept.crops.unlink()
    assert find_scores(folder.path, digest, 0) is None


def test_nothing_is_a_score_until_it_is_taken(read_class) -> None:
    folder, _, kept = read_class
    class_set = folder.class_set
    assert class_set.entry(3).worksheet.pages[0].scores == OwnScores()
    assert offered(kept, OwnScores())
    scores = {q: row.score for q, row in zip(QUALITIES, kept.rows, strict=True)}
    after = taken(class_set, 3, 0, scores)
    own = after.entry(3).worksheet.pages[0].scores
    assert own == OwnScores(7, 6, 9, None)
    assert not offered(kept, own)
    assert after.entry(3).worksheet.pages[1].scores == OwnScores()
    blank = replace(kept, rows=(BLANK,) * 4)
    assert not offered(blank, OwnScores())
    assert not offered(None, OwnScores())


def test_readings_go_when_the_class_set_is_deleted(read_class, tmp_path: Path) -> None:
    folder, _, kept = read_class
    path = folder.path
    checks = path / CHECKS
    foreign = checks / f"{'a' * 64}.json"
    foreign.write_bytes(b'{"format": "something else"}')
    assert {kept.crops, kept.crops.with_suffix(".json")} <= set(written_by(path).checks)
    folder.close()
    delete_class_set(path, tmp_path / "data")
    assert list(checks.iterdir()) == [foreign]


def test_checks_that_are_thrown_away_do_not_take_readings_that_hold(read_class) -> None:
    folder, digest, _ = read_class
    KeptChecks(folder.path).keep_only({kept_scores.scores_key(digest, 0)})
    assert find_scores(folder.path, digest, 0) is not None
    KeptChecks(folder.path).keep_only(set())
    assert find_scores(folder.path, digest, 0) is None
