"""`gradewash class`: a class's studies from the command line, one verb a step of the evening.

A verb is a module with `add_arguments` and `run`; `core.cli` imports it, and it may import
`core.class_set`.
"""

from __future__ import annotations

import argparse
from collections.abc import Mapping
from importlib import import_module

from core.cli.parser import Parser
from core.i18n import translate

VERBS: dict[str, str] = {
    "new": "core.cli.class_set.new",
    "add": "core.cli.class_set.add",
    "place": "core.cli.class_set.place",
    "check": "core.cli.class_set.check",
    "show": "core.cli.class_set.show",
    "table": "core.cli.class_set.table",
    "studies": "core.cli.class_set.studies",
    "tidy": "core.cli.class_set.tidy",
    "delete": "core.cli.class_set.delete",
}
"""The module of each verb; all have `add_arguments` and `run`, as commands do."""


def add_arguments(parser: argparse.ArgumentParser, extra: Mapping[str, str] | None = None) -> None:
    """The verbs of `gradewash class`, each with its arguments.

    Parameters
    ----------
    extra : mapping, optional
        Further verbs and their modules, which `core` itself may not know.
    """
    parser.description = translate(
        "command line",
        "The studies of one class: bring in the pictures of an evening, check them, and take out "
        "a mark list.",
    )
    does = {
        "new": translate("command line", "begin a class set with a sky photo and a list of codes"),
        "add": translate("command line", "bring pictures, studies or whole folders in"),
        "place": translate("command line", "say whose a picture is, or put it aside"),
        "check": translate("command line", "check every sheet that was not checked yet"),
        "show": translate("command line", "tell what is in, what is to be placed, what was hard"),
        "scores": translate("command line", "read the scores crossed on worksheets, and take them"),
        "table": translate("command line", "write the mark list as CSV or XLSX"),
        "studies": translate("command line", "write a study for each student"),
        "tidy": translate("command line", "keep of every sheet its straightened painting alone"),
        "delete": translate("command line", "remove the class set, and nothing else"),
    }
    verbs = parser.add_subparsers(dest="verb", required=True, metavar="VERB", parser_class=Parser)
    for name, module in {**VERBS, **(extra or {})}.items():
        verb = verbs.add_parser(name, help=does[name], description=does[name])
        import_module(module).add_arguments(verb)


def run(args: argparse.Namespace, extra: Mapping[str, str] | None = None) -> int:
    """Do what the verb asks."""
    return int(import_module({**VERBS, **(extra or {})}[args.verb]).run(args))
