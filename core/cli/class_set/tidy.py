"""Keep of every sheet its straightened painting alone."""

from __future__ import annotations

import argparse

from core.class_set.kept_checks import found_checks
from core.class_set.tidying import tidy
from core.cli.class_set.common import add_folder, count_text, opened
from core.cli.layout import say
from core.i18n import translate


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash class tidy`."""
    add_folder(parser)


def run(args: argparse.Namespace) -> int:
    """Tidy, and tell what was done."""
    with opened(args) as folder:
        done = tidy(folder, found_checks(folder.path, folder.class_set))
    say(
        count_text(
            translate("command line", "Of {n} sheet only the painting is kept now."),
            translate("command line", "Of {n} sheets only the paintings are kept now."),
            done.straightened,
        )
    )
    if done.removed:
        say(
            count_text(
                translate("command line", "{n} picture laid aside is gone."),
                translate("command line", "{n} pictures laid aside are gone."),
                done.removed,
            )
        )
    if done.left:
        say(
            count_text(
                translate("command line", "{n} sheet stays as it is: check it first."),
                translate("command line", "{n} sheets stay as they are: check them first."),
                done.left,
            )
        )
    return 0
