"""Try the build in a Debian root that has no Python, and write down what happened.

    python -m tools.bundle.clean_root FOLDER [--suite bookworm] [--suite trixie]

FOLDER is where tools/bundle/build.py put its folder and its package. For each suite a minimal root
is made with debootstrap (as root; needs the network), and in it:

- the folder reads, mixes and checks a sample sky, with nothing installed;
- the package is installed with what it depends on, its window opens on no screen and closes, its
  menu entry, file type, manual and icon are there; then it is removed and nothing of it is left.

FOLDER/clean_root_SUITE.log holds the commands and what they printed. Ends with 1 if one failed.
"""

from __future__ import annotations

import argparse
import shutil
import subprocess
import sys
from pathlib import Path

SUITES = ("bookworm", "trixie")
PLACES = (
    "/usr/share/applications/gradewash.desktop",
    "/usr/share/icons/hicolor/scalable/apps/gradewash.svg",
    "/usr/share/man/man1/gradewash.1.gz",
    "/usr/share/mime/packages/gradewash.xml",
)
_SAMPLE = "_internal/sample_scenes/dusk.jpg"


class Trial:
    """Runs commands inside a root, writes them down, and remembers which failed."""

    def __init__(self, root: Path, log: Path) -> None:
        self.root = root
        self.failed: list[str] = []
        self._log = log.open("w", encoding="utf-8")

    def run(self, command: str, *, expect: int = 0, holds: str = "") -> None:
        """Run a shell command in the root; `holds` must be in what it prints."""
        done = subprocess.run(
            ["chroot", self.root, "/bin/sh", "-c", command],
            capture_output=True, text=True, errors="replace", timeout=600, check=False,
            stdin=subprocess.DEVNULL,
            env={"PATH": "/usr/sbin:/usr/bin:/sbin:/bin", "HOME": "/root", "LC_ALL": "C.UTF-8",
                 "DEBIAN_FRONTEND": "noninteractive"},
        )  # fmt: skip
        printed = done.stdout + done.stderr
        fine = done.returncode == expect and holds in printed
        if not fine:
            self.failed.append(command)
        tail = "\n".join(printed.strip().splitlines()[-12:])
        self._log.write(f"{'ok  ' if fine else 'FAIL'} [{done.returncode}] {command}\n{tail}\n\n")
        self._log.flush()


def make_root(folder: Path, suite: str) -> Path:
    """A minimal Debian root without Python, made anew: in one used before, things are left over."""
    root = folder / f"root_{suite}"
    if root.exists():
        shutil.rmtree(root)
    subprocess.run(["debootstrap", "--variant=minbase", suite, root], check=True)
    shutil.copy("/etc/resolv.conf", root / "etc/resolv.conf")
    return root


def try_folder(trial: Trial, built: Path) -> None:
    """The folder does its main job with nothing installed beside it."""
    shutil.rmtree(trial.root / "try", ignore_errors=True)
    shutil.copytree(built, trial.root / "try", symlinks=True)
    trial.run("command -v python3", expect=127)
    trial.run("/try/gradewash --version", holds="gradewash")
    trial.run(f"/try/gradewash read /try/{_SAMPLE}", holds="Band A is")
    trial.run(f"/try/gradewash mix /try/{_SAMPLE} --json", holds="predicted_Lab")
    trial.run(f"/try/gradewash new /try/{_SAMPLE} -o /try/lesson.gradewash", holds="Saved")
    trial.run("/try/gradewash show /try/lesson.gradewash", holds="Band")
    trial.run(
        f"/try/gradewash check /try/{_SAMPLE} /try/{_SAMPLE} --corners 0,0,1599,0,1599,999,0,999"
    )
    trial.run("/try/gradewash choose /try/_internal/sample_scenes", holds="dusk.jpg")
    # Drawing needs libraries that a desktop has and this root has not: told in a sentence.
    trial.run("/try/gradewash swatches --box school -o /try/c.pdf", expect=2, holds="libgl1")
    try_class(trial)
    trial.run("/try/gradewash read /nowhere.jpg", expect=2, holds="gradewash:")
    shutil.rmtree(trial.root / "try")


def try_class(trial: Trial) -> None:
    """A class set: worker processes start without a Python."""
    trial.run(
        f"/try/gradewash class new /try/7b --photo /try/{_SAMPLE} --codes 01-02 --class 7b",
        holds="2 students",
    )
    trial.run(f"/try/gradewash class add /try/7b /try/{_SAMPLE}", holds="1 picture is new")
    trial.run("/try/gradewash class check /try/7b", holds="1 of 1")
    trial.run(
        "/try/gradewash class table /try/7b -o /try/marks.xlsx && head -c 2 /try/marks.xlsx",
        holds="PK",
    )


def try_package(trial: Trial, package: Path) -> None:
    """The package installs, opens its window, and leaves nothing behind."""
    shutil.copy(package, trial.root / package.name)
    trial.run("apt-get update -qq")
    trial.run(f"apt-get install -y -qq --no-install-recommends /{package.name} >/dev/null")
    trial.run("dpkg -s gradewash", holds="Status: install ok installed")
    trial.run("gradewash --version", holds="gradewash")
    # The window stays open until it is told to end: 124 says that it still ran then.
    trial.run("QT_QPA_PLATFORM=offscreen timeout 15 gradewash", expect=124)
    trial.run(
        f"gradewash card /opt/gradewash/{_SAMPLE} -o /plan.pdf && head -c 5 /plan.pdf",
        holds="%PDF-",
    )
    trial.run("gradewash swatches --box school -o /c.pdf && head -c 5 /c.pdf", holds="%PDF-")
    trial.run(f"gradewash class new /7b --photo /opt/gradewash/{_SAMPLE} --codes 01-02")
    trial.run("gradewash card /7b --kind tickets -o /t.pdf && head -c 5 /t.pdf", holds="%PDF-")
    for place in PLACES:
        trial.run(f"dpkg -L gradewash | grep -x {place}")
    trial.run("apt-get purge -y -qq gradewash >/dev/null 2>&1; dpkg -s gradewash", expect=1)
    trial.run("ls -d /opt/gradewash /usr/bin/gradewash", expect=2)
    (trial.root / package.name).unlink()


def main() -> int:
    """Try every suite."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("folder", type=Path)
    parser.add_argument("--suite", action="append", choices=SUITES)
    args = parser.parse_args()
    folder = args.folder.resolve()
    failed = 0
    for suite in args.suite or SUITES:
        log = folder / f"clean_root_{suite}.log"
        trial = Trial(make_root(folder, suite), log)
        try_folder(trial, folder / "gradewash")
        for package in sorted(folder.glob("gradewash_*.deb")):
            try_package(trial, package)
        print(f"{suite}: {len(trial.failed)} failed, see {log}")
        for command in trial.failed:
            print(f"  {command}")
        failed += len(trial.failed)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
