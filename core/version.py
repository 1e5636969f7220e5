"""Which version of the program this is."""

from __future__ import annotations


def program_version() -> str:
    """The version that is installed; empty when the program runs without being installed."""
    # deferred: start-up time
    from importlib.metadata import PackageNotFoundError, version

    try:
        return version("gradewash")
    except PackageNotFoundError:
        return ""
