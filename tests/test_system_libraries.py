"""What `./run` asks the system for: nothing of the screen where no window is wanted."""

from __future__ import annotations

import ctypes
import sys

import pytest

from app import screen
from app.main import main
from tools import system_libraries


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="asks nothing elsewhere")
def test_words_need_no_library_and_cards_none_of_the_screen(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def missing(name: str) -> None:
        raise OSError(name)

    monkeypatch.setattr(ctypes, "CDLL", missing)
    assert system_libraries.missing_packages("none") == []
    drawing = system_libraries.missing_packages("drawing")
    on_screen = system_libraries.missing_packages("screen")
    assert set(drawing) < set(on_screen)
    assert not any("xcb" in package or "x11" in package for package in drawing)
    assert any("xcb" in package for package in on_screen)


def test_the_program_knows_the_same_packages_as_its_installer() -> None:
    drawn = {
        library: package
        for library, package in system_libraries.LIBRARIES.items()
        if not library.startswith(system_libraries.SCREEN)
    }
    assert drawn == screen._TO_DRAW


@pytest.mark.parametrize(
    ("library", "says"),
    [("libGL.so.1", "install the package libgl1"), ("libodd.so.9", "missing here: libodd.so.9")],
)
def test_a_missing_library_is_one_sentence(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], library: str, says: str
) -> None:
    def run(*_: object) -> int:
        raise ImportError(f"{library}: cannot open shared object file: No such file or directory")

    monkeypatch.setattr("core.cli.run", run)
    assert main(["card", "sky.jpg", "-o", "plan.pdf"]) == 2
    said = capsys.readouterr().err
    assert says in said
    assert said.count("\n") == 1


def test_a_missing_module_of_ours_is_no_missing_library(monkeypatch: pytest.MonkeyPatch) -> None:
    def run(*_: object) -> int:
        raise ImportError("cannot import name 'lost' from 'core'")

    monkeypatch.setattr("core.cli.run", run)
    with pytest.raises(ImportError):
        main(["card", "sky.jpg", "-o", "plan.pdf"])
