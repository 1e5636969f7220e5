"""The trap of PySide6 6.12.0 on Python 3.11: each Qt call that returns nothing loses a reference
to None, and after some thousands the interpreter aborts. The versions we ask for must not."""

from __future__ import annotations

import os
import subprocess
import sys

PROGRAM = """
from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QUndoStack
app = QCoreApplication([])
stack = QUndoStack()
for _ in range(20_000):
    stack.setClean()
print("alive")
"""


def test_twenty_thousand_calls_that_return_nothing() -> None:
    # In a process of its own: an abort would take the whole test run with it.
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    run = subprocess.run(
        [sys.executable, "-c", PROGRAM],
        capture_output=True,
        text=True,
        timeout=120,
        env=environment,
        check=False,
    )
    assert run.returncode == 0, run.stderr
    assert run.stdout.strip() == "alive"
