"""Show that every package Gradewash needs is there for Windows and macOS too, ready built.

    python -m tools.bundle.wheels

Asks pip for the wheels of each system and Python version, building nothing; prints a line each.
Ends with 1 if one is missing. Needs the network.
"""

from __future__ import annotations

import subprocess
import sys
import tempfile
import tomllib
from itertools import product
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PLATFORMS = {
    "win_amd64": ("win_amd64",),
    # A wheel for an older macOS fits a newer one.
    "macosx_arm64": (
        *(f"macosx_{n}_0_arm64" for n in range(11, 15)),
        *(f"macosx_{n}_universal2" for n in ("10_9", "10_13", "11_0", "12_0", "13_0")),
    ),
}
VERSIONS = ("3.11", "3.12", "3.13")


def needed(version: str) -> list[str]:
    """The run-time dependencies of pyproject.toml that hold for a Python version."""
    # pip evaluates markers for the Python that runs it, so those of ours are sorted out here.
    from packaging.requirements import Requirement

    with (ROOT / "pyproject.toml").open("rb") as file:
        wanted = map(Requirement, tomllib.load(file)["project"]["dependencies"])
    found = []
    for one in wanted:
        if one.marker is None or one.marker.evaluate({"python_version": version}):
            one.marker = None
            found.append(str(one))
    return found


def there(platform: str, version: str) -> str:
    """What pip complains of; empty when every wheel is there."""
    with tempfile.TemporaryDirectory() as folder:
        command = [sys.executable, "-m", "pip", "download", "-q", "--only-binary=:all:",
                   "--dest", folder, "--python-version", version, "--implementation", "cp",
                   *(word for name in PLATFORMS[platform] for word in ("--platform", name)),
                   *needed(version)]  # fmt: skip
        done = subprocess.run(command, capture_output=True, text=True, check=False)
        wheels = len(list(Path(folder).glob("*.whl")))
    if done.returncode:
        return (done.stderr.strip().splitlines() or ["pip failed"])[-1]
    print(f"{platform}, Python {version}: {wheels} wheels, all there")
    return ""


def main() -> int:
    """Ask for each system and version."""
    missing = 0
    for platform, version in product(PLATFORMS, VERSIONS):
        problem = there(platform, version)
        if problem:
            print(f"{platform}, Python {version}: {problem}")
            missing += 1
    return 1 if missing else 0


if __name__ == "__main__":
    sys.exit(main())
