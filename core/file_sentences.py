"""Why a file could not be read or written, in one sentence with what to do."""

from __future__ import annotations

import errno
from pathlib import Path

from core.files import NotRegularError
from core.i18n import translate


def why_not_read(path: Path, error: OSError) -> str:
    """One sentence: why a file could not be read, and what to do."""
    if isinstance(error, FileNotFoundError | NotADirectoryError):
        text = translate("files", "There is no file {name}: it may have been moved or renamed.")
    elif isinstance(error, IsADirectoryError):
        text = translate("files", "{name} is a folder: choose a file inside it instead.")
    elif isinstance(error, NotRegularError):
        text = translate("files", "{name} is not a file: choose one.")
    elif isinstance(error, PermissionError):
        text = translate(
            "files", "You may not read {name}: ask whoever owns it, or copy it to your own folder."
        )
    elif error.errno == errno.ENAMETOOLONG:
        text = translate("files", "There is no file with so long a name: give a shorter one.")
    elif error.errno == errno.EINVAL:
        text = translate("files", "This is not the name of a file: choose one.")
    else:
        text = translate("files", "{name} cannot be read: is its disk still connected?")
    return text.format(name=shown_name(path))


def why_not_written(path: Path, error: OSError) -> str:
    """One sentence: why a file could not be written, and what to do."""
    if error.errno in (errno.ENOSPC, errno.EDQUOT):
        text = translate(
            "files", "There is no room left for {name}: free some space or save it elsewhere."
        )
    elif isinstance(error, BlockingIOError):
        text = translate("files", "{name} is being saved by another window just now: try again.")
    elif isinstance(error, IsADirectoryError):
        text = translate("files", "{name} is a folder: give the file a name of its own.")
    elif isinstance(error, NotRegularError):
        text = translate(
            "files", "{name} is not a file but a device or a pipe: save under another name."
        )
    elif isinstance(error, FileNotFoundError | NotADirectoryError):
        text = translate("files", "There is no folder for {name}: make it, or save elsewhere.")
    elif isinstance(error, PermissionError) or error.errno == errno.EROFS:
        text = translate("files", "You may not write {name} there: save it elsewhere.")
    elif error.errno == errno.ENAMETOOLONG:
        text = translate("files", "That name is too long for a file: give a shorter one.")
    elif error.errno == errno.EINVAL:
        text = translate("files", "That is not a name for a file: give another one.")
    else:
        text = translate("files", "{name} could not be written there: save it elsewhere.")
    return text.format(name=shown_name(path))


def shown_name(path: Path) -> str:
    """A file's name as it can be shown and kept anywhere; the whole path where it has none.

    A name that is not UTF-8 has a question mark for each byte that means nothing.

    >>> shown_name(Path("folder/sky.jpg"))
    'sky.jpg'
    """
    return clean_text(path.name or str(path))


def shown_path(path: Path) -> str:
    """A whole path as it can be shown; as `shown_name`."""
    return clean_text(str(path))


def clean_text(text: str) -> str:
    """The text without half characters and orders to a terminal, which a file may hold.

    >>> clean_text("sky\\x1b[31m")
    'sky?[31m'
    """
    # Neither half a character nor an order to the terminal may come out of a file's name.
    known = text.encode("utf-8", "replace").decode("utf-8")
    return "".join(c if c.isprintable() else "?" for c in known)
