"""Neither the window nor a command opens a way to the network, whatever library might want to.

The printer the user asks for is not tried here: its dialog is the system's own.
"""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
from pathlib import Path

import no_network
import pytest

import sample_scenes

ROOT = Path(__file__).resolve().parents[1]
PHOTO = str(sample_scenes.path("dusk"))

pytestmark = pytest.mark.skipif(not no_network.possible(), reason="needs Linux's seccomp")

WINDOW = """
import sys
from pathlib import Path
sys.path.insert(0, "tests")
import no_network
no_network.shut()
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
import app.files.files_ask
from app.window.window import Window
from core.study import split_band

photo, folder = map(Path, sys.argv[1:])
qt = QApplication([])
window = Window(folder)
window.show()
window.opener.open_path(photo)
app.files.files_ask.ask_save_path = lambda parent, suggestion: folder / "saved.gradewash"

def look():
    if window.reader.working or not window.reader.readings:
        QTimer.singleShot(20, look)
        return
    window.document.change("split", split_band(window.document.study, 0))
    window.files.look_for_unsaved()
    window.files.save(lambda: (print("saved", flush=True), window.close(), qt.quit()))

look()
qt.exec()
"""

SOCKET = "import no_network, socket; no_network.shut(); socket.socket(socket.{family})"


# One after the other in one process: the filter stays with it to its end.
COMMANDS = """
import json, sys
import no_network
no_network.shut()
from app.main import main
for arguments in json.loads(sys.argv[1]):
    print("began", arguments[0], flush=True)
    print("ended", arguments[0], main(arguments), flush=True)
"""


def ended(*command: str, cwd: Path) -> subprocess.CompletedProcess[str]:
    environment = {
        **os.environ,
        "PYTHONPATH": os.pathsep.join([str(ROOT), str(ROOT / "tests")]),
        "QT_QPA_PLATFORM": "offscreen",
        "HOME": str(cwd),
        "XDG_CONFIG_HOME": str(cwd),
        "XDG_DATA_HOME": str(cwd),
    }
    return subprocess.run(
        [sys.executable, *command],
        cwd=cwd,
        env=environment,
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )


@pytest.mark.parametrize(("family", "dies"), [("AF_INET", 1), ("AF_INET6", 1), ("AF_UNIX", 0)])
def test_the_filter_bites(tmp_path: Path, family: str, dies: int) -> None:
    found = ended("-c", SOCKET.format(family=family), cwd=tmp_path)
    assert found.returncode == (-signal.SIGSYS if dies else 0)


def test_no_command_opens_a_socket(tmp_path: Path) -> None:
    commands = (
        ["new", PHOTO, "-o", "dusk.gradewash"],
        ["show", "dusk.gradewash"],
        ["read", PHOTO, "--json"],
        ["mix", "dusk.gradewash"],
        ["check", PHOTO, PHOTO],
        ["card", "dusk.gradewash", "-o", "card.pdf"],
        ["nothing"],
    )
    found = ended("-c", COMMANDS, json.dumps(commands), cwd=tmp_path)
    assert found.returncode == 0, found.stdout + found.stderr
    said = [line for line in found.stdout.splitlines() if line.startswith("ended ")]
    names = ("new", "show", "read", "mix", "check", "card")
    assert said == [*(f"ended {name} 0" for name in names), "ended nothing 2"]
    assert (tmp_path / "card.pdf").stat().st_size > 1000


def test_the_window_opens_no_socket(tmp_path: Path) -> None:
    program = tmp_path / "window.py"
    program.write_text(WINDOW, encoding="utf-8")
    found = ended(str(program), PHOTO, str(tmp_path), cwd=ROOT)
    assert found.returncode == 0, found.stderr
    assert "saved" in found.stdout
    assert (tmp_path / "saved.gradewash").stat().st_size > 1000
