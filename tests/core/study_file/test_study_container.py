"""The study file as a container: round trips, and everything hostile refused in one sentence."""

from __future__ import annotations

import io
import stat
import tracemalloc
import zipfile

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.errors import StudyFileError
from core.study_file.container import pack, unpack
from core.study_file.contents import Contents

NAMES = st.from_regex(r"[A-Za-z0-9][A-Za-z0-9._-]{0,20}", fullmatch=True)


def make_zip(members: dict[str, bytes], compression: int = zipfile.ZIP_STORED) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", compression) as archive:
        for name, data in members.items():
            archive.writestr(name, data)
    return out.getvalue()


def refused(data: bytes) -> str:
    with pytest.raises(StudyFileError) as caught:
        unpack(data)
    sentence = str(caught.value)
    assert "\n" not in sentence
    assert sentence.endswith(".")
    return sentence


@given(st.binary(max_size=200), st.dictionaries(NAMES, st.binary(max_size=300), max_size=6))
def test_what_goes_in_comes_out(json: bytes, pictures: dict[str, bytes]) -> None:
    contents = unpack(pack(Contents(json, pictures)))
    assert contents.json == json
    assert dict(contents.pictures) == pictures


def test_the_same_study_gives_the_same_bytes() -> None:
    contents = Contents(b"{}", {"a.jpg": b"1", "b.jpg": b"2"})
    assert pack(contents) == pack(contents)


def test_any_zip_program_can_open_it() -> None:
    with zipfile.ZipFile(io.BytesIO(pack(Contents(b"{}", {"a.jpg": b"12"})))) as archive:
        assert archive.testzip() is None
        assert archive.namelist() == ["study.json", "pictures/a.jpg"]


@pytest.mark.parametrize(
    "name",
    [
        "../evil.txt",
        "pictures/../../evil",
        "/etc/passwd",
        "pictures/sub/deep.jpg",
        "pictures\\evil.jpg",
        "C:\\evil",
        "pictures/",
        "pictures/.hidden",
        "pictures/" + "a" * 200,
        "notes.txt",
        "pictures/na\u00efve.jpg",
    ],
)
def test_hostile_names_are_refused(name: str) -> None:
    refused(make_zip({"study.json": b"{}", name: b"x"}))


def test_a_link_is_refused() -> None:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr("study.json", b"{}")
        link = zipfile.ZipInfo("pictures/photo.jpg")
        link.external_attr = (stat.S_IFLNK | 0o777) << 16
        archive.writestr(link, "/etc/passwd")
    refused(out.getvalue())


@pytest.mark.filterwarnings("ignore:Duplicate name:UserWarning")
def test_a_name_that_comes_twice_is_refused() -> None:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr("study.json", b"{}")
        archive.writestr("study.json", b"[]")
    refused(out.getvalue())


def test_a_heap_of_members_is_refused() -> None:
    refused(make_zip({"study.json": b"{}"} | {f"pictures/{i}.jpg": b"" for i in range(500)}))


def test_a_bomb_is_refused_from_its_header() -> None:
    data = make_zip({"study.json": b"{}", "pictures/a.jpg": bytes(300 << 20)}, zipfile.ZIP_DEFLATED)
    tracemalloc.start()
    refused(data)
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert peak < 20 << 20


def test_a_header_that_lies_about_the_size_is_refused() -> None:
    data = bytearray(make_zip({"study.json": b"{}" * 5000}, zipfile.ZIP_DEFLATED))
    directory = data.rindex(b"PK\x01\x02")
    data[directory + 24 : directory + 28] = (10).to_bytes(4, "little")
    refused(bytes(data))


@pytest.mark.parametrize("data", [b"", b"PK", b"\x89PNG\r\n\x1a\n" + bytes(100), b"{}" * 99])
def test_other_files_are_refused(data: bytes) -> None:
    refused(data)


def test_a_zip_of_something_else_is_refused() -> None:
    assert "not a Gradewash study" in refused(make_zip({"pictures/a.jpg": b"1"}))


def test_cut_short_anywhere_is_refused() -> None:
    data = pack(Contents(b'{"title": "Dusk"}', {"photo.jpg": bytes(range(256)) * 8}))
    for length in range(0, len(data), 37):
        refused(data[:length])


def test_damage_never_gives_other_content() -> None:
    rng = np.random.default_rng(11)
    contents = Contents(b'{"title": "Dusk over the lake"}' * 9, {"photo.jpg": rng.bytes(5000)})
    data = pack(contents)
    for _ in range(400):
        hurt = bytearray(data)
        for at in rng.integers(0, len(hurt), rng.integers(1, 5)):
            hurt[at] ^= 1 << int(rng.integers(8))
        try:
            read = unpack(bytes(hurt))
        except StudyFileError:
            continue
        assert read.json == contents.json
        # A flipped bit in a name may rename a picture; its content is guarded by its checksum.
        assert set(read.pictures.values()) <= set(contents.pictures.values())


def test_a_picture_name_made_for_elsewhere_is_a_mistake_in_the_program() -> None:
    with pytest.raises(ValueError, match="name"):
        pack(Contents(b"{}", {"../a.jpg": b""}))
