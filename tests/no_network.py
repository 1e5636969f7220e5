"""Runs a module with no way to the network: the kernel ends it when it opens an internet socket.

    python -m tests.no_network app read sky.jpg

A filter of system calls (seccomp) is set before anything is imported, so that C libraries are held
to it too. Sockets of this machine alone (AF_UNIX: the screen, the desktop) stay allowed.

Source: Linux, Documentation/userspace-api/seccomp_filter.rst; linux/filter.h, linux/seccomp.h.
"""

from __future__ import annotations

import ctypes
import platform
import runpy
import struct
import sys

# Number of the system call `socket`, and the mark of the architecture (linux/audit.h).
_SYSTEMS = {"x86_64": (41, 0xC000003E), "aarch64": (198, 0xC00000B7)}
_AF_INET, _AF_INET6 = 2, 10
_NO_NEW_PRIVS, _SET_SECCOMP, _FILTER = 38, 22, 2
_ALLOW, _KILL = 0x7FFF0000, 0x80000000
_LOAD, _EQUAL, _RETURN = 0x20, 0x15, 0x06


def possible() -> bool:
    """Whether this system can be held to it."""
    return sys.platform == "linux" and platform.machine() in _SYSTEMS


def shut() -> None:
    """From now on an internet socket ends the process with SIGSYS.

    Raises
    ------
    OSError
        The kernel does not take the filter.
    """
    call, mark = _SYSTEMS[platform.machine()]
    steps = [
        (_LOAD, 0, 0, 4),  # the architecture
        (_EQUAL, 0, 6, mark),
        (_LOAD, 0, 0, 0),  # the call's number
        (_EQUAL, 0, 4, call),
        (_LOAD, 0, 0, 16),  # its first argument: the family of addresses
        (_EQUAL, 1, 0, _AF_INET),
        (_EQUAL, 0, 1, _AF_INET6),
        (_RETURN, 0, 0, _KILL),
        (_RETURN, 0, 0, _ALLOW),
    ]
    program = b"".join(struct.pack("HBBI", *step) for step in steps)
    code = ctypes.create_string_buffer(program)
    header = struct.pack("HL", len(steps), ctypes.addressof(code))
    libc = ctypes.CDLL(None, use_errno=True)
    for arguments in ((_NO_NEW_PRIVS, 1, 0, 0, 0), (_SET_SECCOMP, _FILTER, header, 0, 0)):
        if libc.prctl(*arguments) != 0:
            raise OSError(ctypes.get_errno(), "the filter was not taken")


if __name__ == "__main__":
    shut()
    module, sys.argv = sys.argv[1], sys.argv[1:]
    runpy.run_module(module, run_name="__main__", alter_sys=True)
