"""Opening the files that a command is given; what is said of one names it."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from core.cli.layout import complain
from core.errors import GradewashError
from core.file_sentences import shown_name
from core.study_file.opening import FromFile, open_file


def opened(path: Path) -> FromFile:
    """The photo or study at `path`; what is damaged in a study is told on the error channel.

    Raises
    ------
    PhotoError, StudyFileError
        It cannot be opened: one sentence with the file's name.
    """
    with naming(shown_name(path)):
        found = open_file(path)
    if found.damage:
        complain(f"{shown_name(path)}: {found.damage}")
    return found


@contextmanager
def naming(name: str) -> Iterator[None]:
    """Put a file's name before an error that does not say which file it is about."""
    try:
        yield
    except GradewashError as error:
        if name in str(error):
            raise
        raise type(error)(f"{name}: {error}") from error
