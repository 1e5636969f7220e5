"""Build the folder to hand out, and the Debian package of it.

    python -m tools.bundle.build FOLDER [--deb]

Makes an environment of its own in FOLDER/env with the packages of the lock file and PyInstaller, so
that nothing of a developer's environment gets in; then FOLDER/gradewash, which runs on a machine
without Python, and with --deb FOLDER/gradewash_VERSION_amd64.deb. Says how large both are. Needs
the network for the packages. On Windows and macOS the same command builds the folder (it was never
run there).
"""

from __future__ import annotations

import argparse
import os
import shutil
import subprocess
import sys
import tomllib
import venv
from hashlib import sha256
from pathlib import Path

from tools.bundle.deb import build_deb

ROOT = Path(__file__).resolve().parents[2]
SPEC = Path(__file__).with_name("gradewash.spec")
MOST_MB = 250
PYINSTALLER = "pyinstaller>=6.10"


def version() -> str:
    """The version in pyproject.toml."""
    with (ROOT / "pyproject.toml").open("rb") as file:
        return str(tomllib.load(file)["project"]["version"])


def size_mb(folder: Path) -> float:
    """What the files of a folder hold, in MB (10^6 bytes); a link counts nothing."""
    files = (path for path in folder.rglob("*") if path.is_file() and not path.is_symlink())
    return sum(path.stat().st_size for path in files) / 1e6


def make_environment(folder: Path) -> Path:
    """An environment with what Gradewash needs and PyInstaller; gives its Python."""
    python = folder / ("Scripts/python.exe" if os.name == "nt" else "bin/python")
    if not python.exists():
        venv.create(folder, with_pip=True)
    what = ["--require-hashes", "-r", str(ROOT / "locks" / "run.txt")]
    # Of Gradewash itself only its name and version: the code is taken from this folder.
    for wanted in (what, ["--no-deps", str(ROOT)], [PYINSTALLER]):
        subprocess.run([python, "-m", "pip", "install", "-q", *wanted], check=True)
    return python


def make_small(folder: Path) -> None:
    """On Linux: take the debugging names out of Python's own libraries, and keep equal files once.

    The libraries of wheels stay as they are: they were patched, and stripping breaks some.
    """
    tool = shutil.which("strip")
    if not sys.platform.startswith("linux") or tool is None:
        return
    for file in (*folder.rglob("libpython*.so*"), *folder.rglob("lib-dynload/*.so")):
        subprocess.run([tool, "--strip-unneeded", file], check=True)
    first: dict[bytes, Path] = {}
    for file in sorted(folder.rglob("*.so*")):
        if file.is_symlink() or not file.is_file():
            continue
        kept = first.setdefault(sha256(file.read_bytes()).digest(), file)
        if kept is not file:
            file.unlink()
            file.symlink_to(os.path.relpath(kept, file.parent))


def build(folder: Path) -> Path:
    """Build the folder to hand out; gives where it is."""
    folder.mkdir(parents=True, exist_ok=True)
    python = make_environment(folder / "env")
    arguments = [
        "--noconfirm",
        "--log-level",
        "ERROR",
        "--distpath",
        folder,
        "--workpath",
        folder / "work",
    ]
    subprocess.run([python, "-m", "PyInstaller", *arguments, SPEC], check=True, cwd=folder)
    shutil.rmtree(folder / "work", ignore_errors=True)
    made = folder / "gradewash"
    make_small(made)
    return made


def main() -> int:
    """Build, and say how large it is."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("folder", type=Path)
    parser.add_argument("--deb", action="store_true", help="a Debian package as well")
    args = parser.parse_args()
    made = build(args.folder.resolve())
    size = size_mb(made)
    print(f"{made}: {size:.0f} MB unpacked, at most {MOST_MB} wanted")
    if args.deb:
        package = build_deb(made, args.folder.resolve(), version())
        print(f"{package}: {package.stat().st_size / 1e6:.0f} MB")
    return 0 if size <= MOST_MB else 1


if __name__ == "__main__":
    sys.exit(main())
