"""Writing a card's file: wholly, or not at all."""

from __future__ import annotations

from pathlib import Path

from core.errors import CardError
from core.file_sentences import why_not_written
from core.files import write_file


def write_card(path: Path, data: bytes) -> None:
    """Put the bytes of a card at `path`; a file that was there survives any failure.

    Raises
    ------
    CardError
        The folder is gone, full, or may not be written.
    """
    try:
        write_file(path, data)
    except OSError as error:
        raise CardError(why_not_written(path, error)) from error
