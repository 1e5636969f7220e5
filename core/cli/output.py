"""Where a command writes: everything that can be said against it is said before the work."""

from __future__ import annotations

import os
from pathlib import Path

from core.errors import UsageError
from core.file_sentences import shown_name, shown_path, why_not_written
from core.files import why_not_writable
from core.i18n import translate


def output_path(
    asked: str, source: Path, suffix: str, *, replace: bool, also: tuple[str, ...] = ()
) -> Path:
    """The file to write.

    Parameters
    ----------
    asked : str
        As it was given; a name without an ending gets `suffix`.
    source : Path
        What is read: never replaced.
    replace : bool
        Whether another file that is there already may be; one with another ending than `suffix`
        may not, for it is hardly an older one of the same.
    also : tuple of str
        Further endings of what this command writes.

    Raises
    ------
    UsageError
        One sentence.
    """
    path = Path(asked)
    error = why_not_writable(path) if asked else None
    if not asked:
        raise UsageError(translate("command line", "-o needs the name of a file: give one."))
    if error is None and path.name and not path.suffix:
        path = path.with_suffix(suffix)
        error = why_not_writable(path)
    if error is not None:
        raise UsageError(why_not_written(path, error)) from error
    if not path.parent.is_dir():
        raise UsageError(
            translate(
                "command line",
                "There is no folder {name}: make it first, or choose another by -o.",
            ).format(name=shown_path(path.parent))
        )
    if _is_same(path, source):
        raise UsageError(
            translate(
                "command line", "-o {name} would replace what is read: give another name."
            ).format(name=shown_name(path))
        )
    if path.exists() and not replace:
        raise UsageError(
            translate(
                "command line",
                "{name} is there already: choose another name with -o, or replace it with --force.",
            ).format(name=shown_name(path))
        )
    if path.exists() and path.suffix.lower() not in (suffix, *also):
        raise UsageError(
            translate(
                "command line", "{name} is there already and is no {ending}: choose another name."
            ).format(name=shown_name(path), ending=suffix)
        )
    return path


def _is_same(path: Path, source: Path) -> bool:
    try:
        return path.exists() and os.path.samefile(path, source)
    except OSError:
        return False
