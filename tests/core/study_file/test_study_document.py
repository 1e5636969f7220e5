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
from core.lesson.lesson import Hands
from core.photo import open_photo
from core.pictures import Picture, PictureStore
from core.sheet.result import SheetOptions
from core.study import SheetEntry, Study, WheelPlace
from core.study_file.container import pack, unpack
from core.study_file.contents import Contents
from core.study_file.document import (
    study_from_bytes,
    study_from_contents,
    study_to_bytes,
    study_to_contents,
)
from core.study_file.gone import damage_notice
from core.study_file.opening import open_contents
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


def test_a_newer_version_is_refused_in_words() -> None:
    assert "newer" in refused(changed(lambda value: value.update(version=3)))
    assert "newer" in refused(changed(lambda value: value.update(version=99, future={"a": 1})))


def test_something_else_is_refused() -> None:
    assert "not a Gradewash study" in refused(changed(lambda value: value.update(format="x")))
    assert "not a Gradewash study" in refused(changed(lambda value: value.pop("format") and None))


def test_a_missing_picture_does_not_cost_the_rest() -> None:
    contents = unpack(study_to_bytes(*lesson()))
    for missing, word in (("photo.jpg", "the photo"), ("sheet1.webp", "sheet 1")):
        rest = {name: data for name, data in contents.pictures.items() if name != missing}
        assert len(rest) == 1
        opened = study_from_bytes(pack(Contents(contents.json, rest)))
        assert opened.gone == (word,)
        assert opened.study.worksheet == lesson()[0].worksheet
        assert opened.study.bands == lesson()[0].bands


def place_of(data: bytes, content: bytes) -> int:
    """Somewhere in the middle of a member that is stored as it is."""
    return data.index(content) + len(content) // 2


def test_a_damaged_picture_costs_itself_alone() -> None:
    study, store = lesson()
    data = study_to_bytes(study, store)
    for picture, word in ((study.photo, "the photo"), (study.sheets[0].picture, "sheet 1")):
        at = place_of(data, store[picture.digest])
        opened = study_from_bytes(data[:at] + bytes([data[at] ^ 4]) + data[at + 1 :])
        assert opened.gone == (word,)
        assert opened.study.worksheet == study.worksheet
        assert opened.study.title == study.title
        assert len(opened.pictures) == 1
        assert word in damage_notice(opened.gone)


def test_a_photo_that_is_whole_and_no_picture_costs_itself_alone() -> None:
    """As files hold it that were saved before pictures were opened again."""
    study, _ = lesson()
    store = PictureStore()
    photo = store.add_clean("sky.jpg", small_picture(40)[:120])
    data = study_to_bytes(replace(study, photo=photo, sheets=(None, None)), store)
    found = open_contents(unpack(data))
    assert found.photo is None
    assert found.study is not None
    assert found.study.study.worksheet == study.worksheet
    assert "the photo" in found.damage


def test_a_lost_text_leaves_the_pictures() -> None:
    study, store = lesson()
    data = bytearray(study_to_bytes(study, store))
    start = data.index(b"study.json") + len("study.json")
    data[start : start + 40] = bytes(40)
    opened = study_from_bytes(bytes(data))
    assert len(opened.pictures) == 2
    assert opened.study.photo is not None
    assert opened.study.sheets[0] is not None
    assert "all that was written" in damage_notice(opened.gone)


def test_nearly_every_flipped_bit_leaves_a_study() -> None:
    """One bit in 400 files: whatever its place, what is whole comes out, and what is not is told.

    A flip that hits nothing needed leaves the study as it was.
    """
    study, store = lesson()
    data = study_to_bytes(study, store)
    rng = np.random.default_rng(1)
    refusals = told = 0
    for at in rng.integers(0, len(data), 400):
        hurt = bytearray(data)
        hurt[at] ^= 1 << int(rng.integers(8))
        try:
            opened = study_from_bytes(bytes(hurt))
        except StudyFileError:
            refusals += 1
            continue
        told += bool(opened.gone)
        whole = opened.study.worksheet == study.worksheet and opened.study.photo == study.photo
        assert whole or opened.gone
    assert refusals <= 4
    assert told > 100


def test_cut_short_it_gives_what_came_through() -> None:
    study, store = lesson()
    data = study_to_bytes(study, store)
    photo = data.index(store[study.photo.digest]) + len(store[study.photo.digest])
    opened = study_from_bytes(data[: photo + 10])
    assert opened.study.worksheet == study.worksheet
    assert opened.study.photo == study.photo
    assert opened.gone == ("sheet 1",)


def test_a_refusal_speaks_no_schema() -> None:
    wrong = changed(lambda value: value["mix"].update(choices=[5]))
    sentence = refused(wrong)
    assert "what was asked of the mixes" in sentence
    for sign in ("$", "`", "Expected", "choices", "int"):
        assert sign not in sentence


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


def test_hands_and_the_wheels_place_are_kept_and_take_no_room_where_there_are_none():
    plain = study_to_contents(Study(), {}).json
    assert b"hands" not in plain
    assert b"wheel" not in plain
    hands = (Hands(1, "hue", "violet", 14), Hands(0, "class", "primary", 3))
    study = Study(hands=hands, wheel=WheelPlace(0.4, 0.9, 0.5))
    kept = study_to_contents(study, {})
    assert study_from_contents(kept).study == study
    assert b'"letter":"B"' in kept.json.replace(b" ", b"").replace(b"\n", b"")


@pytest.mark.parametrize(
    ("part", "words"),
    [
        (b'"hands": [{"letter": "b", "question": "hue", "choice": "red", "count": 3}]', "hands"),
        (b'"hands": [{"letter": "B", "question": "hue", "choice": "red", "count": 0}]', "hands"),
        (b'"hands": [{"letter": "B", "question": "mood", "choice": "red", "count": 3}]', "hands"),
        (b'"wheel": {"x": 0.5, "y": 0.5, "size": 0}', "wheel"),
        (b'"wheel": {"x": 50, "y": 0.5, "size": 1}', "wheel"),
    ],
)
def test_hands_and_wheels_that_cannot_be_are_refused_by_name(part, words):
    kept = study_to_contents(Study(), {})
    wrong = replace(kept, json=kept.json.rstrip().removesuffix(b"}") + b"," + part + b"}")
    with pytest.raises(StudyFileError, match=words):
        study_from_contents(wrong)
    # Of a damaged file the rest is there.
    opened = study_from_contents(replace(wrong, damaged=True))
    assert any(words in gone for gone in opened.gone)
    assert opened.study == Study()
