"""What the start imports, and when: in processes of their own, since imports are for good."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]


def modules_after(code: str) -> set[str]:
    """The modules that are there after `code`."""
    program = f"{code}\nimport json, sys\nprint(json.dumps(sorted(sys.modules)))"
    done = subprocess.run(
        [sys.executable, "-c", program],
        check=True,
        capture_output=True,
        text=True,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )
    return set(json.loads(done.stdout.splitlines()[-1]))


def test_the_window_waits_for_no_page_but_the_first() -> None:
    found = modules_after("import app.start, app.read.page")
    later = {
        "app.classset.actions",
        "app.mix.page",
        "app.worksheet.page",
        "app.classview.view",
        "app.guide.window",
        "core.paint.plan",
        "core.class_set.folder",
        "core.class_set.pool",
        "core.sheet.check",
        "importlib.metadata",
        "colour",
        "scipy",
        "skimage",
    }
    assert found & later == set()


def test_the_first_photo_s_thread_has_nothing_of_ours_left_to_import() -> None:
    """Two threads that import the same packages may find them half made, and fail."""
    photo = ROOT / "sample_scenes" / "dusk.jpg"
    begin = f"""
from pathlib import Path
from app.main import open_early
future = open_early(Path({str(photo)!r}))
"""
    no_thread = "import threading; threading.Thread.start = lambda thread: None"
    before = modules_after(no_thread + begin)
    ours = {
        name
        for name in modules_after(begin + "future.result()") - before
        if name.split(".")[0] in ("app", "core")
    }
    # What reads one kind of file is left to the thread: the window imports none of it.
    assert {name.rpartition(".")[0] for name in ours} <= {"core.photo"}
