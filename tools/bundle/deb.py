"""The Debian package: the built folder under /opt, with menu entry, icon, file type and manual."""

from __future__ import annotations

import gzip
import shutil
import subprocess
from pathlib import Path

from tools.system_libraries import LIBRARIES

HERE = Path(__file__).parent
SHARE = HERE / "share"

# A package was renamed in Debian 13: either name will do.
_EITHER = {"libglib2.0-0": "libglib2.0-0t64 | libglib2.0-0"}


def depends() -> str:
    """The system libraries that Qt needs, as ./run names them."""
    return ", ".join(sorted({_EITHER.get(name, name) for name in LIBRARIES.values()}))


def control(version: str, size_kb: int) -> str:
    """The package's description."""
    return f"""Package: gradewash
Version: {version}
Section: education
Priority: optional
Architecture: amd64
Installed-Size: {size_kb}
Depends: libc6 (>= 2.36), {depends()}
Recommends: libcups2
Maintainer: Gradewash maintainers <maintainers@gradewash.invalid>
Description: read a sky photo in bands and plan a watercolour of it
 For art teachers: reads a photo of a sky in bands (hue, value, intensity),
 plans the mixes from the paints in the box, checks the painted sheets against
 the photo, and keeps scores and answers.
"""


def build_deb(built: Path, folder: Path, version: str) -> Path:
    """Make the package.

    Parameters
    ----------
    built : Path
        The folder to hand out.
    folder : Path
        Where the package goes.
    version : str

    Returns
    -------
    Path
        The package.
    """
    root = folder / "deb"
    shutil.rmtree(root, ignore_errors=True)
    opt = root / "opt" / "gradewash"
    shutil.copytree(built, opt, symlinks=True)
    share = root / "usr" / "share"
    for name, place in (
        ("gradewash.desktop", "applications"),
        ("gradewash.xml", "mime/packages"),
        ("gradewash.svg", "icons/hicolor/scalable/apps"),
    ):
        (share / place).mkdir(parents=True)
        shutil.copy(SHARE / name, share / place / name)
    manual = share / "man" / "man1" / "gradewash.1.gz"
    manual.parent.mkdir(parents=True)
    manual.write_bytes(gzip.compress((SHARE / "gradewash.1").read_bytes(), mtime=0))
    doc = share / "doc" / "gradewash"
    doc.mkdir(parents=True)
    shutil.copy(opt / "_internal" / "LICENSE", doc / "copyright")
    programs = root / "usr" / "bin"
    programs.mkdir(parents=True)
    (programs / "gradewash").symlink_to("/opt/gradewash/gradewash")
    size_kb = (
        sum(p.stat().st_size for p in root.rglob("*") if p.is_file() and not p.is_symlink()) // 1024
    )
    (root / "DEBIAN").mkdir()
    (root / "DEBIAN" / "control").write_text(control(version, size_kb), encoding="utf-8")
    for path in root.rglob("*"):
        if not path.is_symlink():
            path.chmod(0o755 if path.is_dir() or path.stat().st_mode & 0o100 else 0o644)
    package = folder / f"gradewash_{version}_amd64.deb"
    subprocess.run(
        ["dpkg-deb", "--root-owner-group", "-Zxz", "--build", root, package],
        check=True,
        stdout=subprocess.DEVNULL,
    )
    shutil.rmtree(root)
    return package
