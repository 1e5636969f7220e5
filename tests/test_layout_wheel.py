"""What is installed from a wheel is all that a checkout has: pictures, tables, fonts."""

from __future__ import annotations

import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
PACKAGES = ("app", "core", "sample_scenes")


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A wheel built without the network, from a copy: building leaves files behind."""
    copy = tmp_path_factory.mktemp("source")
    for file in [*shipped_files(), "pyproject.toml", "README.md", "LICENSE"]:
        target = copy / file
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes((ROOT / file).read_bytes())
    out = tmp_path_factory.mktemp("wheel")
    pip = [sys.executable, "-m", "pip", "--disable-pip-version-check", "wheel", "--quiet"]
    options = ["--no-deps", "--no-build-isolation", "--no-index", "--wheel-dir", str(out)]
    done = subprocess.run(
        [*pip, *options, str(copy)], capture_output=True, text=True, timeout=300, check=False
    )
    assert done.returncode == 0, done.stdout + done.stderr
    (built,) = out.glob("gradewash-*.whl")
    return built


def shipped_files() -> list[str]:
    """Every file the packages need, as a path from the top.

    A catalogue's .ts is a source: what is used, and shipped, is the .qm compiled from it.
    """
    return [
        path.relative_to(ROOT).as_posix()
        for package in PACKAGES
        for path in sorted((ROOT / package).rglob("*"))
        if path.is_file() and "__pycache__" not in path.parts and path.suffix not in (".pyc", ".ts")
    ]


def test_every_file_of_the_packages_is_in_the_wheel(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        inside = set(archive.namelist())
    assert set(shipped_files()) - inside == set()


def test_sample_scenes_are_found_when_installed(wheel: Path, tmp_path: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(tmp_path)
    code = """if True:
        import sys
        sys.path.insert(0, sys.argv[1])
        import sample_scenes
        assert sample_scenes.__file__.startswith(sys.argv[1]), sample_scenes.__file__
        for name in sample_scenes.names():
            assert sample_scenes.truth(name).bands
            with open(sample_scenes.path(name), "rb") as file:
                assert file.read(2) == b"\\xff\\xd8"
            print(name)
    """
    done = subprocess.run(
        [sys.executable, "-c", code, str(tmp_path)],
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
        cwd=tmp_path,
    )
    assert done.returncode == 0, done.stderr
    assert len(done.stdout.split()) == 6
