"""Check every sheet of a class set that was not checked yet."""

from __future__ import annotations

import argparse
import contextlib
import sys
import time
from collections.abc import Callable, Iterator
from concurrent.futures import Executor
from importlib import import_module
from typing import Any

from core.class_set.check_all import AHEAD
from core.class_set.checking import check_folder, still_to_check
from core.class_set.pool import WORKERS, CheckingPool
from core.class_set.time_left import time_left
from core.cli.class_set.common import (
    add_folder,
    count_text,
    opened,
    say_missing,
    say_questions,
    sorted_now,
)
from core.cli.class_set.corners import set_corners
from core.cli.layout import say
from core.errors import UsageError
from core.i18n import translate

_MOST_JOBS = 64
_ANSWERS_WITHIN = "10s"


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash class check`."""
    add_folder(parser)
    parser.add_argument(
        "--jobs",
        metavar="N",
        default=str(WORKERS),
        help=translate(
            "command line", "how many sheets at a time: 2 unless you say otherwise; 1 in order"
        ),
    )
    parser.add_argument(
        "--scheduler",
        metavar="ADDRESS",
        help=translate(
            "command line",
            "check on the machines of a dask.distributed scheduler, such as tcp://host:8786",
        ),
    )

    parser.add_argument(
        "--picture",
        metavar="PICTURE",
        help=translate(
            "command line",
            "one picture alone, by its name or file, with --corners of its own",
        ),
    )
    parser.add_argument(
        "--corners",
        metavar="X,Y,...|right|auto",
        help=translate(
            "command line",
            "its painting's corners by hand, eight numbers in pixels: top left, top right, "
            "bottom right, bottom left; right keeps those that were found, auto looks again",
        ),
    )
    parser.add_argument(
        "--turned",
        metavar="N",
        help=translate(
            "command line",
            "quarter turns clockwise that bring it upright, 0 to 3; without it, it turns itself",
        ),
    )


def run(args: argparse.Namespace) -> int:
    """Check, tell how far it is, then what is to be looked at."""
    jobs = _jobs(args.jobs)
    if args.picture is not None or args.corners is not None or args.turned is not None:
        if args.picture is None or args.corners is None:
            raise UsageError(
                translate(
                    "command line",
                    "--picture and --corners belong together: say which picture, and where its "
                    "painting's corners are.",
                )
            )
        with opened(args) as folder:
            return set_corners(folder, args.picture, args.corners, args.turned)
    with opened(args) as folder:
        say_missing(folder.missing)
        undone = len(still_to_check(folder))
        with (
            _executor(jobs, args.scheduler) if undone else contextlib.nullcontext((None, None)) as (
                executor,
                renew,
            )
        ):
            begun, failed = time.monotonic(), 0
            outcomes = check_folder(
                folder,
                executor=executor,
                renew=renew,
                ahead=max(AHEAD, 2 * jobs),
                carry=args.scheduler is not None,
            )
            for number, outcome in enumerate(outcomes, 1):
                failed += bool(outcome.sentence)
                _tell(number, undone, time.monotonic() - begun)
        if sys.stderr.isatty() and undone:
            print(file=sys.stderr)
        say(
            count_text(
                translate("command line", "{n} sheet was checked."),
                translate("command line", "{n} sheets were checked."),
                undone - failed,
            )
        )
        say_questions(folder.class_set, sorted_now(folder.path, folder.class_set))
    return 0


def _tell(number: int, of: int, seconds: float) -> None:
    text = translate("command line", "{n} of {all}").format(n=number, all=of)
    if number < of:
        text = f"{text}, {time_left(number, of, seconds)}"
    if sys.stderr.isatty():
        print(f"\r\x1b[K{text}", end="", file=sys.stderr, flush=True)
    elif number == of or number % 10 == 0:
        print(text, file=sys.stderr, flush=True)


@contextlib.contextmanager
def _executor(
    jobs: int, scheduler: str | None
) -> Iterator[tuple[Executor | None, Callable[[], Executor] | None]]:
    """What checks: the scheduler's workers, processes here, or nothing, which is here in order."""
    if scheduler is not None:
        client = _client(scheduler)
        try:
            yield client.get_executor(), None
        finally:
            client.close()
    elif jobs == 1:
        yield None, None
    else:
        with CheckingPool(jobs) as pool:
            yield pool.executor, pool.renew


def _client(address: str) -> Any:
    try:
        # deferred: only whoever has a scheduler has it
        distributed: Any = import_module("distributed")
    except ImportError as error:
        raise UsageError(
            translate(
                "command line",
                "--scheduler needs the package distributed: install it with pip install "
                "distributed, or leave --scheduler out.",
            )
        ) from error
    try:
        return distributed.Client(address, timeout=_ANSWERS_WITHIN)
    except (OSError, ValueError, TypeError) as error:
        raise UsageError(
            translate(
                "command line",
                "No scheduler answers at {address}: is it running, and is the address right?",
            ).format(address=address)
        ) from error


def _jobs(text: str) -> int:
    if not text.isdecimal() or not 1 <= int(text) <= _MOST_JOBS:
        raise UsageError(
            translate(
                "command line", "--jobs {text} is not a number of jobs: give 1 to {most}."
            ).format(text=text, most=_MOST_JOBS)
        )
    return int(text)
