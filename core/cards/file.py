"""Writing a card's file: wholly, or not at all."""

from __future__ import annotations

import contextlib
import errno
import os
from pathlib import Path

from core.errors import CardError
from core.i18n import translate


def write_card(path: Path, data: bytes) -> None:
    """Put the bytes of a card at `path`; a file that was there survives any failure.

    Raises
    ------
    CardError
        The folder is gone, full, or may not be written.
    """
    aside = path.with_name(f".{path.name}.part")
    try:
        if path.is_dir():
            raise IsADirectoryError(errno.EISDIR, "a folder", str(path))
        with aside.open("wb") as stream:
            stream.write(data)
            stream.flush()
            os.fsync(stream.fileno())
        os.replace(aside, path)
    except OSError as error:
        with contextlib.suppress(OSError):
            aside.unlink(missing_ok=True)
        raise CardError(_sentence(path, error)) from error


def _sentence(path: Path, error: OSError) -> str:
    if isinstance(error, IsADirectoryError):
        text = translate("cards", "{name} is a folder: give the card a name of its own.")
    elif error.errno in (errno.ENOSPC, errno.EDQUOT):
        text = translate(
            "cards", "There is no room left for {name}: free some space or save it elsewhere."
        )
    elif isinstance(error, FileNotFoundError | NotADirectoryError):
        text = translate("cards", "There is no folder for {name}: save the card elsewhere.")
    elif isinstance(error, PermissionError) or error.errno == errno.EROFS:
        text = translate("cards", "You may not write {name} there: save the card elsewhere.")
    else:
        text = translate("cards", "{name} could not be written: save the card elsewhere.")
    return text.format(name=path.name)
