"""A study to its file and back; and whatever is wrong with a file, one sentence."""

from __future__ import annotations

import contextlib
import io
import json
import time
import tracemalloc
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from PIL import Image
from study_strategies import PICTURES, small_picture, studies

from core.bands.lines import Bands
from core.errors import StudyFileError
from core.photo import open_photo
from core.pictures import Picture, PictureStore
from core.sheet.result import SheetOptions
from core.study import SheetEntry, Study
from core.study_file.container import pack, unpack
from core.study_file.contents import Contents
from core.study_file.document import study_from_bytes, study_to_bytes
from core.study_file.schema import json_schema
from core.worksheet.worksheet import OwnScores, SheetPage, Worksheet

KEPT = Path(__file__).parents[2] / "data" / "study_version_1.gradewash"


def lesson() -> tuple[Study, PictureStore]:
    store = PictureStore()
    study = Study(
        "Dusk over Harrow Water",
        store.add("dusk over the lake.JPG", small_picture(40)),
        Bands(0.62, (0.2, 0.41)),
        sheets=(
            SheetEntry(
                store.add("first.png", small_picture(90, "PNG")),
                SheetOptions(((0.1, 0.1), (0.9, 0.12), (0.92, 0.88), (0.08, 0.9)), 1, True, 1.4),
            ),
            None,
        ),
        worksheet=Worksheet(
            "7b 14",
            "7b",
            (SheetPage(OwnScores(6, 7, 5), "Keep it wetter.", "edges", "2027-03-04"), SheetPage()),
            "A brave sky.",
        ),
    )
    return study, store


def changed(change) -> bytes:
    """The lesson's file with its JSON changed by a function."""
    contents = unpack(study_to_bytes(*lesson()))
    value = json.loads(contents.json)
    value = change(value) or value
    return pack(Contents(json.dumps(value).encode(), contents.pictures))


def refused(data: bytes) -> str:
    with pytest.raises(StudyFileError) as caught:
        study_from_bytes(data)
    sentence = str(caught.value)
    assert "\n" not in sentence
    assert sentence.endswith(".")
    assert len(sentence) < 400
    return sentence


@settings(max_examples=150, deadline=None)
@given(studies)
def test_what_is_saved_is_opened(study: Study) -> None:
    opened = study_from_bytes(study_to_bytes(study, PICTURES))
    assert opened.study == study
    for picture in (study.photo, *(sheet.picture for sheet in study.sheets if sheet)):
        if picture is not None:
            assert opened.pictures[picture.digest] == PICTURES[picture.digest]


def test_a_lesson_keeps_its_pictures() -> None:
    study, store = lesson()
    opened = study_from_bytes(study_to_bytes(study, store))
    assert opened.study == study
    assert opened.study.photo is not None
    photo = open_photo(opened.pictures[opened.study.photo.digest], name="dusk.jpg")
    assert (photo.width, photo.height) == (16, 12)


def test_a_file_kept_from_version_1_still_opens() -> None:
    data = KEPT.read_bytes()
    members = unpack(data).pictures
    # With its own pictures: another Pillow may compress the same shades otherwise.
    study, store = lesson()
    store = PictureStore()
    photo = store.add_clean("dusk over the lake.JPG", members["photo.jpg"])
    first = store.add_clean("first.png", members["sheet1.png"])
    sheet = study.sheets[0]
    assert sheet is not None
    study = replace(study, photo=photo, sheets=(replace(sheet, picture=first), None))
    opened = study_from_bytes(data)
    assert opened.study == study
    assert set(opened.pictures) == set(store)


def test_the_schema_is_there_for_others() -> None:
    schema = json_schema()
    assert "Study1" in json.dumps(schema)


def test_a_newer_version_is_refused_in_words() -> None:
    assert "newer" in refused(changed(lambda value: value.update(version=2)))
    assert "newer" in refused(changed(lambda value: value.update(version=99, future={"a": 1})))


def test_something_else_is_refused() -> None:
    assert "not a Gradewash study" in refused(changed(lambda value: value.update(format="x")))
    assert "not a Gradewash study" in refused(changed(lambda value: value.pop("format") and None))


def test_a_missing_picture_is_named() -> None:
    contents = unpack(study_to_bytes(*lesson()))
    rest = {name: data for name, data in contents.pictures.items() if name != "photo.jpg"}
    assert "dusk over the lake.JPG" in refused(pack(Contents(contents.json, rest)))


@pytest.mark.parametrize(
    "change",
    [
        lambda value: value.update(title=5),
        lambda value: value.update(surprise=1),
        lambda value: value.update(version="1"),
        lambda value: value.update(version=0),
        lambda value: value.update(bands={"horizon": 2, "lines": []}),
        lambda value: value.update(bands={"horizon": 0.5, "lines": [0.3, 0.2]}),
        lambda value: value.update(bands={"horizon": 0.5, "lines": [0.3] * 30}),
        lambda value: value.update(box={"gradewash_box": 1, "name": "x", "paints": ["gold"]}),
        lambda value: value.update(box=[]),
        lambda value: value["mix"].update(paper={}),
        lambda value: value["sheets"][0].update(turned=9),
        lambda value: value["sheets"][0].update(corners=[[0, 0]]),
        lambda value: value["sheets"][0].update(corners=[[0, 0], [1, 0], [1, 1], [0, 99]]),
        lambda value: value["worksheet"]["pages"][0].update(hue=11),
        lambda value: value["worksheet"]["pages"][0].update(date="yesterday"),
        lambda value: value["worksheet"].update(pages=[]),
        lambda value: [value],
        lambda value: "text",
    ],
)
def test_wrong_values_are_refused(change) -> None:
    refused(changed(change))


@pytest.mark.parametrize(
    "text",
    [b"", b"{", b"nonsense", b"\xff\xfe", b"[" * 100_000, b'{"format": NaN}', b"null", b"{}"],
)
def test_json_that_is_none_is_refused(text: bytes) -> None:
    refused(pack(Contents(text, {})))


@pytest.mark.slow
def test_two_thousand_mutated_files() -> None:
    """Bit flips, cuts, splices, hostile JSON: a study or one sentence, quickly, in little room."""
    rng = np.random.default_rng(2027)
    data = study_to_bytes(*lesson())
    other = pack(Contents(b'{"format": "gradewash study", "version": 1}', {"a.jpg": b"x" * 99}))
    text = unpack(data).json
    tracemalloc.start()
    worst = 0.0
    for turn in range(2000):
        hurt = bytearray(data if turn % 4 else text)
        kind = rng.integers(4)
        if kind == 0:
            for at in rng.integers(0, len(hurt), rng.integers(1, 30)):
                hurt[at] ^= 1 << int(rng.integers(8))
        elif kind == 1:
            del hurt[int(rng.integers(len(hurt))) :]
        elif kind == 2:
            at, start = rng.integers(0, len(hurt)), rng.integers(0, len(other))
            hurt[at:at] = other[start : start + int(rng.integers(200))]
        else:
            a, b = sorted(rng.integers(0, len(hurt), 2).tolist())
            hurt[a:b] = hurt[a:b][::-1]
        mutated = bytes(hurt)
        if not turn % 4:
            mutated = pack(Contents(mutated, unpack(data).pictures))
        began = time.perf_counter()
        with contextlib.suppress(StudyFileError):
            study_from_bytes(mutated)
        worst = max(worst, time.perf_counter() - began)
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert worst < 2.0
    assert peak < 1 << 30


def test_private_data_does_not_go_in() -> None:
    out = io.BytesIO()
    exif = Image.Exif()
    exif[0x013B] = "A Name"
    exif[0x0112] = 6
    Image.new("RGB", (20, 10), (90, 120, 200)).save(out, "JPEG", exif=exif)
    store = PictureStore()
    picture = store.add("turned.jpg", out.getvalue())
    data = study_to_bytes(Study("x", picture), store)
    assert b"A Name" not in data
    photo = open_photo(store[picture.digest], name="turned.jpg")
    assert (photo.width, photo.height) == (10, 20)


def test_a_store_forgets_only_what_is_not_wanted() -> None:
    study, store = lesson()
    assert study.photo is not None
    store.keep_only([study.photo.digest])
    assert list(store) == [study.photo.digest]
    assert Picture("a").digest == ""
