"""What a command line may meet: odd names, odd outputs, an interruption at any moment."""

from __future__ import annotations

import json
import os
import random
import signal
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest
from photo_files import encode, jpeg
from PIL import Image

import sample_scenes
from core.cli import run
from core.pictures import PictureStore, kept_name, may_name_somebody
from core.study import MOST_TITLE, Study, study_of
from core.study_file.document import study_to_bytes
from core.worksheet.worksheet import Worksheet

ROOT = Path(__file__).resolve().parents[3]
DUSK = str(sample_scenes.path("dusk"))
pytestmark = pytest.mark.skipif(os.name == "nt", reason="pipes, links and signals of POSIX")


def started(*arguments: str, **options: object) -> subprocess.CompletedProcess[bytes]:
    environment = {k: v for k, v in os.environ.items() if k not in SCREEN}
    environment |= {"PYTHONPATH": str(ROOT)}
    return subprocess.run(  # type: ignore[call-overload]
        [sys.executable, "-m", "app", *arguments],
        env={**environment, **options.pop("env", {})},
        stderr=subprocess.PIPE,
        timeout=120,
        check=False,
        **{"stdout": subprocess.PIPE, **options},
    )


SCREEN = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")


def one_line(error: str) -> str:
    assert error.startswith("gradewash: ")
    assert error.endswith((".\n", ")\n"))
    assert error.count("\n") == 1
    return error


@pytest.fixture
def sky(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    rows = np.linspace((60, 90, 160), (230, 180, 120), 60).astype(np.uint8)
    path = tmp_path / "self.jpg"
    path.write_bytes(jpeg(np.repeat(rows[:, None], 80, axis=1)))
    return path


@pytest.mark.parametrize(
    "output", ["self.jpg", "./self.jpg", "link.jpg", ".", "", "/", "x" * 300, "a/b/c", "/dev/null"]
)
@pytest.mark.parametrize("force", [[], ["--force"]])
def test_new_writes_nothing_where_it_must_not(sky, output, force, capsys) -> None:
    (sky.parent / "link.jpg").symlink_to(sky)
    before = sky.read_bytes()
    names = set(os.listdir())
    assert run(["new", "self.jpg", "-o", output, *force]) == 2
    one_line(capsys.readouterr().err)
    assert sky.read_bytes() == before
    assert set(os.listdir()) == names


def test_a_pipe_as_study_box_or_photo_does_not_hang(sky, capsys) -> None:
    os.mkfifo("pipe.gradewash")
    os.mkfifo("pipe.json")
    for arguments in (
        ["show", "pipe.gradewash"],
        ["read", "pipe.gradewash"],
        ["mix", "self.jpg", "--box", "pipe.json"],
        ["mix", "self.jpg", "--box", "/dev/zero"],
        ["read", "/dev/zero"],
    ):
        assert run(arguments) == 2
        one_line(capsys.readouterr().err)


def test_a_name_that_is_not_utf8(sky) -> None:
    os.rename("self.jpg", b"caf\xe9.jpg")
    name = os.fsdecode(b"caf\xe9.jpg")
    made = started("new", name, cwd=sky.parent)
    assert made.returncode == 0, made.stderr
    assert b"Saved caf?.gradewash." in made.stdout
    assert os.path.exists(b"caf\xe9.gradewash")
    shown = started("show", os.fsdecode(b"caf\xe9.gradewash"), "--json", cwd=sky.parent)
    assert json.loads(shown.stdout)["photo"]["file"] == "caf?.jpg"
    gone = started("read", os.fsdecode(b"g\xf3ne.jpg"), cwd=sky.parent)
    assert gone.returncode == 2
    assert b"There is no file g?ne.jpg" in gone.stderr


def test_orders_to_the_terminal_are_not_passed_on(sky, capsys) -> None:
    study = Study("\x1b[31mred\x07", worksheet=Worksheet("\x1b]0;x\x07", remark="a\x1b[2J\r\nb"))
    Path("odd.gradewash").write_bytes(study_to_bytes(study, PictureStore()))
    assert run(["show", "odd.gradewash"]) == 0
    said = capsys.readouterr().out
    assert "red" in said
    assert not set(said) & set("\x1b\x07\r")
    Path("bad\x1b[31m.jpg").write_bytes(b"x")
    assert run(["read", "bad\x1b[31m.jpg"]) == 2
    assert "\x1b" not in capsys.readouterr().err


def test_a_title_has_a_limit(sky, capsys) -> None:
    for title in ("x" * (MOST_TITLE + 1), "x" * 9000, " ", ""):
        assert run(["new", "self.jpg", "-o", "t.gradewash", "--title", title]) == 2
        assert "--title" in one_line(capsys.readouterr().err)
    assert run(["new", "self.jpg", "-o", "t.gradewash", "--title", "x" * MOST_TITLE]) == 0
    assert len(study_of(PictureStore().add_clean("y" * 250 + ".jpg", b"")).title) <= MOST_TITLE


@pytest.mark.parametrize(
    "name", ["Anna Tester 7b.jpg", "Tester_Anna.png", "anna 7B.jpg", "Anna-Maria Tester.heic"]
)
def test_a_persons_name_is_not_kept(sky, name, capsys) -> None:
    assert may_name_somebody(name)
    os.rename("self.jpg", name)
    assert run(["new", name, "-o", "t.gradewash"]) == 0
    assert "code" in capsys.readouterr().out
    data = Path("t.gradewash").read_bytes()
    assert b"Tester" not in data
    assert run(["show", "t.gradewash"]) == 0
    assert "tester" not in capsys.readouterr().out.lower()


@pytest.mark.parametrize("name", ["dusk.jpg", "IMG_2041.JPG", "dusk over Ems.jpg", "7.jpg", "Ems"])
def test_other_names_are_kept(name) -> None:
    assert kept_name(name) == name


@pytest.mark.parametrize(
    "corners", ["1e308,0,1,0,1,1,0,1", "-1e300,0,1,0,1,1,0,1", "0,0,9e9,0,1,1,0,1"]
)
def test_corners_out_of_all_reason(sky, corners, capsys) -> None:
    assert run(["check", "self.jpg", "self.jpg", f"--corners={corners}"]) == 2
    one_line(capsys.readouterr().err)


@pytest.mark.parametrize("size", [(300, 1), (300, 2), (1, 300), (2, 300), (1, 1), (15, 15)])
def test_a_photo_of_a_few_pixels(sky, size, capsys) -> None:
    Path("small.png").write_bytes(encode(Image.new("RGB", size, (90, 120, 200)), "PNG"))
    for arguments in (["check", "small.png", "self.jpg"], ["check", "self.jpg", "small.png"]):
        code = run(arguments)
        found = capsys.readouterr()
        if code:
            assert code == 2
            one_line(found.err)
        else:
            assert found.err == ""


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="needs a device that is always full")
@pytest.mark.parametrize("how", ["full", "closed", "gone"])
def test_an_output_that_takes_nothing(sky, how) -> None:
    command = f'"{sys.executable}" -m app new self.jpg -o "{how}.gradewash"'
    shell = {
        "full": f"{command} >/dev/full",
        "closed": f"{command} >&-",
        "gone": f"{command} | true",
    }[how]
    found = subprocess.run(
        ["sh", "-c", shell],
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        cwd=sky.parent,
        stderr=subprocess.PIPE,
        timeout=120,
        check=False,
    )
    assert b"Traceback" not in found.stderr
    assert found.stderr.count(b"\n") == (0 if how == "gone" else 1)
    assert found.returncode == (0 if how == "gone" else 2)
    assert Path(f"{how}.gradewash").stat().st_size > 1000


@pytest.mark.parametrize("arguments", [["misspelt.jpg"], ["."], [""], []])
@pytest.mark.parametrize("screen", [{}, {"DISPLAY": ":977"}, {"WAYLAND_DISPLAY": "none"}])
def test_without_a_screen(sky, arguments, screen) -> None:
    if not sys.platform.startswith("linux"):
        pytest.skip("asks X11 and Wayland")
    found = started(*arguments, cwd=sky.parent, env=screen)
    assert found.returncode == 2
    one_line(found.stderr.decode())


MOMENTS = 12
INTERRUPTED = """
import os, signal, sys
signal.signal(signal.SIGINT, signal.SIG_DFL)
moment = float(sys.argv.pop(1))
# By the processor's time, which does not depend on what else the machine does.
signal.signal(signal.SIGVTALRM, lambda *_: os.kill(os.getpid(), signal.SIGINT))
signal.setitimer(signal.ITIMER_VIRTUAL, moment)
from app.__main__ import main
status = main()
left, _ = signal.setitimer(signal.ITIMER_VIRTUAL, 0)
print(moment - left)
sys.exit(status)
"""


def test_interrupted_at_any_moment_it_is_silent(sky) -> None:
    """Ctrl+C from the start of the program's own code on, also while it is being imported."""

    def ended(moment: float, name: str) -> subprocess.CompletedProcess[bytes]:
        return subprocess.run(
            [sys.executable, "-c", INTERRUPTED, str(moment), "new", "self.jpg", "-o", name],
            cwd=sky.parent,
            env={**os.environ, "PYTHONPATH": str(ROOT)},
            capture_output=True,
            timeout=120,
            check=False,
        )

    whole = ended(100.0, "whole.gradewash")
    assert whole.returncode == 0
    takes, rng = float(whole.stdout.split()[-1]), random.Random(4)
    statuses = []
    for turn in range(MOMENTS):
        moment = takes * (turn + rng.random()) / MOMENTS + 0.001
        found = ended(moment, f"{turn}.gradewash")
        assert found.stderr == b""
        assert found.returncode in (0, 130, -signal.SIGINT)
        statuses.append(found.returncode)
    assert sum(status != 0 for status in statuses) > MOMENTS / 2
    assert all(name.endswith((".gradewash", ".jpg")) for name in os.listdir(sky.parent))


# Names that no file has, at every argument that takes one

_NAMES = [
    ("read", "{}"),
    ("new", "{}"),
    ("show", "{}"),
    ("mix", "{}"),
    ("mix", DUSK, "--box", "{}"),
    ("check", DUSK, "{}"),
    ("check", "{}", DUSK),
    ("choose", "{}"),
    ("choose", ".", "--box", "{}"),
    ("scrap", "{}", DUSK),
    ("paints", "{}", "--box", "school", "-o", "box.json"),
    ("paints", DUSK, "--box", "{}", "-o", "box.json"),
    ("class", "new", "{}", "--photo", DUSK, "--codes", "01-02"),
    ("class", "new", "set", "--photo", "{}", "--codes", "01-02"),
    ("class", "new", "set", "--photo", DUSK, "--codes", "{}"),
    ("class", "new", "set", "--from", "{}"),
    ("class", "add", "{}", DUSK),
    ("class", "show", "{}"),
    ("class", "check", "{}"),
    ("class", "tidy", "{}"),
    ("class", "delete", "{}"),
    ("class", "table", "{}", "-o", "marks.csv"),
]


@pytest.mark.parametrize("name", ["", "a" * 300 + ".jpg"])
@pytest.mark.parametrize("arguments", _NAMES, ids=" ".join)
def test_a_name_no_file_has_is_one_sentence(arguments, name, tmp_path, monkeypatch, capsys) -> None:
    monkeypatch.chdir(tmp_path)
    assert run([name if word == "{}" else word for word in arguments]) == 2
    said = capsys.readouterr()
    assert said.err.startswith("gradewash: ")
    assert said.err.count("\n") == 1
    assert "Traceback" not in said.err
    assert not list(tmp_path.iterdir())


def test_a_table_never_takes_another_files_place(tmp_path, monkeypatch, capsys) -> None:
    monkeypatch.chdir(tmp_path)
    assert run(["class", "new", "set", "--photo", DUSK, "--codes", "01-02"]) == 0
    Path("notes.gradewash").write_bytes(b"a study")
    Path("marks.csv").write_bytes(b"older marks")
    assert run(["class", "table", "set", "-o", "notes.gradewash"]) == 2
    assert "is no .csv" in capsys.readouterr().err
    assert Path("notes.gradewash").read_bytes() == b"a study"
    assert run(["class", "table", "set", "-o", "marks.csv"]) == 0


def test_a_class_set_needs_a_folder(tmp_path, monkeypatch, capsys) -> None:
    monkeypatch.chdir(tmp_path)
    Path("7b").write_bytes(b"notes")
    assert run(["class", "new", "7b", "--photo", DUSK, "--codes", "01-02"]) == 2
    assert "7b is not a folder" in capsys.readouterr().err
    assert Path("7b").read_bytes() == b"notes"
