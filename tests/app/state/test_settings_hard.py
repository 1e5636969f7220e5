"""A settings file of any content, or of none, never stops the program."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from app.state.settings import Settings, load_settings, read_json, write_json


@pytest.mark.parametrize(
    "content",
    [b"", b"[" * 300_000, b'{"a":' * 200_000, b"\xff\xfe", b"null", b"[1]", b"x" * 3_000_000],
)
def test_what_cannot_be_read_is_as_if_there_was_nothing(tmp_path: Path, content: bytes) -> None:
    path = tmp_path / "settings.json"
    path.write_bytes(content)
    assert read_json(path) == {}
    assert load_settings(path) == Settings()


@pytest.mark.skipif(os.name == "nt", reason="pipes of POSIX")
def test_a_pipe_or_a_folder_neither_hangs_nor_stops(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.json")
    (tmp_path / "folder.json").mkdir()
    for name in ("pipe.json", "folder.json"):
        assert read_json(tmp_path / name) == {}
        write_json({"a": 1}, tmp_path / name)
        assert read_json(tmp_path / name) == {}


def test_a_name_that_is_not_utf8_is_kept(tmp_path: Path) -> None:
    value = {"files": ["caf\udce9.jpg", "\ud83d"]}
    write_json(value, tmp_path / "recent.json")
    assert read_json(tmp_path / "recent.json") == value
