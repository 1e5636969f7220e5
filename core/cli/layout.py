"""How the command line sets its words: tables in columns, sentences folded to the terminal.

What goes into a file or another program is not folded: there a sentence is one line.
"""

from __future__ import annotations

import contextlib
import re
import shutil
import sys
import textwrap
from collections.abc import Sequence
from itertools import zip_longest

_GAP = "  "
_NARROWEST = 7
"""A column of a table is not squeezed further than this."""
_LEAD = re.compile(r" *(?:[+>!-] |\d+\. )?")


def terminal_width() -> int | None:
    """Columns of the terminal that is written to; None for a file or a pipe."""
    return shutil.get_terminal_size().columns if sys.stdout.isatty() else None


def table(rows: Sequence[Sequence[str]], width: int | None = None) -> list[str]:
    """The rows in columns, two spaces apart.

    Parameters
    ----------
    rows : sequence of sequence of str
        All of one length.
    width : int, optional
        What the table may measure: where it is wider, the widest columns take several lines.
    """
    widths = [max(len(cell) for cell in column) for column in zip(*rows, strict=True)]
    if width is not None:
        gaps = len(_GAP) * (len(widths) - 1)
        while sum(widths) + gaps > width and max(widths) > _NARROWEST:
            widths[widths.index(max(widths))] -= 1
    lines = []
    for row in rows:
        cells = [_broken(cell, most) for cell, most in zip(row, widths, strict=True)]
        for pieces in zip_longest(*cells, fillvalue=""):
            padded = (piece.ljust(most) for piece, most in zip(pieces, widths, strict=True))
            lines.append(_GAP.join(padded).rstrip())
    return lines


def _broken(cell: str, width: int) -> list[str]:
    return [cell] if len(cell) <= width else textwrap.wrap(cell, width)


def fold(text: str, width: int | None) -> str:
    """Break long sentences between words; later lines stand below the first word.

    A line of a table, which holds gaps, is left as it is.

    Examples
    --------
    >>> print(fold("> Lay the next wash while the sheet still shines.", 32))
    > Lay the next wash while the
      sheet still shines.
    """
    if width is None:
        return text
    return "\n".join(_folded(line, width) for line in text.split("\n"))


def _folded(line: str, width: int) -> str:
    found = _LEAD.match(line)
    lead = len(found[0]) if found else 0
    if len(line) <= width or _GAP in line[lead:]:
        return line
    return textwrap.fill(
        line, width, subsequent_indent=" " * lead, break_long_words=False, break_on_hyphens=False
    )


def say(text: str) -> None:
    """Print it, folded to the terminal."""
    print(fold(plain(text), terminal_width()))


def plain(text: str) -> str:
    """The text without orders to the terminal, which a title or an answer may hold.

    >>> plain("red \\x1b[31malert")
    'red ?[31malert'
    """
    return "".join(c if c.isprintable() or c == "\n" else "?" for c in text)


def complain(text: str) -> None:
    """Say what is wrong: one line on the error channel, if there is one."""
    if sys.stderr is not None:
        with contextlib.suppress(OSError):
            print(f"gradewash: {plain(' '.join(text.split()))}", file=sys.stderr, flush=True)
