"""Processes to be killed, forked from one that has imported everything: each begins at once."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

ROOT = Path(__file__).parents[2]

PARENT = """
import os, sys
from {module} import {function} as work
for _ in sys.stdin:
    child = os.fork()
    if not child:
        print(os.getpid(), flush=True)
        work(*sys.argv[1:])
        os._exit(0)
    os.waitpid(child, 0)
    print("\\ngone", flush=True)
"""


class Parent:
    """Begins one process after the other, each to be killed."""

    def __init__(self, process: subprocess.Popen[str]) -> None:
        assert process.stdin is not None
        assert process.stdout is not None
        self._orders, self._said = process.stdin, process.stdout

    def kill_one(self, lines: int, seconds: float) -> list[str]:
        """Let a process say some lines and work on a little, and kill it.

        Returns
        -------
        list of str
            What it said, without a line that the kill tore.
        """
        self._orders.write("\n")
        self._orders.flush()
        pid = int(self._said.readline())
        said = [self._said.readline() for _ in range(lines)]
        time.sleep(seconds)
        os.kill(pid, signal.SIGKILL)
        while (line := self._said.readline()) != "gone\n":
            said.append(line)
        # Where nothing was torn, what the parent says begins on a line of its own.
        *whole, _ = "".join(said).split("\n")[:-1]
        return whole


@contextmanager
def parent_of(module: str, function: str, *arguments: str) -> Iterator[Parent]:
    """A process whose children call a module's function with some arguments."""
    paths = os.pathsep.join(map(str, (ROOT, ROOT / "tests", ROOT / "tests" / "core")))
    with subprocess.Popen(
        [sys.executable, "-c", PARENT.format(module=module, function=function), *arguments],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": paths},
    ) as process:
        yield Parent(process)
