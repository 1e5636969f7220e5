"""Write the mark list as CSV or XLSX."""

from __future__ import annotations

import argparse
from pathlib import Path

from core.class_set.folder import FILE_NAME, read_class_set
from core.class_set.key_file import key_from
from core.class_set.table import COLUMNS, IMPORT, mark_list, table_as_csv, table_as_xlsx
from core.cli.class_set.common import add_folder, sorted_now
from core.cli.layout import say
from core.cli.output import output_path
from core.errors import ClassSetError, UsageError
from core.file_sentences import shown_name, why_not_written
from core.files import write_file
from core.i18n import translate


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash class table`."""
    add_folder(parser)
    parser.add_argument(
        "-o",
        "--output",
        metavar="FILE",
        required=True,
        help=translate("command line", "the table to write: its name ends in .csv or .xlsx"),
    )
    parser.add_argument(
        "--key",
        metavar="FILE",
        help=translate(
            "command line",
            "your own CSV with a code and the school's id on each line: adds the column id; it "
            "is read and not kept",
        ),
    )
    parser.add_argument(
        "--columns",
        metavar="NAME,NAME,...",
        help=translate(
            "command line",
            "which columns; import stands for the three a gradebook takes in. All there are: "
            "{names}",
        ).format(names=", ".join(COLUMNS)),
    )


def run(args: argparse.Namespace) -> int:
    """Make the table and write it."""
    folder = Path(args.folder)
    output = output_path(args.output, folder / FILE_NAME, ".csv", replace=True, also=(".xlsx",))
    kind = output.suffix.lower()
    if kind not in (".csv", ".xlsx"):
        raise UsageError(
            translate(
                "command line", "{name} must end in .csv or .xlsx: give it one of the two."
            ).format(name=shown_name(output))
        )
    class_set = read_class_set(folder)
    ids = None if args.key is None else key_from(Path(args.key), class_set.class_list)
    columns = _columns(args.columns, with_id=ids is not None)
    placement = sorted_now(folder, class_set).placement
    rows = mark_list(class_set, placement, columns, ids)
    csv = kind == ".csv"
    data = table_as_csv(rows) if csv else table_as_xlsx(rows, columns, class_set.title)
    try:
        write_file(output, data)
    except OSError as error:
        raise ClassSetError(why_not_written(output, error)) from error
    say(translate("command line", "Wrote {name}.").format(name=shown_name(output)))
    return 0


def _columns(text: str | None, *, with_id: bool) -> tuple[str, ...]:
    if text is None:
        return tuple(column for column in COLUMNS if column != "id" or with_id)
    if text.strip().lower() == "import":
        return ("id", *IMPORT[1:]) if with_id else IMPORT
    return tuple(piece.strip().lower() for piece in text.split(",") if piece.strip())
