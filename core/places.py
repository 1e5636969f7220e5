"""Where the program keeps what is the user's own and belongs to no file of theirs."""

from __future__ import annotations

from pathlib import Path


def data_folder() -> Path:
    """The user's data folder: unsaved work, and who has which study or class set open."""
    import platformdirs  # deferred: start-up time

    return Path(platformdirs.user_data_dir("gradewash", appauthor=False))
